#include "sheets/change_sheet.h"

#include <cstdlib>

#include "sheets/working_parts.h"
#include "units/number.h"

namespace sheets {

namespace {

using estimate::ChangeOrder;
using estimate::OrderedChange;
using units::Money;

struct Saying {
  const ChangeOrder& order;
  const Printed& printed;
  std::string say(const std::string& english) const { return printed.say(english); }
  // What is more has its sign too, so that a change is never taken for a price.
  std::string by(Money amount) const { return (amount > Money() ? "+" : "") + money_words(printed, amount); }
};

std::string quantity_words(const Saying& in, double quantity) {
  return (quantity > 0 ? "+" : "") + number_words(in.printed, quantity);
}

std::string days_words(const Saying& in, int days) {
  return filled(in.printed, std::abs(days) == 1 ? "%1 day" : "%1 days", {std::to_string(days)});
}

Table head(const Saying& in) {
  const estimate::ChangeInput& input = in.order.input;
  Table table{{{"", Align::left, 0.25}, {"", Align::left, 0.75}}, {}};
  const auto row = [&](const char* name, const std::string& value) {
    if (!value.empty()) table.rows.push_back({{Said(in.say(name)), Said(value)}});
  };
  row("Date", date_words(in.printed, input.date));
  row("Reason", in.say(words(input.reason)));
  row("Why", input.cause);
  row("Asked by", input.asked_by);
  row("Days added by this order", input.days == 0 ? in.say("none") : days_words(in, input.days));
  row("Because", input.days_cause);
  return table;
}

std::string title_of(const Saying& in, const OrderedChange& line) {
  if (line.stage.empty()) return in.say("Met on site, at the quote's unit prices");
  const auto stage = takeoff::stage_of(line.stage);
  const std::string title = stage ? in.say(takeoff::title(*stage)) : line.stage;
  return line.by == estimate::PricedBy::ticket ? filled(in.printed, "%1, time and material", {title}) : title;
}

// Overhead, profit and tax, of what comes and of what goes apart.
std::string on_top_words(const Saying& in, const estimate::KeptStep& step) {
  const std::string name = step_words(in.printed, step.code, step.name);
  if (step.name.starts_with("On what is added: ")) return filled(in.printed, "On what is added: %1", {name});
  if (step.name.starts_with("On what is credited: ")) return filled(in.printed, "On what is credited: %1", {name});
  return name;
}

Table lines(const Saying& in) {
  Table table{{{in.say("More, less"), Align::right, 0.14},
               {in.say("Unit"), Align::left, 0.1},
               {in.say("What"), Align::left, 0.54},
               {in.say("Amount"), Align::right, 0.22}},
              {}};
  std::string title;
  Money sum;
  for (std::size_t i = 0; i < in.order.lines.size(); ++i) {
    const OrderedChange& line = in.order.lines[i];
    const std::string from = "change/" + std::to_string(i);
    if (const std::string own = title_of(in, line); i == 0 || own != title)
      table.rows.push_back({{Said(title = own)}, Row::Kind::group});
    std::string name = name_of(in.printed, line.item);
    if (name == line.item) name = line.description;
    table.rows.push_back(
        {{Said(quantity_words(in, line.quantity), from), Said(unit_words(in.printed, line.quantity, line.unit)),
          Said(name), Said(in.by(line.amount), from)}});
    if (!line.working.empty()) table.rows.push_back({{Said(line.working)}, Row::Kind::note});
    sum += line.amount;
  }
  table.rows.push_back({{{}, {}, Said(in.say("The lines above")), Said(in.by(sum), "change/sum")}, Row::Kind::sum});
  for (std::size_t i = 0; i < in.order.on_top.size(); ++i) {
    const estimate::KeptStep& step = in.order.on_top[i];
    table.rows.push_back(
        {{{}, {}, Said(on_top_words(in, step)), Said(in.by(step.amount), "change-step/" + std::to_string(i))}});
    if (!step.working.empty()) table.rows.push_back({{Said(step.working)}, Row::Kind::note});
  }
  table.rows.push_back(
      {{{}, {}, Said(in.say("This order")), Said(in.by(in.order.amount), "change/sum")}, Row::Kind::total});
  return table;
}

bool by_unit_price(const ChangeOrder& order) {
  for (const OrderedChange& line : order.lines)
    if (line.by == estimate::PricedBy::unit_price) return true;
  return false;
}

Table contract(const Saying& in) {
  const estimate::ChangeInput& input = in.order.input;
  const std::string from = "change/running";
  Table table{{{in.say("The contract with it"), Align::left, 0.56},
               {in.say("Days"), Align::right, 0.16},
               {in.say("Amount"), Align::right, 0.28}},
              {}};
  const auto row = [&](const std::string& name, std::optional<int> days, const std::string& amount,
                       Row::Kind kind = Row::Kind::plain) {
    table.rows.push_back({{Said(name), days ? Said(std::to_string(*days), from) : Said(), Said(amount, from)}, kind});
  };
  row(in.say("As signed"), std::nullopt, money_words(in.printed, input.contract));
  for (const estimate::Earlier& one : input.earlier)
    row(filled(in.printed, "Order %1", {one.number}), one.days, in.by(one.amount));
  if (!input.earlier.empty())
    row(in.say("Before this order"), in.order.days - input.days, money_words(in.printed, in.order.before),
        Row::Kind::sum);
  row(filled(in.printed, "This order %1", {input.number}), input.days, in.by(in.order.amount));
  row(in.say("The contract from now on"), in.order.days, money_words(in.printed, in.order.after), Row::Kind::total);
  return table;
}

void add_reason(const Saying& in, Sheet& sheet) {
  Passage passage;
  passage.blocks.emplace_back(head(in));
  if (in.order.input.reason == estimate::Reason::hidden_ground)
    passage.blocks.emplace_back(Caution{in.say(
        "Where the ground is not what was expected (water, soft or filled ground, a pipe or a cable, an old "
        "footing) work stops there until a competent person has looked at it; lines under the ground are located "
        "again before digging on. Local code decides, and where it asks for one a licensed engineer.")});
  if (!in.order.final)
    passage.blocks.emplace_back(Framed{
        in.say("Not final"), {Said(in.say("This order can't be signed yet: see what is to be mended."))}, false});
  sheet.passages.push_back(std::move(passage));
}

void add_lines(const Saying& in, Sheet& sheet) {
  Passage passage;
  passage.blocks.emplace_back(Heading{in.say("What comes and what goes"), {in.by(in.order.amount), "change/sum"}});
  if (in.order.lines.empty())
    passage.blocks.emplace_back(Paragraph{Said(in.say("Nothing comes and nothing goes.")), Paragraph::Kind::body});
  else
    passage.blocks.emplace_back(lines(in));
  if (by_unit_price(in.order))
    passage.blocks.emplace_back(Paragraph{
        Said(in.say("What goes by a unit price of the quote has nothing on top of it.")), Paragraph::Kind::note});
  sheet.passages.push_back(std::move(passage));
}

void add_contract(const Saying& in, Sheet& sheet) {
  Passage passage;
  passage.whole = true;
  passage.blocks.emplace_back(contract(in));
  passage.blocks.emplace_back(Paragraph{Said(in.order.running, "change/running"), Paragraph::Kind::note});
  passage.blocks.emplace_back(Heading{in.say("Agreed"), {}, "", 2});
  passage.blocks.emplace_back(
      Paragraph{Said(in.say("Both sign before the work of this order begins. Where it can't wait, hours, machines and "
                            "material go on a ticket that is signed the same day.")),
                Paragraph::Kind::body});
  passage.blocks.emplace_back(Blanks{{in.say("Customer"), in.say("Name"), in.say("Date")}, 1});
  passage.blocks.emplace_back(Blanks{{in.say("Contractor"), in.say("Name"), in.say("Date")}, 1});
  sheet.passages.push_back(std::move(passage));
}

void add_problems(const Saying& in, Sheet& sheet) {
  if (in.order.problems.empty()) return;
  Table table{{{in.say("What"), Align::left, 0.55}, {in.say("What to do"), Align::left, 0.45}}, {}, true};
  for (const problem::Problem& said : in.order.problems)
    table.rows.push_back({{Said(in.say(said.text)), Said(in.say(said.mend))}});
  Passage passage;
  passage.blocks.emplace_back(Heading{in.say("To be mended or decided"), {}, "", 2});
  passage.blocks.emplace_back(std::move(table));
  sheet.passages.push_back(std::move(passage));
}

}  // namespace

Sheet change_sheet(const ChangeOrder& order, const Printed& printed) {
  const Saying in{order, printed};
  Sheet sheet;
  sheet.word = "change-order";
  sheet.title = filled(printed, "Change order %1", {order.input.number});
  sheet.money = true;
  const plan::Heading& heading = printed.job().heading;
  for (const std::string& line : {heading.customer, heading.place})
    if (!line.empty()) sheet.about.push_back(line);
  if (heading.invented) sheet.about.push_back(in.say("An invented job: its place and its people are made up."));
  add_reason(in, sheet);
  add_lines(in, sheet);
  add_problems(in, sheet);
  add_contract(in, sheet);
  return sheet;
}

std::optional<std::string> working_of_change(const ChangeOrder& order, const std::string& source) {
  if (source == "change/running") return order.running;
  if (source == "change/sum") {
    std::string text;
    for (const OrderedChange& line : order.lines)
      text += (text.empty() ? "" : " + ") + line.description + " " + std::to_string(line.amount.coins());
    for (const estimate::KeptStep& step : order.on_top)
      text += " + " + step.name + " " + std::to_string(step.amount.coins());
    return text.empty() ? "nothing comes and nothing goes"
                        : text + " = " + std::to_string(order.amount.coins()) + " in all, in coins";
  }
  const std::size_t slash = source.find('/');
  const auto number = slash == std::string::npos ? std::nullopt : units::read_number(source.substr(slash + 1));
  if (!number || *number < 0) return std::nullopt;
  const auto at = static_cast<std::size_t>(*number);
  if (source.starts_with("change/") && at < order.lines.size())
    return order.lines[at].description + ": " + order.lines[at].working;
  if (source.starts_with("change-step/") && at < order.on_top.size())
    return order.on_top[at].name + ": " + order.on_top[at].working;
  return std::nullopt;
}

}  // namespace sheets
