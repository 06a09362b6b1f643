#include <gtest/gtest.h>

#include <algorithm>

#include <cmath>

#include "takeoff/ground/earth_kit.h"
#include "takeoff/ground/yard.h"
#include "takeoff/walls/kit.h"

using namespace earth_kit;
using earth_kit::measure;
using takeoff::ground::Excavation;

namespace {

constexpr double in = 0.0254;
constexpr double cubic_inch = in * in * in;

// 240 in along x, 4 in pipe whose invert starts `deep` inches under the datum and falls 1 %.
plan::DrainRun drain(double deep) {
  plan::DrainRun run;
  run.line = {{{kit::at(0, 0), 0, {}}}, kit::at(240, 0), {}};
  run.what = "pipe";
  run.item = "pipe-smooth-perf-4";
  run.start = kit::inches(-deep);
  run.fall = 0.01;
  return run;
}

plan::Job job_of(const std::vector<plan::Element>& elements) {
  plan::Job job = kit::job(kit::book(), elements);
  auto book = std::make_shared<catalogue::Catalogue>(*job.catalogue);
  const auto more = yard::catalogue();
  for (const auto& [id, item] : more->items) book->items[id] = item;
  book->build_ups["dense"] = more->build_ups["dense"];
  catalogue::BuildUp trench;
  trench.id = "pipe-trench";
  trench.use = "pipe";
  trench.layers = {yard::layer("stone", "agg-no57", 96, 0)};  // 12 in
  book->build_ups["pipe-trench"] = trench;
  job.catalogue = book;
  return job;
}

Excavation made_of(const plan::Job& job, const takeoff::levels::Terrain& terrain) {
  return dug(job, plan::site(job), terrain);
}

}  // namespace

// 4 in pipe + 6 in each side = 16 in wide; from level ground to 3 in under the invert: 21 to 23.4 in deep, 22.2 in the
// middle; 16 x 22.2 x 240 cu in. Earth goes back but for the pipe, pi/4 x 16 sq in; over 12 in of stone but for that.
TEST(RunDig, pipeTrench) {
  const Excavation bare = made_of(job_of({{"D1", "", drain(18)}}), lying({}));
  const double bank = 16 * 22.2 * 240 * cubic_inch;
  EXPECT_NEAR(measure(bare, "D1", "trench_m3"), bank, 1e-9);
  EXPECT_NEAR(measure(bare, "D1", "dig_deepest_m"), 23.4 * in, 1e-9);
  EXPECT_NEAR(measure(bare, "D1", "trench_fill_m3"), bank - std::numbers::pi / 4 * 16 * 240 * cubic_inch, 1e-9);
  plan::DrainRun run = drain(18);
  run.build_up = "pipe-trench";
  const Excavation stone = made_of(job_of({{"D1", "", run}}), lying({}));
  EXPECT_NEAR(measure(stone, "D1", "trench_m3"), bank, 1e-9);
  EXPECT_NEAR(measure(stone, "D1", "trench_fill_m3"), bank - 16 * 12 * 240 * cubic_inch, 1e-9);
  const auto* hole_of = hole(stone, "trench of D1");
  ASSERT_NE(hole_of, nullptr);
  EXPECT_TRUE(hole_of->trench);
  EXPECT_EQ(stone.share.facts, (std::vector<std::string>{"dig", "trench"}));
}

// Under a deck of 7 3/8 in the trench starts at its formation.
TEST(RunDig, underADeckFromItsFormation) {
  const plan::Job job = job_of({yard::paved("A1", yard::rectangle(-60, -60, 300, 60), "dense"), {"D1", "", drain(18)}});
  EXPECT_NEAR(measure(made_of(job, lying({})), "D1", "trench_m3"), 16 * (22.2 - 7.375) * 240 * cubic_inch, 1e-9);
}

// From 5 ft on the sides are sloped, 1 1/2 to 1 in soil C: level bottom 63 in down: (16 + 1.5 x 63) x 63 x 240 cu in;
// at 59 in they stand.
TEST(RunDig, sidesSlopeFromTheDepthThatNeedsProtection) {
  const auto made = [](double deep) {
    plan::DrainRun run = drain(deep - 3);
    run.fall = 0;
    return made_of(job_of({{"D1", "", run}}), lying({}));
  };
  EXPECT_NEAR(measure(made(63), "D1", "trench_m3"), (16 + 1.5 * 63) * 63 * 240 * cubic_inch, 1e-6);
  EXPECT_TRUE(said(made(63), "dig-protection"));
  EXPECT_NEAR(measure(made(59), "D1", "trench_m3"), 16 * 59 * 240 * cubic_inch, 1e-9);
  EXPECT_FALSE(said(made(59), "dig-protection"));
  EXPECT_TRUE(said(made(59), "dig-way-out"));
  // 63 in x 1 1/2 on each side: 94 1/2 in.
  const Excavation deep = made(63);
  const auto sides = std::ranges::find(deep.share.problems, "trench-sides", &problem::Problem::code);
  ASSERT_NE(sides, deep.share.problems.end());
  EXPECT_NE(sides->text.find("up to 7' 10 1/2\""), std::string::npos) << sides->text;
  EXPECT_FALSE(said(made(59), "trench-sides"));
}

// A sleeve 18 in down, with and without a survey; 16 x 18 x 240 cu in (as wide as the pipe's trench).
TEST(RunDig, sleeveByItsDepth) {
  plan::DrainRun run = drain(0);
  run.what = "sleeve";
  run.start.reset();
  for (const auto& terrain : {lying({5, 0.02, 0}), takeoff::levels::Terrain()})
    EXPECT_NEAR(measure(made_of(job_of({{"E1", "", run}}), terrain), "E1", "trench_m3"), 16 * 18 * 240 * cubic_inch,
                1e-6);
}

TEST(RunDig, whatCanNotBeWorkedOutIsSaid) {
  EXPECT_TRUE(said(made_of(job_of({{"D1", "", drain(18)}}), {}), "trench-no-ground"));
  plan::DrainRun run = drain(18);
  run.start.reset();
  EXPECT_TRUE(said(made_of(job_of({{"D1", "", run}}), lying({})), "trench-no-level"));
}

// The same trench drawn twice is dug once.
TEST(RunDig, twoPipesInOneTrench) {
  const Excavation made = made_of(job_of({{"D1", "", drain(18)}, {"D2", "", drain(18)}}), lying({}));
  EXPECT_NEAR(bank(made), 16 * 22.2 * 240 * cubic_inch, 1e-4);
}

// A pillar of 24 in on a pad 6 in past it, one course of 6 in buried and the limit of 6 in: 36 x 36 in, 6 + 6 in deep.
TEST(RunDig, pillarPad) {
  plan::KeepOut out;
  out.what = "pillar";
  out.outline = kit::shape({{0, 0}, {24, 0}, {24, 24}, {0, 24}});
  out.pillar = plan::Pillar{};
  out.pillar->block = "pillar-6x16";
  out.pillar->height = kit::inches(36);
  out.pillar->build_up = "wall-base-open";
  for (const auto& terrain : {lying({3, 0, 0}), takeoff::levels::Terrain()})
    EXPECT_NEAR(measure(made_of(job_of({{"P1", "", out}}), terrain), "P1", "dig_m3"), 36 * 36 * 12 * cubic_inch, 1e-6);
}
