#include "ui/panels/working_rows.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>
#include <optional>

#include "estimate/packs.h"
#include "estimate/words.h"
#include "takeoff/working.h"
#include "ui/panels/panel_words.h"
#include "units/length.h"
#include "units/number.h"

namespace ui {

namespace {

using takeoff::Working;

struct Takeoff {
  Q_DECLARE_TR_FUNCTIONS(Takeoff)
};

// A row of a working with the rows below it, as the tree that they were written from.
struct Node {
  std::string sign;
  takeoff::Term term;
  std::vector<Node> parts;
  bool operator==(const Node& other) const { return term == other.term && parts == other.parts; }
};

std::vector<Node> nodes(const std::vector<Working::Row>& rows, std::size_t& at, int depth) {
  std::vector<Node> made;
  while (at < rows.size() && rows[at].depth == depth) {
    const Working::Row& row = rows[at++];
    made.push_back({row.sign, row.term, nodes(rows, at, depth + 1)});
  }
  return made;
}

Node tree(const Working& working) {
  // Under a name of its own every part has a row, whether it has a name or not.
  const std::vector<Working::Row> rows = Working::sum({working}).named("all").rows();
  std::size_t at = 1;
  return nodes(rows, at, 1).front();
}

bool is_up(const Node& node) { return node.parts.size() == 1 && node.parts.front().sign == "up"; }

// Whole lots of what is needed: up(needed / size) x size.
bool is_lots(const Node& node) {
  if (node.parts.size() != 2 || !is_up(node.parts[0])) return false;
  const Node& quotient = node.parts[0].parts[0];
  return quotient.parts.size() == 2 && quotient.parts[1].sign == "/" && quotient.parts[1].term == node.parts[1].term;
}

// What is needed, before it is rounded to what can be bought.
Node without_sign(Node node) {
  node.sign.clear();
  return node;
}

Node needed_of(const Node& order) {
  if (is_up(order)) return without_sign(order.parts[0]);
  if (is_lots(order)) return without_sign(order.parts[0].parts[0].parts[0]);
  return order;
}

QString sign_of(const std::string& sign) {
  if (sign == "x") return QStringLiteral("×");
  if (sign == "/") return QStringLiteral("÷");
  if (sign == "-") return QStringLiteral("−");
  return sign == "+" ? QStringLiteral("+") : QString();
}

// Of the whole the result stands at the end; a function or a named part wants its own row above.
bool reads_by_its_parts(const Node& node) {
  if (node.parts.empty() || !node.term.name.empty()) return false;
  const std::string& sign = node.parts.front().sign;
  return sign != "up" && sign != "max" && sign != "min";
}

// A result without a name says how it was made.
QString unnamed(const Node& node) {
  const std::string& sign = node.parts.front().sign;
  if (sign == "up") return Takeoff::tr("in whole ones");
  if (sign == "max") return Takeoff::tr("the greatest of");
  if (sign == "min") return Takeoff::tr("the least of");
  const std::string& next = node.parts.size() > 1 ? node.parts[1].sign : sign;
  if (next == "x") return Takeoff::tr("multiplied");
  if (next == "/") return Takeoff::tr("divided");
  return next == "-" ? Takeoff::tr("what is left") : Takeoff::tr("together");
}

struct Teller {
  const plan::Job& job;
  std::vector<WorkingRow> rows;
  std::vector<const Node*> told;
  int rings = 0;

  void tell(const Node& node, int depth) {
    const bool leaf = node.parts.empty();
    WorkingRow row;
    row.kind = leaf ? WorkingRow::Kind::figure : WorkingRow::Kind::made;
    row.depth = depth;
    row.sign = sign_of(node.sign);
    row.name = node.term.name.empty() ? (leaf ? QString() : unnamed(node)) : said(node.term.name);
    row.value = in_units(node.term.amount, job.heading.units);
    if (leaf) {
      row.ring = ++rings;
      row.of = node.term.of;
      row.leads = leads(row.of, job);
    }
    const bool again = !leaf && !node.term.name.empty() &&
                       std::ranges::any_of(told, [&node](const Node* known) { return *known == node; });
    rows.push_back(std::move(row));
    if (leaf || again) return;
    told.push_back(&node);
    tell_parts(node, depth + 1);
  }

