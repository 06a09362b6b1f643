#include <gtest/gtest.h>

#include <algorithm>

#include "crew_kit.h"
#include "sheets/numbered.h"
#include "sheets/parts.h"
#include "sheets/set_out.h"
#include "sheets/setting_out_parts.h"

namespace {

constexpr const char* demo_jobs[] = {"pool-terrace-a", "bakery-court"};

std::size_t plain_rows(const sheets::Table& table) {
  return static_cast<std::size_t>(std::ranges::count(table.rows, sheets::Row::Kind::plain, &sheets::Row::kind));
}

TEST(SettingOutSheet, HasARowForEverythingThatIsSetOut) {
  const sheets::Printed printed = crew_kit::of_demo();
  const auto out = sheets::set_out(*printed.results);
  EXPECT_EQ(plain_rows(sheets::mark_table(printed, out)), out.marks.size());
  EXPECT_EQ(plain_rows(sheets::diagonal_table(printed, out)), out.diagonals.size());
  EXPECT_EQ(plain_rows(sheets::stake_table(printed, out)), out.stakes.size());
  std::size_t cells = 0;
  for (const sheets::Row& row : sheets::offset_table(printed, out).rows)
    if (row.kind == sheets::Row::Kind::plain) cells += row.cells.size();
  EXPECT_EQ(cells, 2 * out.offsets.size());  // along and out of each
}

// The base line runs along the house from (10, 32) to (50, 32) ft. The deck's first corner lies at (0, 5): 10 ft before
// the start, 27 ft to the right, and sqrt(100 + 729) = 28.792 ft = 28 ft 9 1/2 in from it.
TEST(SettingOutSheet, MeasuresFromTheBaseLine) {
  const sheets::Printed printed = crew_kit::of_demo();
  const auto out = sheets::set_out(*printed.results);
  const auto at = std::ranges::find_if(out.marks, [](const auto& mark) { return mark.of == "A1"; });
  ASSERT_NE(at, out.marks.end());
  const std::string number = std::to_string(at - out.marks.begin() + 1);
  const sheets::Table table = sheets::mark_table(printed, out);
  const auto row = std::ranges::find_if(table.rows, [&](const sheets::Row& one) {
    return one.kind == sheets::Row::Kind::plain && one.cells[1].words == number;
  });
  ASSERT_NE(row, table.rows.end());
  EXPECT_EQ(row->cells[2].words.substr(0, 8), "corner 1");
  EXPECT_EQ(row->cells[3].words, "10′ 0″ before");
  EXPECT_EQ(row->cells[4].words, "27′ 0″ R");
  EXPECT_EQ(row->cells[5].words, "28′ 9 1/2″");
}

TEST(SettingOutSheet, AStakeSaysCutOrFill) {
  const sheets::Printed printed = crew_kit::of_demo();
  takeoff::setting_out::SettingOut out;
  // Ground 100 ft, formation 98.5 ft: 1.5 to cut. Finish 101 ft: 1 to fill.
  constexpr double foot = 0.3048;
  out.stakes.push_back({"A1", {}, "corner 1", 100 * foot, 98.5 * foot, 101 * foot, false});
  out.stakes.push_back({"A1", {}, "corner 2", 100 * foot, 100 * foot, {}, true});
  const sheets::Table table = sheets::stake_table(printed, out);
  ASSERT_EQ(table.rows.size(), 3U);  // the element, and two stakes
  EXPECT_EQ(table.rows[1].cells[4].words, "cut 1.50");
  EXPECT_EQ(table.rows[1].cells[6].words, "fill 1.00");
  EXPECT_EQ(table.rows[2].cells[1].words, "corner 2 *");
  EXPECT_EQ(table.rows[2].cells[4].words, "at grade");
  EXPECT_EQ(table.rows[2].cells[6].words, "");
}

TEST(SettingOutSheet, EveryNumberLeadsToItsWorkingAndNonePrices) {
  for (const char* job : demo_jobs) {
    const sheets::Printed printed = crew_kit::of_demo(job);
    const sheets::Sheet sheet = sheets::setting_out(printed);
    crew_kit::expect_sources(printed, sheet);
    crew_kit::expect_no_price(printed, sheet);
  }
}

TEST(SettingOutSheet, MarksAreNumberedOnTheDrawingAsInTheTable) {
  const sheets::Printed printed = crew_kit::of_demo();
  const auto out = sheets::set_out(*printed.results);
  const sheets::Drawing drawing = sheets::set_out_drawing(printed, out).value();
  std::set<std::string> numbers;
  for (const sheets::Label& label : drawing.labels) {
    std::string words = label.said.words + ", ";
    for (std::size_t at = words.find(", "); at != std::string::npos; at = words.find(", ")) {
      numbers.insert(words.substr(0, at));
      words.erase(0, at + 2);
    }
  }
  for (std::size_t i = 0; i < out.marks.size(); ++i) EXPECT_TRUE(numbers.contains(std::to_string(i + 1))) << i + 1;
}

// Backsights 333573 + 566684, foresights 593019 + 306263 steps: 975 steps of 1/320 mm = 3.05 mm = 1/8 in too high.
TEST(SettingOutSheet, TheLevelBookSaysHowItCloses) {
  const sheets::Printed printed = crew_kit::of_demo();
  const auto paragraphs = crew_kit::all<sheets::Paragraph>(sheets::setting_out(printed));
  EXPECT_TRUE(std::ranges::any_of(
      paragraphs, [](const sheets::Paragraph& one) { return one.said.words == "The run closes 1/8″ too high."; }));
  const auto tables = crew_kit::all<sheets::Table>(sheets::setting_out(printed));
  const sheets::Table& book = crew_kit::table(tables, "Point");
  EXPECT_EQ(book.rows.size(), 7U);                   // six readings and their sum
  EXPECT_EQ(book.rows[0].cells[5].words, "100.50");  // 9802368 steps: the sill
  EXPECT_EQ(book.rows[1].cells[5].words, "100.00");  // 100.50 + 3.42 - 3.92: the coping
}

TEST(SettingOutSheet, AJobWithoutABaseLineSaysSoAndGoesOn) {
  const sheets::Sheet sheet = sheets::setting_out(crew_kit::of_demo("bakery-court"));
  const auto paragraphs = crew_kit::all<sheets::Paragraph>(sheet);
  ASSERT_FALSE(paragraphs.empty());
  EXPECT_EQ(paragraphs[0].said.words,
            "No base line is drawn, so there are no ties and offsets from it. Draw one between two fixed points that "
            "stay where they are.");
}

TEST(Numbered, PutsTheNumbersBackIntoTheTranslation) {
  sheets::Printed printed = crew_kit::of_job(crew_kit::empty_job());
  printed.say = [](const std::string& english) {
    return english == "corner %1 to corner %2" ? "de la esquina %1 a la %2" : english;
  };
  EXPECT_EQ(sheets::numbered(printed, "corner 1 to corner 13"), "de la esquina 1 a la 13");
  EXPECT_EQ(sheets::numbered(printed, "edge 7"), "edge 7");
  EXPECT_EQ(sheets::numbered(printed, "on it"), "on it");
  // More than nine numbers are no pattern.
  EXPECT_EQ(sheets::numbered(printed, "1 2 3 4 5 6 7 8 9 10"), "1 2 3 4 5 6 7 8 9 10");
}

}  // namespace
