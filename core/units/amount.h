// A quantity whose unit is only known at run time: what a line of the takeoff is counted in.
#pragma once

#include <string>

namespace units {

// Powers of metre, kilogram, hour and newton. Pieces are counted, so a piece has no power of anything. Forces stand
// apart from masses: what presses and what is carried are never added.
struct Unit {
  signed char metre = 0;
  signed char kilogram = 0;
  signed char hour = 0;
  signed char newton = 0;
  bool operator==(const Unit&) const = default;
  friend constexpr Unit operator*(Unit a, Unit b) {
    return {static_cast<signed char>(a.metre + b.metre), static_cast<signed char>(a.kilogram + b.kilogram),
            static_cast<signed char>(a.hour + b.hour), static_cast<signed char>(a.newton + b.newton)};
  }
  friend constexpr Unit operator/(Unit a, Unit b) {
    return {static_cast<signed char>(a.metre - b.metre), static_cast<signed char>(a.kilogram - b.kilogram),
            static_cast<signed char>(a.hour - b.hour), static_cast<signed char>(a.newton - b.newton)};
  }
};

inline constexpr Unit piece{};
inline constexpr Unit metre{1, 0, 0};
inline constexpr Unit square_metre{2, 0, 0};
inline constexpr Unit cubic_metre{3, 0, 0};
inline constexpr Unit kilogram{0, 1, 0};
inline constexpr Unit kilogram_per_cubic_metre{-3, 1, 0};
inline constexpr Unit hour{0, 0, 1};
inline constexpr Unit newton{0, 0, 0, 1};
inline constexpr Unit newton_per_metre = newton / metre;  // thrust and weight of a metre run of wall
inline constexpr Unit newton_per_square_metre = newton / square_metre;
inline constexpr Unit newton_per_cubic_metre = newton / cubic_metre;  // weight of earth

struct Amount {
  double value = 0;
  Unit unit;
  bool operator==(const Amount&) const = default;
};

// "piece", "m", "m2", "m3", "kg", "h"; "N"; others as quotients: "kg/m3", "h/m2", "N/m2", "1/m".
std::string name(Unit unit);

}  // namespace units
