#include "takeoff/setting_out/tapes.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace takeoff::setting_out {

std::optional<std::array<Xy, 2>> two_tapes(Xy a, double to_a, Xy b, double to_b) {
  const double apart = std::hypot(b.x - a.x, b.y - a.y);
  if (!(apart > 0) || !(to_a >= 0) || !(to_b >= 0)) return std::nullopt;
  const double slack = 1e-12 * (apart + to_a + to_b);
  if (apart > to_a + to_b + slack || apart < std::abs(to_a - to_b) - slack) return std::nullopt;
  const double ux = (b.x - a.x) / apart, uy = (b.y - a.y) / apart;
  const double along = apart / 2 + (to_a - to_b) * (to_a + to_b) / (2 * apart);
  const double out = std::sqrt(std::max(0.0, (to_a - along) * (to_a + along)));
  const Xy foot{a.x + along * ux, a.y + along * uy};
  return std::array<Xy, 2>{Xy{foot.x - out * uy, foot.y + out * ux}, Xy{foot.x + out * uy, foot.y - out * ux}};
}

double crossing_degrees(Xy a, Xy b, Xy at) {
  const double ax = a.x - at.x, ay = a.y - at.y, bx = b.x - at.x, by = b.y - at.y;
  return std::atan2(std::abs(ax * by - ay * bx), std::abs(ax * bx + ay * by)) * 180 / std::numbers::pi;
}

Station station(Xy a, Xy b, Xy at) {
  const double apart = std::hypot(b.x - a.x, b.y - a.y);
  if (!(apart > 0)) return {};
  const double ux = (b.x - a.x) / apart, uy = (b.y - a.y) / apart;
  const double dx = at.x - a.x, dy = at.y - a.y;
  return {dx * ux + dy * uy, ux * dy - uy * dx};
}

OffsetArea area_by_offsets(double spacing, std::span<const double> offsets) {
  OffsetArea area;
  for (std::size_t i = 1; i < offsets.size(); ++i) area.trapezoid += spacing * (offsets[i - 1] + offsets[i]) / 2;
  std::size_t i = 0;
  for (; i + 2 < offsets.size(); i += 2)
    area.simpson += spacing * (offsets[i] + 4 * offsets[i + 1] + offsets[i + 2]) / 3;
  if (i + 1 < offsets.size()) area.simpson += spacing * (offsets[i] + offsets[i + 1]) / 2;
  return area;
}

}  // namespace takeoff::setting_out
