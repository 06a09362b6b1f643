// Derived quantities: SI doubles in strong types, so that a wrong mix does not compile.
// Quantity<M, Kg> is metres to the power M times kilograms to the power Kg. Adding needs equal powers; products and
// quotients add and subtract them. A Quantity<0, 0> is a plain double.
#pragma once

#include <compare>

namespace units {

template <int M, int Kg>
class Quantity {
 public:
  constexpr Quantity() = default;
  explicit constexpr Quantity(double si) : si_(si) {}

  constexpr double si() const { return si_; }

  constexpr Quantity operator-() const { return Quantity(-si_); }
  constexpr Quantity& operator+=(Quantity other) {
    si_ += other.si_;
    return *this;
  }
  constexpr Quantity& operator-=(Quantity other) {
    si_ -= other.si_;
    return *this;
  }
  friend constexpr Quantity operator+(Quantity a, Quantity b) { return a += b; }
  friend constexpr Quantity operator-(Quantity a, Quantity b) { return a -= b; }
  friend constexpr Quantity operator*(Quantity a, double times) { return Quantity(a.si_ * times); }
  friend constexpr Quantity operator*(double times, Quantity a) { return a * times; }
  friend constexpr Quantity operator/(Quantity a, double parts) { return Quantity(a.si_ / parts); }
  constexpr auto operator<=>(const Quantity&) const = default;

 private:
  double si_ = 0;
};

template <int M, int Kg>
struct QuantityOrNumber {
  using type = Quantity<M, Kg>;
};
template <>
struct QuantityOrNumber<0, 0> {
  using type = double;
};

template <int M1, int Kg1, int M2, int Kg2>
constexpr auto operator*(Quantity<M1, Kg1> a, Quantity<M2, Kg2> b) {
  return typename QuantityOrNumber<M1 + M2, Kg1 + Kg2>::type(a.si() * b.si());
}
template <int M1, int Kg1, int M2, int Kg2>
constexpr auto operator/(Quantity<M1, Kg1> a, Quantity<M2, Kg2> b) {
  return typename QuantityOrNumber<M1 - M2, Kg1 - Kg2>::type(a.si() / b.si());
}

using Metres = Quantity<1, 0>;
using SquareMetres = Quantity<2, 0>;
using CubicMetres = Quantity<3, 0>;
using Kilograms = Quantity<0, 1>;
using KilogramsPerCubicMetre = Quantity<-3, 1>;

// Exact by definition (international yard and pound, 1959): foot 0.3048 m, inch 0.0254 m, pound 0.45359237 kg,
// short ton 2000 lb, US gallon 231 cubic inches, US fluid ounce 1/128 of it.
inline constexpr double metres_per_inch = 0.0254;
inline constexpr double metres_per_foot = 0.3048;
inline constexpr double square_metres_per_square_foot = metres_per_foot * metres_per_foot;
inline constexpr double cubic_metres_per_cubic_foot = 0.028316846592;
inline constexpr double cubic_metres_per_cubic_yard = 0.764554857984;
inline constexpr double cubic_metres_per_gallon = 0.003785411784;
inline constexpr double cubic_metres_per_fluid_ounce = cubic_metres_per_gallon / 128;
inline constexpr double kilograms_per_pound = 0.45359237;
inline constexpr double kilograms_per_short_ton = 907.18474;
// Standard gravity (CGPM 1901) and the pound-force that follows from it.
inline constexpr double gravity_m_s2 = 9.80665;
inline constexpr double newtons_per_pound = kilograms_per_pound * gravity_m_s2;

}  // namespace units
