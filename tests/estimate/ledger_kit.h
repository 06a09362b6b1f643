// What the tests of ledgers share: a small job of two stages with its kept estimate, and entries against it.
#pragma once

#include <memory>

#include "estimate/actual.h"

namespace ledger_kit {

using estimate::Act;
using estimate::Entry;
using estimate::LineKey;
using plan::CostKind;
using units::Money;

inline estimate::KeptLine line(const char* stage, const char* item, CostKind kind, double quantity, const char* unit,
                               double order, const char* order_unit, std::int64_t coins) {
  estimate::KeptLine made;
  made.stage = stage;
  made.item = item;
  made.description = item;
  made.kind = kind;
  made.quantity = quantity;
  made.unit = unit;
  made.order_quantity = order;
  made.order_unit = order_unit;
  made.amount = Money::of_coins(coins);
  return made;
}

// Base: 10 tons of stone for 300.00, 8 h for 320.00. Paving: 1,080 units for 2,700.00 of which 1,000 are needed, 40 h
// of laying for 1,600.00 and 10 h of cutting for 500.00. In all 300 + 320 + 2,700 + 1,600 + 500 = 5,420.00.
inline estimate::Kept kept() {
  estimate::Kept made;
  made.currency = "USD";
  made.lines = {line("base", "stone", CostKind::material, 9071.8474, "kg", 10, "ton", 30'000),
                line("base", "spread", CostKind::labour, 8, "h", 8, "h", 32'000),
                line("paving", "unit", CostKind::material, 1000, "piece", 1080, "piece", 270'000),
                line("paving", "lay", CostKind::labour, 40, "h", 40, "h", 160'000),
                line("paving", "cut", CostKind::labour, 10, "h", 10, "h", 50'000)};
  made.direct = made.price = made.total = Money::of_coins(542'000);
  return made;
}

inline catalogue::Rate rate(const char* id, double hours) {
  catalogue::Rate made;
  made.id = id;
  made.name.en = id;
  made.si_unit = "m2";
  made.hours_per_si_unit = hours;
  return made;
}

inline catalogue::Catalogue shelf() {
  catalogue::Catalogue made;
  catalogue::Item stone, unit;
  stone.id = "stone";
  stone.unit = "ton";
  stone.supplier = "yard";
  stone.name.en = "Open stone";
  unit.id = "unit";
  unit.unit = "piece";
  unit.name.en = "Unit";
  unit.breakage = 0.03;
  for (const catalogue::Item& item : {stone, unit}) made.items[item.id] = std::make_shared<const catalogue::Item>(item);
  for (const catalogue::Rate& one : {rate("spread", 0.08), rate("lay", 0.4), rate("cut", 0.1)})
    made.rates[one.id] = one;
  catalogue::Supplier yard;
  yard.id = "yard";
  yard.lead_days = 2;
  yard.least_order = "1 ton";
  made.suppliers["yard"] = yard;
  return made;
}

inline plan::Job job() {
  plan::Job made;
  made.heading.name = "Court";
  made.catalogue = std::make_shared<const catalogue::Catalogue>(shelf());
  return made;
}

inline const LineKey stone{"base", "stone", CostKind::material};
inline const LineKey unit{"paving", "unit", CostKind::material};

inline Entry entry(Act act, const LineKey& key, double quantity, const char* unit_word,
                   std::optional<std::int64_t> coins = {}, const char* date = "2026-11-28") {
  Entry made;
  made.act = act;
  made.line = key;
  made.date = date;
  made.quantity = quantity;
  made.unit = unit_word;
  if (coins) made.price = Money::of_coins(*coins);
  return made;
}
inline Entry hours(const char* stage, double quantity, const char* rate = "") {
  return entry(Act::hours, {stage, rate, CostKind::labour}, quantity, "h");
}
inline Entry measured(const char* stage, double done, double whole, const char* rate = "",
                      const char* date = "2026-11-28") {
  Entry made = entry(Act::measured, {stage, rate, CostKind::labour}, done, "sq ft", {}, date);
  made.whole = whole;
  return made;
}

// Numbered as a book does.
inline std::vector<Entry> numbered(std::vector<Entry> entries) {
  for (std::size_t i = 0; i < entries.size(); ++i) entries[i].number = static_cast<std::int64_t>(i) + 1;
  return entries;
}

}  // namespace ledger_kit
