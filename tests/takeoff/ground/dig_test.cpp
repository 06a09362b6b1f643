#include <gtest/gtest.h>
#include <rapidcheck.h>

#include <algorithm>
#include <cmath>

#include "takeoff/edges/site_kit.h"
#include "takeoff/ground/earth_kit.h"
#include "takeoff/ground/yard.h"

using namespace earth_kit;
using earth_kit::said;
using takeoff::ground::Excavation;

namespace {

constexpr double ft = 0.3048, in = 0.0254;
constexpr double cubic_foot = ft * ft * ft;

// The demo's build-up: 2 3/8 + 1 1/2 + 6 in = 9 7/8 in, nothing past the edges.
std::shared_ptr<catalogue::Catalogue> deep() {
  auto all = yard::catalogue();
  all->build_ups["hybrid"] = {
      "hybrid",
      "paving",
      {},
      "",
      "",
      "",
      {yard::layer("unit", "", 19, 0), yard::layer("bedding", "chips", 12, 0), yard::layer("base", "open", 48, 0)}};
  return all;
}

plan::Job with(std::vector<plan::Element> elements) {
  plan::Job made = yard::job(std::move(elements));
  made.catalogue = deep();
  return made;
}

plan::Element level(const std::string& id, double x, double y, double feet, const std::string& what) {
  plan::Level made;
  made.at = site_kit::at(x, y);
  made.height = site_kit::inches(feet * 12);
  made.what = what;
  if (what == "finished") made.of = "A1";
  return {id, "", made};
}

}  // namespace

// The demo's strip along the house: the ground 99.25 ft rising 1 in 24 to the north, the paving 99.83 ft at y = 26 ft
// rising 1 in 48, 9 7/8 in thick: 9.12661995 m3, worked out apart triangle by triangle. (Both are planes: area x the
// depth at its centroid.)
TEST(Dig, demoStripByLevels) {
  plan::PavedArea strip;
  strip.outline = site_kit::shape({{0, 312}, {480, 312}, {480, 384}, {72, 384, std::tan(site_kit::pi / 8)}});
  strip.build_up = "hybrid";
  const plan::Job job = with({{"A2", "", strip}});
  const plan::Site site = plan::site(job);
  takeoff::levels::Terrain terrain = lying({99.25 * ft, 0, 1.0 / 24});
  finish(terrain, site, "A2", {(99.83 - 26.0 / 48) * ft, 0, 1.0 / 48});
  const Excavation made = dug(job, site, terrain);
  EXPECT_NEAR(measure(made, "A2", "dig_m3"), 9.12661995, 9.2e-5);
  EXPECT_EQ(measure(made, "A2", "fill_m3"), 0);
  EXPECT_NEAR(bank(made), 9.12661995, 9.2e-5);
  const double y = 32 * ft;  // deepest at the house: 99.25 + 32/24 less 99.83 + 6/48 - 9.875/12 ft
  EXPECT_NEAR(measure(made, "A2", "dig_deepest_m"), 99.25 * ft + y / 24 - (99.83 + 6.0 / 48 - 9.875 / 12) * ft, 1e-9);
  EXPECT_FALSE(said(made, "dig-by-depth"));
}

// The demo's deck round the pool: ground by nine levels, surface by 25, to the back line of the coping, without pillars
// and without anything past the edges: 14.5605379 m3, worked out apart; no fill.
TEST(Dig, demoDeckByLevels) {
  plan::PavedArea deck;
  deck.outline = site_kit::shape({{0, 60, std::tan(site_kit::pi / 8)}, {60, 0}, {480, 0}, {480, 307}, {0, 307}});
  deck.build_up = "hybrid";
  deck.finish = plan::Finish{};
  plan::Pool pool;
  pool.coping = plan::Coping{};
  pool.coping->item = "coping-12";
  pool.coping->overhang = site_kit::inches(1.5);
  std::vector<plan::Element> all{{"A1", "", deck}, site_kit::pool(pool)};
  const double ground[9][3] = {{-360, -360, 98},    {480, -360, 98},    {720, -360, 103},
                               {-360, 0, 99.25},    {480, 0, 99.25},    {720, 0, 104.25},
                               {-360, 432, 100.75}, {480, 432, 100.75}, {720, 432, 105.75}};
  for (const auto& g : ground) all.push_back(level("g" + std::to_string(all.size()), g[0], g[1], g[2], "existing"));
  const double surface[25][3] = {
      {318, 61.5, 100},     {390.5, 97.75, 100}, {408.5, 152, 100},    {390.5, 206.25, 100}, {318, 242.5, 100},
      {263.75, 224.5, 100}, {213, 207.5, 100},   {162.25, 224.5, 100}, {129, 235.5, 100},    {84.5, 213.25, 100},
      {73.5, 180, 100},     {95.75, 135.5, 100}, {214, 76, 100},       {213, 226, 99.970},   {0, 0, 99.660},
      {214, 0, 99.840},     {318, 0, 99.860},    {480, 0, 99.620},     {480, 152, 99.780},   {480, 307, 99.830},
      {318, 307, 99.830},   {213, 307, 99.830},  {129, 307, 99.830},   {0, 307, 99.830},     {0, 204, 99.850}};
  for (const auto& f : surface) all.push_back(level("f" + std::to_string(all.size()), f[0], f[1], f[2], "finished"));
  plan::Job job = with(std::move(all));
  auto book = std::make_shared<catalogue::Catalogue>(*job.catalogue);
  catalogue::Item coping;
  coping.id = "coping-12";
  coping.kind = "coping";
  coping.length = coping.width = units::Length::inches(12);
  yard::put(*book, coping);
  job.catalogue = book;
  const plan::Site site = plan::site(job);
  const Excavation made = dug(job, site, takeoff::levels::terrain(job, site));
  EXPECT_NEAR(measure(made, "A1", "dig_m3"), 14.5605379, 14.56 * 1e-4);
  EXPECT_NEAR(measure(made, "A1", "fill_m3"), 0, 1e-3);
}

