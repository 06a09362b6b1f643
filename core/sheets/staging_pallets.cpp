// Pallet by pallet, for the staging sheet.
#include "sheets/source.h"
#include "sheets/staging_parts.h"

namespace sheets {

using estimate::OrderLine;
using takeoff::Stage;

namespace {

std::string numbers(const Printed& printed, const PalletRow& row) {
  if (row.from == row.to) return std::to_string(row.from);
  return filled(printed, "%1 to %2", {std::to_string(row.from), std::to_string(row.to)});
}

std::string goes_to(const Printed& printed, const PalletRow& row) {
  std::vector<std::string> parts;
  for (const PalletRow::Part& part : row.parts) {
    const std::string where = part.of.empty() ? printed.say("to spare") : part.of;
    parts.push_back(row.parts.size() == 1 ? where : where + " " + number_words(printed, part.pieces));
  }
  return joined(parts, ", ");
}

// The drop spot with the least carrying for the pieces of these pallets: nearest to their weighted middle.
std::string set_down(const Printed& printed, const std::vector<DropSpot>& spots, const PalletRow& row) {
  geometry::Vec middle;
  double pieces = 0;
  for (const PalletRow::Part& part : row.parts) {
    const auto at = part.of.empty() ? std::nullopt : middle_of(printed, part.of);
    if (!at) continue;
    middle = middle + part.pieces * *at;
    pieces += part.pieces;
  }
  if (!(pieces > 0)) return "";
  const DropSpot* spot = nearest(printed, spots, (1 / pieces) * middle);
  return spot ? spot->id : "";
}

void add_rows(const Printed& printed, const std::vector<DropSpot>& spots, const OrderLine& line, Table& table) {
  const std::string from = of_line(printed, line);
  std::string name = name_of(printed, line.item);
  for (const PalletRow& row : pallet_rows(printed, line)) {
    table.rows.push_back({{name,
                           {numbers(printed, row), from},
                           {number_words(printed, row.pieces), from},
                           {goes_to(printed, row), from},
                           set_down(printed, spots, row)}});
    name.clear();
  }
}

}  // namespace

Passage pallets_passage(const Printed& printed) {
  Table table{{{printed.say("On pallets"), Align::left, 0.36},
               {printed.say("Pallet"), Align::left, 0.12},
               {printed.say("Pieces on each"), Align::right, 0.14},
               {printed.say("Goes to"), Align::left, 0.24},
               {printed.say("Set down at"), Align::left, 0.14}},
              {}};
  const std::vector<DropSpot> spots = drop_spots(printed);
  for (const Stage stage : takeoff::all_stages) {
    const std::size_t before = table.rows.size();
    for (const OrderLine& line : printed.results->estimate.lines)
      if (line.stage == stage && is_brought(printed, line)) add_rows(printed, spots, line, table);
    if (table.rows.size() > before)
      table.rows.insert(table.rows.begin() + static_cast<std::ptrdiff_t>(before),
                        {{stage_number(stage) + " " + stage_title(printed, stage)}, Row::Kind::group});
  }
  if (table.rows.empty()) return {};
  return {
      {Heading{printed.say("Pallet by pallet"), {}},
       Paragraph{{printed.say("Open at least three pallets of a unit at once and take from all of them, so that the "
                              "colours mix.")}},
       table}};
}

}  // namespace sheets
