// Overlays of random shapes: areas against Boost.Geometry as a second engine, validity against GEOS, and the same bits
// wherever the shapes lie.
#include <gtest/gtest.h>

#include <rapidcheck.h>
#include <boost/geometry.hpp>
#include <boost/geometry/geometries/multi_polygon.hpp>
#include <boost/geometry/geometries/point_xy.hpp>
#include <boost/geometry/geometries/polygon.hpp>

#include "geometry/draw.h"
#include "geometry/flatten.h"
#include "geometry/overlay.h"
#include "geometry/private/geos.h"

namespace {

namespace bg = boost::geometry;
using geometry::Region;
using geometry::Vec;
using BoostPoint = bg::model::d2::point_xy<double>;
using BoostPolygon = bg::model::polygon<BoostPoint, false>;
using BoostRegion = bg::model::multi_polygon<BoostPolygon>;

// In metres, arcs as chords within 10 steps (0.03 mm) of them.
BoostRegion boosted(const Region& region) {
  BoostRegion all;
  for (const geometry::Polygon& polygon : region.polygons()) {
    BoostPolygon& made = all.emplace_back();
    const auto put = [](auto& to, const geometry::Outline& from) {
      for (const geometry::Point p : geometry::flatten(from.edges(), units::Length::of_steps(10))) {
        to.push_back({p.x.metres().si(), p.y.metres().si()});
      }
    };
    put(made.outer(), polygon.outer);
    for (const geometry::Outline& hole : polygon.holes) put(made.inners().emplace_back(), hole);
  }
  bg::correct(all);
  return all;
}

double edge_of(std::initializer_list<Region> regions) {
  double sum = 0;
  for (const Region& region : regions) sum += region.perimeter().si();
  return sum;
}

void sound(const Region& region) {
  for (const geometry::Outline* outline : region.outlines()) {
    RC_ASSERT(outline->edges().size() >= 2u);
    for (const geometry::Edge& edge : outline->edges()) RC_ASSERT(edge.origin.element != 0u);
  }
  for (const geometry::Polygon& polygon : region.polygons()) {
    RC_ASSERT(polygon.outer.signed_area().si() > 0);
    for (const geometry::Outline& hole : polygon.holes) RC_ASSERT(hole.signed_area().si() < 0);
  }
  const auto flat = geometry::geos::flattened(region);
  RC_ASSERT(flat.size() == region.polygons().size());
  RC_ASSERT(geometry::geos::valid(flat));
}

Region must(const problem::Result<Region>& result) {
  if (!result) RC_FAIL(problem::sentence(result.error()));
  return *result;
}

struct Three {
  Region rest, whole, shared;
};
Three overlaid(const Region& a, const Region& b) {
  const std::vector<Region> cutter{b};
  const std::vector<Region> both{a, b};
  return {must(geometry::subtract(a, cutter)), must(geometry::unite(both)), must(geometry::meet(a, b))};
}

// Rounding moves an edge by a step at most; true corners and the second engine's own chords are off by 0.03 mm along
// arcs.
void against_second_engine(const Region& a, const Region& b, bool arcs) {
  // A region is valid over chords within 0.5 mm; here it should be over the second engine's finer ones as well.
  RC_PRE(bg::is_valid(boosted(a)) && bg::is_valid(boosted(b)));
  const Three ours = overlaid(a, b);
  for (const Region& region : {ours.rest, ours.whole, ours.shared}) sound(region);
  const double allowed = edge_of({a, b}) * (arcs ? 3.2e-5 : 3.125e-6) + 1e-9;
  BoostRegion rest, whole, shared;
  bg::difference(boosted(a), boosted(b), rest);
  bg::union_(boosted(a), boosted(b), whole);
  bg::intersection(boosted(a), boosted(b), shared);
  RC_ASSERT(std::abs(ours.rest.area().si() - bg::area(rest)) <= allowed);
  RC_ASSERT(std::abs(ours.whole.area().si() - bg::area(whole)) <= allowed);
  RC_ASSERT(std::abs(ours.shared.area().si() - bg::area(shared)) <= allowed);
}

TEST(SecondEngine, StarsOfLines) {
  EXPECT_TRUE(rc::check("lines", [] { against_second_engine(*draw::star(false, 1), *draw::star(false, 2), false); }));
}

TEST(SecondEngine, StarsOfArcs) {
  EXPECT_TRUE(rc::check("arcs", [] { against_second_engine(*draw::star(true, 1), *draw::star(true, 2), true); }));
}

TEST(SecondEngine, BoxesWhoseEdgesFallTogether) {
  EXPECT_TRUE(rc::check("boxes", [] { against_second_engine(*draw::coarse_box(1), *draw::coarse_box(2), false); }));
}

Region moved(const Region& region, Vec by) {
  Region all;
  std::vector<geometry::Region> parts;
  geometry::Drawn rings;
  for (const geometry::Outline* outline : region.outlines()) rings.push_back(geometry::moved(outline->edges(), by));
  if (rings.empty()) return all;
  return geometry::shape(rings).value().region;
}

TEST(Moved, EqualToTheBit) {
  EXPECT_TRUE(rc::check("moved by whole steps", [] {
    const Region a = *draw::star(true, 1);
    const Region b = *draw::star(true, 2);
    const Vec by{static_cast<double>(*rc::gen::inRange(-900'000'000, 900'000'000)),
                 static_cast<double>(*rc::gen::inRange(-900'000'000, 900'000'000))};
    const Three here = overlaid(a, b);
    const Three there = overlaid(moved(a, by), moved(b, by));
    const auto same = [by](const Region& one, const Region& other) {
      RC_ASSERT(one.polygons().size() == other.polygons().size());
      const auto ours = one.outlines();
      const auto theirs = other.outlines();
      RC_ASSERT(ours.size() == theirs.size());
      for (std::size_t i = 0; i < ours.size(); ++i) {
        RC_ASSERT(geometry::moved(ours[i]->edges(), by) == theirs[i]->edges());
      }
      RC_ASSERT(one.area() == other.area());
    };
    same(here.rest, there.rest);
    same(here.whole, there.whole);
    same(here.shared, there.shared);
  }));
}

Region turned(const Region& region) {
  geometry::Drawn rings;
  for (const geometry::Outline* outline : region.outlines()) {
    rings.push_back(geometry::turned(outline->edges(), draw::at(0.7, -1.3), units::Angle::degrees(90)));
  }
  return rings.empty() ? Region{} : geometry::shape(rings).value().region;
}

// A pool inside its deck: a quarter turn changes nothing but the place.
TEST(Turned, AQuarterWithinABillionth) {
  EXPECT_TRUE(rc::check("quarter turn", [] {
    const Region deck = draw::box(-12, -12, 24, 24, 1);
    const Region pool = *draw::star(true, 2);
    const std::vector<Region> cutter{pool};
    const std::vector<Region> turned_cutter{turned(pool)};
    const double here = must(geometry::subtract(deck, cutter)).area().si();
    const double there = must(geometry::subtract(turned(deck), turned_cutter)).area().si();
    RC_ASSERT(std::abs(here - there) <= 1e-9 * here);
    if (geometry::Box low = pool.bounds(); low.low.x > draw::at(-12, 0).x && low.high.x < draw::at(12, 0).x &&
                                           low.low.y > draw::at(0, -12).y && low.high.y < draw::at(0, 12).y) {
      RC_ASSERT(std::abs(here - (deck.area() - pool.area()).si()) <= 1e-9 * here);
    }
  }));
}

// Several cutters at once, some over each other, then the result cut once more: areas add up and stay valid.
TEST(Chains, CutsOfCuts) {
  EXPECT_TRUE(rc::check("chain", [] {
    const Region deck = draw::box(-8, -8, 16, 16, 1);
    std::vector<Region> cutters;
    for (std::uint64_t i = 2; i < 5; ++i) cutters.push_back(*draw::star(true, i));
    const Region together = must(geometry::unite(cutters));
    const Region at_once = must(geometry::subtract(deck, cutters));
    Region by_turns = deck;
    for (const Region& cutter : cutters) {
      by_turns = must(geometry::subtract(by_turns, {&cutter, 1}));
      sound(by_turns);
    }
    sound(together);
    sound(at_once);
    const Region lost = must(geometry::meet(deck, together));
    const double edge =
        deck.perimeter().si() + together.perimeter().si() + edge_of({cutters[0], cutters[1], cutters[2]});
    RC_ASSERT(std::abs((at_once.area() + lost.area() - deck.area()).si()) <= edge * 4 / draw::steps_per_metre);
    RC_ASSERT(std::abs((at_once.area() - by_turns.area()).si()) <= edge * 4 / draw::steps_per_metre);
  }));
}

}  // namespace
