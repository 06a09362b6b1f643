// Real wall lines (City of Cambridge, Massachusetts, GIS basemap, PDDL 1.0; (c) OpenStreetMap contributors, ODbL 1.0):
// they have neither block nor height; once all get the same, each has its courses or a problem that names it.
#include <algorithm>

#include "results/demo_jobs.h"

namespace {

plan::Job imported(const std::string& file) {
  const std::string path = std::string(HOUSE_ROOT) + "/tests/data/" + file;
  auto read = files::import_geojson(demo::text_of(path), file, "", {{"*", "wall"}});
  if (read) return std::move(read->job);
  ADD_FAILURE() << problem::sentence(read.error());
  return demo::job("pool-terrace-a");
}

plan::Job with_one_block(plan::Job job) {
  job.catalogue = demo::job("pool-terrace-a").catalogue;
  for (const plan::ElementPtr& element : std::vector(job.elements)) {
    plan::Element copy = *element;
    auto& wall = std::get<plan::Wall>(copy.kind);
    wall.block = "wb-8x18";
    wall.cap = "cap-18";
    wall.height = units::Length::inches(36);
    job = plan::with(job, std::move(copy));
  }
  return job;
}

bool has_problem(const results::Results& results, const plan::ElementId& id) {
  return std::ranges::any_of(results.problems(), [&](const problem::Problem& said) {
    return said.severity == problem::Severity::problem && said.place.element == id;
  });
}

std::optional<double> measure(const results::Results& results, const plan::ElementId& id, const char* name) {
  for (const takeoff::Measures& own : results.takeoff.measures)
    if (own.element == id)
      if (const auto value = own.get(name)) return value;
  return std::nullopt;
}

class ImportedWalls : public testing::TestWithParam<const char*> {};

TEST_P(ImportedWalls, withNothingChosenSayWhatIsMissing) {
  const results::Results results = demo::compute(imported(GetParam()));
  ASSERT_FALSE(results.job->elements.empty());
  for (const plan::ElementPtr& element : results.job->elements) {
    EXPECT_TRUE(measure(results, element->id, "length_m") || has_problem(results, element->id)) << element->id;
    EXPECT_TRUE(has_problem(results, element->id)) << element->id;
  }
  EXPECT_FALSE(results.final());
}

TEST_P(ImportedWalls, withOneBlockAndHeightAreLaid) {
  const results::Results results = demo::compute(with_one_block(imported(GetParam())));
  int laid = 0;
  for (const plan::ElementPtr& element : results.job->elements) {
    const auto units = measure(results, element->id, "units");
    if (!units) {
      EXPECT_TRUE(has_problem(results, element->id)) << element->id << " has neither units nor a problem";
      continue;
    }
    ++laid;
    // 36 in to the top of the cap, top kept: less the cap of 3 in, 33 in show above the ground, 8 in are buried at
    // least: ceil((33 + 8) / 8) = 6 courses, 48 in.
    EXPECT_EQ(measure(results, element->id, "courses"), 6) << element->id;
    // Units by laying and by area differ at ends and corners only: what a corner takes is bounded by two units a course
    // and corner, and no count is under the face it has to cover.
    const double by_area = measure(results, element->id, "units_by_area").value_or(0);
    EXPECT_GE(*units, by_area - 1e-6) << element->id;
  }
  EXPECT_GT(laid, static_cast<int>(results.job->elements.size()) * 3 / 4);
}

INSTANTIATE_TEST_SUITE_P(Files, ImportedWalls, testing::Values("walls.geojson", "osm_walls.geojson"));

}  // namespace
