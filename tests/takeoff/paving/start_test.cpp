// Where to start: what the list promises, and the worst width held to moving the edges by small steps.
#include "takeoff/paving/start.h"

#include "geometry/offset.h"
#include "laying.h"

using namespace laying;
using takeoff::paving::best_starts;
using takeoff::paving::For;

namespace {

constexpr takeoff::paving::Slivers limits{1.0 / 3, 2 * inch};

Region deck() { return region({box(0, 0, 150, 101), box(60, 40, 90, 61)}); }

}  // namespace

TEST(Starts, BestFirstAndAsLaid) {
  const Lattice l = lattice_of("running-half", inches(1, 2));
  for (const For what : {For::cuts, For::slivers}) {
    const auto list = best_starts(deck(), l, limits, what, 300);
    ASSERT_EQ(list.size(), 300u);
    bool has_present = false;
    for (std::size_t i = 0; i < list.size(); ++i) {
      has_present = has_present || list[i].start == l.start;
      if (i == 0) continue;
      const auto& a = list[i - 1].counts;
      const auto& b = list[i].counts;
      EXPECT_TRUE(what == For::cuts ? std::pair(a.cut, a.slivers) <= std::pair(b.cut, b.slivers)
                                    : std::pair(a.slivers, a.cut) <= std::pair(b.slivers, b.cut));
    }
    EXPECT_TRUE(has_present);
    for (const std::size_t i : {std::size_t{0}, std::size_t{150}, std::size_t{299}}) {
      Lattice there = l;
      there.start = list[i].start;
      const Layout laid = lay(deck(), there, limits);
      EXPECT_EQ(laid.whole(), list[i].counts.whole);
      EXPECT_EQ(static_cast<std::int64_t>(laid.pieces.size()), list[i].counts.cut);
    }
  }
}

TEST(Starts, FindsTheStartWithoutAnyCut) {
  // 10 x 20 ft of 4 x 8 in units laid tight fit whole from a corner, and only from there.
  const Lattice l = stack(203.2, 101.6, 0, inches(3, 1.3));
  const auto list = best_starts(region({box(0, 0, 240, 120)}), l, limits, For::cuts, 200);
  EXPECT_EQ(list.front().counts.cut, 0);
  EXPECT_EQ(list.front().counts.whole, 900);
}

TEST(Starts, WorstWidthIsThatOfAllEdgesMoved) {
  const Lattice l = stack(203.2, 101.6, 0, inches(1, 2));
  const Region ground = region({box(0, 0, 100, 50)});
  const double tolerance = inch / 2;
  const auto list = best_starts(ground, l, limits, For::site, 60, tolerance);
  int safe = 0;
  for (const auto& start : list) {
    Lattice there = l;
    there.start = start.start;
    // Every 1/64 in of the range, so that no jump is stepped over by more than that.
    double least = 4 * inch;
    for (int step = -32; step <= 32; ++step) {
      const auto moved = geometry::offset(ground, Length::inch_64ths(step), geometry::Corner::mitred);
      ASSERT_TRUE(moved.has_value());
      const auto counts = count(*moved, there, limits);
      if (counts.cut > 0) least = std::min(least, counts.least_width);
    }
    EXPECT_LE(start.worst_width, least + 1e-6);
    EXPECT_LE(least - start.worst_width, inch / 64 + takeoff::paving::grazing) << start.worst_width;
    safe += start.worst_width > takeoff::paving::grazing ? 1 : 0;
  }
  EXPECT_GT(safe, 0);
  EXPECT_GT(list.front().worst_width, takeoff::paving::grazing);
}
