#include <algorithm>

#include "files/csv.h"
#include "files/files.h"
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

std::string described(const estimate::OrderLine& line) {
  return line.description + (line.by_others ? " (by others)" : "") + (line.allowance ? " (allowance)" : "");
}

}  // namespace

std::string takeoff_csv(const results::Results& results) {
  const int decimals = results.job->heading.decimals;
  std::string text = csv_row({"stage", "item", "description", "elements", "quantity", "unit", "order_quantity",
                              "order_unit", "unit_price", "amount", "working"});
  for (const estimate::OrderLine& line : results.estimate.lines)
    text +=
        csv_row({takeoff::word(line.stage), csv_text(line.item), csv_text(described(line)), csv_text(joined(line.of)),
                 units::write_number(line.quantity), csv_text(line.unit), units::write_number(line.order_quantity),
                 csv_text(line.order_unit), money_cell(line.unit_price, decimals), money_cell(line.amount, decimals),
                 csv_text(line.working.sentence())});
  return text;
}

}  // namespace files
