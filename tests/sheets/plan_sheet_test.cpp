#include <gtest/gtest.h>

#include <algorithm>

#include "crew_kit.h"

namespace {

constexpr const char* demo_jobs[] = {"pool-terrace-a", "pool-terrace-b", "bakery-court"};

std::vector<sheets::Mark> marks(const sheets::Drawing& drawing, sheets::Sign sign) {
  std::vector<sheets::Mark> found;
  for (const sheets::Part& part : drawing.figure->parts)
    if (const auto* mark = std::get_if<sheets::Mark>(&part); mark && mark->sign == sign) found.push_back(*mark);
  return found;
}

bool measured(const sheets::Drawing& drawing, const std::string& words) {
  return std::ranges::any_of(drawing.dimensions,
                             [&](const sheets::Dimension& one) { return one.said.words == words; }) ||
         std::ranges::any_of(drawing.labels, [&](const sheets::Label& one) { return one.said.words == words; });
}

TEST(PlanSheet, EveryNumberLeadsToItsWorkingAndNonePrices) {
  for (const char* job : demo_jobs) {
    const sheets::Printed printed = crew_kit::of_demo(job);
    const sheets::Sheet sheet = sheets::plan_sheet(printed);
    crew_kit::expect_sources(printed, sheet);
    crew_kit::expect_no_price(printed, sheet);
    for (const sheets::Drawing& drawing : crew_kit::all<sheets::Drawing>(sheet))
      for (const sheets::Label& label : drawing.labels)
        EXPECT_TRUE(sheets::working_of(printed, label.said.from)) << job << " " << label.said.words;
  }
}

TEST(PlanSheet, HasOnePlanAndAnotherOfWhatLiesUnderIt) {
  EXPECT_EQ(crew_kit::all<sheets::Drawing>(sheets::plan_sheet(crew_kit::of_demo())).size(), 2U);
  EXPECT_EQ(crew_kit::all<sheets::Drawing>(sheets::plan_sheet(crew_kit::of_demo("bakery-court"))).size(), 1U);
  for (const sheets::Drawing& drawing : crew_kit::all<sheets::Drawing>(sheets::plan_sheet(crew_kit::of_demo()))) {
    EXPECT_TRUE(drawing.bar);
    EXPECT_TRUE(drawing.north);
    EXPECT_TRUE(drawing.plan);
    EXPECT_FALSE(marks(drawing, sheets::Sign::tag).empty());
  }
}

TEST(PlanSheet, MeasuresEdgesRadiiAndThePoolFromTheHouse) {
  const auto drawings = crew_kit::all<sheets::Drawing>(sheets::plan_sheet(crew_kit::of_demo()));
  // The deck runs from x 0 to 40 ft along the strip by the house, its straight south edge from 5 to 40 ft.
  EXPECT_TRUE(measured(drawings[0], "40′ 0″"));
  EXPECT_TRUE(measured(drawings[0], "35′ 0″"));
  EXPECT_TRUE(measured(drawings[0], "R 5′ 0″"));
  // The house stands at y = 32 ft. The large lobe of the pool goes from (26.5, 6) to (22.5, 18) ft by a bulge of
  // 1.3874: chord 12.649, radius 12.649 x (1 + 1.3874^2) / (4 x 1.3874) = 6.667, centre (26.5, 12.667), so its highest
  // place is y = 19.333, and 32 - 19.333 = 12.667 ft.
  EXPECT_TRUE(measured(drawings[0], "12′ 8″"));
}

TEST(PlanSheet, AnEdgeThatTwoShareIsMeasuredOnce) {
  const auto drawings = crew_kit::all<sheets::Drawing>(sheets::plan_sheet(crew_kit::of_demo()));
  // The south edge of the deck is the line of its kerb too.
  const auto many = [&](const std::string& words) {
    return std::ranges::count_if(drawings[0].dimensions,
                                 [&](const sheets::Dimension& one) { return one.said.words == words; }) +
           std::ranges::count_if(drawings[0].labels, [&](const sheets::Label& one) { return one.said.words == words; });
  };
  EXPECT_EQ(many("35′ 0″"), 1);
}

TEST(PlanSheet, ShowsWhereEachPatternStartsAndNoFlags) {
  for (const char* job : demo_jobs) {
    const sheets::Printed printed = crew_kit::of_demo(job);
    const auto drawings = crew_kit::all<sheets::Drawing>(sheets::plan_sheet(printed));
    std::size_t laid = 0;
    for (const plan::ElementPtr& element : printed.job().elements) {
      const auto* area = std::get_if<plan::PavedArea>(&element->kind);
      laid += area && area->laying ? 1U : 0U;
    }
    EXPECT_EQ(marks(drawings[0], sheets::Sign::start_point).size(), laid) << job;
    for (const sheets::Drawing& drawing : drawings) {
      EXPECT_TRUE(marks(drawing, sheets::Sign::problem).empty());
      EXPECT_TRUE(marks(drawing, sheets::Sign::care).empty());
    }
  }
}

TEST(PlanSheet, FinishedLevelsStandOnTheFinishedPlanAndInvertsUnderIt) {
  const sheets::Printed printed = crew_kit::of_demo();
  const auto drawings = crew_kit::all<sheets::Drawing>(sheets::plan_sheet(printed));
  const auto what = [&](const sheets::Drawing& drawing, const std::string& word) {
    return std::ranges::count_if(marks(drawing, sheets::Sign::level), [&](const sheets::Mark& mark) {
      return std::get<plan::Level>(printed.job().find(mark.of)->kind).what == word;
    });
  };
  EXPECT_GT(what(drawings[0], "finished"), 0);
  EXPECT_EQ(what(drawings[0], "existing"), 0);
  EXPECT_EQ(what(drawings[1], "finished"), 0);
  EXPECT_GT(what(drawings[1], "existing"), 0);
  // D1 runs 3441984 + 1999488 steps = 55.79 ft: 35 ft 3 1/2 in and 20 ft 6 in.
  EXPECT_TRUE(std::ranges::any_of(
      drawings[1].labels, [](const sheets::Label& label) { return label.said.words.starts_with("D1: 55′ 9 1/2″"); }));
}

TEST(PlanSheet, ListsEveryTagWithItsSize) {
  const sheets::Printed printed = crew_kit::of_demo();
  const auto tables = crew_kit::all<sheets::Table>(sheets::plan_sheet(printed));
  const sheets::Table& list = crew_kit::table(tables, "Tag");
  const auto row = std::ranges::find_if(list.rows, [](const sheets::Row& one) { return one.cells[0].words == "A1"; });
  ASSERT_NE(row, list.rows.end());
  EXPECT_EQ(row->cells[3].from, "measure/A1/net_area_m2");
  for (const plan::ElementPtr& element : printed.job().elements)
    if (std::holds_alternative<plan::PavedArea>(element->kind) || std::holds_alternative<plan::Wall>(element->kind)) {
      const auto rows =
          std::ranges::count_if(list.rows, [&](const sheets::Row& one) { return one.cells[0].words == element->id; });
      EXPECT_EQ(rows, 1) << element->id;
    }
}

TEST(PlanSheet, ItsLegendSaysOnlyWhatIsThere) {
  const auto says = [](const sheets::Sheet& sheet, const std::string& words) {
    return std::ranges::any_of(crew_kit::said(sheet), [&](const sheets::Said& one) { return one.words == words; });
  };
  const sheets::Sheet pool = sheets::plan_sheet(crew_kit::of_demo());
  const sheets::Sheet court = sheets::plan_sheet(crew_kit::of_demo("bakery-court"));
  EXPECT_TRUE(says(pool, "open arrow head: outlet of a pipe"));
  EXPECT_FALSE(says(court, "open arrow head: outlet of a pipe"));
  EXPECT_TRUE(says(court, "ring with arrow: start of the pattern and its way"));
}

TEST(PlanSheet, AnEmptyJobSaysSo) {
  const sheets::Sheet sheet = sheets::plan_sheet(crew_kit::of_job(crew_kit::empty_job()));
  EXPECT_TRUE(crew_kit::all<sheets::Drawing>(sheet).empty());
  EXPECT_EQ(crew_kit::all<sheets::Paragraph>(sheet).size(), 1U);
}

}  // namespace
