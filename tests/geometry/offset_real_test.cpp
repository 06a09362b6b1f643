// Offsets of outlines that other people drew, against areas computed by another program (tests/data/SOURCES.md).
#include <gtest/gtest.h>

#include <map>

#include "geometry/drawing.h"
#include "geometry/offset.h"
#include "geometry/read_outlines.h"

namespace {

using geometry::Corner;
using geometry::Region;

const std::string data = HOUSE_ROOT "/tests/data/";

// The answers are rounded to 0.001 m2 and made from coordinates of 1 mm.
void expect_area(const Region& from, units::Length out, Corner corner, const std::string& answer,
                 const std::string& id) {
  const auto made = geometry::offset(from, out, corner);
  ASSERT_TRUE(made.has_value()) << id << ": " << problem::sentence(made.error());
  drawing::expect_valid(*made);
  const double want = std::stod(answer);
  EXPECT_NEAR(made->area().si(), want, 0.004 + 1e-4 * want) << id << (corner == Corner::round ? " round" : " mitred");
}

TEST(RealOutlines, OffsetsOfEveryValidPolygon) {
  std::map<std::string, std::map<std::string, read_outlines::Feature>> files;
  int checked = 0;
  for (auto& row : read_outlines::rows(data + "answers_outlines.csv")) {
    if (row["kind"] != "polygon" || row["valid"] != "True") continue;
    auto& file = files[row["file"]];
    if (file.empty()) {
      for (auto& feature : read_outlines::features(data + row["file"])) file[feature.id] = feature;
    }
    std::vector<geometry::Polygon> polygons;
    for (const geometry::Drawn& part : file.at(row["id"]).parts) {
      const auto shape = geometry::shape(part);
      ASSERT_TRUE(shape.has_value()) << row["id"];
      for (const geometry::Polygon& polygon : shape->region.polygons()) polygons.push_back(polygon);
    }
    const Region region = geometry::Shapes::region(polygons);
    const units::Length foot = units::Length::feet(1);
    expect_area(region, foot, Corner::mitred, row["area_offset_out_0.3048_mitre5"], row["id"]);
    expect_area(region, foot, Corner::round, row["area_offset_out_0.3048_round"], row["id"]);
    expect_area(region, -foot, Corner::mitred, row["area_offset_in_0.3048_mitre5"], row["id"]);
    ++checked;
  }
  EXPECT_GT(checked, 150);
}

}  // namespace
