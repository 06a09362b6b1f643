#include "files/dxf_put.h"

#include <fmt/format.h>

#include <algorithm>
#include <utility>

#include "units/number.h"

namespace files {

namespace {

// The number of the letter at the front of a UTF-8 text, and how many bytes it takes; a byte that is none stands for
// "?".
std::pair<std::uint32_t, std::size_t> letter_at(std::string_view text) {
  const auto byte = [&](std::size_t i) -> std::uint32_t { return static_cast<unsigned char>(text[i]); };
  const std::uint32_t first = byte(0);
  const std::size_t length = first < 0x80 ? 1 : first < 0xC0 ? 0 : first < 0xE0 ? 2 : first < 0xF0 ? 3 : 4;
  if (length == 0 || length > text.size()) return {'?', 1};
  if (length == 1) return {first, 1};
  std::uint32_t letter = first & (0x7Fu >> length);
  for (std::size_t i = 1; i < length; ++i) letter = letter << 6 | (byte(i) & 0x3F);
  return {letter, length};
}

std::string by_number(std::uint32_t letter) {
  return letter > 0xFFFF ? "?" : fmt::format("\\U+{:04X}", letter);  // four digits are all there is room for
}

}  // namespace

std::string dxf_string(std::string_view text) {
  std::string made;
  while (!text.empty()) {
    const auto [letter, length] = letter_at(text);
    text.remove_prefix(length);
    if (letter < 0x20 || letter == 0x7F)
      made += ' ';
    else if (letter > 0x7E || letter == '\\' || letter == '^' || (letter == '%' && made.ends_with('%')))
      made += by_number(letter);
    else
      made += static_cast<char>(letter);
  }
  return made;
}

std::string dxf_layer_name(std::string_view text) {
  std::string plain(text);
  std::ranges::replace_if(
      plain, [](char letter) { return std::string_view("<>/\\\":;?*|=,'`").contains(letter); }, '-');
  std::string made = dxf_string(plain.substr(0, 200));
  return made.empty() ? "-" : made;
}

void DxfPut::text(int code, std::string_view value) {
  made += std::to_string(code);
  made += '\n';
  made += value;
  made += '\n';
}
void DxfPut::whole(int code, std::int64_t value) { text(code, std::to_string(value)); }
void DxfPut::number(int code, double value) {
  std::string written = units::write_number(value);
  if (written.find_first_of(".e") == std::string::npos) written += ".0";
  text(code, written);
}
void DxfPut::handle(int code, Handle handle) { text(code, fmt::format("{:X}", handle)); }

void DxfPut::object(std::string_view type, Handle handle, Handle owner,
                    std::initializer_list<std::string_view> classes) {
  text(0, type);
  this->handle(type == "DIMSTYLE" ? 105 : 5, handle);
  this->handle(330, owner);
  for (const std::string_view one : classes) text(100, one);
}

}  // namespace files
