// What can be typed or chosen of an entry of the catalogue, as data: one descriptor a field, for every kind of entry.
// How a field looks and what it takes is as everywhere (ui/panels/fields.h); only what it reads and writes is an entry.
#pragma once

#include <expected>
#include <functional>

#include "catalogue/change.h"
#include "ui/panels/typed_field.h"

namespace ui {

using catalogue::Entry;

struct EntryField {
  Field look;  // its `get` and `set` are empty
  std::function<Value(const Entry&)> get;
  std::function<std::expected<Entry, QString>(const Entry&, const Value&)> set;  // or one sentence
  std::vector<std::string> faults;  // codes of catalogue::check that speak of this field
  Typing typing;                    // where `look` alone does not say how it is typed
};

// What the fields are chosen from. `today` is the date of a price that is typed.
struct Around {
  const catalogue::Stock& stock;
  units::System system = units::System::us;
  std::string today;  // 2026-11-28
};

// They follow what the entry holds now (a build-up has its layers), so make them anew after each edit.
std::vector<EntryField> fields_of(const Entry& entry, const Around& around);

std::vector<EntryField> item_fields(const catalogue::Item& item, const Around& around);
std::vector<EntryField> pattern_fields(const catalogue::Pattern& pattern, const Around& around);
std::vector<EntryField> build_up_fields(const catalogue::BuildUp& build_up, const Around& around);
std::vector<EntryField> junction_fields(const Around& around);
std::vector<EntryField> rate_fields(const Around& around);
std::vector<EntryField> supplier_fields();
std::vector<EntryField> limit_fields();
std::vector<EntryField> hold_point_fields();
std::vector<EntryField> caution_fields();
std::vector<EntryField> site_rule_fields();

// "agg-no8" as people call it; the id where the catalogue has no such item.
QString item_name(const catalogue::Catalogue& catalogue, const catalogue::Id& id);
// "$4.95 a sq ft", "by others", nothing.
QString shown_price(const std::optional<catalogue::Price>& price);

}  // namespace ui
