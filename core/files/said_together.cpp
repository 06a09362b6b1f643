#include "files/said_together.h"

#include <algorithm>

namespace files {

namespace {

using problem::Problem;

bool of_an_element_only(const Problem& said) {
  return !said.place.element.empty() && said.place.file.empty() && !said.place.at;
}

bool of_one_kind(const Problem& a, const Problem& b) {
  return of_an_element_only(a) && of_an_element_only(b) && a.severity == b.severity && a.code == b.code &&
         a.mend == b.mend;
}

template <class Same, class Join>
std::vector<Problem> joined(const std::vector<Problem>& all, Same same, Join join) {
  std::vector<Problem> rows;
  for (const Problem& said : all) {
    const auto known = std::ranges::find_if(rows, [&](const Problem& row) { return same(row, said); });
    if (known == rows.end())
      rows.push_back(said);
    else
      join(*known, said);
  }
  return rows;
}

}  // namespace

std::vector<Problem> said_together(const std::vector<Problem>& all) {
  const std::vector<Problem> by_element = joined(
      all, [](const Problem& a, const Problem& b) { return of_one_kind(a, b) && a.place.element == b.place.element; },
      [](Problem& row, const Problem& said) { row.text += "; " + said.text; });
  std::vector<Problem> rows = joined(
      by_element, [](const Problem& a, const Problem& b) { return of_one_kind(a, b) && a.text == b.text; },
      [](Problem& row, const Problem& said) { row.place.element += ", " + said.place.element; });
  // What is counted is counted of each.
  for (Problem& row : rows)
    if (row.place.element.find(", ") != std::string::npos) row.place.element += ", each";
  return rows;
}

}  // namespace files