// Whatever the planes: dig less fill = area x (ground less formation at the middle of the rectangle), and neither is
// negative; the slow way sums columns of 5 cm, each wrong by no more than half the change of depth within it.
TEST(Dig, digLessFillIsTheDifferenceOfTheVolumes) {
  EXPECT_TRUE(rc::check([](int a, int b, int c, int e, int f) {
    const auto small = [](int value, double most) { return most * (value % 100) / 100.0; };
    const Ground lies{small(a, 0.4), small(b, 0.1), small(c, 0.1)}, paved{0.2, small(e, 0.05), small(f, 0.05)};
    const plan::Job job = with({yard::paved("A1", yard::rectangle(0, 0, 240, 120), "hybrid")});
    const plan::Site site = plan::site(job);
    takeoff::levels::Terrain terrain = lying(lies);
    finish(terrain, site, "A1", paved);
    const Excavation made = dug(job, site, terrain);
    const double length = 240 * in, width = 120 * in, depth = 9.875 * in;
    const auto deep = [&](double x, double y) { return lies.at(x, y) - paved.at(x, y) + depth; };
    const double digging = measure(made, "A1", "dig_m3"), filling = measure(made, "A1", "fill_m3");
    RC_ASSERT(digging >= 0 && filling >= 0);
    RC_ASSERT(std::abs(digging - filling - length * width * deep(length / 2, width / 2)) < 1e-9);
    double slow = 0;
    const int columns = 122, rows = 61;
    const double dx = length / columns, dy = width / rows;
    for (int i = 0; i < columns; ++i)
      for (int j = 0; j < rows; ++j) slow += std::max(0.0, deep((i + 0.5) * dx, (j + 0.5) * dy)) * dx * dy;
    RC_ASSERT(std::abs(digging - slow) < length * width * 0.15 * (dx + dy) / 2);
    RC_ASSERT(std::abs(bank(made) - digging) < 1e-9);  // nothing lies past the edges
  }));
}

TEST(Dig, splittingAnAreaChangesTheSumByNothing) {
  EXPECT_TRUE(rc::check([](unsigned where, int a, int b) {
    const long cut = 24 + static_cast<long>(where % 192);
    const Ground lies{0.1, a % 100 / 1000.0, b % 100 / 1000.0}, paved{0.2, 0.02, -0.01};
    const auto sum = [&](std::vector<plan::Element> areas) {
      std::vector<plan::ElementId> ids;
      for (const auto& area : areas) ids.push_back(area.id);
      const plan::Job job = with(std::move(areas));
      const plan::Site site = plan::site(job);
      takeoff::levels::Terrain terrain = lying(lies);
      for (const auto& id : ids) finish(terrain, site, id, paved);
      const Excavation made = dug(job, site, terrain);
      return std::pair(bank(made), fill(made));
    };
    const auto whole = sum({yard::paved("A1", yard::rectangle(0, 0, 240, 120), "hybrid")});
    const auto parts = sum({yard::paved("A1", yard::rectangle(0, 0, cut, 120), "hybrid"),
                            yard::paved("A2", yard::rectangle(cut, 0, 240, 120), "hybrid")});
    RC_ASSERT(std::abs(whole.first - parts.first) < 1e-9);
    RC_ASSERT(std::abs(whole.second - parts.second) < 1e-9);
  }));
}

// Base 6 in past the edges of 20 x 10 ft, its formation going on level from the nearest place of the edge: the slow way
// takes columns of 1 cm in the strip, each with the height of the edge that lies nearest.
TEST(Dig, pastTheEdgesTheFormationGoesOnLevel) {
  const plan::Job job = yard::job({yard::paved("A1", yard::rectangle(0, 0, 240, 120), "dense")});
  const plan::Site site = plan::site(job);
  const Ground lies{0, 0.01, 0.02}, paved{0.05, 0.03, -0.02};
  takeoff::levels::Terrain terrain = lying(lies);
  finish(terrain, site, "A1", paved);
  const Excavation made = dug(job, site, terrain);
  const double length = 240 * in, width = 120 * in, out = 6 * in, depth = 7.375 * in;
  double slow = 0;
  const double step = 0.25 * in;
  for (double x = -out + step / 2; x < length + out; x += step)
    for (double y = -out + step / 2; y < width + out; y += step) {
      if (x > 0 && x < length && y > 0 && y < width) continue;
      const double edge = paved.at(std::clamp(x, 0.0, length), std::clamp(y, 0.0, width));
      slow += (lies.at(x, y) - edge + depth) * step * step;
    }
  EXPECT_NEAR(measure(made, "A1", "dig_past_edges_m3"), slow, slow * 1e-3);
  EXPECT_NEAR(bank(made), measure(made, "A1", "dig_m3") + measure(made, "A1", "dig_past_edges_m3"), 1e-9);
}

