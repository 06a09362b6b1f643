#include <gtest/gtest.h>
#include <rapidcheck.h>

#include <algorithm>

#include "takeoff/ground/earth.h"
#include "takeoff/ground/yard.h"

using namespace yard;
using takeoff::ground::Dug;

namespace {

constexpr double cubic_yard = units::cubic_metres_per_cubic_yard;

Dug hole(double bank_yards, double fill_yards = 0, bool topsoil = false) {
  Dug made;
  made.text = "hole";
  made.of = {"A1"};
  made.bank = takeoff::term("bank", bank_yards * cubic_yard, units::cubic_metre);
  if (fill_yards > 0) made.fill = takeoff::term("fill", fill_yards * cubic_yard, units::cubic_metre);
  made.topsoil = topsoil;
  return made;
}

// A truck of 7 cu yd that no weight holds back, a fee by weight, and fill to buy.
plan::Job with_truck(double swell, double compacted) {
  plan::Job made = job({});
  auto book = std::make_shared<catalogue::Catalogue>(*made.catalogue);
  catalogue::Item truck;
  truck.id = "truck";
  truck.kind = "truck";
  truck.details["volume_limit_cu_yd"] = "7";
  put(*book, truck);
  catalogue::Item fee;
  fee.id = "fee";
  fee.kind = "disposal";
  put(*book, fee);
  put(*book, stone("agg-soil-fill", 1950, 0));
  made.catalogue = book;
  made.choices.truck = "truck";
  made.choices.disposal = "fee";
  made.choices.soil.swell = swell;
  made.choices.soil.compacted = compacted;
  return made;
}

double line(const takeoff::Share& share, const std::string& item) {
  double sum = 0;
  for (const takeoff::Line& one : share.lines)
    if (one.item == item) sum += one.working.amount().value;
  return sum;
}

std::string text(const takeoff::Share& share, const std::string& code) {
  for (const auto& one : share.problems)
    if (one.code == code) return one.text;
  return {};
}

}  // namespace

// Worked in a construction course: 1000 bank cu yd that swell by 30 % are 1300 loose; trucks of 7 cu yd: 185.7, so 186
// loads.
TEST(Haul, loadsByLooseVolume) {
  const auto share = takeoff::ground::haul(with_truck(0.30, 0.9), {hole(1000)});
  EXPECT_EQ(line(share, "truck"), 186);
  EXPECT_TRUE(text(share, "earth-balance").find("1000.0 cu yd dug") != std::string::npos);
}

// A solved earthwork sheet: 30,000 cu yd compacted at 3500 lb need 30,000 x 3500 / 2750 = 38,181.8 in the bank at 2750
// lb, which are 47,727.3 loose at 2200 lb (swell 25 %). Of 40,000 dug and all reusable 1818.2 in the bank are left:
// 2272.7 loose, 325 loads of 7.
TEST(Haul, compactedBankAndLoose) {
  const double compacted = 2750.0 / 3500, swell = 2750.0 / 2200 - 1;
  plan::Job job = with_truck(swell, compacted);
  job.choices.soil.reusable = 1;
  const auto share = takeoff::ground::haul(job, {hole(40000, 30000)});
  const double left = 40000 - 30000 / compacted;
  EXPECT_NEAR(left, 40000 - 38181.8, 0.05);
  EXPECT_NEAR(38181.8 * (1 + swell), 47727.3, 0.1);
  EXPECT_NEAR(line(share, "fee"), left * cubic_yard * job.choices.soil.bank_density_kg_m3, 1);
  EXPECT_EQ(line(share, "truck"), 325);
  EXPECT_EQ(line(share, "agg-soil-fill"), 0);
}

// Published problem data: 3000 lb in the bank, 2310 loose, 3750 compacted: swell 29.87 %, load factor 0.77, shrink 20
// %.
TEST(Haul, swellAndShrinkOfThreeWeights) {
  const double swell = 3000.0 / 2310 - 1;
  EXPECT_NEAR(swell, 0.2987, 5e-5);
  plan::Job job = with_truck(swell, 3000.0 / 3750);
  job.choices.soil.reusable = 0.5;
  // 100 dug, 50 may be reused: they fill 40 of the 60 that are wanted; 20 compacted are brought, at 1950 kg/m3.
  const auto share = takeoff::ground::haul(job, {hole(100, 60)});
  EXPECT_NEAR(line(share, "agg-soil-fill"), 20 * cubic_yard * 1950, 1e-6);
  EXPECT_EQ(line(share, "truck"), std::ceil(50 / 0.77 / 7));  // load factor 0.77: 64.9 loose, 10 loads
  EXPECT_NE(text(share, "earth-balance").find("100.0 cu yd dug"), std::string::npos);
  EXPECT_NE(text(share, "earth-balance").find("50.0 cu yd placed again + 50.0 cu yd hauled"), std::string::npos);
}

TEST(Haul, fillThatTheCatalogueLacksIsAProblem) {
  plan::Job job = with_truck(0.25, 0.9);
  auto book = std::make_shared<catalogue::Catalogue>(*job.catalogue);
  book->items.erase("agg-soil-fill");
  job.catalogue = book;
  const auto share = takeoff::ground::haul(job, {hole(1, 10)});
  EXPECT_TRUE(said(share, "fill-to-bring"));
  EXPECT_EQ(line(share, "truck"), 1);  // what is dug goes all the same
}

// 10 cu yd stripped, 0.7 of it spread again: 3 are hauled, apart from the 5 of spoil; loose 3.75 and 6.25: a load each.
TEST(Haul, topsoilIsKeptApart) {
  plan::Job job = with_truck(0.25, 0.9);
  job.choices.soil.topsoil_back = 0.7;
  const auto share = takeoff::ground::haul(job, {hole(10, 0, true), hole(5)});
  EXPECT_EQ(line(share, "truck"), 2);
  EXPECT_NEAR(line(share, "fee"), (3 + 5) * cubic_yard * job.choices.soil.bank_density_kg_m3, 1e-6);
  EXPECT_EQ(std::ranges::count(share.tasks, "topsoil", &takeoff::Task::rate), 1);
}

// Whatever is dug and wanted: dug = placed again + hauled in the bank, wanted = placed + brought in place, and never
// more is placed than may be.
TEST(Haul, balances) {
  EXPECT_TRUE(rc::check([](unsigned dug_in, unsigned fill_in, unsigned share_in) {
    const double dug = 1 + dug_in % 500, wanted = 1 + fill_in % 500;
    plan::Job job = with_truck(0.25, 0.9);
    job.choices.soil.reusable = share_in % 11 / 10.0;
    const auto share = takeoff::ground::haul(job, {hole(dug, wanted)});
    const double hauled = line(share, "fee") / job.choices.soil.bank_density_kg_m3 / cubic_yard;
    const double brought = line(share, "agg-soil-fill") / 1950 / cubic_yard;
    const double placed = dug - hauled;
    RC_ASSERT(std::abs(placed * 0.9 + brought - wanted) < 1e-6);
    RC_ASSERT((text(share, "earth-balance").find("of fill, compacted, to bring") != std::string::npos) ==
              (brought > 1e-6));
    RC_ASSERT(placed <= dug * job.choices.soil.reusable + 1e-6);
    RC_ASSERT(brought < 1e-6 || std::abs(placed - dug * job.choices.soil.reusable) < 1e-6);
  }));
}
