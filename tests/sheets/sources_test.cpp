// Every number on every sheet of the demo jobs leads back to its working.
#include <gtest/gtest.h>

#include <algorithm>
#include <cctype>
#include <set>

#include "demo.h"
#include "sheets/all_sheets.h"
#include "sheets/source.h"

namespace {

using namespace sheets;

struct Found {
  std::string words;
  std::string from;
  std::string where;
};

// All that is counted or measured: quantities, right-aligned cells, dimensions, what stands right of a heading.
struct Walk {
  std::vector<Found>& all;
  std::string where;
  void take(const Said& said, const std::string& what) const { all.push_back({said.words, said.from, where + what}); }
  void operator()(const Heading& block) const { take(block.right, "heading " + block.words); }
  void operator()(const Bring& block) const { take(block.quantity, "bring " + block.name); }
  void operator()(const Table& table) const {
    for (const Row& row : table.rows)
      for (std::size_t i = 0; i < row.cells.size() && i < table.columns.size(); ++i)
        if (table.columns[i].align == Align::right) take(row.cells[i], "column " + table.columns[i].title);
  }
  void operator()(const Drawing& drawing) const {
    for (const Dimension& dimension : drawing.dimensions) take(dimension.said, "dimension");
  }
  void operator()(const Bars& bars) const {
    for (const auto& bar : bars.bars) take(bar.said, "bar " + bar.name);
  }
  void operator()(const std::shared_ptr<const Beside>& two) const {
    for (const auto* side : {&two->left, &two->right})
      for (const Block& block : *side) std::visit(*this, block);
  }
  void operator()(const auto&) const {}
};

std::vector<Found> numbers(const Sheet& sheet) {
  std::vector<Found> all;
  for (const Passage& passage : sheet.passages)
    for (const Block& block : passage.blocks) std::visit(Walk{all, sheet.word + ", "}, block);
  return all;
}

bool has_digit(const std::string& words) {
  return std::any_of(words.begin(), words.end(), [](unsigned char letter) { return std::isdigit(letter) != 0; });
}

Printed printed(const std::string& job) {
  Printed made;
  made.results = std::shared_ptr<const results::Results>(&demo::results(job), [](const results::Results*) {});
  return made;
}

class Sources : public testing::TestWithParam<const char*> {};

TEST_P(Sources, everyNumberLeadsToItsWorking) {
  const Printed with = printed(GetParam());
  std::size_t counted = 0;
  std::set<std::string> asked;  // each source once: some are worked out anew for every question
  for (const SheetKind& kind : sheet_kinds()) {
    for (const Found& found : numbers(kind.make(with))) {
      if (!has_digit(found.words)) continue;
      ++counted;
      ASSERT_FALSE(found.from.empty()) << found.where << ": '" << found.words << "' says nothing of where it is from";
      if (!asked.insert(found.from).second) continue;
      const auto working = working_of(with, found.from);
      ASSERT_TRUE(working.has_value()) << found.where << ": '" << found.words << "' from " << found.from;
      EXPECT_FALSE(working->empty()) << found.where;
    }
  }
  EXPECT_GT(counted, 300u);
}

// A source is not a word that anything answers to.
TEST_P(Sources, wrongOnesAreRefused) {
  const Printed with = printed(GetParam());
  for (const char* wrong : {"", "line/99999", "line/x", "measure/A1/nothing", "measure/none/net_area_m2", "cut/-1",
                            "check/99999", "stage/none/hours", "step/none", "payment/99", "item/none/price",
                            "element/none/start", "mark/99999", "option/none", "elsewhere/1"})
    EXPECT_FALSE(working_of(with, wrong).has_value()) << wrong;
}

INSTANTIATE_TEST_SUITE_P(Demo, Sources, testing::Values("pool-terrace-a", "pool-terrace-b", "bakery-court"),
                         [](const auto& each) {
                           std::string name = each.param;
                           std::replace(name.begin(), name.end(), '-', '_');
                           return name;
                         });

}  // namespace
