#include "files/takeoff_xlsx.h"

#include <algorithm>
#include <cmath>
#include <map>

#include "estimate/kinds.h"
#include "files/takeoff_assumptions.h"
#include "files/takeoff_measures.h"
#include "files/working_cells.h"

namespace files {

namespace {

using Row = std::vector<Cell>;
using estimate::OrderLine;

// Columns of the sheet Lines.
enum Column : std::size_t {
  number,
  stage,
  item,
  description,
  elements,
  part,
  kind,
  quantity,
  unit,
  order_quantity,
  order_unit,
  unit_price,
  amount,
  currency,
  remark
};

// A ">" before a name: a column of numbers; a "~": what stands a little off the numbers before it.
Row heads(std::initializer_list<std::string_view> names) {
  Row row;
  for (const std::string_view name : names) {
    const Look look = name.starts_with('>') ? Look::number_head : name.starts_with('~') ? Look::unit_head : Look::head;
    row.push_back(text_cell(std::string(name.substr(look == Look::head ? 0 : 1)), look));
  }
  return row;
}

std::string joined(const std::vector<plan::ElementId>& ids) {
  std::string text;
  for (const plan::ElementId& id : ids) text += (text.empty() ? "" : "; ") + id;
  return text;
}

std::string part_word(const OrderLine& line) { return line.work ? "work" : "material"; }

// One sheet after the other, each knowing where the one before put its things.
class Maker {
 public:
  explicit Maker(const results::Results& results)
      : results_(results), lines_(results.estimate.lines), heading_(results.job->heading) {}

  Workbook made() {
    Sheet working = working_sheet();
    Sheet lines = lines_sheet();
    Workbook book{heading_.name, results_.job->offer.date, heading_.decimals, heading_.units == units::System::us, {}};
    book.sheets.push_back(summary_sheet());
    book.sheets.push_back(std::move(lines));
    book.sheets.push_back(std::move(working));
    book.sheets.push_back(assumptions_sheet(results_));
    return book;
  }

 private:
  double money(units::Money coins) const { return static_cast<double>(coins.coins()) / coins_in_one(); }
  double coins_in_one() const { return std::pow(10.0, heading_.decimals); }

  Sheet working_sheet() {
    Sheet sheet{"Working", {6, 12, 22, 7, 9, 46, 14, 10, 30}, 1, false, 0, {}};
    sheet.rows.push_back(heads({">Line", "~Stage", "Item", ">Depth", "~Sign", "Term", ">Value", "~Unit", "Of"}));
    for (std::size_t i = 0; i < lines_.size(); ++i) {
      result_at_.push_back(sheet.rows.size());
      for (Row& cells : working_cells(lines_[i].working, lines_[i].description, sheet.rows.size(), 3)) {
        Row row{number_cell(static_cast<double>(i + 1)), text_cell(takeoff::word(lines_[i].stage), Look::unit),
                text_cell(lines_[i].item)};
        row.insert(row.end(), cells.begin(), cells.end());
        sheet.rows.push_back(std::move(row));
      }
    }
    return sheet;
  }

  Cell ordered(std::size_t i) const {
    const OrderLine& line = lines_[i];
    const double result = line.working.amount().value;
    if (std::abs(result - line.order_quantity) > 1e-9 * std::abs(result)) return number_cell(line.order_quantity);
    return formula_cell("Working!" + cell_name(result_at_[i], 3 + working_value), line.order_quantity);
  }

  double price_of_one(const OrderLine& line) const {
    return line.exact_coins != 0 ? line.exact_coins / coins_in_one() : money(*line.unit_price);
  }

  // The product where it gives the amount and is not so near to half a coin that a spreadsheet could round otherwise.
  Cell amount_of(const OrderLine& line, std::size_t row) const {
    if (!line.amount) return {};
    const double value = money(*line.amount);
    if (!line.unit_price) return number_cell(value, Look::money);
    const double coins = line.order_quantity * price_of_one(line) * coins_in_one();
    if (std::abs(coins - static_cast<double>(line.amount->coins())) > 0.499) return number_cell(value, Look::money);
    return formula_cell("ROUND(" + cell_name(row, order_quantity) + "*" + cell_name(row, unit_price) + "," +
                            std::to_string(heading_.decimals) + ")",
                        value, Look::money);
  }

