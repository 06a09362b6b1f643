// Estimate against actual for paper and for a spreadsheet.
#include "files/actual_text.h"

#include <gtest/gtest.h>

#include "files/csv.h"

namespace {

using estimate::Act;
using estimate::Entry;
using plan::CostKind;
using units::Money;

estimate::KeptLine line(const char* item, CostKind kind, const char* words, double order, const char* unit,
                        std::int64_t coins) {
  estimate::KeptLine made;
  made.stage = "base";
  made.item = item;
  made.kind = kind;
  made.description = words;
  made.quantity = made.order_quantity = order;
  made.unit = made.order_unit = unit;
  made.amount = Money::of_coins(coins);
  return made;
}

Entry entry(std::int64_t number, Act act, const char* item, CostKind kind, double quantity, const char* unit) {
  Entry made;
  made.number = number;
  made.act = act;
  made.line = {"base", item, kind};
  made.date = "2026-11-28";
  made.quantity = quantity;
  made.unit = unit;
  return made;
}

// 100 tons of stone for 3,000.00 and 8 h for 320.00. Delivered 60 at 31.00 = 1,860.00, used 50: 1,860.00 x 50/60 =
// 1,550.00, left 10 for 310.00. 6 h worked: 240.00. Half of it done.
const std::vector<Entry>& entries() {
  static const std::vector<Entry> made = [] {
    std::vector<Entry> all{entry(1, Act::delivered, "stone", CostKind::material, 60, "ton"),
                           entry(2, Act::used, "stone", CostKind::material, 50, "ton"),
                           entry(3, Act::hours, "", CostKind::labour, 6, "h"),
                           entry(4, Act::measured, "", CostKind::labour, 200, "sq ft")};
    all[0].price = Money::of_coins(3100);
    all[0].note = "=HYPERLINK(\"x\"), \"wet\"";
    all[3].whole = 400;
    return all;
  }();
  return made;
}

estimate::Actual actual() {
  estimate::Kept kept;
  kept.currency = "USD";
  kept.lines = {line("stone", CostKind::material, "=Open stone", 100, "ton", 300'000),
                line("spread", CostKind::labour, "Spread stone", 8, "h", 32'000)};
  plan::Job job;
  job.catalogue = std::make_shared<const catalogue::Catalogue>();
  return estimate::actual(job, kept, entries());
}

TEST(ActualText, SaysBothSidesAndWhatIsToCome) {
  const std::string text = files::actual_text({"Court", "agreed", true}, actual());
  // To finish: 1,500.00 of stone less 310.00 on the site, and 160.00 of work; at the own rate 1,550.00 - 310.00 +
  // 240.00.
  for (const char* part : {"What was really used: Court",
                           "agreed",
                           "made up",
                           "Base layers",
                           "=Open stone",
                           "(used)",
                           "3,000.00",
                           "1,860.00",
                           "1,550.00",
                           "310.00",
                           "-1,140.00",
                           "Work by the hour",
                           "240.00",
                           "-80.00",
                           "50 %",
                           "1,350.00",
                           "1,480.00",
                           "200 of 400 sq ft on 2026-11-28",
                           "estimate 0.0200 h per sq ft, own so far 0.0300",
                           "In all",
                           "3,320.00",
                           "2,100.00"})
    EXPECT_NE(text.find(part), std::string::npos) << part << "\n" << text;
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t end = text.find('\n', at);
    EXPECT_LE(end - at, 110U) << text.substr(at, end - at);
    at = end + 1;
  }
}

TEST(ActualText, TellsWhatIsToBeMended) {
  estimate::Actual made = actual();
  made.unmeasured = {"base"};
  made.problems = {{problem::Severity::flag, "a", "the stone has no price", "enter it", {}}};
  const std::string text = files::actual_text({"Court", "agreed"}, made);
  EXPECT_NE(text.find("without Base layers: not measured"), std::string::npos) << text;
  EXPECT_NE(text.find("the stone has no price; enter it"), std::string::npos) << text;
}

TEST(ActualText, CsvAddsUpReadsBackAndRunsNothing) {
  const auto table = files::read_csv(files::actual_csv(actual()), "actual.csv");
  ASSERT_TRUE(table.has_value());
  ASSERT_EQ(table->rows.size(), 2U);
  const auto cell = [&](std::size_t row, const char* name) { return table->rows[row].cells[*table->column(name)]; };
  EXPECT_EQ(cell(0, "description"), "'=Open stone");
  EXPECT_EQ(cell(0, "left"), "10");
  EXPECT_EQ(cell(0, "difference"), "-1140.00");
  EXPECT_EQ(cell(1, "kind"), "labour");
  Money spent;
  for (std::size_t row = 0; row < 2; ++row) spent += units::read_money(cell(row, "spent"), 2).value();
  EXPECT_EQ(spent, actual().total.spent());
  const auto ledger = files::read_csv(files::ledger_csv(entries(), 2), "ledger.csv");
  ASSERT_TRUE(ledger.has_value());
  ASSERT_EQ(ledger->rows.size(), 4U);
  const std::string note = ledger->rows[0].cells[*ledger->column("note")];
  EXPECT_EQ(note, "'=HYPERLINK(\"x\"), \"wet\"");
  EXPECT_EQ(files::text_of_csv(note), entries()[0].note);
  EXPECT_EQ(ledger->rows[0].cells[*ledger->column("price")], "31.00");
}

TEST(OffersText, ShowsTheSpreadAndTheJobs) {
  estimate::CatalogueOffer offer;
  offer.id = "unit";
  offer.name = "Unit";
  offer.now = 0.03;
  offer.offered = 0.04;
  offer.spread = estimate::Spread{0.01, 0.02, 0.04, 0.05, 0.3};
  offer.note = "from 3 closed jobs";
  estimate::JobConditions narrow;
  narrow.factors = {"narrow gate x 1.15"};
  narrow.narrowest = units::Length::inches(36);
  narrow.curved = 0.3;
  offer.jobs = {{7, "@Elm Row", narrow, 0.01, "used 1,010 piece, needed 1,000 piece"},
                {8, "Hill", {}, 0.3, "used 1,300 piece, needed 1,000 piece"}};
  estimate::CatalogueOffer rate = offer;
  rate.what = estimate::Offered::rate;
  rate.unit = "m2";
  rate.offered.reset();
  rate.note = "2 closed jobs: no offer from fewer than 3";
  const std::string text = files::offers_text({offer, rate}, units::System::us);
  for (const char* part : {"Broken or spoilt: Unit", "3 %", "4 %, from 3 closed jobs", "upper quartile 5 %, most 30 %",
                           "@Elm Row: 1 %, used 1,010 piece", "narrow gate x 1.15; way in 3'", "; 30 % of",
                           "no conditions noted", "Hours: Unit", "no offer from fewer than 3", "median 0.04 h per m2"})
    EXPECT_NE(text.find(part), std::string::npos) << part << "\n" << text;
  const auto table = files::read_csv(files::offers_csv({offer, rate}, units::System::metric), "offers.csv");
  ASSERT_TRUE(table.has_value());
  ASSERT_EQ(table->rows.size(), 4U);
  EXPECT_EQ(table->rows[0].cells[*table->column("job_name")], "'@Elm Row");
  EXPECT_EQ(table->rows[0].cells[*table->column("value")], "0.01");
  EXPECT_NE(files::offers_text({}, units::System::us).find("Nothing yet"), std::string::npos);
}

}  // namespace
