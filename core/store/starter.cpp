#include "store/starter.h"

#include "store/starter_bytes.h"

namespace store {

std::map<std::string, std::string> starter_texts() {
  std::map<std::string, std::string> texts;
  for (const StarterFile& file : starter_files()) texts[file.path] = std::string(file.bytes, file.bytes + file.size);
  return texts;
}

}  // namespace store
