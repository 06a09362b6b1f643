#include <gtest/gtest.h>
#include <rapidcheck.h>

#include <cmath>

#include "takeoff/ground/earth_kit.h"
#include "takeoff/ground/yard.h"
#include "takeoff/walls/kit.h"

using namespace earth_kit;
using earth_kit::measure;
using takeoff::ground::Excavation;

namespace {

constexpr double square_inch = kit::in * kit::in, cubic_inch = square_inch * kit::in;

// 120 in of wall along x, fill to the north, on a 6 in base 6 in past front and back; blocks 12 in deep.
plan::Wall retaining() {
  plan::Wall wall = kit::straight(120, 32);
  wall.stone = plan::WallStone{};
  wall.stone->build_up = "wall-base-open";
  return wall;
}

plan::Job job_of(const std::vector<plan::Element>& elements) {
  plan::Job made = kit::job(kit::book(), elements);
  return made;
}

// Inches under the ground in front of the underside of the base.
double under(const plan::Job& job, const plan::Wall& wall) {
  takeoff::Share share;
  const plan::Element element{"RW", "", wall};
  const auto profile = takeoff::walls::profile(job, kit::ground_of(element),
                                               *takeoff::walls::unit(job, wall.block, "the wall", "RW", share), share);
  return 6 - profile->base_level(profile->columns.front()) / kit::in;
}

Excavation made_of(const plan::Job& job, const takeoff::levels::Terrain& terrain) {
  return dug(job, plan::site(job), terrain);
}

}  // namespace

// By hand, from heights given with the wall: ground 0 in front, 31 in behind (1 in under the top of 32). With 6 in of
// room each side of the base the trench is 6 + 6 + 12 + 6 + 6 = 36 in wide and U deep. Behind the middle of the blocks
// the ground stands 31 in higher: 18 in of it over the trench, and the face 1 1/2 to 1 from the foot of the trench,
// 0.75 (U + 31)2. All times 120 in.
TEST(WallDig, baseAndBankByHand) {
  const plan::Wall wall = retaining();
  const plan::Job job = job_of({{"RW", "", wall}});
  const double u = under(job, wall), length = 120 * kit::in;
  ASSERT_GT(u, 6 + 6);  // base, and one course of 8 in buried at least
  const Excavation made = made_of(job, {});
  EXPECT_NEAR(measure(made, "RW", "dig_base_m3"), 36 * u * square_inch * length, 1e-6);
  EXPECT_NEAR(measure(made, "RW", "dig_bank_m3"), (18 * 31 + 0.75 * (u + 31) * (u + 31)) * square_inch * length, 1e-6);
  // Filled again: beside the base in front 12 U less 6 x 6, behind it 12 (U + 31) less 6 x 6, and the face.
  EXPECT_NEAR(measure(made, "RW", "backfill_m3"),
              (12 * u - 36 + 12 * (u + 31) - 36 + 0.75 * (u + 31) * (u + 31)) * square_inch * length, 1e-6);
  EXPECT_TRUE(said(made, "wall-dig-ground"));
  EXPECT_NEAR(measure(made, "RW", "dig_deepest_m"), (u + 31) * kit::in, 1e-9);
  EXPECT_EQ(said(made, "dig-way-out"), u + 31 >= 48);
}

// Backfill = dug less base, units and stone: where the ground lies, before and after, level with the top of the trench
// in front and with the ground behind, nothing else fills the hole. Of the blocks those parts count that stand in it:
// the front half below the ground in front, the back half below the ground behind.
TEST(WallDig, backfillIsTheDigLessWhatIsBuilt) {
  EXPECT_TRUE(rc::check([](unsigned stone_in, unsigned cap_in, unsigned soil) {
    plan::Wall wall = retaining();
    wall.stone->drain = "agg-no57";
    wall.stone->drain_depth = units::Length::inches(static_cast<long>(6 + stone_in % 30));
    wall.stone->soil_cap = units::Length::inches(static_cast<long>(cap_in % 12));
    plan::Job job = job_of({{"RW", "", wall}});
    job.choices.soil.stands = std::string(1, "ABC"[soil % 3]);
    const Excavation made = made_of(job, {});
    const double u = under(job, wall), t = 6.0 + stone_in % 30, cap = cap_in % 12;
    const double high = u - 6 + 32;  // of the blocks; the ground behind is 1 in lower
    const double blocks = 6 * (u - 6) + 6 * (u - 6 + 31);
    const double base = 24 * 6, column = t * (high - cap);
    const double all = measure(made, "RW", "dig_base_m3") + measure(made, "RW", "dig_bank_m3");
    const double built = (blocks + base + column) * square_inch * 120 * kit::in;
    // The cap of earth is filled to the top of the blocks, 1 in over the ground behind, over the column's depth.
    const double over = cap > 0 ? t * 1 * square_inch * 120 * kit::in : 0;
    RC_ASSERT(std::abs(all - built - measure(made, "RW", "backfill_m3")) <=
              1e-6 + over + t * square_inch * 120 * kit::in);
  }));
}

