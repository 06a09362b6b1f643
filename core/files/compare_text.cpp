#include "files/compare_text.h"

#include "files/csv.h"
#include "files/sheet_text.h"
#include "units/number.h"

namespace files {

namespace {

using estimate::Change;
using estimate::KeptLine;
using units::Money;

std::string grouped(Money money, int decimals) {
  std::string text = units::write_money(money, decimals);
  const std::size_t from = text.starts_with('-') ? 1 : 0;
  const std::size_t dot = text.find('.');
  for (std::size_t at = dot == std::string::npos ? text.size() : dot; at > from + 3; at -= 3) text.insert(at - 3, ",");
  return text;
}

// What is more has its sign too, so that a difference is never taken for a sum.
std::string signed_money(Money money, int decimals) { return (money > Money() ? "+" : "") + grouped(money, decimals); }

std::string list(const std::vector<std::string>& words) {
  std::string text;
  for (const std::string& word : words) text += (text.empty() ? "" : ", ") + word;
  return text;
}

std::string drawing(const plan::Differences& differences) {
  std::string text;
  for (const plan::ElementDifference& one : differences.elements) {
    const std::string name = one.id + " " + one.kind + (one.name.empty() ? "" : ", " + one.name);
    if (one.how == plan::Differs::added) text += wrapped(name + ": added", "+ ", 4);
    if (one.how == plan::Differs::gone) text += wrapped(name + ": gone", "- ", 4);
    if (one.how == plan::Differs::changed) text += wrapped(name + ": other " + list(one.what), "* ", 4);
  }
  if (!differences.job.empty()) text += wrapped("For the whole job: other " + list(differences.job), "* ", 4);
  if (!differences.prices.empty()) text += wrapped("Other prices: " + list(differences.prices), "* ", 4);
  if (!differences.catalogue.empty())
    text += wrapped("Otherwise in the job's catalogue: " + list(differences.catalogue), "* ", 4);
  return section("What differs in the drawing and the choices") + (text.empty() ? "Nothing.\n" : text);
}

// Name 12, quantity 24, price 14, amount 16.
std::string line_row(std::string_view name, const std::optional<KeptLine>& line, int decimals) {
  if (!line) return "    " + at_left(name, 12) + at_right("not there", 24) + "\n";
  const std::string quantity = units::show_grouped(line->order_quantity, 2) + " " + line->order_unit;
  const std::string price = line->unit_price ? grouped(*line->unit_price, decimals) : "-";
  const std::string amount = line->by_others ? "by others"
                             : line->amount  ? grouped(*line->amount, decimals)
                                             : "no price";
  return "    " + at_left(name, 12) + at_right(quantity, 24) + at_right(price, 14) + at_right(amount, 16) + "\n" +
         (line->working.empty() ? "" : wrapped(line->working, "                ", 18));
}

std::string stage_title(const std::string& stage) {
  const auto known = takeoff::stage_of(stage);
  return known ? takeoff::title(*known) : stage;
}

std::string changes(const Compared& of, const estimate::Comparison& comparison) {
  std::string text, stage;
  for (const Change& change : comparison.changes) {
    const KeptLine& line = estimate::line_of(change);
    if (text.empty() || line.stage != stage) text += section(stage_title(stage = line.stage));
    const std::string title = line.description + " (" + word(change.what) + ")";
    text += at_left(cut(title, sheet_width - 20), sheet_width - 18) +
            at_right(signed_money(change.by, of.decimals), 18) + "\n";
    text += line_row("before", change.before, of.decimals) + line_row("after", change.after, of.decimals);
  }
  return text.empty() ? section("Lines") + "No line differs.\n" : text;
}

std::string steps(const Compared& of, const estimate::Comparison& comparison) {
  const auto row = [](std::string_view name, std::string_view before, std::string_view after, std::string_view by) {
    return at_left(cut(name, 48), 50) + at_right(before, 20) + at_right(after, 20) + at_right(by, 20) + "\n";
  };
  std::string text = section("The price, " + of.currency) + row("", "before", "after", "by");
  Money before, after;
  for (const estimate::StepChange& step : comparison.steps) {
    before += step.before;
    after += step.after;
    text += row(step.name, grouped(step.before, of.decimals), grouped(step.after, of.decimals),
                signed_money(step.after - step.before, of.decimals));
  }
  return text + row("In all", grouped(before, of.decimals), grouped(after, of.decimals),
                    signed_money(comparison.total_by, of.decimals));
}

}  // namespace

std::string word(estimate::Difference what) {
  switch (what) {
    case estimate::Difference::added: return "added";
    case estimate::Difference::gone: return "gone";
    case estimate::Difference::quantity: return "quantity";
    case estimate::Difference::price: return "price";
    case estimate::Difference::words: return "words";
  }
  return "";
}

std::string comparison_text(const Compared& of, const estimate::Comparison& comparison,
                            const plan::Differences& differences) {
  std::string text = wrapped("Comparison: " + of.job, "", 2) + wrapped(of.before, at_left("Before", 12), 12) +
                     wrapped(of.after, at_left("After", 12), 12);
  text += drawing(differences);
  if (!comparison.comparable)
    return text + "\n" + wrapped("The two are in different currencies, so their money is not compared.", "", 2);
  return text + changes(of, comparison) + steps(of, comparison);
}

std::string comparison_csv(const Compared& of, const estimate::Comparison& comparison) {
  std::string text =
      csv_row({"stage", "item", "description", "change", "quantity_before", "unit_before", "price_before",
               "amount_before", "quantity_after", "unit_after", "price_after", "amount_after", "by"});
  const auto money = [&](const std::optional<Money>& amount) {
    return amount ? units::write_money(*amount, of.decimals) : std::string();
  };
  for (const Change& change : comparison.changes) {
    const KeptLine& line = estimate::line_of(change);
    std::vector<std::string> cells{csv_text(line.stage), csv_text(line.item), csv_text(line.description),
                                   word(change.what)};
    for (const auto* side : {&change.before, &change.after}) {
      const std::optional<KeptLine>& one = *side;
      cells.push_back(one ? units::write_number(one->order_quantity) : "");
      cells.push_back(one ? csv_text(one->order_unit) : "");
      cells.push_back(one ? money(one->unit_price) : "");
      cells.push_back(one ? money(one->amount) : "");
    }
    cells.push_back(units::write_money(change.by, of.decimals));
    text += csv_row(cells);
  }
  return text;
}

}  // namespace files
