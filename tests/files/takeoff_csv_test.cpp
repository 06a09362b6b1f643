// The takeoff as CSV in all its forms: another reader finds the same cells in each.
#include <gtest/gtest.h>

#include "files/csv.h"
#include "files/other_hands.h"
#include "results/demo_jobs.h"

namespace {

using Rows = std::vector<std::vector<std::string>>;

Rows rows_of(const files::Value& read) {
  Rows rows;
  for (const files::Value& row : read.children) {
    rows.emplace_back();
    for (const files::Value& cell : row.children) rows.back().push_back(cell.text);
  }
  return rows;
}

results::Results results_with_odd_texts() {
  plan::Job job = demo::job("bakery-court");
  for (const char* text : {"=1+1", "a;b", "a\tb", "a,b", "say \"so\"", "two\nlines", "'@quoted", "ñ"}) {
    plan::AddedLine line;
    line.id = "odd" + std::to_string(job.offer.lines.size());
    line.stage = "finish";
    line.text = text;
    line.unit_price = units::Money::of_coins(100);
    job.offer.lines.push_back(line);
  }
  return demo::compute(std::move(job));
}

TEST(TakeoffCsv, AnotherReaderFindsTheSameCellsInEveryForm) {
  const results::Results results = results_with_odd_texts();
  const auto ours = files::read_csv_rows(files::takeoff_csv(results), "takeoff.csv");
  ASSERT_TRUE(ours) << problem::sentence(ours.error());
  Rows expected;
  for (const files::CsvRow& row : *ours) expected.push_back(row.cells);
  ASSERT_EQ(expected.size(), results.estimate.lines.size() + 1);
  for (const auto& [separator, word] : {std::pair{',', "','"}, std::pair{';', "';'"}, std::pair{'\t', "tab"}})
    for (const bool mark : {false, true}) {
      const std::string text = files::takeoff_csv(results, {separator, mark});
      EXPECT_EQ(text.starts_with("\xEF\xBB\xBF"), mark);
      const std::string words = std::string(word) + (mark ? " utf-8-sig" : " utf-8");
      EXPECT_EQ(rows_of(other_hands::read("csv_cells.py", text, ".csv", words)), expected) << words;
    }
}

TEST(TakeoffCsv, NumbersKeepTheirDotBesideSemicolons) {
  EXPECT_EQ(files::csv_row({"1.5", "a;b", "a,b"}, ';'), "1.5;\"a;b\";a,b\r\n");
  EXPECT_EQ(files::csv_row({"", "x"}, '\t'), "\tx\r\n");
  EXPECT_EQ(files::csv_row({"", "x"}), ",x\r\n");
}

}  // namespace
