// Items out as CSV and in again; a bad row is refused with its line, column, reason and mend, and nothing comes in.
#include <gtest/gtest.h>
#include <rapidcheck.h>

#include "files/starter.h"

namespace files {
namespace {

using catalogue::Item;

constexpr const char* head =
    "id,kind,name_en,unit,length_mm,width_mm,joint_mm,pieces_per_layer,layers_per_pack,pieces_per_pack,price,price_"
    "unit,"
    "price_date,by_others,breakage_pct,contents,details\r\n";
constexpr const char* good_row =
    "unit-a,paving-unit,Unit A,piece,200.025,98.425,3.175,45,10,450,4.95,sq ft,2025-03-01,,3,,porosity=0.4\r\n";

std::string refusal(const std::string& row) {
  const auto items = read_catalogue_csv(head + std::string(good_row) + row, "items.csv");
  return items ? "" : problem::sentence(items.error());
}

TEST(CatalogueCsv, ReadsARow) {
  const auto items = read_catalogue_csv(head + std::string(good_row), "items.csv");
  ASSERT_TRUE(items) << problem::sentence(items.error());
  const Item& item = items->at(0);
  EXPECT_EQ(item.length, units::Length::inch_64ths(504));  // 7-7/8 in = 200.025 mm
  EXPECT_EQ(item.joint, units::Length::inch_64ths(8));
  EXPECT_EQ(item.pack.pieces, 450);
  EXPECT_EQ(item.price->amount.coins(), 495);
  EXPECT_EQ(item.breakage, 0.03);
  EXPECT_EQ(item.details.at("porosity"), "0.4");
  EXPECT_FALSE(item.height);
}

struct BadRow {
  const char* row;
  const char* begins;
};

// One fault in each row; the sentence begins with file, line and column.
const BadRow bad_rows[] = {
    {"unit-b,paving-unit,B,piece,,,,,,0,1.00,piece,,,,,",
     "items.csv:3: column pieces_per_pack: '0' is not a whole number"},
    {"unit-b,paving-unit,B,piece,,,,,,-5,1.00,piece,,,,,", "items.csv:3: column pieces_per_pack: '-5' is not"},
    {"unit-b,paving-unit,B,piece,,,,,,1.5,1.00,piece,,,,,", "items.csv:3: column pieces_per_pack: '1.5' is not"},
    {"unit-b,paving-unit,B,piece,,,,45,10,449,1.00,piece,,,,,",
     "items.csv:3: column pieces_per_pack: item unit-b: 45 pieces a layer"},
    {"unit-b,paving-unit,B,piece,,,,,,,-1.00,piece,,,,,",
     "items.csv:3: column price: item unit-b: its price is below 0"},
    {"unit-b,paving-unit,B,piece,,,,,,,0.00,piece,,,,,", "items.csv:3: column price: item unit-b: its price is 0"},
    {"unit-b,paving-unit,B,piece,,,,,,,1.005,piece,,,,,",
     "items.csv:3: column price: '1.005' is not an amount of money"},
    {"unit-b,paving-unit,B,piece,,,,,,,$1,piece,,,,,", "items.csv:3: column price: '$1' is not an amount of money"},
    {"unit-b,paving-unit,B,piece,,,,,,,1.00,,,,,,",
     "items.csv:3: column price_unit: item unit-b: its price does not say"},
    {"unit-b,paving-unit,B,piece,,,,,,,1.00,piece,2025-02-30,,,,",
     "items.csv:3: column price_date: item unit-b: the price date"},
    {"unit-b,paving-unit,B,piece,,,,,,,1.00,piece,,maybe,,,", "items.csv:3: column by_others: 'maybe' is neither"},
    {"unit-b,paving-unit,B,piece,=1+1,,,,,,1.00,piece,,,,,", "items.csv:3: column length_mm: '=1+1' is not a number"},
    {"unit-b,paving-unit,B,piece,nan,,,,,,1.00,piece,,,,,", "items.csv:3: column length_mm: 'nan' is not a number"},
    {"unit-b,paving-unit,B,piece,0,,,,,,1.00,piece,,,,,",
     "items.csv:3: column length_mm: item unit-b: its length is 0"},
    {"unit-b,paving-unit,B,piece,,1e9,,,,,1.00,piece,,,,,", "items.csv:3: column width_mm: it is longer than 5 km"},
    {"unit-b,paving-unit,B,piece,,,-1,,,,1.00,piece,,,,,",
     "items.csv:3: column joint_mm: item unit-b: its joint is below 0"},
    {"unit-b,paving-unit,B,piece,,,,,,,1.00,piece,,,101,,",
     "items.csv:3: column breakage_pct: item unit-b: its breakage"},
    {"unit-b,bricks,B,piece,,,,,,,1.00,piece,,,,,",
     "items.csv:3: column kind: item unit-b: the kind 'bricks' is not known"},
    {"Unit B,paving-unit,B,piece,,,,,,,1.00,piece,,,,,", "items.csv:3: column id: item Unit B: its id is not plain"},
    {",paving-unit,B,piece,,,,,,,1.00,piece,,,,,", "items.csv:3: column id: the cell is empty"},
    {"unit-b,paving-unit,,piece,,,,,,,1.00,piece,,,,,", "items.csv:3: column name_en: the cell is empty"},
    {"unit-b,paving-unit,B,,,,,,,,1.00,piece,,,,,", "items.csv:3: column unit: the cell is empty"},
    {"unit-a,paving-unit,B,piece,,,,,,,1.00,piece,,,,,", "items.csv:3: column id: unit-a stands in line 2 already"},
    {"pack-b,mixed-pack,B,pack,,,,,,,1.00,pack,,,,unit-a=0,",
     "items.csv:3: column contents: '0' of unit-a is not a whole number"},
    {"pack-b,mixed-pack,B,pack,,,,,,,1.00,pack,,,,unit-a,",
     "items.csv:3: column contents: 'unit-a' is not a name and a value"},
    {"pack-b,mixed-pack,B,pack,,,,,,,1.00,pack,,,,,", "items.csv:3: column contents: item pack-b: it does not say"},
    {"pack-b,mixed-pack,B,pack,,,,,,9,1.00,pack,,,,unit-a=8,",
     "items.csv:3: column pieces_per_pack: item pack-b: its sizes add up"},
    {"unit-b,aggregate,B,ton,,,,,,,1.00,ton,,,,,a=1; a=2", "items.csv:3: column details: 'a' is given twice"},
    {"unit-b,aggregate,B,ton,,,,,,,1.00,ton,,,,,A b=1", "items.csv:3: column details: item unit-b: the detail 'A b'"},
    {"unit-b,aggregate,B,ton,,,,,,,1.00,ton,,,,,loose_density_kg_m3=1520; compacted_density_kg_m3=1776; "
     "loose_per_compacted=1.15",
     "items.csv:3: column details: item unit-b: its densities make 1.1684 loose for one compacted, its factor says "
     "1.15"},
    {"unit-b,paving-unit,B,piece", "items.csv:3: the row has 4 cells, the head line 17"},
};

TEST(CatalogueCsv, ABadRowIsRefusedByLineAndColumn) {
  for (const BadRow& bad : bad_rows) {
    const std::string said = refusal(std::string(bad.row) + "\r\n");
    EXPECT_TRUE(said.starts_with(bad.begins)) << said << "\n  for " << bad.row;
    EXPECT_NE(said.find("; "), std::string::npos) << said;  // the mend
  }
}

TEST(CatalogueCsv, PricesBelowZeroAndByOthers) {
  EXPECT_EQ(refusal("back,credit,Back,piece,,,,,,,-28.00,piece,,,,,\r\n"), "");
  EXPECT_EQ(refusal("own,aggregate,Own stone,ton,,,,,,,0,ton,,yes,,,\r\n"), "");
  EXPECT_EQ(refusal("own,aggregate,Own stone,ton,,,,,,,,ton,,yes,,,\r\n"), "");
  EXPECT_EQ(refusal("none,aggregate,No price yet,ton,,,,,,,,ton,,,,,\r\n"), "");
}

TEST(CatalogueCsv, ColumnsAreKnownByName) {
  const auto said = [](const std::string& text) {
    const auto items = read_catalogue_csv(text, "items.csv");
    return items ? "" : problem::sentence(items.error());
  };
  EXPECT_TRUE(said("id,kind,name_en\na,slab,A\n").starts_with("items.csv:1: the column 'unit' is missing"));
  EXPECT_TRUE(said("id,kind,name_en,unit,colour\na,slab,A,piece,red\n")
                  .starts_with("items.csv:1: the column 'colour' is not known"));
  EXPECT_EQ(said("unit,name_en,kind,id\npiece,A,slab,a\n"), "");  // any order, and only what is needed
}

// Every item of the starter, to the last bit of each number.
TEST(CatalogueCsv, TheWholeStarterComesBack) {
  const std::string csv = write_catalogue_csv(starter());
  const auto items = read_catalogue_csv(csv, "export.csv");
  ASSERT_TRUE(items) << problem::sentence(items.error());
  ASSERT_EQ(items->size(), starter().items.size());
  for (const Item& item : *items) EXPECT_EQ(item, *starter().item(item.id)) << item.id;
  catalogue::Catalogue again;
  for (const Item& item : *items) again.items[item.id] = std::make_shared<const Item>(item);
  EXPECT_EQ(write_catalogue_csv(again), csv);
}

rc::Gen<std::string> text() {
  const std::vector<std::string> letters{"a",  " ",  ",", "\"",           "'",  "=",
                                         "-",  "@",  "+", "\t",           "\n", ";",
                                         "; ", "\\", "ñ", "\xE2\x80\xAE", "%s", "'; DROP TABLE items; --"};
  return rc::gen::map(rc::gen::container<std::vector<std::string>>(rc::gen::elementOf(letters)), [](const auto& parts) {
    std::string joined;
    for (const std::string& part : parts) joined += part;
    return joined;
  });
}

Item random_item() {
  Item item;
  item.id = "item-" + std::to_string(*rc::gen::inRange(0, 1000));
  item.kind = *rc::gen::elementOf(std::vector<std::string>{"paving-unit", "credit", "aggregate", "labour"});
  item.name = {"n" + *text(), *text()};
  item.supplier = *text();
  item.unit = "u" + *text();
  if (*rc::gen::arbitrary<bool>())
    item.length = units::Length::of_steps(*rc::gen::inRange<std::int64_t>(1, 1'000'000'000));
  if (*rc::gen::arbitrary<bool>()) item.joint = units::Length::of_steps(*rc::gen::inRange<std::int64_t>(0, 10'000));
  if (*rc::gen::arbitrary<bool>())
    item.mass_kg = static_cast<double>(*rc::gen::inRange<std::int64_t>(1, std::int64_t{1} << 60)) / 1e12;
  if (*rc::gen::arbitrary<bool>())
    item.void_share =
        static_cast<double>(*rc::gen::inRange<std::int64_t>(0, std::int64_t{1} << 53)) / 9007199254740992.0;
  item.pack.kind = *text();
  item.pack.pieces = *rc::gen::inRange(0, 1000);
  item.breakage = static_cast<double>(*rc::gen::inRange<std::int64_t>(0, std::int64_t{1} << 53)) / 9007199254740992.0;
  if (*rc::gen::arbitrary<bool>())
    item.price = catalogue::Price{units::Money::of_coins(*rc::gen::inRange<std::int64_t>(1, 1'000'000'000)),
                                  "u" + *text(), "2025-03-01", *rc::gen::arbitrary<bool>()};
  if (item.price && item.kind == "credit") item.price->amount = -item.price->amount;
  item.notes = *text();
  item.details["a"] = *text();
  item.details["b_mm"] = *text();
  return item;
}

TEST(CatalogueCsv, AnyItemComesBack) {
  EXPECT_TRUE(rc::check("written then read is the same item", [] {
    const Item item = random_item();
    catalogue::Catalogue catalogue;
    catalogue.items[item.id] = std::make_shared<const Item>(item);
    const auto read = read_catalogue_csv(write_catalogue_csv(catalogue), "x.csv");
    if (!read) RC_FAIL(problem::sentence(read.error()));
    RC_ASSERT(read->size() == 1u);
    RC_ASSERT(read->at(0) == item);
  }));
}

}  // namespace
}  // namespace files