  static std::string remark_of(const OrderLine& line) {
    std::string text = line.sentence;
    const auto say = [&text](const char* more) { text += (text.empty() ? "" : "; ") + std::string(more); };
    if (line.by_others) say("by others");
    if (line.allowance) say("allowance");
    if (!line.amount) say("no price: the total is not complete");
    return text;
  }

  Row line_row(std::size_t i, std::size_t row) const {
    const OrderLine& line = lines_[i];
    return {
        number_cell(static_cast<double>(i + 1)),
        text_cell(takeoff::word(line.stage), Look::unit),
        text_cell(line.item),
        text_cell(line.description, Look::wrapped),
        text_cell(joined(line.of), Look::wrapped),
        text_cell(part_word(line)),
        text_cell(estimate::word(line.kind)),
        number_cell(line.quantity),
        text_cell(line.unit, Look::unit),
        ordered(i),
        text_cell(line.order_unit, Look::unit),
        line.unit_price ? number_cell(price_of_one(line), has_part_coins(line) ? Look::price : Look::money) : Cell(),
        amount_of(line, row),
        text_cell(heading_.currency, Look::unit),
        text_cell(remark_of(line), Look::wrapped)};
  }

  Sheet lines_sheet() const {
    Sheet sheet{"Lines", {6, 14, 22, 40, 16, 10, 12, 13, 8, 15, 11, 13, 14, 10, 50}, 1, true, lines_.size(), {}};
    sheet.rows.push_back(
        heads({">Line", "~Stage", "Item", "Description", "Elements", "Part", "Kind", ">Quantity", "~Unit",
               ">Order quantity", "~Order unit", ">Unit price", ">Amount", "~Currency", "Remark"}));
    for (std::size_t i = 0; i < lines_.size(); ++i) sheet.rows.push_back(line_row(i, sheet.rows.size()));
    Row total(remark + 1, Cell{Cell::What::empty, "", 0, Look::total});
    total[number] = text_cell("Sum", Look::total);
    total[amount] = sum_of(amount, 1, lines_.size(), money(results_.estimate.total.amount()), Look::total_money);
    total[currency] = text_cell(heading_.currency, Look::total_unit);
    sheet.rows.push_back(std::move(total));
    return sheet;
  }

  // Of the rows first..last of one column of the same sheet.
  static Cell sum_of(std::size_t column, std::size_t first, std::size_t last, double value, Look look) {
    if (last < first) return number_cell(value, look);
    return formula_cell("SUM(" + cell_name(first, column) + ":" + cell_name(last, column) + ")", value, look);
  }

  // What the lines of one stage and part come to, by the words that stand in the sheet Lines.
  Cell by_stage(std::size_t column, std::size_t row, const char* of, double value, Look look) const {
    const auto range = [this](std::size_t at) {
      return "Lines!" + cell_name(1, at, true) + ":" + cell_name(lines_.size(), at, true);
    };
    return formula_cell("SUMIFS(" + range(column) + "," + range(stage) + "," + cell_name(row, 0) + "," + range(part) +
                            ",\"" + of + "\")",
                        value, look);
  }

  std::string subtitle() const {
    std::string text = "Takeoff and order list";
    const auto say = [&text](const std::string& more) { text += more.empty() ? "" : ", " + more; };
    say(heading_.number);
    say(heading_.customer);
    say(heading_.place);
    say(results_.job->offer.date);
    if (heading_.invented) say("this job, its place and its people are made up");
    return text + (results_.final() ? "" : "; not final: see the sheet Assumptions");
  }

  Sheet summary_sheet() const {
    Sheet sheet{"Summary", {34, 15, 15, 15, 10, 10, 8, 60}, 3, false, 0, {}};
    sheet.rows.push_back({text_cell(heading_.name, Look::title)});
    sheet.rows.push_back({text_cell(subtitle())});
    sheet.rows.push_back(heads({"Stage", ">Material", ">Work", ">Amount", "~Currency", ">Hours", "~Unit", "Remark"}));
    add_stages(sheet);
    add_price(sheet);
    add_payments(sheet);
    return sheet;
  }

