// Books and job files that were cut off or had one bit turned, and books killed while they get a new form.
// A full disk. GROUNDCOURSE_DAMAGED says how many of each (40 unless it does), GROUNDCOURSE_KILLS how many of each form
// are killed (5).
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
#include "store/small_disk.h"

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
  if (cut) return whole.substr(0, 1 + below(whole.size() - 1));  // of nothing at all a new book is made
  std::string turned = whole;
  char& byte = turned[below(turned.size())];
  byte = static_cast<char>(byte ^ (1 << below(8)));
  return turned;
}

struct Counts {
  int said = 0, harmless = 0;
};

// `whole` is what the program printed of the file as it was: it is printed again, or a fault is said.
void look(const Told& now, const std::string& whole, Counts& counts, const std::string& where) {
  ASSERT_FALSE(now.late) << where;
  ASSERT_FALSE(now.crashed) << where << now.fault;
  if (now.code == told) {
    ++counts.said;
    EXPECT_GT(now.fault.size(), 20U) << where;
    return;
  }
  ASSERT_EQ(now.code, 0) << where << now.fault;
  EXPECT_EQ(now.out, whole) << where;
  ++counts.harmless;
}

void print(const char* what, const Counts& counts) {
  std::printf("%s: %d said, %d without effect\n", what, counts.said, counts.harmless);
}

class Damage : public ::testing::TestWithParam<bool> {};  // true: cut off, false: one bit turned

TEST_P(Damage, OfABookIsSaidAndNothingInItChangesUnsaid) {
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
  ASSERT_EQ(whole.size(), 195U);  // three hashes of 64 digits
  const std::string bytes = bytes_of(folder + "/book.sqlite");
  Counts counts;
  for (int run = 0; run < from_environment("GROUNDCOURSE_DAMAGED", 40); ++run) {
    fs::remove_all(folder);
    fs::create_directories(folder);
    write_bytes(folder + "/book.sqlite", damaged(bytes, GetParam(), random));
    look(ran(read_all_word, folder), whole, counts, "run " + std::to_string(run) + " ");
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
  for (int run = 0; run < from_environment("GROUNDCOURSE_DAMAGED", 40); ++run) {
    write_bytes(path, damaged(bytes, GetParam(), random));
    look(ran(read_job_word, path), whole, counts, "run " + std::to_string(run) + " ");
  }
  print(GetParam() ? "job files cut off" : "job files with a bit turned", counts);
}

INSTANTIATE_TEST_SUITE_P(Of, Damage, ::testing::Bool(),
                         [](const auto& one) { return one.param ? "CutOff" : "BitTurned"; });

TEST(FullDisk, RefusesWithItsReasonLosesNothingAndGoesOnWithRoomAgain) {
  const Told now = ran(small_disk_word, own_folder());
  ASSERT_FALSE(now.late || now.crashed) << now.out << now.fault;
  if (now.code == no_disk) GTEST_SKIP() << "no small disk can be had here: neither root nor a world of one's own";
  EXPECT_EQ(now.code, 0) << now.out << now.fault;
  EXPECT_NE(now.out.find("with room again all was written"), std::string::npos) << now.out;
}

class NewFormKill : public ::testing::TestWithParam<int> {};  // the form that the book has before

// Opens the book of an older form and kills the program after `wait`.
void kill_while_opening(const std::string& folder, std::chrono::milliseconds wait) {
  QProcess program;
  program.start(QCoreApplication::applicationFilePath(), {open_word, QString::fromStdString(folder)});
  program.waitForStarted();
  std::this_thread::sleep_for(wait);
  program.kill();
  program.waitForFinished(20'000);
}

TEST_P(NewFormKill, LeavesTheOldFormOrTheNewOneWhole) {
  const auto seed = std::random_device{}();
  std::printf("seed of the moments: %u\n", seed);
  std::mt19937 random(seed);
  const std::string folder = own_folder() + std::to_string(GetParam()), path = folder + "/book.sqlite";
  std::int64_t id = 0;
  {
    JobBook book = opened(folder);
    id = good(book.add(demo_job("bakery-court")));
  }
  back_to_form(path, GetParam());
  const std::string old = bytes_of(path);
  const auto begun = std::chrono::steady_clock::now();
  ASSERT_EQ(ran(open_word, folder).code, 0);
  const auto whole = std::chrono::duration_cast<std::chrono::milliseconds>(std::chrono::steady_clock::now() - begun);
  std::uniform_int_distribution<long> moment(0, whole.count());
  int olds = 0, news = 0;
  for (int run = 0; run < from_environment("GROUNDCOURSE_KILLS", 5); ++run) {
    fs::remove_all(folder);
    fs::create_directories(folder);
    write_bytes(path, old);
    kill_while_opening(folder, std::chrono::milliseconds(moment(random)));
    {
      auto database = good(Database::open(path));
      well(check_whole(database));
      const int form = good(database.form());
      EXPECT_TRUE(form == GetParam() || form == newest_form()) << form;
      form == GetParam() ? ++olds : ++news;
    }
    JobBook book = opened(folder);
    EXPECT_TRUE(plan::same(good(book.read(id)), demo_job("bakery-court"))) << "run " << run;
  }
  std::printf("form %d: %d had the old form, %d the new one\n", GetParam(), olds, news);
}

INSTANTIATE_TEST_SUITE_P(Of, NewFormKill, ::testing::Values(3, 6),
                         [](const auto& one) { return "Form" + std::to_string(one.param); });

}  // namespace
}  // namespace store
