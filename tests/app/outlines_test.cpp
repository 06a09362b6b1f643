// Outlines that other people drew: City of Cambridge, Massachusetts,, GIS basemap (public domain, PDDL 1.0) and
// OpenStreetMap
// ((c) OpenStreetMap contributors, ODbL 1.0); answers computed with GEOS 3.11 through shapely. See
// tests/data/SOURCES.md.
#include <gtest/gtest.h>

#include "app/run_program.h"
#include "units/number.h"

using program::data;
using program::rows;
using program::take;

namespace {

double cell(const std::map<std::string, std::string>& row, const char* column) {
  return units::read_number(row.at(column)).value_or(-1);
}

// The data are rounded to 1 mm, the answers to 1 mm and 1 mm2: 0.01 % and 4 mm.
void expect_close(double got, double wanted, const std::string& what) {
  EXPECT_NEAR(got, wanted, 0.004 + 1e-4 * wanted) << what;
}

// A feature of several parts is ID, ID#2, ID#3.
double sum_of_parts(const program::Taken& taken, const std::string& id, const std::string& measure) {
  double sum = 0;
  for (const std::string& element : taken.elements())
    if (element == id || element.starts_with(id + "#")) {
      const auto measures = taken.measures(element);
      if (const auto found = measures.find(measure); found != measures.end()) sum += found->second;
    }
  return sum;
}

class Outlines : public testing::TestWithParam<const char*> {};

TEST_P(Outlines, areMeasuredAsGeosMeasuresThem) {
  const std::string name = GetParam();
  const bool lines = name.find("walls") != std::string::npos;
  const program::Taken taken = take(data(name), {lines ? "*=edge-run" : "*=paved-area"});
  int seen = 0;
  for (const auto& row : rows(data("answers_outlines.csv"))) {
    if (row.at("file") != name) continue;
    ++seen;
    const std::string id = row.at("id");
    if (row.at("valid") != "True") {
      EXPECT_FALSE(taken.problems(id).empty())
          << id << " is invalid (" << row.at("why_invalid") << ") and nothing says so";
      continue;
    }
    if (!lines) expect_close(sum_of_parts(taken, id, "outline_area_m2"), cell(row, "area_m2"), id + " area");
    expect_close(sum_of_parts(taken, id, lines ? "length_m" : "perimeter_m"), cell(row, "length_or_perimeter_m"),
                 id + " length");
  }
  EXPECT_GT(seen, 0);
}

INSTANTIATE_TEST_SUITE_P(Files, Outlines,
                         testing::Values("pools.geojson", "plazas.geojson", "walkways.geojson", "decks.geojson",
                                         "porches.geojson", "walls.geojson", "pool_decks_coarse.geojson",
                                         "patios_coarse.geojson", "osm_pools.geojson", "osm_paved_areas.geojson",
                                         "osm_fountains_ponds.geojson", "osm_walls.geojson"));

}  // namespace
