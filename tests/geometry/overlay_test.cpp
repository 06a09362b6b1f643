// Overlays of drawn shapes whose results are known, edge by edge.
#include <gtest/gtest.h>

#include "geometry/draw.h"
#include "geometry/overlay.h"

namespace {

using draw::at;
using draw::box;
using draw::disk;
using draw::pi;
using geometry::Edge;
using geometry::Origin;
using geometry::Region;
using geometry::Ring;

Region got(const problem::Result<Region>& result) {
  if (!result) throw std::runtime_error(problem::sentence(result.error()));
  return *result;
}

Region less(const Region& from, std::initializer_list<Region> cutters) {
  return got(geometry::subtract(from, std::vector<Region>(cutters)));
}
Region all_of(std::initializer_list<Region> regions) { return got(geometry::unite(std::vector<Region>(regions))); }

const Ring& ring(const Region& region, std::size_t i) { return region.outlines().at(i)->edges(); }

TEST(Subtract, APoolOfArcsInsideStaysAsDrawn) {
  const Region deck = box(0, 0, 20, 10, 1);
  const double b = draw::tan_quarter(90);
  const Region pool = draw::region({{4, 3, 0.31}, {11, 2, -0.2}, {15, 4, b}, {14, 7, 0.4}, {6, 8, 0.05}}, 2);
  const Region net = less(deck, {pool});
  ASSERT_EQ(net.polygons().size(), 1u);
  ASSERT_EQ(net.outlines().size(), 2u);
  EXPECT_EQ(ring(net, 0), ring(deck, 0));
  const Ring back = geometry::reversed(ring(pool, 0));
  ASSERT_EQ(ring(net, 1).size(), back.size());
  for (const Edge& edge : ring(net, 1)) EXPECT_NE(std::find(back.begin(), back.end(), edge), back.end());
  EXPECT_NEAR(net.area().si() / (deck.area().si() - pool.area().si()), 1, 1e-14);
  EXPECT_NEAR(net.perimeter().si(), deck.perimeter().si() + pool.perimeter().si(), 1e-12);
}

TEST(Subtract, NothingIsTakenAsDrawn) {
  const Region deck = box(0, 0, 20, 10, 1);
  EXPECT_EQ(less(deck, {}), deck);
  EXPECT_EQ(less(deck, {Region{}, box(30, 0, 5, 5)}), deck);
  EXPECT_EQ(less(deck, {box(20, 0, 5, 5, 2)}), deck);  // side by side: they touch along an edge
  EXPECT_TRUE(less(deck, {box(-1, -1, 30, 30)}).empty());
  EXPECT_TRUE(less(deck, {deck}).empty());
  EXPECT_TRUE(less(Region{}, {deck}).empty());
  EXPECT_EQ(all_of({}), Region{});
  EXPECT_EQ(all_of({Region{}, deck}), deck);
  EXPECT_TRUE(got(geometry::meet(deck, box(20, 0, 5, 5))).empty());
}

// A disk of radius 5 about the corner of a square takes a quarter of itself; its arc keeps centre, radius and origin,
// and meets the square's edges on the very grid points (5, 0) and (0, 5).
TEST(Subtract, ADiskFromACorner) {
  const Region net = less(box(0, 0, 10, 10, 1), {disk(0, 0, 5, 2)});
  EXPECT_NEAR(net.area().si(), 100 - 25 * pi / 4, 1e-9);
  EXPECT_NEAR(net.perimeter().si(), 30 + 10 * pi / 4, 1e-9);
  const double b = draw::tan_quarter(90);
  const Ring& got_ring = ring(net, 0);
  ASSERT_EQ(got_ring.size(), 5u);
  EXPECT_EQ(got_ring[0], (Edge{at(5, 0), 0, {1, 0}}));
  EXPECT_EQ(got_ring[1], (Edge{at(10, 0), 0, {1, 1}}));
  EXPECT_EQ(got_ring[2], (Edge{at(10, 10), 0, {1, 2}}));
  EXPECT_EQ(got_ring[3], (Edge{at(0, 10), 0, {1, 3}}));
  EXPECT_EQ(got_ring[4].from, at(0, 5));
  EXPECT_NEAR(got_ring[4].bulge, -b, 1e-9);
  EXPECT_EQ(got_ring[4].origin.element, 2u);
}

// Two unit circles a unit apart: lens 2 pi/3 - sqrt(3)/2 (textbook circle geometry); the corners are their true meeting
// points (0.5, +-sqrt(3)/2), though no chord passes there.
TEST(Meet, TwoCircles) {
  const Region lens = got(geometry::meet(disk(0, 0, 1, 1), disk(1, 0, 1, 2)));
  EXPECT_NEAR(lens.area().si(), 2 * pi / 3 - std::sqrt(3) / 2, 4 * pi / 3 * 3.2e-6);
  ASSERT_EQ(ring(lens, 0).size(), 4u);  // each circle is drawn as two halves
  int corners = 0;
  for (const Edge& edge : ring(lens, 0)) {
    if (std::abs(edge.from.y.steps()) < 1000) continue;
    ++corners;
    EXPECT_EQ(edge.from.x, at(0.5, 0).x);
    EXPECT_EQ(std::abs(edge.from.y.steps()), std::llround(std::sqrt(3) / 2 * 320000));
  }
  EXPECT_EQ(corners, 2);
  const Region both = all_of({disk(0, 0, 1, 1), disk(1, 0, 1, 2)});
  EXPECT_NEAR(both.area().si(), 2 * pi - (2 * pi / 3 - std::sqrt(3) / 2), 8 * pi / 3 * 3.2e-6);
  const Region moon = less(disk(0, 0, 1, 1), {disk(1, 0, 1, 2)});
  EXPECT_NEAR(moon.area().si(), pi - (2 * pi / 3 - std::sqrt(3) / 2), 2 * pi * 3.2e-6);
}

TEST(Meet, HalfADiskIsShared) {
  // The overlap of two unit disks is half a disk at a distance of 0.8079455.
  const Region lens = got(geometry::meet(disk(0, 0, 1, 1), disk(0.8079455, 0, 1, 2)));
  EXPECT_NEAR(lens.area().si(), pi / 2, 2e-5);
}

TEST(Unite, OverlappingAndTouching) {
  EXPECT_DOUBLE_EQ(all_of({box(0, 0, 2, 2), box(1, 1, 2, 2)}).area().si(), 7);
  // Side by side: one outline. The seam is gone; the two corners on it stay, as they lie on two edges of two elements.
  const Region row = all_of({box(0, 0, 2, 2, 1), box(2, 0, 3, 2, 2)});
  EXPECT_DOUBLE_EQ(row.area().si(), 10);
  EXPECT_EQ(row.polygons().size(), 1u);
  EXPECT_DOUBLE_EQ(row.perimeter().si(), 14);
  // Corner to corner: two polygons that touch.
  const Region corners = all_of({box(0, 0, 2, 2), box(2, 2, 2, 2)});
  EXPECT_EQ(corners.polygons().size(), 2u);
  // A frame of four: a hole is left.
  const Region frame = all_of({box(0, 0, 10, 1), box(9, 0, 1, 10), box(0, 9, 10, 1), box(0, 0, 1, 10)});
  EXPECT_EQ(frame.outlines().size(), 2u);
  EXPECT_DOUBLE_EQ(frame.area().si(), 100 - 64);
}

TEST(Edges, ANotchDoesNotSplitItsEdgeFurther) {
  // A cutter that only touches the edge from outside at a point adds nothing to it.
  const Region touched = less(box(0, 0, 10, 10, 1), {draw::region({{5, 10}, {6, 12}, {4, 12}}, 2)});
  EXPECT_EQ(touched, box(0, 0, 10, 10, 1));
  // A cutter through the edge leaves two parts of it, with its origin.
  const Region notched = less(box(0, 0, 10, 10, 1), {box(4, 8, 2, 4, 2)});
  int parts = 0;
  for (const Edge& edge : ring(notched, 0)) parts += edge.origin == Origin{1, 2} ? 1 : 0;
  EXPECT_EQ(parts, 2);
  EXPECT_EQ(ring(notched, 0).size(), 8u);
}

// Cut by one disk, then by another: arcs of arcs stay on the first circle.
TEST(Edges, CutAgainAndAgain) {
  const Region first = less(box(0, 0, 10, 10, 1), {disk(0, 0, 5, 2)});
  const Region second = less(first, {box(3, 3, 1, 1, 3)});
  const Region third = less(second, {disk(5, 0, 1, 4)});
  for (const geometry::Outline* outline : third.outlines()) {
    for (const geometry::Curve& c : geometry::curves(outline->edges())) {
      if (c.straight()) continue;
      const double radius = c.radius() / draw::steps_per_metre;
      EXPECT_NEAR(radius, radius > 2 ? 5 : 1, 1e-4);
    }
  }
  // Quarter disk, the corner of the box that stands past it, and the part of the small disk past it: by meeting first.
  const Region small = less(disk(5, 0, 1, 4), {disk(0, 0, 5, 2)});
  const Region upper = got(geometry::meet(small, box(0, 0, 10, 10, 1)));
  const Region corner = less(box(3, 3, 1, 1, 3), {disk(0, 0, 5, 2)});
  EXPECT_NEAR(third.area().si(), 100 - 25 * pi / 4 - upper.area().si() - corner.area().si(), 1e-5);
}

// Concentric circles half the flattening apart: their chords would cross if the halvings differed. The ring between
// them holds 2 pi r w, here for r = 5 m and w = 0.25 mm, give or take the flattening of two circles.
TEST(Edges, NearlyTheSameArc) {
  const Region moon = less(disk(0, 0, 5.00025, 1), {disk(0, 0, 5, 2)});
  EXPECT_NEAR(moon.area().si(), 2 * pi * 5 * 0.00025, 20 * pi * 3.2e-6);
  const Region shifted = less(disk(0, 0, 5, 1), {disk(0.0003, 0.0002, 5, 2)});
  EXPECT_NEAR(shifted.area().si(), 2 * 5 * std::hypot(0.0003, 0.0002), 20 * pi * 0.0005);
}

TEST(Edges, ReversedCutterKeepsItsRadius) {
  const Region net = less(box(-10, -10, 20, 10, 1), {disk(0, 0, 5, 2)});
  double arcs = 0;
  for (const geometry::Curve& c : geometry::curves(ring(net, 0))) {
    if (c.straight()) continue;
    EXPECT_LT(c.bulge, 0);
    EXPECT_NEAR(c.radius() / draw::steps_per_metre, 5, 1e-9);
    arcs += c.length() / draw::steps_per_metre;
  }
  EXPECT_NEAR(arcs, 5 * pi, 1e-9);
}

}  // namespace
