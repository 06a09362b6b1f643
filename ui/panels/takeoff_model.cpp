#include "ui/panels/takeoff_model.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

#include "estimate/labour.h"
#include "estimate/price.h"
#include "ui/panels/panel_words.h"

namespace ui {

namespace {

using estimate::OrderLine;

struct Takeoff {
  Q_DECLARE_TR_FUNCTIONS(Takeoff)
};

QString tag_of(const std::vector<plan::ElementId>& of) {
  if (of.empty()) return {};
  const QString first = QString::fromStdString(of.front());
  return of.size() == 1 ? first : first + QStringLiteral(" +%1").arg(of.size() - 1);
}

// The catalogue's own name where the line is called by it; charges and loads are told by the estimate.
QString name_of_line(const OrderLine& line, const plan::Job& job) {
  const catalogue::Item* item = job.catalogue->item(line.item);
  if (item && item->name.en == line.description) return own_name(item->name, item->id);
  const catalogue::Rate* rate = job.catalogue->rate(line.item);
  if (line.work && rate && rate->name.en == line.description) return own_name(rate->name, rate->id);
  return said(line.description);
}

QString amount_in_words(const OrderLine& line, double part, const plan::Job& job) {
  if (line.by_others) return Takeoff::tr("by others");
  if (!line.amount) return Takeoff::tr("no price");
  return shown_money(part == 1 ? *line.amount : units::times(*line.amount, part), job.heading);
}

TakeoffRow row_of(const results::Results& results, int number, const std::optional<double>& part) {
  const OrderLine& line = results.estimate.lines[static_cast<std::size_t>(number)];
  TakeoffRow row;
  row.line = number;
  row.stage = line.stage;
  row.tag = tag_of(line.of);
  row.what = name_of_line(line, *results.job);
  row.part = part;
  if (!part) row.what += QStringLiteral(" · ") + row.tag;  // of all together
  const double own = part.value_or(1);
  const bool pieces = line.order_unit == "piece" || line.order_unit.empty();
  const double count = line.order_quantity * own;
  row.quantity = line.work ? shown_hours(count) : shown_count(pieces ? std::round(count) : count, line.order_unit);
  row.amount = amount_in_words(line, own, *results.job);
  row.no_price = !line.amount && !line.by_others;
  row.work = line.work;
  return row;
}

TakeoffRow labour_group(const results::Results& results) {
  TakeoffRow row;
  row.kind = TakeoffRow::Kind::group;
  row.work = true;
  row.what = Takeoff::tr("Labour");
  row.quantity = shown_hours(results.estimate.total.hours);
  row.amount = shown_money(results.estimate.total.work, results.job->heading);
  return row;
}

bool is_asked(const OrderLine& line, const Asked& asked) {
  if (asked.scope == Scope::stage) return line.stage == asked.stage;
  return asked.scope == Scope::job || std::ranges::find(line.of, asked.element) != line.of.end();
}

// Needs of one line of the estimate, those of the element and all together.
struct Needs {
  double own = 0;
  double all = 0;
  bool apart = true;  // each need is of one element
  void add(const std::vector<plan::ElementId>& of, double need, const plan::ElementId& element) {
    all += need;
    const bool its = std::ranges::find(of, element) != of.end();
    if (its && of.size() > 1) apart = false;
    if (its) own += need;
  }
};

problem::Result<const catalogue::Item*> item_in(const plan::Job& job, const plan::Id& id) {
  const catalogue::Item* item = job.catalogue->item(id);
  if (item) return item;
  return problem::fault("item-unknown", "the job's catalogue has no '" + id + "'", "choose an item that it has");
}

plan::Job with_item(const plan::Job& job, catalogue::Item item) {
  catalogue::Catalogue own = *job.catalogue;
  const plan::Id id = item.id;
  own.items[id] = std::make_shared<const catalogue::Item>(std::move(item));
  plan::Job after = job;
  after.catalogue = std::make_shared<const catalogue::Catalogue>(std::move(own));
  return after;
}

std::string trimmed(std::string text) {
  const auto blank = [](char letter) { return letter == ' ' || letter == '$' || letter == '\t'; };
  while (!text.empty() && blank(text.front())) text.erase(text.begin());
  while (!text.empty() && blank(text.back()) && text.back() != '$') text.pop_back();
  return text;
}

}  // namespace

std::optional<double> share_of(const plan::ElementId& element, const OrderLine& line, const takeoff::Takeoff& takeoff,
                               const plan::Job& job) {
  if (line.of.size() == 1 && line.of.front() == element) return 1.0;
  Needs needs;
  if (line.work) {
    for (const takeoff::Task& task : takeoff.tasks)
      if (task.stage == line.stage && task.rate == line.item)
        needs.add(task.of, task.working.amount().value * task.factor, element);
  } else {
    const catalogue::Item* item = job.catalogue->item(line.item);
    const double breakage = item ? item->breakage : 0;
    for (const takeoff::Line& need : takeoff.lines)
      if (need.stage == line.stage && need.item == line.item && units::name(need.working.amount().unit) == line.unit)
        needs.add(need.of, need.working.amount().value * (1 + need.allowance.value_or(breakage)), element);
  }
  if (!needs.apart || !(needs.all > 0) || needs.own < 0) return std::nullopt;
  return needs.own / needs.all;
}

std::vector<TakeoffRow> takeoff_rows(const results::Results& results, const Asked& asked) {
  std::vector<TakeoffRow> rows, work;
  const auto& lines = results.estimate.lines;
  for (int number = 0; number < static_cast<int>(lines.size()); ++number) {
    const OrderLine& line = lines[static_cast<std::size_t>(number)];
    if (!is_asked(line, asked)) continue;
    const auto part = asked.scope == Scope::element ? share_of(asked.element, line, results.takeoff, *results.job)
                                                    : std::optional<double>(1);
    const bool later = asked.scope == Scope::job && line.work;
    (later ? work : rows).push_back(row_of(results, number, part));
  }
  if (!work.empty()) rows.push_back(labour_group(results));
  for (TakeoffRow& row : work) rows.push_back(std::move(row));
  return rows;
}

std::string key_of(const OrderLine& line) {
  return takeoff::word(line.stage) + '|' + line.item + '|' + line.unit + (line.work ? "|work" : "") + '|' +
         line.description;
}

std::vector<plan::Id> items_without_price(const OrderLine& line, const plan::Job& job) {
  std::vector<plan::Id> found;
  if (line.amount || line.by_others) return found;
  if (!line.work) {
    if (job.catalogue->item(line.item)) found.push_back(line.item);
    return found;
  }
  const catalogue::Rate* rate = job.catalogue->rate(line.item);
  const auto crew = rate ? estimate::read_crew(rate->crew) : std::vector<estimate::Hands>();
  if (!crew) return found;
  for (const estimate::Hands& hands : *crew)
    if (const catalogue::Item* item = job.catalogue->item(hands.item);
        item && !estimate::coins_of_one(*item) && std::ranges::find(found, hands.item) == found.end())
      found.push_back(hands.item);
  return found;
}

problem::Result<plan::Job> with_price(const plan::Job& job, const plan::Id& id, const std::string& text,
                                      const std::string& date) {
  const auto item = item_in(job, id);
  if (!item) return std::unexpected(item.error());
  const auto amount = units::read_money(trimmed(text), job.heading.decimals);
  if (!amount || *amount <= units::Money())
    return problem::fault("price-unread", "'" + text + "' is not a price", "type an amount such as 12.50");
  catalogue::Item priced = **item;
  priced.price = catalogue::Price{*amount, priced.unit, date, false};
  return with_item(job, std::move(priced));
}

problem::Result<plan::Job> with_supplied_by_others(const plan::Job& job, const plan::Id& id, const std::string& date) {
  const auto item = item_in(job, id);
  if (!item) return std::unexpected(item.error());
  catalogue::Item given = **item;
  given.price = catalogue::Price{units::Money(), given.unit, date, true};
  return with_item(job, std::move(given));
}

}  // namespace ui
