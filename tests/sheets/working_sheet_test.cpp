// The working holds every line of the estimate, every problem, and sums that are the estimate's own.
#include <gtest/gtest.h>

#include <algorithm>

#include "office_kit.h"
#include "sheets/source.h"
#include "sheets/working_parts.h"

namespace {

class WorkingSheet : public testing::TestWithParam<const char*> {
 protected:
  const results::Results& results() const { return demo::results(GetParam()); }
};

TEST_P(WorkingSheet, EveryLineStandsWithItsAmountAndItsSentence) {
  const sheets::Printed printed = office::printed(results());
  const sheets::Sheet sheet = sheets::working(printed);
  std::set<std::pair<std::string, std::string>> said;  // source and words
  std::set<std::string> words;
  for (const sheets::Said& cell : office::cells(sheet)) {
    said.emplace(cell.from, cell.words);
    words.insert(cell.words);
  }
  for (const estimate::OrderLine& line : results().estimate.lines) {
    const std::string from = sheets::of_line(printed, line);
    EXPECT_TRUE(said.contains({from, sheets::number_words(printed, line.order_quantity)})) << line.description;
    if (line.amount && !line.by_others) {
      EXPECT_TRUE(said.contains({from, sheets::money_words(printed, *line.amount)})) << line.description;
    }
    EXPECT_TRUE(line.sentence.empty() || words.contains(line.sentence)) << line.sentence;
  }
}

TEST_P(WorkingSheet, SumsAreThoseOfTheEstimate) {
  const sheets::Printed printed = office::printed(results());
  const sheets::Sheet sheet = sheets::working(printed);
  for (const auto& [stage, sum] : results().estimate.stages)
    EXPECT_TRUE(office::says(sheet, sheets::money_words(printed, sum.amount())));
  EXPECT_TRUE(office::says(sheet, sheets::money_words(printed, results().estimate.total.amount())));
  EXPECT_TRUE(office::says(sheet, sheets::money_words(printed, results().priced.total)));
}

TEST_P(WorkingSheet, EveryProblemAndEveryCheckIsTold) {
  const sheets::Printed printed = office::printed(results());
  const sheets::Sheet sheet = sheets::working(printed);
  for (const problem::Problem& one : results().problems()) EXPECT_TRUE(office::says(sheet, one.text)) << one.text;
  std::size_t checks = 0;
  for (const sheets::Said& cell : office::cells(sheet, true))
    if (cell.from.starts_with("check/")) ++checks;
  EXPECT_EQ(checks, 2 * results().takeoff.checks.size());  // value and limit
  EXPECT_EQ(checks > 0, office::says(sheet, "Preliminary checks"));
}

TEST_P(WorkingSheet, EachNumberLeadsToItsWorking) {
  const sheets::Printed printed = office::printed(results());
  for (const sheets::Said& said : office::cells(sheets::working(printed), true)) {
    if (!office::has_digit(said.words)) continue;
    const auto working = sheets::working_of(printed, said.from);
    EXPECT_TRUE(working && !working->empty()) << said.words << " from " << said.from;
  }
}

INSTANTIATE_TEST_SUITE_P(Demo, WorkingSheet, testing::Values("pool-terrace-a", "pool-terrace-b", "bakery-court"));

TEST(NetWords, AreInTheUnitsOfTheJob) {
  plan::Job job;
  job.catalogue = std::make_shared<const catalogue::Catalogue>();
  const sheets::Printed us = office::printed(job);
  EXPECT_EQ(sheets::net_words(us, 3.048, "m"), "10 ft");          // 3.048 / 0.3048
  EXPECT_EQ(sheets::net_words(us, 9.290304, "m2"), "100 sq ft");  // / 0.09290304
  EXPECT_EQ(sheets::net_words(us, 641, "piece"), "641");
  job.heading.units = units::System::metric;
  const sheets::Printed metric = office::printed(job);
  EXPECT_EQ(sheets::net_words(metric, 3.048, "m"), "3.05 m");
  EXPECT_EQ(sheets::net_words(metric, 1450, "kg"), "1.45 t");
}

TEST(WorkingLines, OfALongWorkingStandPartByPart) {
  const sheets::Printed printed = office::printed(demo::results());
  std::vector<takeoff::Working> many;
  for (int i = 1; i <= 20; ++i)
    many.push_back(takeoff::Working::product({takeoff::term("length of strip " + std::to_string(i), i, units::metre),
                                              takeoff::term("width of strip " + std::to_string(i), 2, units::metre)})
                       .named("strip " + std::to_string(i)));
  const takeoff::Working all = takeoff::Working::sum(std::move(many));
  const auto lines = sheets::working_lines(printed, all, "in all");
  ASSERT_EQ(lines.size(), 21u);  // a line for each strip, and their sum
  EXPECT_TRUE(lines.back().starts_with("in all = ")) << lines.back();
  // 2 m x (1 + 2 + ... + 20) m = 420 m2, of 0.09290304 m2 a square foot: 4520.84
  EXPECT_TRUE(lines.back().ends_with(" = 4520.8 sq ft")) << lines.back();
  EXPECT_EQ(sheets::working_lines(printed, takeoff::term("net", 3, units::piece), "in all").size(), 1u);
}

TEST(Working, OfAnEmptyJobSaysSo) {
  plan::Job job;
  job.catalogue = std::make_shared<const catalogue::Catalogue>();
  EXPECT_TRUE(office::says(sheets::working(office::printed(job)), "nothing to work out"));
}

}  // namespace
