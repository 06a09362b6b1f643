#include "takeoff/levels/terrain.h"

#include "takeoff/levels/yard.h"

namespace {

using namespace yard;  // NOLINT

plan::Element unread(const std::string& id, double x, double y) {
  return {id, "", plan::Level{at(x, y), {}, "existing", ""}};
}

TEST(Terrain, LevelsTakeTheirHeightsFromTheBook) {
  // 100.00 + 5.00 = 105.00; less 4.00 is 101.00, less 3.00 is 102.00.
  plan::LevelBook book;
  book.start = feet(100);
  book.finish = feet(102);  // closed, so nothing is said of that
  book.readings = {{"BM", feet(5), {}, {}, ""}, {"g1", {}, feet(4), {}, ""}, {"g2", {}, {}, feet(3), ""}};
  const Worked one = worked({unread("g1", 0, 0), unread("g2", 10, 0), unread("g3", 5, 5), {"LB", "", book}});
  EXPECT_NEAR(one.terrain.points.at("g1") / foot, 101, 1e-5);
  EXPECT_NEAR(one.terrain.points.at("g2") / foot, 102, 1e-5);
  EXPECT_FALSE(one.terrain.points.contains("g3"));
  EXPECT_EQ(one.codes(), std::set<std::string>{"level-height"});
  EXPECT_EQ(one.terrain.problems.front().place.element, "g3");
}

TEST(Terrain, AFaultyBookIsToldAndTypedHeightsStand) {
  plan::LevelBook book;
  const Worked one = worked({level("g1", 0, 0, 100, "existing"), {"LB", "", book}});
  EXPECT_EQ(one.codes(), std::set<std::string>{"level-book-empty"});
  ASSERT_TRUE(one.terrain.existing);
}

TEST(Terrain, ExistingGroundIsAPlaneWhereItsLevelsAre) {
  // z = 98 + x / 20 + y / 10, on a grid; everything drawn lies within the guess around it.
  std::vector<plan::Element> yard{paved("A", shape(box(200, 200, 210, 210)), plane(200, 200, 100, 0.02, 0))};
  int number = 0;
  for (const double x : {0.0, 20.0, 45.0})
    for (const double y : {0.0, 15.0, 30.0})
      yard.push_back(level("g" + std::to_string(++number), x, y, 98 + x / 20 + y / 10, "existing"));
  const Worked one = worked(yard);
  for (const auto& [x, y] : {std::pair{3.0, 7.0}, {21.0, 22.0}, {44.0, 29.0}}) {
    EXPECT_NEAR(*one.terrain.existing_at(at(x, y)) / foot, 98 + x / 20 + y / 10, 2e-5);
    EXPECT_FALSE(one.terrain.guessed_at(at(x, y)));
  }
  EXPECT_TRUE(one.terrain.existing_at(at(205, 205)).has_value());
  EXPECT_TRUE(one.terrain.guessed_at(at(205, 205)));
  EXPECT_NEAR(*one.terrain.finished_at(at(205, 205)) / foot, 99.9, 2e-5);  // 5 ft at 2 %
  EXPECT_FALSE(one.terrain.finished_at(at(300, 300)).has_value());
}

TEST(Terrain, TwoHeightsAtOnePlaceNameBoth) {
  const Worked one = worked({level("g1", 0, 0, 100, "existing"), level("g2", 10, 0, 100, "existing"),
                             level("g3", 0, 10, 100, "existing"), level("twin", 10, 0, 100.5, "existing")});
  ASSERT_EQ(one.codes(), std::set<std::string>{"level-twice"});
  EXPECT_NE(one.said().find("g2"), std::string::npos);
  EXPECT_NE(one.said().find("twin"), std::string::npos);
  EXPECT_NEAR(*one.terrain.existing_at(at(3, 3)) / foot, 100, 1e-5);
}

}  // namespace
