// What closed jobs say against the catalogue: medians with their spread, offered and never set.
#include "estimate/offers.h"

#include <gtest/gtest.h>
#include <rapidcheck.h>

#include <algorithm>

#include "ledger_kit.h"

namespace {

using namespace ledger_kit;
using estimate::CatalogueOffer;
using estimate::ClosedRecord;
using estimate::Offered;

ClosedRecord closed(std::int64_t number, std::vector<Entry> entries) {
  const plan::Job made = job();
  return {number, "Job " + std::to_string(number), estimate::conditions(made), made.catalogue,
          estimate::actual(made, kept(), numbered(std::move(entries)))};
}

ClosedRecord used(std::int64_t number, double pieces) {
  return closed(number, {entry(Act::delivered, unit, 1100, "piece"), entry(Act::used, unit, pieces, "piece")});
}

const CatalogueOffer* find(const std::vector<CatalogueOffer>& all, const char* id) {
  const auto found = std::ranges::find(all, id, &CatalogueOffer::id);
  return found == all.end() ? nullptr : &*found;
}

TEST(Offers, BreakageIsTheMedianOfWhatWasUsedOverWhatWasNeeded) {
  // 1,000 needed; used 1,010 1,020 1,040 1,050 1,090: 1, 2, 4, 5 and 9 % over.
  const auto all =
      estimate::offers(shelf(), {used(3, 1040), used(1, 1010), used(5, 1090), used(2, 1020), used(4, 1050)});
  const CatalogueOffer* offer = find(all, "unit");
  ASSERT_NE(offer, nullptr);
  EXPECT_EQ(offer->what, Offered::breakage);
  EXPECT_EQ(offer->now, 0.03);
  ASSERT_TRUE(offer->offered);
  EXPECT_EQ(*offer->offered, 0.04);
  ASSERT_TRUE(offer->spread);
  EXPECT_NEAR(offer->spread->least, 0.01, 1e-12);
  EXPECT_NEAR(offer->spread->lower, 0.02, 1e-12);  // place 1 + 4 x 0.25 = 2
  EXPECT_NEAR(offer->spread->median, 0.04, 1e-12);
  EXPECT_NEAR(offer->spread->upper, 0.05, 1e-12);  // place 1 + 4 x 0.75 = 4
  EXPECT_NEAR(offer->spread->most, 0.09, 1e-12);
  EXPECT_EQ(offer->note, "from 5 closed jobs");
  ASSERT_EQ(offer->jobs.size(), 5U);
  EXPECT_EQ(offer->jobs[0].name, "Job 1");
  EXPECT_EQ(offer->jobs[0].working, "used 1,010 pieces, needed 1,000 pieces");
  EXPECT_EQ(find(all, "stone"), nullptr) << "nobody entered its use";
}

TEST(Offers, FromLikeJobsAlone) {
  const auto all = estimate::offers(shelf(), {used(1, 1010), used(2, 1020), used(3, 1040), used(4, 1090)});
  // Without 1 % and 9 %: two are left.
  const CatalogueOffer two = estimate::from_like_jobs(all.at(0), {1, 4});
  EXPECT_FALSE(two.offered);
  EXPECT_EQ(two.note, "2 closed jobs, 2 left out: no offer from fewer than 3");
  EXPECT_EQ(two.jobs.size(), 4U) << "they stay listed";
  EXPECT_NEAR(two.spread->median, 0.03, 1e-12);  // (2 + 4) / 2
  const CatalogueOffer three = estimate::from_like_jobs(two, {4});
  EXPECT_EQ(three.offered, 0.02);
  EXPECT_EQ(three.note, "from 3 closed jobs, 1 left out");
  const CatalogueOffer none = estimate::from_like_jobs(all.at(0), {1, 2, 3, 4});
  EXPECT_FALSE(none.spread);
  EXPECT_FALSE(none.offered);
  EXPECT_EQ(estimate::from_like_jobs(none, {}).offered, all.at(0).offered);
}

TEST(Offers, FewerThanThreeJobsAreShownAndOfferNothing) {
  const auto two = estimate::offers(shelf(), {used(1, 1010), used(2, 1030)});
  ASSERT_EQ(two.size(), 1U);
  EXPECT_FALSE(two[0].offered);
  EXPECT_EQ(two[0].note, "2 closed jobs: no offer from fewer than 3");
  EXPECT_EQ(two[0].jobs.size(), 2U);
  EXPECT_NEAR(two[0].spread->median, 0.02, 1e-12);  // (0.01 + 0.03) / 2
  EXPECT_EQ(estimate::offers(shelf(), {used(1, 1010)})[0].note, "1 closed job: no offer from fewer than 3");
  EXPECT_TRUE(estimate::offers(shelf(), {}).empty());
}

TEST(Offers, AShareStaysAShare) {
  // Less used than needed: 990, 980, 970 of 1,000. The spread says so, the offer is none broken.
  const auto all = estimate::offers(shelf(), {used(1, 990), used(2, 980), used(3, 970)});
  EXPECT_NEAR(all.at(0).spread->median, -0.02, 1e-12);
  EXPECT_EQ(all.at(0).offered, 0.0);
}

TEST(Offers, ARateIsTheEstimatesTimesHoursWorkedOverHoursMeant) {
  // Laying by name: 44, 50 and 36 h for 40 h at 0.4 h per m2: 0.44, 0.5, 0.36.
  // The rest of the stage's hours is cutting's: 55 - 44 = 11, 60 - 50 = 10 and 45 - 36 = 9 h for 10 h at 0.1.
  const auto job_of = [](std::int64_t number, double lay, double all) {
    return closed(number, {hours("paving", lay, "lay"), hours("paving", all - lay)});
  };
  const auto all = estimate::offers(shelf(), {job_of(1, 44, 55), job_of(2, 50, 60), job_of(3, 36, 45)});
  const CatalogueOffer* lay = find(all, "lay");
  ASSERT_NE(lay, nullptr);
  EXPECT_EQ(lay->what, Offered::rate);
  EXPECT_EQ(lay->unit, "m2");
  EXPECT_NEAR(lay->offered.value(), 0.44, 1e-9);
  EXPECT_NEAR(lay->spread->least, 0.36, 1e-9);
  EXPECT_NEAR(lay->spread->lower, 0.40, 1e-9);  // place 1 + 2 x 0.25 = 1.5
  EXPECT_NEAR(lay->spread->upper, 0.47, 1e-9);
  const CatalogueOffer* cut = find(all, "cut");
  ASSERT_NE(cut, nullptr);
  EXPECT_NEAR(cut->spread->least, 0.09, 1e-9);
  EXPECT_NEAR(cut->offered.value(), 0.1, 1e-9);
  EXPECT_EQ(find(all, "spread"), nullptr) << "no hours of the base";
}

TEST(Offers, WhatWasMeasuredCountsForWhatIsDone) {
  // Half of the base: 4 h of its 8 were meant for it; 6 worked at 0.08: 0.12.
  const auto all = estimate::offers(shelf(), {closed(1, {hours("base", 6), measured("base", 100, 200)})});
  ASSERT_EQ(all.size(), 1U);
  EXPECT_NEAR(all[0].jobs.at(0).value, 0.12, 1e-9);
}

TEST(Offers, WhatTheCatalogueNoLongerHasIsLeftOut) {
  auto now = shelf();
  now.items.erase("unit");
  now.rates["spread"].si_unit = "t";  // no longer the same thing
  EXPECT_TRUE(estimate::offers(now, {used(1, 1010), closed(2, {hours("base", 6)})}).empty());
}

TEST(Offers, ConditionsAreTakenFromTheJob) {
  plan::Job made = job();
  made.offer.factors = {{"narrow gate", 1.15, "", ""}, {"slope", 1.1, "base", ""}, {"heat", 1, "", ""}};
  const auto at = [](std::int64_t x, std::int64_t y) {
    return geometry::Point{units::Length::feet(x), units::Length::feet(y)};
  };
  // 10 x 10 ft with one side a half circle over it: 30 ft straight, pi x 5 = 15.708 ft curved, 0.34366 of 45.708.
  plan::PavedArea area;
  area.outline = {{{{at(0, 0), 1, {}}, {at(10, 0), 0, {}}, {at(10, 10), 0, {}}, {at(0, 10), 0, {}}}, {}}};
  plan::SiteMark gate, path;
  gate.what = "gate";
  gate.width = units::Length::inches(36);
  path.what = "path";
  path.width = units::Length::inches(48);
  made = plan::with(made, {"A1", "", area});
  made = plan::with(made, {"M1", "", gate});
  made = plan::with(made, {"M2", "", path});
  const auto found = estimate::conditions(made);
  EXPECT_EQ(found.factors, (std::vector<std::string>{"narrow gate x 1.15", "slope x 1.1 (base)"}));
  EXPECT_EQ(found.narrowest, units::Length::inches(36));
  EXPECT_NEAR(found.curved, 0.34366, 1e-5);
  EXPECT_EQ(estimate::conditions(job()), estimate::JobConditions());
}

TEST(Offers, TheSpreadRisesAndHoldsEveryJob) {
  EXPECT_TRUE(rc::check("ordered, within, and the same whatever the order", [] {
    std::vector<ClosedRecord> jobs;
    const int count = *rc::gen::inRange(1, 9);
    for (int i = 0; i < count; ++i) jobs.push_back(used(i, 900 + *rc::gen::inRange(0, 400)));
    const auto all = estimate::offers(shelf(), jobs);
    RC_ASSERT(all.size() == 1U);
    const auto& spread = *all[0].spread;
    RC_ASSERT(spread.least <= spread.lower && spread.lower <= spread.median);
    RC_ASSERT(spread.median <= spread.upper && spread.upper <= spread.most);
    for (const auto& one : all[0].jobs) RC_ASSERT(spread.least <= one.value && one.value <= spread.most);
    RC_ASSERT(all[0].offered.has_value() == (count >= 3));
    const auto below =
        std::ranges::count_if(all[0].jobs, [&](const estimate::SeenInJob& one) { return one.value <= spread.median; });
    RC_ASSERT(2 * below >= count);
    std::ranges::reverse(jobs);
    RC_ASSERT(estimate::offers(shelf(), jobs)[0].spread == all[0].spread);
  }));
}

}  // namespace
