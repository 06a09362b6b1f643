// The order lists of both versions of the demo job, worked out by a script apart from the program: from each net
// quantity to what is ordered and its amount to the cent.
#include "estimate/estimate_kit.h"
#include "estimate/mixed_packs.h"
#include "files/csv.h"
#include "files/files.h"
#include "units/number.h"

namespace {

using namespace estimate_kit;
using takeoff::Stage;

constexpr double ton = 907.18474;        // kg, exact
constexpr double yard = 0.764554857984;  // m3, exact

struct Row {
  std::string version, item, unit, amount;
  double net = 0;
  double allowance = 0;
  double order = 0;
};

std::vector<Row> rows() {
  const auto text = files::read_file(std::string(HOUSE_ROOT) + "/tests/estimate/demo_order.csv");
  EXPECT_TRUE(text.has_value());
  const auto table = files::read_csv(text.value_or(""), "demo_order.csv");
  EXPECT_TRUE(table.has_value());
  std::vector<Row> all;
  if (!table) return all;
  for (const auto& row : table->rows) {
    const auto cell = [&](const char* name) { return row.cells[*table->column(name)]; };
    const std::string allowance = cell("allowance");  // "3 % broken", "10 %", "laps 20 in" or nothing
    const std::size_t percent = allowance.find(" %");
    all.push_back({cell("version"), cell("item"), cell("unit"), cell("amount_usd"),
                   *units::read_number(cell("net_quantity")),
                   percent == std::string::npos ? 0 : *units::read_number(allowance.substr(0, percent)) / 100,
                   *units::read_number(cell("order_quantity"))});
  }
  return all;
}

// The net quantity as a trade gives it: in SI.
takeoff::Working net_of(const Row& row) {
  const catalogue::Item& item = *starter().item(row.item);
  if (row.unit == "ton") return amount(row.net * ton, units::kilogram);
  if (row.unit == "cu yd") return amount(row.net * yard, units::cubic_metre);
  if (row.unit == "bag") return amount(row.net * *item.mass_kg, units::kilogram);
  if (row.unit == "coil" || row.unit == "roll" || row.unit == "stick")
    return amount(row.net * item.length->metres().si(), units::metre);
  return amount(row.net, units::piece);
}

// Rows whose net was rounded on the way or that come of several sizes have tests of their own.
bool apart(const Row& row) {
  return row.item == "rebar-4" || row.item == "seal-tube-29" || row.item == "pack-three-60";
}

TEST(DemoOrder, EveryRowToTheCent) {
  int tried = 0;
  for (const Row& row : rows()) {
    if (apart(row)) continue;
    auto wanted = line(Stage::paving, row.item, net_of(row));
    wanted.allowance = row.allowance;
    const auto made = estimate::estimate(starter_job(), takeoff_of({wanted}));
    const auto& ordered = line_of(made, row.item);
    EXPECT_EQ(ordered.order_quantity, row.order)
        << row.version << " " << row.item << ": " << ordered.working.sentence();
    ASSERT_TRUE(ordered.amount.has_value()) << row.item;
    EXPECT_EQ(units::write_money(*ordered.amount, 2), row.amount) << row.version << " " << row.item;
    ++tried;
  }
  EXPECT_EQ(tried, 93 - 5);  // 93 rows; rebar and sealant twice, the mixed packs once
}

// The demo's list orders packs alone: 563, 764 and 785 units and 3 % are 580, 787 and 809; a pack of 504.90 brings 66,
// 88 and 88; 809 / 88 = 9.19. The program itself orders the least price of packs and single pieces (mixed_packs_test).
TEST(DemoOrder, MixedPacksAlone) {
  const auto pack = estimate::packs_alone({{580, 66, {}, 1}, {787, 88, {}, 1}, {809, 88, {}, 1}}, 50490);
  EXPECT_EQ(pack.packs, 10);
  EXPECT_EQ(pack.coins, 504900);
}

// Two rings in 20 ft bars that lap 20 in, each ring rounded up: 68.08 ft and 71.22 ft / 18.333 ft = 3.71 and 3.88,
// so 8.
TEST(DemoOrder, BarsRingByRing) {
  const auto ring = [](double feet) {
    return takeoff::Working::up(takeoff::Working::quotient(amount(feet * 0.3048, units::metre),
                                                           amount((20 - 20.0 / 12) * 0.3048, units::metre)));
  };
  auto wanted = line(Stage::coping, "rebar-4", takeoff::Working::sum({ring(68.08), ring(71.22)}));
  wanted.allowance = 0;
  const auto ordered = line_of(estimate::estimate(starter_job(), takeoff_of({wanted})), "rebar-4");
  EXPECT_EQ(ordered.order_quantity, 8);
  EXPECT_EQ(coins(ordered), 12480);
}

// 102.14 ft of 1/2 x 1/4 in and 80 ft of 1/4 x 1/4 in: 153.21 + 60 = 213.21 cu in; a tube of 29 fl oz is 52.336; 4.074
// and 5 % are 4.278, so 5 tubes at 24.50.
TEST(DemoOrder, SealantFromItsJoints) {
  constexpr double cubic_inch = 0.0254 * 0.0254 * 0.0254;
  auto wanted = line(Stage::joints, "seal-tube-29",
                     amount((102.14 * 12 * 0.125 + 80 * 12 * 0.0625) * cubic_inch, units::cubic_metre));
  wanted.allowance = 0.05;
  const auto ordered = line_of(estimate::estimate(starter_job(), takeoff_of({wanted})), "seal-tube-29");
  EXPECT_EQ(ordered.order_quantity, 5);
  EXPECT_EQ(coins(ordered), 12250);
}

}  // namespace
