#include "crew_kit.h"
#include "sheets/crew_parts.h"

namespace {

using namespace crew_kit;
using takeoff::Stage;

const catalogue::Item& demo_item(const std::string& id) { return *demo::results().job->catalogue->item(id); }

// Results by hand: the demo's catalogue, hours and lines as given.
results::Results by_hand(std::vector<estimate::OrderLine> lines, std::map<Stage, double> hours = {}) {
  results::Results made;
  made.job = demo::results().job;
  made.estimate.lines = std::move(lines);
  for (const auto& [stage, count] : hours) made.estimate.stages[stage].hours = count;
  return made;
}
estimate::OrderLine ordered(const std::string& item, double needed, double quantity, Stage stage = Stage::wall) {
  estimate::OrderLine line{stage,
                           item,
                           demo_item(item).name.en,
                           {"RW"},
                           needed,
                           "piece",
                           quantity,
                           demo_item(item).unit,
                           {},
                           {},
                           false,
                           false,
                           false,
                           takeoff::term("needed", needed, units::piece),
                           {}};
  line.shares = {needed, 0, 0, quantity - needed};
  return line;
}

TEST(CrewList, StagesComeInTheOrderOfBuilding) {
  const auto sheet = sheets::crew_list(of_demo());
  std::vector<int> numbers;
  for (const sheets::Passage& passage : sheet.passages)
    if (passage.stage) numbers.push_back(static_cast<int>(*passage.stage));
  EXPECT_EQ(numbers, (std::vector<int>{0, 1, 2, 3, 4, 5, 6, 7, 8}));
  for (const sheets::Passage& passage : sheet.passages)
    EXPECT_TRUE(std::holds_alternative<sheets::Heading>(passage.blocks.front()));
}

// The court has no pipe and no wall: those stages are not there, and none is printed with nothing under its heading.
TEST(CrewList, StagesWithNothingToDoAreLeftOut) {
  const auto sheet = sheets::crew_list(of_demo("bakery-court"));
  for (const sheets::Passage& passage : sheet.passages) {
    EXPECT_NE(passage.stage, Stage::under_ground);
    EXPECT_NE(passage.stage, Stage::wall);
    EXPECT_GT(passage.blocks.size(), 1U);
  }
}

// Every thing that is bought of material stands once, with the quantity that is ordered and the tags of where it goes.
TEST(CrewList, BringsAllThatIsOrdered) {
  for (const char* name : {"pool-terrace-a", "pool-terrace-b", "bakery-court"}) {
    const sheets::Printed printed = of_demo(name);
    const auto brings = all<sheets::Bring>(sheets::crew_list(printed));
    const auto& lines = printed.results->estimate.lines;
    std::size_t material = 0;
    for (const estimate::OrderLine& line : lines) {
      if (line.kind != plan::CostKind::material) continue;
      ++material;
      const auto found = std::ranges::find_if(
          brings, [&](const sheets::Bring& one) { return one.quantity.from == sheets::of_line(printed, line); });
      ASSERT_NE(found, brings.end()) << name << ": " << line.item;
      EXPECT_EQ(found->quantity.words, sheets::number_words(printed, line.order_quantity)) << line.item;
      EXPECT_EQ(found->tags, sheets::tags(printed, line.of)) << line.item;
    }
    EXPECT_GT(material, 10U) << name;
  }
}

TEST(CrewList, ShowsNoPrice) {
  for (const char* name : {"pool-terrace-a", "pool-terrace-b", "bakery-court"})
    expect_no_price(of_demo(name), sheets::crew_list(of_demo(name)));
}

TEST(CrewList, EveryNumberLeadsToItsWorking) {
  for (const char* name : {"pool-terrace-a", "bakery-court"})
    expect_sources(of_demo(name), sheets::crew_list(of_demo(name)));
}

// A crew of 3 at 8 h does 24 h a day (the demo's choices). Dig 12 h: day 0 to 0.5. Paving 36 h: 0.5 to 2.0, so days 1
// and 2. Joints 24 h: 2.0 to 3.0, day 3 alone.
TEST(CrewList, DaysFollowEachOther) {
  const auto printed =
      crew_kit::printed(by_hand({}, {{Stage::dig, 12}, {Stage::paving, 36}, {Stage::joints, 24}, {Stage::wall, 0}}));
  ASSERT_EQ(printed.job().choices.crew * printed.job().choices.day_hours, 24);
  const auto days = sheets::stage_days(printed);
  ASSERT_EQ(days.size(), 3U);
  EXPECT_EQ(sheets::days_words(printed, days.at(Stage::dig)), "day 1");
  EXPECT_EQ(sheets::days_words(printed, days.at(Stage::paving)), "days 1 to 2");
  EXPECT_EQ(sheets::days_words(printed, days.at(Stage::joints)), "day 3");
  EXPECT_EQ(sheets::stage_heading(printed, Stage::paving).right.words, "36 h · days 1 to 2");
}

// The hours of the table are those of the estimate, and their sum is its total.
TEST(CrewList, HoursAddUpToTheEstimate) {
  const sheets::Printed printed = of_demo();
  const auto tables = all<sheets::Table>(sheets::crew_list(printed));
  const sheets::Table& hours = table(tables, "Stage");
  EXPECT_EQ(hours.rows.size(), printed.results->estimate.stages.size() + 1);
  EXPECT_EQ(hours.rows.back().cells[1].words, sheets::hours_words(printed, printed.results->estimate.total.hours));
}

// wb-8x18: 8 in a layer, 5 layers, 40 on a pallet: 136 are 3 pallets and 16 = 2 layers. 127 are laid, 9 more. One
// weighs 38.23 kg / 0.45359237 = 84.28 lb, over the 51 lb for one person.
TEST(CrewList, SaysHowItComes) {
  const auto printed = crew_kit::printed(by_hand({ordered("wb-8x18", 127, 136)}));
  const auto& line = printed.results->estimate.lines.front();
  EXPECT_EQ(sheets::how_it_comes(printed, line, {}),
            "3 pallets of 40 and 2 layers of 8; 127 needed, 9 over; 84.3 lb each: lift by two");
}

// seatcap-24: 4 in a layer; 3 of them are no whole layer and no pallet.
TEST(CrewList, SaysAPartPallet) {
  const auto printed = crew_kit::printed(by_hand({ordered("seatcap-24", 3, 3)}));
  const std::string words = sheets::how_it_comes(printed, printed.results->estimate.lines.front(), {});
  EXPECT_TRUE(words.starts_with("part pallet; 3 needed")) << words;
}

TEST(CrewList, StoneSaysItsLoads) {
  const sheets::Printed printed = of_demo("bakery-court");
  const auto visits = sheets::visits_of(printed);
  for (const estimate::OrderLine& line : printed.results->estimate.lines) {
    if (line.item != "agg-no57" || line.stage != Stage::base) continue;
    // 28 short tons by the truck of 5: 6 loads; metric: 28 x 907.18474 kg = 25.4 t.
    const std::string words = sheets::how_it_comes(printed, line, visits);
    EXPECT_EQ(line.order_quantity, 28);
    EXPECT_NE(words.find("25.4 t"), std::string::npos) << words;
    EXPECT_NE(words.find("in 6 loads"), std::string::npos) << words;
    EXPECT_EQ(sheets::bought(printed, line).words(), "28 short tons");
  }
}

TEST(CrewList, ALookedAtPointSaysWhoAndWhen) {
  plan::Job job = demo::job("bakery-court");
  const auto& notes = demo::results("bakery-court").takeoff.stages;
  const auto base = std::ranges::find(notes, Stage::base, &takeoff::StageNotes::stage);
  ASSERT_FALSE(base->hold_points.empty());
  job.looked_at.push_back({"base", base->hold_points.front().look_at, "R. Vane (invented)", "2026-11-28"});
  const auto printed = of_job(std::move(job));
  const auto holds = sheets::holds(printed, Stage::base);
  ASSERT_EQ(holds.size(), base->hold_points.size());
  EXPECT_EQ(holds[0].who, "R. Vane (invented)");
  EXPECT_EQ(holds[0].when, "28 Nov 2026");
  EXPECT_TRUE(holds[1].who.empty());
  EXPECT_NE(holds[0].limit.find("before "), std::string::npos);
}

// Paving covers the base, whose points are open; once all are signed nothing is waited for.
TEST(CrewList, AStageWaitsForWhatItCovers) {
  EXPECT_NE(sheets::waits_for(of_demo(), Stage::paving)->said.words.find("5 Base layers"), std::string::npos);
  EXPECT_FALSE(sheets::waits_for(of_demo(), Stage::protect).has_value());
  plan::Job job = demo::job("bakery-court");
  for (const takeoff::StageNotes& notes : demo::results("bakery-court").takeoff.stages)
    for (const catalogue::HoldPoint& point : notes.hold_points)
      job.looked_at.push_back({takeoff::word(notes.stage), point.look_at, "R. Vane (invented)", "2026-11-28"});
  EXPECT_FALSE(sheets::waits_for(of_job(std::move(job)), Stage::paving).has_value());
}

// All machines of the estimate, each with its days of hire.
TEST(CrewList, MachinesWithTheirDays) {
  const sheets::Printed printed = of_demo();
  const auto tables = all<sheets::Table>(sheets::crew_list(printed));
  const sheets::Table& machines = table(tables, "Machine or tool");
  std::size_t hired = 0;
  for (const estimate::OrderLine& line : printed.results->estimate.lines)
    if (line.kind == plan::CostKind::machine) ++hired;
  EXPECT_EQ(machines.rows.size(), hired);
  EXPECT_NE(machines.rows.front().cells[2].words.find("day"), std::string::npos);
}

// 10.5 h of a hand-held saw in one stage are over 4 h in a shift; 3 h are not.
TEST(CrewList, LongSawingWantsARespirator) {
  const auto hired = [](double hours) {
    auto line = ordered("saw-hand-14", 0, 1.5, Stage::paving);
    line.unit = "h";
    line.quantity = hours;
    line.kind = plan::CostKind::machine;
    const auto cautions = all<sheets::Caution>(sheets::crew_list(crew_kit::printed(by_hand({line}))));
    return std::ranges::any_of(
        cautions, [](const sheets::Caution& caution) { return caution.words.find("respirator") != std::string::npos; });
  };
  EXPECT_TRUE(hired(10.5));
  EXPECT_FALSE(hired(3));
}

// 200 lines are 200 things to bring; three are three, under the headings of their own stages.
TEST(CrewList, LongAndShortJobsAreListedWhole) {
  std::vector<estimate::OrderLine> lines;
  for (int i = 0; i < 200; ++i) {
    lines.push_back(ordered("wb-8x18", 10 + i, 16 + i, takeoff::all_stages.at(static_cast<std::size_t>(i) / 25)));
    lines.back().kind = plan::CostKind::material;
  }
  EXPECT_EQ(all<sheets::Bring>(sheets::crew_list(crew_kit::printed(by_hand(lines)))).size(), 200U);
  lines.erase(lines.begin() + 3, lines.end());
  const auto brief = sheets::crew_list(crew_kit::printed(by_hand(lines)));
  EXPECT_EQ(all<sheets::Bring>(brief).size(), 3U);
  EXPECT_EQ(brief.passages.size(), 1U);
}

TEST(CrewList, AnEmptyJobSaysSo) {
  const auto sheet = sheets::crew_list(of_job(empty_job()));
  ASSERT_EQ(blocks(sheet).size(), 1U);
  EXPECT_TRUE(std::holds_alternative<sheets::Paragraph>(blocks(sheet).front()));
}

// Each fixed word is asked of the sheet's language.
TEST(CrewList, SpeaksTheLanguageOfTheSheet) {
  sheets::Printed printed = of_demo();
  printed.language = "es";
  printed.say = [](const std::string& english) { return "«" + english + "»"; };
  const auto sheet = sheets::crew_list(printed);
  for (const sheets::Heading& heading : all<sheets::Heading>(sheet)) EXPECT_TRUE(heading.words.starts_with("«"));
  for (const sheets::Caution& caution : all<sheets::Caution>(sheet)) EXPECT_TRUE(caution.words.starts_with("«"));
  for (const sheets::Hold& hold : all<sheets::Hold>(sheet)) EXPECT_TRUE(hold.look_at.starts_with("«"));
  EXPECT_NE(bring(sheet, "Bloque de muro 8x18x12, recto"), nullptr);
}

}  // namespace
