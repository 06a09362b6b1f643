// Six back yards as they lie on the ground (City of Cambridge, Massachusetts, GIS basemap, PDDL 1.0); answers by GEOS
// through shapely: the union of all paving less the pools, and less decks and porches too.
#include <gtest/gtest.h>

#include "app/run_program.h"
#include "units/number.h"

using program::data;

namespace {

const std::vector<std::string> paving{"paved_other=paved-area", "private_walkway=paved-area", "footpath=paved-area",
                                      "pool=pool"};

double answer(const std::string& site, const char* column) {
  for (const auto& row : program::rows(data("answers_sites.csv")))
    if (row.at("site") == site) return units::read_number(row.at(column)).value_or(-1);
  ADD_FAILURE() << "no answer for " << site;
  return -1;
}

class Sites : public testing::TestWithParam<const char*> {};

TEST_P(Sites, netAreasAddUpToTheUnionLessThePools) {
  const program::Taken taken = program::take(data(GetParam()), paving);
  EXPECT_NEAR(taken.sum("paved-area", "net_area_m2"), answer(GetParam(), "paved_minus_pools_m2"), 0.02);
  EXPECT_NEAR(taken.sum("pool", "water_area_m2"), answer(GetParam(), "pools_area_m2"), 0.01);
  EXPECT_NE(taken.import_said.find("deck"), std::string::npos);  // not mapped, and said so
}

TEST_P(Sites, decksAndPorchesAsKeepOutsCutToo) {
  auto layers = paving;
  layers.insert(layers.end(), {"deck=keep-out", "porch=keep-out"});
  const program::Taken taken = program::take(data(GetParam()), layers);
  EXPECT_NEAR(taken.sum("paved-area", "net_area_m2"), answer(GetParam(), "paved_minus_pools_decks_porches_m2"), 0.02);
}

INSTANTIATE_TEST_SUITE_P(Yards, Sites,
                         testing::Values("site_02.geojson", "site_05.geojson", "site_08.geojson", "site_14.geojson",
                                         "site_17.geojson"));

// Two of its walkways cross themselves: its paving has no true area, and that is said with their places.
TEST(Sites, aYardWithCrossedWalksSaysSo) {
  const program::Taken taken = program::take(data("site_11.geojson"), paving);
  int crossed = 0;
  for (const std::string& id : taken.elements("paved-area"))
    for (const files::Value* said : taken.problems(id))
      if (said->find("code")->text == "outline-crosses-itself") ++crossed;
  EXPECT_EQ(crossed, 2);
}

}  // namespace
