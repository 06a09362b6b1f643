// A quantity whose unit is only known at run time: what a line of the takeoff is counted in.
#pragma once

#include <string>

namespace units {

// Powers of metre, kilogram and hour. Pieces are counted, so a piece has no power of anything.
struct Unit {
  signed char metre = 0;
  signed char kilogram = 0;
  signed char hour = 0;
  bool operator==(const Unit&) const = default;
  friend constexpr Unit operator*(Unit a, Unit b) {
    return {static_cast<signed char>(a.metre + b.metre), static_cast<signed char>(a.kilogram + b.kilogram),
            static_cast<signed char>(a.hour + b.hour)};
  }
  friend constexpr Unit operator/(Unit a, Unit b) {
    return {static_cast<signed char>(a.metre - b.metre), static_cast<signed char>(a.kilogram - b.kilogram),
            static_cast<signed char>(a.hour - b.hour)};
  }
};

inline constexpr Unit piece{};
inline constexpr Unit metre{1, 0, 0};
inline constexpr Unit square_metre{2, 0, 0};
inline constexpr Unit cubic_metre{3, 0, 0};
inline constexpr Unit kilogram{0, 1, 0};
inline constexpr Unit kilogram_per_cubic_metre{-3, 1, 0};
inline constexpr Unit hour{0, 0, 1};

struct Amount {
  double value = 0;
  Unit unit;
  bool operator==(const Amount&) const = default;
};

// "piece", "m", "m2", "m3", "kg", "h"; others as quotients: "kg/m3", "h/m2", "1/m".
std::string name(Unit unit);

}  // namespace units
