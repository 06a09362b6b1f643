#include <cstdint>

#include "fuzz/checks.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* bytes, std::size_t size) {
  fuzz::dxf({reinterpret_cast<const char*>(bytes), size});
  return 0;
}
