// A program killed at any moment while it saves versions: the book opens and is whole, every version in it is whole,
// and each that was called saved is there. GROUNDCOURSE_KILLS says how many programs are killed (10 unless it does);
// the seed is printed.
#include <gtest/gtest.h>

#include <QtCore/QCoreApplication>
#include <QtCore/QProcess>
#include <cstdlib>
#include <random>
#include <thread>

#include "store/folder.h"
#include "store/jobs.h"
#include "store/save_until_killed.h"

namespace store {
namespace {

int kills() {
  const char* word = std::getenv("GROUNDCOURSE_KILLS");
  return word == nullptr ? 10 : std::atoi(word);
}

// Lets a program save until `wait` after it called the first one saved, kills it, and gives the last that it called so.
std::int64_t killed_after(const std::string& folder, std::chrono::milliseconds wait) {
  QProcess program;
  program.start(QCoreApplication::applicationFilePath(), {save_until_killed_word, QString::fromStdString(folder)});
  if (!program.waitForReadyRead(60'000)) return 0;
  std::this_thread::sleep_for(wait);
  program.kill();  // SIGKILL: nothing of the program runs any more
  program.waitForFinished(60'000);
  EXPECT_EQ(program.exitStatus(), QProcess::CrashExit) << program.readAllStandardError().toStdString();
  const QList<QByteArray> lines = program.readAllStandardOutput().split('\n');
  return lines.size() < 2 ? 0 : lines[lines.size() - 2].toLongLong();  // a line half printed is none
}

void expect_whole(const std::string& folder) {
  auto database = good(Database::open(folder + "/book.sqlite"));
  EXPECT_EQ(good(database.rows("PRAGMA integrity_check")).at(0).at(0), Bound(std::string("ok")));
  EXPECT_TRUE(good(database.rows("PRAGMA foreign_key_check")).empty());
}

// The versions from `from` on are those that were saved, numbered without a gap.
void expect_versions(JobBook& book, std::int64_t from) {
  const auto versions = good(book.versions(good(book.jobs()).front().id));
  for (std::size_t i = 0; i < versions.size(); ++i) {
    const std::int64_t n = static_cast<std::int64_t>(versions.size() - i);
    ASSERT_EQ(versions[i].number, n);
    if (n < from) break;
    const Version version = good(book.version(versions[i].id));  // its hash fits, or it is refused
    EXPECT_EQ(version.row.name, name_of_version(n));
    EXPECT_TRUE(plan::same(version.job, job_of_version(n))) << n;
    EXPECT_EQ(version.kept, kept_of_version(n)) << n;
  }
}

TEST(VersionKill, NoneIsHalfAndNoneThatWasCalledSavedIsLost) {
  const auto seed = std::random_device{}();
  std::printf("seed of the moments: %u\n", seed);
  std::mt19937 random(seed);
  std::uniform_int_distribution<int> moment(0, 180);
  const std::string folder = own_folder();
  std::int64_t before[3] = {0, 0, 0}, called = 0;
  int lost = 0;
  for (int run = 0; run < kills(); ++run) {
    const auto place = static_cast<std::size_t>(run % 3);  // new books, and ones killed before
    const std::string here = folder + "/" + std::to_string(place);
    const std::int64_t promised = killed_after(here, std::chrono::milliseconds(moment(random)));
    ASSERT_GT(promised, before[place]) << "run " << run;
    expect_whole(here);
    JobBook book = opened(here);  // the lock of the dead program is taken over
    const JobRow job = good(book.jobs()).front();
    if (job.versions < promised) ++lost;
    EXPECT_LE(job.versions, promised + 1) << "run " << run;  // at most the one that was in hand
    expect_versions(book, before[place] + 1);
    called += promised - before[place];
    before[place] = job.versions;
  }
  EXPECT_EQ(lost, 0);
  std::printf("%d programs killed, %lld versions called saved, %d lost\n", kills(), static_cast<long long>(called),
              lost);
}

}  // namespace
}  // namespace store
