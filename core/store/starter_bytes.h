// The files of resources/ as they were when the program was built; the .cpp of this header is made by
// resources/embed.cmake.
#pragma once

#include <cstddef>
#include <vector>

namespace store {

struct StarterFile {
  const char* path;  // "catalogue/items.csv"
  const unsigned char* bytes;
  std::size_t size;
};

const std::vector<StarterFile>& starter_files();

}  // namespace store
