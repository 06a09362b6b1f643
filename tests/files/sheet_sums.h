// Computes the formulas of a workbook again, in a way of its own, for tests: + - * / and brackets, SUM, SUMIFS, ROUND,
// ROUNDUP, MIN, MAX, cells and ranges of this and other sheets.
#pragma once

#include <gtest/gtest.h>

#include <cmath>
#include <map>

#include "files/workbook.h"

namespace sheet_sums {

class Book {
 public:
  explicit Book(const files::Workbook& book) {
    for (const files::Sheet& sheet : book.sheets) sheets_[sheet.name] = &sheet;
  }

  // The value of a cell, from its formula where it has one.
  double value(const std::string& sheet, std::size_t row, std::size_t column) const {
    const files::Cell* cell = at(sheet, row, column);
    if (cell == nullptr || cell->what == files::Cell::What::empty || cell->what == files::Cell::What::text) return 0;
    if (cell->what == files::Cell::What::number) return cell->value;
    const auto key = std::tuple(sheet, row, column);
    if (const auto known = known_.find(key); known != known_.end()) return known->second;
    Reader reader{*this, sheet, cell->text};
    const double made = reader.sum();
    EXPECT_EQ(reader.at, cell->text.size()) << "not understood: " << cell->text;
    return known_[key] = made;
  }

 private:
  struct Reader;
  using Cells = std::vector<const files::Cell*>;

  const files::Cell* at(const std::string& sheet, std::size_t row, std::size_t column) const {
    const auto found = sheets_.find(sheet);
    EXPECT_NE(found, sheets_.end()) << "no sheet " << sheet;
    if (found == sheets_.end() || row >= found->second->rows.size()) return nullptr;
    const auto& cells = found->second->rows[row];
    return column < cells.size() ? &cells[column] : nullptr;
  }

  struct Place {
    std::string sheet;
    std::size_t row = 0;
    std::size_t column = 0;
  };
  struct Range {
    Place first;
    Place last;
    std::vector<Place> all() const {
      std::vector<Place> places;
      for (std::size_t row = first.row; row <= last.row; ++row)
        for (std::size_t column = first.column; column <= last.column; ++column)
          places.push_back({first.sheet, row, column});
      return places;
    }
  };

  // Reads one formula from left to right.
  struct Reader {
    const Book& book;
    std::string sheet;
    const std::string& text;
    std::size_t at = 0;

    bool takes(char letter) {
      if (at >= text.size() || text[at] != letter) return false;
      ++at;
      return true;
    }
    std::string word() {
      const std::size_t from = at;
      while (at < text.size() && std::isalpha(static_cast<unsigned char>(text[at]))) ++at;
      return text.substr(from, at - from);
    }
    std::size_t digits() {
      std::size_t number = 0;
      while (at < text.size() && std::isdigit(static_cast<unsigned char>(text[at])))
        number = number * 10 + static_cast<std::size_t>(text[at++] - '0');
      return number;
    }
    Place place() {
      Place made{sheet, 0, 0};
      takes('$');
      std::string letters = word();
      if (takes('!')) {
        made.sheet = letters;
        takes('$');
        letters = word();
      }
      for (const char letter : letters) made.column = made.column * 26 + static_cast<std::size_t>(letter - 'A' + 1);
      takes('$');
      made.row = digits() - 1;
      --made.column;
      return made;
    }
    Range range() {
      Range made;
      made.first = made.last = place();
      if (takes(':')) {
        made.last = place();
        made.last.sheet = made.first.sheet;
      }
      return made;
    }

    double sum() {
      double made = product();
      while (at < text.size() && (text[at] == '+' || text[at] == '-'))
        made = text[at++] == '+' ? made + product() : made - product();
      return made;
    }
    double product() {
      double made = factor();
      while (at < text.size() && (text[at] == '*' || text[at] == '/'))
        made = text[at++] == '*' ? made * factor() : made / factor();
      return made;
    }
    double factor() {
      if (takes('(')) {
        const double made = sum();
        EXPECT_TRUE(takes(')')) << text;
        return made;
      }
      if (std::isdigit(static_cast<unsigned char>(text[at]))) {
        std::size_t length = 0;
        const double made = std::stod(text.substr(at), &length);
        at += length;
        return made;
      }
      const std::size_t from = at;
      const std::string name = word();
      if (takes('(')) {
        const double made = function(name);
        EXPECT_TRUE(takes(')')) << text;
        return made;
      }
      at = from;
      const Place one = place();
      return book.value(one.sheet, one.row, one.column);
    }
    double function(const std::string& name) {
      if (name == "SUM") return sum_of(range());
      if (name == "SUMIFS") return sum_if();
      std::vector<double> values{sum()};
      while (takes(',')) values.push_back(sum());
      const double first = values.front();
      if (name == "MAX") return *std::max_element(values.begin(), values.end());
      if (name == "MIN") return *std::min_element(values.begin(), values.end());
      const double scale = std::pow(10.0, values.at(1));
      if (name == "ROUND") return std::round(first * scale) / scale;
      if (name == "ROUNDUP") return (first < 0 ? std::floor(first * scale) : std::ceil(first * scale)) / scale;
      ADD_FAILURE() << "no function " << name << " in " << text;
      return 0;
    }
    double sum_of(const Range& range) {
      double made = 0;
      for (const Place& one : range.all()) made += book.value(one.sheet, one.row, one.column);
      return made;
    }
    std::string wanted() {
      if (!takes('"')) {
        const Place one = place();
        const files::Cell* cell = book.at(one.sheet, one.row, one.column);
        return cell ? cell->text : "";
      }
      const std::size_t from = at;
      at = text.find('"', at) + 1;
      return text.substr(from, at - 1 - from);
    }
    double sum_if() {
      const std::vector<Place> summed = range().all();
      std::vector<bool> counts(summed.size(), true);
      while (takes(',')) {
        const std::vector<Place> looked_at = range().all();
        EXPECT_TRUE(takes(','));
        const std::string word = wanted();
        EXPECT_EQ(looked_at.size(), summed.size()) << text;
        for (std::size_t i = 0; i < looked_at.size(); ++i) {
          const files::Cell* cell = book.at(looked_at[i].sheet, looked_at[i].row, looked_at[i].column);
          counts[i] = counts[i] && cell != nullptr && cell->text == word;
        }
      }
      double made = 0;
      for (std::size_t i = 0; i < summed.size(); ++i)
        if (counts[i]) made += book.value(summed[i].sheet, summed[i].row, summed[i].column);
      return made;
    }
  };

  std::map<std::string, const files::Sheet*> sheets_;
  mutable std::map<std::tuple<std::string, std::size_t, std::size_t>, double> known_;
};

}  // namespace sheet_sums
