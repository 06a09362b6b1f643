#include "takeoff/ground/fabric.h"

#include <gtest/gtest.h>
#include <rapidcheck.h>

#include "takeoff/ground/yard.h"

using units::Length;

// Strips of a roll 12 ft 6 in wide across 35 ft 6 in: with 1 ft laps exactly 3 (12.5 + 2 x 11.5 = 35.5); with 2 ft
// laps 4. 30 ft with 1 ft laps: 3. 22 ft 6 in: laps of 18 in or 2 ft 2 strips, 3 ft 3 strips. By arithmetic, from the
// overlap rule of AASHTO M 288 (from memory).
TEST(Fabric, stripsWithTheBoundaryCase) {
  const Length roll = Length::inches(150);
  EXPECT_EQ(takeoff::ground::strips(Length::inches(426), roll, Length::feet(1)), 3);
  EXPECT_EQ(takeoff::ground::strips(Length::inches(426) + Length::of_steps(1), roll, Length::feet(1)), 4);
  EXPECT_EQ(takeoff::ground::strips(Length::inches(426), roll, Length::feet(2)), 4);
  EXPECT_EQ(takeoff::ground::strips(Length::feet(30), roll, Length::feet(1)), 3);
  EXPECT_EQ(takeoff::ground::strips(Length::inches(270), roll, Length::inches(18)), 2);
  EXPECT_EQ(takeoff::ground::strips(Length::inches(270), roll, Length::feet(2)), 2);
  EXPECT_EQ(takeoff::ground::strips(Length::inches(270), roll, Length::feet(3)), 3);
  EXPECT_EQ(takeoff::ground::strips(Length::feet(12), roll, Length::feet(1)), 1);
}

// The slow way: lay strips until the far side is reached.
TEST(Fabric, stripsAreAsManyAsLayingThem) {
  EXPECT_TRUE(rc::check("as laid one by one", [] {
    const auto across = Length::of_steps(*rc::gen::inRange<long long>(1, 30'000'000));
    const auto roll = Length::of_steps(*rc::gen::inRange<long long>(2, 2'000'000));
    const auto lap = Length::of_steps(*rc::gen::inRange<long long>(0, roll.steps()));
    RC_PRE(across.steps() / (roll - lap).steps() < 100000);
    int count = 1;
    for (Length reached = roll; reached < across; reached += roll - lap) ++count;
    RC_ASSERT(takeoff::ground::strips(across, roll, lap) == count);
  }));
}

// 20 x 10 ft on open stone, base to 21 x 11 ft, turned up 6 in (its depth) + 12 in at each side: 24 x 14 ft. Across 14
// ft: 2 strips of 24 ft = 48 ft of roll; the other way 3 strips (24 ft: 12.5 + 11.5 = 24 exactly 2) of 14 ft = 28 ft:
// taken.
TEST(Fabric, bothWaysAreTriedAndSidesTurnedUp) {
  const plan::Job job = yard::job({yard::paved("A1", yard::rectangle(0, 0, 240, 120), "open")});
  const plan::Site site = plan::site(job);
  const auto share = takeoff::ground::fabric(job, site, takeoff::ground::bodies(job, site));
  ASSERT_EQ(share.lines.size(), 1u);
  EXPECT_NEAR(share.lines[0].working.amount().value, 28 * 0.3048, 1e-9);
}

TEST(Fabric, forSoftGroundAloneIsLeftOutOverFirm) {
  plan::Job job = yard::job({yard::paved("A1", yard::rectangle(0, 0, 240, 120), "open")});
  auto book = std::make_shared<catalogue::Catalogue>(*job.catalogue);
  book->build_ups["open"].layers[3].notes = "soft ground only";
  job.catalogue = book;
  const plan::Site site = plan::site(job);
  const auto laid = [&] { return takeoff::ground::fabric(job, site, takeoff::ground::bodies(job, site)); };
  EXPECT_TRUE(laid().lines.empty());
  EXPECT_TRUE(yard::said(laid(), "fabric-left-out"));
  job.choices.cbr = "soft";
  EXPECT_EQ(laid().lines.size(), 1u);
  EXPECT_FALSE(yard::said(laid(), "fabric-left-out"));
}
