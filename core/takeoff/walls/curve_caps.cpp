#include <algorithm>
#include <cmath>
#include <tuple>

#include "takeoff/walls/bay.h"
#include "takeoff/walls/caps.h"

namespace takeoff::walls {

double most_turn(double wide, double outer_radius) { return 2 * std::asin(std::min(1.0, wide / (2 * outer_radius))); }

namespace {

constexpr double least_share = 0.5;  // of a cap, at the shorter edge and of a closer (common practice)

// Both sides of every cap cut so that it turns its share; `own` is what it turns uncut.
std::optional<CurveCaps> all_cut(double turn, double outer_radius, double wide, double depth, double own) {
  if (outer_radius <= depth || wide <= 0) return std::nullopt;
  const double most = most_turn(wide, outer_radius);
  CurveCaps made;
  made.caps = made.cut = std::max(1, static_cast<int>(std::ceil(turn / most - thin / wide)));
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
  const int most = static_cast<int>(std::floor((curve.arc + thin) / curve.mean));
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
  if (caps < 2 || turn / own > caps + 0.5) return all_cut(turn, outer_radius, wide, depth, own);
  CurveCaps made = mix(curve, caps);
  made.caps = std::max(caps, static_cast<int>(std::ceil((curve.arc - thin) / mean)));
  made.cut = 2;
  made.angle = std::abs(made.rest_turn) / 4;
  return made;
}

namespace {

// How many joints of a run lie too near to one below, looked up for every place of the closers at once.
class Nearness {
 public:
  Nearness(double length, double cap, int caps, const std::vector<double>& below, double apart)
      : below_(below), apart_(apart), from_start_(1, 0), from_end_(1, 0) {
    for (int i = 1; i < caps; ++i) {
      from_start_.push_back(from_start_.back() + near(i * cap));
      from_end_.push_back(from_end_.back() + near(length - i * cap));
    }
  }
  int near(double joint) const {
    const auto after = std::ranges::lower_bound(below_, joint);
    const bool close_after = after != below_.end() && *after - joint < apart_ - thin;
    const bool close_before = after != below_.begin() && joint - *std::prev(after) < apart_ - thin;
    return close_after || close_before ? 1 : 0;
  }
  // Of the joints after the first, second ... whole cap from either end.
  int from_start(int caps) const { return from_start_[static_cast<std::size_t>(caps)]; }
  int from_end(int caps) const { return from_end_[static_cast<std::size_t>(caps)]; }

 private:
  const std::vector<double>& below_;
  double apart_ = 0;
  std::vector<int> from_start_, from_end_;
};

}  // namespace

CapRow cap_row(double length, double cap, const std::vector<double>& below, double apart) {
  CapRow row;
  row.caps = std::max(1, static_cast<int>(std::ceil((length - thin) / cap)));
  const Nearness joints(length, cap, row.caps, below, apart);
  if (row.caps * cap - length < thin) {
    row.near = joints.from_start(row.caps - 1);
    return row;
  }
  if (row.caps == 1) {
    row.first_closer = length;
    return row;
  }
  const double both = length - (row.caps - 2) * cap;
  const int whole = row.caps - 2;
  const int at_ends = row.caps > 3 ? 1 : 0;  // a whole cap at either end wherever there are two
  std::optional<std::tuple<int, int, int>> best;
  for (int before = at_ends; before <= whole - at_ends; ++before) {
    for (int twelfths = -3; twelfths <= 3; ++twelfths) {
      const double first = both / 2 + twelfths * cap / 12;
      const double second = both - first;
      if (std::min(first, second) < cap * least_share - thin || std::max(first, second) > cap + 1e-9) continue;
      const int near = joints.from_start(before) + joints.near(before * cap + first) + joints.from_end(whole - before);
      const std::tuple cost(near, std::abs(2 * before - whole), std::abs(twelfths));
      if (best && cost >= *best) continue;
      best = cost;
      row.before = before;
      row.first_closer = first;
      row.second_closer = second;
      row.near = near;
    }
  }
  return row;
}

}  // namespace takeoff::walls
