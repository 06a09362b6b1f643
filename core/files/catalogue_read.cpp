#include <set>

#include "files/catalogue_fields.h"
#include "files/catalogue_rows.h"
#include "files/csv_cells.h"
#include "files/files.h"
#include "files/from_json.h"
#include "takeoff/stage.h"
#include "units/number.h"

namespace files {

namespace {

using catalogue::Catalogue;
using problem::Result;
using Texts = std::map<std::string, std::string>;
using Columns = std::initializer_list<std::string_view>;

// Rows of catalogue/NAME.csv, each given to `take` with its cells; a fault of a cell ends the reading.
template <class Take>
Result<void> each_row(const Texts& texts, const std::string& name, Columns columns, Take take) {
  const std::string path = "catalogue/" + name + ".csv";
  const auto text = texts.find(path);
  if (text == texts.end())
    return problem::fault("starter-missing", "the file is missing", "put it back", csv_place(path));
  auto table = read_csv(text->second, path);
  if (!table) return std::unexpected(table.error());
  if (auto good = check_columns(*table, columns, {}); !good) return good;
  for (const CsvRow& row : table->rows) {
    CsvCells cells(*table, row);
    take(cells);
    if (cells.fault()) return std::unexpected(*cells.fault());
  }
  return {};
}

catalogue::Words name_of(CsvCells& cells) { return {cells.needed_text("name_en"), cells.text("name_es")}; }

// Adds an entry under its id; a second one of the same id is a fault of the row.
template <class Entry>
void put(CsvCells& cells, std::map<catalogue::Id, Entry>& entries, Entry entry) {
  const catalogue::Id id = entry.id;
  if (!entries.emplace(id, std::move(entry)).second)
    cells.refuse("id", id + " stands there already", "give each row its own id");
}

// An id of an item that the catalogue has, or nothing.
catalogue::Id item_id(CsvCells& cells, const Catalogue& catalogue, std::string_view column) {
  catalogue::Id id = cells.text(column);
  if (!id.empty() && catalogue.item(id) == nullptr)
    cells.refuse(column, "there is no item " + id, "add it to the items, or correct the id");
  return id;
}

std::string stage_word(CsvCells& cells) {
  std::string stage = cells.needed_text("stage");
  if (!takeoff::stage_of(stage))
    cells.refuse("stage", "there is no stage called '" + stage + "'",
                 "use one of the nine stages, such as dig or base");
  return stage;
}

class ItemFiles {
 public:
  explicit ItemFiles(const Texts& texts) : texts_(texts) {}

  Result<void> read(Catalogue& into) {
    const auto text = texts_.find(path_);
    if (text == texts_.end())
      return problem::fault("starter-missing", "the file is missing", "put it back", csv_place(path_));
    auto rows = read_item_rows(text->second, path_);
    if (!rows) return std::unexpected(rows.error());
    rows_ = std::move(*rows);
    for (std::size_t i = 0; i < rows_.size(); ++i) place_[rows_[i].item.id] = i;
    if (auto good = details(); !good) return good;
    if (auto good = contents(); !good) return good;
    for (ItemRow& row : rows_) {
      if (auto good = check_item_row(row, path_); !good) return good;
      if (!row.item.supplier.empty() && !into.suppliers.contains(row.item.supplier))
        return problem::fault("csv-cell", "column supplier: there is no supplier " + row.item.supplier,
                              "add it to the suppliers", csv_place(path_, row.line));
      auto item = std::make_shared<const catalogue::Item>(std::move(row.item));
      into.items.emplace(item->id, item);
    }
    return {};
  }

 private:
  catalogue::Item* item(CsvCells& cells, std::string_view column) {
    const catalogue::Id id = cells.needed_text(column);
    const auto found = place_.find(id);
    if (found != place_.end()) return &rows_[found->second].item;
    cells.refuse(column, "there is no item " + id, "add it to the items, or correct the id");
    return nullptr;
  }

  Result<void> details() {
    return each_row(texts_, "item-details", {"id", "key", "value", "unit", "note"}, [&](CsvCells& cells) {
      catalogue::Item* owner = item(cells, "id");
      const std::string key = cells.needed_text("key");
      if (owner != nullptr && !owner->details.emplace(key, cells.text("value")).second)
        cells.refuse("key", key + " of " + owner->id + " is given twice", "take one of them out");
    });
  }

  Result<void> contents() {
    return each_row(texts_, "pack-contents", {"pack", "piece", "pieces"}, [&](CsvCells& cells) {
      catalogue::Item* pack = item(cells, "pack");
      const catalogue::Item* piece = item(cells, "piece");
      if (cells.text("pieces").empty()) cells.refuse("pieces", "the cell is empty", "enter how many the pack holds");
      if (pack != nullptr && piece != nullptr) pack->contents.push_back({piece->id, cells.count("pieces")});
    });
  }

