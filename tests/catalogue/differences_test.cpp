// What a job brings that the book lacks or has otherwise, against a look at every part by hand; and the book and the
// job after each choice.
#include "catalogue/differences.h"

#include <gtest/gtest.h>
#include <rapidcheck.h>

#include <algorithm>
#include <set>

namespace catalogue {
namespace {

int below(int count) { return *rc::gen::inRange(0, count); }

std::shared_ptr<const Item> item(const Id& id, int price, int mass) {
  Item made;
  made.id = id;
  made.kind = "aggregate";
  made.name.en = "Item " + id;
  made.mass_kg = mass;
  if (price > 0) made.price = Price{units::Money::of_coins(price), "ton", "2026-01-01", false};
  return std::make_shared<const Item>(std::move(made));
}

Id named(const char* kind, int number) { return kind + std::to_string(number); }

Catalogue drawn() {
  Catalogue made;
  for (int n = 0; n < 4; ++n) {
    if (below(3) > 0) made.items[named("i", n)] = item(named("i", n), below(3), 1 + below(2));
    if (below(2) > 0) made.patterns[named("p", n)].along = 1 + below(2);
    if (below(2) > 0) made.build_ups[named("b", n)].notes = named("", below(2));
    if (below(2) > 0) made.limits[named("l", n)].usual = below(2);
    if (below(2) > 0) made.rates[named("r", n)].hours_per_si_unit = below(2);
    if (below(2) > 0) made.suppliers[named("s", n)].lead_days = below(2);
    if (below(2) > 0) {
      Junction one;
      one.id = named("j", n);
      one.built = named("", below(2));
      made.junctions.push_back(one);
    }
  }
  return made;
}

TEST(Differences, NamesWhatTheBookLacksAndOldAndNewPrice) {
  Catalogue job, book;
  job.items["stone"] = item("stone", 4200, 1);
  book.items["stone"] = item("stone", 3900, 1);
  job.items["sand"] = item("sand", 100, 1);
  job.items["paver"] = item("paver", 100, 2);
  book.items["paver"] = item("paver", 100, 1);
  job.items["same"] = book.items["same"] = item("same", 5, 5);
  book.items["more"] = item("more", 5, 5);
  const auto found = differences(job, book);
  ASSERT_EQ(found.size(), 3u);
  EXPECT_EQ(found[0].id, "paver");
  EXPECT_EQ(found[0].what, PartDifference::What::other);
  EXPECT_EQ(found[1].id, "sand");
  EXPECT_EQ(found[1].what, PartDifference::What::missing);
  EXPECT_FALSE(found[1].in_book.has_value());
  EXPECT_EQ(found[2].id, "stone");
  EXPECT_EQ(found[2].what, PartDifference::What::price);
  EXPECT_EQ(found[2].in_job->amount.coins(), 4200);
  EXPECT_EQ(found[2].in_book->amount.coins(), 3900);
}

std::vector<Chosen> all(const std::vector<PartDifference>& found, Choice choice) {
  std::vector<Chosen> choices;
  for (const PartDifference& one : found) choices.push_back({one.part, one.id, choice});
  return choices;
}

TEST(Differences, AfterEachChoiceOnlyWhatWasKeptDiffers) {
  EXPECT_TRUE(rc::check("settled", [] {
    const Catalogue job = drawn(), book = drawn();
    RC_ASSERT(differences(job, job).empty());
    const auto found = differences(job, book);
    const Settled kept = settled(job, book, all(found, Choice::keep_jobs));
    RC_ASSERT(same(kept.job, job));
    RC_ASSERT(same(kept.book, book));
    const Settled put = settled(job, book, all(found, Choice::put_into_book));
    RC_ASSERT(same(put.job, job));
    RC_ASSERT(differences(job, put.book).empty());
    const Settled taken = settled(job, book, all(found, Choice::take_books));
    RC_ASSERT(same(taken.book, book));
    const auto left = differences(taken.job, book);
    RC_ASSERT(std::all_of(left.begin(), left.end(),
                          [](const auto& one) { return one.what == PartDifference::What::missing; }));
    RC_ASSERT(static_cast<std::ptrdiff_t>(left.size()) ==
              std::count_if(found.begin(), found.end(),
                            [](const auto& one) { return one.what == PartDifference::What::missing; }));
  }));
}

// One of each at a time: what was not chosen stays in both.
TEST(Differences, OneChoiceChangesOnePart) {
  EXPECT_TRUE(rc::check("one", [] {
    const Catalogue job = drawn(), book = drawn();
    auto found = differences(job, book);
    if (found.empty()) return;
    const auto at = static_cast<std::size_t>(below(static_cast<int>(found.size())));
    const Settled after = settled(job, book, {{found[at].part, found[at].id, Choice::put_into_book}});
    found.erase(found.begin() + static_cast<std::ptrdiff_t>(at));
    RC_ASSERT(differences(job, after.book) == found);
  }));
}

TEST(Differences, ABuildUpBringsItsItemsAndAPackItsPieces) {
  Catalogue job;
  Item pack = *item("pack", 9000, 1);
  pack.contents = {{"large", 20}, {"small", 40}};
  job.items["pack"] = std::make_shared<const Item>(pack);
  job.items["large"] = item("large", 0, 1);
  job.items["small"] = item("small", 0, 2);
  job.items["stone"] = item("stone", 4000, 3);
  Layer layer;
  layer.item = "stone";
  job.build_ups["drive"].layers = {layer, {}};  // the second is of whatever unit the area has
  Catalogue book;
  book.items["small"] = item("small", 0, 99);  // the book's own stays
  const Settled after = settled(
      job, book, {{Part::build_up, "drive", Choice::put_into_book}, {Part::item, "pack", Choice::put_into_book}});
  EXPECT_NE(after.book.item("stone"), nullptr);
  EXPECT_NE(after.book.item("large"), nullptr);
  EXPECT_EQ(after.book.item("small")->mass_kg, 99);
  EXPECT_NE(after.book.build_up("drive"), nullptr);
}

}  // namespace
}  // namespace catalogue
