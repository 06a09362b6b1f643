// A folder of its own for each test, below the one that XDG_DATA_HOME names.
#pragma once

#include <gtest/gtest.h>

#include <filesystem>
#include <string>

#include "store/database.h"

inline std::string own_folder() {
  const std::string folder =
      store::data_folder() + "-" + ::testing::UnitTest::GetInstance()->current_test_info()->name();
  std::filesystem::create_directories(folder);
  return folder;
}
