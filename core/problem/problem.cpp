#include "problem/problem.h"

#include <charconv>
#include <cstdio>
#include <cstdlib>

#include "problem/ensure.h"

namespace problem {

std::string word(Severity severity) {
  switch (severity) {
    case Severity::notice: return "notice";
    case Severity::flag: return "flag";
    case Severity::problem: return "problem";
  }
  return {};
}

// With a file as tools print it, so that editors jump there; without one in words.
static std::string line_and_column(const Place& place) {
  if (!place.file.empty()) {
    return (place.line > 0 ? ":" + std::to_string(place.line) : "") +
           (place.column > 0 ? ":" + std::to_string(place.column) : "");
  }
  std::string words = place.line > 0 ? "line " + std::to_string(place.line) : "";
  if (place.column > 0) words += (words.empty() ? "column " : ", column ") + std::to_string(place.column);
  return words;
}

// Not printf, whose decimal mark follows the locale.
static std::string to_the_millimetre(double metres) {
  char text[400];
  const auto end = std::to_chars(text, text + sizeof text, metres, std::chars_format::fixed, 3).ptr;
  const std::string digits(text, end);
  return digits == "-0.000" ? "0.000" : digits;
}

static std::string place_in_words(const Place& place) {
  std::string words = place.file + line_and_column(place);
  if (!place.element.empty()) words += (words.empty() ? "" : ", ") + place.element;
  if (place.at) {
    words += words.empty() ? "at (" : " at (";
    words += to_the_millimetre(place.at->x) + ", " + to_the_millimetre(place.at->y) + ") m";
  }
  return words;
}

std::string sentence(const Problem& problem) {
  std::string words = place_in_words(problem.place);
  if (!words.empty()) words += ": ";
  words += problem.text;
  if (!problem.mend.empty()) words += "; " + problem.mend;
  // What is quoted of a file may have control letters of its own: the sentence stays on one line.
  for (char& letter : words)
    if (static_cast<unsigned char>(letter) < 0x20) letter = ' ';
  return words;
}

std::unexpected<Problem> fault(std::string code, std::string text, std::string mend, Place place) {
  return std::unexpected(
      Problem{Severity::problem, std::move(code), std::move(text), std::move(mend), std::move(place)});
}

Problem in_element(Problem problem, const std::string& element) {
  if (problem.place.element.empty()) problem.place.element = element;
  return problem;
}

Problem in_file(Problem problem, const std::string& file) {
  if (problem.place.file.empty()) problem.place.file = file;
  return problem;
}

void ensure(bool holds, const char* promise, std::source_location where) {
  if (holds) return;
  std::fprintf(stderr, "groundcourse stopped: %s (%s:%u). The job on disk is unharmed.\n", promise, where.file_name(),
               static_cast<unsigned>(where.line()));
  std::abort();
}

}  // namespace problem
