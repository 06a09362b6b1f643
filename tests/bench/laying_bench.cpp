// How fast laying is, held in one run to a general engine's prepared intersection of every unit with the ground.
#include <benchmark/benchmark.h>
#define GEOS_USE_ONLY_R_API
#include <geos_c.h>

#include <cmath>
#include <cstdio>
#include <map>
#include <numbers>
#include <random>
#include <string>

#include "geometry/flatten.h"
#include "geometry/validity.h"
#include "takeoff/paving/start.h"

namespace {

using geometry::Point;
using geometry::Region;
using geometry::Ring;
using geometry::Vec;
using takeoff::paving::Lattice;
using takeoff::paving::Layout;
using units::Length;

constexpr double metre = 320000;
constexpr double inch = 8128;
constexpr takeoff::paving::Slivers limits{1.0 / 3, 2 * inch};

Point at(double x, double y) { return {Length::of_steps(std::llround(x)), Length::of_steps(std::llround(y))}; }

// A round plaza with a ragged edge of 6,000 corners that covers about so many units of 4 x 8 in.
Ring plaza(double units) {
  const double radius = std::sqrt(units * 32 * inch * inch / std::numbers::pi);
  std::mt19937 dice(1);
  Ring ring;
  for (int i = 0; i < 6000; ++i) {
    const double angle = 2 * std::numbers::pi * i / 6000;
    const double r = radius * (1 + 1e-4 * (static_cast<double>(dice() % 1000) / 1000 - 0.5));
    ring.push_back({at(r * std::cos(angle), r * std::sin(angle)), 0, {1, i}});
  }
  return ring;
}

Region region(const std::vector<Ring>& rings) { return geometry::shape(rings)->region; }

// A house's deck: 40 x 25 ft with one round corner, a pool and two posts.
Region deck() {
  const auto in = [](double x, double y) { return at(x * inch, y * inch); };
  const double quarter = std::tan(std::numbers::pi / 8);
  const auto post = [&](double x, double y) {
    return Ring{{in(x, y), 0, {}}, {in(x + 24, y), 0, {}}, {in(x + 24, y + 24), 0, {}}, {in(x, y + 24), 0, {}}};
  };
  return region(
      {{{in(8, 60), quarter, {}}, {in(60, 8), 0, {}}, {in(472, 8), 0, {}}, {in(472, 299), 0, {}}, {in(8, 299), 0, {}}},
       {{in(73, 150), 0.4, {}}, {in(300, 61), 0.6, {}}, {in(300, 240), 0.3, {}}, {in(160, 200), 0.7, {}}},
       post(420, 98),
       post(420, 182)});
}

Lattice herringbone(Point start = {}) {
  catalogue::Item item;
  item.id = "unit";
  item.kind = "paving-unit";
  item.length = Length::inch_64ths(7 * 64 + 56);
  item.width = Length::inch_64ths(3 * 64 + 56);
  item.joint = Length::inch_64ths(8);
  catalogue::Pattern pattern;
  pattern.id = "herringbone-45";
  pattern.cell_x = pattern.cell_y = {catalogue::CellSide::Of::module_width, 1, {}};
  pattern.direction = units::Angle::degrees(45);
  pattern.along = 4;
  pattern.across_x = pattern.across_y = 1;
  pattern.pieces = {{"unit", 0, 0, 2, 1}, {"unit", 2, -1, 1, 2}};
  pattern.herringbone = true;
  catalogue::Catalogue all;
  all.items["unit"] = std::make_shared<const catalogue::Item>(item);
  all.patterns["herringbone-45"] = pattern;
  plan::Laying laying;
  laying.pattern = "herringbone-45";
  laying.units["unit"] = "unit";
  laying.start = start;
  return *takeoff::paving::lattice(all, laying);
}

struct Counted {
  std::int64_t whole = 0;
  std::int64_t cut = 0;
};
std::map<std::string, Counted> counted;

void lay_plaza(benchmark::State& state, const std::string& name, double units) {
  const Region ground = region({plaza(units)});
  const Lattice lattice = herringbone();
  for (auto _ : state) {
    const Layout laid = takeoff::paving::lay(ground, lattice, limits);
    counted[name] = {laid.whole(), static_cast<std::int64_t>(laid.pieces.size())};
  }
}
void lay_half_a_million(benchmark::State& state) { lay_plaza(state, "lay 0.5 M", 0.5e6); }
void lay_five_million(benchmark::State& state) { lay_plaza(state, "lay 5 M", 5e6); }

void one_corner_moved(benchmark::State& state) {
  // The ring is moved and checked outside the clock: this is the laying alone.
  Ring ring = plaza(0.5e6);
  ring[100].from = geometry::moved(ring[100].from, {0.02 * metre, 0.01 * metre});
  const Region ground = region({ring});
  const Lattice lattice = herringbone();
  for (auto _ : state) benchmark::DoNotOptimize(takeoff::paving::lay(ground, lattice, limits).unit_area);
}

void best_of_2000_starts(benchmark::State& state) {
  const Region ground = deck();
  const Lattice lattice = herringbone(at(245 * inch, 8 * inch));
  for (auto _ : state) {
    benchmark::DoNotOptimize(
        takeoff::paving::best_starts(ground, lattice, limits, takeoff::paving::For::cuts, 2000).front().counts.cut);
  }
}

// ---- every unit of the window by prepared geometry, under the same rule

class Engine {
 public:
  Engine() : g_(GEOS_init_r()) {}
  ~Engine() { GEOS_finish_r(g_); }
  GEOSGeometry* polygon(const std::vector<Vec>& points) const {
    const auto n = static_cast<unsigned>(points.size());
    GEOSCoordSequence* all = GEOSCoordSeq_create_r(g_, n + 1, 2);
    for (unsigned i = 0; i <= n; ++i) GEOSCoordSeq_setXY_r(g_, all, i, points[i % n].x, points[i % n].y);
    return GEOSGeom_createPolygon_r(g_, GEOSGeom_createLinearRing_r(g_, all), nullptr, 0);
  }
  GEOSGeometry* box(double x0, double y0, double x1, double y1) const {
    return GEOSGeom_createRectangle_r(g_, x0, y0, x1, y1);
  }
  GEOSContextHandle_t handle() const { return g_; }

