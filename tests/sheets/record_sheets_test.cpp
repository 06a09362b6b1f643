// Inspection record, field sheet and close-out.
#include "crew_kit.h"

namespace {

using namespace crew_kit;
using takeoff::Stage;

std::size_t points_of(const sheets::Printed& printed) {
  std::size_t count = 0;
  for (const takeoff::StageNotes& notes : printed.results->takeoff.stages) count += notes.hold_points.size();
  return count;
}

// Each hold point once, with who, its source under it and room to write.
TEST(Inspection, HasEveryHoldPoint) {
  for (const char* name : {"pool-terrace-a", "bakery-court"}) {
    const auto printed = of_demo(name);
    const auto sheet = sheets::inspection(printed);
    const auto holds = all<sheets::Hold>(sheet);
    EXPECT_EQ(holds.size(), points_of(printed)) << name;
    for (const sheets::Hold& hold : holds) EXPECT_FALSE(hold.by.empty()) << hold.look_at;
    std::size_t sources = 0;
    for (const sheets::Paragraph& line : all<sheets::Paragraph>(sheet))
      if (line.said.words.starts_with("Source: ")) ++sources;
    EXPECT_EQ(sources, holds.size()) << name;
    EXPECT_GE(all<sheets::Blanks>(sheet).size(), holds.size()) << name;
    expect_no_price(printed, sheet);
  }
}

// A job without a pool has no point about pools.
TEST(Inspection, OnlyWhatTheJobHas) {
  for (const sheets::Hold& hold : all<sheets::Hold>(sheets::inspection(of_demo("bakery-court"))))
    EXPECT_EQ(hold.look_at.find("Coping"), std::string::npos) << hold.look_at;
}

TEST(Inspection, AnEmptyJobSaysSo) { EXPECT_EQ(blocks(sheets::inspection(of_job(empty_job()))).size(), 1U); }

TEST(FieldSheet, HasRoomToWriteEvenWithoutAJob) {
  const auto sheet = sheets::field(of_job(empty_job()));
  EXPECT_FALSE(all<sheets::Squares>(sheet).empty());
  const auto tables = all<sheets::Table>(sheet);
  EXPECT_GE(table(tables, "Point").rows.size(), 10U);
  for (const sheets::Table& one : tables)
    for (const sheets::Row& row : one.rows) EXPECT_EQ(row.cells.size(), one.columns.size());
}

// What was ordered stands there, so that what came can be counted against it.
TEST(FieldSheet, CountsAgainstTheOrder) {
  const auto printed = of_demo();
  const auto tables = all<sheets::Table>(sheets::field(printed));
  const sheets::Table& counted = table(tables, "What came");
  std::size_t goods = 0, said = 0;
  for (const estimate::OrderLine& line : printed.results->estimate.lines)
    if (line.kind == plan::CostKind::material) ++goods;
  for (const sheets::Row& row : counted.rows)
    if (row.kind == sheets::Row::Kind::plain && !row.cells[1].words.empty()) ++said;
  EXPECT_GE(said, goods);
  for (const sheets::Row& row : counted.rows) {
    if (row.kind != sheets::Row::Kind::plain) continue;
    EXPECT_TRUE(row.cells[2].words.empty());
  }
  expect_sources(printed, sheets::field(printed));
}

// CH, D1, D2 and D3 lie in the ground; only D1 ends in the open. Its length as measured: 17.0053 m = 55 ft 9 1/2 in.
TEST(CloseOut, ListsWhatLiesInTheGround) {
  const auto tables = all<sheets::Table>(sheets::close_out(of_demo()));
  const sheets::Table& pipes = table(tables, "Pipe, channel, sleeve");
  ASSERT_EQ(pipes.rows.size(), 4U);
  EXPECT_TRUE(pipes.rows[1].cells[0].words.starts_with("D1 "));
  EXPECT_EQ(pipes.rows[1].cells[2].words, "55′ 9 1/2″");
  const sheets::Table& outlets = table(tables, "Outlet of");
  ASSERT_EQ(outlets.rows.size(), 1U);
  EXPECT_TRUE(outlets.rows[0].cells[0].words.starts_with("D1 "));
  EXPECT_EQ(table(tables, "Bonding of").rows.size(), 1U);
  EXPECT_EQ(table(tables, "Buried service").rows.size(), 1U);
}

// The court has no pipe, no pool and no buried service, so nothing asks for one.
TEST(CloseOut, OnlyWhatTheJobHas) {
  for (const sheets::Heading& heading : all<sheets::Heading>(sheets::close_out(of_demo("bakery-court")))) {
    EXPECT_NE(heading.words, "Pipes, channels, sleeves");
    EXPECT_NE(heading.words, "Bonding");
    EXPECT_NE(heading.words, "Outlets");
  }
}

TEST(CloseOut, HasTheRecordOfHoldPoints) {
  plan::Job job = demo::job("bakery-court");
  const auto& notes = demo::results("bakery-court").takeoff.stages;
  const auto finish = std::ranges::find(notes, Stage::finish, &takeoff::StageNotes::stage);
  job.looked_at.push_back({"finish", finish->hold_points.front().look_at, "R. Vane (invented)", "2026-11-28"});
  const auto printed = of_job(std::move(job));
  const auto tables = all<sheets::Table>(sheets::close_out(printed));
  const sheets::Table& record = table(tables, "Hold point");
  std::size_t points = 0, seen = 0;
  for (const sheets::Row& row : record.rows) {
    if (row.kind == sheets::Row::Kind::group) continue;
    ++points;
    if (row.cells[3].words == "28 Nov 2026") ++seen;
  }
  EXPECT_EQ(points, points_of(printed));
  EXPECT_EQ(seen, 1U);
}

// Spare units counted in the order are told with their number: 5 % of what is needed, rounded up.
TEST(CloseOut, SpareUnitsHaveAPlace) {
  plan::Job job = demo::job("bakery-court");
  job.choices.count_attic = true;
  job.choices.attic_share = 0.05;
  const auto printed = of_job(std::move(job));
  const auto tables = all<sheets::Table>(sheets::close_out(printed));
  bool told = false;
  for (const sheets::Row& row : table(tables, "Unit").rows)
    told = told || (row.cells[0].words == "Slab 24x24x2" && row.cells[2].words == "4");  // 63 needed x 0.05 = 3.15
  EXPECT_TRUE(told);
}

TEST(CloseOut, NumbersLeadToTheirWorkings) {
  for (const char* name : {"pool-terrace-a", "bakery-court"}) {
    expect_sources(of_demo(name), sheets::close_out(of_demo(name)));
    expect_no_price(of_demo(name), sheets::close_out(of_demo(name)));
  }
}

TEST(CloseOut, AnEmptyJobSaysSo) { EXPECT_EQ(blocks(sheets::close_out(of_job(empty_job()))).size(), 1U); }

}  // namespace
