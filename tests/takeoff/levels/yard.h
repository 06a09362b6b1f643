// Small yards for the tests of levels, in feet.
#pragma once

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <set>

#include "takeoff/edges/site_kit.h"
#include "takeoff/levels/levels.h"

namespace yard {

using site_kit::Book;
using units::Length;
inline constexpr double foot = 0.3048;

struct Corner {
  double x = 0;
  double y = 0;
  double bulge = 0;
};
inline Length feet(double value) { return Length::nearest(units::Metres(value * foot)); }
inline geometry::Point at(double x, double y) { return {feet(x), feet(y)}; }

inline geometry::Ring ring(const std::vector<Corner>& corners) {
  geometry::Ring edges;
  for (const Corner& corner : corners) edges.push_back({at(corner.x, corner.y), corner.bulge, {}});
  return edges;
}
inline plan::DrawnShape shape(const std::vector<Corner>& corners) { return {plan::DrawnRing{ring(corners), {}}}; }
inline plan::DrawnLine line(const std::vector<Corner>& corners, double x, double y) {
  return {ring(corners), at(x, y), {}};
}
inline std::vector<Corner> box(double x, double y, double to_x, double to_y) {
  return {{x, y}, {to_x, y}, {to_x, to_y}, {x, to_y}};
}

inline plan::Element paved(const std::string& id, plan::DrawnShape outline, plan::Finish finish) {
  plan::PavedArea area;
  area.outline = std::move(outline);
  area.finish = std::move(finish);
  return {id, "", area};
}
inline plan::Element level(const std::string& id, double x, double y, double height, const std::string& what,
                           const std::string& of = {}) {
  return {id, "", plan::Level{at(x, y), feet(height), what, of}};
}
inline plan::Finish plane(double x, double y, double height, double fall, double towards_degrees) {
  plan::Finish finish;
  finish.way = plan::Finish::Way::plane;
  finish.at = at(x, y);
  finish.height = feet(height);
  finish.fall = fall;
  finish.direction = units::Angle::degrees(towards_degrees);
  return finish;
}
inline plan::Finish edges(std::vector<plan::FallFrom> from) {
  plan::Finish finish;
  finish.way = plan::Finish::Way::edges;
  finish.from = std::move(from);
  return finish;
}
inline plan::Finish by_levels() { return {}; }

struct Worked {
  plan::Job job;
  plan::Site site;
  takeoff::levels::Terrain terrain;
  std::map<plan::ElementId, takeoff::Share> falls;
  const geometry::Surface& finished(const std::string& id) const { return *terrain.finished.at(id); }
  std::string said() const {
    std::string text;
    for (const auto& one : terrain.problems) text += problem::sentence(one) + "\n";
    for (const auto& [id, share] : falls) text += site_kit::all_said(share);
    return text;
  }
  // Every code that was said of terrain and falls, each once, in order of the alphabet.
  std::set<std::string> codes() const {
    std::set<std::string> all;
    for (const auto& one : terrain.problems) all.insert(one.code);
    for (const auto& [id, share] : falls)
      for (const auto& one : share.problems) all.insert(one.code);
    return all;
  }
};
inline Worked worked(plan::Job job) {
  Worked made;
  made.job = std::move(job);
  made.site = plan::site(made.job);
  made.terrain = takeoff::levels::terrain(made.job, made.site);
  made.falls = takeoff::levels::falls(made.job, made.site, made.terrain);
  return made;
}
inline Worked worked(const std::vector<plan::Element>& elements, const Book& book = {}) {
  return worked(site_kit::job(book, elements));
}

// Places spread evenly over the ground of an area, the same every time; feet.
template <class See>
void everywhere(const Worked& yard, const std::string& id, See see) {
  const geometry::Region& net = yard.site.find(id)->net;
  const geometry::Box box = net.bounds();
  const auto spread = [](int number, int base) {
    double value = 0;
    double share = 1.0 / base;
    for (; number > 0; number /= base, share /= base) value += share * (number % base);
    return value;
  };
  int seen = 0;
  for (int i = 1; i < 3000; ++i) {
    const geometry::Vec size = box.high - box.low;
    const geometry::Point place = geometry::moved(box.low, {size.x * spread(i, 2), size.y * spread(i, 3)});
    if (!net.contains(place)) continue;
    const auto height = yard.finished(id).height(place);
    if (!height) continue;  // within half a millimetre of an arc
    ++seen;
    const problem::Xy metres = geometry::xy(place);
    see(metres.x / foot, metres.y / foot, *height / foot);
  }
  EXPECT_GT(seen, 500);
}

}  // namespace yard
