// Short ways of drawing for tests of offsets and bands.
#pragma once

#include <gtest/gtest.h>

#include <numbers>
#include <vector>

#include "geometry/outline.h"
#include "geometry/private/geos.h"
#include "geometry/private/shapes.h"

namespace drawing {

inline constexpr double pi = std::numbers::pi;
inline constexpr double inch = 0.0254;
inline constexpr double foot = 0.3048;
inline constexpr double square_foot = foot * foot;

inline geometry::Point at_inches(double x, double y) {
  return {units::Length::nearest(units::Metres(x * inch)), units::Length::nearest(units::Metres(y * inch))};
}
inline geometry::Point at_metres(double x, double y) {
  return {units::Length::nearest(units::Metres(x)), units::Length::nearest(units::Metres(y))};
}

// One corner, and how the edge from it runs on: straight, or about a centre.
struct Stop {
  geometry::Point at;
  char way = '-';  // '-' line, 'l' arc counter-clockwise, 'r' arc clockwise
  geometry::Point centre = {};
};

inline geometry::Ring ring(const std::vector<Stop>& stops, std::uint64_t element = 1) {
  geometry::Ring made;
  for (std::size_t i = 0; i < stops.size(); ++i) {
    const Stop& stop = stops[i];
    const geometry::Point to = stops[(i + 1) % stops.size()].at;
    const double bulge =
        stop.way == '-' ? 0 : geometry::bulge_about(stop.centre - stop.at, to - stop.at, stop.way == 'l');
    made.push_back({stop.at, bulge, {element, static_cast<std::int32_t>(i)}});
  }
  return made;
}

inline geometry::Region region(const std::vector<geometry::Ring>& rings) {
  geometry::Polygon polygon{geometry::Shapes::outline(rings.front()), {}};
  for (std::size_t i = 1; i < rings.size(); ++i) polygon.holes.push_back(geometry::Shapes::outline(rings[i]));
  return geometry::Shapes::region({polygon});
}

inline geometry::Ring rectangle(double width_inches, double height_inches) {
  return ring({{at_inches(0, 0)},
               {at_inches(width_inches, 0)},
               {at_inches(width_inches, height_inches)},
               {at_inches(0, height_inches)}});
}

// A pool of four tangent arcs with a waist, in inches: bulging arcs of 80, 45 and 360, waist 95. Made-up demo pool.
inline geometry::Ring waisted_pool() {
  return ring({{at_inches(318, 72), 'l', at_inches(318, 152)},
               {at_inches(270, 216), 'r', at_inches(213, 292)},
               {at_inches(156, 216), 'l', at_inches(129, 180)},
               {at_inches(102, 144), 'l', at_inches(318, 432)}});
}

// Every ring is the right way round, no edge is empty, and nothing crosses or touches once in chords.
inline void expect_valid(const geometry::Region& region) {
  for (const geometry::Polygon& polygon : region.polygons()) {
    EXPECT_GT(polygon.outer.signed_area().si(), 0);
    for (const geometry::Outline& hole : polygon.holes) EXPECT_LT(hole.signed_area().si(), 0);
  }
  for (const geometry::Outline* outline : region.outlines()) {
    for (std::size_t i = 0; i < outline->edges().size(); ++i) {
      const geometry::Curve edge = geometry::curve(outline->edges(), i);
      EXPECT_NE(edge.start, edge.end);
    }
  }
  EXPECT_TRUE(geometry::geos::valid(geometry::geos::flattened(region)));
}

}  // namespace drawing
