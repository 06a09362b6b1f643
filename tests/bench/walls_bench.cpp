// How fast a long wall is profiled, laid and counted, and with its stone, pipe, layers, caps, checks and flags beside a
// deck, a drive and a pool: 500 m, 12 courses, 40 steps and curves. Budget: 20 ms; an edit of one level less.
#include <benchmark/benchmark.h>

#include <cmath>
#include <cstdio>
#include <map>
#include <numbers>

#include "plan/site.h"
#include "takeoff/walls/courses.h"
#include "takeoff/walls/walls.h"

namespace {

using takeoff::Share;
using takeoff::walls::Blocks;
using takeoff::walls::Courses;
using takeoff::walls::Profile;
using units::Length;

Length inches(double value) { return Length::of_steps(std::llround(value * 8128)); }

std::shared_ptr<const catalogue::Catalogue> blocks_of_the_bench() {
  auto all = std::make_shared<catalogue::Catalogue>();
  const auto block = [&](const char* id, double width, const char* back) {
    auto item = std::make_shared<catalogue::Item>();
    item->id = id;
    item->kind = "wall-block";
    item->unit = "piece";
    item->length = inches(18);
    item->width = inches(width);
    item->height = inches(8);
    item->details["setback_mm"] = "19.05";
    item->details["back_length_mm"] = back;
    all->items[id] = std::move(item);
  };
  block("block", 12, "457.2");
  block("taper", 12, "304.8");
  block("corner", 9, "457.2");
  return all;
}

// Twenty bays of 25 m: straight, a quarter circle or a corner by turns; the top steps in each, the ground rises and
// falls, so that the base steps by the rule.
struct Case {
  plan::Job job;
  plan::Element element{"W", "long wall", plan::Wall{}};
  plan::Ground ground;
};

Case long_wall(double edited_inches) {
  Case made;
  made.job.catalogue = blocks_of_the_bench();
  plan::Wall wall;
  wall.block = "block";
  wall.curve_block = "taper";
  wall.corner_block = "corner";
  double x = 0, y = 0, heading = 0, station = 0;
  const double quarter = std::numbers::pi / 2;
  for (int i = 0; i < 20; ++i) {
    // A stair of quarters: left and right by turns, curve and corner by turns.
    const double side = i % 2 == 0 ? 1 : -1;
    const double radius = i % 4 < 2 ? 300 : 0;
    const double straight = 984 - radius * quarter;
    wall.line.edges.push_back({{inches(x), inches(y)}, 0, {}});
    x += straight * std::cos(heading), y += straight * std::sin(heading);
    if (radius > 0) {
      wall.line.edges.push_back({{inches(x), inches(y)}, side * std::tan(quarter / 4), {}});
      x += radius * (std::cos(heading) - side * std::sin(heading));
      y += radius * (std::sin(heading) + side * std::cos(heading));
    }
    heading += side * quarter;
    for (double end : {station, station + 984}) {
      wall.top.push_back({inches(end), inches(i == 7 ? 80 + edited_inches : i % 3 == 0 ? 88 : 80)});
      wall.ground.push_back({inches(end), inches(end == station ? -4 : 10)});
    }
    station += 984;
  }
  wall.line.end = {inches(x), inches(y)};
  made.element.kind = wall;
  made.ground.element = std::make_shared<const plan::Element>(made.element);
  auto path = geometry::Path::make(wall.line.edges, wall.line.end);
  if (path) made.ground.path = std::move(*path);
  return made;
}

struct Whole {
  std::optional<Blocks> blocks;
  std::optional<Profile> profile;
  Courses courses;
};

// The same wall with everything that a wall can have.
struct Full {
  plan::Job job;
  plan::Site site;
};

void furnish(catalogue::Catalogue& all) {
  const auto add = [&all](const char* id, const char* kind, double length, double width, double height) {
    catalogue::Item item;
    item.id = id;
    item.kind = kind;
    item.unit = "piece";
    item.length = inches(length);
    item.width = inches(width);
    item.height = inches(height);
    all.items[id] = std::make_shared<catalogue::Item>(item);
    return const_cast<catalogue::Item*>(all.items[id].get());
  };
  add("cap", "cap", 18, 13, 3);
  add("roll", "reinforcement", 1800, 72, 1)->details = {{"strong_direction", "along the roll"}, {"interaction", "0.8"}};
  add("fabric", "fabric", 1200, 72, 1);
  add("pipe", "pipe", 120, 4, 4)->details = {{"nominal_diameter_in", "4"}, {"perforated", "yes"}};
  catalogue::Item* stone = add("stone", "aggregate", 1, 1, 1);
  stone->details = {{"loose_density_kg_m3", "1570"}, {"compacted_density_kg_m3", "1650"}, {"porosity", "0.38"}};
  catalogue::BuildUp base;
  base.id = "base";
  base.use = "wall-base";
  catalogue::Layer layer;
  layer.role = "base";
  layer.item = "stone";
  layer.thickness = layer.past_edge = inches(6);
  base.layers = {layer};
  all.build_ups["base"] = base;
  for (const char* id : {"block", "taper", "corner"}) {
    auto heavy = std::make_shared<catalogue::Item>(*all.items[id]);
    heavy->mass_kg = 38.2;
    heavy->details["core_void_share"] = "0.4";
    all.items[id] = heavy;
  }
}

plan::DrawnShape box(double x1, double y1, double x2, double y2) {
  plan::DrawnRing ring;
  for (const auto& [x, y] : {std::pair(x1, y1), {x2, y1}, {x2, y2}, {x1, y2}})
    ring.edges.push_back({{inches(x), inches(y)}, 0, {}});
  return {ring};
}

// Layers on every third course, and a deck over the whole plan, from which the wall takes its own ground.
Full full_wall() {
  Case bare = long_wall(0);
  auto all = std::make_shared<catalogue::Catalogue>(*bare.job.catalogue);
  furnish(*all);
  auto wall = std::get<plan::Wall>(bare.element.kind);
  wall.cap = "cap";
  wall.stone = plan::WallStone{};
  wall.stone->build_up = "base";
  wall.stone->drain = "stone";
  wall.stone->fabric = "fabric";
  wall.pipe = plan::WallPipe{};
  wall.pipe->item = "pipe";
  for (int i = 0; i <= 20; ++i) wall.pipe->outlets.push_back({inches(i * 984), inches(-20)});
  for (const int course : {2, 5, 8}) wall.layers.push_back({course, "roll", inches(72), {}, {}, 1, false});
  wall.loads = plan::WallLoads{{34, 1900, 0}, {30, 1850, 0}, {30, 1850, 0}, 10, 4788, 0, false};
  plan::PavedArea deck;
  deck.outline = box(-600, -600, 12000, 12000);
  plan::Pool pool;
  pool.outline = box(100, 60, 500, 200);
  Full made{bare.job, {}};
  made.job.catalogue = all;
  for (const plan::Element& one :
       {plan::Element{"W", "long wall", wall}, plan::Element{"A", "deck", deck}, plan::Element{"P", "pool", pool}})
    made.job.elements.push_back(std::make_shared<const plan::Element>(one));
  made.site = plan::site(made.job);
  return made;
}

Whole laid(const Case& on, const Whole* before) {
  const auto& wall = std::get<plan::Wall>(on.element.kind);
  Share share;
  Whole made;
  made.blocks = before ? before->blocks : takeoff::walls::chosen_blocks(on.job, wall, "W", share);
  made.profile = takeoff::walls::profile(on.job, on.ground, made.blocks->block, share);
  made.courses = takeoff::walls::lay(*made.profile, *made.blocks, takeoff::walls::lay_rules(on.job, wall, *made.blocks),
                                     before ? &before->courses : nullptr);
  return made;
}

void profile_and_lay(benchmark::State& state) {
  const Case on = long_wall(0);
  for (auto _ : state) benchmark::DoNotOptimize(laid(on, nullptr));
}

void profile_lay_and_count(benchmark::State& state) {
  const Case on = long_wall(0);
  for (auto _ : state) {
    const Whole whole = laid(on, nullptr);
    benchmark::DoNotOptimize(takeoff::walls::counted(on.job, on.ground, *whole.profile, *whole.blocks, whole.courses));
  }
}

void one_level_edited(benchmark::State& state) {
  const Case on = long_wall(0), edited = long_wall(-8);
  const Whole before = laid(on, nullptr);
  for (auto _ : state) benchmark::DoNotOptimize(laid(edited, &before));
}

void whole_wall(benchmark::State& state) {
  const Full on = full_wall();
  const plan::Ground& ground = *on.site.find("W");
  for (auto _ : state) benchmark::DoNotOptimize(takeoff::walls::wall(on.job, on.site, ground));
}

BENCHMARK(whole_wall)->Unit(benchmark::kMillisecond)->UseRealTime();
BENCHMARK(profile_and_lay)->Unit(benchmark::kMillisecond)->UseRealTime();
BENCHMARK(profile_lay_and_count)->Unit(benchmark::kMillisecond)->UseRealTime();
BENCHMARK(one_level_edited)->Unit(benchmark::kMillisecond)->UseRealTime();

// Shows what Google Benchmark shows, and keeps the times.
class Keeper : public benchmark::ConsoleReporter {
 public:
  void ReportRuns(const std::vector<Run>& runs) override {
    for (const Run& run : runs) times[run.run_name.function_name] = run.GetAdjustedRealTime();
    ConsoleReporter::ReportRuns(runs);
  }
  std::map<std::string, double> times;  // ms
};

}  // namespace

int main(int argc, char** argv) {
  benchmark::Initialize(&argc, argv);
  Keeper keeper;
  benchmark::RunSpecifiedBenchmarks(&keeper);
  const Full full = full_wall();
  const Share share = takeoff::walls::wall(full.job, full.site, *full.site.find("W"));
  std::printf("whole wall: %zu lines, %zu checks, %zu problems\n", share.lines.size(), share.checks.size(),
              share.problems.size());
  const Whole whole = laid(long_wall(0), nullptr);
  std::size_t runs = 0, units = 0;
  for (const auto& bay : whole.courses.bays) {
    runs += bay->runs.size();
    for (const auto& run : bay->runs) units += run.units.size();
  }
  std::printf("%.1f m, %d courses, %zu columns, %zu legs, %zu bays, %zu runs, %zu units\n", whole.profile->length,
              whole.profile->courses, whole.profile->columns.size(), whole.profile->legs.size(),
              whole.courses.bays.size(), runs, units);
  for (const auto& [name, time] : keeper.times) std::printf("%-24s %.2f ms (budget: 20)\n", name.c_str(), time);
  return 0;
}
