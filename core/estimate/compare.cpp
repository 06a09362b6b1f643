#include "estimate/compare.h"

#include <algorithm>
#include <map>
#include <set>
#include <tuple>

namespace estimate {

namespace {

using Numbers = std::vector<std::size_t>;

struct Pair {
  const KeptLine* before = nullptr;
  const KeptLine* after = nullptr;
};

// What makes two lines one and the same, and, of several alike, what tells them apart.
auto key(const KeptLine& line) { return std::tie(line.stage, line.item, line.kind); }
auto words(const KeptLine& line) { return std::tie(line.description, line.unit, line.order_unit); }

struct Alike {
  std::vector<const KeptLine*> before;
  std::vector<const KeptLine*> after;
};

// Takes out of `lines` the first one with the same words.
const KeptLine* taken_out(std::vector<const KeptLine*>& lines, const KeptLine& like) {
  const auto found = std::ranges::find_if(lines, [&](const KeptLine* line) { return words(*line) == words(like); });
  if (found == lines.end()) return nullptr;
  const KeptLine* line = *found;
  lines.erase(found);
  return line;
}

void pair_up(Alike alike, std::map<const KeptLine*, const KeptLine*>& before_of) {
  std::vector<const KeptLine*> left;
  for (const KeptLine* after : alike.after) {
    const KeptLine* before = taken_out(alike.before, *after);
    if (before) {
      before_of[after] = before;
    } else {
      left.push_back(after);
    }
  }
  for (std::size_t i = 0; i < left.size() && i < alike.before.size(); ++i) before_of[left[i]] = alike.before[i];
}

// All lines of both, each in exactly one pair: those of `after` in their order, then what is gone.
std::vector<Pair> pairs(const Kept& before, const Kept& after) {
  using Key = decltype(key(std::declval<const KeptLine&>()));
  std::map<Key, Alike> groups;
  for (const KeptLine& line : before.lines) groups[key(line)].before.push_back(&line);
  for (const KeptLine& line : after.lines) groups[key(line)].after.push_back(&line);
  std::map<const KeptLine*, const KeptLine*> before_of;
  for (const auto& [same, alike] : groups) pair_up(alike, before_of);
  std::vector<Pair> all;
  std::set<const KeptLine*> used;
  for (const KeptLine& line : after.lines) {
    const auto found = before_of.find(&line);
    all.push_back({found == before_of.end() ? nullptr : found->second, &line});
    used.insert(all.back().before);
  }
  for (const KeptLine& line : before.lines)
    if (!used.contains(&line)) all.push_back({&line, nullptr});
  return all;
}

units::Money amount_of(const KeptLine* line) { return line && line->amount ? *line->amount : units::Money(); }

Difference difference(const KeptLine& a, const KeptLine& b) {
  if (std::tie(a.quantity, a.unit, a.order_quantity, a.order_unit) !=
      std::tie(b.quantity, b.unit, b.order_quantity, b.order_unit))
    return Difference::quantity;
  if (std::tie(a.unit_price, a.amount, a.by_others) != std::tie(b.unit_price, b.amount, b.by_others))
    return Difference::price;
  return Difference::words;
}

std::optional<Change> change_of(const Pair& pair) {
  Change change;
  change.by = amount_of(pair.after) - amount_of(pair.before);
  if (pair.before) change.before = *pair.before;
  if (pair.after) change.after = *pair.after;
  if (!pair.before) {
    change.what = Difference::added;
  } else if (!pair.after) {
    change.what = Difference::gone;
  } else if (*pair.before == *pair.after) {
    return std::nullopt;
  } else {
    change.what = difference(*pair.before, *pair.after);
  }
  return change;
}

// Where a line stands: its stage in the order of building, material before work.
std::pair<std::size_t, bool> place(const Change& change) {
  const KeptLine& line = line_of(change);
  const auto stage = takeoff::stage_of(line.stage);
  return {stage ? static_cast<std::size_t>(*stage) : takeoff::all_stages.size(), line.kind == plan::CostKind::labour};
}

std::vector<StepChange> steps(const Kept& before, const Kept& after) {
  std::vector<StepChange> all;
  std::vector<bool> used(before.steps.size());
  for (const KeptStep& step : after.steps) {
    StepChange change{step.code, step.name, {}, step.amount};
    for (std::size_t i = 0; i < used.size(); ++i) {
      if (used[i] || before.steps[i].code != step.code) continue;
      used[i] = true;
      change.before = before.steps[i].amount;
      break;
    }
    all.push_back(std::move(change));
  }
  // A step that is gone stands before the next one that both have.
  std::size_t next = all.size();
  for (std::size_t i = used.size(); i-- > 0;) {
    const KeptStep& step = before.steps[i];
    if (used[i]) {
      const auto found = std::ranges::find(all, step.code, &StepChange::code);
      next = static_cast<std::size_t>(found - all.begin());
    } else {
      all.insert(all.begin() + static_cast<std::ptrdiff_t>(next), {step.code, step.name, step.amount, {}});
    }
  }
  return all;
}

std::vector<plan::ElementId> touched(const std::vector<Change>& changes) {
  std::set<plan::ElementId> ids;
  for (const Change& change : changes)
    for (const auto* line : {&change.before, &change.after})
      if (*line) ids.insert((*line)->of.begin(), (*line)->of.end());
  return {ids.begin(), ids.end()};
}

}  // namespace

const KeptLine& line_of(const Change& change) { return change.after ? *change.after : *change.before; }

Comparison compare(const Kept& before, const Kept& after) {
  Comparison made;
  made.comparable = before.currency == after.currency && before.decimals == after.decimals;
  if (!made.comparable) return made;
  for (const Pair& pair : pairs(before, after)) {
    std::optional<Change> change = change_of(pair);
    if (!change) continue;
    made.direct_by += change->by;
    made.changes.push_back(*std::move(change));
  }
  std::ranges::stable_sort(made.changes, {}, place);
  made.steps = steps(before, after);
  made.price_by = after.price - before.price;
  for (const StepChange& step : made.steps) made.total_by += step.after - step.before;
  made.touched = touched(made.changes);
  return made;
}

}  // namespace estimate
