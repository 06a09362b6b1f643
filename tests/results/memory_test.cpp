// What is taken over from the last pass never shows: after each edit the results are those of computing all afresh.
#include <random>

#include "results/demo_jobs.h"

namespace {

// The retaining wall with one height of its ground, its top or its base moved by whole inches.
plan::Job edited(const plan::Job& job, std::mt19937& random) {
  plan::Element copy = *job.find("RW");
  auto& wall = std::get<plan::Wall>(copy.kind);
  std::vector<plan::HeightAt>* lists[] = {&wall.ground, &wall.top, &wall.base};
  std::vector<plan::HeightAt>& heights = *lists[random() % 3];
  plan::HeightAt& one = heights[random() % heights.size()];
  one.height = one.height + units::Length::inches(static_cast<std::int64_t>(random() % 17) - 8);
  return plan::with(job, std::move(copy));
}

}  // namespace

TEST(Memory, AnEditGivesWhatComputingAllGives) {
  const unsigned seed = 20'261;
  SCOPED_TRACE(seed);
  std::mt19937 random(seed);
  const plan::Job first = demo::job("pool-terrace-a");
  results::Memory memory;
  plan::Job job = first;
  for (int edit = 0; edit < 12; ++edit) {
    const auto value = std::make_shared<const plan::Job>(job);
    EXPECT_EQ(files::takeoff_json(results::compute(value, memory)), files::takeoff_json(results::compute(value)))
        << "edit " << edit;
    job = edited(edit % 4 == 3 ? first : job, random);
  }
}

TEST(Memory, OfTheTwoBaysAnEditOnTheReturnLaysOnlyItsOwn) {
  plan::Job job = demo::job("pool-terrace-a");
  results::Memory memory;
  results::compute(std::make_shared<const plan::Job>(job), memory);
  const auto before = memory.courses.at("RW");
  plan::Element copy = *job.find("RW");
  // The base of the return's last part, one course lower from 450 in on: the main run is not touched.
  std::get<plan::Wall>(copy.kind).base.back().height =
      std::get<plan::Wall>(copy.kind).base.back().height - units::Length::inches(8);
  results::compute(std::make_shared<const plan::Job>(plan::with(job, std::move(copy))), memory);
  const auto after = memory.courses.at("RW");
  ASSERT_EQ(before->bays.size(), 2u);
  ASSERT_EQ(after->bays.size(), 2u);
  EXPECT_EQ(before->bays[0], after->bays[0]);
  EXPECT_NE(before->bays[1], after->bays[1]);
}

TEST(Memory, AWallThatIsGoneIsForgotten) {
  const plan::Job job = demo::job("pool-terrace-a");
  results::Memory memory;
  results::compute(std::make_shared<const plan::Job>(job), memory);
  EXPECT_EQ(memory.courses.size(), 2u);  // RW and SW
  results::compute(std::make_shared<const plan::Job>(plan::without(job, "SW")), memory);
  EXPECT_EQ(memory.courses.size(), 1u);
}
