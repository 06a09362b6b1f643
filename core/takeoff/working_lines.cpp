#include "takeoff/working_lines.h"

#include <algorithm>

namespace takeoff {

namespace {

using Row = Working::Row;

// A row with the rows below it, as the tree that they were written from.
struct Node {
  std::string sign;
  std::string name;
  units::Amount amount;
  std::vector<Node> parts;
};

std::vector<Node> nodes(const std::vector<Row>& rows, std::size_t& at, int depth) {
  std::vector<Node> made;
  while (at < rows.size() && rows[at].depth == depth) {
    const Row& row = rows[at++];
    made.push_back({row.sign, row.term.name, row.term.amount, nodes(rows, at, depth + 1)});
  }
  return made;
}

bool is_function(const std::string& sign) { return sign == "up" || sign == "max" || sign == "min"; }

struct Teller {
  units::System system;
  std::vector<std::string> lines;  // in the order in which they are read

  std::string number(const Node& node) const { return named(node, ""); }
  std::string named(const Node& node) const { return named(node, node.name); }
  std::string named(const Node& node, const std::string& name) const {
    return Working(takeoff::term(name, node.amount.value, node.amount.unit)).sentence(system);
  }

  // A part inside another: its number under its name where it has one, and otherwise how it is made.
  // `argument`: of a function, whose own brackets are enough.
  std::string inside(const Node& node, bool argument) {
    if (node.parts.empty()) return named(node);
    if (node.name.empty()) {
      const std::string how = made_of(node.parts);
      const bool bare = argument || node.parts.size() == 1 || is_function(node.parts.front().sign);
      return bare ? how : "(" + how + ")";
    }
    lines.push_back(node.name + " = " + made_of(node.parts) + " = " + number(node));
    return named(node);
  }

  std::string made_of(const std::vector<Node>& parts) {
    const std::string& sign = parts.front().sign;
    const bool function = is_function(sign);
    std::string text;
    for (const Node& part : parts) {
      if (!text.empty()) text += function ? ", " : " " + part.sign + " ";
      text += inside(part, function);
    }
    if (sign == "up") return "up(" + text + ")";
    if (sign == "max") return "greatest(" + text + ")";
    if (sign == "min") return "least(" + text + ")";
    return text;
  }
};

}  // namespace

std::vector<std::string> WorkingLines::tell(const Working& working, const std::string& name) {
  // Under a name of its own every part has a row, whether it has a name or not.
  const std::vector<Row> rows = Working::sum({working}).named("all").rows();
  std::size_t at = 1;
  Node root = nodes(rows, at, 1).front();
  if (root.name.empty()) root.name = name;
  Teller teller{system_, {}};
  std::string last = teller.named(root);
  if (!root.parts.empty()) {
    const std::string how = teller.made_of(root.parts);
    last = root.name + " = " + how + " = " + teller.number(root);
  }
  teller.lines.push_back(std::move(last));
  std::vector<std::string> fresh;
  for (std::string& line : teller.lines) {
    if (std::ranges::find(told_, line) != told_.end()) continue;
    told_.push_back(line);
    fresh.push_back(std::move(line));
  }
  return fresh;
}

}  // namespace takeoff
