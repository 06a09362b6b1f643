#include <algorithm>

#include "ui/money/money_fields.h"
#include "ui/panels/panel_words.h"

namespace ui {

namespace {

using Answer = estimate::ChecklistPoint::Answer;

const plan::AddedLine* line_of(const plan::Job& job, const std::string& code) {
  const auto found = std::ranges::find(job.offer.lines, code, &plan::AddedLine::id);
  return found == job.offer.lines.end() ? nullptr : &*found;
}

std::string answer_of(const plan::Job& job, const std::string& code) {
  const plan::AddedLine* line = line_of(job, code);
  return line == nullptr ? "open" : line->nothing_on_purpose ? "nothing" : "line";
}

plan::Job answered(const plan::Job& job, const estimate::ChecklistPoint& point, const std::string& answer) {
  plan::Job after = job;
  auto& lines = after.offer.lines;
  if (answer == "open") {
    std::erase_if(lines, [&](const plan::AddedLine& line) { return line.id == point.code; });
    return after;
  }
  auto found = std::ranges::find(lines, point.code, &plan::AddedLine::id);
  if (found == lines.end()) {
    plan::AddedLine line;
    line.id = point.code;
    line.stage = takeoff::word(point.stage);
    line.kind = point.kind;
    line.text = said(point.name).toStdString();
    found = lines.insert(lines.end(), std::move(line));
  }
  found->nothing_on_purpose = answer == "nothing";
  if (found->nothing_on_purpose) found->unit_price = {};
  return after;
}

// In the estimate by a line that is the thing itself: nothing is to be chosen.
bool by_itself(const plan::Job& job, const estimate::ChecklistPoint& point) {
  return point.answer == Answer::line && line_of(job, point.code) == nullptr;
}

}  // namespace

std::vector<Field> checklist_fields(const plan::Job& job, const estimate::Estimate& estimate) {
  std::vector<Field> all;
  for (const estimate::ChecklistPoint& point : estimate::checklist(job, estimate)) {
    Field field;
    field.id = "check/" + point.code;
    field.label = said(point.name);
    if (all.empty()) field.group = Fields::tr("What every estimate forgets");
    field.step = Fields::tr("Change %1").arg(field.label.toLower());
    if (by_itself(job, point)) {
      field.editor = Editor::told;
      const QString told = shown_money(point.amount, job.heading);
      field.get = [told](const plan::Job&) -> Value { return told.toStdString(); };
      field.set = [](const plan::Job& same, const Value&) { return same; };
    } else {
      field.editor = Editor::words;
      field.choices = {{"open", Fields::tr("not looked at")},
                       {"line", Fields::tr("a line")},
                       {"nothing", Fields::tr("nothing, on purpose")}};
      field.get = [code = point.code](const plan::Job& of) -> Value { return answer_of(of, code); };
      field.set = [point](const plan::Job& of, const Value& value) {
        const auto* answer = std::get_if<std::string>(&value);
        return answer ? answered(of, point, *answer) : of;
      };
    }
    all.push_back(std::move(field));
  }
  return all;
}

}  // namespace ui
