// What the tests of the crew's sheets share: sheets of the demo jobs, and their blocks in a row.
#pragma once

#include <gtest/gtest.h>

#include <algorithm>
#include <cctype>
#include <set>

#include "demo.h"
#include "sheets/all_sheets.h"
#include "sheets/source.h"

namespace crew_kit {

inline sheets::Printed printed(results::Results results) {
  sheets::Printed made;
  made.results = std::make_shared<const results::Results>(std::move(results));
  made.date = "2026-11-28";
  return made;
}
inline sheets::Printed of_demo(const std::string& name = "pool-terrace-a") { return printed(demo::results(name)); }
inline sheets::Printed of_job(plan::Job job) {
  return printed(results::compute(std::make_shared<const plan::Job>(std::move(job))));
}
inline plan::Job empty_job() {
  plan::Job job = demo::job("bakery-court");
  job.elements.clear();
  return job;
}

// Every block from the top down, those of two columns too.
inline void flatten(const std::vector<sheets::Block>& blocks, std::vector<sheets::Block>& all) {
  for (const sheets::Block& block : blocks) {
    const auto* beside = std::get_if<std::shared_ptr<const sheets::Beside>>(&block);
    if (!beside) {
      all.push_back(block);
      continue;
    }
    flatten((*beside)->left, all);
    flatten((*beside)->right, all);
  }
}
inline std::vector<sheets::Block> blocks(const sheets::Sheet& sheet) {
  std::vector<sheets::Block> all;
  for (const sheets::Passage& passage : sheet.passages) flatten(passage.blocks, all);
  return all;
}
template <class T>
std::vector<T> all(const sheets::Sheet& sheet) {
  std::vector<T> found;
  for (const sheets::Block& block : blocks(sheet))
    if (const T* it = std::get_if<T>(&block)) found.push_back(*it);
  return found;
}
inline const sheets::Table& table(const std::vector<sheets::Table>& tables, const std::string& first_title) {
  const auto found =
      std::ranges::find_if(tables, [&](const sheets::Table& one) { return one.columns.front().title == first_title; });
  EXPECT_NE(found, tables.end()) << first_title;
  static const sheets::Table none;
  return found == tables.end() ? none : *found;
}
inline const sheets::Bring* bring(const sheets::Sheet& sheet, const std::string& name) {
  static std::vector<sheets::Bring> kept;
  kept = all<sheets::Bring>(sheet);
  const auto found = std::ranges::find(kept, name, &sheets::Bring::name);
  return found == kept.end() ? nullptr : &*found;
}

inline bool has_digit(const std::string& text) {
  return std::ranges::any_of(text, [](unsigned char letter) { return std::isdigit(letter) != 0; });
}

// All that is printed of a sheet, word by word.
inline std::vector<sheets::Said> said(const sheets::Sheet& sheet) {
  std::vector<sheets::Said> words{{sheet.title}};
  for (const std::string& line : sheet.about) words.emplace_back(line);
  for (const sheets::Block& block : blocks(sheet)) {
    if (const auto* it = std::get_if<sheets::Heading>(&block)) words.insert(words.end(), {it->words, it->right});
    if (const auto* it = std::get_if<sheets::Paragraph>(&block)) words.push_back(it->said);
    if (const auto* it = std::get_if<sheets::Bring>(&block))
      words.insert(words.end(), {it->name, it->detail, it->quantity, it->unit});
    if (const auto* it = std::get_if<sheets::Hold>(&block))
      words.insert(words.end(), {it->look_at, it->limit, it->by, it->who, it->when});
    if (const auto* it = std::get_if<sheets::Caution>(&block)) words.emplace_back(it->words);
    if (const auto* it = std::get_if<sheets::Table>(&block))
      for (const sheets::Row& row : it->rows) words.insert(words.end(), row.cells.begin(), row.cells.end());
  }
  return words;
}

// Sources of all numbers that must have one: cells at the right, quantities, the right side of headings, dimensions.
// Fails where one has none, or names none that leads anywhere.
inline void expect_sources(const sheets::Printed& printed, const sheets::Sheet& sheet) {
  std::set<std::string> sources;
  const auto take = [&](const sheets::Said& one) {
    if (!has_digit(one.words)) return;
    EXPECT_FALSE(one.from.empty()) << sheet.word << ": " << one.words;
    sources.insert(one.from);
  };
  for (const sheets::Block& block : blocks(sheet)) {
    if (const auto* it = std::get_if<sheets::Heading>(&block)) take(it->right);
    if (const auto* it = std::get_if<sheets::Bring>(&block)) take(it->quantity);
    if (const auto* it = std::get_if<sheets::Drawing>(&block))
      for (const sheets::Dimension& dimension : it->dimensions) take(dimension.said);
    if (const auto* it = std::get_if<sheets::Table>(&block))
      for (const sheets::Row& row : it->rows)
        for (std::size_t i = 0; i < row.cells.size() && row.kind != sheets::Row::Kind::group; ++i)
          if (i < it->columns.size() && it->columns[i].align == sheets::Align::right) take(row.cells[i]);
  }
  for (const std::string& source : sources) {
    const auto working = sheets::working_of(printed, source);
    EXPECT_TRUE(working.has_value() && !working->empty()) << sheet.word << ": " << source;
  }
}

// No money: neither the currency nor the word of it.
inline void expect_no_price(const sheets::Printed& printed, const sheets::Sheet& sheet) {
  EXPECT_FALSE(sheet.money);
  for (const sheets::Said& one : said(sheet)) {
    EXPECT_EQ(one.words.find(printed.job().heading.currency), std::string::npos) << one.words;
    EXPECT_EQ(one.words.find('$'), std::string::npos) << one.words;
  }
}

}  // namespace crew_kit
