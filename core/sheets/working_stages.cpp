#include <algorithm>
#include <set>

#include "sheets/source.h"
#include "sheets/working_parts.h"
#include "takeoff/working_lines.h"
#include "units/quantity.h"

namespace sheets {

namespace {

using estimate::OrderLine;

std::string joined(const std::vector<std::string>& words, const char* between) {
  std::string text;
  for (const std::string& word : words) text += (text.empty() ? "" : between) + word;
  return text;
}

// What is added to the need: a share of it, spare units, what whole packs round up.
std::string on_top(const Printed& printed, const OrderLine& line) {
  if (!(line.shares.needed > 0)) return {};
  const double share = line.shares.broken / line.shares.needed * 100;
  std::string text = share > 0 ? number_words(printed, share) + " %" : "";
  if (line.shares.spare > 0)
    text += (text.empty() ? "+ " : " + ") + filled(printed, "%1 spare", {number_words(printed, line.shares.spare)});
  return text;
}

// Where what is in the working comes from: elements, fields of the catalogue, the rate with its own source.
std::string sources(const Printed& printed, const OrderLine& line) {
  std::vector<std::string> from;
  std::set<std::string> known(line.of.begin(), line.of.end());
  for (const takeoff::Term& term : line.working.terms())
    if (!term.of.empty() && known.insert(term.of).second) from.push_back(term.of);
  const catalogue::Catalogue& all = *printed.job().catalogue;
  if (const auto* rate = line.work ? all.rate(line.item) : nullptr; rate && !rate->source.empty())
    from.push_back(rate->source);
  if (const auto* item = all.item(line.item)) {
    if (!item->rule_source.empty()) from.push_back(item->rule_source);
    if (item->price && !item->price->date.empty())
      from.push_back(filled(printed, "price of %1", {date_words(printed, item->price->date)}));
  }
  constexpr std::size_t most = 14;
  if (from.size() > most) {
    const std::size_t more = from.size() - most;
    from.resize(most);
    from.push_back(filled(printed, "and %1 more", {std::to_string(more)}));
  }
  return from.empty() ? "" : filled(printed, "From: %1", {joined(from, "; ")});
}

std::vector<Column> columns(const Printed& printed) {
  return {{printed.say("Line"), Align::left, 0.34},   {printed.say("Net"), Align::right, 0.12},
          {printed.say("On top"), Align::right, 0.1}, {printed.say("Order"), Align::right, 0.1},
          {printed.say("Unit"), Align::left, 0.08},   {printed.say("Price of one"), Align::right, 0.12},
          {printed.say("Amount"), Align::right, 0.14}};
}

Said amount_said(const Printed& printed, const OrderLine& line, const std::string& from) {
  if (line.by_others) return {printed.say("by others")};
  if (!line.amount) return {printed.say("no price")};
  return {money_words(printed, *line.amount), from};
}

void add_line(const Printed& printed, const OrderLine& line, Table& table) {
  const std::string from = of_line(printed, line);
  const std::vector<std::string> of = tags(printed, line.of);
  std::string name = name_of(printed, line.item);
  if (name == line.item) name = printed.say(line.description);
  if (!of.empty()) name += "  " + joined(of, " ");
  if (line.allowance) name += " (" + printed.say("allowance") + ")";
  std::string unit = unit_words(printed, line.order_quantity, line.order_unit);
  if (line.order_unit == "ton" && printed.job().heading.units == units::System::metric)
    unit = printed.say("short tons");
  table.rows.push_back({{Said(name), line.work ? Said() : Said(net_words(printed, line.quantity, line.unit), from),
                         Said(on_top(printed, line), from), Said(number_words(printed, line.order_quantity), from),
                         Said(unit), line.unit_price ? Said(money_words(printed, *line.unit_price), from) : Said(),
                         amount_said(printed, line, from)}});
  const auto note = [&](const std::string& text) {
    if (!text.empty()) table.rows.push_back({{Said(text)}, Row::Kind::note});
  };
  note(line.sentence);
  for (const std::string& text : working_lines(printed, line.working, printed.say("in all"))) note(text);
  note(sources(printed, line));
}

}  // namespace

std::string net_words(const Printed& printed, double quantity, const std::string& unit) {
  if (unit == "m2") return area_words(printed, quantity);
  if (unit == "m3") return volume_words(printed, quantity);
  if (unit == "kg") return weight_words(printed, quantity);
  if (unit == "m") {
    const bool us = printed.job().heading.units == units::System::us;
    return number_words(printed, us ? quantity / units::metres_per_foot : quantity) + (us ? " ft" : " m");
  }
  const std::string number = number_words(printed, quantity);
  return unit == "piece" || unit.empty() ? number : number + " " + unit_words(printed, quantity, unit);
}

std::vector<std::string> working_lines(const Printed& printed, const takeoff::Working& working,
                                       const std::string& name) {
  constexpr std::size_t longest = 400;  // three lines of the sheet
  const units::System system = printed.job().heading.units;
  std::string sentence = working.sentence(system);
  if (sentence.size() <= longest) return {std::move(sentence)};
  return takeoff::WorkingLines(system).tell(working, name);
}

void add_stages(const Printed& printed, Sheet& sheet) {
  for (const takeoff::Stage stage : takeoff::all_stages) {
    Table table{columns(printed), {}, true};
    for (const OrderLine& line : printed.results->estimate.lines)
      if (line.stage == stage) add_line(printed, line, table);
    if (table.rows.empty()) continue;
    const auto& stages = printed.results->estimate.stages;
    const auto total = stages.find(stage);
    const std::string hours = total == stages.end() ? "0" : number_words(printed, total->second.hours);
    const units::Money amount = total == stages.end() ? units::Money() : total->second.amount();
    const Said hours_said(filled(printed, "%1 h", {hours}), of_stage(stage, "hours"));
    const Said sum(money_words(printed, amount), of_stage(stage, "amount"));
    table.rows.push_back({{Said(printed.say(takeoff::title(stage))), {}, {}, hours_said, {}, {}, sum}, Row::Kind::sum});
    Passage passage;
    passage.stage = stage;
    passage.blocks.emplace_back(
        Heading{printed.say(takeoff::title(stage)), sum, std::to_string(static_cast<int>(stage) + 1)});
    passage.blocks.emplace_back(std::move(table));
    sheet.passages.push_back(std::move(passage));
  }
}

}  // namespace sheets