// A deck in front, 7 3/8 in to its formation, ends at the face: the trench takes 12 in x 7 3/8 in x 120 in less, since
// the deck has dug it. Together they are what the two holes have in common once.
TEST(WallDig, wallAndDeckDigTheSameEarthOnce) {
  plan::Job job = job_of({{"RW", "", retaining()}});
  auto book = std::make_shared<catalogue::Catalogue>(*job.catalogue);
  const auto more = yard::catalogue();
  for (const auto& [id, item] : more->items) book->items[id] = item;
  book->build_ups["dense"] = more->build_ups["dense"];
  job.catalogue = book;
  const takeoff::levels::Terrain terrain = lying({});
  const Excavation alone = made_of(job, terrain);
  const plan::Job both = plan::with(job, yard::paved("A1", yard::rectangle(-60, -120, 180, 0), "dense"));
  const Excavation together = made_of(both, terrain);
  // At its two ends the deck goes on 6 in past the line; where that begins is found within 2 cm along the wall, of
  // which the end section counts a sixth.
  EXPECT_NEAR(measure(alone, "RW", "dig_base_m3") - measure(together, "RW", "dig_base_m3"),
              12 * 7.375 * 120 * square_inch * kit::in, 2 * 0.02 / 6 * 6 * 7.375 * square_inch);
}

// A free-standing wall: a trench with upright sides, filled again beside the base: 36 U in all, filled 2 (12 U - 36).
TEST(WallDig, freeStanding) {
  plan::Wall wall = retaining();
  wall.free_standing = true;
  const plan::Job job = job_of({{"SW", "", wall}});
  const double u = under(job, wall), length = 120 * kit::in;
  const Excavation made = made_of(job, lying({}));
  EXPECT_NEAR(measure(made, "SW", "dig_base_m3"), 36 * u * square_inch * length, 1e-6);
  EXPECT_NEAR(measure(made, "SW", "dig_bank_m3"), 0, 1e-9);
  EXPECT_NEAR(measure(made, "SW", "backfill_m3"), 2 * (12 * u - 36) * square_inch * length, 1e-6);
}

// The bank of a hill that rises 1 in 4 behind, cut 1 1/2 to 1 (soil C), 1 to 1 and 3/4 to 1: a flatter face digs more.
TEST(WallDig, flatterSoilDigsMore) {
  const auto bank = [](const char* soil) {
    plan::Job job = job_of({{"RW", "", retaining()}});
    job.choices.soil.stands = soil;
    return measure(made_of(job, lying({0, 0, 0.25})), "RW", "dig_bank_m3");
  };
  EXPECT_LT(bank("A"), bank("B"));
  EXPECT_LT(bank("B"), bank("C"));
}

// What stands already is not dug for.
TEST(WallDig, existingWallsAreNotDug) {
  plan::Wall wall = retaining();
  wall.existing = true;
  EXPECT_TRUE(made_of(job_of({{"RW", "", wall}}), {}).dug.empty());
}

