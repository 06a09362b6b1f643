// What the pointer takes hold of: the order of classes, the nearest within a class, and the same answer as a slow
// search over everything that is drawn.
#include "sketch/snap.h"

#include <gtest/gtest.h>
#include <rapidcheck.h>

#include <algorithm>
#include <cmath>
#include <numbers>

#include "bench_of_hands.h"
#include "geometry/index.h"
#include "sketch/crossings.h"
#include "sketch/guides.h"

namespace {

using geometry::Curve;
using geometry::Point;
using hands::feet;
using sketch::Snaps;
using sketch::Taken;
using sketch::Takes;
using units::Length;

constexpr double foot = 12.0 * Length::steps_per_inch;

Point at(std::int64_t x, std::int64_t y) { return {Length::of_steps(x), Length::of_steps(y)}; }

plan::Element area(const std::string& id, geometry::Ring ring) {
  plan::PavedArea area;
  area.outline = {{std::move(ring), {}}};
  return {id, "", area};
}
plan::Element wall(const std::string& id, geometry::Ring edges, Point end) {
  plan::Wall wall;
  wall.line = {std::move(edges), end, {}};
  return {id, "", wall};
}

// A square of 20 ft with its lower left corner at the origin, and a wall across it from (5,-5) to (5,30).
plan::Job square_and_wall() {
  plan::Job job = hands::empty_job();
  job = plan::with(
      job, area("A1", {{feet(0, 0), 0, {}}, {feet(20, 0), 0, {}}, {feet(20, 20), 0, {}}, {feet(0, 20), 0, {}}}));
  return plan::with(job, wall("W1", {{feet(5, -5), 0, {}}}, feet(5, 30)));
}

TEST(Snaps, EachClassByItself) {
  const Snaps snaps(square_and_wall());
  const auto take = [&](double x, double y) { return snaps.take(feet(x, y), foot, foot); };
  EXPECT_EQ(take(20.4, -0.5).takes, Takes::corner);
  EXPECT_EQ(take(20.4, -0.5).at, feet(20, 0));
  EXPECT_EQ(take(20.4, -0.5).of, "A1");
  EXPECT_EQ(take(4.6, 0.3).takes, Takes::crossing);
  EXPECT_EQ(take(4.6, 0.3).at, feet(5, 0));
  EXPECT_EQ(take(10.5, 0.5).takes, Takes::middle);
  EXPECT_EQ(take(10.5, 0.5).at, feet(10, 0));
  EXPECT_EQ(take(13, 0.5).takes, Takes::edge);
  EXPECT_EQ(take(13, 0.5).at, feet(13, 0));
  EXPECT_EQ(take(13.3, 7.1).takes, Takes::grid);
  EXPECT_EQ(take(13.3, 7.1).at, feet(13, 7));
  EXPECT_EQ(snaps.take(feet(13.3, 7.1), foot).takes, Takes::nothing);
  EXPECT_EQ(snaps.take(feet(13.3, 7.1), foot).at, feet(13.3, 7.1));
}

TEST(Snaps, ACornerWinsOverACrossingThatIsNearer) {
  plan::Job job = square_and_wall();
  job = plan::with(job, wall("W2", {{feet(5.5, 0.5), 0, {}}}, feet(9, 9)));
  const Snaps snaps(job);
  // (5.05, 0.05): the crossing lies 0.07 ft away, the corner of W2 0.64 ft.
  EXPECT_EQ(snaps.take(feet(5.05, 0.05), foot).at, feet(5.5, 0.5));
}

TEST(Snaps, CentresAndMiddlesOfArcs) {
  // A half circle of radius 10 about (0,0), from (10,0) over (0,10) to (-10,0).
  const plan::Job job = plan::with(hands::empty_job(), wall("W1", {{feet(10, 0), 1, {}}}, feet(-10, 0)));
  const Snaps snaps(job);
  EXPECT_EQ(snaps.take(feet(0.2, 0.3), foot).takes, Takes::centre);
  EXPECT_EQ(snaps.take(feet(0.2, 0.3), foot).at, feet(0, 0));
  EXPECT_EQ(snaps.take(feet(0.2, 9.6), foot).takes, Takes::middle);
  EXPECT_EQ(snaps.take(feet(0.2, 9.6), foot).at, feet(0, 10));
  EXPECT_EQ(snaps.take(feet(6.3, 8.4), foot).at, feet(6, 8));  // 3-4-5: on the arc, 0.5 ft from the pointer
}

TEST(Snaps, LeaveOutWhatIsMoved) {
  const Snaps snaps(square_and_wall(), {"A1"});
  EXPECT_EQ(snaps.take(feet(20, 0), foot).takes, Takes::nothing);
  EXPECT_EQ(snaps.take(feet(5, 0), foot).takes, Takes::edge);
}

TEST(Snaps, EdgesNearestFirst) {
  const Snaps snaps(square_and_wall());
  const auto near = snaps.edges(feet(4.5, 0.2), foot);
  ASSERT_EQ(near.size(), 2U);
  EXPECT_EQ(near[0].of, "A1");
  EXPECT_EQ(near[1].of, "W1");
}

// --- crossings, against places that are worked out.
TEST(Crossings, LinesArcsAndWhatOnlyTouches) {
  const Curve east{feet(0, 0), feet(10, 0), 0};
  EXPECT_EQ(sketch::crossings(east, {feet(4, -3), feet(4, 3), 0}), std::vector{feet(4, 0)});
  EXPECT_TRUE(sketch::crossings(east, {feet(4, 1), feet(4, 3), 0}).empty());
  EXPECT_TRUE(sketch::crossings(east, {feet(0, 1), feet(10, 1), 0}).empty());
  const Curve half{feet(5, 0), feet(-5, 0), 1};  // radius 5 about (0,0), the upper half
  // y = 3 meets it at x = 4 and -4.
  auto met = sketch::crossings({feet(-9, 3), feet(9, 3), 0}, half);
  std::ranges::sort(met);
  EXPECT_EQ(met, (std::vector{feet(-4, 3), feet(4, 3)}));
  EXPECT_EQ(sketch::crossings({feet(-9, 5), feet(9, 5), 0}, half), std::vector{feet(0, 5)});  // touches
  EXPECT_TRUE(sketch::crossings({feet(-9, -3), feet(9, -3), 0}, half).empty());  // the lower half is no arc
  // Circles of 5 about (0,0) and (6,0) meet at (3,4) and (3,-4).
  EXPECT_EQ(sketch::crossings(half, {feet(11, 0), feet(1, 0), 1}), std::vector{feet(3, 4)});
}

// --- the same as a slow search over everything.
Point any_point() { return at(*rc::gen::inRange(-30000, 30000), *rc::gen::inRange(-30000, 30000)); }
double any_bulge() { return *rc::gen::inRange(0, 3) == 0 ? *rc::gen::inRange(-1500, 1500) / 1000.0 : 0; }

plan::Job any_job() {
  plan::Job job = hands::empty_job();
  const int count = *rc::gen::inRange(0, 7);
  for (int i = 0; i < count; ++i) {
    geometry::Ring ring;
    const int corners = *rc::gen::inRange(2, 6);
    for (int k = 0; k < corners; ++k) ring.push_back({any_point(), any_bulge(), {}});
    const std::string id = "X" + std::to_string(i);
    job = plan::with(job, *rc::gen::inRange(0, 2) == 0 ? area(id, ring) : wall(id, ring, any_point()));
  }
  return job;
}

struct Found {
  Takes takes = Takes::nothing;
  Point place;
  double distance = 0;
};

void nearer(std::optional<Found>& best, const Found& other, double reach) {
  if (other.distance <= reach && (!best || other.distance < best->distance)) best = other;
}

// Every corner, every pair of edges, every middle, every edge: no index, no order of near things.
Found slow(const plan::Job& job, Point pointer, double reach) {
  std::optional<Found> corner;
  std::optional<Found> crossing;
  std::optional<Found> middle;
  std::optional<Found> edge;
  std::vector<Curve> curves;
  for (const plan::ElementPtr& element : job.elements) {
    for (const plan::Grip& grip : plan::corners(*element))
      nearer(corner, {Takes::corner, grip.at, length(grip.at - pointer)}, reach);
    for (const plan::DrawnEdge& one : plan::drawn_edges(*element))
      if (one.curve.start != one.curve.end) curves.push_back(one.curve);
  }
  for (const Curve& curve : curves) {
    const Point half = geometry::moved(curve.start, curve.at(0.5));
    nearer(middle, {Takes::middle, half, length(half - pointer)}, reach);
    if (!curve.straight()) {
      const Point centre = geometry::moved(curve.start, curve.centre());
      nearer(middle, {Takes::centre, centre, length(centre - pointer)}, reach);
    }
    const auto place = geometry::nearest(curve, pointer);
    nearer(edge,
           {Takes::edge, geometry::moved(curve.start, curve.at(place.share)), place.distance * Length::steps_per_metre},
           reach);
    for (const Curve& other : curves)
      if (&other != &curve)
        for (const Point met : sketch::crossings(curve, other))
          nearer(crossing, {Takes::crossing, met, length(met - pointer)}, reach);
  }
  for (const auto& best : {corner, crossing, middle, edge})
    if (best) return *best;
  return {Takes::nothing, pointer, 0};
}

TEST(Snaps, AnswerAsASlowSearchOverEverythingDoes) {
  EXPECT_TRUE(rc::check("class and distance are the same", [] {
    const plan::Job job = any_job();
    const Snaps snaps(job);
    for (int i = 0; i < 20; ++i) {
      const Point pointer = any_point();
      const double reach = *rc::gen::inRange(0, 6000);
      const Taken fast = snaps.take(pointer, reach);
      const Found obvious = slow(job, pointer, reach);
      RC_ASSERT(fast.takes == obvious.takes);
      // Two places may be equally near; what counts is how near. A crossing is rounded to the grid from either edge.
      RC_ASSERT(std::abs(length(fast.at - pointer) - length(obvious.place - pointer)) <= 1.5);
    }
  }));
}

// Whatever help lines, steps of angle and grid there are: where a corner lies within reach, a corner is taken.
TEST(Aimed, NoAngleGuideOrGridBeatsACorner) {
  EXPECT_TRUE(rc::check("a corner within reach wins", [] {
    const plan::Job job = any_job();
    const Snaps snaps(job);
    sketch::InHand in_hand;
    const int edges = *rc::gen::inRange(0, 4);
    in_hand.points.push_back(any_point());
    for (int i = 0; i < edges; ++i) {
      const Point next = any_point();
      if (next == in_hand.points.back()) continue;
      in_hand.edges.push_back({in_hand.points.back(), next, any_bulge()});
      in_hand.points.push_back(next);
    }
    in_hand.closes = true;
    const double reach = *rc::gen::inRange(0, 6000);
    const double grid = *rc::gen::inRange(0, 3000);
    const sketch::Scene scene{job, snaps, reach, grid, {}};
    for (int i = 0; i < 20; ++i) {
      const Point pointer = any_point();
      const sketch::Hold hold{*rc::gen::inRange(0, 2) == 0, false, false};
      double least = 1e18;
      for (const plan::ElementPtr& element : job.elements)
        for (const plan::Grip& grip : plan::corners(*element)) least = std::min(least, length(grip.at - pointer));
      for (std::size_t k = 0; k + 1 < in_hand.points.size(); ++k)
        least = std::min(least, length(in_hand.points[k] - pointer));
      const sketch::Aimed aim = sketch::aimed(scene, in_hand, {pointer, hold});
      RC_ASSERT((least <= reach) == (aim.taken.takes == Takes::corner));
      if (least <= reach) RC_ASSERT(length(aim.at() - pointer) == least);
    }
  }));
}

// --- under the pointer, and in a box.
plan::Job two_areas_a_wall_and_a_level() {
  plan::Job job = hands::empty_job();
  job = plan::with(
      job, area("A1", {{feet(0, 0), 0, {}}, {feet(20, 0), 0, {}}, {feet(20, 20), 0, {}}, {feet(0, 20), 0, {}}}));
  job = plan::with(job, wall("W1", {{feet(5, -5), 0, {}}}, feet(5, 30)));
  job =
      plan::with(job, area("A2", {{feet(4, 4), 0, {}}, {feet(8, 4), 0, {}}, {feet(8, 8), 0, {}}, {feet(4, 8), 0, {}}}));
  plan::Level level;
  level.at = feet(5, 6);
  return plan::with(job, {"L1", "", level});
}

TEST(Under, PointsAndLinesBeforeOutlinesLaterBeforeEarlier) {
  const plan::Job job = two_areas_a_wall_and_a_level();
  using Ids = std::vector<plan::ElementId>;
  EXPECT_EQ(sketch::under(job, feet(5, 6), foot / 2), (Ids{"L1", "W1", "A2", "A1"}));
  EXPECT_EQ(sketch::under(job, feet(7, 6), foot / 2), (Ids{"A2", "A1"}));
  EXPECT_EQ(sketch::under(job, feet(15, 15), foot / 2), (Ids{"A1"}));
  EXPECT_EQ(sketch::under(job, feet(5, 25), foot / 2), (Ids{"W1"}));
  EXPECT_EQ(sketch::under(job, feet(30, 30), foot / 2), Ids{});
  EXPECT_EQ(sketch::under(job, feet(20.4, 10), foot / 2), (Ids{"A1"}));  // by its edge
}

TEST(Under, AWallByItsBody) {
  plan::Job job = hands::empty_job();
  plan::Element element = wall("W1", {{feet(0, 0), 0, {}}}, feet(10, 0));
  std::get<plan::Wall>(element.kind).thickness = Length::feet(1);  // behind is left: north
  job = plan::with(job, element);
  EXPECT_EQ(sketch::under(job, feet(5, 0.9), 100).size(), 1U);
  EXPECT_EQ(sketch::under(job, feet(5, -0.9), 100).size(), 0U);
}

TEST(Inside, WhollyToTheRightTouchedToTheLeft) {
  const plan::Job job = two_areas_a_wall_and_a_level();
  using Ids = std::vector<plan::ElementId>;
  EXPECT_EQ(sketch::inside(job, feet(3, 3), feet(9, 9)), (Ids{"A2", "L1"}));
  EXPECT_EQ(sketch::inside(job, feet(9, 9), feet(3, 3)), (Ids{"A1", "W1", "A2", "L1"}));
  EXPECT_EQ(sketch::inside(job, feet(19, 19), feet(16, 16)), (Ids{"A1"}));  // lies inside it
  EXPECT_EQ(sketch::inside(job, feet(16, 16), feet(19, 19)), Ids{});
}

}  // namespace
