#include <algorithm>

#include "takeoff/walls/profile.h"

namespace takeoff::walls {

Heights::Heights(const std::vector<plan::HeightAt>& given) {
  for (const plan::HeightAt& one : given) knots_.push_back({one.at.metres().si(), one.height.metres().si()});
  std::ranges::stable_sort(knots_, {}, &Knot::at);
}

Heights Heights::of(std::vector<Knot> knots) {
  Heights made;
  made.knots_ = std::move(knots);
  return made;
}

Heights Heights::level(double height) {
  Heights made;
  made.knots_.push_back({0, height});
  return made;
}

namespace {

double between(const Heights::Knot& a, const Heights::Knot& b, double station) {
  return a.height + (b.height - a.height) * ((station - a.at) / (b.at - a.at));
}

}  // namespace

double Heights::before(double station) const {
  if (knots_.empty()) return 0;
  const auto next = std::ranges::lower_bound(knots_, station, {}, &Knot::at);
  if (next == knots_.end()) return knots_.back().height;
  if (next == knots_.begin() || next->at == station) return next->height;
  return between(*std::prev(next), *next, station);
}

double Heights::after(double station) const {
  if (knots_.empty()) return 0;
  const auto next = std::ranges::upper_bound(knots_, station, {}, &Knot::at);
  if (next == knots_.begin()) return next->height;
  const auto last = std::prev(next);
  if (next == knots_.end() || last->at == station) return last->height;
  return between(*last, *next, station);
}

double Heights::least(double from, double to) const {
  double result = std::min(after(from), before(to));
  for (auto k = std::ranges::upper_bound(knots_, from, {}, &Knot::at); k != knots_.end() && k->at < to; ++k) {
    result = std::min(result, k->height);
  }
  return result;
}

double Heights::greatest(double from, double to) const {
  double result = std::max(after(from), before(to));
  for (auto k = std::ranges::upper_bound(knots_, from, {}, &Knot::at); k != knots_.end() && k->at < to; ++k) {
    result = std::max(result, k->height);
  }
  return result;
}

}  // namespace takeoff::walls
