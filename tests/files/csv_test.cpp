// CSV in and out: RFC 4180, no formula ever leaves, and what is not CSV is refused with its place.
#include "files/csv.h"

#include <gtest/gtest.h>
#include <rapidcheck.h>

#include "files/csv_cells.h"
#include "units/number.h"

namespace files {
namespace {

using Cells = std::vector<std::string>;

std::vector<Cells> cells_of(std::string_view text) {
  std::vector<Cells> rows;
  const auto table = read_csv(text, "t.csv");
  if (!table) return {{problem::sentence(table.error())}};
  rows.push_back(table->columns);
  for (const CsvRow& row : table->rows) rows.push_back(row.cells);
  return rows;
}

std::string refusal(std::string_view text) {
  const auto table = read_csv(text, "t.csv");
  return table ? "" : problem::sentence(table.error());
}

TEST(Csv, ReadsWhatTheRfcShows) {
  // RFC 4180, section 2, its examples 5, 6 and 7.
  EXPECT_EQ(cells_of("\"aaa\",\"bbb\",\"ccc\"\r\nzzz,yyy,xxx"),
            (std::vector<Cells>{{"aaa", "bbb", "ccc"}, {"zzz", "yyy", "xxx"}}));
  EXPECT_EQ(cells_of("\"aaa\",\"b\r\nbb\",\"ccc\"\r\nzzz,yyy,xxx\r\n"),
            (std::vector<Cells>{{"aaa", "b\r\nbb", "ccc"}, {"zzz", "yyy", "xxx"}}));
  EXPECT_EQ(cells_of("\"aaa\",\"b\"\"bb\",\"ccc\"\n"), (std::vector<Cells>{{"aaa", "b\"bb", "ccc"}}));
  EXPECT_EQ(cells_of("\xEF\xBB\xBF"
                     "a,b\n1,\n,2\n,\n\n"),
            (std::vector<Cells>{{"a", "b"}, {"1", ""}, {"", "2"}}));
  EXPECT_EQ(cells_of("a,b\n\"\",\"x\""), (std::vector<Cells>{{"a", "b"}, {"", "x"}}));
}

TEST(Csv, KnowsTheLineOfEachRow) {
  const auto table = read_csv("a,b\r\n\"1\n2\",x\r\n\r\n3,y\r\n", "t.csv");
  ASSERT_TRUE(table);
  EXPECT_EQ(table->rows.at(0).line, 2);
  EXPECT_EQ(table->rows.at(1).line, 5);
  EXPECT_EQ(table->column("b"), 1u);
  EXPECT_FALSE(table->column("c"));
}

TEST(Csv, RefusesWithThePlace) {
  EXPECT_EQ(refusal(""), "t.csv:1: there is no head line; name the columns in the first row");
  EXPECT_TRUE(refusal("a,b\n1\n").starts_with("t.csv:2: the row has 1 cells, the head line 2")) << refusal("a,b\n1\n");
  EXPECT_TRUE(refusal("a,b\n1,2,3\n").starts_with("t.csv:2: the row has 3 cells")) << refusal("a,b\n1,2,3\n");
  EXPECT_TRUE(refusal("a,b\nxy\"z,1\n").starts_with("t.csv:2:3: a quote stands inside")) << refusal("a,b\nxy\"z,1\n");
  EXPECT_TRUE(refusal("a,b\n\"x\"y,1\n").starts_with("t.csv:2:4: text follows")) << refusal("a,b\n\"x\"y,1\n");
  EXPECT_TRUE(refusal("a,b\n1,\"x\n\n").starts_with("t.csv:2:3: a quote is opened here")) << refusal("a,b\n1,\"x\n\n");
  EXPECT_TRUE(refusal("a,a\n").starts_with("t.csv:1: two columns are called 'a'")) << refusal("a,a\n");
  EXPECT_TRUE(refusal("a,\n").starts_with("t.csv:1: a column has no name")) << refusal("a,\n");
  EXPECT_TRUE(refusal("a\n\xC3(\n").starts_with("t.csv:2:1: the text is not UTF-8")) << refusal("a\n\xC3(\n");
  EXPECT_TRUE(refusal("a\n\xED\xA0\x80\n").find("not UTF-8") != std::string::npos);  // a surrogate
  EXPECT_TRUE(refusal("a\n\xC0\xAF\n").find("not UTF-8") != std::string::npos);      // overlong
  EXPECT_TRUE(refusal("a\n\xF5\x80\x80\x80\n").find("not UTF-8") != std::string::npos);
  EXPECT_TRUE(refusal(std::string("a\nx\0y\n", 6)).find("zero byte") != std::string::npos);
  EXPECT_TRUE(refusal(std::string(64 * 1024 * 1024 + 1, 'a')).find("larger than 64 MiB") != std::string::npos);
}

TEST(Csv, WritesQuotesOnlyWhereNeeded) {
  EXPECT_EQ(csv_row({"a", "b c", "", "1.5"}), "a,b c,,1.5\r\n");
  EXPECT_EQ(csv_row({"", "x"}), ",x\r\n");
  EXPECT_EQ(csv_row({"a,b", "say \"so\"", "two\nlines"}), "\"a,b\",\"say \"\"so\"\"\",\"two\nlines\"\r\n");
}

TEST(Csv, NoTextLeavesAsAFormula) {
  for (const char* text : {"=1+1", "+1", "-1", "@SUM(A1)", "\tx", "\rx", "=cmd|'/c calc'!A0", "'=1", "''@x"}) {
    EXPECT_EQ(csv_text(text), "'" + std::string(text));
    EXPECT_EQ(text_of_csv(csv_text(text)), text);
  }
  // What a spreadsheet does not run stays as it is, the apostrophe of a name too.
  for (const char* text : {"", "1/2 in", "'; DROP TABLE items; --", "'", "''", "a=b", "%s%n",
                           "\xE2\x80\xAE"
                           "abc"}) {
    EXPECT_EQ(csv_text(text), text);
    EXPECT_EQ(text_of_csv(text), text);
  }
}

const std::vector<std::string> letters{"a",  "b", "1",  " ", ",", "\"",           "'",  "=", "+", "-", "@", "\t", "\r",
                                       "\n", ";", "\\", "ñ", "½", "\xE2\x80\xAE", "😀", "%s"};

rc::Gen<std::string> text() {
  return rc::gen::map(rc::gen::container<Cells>(rc::gen::elementOf(letters)), [](const Cells& parts) {
    std::string joined;
    for (const std::string& part : parts) joined += part;
    return joined;
  });
}

TEST(Csv, WrittenThenReadIsTheSame) {
  EXPECT_TRUE(rc::check("a table of any texts comes back, and none of its cells runs", [] {
    const auto width = *rc::gen::inRange<std::size_t>(1, 5);
    std::string written;
    Cells head;
    for (std::size_t i = 0; i < width; ++i) head.push_back("column " + std::to_string(i));
    written += csv_row(head);
    const auto rows = *rc::gen::container<std::vector<Cells>>(rc::gen::container<Cells>(width, text()));
    std::vector<Cells> expected{head};
    for (const Cells& row : rows) {
      Cells guarded;
      for (const std::string& cell : row) guarded.push_back(csv_text(cell));
      written += csv_row(guarded);
      for (const std::string& cell : guarded)
        RC_ASSERT(cell.empty() || std::string("=+-@\t\r").find(cell[0]) == std::string::npos);
      if (row != Cells(width)) expected.push_back(row);
    }
    auto read = cells_of(written);
    for (Cells& row : read)
      for (std::string& cell : row) cell = text_of_csv(cell);
    RC_ASSERT(read == expected);
  }));
}

TEST(Csv, AnyBytesAreReadOrRefused) {
  EXPECT_TRUE(rc::check("no bytes break the reader; each refusal names the file and a line", [] {
    const auto bytes = *rc::gen::container<std::string>(
        rc::gen::oneOf(rc::gen::arbitrary<char>(), rc::gen::elementOf(std::string(",\"\n\r'=x"))));
    const auto table = read_csv(bytes, "t.csv");
    if (!table)
      RC_ASSERT(table.error().place.file == "t.csv" && table.error().place.line >= 1 && !table.error().mend.empty());
    if (table)
      for (const CsvRow& row : table->rows) RC_ASSERT(row.cells.size() == table->columns.size());
  }));
}

TEST(CsvCells, PercentIsTheShareDigitByDigit) {
  EXPECT_EQ(percent_of(0.07), "7");
  EXPECT_EQ(percent_of(0.035), "3.5");
  EXPECT_EQ(percent_of(1), "100");
  EXPECT_EQ(percent_of(0), "0");
  EXPECT_EQ(percent_of(0.0001), "0.01");
  EXPECT_TRUE(rc::check("any share comes back to the last digit", [] {
    const double share =
        static_cast<double>(*rc::gen::inRange<std::int64_t>(0, std::int64_t{1} << 53)) / 9007199254740992.0;
    const auto table = read_csv("a\n" + percent_of(share) + "\n", "t.csv");
    CsvCells cells(*table, table->rows.at(0));
    RC_ASSERT(cells.percent("a") == share);
    RC_ASSERT(!cells.fault());
  }));
}

TEST(CsvCells, TheFirstFaultStays) {
  const auto table = read_csv("n,m,w\n1.5,\"1,5\",2.5\n", "t.csv");
  CsvCells cells(*table, table->rows.at(0));
  EXPECT_EQ(cells.number("n"), 1.5);
  EXPECT_FALSE(cells.number("m"));
  EXPECT_EQ(cells.count("w"), 0);
  ASSERT_TRUE(cells.fault());
  EXPECT_EQ(problem::sentence(*cells.fault()),
            "t.csv:2: column m: '1,5' is not a number; write digits with a dot before the decimals and no unit");
}

}  // namespace
}  // namespace files
