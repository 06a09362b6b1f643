// The starter catalogue from the folder of resources, for tests.
#pragma once

#include <filesystem>
#include <fstream>
#include <iterator>
#include <map>
#include <stdexcept>
#include <string>

#include "files/files.h"

inline std::map<std::string, std::string> starter_texts_on_disk() {
  std::map<std::string, std::string> texts;
  const std::filesystem::path root = HOUSE_ROOT "/resources";
  for (const char* folder : {"catalogue", "patterns"})
    for (const auto& entry : std::filesystem::directory_iterator(root / folder)) {
      std::ifstream file(entry.path(), std::ios::binary);
      texts[folder + ("/" + entry.path().filename().string())] = {std::istreambuf_iterator<char>(file), {}};
    }
  return texts;
}

inline const catalogue::Catalogue& starter() {
  static const catalogue::Catalogue catalogue = [] {
    auto read = files::read_starter(starter_texts_on_disk());
    if (read) return *read;
    throw std::runtime_error(problem::sentence(read.error()));
  }();
  return catalogue;
}
