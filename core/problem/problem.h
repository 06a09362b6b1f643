// A fault in words, with its place and its mend. It is a value: bad input never throws across a module.
#pragma once

#include <expected>
#include <optional>
#include <string>
#include <utility>

namespace problem {

// problem: something has no result and the total is not final. flag: computed, but the person named has to decide.
// notice: to know.
enum class Severity { notice, flag, problem };

// A point of the plan in metres, as people read it; geometry's own points are exact.
struct Xy {
  double x = 0;
  double y = 0;
  bool operator==(const Xy&) const = default;
};

// Where the fault lies: an element of the job, a place in a file (lines and columns count from 1; 0 is unknown), a
// point of the plan; whatever is known of them.
struct Place {
  std::string element;
  std::string file;
  int line = 0;
  int column = 0;
  std::optional<Xy> at;
  bool operator==(const Place&) const = default;
};

// `code` is a stable key of small letters and dashes, `text` one sentence without the place, `mend` what to do about
// it.
struct Problem {
  Severity severity = Severity::problem;
  std::string code;
  std::string text;
  std::string mend;
  Place place;
  bool operator==(const Problem&) const = default;
};

template <class T>
using Result = std::expected<T, Problem>;

// "notice", "flag" or "problem", the words of the files.
std::string word(Severity severity);

// One line for people: place, text and mend, as "terrace.json:12:5: the text; the mend".
std::string sentence(const Problem& problem);

// A Problem of severity `problem` wrapped for returning from a function that gives Result.
std::unexpected<Problem> fault(std::string code, std::string text, std::string mend, Place place = {});

// The same problem with its element or file filled in where it had none.
Problem in_element(Problem problem, const std::string& element);
Problem in_file(Problem problem, const std::string& file);

}  // namespace problem
