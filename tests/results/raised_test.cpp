// What must be raised, and what must not (the demo job's own table of cases).
#include <algorithm>

#include "results/demo_jobs.h"

namespace {

template <class Change>
plan::Job changed(plan::Job job, const std::string& element, Change change) {
  plan::Element copy = *job.find(element);
  change(copy);
  return plan::with(job, std::move(copy));
}

bool any_hold_point(const results::Results& results, const std::string& word) {
  return std::ranges::any_of(results.takeoff.stages, [&](const takeoff::StageNotes& notes) {
    return std::ranges::any_of(notes.hold_points,
                               [&](const auto& point) { return point.look_at.find(word) != std::string::npos; });
  });
}

}  // namespace

TEST(Raised, asGiven) {
  const results::Results results = demo::compute(demo::job("pool-terrace-a"));
  EXPECT_TRUE(demo::raised(results, "bonding", "P"));  // licensed electrician, NEC 680.26(B)(2)
  EXPECT_FALSE(demo::raised(results, "not-computed"));
  EXPECT_FALSE(demo::raised(results, "no-way-out"));
  EXPECT_FALSE(demo::raised(results, "herringbone-misfit"));
  EXPECT_FALSE(demo::raised(results, "paving-overlaps"));
}

TEST(Raised, soilThatCannotBe) {
  EXPECT_FALSE(demo::raised(demo::compute(demo::job("pool-terrace-a")), "soil-choice"));
  const auto with = [](auto change) {
    plan::Job job = demo::job("pool-terrace-a");
    change(job.choices);
    return demo::raised(demo::compute(std::move(job)), "soil-choice");
  };
  EXPECT_TRUE(with([](plan::Choices& choices) { choices.soil.compacted = 0; }));
  EXPECT_TRUE(with([](plan::Choices& choices) { choices.soil.reusable = 1.5; }));
  EXPECT_TRUE(with([](plan::Choices& choices) { choices.soil.stands = "D"; }));
  EXPECT_TRUE(with([](plan::Choices& choices) { choices.rain_mm_h = -1; }));
}

TEST(Raised, kerbsWithoutWeepsShutTheWaterIn) {
  plan::Job job = demo::job("pool-terrace-a");
  for (const char* kerb : {"K1", "K2", "K3", "K4"})
    job = changed(job, kerb, [](plan::Element& element) { std::get<plan::EdgeRun>(element.kind).weeps.reset(); });
  EXPECT_TRUE(demo::raised(demo::compute(std::move(job)), "no-way-out"));
}

TEST(Raised, fullSizeUnitsDoNotLayHerringboneWithAJoint) {
  plan::Job job = demo::job("pool-terrace-b");
  auto catalogue = std::make_shared<catalogue::Catalogue>(*job.catalogue);
  catalogue::Item full = *catalogue->item("unit-4x8-60");
  full.id = "unit-8x4-full-60";
  full.length = units::Length::inches(8);
  full.width = units::Length::inches(4);
  catalogue->items[full.id] = std::make_shared<const catalogue::Item>(full);
  job.catalogue = catalogue;
  const auto other = changed(job, "A1", [](plan::Element& element) {
    std::get<plan::PavedArea>(element.kind).laying->units["unit"] = "unit-8x4-full-60";
  });
  const results::Results results = demo::compute(other);
  EXPECT_TRUE(demo::raised(results, "herringbone-misfit", "A1"));
  EXPECT_FALSE(demo::raised(results, "herringbone-misfit", "A2"));  // the rest computes
}

// A1's north edge moved from 25 ft 7 in to 26 ft 7 in: A1 and A2 overlap in 480 x 7 in less the round corner = 23.33 sq
// ft (3359.2 sq in) = 2.167 m2.
TEST(Raised, anOverlapIsSaidWithItsArea) {
  const plan::Job job = changed(demo::job("pool-terrace-a"), "A1", [](plan::Element& element) {
    for (geometry::Edge& edge : std::get<plan::PavedArea>(element.kind).outline[0].edges)
      if (edge.from.y == units::Length::inches(307)) edge.from.y = units::Length::inches(319);
  });
  const results::Results results = demo::compute(job);
  bool said = false;
  for (const problem::Problem& problem : results.problems())
    if (problem.code == "paving-overlaps") {
      said = true;
      EXPECT_NE(problem.text.find("2.167 m2"), std::string::npos) << problem.text;
      EXPECT_TRUE(problem.place.at.has_value());
    }
  EXPECT_TRUE(said);
}

TEST(Raised, aJobWithoutAPoolHasNoPoolPoints) {
  EXPECT_TRUE(any_hold_point(demo::compute(demo::job("pool-terrace-a")), "Bonding"));
  EXPECT_FALSE(any_hold_point(demo::compute(demo::job("bakery-court")), "Bonding"));
}

TEST(Raised, aLineWithoutAPriceKeepsTheTotalOpen) {
  plan::Job job = demo::job("bakery-court");
  auto catalogue = std::make_shared<catalogue::Catalogue>(*job.catalogue);
  catalogue::Item unpriced = *catalogue->item("perm-4x8-80");
  unpriced.price.reset();
  catalogue->items["perm-4x8-80"] = std::make_shared<const catalogue::Item>(unpriced);
  job.catalogue = catalogue;
  const results::Results results = demo::compute(std::move(job));
  EXPECT_TRUE(demo::raised(results, "no-price"));
  EXPECT_FALSE(results.estimate.final);
}
