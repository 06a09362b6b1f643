#include <map>

#include "sheets/source.h"
#include "sheets/working_parts.h"

namespace sheets {

namespace {

Said hours_said(const Printed& printed, double hours, std::string from) {
  return {number_words(printed, hours), std::move(from)};
}

Table by_stage(const Printed& printed) {
  const estimate::Estimate& made = printed.results->estimate;
  Table table{{{printed.say("Stage"), Align::left, 0.4},
               {printed.say("Bought or hired"), Align::right, 0.17},
               {printed.say("Work"), Align::right, 0.17},
               {printed.say("Hours"), Align::right, 0.09},
               {printed.say("Amount"), Align::right, 0.17}},
              {},
              true};
  for (const auto& [stage, sum] : made.stages) {
    const std::string from = of_stage(stage, "amount");
    table.rows.push_back(
        {{Said(std::to_string(static_cast<int>(stage) + 1) + "  " + printed.say(takeoff::title(stage))),
          Said(money_words(printed, sum.material), from), Said(money_words(printed, sum.work), from),
          hours_said(printed, sum.hours, of_stage(stage, "hours")), Said(money_words(printed, sum.amount()), from)}});
  }
  const std::string from = of_step("direct");
  table.rows.push_back({{Said(printed.say("Direct cost")), Said(money_words(printed, made.total.material), from),
                         Said(money_words(printed, made.total.work), from),
                         hours_said(printed, made.total.hours, counted_here("the hours above")),
                         Said(money_words(printed, made.total.amount()), from)},
                        Row::Kind::total});
  return table;
}

}  // namespace

std::string step_words(const Printed& printed, const std::string& code, const std::string& name) {
  static const std::map<std::string, const char*> names{{"direct", "Direct cost"},      {"overhead", "Overhead"},
                                                        {"contingency", "Contingency"}, {"profit", "Profit"},
                                                        {"rounding", "Rounding"},       {"tax", "Tax"}};
  const auto known = names.find(code);
  return printed.say(known == names.end() ? name : known->second);
}

namespace {

Table steps(const Printed& printed) {
  const estimate::Priced& priced = printed.results->priced;
  Table table{{{printed.say("Step of the price"), Align::left, 0.4},
               {printed.say("How"), Align::left, 0.4},
               {printed.say("Amount"), Align::right, 0.2}},
              {},
              true};
  const Row before_tax{{Said(printed.say("Price before tax")), {}, Said(money_words(printed, priced.price), "price")},
                       Row::Kind::sum};
  bool told = false;
  for (const estimate::PriceStep& step : priced.steps) {
    if (step.code == "tax") table.rows.push_back(before_tax);
    told = told || step.code == "tax";
    table.rows.push_back({{Said(step_words(printed, step.code, step.name)), Said(step.working),
                           Said(money_words(printed, step.amount), of_step(step.code))}});
  }
  if (!told) table.rows.push_back(before_tax);
  table.rows.push_back({{Said(printed.say(priced.final ? "Total with tax" : "Total with tax, not final")),
                         {},
                         Said(money_words(printed, priced.total), "total")},
                        Row::Kind::total});
  return table;
}

}  // namespace

void add_price(const Printed& printed, Sheet& sheet) {
  if (printed.results->estimate.lines.empty()) return;
  const estimate::Priced& priced = printed.results->priced;
  Passage passage;
  passage.whole = true;
  passage.blocks.emplace_back(Heading{printed.say("Price"), {money_words(printed, priced.total), "total"}});
  passage.blocks.emplace_back(by_stage(printed));
  passage.blocks.emplace_back(Gap{});
  passage.blocks.emplace_back(steps(printed));
  passage.blocks.emplace_back(Paragraph{
      Said(filled(
               printed, "Over the cost: %1 as a markup, %2 as a margin on the price.",
               {number_words(printed, priced.markup * 100) + " %", number_words(printed, priced.margin * 100) + " %"}),
           "price"),
      Paragraph::Kind::note});
  sheet.passages.push_back(std::move(passage));
}

}  // namespace sheets
