// Outlines that other people drew, against answers computed by another program (tests/data/SOURCES.md).
#include <gtest/gtest.h>

#include <map>

#include "geometry/overlay.h"
#include "geometry/read_outlines.h"

namespace {

using geometry::Region;
using read_outlines::Feature;

const std::string data = HOUSE_ROOT "/tests/data/";

// The data are rounded to 1 mm and the answers to 0.001.
bool close(double got, double want) { return std::abs(got - want) <= 0.004 + 1e-4 * std::abs(want); }

struct Measured {
  double area = 0;
  double perimeter = 0;
  std::vector<problem::Problem> problems;
};

Measured measured(const Feature& feature) {
  Measured sum;
  for (const geometry::Drawn& part : feature.parts) {
    const auto shape = geometry::shape(part);
    if (!shape) {
      sum.problems.push_back(shape.error());
      continue;
    }
    sum.problems.insert(sum.problems.end(), shape->notices.begin(), shape->notices.end());
    sum.area += shape->region.area().si();
    sum.perimeter += shape->region.perimeter().si();
  }
  return sum;
}

bool has_place(const std::vector<problem::Problem>& problems) {
  for (const problem::Problem& one : problems) {
    if (one.place.at.has_value()) return true;
  }
  return false;
}

TEST(RealOutlines, AreasPerimetersAndFaults) {
  std::map<std::string, std::map<std::string, Feature>> files;
  int checked = 0;
  int invalid = 0;
  for (auto& row : read_outlines::rows(data + "answers_outlines.csv")) {
    if (row["kind"] != "polygon") continue;
    auto& file = files[row["file"]];
    if (file.empty()) {
      for (Feature& feature : read_outlines::features(data + row["file"])) file[feature.id] = feature;
    }
    ASSERT_TRUE(file.contains(row["id"])) << row["file"] << " " << row["id"];
    const Feature& feature = file.at(row["id"]);
    EXPECT_EQ(feature.parts.size(), std::stoul(row["parts"]));
    const Measured got = measured(feature);
    if (row["valid"] != "True") {
      ++invalid;
      EXPECT_TRUE(has_place(got.problems)) << row["file"] << " " << row["id"] << " " << row["why_invalid"];
      continue;
    }
    ++checked;
    for (const auto& one : got.problems) EXPECT_EQ(one.severity, problem::Severity::notice) << problem::sentence(one);
    EXPECT_TRUE(close(got.area, std::stod(row["area_m2"]))) << row["id"] << " " << got.area << " " << row["area_m2"];
    EXPECT_TRUE(close(got.perimeter, std::stod(row["length_or_perimeter_m"])))
        << row["id"] << " " << got.perimeter << " " << row["length_or_perimeter_m"];
  }
  // 208 polygons in the lists, of which their publisher's faults spoil 11.
  EXPECT_EQ(checked, 197);
  EXPECT_EQ(invalid, 11);
}

// Of the eleven outlines that are not valid one runs across itself, three have a spike of no width, the others meet
// themselves in a point or along an island.
TEST(RealOutlines, TouchingIsToldFromCrossing) {
  const std::map<std::string, std::map<std::string, std::string>> faulty{
      {"plazas.geojson",
       {{"plaza-8", "outline-touches-itself"},
        {"plaza-11", "outline-touches-itself"},
        {"plaza-35", "outline-touches-itself"}}},
      {"walkways.geojson", {{"footpath-106", "outline-touches-itself"}}},
      {"pool_decks_coarse.geojson", {{"pooldeck-8154", "outline-touches-itself"}}},
      {"patios_coarse.geojson",
       {{"patio-8533", "outline-crosses-itself"},
        {"patio-4620", "outline-touches-itself"},
        {"patio-1518", "outline-touches-itself"},
        {"patio-3809", "outline-spike"},
        {"patio-7971", "outline-spike"},
        {"patio-8610", "outline-spike"}}}};
  for (const auto& [file, wanted] : faulty) {
    for (const Feature& feature : read_outlines::features(data + file)) {
      if (!wanted.contains(feature.id)) continue;
      const std::string& code = wanted.at(feature.id);
      const auto shape = geometry::shape(feature.parts.front());
      if (code == "outline-crosses-itself") {
        ASSERT_FALSE(shape.has_value()) << feature.id;
        EXPECT_EQ(shape.error().code, code);
        // The answers' program names 24.036 -86.371.
        EXPECT_NEAR(shape.error().place.at.value().x, 24.0362033, 1e-5);
        EXPECT_NEAR(shape.error().place.at.value().y, -86.3707113, 1e-5);
        continue;
      }
      ASSERT_TRUE(shape.has_value()) << feature.id << " " << problem::sentence(shape.error());
      ASSERT_FALSE(shape->notices.empty()) << feature.id;
      EXPECT_EQ(shape->notices.front().code, code) << feature.id;
      EXPECT_TRUE(shape->notices.front().place.at.has_value());
      // What only touches keeps the area that its rings enclose by themselves.
      double rings = 0;
      for (std::size_t i = 0; i < feature.parts.front().size(); ++i) {
        rings += (i == 0 ? 1 : -1) * std::abs(geometry::signed_area(feature.parts.front()[i]).si());
      }
      EXPECT_NEAR(shape->region.area().si(), rings, shape->region.perimeter().si() / 320000) << feature.id;
    }
  }
}

// Back yards: paving together, less pools, less decks and porches, and everything together.
TEST(RealOutlines, Sites) {
  for (auto& row : read_outlines::rows(data + "answers_sites.csv")) {
    std::vector<Region> pools, paving, decks, all;
    for (const Feature& feature : read_outlines::features(data + row["site"])) {
      if (feature.type == "LineString") continue;
      for (const geometry::Drawn& part : feature.parts) {
        const auto shape = geometry::shape(part);
        ASSERT_TRUE(shape.has_value()) << row["site"] << " " << problem::sentence(shape.error());
        const std::string& layer = feature.layer;
        const std::size_t paved = paving.size();
        if (layer == "pool") pools.push_back(shape->region);
        if (layer == "paved_other" || layer == "private_walkway" || layer == "footpath")
          paving.push_back(shape->region);
        if (layer == "deck" || layer == "porch") decks.push_back(shape->region);
        if (layer == "pool" || layer == "deck" || layer == "porch" || paving.size() > paved)
          all.push_back(shape->region);
      }
    }
    const auto area = [](const problem::Result<Region>& region) { return region ? region->area().si() : -1; };
    const auto paved = geometry::unite(paving);
    ASSERT_TRUE(paved.has_value()) << problem::sentence(paved.error());
    const auto dry = geometry::subtract(*paved, pools);
    ASSERT_TRUE(dry.has_value());
    const auto open = geometry::subtract(*dry, decks);
    EXPECT_NEAR(area(geometry::unite(pools)), std::stod(row["pools_area_m2"]), 0.002) << row["site"];
    EXPECT_NEAR(area(paved), std::stod(row["paved_union_m2"]), 0.002) << row["site"];
    EXPECT_NEAR(area(dry), std::stod(row["paved_minus_pools_m2"]), 0.002) << row["site"];
    EXPECT_NEAR(area(open), std::stod(row["paved_minus_pools_decks_porches_m2"]), 0.002) << row["site"];
    EXPECT_NEAR(area(geometry::unite(all)), std::stod(row["all_union_m2"]), 0.002) << row["site"];
  }
}

}  // namespace
