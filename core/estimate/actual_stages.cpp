#include <algorithm>
#include <cmath>
#include <map>
#include <set>

#include "estimate/actual_lines.h"
#include "estimate/change_lines.h"
#include "estimate/proportion.h"

namespace estimate {

using problem::Severity;
using units::Money;

namespace {

const Money none;

// Work of one rate in a stage.
struct Work {
  double hours = 0;
  std::string description;
};

struct Stage {
  StageActual& made;
  Actual& all;
  Counted& spent;
  Counted& to_come;
  std::map<plan::Id, Work> work{};             // by rate
  std::map<plan::Id, double> hours_by_rate{};  // worked, by the rate that they were entered for
  bool anything = false;                       // was entered
  bool no_price = false;

  std::string title() const {
    const auto known = takeoff::stage_of(made.stage);
    return known ? takeoff::title(*known) : made.stage;
  }

  void flag(const char* code, const std::string& text, const char* mend) {
    all.problems.push_back({Severity::flag, code, title() + ": " + text, mend, {}});
  }

  void add_line(const KeptLine& line) {
    if (!is_work(line)) return;
    Work& of = work[line.item];
    of.hours += line.order_quantity;
    of.description = line.description;
    made.estimate_hours += line.order_quantity;
    made.estimate_work += line.amount.value_or(none);
  }

  void add_hours(const Entry& entry) {
    made.hours += entry.quantity;
    if (!entry.line.item.empty()) hours_by_rate[entry.line.item] += entry.quantity;
    std::optional<Money> money = none;
    if (entry.price) {
      money = safe_times(*entry.price, entry.quantity);
    } else if (made.estimate_work > none && made.estimate_hours > 0) {
      money = in_proportion(made.estimate_work, entry.quantity, made.estimate_hours);
    } else {
      no_price = no_price || entry.quantity > 0;
    }
    made.spent_work += spent(money, title(), all.problems);
  }

  // The newest measure of the stage or of one of its rates takes the place of those before it.
  void add_measure(const Entry& entry) {
    auto known = std::ranges::find(made.measures, entry.line.item, &MeasureActual::item);
    if (known == made.measures.end()) {
      MeasureActual fresh;
      fresh.item = entry.line.item;
      known = made.measures.insert(made.measures.end(), fresh);
    } else if (entry.date < known->date) {
      return;
    }
    known->date = entry.date;
    known->done = entry.quantity;
    known->whole = entry.whole;
    known->unit = entry.unit;
  }

  const MeasureActual* measure_of(const plan::Id& item) const {
    for (const plan::Id& id : {item, plan::Id()})
      if (const auto found = std::ranges::find(made.measures, id, &MeasureActual::item); found != made.measures.end())
        return &*found;
    return nullptr;
  }

  void tell_measures() {
    for (MeasureActual& measure : made.measures) {
      const auto of = work.find(measure.item);
      measure.description = of == work.end() ? std::string() : of->second.description;
      measure.estimate_hours = measure.item.empty() ? made.estimate_hours : of == work.end() ? 0 : of->second.hours;
      const auto worked = hours_by_rate.find(measure.item);
      if (measure.item.empty()) {
        measure.hours = made.hours;
      } else if (worked != hours_by_rate.end()) {
        measure.hours = worked->second;
      }
      if (measure.done > measure.whole)
        flag("actual-more-done", "more is measured as done than there is to do", "measure the whole again");
    }
  }

  void tell_work() {
    for (const auto& [item, of] : work) {
      WorkActual one{item, of.description, of.hours, {}, {}};
      if (const auto worked = hours_by_rate.find(item); worked != hours_by_rate.end()) one.hours = worked->second;
      if (const MeasureActual* measure = measure_of(item)) one.done = measure->share();
      made.work.push_back(std::move(one));
    }
  }

  // Hours of the estimate that what is done was to take.
  double earned() const {
    double sum = 0;
    for (const WorkActual& one : made.work) sum += one.estimate_hours * one.done.value_or(0);
    return sum;
  }

  void measure_up() {
    tell_measures();
    tell_work();
    if (made.measures.empty()) {
      if (!anything) made.done = 0;
    } else if (made.estimate_hours > 0) {
      made.done = std::clamp(earned() / made.estimate_hours, 0.0, 1.0);
    } else {
      made.done = measure_of({}) ? measure_of({})->share() : made.measures.front().share();
    }
  }

