// Options beside the base, as fields; and how an option comes out of what is selected on the plan.
#include <algorithm>

#include "results/options.h"
#include "ui/money/offer_making.h"

namespace ui {

namespace {

// A way to a member of the i-th option.
template <class Member>
auto of_option(std::size_t i, Member member) {
  return [i, member](auto& offer) {
    auto* option = entry(offer.options, i);
    return option ? &(option->*member) : nullptr;
  };
}

// A way to a member of one of its lines.
template <class Member>
auto of_line(std::size_t i, std::size_t line, Member member) {
  return [i, line, member](auto& offer) {
    auto* option = entry(offer.options, i);
    auto* of = option ? entry(option->lines, line) : nullptr;
    return of ? &(of->*member) : nullptr;
  };
}

Field as_long_text(Field field) {
  field.editor = Editor::long_text;
  return field;
}

Field told(std::string id, const QString& label, const std::vector<plan::ElementId>& ids) {
  QStringList words;
  for (const plan::ElementId& one : ids) words << QString::fromStdString(one);
  Field field;
  field.id = std::move(id);
  field.label = label;
  field.editor = Editor::told;
  field.get = [said = words.join(QStringLiteral(", ")).toStdString()](const plan::Job&) -> Value { return said; };
  field.set = [](const plan::Job& same, const Value&) { return same; };
  return field;
}

std::vector<Field> line_fields(const plan::Job& job, std::size_t i, std::size_t line) {
  using plan::AddedLine;
  const std::string name = "option/" + std::to_string(i) + "/line";
  const auto id = [&](const char* field) { return numbered(name.c_str(), line, field); };
  return {of_offer(id("text"), Fields::tr("Line %1").arg(line + 1), of_line(i, line, &AddedLine::text)),
          as_words(of_offer(id("stage"), Fields::tr("Stage"), of_line(i, line, &AddedLine::stage)), stage_choices({})),
          as_words(of_offer(id("kind"), Fields::tr("Kind"), of_line(i, line, &AddedLine::kind)), kind_choices()),
          within(of_offer(id("quantity"), Fields::tr("How many"), of_line(i, line, &AddedLine::quantity)), 0, 1e6),
          of_offer(id("unit"), Fields::tr("Unit"), of_line(i, line, &AddedLine::unit)),
          money_of_offer(job, id("price"), Fields::tr("Price of one"), of_line(i, line, &AddedLine::unit_price)),
          action(id("out"), Fields::tr("Take the line out"), [i, line](plan::Offer& offer) {
            auto* option = entry(offer.options, i);
            if (option && line < option->lines.size())
              option->lines.erase(option->lines.begin() + static_cast<std::ptrdiff_t>(line));
          })};
}

// The base becomes what it would be with the option, which is gone then.
Field taken(std::size_t i) {
  Field field;
  field.id = numbered("option", i, "take");
  field.label = Fields::tr("It is taken: put it into the job");
  field.editor = Editor::action;
  field.step = Fields::tr("Take an option");
  field.get = [](const plan::Job&) -> Value { return {}; };
  field.set = [i](const plan::Job& job, const Value&) {
    if (i >= job.offer.options.size()) return job;
    plan::Job after = results::with_option(job, job.offer.options[i]);
    after.offer.options.erase(after.offer.options.begin() + static_cast<std::ptrdiff_t>(i));
    return after;
  };
  return field;
}

std::vector<Field> one_option(const plan::Job& job, std::size_t i) {
  using plan::Option;
  const Option& option = job.offer.options[i];
  std::vector<Field> one{
      of_offer(numbered("option", i, "name"), Fields::tr("Name"), of_option(i, &Option::name)),
      as_long_text(of_offer(numbered("option", i, "text"), Fields::tr("Text"), of_option(i, &Option::text))),
      of_offer(numbered("option", i, "alternate"), Fields::tr("In place of a part of the base"),
               of_option(i, &Option::alternate))};
  std::vector<plan::ElementId> brought;
  for (const plan::ElementPtr& element : option.elements)
    if (element) brought.push_back(element->id);
  if (!brought.empty()) one.push_back(told(numbered("option", i, "elements"), Fields::tr("It brings"), brought));
  if (!option.without.empty())
    one.push_back(told(numbered("option", i, "without"), Fields::tr("It leaves out"), option.without));
  for (std::size_t line = 0; line < option.lines.size(); ++line) add(one, line_fields(job, i, line));
  one.push_back(action(numbered("option", i, "add"), Fields::tr("Add a line to it"), [i](plan::Offer& offer) {
    auto* of = entry(offer.options, i);
    if (!of) return;
    plan::AddedLine line;
    line.id = free_name(of->lines, &plan::AddedLine::id, of->id + "-line-");
    line.stage = takeoff::word(takeoff::Stage::protect);
    of->lines.push_back(std::move(line));
  }));
  one.push_back(taken(i));
  one.push_back(take_out(numbered("option", i, "out"), &plan::Offer::options, i));
  return one;
}

}  // namespace

std::vector<Field> option_fields(const plan::Job& job) {
  std::vector<Field> all;
  for (std::size_t i = 0; i < job.offer.options.size(); ++i)
    add(all, headed(Fields::tr("Option %1").arg(i + 1), one_option(job, i)));
  all.push_back(action("option/add", Fields::tr("Add an option of lines"), [](plan::Offer& offer) {
    plan::Option option;
    option.id = free_name(offer.options, &plan::Option::id, "option-");
    option.name = Fields::tr("Option").toStdString();
    offer.options.push_back(std::move(option));
  }));
  return all;
}

plan::Job with_option_of(const plan::Job& job, const std::vector<plan::ElementId>& ids, bool leaves_out) {
  plan::Job after = job;
  plan::Option option;
  option.id = free_name(job.offer.options, &plan::Option::id, "option-");
  for (const plan::ElementId& id : ids) {
    const auto found = std::ranges::find(job.elements, id, [](const plan::ElementPtr& one) { return one->id; });
    if (found == job.elements.end()) continue;
    if (leaves_out) {
      option.without.push_back(id);
    } else {
      option.elements.push_back(*found);
      after = plan::without(after, id);
    }
    option.name += (option.name.empty() ? "" : ", ") + ((*found)->name.empty() ? id : (*found)->name);
  }
  if (option.name.empty()) return job;
  if (leaves_out) option.name = Fields::tr("Without %1").arg(QString::fromStdString(option.name)).toStdString();
  option.alternate = leaves_out;
  after.offer.options.push_back(std::move(option));
  return after;
}

}  // namespace ui