// A slab of 4 in over half of 20 x 10 ft goes first: the dig starts at its underside, 100 x 4/12 cu ft less; where it
// stays under an overlay nothing is dug there: 100 cu ft x 9.875/12 less. By one depth and by level planes alike.
TEST(Dig, whatIsRemovedIsNoEarth) {
  const auto volume = [](const std::string& fate, bool levels) {
    std::vector<plan::Element> all{yard::paved("A1", yard::rectangle(0, 0, 240, 120), "hybrid")};
    if (!fate.empty()) {
      plan::Removal slab;
      slab.outline = {{yard::rectangle(-60, 0, 120, 240), {}}};
      slab.what = "concrete";
      slab.thickness = units::Length::inches(4);
      slab.fate = fate;
      all.push_back({"X", "", slab});
    }
    const plan::Job job = with(std::move(all));
    const plan::Site site = plan::site(job);
    takeoff::levels::Terrain terrain;
    if (levels) {
      terrain = lying({});
      finish(terrain, site, "A1", {});
    }
    return bank(dug(job, site, terrain)) / cubic_foot;
  };
  for (const bool levels : {false, true}) {
    EXPECT_NEAR(volume("", levels), 200 * 9.875 / 12, 1e-6);
    EXPECT_NEAR(volume("haul", levels), 200 * 9.875 / 12 - 100 * 4.0 / 12, 1e-6);
    EXPECT_NEAR(volume("leave", levels), 100 * 9.875 / 12, 1e-6);
  }
}

// Topsoil 3 in over 200 sq ft: 50 cu ft kept apart, and that much less of the rest; its strip is priced by area.
TEST(Dig, topsoilComesOffFirst) {
  plan::Job job = with({yard::paved("A1", yard::rectangle(0, 0, 240, 120), "hybrid")});
  job.choices.soil.topsoil = units::Length::inches(3);
  const plan::Site site = plan::site(job);
  takeoff::levels::Terrain terrain = lying({});
  finish(terrain, site, "A1", {});
  for (const takeoff::levels::Terrain& by : {terrain, takeoff::levels::Terrain()}) {
    const Excavation made = dug(job, site, by);
    EXPECT_NEAR(bank(made, true) / cubic_foot, 50, 1e-6);
    EXPECT_NEAR(bank(made) / cubic_foot, 200 * (9.875 - 3) / 12, 1e-6);
    const auto strip = std::ranges::find(made.share.tasks, "strip-sod", &takeoff::Task::rate);
    ASSERT_NE(strip, made.share.tasks.end());
    EXPECT_NEAR(strip->working.amount().value, 200 * ft * ft, 1e-6);
  }
}

// Without levels it is said; with the ground but no finished surface too, and both dig the same.
TEST(Dig, byOneDepthWhereThereAreNoLevels) {
  const plan::Job job = with({yard::paved("A1", yard::rectangle(0, 0, 240, 120), "hybrid")});
  const plan::Site site = plan::site(job);
  for (const takeoff::levels::Terrain& by : {takeoff::levels::Terrain(), lying({1, 0.05, 0})}) {
    const Excavation made = dug(job, site, by);
    EXPECT_TRUE(said(made, "dig-by-depth"));
    EXPECT_NEAR(bank(made) / cubic_foot, 200 * 9.875 / 12, 1e-6);
  }
}

// A way out from 4 ft, protection from 5, an engineer from 20 (29 CFR 1926.651 and .652).
TEST(Dig, depthsThatNeedCare) {
  const auto deep = [](double feet) {
    const plan::Job job = with({yard::paved("A1", yard::rectangle(0, 0, 240, 120), "hybrid")});
    const plan::Site site = plan::site(job);
    takeoff::levels::Terrain terrain = lying({feet * ft - 9.875 * in, 0, 0});
    finish(terrain, site, "A1", {});
    const Excavation made = dug(job, site, terrain);
    return std::array{said(made, "dig-way-out"), said(made, "dig-protection"), said(made, "dig-engineer")};
  };
  EXPECT_EQ(deep(3.9), (std::array{false, false, false}));
  EXPECT_EQ(deep(4.1), (std::array{true, false, false}));
  EXPECT_EQ(deep(5.1), (std::array{true, true, false}));
  EXPECT_EQ(deep(20.1), (std::array{true, true, true}));
}
