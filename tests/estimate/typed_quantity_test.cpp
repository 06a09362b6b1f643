// Quantities as people write them.
#include "estimate/typed_quantity.h"

#include <gtest/gtest.h>

namespace {

using estimate::read_quantity;

TEST(TypedQuantity, ReadsNumbersWithAndWithoutTheirUnit) {
  EXPECT_EQ(read_quantity("12", "ton").value(), 12);
  EXPECT_EQ(read_quantity(" 12.5 tons ", "ton").value(), 12.5);
  EXPECT_EQ(read_quantity("0", "piece").value(), 0);
  EXPECT_EQ(read_quantity("40 pieces", "piece").value(), 40);
  EXPECT_EQ(read_quantity("3.5 h", "h").value(), 3.5);
}

TEST(TypedQuantity, TurnsUnitsOfOneSortIntoTheLines) {
  EXPECT_NEAR(read_quantity("5 t", "ton").value(), 5000 / 907.18474, 1e-12);
  EXPECT_NEAR(read_quantity("2 cu yd", "m3").value(), 2 * 0.764554857984, 1e-12);
  EXPECT_NEAR(read_quantity("27 cu ft", "cu yd").value(), 1, 1e-12);
  EXPECT_EQ(read_quantity("12' 6\"", "ft").value(), 12.5);
  EXPECT_EQ(read_quantity("3.81 m", "ft").value(), 12.5);  // 3.81 / 0.3048
  EXPECT_EQ(read_quantity("38 cm", "m").value(), 0.38);
}

TEST(TypedQuantity, RefusesWhatIsNoQuantityOfTheLine) {
  for (const char* text : {"", "ton", "-3", "1,5", "nan", "three"})
    EXPECT_EQ(read_quantity(text, "ton").error().code, "quantity-number") << text;
  for (const char* text : {"3 cu yd", "3 apples", "3 h", "1e3"})
    EXPECT_EQ(read_quantity(text, "ton").error().code, "quantity-unit") << text;
  EXPECT_EQ(read_quantity("3 ton", "pack").error().code, "quantity-unit");
  EXPECT_FALSE(read_quantity("-3 ft", "ft"));
  EXPECT_FALSE(read_quantity("3 t", "ft"));
}

}  // namespace
