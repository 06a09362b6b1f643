// Looking things up, and telling two catalogues apart.
#include "catalogue/catalogue.h"

#include <gtest/gtest.h>

namespace catalogue {
namespace {

using units::Length;

Catalogue small() {
  Catalogue catalogue;
  Item item;
  item.id = "unit";
  catalogue.items["unit"] = std::make_shared<const Item>(item);
  catalogue.patterns["stack"].id = "stack";
  catalogue.build_ups["foot"].id = "foot";
  catalogue.rates["lay"].hours_per_si_unit = 0.34;
  const auto limit = [&](const char* id, std::optional<double> usual, const char* unit) {
    catalogue.limits[id].usual = usual;
    catalogue.limits[id].unit = unit;
  };
  limit("joint", 0.125, "in");
  limit("dig", 5, "ft");
  limit("lap", 1000, "mm");
  limit("share", 1.0 / 3, "share");
  limit("open", std::nullopt, "in");
  return catalogue;
}

TEST(Catalogue, FindsOrSaysNothing) {
  const Catalogue catalogue = small();
  EXPECT_EQ(catalogue.item("unit")->id, "unit");
  EXPECT_EQ(catalogue.item("other"), nullptr);
  EXPECT_EQ(catalogue.pattern("stack")->id, "stack");
  EXPECT_EQ(catalogue.pattern(""), nullptr);
  EXPECT_EQ(catalogue.build_up("foot")->id, "foot");
  EXPECT_EQ(catalogue.build_up("drive"), nullptr);
  EXPECT_EQ(catalogue.rate("lay")->hours_per_si_unit, 0.34);
  EXPECT_EQ(catalogue.rate("dig"), nullptr);
}

TEST(Catalogue, LimitsAsLengthsAndNumbers) {
  const Catalogue catalogue = small();
  const Length otherwise = Length::millimetres(7);
  EXPECT_EQ(catalogue.length_limit("joint", otherwise), Length::inch_64ths(8));
  EXPECT_EQ(catalogue.length_limit("dig", otherwise), Length::feet(5));
  EXPECT_EQ(catalogue.length_limit("lap", otherwise), Length::millimetres(1000));
  EXPECT_EQ(catalogue.length_limit("share", otherwise), otherwise);  // no length
  EXPECT_EQ(catalogue.length_limit("open", otherwise), otherwise);   // no usual value
  EXPECT_EQ(catalogue.length_limit("none", otherwise), otherwise);
  EXPECT_EQ(catalogue.number_limit("share", 0.5), 1.0 / 3);
  EXPECT_EQ(catalogue.number_limit("open", 0.5), 0.5);
  EXPECT_EQ(catalogue.number_limit("none", 0.5), 0.5);
}

TEST(Catalogue, SameIsByValue) {
  const Catalogue one = small();
  Catalogue other = small();
  EXPECT_NE(one.items.at("unit"), other.items.at("unit"));  // two objects
  EXPECT_TRUE(same(one, other));
  Item changed = *other.items.at("unit");
  changed.notes = "other";
  other.items["unit"] = std::make_shared<const Item>(changed);
  EXPECT_FALSE(same(one, other));
  other = small();
  other.items["more"] = other.items["unit"];
  EXPECT_FALSE(same(one, other));
  other = small();
  other.limits["joint"].usual = 0.25;
  EXPECT_FALSE(same(one, other));
  other = small();
  other.cautions.push_back({});
  EXPECT_FALSE(same(one, other));
}

}  // namespace
}  // namespace catalogue
