// What programs of other hands read in our files: a script of tests/files run on a file, its JSON.
#pragma once

#include <gtest/gtest.h>
#include <unistd.h>

#include <array>
#include <cstdio>
#include <string>

#include "files/files.h"
#include "files/json_read.h"

namespace other_hands {

inline std::string said_by(const std::string& command) {
  std::string said;
  FILE* pipe = ::popen(command.c_str(), "r");
  if (pipe == nullptr) return said;
  std::array<char, 4096> block{};
  for (std::size_t got = 0; (got = std::fread(block.data(), 1, block.size(), pipe)) > 0;)
    said.append(block.data(), got);
  EXPECT_EQ(::pclose(pipe), 0) << command;
  return said;
}

// `words` follow the file's name. The scripts stand on Debian's own Python and its packages, whatever other one comes
// first on the path.
inline files::Value read(const std::string& script, const std::string& bytes, const std::string& ending,
                         const std::string& words = "") {
  const std::string path = testing::TempDir() + "other-hands-" + std::to_string(::getpid()) + ending;
  EXPECT_TRUE(files::write_file(path, bytes));
  const std::string said =
      said_by("/usr/bin/python3 '" + std::string(HOUSE_ROOT) + "/tests/files/" + script + "' '" + path + "' " + words);
  std::remove(path.c_str());
  const auto value = files::parse_json(said, script);
  EXPECT_TRUE(value) << said.substr(0, 300);
  return value ? *value : files::Value();
}

}  // namespace other_hands