 private:
  GEOSContextHandle_t g_;
};

std::int64_t parts_kept(GEOSContextHandle_t g, const GEOSGeometry* unit, const GEOSGeometry* ground) {
  GEOSGeometry* left = GEOSIntersection_r(g, unit, ground);
  std::int64_t kept = 0;
  for (int i = 0; i < GEOSGetNumGeometries_r(g, left); ++i) {
    const GEOSGeometry* part = GEOSGetGeometryN_r(g, left, i);
    GEOSGeometry* across = GEOSMinimumWidth_r(g, part);
    double width = 0;
    GEOSLength_r(g, across, &width);
    kept += width >= takeoff::paving::grazing ? 1 : 0;
    GEOSGeom_destroy_r(g, across);
  }
  GEOSGeom_destroy_r(g, left);
  return kept;
}

void every_unit_by_prepared_intersection(benchmark::State& state) {
  const Region ground = region({plaza(0.5e6)});
  const Lattice lattice = herringbone();
  std::vector<Vec> points;
  for (const Point& p : geometry::flatten(ground.polygons()[0].outer.edges())) points.push_back(lattice.to_frame(p));
  double reach = 0;
  for (const Vec& p : points) reach = std::max({reach, std::abs(p.x), std::abs(p.y)});
  Engine engine;
  const GEOSContextHandle_t g = engine.handle();
  for (auto _ : state) {
    Counted sum;
    GEOSGeometry* shape = engine.polygon(points);
    const GEOSPreparedGeometry* ready = GEOSPrepare_r(g, shape);
    for (const auto& kind : lattice.kinds) {
      const int rows = static_cast<int>(reach / lattice.across.y) + 3;
      for (int b = -rows; b <= rows; ++b) {
        const double y = kind.low.y + b * lattice.across.y;
        const double shift = kind.low.x + b * lattice.across.x;
        const int first = static_cast<int>(std::floor((-reach - shift - kind.width) / lattice.along));
        const int last = static_cast<int>(std::ceil((reach - shift) / lattice.along));
        for (int a = first; a <= last; ++a) {
          const double x = shift + a * lattice.along;
          const double s = takeoff::paving::grazing;
          GEOSGeometry* shrunk = engine.box(x + s, y + s, x + kind.width - s, y + kind.height - s);
          if (GEOSPreparedContains_r(g, ready, shrunk) == 1) {
            ++sum.whole;
          } else if (GEOSPreparedIntersects_r(g, ready, shrunk) == 1) {
            GEOSGeometry* unit = engine.box(x, y, x + kind.width, y + kind.height);
            sum.cut += parts_kept(g, unit, shape);
            GEOSGeom_destroy_r(g, unit);
          }
          GEOSGeom_destroy_r(g, shrunk);
        }
      }
    }
    GEOSPreparedGeom_destroy_r(g, ready);
    GEOSGeom_destroy_r(g, shape);
    counted["prepared 0.5 M"] = sum;
  }
}

BENCHMARK(lay_half_a_million)->Unit(benchmark::kMillisecond)->UseRealTime();
BENCHMARK(lay_five_million)->Unit(benchmark::kMillisecond)->UseRealTime();
BENCHMARK(one_corner_moved)->Unit(benchmark::kMillisecond)->UseRealTime();
BENCHMARK(best_of_2000_starts)->Unit(benchmark::kMillisecond)->UseRealTime();
BENCHMARK(every_unit_by_prepared_intersection)->Unit(benchmark::kMillisecond)->Iterations(1)->UseRealTime();

// Shows what Google Benchmark shows, and keeps the times for the ratios.
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
  auto& t = keeper.times;
  for (const auto& [name, count] : counted) {
    std::printf("%-16s whole %lld, cut pieces %lld\n", name.c_str(), static_cast<long long>(count.whole),
                static_cast<long long>(count.cut));
  }
  if (t.contains("every_unit_by_prepared_intersection") && t.contains("lay_half_a_million")) {
    std::printf("prepared intersection per unit / laying, 0.5 M units: %.0f (budget: at least 1000)\n",
                t["every_unit_by_prepared_intersection"] / t["lay_half_a_million"]);
    const Counted l = counted["lay 0.5 M"], p = counted["prepared 0.5 M"];
    std::printf("counts: %s\n", l.whole == p.whole && l.cut == p.cut ? "equal" : "DIFFER");
  }
  if (t.contains("lay_five_million") && t.contains("lay_half_a_million")) {
    std::printf("5 M units / 0.5 M units: %.2f (budget: at most 4)\n", t["lay_five_million"] / t["lay_half_a_million"]);
  }
  if (t.contains("one_corner_moved"))
    std::printf("one corner moved, laid afresh: %.2f ms (budget: 2)\n", t["one_corner_moved"]);
  if (t.contains("best_of_2000_starts")) {
    std::printf("best of 2,000 starts: %.0f ms (budget: 1000)\n", t["best_of_2000_starts"]);
  }
  return 0;
}
