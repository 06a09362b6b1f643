// Shapes for tests, in metres about any grid point, and random ones.
#pragma once

#include <rapidcheck.h>
#include <cmath>
#include <numbers>
#include <ostream>
#include <stdexcept>
#include <vector>

#include "geometry/validity.h"

namespace geometry {

// How a failing property shows its regions: steps and bulges, ready to be drawn again.
inline void showValue(const Region& region, std::ostream& out) {
  for (const Outline* outline : region.outlines()) {
    for (const Edge& edge : outline->edges()) {
      out << "{" << edge.from.x.steps() << ", " << edge.from.y.steps() << ", " << edge.bulge << "} ";
    }
    out << "\n";
  }
}

}  // namespace geometry

namespace draw {

inline constexpr double pi = std::numbers::pi;
inline constexpr double steps_per_metre = 320000;

inline geometry::Point at(double x, double y) {
  return {units::Length::of_steps(std::llround(x * steps_per_metre)),
          units::Length::of_steps(std::llround(y * steps_per_metre))};
}

struct Corner {
  double x = 0;
  double y = 0;
  double bulge = 0;
};

// Metres; edges are numbered from `first_edge` for element `element`.
inline geometry::Ring ring(const std::vector<Corner>& corners, std::uint64_t element = 0, std::int32_t first_edge = 0) {
  geometry::Ring made;
  for (const Corner& c : corners) made.push_back({at(c.x, c.y), c.bulge, {element, first_edge++}});
  return made;
}

inline geometry::Region region(const std::vector<Corner>& corners, std::uint64_t element = 0) {
  auto made = geometry::region(ring(corners, element));
  if (!made) throw std::runtime_error(problem::sentence(made.error()));
  return std::move(*made);
}

inline geometry::Region box(double x, double y, double width, double height, std::uint64_t element = 0) {
  return region({{x, y}, {x + width, y}, {x + width, y + height}, {x, y + height}}, element);
}

inline geometry::Region disk(double x, double y, double radius, std::uint64_t element = 0) {
  return region({{x - radius, y, 1}, {x + radius, y, 1}}, element);
}

inline double tan_quarter(double degrees) { return std::tan(degrees * pi / 720); }

// Random rings: stars about a middle with radii of 1 to 6 m, some of their edges arcs; or boxes on a coarse grid, whose
// edges and corners often fall together.
inline rc::Gen<geometry::Ring> star_ring(bool arcs, std::uint64_t element) {
  return rc::gen::exec([arcs, element] {
    const int corners = *rc::gen::inRange(3, 13);
    const double x = *rc::gen::inRange(-4000, 4000) / 1000.0;
    const double y = *rc::gen::inRange(-4000, 4000) / 1000.0;
    std::vector<Corner> all;
    for (int i = 0; i < corners; ++i) {
      const double angle = 2 * pi * (i + *rc::gen::inRange(0, 700) / 1000.0) / corners;
      const double radius = *rc::gen::inRange(1000, 6000) / 1000.0;
      const double bulge = arcs && *rc::gen::inRange(0, 2) == 0 ? *rc::gen::inRange(-600, 600) / 1000.0 : 0.0;
      all.push_back({x + radius * std::cos(angle), y + radius * std::sin(angle), bulge});
    }
    return ring(all, element);
  });
}

// A valid star; one whose arcs make it cross itself is drawn without them.
inline rc::Gen<geometry::Region> star(bool arcs, std::uint64_t element = 1) {
  return rc::gen::map(star_ring(arcs, element), [](geometry::Ring drawn) {
    if (auto made = geometry::region(drawn)) return *made;
    for (geometry::Edge& edge : drawn) edge.bulge = 0;
    auto made = geometry::region(drawn);
    return made ? *made : geometry::Region{};
  });
}

inline rc::Gen<geometry::Region> coarse_box(std::uint64_t element = 1) {
  return rc::gen::exec([element] {
    const double x = *rc::gen::inRange(0, 8);
    const double y = *rc::gen::inRange(0, 8);
    return box(x, y, *rc::gen::inRange(1, 6), *rc::gen::inRange(1, 6), element);
  });
}

}  // namespace draw
