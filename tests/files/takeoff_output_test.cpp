// The three outputs of a takeoff, from results made by hand.
#include <gtest/gtest.h>

#include <algorithm>
#include <sstream>

#include "files/csv.h"
#include "files/files.h"
#include "files/json_read.h"
#include "files/said_together.h"
#include "files/sheet_text.h"
#include "files/takeoff_measures.h"
#include "files/walls_text.h"
#include "takeoff/working_lines.h"

namespace {

using takeoff::Stage;
using takeoff::term;

std::shared_ptr<catalogue::Item> item(const std::string& id, const std::string& kind, const std::string& unit) {
  auto made = std::make_shared<catalogue::Item>();
  made->id = id;
  made->kind = kind;
  made->unit = unit;
  made->name.en = id + " of a trade, named at such length that its name can't stand in a column of a sheet";
  return made;
}

plan::Job small_job() {
  catalogue::Catalogue book;
  book.note = "Made-up prices, good for a test";
  auto unit = item("unit", "paving-unit", "piece");
  unit->name.en = "Adoquín, 60 mm";
  unit->price = catalogue::Price{units::Money::of_coins(125), "piece", "", false};
  unit->breakage = 0.03;
  auto stone = item("stone", "aggregate", "ton");
  stone->price = catalogue::Price{units::Money::of_coins(3350), "ton", "", false};
  auto lent = item("lent", "spike", "piece");
  lent->price = catalogue::Price{units::Money(), "piece", "", true};
  auto layer = item("lab", "labour", "hour");
  layer->price = catalogue::Price{units::Money::of_coins(4000), "hour", "", false};
  for (const auto& one : {unit, stone, lent, layer, item("bare", "spike", "piece")}) book.items[one->id] = one;
  catalogue::Rate rate;
  rate.id = "lay";
  rate.name.en = "Lay units";
  rate.si_unit = "m2";
  rate.hours_per_si_unit = 0.5;
  rate.crew = "1 lab";
  book.rates["lay"] = rate;
  plan::Job job;
  job.heading.name = "Yard";
  job.heading.invented = true;
  job.catalogue = std::make_shared<const catalogue::Catalogue>(std::move(book));
  return plan::with(job, {"A1", "=deck", plan::PavedArea{}});
}

results::Results results_of(bool complete, plan::Job job = small_job()) {
  results::Results made;
  made.job = std::make_shared<const plan::Job>(std::move(job));
  takeoff::Takeoff& taken = made.takeoff;
  taken.measures = {
      {"A1", {{"net_area_m2", 46.45152}, {"units_whole", 900}, {"rod_m:rod-5", 3.048}, {"rod_m:rod-5", 1.5}}}};
  const auto line = [&](Stage stage, const std::string& of, takeoff::Working working) {
    taken.lines.push_back({stage, of, of, {"A1"}, std::move(working), {}, false});
  };
  line(Stage::base, "stone",
       takeoff::Working::product({term("net area", 46.45152, units::square_metre, "A1"),
                                  term("thickness", 0.1, units::metre, "b/base"),
                                  term("placed density", 2000, units::kilogram_per_cubic_metre, "stone")}));
  line(Stage::paving, "unit", term("whole units", 900, units::piece, "A1"));
  line(Stage::joints, "lent", term("spikes", 30, units::piece, "A1"));
  if (!complete) line(Stage::joints, "bare", term("spikes", 30, units::piece, "A1"));
  taken.tasks = {
      {Stage::paving, "lay", "units of A1", {"A1"}, term("net area", 46.45152, units::square_metre, "A1"), 1, {}}};
  catalogue::HoldPoint point;
  point.stage = "base";
  point.look_at = "Depth of the base";
  point.limit = "within 3/4 in";
  point.before = "bedding";
  point.who = "crew lead";
  catalogue::Caution caution{"base", "Dust: cut wet.", "crew lead", "a rule", "always"};
  taken.stages = {{Stage::base, {point}, {caution}}};
  taken.problems = {{problem::Severity::flag,
                     "wall-height",
                     "the wall is tall",
                     "ask a licensed engineer",
                     {"A1", "", 0, 0, problem::Xy{1.5, -2}}}};
  made.estimate = estimate::estimate(*made.job, taken);
  return made;
}

files::Value parsed(const std::string& text) {
  auto value = files::parse_json(text, "out.json");
  EXPECT_TRUE(value.has_value()) << (value ? "" : problem::sentence(value.error()));
  return value ? *value : files::Value();
}

std::vector<std::string> names(const files::Value& object) {
  std::vector<std::string> all;
  for (const auto& key : object.keys) all.push_back(key.name);
  return all;
}

TEST(TakeoffJson, HasItsMembersAndNoOthers) {
  const auto all = parsed(files::takeoff_json(results_of(true)));
  using List = std::vector<std::string>;
  EXPECT_EQ(names(all), (List{"job", "elements", "lines", "problems", "stages", "totals", "checks", "cuts"}));
  EXPECT_EQ(names(*all.find("job")), (List{"name", "units", "currency"}));
  EXPECT_EQ(names(all.find("elements")->children.at(0)), (List{"id", "kind", "name", "measures"}));
  const auto& line = all.find("lines")->children.at(0);
  EXPECT_EQ(names(line), (List{"stage", "item", "description", "elements", "quantity", "unit", "order_quantity",
                               "order_unit", "unit_price", "amount", "working"}));
  EXPECT_EQ(names(line.find("working")->children.at(0)), (List{"term", "value", "unit", "of"}));
  EXPECT_EQ(names(all.find("problems")->children.at(0)), (List{"severity", "code", "text", "mend", "element", "at"}));
  const auto& stage = all.find("stages")->children.at(0);
  EXPECT_EQ(names(stage), (List{"stage", "hold_points", "cautions"}));
  EXPECT_EQ(names(stage.find("hold_points")->children.at(0)), (List{"look_at", "limit", "before", "who", "source"}));
  EXPECT_EQ(names(*all.find("totals")), (List{"stages", "amount", "final"}));
}

TEST(TakeoffJson, ChecksAndCuts) {
  results::Results results = results_of(true);
  results.takeoff.checks.push_back({"RW", "sliding", "0 to 12 ft along the wall",
                                    takeoff::Working::quotient(takeoff::term("holds", 3, units::newton_per_metre),
                                                               takeoff::term("drives", 2, units::newton_per_metre)),
                                    1.5, false, "from memory"});
  results.takeoff.cuts.push_back(
      {"RW", "block", "course 3, end piece", "at 12 ft", 2, 0.2, 0, 0.3048, 0.2032, "left", true});
  const auto all = parsed(files::takeoff_json(results));
  const auto& check = all.find("checks")->children.at(0);
  EXPECT_EQ(check.find("value")->text, "1.5");
  EXPECT_EQ(check.find("at_least")->text, "1.5");
  EXPECT_TRUE(check.find("passes")->truth);
  const auto& cut = all.find("cuts")->children.at(0);
  EXPECT_EQ(cut.find("count")->text, "2");
  EXPECT_EQ(cut.find("length_m")->text, "0.3048");
  const std::string text = files::takeoff_text(results);
  EXPECT_NE(text.find("RW, 0 to 12 ft along the wall\n  sliding "), std::string::npos) << text;
  EXPECT_NE(text.find("1.50   at least 1.50           passes"), std::string::npos) << text;
  EXPECT_NE(text.find("a licensed engineer"), std::string::npos);
  EXPECT_NE(text.find("end piece, left part kept, out of an offcut: course 3 at 12 ft"), std::string::npos) << text;
}

// Equal cuts of one item in one row with all their places, square ones before those at an angle.
TEST(TakeoffText, EqualCutsStandInOneRow) {
  results::Results results = results_of(true);
  const auto cut = [&](const char* what, const char* where, int count, double kept, double angle) {
    results.takeoff.cuts.push_back({"RW", "block", what, where, count, kept, angle, 0.3048, 0.2032, "left", false});
  };
  cut("course 1, corner piece", "at 12' 0\"", 1, 0.2, 0.7853981633974483);
  cut("course 1, end piece", "at 0\"", 1, 0.1016, 0);
  cut("course 2, end piece", "at 0\"", 1, 0.2032, 0);
  cut("courses 3, 5 and 7, end piece", "at 0\"", 3, 0.1016, 0);
  const std::string text = files::takeoff_text(results);
  // 6 cuts of 1 ft.
  EXPECT_NE(text.find("6 cuts through 8\", 6 ft in all"), std::string::npos) << text;
  const auto two = text.find("end piece, left part kept: course 1 at 0\"; courses 3, 5 and 7");
  const auto long_one = text.find("end piece, left part kept: course 2 at 0\"");
  const auto corner = text.find("45  ");
  ASSERT_NE(two, std::string::npos) << text;
  EXPECT_LT(long_one, two);
  EXPECT_LT(two, text.find("corner piece, left part kept"));
  EXPECT_NE(corner, std::string::npos) << text;
}

TEST(TakeoffText, WhatIsNothingIsLeftOut) {
  results::Results results = results_of(true);
  results.takeoff.measures[0].values.emplace_back("units_half", 0);
  EXPECT_EQ(files::takeoff_text(results).find("units half"), std::string::npos);
  EXPECT_NE(files::takeoff_json(results).find("units_half"), std::string::npos);
}

TEST(TakeoffText, AWallSaysWhereItsPlacesAreMeasuredFrom) {
  plan::Element wall;
  plan::Wall what;
  // Northward with the ground behind to the east: who stands west of it and looks east has its south end on the right.
  what.behind = geometry::Side::right;
  wall.kind = what;
  EXPECT_EQ(files::start_of(wall), "places along it are measured from its start, the right end as you face it");
  what.behind = geometry::Side::left;
  wall.kind = what;
  EXPECT_EQ(files::start_of(wall), "places along it are measured from its start, the left end as you face it");
  what.existing = true;
  wall.kind = what;
  EXPECT_EQ(files::start_of(wall), "");
}

TEST(WorkingLines, NamedPartsStandOnLinesOfTheirOwnAndOnce) {
  using takeoff::Working;
  const Working weight =
      Working::product({term("courses", 4, units::piece), term("weight of a course", 50, units::newton_per_metre)})
          .named("weight of the wall");
  const Working thrust =
      Working::product({term("half", 0.5, units::piece), term("push", 160, units::newton_per_metre)}).named("thrust");
  takeoff::WorkingLines lines(units::System::metric);
  EXPECT_EQ(lines.tell(Working::quotient(weight, thrust), "sliding"),
            (std::vector<std::string>{"weight of the wall = courses 4 x weight of a course 50 N/m = 200 N/m",
                                      "thrust = half 0.5 x push 160 N/m = 80 N/m",
                                      "sliding = weight of the wall 200 N/m / thrust 80 N/m = 2.5"}));
  const Working less = Working::difference(weight, thrust);
  EXPECT_EQ(lines.tell(Working::quotient(Working::least({less, weight}), term("2", 2, units::piece)), "left"),
            (std::vector<std::string>{
                "left = least(weight of the wall 200 N/m - thrust 80 N/m, weight of the wall 200 N/m) / 2 = 60 N/m"}));
  EXPECT_EQ(lines.tell(term("length", 3, units::metre), "x"), (std::vector<std::string>{"length 3 m"}));
  EXPECT_EQ(lines.tell(Working::up(term("run on course 4", 2.5, units::piece)), "caps"),
            (std::vector<std::string>{"caps = up(run on course 4: 2.5) = 3"}));
}

TEST(SaidTogether, OneRowForWhatSaysTheSame) {
  const auto said = [](const char* code, const char* text, const char* element) {
    return problem::Problem{problem::Severity::flag, code, text, "lift by two", {element, "", 0, 0, {}}};
  };
  problem::Problem placed = said("heavy", "a", "P1");
  placed.place.at = problem::Xy{1, 2};
  const auto rows = files::said_together({said("heavy", "a", "P1"), said("heavy", "b", "P1"), said("other", "a", "P1"),
                                          said("heavy", "a", "P2"), said("heavy", "b", "P2"), placed});
  ASSERT_EQ(rows.size(), 3U);
  EXPECT_EQ(problem::sentence(rows[0]), "P1, P2, each: a; b; lift by two");
  EXPECT_EQ(problem::sentence(rows[1]), "P1: a; lift by two");
  EXPECT_EQ(rows[2], placed);
}

TEST(TakeoffJson, NumbersAndMoney) {
  const auto all = parsed(files::takeoff_json(results_of(true)));
  EXPECT_EQ(all.find("elements")->children[0].find("measures")->find("net_area_m2")->text, "46.45152");
  EXPECT_EQ(all.find("elements")->children[0].find("measures")->find("rod_m:rod-5")->text, "4.548");
  const auto& stone = all.find("lines")->children.at(0);
  // 46.45152 m2 x 0.1 m x 2000 kg/m3 = 9290.304 kg = 10.24 short tons, so 11 at 33.50: 368.50.
  EXPECT_EQ(stone.find("unit")->text, "kg");
  EXPECT_EQ(stone.find("order_quantity")->text, "11");
  EXPECT_EQ(stone.find("order_unit")->text, "ton");
  EXPECT_EQ(stone.find("amount")->text, "36850");
  EXPECT_EQ(stone.find("unit_price")->text, "3350");
  // 900 x 1.03 = 927 at 1.25 = 1158.75; 46.45152 x 0.5 h at 40.00 = 929.0304, so 929.03; in all 368.50 + 1158.75 +
  // 929.03.
  const auto& totals = *all.find("totals");
  EXPECT_EQ(totals.find("amount")->text, "245628");
  EXPECT_EQ(totals.find("stages")->find("paving")->text, "208778");
  EXPECT_TRUE(totals.find("final")->truth);
  std::int64_t sum = 0;
  for (const auto& line : all.find("lines")->children) sum += std::stoll(line.find("amount")->text);
  EXPECT_EQ(sum, 245628);
  EXPECT_EQ(all.find("problems")->children[0].find("at")->find("y")->text, "-2");
}

TEST(TakeoffJson, WithoutAPriceThereIsNoAmountAndNoFinalTotal) {
  const auto all = parsed(files::takeoff_json(results_of(false)));
  EXPECT_FALSE(all.find("totals")->find("final")->truth);
  const auto& lines = all.find("lines")->children;
  const auto bare =
      std::ranges::find_if(lines, [](const files::Value& line) { return line.find("item")->text == "bare"; });
  ASSERT_NE(bare, lines.end());
  EXPECT_EQ(bare->find("amount")->sort, files::Sort::null);
  EXPECT_EQ(all.find("problems")->children[0].find("code")->text, "no-price");  // problems before flags
}

TEST(TakeoffCsv, ColumnsAndCells) {
  const std::string text = files::takeoff_csv(results_of(false));
  EXPECT_TRUE(text.starts_with(
      "stage,item,description,elements,quantity,unit,order_quantity,order_unit,unit_price,amount,working\r\n"));
  const auto table = files::read_csv(text, "out.csv");
  ASSERT_TRUE(table);
  ASSERT_EQ(table->rows.size(), 5U);
  EXPECT_EQ(table->rows[0].cells[0], "base");
  EXPECT_EQ(table->rows[0].cells[8], "33.50");
  EXPECT_EQ(table->rows[0].cells[9], "368.50");
  EXPECT_EQ(table->rows[1].cells[2], "Adoquín, 60 mm");
  EXPECT_EQ(table->rows[1].cells[4], "900");
  EXPECT_NE(table->rows[1].cells[10].find("whole units 900"), std::string::npos);
  EXPECT_NE(table->rows[3].cells[2].find("(by others)"), std::string::npos);
  EXPECT_EQ(table->rows[3].cells[9], "0.00");
  EXPECT_EQ(table->rows[4].cells[9], "");
}

TEST(TakeoffCsv, NoCellRunsInASpreadsheet) {
  plan::Job job = small_job();
  catalogue::Catalogue book = *job.catalogue;
  auto evil = std::make_shared<catalogue::Item>(*book.item("unit"));
  evil->name.en = "=HYPERLINK(\"x\")";
  evil->unit = "+1";
  evil->price->unit = "+1";
  book.items["unit"] = evil;
  job.catalogue = std::make_shared<const catalogue::Catalogue>(std::move(book));
  const auto table = files::read_csv(files::takeoff_csv(results_of(true, std::move(job))), "out.csv");
  ASSERT_TRUE(table);
  EXPECT_EQ(table->rows[1].cells[2], "'=HYPERLINK(\"x\")");
  for (const auto& row : table->rows)
    for (const std::string& cell : row.cells)
      EXPECT_TRUE(cell.empty() || std::string_view("=+@-\t").find(cell.front()) == std::string_view::npos) << cell;
}

TEST(TakeoffText, SaysWhatAnEstimatorSigns) {
  const std::string text = files::takeoff_text(results_of(false));
  for (const char* part :
       {"Takeoff and order list: Yard", "made up", "Made-up prices, good for a test", "net area 500 sq ft",
        "Bedding and paving", "927 pieces: 900 needed, 927 with 3 % on top", "Lay units", "by others", "no price",
        "[ ] Depth of the base: within 3/4 in", "Dust: cut wet.", "licensed engineer", "1 problem, 1 flag, 0 notices",
        "NOT FINAL", "In all, not final"})
    EXPECT_NE(text.find(part), std::string::npos) << part << "\n" << text;
  const std::string final_text = files::takeoff_text(results_of(true));
  EXPECT_EQ(final_text.find("NOT FINAL"), std::string::npos);
  EXPECT_EQ(final_text.find("not final"), std::string::npos);
  EXPECT_NE(final_text.find("In all 2,456.28 USD"), std::string::npos) << final_text;
}

// 4.95 a sq ft for a unit of 7 x 5 in: 35 / 144 x 4.95 = 1.203125; 927 of them are 1115.296875. A price that is rounded
// to 1.20 would make 1112.40 of them.
TEST(TakeoffText, APriceThatIsNoWholeCoinShowsItsParts) {
  plan::Job job = small_job();
  catalogue::Catalogue book = *job.catalogue;
  auto unit = std::make_shared<catalogue::Item>(*book.item("unit"));
  unit->length = units::Length::inches(7);
  unit->width = units::Length::inches(5);
  unit->price = catalogue::Price{units::Money::of_coins(495), "sq ft", "", false};
  book.items["unit"] = unit;
  job.catalogue = std::make_shared<const catalogue::Catalogue>(std::move(book));
  const results::Results results = results_of(true, std::move(job));
  const std::string text = files::takeoff_text(results);
  EXPECT_NE(text.find("1.2031"), std::string::npos) << text;
  EXPECT_NE(text.find("1,115.30"), std::string::npos) << text;
  EXPECT_NE(text.find("at 4.95 USD per sq ft"), std::string::npos) << text;
  const auto table = files::read_csv(files::takeoff_csv(results), "out.csv");
  ASSERT_TRUE(table);
  EXPECT_EQ(table->rows[1].cells[8], "1.2031");
  EXPECT_EQ(table->rows[0].cells[8], "33.50");
}

TEST(TakeoffText, NoLineIsWiderThanThePaper) {
  std::istringstream lines(files::takeoff_text(results_of(false)));
  for (std::string line; std::getline(lines, line);) EXPECT_LE(files::columns_of(line), files::sheet_width) << line;
}

TEST(TakeoffText, MetricJobsAreReadInMetres) {
  plan::Job job = small_job();
  job.heading.units = units::System::metric;
  const std::string text = files::takeoff_text(results_of(true, std::move(job)));
  EXPECT_NE(text.find("net area 46.5 m2"), std::string::npos) << text;
  EXPECT_EQ(text.find("sq ft"), std::string::npos);
  EXPECT_NE(text.find("short ton"), std::string::npos) << text;
}

TEST(TakeoffText, TheSameResultsGiveTheSameBytes) {
  EXPECT_EQ(files::takeoff_text(results_of(false)), files::takeoff_text(results_of(false)));
  EXPECT_EQ(files::takeoff_json(results_of(false)), files::takeoff_json(results_of(false)));
  EXPECT_EQ(files::takeoff_csv(results_of(false)), files::takeoff_csv(results_of(false)));
}

TEST(SheetText, ColumnsAreLettersNotBytes) {
  EXPECT_EQ(files::columns_of("Adoquín"), 7U);
  EXPECT_EQ(files::at_left("Adoquín", 9), "Adoquín  ");
  EXPECT_EQ(files::cut("Adoquín mixto", 10), "Adoquín...");
  EXPECT_EQ(files::wrapped("a\nb\x01", "- ", 2), "- a b\n");
}

TEST(TakeoffMeasures, InTheUnitsOfTheJob) {
  using units::System;
  EXPECT_EQ(files::measure_in_words("net_area_m2", 9.290304, System::us), "net area 100 sq ft");
  EXPECT_EQ(files::measure_in_words("joint_fill_m3", 0.764554857984, System::us), "joint fill 1 cu yd");
  EXPECT_EQ(files::measure_in_words("cut_length_m", 1.25, System::metric), "cut length 1.25 m");
  EXPECT_EQ(files::measure_in_words("rod_m:rod-5", 3.048, System::us), "rod (rod-5) 10 ft");
  EXPECT_EQ(files::measure_in_words("units_whole", 900, System::us), "units whole 900");
  // 1 l/s = 60 / 3.785411784 = 15.85 US gallons a minute.
  EXPECT_EQ(files::measure_in_words("runoff_l_s", 1, System::us), "runoff 15.9 gpm");
  EXPECT_EQ(files::measure_in_words("runoff_l_s", 1, System::metric), "runoff 1 l/s");
  EXPECT_EQ(files::measure_in_words("fall_least_pct", 2.0248139, System::us), "fall least 2.02 %");
  EXPECT_EQ(files::measure_in_words("velocity_m_s", 0.3048, System::us), "velocity 1 ft/s");
  EXPECT_EQ(files::quantity_in_words(907.18474, "kg", System::us), "1 ton");
  EXPECT_EQ(files::quantity_in_words(9290.304, "kg", System::us), "10.24 tons");
  EXPECT_EQ(files::quantity_in_words(0.0012, "m3", System::metric), "1.2 l");
  EXPECT_EQ(files::quantity_in_words(0.06, "m3", System::metric), "0.06 m3");
  EXPECT_EQ(files::quantity_in_words(0, "m3", System::us), "0 cu yd");
  // A cubic yard is 46656 cu in, a fluid ounce 231/128 of one: 0.0046 x 25852.675 = 118.9.
  EXPECT_EQ(files::quantity_in_words(0.0046 * 0.764554857984, "m3", System::us), "118.9 fl oz");
  EXPECT_EQ(files::quantity_in_words(0.0011 * 907.18474, "kg", System::us), "2.2 lb");
  EXPECT_EQ(files::quantity_in_words(12.5, "kg", System::metric), "12.5 kg");
  EXPECT_EQ(files::quantity_in_words(60, "kg", System::metric), "0.06 t");
  EXPECT_EQ(files::measure_in_words("cut_length_m", 0.325, System::metric), "cut length 325 mm");
  // 0.7 ft is 8.4 in, to the sixteenth 8 3/8; a cubic foot of stone is not 957.5 fl oz.
  EXPECT_EQ(files::measure_in_words("buried_m", 0.21336, System::us), "buried 8 3/8\"");
  EXPECT_EQ(files::measure_in_words("buried_m", 0.21336, System::metric), "buried 213.4 mm");
  EXPECT_EQ(files::measure_in_words("wedges_m3", 0.028316846592, System::us), "wedges 1 cu ft");
}

}  // namespace
