// Changes of the catalogue in the book: all or nothing, taken back and done again as a plain map would, kept in a
// history that outlives the program; what is retired is not offered and comes back as it was.
#include "store/catalogue_book.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include "store/folder.h"
#include "store/jobs.h"

namespace store {
namespace {

using catalogue::Change;
using catalogue::Item;
using catalogue::Kept;
using catalogue::Key;
using catalogue::Step;

CatalogueBook book_in(const std::string& folder) { return good(CatalogueBook::open(folder)); }

Item stone(const std::string& id, std::int64_t coins) {
  Item item;
  item.id = id;
  item.kind = "aggregate";
  item.name = {"Stone", "Piedra"};
  item.unit = "ton";
  item.price = catalogue::Price{units::Money::of_coins(coins), "ton", "2026-03-01", false};
  item.details["porosity"] = "0.4";
  return item;
}

Kept kept(CatalogueBook& book, const Key& key) { return catalogue::find(good(book.stock()), key).value(); }

TEST(CatalogueChanges, EveryKindIsCopiedChangedRetiredAndBroughtBack) {
  CatalogueBook book = book_in(own_folder());
  for (std::size_t kind = 0; kind < catalogue::kind_words().size(); ++kind) {
    const auto before = catalogue::entries(good(book.stock()), kind);
    ASSERT_FALSE(before.empty()) << catalogue::kind_words()[kind];
    const catalogue::Entry copy = catalogue::copied(before.front().entry, "the-copy");
    const Key key = catalogue::key_of(copy);
    well(book.change({{{std::nullopt, Kept{copy, false}}}, "typed"}));
    EXPECT_EQ(kept(book, key), (Kept{copy, false}));
    well(book.change({{{Kept{copy, false}, Kept{copy, true}}}, "typed"}));
    EXPECT_EQ(kept(book, key), (Kept{copy, true})) << "retired is not lost";
    catalogue::Stock offered{good(book.read()), {}};
    EXPECT_FALSE(catalogue::find(offered, key)) << "retired is not offered";
    well(book.change({{{Kept{copy, true}, Kept{copy, false}}}, "typed"}));
    offered.all = good(book.read());
    EXPECT_EQ(catalogue::find(offered, key), (Kept{copy, false}));
    EXPECT_EQ(good(book.history(key)).size(), 3U) << "added, retired, brought back";
    for (int i = 0; i < 3; ++i) EXPECT_TRUE(good(book.undo()));
    EXPECT_EQ(catalogue::entries(good(book.stock()), kind), before) << catalogue::kind_words()[kind];
  }
}

TEST(CatalogueChanges, PricesKeepTheirDatesAndSourcesWhenTheBookIsOpenedAnew) {
  const std::string folder = own_folder();
  {
    CatalogueBook book = book_in(folder);
    well(book.change({{{std::nullopt, Kept{stone("own-stone", 3100)}}}, "typed"}));
    well(book.change({{{Kept{stone("own-stone", 3100)}, Kept{stone("own-stone", 3350)}}}, "spring.csv"}));
  }
  CatalogueBook book = book_in(folder);
  const auto points = good(book.price_history("own-stone"));
  ASSERT_EQ(points.size(), 2U);
  EXPECT_EQ(points[0].price->amount, units::Money::of_coins(3100));
  EXPECT_EQ(points[0].source, "typed");
  EXPECT_EQ(points[1].price->amount, units::Money::of_coins(3350));
  EXPECT_EQ(points[1].source, "spring.csv");
  EXPECT_FALSE(points[1].when.empty());
  EXPECT_TRUE(good(book.undo()));
  EXPECT_EQ(good(book.price_history("own-stone")).back().price->amount, units::Money::of_coins(3100));
  EXPECT_TRUE(good(book.redo()));
  EXPECT_EQ(std::get<Item>(kept(book, {0, "own-stone"}).entry), stone("own-stone", 3350));
  EXPECT_FALSE(good(book.redo())) << "nothing is left to be done again";
}

TEST(CatalogueChanges, AnItemOfTheStarterHasThePriceItCameWith) {
  CatalogueBook book = book_in(own_folder());
  const auto all = good(book.read());
  const auto& [id, item] = *all.items.begin();
  const auto points = good(book.price_history(id));
  ASSERT_EQ(points.size(), 1U);
  EXPECT_EQ(points[0].price, item->price);
}

TEST(CatalogueChanges, AFaultOfOneStepLeavesAllAsItWas) {
  CatalogueBook book = book_in(own_folder());
  const auto before = good(book.stock());
  Item bad = stone("bad-stone", 100);
  bad.breakage = 2;
  const auto refused = [&](const Change& change) {
    const auto done = book.change(change);
    EXPECT_TRUE(same(good(book.stock()).all, before.all));
    return done ? std::string("done") : done.error().code;
  };
  const Step fine{std::nullopt, Kept{stone("fine-stone", 100)}};
  EXPECT_NE(refused({{fine, {std::nullopt, Kept{bad}}}, "typed"}), "done");
  EXPECT_EQ(refused({{fine, fine}, "typed"}), "catalogue-doubled");
  EXPECT_EQ(refused({{fine, {Kept{stone("not-there", 1)}, Kept{stone("not-there", 2)}}}, "typed"}),
            "catalogue-changed");
  EXPECT_EQ(refused({{fine, {Kept{stone("fine-stone", 100)}, Kept{stone("other-id", 100)}}}, "typed"}), "catalogue-id");
  EXPECT_EQ(refused({{{std::nullopt, Kept{stone("Not An Id", 1)}}}, "typed"}) == "done", false);
  EXPECT_FALSE(good(book.undo())) << "what was refused is in no history";
}

TEST(CatalogueChanges, WhatABuildUpIsMadeOfIsNotRetiredUnderIt) {
  CatalogueBook book = book_in(own_folder());
  const auto all = good(book.read());
  catalogue::Id used;
  for (const auto& [id, build_up] : all.build_ups)
    for (const auto& layer : build_up.layers)
      if (!layer.item.empty()) used = layer.item;
  const Kept now = kept(book, {0, used});
  const auto done = book.change({{{now, Kept{now.entry, true}}}, "typed"});
  ASSERT_FALSE(done);
  EXPECT_EQ(done.error().code, "catalogue-retired");
}

TEST(CatalogueChanges, AnEmptyLimitAnswersAsItsCopyOutOfTheHistory) {
  CatalogueBook book = book_in(own_folder());
  catalogue::Limit limit;
  limit.id = "own-limit";
  limit.usual = 0.1;
  limit.unit = "share";
  limit.notes = "'; DROP TABLE items; -- %s <b>";
  well(book.change({{{std::nullopt, Kept{limit}}}, "typed"}));
  EXPECT_TRUE(good(book.undo()));
  EXPECT_TRUE(good(book.redo()));
  EXPECT_EQ(kept(book, {3, "own-limit"}).entry, catalogue::Entry(limit));
}

// Against a list of plain maps: what stands after each act, and where in the list one is.
RC_GTEST_PROP(CatalogueChanges, AreTakenBackAndDoneAgainAsAListOfMapsIs, ()) {
  const std::string folder = own_folder() + "-" + std::to_string(*rc::gen::inRange(0, 1'000'000'000));
  std::filesystem::remove_all(folder);
  CatalogueBook book = book_in(folder);
  using Map = std::map<std::string, std::pair<std::int64_t, bool>>;
  std::vector<Map> past{{}};
  std::size_t at = 0;
  const int acts = *rc::gen::inRange(1, 14);
  for (int i = 0; i < acts; ++i) {
    const int act = *rc::gen::inRange(0, 5);
    if (act == 0) {
      RC_ASSERT(good(book.undo()) == (at > 0));
      if (at > 0) --at;
    } else if (act == 1) {
      RC_ASSERT(good(book.redo()) == (at + 1 < past.size()));
      if (at + 1 < past.size()) ++at;
    } else {
      const std::string id = "stone-" + std::to_string(*rc::gen::inRange(0, 3));
      const std::pair<std::int64_t, bool> next{*rc::gen::inRange(1, 9000), *rc::gen::arbitrary<bool>()};
      Map map = past[at];
      Step step{std::nullopt, Kept{stone(id, next.first), next.second}};
      if (const auto there = map.find(id); there != map.end())
        step.before = Kept{stone(id, there->second.first), there->second.second};
      map[id] = next;
      well(book.change({{step}, "typed"}));
      past.resize(at + 1);
      past.push_back(map);
      ++at;
    }
    Map found;
    for (const Kept& one : catalogue::entries(good(book.stock()), 0)) {
      const Item& item = std::get<Item>(one.entry);
      if (item.id.starts_with("stone-")) found[item.id] = {item.price->amount.coins(), one.retired};
    }
    Map wanted = past[at];
    RC_ASSERT(found == wanted);
  }
  std::filesystem::remove_all(folder);
}

}  // namespace
}  // namespace store