// Two legs with the fill in their bend, against cells of half an inch: each bit of ground is dug once, to the lower of
// the two legs' bottoms, and is filled with the leg that it is nearer to. Ground at 0 all over; blocks 12 in deep to 40
// in, the ground behind 1 in under their top; base 6 in, trench 12 + 6 + 6 in from the face, beyond it the hole goes on
// at the top of the base to the end of the layers, then up 1 1/2 to 1.
TEST(WallDig, aCornerIsDugAndFilledOnce) {
  EXPECT_TRUE(rc::check([](unsigned reach_in, unsigned stone_in) {
    const int reach = 25 + static_cast<int>(reach_in % 40), stone = 1 + static_cast<int>(stone_in % 30);
    plan::Wall wall = retaining();
    wall.line = kit::line({{0, 0}, {120, 0}}, 120, 100);
    wall.top = {kit::level(0, 40)};
    wall.stone->drain = "agg-no57";
    wall.stone->drain_depth = units::Length::inches(stone);
    wall.stone->soil_cap = units::Length::inches(8);
    wall.layers = {{1, "grid-6x150", units::Length::inches(reach), {}, {}, 1, false}};
    const plan::Job job = job_of({{"RW", "", wall}});
    const double u = under(job, wall), base = u - 6, back = std::max({24, 12 + stone, reach}),
                 zone = std::max(12 + stone, reach);
    const auto bottom = [&](double across) {
      return across < 24 ? -u : across < back ? -base : (back > 24 ? -base : -u) + (across - back) / 1.5;
    };
    double dug = 0, filled = 0;
    constexpr double cell = 0.5;  // inches: where a step in the fill crosses the mitre a whole inch is too coarse
    for (double x = 120 - cell / 2; x > -120; x -= cell)
      for (double y = cell / 2; y < 220; y += cell) {
        const double one = y, two = 120 - x, none = 1e9;
        const double across_one = x > 0 ? one : none, across_two = y < 100 ? two : none;
        const double deep = std::max({0.0, -bottom(across_one), -bottom(across_two)});
        dug += deep * cell * cell;
        const double across = std::min(across_one, across_two);
        if (across >= back) filled += deep * cell * cell;
        if (across < 12 || across >= back) continue;
        const double high = 39 - bottom(across) - (across < 18 ? 6 : 0) - (across < 12 + stone ? 40 + base - 8 : 0);
        filled += high * cell * cell;
      }
    const double front = 220 * 12 * u;
    const Excavation made = made_of(job, lying({}));
    const double program = (measure(made, "RW", "dig_base_m3") + measure(made, "RW", "dig_bank_m3")) / cubic_inch;
    // A cell at the foot, the top or the mitre of the faces is wrong by less than its inch of rise, 2/3 in.
    const double cells = (220 + 220 + 100) * 2 / 3.0;
    RC_LOG() << "reach " << reach << " stone " << stone << " zone " << zone << " dug " << program << " cells "
             << dug + front << " filled " << measure(made, "RW", "backfill_m3") / cubic_inch << " cells "
             << filled + front - 220 * 36;
    RC_ASSERT(std::abs(program - dug - front) < cells);
    // The fill of a bend is followed as near while the layers of one leg end before the bank of the other (reach up to
    // 48 in here). Beyond that it comes out over the cells, by 0.6 % at 55 in: told here so that nobody takes it for
    // exact, and bounded so that it grows no further unseen.
    const double by_cells = filled + front - 220 * 36;
    const double allowed = reach <= 48 ? cells : 0.02 * by_cells;
    RC_ASSERT(std::abs(measure(made, "RW", "backfill_m3") / cubic_inch - by_cells) < allowed);
  }));
}

// The ground as it lies 5 ft under the base: a wall on fill is somebody's decision, and what is under it isn't counted.
// Fill behind that ends over the ground is said too; on ground at the height of the fill neither is.
TEST(WallDig, aWallAboveTheGroundIsSaid) {
  const plan::Job job = job_of({{"RW", "", retaining()}});
  EXPECT_TRUE(said(made_of(job, lying({-5 * 0.3048})), "wall-over-ground"));
  EXPECT_TRUE(said(made_of(job, lying({-5 * 0.3048})), "fill-behind-ends"));
  EXPECT_FALSE(said(made_of(job, lying({})), "wall-over-ground"));
  EXPECT_TRUE(said(made_of(job, lying({})), "fill-behind-ends"));
  EXPECT_FALSE(said(made_of(job, lying({31 * kit::in})), "fill-behind-ends"));
}

// Where a wall turns away from its fill its cross-sections leave a gap, which is said; in a bend with the fill there is
// none.
TEST(WallDig, anOpenCornerIsSaid) {
  const auto turning = [](double y) {
    plan::Wall wall = retaining();
    wall.line = kit::line({{0, 0}, {120, 0}}, 120, y);
    return made_of(job_of({{"RW", "", wall}}), lying({}));
  };
  EXPECT_TRUE(said(turning(-100), "wall-open-corner"));
  EXPECT_FALSE(said(turning(100), "wall-open-corner"));
}
