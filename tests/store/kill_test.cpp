// A program killed at any moment: its book opens, is whole, and lacks nothing that was handed over more than a second
// before. GROUNDCOURSE_KILLS says how many programs are killed (10 unless it does); the seed is printed.
#include <gtest/gtest.h>

#include <QtCore/QCoreApplication>
#include <QtCore/QProcess>
#include <cstdlib>
#include <random>
#include <thread>

#include "store/edit_until_killed.h"
#include "store/folder.h"
#include "store/jobs.h"

namespace store {
namespace {

int kills() {
  const char* word = std::getenv("GROUNDCOURSE_KILLS");
  return word == nullptr ? 10 : std::atoi(word);
}

// Lets a program edit until `wait` after its first line, kills it, and gives the last number it printed (0: none).
int killed_after(const std::string& folder, std::chrono::milliseconds wait) {
  QProcess program;
  program.start(QCoreApplication::applicationFilePath(), {edit_until_killed_word, QString::fromStdString(folder)});
  if (!program.waitForReadyRead(60'000)) return 0;
  std::this_thread::sleep_for(wait);
  program.kill();  // SIGKILL: nothing of the program runs any more
  program.waitForFinished(60'000);
  EXPECT_EQ(program.exitStatus(), QProcess::CrashExit) << program.readAllStandardError().toStdString();
  const QList<QByteArray> lines = program.readAllStandardOutput().split('\n');
  return lines.size() < 2 ? 0 : lines[lines.size() - 2].toInt();  // a line half printed is none
}

// The number of the edit after which the job was as it is now; -1 if it never was.
int edit_of(const plan::Job& now, int at_most) {
  plan::Job job = demo_job("pool-terrace-b");
  int found = -1;
  for (int number = 0; number <= at_most; ++number) {
    if (number > 0) job = edited(job, number);
    if (job.elements.size() == now.elements.size() && plan::same(job, now)) found = number;
  }
  return found;
}

TEST(Kill, LosesNothingOlderThanASecond) {
  const auto seed = std::random_device{}();
  std::printf("seed of the moments: %u\n", seed);
  std::mt19937 random(seed);
  std::uniform_int_distribution<int> moment(0, 400);
  const std::string folder = own_folder();
  int lost_at_most = 0;
  for (int run = 0; run < kills(); ++run) {
    const std::string here = folder + "/" + std::to_string(run % 3);  // new books, and ones killed before
    const auto wait = std::chrono::milliseconds(moment(random));
    const int promised = killed_after(here, wait);
    ASSERT_GT(promised, 0) << "run " << run;
    {
      auto database = good(Database::open(here + "/book.sqlite"));
      const auto whole = good(database.rows("PRAGMA integrity_check"));
      EXPECT_EQ(whole.at(0).at(0), Bound(std::string("ok"))) << "run " << run;
      EXPECT_TRUE(good(database.rows("PRAGMA foreign_key_check")).empty()) << "run " << run;
    }
    JobBook book = opened(here);  // the lock of the dead program is taken over
    const auto jobs = good(book.jobs());
    ASSERT_FALSE(jobs.empty());
    const int there = edit_of(good(book.read(jobs.front().id)), promised + 2000);
    EXPECT_GE(there, promised) << "run " << run << ", killed " << wait.count() << " ms after the first line";
    lost_at_most = std::max(lost_at_most, promised - there);
  }
  EXPECT_LE(lost_at_most, 0);
}

}  // namespace
}  // namespace store
