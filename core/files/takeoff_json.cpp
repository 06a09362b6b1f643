#include <algorithm>

#include "files/files.h"
#include "files/json_write.h"

namespace files {

namespace {

Value texts(const std::vector<std::string>& all) {
  Value list = list_value();
  for (const std::string& one : all) add(list, text_value(one));
  return list;
}

Value coins(const std::optional<units::Money>& money) { return money ? number_value(money->coins()) : null_value(); }

Value job_of(const plan::Job& job) {
  Value made = object_value();
  add(made, "name", text_value(job.heading.name));
  add(made, "units", text_value(job.heading.units == units::System::us ? "us" : "metric"));
  add(made, "currency", text_value(job.heading.currency));
  return made;
}

// A measure that is taken stretch by stretch (sealed joints, gaps, rods) comes once for each and stands here as their
// sum.
Value measures_of(const takeoff::Takeoff& takeoff, const plan::ElementId& id) {
  std::vector<std::pair<std::string, double>> sums;
  for (const takeoff::Measures& measures : takeoff.measures) {
    if (measures.element != id) continue;
    for (const auto& [name, value] : measures.values) {
      const auto known = std::ranges::find(sums, name, &std::pair<std::string, double>::first);
      if (known == sums.end())
        sums.emplace_back(name, value);
      else
        known->second += value;
    }
  }
  Value made = object_value();
  for (const auto& [name, value] : sums) add(made, name, number_value(value));
  return made;
}

Value elements_of(const results::Results& results) {
  Value list = list_value();
  for (const plan::ElementPtr& element : results.job->elements) {
    Value one = object_value();
    add(one, "id", text_value(element->id));
    add(one, "kind", text_value(plan::kind_name(element->kind)));
    add(one, "name", text_value(element->name));
    add(one, "measures", measures_of(results.takeoff, element->id));
    add(list, std::move(one));
  }
  return list;
}

Value working_of(const takeoff::Working& working) {
  Value list = list_value();
  for (const takeoff::Term& term : working.terms()) {
    Value one = object_value();
    add(one, "term", text_value(term.name));
    add(one, "value", number_value(term.amount.value));
    add(one, "unit", text_value(units::name(term.amount.unit)));
    add(one, "of", text_value(term.of));
    add(list, std::move(one));
  }
  return list;
}

Value line_of(const estimate::OrderLine& line) {
  Value one = object_value();
  add(one, "stage", text_value(takeoff::word(line.stage)));
  add(one, "item", text_value(line.item));
  add(one, "description",
      text_value(line.description + (line.by_others ? " (by others)" : "") + (line.allowance ? " (allowance)" : "")));
  add(one, "elements", texts(line.of));
  add(one, "quantity", number_value(line.quantity));
  add(one, "unit", text_value(line.unit));
  add(one, "order_quantity", number_value(line.order_quantity));
  add(one, "order_unit", text_value(line.order_unit));
  add(one, "unit_price", coins(line.unit_price));
  add(one, "amount", coins(line.amount));
  add(one, "working", working_of(line.working));
  return one;
}

Value problem_of(const problem::Problem& said) {
  Value one = object_value();
  add(one, "severity", text_value(problem::word(said.severity)));
  add(one, "code", text_value(said.code));
  add(one, "text", text_value(said.text));
  add(one, "mend", text_value(said.mend));
  add(one, "element", text_value(said.place.element));
  if (said.place.at) {
    Value at = object_value();
    add(at, "x", number_value(said.place.at->x));
    add(at, "y", number_value(said.place.at->y));
    add(one, "at", std::move(at));
  }
  return one;
}

Value check_of(const takeoff::Check& check) {
  Value one = object_value();
  add(one, "element", text_value(check.of));
  add(one, "name", text_value(check.name));
  add(one, "where", text_value(check.where));
  add(one, "value", number_value(check.working.amount().value));
  add(one, "unit", text_value(units::name(check.working.amount().unit)));
  add(one, check.at_most ? "at_most" : "at_least", number_value(check.limit));
  add(one, "passes", truth_value(check.passes()));
  add(one, "source", text_value(check.source));
  add(one, "working", working_of(check.working));
  return one;
}

Value cut_of(const takeoff::Cut& cut) {
  Value one = object_value();
  add(one, "element", text_value(cut.of));
  add(one, "item", text_value(cut.item));
  add(one, "what", text_value(cut.what));
  add(one, "where", text_value(cut.where));
  add(one, "count", number_value(std::int64_t{cut.count}));
  add(one, "kept_m", number_value(cut.kept));
  add(one, "angle_rad", number_value(cut.angle));
  add(one, "length_m", number_value(cut.length));
  add(one, "thickness_m", number_value(cut.thickness));
  add(one, "keep", text_value(cut.keep));
  add(one, "from_offcut", truth_value(cut.from_offcut));
  return one;
}

Value stage_of(const takeoff::StageNotes& notes) {
  Value points = list_value();
  for (const catalogue::HoldPoint& point : notes.hold_points) {
    Value one = object_value();
    add(one, "look_at", text_value(point.look_at));
    add(one, "limit", text_value(point.limit));
    add(one, "before", text_value(point.before));
    add(one, "who", text_value(point.who));
    add(one, "source", text_value(point.source));
    add(points, std::move(one));
  }
  Value cautions = list_value();
  for (const catalogue::Caution& caution : notes.cautions) {
    Value one = object_value();
    add(one, "text", text_value(caution.text));
    add(one, "who", text_value(caution.who));
    add(one, "source", text_value(caution.source));
    add(cautions, std::move(one));
  }
  Value made = object_value();
  add(made, "stage", text_value(takeoff::word(notes.stage)));
  add(made, "hold_points", std::move(points));
  add(made, "cautions", std::move(cautions));
  return made;
}

Value totals_of(const results::Results& results) {
  Value stages = object_value();
  for (const auto& [stage, total] : results.estimate.stages)
    add(stages, takeoff::word(stage), number_value(total.amount().coins()));
  Value made = object_value();
  add(made, "stages", std::move(stages));
  add(made, "amount", number_value(results.estimate.total.amount().coins()));
  add(made, "final", truth_value(results.final()));
  return made;
}

template <class Things, class Make>
Value list_of(const Things& things, Make make) {
  Value list = list_value();
  for (const auto& thing : things) add(list, make(thing));
  return list;
}

}  // namespace

std::string takeoff_json(const results::Results& results) {
  Value made = object_value();
  add(made, "job", job_of(*results.job));
  add(made, "elements", elements_of(results));
  add(made, "lines", list_of(results.estimate.lines, line_of));
  add(made, "problems", list_of(results.problems(), problem_of));
  add(made, "stages", list_of(results.takeoff.stages, stage_of));
  add(made, "totals", totals_of(results));
  add(made, "checks", list_of(results.takeoff.checks, check_of));
  add(made, "cuts", list_of(results.takeoff.cuts, cut_of));
  return write_json(made);
}

}  // namespace files
