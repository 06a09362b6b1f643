#include "sheets/wall_elevation.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "demo.h"
#include "sheets/parts.h"

namespace {

using sheets::Line;
using sheets::Material;
using sheets::WallElevation;

constexpr double inch = 0.0254;

WallElevation elevation(const std::string& wall, const char* job = "pool-terrace-a") {
  return sheets::wall_elevation(demo::results(job), wall).value();
}

double measure(const std::string& of, const std::string& name, const char* job = "pool-terrace-a") {
  for (const takeoff::Measures& measures : demo::results(job).takeoff.measures)
    if (measures.element == of) return measures.get(name).value_or(-1);
  return -1;
}

std::vector<const sheets::Area*> units(const WallElevation& face) {
  std::vector<const sheets::Area*> found;
  for (const sheets::Part& part : face.figure.parts) {
    const auto* area = std::get_if<sheets::Area>(&part);
    if (!area || (area->material != Material::none && area->material != Material::block)) continue;
    // Caps are no units: a cut one is hatched as a cut unit is, and as high as a cap.
    sheets::Extent extent;
    for (const sheets::Contour& contour : area->contours) extent.take(contour);
    if (extent.high().y - extent.low().y > 4 * inch) found.push_back(area);
  }
  return found;
}

double drawn_area(const std::vector<const sheets::Area*>& areas) {
  double sum = 0;
  for (const sheets::Area* area : areas)
    for (const sheets::Contour& contour : area->contours) sum += std::abs(sheets::area_of(contour));
  return sum;
}

TEST(WallElevation, CountsWhatTheTakeoffCounts) {
  for (const char* job : {"pool-terrace-a", "pool-terrace-b"}) {
    for (const char* wall : {"RW", "SW"}) {
      int whole = 0, half = 0, corner = 0, end = 0, cut = 0;
      const WallElevation face = elevation(wall, job);
      for (const WallElevation::Course& course : face.courses) {
        whole += course.whole;
        half += course.half;
        corner += course.corner;
        end += course.end;
        cut += course.cut;
        EXPECT_NEAR(course.length, measure(wall, "course_length_m:" + std::to_string(course.number), job), 1e-9);
      }
      EXPECT_EQ(whole, measure(wall, "units_whole", job)) << job << " " << wall;
      EXPECT_EQ(half, measure(wall, "units_half", job)) << job << " " << wall;
      EXPECT_EQ(corner, measure(wall, "corner_units", job)) << job << " " << wall;
      EXPECT_EQ(end, measure(wall, "end_units", job)) << job << " " << wall;
      EXPECT_EQ(cut, measure(wall, "units_cut", job)) << job << " " << wall;
      EXPECT_EQ(face.caps, measure(wall, "caps", job)) << job << " " << wall;
    }
  }
}

// Heights of the demo's wall in inches above its datum; the cap takes 3 of the top. Blocks of 8 in stand
//   0 to 54: 1179 to 1211, 54 to 120: 1187 to 1219, 120 to 234: 1187 to 1227, 234 to 414: 1187 to 1235,
//   414 to 450: 1195 to 1235, 450 to 488: 1203 to 1235.
TEST(WallElevation, UnitsFillTheFaceWithoutGapOrOverlap) {
  const double face = 54 * 32 + 66 * 32 + 114 * 40 + 180 * 48 + 36 * 40 + 38 * 32;  // 19,696 sq in
  EXPECT_NEAR(drawn_area(units(elevation("RW"))), face * inch * inch, 0.01 * face * inch * inch);
  const WallElevation seat = elevation("SW");
  double all = 0;
  for (const WallElevation::Course& course : seat.courses) all += course.length > 0 ? 1 : 0;
  // Of one height all along: length x courses x 6 in.
  EXPECT_NEAR(drawn_area(units(seat)), seat.length * all * 6 * inch, 1e-6);
}

TEST(WallElevation, StepsStandWhereTheWallHasThem) {
  const WallElevation face = elevation("RW");
  EXPECT_NEAR(face.length, 488 * inch, 1e-6);  // 31 ft 6 in and 9 ft 2 in
  std::vector<double> base, top, corner;
  for (const WallElevation::Station& one : face.stations) {
    if (one.what == WallElevation::What::base_step) base.push_back(one.at / inch);
    if (one.what == WallElevation::What::top_step) top.push_back(one.at / inch);
    if (one.what == WallElevation::What::corner) corner.push_back(one.at / inch);
  }
  ASSERT_EQ(base.size(), 3U);
  EXPECT_NEAR(base[0], 54, 1e-6);
  EXPECT_NEAR(base[1], 414, 1e-6);
  EXPECT_NEAR(base[2], 450, 1e-6);
  ASSERT_EQ(top.size(), 3U);
  EXPECT_NEAR(top[0], 54, 1e-6);
  EXPECT_NEAR(top[1], 120, 1e-6);
  EXPECT_NEAR(top[2], 234, 1e-6);
  ASSERT_EQ(corner.size(), 1U);
  EXPECT_NEAR(corner[0], 378, 1e-6);
}

TEST(WallElevation, IsSeenFromTheFront) {
  // The fill of RW lies to the right of its line, so whoever stands before it has the line's start at the right hand;
  // the seat wall's body lies to the left.
  const WallElevation right = elevation("RW"), left = elevation("SW");
  EXPECT_TRUE(right.starts_right);
  EXPECT_NEAR(right.x(0), right.length, 1e-12);
  EXPECT_FALSE(left.starts_right);
  EXPECT_NEAR(left.x(1), 1, 1e-12);
}

TEST(WallElevation, EndsHaveTheLevelsThatWereGiven) {
  const WallElevation face = elevation("RW");
  EXPECT_NEAR(face.datum, 1179 * inch, 1e-6);
  EXPECT_NEAR(face.start.base, 0, 1e-6);
  EXPECT_NEAR(face.start.top, (1214 - 1179) * inch, 1e-6);
  EXPECT_NEAR(face.start.ground.value(), (1188 - 1179) * inch, 1e-6);
  EXPECT_NEAR(face.finish.base, (1203 - 1179) * inch, 1e-6);
  EXPECT_NEAR(face.finish.top, (1238 - 1179) * inch, 1e-6);
}

TEST(WallElevation, LayersLieOnTheirCourses) {
  const WallElevation face = elevation("RW");
  ASSERT_EQ(face.layers.size(), 2U);
  const WallElevation::Layer& low = face.layers[0];
  EXPECT_EQ(low.on_course, 3);
  EXPECT_NEAR(low.length, 60 * inch, 1e-6);
  EXPECT_NEAR(low.from, 54 * inch, 1e-6);
  EXPECT_NEAR(low.to, 450 * inch, 1e-6);
  EXPECT_NEAR(low.y, 24 * inch, 1e-6);  // top of three courses of 8 in
  EXPECT_EQ(face.layers[1].on_course, 5);
  EXPECT_NEAR(face.layers[1].from, 120 * inch, 1e-6);
  EXPECT_NEAR(face.layers[1].to, 488 * inch, 1e-6);
}

TEST(WallElevation, CutUnitsAreMarkedAndWholeOnesAreNot) {
  const WallElevation face = elevation("RW");
  int cut = 0;
  for (const sheets::Area* unit : units(face)) {
    EXPECT_EQ(unit->line == Line::cut_edge, unit->material == Material::block);
    cut += unit->material == Material::block ? 1 : 0;
  }
  EXPECT_EQ(cut, measure("RW", "units_cut"));
}

TEST(WallElevation, NothingForWhatIsNotBuilt) {
  EXPECT_FALSE(sheets::wall_elevation(demo::results("bakery-court"), "W1"));  // it stands already
  EXPECT_FALSE(sheets::wall_elevation(demo::results(), "A1"));
  EXPECT_FALSE(sheets::wall_elevation(demo::results(), "nobody"));
}

}  // namespace
