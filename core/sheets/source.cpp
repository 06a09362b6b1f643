#include "sheets/source.h"

#include <algorithm>
#include <map>
#include <utility>
#include <vector>

#include "estimate/money_words.h"
#include "results/options.h"
#include "sheets/order_parts.h"
#include "sheets/quote_parts.h"
#include "sheets/running.h"
#include "sheets/saw_cuts.h"
#include "sheets/set_out.h"
#include "sheets/stock_pieces.h"
#include "units/number.h"

namespace sheets {

namespace {

using Words = std::vector<std::string>;

Words parted(const std::string& source) {
  Words words{""};
  for (const char letter : source) {
    if (letter == '/' && words.size() < 3)
      words.emplace_back();
    else
      words.back() += letter;
  }
  words.resize(3);
  return words;
}

std::optional<std::size_t> counted(const std::string& text, std::size_t below) {
  const auto number = units::read_number(text);
  if (!number || *number < 0 || *number >= static_cast<double>(below)) return std::nullopt;
  return static_cast<std::size_t>(*number);
}

std::optional<std::string> line(const Printed& printed, const Words& words) {
  const auto& lines = printed.results->estimate.lines;
  const auto at = counted(words[1], lines.size());
  if (!at) return std::nullopt;
  const estimate::OrderLine& found = lines[*at];
  const std::string working = found.working.sentence(printed.job().heading.units);
  return found.sentence.empty() ? working : found.sentence + ": " + working;
}

std::optional<std::string> measure(const Printed& printed, const Words& words) {
  for (const takeoff::Measures& measures : printed.results->takeoff.measures) {
    if (measures.element != words[1]) continue;
    if (const auto value = measures.get(words[2]))
      return words[2] + " of " + words[1] + " = " + units::write_number(*value) + ", measured on the plan";
  }
  return std::nullopt;
}

std::optional<std::string> cut(const Printed& printed, const Words& words) {
  const auto& cuts = printed.results->takeoff.cuts;
  const auto at = counted(words[1], cuts.size());
  if (!at) return std::nullopt;
  return cuts[*at].what + " of " + cuts[*at].of + ", " + cuts[*at].where;
}

std::optional<std::string> check(const Printed& printed, const Words& words) {
  const auto& checks = printed.results->takeoff.checks;
  const auto at = counted(words[1], checks.size());
  if (!at) return std::nullopt;
  return checks[*at].working.sentence(printed.job().heading.units) + " (" + checks[*at].source + ")";
}

std::optional<std::string> stage(const Printed& printed, const Words& words) {
  const auto found = takeoff::stage_of(words[1]);
  if (!found) return std::nullopt;
  const auto& stages = printed.results->estimate.stages;
  const auto total = stages.find(*found);
  const estimate::StageTotal sum = total == stages.end() ? estimate::StageTotal{} : total->second;
  if (words[2] == "hours") return "hours of the stage's work lines = " + units::write_number(sum.hours);
  if (words[2] == "amount")
    return "amounts of the stage's lines = " + estimate::shown_money(sum.amount(), printed.job().heading);
  return std::nullopt;
}

std::optional<std::string> step(const Printed& printed, const Words& words) {
  for (const estimate::PriceStep& found : printed.results->priced.steps)
    if (found.code == words[1]) return found.name + ": " + found.working;
  return std::nullopt;
}

std::optional<std::string> payment(const Printed& printed, const Words& words) {
  const auto& payments = printed.results->priced.payments;
  const auto at = counted(words[1], payments.size());
  if (!at) return std::nullopt;
  return payments[*at].name + ", a share of " +
         estimate::shown_money(printed.results->priced.total, printed.job().heading);
}

std::optional<std::string> sum(const Printed& printed, const Words& words) {
  std::string working;
  for (const estimate::PriceStep& step : printed.results->priced.steps) {
    if (words[0] == "price" && step.code == "tax") continue;
    working +=
        (working.empty() ? "" : " + ") + step.name + " " + estimate::shown_money(step.amount, printed.job().heading);
  }
  return working.empty() ? std::nullopt : std::optional(working);
}

std::optional<std::string> item(const Printed& printed, const Words& words) {
  const catalogue::Catalogue& all = *printed.job().catalogue;
  const bool known = all.item(words[1]) || all.rate(words[1]) || all.build_up(words[1]) || all.pattern(words[1]) ||
                     all.suppliers.contains(words[1]) || all.limits.contains(words[1]);
  if (!known || words[2].empty()) return std::nullopt;
  return words[2] + " of " + words[1] + " in the job's catalogue";
}

std::optional<std::string> chosen(const Printed&, const Words& words) {
  if (words[1].empty()) return std::nullopt;
  return words[1] + ", as chosen for the whole job";
}

std::optional<std::string> element(const Printed& printed, const Words& words) {
  if (!printed.job().find(words[1]) || words[2].empty()) return std::nullopt;
  return words[2] + " of " + words[1] + ", as drawn or typed";
}

std::optional<std::string> option(const Printed& printed, const Words& words) {
  for (const plan::Option& found : printed.job().offer.options)
    if (found.id == words[1]) return "the job's total with " + found.name + " less the total without it";
  return std::nullopt;
}

std::optional<std::string> unit_price(const Printed& printed, const Words& words) {
  for (const plan::UnitPrice& found : printed.job().offer.unit_prices)
    if (found.code == words[1]) return found.text + ", " + found.unit + ", as the office set it";
  return std::nullopt;
}

std::optional<std::string> here(const Printed&, const Words& words) {
  return words[1].empty() ? std::nullopt : std::optional("counted on this sheet: " + words[1]);
}

using Told = std::optional<std::string> (*)(const Printed&, const Words&);
const std::map<std::string, Told>& kinds() {
  static const std::map<std::string, Told> known{
      {"line", line},  {"measure", measure}, {"cut", cut},       {"check", check},  {"stage", stage},
      {"step", step},  {"payment", payment}, {"total", sum},     {"price", sum},    {"item", item},
      {"job", chosen}, {"element", element}, {"option", option}, {"counted", here}, {"unit-price", unit_price}};
  return known;
}

}  // namespace

std::string of_line(const Printed& printed, const estimate::OrderLine& line) {
  const auto& lines = printed.results->estimate.lines;
  for (std::size_t at = 0; at < lines.size(); ++at)
    if (&lines[at] == &line) return "line/" + std::to_string(at);
  return "line/none";
}
std::string of_measure(const plan::ElementId& element, const std::string& name) {
  return "measure/" + element + "/" + name;
}
std::string of_cut(std::size_t number) { return "cut/" + std::to_string(number); }
std::string of_check(std::size_t number) { return "check/" + std::to_string(number); }
std::string of_stage(takeoff::Stage stage, const std::string& what) { return "stage/" + word(stage) + "/" + what; }
std::string of_step(const std::string& code) { return "step/" + code; }
std::string of_payment(std::size_t number) { return "payment/" + std::to_string(number); }
std::string of_item(const catalogue::Id& item, const std::string& field) { return "item/" + item + "/" + field; }
std::string of_job(const std::string& field) { return "job/" + field; }
std::string of_element(const plan::ElementId& element, const std::string& field) {
  return "element/" + element + "/" + field;
}
std::string of_setting_out(const std::string& list, std::size_t number) { return list + "/" + std::to_string(number); }
std::string of_option(const plan::ElementId& option) { return "option/" + option; }
std::string of_unit_price(const std::string& code) { return "unit-price/" + code; }
std::string counted_here(const std::string& what) { return "counted/" + what; }

std::optional<std::string> working_of(const Printed& printed, const std::string& source) {
  const Words words = parted(source);
  if (const auto set_out = working_of_set_out(printed, words[0], words[1])) return set_out;
  if (words[0] == "running") return working_of_running(printed, words[1], words[2]);
  if (const auto ordered = working_of_order(printed, words[0], words[1], words[2])) return ordered;
  if (const auto sawn = working_of_saw(printed, words[0], words[1])) return sawn;
  if (const auto quoted = working_of_quote(printed, words[0], words[1])) return quoted;
  if (const auto needed = working_of_need(printed, words[0], words[1])) return needed;
  const auto found = kinds().find(words[0]);
  return found == kinds().end() ? std::nullopt : found->second(printed, words);
}

}  // namespace sheets
