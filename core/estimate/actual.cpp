#include "estimate/actual.h"

#include <algorithm>
#include <cmath>
#include <map>

#include "estimate/actual_lines.h"
#include "estimate/change_lines.h"

namespace estimate {

namespace {

// Entries that can stand, and what is wrong with the others.
std::vector<Entry> taken(const Kept& kept, const std::vector<Entry>& entries, std::vector<problem::Problem>& problems) {
  std::vector<Entry> good;
  for (const Entry& entry : entries) {
    auto fits = check(kept, good, entry);
    if (fits) {
      good.push_back(entry);
      continue;
    }
    problem::Problem said = fits.error();
    said.text = "entry " + std::to_string(entry.number) + " does not count: " + said.text;
    problems.push_back(std::move(said));
  }
  return good;
}

// "lead time 5 days, least order: 1 layer"; nothing where the catalogue does not know the item.
std::string asked_by_supplier(const plan::Job& job, const plan::Id& id) {
  const catalogue::Item* item = job.catalogue->item(id);
  if (!item) return {};
  const auto supplier = job.catalogue->suppliers.find(item->supplier);
  std::string text;
  const auto say = [&text](const std::string& words) { text += (text.empty() ? "" : ", ") + words; };
  if (supplier != job.catalogue->suppliers.end()) {
    if (supplier->second.lead_days > 0) say("lead time " + std::to_string(supplier->second.lead_days) + " days");
    if (!supplier->second.least_order.empty()) say("least order: " + supplier->second.least_order);
  }
  if (const auto share = item->details.find("return_share"); share != item->details.end())
    say("taken back at a share of " + share->second);
  return text;
}

}  // namespace

Actual actual(const plan::Job& job, const Kept& kept, const std::vector<Entry>& entries) {
  Actual made;
  made.currency = kept.currency;
  made.decimals = kept.decimals;
  const std::vector<Entry> standing = in_force(taken(kept, entries, made.problems));
  made.lines = actual_lines(job, kept, standing, made.problems);
  add_stages(kept, standing, made);
  return made;
}

std::vector<Entry> after_edit(const plan::Job& job, const Kept& now, const Actual& so_far, const std::string& date) {
  std::map<std::pair<LineKey, std::string>, double> needed;
  for (const KeptLine& line : now.lines)
    if (!is_work(line)) needed[{key_of(line), line.order_unit}] += line.order_quantity;
  std::vector<Entry> made;
  for (const LineActual& line : so_far.lines) {
    if (!(line.ordered > 0)) continue;
    const auto found = needed.find({line.key, line.unit});
    const double by = more(line.ordered - line.returned, found == needed.end() ? 0 : std::max(0.0, found->second));
    if (by == 0) continue;
    Entry entry;
    entry.act = by > 0 ? Act::ordered : Act::returned;
    entry.line = line.key;
    entry.date = date;
    entry.quantity = std::abs(by);
    entry.unit = line.unit;
    entry.note = asked_by_supplier(job, line.key.item);
    made.push_back(std::move(entry));
  }
  return made;
}

}  // namespace estimate
