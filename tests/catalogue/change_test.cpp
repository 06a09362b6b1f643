// What a change of the catalogue refuses so that nothing offered names what is retired, and so that each entry can be
// told from every other.
#include "catalogue/change.h"

#include <gtest/gtest.h>

namespace catalogue {
namespace {

Item priced(const Id& id, const std::string& kind, const Id& supplier = {}) {
  Item item;
  item.id = id;
  item.kind = kind;
  item.name.en = id;
  item.unit = kind == "labour" ? "hour" : "piece";
  item.supplier = supplier;
  item.price = Price{units::Money::of_coins(5600), item.unit, "2026-01-02", false};
  return item;
}

Rate rate(const std::string& crew) {
  Rate rate;
  rate.id = "lay-units";
  rate.stage = "paving";
  rate.si_unit = "m2";
  rate.hours_per_si_unit = 0.5;
  rate.crew = crew;
  return rate;
}

Stock stock_of(const std::vector<Entry>& all) {
  Change change;
  for (const Entry& entry : all) change.steps.push_back({std::nullopt, Kept{entry, false}});
  return changed({}, change).value();
}

std::string retire(const Stock& stock, const Key& key) {
  Kept kept = find(stock, key).value();
  const Kept before = kept;
  kept.retired = true;
  const auto after = changed(stock, {{{before, kept}}, "typed"});
  return after ? "" : after.error().code + ": " + problem::sentence(after.error());
}

TEST(CatalogueChange, WhoIsInACrewIsNotRetiredWhileTheRateIsOffered) {
  const Stock stock = stock_of({priced("lab-layer", "labour"), priced("lab-labourer", "labour"),
                                priced("lab-mason", "labour"), rate("1 lab-layer + 1/2 lab-labourer")});
  const std::string layer = retire(stock, {0, "lab-layer"});
  EXPECT_NE(layer.find("catalogue-retired"), std::string::npos) << layer;
  EXPECT_NE(layer.find("lab-layer is retired, but lay-units needs it"), std::string::npos) << layer;
  EXPECT_NE(retire(stock, {0, "lab-labourer"}), "") << "the last word of the crew counts too";
  EXPECT_EQ(retire(stock, {0, "lab-mason"}), "") << "no crew names it";
  EXPECT_EQ(retire(stock_of({priced("lab-layer", "labour"), rate("1 lab-layerer")}), {0, "lab-layer"}), "")
      << "a word that only begins so is another one";
}

TEST(CatalogueChange, ARateThatIsRetiredLetsItsCrewGo) {
  const Stock stock = stock_of({priced("lab-layer", "labour"), rate("1 lab-layer")});
  const Kept gone_rate{rate("1 lab-layer"), true};
  const auto after =
      changed(stock, {{{Kept{rate("1 lab-layer"), false}, gone_rate},
                       {Kept{priced("lab-layer", "labour"), false}, Kept{priced("lab-layer", "labour"), true}}},
                      "typed"});
  ASSERT_TRUE(after) << problem::sentence(after.error());
  const auto back = changed(*after, {{{gone_rate, Kept{rate("1 lab-layer"), false}}}, "typed"});
  ASSERT_FALSE(back) << "it would be offered with a crew that is not";
  EXPECT_EQ(back.error().code, "catalogue-retired");
}

// Its deliveries are priced by it: without it what it sells would come for nothing.
TEST(CatalogueChange, ASupplierIsNotRetiredWhileItsItemsAreOffered) {
  Supplier yard;
  yard.id = "unit-yard";
  const Stock stock = stock_of({yard, priced("unit-a", "paving-unit", "unit-yard")});
  EXPECT_NE(retire(stock, {5, "unit-yard"}), "");
  EXPECT_EQ(retire(stock_of({yard, priced("unit-a", "paving-unit")}), {5, "unit-yard"}), "");
}

TEST(CatalogueChange, AListThatHasAHoldPointTwiceBringsItOnce) {
  Catalogue wanted;
  const HoldPoint pipe{"under-ground", "pipe bedded", "", "it is covered", "crew lead", "a rule", "pipe"};
  HoldPoint twin = pipe;
  twin.who = "inspector";
  wanted.hold_points = {pipe, twin};
  const auto after = changed({}, change_to({}, wanted, "job.json"));
  ASSERT_TRUE(after) << problem::sentence(after.error());
  ASSERT_EQ(after->all.hold_points.size(), 1U);
  EXPECT_EQ(after->all.hold_points[0].who, "crew lead");
}

// "dig: a" with "b" and "dig" with "a: b" would be one key.
TEST(CatalogueChange, AStageIsAWordSoThatKeysDiffer) {
  EXPECT_EQ(check(Entry(HoldPoint{"dig: a", "b", "", "", "", "", ""})).error().text, "hold point: it has no stage");
  EXPECT_FALSE(check(Entry(Caution{"", "look out", "", "", ""})));
  EXPECT_TRUE(check(Entry(Caution{"dig", "look out: edge", "", "", ""})));
}

}  // namespace
}  // namespace catalogue
