// A job book of 1,000 jobs with 20 versions each: opened and listed, searched, one job and one version read, one edit
// and one version made durable. Budget: open and list under 1 s.
#include <benchmark/benchmark.h>

#include <QtCore/QCoreApplication>
#include <QtCore/QTemporaryDir>
#include <fstream>
#include <sstream>

#include "files/files.h"
#include "files/kept_text.h"
#include "store/job_book.h"

namespace {

plan::Job demo() {
  std::ifstream stream(std::string(HOUSE_ROOT) + "/demo-jobs/pool-terrace-b.json", std::ios::binary);
  std::ostringstream text;
  text << stream.rdbuf();
  return files::read_job(text.str(), "pool-terrace-b.json").value();
}

estimate::Kept kept(std::int64_t number) {
  estimate::Kept made;
  made.currency = "USD";
  made.program = "0.1";
  for (int i = 0; i < 40; ++i) {
    estimate::KeptLine line;
    line.stage = "base";
    line.item = "item-" + std::to_string(i);
    line.description = "Crushed stone, 3/4 in minus, compacted in lifts";
    line.quantity = line.order_quantity = static_cast<double>(number) + i;
    line.unit_price = line.amount = units::Money::of_coins(number * 100 + i);
    line.working = "84.2 m2 x 0.15 m x 1.15 = 14.5 m3";
    made.total += *line.amount;
    made.lines.push_back(std::move(line));
  }
  made.direct = made.price = made.total;
  return made;
}

// 20 versions of each job, in one transaction: each on its own would take the disk minutes.
void put_versions(const std::string& folder) {
  auto database = store::Database::open(folder + "/book.sqlite").value();
  auto transaction = store::Transaction::begin(database).value();
  plan::Job job = demo();
  for (std::int64_t id = 1; id <= 1000; ++id) {
    job.heading.name = "Job " + std::to_string(id);
    auto version = store::new_version(job, kept(0), "Version", "as quoted").value();
    for (int n = 1; n <= 20; ++n) {
      version.kept = kept(id * 20 + n);
      version.kept_text = files::write_kept(version.kept);
      store::put_version(database, id, version).value();
    }
  }
  transaction.commit().value();
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
    put_versions(made);
    return made;
  }();
  return path;
}

void open_and_list_1000_jobs(benchmark::State& state) {
  const std::string& path = thousand();
  for (auto _ : state) {
    auto book = store::JobBook::open(path).value();
    const auto jobs = book.jobs().value();
    if (jobs.size() != 1000 || jobs.front().versions != 20) state.SkipWithError("not 1,000 jobs with 20 versions");
    benchmark::DoNotOptimize(jobs.data());
  }
}
BENCHMARK(open_and_list_1000_jobs)->Unit(benchmark::kMillisecond);

void search_1000_jobs(benchmark::State& state) {
  const auto jobs = store::JobBook::open(thousand()).value().jobs().value();
  for (auto _ : state)
    benchmark::DoNotOptimize(store::arranged(jobs, {.text = "job 1 cust", .by = store::Column::customer}));
}
BENCHMARK(search_1000_jobs)->Unit(benchmark::kMillisecond);

void read_one_of_20000_versions(benchmark::State& state) {
  auto book = store::JobBook::open(thousand()).value();
  const auto id = book.versions(500).value().back().id;
  for (auto _ : state) benchmark::DoNotOptimize(book.version(id).value());
}
BENCHMARK(read_one_of_20000_versions)->Unit(benchmark::kMillisecond);

void one_version_on_the_disk(benchmark::State& state) {
  auto book = store::JobBook::open(thousand()).value();
  const plan::Job job = book.read(501).value();
  std::int64_t n = 0;
  for (auto _ : state) benchmark::DoNotOptimize(book.save_version(501, job, kept(++n), "Version", "").value());
}
BENCHMARK(one_version_on_the_disk)->Unit(benchmark::kMillisecond);

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
