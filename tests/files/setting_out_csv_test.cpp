#include "files/setting_out_csv.h"

#include <gtest/gtest.h>

#include "files/csv.h"

namespace {

using takeoff::setting_out::SettingOut;
using units::Length;

plan::Job job(units::System units = units::System::us) {
  plan::Job made;
  made.catalogue = std::make_shared<const catalogue::Catalogue>();
  made.heading.units = units;
  return plan::with(made, {"BL", "", plan::BaseLine{{}, {Length::feet(40), {}}, {}}});
}

SettingOut sample() {
  SettingOut out;
  out.base_line = "BL";
  takeoff::setting_out::Mark mark;
  mark.of = "=1+1";
  mark.what = "corner 1";
  mark.at = {Length::feet(12), Length::feet(-12)};
  mark.along = 3.6576;
  mark.out = -3.6576;
  mark.tie_from = 5.1726;
  mark.tie_to = 9.2852;
  mark.side = "right of it";
  mark.poor = true;
  out.marks.push_back(mark);
  out.diagonals.push_back({"A", "corner 1 to corner 3", 6.096, true});
  out.offsets.push_back({"A", 2, 1, {}, {}, 3.048, 0.3048, -0.9144});
  out.stakes.push_back({"A", {}, "corner 1", 30.48, 30.1752, 30.6324, true});
  out.problems.push_back(
      {problem::Severity::notice, "ties-long", "the ties are long", "draw it nearer", {"A", {}, 0, 0, {}}});
  return out;
}

files::CsvTable table(const plan::Job& of, const SettingOut& out) {
  auto read = files::read_csv(files::setting_out_csv(of, out), "out.csv");
  if (read) return std::move(*read);
  ADD_FAILURE() << problem::sentence(read.error());
  return {};
}

std::string cell(const files::CsvTable& of, const std::string& kind, const std::string& column) {
  for (const files::CsvRow& row : of.rows)
    if (row.cells[0] == kind) return row.cells.at(of.column(column).value());
  return "no " + kind;
}

}  // namespace

TEST(SettingOutCsv, lengthsStandInTheJobsUnitsAndInMetres) {
  const files::CsvTable us = table(job(), sample());
  EXPECT_EQ(us.rows.size(), 7u);  // two ends of the base line, then one of each kind
  EXPECT_EQ(cell(us, "mark", "along"), "12' 0\"");
  EXPECT_EQ(cell(us, "mark", "along_m"), "3.657600");
  EXPECT_EQ(cell(us, "mark", "out"), "12' 0\"");
  EXPECT_EQ(cell(us, "mark", "out_m"), "-3.657600");
  EXPECT_EQ(cell(us, "mark", "side"), "right of it");
  EXPECT_EQ(cell(us, "mark", "y_m"), "-3.657600");
  SettingOut before = sample();
  before.marks.front().along = -0.4572;
  EXPECT_EQ(cell(table(job(), before), "mark", "along"), "1' 6\" before the start");
  EXPECT_EQ(cell(table(job(), before), "mark", "along_m"), "-0.457200");
  EXPECT_EQ(cell(us, "diagonal", "value"), "20' 0\"");
  EXPECT_EQ(cell(us, "offset", "what"), "edge 2, part 1");
  EXPECT_EQ(cell(us, "offset", "out"), "3' 0\"");
  EXPECT_EQ(cell(us, "offset", "side"), "right of the chord");
  EXPECT_EQ(cell(table(job(units::System::metric), sample()), "diagonal", "value"), "6.096 m");
}

// Ground 100.00 ft, formation 99.00, finish 100.50: 1.00 ft to cut, then the ground lies 0.50 ft under the finish.
TEST(SettingOutCsv, stakesSayCutAndFill) {
  const files::CsvTable us = table(job(), sample());
  EXPECT_EQ(cell(us, "stake", "ground"), "100.00");
  EXPECT_EQ(cell(us, "stake", "cut_to_formation"), "1.00");
  EXPECT_EQ(cell(us, "stake", "cut_to_finish"), "-0.50");
  EXPECT_EQ(cell(us, "stake", "cut_to_finish_m"), "-0.152400");
  EXPECT_EQ(cell(us, "stake", "note"), "cut to formation, fill to finish, the ground here was not measured: a guess");
  SettingOut bare = sample();
  bare.stakes.front().ground.reset();
  EXPECT_EQ(cell(table(job(), bare), "stake", "cut_to_formation"), "");
  EXPECT_EQ(cell(table(job(), bare), "stake", "ground_m"), "");
}

TEST(SettingOutCsv, noTextRunsAsAFormula) {
  const files::CsvTable us = table(job(), sample());
  EXPECT_EQ(cell(us, "mark", "element"), "'=1+1");
  for (const files::CsvRow& row : us.rows) {
    for (std::size_t i = 0; i < row.cells.size(); ++i) {
      const bool number = us.columns[i].ends_with("_m") || us.columns[i].starts_with("cut_to_");
      EXPECT_FALSE(!number && row.cells[i].find_first_of("=+-@") == 0) << us.columns[i] << ": " << row.cells[i];
    }
  }
}

TEST(SettingOutCsv, nothingToSetOutIsAHeadLineAndItsNotices) {
  const files::CsvTable none = table(job(), {});
  EXPECT_TRUE(none.rows.empty());
  EXPECT_EQ(none.columns.front(), "kind");
}
