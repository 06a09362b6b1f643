// A whole job: read, computed and priced. Row 5 of the speed table (an edit of a house-sized job, all results and
// price) and a job of 1,000 elements. Times print side by side, with the ratio of a thousand elements to the house.
#include <benchmark/benchmark.h>

#include <fstream>
#include <sstream>

#include "files/files.h"
#include "results/results.h"

namespace {

std::string text_of(const std::string& path) {
  std::ifstream stream(path, std::ios::binary);
  std::ostringstream text;
  text << stream.rdbuf();
  return text.str();
}

const std::string& terrace_text() {
  static const std::string text = text_of(std::string(HOUSE_ROOT) + "/demo-jobs/pool-terrace-b.json");
  return text;
}

plan::Job terrace() { return files::read_job(terrace_text(), "pool-terrace-b.json").value(); }

// The terrace's walk, a thousand times in rows 40 ft apart.
plan::Job thousand() {
  plan::Job job = terrace();
  const plan::Element walk = *job.find("W");
  job.elements.clear();
  for (int i = 0; i < 1000; ++i) {
    plan::Element copy = walk;
    copy.id = "W" + std::to_string(i);
    auto& area = std::get<plan::PavedArea>(copy.kind);
    const units::Length dx = units::Length::feet(40) * (i % 40), dy = units::Length::feet(40) * (i / 40);
    for (plan::DrawnRing& ring : area.outline)
      for (geometry::Edge& edge : ring.edges) edge.from = {edge.from.x + dx, edge.from.y + dy};
    area.laying->start = {area.laying->start.x + dx, area.laying->start.y + dy};
    job.elements.push_back(std::make_shared<const plan::Element>(std::move(copy)));
  }
  return job;
}

void house_sized(benchmark::State& state) {
  const auto job = std::make_shared<const plan::Job>(terrace());
  for (auto _ : state) benchmark::DoNotOptimize(results::compute(job));
}
BENCHMARK(house_sized)->Unit(benchmark::kMillisecond);

void house_sized_read(benchmark::State& state) {
  for (auto _ : state) benchmark::DoNotOptimize(files::read_job(terrace_text(), "job.json"));
}
BENCHMARK(house_sized_read)->Unit(benchmark::kMillisecond);

void thousand_elements(benchmark::State& state) {
  const std::string text = files::write_job(thousand());
  for (auto _ : state) {
    auto job = std::make_shared<const plan::Job>(files::read_job(text, "thousand.json").value());
    benchmark::DoNotOptimize(results::compute(std::move(job)));
  }
}
BENCHMARK(thousand_elements)->Unit(benchmark::kMillisecond);

}  // namespace

BENCHMARK_MAIN();
