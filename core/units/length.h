// Lengths on the house's grid: whole steps of 1/320 mm in an int64.
// 1/64 in = 127 steps and 1 mm = 320 steps, so inches and millimetres are both exact. Everything that is typed or drawn
// is a Length; what is computed from it is a Quantity. One step is 3.125 micrometres; the range is +-28 million km.
#pragma once

#include <compare>
#include <concepts>
#include <cstdint>

#include "units/quantity.h"

namespace units {

class Length {
 public:
  constexpr Length() = default;

  static constexpr std::int64_t steps_per_millimetre = 320;
  static constexpr std::int64_t steps_per_inch = 8128;  // 25.4 x 320
  static constexpr double steps_per_metre = 320000.0;

  static constexpr Length of_steps(std::int64_t steps) { return Length(steps); }
  static constexpr Length millimetres(std::int64_t count) { return Length(count * steps_per_millimetre); }
  static constexpr Length inches(std::int64_t count) { return Length(count * steps_per_inch); }
  static constexpr Length inch_64ths(std::int64_t count) { return Length(count * steps_per_inch / 64); }
  static constexpr Length feet(std::int64_t count) { return Length(count * steps_per_inch * 12); }
  // The nearest step, halves away from zero. The value must be finite and within +-1e12 m.
  static Length nearest(Metres metres);

  constexpr std::int64_t steps() const { return steps_; }
  constexpr Metres metres() const { return Metres(static_cast<double>(steps_) / steps_per_metre); }
  constexpr double inches() const { return static_cast<double>(steps_) / static_cast<double>(steps_per_inch); }
  constexpr double millimetres() const {
    return static_cast<double>(steps_) / static_cast<double>(steps_per_millimetre);
  }

  constexpr Length operator-() const { return Length(-steps_); }
  constexpr Length& operator+=(Length other) {
    steps_ += other.steps_;
    return *this;
  }
  constexpr Length& operator-=(Length other) {
    steps_ -= other.steps_;
    return *this;
  }
  friend constexpr Length operator+(Length a, Length b) { return a += b; }
  friend constexpr Length operator-(Length a, Length b) { return a -= b; }
  // Whole multiples only: a Length times 2.5 does not compile, because it would have to round.
  template <std::integral Count>
  friend constexpr Length operator*(Length a, Count times) {
    return Length(a.steps_ * static_cast<std::int64_t>(times));
  }
  template <std::integral Count>
  friend constexpr Length operator*(Count times, Length a) {
    return a * times;
  }
  friend constexpr SquareMetres operator*(Length a, Length b) { return a.metres() * b.metres(); }
  friend constexpr double operator/(Length a, Length b) {
    return static_cast<double>(a.steps_) / static_cast<double>(b.steps_);
  }
  constexpr auto operator<=>(const Length&) const = default;

 private:
  explicit constexpr Length(std::int64_t steps) : steps_(steps) {}
  std::int64_t steps_ = 0;
};

}  // namespace units
