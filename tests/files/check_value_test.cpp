// The check value of a job file. Expected values are Python's: '%08x' % zlib.crc32(line.encode()).
#include <gtest/gtest.h>

#include <random>

#include "files/check_value.h"
#include "files/files.h"

namespace {

std::string demo_text() { return files::read_file(std::string(HOUSE_ROOT) + "/demo-jobs/bakery-court.json").value(); }

problem::Problem fault(const std::string& text) {
  const auto job = files::read_job(text, "job.json");
  return job ? problem::Problem{} : job.error();
}

std::string value_of(const std::string& text) {
  return files::check_value(files::parse_json(text, "job.json").value());
}

TEST(CheckValue, IsTheCrcOfTheFileOnOneLine) {
  EXPECT_EQ(value_of(R"({"groundcourse": 1, "elements": []})"), "d45665ab");
  EXPECT_EQ(value_of(R"({"groundcourse": 1, "heading": {"name": "Peña"}, "elements": []})"), "62ea76d2");
}

TEST(CheckValue, LeavesItselfOutAndDoesNotMindTheLayOut) {
  EXPECT_EQ(value_of("{\n\"groundcourse\":1,\"check\":\"12345678\",\n\t\"elements\" : [ ]\n}"), "d45665ab");
  EXPECT_EQ(fault("{\"check\":\"d45665ab\",\"groundcourse\":1,\"elements\":[]}").code, "");
}

TEST(CheckValue, AFileThatWasAlteredIsRefusedAndReadWithoutTheField) {
  const std::string altered = R"({"groundcourse": 1, "choices": {"kerf": 1000}, "elements": [], "check": "d45665ab"})";
  const problem::Problem found = fault(altered);
  EXPECT_EQ(found.code, "check-differs");
  EXPECT_EQ(found.place.line, 1);
  EXPECT_EQ(found.place.column, static_cast<int>(altered.find("\"d45665ab\"")) + 1);
  EXPECT_NE(found.mend.find("take out its field \"check\""), std::string::npos);
  const auto taken = files::read_job(R"({"groundcourse": 1, "choices": {"kerf": 1000}, "elements": []})", "job.json");
  ASSERT_TRUE(taken);
  EXPECT_EQ(taken->choices.kerf, units::Length::of_steps(1000));
}

TEST(CheckValue, AnyOtherFaultIsSaidFirst) {
  EXPECT_EQ(fault(R"({"groundcourse": 1, "elements": [{"id": "a", "kind": "lawn"}], "check": "d45665ab"})").code,
            "kind-unknown");
  EXPECT_EQ(fault(R"({"groundcourse": 1, "check": 5})").code, "json-type");
}

TEST(CheckValue, TheDemoJobsStandAsTheyAreWritten) {
  for (const char* name : {"bakery-court", "pool-terrace-a", "pool-terrace-b"}) {
    const std::string text = files::read_file(std::string(HOUSE_ROOT) + "/demo-jobs/" + name + ".json").value();
    const auto job = files::read_job(text, name);
    ASSERT_TRUE(job) << problem::sentence(job.error());
    EXPECT_TRUE(files::write_job(*job) == text) << name;
  }
}

// Each is refused with a sentence and a place, or reads as the same job.
TEST(CheckValue, FiveHundredTurnedBitsAndAsManyCutsAreAllSaidOrWithoutEffect) {
  const std::string text = demo_text();
  const plan::Job job = files::read_job(text, "job.json").value();
  std::mt19937 random(20261129);
  int said[2] = {0, 0}, same = 0;
  for (int i = 0; i < 1000; ++i) {
    std::string damaged = text;
    const std::size_t at = random() % text.size();
    if (i % 2 == 0)
      damaged.resize(at);
    else
      damaged[at] = static_cast<char>(damaged[at] ^ (1 << random() % 8));
    const auto read = files::read_job(damaged, "job.json");
    if (read) {
      EXPECT_TRUE(plan::same(*read, job)) << "byte " << at;
      ++same;
      continue;
    }
    ++said[i % 2];
    EXPECT_GE(read.error().place.line, 1);
    EXPECT_FALSE(read.error().text.empty() || read.error().mend.empty());
  }
  EXPECT_EQ(said[0] + said[1] + same, 1000);
  EXPECT_GT(said[1], 400) << "most of a file is no blank";
}

}  // namespace
