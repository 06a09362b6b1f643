#include "crew_kit.h"
#include "sheets/staging_parts.h"

namespace {

using namespace crew_kit;
using takeoff::Stage;

// As many loads as the deliveries of the estimate are charged, as many pallets as it pays a deposit for.
TEST(Staging, LoadsAndPalletsAreThoseOfTheEstimate) {
  for (const char* name : {"pool-terrace-a", "bakery-court"}) {
    const sheets::Printed printed = of_demo(name);
    double charged = 0, deposits = 0, loads = 0, pallets = 0;
    for (const estimate::OrderLine& line : printed.results->estimate.lines) {
      if (line.item.starts_with("delivery:")) charged += line.order_quantity;
      if (line.item == "pallet-deposit" && line.description.find("charge") != std::string::npos)
        deposits = line.order_quantity;
    }
    for (const estimate::Visit& visit : sheets::visits_of(printed)) {
      loads += visit.loads.amount().value;
      if (visit.supplier == "unit-yard") pallets += visit.pallets;
    }
    EXPECT_GT(charged, 0) << name;
    EXPECT_EQ(loads, charged) << name;
    EXPECT_EQ(pallets, deposits) << name;
    const auto tables = all<sheets::Table>(sheets::staging(printed));
    EXPECT_EQ(table(tables, "What comes").rows.back().cells[4].words, sheets::number_words(printed, loads)) << name;
  }
}

// No load of a truck whose limits are known is heavier than its payload.
TEST(Staging, NoLoadIsOverItsTruck) {
  const sheets::Printed printed = of_demo();
  std::size_t weighed = 0;
  for (const estimate::Visit& visit : sheets::visits_of(printed)) {
    const catalogue::Item* truck = printed.job().catalogue->item(visit.truck);
    const double loads = visit.loads.amount().value;
    if (!truck || !visit.weight || !(loads > 0)) continue;
    ++weighed;
    EXPECT_LE(visit.weight->amount().value / loads, *truck->number("weight_limit_ton") * 907.18474 + 1e-6);
  }
  EXPECT_GT(weighed, 3U);
}

// A pallet of 48 x 40 in with 2 ft of aisle along it: 4 ft x 5 ft 4 in = 21.333 sq ft = 1.98193 m2. A cone of 35
// degrees of 10 m3: r^3 = 30 / (pi x 0.7002075) = 13.6378, r = 2.38918, pi r^2 = 17.9327 m2.
TEST(Staging, RoomOfPalletsAndPiles) {
  EXPECT_NEAR(sheets::pallet_room(1), 4 * (16.0 / 3) * 0.09290304, 1e-9);
  EXPECT_NEAR(sheets::pallet_room(3), 3 * 1.98193, 1e-4);
  EXPECT_NEAR(sheets::pile_room(10), 17.9327, 1e-3);
  EXPECT_EQ(sheets::pile_room(0), 0);
}

// Slabs of 66 on a pallet (6 in a layer, 11 layers): A1 needs 50, A2 90, bought are 144. Pallet 1: A1 50, A2 16; pallet
// 2: A2 66; pallet 3: A2 the last 8, and 4 to spare on a pallet of 12.
TEST(Staging, AreasEmptyPalletsInTurn) {
  plan::Job job = demo::job("bakery-court");
  catalogue::Catalogue book = *job.catalogue;
  catalogue::Item slab = *book.item("slab-24x24-50");
  slab.pack.pieces = 66;
  book.items["slab-24x24-50"] = std::make_shared<const catalogue::Item>(slab);
  job.catalogue = std::make_shared<const catalogue::Catalogue>(std::move(book));
  results::Results made;
  made.job = std::make_shared<const plan::Job>(std::move(job));
  const auto need = [](double count, const char* of) {
    return takeoff::Line{Stage::paving, "slab-24x24-50", "field", {of}, takeoff::term("units", count, units::piece), {},
                         false};
  };
  made.takeoff.lines = {need(50, "A1"), need(90, "A2")};
  estimate::OrderLine line{Stage::paving,
                           "slab-24x24-50",
                           "Slab",
                           {"A1", "A2"},
                           140,
                           "piece",
                           144,
                           "piece",
                           {},
                           {},
                           false,
                           false,
                           false,
                           takeoff::term("units", 140, units::piece),
                           {}};
  line.shares = {140, 0, 0, 4};
  made.estimate.lines = {line};
  const sheets::Printed printed = crew_kit::printed(std::move(made));
  const auto rows = sheets::pallet_rows(printed, printed.results->estimate.lines.front());
  using Part = sheets::PalletRow::Part;
  ASSERT_EQ(rows.size(), 3U);
  EXPECT_EQ(rows[0].parts, (std::vector<Part>{{"A1", 50}, {"A2", 16}}));
  EXPECT_EQ(rows[1].parts, (std::vector<Part>{{"A2", 66}}));
  EXPECT_EQ(rows[2].parts, (std::vector<Part>{{"A2", 8}, {"", 4}}));
  EXPECT_EQ(rows[2].pieces, 12);
}

// Whatever the job, the pieces of an item's pallets are what is ordered of it, and as many pallets as come.
TEST(Staging, PalletsHoldWhatIsOrdered) {
  for (const char* name : {"pool-terrace-a", "bakery-court"}) {
    const sheets::Printed printed = of_demo(name);
    std::size_t on_pallets = 0;
    for (const estimate::OrderLine& line : printed.results->estimate.lines) {
      const auto rows = sheets::pallet_rows(printed, line);
      const catalogue::Item* item = printed.job().catalogue->item(line.item);
      if (rows.empty() || item->unit == "pack") continue;
      ++on_pallets;
      double pieces = 0, parts = 0;
      for (const sheets::PalletRow& row : rows) {
        pieces += row.pieces * (row.to - row.from + 1);
        for (const auto& part : row.parts) parts += part.pieces * (row.to - row.from + 1);
      }
      EXPECT_NEAR(pieces, line.order_quantity, 1e-6) << line.item;
      EXPECT_NEAR(parts, line.order_quantity, 1e-6) << line.item;
    }
    EXPECT_GT(on_pallets, 1U) << name;
  }
}

// The demo's drop spot M3 is 3048 x 2438.4 mm (10 x 8 ft): 80 sq ft.
TEST(Staging, DropSpotsAreMeasured) {
  const auto spots = sheets::drop_spots(of_demo());
  ASSERT_EQ(spots.size(), 1U);
  EXPECT_EQ(spots[0].id, "M3");
  EXPECT_NEAR(spots[0].area, 80 * 0.09290304, 1e-6);
  const auto tables = all<sheets::Table>(sheets::staging(of_demo()));
  EXPECT_EQ(table(tables, "Drop spot").rows.front().cells[1].words, "80 sq ft");
}

// From 0, 0 to 10, 0 m: straight 10 m; by a way in that runs along y = 3 m from x = 0 to 10: 3 + 10 + 3 = 16 m.
TEST(Staging, CarriesByTheWayIn) {
  plan::Job job = empty_job();
  EXPECT_NEAR(sheets::carry(of_job(job), {0, 0}, {10, 0}), 10, 1e-9);
  const auto at = [](int x, int y) {
    return geometry::Point{units::Length::millimetres(x), units::Length::millimetres(y)};
  };
  plan::SiteMark path;
  path.what = "path";
  path.line = plan::DrawnLine{{geometry::Edge{at(0, 3000), 0, {}}}, at(10000, 3000), {}};
  job = plan::with(job, {"M1", "side passage", path});
  EXPECT_NEAR(sheets::carry(of_job(job), {0, 0}, {10, 0}), 16, 1e-6);
}

TEST(Staging, WithoutADropSpotItSaysSo) {
  const auto sheet = sheets::staging(of_demo("bakery-court"));
  const auto words = said(sheet);
  EXPECT_TRUE(std::ranges::any_of(
      words, [](const sheets::Said& one) { return one.words.starts_with("No drop spot is drawn"); }));
}

TEST(Staging, NumbersLeadToTheirWorkingsAndNoneIsAPrice) {
  for (const char* name : {"pool-terrace-a", "bakery-court"}) {
    expect_sources(of_demo(name), sheets::staging(of_demo(name)));
    expect_no_price(of_demo(name), sheets::staging(of_demo(name)));
  }
}

TEST(Staging, AnEmptyJobSaysSo) { EXPECT_EQ(blocks(sheets::staging(of_job(empty_job()))).size(), 1U); }

}  // namespace
