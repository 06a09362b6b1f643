#include "units/quantity.h"

#include <gtest/gtest.h>

#include <functional>
#include <type_traits>

#include "units/amount.h"
#include "units/angle.h"
#include "units/length.h"
#include "units/money.h"

namespace {

using namespace units;

template <class Operation, class A, class B>
constexpr bool allowed = std::is_invocable_v<Operation, A, B>;
using Plus = std::plus<>;
using Minus = std::minus<>;
using Times = std::multiplies<>;
using Over = std::divides<>;
using Less = std::less<>;

// What is allowed, so that the refusals below are not empty.
static_assert(allowed<Plus, Length, Length> && allowed<Times, Length, Length> && allowed<Over, Length, Length>);
static_assert(allowed<Times, Length, int> && allowed<Times, std::int64_t, Length>);
static_assert(std::is_same_v<decltype(Length() * Length()), SquareMetres>);
static_assert(std::is_same_v<decltype(Metres() * SquareMetres()), CubicMetres>);
static_assert(std::is_same_v<decltype(CubicMetres() * KilogramsPerCubicMetre()), Kilograms>);
static_assert(std::is_same_v<decltype(SquareMetres() / SquareMetres()), double>);
static_assert(std::is_same_v<decltype(CubicMetres() / Metres()), SquareMetres>);
static_assert(allowed<Plus, Money, Money> && allowed<Minus, Money, Money>);

// Sums and comparisons of unlike quantities do not compile.
static_assert(!allowed<Plus, Length, SquareMetres> && !allowed<Plus, SquareMetres, Length>);
static_assert(!allowed<Plus, Metres, SquareMetres> && !allowed<Minus, CubicMetres, SquareMetres>);
static_assert(!allowed<Plus, Kilograms, CubicMetres> && !allowed<Plus, Kilograms, KilogramsPerCubicMetre>);
static_assert(!allowed<Plus, Length, Metres> && !allowed<Less, Length, Metres>);
static_assert(!allowed<Less, Metres, SquareMetres> && !allowed<Less, Kilograms, CubicMetres>);
static_assert(!allowed<Plus, Length, double> && !allowed<Plus, double, Length> && !allowed<Plus, Length, int>);
static_assert(!allowed<Plus, Metres, double> && !allowed<Less, Metres, double> && !allowed<Less, Length, int>);
static_assert(!allowed<Plus, Angle, double> && !allowed<Plus, Angle, Length>);

// A length is multiplied by whole numbers only, money by nothing: `times` is the one place that rounds.
static_assert(!allowed<Times, Length, double> && !allowed<Times, double, Length> && !allowed<Over, Length, double>);
static_assert(!allowed<Times, Money, Money> && !allowed<Times, Money, double> && !allowed<Times, Money, int>);
static_assert(!allowed<Over, Money, Money> && !allowed<Over, Money, double>);
static_assert(!allowed<Plus, Money, Length> && !allowed<Plus, Money, int> && !allowed<Less, Money, int>);

// Nothing becomes a quantity, or stops being one, unasked.
static_assert(!std::is_convertible_v<double, Length> && !std::is_convertible_v<int, Length>);
static_assert(!std::is_constructible_v<Length, double> && !std::is_constructible_v<Length, int>);
static_assert(!std::is_convertible_v<double, Metres> && !std::is_convertible_v<Metres, double>);
static_assert(!std::is_convertible_v<Metres, Length> && !std::is_convertible_v<Length, Metres>);
static_assert(!std::is_convertible_v<double, Money> && !std::is_constructible_v<Money, double>);
static_assert(!std::is_constructible_v<Money, int> && !std::is_convertible_v<Money, double>);
static_assert(!std::is_convertible_v<double, Angle> && !std::is_constructible_v<Angle, double>);
static_assert(!std::is_convertible_v<Metres, SquareMetres> && !std::is_constructible_v<SquareMetres, Metres>);

TEST(Conversions, FootAndInchAreExact) {
  // International foot 0.3048 m, inch 25.4 mm by definition (1959); 1/64 in = 0.396875 mm = 127 steps of 1/320 mm.
  EXPECT_EQ(metres_per_foot, 0.3048);
  EXPECT_EQ(metres_per_inch, 0.0254);
  EXPECT_EQ(Length::feet(1), Length::inches(12));
  EXPECT_EQ(Length::feet(10).steps() * 10, Length::millimetres(30480).steps());
  EXPECT_EQ(Length::inches(10), Length::millimetres(254));
  EXPECT_EQ(Length::inch_64ths(1).steps(), 127);
  EXPECT_EQ(Length::feet(1).metres().si(), 0.3048);
  EXPECT_EQ(Length::inches(1).metres().si(), 0.0254);
}

TEST(Conversions, VolumesArePublishedCubes) {
  // Volume table (geocities.ws/qxb4tech/volume.html): cu ft 0.028316846592 m3, cu yd 0.764554857984 m3.
  // In whole numbers: 3048^3 = 28316846592 and 9144^3 = 764554857984, each over 10^12.
  static_assert(3048LL * 3048 * 3048 == 28316846592LL);
  static_assert(9144LL * 9144 * 9144 == 764554857984LL);
  EXPECT_EQ(cubic_metres_per_cubic_foot, 28316846592.0 / 1e12);
  EXPECT_EQ(cubic_metres_per_cubic_yard, 764554857984.0 / 1e12);
  EXPECT_DOUBLE_EQ(cubic_metres_per_cubic_yard, 27 * cubic_metres_per_cubic_foot);
  EXPECT_DOUBLE_EQ(square_metres_per_square_foot, 0.09290304);  // 3048^2 = 9290304, over 10^8
  static_assert(3048LL * 3048 == 9290304LL);
}

TEST(Conversions, GallonsAreTwoHundredThirtyOneCubicInches) {
  // Units appendix (yumpu.com 67962081, appendix C): 231 cu in exactly. Volumes (math.com): 1 gal = 128 fl oz.
  // 231 x 254^3 = 3785411784, over 10^12 m3; 231 / 128 = 1.8046875 cu in = 29.5735295625 mL.
  static_assert(231LL * 254 * 254 * 254 == 3785411784LL);
  EXPECT_EQ(cubic_metres_per_gallon, 3785411784.0 / 1e12);
  EXPECT_DOUBLE_EQ(cubic_metres_per_fluid_ounce, 29.5735295625e-6);
  EXPECT_DOUBLE_EQ(cubic_metres_per_fluid_ounce, 1.8046875 * 0.0254 * 0.0254 * 0.0254);
  EXPECT_DOUBLE_EQ(cubic_metres_per_cubic_foot / cubic_metres_per_gallon, 1728.0 / 231);
  EXPECT_NEAR(cubic_metres_per_cubic_foot / cubic_metres_per_gallon, 7.480519, 5e-7);  // printed to 6 decimals
}

TEST(Conversions, PoundsAndTons) {
  // International pound 0.45359237 kg (NIST SP 811, from memory); short ton = 2000 lb = 907.18474 kg.
  EXPECT_EQ(kilograms_per_pound, 0.45359237);
  EXPECT_EQ(kilograms_per_short_ton, 907.18474);
  EXPECT_DOUBLE_EQ(kilograms_per_short_ton, 2000 * kilograms_per_pound);
  // Derived: 0.45359237 / 0.028316846592 = 16.0184634 kg/m3 and 907.18474 / 0.764554857984 = 1186.55284 kg/m3,
  // each to its last printed place.
  EXPECT_NEAR(kilograms_per_pound / cubic_metres_per_cubic_foot, 16.0184634, 5e-8);
  EXPECT_NEAR(kilograms_per_short_ton / cubic_metres_per_cubic_yard, 1186.55284, 5e-6);
}

TEST(Quantity, ArithmeticFollowsThePowers) {
  const SquareMetres area = Length::millimetres(2000) * Length::millimetres(3500);
  EXPECT_EQ(area.si(), 7.0);  // 2 m x 3.5 m
  const Kilograms mass = area * Metres(0.5) * KilogramsPerCubicMetre(2300);
  EXPECT_EQ(mass.si(), 8050.0);  // 7 x 0.5 x 2300
  EXPECT_EQ((mass / KilogramsPerCubicMetre(2300) / Metres(0.5)).si(), 7.0);
  EXPECT_EQ((area + area - area / 2.0).si(), 10.5);
  EXPECT_EQ((-area).si(), -7.0);
  EXPECT_LT(area, 1.01 * area);
}

TEST(Amount, NamesOfUnits) {
  EXPECT_EQ(name(piece), "piece");
  EXPECT_EQ(name(metre), "m");
  EXPECT_EQ(name(square_metre), "m2");
  EXPECT_EQ(name(cubic_metre), "m3");
  EXPECT_EQ(name(kilogram), "kg");
  EXPECT_EQ(name(hour), "h");
  EXPECT_EQ(name(kilogram_per_cubic_metre), "kg/m3");
  EXPECT_EQ(name(hour / square_metre), "h/m2");
  EXPECT_EQ(name(piece / metre), "1/m");
  EXPECT_EQ(name(kilogram / square_metre), "kg/m2");
  EXPECT_EQ(name(cubic_metre / hour), "m3/h");
  EXPECT_EQ(name(kilogram * metre), "kg*m");
  EXPECT_EQ(name(kilogram / metre / hour), "kg/m/h");
  EXPECT_EQ(cubic_metre * kilogram_per_cubic_metre, kilogram);
}

}  // namespace
