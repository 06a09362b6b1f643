// What stays with the owner: care, spare units, lots, papers. For the close-out.
#include <algorithm>
#include <array>

#include "estimate/kinds.h"
#include "sheets/close_out_parts.h"
#include "sheets/source.h"

namespace sheets {

using estimate::OrderLine;

namespace {

constexpr std::array laid_kinds{"paving-unit", "slab",       "permeable-unit", "clay-unit", "mixed-pack",
                                "coping",      "kerb-unit",  "edging-unit",    "step-unit", "tread",
                                "wall-block",  "seat-block", "pillar-block",   "cap",       "pillar-cap"};
constexpr std::array cared_kinds{"joint-sand", "joint-chips", "sealant",     "primer",
                                 "finish",     "adhesive",    "filler-strip"};

template <class Kinds>
bool is_of(const Printed& printed, const OrderLine& line, const Kinds& kinds) {
  const catalogue::Item* item = printed.job().catalogue->item(line.item);
  return !line.work && item && std::ranges::find(kinds, item->kind) != kinds.end();
}

bool has_subcontract(const Printed& printed) {
  return std::ranges::any_of(printed.results->estimate.lines, [](const OrderLine& line) {
    return line.kind == plan::CostKind::subcontract || line.kind == plan::CostKind::allowance;
  });
}

std::vector<catalogue::Id> suppliers(const Printed& printed, bool laid_only) {
  std::vector<catalogue::Id> ids;
  for (const OrderLine& line : printed.results->estimate.lines) {
    const catalogue::Item* item = printed.job().catalogue->item(line.item);
    if (!item || item->supplier.empty() || line.kind != plan::CostKind::material) continue;
    if (laid_only && !is_of(printed, line, laid_kinds) && !is_of(printed, line, cared_kinds)) continue;
    if (std::ranges::find(ids, item->supplier) == ids.end()) ids.push_back(item->supplier);
  }
  return ids;
}

}  // namespace

Passage care_passage(const Printed& printed) {
  Table table{{{printed.say("What is in it"), Align::left, 0.36},
               {printed.say("Where"), Align::left, 0.2},
               {printed.say("Rain and feet kept off until"), Align::left, 0.22},
               {printed.say("Look at it again on"), Align::left, 0.22}},
              {}};
  std::vector<catalogue::Id> told;
  for (const OrderLine& line : printed.results->estimate.lines) {
    if (!is_of(printed, line, cared_kinds) || std::ranges::find(told, line.item) != told.end()) continue;
    told.push_back(line.item);
    table.rows.push_back({{name_of(printed, line.item), joined(tags(printed, line.of), ", "), {}, {}}});
  }
  if (table.rows.empty() && printed.results->takeoff.layouts.empty()) return {};
  Passage passage{{Heading{printed.say("Care"), {}},
                   Paragraph{{printed.say("Setting times, cleaners, sealers and de-icing salt go by the sheet of each "
                                          "product, handed over with this one; what it says is written here.")}}}};
  table.written = true;
  if (!table.rows.empty()) passage.blocks.emplace_back(std::move(table));
  passage.blocks.emplace_back(Blanks{{printed.say("Cleaning"), printed.say("Sealer"), printed.say("De-icing salt")}});
  return passage;
}

Passage left_behind_passage(const Printed& printed) {
  Table table{{{printed.say("Unit"), Align::left, 0.36},
               {printed.say("Bought"), Align::right, 0.16},
               {printed.say("Kept for repairs"), Align::right, 0.16},
               {printed.say("Lot, day of making"), Align::left, 0.16},
               {printed.say("Where they are"), Align::left, 0.16}},
              {}};
  for (const OrderLine& line : printed.results->estimate.lines) {
    if (!is_of(printed, line, laid_kinds)) continue;
    const std::string from = of_line(printed, line);
    Said kept;
    if (line.shares.spare > 0) kept = {number_words(printed, line.shares.spare), from};
    table.rows.push_back({{name_of(printed, line.item), {bought(printed, line).words(), from}, kept, {}, {}}});
  }
  if (table.rows.empty()) return {};
  table.written = true;
  return {
      {Heading{printed.say("Units, lots and what is kept for repairs"), {}},
       Paragraph{{printed.say("A colour is made again but never the same: the lot is what a repair is matched by.")},
                 Paragraph::Kind::note},
       table}};
}

Passage papers_passage(const Printed& printed) {
  Table table{{{printed.say("Paper"), Align::left, 0.46},
               {printed.say("Of"), Align::left, 0.24},
               {printed.say("There"), Align::centre, 0.1, true},
               {printed.say("Until, note"), Align::left, 0.2}},
              {}};
  const auto add = [&](const std::string& paper, const std::string& of) {
    table.rows.push_back({{paper, of, {}, {}}});
  };
  add(printed.say("Warranty on the work"), printed.say("our own"));
  for (const catalogue::Id& id : suppliers(printed, true))
    add(printed.say("Warranty on the goods"), name_of(printed, id));
  for (const catalogue::Id& id : suppliers(printed, false)) add(printed.say("Release of lien"), name_of(printed, id));
  if (has_subcontract(printed)) add(printed.say("Release of lien"), printed.say("subcontracted trades"));
  if (!printed.results->takeoff.checks.empty())
    add(printed.say("Engineer's papers for the walls"), printed.say("licensed engineer"));
  add(printed.say("Permit closed, if there was one"), printed.say("inspector"));
  add(printed.say("Photos of what is covered"), printed.say("our own"));
  table.written = true;
  return {{Heading{printed.say("Papers handed over"), {}}, table}};
}

}  // namespace sheets
