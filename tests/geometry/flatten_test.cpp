#include <gtest/gtest.h>

#include <rapidcheck.h>

#include "geometry/draw.h"
#include "geometry/flatten.h"

namespace {

using draw::at;
using geometry::Curve;
using geometry::Point;
using geometry::Vec;

rc::Gen<Curve> any_arc() {
  return rc::gen::exec([] {
    const auto whole = [] { return units::Length::of_steps(*rc::gen::inRange<std::int64_t>(-20'000'000, 20'000'000)); };
    const double bulge = *rc::gen::inRange(-3000, 3000) / 1000.0;
    return Curve{{whole(), whole()}, {whole(), whole()}, bulge};
  });
}

TEST(Flatten, AStraightCurveIsItsTwoEnds) {
  const Curve line{at(1, 2), at(3, 4), 0};
  EXPECT_EQ(geometry::flatten(line), (std::vector<Point>{at(1, 2), at(3, 4)}));
}

TEST(Flatten, TheSameFromEitherEndAndAnywhere) {
  EXPECT_TRUE(rc::check("reversed and moved", [] {
    const Curve arc = *any_arc();
    std::vector<Point> there = geometry::flatten(arc);
    std::vector<Point> back = geometry::flatten(arc.reversed());
    std::reverse(back.begin(), back.end());
    RC_ASSERT(there == back);
    const Vec by{static_cast<double>(*rc::gen::inRange(-1'000'000'000, 1'000'000'000)),
                 static_cast<double>(*rc::gen::inRange(-1'000'000'000, 1'000'000'000))};
    for (Point& p : there) p = moved(p, by);
    RC_ASSERT(geometry::flatten({moved(arc.start, by), moved(arc.end, by), arc.bulge}) == there);
  }));
}

// The middle of a chord and its ends, against the circle itself: half a grid diagonal (0.71) at the points, and no
// chord further away than asked, nor all of them much nearer (halving makes the error at most four times too small, and
// one step is kept back).
TEST(Flatten, NoChordFurtherThanAsked) {
  EXPECT_TRUE(rc::check("distance of chords", [] {
    const Curve arc = *any_arc();
    RC_PRE(!arc.straight() && arc.start != arc.end);
    const auto within = *rc::gen::element<std::int64_t>(2, 16, 160, 3200);
    const std::vector<Point> points = geometry::flatten(arc, units::Length::of_steps(within));
    RC_ASSERT(points.front() == arc.start);
    RC_ASSERT(points.back() == arc.end);
    double worst = 0;
    const double noise = arc.radius() * 1e-12;
    for (std::size_t i = 0; i + 1 < points.size(); ++i) {
      const Vec a = (points[i] - arc.start) - arc.centre();
      const Vec b = (points[i + 1] - arc.start) - arc.centre();
      RC_ASSERT(std::abs(length(a) - arc.radius()) < 0.7072 + noise);
      worst = std::max(worst, arc.radius() - length(0.5 * (a + b)));
    }
    RC_ASSERT(worst <= static_cast<double>(within) + noise);
    if (points.size() > 2) RC_ASSERT(worst >= static_cast<double>(within - 1) / 4.1 - 1.5 - noise);
  }));
}

// Inscribed polygons of 64 and 128 sides hold 0.998394 and 0.999598 of the circle: n/2 sin(2 pi/n) / pi.
TEST(Flatten, ACircleAsAPolygon) {
  const geometry::Region disk = draw::disk(0, 0, 10);
  const std::vector<Point> points = geometry::flatten(disk.polygons().front().outer.edges());
  double twice = 0;
  for (std::size_t i = 0; i < points.size(); ++i) {
    twice += cross(points[i] - points[0], points[(i + 1) % points.size()] - points[0]);
  }
  // r (1 - cos(pi/n)) <= 0.5 mm at r = 10 m needs n >= 315; halving half circles gives 512.
  ASSERT_EQ(points.size(), 512u);
  const double n = 512;
  EXPECT_NEAR(twice / 2 / (3200000.0 * 3200000.0 * draw::pi), n / 2 * std::sin(2 * draw::pi / n) / draw::pi, 1e-6);
}

}  // namespace
