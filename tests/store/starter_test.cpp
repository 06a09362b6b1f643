// What is compiled in is what stands in resources/, byte by byte.
#include "store/starter.h"

#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>
#include <iterator>

namespace store {
namespace {

TEST(StarterTexts, AreTheFilesOfTheResources) {
  std::size_t files = 0;
  const auto texts = starter_texts();
  const std::filesystem::path root = HOUSE_ROOT "/resources";
  for (const char* folder : {"catalogue", "patterns"})
    for (const auto& entry : std::filesystem::directory_iterator(root / folder)) {
      std::ifstream file(entry.path(), std::ios::binary);
      const std::string text{std::istreambuf_iterator<char>(file), {}};
      const auto built_in = texts.find(folder + ("/" + entry.path().filename().string()));
      ASSERT_NE(built_in, texts.end()) << entry.path();
      EXPECT_TRUE(built_in->second == text) << entry.path();
      ++files;
    }
  EXPECT_EQ(texts.size(), files);
}

}  // namespace
}  // namespace store
