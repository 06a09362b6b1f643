#include "crew_kit.h"
#include "sheets/start_parts.h"

namespace {

using namespace crew_kit;

constexpr double inch = 0.0254;

// Units of 4 in at 1/8 in: 63 courses and 62 joints opened by 1/64 in are 252 + 62 x 9/64 = 260.71875 in.
TEST(Running, JointsAreOpenedToComeOutWhole) {
  const auto whole = sheets::come_out_whole(260.71875 * inch, 4 * inch, inch / 8);
  ASSERT_TRUE(whole.has_value());
  EXPECT_EQ(whole->count, 63);
  EXPECT_NEAR(whole->open, inch / 64, 1e-12);
  // 10 courses at the usual joint are 40 + 9/8 = 41.125 in between their outer edges.
  EXPECT_NEAR(sheets::come_out_whole(41.125 * inch, 4 * inch, inch / 8)->open, 0, 1e-12);
  // 2 in more over 10 courses would be 2/9 in a joint: that is seen.
  EXPECT_FALSE(sheets::come_out_whole(43.125 * inch, 4 * inch, inch / 8).has_value());
  EXPECT_FALSE(sheets::come_out_whole(0, 4 * inch, inch / 8).has_value());
}

// The walk of the demo: units 6 x 9 in modules in half bond. Along 9 in, out 6 in, each row moved by 4 1/2 in.
TEST(Running, OfARunningBond) {
  const auto measures = sheets::running_measures(of_demo(), "W");
  ASSERT_EQ(measures.size(), 2U);
  EXPECT_TRUE(measures[0].along);
  EXPECT_NEAR(measures[0].module, 9 * inch, 1e-6);
  EXPECT_TRUE(measures[0].units);
  EXPECT_NEAR(measures[1].module, 6 * inch, 1e-6);
  EXPECT_NEAR(measures[1].shift, 4.5 * inch, 1e-6);
}

// Slabs of 606.425 mm with a joint of 3.175: 609.6 mm both ways, one under the other.
TEST(Running, OfAStackBond) {
  const auto measures = sheets::running_measures(of_demo("bakery-court"), "A2");
  ASSERT_EQ(measures.size(), 2U);
  EXPECT_NEAR(measures[0].module, 0.6096, 1e-9);
  EXPECT_NEAR(measures[1].module, 0.6096, 1e-9);
  EXPECT_NEAR(measures[1].shift, 0, 1e-9);
  EXPECT_EQ(sheets::marked_steps(measures[0]).front(), 1);
}

TEST(Running, StepsAreThoseOfATape) {
  sheets::Running one;
  one.module = 0.1;
  one.ahead = 4.05;
  EXPECT_EQ(sheets::marked_steps(one), (std::vector<int>{1, 5, 10, 20, 30, 40}));
  one.ahead = 0.05;
  EXPECT_TRUE(sheets::marked_steps(one).empty());
}

// 40 ft along and 20 ft out have room for 6 parts of a foot: 24, 18 and 30 ft. Metric by quarters of a metre, at most
// ten of them: 10, 7.5 and 12.5 m.
TEST(StartSheet, SquareOfThreeFourFive) {
  const auto feet = sheets::square_for(40 * 0.3048, 20 * 0.3048, units::System::us);
  EXPECT_NEAR(feet.along, 24 * 0.3048, 1e-9);
  EXPECT_NEAR(feet.out, 18 * 0.3048, 1e-9);
  EXPECT_NEAR(feet.across, 30 * 0.3048, 1e-9);
  const auto metres = sheets::square_for(100, 100, units::System::metric);
  EXPECT_NEAR(metres.along, 10, 1e-9);
  EXPECT_NEAR(metres.across, 12.5, 1e-9);
  const auto least = sheets::square_for(0.5, 0.5, units::System::us);
  EXPECT_NEAR(least.across, 5 * 0.3048, 1e-9);
}

// A1 starts at 863.6, 203.2 mm; the base line runs east from 3048, 9753.6: 2184.4 mm before its start, 9550.4 out to
// the right. The tie is the root of 2184.4^2 + 9550.4^2 = 9797.03 mm = 32 ft 1 11/16 in.
TEST(StartSheet, TheStartIsTiedToTheBaseLine) {
  const auto sheet = sheets::start_sheet(of_demo());
  const auto tables = all<sheets::Table>(sheet);
  const sheets::Table& first = table(tables, "Along the base line");
  ASSERT_EQ(first.rows.size(), 1U);
  EXPECT_EQ(first.rows[0].cells[0].words, "-7′ 2″");
  EXPECT_EQ(first.rows[0].cells[1].words, "31′ 4″");
  EXPECT_EQ(first.rows[0].cells[2].words, "right of it");
  EXPECT_EQ(first.rows[0].cells[3].words, "32′ 1 11/16″");
}

// Without a base line two corners of the area do.
TEST(StartSheet, WithoutABaseLineCornersTieIt) {
  const auto tables = all<sheets::Table>(sheets::start_sheet(of_demo("bakery-court")));
  const sheets::Table& first = table(tables, "Tied from");
  ASSERT_EQ(first.rows.size(), 2U);
  EXPECT_NE(first.rows[0].cells[0].words.find("of A1"), std::string::npos);
}

// All laid areas have their passage, with running measures; the first pallets are opened three at once.
TEST(StartSheet, EachLaidAreaHasItsMeasures) {
  const auto sheet = sheets::start_sheet(of_demo());
  std::vector<std::string> headings;
  for (const sheets::Heading& heading : all<sheets::Heading>(sheet)) headings.push_back(heading.words.substr(0, 2));
  for (const char* tag : {"A1", "A2", "W "}) EXPECT_NE(std::ranges::find(headings, tag), headings.end()) << tag;
  const auto tables = all<sheets::Table>(sheet);
  const sheets::Table& pallets = table(tables, "First pallets");
  ASSERT_FALSE(pallets.rows.empty());
  EXPECT_EQ(pallets.rows[0].cells[1].words, "pallets 1 to 3");
}

// Levels at the corners of A1: the finish less the unit of 60.325 mm is the top of the bedding.
TEST(StartSheet, LevelsGoDownByTheLayers) {
  const auto tables = all<sheets::Table>(sheets::start_sheet(of_demo()));
  const sheets::Table& levels = table(tables, "Level at");
  ASSERT_FALSE(levels.rows.empty());
  const auto value = [&](std::size_t cell) { return std::stod(levels.rows[0].cells[cell].words); };
  EXPECT_NEAR(value(1) - value(2), 60.325 / 304.8, 0.0101);  // feet to two decimals, both rounded
  EXPECT_GT(value(2), value(3));
}

TEST(StartSheet, NumbersLeadToTheirWorkings) {
  for (const char* name : {"pool-terrace-a", "bakery-court"}) {
    expect_sources(of_demo(name), sheets::start_sheet(of_demo(name)));
    expect_no_price(of_demo(name), sheets::start_sheet(of_demo(name)));
  }
}

TEST(StartSheet, AnEmptyJobSaysSo) { EXPECT_EQ(blocks(sheets::start_sheet(of_job(empty_job()))).size(), 1U); }

}  // namespace
