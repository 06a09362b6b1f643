#include "files/check_value.h"

#include <boost/crc.hpp>

#include "files/json_write.h"

namespace files {

std::string check_value(const Value& object) {
  const std::string line = write_on_one_line(object, check_field);
  boost::crc_32_type crc;
  crc.process_bytes(line.data(), line.size());
  constexpr std::string_view hex = "0123456789abcdef";
  std::string digits;
  for (int shift = 28; shift >= 0; shift -= 4) digits += hex[(crc.checksum() >> shift) & 15];
  return digits;
}

}  // namespace files
