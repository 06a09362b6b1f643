// The catalogue in the job book: filled on the first start, changed all or nothing, equal to what went in.
#include "store/catalogue_book.h"

#include <fstream>
#include <thread>

#include "files/files.h"
#include "store/folder.h"
#include "store/lock.h"
#include "store/starter.h"

namespace store {
namespace {

using catalogue::Catalogue;
using catalogue::Item;

CatalogueBook opened(const std::string& folder) {
  auto book = CatalogueBook::open(folder);
  if (!book) throw std::runtime_error(problem::sentence(book.error()));
  return std::move(*book);
}

Catalogue all(CatalogueBook& book) {
  auto read = book.read();
  if (!read) throw std::runtime_error(problem::sentence(read.error()));
  return *read;
}

Item plain(const std::string& id) {
  Item item;
  item.id = id;
  item.kind = "aggregate";
  item.name = {"Stone", "Piedra"};
  item.unit = "ton";
  item.price = catalogue::Price{units::Money::of_coins(3100), "ton", "2025-03-01", false};
  item.details["porosity"] = "0.4";
  return item;
}

TEST(CatalogueBook, TheFirstStartFillsItFromTheStarter) {
  const auto starter = files::read_starter(starter_texts());
  ASSERT_TRUE(starter) << problem::sentence(starter.error());
  CatalogueBook book = opened(own_folder());
  EXPECT_TRUE(same(all(book), *starter));
  EXPECT_EQ(files::write_catalogue_csv(all(book)), files::write_catalogue_csv(*starter));
}

TEST(CatalogueBook, LiesInTheDataFolderUnlessTold) {
  auto book = CatalogueBook::open();
  ASSERT_TRUE(book) << problem::sentence(book.error());
  EXPECT_TRUE(std::filesystem::exists(data_folder() + "/book.sqlite"));
}

TEST(CatalogueBook, ItemsAreTakenInAndStay) {
  const std::string folder = own_folder();
  Item changed;
  Catalogue before;
  {
    CatalogueBook book = opened(folder);
    before = all(book);
    changed = *before.item("unit-4x8-60");
    changed.price->amount = units::Money::of_coins(505);
    changed.details["colour"] = "grey";
    ASSERT_TRUE(book.replace_items({changed, plain("stone-new")}));
  }
  CatalogueBook again = opened(folder);
  const Catalogue after = all(again);
  EXPECT_EQ(*after.item("unit-4x8-60"), changed);
  EXPECT_EQ(*after.item("stone-new"), plain("stone-new"));
  EXPECT_EQ(after.items.size(), before.items.size() + 1);
  EXPECT_EQ(*after.item("pack-three-60"), *before.item("pack-three-60"));
  EXPECT_EQ(after.build_ups, before.build_ups);
}

TEST(CatalogueBook, ItsOwnExportComesBackUnchanged) {
  CatalogueBook book = opened(own_folder());
  const Catalogue before = all(book);
  const auto items = files::read_catalogue_csv(files::write_catalogue_csv(before), "export.csv");
  ASSERT_TRUE(items);
  ASSERT_TRUE(book.replace_items(*items));
  EXPECT_TRUE(same(all(book), before));
}

TEST(CatalogueBook, AFaultLeavesTheBookAsItWas) {
  CatalogueBook book = opened(own_folder());
  const Catalogue before = all(book);
  Item no_pack = plain("stone-b");
  no_pack.pack.pieces = -1;
  Item lost_pack = plain("pack-b");
  lost_pack.kind = "mixed-pack";
  lost_pack.contents = {{"unit-4x8-60", 10}, {"unit-none", 5}};
  const std::pair<std::vector<Item>, const char*> faults[] = {{{plain("stone-a"), no_pack}, "item-pack"},
                                                              {{plain("stone-a"), plain("stone-a")}, "item-doubled"},
                                                              {{plain("stone-a"), lost_pack}, "item-contents"}};
  for (const auto& [items, code] : faults) {
    const auto refused = book.replace_items(items);
    ASSERT_FALSE(refused) << code;
    EXPECT_EQ(refused.error().code, code);
    EXPECT_TRUE(same(all(book), before)) << code;
  }
}

TEST(CatalogueBook, NamesOfAnyKindSurvive) {
  CatalogueBook book = opened(own_folder());
  std::vector<Item> items;
  for (const char* name : {"'; DROP TABLE items; --", "%s%s%n",
                           "\xE2\x80\xAE"
                           "enots\xE2\x80\xAC",
                           "=1+1", "\"", "?1 :a @b $c", "😀", "line\r\nline\ttab", "NULL", " "}) {
    Item item = plain("odd-" + std::to_string(items.size()));
    item.name = {name, name};
    item.notes = name;
    item.details["odd"] = name;
    items.push_back(item);
  }
  ASSERT_TRUE(book.replace_items(items));
  const Catalogue after = all(book);
  for (const Item& item : items) EXPECT_EQ(*after.item(item.id), item) << item.name.en;
  EXPECT_GT(after.items.size(), 200u);
}

TEST(CatalogueBook, TwoFirstStartsAtOnceMakeOneBook) {
  const std::string folder = own_folder();
  std::string said[2];
  std::size_t items[2] = {0, 0};
  const auto start = [&](std::size_t which) {
    auto book = CatalogueBook::open(folder);
    if (!book) {
      said[which] = problem::sentence(book.error());
      return;
    }
    if (const auto read = book->read()) items[which] = read->items.size();
  };
  std::thread other(start, 1);
  start(0);
  other.join();
  EXPECT_EQ(said[0] + said[1], "");
  EXPECT_EQ(items[0], files::read_starter(starter_texts())->items.size());
  EXPECT_EQ(items[1], items[0]);
}

TEST(CatalogueBook, ABookHalfMadeIsFinished) {
  // As if the machine had stopped between the tables and the starter.
  const std::string folder = own_folder();
  opened(folder);
  {
    auto database = Database::open(folder + "/book.sqlite");
    ASSERT_TRUE(database);
    for (const char* table :
         {"DELETE FROM catalogue_note", "DELETE FROM items", "DELETE FROM suppliers", "DELETE FROM patterns",
          "DELETE FROM build_ups", "DELETE FROM limits", "DELETE FROM rates", "DELETE FROM junctions",
          "DELETE FROM hold_points", "DELETE FROM cautions", "DELETE FROM site_rules"})
      ASSERT_TRUE(database->run(table));
  }
  CatalogueBook book = opened(folder);
  EXPECT_TRUE(same(all(book), *files::read_starter(starter_texts())));
}

TEST(CatalogueBook, ANewerBookIsRefusedAndLeftAlone) {
  const std::string folder = own_folder();
  opened(folder);
  ASSERT_TRUE(Database::open(folder + "/book.sqlite")->run("PRAGMA user_version = 99"));
  const auto refused = CatalogueBook::open(folder);
  ASSERT_FALSE(refused);
  EXPECT_EQ(refused.error().code, "book-newer");
  EXPECT_EQ(Database::open(folder + "/book.sqlite")->form(), 99);
}

TEST(CatalogueBook, AFolderThatCantBeMadeIsNamed) {
  const std::string folder = own_folder();
  std::ofstream(folder + "/file") << "x";
  const auto refused = CatalogueBook::open(folder + "/file/below");
  ASSERT_FALSE(refused);
  EXPECT_EQ(refused.error().code, "book-folder");
}

TEST(CatalogueBook, ReadersDoNotNeedTheLock) {
  const std::string folder = own_folder();
  opened(folder);
  const auto held = Lock::take(folder + "/book.lock", 0);
  ASSERT_TRUE(held);
  CatalogueBook book = opened(folder);
  EXPECT_FALSE(all(book).items.empty());
}

}  // namespace
}  // namespace store
