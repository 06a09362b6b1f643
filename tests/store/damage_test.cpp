// Books and job files that were cut off or had one bit turned, and books killed while they get a new form.
// GROUNDCOURSE_DAMAGED says how many of each (20 unless it does), GROUNDCOURSE_KILLS how many are killed (10).
#include <QtCore/QCoreApplication>
#include <QtCore/QProcess>
#include <chrono>
#include <cstdlib>
#include <fstream>
#include <random>
#include <sstream>
#include <thread>

#include "files/files.h"
#include "store/copy.h"
#include "store/folder.h"
#include "store/jobs.h"
#include "store/migrations.h"
#include "store/read_all.h"
#include "store/save_until_killed.h"

namespace store {
namespace {

namespace fs = std::filesystem;

int from_environment(const char* name, int usual) {
  const char* word = std::getenv(name);
  return word == nullptr ? usual : std::atoi(word);
}

std::string bytes_of(const std::string& path) {
  std::stringstream text;
  text << std::ifstream(path, std::ios::binary).rdbuf();
  return text.str();
}

void write_bytes(const std::string& path, const std::string& bytes) {
  std::ofstream(path, std::ios::binary).write(bytes.data(), static_cast<std::streamsize>(bytes.size()));
}

struct Told {
  bool crashed = false, late = false;
  int code = 0;
  std::string out, fault;
};

Told ran(const char* word, const std::string& what) {
  QProcess program;
  program.start(QCoreApplication::applicationFilePath(), {word, QString::fromStdString(what)});
  Told told_here;
  told_here.late = !program.waitForFinished(20'000);
  if (told_here.late) {
    program.kill();
    program.waitForFinished(5'000);
  }
  told_here.crashed = program.exitStatus() == QProcess::CrashExit;
  told_here.code = program.exitCode();
  told_here.out = program.readAllStandardOutput().toStdString();
  told_here.fault = program.readAllStandardError().toStdString();
  return told_here;
}

std::string damaged(const std::string& whole, bool cut, std::mt19937& random) {
  const auto below = [&](std::size_t end) { return std::uniform_int_distribution<std::size_t>(0, end - 1)(random); };
  if (cut) return whole.substr(0, below(whole.size()));
  std::string turned = whole;
  char& byte = turned[below(turned.size())];
  byte = static_cast<char>(byte ^ (1 << below(8)));
  return turned;
}

struct Counts {
  int said = 0, harmless = 0, changed = 0;
};

// `whole` is what the program printed of the file as it was; of several lines only the first, that of what is kept for
// ever, must never change unsaid.
void look(const Told& now, const std::string& whole, Counts& counts, const std::string& where) {
  ASSERT_FALSE(now.late) << where;
  ASSERT_FALSE(now.crashed) << where << now.fault;
  if (now.code == told) {
    ++counts.said;
    EXPECT_GT(now.fault.size(), 20U) << where;
    return;
  }
  ASSERT_EQ(now.code, 0) << where << now.fault;
  now.out == whole ? ++counts.harmless : ++counts.changed;
}

void print(const char* what, const Counts& counts) {
  std::printf("%s: %d said, %d without effect, %d changed the job unsaid\n", what, counts.said, counts.harmless,
              counts.changed);
}

class Damage : public ::testing::TestWithParam<bool> {};  // true: cut off, false: one bit turned

TEST_P(Damage, OfABookIsSaidAndNoVersionChangesUnsaid) {
  const auto seed = std::random_device{}();
  std::printf("seed: %u\n", seed);
  std::mt19937 random(seed);
  const std::string folder = own_folder() + (GetParam() ? "cut" : "bit");
  {
    JobBook book = opened(folder);
    const auto id = good(book.add(demo_job("bakery-court")));
    for (int n = 1; n < 6; ++n)
      good(book.save_version(id, job_of_version(n), kept_of_version(n), name_of_version(n), ""));
  }
  const std::string whole = ran(read_all_word, folder).out;
  ASSERT_EQ(whole.size(), 130U);  // two hashes of 64 digits
  const std::string bytes = bytes_of(folder + "/book.sqlite");
  Counts counts;
  for (int run = 0; run < from_environment("GROUNDCOURSE_DAMAGED", 20); ++run) {
    fs::remove_all(folder);
    fs::create_directories(folder);
    write_bytes(folder + "/book.sqlite", damaged(bytes, GetParam(), random));
    const Told now = ran(read_all_word, folder);
    look(now, whole, counts, "run " + std::to_string(run) + " ");
    if (now.code == 0 && !(GetParam() && now.out.starts_with(whole.substr(0, 64)))) {
      EXPECT_EQ(now.out.substr(0, 64), whole.substr(0, 64)) << "run " << run;
    }
  }
  print(GetParam() ? "books cut off" : "books with a bit turned", counts);
}

TEST_P(Damage, OfAJobFileIsSaidAndCrashesNothing) {
  const auto seed = std::random_device{}();
  std::printf("seed: %u\n", seed);
  std::mt19937 random(seed);
  const std::string path = own_folder() + (GetParam() ? "cut" : "bit") + ".json";
  const std::string bytes = files::write_job(demo_job("pool-terrace-a"));
  write_bytes(path, bytes);
  const std::string whole = ran(read_job_word, path).out;
  ASSERT_EQ(whole.size(), 65U);
  Counts counts;
  for (int run = 0; run < from_environment("GROUNDCOURSE_DAMAGED", 20); ++run) {
    write_bytes(path, damaged(bytes, GetParam(), random));
    look(ran(read_job_word, path), whole, counts, "run " + std::to_string(run) + " ");
  }
  if (GetParam()) {
    EXPECT_EQ(counts.changed, 0);
  }
  print(GetParam() ? "job files cut off" : "job files with a bit turned", counts);
}

INSTANTIATE_TEST_SUITE_P(Of, Damage, ::testing::Bool(),
                         [](const auto& one) { return one.param ? "CutOff" : "BitTurned"; });

TEST(NewFormKill, LeavesTheOldFormOrTheNewOneWhole) {
  const auto seed = std::random_device{}();
  std::printf("seed of the moments: %u\n", seed);
  std::mt19937 random(seed);
  const std::string folder = own_folder(), path = folder + "/book.sqlite";
  std::int64_t id = 0;
  {
    JobBook book = opened(folder);
    id = good(book.add(demo_job("bakery-court")));
  }
  back_to_form(path, 3);
  const std::string old = bytes_of(path);
  const auto begun = std::chrono::steady_clock::now();
  ASSERT_EQ(ran(open_word, folder).code, 0);
  const auto whole = std::chrono::duration_cast<std::chrono::milliseconds>(std::chrono::steady_clock::now() - begun);
  std::uniform_int_distribution<long> moment(0, whole.count());
  int olds = 0, news = 0;
  for (int run = 0; run < from_environment("GROUNDCOURSE_KILLS", 10); ++run) {
    fs::remove_all(folder);
    fs::create_directories(folder);
    write_bytes(path, old);
    QProcess program;
    program.start(QCoreApplication::applicationFilePath(), {open_word, QString::fromStdString(folder)});
    program.waitForStarted();
    std::this_thread::sleep_for(std::chrono::milliseconds(moment(random)));
    program.kill();
    program.waitForFinished(20'000);
    {
      auto database = good(Database::open(path));
      well(check_whole(database));
      const int form = good(database.form());
      EXPECT_TRUE(form == 3 || form == newest_form()) << form;
      form == 3 ? ++olds : ++news;
    }
    JobBook book = opened(folder);
    EXPECT_TRUE(plan::same(good(book.read(id)), demo_job("bakery-court"))) << "run " << run;
  }
  std::printf("%d had the old form, %d the new one\n", olds, news);
  EXPECT_GT(olds, 0);
}

}  // namespace
}  // namespace store
