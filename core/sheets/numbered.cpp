#include "sheets/numbered.h"

#include <vector>

namespace sheets {

namespace {

bool digit(char letter) { return letter >= '0' && letter <= '9'; }

}  // namespace

std::string numbered(const Printed& printed, const std::string& english) {
  std::string pattern;
  std::vector<std::string> numbers;
  for (std::size_t at = 0; at < english.size(); ++at) {
    if (!digit(english[at])) {
      pattern += english[at];
      continue;
    }
    std::string number;
    while (at < english.size() && digit(english[at])) number += english[at++];
    --at;
    numbers.push_back(std::move(number));
    pattern += "%" + std::to_string(numbers.size());
  }
  if (numbers.empty() || numbers.size() > 9) return printed.say(english);
  numbers.resize(9);
  return filled(printed.say(pattern), {numbers[0], numbers[1], numbers[2], numbers[3], numbers[4], numbers[5],
                                       numbers[6], numbers[7], numbers[8]});
}

std::string capital(std::string words) {
  if (!words.empty() && words.front() >= 'a' && words.front() <= 'z')
    words.front() = static_cast<char>(words.front() - 'a' + 'A');
  return words;
}

std::string as_sentence(const Printed& printed, const std::string& english) {
  const std::string said = capital(numbered(printed, english));
  return said.empty() || said.ends_with('.') ? said : said + ".";
}

}  // namespace sheets
