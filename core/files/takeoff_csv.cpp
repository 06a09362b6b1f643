#include <algorithm>
#include <cmath>

#include "files/csv.h"
#include "files/files.h"
#include "files/takeoff_measures.h"
#include "units/number.h"

namespace files {

namespace {

std::string joined(const std::vector<plan::ElementId>& ids) {
  std::string text;
  for (const plan::ElementId& id : ids) text += (text.empty() ? "" : "; ") + id;
  return text;
}

std::string money_cell(const std::optional<units::Money>& money, int decimals) {
  return money ? units::write_money(*money, decimals) : "";
}

// Where the price of one is no whole coin, up to four decimals more than a rounded one would show.
std::string price_cell(const estimate::OrderLine& line, int decimals) {
  if (!line.unit_price || !has_part_coins(line)) return money_cell(line.unit_price, decimals);
  std::string text = units::show_number(line.exact_coins / std::pow(10.0, decimals), 4);
  while (text.ends_with('0')) text.pop_back();
  return text;
}

std::string described(const estimate::OrderLine& line) {
  return line.description + (line.by_others ? " (by others)" : "") + (line.allowance ? " (allowance)" : "");
}

}  // namespace

std::string takeoff_csv(const results::Results& results, const CsvForm& form) {
  const int decimals = results.job->heading.decimals;
  std::string text = csv_begin(form) + csv_row({"stage", "item", "description", "elements", "quantity", "unit",
                                                "order_quantity", "order_unit", "unit_price", "amount", "working"},
                                               form.separator);
  for (const estimate::OrderLine& line : results.estimate.lines)
    text += csv_row({takeoff::word(line.stage), csv_text(line.item), csv_text(described(line)),
                     csv_text(joined(line.of)), units::write_number(line.quantity), csv_text(line.unit),
                     units::write_number(line.order_quantity), csv_text(line.order_unit), price_cell(line, decimals),
                     money_cell(line.amount, decimals), csv_text(line.working.sentence())},
                    form.separator);
  return text;
}

}  // namespace files
