#include "estimate/own_unit.h"

#include "estimate/estimate_kit.h"

namespace {

using namespace estimate_kit;
using estimate::in_own_unit;

double own(const std::string& item, double value, units::Unit unit) {
  const auto made = in_own_unit(amount(value, unit), *starter().item(item), 8);
  EXPECT_TRUE(made.has_value()) << (made ? "" : problem::sentence(made.error()));
  if (!made) return -1;
  EXPECT_EQ(made->amount().unit, units::piece);
  return made->amount().value;
}

TEST(OwnUnit, WeightByTheShortTon) {
  // 2000 lb x 0.45359237 = 907.18474 kg, exact; not the rounded mass of the catalogue's row.
  EXPECT_DOUBLE_EQ(own("agg-no57", 907.18474, units::kilogram), 1);
  // Placed: 10 m3 x 1650 kg/m3 = 16500 kg = 18.188 short tons.
  EXPECT_NEAR(own("agg-no57", 10, units::cubic_metre), 16500 / 907.18474, 1e-12);
}

TEST(OwnUnit, AnAggregateByVolumeIsDeliveredLoose) {
  // US Navy figures for sand, 100 bank -> 111 loose -> 95 compacted: a placed yard is 111/95 loose ones.
  catalogue::Item sand = *starter().item("agg-sand-c33");
  sand.unit = "cu yd";
  sand.details["compacted_density_kg_m3"] = "1665";
  sand.details["loose_density_kg_m3"] = "1425";  // 1665 x 95 / 111
  constexpr double yard = 0.764554857984;
  const auto made = in_own_unit(amount(yard, units::cubic_metre), sand, 8);
  ASSERT_TRUE(made);
  EXPECT_NEAR(made->amount().value, 111.0 / 95, 1e-12);
  const auto weighed = in_own_unit(amount(1665 * yard, units::kilogram), sand, 8);
  ASSERT_TRUE(weighed);
  EXPECT_NEAR(weighed->amount().value, 111.0 / 95, 1e-12);
}

TEST(OwnUnit, BagsByMassAndByVolume) {
  EXPECT_DOUBLE_EQ(own("joint-polymer", 22.68 * 3, units::kilogram), 3);
  // 1 m3 x 1600 kg/m3 loose / 22.68 kg a bag.
  EXPECT_NEAR(own("joint-polymer", 1, units::cubic_metre), 1600 / 22.68, 1e-9);
  // 0.60 cu ft a bag: 16.9901 litres.
  EXPECT_NEAR(own("conc-bag-80", 0.0169901 * 7, units::cubic_metre), 7, 1e-12);
}

TEST(OwnUnit, LengthsOfStockAndRolls) {
  EXPECT_NEAR(own("rod-5_8", 102.14 * 0.3048, units::metre), 1.0214, 1e-12);        // coils of 100 ft
  EXPECT_NEAR(own("pipe-smooth-4", 61.449 * 0.3048, units::metre), 6.1449, 1e-12);  // sticks of 10 ft
  EXPECT_NEAR(own("fabric-nw-12", 109.728 * 2.5, units::metre), 2.5, 1e-12);        // a roll of 360 ft
  EXPECT_NEAR(own("mesh-5x10", 3.048 * 1.524 * 4, units::square_metre), 4, 1e-12);  // sheets of 5 x 10 ft
}

TEST(OwnUnit, TubesByTheirVolume) {
  // 29 US fl oz = 29 x 231 / 128 cu in = 52.336 cu in; 1/2 x 1/4 in joint: 52.336 / 0.125 / 12 = 34.89 ft a tube.
  EXPECT_NEAR(own("seal-tube-29", 34.8906 * 0.3048 * 0.0127 * 0.00635, units::cubic_metre), 1, 1e-5);
}

TEST(OwnUnit, TimeByTheDay) {
  EXPECT_DOUBLE_EQ(own("plate-rev", 20, units::hour), 2.5);  // days of 8 h
  EXPECT_DOUBLE_EQ(own("plate-rev", 2, units::piece), 2);    // days already
  EXPECT_DOUBLE_EQ(own("lab-layer", 20, units::hour), 20);
}

TEST(OwnUnit, ConversionsLeadBackToTheirField) {
  const auto made = in_own_unit(amount(10, units::cubic_metre), *starter().item("agg-no57"), 8);
  ASSERT_TRUE(made);
  std::vector<std::string> fields;
  for (const auto& term : made->terms()) fields.push_back(term.of);
  EXPECT_EQ(fields, (std::vector<std::string>{"A1", "agg-no57/compacted_density_kg_m3", "agg-no57/unit"}));
}

TEST(OwnUnit, WhatTheDataDoNotSayIsAProblem) {
  for (const auto& [item, unit] : std::vector<std::pair<std::string, units::Unit>>{{"spout-6", units::metre},
                                                                                   {"agg-no57", units::square_metre},
                                                                                   {"agg-no57", units::piece},
                                                                                   {"lab-layer", units::piece},
                                                                                   {"seal-primer", units::metre}}) {
    const auto made = in_own_unit(amount(1, unit), *starter().item(item), 8);
    ASSERT_FALSE(made) << item;
    EXPECT_EQ(made.error().code, "unit-unknown");
    EXPECT_NE(made.error().text.find(item), std::string::npos);
  }
}

}  // namespace
