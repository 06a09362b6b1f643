// What of the material is not laid.
#include "estimate/waste.h"

#include <rapidcheck.h>

#include "estimate/estimate_kit.h"

namespace {

using namespace estimate_kit;
using takeoff::Stage;

std::vector<estimate::Waste> of(const takeoff::Takeoff& taken, plan::Job job = starter_job()) {
  return estimate::waste(job, taken, estimate::estimate(job, taken));
}

double quantity(const estimate::Waste& one) {
  return one.laid.quantity + one.cuts.quantity + one.broken.quantity + one.spare.quantity + one.rounded.quantity;
}

units::Money money(const estimate::Waste& one) {
  return one.laid.money + one.cuts.money + one.broken.money + one.spare.money + one.rounded.money;
}

// 641 needed, 3 % on top are 660.23, sold by layers of 45: 675. So 641 + 19.23 + 14.77.
TEST(Waste, BreakageAndLayers) {
  const auto all = of(takeoff_of({line(Stage::paving, "unit-4x8-60", amount(641, units::piece))}));
  ASSERT_EQ(all.size(), 1U);
  EXPECT_DOUBLE_EQ(all[0].laid.quantity, 641);
  EXPECT_NEAR(all[0].broken.quantity, 19.23, 1e-9);
  EXPECT_NEAR(all[0].rounded.quantity, 14.77, 1e-9);
  EXPECT_EQ(all[0].cuts.quantity, 0);
}

// 641 needed, 2 % kept for repairs are 12.82, so 13 whole ones beside 661: 674, and 675 in layers.
TEST(Waste, UnitsKeptForRepairs) {
  plan::Job job = starter_job();
  job.choices.count_attic = true;
  job.choices.attic_share = 0.02;
  const auto all = of(takeoff_of({line(Stage::paving, "unit-4x8-60", amount(641, units::piece))}), job);
  ASSERT_EQ(all.size(), 1U);
  EXPECT_EQ(all[0].spare.quantity, 13);
  EXPECT_NEAR(quantity(all[0]), 675, 1e-9);
}

// Ten whole units and two bought for cuts, of which half of one and a quarter of another are laid: 10.75 laid, 1.25 cut
// off.
TEST(Waste, CutsByTheAreaThatIsLaid) {
  auto layout = std::make_shared<takeoff::paving::Layout>();
  takeoff::paving::Kind kind;
  kind.item = "unit-4x8-60";
  kind.width = 200;
  kind.height = 100;
  layout->lattice.kinds = {kind};
  layout->runs = {{0, 0, 1, 10}};
  takeoff::paving::Piece half, quarter;
  half.area = 10000;
  quarter.area = 5000;
  layout->pieces = {half, quarter};
  auto taken = takeoff_of({line(Stage::paving, "unit-4x8-60", amount(12, units::piece))});
  taken.layouts["A1"] = layout;
  const auto all = of(taken);
  ASSERT_EQ(all.size(), 1U);
  EXPECT_DOUBLE_EQ(all[0].laid.quantity, 10.75);
  EXPECT_DOUBLE_EQ(all[0].cuts.quantity, 1.25);
}

TEST(Waste, PartsAddUpToTheCoin) {
  const std::vector<std::pair<std::string, units::Unit>> kinds{
      {"unit-4x8-60", units::piece},      {"agg-no57", units::kilogram}, {"joint-polymer", units::kilogram},
      {"conc-ready", units::cubic_metre}, {"rod-5_8", units::metre},     {"fabric-nw-12", units::metre}};
  EXPECT_TRUE(rc::check("money and quantities", [&kinds] {
    std::vector<takeoff::Line> lines;
    const int count = *rc::gen::inRange(1, 10);
    for (int i = 0; i < count; ++i) {
      const auto& [item, unit] = *rc::gen::elementOf(kinds);
      lines.push_back(line(Stage::paving, item, amount(*rc::gen::inRange(1, 100000) / 16.0, unit)));
    }
    plan::Job job = starter_job();
    job.choices.count_attic = *rc::gen::arbitrary<bool>();
    job.choices.attic_share = *rc::gen::inRange(0, 50) / 1000.0;
    const auto taken = takeoff_of(lines);
    const auto made = estimate::estimate(job, taken);
    const auto all = estimate::waste(job, taken, made);
    RC_ASSERT(!all.empty());
    units::Money material;
    for (const auto& one : made.lines)
      if (one.kind == plan::CostKind::material) material += *one.amount;
    for (const auto& one : all) {
      const auto& of_line = made.lines[one.line];
      RC_ASSERT(money(one) == *of_line.amount);
      RC_ASSERT(std::abs(quantity(one) - of_line.order_quantity) < 1e-6 * of_line.order_quantity);
      for (const auto* part : {&one.laid, &one.cuts, &one.broken, &one.spare, &one.rounded})
        RC_ASSERT(part->quantity > -1e-6 && part->money >= units::Money());
    }
    RC_ASSERT(estimate::totals(all).all() == material);
  }));
}

}  // namespace
