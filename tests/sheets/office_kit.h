// What the tests of the office's sheets read them with.
#pragma once

#include <set>

#include "demo.h"
#include "sheets/all_sheets.h"

namespace office {

inline sheets::Printed printed(const results::Results& results) {
  sheets::Printed made;
  made.results = std::shared_ptr<const results::Results>(std::shared_ptr<const void>(), &results);  // not owned
  made.version = "3";
  made.date = "2026-11-28";
  return made;
}
inline sheets::Printed printed(plan::Job job) {
  sheets::Printed made;
  made.results =
      std::make_shared<const results::Results>(results::compute(std::make_shared<const plan::Job>(std::move(job))));
  return made;
}

template <class Kind>
std::vector<const Kind*> blocks(const sheets::Sheet& sheet) {
  std::vector<const Kind*> found;
  for (const sheets::Passage& passage : sheet.passages)
    for (const sheets::Block& block : passage.blocks)
      if (const auto* one = std::get_if<Kind>(&block)) found.push_back(one);
  return found;
}

// All that is said in tables, and what in them stands at the right.
inline std::vector<sheets::Said> cells(const sheets::Sheet& sheet, bool numbers_only = false) {
  std::vector<sheets::Said> found;
  for (const sheets::Table* table : blocks<sheets::Table>(sheet))
    for (const sheets::Row& row : table->rows)
      for (std::size_t i = 0; i < row.cells.size(); ++i) {
        const bool across = row.kind == sheets::Row::Kind::group || row.kind == sheets::Row::Kind::note;
        const bool right = !across && i < table->columns.size() && table->columns[i].align == sheets::Align::right;
        if (!numbers_only || right) found.push_back(row.cells[i]);
      }
  return found;
}

inline bool says(const sheets::Sheet& sheet, const std::string& words) {
  for (const sheets::Said& said : cells(sheet))
    if (said.words.find(words) != std::string::npos) return true;
  for (const sheets::Paragraph* paragraph : blocks<sheets::Paragraph>(sheet))
    if (paragraph->said.words.find(words) != std::string::npos) return true;
  for (const sheets::Heading* heading : blocks<sheets::Heading>(sheet))
    if (heading->words.find(words) != std::string::npos || heading->right.words.find(words) != std::string::npos)
      return true;
  for (const sheets::Framed* framed : blocks<sheets::Framed>(sheet))
    for (const sheets::Said& line : framed->lines)
      if (line.words.find(words) != std::string::npos) return true;
  return false;
}

inline bool has_digit(const std::string& words) { return words.find_first_of("0123456789") != std::string::npos; }

}  // namespace office
