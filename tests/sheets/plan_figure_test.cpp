#include "sheets/plan_figure.h"

#include <gtest/gtest.h>
#include <rapidcheck.h>

#include <algorithm>
#include <cmath>
#include <numbers>
#include <set>

#include "demo.h"
#include "sheets/parts.h"

namespace {

using sheets::Figure;
using sheets::Material;

template <class T>
std::vector<const T*> all(const Figure& figure) {
  std::vector<const T*> found;
  for (const sheets::Part& part : figure.parts)
    if (const auto* it = std::get_if<T>(&part)) found.push_back(it);
  return found;
}

const Figure& finished() {
  static const Figure figure = sheets::plan_figure(demo::results(), {});
  return figure;
}

TEST(PlanFigure, EveryFieldOfUnitsSharesTheTakeoffsOwnLayout) {
  const auto fields = all<sheets::Units>(finished());
  ASSERT_EQ(fields.size(), demo::results().takeoff.layouts.size());
  for (const sheets::Units* field : fields) EXPECT_EQ(field->layout, demo::results().takeoff.layouts.at(field->of));
}

TEST(PlanFigure, EachElementThatTakesGroundHasItsTag) {
  for (const auto& ground : demo::results().site.grounds) {
    if (ground->net.empty()) continue;
    const auto tags = all<sheets::Mark>(finished());
    const auto own = std::ranges::count_if(tags, [&](const sheets::Mark* mark) {
      return mark->sign == sheets::Sign::tag && mark->of == ground->element->id;
    });
    EXPECT_EQ(own, 1) << ground->element->id;
  }
}

int pieces(const Figure& figure, const std::string& of, Material material, sheets::Line line) {
  return static_cast<int>(std::ranges::count_if(all<sheets::Area>(figure), [&](const sheets::Area* area) {
    return area->of == of && area->material == material && area->line == line;
  }));
}

double measured(const results::Results& results, const std::string& of, const std::string& name) {
  for (const takeoff::Measures& measures : results.takeoff.measures)
    if (measures.element == of) return measures.get(name).value_or(-1);
  return -1;
}

TEST(PlanFigure, BorderCoursesAreDrawnUnitByUnitAsTheyAreCounted) {
  for (const char* name : {"pool-terrace-a", "pool-terrace-b", "bakery-court"}) {
    const results::Results& results = demo::results(name);
    const Figure figure = sheets::plan_figure(results, {});
    for (const auto& element : results.job->elements) {
      const auto* area = std::get_if<plan::PavedArea>(&element->kind);
      if (!area || area->borders.empty()) continue;
      EXPECT_EQ(pieces(figure, element->id, Material::border, sheets::Line::unit),
                measured(results, element->id, "border_units"))
          << name << " " << element->id;
    }
  }
}

TEST(PlanFigure, CopingIsDrawnPieceByPieceAsItIsCounted) {
  // Four arcs, each rounded up by itself: 58 + 21 + 30 + 40.
  EXPECT_EQ(pieces(finished(), "P", Material::coping, sheets::Line::unit), 58 + 21 + 30 + 40);
  EXPECT_EQ(measured(demo::results(), "P", "coping_units"), 58 + 21 + 30 + 40);
}

std::vector<const sheets::Mark*> marks(const Figure& figure, sheets::Sign sign, const std::string& of = {}) {
  std::vector<const sheets::Mark*> found = all<sheets::Mark>(figure);
  std::erase_if(found, [&](const sheets::Mark* m) { return m->sign != sign || (!of.empty() && m->of != of); });
  return found;
}

TEST(PlanFigure, KerbsHaveTheUnitsAndWeepsThatAreCounted) {
  int weeps = 0;
  for (const char* id : {"K1", "K2", "K3", "K4"}) {
    double units = 0;
    for (const takeoff::Measures& measures : demo::results().takeoff.measures)
      for (const auto& [name, value] : measures.values)
        if (measures.element == id && name.starts_with("kerb_units:")) units += value;
    EXPECT_EQ(pieces(finished(), id, Material::kerb, sheets::Line::unit), units) << id;
    const auto own = marks(finished(), sheets::Sign::weep, id);
    EXPECT_EQ(static_cast<double>(own.size()), measured(demo::results(), id, "weeps")) << id;
    weeps += static_cast<int>(own.size());
  }
  EXPECT_EQ(weeps, 18);  // of all four kerbs, as the answers to the demo job have it
}

TEST(PlanFigure, WeepsOfTheSouthKerbPointAwayFromTheDeck) {
  int south = 0;
  for (const sheets::Mark* weep : marks(finished(), sheets::Sign::weep, "K1")) {
    if (weep->at.x < 2 || weep->at.y > 0) continue;  // past the round corner: the straight along y = 0
    ++south;
    EXPECT_NEAR(weep->turn, -std::numbers::pi / 2, 1e-6);
    EXPECT_NEAR(weep->at.y, -4 * 0.0254, 1e-6);  // the outside of a kerb 4 in wide
  }
  EXPECT_GT(south, 5);
}

TEST(PlanFigure, CapsAreDrawnAsManyAsAreCounted) {
  for (const char* id : {"RW", "SW"})
    EXPECT_EQ(pieces(finished(), id, Material::cap, sheets::Line::unit), measured(demo::results(), id, "caps")) << id;
}

TEST(PlanFigure, TheTopOfTheWallStepsWhereItsHeightsDo) {
  // At y = 0, 66 and 180 in.
  std::vector<double> at;
  for (const sheets::Mark* step : marks(finished(), sheets::Sign::wall_step, "RW")) at.push_back(step->at.y / 0.0254);
  std::ranges::sort(at);
  ASSERT_EQ(at.size(), 3u);
  EXPECT_NEAR(at[0], 0, 0.1);
  EXPECT_NEAR(at[1], 66, 0.1);
  EXPECT_NEAR(at[2], 180, 0.1);
}

TEST(PlanFigure, LevelsShowTheirHeightsInFeet) {
  const auto coping = marks(finished(), sheets::Sign::level, "L-c1");
  ASSERT_EQ(coping.size(), 1u);
  EXPECT_EQ(coping[0]->text, "100.00");
  EXPECT_NEAR(coping[0]->at.x, 318 * 0.0254, 1e-9);
  EXPECT_NEAR(coping[0]->at.y, 61.5 * 0.0254, 1e-9);
  EXPECT_TRUE(marks(sheets::plan_figure(demo::results(), {.levels = false}), sheets::Sign::level).empty());
}

TEST(PlanFigure, EachAreaWithAFinishHasItsFall) {
  // A2 is one plane, 1/4 in per ft away from the house, which stands to the north.
  const auto own = marks(finished(), sheets::Sign::fall, "A2");
  ASSERT_EQ(own.size(), 1u);
  EXPECT_EQ(own[0]->text, "2.1 %");
  EXPECT_NEAR(own[0]->turn, -std::numbers::pi / 2, 1e-6);
  EXPECT_EQ(marks(finished(), sheets::Sign::fall).size(), 3u);
  const Figure coloured = sheets::plan_figure(demo::results(), {.falls = true});
  double patches = 0;
  for (const sheets::Area* area : all<sheets::Area>(coloured))
    if (!area->word.empty() && area->of == "A2")
      for (const sheets::Contour& contour : area->contours) patches += std::abs(sheets::area_of(contour));
  EXPECT_NEAR(patches, measured(demo::results(), "A2", "net_area_m2"), 0.01);
}

TEST(PlanFigure, JunctionLettersSayWhatIsBuilt) {
  const Figure figure = sheets::plan_figure(demo::results(), {.junctions = true});
  const auto letters = [&](const std::string& of) {
    std::set<std::string> found;
    for (const sheets::Mark* mark : marks(figure, sheets::Sign::junction, of)) found.insert(mark->text);
    return found;
  };
  const std::set<std::string> deck = letters("A1");
  EXPECT_TRUE(deck.contains("E"));  // along the coping
  EXPECT_TRUE(deck.contains("K"));
  EXPECT_TRUE(deck.contains("I"));  // round the pillars, along the wall
  EXPECT_FALSE(deck.contains("R"));
  EXPECT_TRUE(letters("A2").contains("I"));  // at the house
  EXPECT_TRUE(letters("W").contains("R"));
  EXPECT_TRUE(marks(finished(), sheets::Sign::junction).empty());
}

TEST(PlanFigure, WhatIsWrongStandsAtItsPlaceAndNoticesDoNot) {
  int problems = 0;
  for (const problem::Problem& said : demo::results().problems()) {
    if (said.severity == problem::Severity::notice) continue;
    const auto sign = said.severity == problem::Severity::problem ? sheets::Sign::problem : sheets::Sign::care;
    problems += sign == sheets::Sign::problem ? 1 : 0;
    const auto own = marks(finished(), sign, said.place.element);
    EXPECT_FALSE(own.empty()) << said.place.element << " " << said.code;
    if (!said.place.at) continue;
    // At its place, or fanned out beside what stands there already.
    EXPECT_TRUE(std::ranges::any_of(own, [&](const sheets::Mark* mark) {
      return std::hypot(mark->at.x - said.place.at->x, mark->at.y - said.place.at->y) < 2.5;
    })) << said.code;
  }
  EXPECT_EQ(marks(finished(), sheets::Sign::problem).size(), static_cast<std::size_t>(problems));
  std::set<std::pair<double, double>> places;
  for (const auto sign : {sheets::Sign::problem, sheets::Sign::care})
    for (const sheets::Mark* mark : marks(finished(), sign)) {
      EXPECT_TRUE(places.emplace(mark->at.x, mark->at.y).second) << mark->text;
      EXPECT_LE(std::ranges::count(mark->text, ' '), 3) << mark->text;
    }
}

TEST(PlanFigure, MovingTheJobMovesTheFigure) {
  plan::Job job = demo::job("pool-terrace-a");
  // Only what is drawn as a ring or a line of edges is moved here; 3 m east.
  const units::Length east = units::Length::millimetres(3000);
  plan::Element deck = *job.find("W");
  auto& area = std::get<plan::PavedArea>(deck.kind);
  job.elements.clear();
  const auto figure_of = [&] {
    plan::Job one = job;
    one.elements.push_back(std::make_shared<const plan::Element>(deck));
    return sheets::plan_figure(results::compute(std::make_shared<const plan::Job>(one)), {});
  };
  const Figure before = figure_of();
  for (geometry::Edge& edge : area.outline.front().edges) edge.from.x += east;
  area.laying->start.x += east;
  for (geometry::Edge& edge : area.finish->line->edges) edge.from.x += east;
  area.finish->line->end.x += east;
  const Figure after = figure_of();
  EXPECT_EQ(before.parts.size(), after.parts.size());
  EXPECT_NEAR(after.low.x - before.low.x, 3, 1e-9);
  EXPECT_NEAR(after.high.x - before.high.x, 3, 1e-9);
  EXPECT_NEAR(after.low.y, before.low.y, 1e-9);
}

// A deck with a bite out of one corner and, by choice, an arc, its border laid in any way.
plan::Job random_deck() {
  const auto in = [](int x, int y) { return geometry::Point{units::Length::inches(x), units::Length::inches(y)}; };
  const int wide = *rc::gen::inRange(120, 400), high = *rc::gen::inRange(120, 400);
  const int bite_x = *rc::gen::inRange(30, wide - 60), bite_y = *rc::gen::inRange(30, high - 60);
  const double bulge = *rc::gen::element(0.0, 0.2, -0.15);
  plan::Job job = demo::job("pool-terrace-a");
  plan::Element deck = *job.find("A1");
  auto& area = std::get<plan::PavedArea>(deck.kind);
  area.outline = {{{{in(0, 0), bulge, {}},
                    {in(wide, 0), 0, {}},
                    {in(wide, high - bite_y), 0, {}},
                    {in(wide - bite_x, high - bite_y), 0, {}},
                    {in(wide - bite_x, high), 0, {}},
                    {in(0, high), 0, {}}},
                   {}}};
  area.finish.reset();
  area.water_to.clear();
  using Course = plan::BorderCourse;
  area.borders.front().way = *rc::gen::element(Course::Way::soldier, Course::Way::sailor);
  area.borders.front().corner = *rc::gen::element(Course::Corner::mitre, Course::Corner::butt, Course::Corner::block);
  if (*rc::gen::arbitrary<bool>()) area.borders.push_back(area.borders.front());
  job.elements = {std::make_shared<const plan::Element>(deck)};
  return job;
}

TEST(PlanFigure, BordersOfAnyDeckAreDrawnAsTheyAreCounted) {
  EXPECT_TRUE(rc::check("units of border courses", [] {
    const results::Results results = results::compute(std::make_shared<const plan::Job>(random_deck()));
    const double counted = measured(results, "A1", "border_units");
    const double drawn = pieces(sheets::plan_figure(results, {}), "A1", Material::border, sheets::Line::unit);
    // Six corners and as many courses as there are: a piece that its mitre leaves nothing of is not drawn.
    RC_ASSERT(counted > 0);
    RC_ASSERT(std::abs(drawn - counted) <= 6 * 2);
  }));
}

}  // namespace
