// How fast the ground is made through 8,000 levels, and how fast the earth between it and 30 areas is taken. Budgets:
// 60 ms and 20 ms.
#include <benchmark/benchmark.h>

#include <cmath>
#include <cstdio>
#include <random>

#include "geometry/surface.h"

namespace {

using geometry::Facet;
using geometry::Spot;
using geometry::Surface;

geometry::Point at(double x, double y) {
  return {units::Length::nearest(units::Metres(x)), units::Length::nearest(units::Metres(y))};
}

std::vector<Spot> spots() {
  std::mt19937_64 random(7);
  std::uniform_real_distribution<double> across(0, 120), height(-0.05, 0.05);
  std::vector<Spot> all;
  for (int i = 0; i < 8000; ++i) {
    const double x = across(random), y = across(random);
    all.push_back({at(x, y), 100 + 0.5 * std::sin(x / 15) + 0.02 * y + height(random)});
  }
  return all;
}

// Thirty areas of 30 slices about a middle, each falling 2 %.
std::vector<Surface> areas() {
  std::vector<Surface> all;
  for (int i = 0; i < 30; ++i) {
    std::vector<Facet> facets;
    const geometry::Vec middle{10.0 + 20 * (i % 6), 12.0 + 24 * (i / 6.0 - (i % 6) / 6.0)};
    for (int k = 0; k < 30; ++k) {
      const auto rim = [&](int n) {
        const double a = 2 * M_PI * n / 30;
        return middle + 8.0 * geometry::Vec{std::cos(a), std::sin(a)};
      };
      facets.push_back({{middle, rim(k), rim(k + 1)}, {100, 0.02, 0}});
    }
    all.emplace_back(at(0, 0), std::move(facets));
  }
  return all;
}

void through_8000(benchmark::State& state) {
  const auto all = spots();
  for (auto _ : state) benchmark::DoNotOptimize(geometry::through(all, 50));
}
BENCHMARK(through_8000)->Unit(benchmark::kMillisecond);

void between_30_areas(benchmark::State& state) {
  const auto ground = geometry::through(spots(), 50);
  const auto digs = areas();
  for (auto _ : state)
    for (const Surface& dig : digs) benchmark::DoNotOptimize(geometry::between(*ground, dig));
}
BENCHMARK(between_30_areas)->Unit(benchmark::kMillisecond);

void between_30_areas_the_other_way(benchmark::State& state) {
  const auto ground = geometry::through(spots(), 50);
  const auto digs = areas();
  for (auto _ : state)
    for (const Surface& dig : digs) benchmark::DoNotOptimize(geometry::between(dig, *ground));
}
BENCHMARK(between_30_areas_the_other_way)->Unit(benchmark::kMillisecond);

}  // namespace

BENCHMARK_MAIN();