  void tell_parts(const Node& node, int depth) {
    for (const Node& part : node.parts) tell(part, depth);
  }
};

// "tons" of "ton".
QString plural(const std::string& unit) {
  const std::string two = estimate::counted(2, unit);
  return said(two.substr(two.find(' ') + 1));
}

QString how_ordered(const estimate::OrderLine& line, const plan::Job& job) {
  const catalogue::Item* item = job.catalogue->item(line.item);
  const estimate::Lot lot = item ? estimate::lot(*item) : estimate::Lot();
  if (!lot.word.empty())
    return Takeoff::tr("ordered by the %1 of %2")
        .arg(said(lot.word), QString::fromStdString(estimate::in_words(lot.size)));
  if (lot.size != 1)
    return Takeoff::tr("ordered by the %1 %2")
        .arg(QString::fromStdString(estimate::in_words(lot.size)), said(line.order_unit));
  return line.order_unit.empty() || line.order_unit == "piece"
             ? Takeoff::tr("ordered in whole pieces")
             : Takeoff::tr("ordered in whole %1").arg(plural(line.order_unit));
}

// "26 tons: 25.29 needed" is in the row above; what came on top, packs and reasons are not.
bool says_more(const std::string& sentence) { return !sentence.empty() && !sentence.ends_with(" needed"); }

}  // namespace

Leads leads(const std::string& of, const plan::Job& job) {
  const std::string head = of.substr(0, of.find('/'));
  if (head.empty()) return Leads::nowhere;
  if (job.find(head)) return Leads::plan;
  if (job.catalogue->build_up(head)) return Leads::section;
  if (head == "choices" || head == "soil") return Leads::choices;
  return Leads::catalogue;
}

QString in_units(units::Amount amount, units::System system) {
  if (amount.unit == units::metre && std::abs(amount.value) < 1e6) {
    const units::Length near = units::Length::nearest(units::Metres(amount.value));
    const bool us = system == units::System::us;
    const double step = us ? units::metres_per_inch / 16 : 0.001;
    const double steps = amount.value / step;
    if (std::abs(steps - std::round(steps)) < 1e-3) return QString::fromStdString(units::show_length(near, system));
  }
  const std::string text = Working(takeoff::term("", amount.value, amount.unit)).sentence(system);
  const std::size_t space = std::min(text.find(' '), text.size());
  const auto number = units::read_number(text.substr(0, space));
  if (!number) return QString::fromStdString(text);
  const double size = std::abs(*number);
  std::string figure = text.substr(0, space);
  if (size >= 1000) figure = units::show_grouped(*number, size >= 10000 || *number == std::round(*number) ? 0 : 1);
  QString shown = QString::fromStdString(figure);
  if (space < text.size()) shown += QLatin1Char(' ') + said(text.substr(space + 1));
  return shown;
}

std::vector<WorkingRow> working_rows(const estimate::OrderLine& line, const plan::Job& job) {
  const Node order = tree(line.working);
  const bool rounded = is_up(order) || is_lots(order);
  const Node needed = needed_of(order);
  Teller teller{job, {}, {}, 0};
  if (reads_by_its_parts(needed))
    teller.tell_parts(needed, 0);
  else
    teller.tell(needed, 0);
  WorkingRow row;
  row.kind = WorkingRow::Kind::order;
  if (line.work) {
    row.name = Takeoff::tr("hours");
    row.value = shown_count(line.order_quantity, "h");
  } else {
    row.name = rounded ? how_ordered(line, job) : Takeoff::tr("ordered");
    row.value = rounded ? shown_count(needed.term.amount.value, line.order_unit) : QString();
    row.ordered = shown_count(line.order_quantity, line.order_unit);
  }
  teller.rows.push_back(row);
  if (says_more(line.sentence)) {
    WorkingRow told;
    told.kind = WorkingRow::Kind::told;
    told.name = said(line.sentence);
    teller.rows.push_back(told);
  }
  return std::move(teller.rows);
}

std::vector<std::string> rings_of(const std::vector<WorkingRow>& rows) {
  std::vector<std::string> of;
  for (const WorkingRow& row : rows)
    if (row.ring > 0) of.push_back(row.of);
  return of;
}

}  // namespace ui
