// Items that can't be are refused, each with its reason and mend.
#include <gtest/gtest.h>

#include <cmath>

#include "catalogue/catalogue.h"

namespace catalogue {
namespace {

using units::Length;
using units::Money;

Item good_item() {
  Item item;
  item.id = "unit-4x8";
  item.kind = "paving-unit";
  item.name = {"Unit", "Adoquín"};
  item.unit = "piece";
  item.length = Length::inches(8);
  item.width = Length::inches(4);
  item.joint = Length();
  item.mass_kg = 2.7;
  item.void_share = 0.0;
  item.pack = {"pallet", 45, 10, 450};
  item.price = Price{Money::of_coins(495), "sq ft", "2024-02-29", false};
  item.breakage = 0.03;
  return item;
}

// The code of the refusal, and the sentence has a mend.
std::string refusal(const Item& item) {
  const auto good = check(item);
  if (good) return "";
  EXPECT_FALSE(good.error().text.empty());
  EXPECT_FALSE(good.error().mend.empty()) << good.error().text;
  return good.error().code;
}

template <class Change>
std::string refused_when(Change change) {
  Item item = good_item();
  change(item);
  return refusal(item);
}

TEST(Check, AGoodItemPasses) { EXPECT_EQ(refusal(good_item()), ""); }

TEST(Check, Names) {
  for (const char* id : {"", "Unit", "a b", "-a", "a/b", "ñ", "a\n"})
    EXPECT_EQ(refused_when([&](Item& item) { item.id = id; }), "item-id") << id;
  EXPECT_EQ(refused_when([](Item& item) { item.id = "rod-1-1_4.5"; }), "");
  EXPECT_EQ(refused_when([](Item& item) { item.kind = "brick"; }), "item-kind");
  EXPECT_EQ(refused_when([](Item& item) { item.details["a b"] = "1"; }), "item-detail");
}

TEST(Check, Sizes) {
  EXPECT_EQ(refused_when([](Item& item) { item.length = Length(); }), "item-length");
  EXPECT_EQ(refused_when([](Item& item) { item.width = Length::inches(-4); }), "item-width");
  EXPECT_EQ(refused_when([](Item& item) { item.height = Length(); }), "item-height");
  EXPECT_EQ(refused_when([](Item& item) { item.joint = Length::of_steps(-1); }), "item-joint");
  EXPECT_EQ(refused_when([](Item& item) { item.mass_kg = 0; }), "item-mass");
  EXPECT_EQ(refused_when([](Item& item) { item.mass_kg = NAN; }), "item-mass");
  EXPECT_EQ(refused_when([](Item& item) { item.density_kg_m3 = -1; }), "item-density");
  EXPECT_EQ(refused_when([](Item& item) { item.void_share = 1; }), "item-void");
  EXPECT_EQ(refused_when([](Item& item) { item.breakage = 1.01; }), "item-breakage");
  EXPECT_EQ(refused_when([](Item& item) { item.breakage = -0.01; }), "item-breakage");
  EXPECT_EQ(refused_when([](Item& item) { item.breakage = NAN; }), "item-breakage");
}

TEST(Check, Packs) {
  EXPECT_EQ(refused_when([](Item& item) { item.pack.pieces = -1; }), "item-pack");
  EXPECT_EQ(refused_when([](Item& item) { item.pack.pieces = 449; }), "item-pack");
  EXPECT_EQ(refused_when([](Item& item) { item.pack = {"pallet", 1 << 20, 1 << 20, 1}; }), "item-pack");
  EXPECT_EQ(refused_when([](Item& item) { item.contents = {{"a", 0}}; }), "item-contents");
  EXPECT_EQ(refused_when([](Item& item) { item.contents = {{"a", 1}, {"b", 2}}; }), "item-pack");
  EXPECT_EQ(refused_when([](Item& item) { item.contents = {{"a", 100}, {"b", 350}}; }), "");
  EXPECT_EQ(refused_when([](Item& item) { item.kind = "mixed-pack"; }), "item-contents");
}

TEST(Check, Prices) {
  const auto priced = [](std::int64_t coins, const char* kind, bool by_others) {
    return refused_when([&](Item& item) {
      item.kind = kind;
      item.price = Price{Money::of_coins(coins), "piece", "", by_others};
    });
  };
  EXPECT_EQ(priced(0, "paving-unit", false), "item-price");
  EXPECT_EQ(priced(0, "paving-unit", true), "");
  EXPECT_EQ(priced(-1, "paving-unit", false), "item-price");
  EXPECT_EQ(priced(-1, "paving-unit", true), "item-price");
  EXPECT_EQ(priced(-2800, "credit", false), "");
  EXPECT_EQ(priced(-2800, "deposit", false), "");
  EXPECT_EQ(refused_when([](Item& item) { item.price->unit = ""; }), "item-price-unit");
  EXPECT_EQ(refused_when([](Item& item) { item.price.reset(); }), "");
  for (const char* date : {"2025-02-29", "2025-13-01", "2025-3-1", "01/03/2025", "2025-00-10", "2025-04-31"})
    EXPECT_EQ(refused_when([&](Item& item) { item.price->date = date; }), "item-date") << date;
}

TEST(Check, AFactorBesideTwoDensities) {
  // Sand of 1776 in place and 1520 loose: 1776 / 1520 = 1.1684.
  const auto sand = [](const char* factor) {
    return refused_when([&](Item& item) {
      item.details = {
          {"loose_density_kg_m3", "1520"}, {"compacted_density_kg_m3", "1776"}, {"loose_per_compacted", factor}};
    });
  };
  EXPECT_EQ(sand("1.1684"), "");
  EXPECT_EQ(sand("1.15"), "item-factor");
  EXPECT_EQ(sand("none"), "item-factor");
  EXPECT_EQ(sand(""), "");
  EXPECT_EQ(refused_when([](Item& item) { item.details = {{"loose_density_kg_m3", "0"}}; }), "item-factor");
  EXPECT_EQ(refused_when([](Item& item) { item.details = {{"loose_per_compacted", "1.15"}}; }), "");
}

}  // namespace
}  // namespace catalogue
