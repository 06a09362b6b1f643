// What a laid wall needs, against counts made another way.
#include "takeoff/walls/laid_kit.h"

namespace {

using namespace kit;
using takeoff::Share;
using takeoff::walls::Make;

TEST(Counted, TheDemosWall) {
  const Laying laid = Laying(book(), demo_wall()).lay();
  const Share share = laid.counted();
  EXPECT_EQ(measure(share, "courses"), 7);
  EXPECT_NEAR(measure(share, "course_length_m:3"), 11.3538, 1e-6);
  EXPECT_NEAR(measure(share, "face_area_m2"), 12.544491, 1e-6);
  EXPECT_EQ(measure(share, "units_whole"), 118);
  EXPECT_EQ(measure(share, "corner_units"), 6);
  EXPECT_EQ(measure(share, "units_cut"), 12);
  // Exhaustive search with a kerf of 1/8 in, bound by length 9.
  EXPECT_EQ(measure(share, "units_for_cut_pieces"), 9);
  EXPECT_NEAR(measure(share, "units_by_area"), 135.027778, 1e-5);
  EXPECT_EQ(quantity(share, "wb-8x18"), 127);
  EXPECT_EQ(quantity(share, "wb-8x18-corner"), 6);
  EXPECT_EQ(share.cuts.size(), 12u);
  EXPECT_EQ(std::ranges::count(share.cuts, true, &takeoff::Cut::from_offcut), 3);
  for (const takeoff::Cut& cut : share.cuts) {
    EXPECT_NEAR(cut.length / in, 12, 1e-9);
    EXPECT_NEAR(cut.thickness / in, 8, 1e-9);
  }
  EXPECT_TRUE(fact(share, "wall"));
  EXPECT_TRUE(fact(share, "cuts"));
  EXPECT_NE(said(share, "heavy-unit"), nullptr);  // 38.23 kg is over 51 lb
}

TEST(Counted, WithoutReuseEveryPieceTakesAUnit) {
  Laying laid = Laying(book(), demo_wall()).lay();
  laid.job.choices.reuse = plan::Reuse::none;
  EXPECT_EQ(measure(laid.counted(), "units_for_cut_pieces"), 12);
}

TEST(Counted, TheDemosSeatWall) {
  WallBook all = book();
  all.rate("seat-block");
  const Share share = Laying(all, demo_seat_wall()).lay().counted();
  EXPECT_EQ(measure(share, "units"), 60);
  EXPECT_EQ(measure(share, "end_units"), 8);
  EXPECT_EQ(quantity(share, "sw-6x12"), 12);
  EXPECT_EQ(quantity(share, "sw-6x12-taper"), 40);
  EXPECT_EQ(quantity(share, "sw-6x12-end"), 8);
  EXPECT_EQ(task(share, "seat-block"), 60);
  EXPECT_EQ(line_of(share, "sw-6x12-half"), nullptr);
}

// 40 ft, 36 in exposed, 8 x 18 in, one course buried: 6 courses of 27, 162 units (constructed value of the trade sheet;
// of the 27 in a course one is cut to 12 in, and no offcut of 5 7/8 in serves another).
TEST(Counted, FortyFeetOfWall) {
  WallBook all = book();
  for (const char* rate : {"wall-first", "wall-block", "wall-corner", "wall-cut"}) all.rate(rate);
  const Share share = Laying(all, straight(480, 36)).lay().counted();
  EXPECT_EQ(measure(share, "courses"), 6);
  EXPECT_EQ(measure(share, "units"), 162);
  EXPECT_EQ(task(share, "wall-first"), 27);
  EXPECT_EQ(task(share, "wall-block"), 135);
  EXPECT_EQ(task(share, "wall-cut"), 6);
  EXPECT_NEAR(measure(share, "units_by_area"), 160, 1e-6);  // 40 x 4 ft over 1 sq ft each
}

// 18 in on a quarter of 10 ft: 15.708 ft -> 11 (constructed value of the trade sheet); one course of it here.
TEST(Counted, ElevenOnAQuarterOfTenFeet) {
  plan::Wall wall = straight(0, 0);
  wall.line = line({{0, 0, bulge(pi / 2)}}, 120, 120);
  wall.block = "wb-8x18-taper";
  wall.base = {level(0, -8)};
  wall.top = {level(0, 0)};
  wall.ground = {level(0, -1)};
  const Share share = Laying(book(), wall).lay().counted();
  EXPECT_EQ(measure(share, "courses"), 1);
  EXPECT_EQ(measure(share, "units"), 11);
}

// The count made another way: walk the wall inch by inch.
struct Steps {
  std::vector<int> length, base, top;
};
int units_of_course(const Steps& steps, int course) {
  int units = 0, inches_in_run = 0;
  for (std::size_t i = 0; i < steps.length.size(); ++i) {
    for (int inch = 0; inch < steps.length[i]; ++inch) {
      const bool stands = steps.base[i] <= course && course < steps.top[i];
      if (stands && inches_in_run++ % 18 == 0) ++units;
      if (!stands) inches_in_run = 0;
    }
  }
  return units;
}

TEST(Counted, ThousandRandomSteppedWallsByAPlainLoop) {
  const unsigned seed = std::random_device{}();
  SCOPED_TRACE("seed " + std::to_string(seed));
  std::printf("seed %u\n", seed);
  std::mt19937 dice(seed);
  const WallBook all = book();
  for (int n = 0; n < 1000; ++n) {
    Steps steps;
    plan::Wall wall = straight(0, 0);
    wall.least_overlap = 0;  // no bond to keep: each run is whole units and one piece
    wall.top.clear();
    wall.ground = {level(0, 24)};
    int at = 0, lowest = 100;
    for (unsigned i = 0; i < 1 + dice() % 8; ++i) {
      steps.length.push_back(12 + static_cast<int>(dice() % 240));
      steps.base.push_back(static_cast<int>(dice() % 3));
      steps.top.push_back(4 + static_cast<int>(dice() % 6));
      lowest = std::min(lowest, steps.base.back());
      for (int end : {at, at + steps.length.back()}) {
        wall.base.push_back(level(end, steps.base.back() * 8));
        wall.top.push_back(level(end, steps.top.back() * 8));
      }
      at += steps.length.back();
    }
    wall.line = line({{0, 0}}, at, 0);
    const Laying laid = Laying(all, wall).lay();
    ASSERT_TRUE(laid.profile);
    for (int inch = 0, i = 0, left = steps.length[0]; inch < at; ++inch) {
      const auto& column = laid.profile->at((inch + 0.5) * in);
      const auto number = static_cast<std::size_t>(i);
      ASSERT_EQ(column.courses(), steps.top[number] - steps.base[number]) << inch;
      ASSERT_EQ(column.base, steps.base[number] - lowest) << inch;
      if (--left == 0 && inch + 1 < at) left = steps.length[static_cast<std::size_t>(++i)];
    }
    for (int course = lowest; course < 10; ++course) {
      int units = 0;
      for (const walls::Run& run : laid.courses.bays[0]->runs) {
        if (run.course == course - lowest) units += static_cast<int>(run.units.size());
      }
      ASSERT_EQ(units, units_of_course(steps, course)) << "wall " << n << ", course " << course;
    }
  }
}

}  // namespace
