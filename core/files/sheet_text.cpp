#include "files/sheet_text.h"

namespace files {

namespace {
bool begins_letter(char byte) { return (static_cast<unsigned char>(byte) & 0xC0u) != 0x80; }

std::vector<std::string> words_of(std::string_view text) {
  std::vector<std::string> words;
  std::string word;
  const auto close = [&] {
    if (!word.empty()) words.push_back(std::move(word));
    word.clear();
  };
  for (const char letter : text) {
    if (letter == ' ' || letter == '\n' || letter == '\r' || letter == '\t')
      close();
    else if (static_cast<unsigned char>(letter) >= 0x20 && letter != 0x7F)
      word += letter;
  }
  close();
  return words;
}
}  // namespace

std::size_t columns_of(std::string_view text) {
  std::size_t columns = 0;
  for (const char byte : text) columns += begins_letter(byte) ? 1U : 0U;
  return columns;
}

std::string at_left(std::string_view text, std::size_t columns) {
  const std::size_t own = columns_of(text);
  return std::string(text) + std::string(own < columns ? columns - own : 0, ' ');
}

std::string at_right(std::string_view text, std::size_t columns) {
  const std::size_t own = columns_of(text);
  return std::string(own < columns ? columns - own : 0, ' ') + std::string(text);
}

std::string cut(std::string_view text, std::size_t columns) {
  if (columns_of(text) <= columns) return std::string(text);
  std::string kept;
  std::size_t taken = 0;
  for (const char byte : text) {
    if (begins_letter(byte) && ++taken + 3 > columns) break;
    kept += byte;
  }
  return kept + "...";
}

std::string wrapped(std::string_view text, std::string_view first, std::size_t others) {
  std::string made;
  std::string line(first);
  bool empty = true;
  for (const std::string& word : words_of(text)) {
    if (!empty && columns_of(line) + 1 + columns_of(word) > sheet_width) {
      made += line + "\n";
      line = std::string(others, ' ');
      empty = true;
    }
    line += (empty ? "" : " ") + word;
    empty = false;
  }
  return made + line + "\n";
}

std::string section(std::string_view title) {
  return "\n" + std::string(title) + "\n" + std::string(sheet_width, '-') + "\n";
}

}  // namespace files
