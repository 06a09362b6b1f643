#include <algorithm>
#include <cmath>

#include "takeoff/walls/caps.h"

namespace takeoff::walls {

namespace {

constexpr double least_share = 0.5;  // of a cap, at the shorter edge and of a closer (common practice)

// Both sides of every cap cut so that it turns its share; `own` is what it turns uncut.
std::optional<CurveCaps> all_cut(double turn, double outer_radius, double wide, double depth, double own) {
  if (outer_radius <= depth || wide <= 0) return std::nullopt;
  const double most = 2 * std::asin(std::min(1.0, wide / (2 * outer_radius)));
  CurveCaps made;
  made.caps = made.cut = std::max(1, static_cast<int>(std::ceil(turn / most - 1e-9)));
  const double each = turn / made.caps;
  made.angle = (each - own) / 2;
  const double shorter = 2 * (outer_radius - depth) * std::sin(each / 2);
  const double longer = 2 * outer_radius * std::sin(each / 2);
  if (shorter < least_share * longer - 1e-12) return std::nullopt;
  return made;
}

// The difference of the parity of `caps` nearest to the wanted one: turning one cap round changes it by two.
int nearest_difference(double wanted, int caps) {
  const int down = static_cast<int>(std::floor(wanted));
  const int first = (down - caps) % 2 == 0 ? down : down - 1;
  const int nearest = wanted - first <= first + 2 - wanted ? first : first + 2;
  return std::clamp(nearest, -caps, caps);
}

struct Curve {
  double turn = 0;
  double arc = 0;   // of the middle line
  double mean = 0;  // width of a cap
  double own = 0;   // turn of a cap
  double depth = 0;
};

CurveCaps mix(const Curve& curve, int caps) {
  const int difference = nearest_difference(curve.turn / curve.own, caps);
  CurveCaps made;
  made.caps = caps;
  made.wide_out = (caps + difference) / 2;
  made.narrow_out = caps - made.wide_out;
  made.rest_turn = curve.turn - difference * curve.own;
  made.rest_caps = curve.arc / curve.mean - caps;
  return made;
}

// Whole caps whose joints, evenly opened and slightly wedged, take up length and turn.
std::optional<CurveCaps> uncut(const Curve& curve, double joint) {
  const int most = static_cast<int>(std::floor(curve.arc / curve.mean + 1e-9));
  for (int caps = most; caps >= 1 && curve.arc / caps - curve.mean <= joint + 1e-9; --caps) {
    CurveCaps made = mix(curve, caps);
    const double wedge = std::abs(made.rest_turn) / caps * curve.depth;
    if (curve.arc / caps - curve.mean + wedge / 2 > joint + 1e-9) continue;
    made.rest_turn = made.rest_caps = 0;
    return made;
  }
  return std::nullopt;
}

}  // namespace

std::optional<CurveCaps> curve_caps(double turn, double outer_radius, double wide, double narrow, double depth,
                                    double joint, bool tapered) {
  if (!tapered || narrow >= wide) return all_cut(turn, outer_radius, wide, depth, 0);
  const double own = 2 * std::atan((wide - narrow) / (2 * depth));
  const double mean = (wide + narrow) / 2;
  const Curve curve{turn, turn * (outer_radius - depth / 2), mean, own, depth};
  if (curve.arc <= 0) return std::nullopt;
  if (const std::optional<CurveCaps> whole = uncut(curve, joint)) return whole;
  const int caps = static_cast<int>(std::lround(curve.arc / mean));
  if (caps < 2 || turn / own > caps) return all_cut(turn, outer_radius, wide, depth, own);
  CurveCaps made = mix(curve, caps);
  made.caps = std::max(caps, static_cast<int>(std::ceil(curve.arc / mean - 1e-9)));
  made.cut = 2;
  made.angle = std::abs(made.rest_turn) / 4;
  return made;
}

CapRow cap_row(double length, double cap, const std::vector<double>& below, double apart) {
  CapRow row;
  row.caps = std::max(1, static_cast<int>(std::ceil(length / cap - 1e-9)));
  const double rest = length - (row.caps - 2) * cap;  // both closers together
  const auto near = [&](double joint) {
    const auto after = std::ranges::lower_bound(below, joint);
    const bool close_after = after != below.end() && *after - joint < apart - 1e-9;
    const bool close_before = after != below.begin() && joint - *std::prev(after) < apart - 1e-9;
    return close_after || close_before ? 1 : 0;
  };
  const auto near_of = [&](int before, double first) {
    int count = 0;
    for (int i = 1; i <= before; ++i) count += near(i * cap);
    count += near(before * cap + first);
    for (int i = 1; i <= row.caps - 2 - before; ++i) count += near(length - i * cap);
    return count;
  };
  if (row.caps * cap - length < 1e-9) {
    for (int i = 1; i < row.caps; ++i) row.near += near(i * cap);
    return row;
  }
  if (row.caps == 1) {
    row.first_closer = length;
    return row;
  }
  const double step = cap / 12;
  const int middle = (row.caps - 2) / 2;
  const int least_whole = row.caps > 3 ? 1 : 0;
  double best = -1;
  for (int before = least_whole; before <= row.caps - 2 - least_whole; ++before) {
    for (int k = -3; k <= 3; ++k) {
      const double first = rest / 2 + k * step;
      const double second = rest - first;
      if (std::min(first, second) < cap * least_share - 1e-9 || std::max(first, second) > cap + 1e-9) continue;
      const int count = near_of(before, first);
      const double cost = count * 1e6 + std::abs(before - middle) * 1e2 + std::abs(k);
      if (best >= 0 && cost >= best) continue;
      best = cost;
      row.before = before;
      row.first_closer = first;
      row.second_closer = second;
      row.near = count;
    }
  }
  return row;
}

}  // namespace takeoff::walls
