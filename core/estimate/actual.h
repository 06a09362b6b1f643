// Estimate against what was really used: line by line, stage by stage, and what it will still cost.
//
// Money of a line: a delivery counts at its own price, else at the price confirmed last for the line before it, else
// in proportion to the line's estimated amount. What is used or goes back counts in proportion to what was delivered;
// where nothing was delivered (stock of the yard), use counts as a delivery would. Each entry is rounded once to the
// coin, half away from zero; all sums are exact, so that lines add up to stages and stages to the whole.
//
// Hours count at the price entered with them, else in proportion to what the stage's estimated hours cost.
//
// Cost to finish a stage, by measure: the part that is not done at the estimate's rate, and at the own rate so far
// (what was spent for the part that is done). Of stuff, what lies on the site is taken off: it is paid. Where its use
// was not entered, it counts as used in step with the stage, and the own rate is the estimate's.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "estimate/ledger.h"
#include "plan/job.h"

namespace estimate {

// Lines of one key and one unit together. Quantities are in `unit`, as it is bought.
struct LineActual {
  LineKey key;
  std::string description;
  std::string unit;
  double net = 0;  // needed, in net_unit (SI, pieces)
  std::string net_unit;
  std::optional<double> needed;  // the same in `unit`, where the item's data say how
  double estimated = 0;          // to be ordered
  units::Money estimate;
  bool priced = true;        // false: the estimate has no amount, which counts 0
  Act state = Act::planned;  // the furthest that any of it got
  double ordered = 0, confirmed = 0, delivered = 0, used = 0, returned = 0;
  double cancelled = 0;   // the part of `returned` that never came: taken off the order
  double coming() const;  // ordered, neither delivered nor cancelled; from 0 up
  double left() const;    // on the site; 0 where nothing was delivered, below 0 where a delivery was not entered
  bool use_entered = false;
  units::Money delivered_money, returned_money, used_money;
  units::Money spent;  // delivered less returned
  units::Money left_money() const { return spent - used_money; }
  units::Money difference() const { return spent - estimate; }
};

// How much of a stage, or of the work of one rate in it, is done: the newest measure.
struct MeasureActual {
  plan::Id item;  // empty: the whole stage
  std::string description;
  std::string date;
  double done = 0;
  double whole = 0;
  std::string unit;
  double share() const;         // done / whole, at most 1
  double estimate_hours = 0;    // for the whole
  std::optional<double> hours;  // worked at it to date; nothing: its hours were not entered apart
  double estimate_rate() const { return estimate_hours / whole; }  // hours for one `unit`
  std::optional<double> own_rate() const;                          // nothing as long as nothing is done
};

// The work of one rate in a stage.
struct WorkActual {
  plan::Id item;  // the rate
  std::string description;
  double estimate_hours = 0;
  std::optional<double> hours;  // entered for it by name
  std::optional<double> done;   // share, 0..1, by its own measure or the stage's
};

struct StageActual {
  std::string stage;
  units::Money estimate_stuff, spent_stuff;  // all lines but work by the hour
  units::Money estimate_work, spent_work;
  double estimate_hours = 0, hours = 0;
  std::vector<WorkActual> work;  // by rate
  std::vector<MeasureActual> measures;
  // By measure, weighed by the estimate's hours; work that nobody measured counts as not begun. Nothing: none of the
  // stage was measured although something was entered.
  std::optional<double> done;
  std::optional<units::Money> finish_at_estimate;
  std::optional<units::Money> finish_at_own;
  units::Money estimate() const { return estimate_stuff + estimate_work; }
  units::Money spent() const { return spent_stuff + spent_work; }
  units::Money difference() const { return spent() - estimate(); }
};

struct Actual {
  std::string currency;
  int decimals = 2;
  std::vector<LineActual> lines;    // of the estimate but work by the hour, in its order
  std::vector<StageActual> stages;  // in the order of building; those with lines or entries
  StageActual total;  // their sums; `stage` empty, no measures. Cost to finish is of the stages that have one
  std::vector<std::string> unmeasured;  // words of the stages that have none
  std::vector<problem::Problem> problems;
};

// Entries that `check` refuses count as not there and are told (problem). Flags: actual-no-price (delivered or worked
// without any price: counts 0), actual-more-used (than was delivered), actual-more-done (than there is to do),
// actual-not-measured. Problem: actual-large (past 9e15 coins: counts 0).
Actual actual(const plan::Job& job, const Kept& kept, const std::vector<Entry>& entries);

// The entries that bring what was ordered to what another version of the job needs: an order of what is more, a return
// of what is less, in its lines' order. Lines nothing was ordered of are left alone, lines that are gone are returned.
// The note says what the supplier asks: lead time, least order, the item's rule. Nothing is entered by this.
std::vector<Entry> after_edit(const plan::Job& job, const Kept& now, const Actual& so_far, const std::string& date);

}  // namespace estimate
