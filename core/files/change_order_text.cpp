#include "files/change_order_text.h"

#include <cstdlib>

#include "files/sheet_text.h"
#include "units/number.h"

namespace files {

namespace {

using estimate::OrderedChange;
using estimate::Reason;
using units::Money;

struct Sheet {
  const plan::Job& quote;
  const estimate::ChangeOrder& order;

  std::string money(Money amount) const {
    std::string text = units::write_money(amount, quote.heading.decimals);
    const std::size_t from = text.starts_with('-') ? 1 : 0;
    const std::size_t dot = text.find('.');
    for (std::size_t at = dot == std::string::npos ? text.size() : dot; at > from + 3; at -= 3)
      text.insert(at - 3, ",");
    return text;
  }
  // What is more has its sign too, so that a change is never taken for a price.
  std::string by(Money amount) const { return (amount > Money() ? "+" : "") + money(amount); }
};

std::string quantity_in_words(double quantity) {
  std::string text = units::show_grouped(quantity, 3);
  while (text.ends_with('0')) text.pop_back();
  if (text.ends_with('.')) text.pop_back();
  return (quantity > 0 ? "+" : "") + text;
}

std::string days_in_words(int days) { return std::to_string(days) + (std::abs(days) == 1 ? " day" : " days"); }

std::string head(const Sheet& sheet) {
  const plan::Heading& heading = sheet.quote.heading;
  const estimate::ChangeInput& input = sheet.order.input;
  const std::string rule = std::string(sheet_width, '=') + "\n";
  std::string text = rule + wrapped("Change order " + input.number + ": " + heading.name, "", 2);
  const auto row = [&](const char* name, const std::string& value) {
    if (!value.empty()) text += wrapped(value, at_left(name, 12), 12);
  };
  row("Customer", heading.customer);
  row("Place", heading.place);
  row("Date", input.date);
  row("Reason", words(input.reason));
  row("Why", input.cause);
  row("Asked by", input.asked_by);
  row("Money", heading.currency);
  if (heading.invented) row("Invented", "this job, its place and its people are made up");
  return text + rule;
}

std::string standing(const Sheet& sheet) {
  const std::string sum = sheet.by(sheet.order.amount) + " " + sheet.quote.heading.currency;
  return "\n" +
         wrapped((sheet.order.final ? "The contract changes by " : "NOT FINAL: the contract changes by ") + sum, "", 2);
}

// Columns: quantity 12, unit 10, item 66, amount 16, two spaces between.
std::string table_row(std::string_view quantity, std::string_view unit, std::string_view item,
                      std::string_view amount) {
  return at_right(quantity, 12) + "  " + at_left(cut(unit, 10), 10) + "  " + at_left(cut(item, 66), 66) + "  " +
         at_right(amount, 16) + "\n";
}

std::string line_of(const Sheet& sheet, const OrderedChange& line) {
  constexpr std::size_t indent = 26;
  const std::string before(indent, ' ');
  std::string text = table_row(quantity_in_words(line.quantity), line.unit, line.description, sheet.by(line.amount));
  if (columns_of(line.description) > 66) text += wrapped(line.description, before, indent);
  return line.working.empty() ? text : text + wrapped(line.working, before, indent);
}

std::string title_of(const OrderedChange& line) {
  const auto stage = takeoff::stage_of(line.stage);
  const std::string title = stage                ? takeoff::title(*stage)
                            : line.stage.empty() ? "Met on site, at the quote's unit prices"
                                                 : line.stage;
  return line.by == estimate::PricedBy::ticket ? title + ", time and material" : title;
}

std::string lines(const Sheet& sheet) {
  std::string text, title;
  for (const OrderedChange& line : sheet.order.lines) {
    if (const std::string own = title_of(line); text.empty() || own != title)
      text += section(title = own) + table_row("more, less", "unit", "item", "amount");
    text += line_of(sheet, line);
  }
  return text.empty() ? section("Lines") + "Nothing comes and nothing goes.\n" : text;
}

std::string sum_row(std::string_view name, std::string_view amount) {
  return at_left(cut(name, sheet_width - 20), sheet_width - 18) + at_right(amount, 18) + "\n";
}

std::string on_top(const Sheet& sheet) {
  Money of_lines;
  bool agreed = false;
  for (const OrderedChange& line : sheet.order.lines) {
    of_lines += line.amount;
    agreed = agreed || line.by == estimate::PricedBy::unit_price;
  }
  std::string text =
      section("Sum of the order, " + sheet.quote.heading.currency) + sum_row("The lines above", sheet.by(of_lines));
  for (const estimate::KeptStep& step : sheet.order.on_top)
    text += sum_row(step.name, sheet.by(step.amount)) + wrapped(step.working, "    ", 4);
  text += sum_row("This order", sheet.by(sheet.order.amount));
  if (agreed) text += "\n" + wrapped("What goes by a unit price of the quote has nothing on top of it.", "", 2);
  return text;
}

std::string contract(const Sheet& sheet) {
  const estimate::ChangeInput& input = sheet.order.input;
  std::string text = section("The contract with it, " + sheet.quote.heading.currency) +
                     sum_row("As signed", sheet.money(input.contract));
  for (const estimate::Earlier& one : input.earlier)
    text += sum_row("Order " + one.number + ", " + days_in_words(one.days), sheet.by(one.amount));
  text += sum_row("Before this order", sheet.money(sheet.order.before)) +
          sum_row("This order " + input.number, sheet.by(sheet.order.amount)) +
          sum_row("The contract from now on", sheet.money(sheet.order.after)) + "\n";
  std::string days = "Days added by this order: " + std::to_string(input.days);
  if (!input.days_cause.empty()) days += ", because " + input.days_cause;
  return text + wrapped(days, "", 2) + wrapped("Days added by all orders: " + std::to_string(sheet.order.days), "", 2);
}

std::string caution(const Sheet& sheet) {
  if (sheet.order.input.reason != Reason::hidden_ground) return "";
  return "\n" + wrapped(
                    "Where the ground is not what was expected (water, soft or filled ground, a pipe or a cable, an "
                    "old footing) work stops there until a competent person has looked at it; lines under the ground "
                    "are located again before digging on. Local code decides, and where it asks for one a licensed "
                    "engineer.",
                    "   !  ", 6);
}

std::string problems(const Sheet& sheet) {
  if (sheet.order.problems.empty()) return "";
  std::string text = section("To be mended or decided");
  for (const problem::Problem& said : sheet.order.problems)
    text += wrapped(problem::sentence(said), at_left(problem::word(said.severity), 9), 9);
  return text;
}

std::string signatures() {
  return section("Agreed") +
         wrapped(
             "Both sign before the work of this order begins. Where it can't wait, hours, machines and material "
             "go on a ticket that is signed the same day.",
             "", 2) +
         "\nCustomer   ______________________________    Date ____________________\n"
         "\nContractor ______________________________    Date ____________________\n";
}

}  // namespace

std::string change_order_text(const plan::Job& quote, const estimate::ChangeOrder& order) {
  const Sheet sheet{quote, order};
  return head(sheet) + standing(sheet) + lines(sheet) + on_top(sheet) + contract(sheet) + caution(sheet) +
         problems(sheet) + signatures();
}

}  // namespace files
