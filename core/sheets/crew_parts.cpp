#include "sheets/crew_parts.h"

#include <algorithm>
#include <cmath>

#include "estimate/labour.h"
#include "sheets/parts.h"
#include "sheets/plan_figure.h"
#include "sheets/source.h"

namespace sheets {

using takeoff::Stage;

bool nothing_to_do(const Printed& printed) { return printed.results->estimate.lines.empty(); }

std::shared_ptr<const Figure> plan_with(const Printed& printed, const PlanKeeps& keeps) {
  Figure figure =
      plan_figure(*printed.results, {.levels = std::ranges::find(keeps.signs, Sign::level) != keeps.signs.end()});
  std::erase_if(figure.parts, [&](const Part& part) {
    const plan::ElementId& of = std::visit([](const auto& one) -> const plan::ElementId& { return one.of; }, part);
    const plan::Element* element = printed.job().find(of);
    const Mark* mark = std::get_if<Mark>(&part);
    if (mark && mark->sign != Sign::tag && std::ranges::find(keeps.signs, mark->sign) == keeps.signs.end()) return true;
    return element && !keeps.element(*element);
  });
  settle(figure);
  return std::make_shared<const Figure>(std::move(figure));
}

Sheet sheet_named(const Printed& printed, const std::string& word, const std::string& title) {
  Sheet sheet;
  sheet.word = word;
  sheet.title = printed.say(title);
  return sheet;
}

std::string joined(const std::vector<std::string>& parts, const std::string& between) {
  std::string text;
  for (const std::string& part : parts)
    if (!part.empty()) text += (text.empty() ? "" : between) + part;
  return text;
}

std::string stage_number(Stage stage) { return std::to_string(static_cast<int>(stage) + 1); }

std::string stage_title(const Printed& printed, Stage stage) { return printed.say(takeoff::title(stage)); }

std::string hours_words(const Printed& printed, double hours) {
  return number_words(printed, hours >= 0.1 ? std::round(hours * 10) / 10 : hours) + " h";
}

std::map<Stage, Days> stage_days(const Printed& printed) {
  constexpr double dust = 1e-9;
  const plan::Choices& choices = printed.job().choices;
  std::map<Stage, Days> made;
  double before = 0;
  for (const auto& [stage, total] : printed.results->estimate.stages) {
    if (!(total.hours > 0)) continue;
    Days days;
    days.hours = total.hours;
    days.days = estimate::crew_days(total.hours, choices.crew, choices.day_hours);
    const double after = before + days.days;
    days.first = static_cast<int>(std::floor(before + dust)) + 1;
    days.last = std::max(days.first, static_cast<int>(std::ceil(after - dust)));
    before = after;
    made.emplace(stage, days);
  }
  return made;
}

std::string days_words(const Printed& printed, const Days& days) {
  if (!(days.days > 0)) return "";
  const std::string first = std::to_string(days.first), last = std::to_string(days.last);
  if (days.first == days.last) return filled(printed, "day %1", {first});
  return filled(printed, "days %1 to %2", {first, last});
}

Heading stage_heading(const Printed& printed, Stage stage) {
  Heading heading{stage_title(printed, stage), {}, stage_number(stage)};
  const auto all = stage_days(printed);
  const auto found = all.find(stage);
  if (found == all.end()) return heading;
  heading.right = {joined({hours_words(printed, found->second.hours), days_words(printed, found->second)}, " · "),
                   of_stage(stage, "hours")};
  return heading;
}

const takeoff::StageNotes& notes_of(const Printed& printed, Stage stage) {
  static const takeoff::StageNotes none;
  const auto& all = printed.results->takeoff.stages;
  const auto found = std::ranges::find(all, stage, &takeoff::StageNotes::stage);
  return found == all.end() ? none : *found;
}

std::vector<Hold> holds(const Printed& printed, Stage stage) {
  std::vector<Hold> made;
  for (const catalogue::HoldPoint& point : notes_of(printed, stage).hold_points) {
    const std::string limit = point.limit.empty() ? "" : printed.say(point.limit);
    const std::string before = point.before.empty() ? "" : filled(printed, "before %1", {printed.say(point.before)});
    Hold hold{printed.say(point.look_at), joined({limit, before}, "; "),
              point.who.empty() ? "" : printed.say(point.who)};
    for (const plan::LookedAt& seen : printed.job().looked_at) {
      if (seen.stage != takeoff::word(stage) || seen.look_at != point.look_at) continue;
      hold.who = seen.who;
      hold.when = date_words(printed, seen.when);
    }
    made.push_back(std::move(hold));
  }
  return made;
}

std::vector<Caution> cautions(const Printed& printed, Stage stage) {
  std::vector<Caution> made;
  for (const catalogue::Caution& caution : notes_of(printed, stage).cautions) {
    const std::string text = printed.say(caution.text);
    const bool theirs =
        caution.who.empty() || caution.who == "crew lead" || caution.text.find("decides") < std::string::npos;
    made.push_back({theirs ? text : filled(printed, "%1 Decided by: %2.", {text, printed.say(caution.who)})});
  }
  return made;
}

std::optional<Paragraph> waits_for(const Printed& printed, Stage stage) {
  std::vector<std::string> open;
  std::vector<Stage> below = takeoff::covers(stage);
  std::ranges::sort(below);
  for (const Stage covered : below) {
    const std::vector<Hold> points = holds(printed, covered);
    const bool all_seen = std::ranges::all_of(points, [](const Hold& hold) { return !hold.when.empty(); });
    if (!all_seen) open.push_back(stage_number(covered) + " " + stage_title(printed, covered));
  }
  if (open.empty()) return std::nullopt;
  const std::string names = joined(open, ", ");
  return Paragraph{{filled(printed, "Start only when the hold points of these stages are signed: %1.", {names}),
                    counted_here("numbers of the stages that this one covers")},
                   Paragraph::Kind::strong};
}

}  // namespace sheets
