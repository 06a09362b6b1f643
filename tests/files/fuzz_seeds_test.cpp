// The seeds of the fuzzers as tests: each as it is, cut short, and with bytes changed.
#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <random>

#include "fuzz/checks.h"

namespace {

struct Target {
  const char* folder;
  void (*check)(std::string_view);
  std::size_t seeds;  // at least
};
void PrintTo(const Target& target, std::ostream* out) { *out << target.folder; }

std::vector<std::string> seeds(const std::string& folder) {
  std::vector<std::filesystem::path> paths;
  for (const auto& file : std::filesystem::directory_iterator(std::string(HOUSE_ROOT) + "/tests/fuzz/seeds/" + folder))
    paths.push_back(file.path());
  std::ranges::sort(paths);
  std::vector<std::string> texts;
  for (const auto& path : paths) texts.push_back(files::read_file(path.string()).value());
  return texts;
}

class FuzzSeeds : public testing::TestWithParam<Target> {};

TEST_P(FuzzSeeds, HoldWholeShortAndChanged) {
  const std::vector<std::string> all = seeds(GetParam().folder);
  ASSERT_GE(all.size(), GetParam().seeds);
  std::mt19937 random(20261129);
  for (const std::string& seed : all) {
    GetParam().check(seed);
    for (std::size_t size = 0; size < seed.size(); size += 1 + seed.size() / 100)
      GetParam().check(std::string_view(seed).substr(0, size));
    for (int round = 0; round < 100; ++round) {
      std::string changed = seed;
      for (int i = 0; i <= round % 4; ++i) changed[random() % changed.size()] = static_cast<char>(random() % 256);
      GetParam().check(changed);
    }
  }
}

INSTANTIATE_TEST_SUITE_P(Targets, FuzzSeeds,
                         testing::Values(Target{"dxf", fuzz::dxf, 5}, Target{"csv", fuzz::csv, 4},
                                         Target{"picture", fuzz::picture, 4}),
                         [](const auto& of) { return std::string(of.param.folder); });

// Those that were made whole are read, so that the changed ones start from something.
TEST(FuzzSeed, WholeOnesAreRead) {
  int read = 0;
  for (const std::string& text : seeds("dxf"))
    read += files::import_dxf(text, "seed.dxf", "", {{"*", "removal"}}).has_value() ? 1 : 0;
  EXPECT_EQ(read, 4) << "all but the block inside itself";
  read = 0;
  for (const std::string& bytes : seeds("picture")) read += files::picture_header(bytes).has_value() ? 1 : 0;
  EXPECT_EQ(read, 3) << "all but the one without a frame";
  read = 0;
  for (const std::string& text : seeds("csv"))
    read += files::import_survey(text, "seed.csv", "m", {}).has_value() ? 1 : 0;
  EXPECT_EQ(read, 2);
}

}  // namespace
