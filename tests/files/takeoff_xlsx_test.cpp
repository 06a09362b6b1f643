// The takeoff as a spreadsheet: computed again by other hands, read by another reader, the same bytes every time.
#include "files/takeoff_xlsx.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cstdlib>

#include "files/json_read.h"
#include "files/other_hands.h"
#include "files/sheet_sums.h"
#include "files/working_cells.h"
#include "results/demo_jobs.h"

namespace {

using files::Cell;
using takeoff::term;
using takeoff::Working;

const files::Sheet& sheet(const files::Workbook& book, const std::string& name) {
  return *std::ranges::find(book.sheets, name, &files::Sheet::name);
}

std::size_t formulas(const files::Sheet& sheet) {
  std::size_t count = 0;
  for (const auto& row : sheet.rows)
    count += static_cast<std::size_t>(std::ranges::count(row, Cell::What::formula, &Cell::what));
  return count;
}

// Row of the sheet whose first cell says so.
std::size_t row_of(const files::Sheet& sheet, const std::string& first) {
  for (std::size_t i = 0; i < sheet.rows.size(); ++i)
    if (!sheet.rows[i].empty() && sheet.rows[i][0].text == first) return i;
  ADD_FAILURE() << sheet.name << " has no row " << first;
  return 0;
}

files::Value read_again(const std::string& bytes) { return other_hands::read("spreadsheet_cells.py", bytes, ".xlsx"); }

class DemoBooks : public testing::TestWithParam<const char*> {};

TEST_P(DemoBooks, EveryFormulaComesToTheValueThatIsKeptWithIt) {
  const results::Results results = demo::compute(demo::job(GetParam()));
  const files::Workbook book = files::takeoff_workbook(results);
  const sheet_sums::Book again(book);
  for (const files::Sheet& one : book.sheets)
    for (std::size_t row = 0; row < one.rows.size(); ++row)
      for (std::size_t column = 0; column < one.rows[row].size(); ++column) {
        const Cell& cell = one.rows[row][column];
        if (cell.what != Cell::What::formula) continue;
        EXPECT_NEAR(again.value(one.name, row, column), cell.value, 1e-6 + 1e-9 * std::abs(cell.value))
            << one.name << " " << files::cell_name(row, column) << " =" << cell.text;
      }
  // Amounts and order quantities of the lines are computed, not copied.
  const std::size_t lines = results.estimate.lines.size();
  EXPECT_GE(formulas(sheet(book, "Lines")), lines);
  EXPECT_GE(formulas(sheet(book, "Working")), lines);
}

TEST_P(DemoBooks, TotalsAreThoseOfTheTakeoff) {
  const results::Results results = demo::compute(demo::job(GetParam()));
  const files::Workbook book = files::takeoff_workbook(results);
  const sheet_sums::Book again(book);
  const files::Sheet& summary = sheet(book, "Summary");
  const double coins = std::pow(10.0, results.job->heading.decimals);
  const auto at = [&](const std::string& row, std::size_t column) {
    return std::llround(again.value("Summary", row_of(summary, row), column) * coins);
  };
  for (const auto& [stage, total] : results.estimate.stages) {
    EXPECT_EQ(at(takeoff::word(stage), 1), total.material.coins());
    EXPECT_EQ(at(takeoff::word(stage), 2), total.work.coins());
    EXPECT_EQ(at(takeoff::word(stage), 3), total.amount().coins());
  }
  EXPECT_EQ(at("Sum", 3), results.estimate.total.amount().coins());
  EXPECT_NEAR(again.value("Summary", row_of(summary, "Sum"), 5), results.estimate.total.hours, 1e-6);
  EXPECT_EQ(at("Price before tax", 3), results.priced.price.coins());
}

INSTANTIATE_TEST_SUITE_P(Jobs, DemoBooks, testing::Values("pool-terrace-a", "pool-terrace-b", "bakery-court"));

// A price that whoever opens the file puts 1 higher costs as much more as there are of the line.
TEST(TakeoffXlsx, APriceThatIsChangedChangesTheSum) {
  const results::Results results = demo::compute(demo::job("bakery-court"));
  files::Workbook book = files::takeoff_workbook(results);
  auto& lines = book.sheets[1];
  std::size_t row = 1;
  while (lines.rows[row][12].what != Cell::What::formula) ++row;
  lines.rows[row][11].value += 1;
  const double more = sheet_sums::Book(book).value("Lines", row, 9);
  const sheet_sums::Book again(book);
  const double before = static_cast<double>(results.estimate.total.amount().coins()) / 100;
  EXPECT_NEAR(again.value("Summary", row_of(book.sheets[0], "Sum"), 3), before + more, 0.0051);
}

results::Results with_odd_texts() {
  plan::Job job = demo::job("bakery-court");
  job.heading.name = "=HYPERLINK(\"x\")";
  job.heading.customer = "+1 Ünal & <Sons>";
  plan::AddedLine line;
  line.id = "odd";
  line.stage = "finish";
  line.text = "@SUM(A1:A9) \"quoted\"";
  line.quantity = 2;
  line.unit = "-day";
  line.unit_price = units::Money::of_coins(15050);
  job.offer.lines.push_back(line);
  job.offer.date = "2026-03-09";
  return demo::compute(std::move(job));
}

TEST(TakeoffXlsx, AnotherReaderFindsTheSameCells) {
  const results::Results results = with_odd_texts();
  const files::Workbook book = files::takeoff_workbook(results);
  const auto bytes = files::takeoff_xlsx(results);
  ASSERT_TRUE(bytes) << problem::sentence(bytes.error());
  const files::Value read = read_again(*bytes);
  ASSERT_NE(read.find("sheets"), nullptr);
  EXPECT_EQ(read.find("created")->text, "2026-03-09T00:00:00");
  const files::Value& sheets = *read.find("sheets");
  ASSERT_EQ(sheets.keys.size(), 4u);
  for (std::size_t i = 0; i < 4; ++i) {
    const files::Sheet& written = book.sheets[i];
    EXPECT_EQ(sheets.keys[i].name, written.name);
    EXPECT_EQ(sheets.children[i].find("frozen")->text, "A" + std::to_string(written.frozen + 1));
    const files::Value& rows = *sheets.children[i].find("rows");
    ASSERT_EQ(rows.children.size(), written.rows.size()) << written.name;
    for (std::size_t row = 0; row < written.rows.size(); ++row)
      for (std::size_t column = 0; column < written.rows[row].size(); ++column) {
        const Cell& cell = written.rows[row][column];
        const auto& told = rows.children[row].children.at(column).children;
        const std::string place = written.name + " " + files::cell_name(row, column);
        if (cell.what == Cell::What::text) {
          EXPECT_EQ(told[0].text, "s") << place;
          EXPECT_EQ(told[1].text, cell.text) << place;
        } else if (cell.what != Cell::What::empty) {
          EXPECT_EQ(told[0].text, cell.what == Cell::What::formula ? "f" : "n") << place;
          EXPECT_NEAR(units::read_number(told[1].text).value_or(-1), cell.value, 1e-12 * std::abs(cell.value)) << place;
        }
      }
  }
}

TEST(TakeoffXlsx, TheSameBytesWhateverTheClockAndTheZone) {
  const results::Results results = with_odd_texts();
  const auto once = files::takeoff_xlsx(results);
  ASSERT_TRUE(once);
  // Whole seconds stand in the parts of the file; another zone would show where the clock of the machine is used.
  ::setenv("TZ", "Pacific/Auckland", 1);
  ::tzset();
  const auto again = files::takeoff_xlsx(results);
  ::unsetenv("TZ");
  ::tzset();
  ASSERT_TRUE(again);
  EXPECT_EQ(*once, *again);
}

TEST(TakeoffXlsx, AJobWithoutAnythingIsASheetOfHeads) {
  plan::Job job;
  job.catalogue = std::make_shared<const catalogue::Catalogue>();
  const auto bytes = files::takeoff_xlsx(demo::compute(std::move(job)));
  ASSERT_TRUE(bytes) << problem::sentence(bytes.error());
  const files::Value read = read_again(*bytes);
  EXPECT_EQ(read.find("sheets")->keys.size(), 4u);
}

TEST(Workbook, NamesOfCells) {
  EXPECT_EQ(files::cell_name(0, 0), "A1");
  EXPECT_EQ(files::cell_name(6, 1, true), "$B$7");
  EXPECT_EQ(files::cell_name(0, 25), "Z1");
  EXPECT_EQ(files::cell_name(0, 26), "AA1");
  EXPECT_EQ(files::cell_name(9, 701), "ZZ10");  // 26 + 26 x 26 = 702 columns have one or two letters
  EXPECT_EQ(files::cell_name(9, 702), "AAA10");
}

TEST(Workbook, ATextTooLongForACellIsCutBetweenLetters) {
  std::string text(32'763, 'a');
  text += "\xC3\xA9\xC3\xA9\xC3\xA9";  // 32,769 bytes: past 32,767; the first of these begins at byte 32,763
  const auto bytes = files::write_workbook({"t", "", 2, false, {{"S", {10}, 0, false, 0, {{files::text_cell(text)}}}}});
  ASSERT_TRUE(bytes);
  const files::Value read = read_again(*bytes);
  const auto& rows = *read.find("sheets")->children[0].find("rows");
  EXPECT_EQ(rows.children[0].children[0].children[1].text, std::string(32'763, 'a') + "...");
}

// (3 m + 0.5 m) x 2 = 7 m; 7 / 2 m = 3.5 pieces, up to 4; the greatest of 4 and 3; less 1.
TEST(WorkingCells, EachResultIsAFormulaOverItsParts) {
  const Working length =
      Working::product({Working::sum({term("side", 3, units::metre, "W"), term("lap", 0.5, units::metre)}),
                        term("sides", 2, units::piece)});
  const Working pieces = Working::up(Working::quotient(length.named("run"), term("piece", 2, units::metre, "tube")));
  const Working kept =
      Working::difference(Working::greatest({pieces, term("least", 3, units::piece)}), term("have", 1, units::piece));
  const auto rows = files::working_cells(kept, "tubes", 10, 0);
  std::vector<std::string> told;
  for (const auto& row : rows) told.push_back(row[3].text);
  // The rows: tubes, greatest, up, quotient, run, sum, side, lap, sides, piece, least, have; rows count from 11.
  EXPECT_EQ(told, (std::vector<std::string>{"D12-D22", "MAX(D13,D21)", "ROUNDUP(D14-0.000000001,0)", "D15/D20",
                                            "D16*D19", "D17+D18", "", "", "", "", "", ""}));
  EXPECT_EQ(rows[0][2].text, "tubes");
  EXPECT_DOUBLE_EQ(rows[0][3].value, 3);
  files::Workbook book;
  book.sheets.push_back({"Working", {}, 0, false, 0, std::vector<std::vector<Cell>>(10)});
  book.sheets[0].rows.insert(book.sheets[0].rows.end(), rows.begin(), rows.end());
  EXPECT_DOUBLE_EQ(sheet_sums::Book(book).value("Working", 10, 3), 3);
}

TEST(WorkingCells, UpOfNothingIsAPlainNumber) {
  const auto rows = files::working_cells(Working::up(term("none", 0, units::piece)), "none", 0, 0);
  EXPECT_EQ(rows[0][3].what, Cell::What::number);
}

}  // namespace
