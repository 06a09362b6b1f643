// A job book of 1,000 jobs: opened and listed, one job read, one edit made durable. Budget: open and list under 1 s.
#include <benchmark/benchmark.h>

#include <QtCore/QCoreApplication>
#include <QtCore/QTemporaryDir>
#include <fstream>
#include <sstream>

#include "files/files.h"
#include "store/job_book.h"

namespace {

plan::Job demo() {
  std::ifstream stream(std::string(HOUSE_ROOT) + "/demo-jobs/pool-terrace-b.json", std::ios::binary);
  std::ostringstream text;
  text << stream.rdbuf();
  return files::read_job(text.str(), "pool-terrace-b.json").value();
}

// The demo job a thousand times, each with a name and every tenth with a catalogue of its own.
const std::string& thousand() {
  static const QTemporaryDir folder;
  static const std::string path = [] {
    const std::string made = folder.path().toStdString() + "/book";
    auto book = store::JobBook::open(made).value();
    plan::Job job = demo();
    for (int i = 0; i < 1000; ++i) {
      job.heading.name = "Job " + std::to_string(i);
      job.heading.customer = "Customer " + std::to_string(i % 300);
      if (i % 10 == 0) {
        auto catalogue = *job.catalogue;
        catalogue.note = "prices of " + std::to_string(i);
        job.catalogue = std::make_shared<const catalogue::Catalogue>(std::move(catalogue));
      }
      book.add(job).value();
    }
    return made;
  }();
  return path;
}

void open_and_list_1000_jobs(benchmark::State& state) {
  const std::string& path = thousand();
  for (auto _ : state) {
    auto book = store::JobBook::open(path).value();
    const auto jobs = book.jobs().value();
    if (jobs.size() != 1000) state.SkipWithError("not 1,000 jobs");
    benchmark::DoNotOptimize(jobs.data());
  }
}
BENCHMARK(open_and_list_1000_jobs)->Unit(benchmark::kMillisecond);

void read_one_of_1000_jobs(benchmark::State& state) {
  auto book = store::JobBook::open(thousand()).value();
  for (auto _ : state) benchmark::DoNotOptimize(book.read(500).value());
}
BENCHMARK(read_one_of_1000_jobs)->Unit(benchmark::kMillisecond);

void one_edit_on_the_disk(benchmark::State& state) {
  auto book = store::JobBook::open(thousand()).value();
  plan::Job job = book.read(500).value();
  plan::Element element = *job.elements.front();
  int n = 0;
  for (auto _ : state) {
    element.name = "edit " + std::to_string(++n);
    job = plan::with(job, element);
    book.write(500, std::make_shared<const plan::Job>(job));
    if (!book.settle()) state.SkipWithError("not written");
  }
}
BENCHMARK(one_edit_on_the_disk)->Unit(benchmark::kMillisecond);

}  // namespace

int main(int count, char** words) {
  const QCoreApplication application(count, words);
  benchmark::Initialize(&count, words);
  benchmark::RunSpecifiedBenchmarks();
  return 0;
}
