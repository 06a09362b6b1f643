#include "estimate/ledger.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <set>
#include <utility>

#include "estimate/date.h"

namespace estimate {

using problem::fault;
using problem::Result;

namespace {

constexpr std::array words{
    std::pair{Act::planned, std::string_view("planned")},     std::pair{Act::asked, std::string_view("asked")},
    std::pair{Act::ordered, std::string_view("ordered")},     std::pair{Act::confirmed, std::string_view("confirmed")},
    std::pair{Act::delivered, std::string_view("delivered")}, std::pair{Act::used, std::string_view("used")},
    std::pair{Act::returned, std::string_view("returned")},   std::pair{Act::hours, std::string_view("hours")},
    std::pair{Act::measured, std::string_view("measured")}};

constexpr double most_of_a_unit = 1e9;
constexpr double most_coins = 9e15;

bool of_a_stage(Act act) { return act == Act::hours || act == Act::measured; }

std::string shown(const Entry& entry) {
  std::string text = "'" + word(entry.act) + "' of " + entry.line.stage;
  if (!entry.line.item.empty()) text += " / " + entry.line.item;
  return text;
}

Result<void> check_stage(const Kept& kept, const Entry& entry) {
  const auto of_stage = [&](const KeptLine& line) {
    return line.stage == entry.line.stage &&
           (entry.line.item.empty() || (is_work(line) && line.item == entry.line.item));
  };
  if (std::ranges::any_of(kept.lines, of_stage)) return {};
  if (entry.line.item.empty() && takeoff::stage_of(entry.line.stage)) return {};  // work that nobody thought of
  return fault(entry.line.item.empty() ? "ledger-stage" : "ledger-line",
               entry.line.item.empty()
                   ? "the job has no stage '" + entry.line.stage + "'"
                   : "the version has no work '" + entry.line.item + "' in the stage '" + entry.line.stage + "'",
               "choose one that it has");
}

Result<void> check_line(const Kept& kept, const Entry& entry) {
  std::set<std::string> units;
  bool work = false;
  for (const KeptLine& line : kept.lines) {
    if (key_of(line) != entry.line) continue;
    if (is_work(line)) {
      work = true;
    } else {
      units.insert(line.order_unit);
    }
  }
  if (units.contains(entry.unit)) return {};
  if (!units.empty())
    return fault(
        "ledger-unit",
        shown(entry) + " is entered in '" + entry.unit + "', and the line is bought in '" + *units.begin() + "'",
        "enter the quantity in " + *units.begin());
  return fault("ledger-line",
               work ? shown(entry) + ": work is entered as hours of its stage"
                    : "the version has no line '" + entry.line.item + "' in the stage '" + entry.line.stage + "'",
               work ? "enter the hours" : "choose a line that it has, or save a version that has it");
}

Result<void> check_numbers(const Entry& entry) {
  if (!(entry.quantity >= 0) || !std::isfinite(entry.quantity))
    return fault("ledger-quantity", shown(entry) + ": the quantity is below 0, or it is no number",
                 "enter 0 or more; what goes back is entered as returned");
  if (entry.quantity > most_of_a_unit || entry.whole > most_of_a_unit)
    return fault("ledger-large", shown(entry) + ": the quantity is past 1,000,000,000", "look at its digits");
  if (entry.act == Act::measured && !(entry.whole > 0))
    return fault("ledger-whole", shown(entry) + " does not say how much there is to do in all",
                 "enter the whole measure, over 0");
  if (entry.act == Act::measured && entry.unit.empty())
    return fault("ledger-unit", shown(entry) + " does not say in what it is measured", "enter its unit");
  if (entry.act == Act::hours && entry.unit != "h")
    return fault("ledger-unit", shown(entry) + " are entered in '" + entry.unit + "'", "enter hours (h)");
  if (entry.price && *entry.price < units::Money())
    return fault("ledger-price", shown(entry) + ": the price is below 0", "enter 0 or more");
  return {};
}

double coins(const Entry& entry) {
  return entry.price ? static_cast<double>(entry.price->coins()) * entry.quantity : 0;
}

Result<void> check_sum(const std::vector<Entry>& before, const Entry& entry) {
  double sum = coins(entry);
  for (const Entry& one : before) sum += coins(one);
  if (sum < most_coins) return {};
  sum = coins(entry);  // what was corrected does not count; asked only where it could matter
  for (const Entry& one : in_force(before))
    if (entry.corrects == 0 || one.number != entry.corrects) sum += coins(one);
  if (sum < most_coins) return {};
  return fault("ledger-large", shown(entry) + ": with it the entries come to more money than can be counted",
               "look at its price and its quantity");
}

Result<void> check_correction(const std::vector<Entry>& before, const Entry& entry) {
  if (entry.corrects == 0) return {};
  const auto number = std::to_string(entry.corrects);
  const auto old = std::ranges::find(before, entry.corrects, &Entry::number);
  if (old == before.end())
    return fault("ledger-corrects", "there is no entry " + number + " to correct", "choose one that there is");
  if (const auto later = std::ranges::find(before, entry.corrects, &Entry::corrects); later != before.end())
    return fault("ledger-corrects",
                 "entry " + number + " was corrected already, by entry " + std::to_string(later->number),
                 "correct that one");
  if (old->act != entry.act)
    return fault("ledger-corrects",
                 "entry " + number + " is '" + word(old->act) + "', and its correction '" + word(entry.act) + "'",
                 "correct it to the quantity 0, and enter the other anew");
  const bool the_same = old->line == entry.line && old->quantity == entry.quantity && old->unit == entry.unit;
  if (entry.act == Act::ordered && !the_same)
    return fault("ledger-ordered", "entry " + number + " was ordered, and an order is not changed any more",
                 "order what comes on top, or enter what is returned");
  return {};
}

}  // namespace

LineKey key_of(const KeptLine& line) { return {line.stage, line.item, line.kind}; }

std::string word(Act act) {
  const auto* found = std::ranges::find(words, act, &std::pair<Act, std::string_view>::first);
  return std::string(found->second);
}

std::optional<Act> act_of(std::string_view its) {
  const auto* found = std::ranges::find(words, its, &std::pair<Act, std::string_view>::second);
  return found == words.end() ? std::nullopt : std::optional(found->first);
}

bool is_work(const KeptLine& line) { return line.kind == plan::CostKind::labour && line.order_unit == "h"; }

std::vector<Entry> in_force(const std::vector<Entry>& entries) {
  std::map<std::int64_t, std::int64_t> first;  // of each entry that corrects: the one in whose place it stands at last
  std::set<std::int64_t> corrected;
  for (const Entry& entry : entries) {
    if (entry.corrects == 0) continue;
    corrected.insert(entry.corrects);
    const auto known = first.find(entry.corrects);
    first[entry.number] = known == first.end() ? entry.corrects : known->second;
  }
  std::multimap<std::int64_t, const Entry*> standing;
  for (const Entry& entry : entries) {
    if (corrected.contains(entry.number)) continue;
    const auto known = first.find(entry.number);
    standing.emplace(known == first.end() ? entry.number : known->second, &entry);
  }
  std::vector<Entry> made;
  for (const auto& [place, entry] : standing) made.push_back(*entry);
  return made;
}

Result<void> check(const Kept& kept, const std::vector<Entry>& before, const Entry& entry) {
  if (!is_date(entry.date))
    return fault("ledger-date", shown(entry) + ": '" + entry.date + "' is not a day", "enter it as in 2026-11-28");
  if (auto numbers = check_numbers(entry); !numbers) return numbers;
  if (auto of = of_a_stage(entry.act) ? check_stage(kept, entry) : check_line(kept, entry); !of) return of;
  if (auto correction = check_correction(before, entry); !correction) return correction;
  return check_sum(before, entry);
}

}  // namespace estimate
