// A supplier's list held against a catalogue: what each row does is said before anything is changed, every row is in
// the preview, and what is chosen becomes one change.
#include "files/price_list.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <functional>

#include "files/starter.h"

namespace files {
namespace {

using catalogue::Item;
using catalogue::Kept;
using catalogue::Price;
using units::Money;

constexpr const char* today = "2026-11-28";

Item item(const std::string& id, std::int64_t coins, const std::string& unit, const std::string& number = {},
          const std::string& supplier = {}) {
  Item made;
  made.id = id;
  made.kind = "paving-unit";
  made.name.en = id;
  made.unit = "piece";
  made.supplier = supplier;
  made.pack.pieces = 450;
  if (coins != 0) made.price = Price{Money::of_coins(coins), unit, "2026-03-01", false};
  if (!number.empty()) made.details[supplier_number] = number;
  return made;
}

catalogue::Stock small() {
  catalogue::Stock stock;
  Item by_others = item("own-stone", 0, "ton");
  by_others.price = Price{Money(), "piece", "", true};
  for (const Item& one :
       {item("unit-a", 495, "sq ft", "A-100"), item("unit-b", 565, "sq ft", "B 7", "yard"),
        item("unit-c", 575, "piece", "B 7", "mill"), item("bare", 0, ""), item("gone", 1000, "piece"), by_others})
    stock.all.items[one.id] = std::make_shared<const Item>(one);
  stock.retired.insert({0, "gone"});
  return stock;
}

PriceList list_of(const std::string& text, const catalogue::Stock& stock = small()) {
  auto list = read_price_list(text, "spring.csv", stock, today);
  EXPECT_TRUE(list) << (list ? "" : problem::sentence(list.error()));
  return list ? *list : PriceList{};
}
PriceRow row_of(const std::string& cells) {
  const auto list = list_of("item,price,per,date,pack\n" + cells + "\n");
  EXPECT_EQ(list.rows.size(), 1U);
  return list.rows.empty() ? PriceRow{} : list.rows[0];
}
std::string refusal(const std::string& text) {
  const auto list = read_price_list(text, "spring.csv", small(), today);
  return list ? "" : problem::sentence(list.error());
}

TEST(PriceList, SaysWhatChangesAndByHowMuch) {
  const PriceRow row = row_of("unit-a,5.94,sq ft,2026-05-01,");
  EXPECT_EQ(row.fate, PriceFate::changes);
  EXPECT_EQ(row.before->amount.coins(), 495);
  EXPECT_EQ(row.after, (Price{Money::of_coins(594), "sq ft", "2026-05-01", false}));
  EXPECT_DOUBLE_EQ(row.percent().value(), 20);  // (594 - 495) / 495 = 99 / 495 = 0.2
  EXPECT_FALSE(row.to_look_at());
  EXPECT_DOUBLE_EQ(row_of("unit-a,4.50,sq ft,,").percent().value(), -100.0 / 11);  // -45 / 495 = -1 / 11
  EXPECT_EQ(row_of("unit-a,4.50,sq ft,,").after.date, today);
}

TEST(PriceList, MarksWhatIsMoreThanHalfUpOrDown) {
  // gone costs 10.00: half up is 15.00, half down 5.00, and just half is still taken for granted.
  for (const auto& [price, large] : {std::pair("15.00", false), {"15.01", true}, {"5.00", false}, {"4.99", true}}) {
    const PriceRow row = row_of("gone," + std::string(price) + ",piece,,");
    EXPECT_EQ(row.large, large) << price;
    EXPECT_TRUE(row.retired);
    EXPECT_EQ(row.fate, PriceFate::changes);
  }
  // An odd number of coins: half of 4.95 is 2.475.
  EXPECT_FALSE(row_of("unit-a,7.42,sq ft,,").large);
  EXPECT_TRUE(row_of("unit-a,7.43,sq ft,,").large);
}

TEST(PriceList, KeepsEveryRowAndSaysWhyItDoesNothing) {
  const auto list = list_of(
      "Item ID,Price,Per,Description\r\n"
      "unit-a,5.00,sq ft,Interlocking unit\r\n"
      "nobody,5.00,sq ft,An unknown one\r\n"
      "unit-b,5.00,piece,Another unit\r\n"
      "unit-c,,piece,No price\r\n"
      "gone,12.345,piece,Three decimals\r\n"
      "bare,\"1,200.00\",bale,No such unit\r\n");
  ASSERT_EQ(list.rows.size(), 6U);
  const PriceFate fates[] = {PriceFate::changes,  PriceFate::unknown,    PriceFate::other_unit,
                             PriceFate::no_price, PriceFate::unreadable, PriceFate::other_unit};
  for (std::size_t i = 0; i < 6; ++i) {
    EXPECT_EQ(list.rows[i].fate, fates[i]) << i;
    EXPECT_EQ(list.rows[i].line, static_cast<int>(i) + 2);
    EXPECT_FALSE(list.rows[i].name.empty());
    EXPECT_EQ(list.rows[i].can_be_taken(), i == 0);
    EXPECT_EQ(list.rows[i].percent().has_value(), i == 0) << "nothing is compared that is for another measure";
  }
  EXPECT_EQ(list.rows[1].number, "nobody");
  EXPECT_EQ(list.rows[1].after.amount.coins(), 500);
  EXPECT_EQ(problem::sentence(*list.rows[4].why),
            "spring.csv:6: column Price: '12.345' is not an amount of money; write digits with a dot and at most two "
            "decimals");
}

TEST(PriceList, ReadsAmountsAndUnitsAsTheyAreWritten) {
  EXPECT_EQ(row_of("unit-a,$5.10,SF,,").after, (Price{Money::of_coins(510), "sq ft", today, false}));
  EXPECT_EQ(row_of("gone,\"$1,234.50\",EA,,").after.amount.coins(), 123450);
  EXPECT_EQ(row_of("gone,\"1,234,567\",each,,").after.amount.coins(), 123456700);
  for (const char* bad :
       {"\"12,50\"", "\"1234,567\"", "\"1,2345\"", "\"1,234.5,6\"", "12.505", "=1+1", "5 USD", "-3.00", "0.00"})
    EXPECT_EQ(row_of("gone," + std::string(bad) + ",piece,,").fate, PriceFate::unreadable) << bad;
  EXPECT_EQ(row_of("gone,11.00,piece,5/1/2026,").fate, PriceFate::unreadable) << "a day may come before a month";
  EXPECT_NE(row_of("gone,11.00,piece,2026-02-30,").why->text.find("column date"), std::string::npos);
}

TEST(PriceList, FindsItemsByTheSuppliersNumber) {
  const auto list =
      list_of("supplier_number,unit_price,uom,supplier\nA-100,6.00,sf,\nB 7,6.00,ea,mill\nB 7,6.00,ea,\n");
  EXPECT_EQ(list.rows[0].item, "unit-a");
  EXPECT_EQ(list.rows[1].item, "unit-c");
  EXPECT_EQ(list.rows[2].fate, PriceFate::ambiguous) << "two suppliers have a B 7";
  EXPECT_TRUE(list.rows[2].item.empty());
  EXPECT_EQ(list_of("item,number,price,per\nnobody,A-100,6.00,sf\n").rows[0].item, "unit-a") << "then by the number";
}

TEST(PriceList, TellsWhatToLookAt) {
  EXPECT_TRUE(row_of("unit-a,5.00,sq ft,2026-02-28,").older);
  EXPECT_FALSE(row_of("unit-a,5.00,sq ft,2026-03-01,").older);
  EXPECT_EQ(row_of("unit-a,5.00,sq ft,,360").other_pack, 360);
  EXPECT_EQ(row_of("unit-a,5.00,sq ft,,450").other_pack, 0);
  const PriceRow now_bought = row_of("own-stone,31.00,piece,,");
  EXPECT_EQ(now_bought.fate, PriceFate::changes);
  EXPECT_TRUE(now_bought.by_others);
  EXPECT_FALSE(now_bought.percent());
  EXPECT_EQ(row_of("own-stone,0,piece,,").fate, PriceFate::same);
  const PriceRow first = row_of("bare,3.10,piece,,");
  EXPECT_EQ(first.fate, PriceFate::changes);
  EXPECT_FALSE(first.before);
  EXPECT_FALSE(first.percent());
}

TEST(PriceList, ConfirmsASamePriceOfALaterDate) {
  EXPECT_EQ(row_of("unit-a,4.95,sq ft,2026-04-01,").fate, PriceFate::confirmed);
  EXPECT_EQ(row_of("unit-a,4.95,sq ft,2026-03-01,").fate, PriceFate::same);
  EXPECT_EQ(row_of("unit-a,4.95,sq ft,2026-01-01,").fate, PriceFate::same);
  EXPECT_EQ(row_of("unit-a,4.95,sq ft,2026-04-01,").percent(), 0);
}

TEST(PriceList, OfTwoPricesForOneItemNoneIsTaken) {
  const auto apart = list_of("item,price,per\nunit-a,5.00,sq ft\nunit-b,6.00,sq ft\nunit-a,5.10,sq ft\n");
  EXPECT_EQ(apart.rows[0].fate, PriceFate::doubled);
  EXPECT_EQ(apart.rows[1].fate, PriceFate::changes);
  EXPECT_EQ(apart.rows[2].fate, PriceFate::doubled);
  EXPECT_NE(apart.rows[0].why->text.find("line 4"), std::string::npos) << apart.rows[0].why->text;
  EXPECT_NE(apart.rows[2].why->text.find("line 2"), std::string::npos);
  const auto alike = list_of("item,price,per\nunit-a,5.00,sq ft\nunit-a,5.00,sq ft\n");
  EXPECT_EQ(alike.rows[0].fate, PriceFate::changes);
  EXPECT_EQ(alike.rows[1].fate, PriceFate::doubled);
}

TEST(PriceList, RefusesWhatIsNoPriceList) {
  EXPECT_EQ(refusal("item,unit\nunit-a,sq ft\n"),
            "spring.csv:1: the column 'price' is missing; add it to the head line");
  EXPECT_NE(refusal("colour,price,per\ngrey,1,ea\n").find("no column says which item"), std::string::npos);
  EXPECT_NE(refusal("item,price\nunit-a,1.00\n").find("per what a price is"), std::string::npos);
  EXPECT_NE(refusal("item,price,per\n").find("there is no price in the file"), std::string::npos);
  EXPECT_NE(refusal("item,price,per\nunit-a,1.00\n").find("spring.csv:2"), std::string::npos) << "a cell too few";
  EXPECT_EQ(list_of("item,price,per,colour\nunit-a,5.00,sf,grey\n").left_out, std::vector<std::string>{"colour"});
}

TEST(PriceList, TheChosenRowsBecomeOneChange) {
  const catalogue::Stock stock = small();
  const auto list = list_of("item,price,per\nunit-a,5.00,sq ft\nunit-b,6.00,sq ft\nnobody,1.00,ea\ngone,11.00,ea\n");
  const auto change = price_change(stock, list, {0, 2, 3, 99});
  EXPECT_EQ(change.source, "spring.csv");
  ASSERT_EQ(change.steps.size(), 2U) << "the unknown one and the one past the end are passed over";
  const auto after = catalogue::changed(stock, change);
  ASSERT_TRUE(after) << problem::sentence(after.error());
  EXPECT_EQ(after->all.item("unit-a")->price->amount.coins(), 500);
  EXPECT_EQ(after->all.item("unit-a")->price->date, today);
  EXPECT_EQ(after->all.item("unit-b")->price->amount.coins(), 565);
  EXPECT_EQ(after->all.item("gone")->price->amount.coins(), 1100);
  EXPECT_TRUE(after->retired.contains({0, "gone"})) << "a price does not bring it back";
  EXPECT_EQ(after->all.items.size(), stock.all.items.size());
  EXPECT_FALSE(catalogue::changed(*after, change)) << "the catalogue has gone on since";
}

// An exported catalogue is a list that changes nothing; with every price one coin up it changes just the prices.
TEST(PriceList, AnExportedCatalogueIsAList) {
  catalogue::Stock stock;
  stock.all = starter();
  const auto list = list_of(write_catalogue_csv(stock.all), stock);
  EXPECT_EQ(list.rows.size(), stock.all.items.size());
  for (const PriceRow& row : list.rows)
    EXPECT_TRUE(row.fate == PriceFate::same || (row.fate == PriceFate::no_price && !row.before)) << row.number;
  for (auto& [id, shared] : stock.all.items) {
    Item cheaper = *shared;
    if (cheaper.price) cheaper.price->amount = cheaper.price->amount - Money::of_coins(1);
    shared = std::make_shared<const Item>(cheaper);
  }
  const auto dearer = list_of(write_catalogue_csv(starter()), stock);
  std::vector<std::size_t> all;
  for (std::size_t i = 0; i < dearer.rows.size(); ++i) all.push_back(i);
  const auto after = catalogue::changed(stock, price_change(stock, dearer, all));
  ASSERT_TRUE(after) << problem::sentence(after.error());
  EXPECT_TRUE(catalogue::same(after->all, starter()));
}

// Rows of all sorts, whole or mangled: each is in the preview once, and what can be taken makes a change that the
// catalogue takes.
RC_GTEST_PROP(PriceList, AnyRowsAreKeptAndWhatCanBeTakenIsTaken, ()) {
  const auto cell = [](std::vector<std::string> words) { return rc::gen::elementOf(std::move(words)); };
  const auto rows =
      *rc::gen::container<std::vector<std::tuple<std::string, std::string, std::string, std::string>>>(rc::gen::tuple(
          cell({"unit-a", "unit-b", "gone", "bare", "own-stone", "A-100", "B 7", "nobody", ""}),
          cell({"4.95", "10.00", "0", "-1", "1e3", "99999999", "", "\"1,000.50\"", "$7"}),
          cell({"sq ft", "sf", "ea", "piece", "ton", ""}), cell({"", "2025-01-01", "2026-09-09", "2026-9-9", "soon"})));
  std::string text = "item,price,per,date\n";
  for (const auto& [number, price, per, date] : rows) text += number + "," + price + "," + per + "," + date + "\n";
  const catalogue::Stock stock = small();
  const auto list = read_price_list(text, "x.csv", stock, today);
  const auto empty = [](const auto& row) {
    return row == std::tuple<std::string, std::string, std::string, std::string>();
  };
  const auto full = static_cast<std::size_t>(std::ranges::count_if(rows, std::not_fn(empty)));
  RC_ASSERT(list.has_value() == (full > 0));
  if (!list) return;
  RC_ASSERT(list->rows.size() == full);
  std::vector<std::size_t> all;
  std::size_t taken = 0;
  for (std::size_t i = 0; i < full; ++i) {
    all.push_back(i);
    if (list->rows[i].can_be_taken()) ++taken;
    RC_ASSERT(!list->rows[i].can_be_taken() || list->rows[i].before != list->rows[i].after);
  }
  const auto change = price_change(stock, *list, all);
  RC_ASSERT(change.steps.size() == taken);
  RC_ASSERT(catalogue::changed(stock, change).has_value());
}

}  // namespace
}  // namespace files