  Money part(Money of, double share, double whole) {
    return to_come(in_proportion(of, share, whole), title(), all.problems);
  }

  void finish_line(const LineActual& line, double share) {
    const double rest = 1 - share;
    const Money used = line.use_entered ? line.used_money : std::min(line.spent, part(line.estimate, share, 1));
    const Money on_site = std::max(none, line.spent - used);
    const Money at_estimate = std::max(none, part(line.estimate, rest, 1) - on_site);
    const bool own = line.use_entered && share > 0;
    *made.finish_at_estimate += at_estimate;
    *made.finish_at_own += own ? std::max(none, part(used, rest, share) - on_site) : at_estimate;
  }

  void finish() {
    if (no_price)
      flag("actual-no-price", "its hours have no price, so they count 0", "enter what an hour costs with them");
    if (!made.done) {
      flag("actual-not-measured", "nobody measured how much is done, so its cost to finish is not known",
           "enter how much is done");
      all.unmeasured.push_back(made.stage);
      return;
    }
    const double rest = more(*made.done, 1);
    made.finish_at_estimate = part(made.estimate_work, rest, 1);
    made.finish_at_own = *made.done > 0 ? part(made.spent_work, rest, *made.done) : *made.finish_at_estimate;
    for (const LineActual& line : all.lines)
      if (line.key.stage == made.stage) finish_line(line, *made.done);
  }
};

bool touched(const LineActual& line) { return line.delivered > 0 || line.use_entered || line.returned > 0; }

void add_to(StageActual& total, const StageActual& stage) {
  total.estimate_stuff += stage.estimate_stuff;
  total.spent_stuff += stage.spent_stuff;
  total.estimate_work += stage.estimate_work;
  total.spent_work += stage.spent_work;
  total.estimate_hours += stage.estimate_hours;
  total.hours += stage.hours;
  *total.finish_at_estimate += stage.finish_at_estimate.value_or(none);
  *total.finish_at_own += stage.finish_at_own.value_or(none);
}

// In the order of building; a stage that there is not comes last.
std::vector<std::string> stages_of(const Kept& kept, const std::vector<Entry>& standing) {
  std::set<std::pair<std::size_t, std::string>> words;
  const auto take = [&words](const std::string& word) {
    const auto known = takeoff::stage_of(word);
    words.insert({known ? static_cast<std::size_t>(*known) : takeoff::all_stages.size(), word});
  };
  for (const KeptLine& line : kept.lines) take(line.stage);
  for (const Entry& entry : standing) take(entry.line.stage);
  std::vector<std::string> all;
  for (const auto& [place, word] : words) all.push_back(word);
  return all;
}

StageActual stage_of(const std::string& word, const Kept& kept, const std::vector<Entry>& standing, Actual& all,
                     Counted& spent, Counted& to_come) {
  StageActual made;
  made.stage = word;
  Stage stage{made, all, spent, to_come};
  for (const KeptLine& line : kept.lines)
    if (line.stage == word) stage.add_line(line);
  for (const LineActual& line : all.lines) {
    if (line.key.stage != word) continue;
    made.estimate_stuff += line.estimate;
    made.spent_stuff += line.spent;
    stage.anything = stage.anything || touched(line);
  }
  for (const Entry& entry : standing) {
    if (entry.line.stage != word) continue;
    if (entry.act == Act::hours) stage.add_hours(entry);
    if (entry.act == Act::measured) stage.add_measure(entry);
  }
  stage.anything = stage.anything || made.hours > 0;
  stage.measure_up();
  stage.finish();
  return made;
}

}  // namespace

double MeasureActual::share() const { return whole > 0 ? std::clamp(done / whole, 0.0, 1.0) : 0; }

std::optional<double> MeasureActual::own_rate() const {
  return hours && done > 0 ? std::optional(*hours / done) : std::nullopt;
}

void add_stages(const Kept& kept, const std::vector<Entry>& standing, Actual& made) {
  made.total.finish_at_estimate = made.total.finish_at_own = none;
  Counted spent, to_come;
  for (const std::string& word : stages_of(kept, standing)) {
    made.stages.push_back(stage_of(word, kept, standing, made, spent, to_come));
    add_to(made.total, made.stages.back());
  }
}

}  // namespace estimate