  const Texts& texts_;
  const std::string path_ = "catalogue/items.csv";
  std::vector<ItemRow> rows_;
  std::map<catalogue::Id, std::size_t> place_;
};

Result<void> read_suppliers(const Texts& texts, Catalogue& into) {
  return each_row(texts, "suppliers",
                  {"id", "name_en", "name_es", "sells", "delivery", "lead_days", "least_order", "notes"},
                  [&](CsvCells& cells) {
                    put(cells, into.suppliers,
                        catalogue::Supplier{cells.needed_text("id"), name_of(cells), cells.text("sells"),
                                            cells.money("delivery").value_or(units::Money()), cells.whole("lead_days"),
                                            cells.text("least_order"), cells.text("notes")});
                  });
}

Result<void> read_layers(const Texts& texts, Catalogue& into) {
  return each_row(
      texts, "build-up-layers",
      {"build_up", "order_from_top", "role", "item", "thickness_mm", "past_edge_mm", "lift_mm", "source", "notes"},
      [&](CsvCells& cells) {
        const catalogue::Id id = cells.needed_text("build_up");
        catalogue::Layer layer{cells.needed_text("role"),
                               item_id(cells, into, "item"),
                               cells.millimetres("thickness_mm"),
                               cells.millimetres("past_edge_mm").value_or(units::Length()),
                               cells.millimetres("lift_mm"),
                               cells.text("source"),
                               cells.text("notes")};
        const auto owner = into.build_ups.find(id);
        if (owner == into.build_ups.end())
          return cells.refuse("build_up", "there is no build-up " + id, "correct the id");
        if (layer.item.empty() != (layer.role == "unit"))
          return cells.refuse("item", "a layer names its item, and the unit's layer names none",
                              "fill it in, or leave it empty for role unit");
        auto& layers = owner->second.layers;
        if (cells.count("order_from_top") != static_cast<int>(layers.size()) + 1)
          return cells.refuse("order_from_top", "the layers of " + id + " do not count up from 1",
                              "list them from the top");
        layers.push_back(std::move(layer));
      });
}

Result<void> read_build_ups(const Texts& texts, Catalogue& into) {
  auto heads = each_row(texts, "build-ups", {"id", "use", "name_en", "name_es", "surface", "water", "notes"},
                        [&](CsvCells& cells) {
                          put(cells, into.build_ups,
                              catalogue::BuildUp{cells.needed_text("id"),
                                                 cells.needed_text("use"),
                                                 name_of(cells),
                                                 cells.text("surface"),
                                                 cells.text("water"),
                                                 cells.text("notes"),
                                                 {}});
                        });
  return heads ? read_layers(texts, into) : heads;
}

Result<void> read_junctions(const Texts& texts, Catalogue& into) {
  std::set<catalogue::Id> ids;
  return each_row(texts, "junctions",
                  {"id", "side_a", "side_b", "condition", "name_en", "name_es", "built", "joint_mm", "rod", "sealant",
                   "filler", "edge", "other", "source", "known", "notes"},
                  [&](CsvCells& cells) {
                    const bool fill_of_area = cells.text("filler") == "area";
                    catalogue::Junction junction{cells.needed_text("id"),
                                                 cells.needed_text("side_a"),
                                                 cells.needed_text("side_b"),
                                                 cells.text("condition"),
                                                 name_of(cells),
                                                 cells.text("built"),
                                                 cells.millimetres("joint_mm"),
                                                 item_id(cells, into, "rod"),
                                                 item_id(cells, into, "sealant"),
                                                 fill_of_area ? "area" : item_id(cells, into, "filler"),
                                                 item_id(cells, into, "edge"),
                                                 cells.text("other"),
                                                 cells.needed_text("source"),
                                                 cells.text("known"),
                                                 cells.text("notes")};
                    if (!ids.insert(junction.id).second)
                      cells.refuse("id", junction.id + " stands there already", "give each row its own id");
                    into.junctions.push_back(std::move(junction));
                  });
}

Result<void> read_rates(const Texts& texts, Catalogue& into) {
  return each_row(texts, "labour",
                  {"id", "stage", "line_kind", "name_en", "name_es", "si_unit", "hours_per_si_unit", "crew", "machine",
                   "condition", "source", "known", "notes"},
                  [&](CsvCells& cells) {
                    catalogue::Rate rate{cells.needed_text("id"),
                                         stage_word(cells),
                                         cells.needed_text("line_kind"),
                                         name_of(cells),
                                         cells.needed_text("si_unit"),
                                         cells.needed_number("hours_per_si_unit"),
                                         cells.text("crew"),
                                         item_id(cells, into, "machine"),
                                         cells.text("condition"),
                                         cells.needed_text("source"),
                                         cells.text("known"),
                                         cells.text("notes")};
                    if (rate.hours_per_si_unit <= 0)
                      cells.refuse("hours_per_si_unit", "it is 0 or less", "enter person-hours for one unit");
                    put(cells, into.rates, std::move(rate));
                  });
}

Result<void> read_limits(const Texts& texts, Catalogue& into) {
  return each_row(
      texts, "limits",
      {"id", "group", "name_en", "name_es", "least", "greatest", "usual", "unit", "source", "known", "notes"},
      [&](CsvCells& cells) {
        catalogue::Limit limit{cells.needed_text("id"), cells.text("group"),         name_of(cells),
                               cells.number("least"),   cells.number("greatest"),    cells.number("usual"),
                               cells.text("unit"),      cells.needed_text("source"), cells.needed_text("known"),
                               cells.text("notes")};
        const double middle = limit.usual.value_or(limit.least.value_or(limit.greatest.value_or(0)));
        if (limit.least.value_or(middle) > middle || limit.greatest.value_or(middle) < middle)
          cells.refuse("usual", "least, usual and greatest are not in order", "correct them");
        put(cells, into.limits, std::move(limit));
      });
}

Result<void> read_notes(const Texts& texts, Catalogue& into) {
  auto points = each_row(
      texts, "hold-points", {"stage", "look_at", "limit", "before", "who", "source", "applies"}, [&](CsvCells& cells) {
        into.hold_points.push_back({stage_word(cells), cells.needed_text("look_at"), cells.text("limit"),
                                    cells.needed_text("before"), cells.needed_text("who"), cells.needed_text("source"),
                                    cells.needed_text("applies")});
      });
  if (!points) return points;
  auto cautions = each_row(texts, "cautions", {"stage", "text", "who", "source", "applies"}, [&](CsvCells& cells) {
    into.cautions.push_back({stage_word(cells), cells.needed_text("text"), cells.needed_text("who"),
                             cells.needed_text("source"), cells.needed_text("applies")});
  });
  if (!cautions) return cautions;
  auto rules = each_row(
      texts, "site-rules", {"id", "mark", "against", "distance_mm", "per_size", "severity", "text", "who", "source"},
      [&](CsvCells& cells) {
        catalogue::SiteRule rule{cells.needed_text("id"),
                                 cells.needed_text("mark"),
                                 cells.needed_text("against"),
                                 cells.millimetres("distance_mm"),
                                 cells.number("per_size").value_or(0),
                                 cells.needed_text("severity"),
                                 cells.needed_text("text"),
                                 cells.needed_text("who"),
                                 cells.needed_text("source")};
        if (rule.severity != "problem" && rule.severity != "flag" && rule.severity != "notice")
          cells.refuse("severity", "'" + rule.severity + "' is no severity", "write problem, flag or notice");
        into.site_rules.push_back(std::move(rule));
      });
  if (!rules) return rules;
  return each_row(texts, "note", {"note"}, [&](CsvCells& cells) { into.note = cells.needed_text("note"); });
}

Result<void> read_patterns(const Texts& texts, Catalogue& into) {
  for (const auto& [path, text] : texts) {
    if (!path.starts_with("patterns/") || !path.ends_with(".json")) continue;
    auto value = parse_json(text, path);
    if (!value) return std::unexpected(value.error());
    Reading reading{path, {}};
    catalogue::Pattern pattern;
    if (!files::read(*value, pattern, reading)) return std::unexpected(reading.told());
    if (auto good = catalogue::check(pattern); !good) return std::unexpected(problem::in_file(good.error(), path));
    const catalogue::Id id = pattern.id;
    if (!into.patterns.emplace(id, std::move(pattern)).second)
      return problem::fault("starter-pattern", "a second pattern is called " + id, "give each its own id",
                            csv_place(path));
  }
  return {};
}

}  // namespace

Result<Catalogue> read_starter(const Texts& texts) {
  Catalogue catalogue;
  if (auto good = read_suppliers(texts, catalogue); !good) return std::unexpected(good.error());
  if (auto good = ItemFiles(texts).read(catalogue); !good) return std::unexpected(good.error());
  for (const auto& part : {read_build_ups, read_junctions, read_rates, read_limits, read_notes, read_patterns})
    if (auto good = part(texts, catalogue); !good) return std::unexpected(good.error());
  return catalogue;
}

}  // namespace files