  void add_stages(Sheet& sheet) const {
    const std::size_t first = sheet.rows.size();
    for (const auto& [which, total] : results_.estimate.stages) {
      const std::size_t row = sheet.rows.size();
      sheet.rows.push_back(
          {text_cell(takeoff::word(which)), by_stage(amount, row, "material", money(total.material), Look::money),
           by_stage(amount, row, "work", money(total.work), Look::money),
           formula_cell(cell_name(row, 1) + "+" + cell_name(row, 2), money(total.amount()), Look::money),
           text_cell(heading_.currency, Look::unit), by_stage(order_quantity, row, "work", total.hours, Look::number),
           text_cell("h", Look::unit), text_cell(takeoff::title(which))});
    }
    const std::size_t last = sheet.rows.size() - 1;
    const estimate::StageTotal& all = results_.estimate.total;
    sheet.rows.push_back({text_cell("Sum", Look::total), sum_of(1, first, last, money(all.material), Look::total_money),
                          sum_of(2, first, last, money(all.work), Look::total_money),
                          sum_of(3, first, last, money(all.amount()), Look::total_money),
                          text_cell(heading_.currency, Look::total_unit),
                          sum_of(5, first, last, all.hours, Look::total_number), text_cell("h", Look::total_unit),
                          Cell{Cell::What::empty, "", 0, Look::total}});
  }

  Row sum_row(const std::string& name, Cell sum) const {
    Row row(8, Cell{Cell::What::empty, "", 0, Look::total});
    row[0] = text_cell(name, Look::total);
    row[3] = std::move(sum);
    row[4] = text_cell(heading_.currency, Look::total_unit);
    return row;
  }
  Row money_row(const std::string& name, Cell sum, const std::string& how) const {
    return {text_cell(name, Look::wrapped),           {}, {}, std::move(sum),
            text_cell(heading_.currency, Look::unit), {}, {}, text_cell(how, Look::wrapped)};
  }

  // From the direct cost to the total. Each step is rounded by itself, so it stands as it is; sums are added up again.
  void add_price(Sheet& sheet) const {
    const estimate::Priced& priced = results_.priced;
    if (priced.steps.empty()) return;
    const std::size_t sum_at = sheet.rows.size() - 1;
    sheet.rows.emplace_back();
    sheet.rows.push_back(heads({"From cost to price", "", "", ">Amount", "~Currency", "", "", "Remark"}));
    const std::size_t first = sheet.rows.size();
    for (const estimate::PriceStep& step : priced.steps) {
      if (step.code == "tax") continue;
      const bool taken_over = step.code == "direct" && step.amount == results_.estimate.total.amount();
      sheet.rows.push_back(money_row(step.name,
                                     taken_over ? formula_cell(cell_name(sum_at, 3), money(step.amount), Look::money)
                                                : number_cell(money(step.amount), Look::money),
                                     step.working));
    }
    const std::size_t before_tax = sheet.rows.size();
    sheet.rows.push_back(
        sum_row("Price before tax", sum_of(3, first, before_tax - 1, money(priced.price), Look::total_money)));
    const auto tax = std::ranges::find(priced.steps, "tax", &estimate::PriceStep::code);
    if (tax == priced.steps.end()) return;
    sheet.rows.push_back(money_row(tax->name, number_cell(money(tax->amount), Look::money), tax->working));
    sheet.rows.push_back(
        sum_row("Total with tax", sum_of(3, before_tax, before_tax + 1, money(priced.total), Look::total_money)));
  }

  void add_payments(Sheet& sheet) const {
    const auto& payments = results_.priced.payments;
    if (payments.empty()) return;
    sheet.rows.emplace_back();
    sheet.rows.push_back(heads({"Payment", "", "", ">Amount", "~Currency", "", "", "With the stage"}));
    const std::size_t first = sheet.rows.size();
    for (const estimate::Due& due : payments)
      sheet.rows.push_back(money_row(due.name, number_cell(money(due.amount), Look::money), due.stage));
    sheet.rows.push_back(
        sum_row("Sum", sum_of(3, first, sheet.rows.size() - 1, money(results_.priced.total), Look::total_money)));
  }

  const results::Results& results_;
  const std::vector<OrderLine>& lines_;
  const plan::Heading& heading_;
  std::vector<std::size_t> result_at_;  // of each line: the row of its working's result
};

}  // namespace

Workbook takeoff_workbook(const results::Results& results) { return Maker(results).made(); }

problem::Result<std::string> takeoff_xlsx(const results::Results& results) {
  return write_workbook(takeoff_workbook(results));
}

}  // namespace files
