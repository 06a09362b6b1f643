// The plan at the end of each stage of the demo job.
#include <gtest/gtest.h>

#include <algorithm>
#include <map>
#include <set>

#include "demo.h"
#include "sheets/parts.h"
#include "sheets/plan_figure.h"

namespace {

using sheets::Figure;
using sheets::Line;
using sheets::Material;
using takeoff::Stage;

const Figure& at(Stage stage) {
  static std::map<Stage, Figure> known;
  const auto found = known.find(stage);
  if (found != known.end()) return found->second;
  return known.emplace(stage, sheets::plan_figure(demo::results(), {.stage = stage})).first->second;
}

template <class T>
std::vector<const T*> all(const Figure& figure) {
  std::vector<const T*> found;
  for (const sheets::Part& part : figure.parts)
    if (const auto* it = std::get_if<T>(&part)) found.push_back(it);
  return found;
}

std::set<Material> filled(const Figure& figure) {
  std::set<Material> found;
  for (const sheets::Area* area : all<sheets::Area>(figure))
    if (!area->later && area->material != Material::none) found.insert(area->material);
  for (const sheets::Units* units : all<sheets::Units>(figure)) found.insert(units->material);
  return found;
}

// The first stage at whose end a material of the demo job can be seen; the house is there before.
const std::map<Material, Stage>& first_seen() {
  static const std::map<Material, Stage> known{
      {Material::building, Stage::protect}, {Material::concrete, Stage::protect}, {Material::soil, Stage::dig},
      {Material::block, Stage::wall},       {Material::cap, Stage::wall},         {Material::open_stone, Stage::base},
      {Material::dense_base, Stage::base},  {Material::coping, Stage::coping},    {Material::mortar, Stage::coping},
      {Material::paving, Stage::paving},    {Material::border, Stage::paving},    {Material::walk, Stage::paving},
      {Material::water, Stage::finish},     {Material::lawn, Stage::finish}};
  return known;
}

TEST(PlanStage, EachMaterialComesWithItsStageAndNotBefore) {
  for (const Stage stage : takeoff::all_stages) {
    const std::set<Material> here = filled(at(stage));
    for (const auto& [material, first] : first_seen()) {
      const auto said = [&] {
        return takeoff::word(stage) + ", material " + std::to_string(static_cast<int>(material));
      };
      if (stage < first) {
        EXPECT_FALSE(here.contains(material)) << said();
      } else if (stage == first) {
        EXPECT_TRUE(here.contains(material)) << said();
      }
    }
  }
}

TEST(PlanStage, WhatIsNotBuiltYetIsADashedOutlineWithoutFill) {
  for (const Stage stage : takeoff::all_stages) {
    for (const sheets::Area* area : all<sheets::Area>(at(stage))) {
      if (!area->later) continue;
      EXPECT_EQ(area->material, Material::none);
      EXPECT_EQ(area->line, Line::later);
    }
  }
  const auto later = [](Stage stage, const std::string& of) {
    return std::ranges::any_of(all<sheets::Area>(at(stage)),
                               [&](const sheets::Area* area) { return area->later && area->of == of; });
  };
  EXPECT_TRUE(later(Stage::under_ground, "RW"));
  EXPECT_FALSE(later(Stage::wall, "RW"));
  EXPECT_TRUE(later(Stage::coping, "A1"));
  EXPECT_FALSE(later(Stage::paving, "A1"));
  EXPECT_TRUE(later(Stage::base, "K1"));
  EXPECT_TRUE(later(Stage::base, "S"));
  EXPECT_FALSE(later(Stage::coping, "K1"));
}

TEST(PlanStage, PipesAreLaidUnderTheGroundAndDashedBefore) {
  const auto lines = [](Stage stage, Line line) {
    return std::ranges::count_if(all<sheets::Stroke>(at(stage)), [&](const sheets::Stroke* stroke) {
      return stroke->line == line && std::set<std::string>{"D1", "D2", "D3"}.contains(stroke->of);
    });
  };
  EXPECT_EQ(lines(Stage::dig, Line::pipe), 0);
  EXPECT_EQ(lines(Stage::dig, Line::later), 3);
  EXPECT_EQ(lines(Stage::under_ground, Line::pipe), 3);
  EXPECT_EQ(lines(Stage::under_ground, Line::later), 0);
}

TEST(PlanStage, TheOpenDigReachesPastTheFreeEdgesOfTheNet) {
  double dug = 0, net = 0;
  for (const sheets::Area* area : all<sheets::Area>(at(Stage::dig)))
    if (area->line == Line::open_dig)
      for (const sheets::Contour& contour : area->contours) dug += sheets::area_of(contour);
  for (const auto& ground : demo::results().site.grounds)
    if (std::holds_alternative<plan::PavedArea>(ground->element->kind)) net += ground->net.area().si();
  EXPECT_GT(dug, net);
  // No more than 6 in past the kerb (4 in) along every edge that could be free.
  EXPECT_LT(dug, net + 0.254 * 3 * 40);
}

TEST(PlanStage, RemovalsAreGoneAfterTheFirstStage) {
  const auto drawn = [](const Figure& figure) {
    return std::ranges::any_of(all<sheets::Stroke>(figure), [](const sheets::Stroke* s) { return s->of == "R1"; });
  };
  EXPECT_TRUE(drawn(sheets::plan_figure(demo::results(), {})));
  for (const Stage stage : takeoff::all_stages) EXPECT_FALSE(drawn(at(stage))) << takeoff::word(stage);
}

TEST(PlanStage, LapsOfFabricShowOnTheBaseOnly) {
  for (const Stage stage : takeoff::all_stages) {
    const bool laps = std::ranges::any_of(all<sheets::Stroke>(at(stage)), [](const sheets::Stroke* stroke) {
      return stroke->line == Line::geotextile && stroke->of == "A1";
    });
    EXPECT_EQ(laps, stage >= Stage::base && stage < Stage::finish) << takeoff::word(stage);
  }
}

TEST(PlanStage, TheUnitsOfTheFinishedPlanCoverWhatTheTakeoffLaid) {
  const Figure finished = sheets::plan_figure(demo::results(), {});
  const auto fields = all<sheets::Units>(finished);
  EXPECT_EQ(fields.size(), 3u);
  for (const sheets::Units* field : fields) {
    const auto& layout = *field->layout;
    double steps = 0;
    for (const auto& run : layout.runs) {
      const auto& kind = layout.lattice.kinds[static_cast<std::size_t>(run.kind)];
      steps += run.count() * kind.width * kind.height;
    }
    for (const auto& piece : layout.pieces) steps += piece.area;
    EXPECT_NEAR(steps / layout.unit_area, 1, 1e-9) << field->of;
    // And the ground drawn under them is the takeoff's field.
    double ground = 0;
    for (const sheets::Contour& contour : field->field) ground += sheets::area_of(contour);
    for (const takeoff::Measures& measures : demo::results().takeoff.measures) {
      if (measures.element != field->of) continue;
      EXPECT_NEAR(ground, measures.get("field_area_m2").value_or(0), 1e-6) << field->of;
    }
  }
}

}  // namespace
