// An angle, counter-clockwise positive. Kept in degrees, as people type it, so that 45 stays 45.
#pragma once

#include <compare>
#include <numbers>

namespace units {

class Angle {
 public:
  constexpr Angle() = default;
  static constexpr Angle degrees(double degrees) { return Angle(degrees); }
  constexpr double degrees() const { return degrees_; }
  constexpr double radians() const { return degrees_ * std::numbers::pi / 180; }
  constexpr auto operator<=>(const Angle&) const = default;
  friend constexpr Angle operator+(Angle a, Angle b) { return Angle(a.degrees_ + b.degrees_); }

 private:
  explicit constexpr Angle(double degrees) : degrees_(degrees) {}
  double degrees_ = 0;
};

// Cosine and sine, exact at whole quarter turns, so that a job turned by 90 degrees gives the very same layout.
struct Turn {
  double cosine = 1;
  double sine = 0;
};
Turn turn(Angle angle);

}  // namespace units
