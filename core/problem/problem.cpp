#include "problem/problem.h"

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

static std::string place_in_words(const Place& place) {
  std::string words = place.file;
  if (place.line > 0) words += ":" + std::to_string(place.line);
  if (place.column > 0) words += ":" + std::to_string(place.column);
  if (!place.element.empty()) words += (words.empty() ? "" : ", ") + place.element;
  if (place.at) {
    char point[64];
    std::snprintf(point, sizeof point, "%sat (%.3f, %.3f) m", words.empty() ? "" : " ", place.at->x, place.at->y);
    words += point;
  }
  return words;
}

std::string sentence(const Problem& problem) {
  std::string words = place_in_words(problem.place);
  if (!words.empty()) words += ": ";
  words += problem.text;
  if (!problem.mend.empty()) words += "; " + problem.mend;
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
