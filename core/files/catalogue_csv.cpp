#include <map>

#include "files/catalogue_rows.h"
#include "files/csv_cells.h"
#include "files/files.h"
#include "units/number.h"

namespace files {

namespace {

using catalogue::Item;
using problem::Result;

// Lists inside one cell are parted by "; "; a backslash keeps the next character from parting anything.
std::string escaped(std::string_view text, std::string_view marks) {
  std::string out;
  for (const char c : text) {
    if (c == '\\' || marks.find(c) != std::string_view::npos) out += '\\';
    out += c;
  }
  return out;
}

std::vector<std::string> parted(std::string_view text, char mark) {
  std::vector<std::string> parts(1);
  for (std::size_t i = 0; i < text.size(); ++i) {
    if (text[i] == '\\' && i + 1 < text.size()) {
      (parts.back() += text[i]) += text[i + 1];
      ++i;
    } else if (text[i] == mark) {
      parts.emplace_back();
      if (mark == ';' && i + 1 < text.size() && text[i + 1] == ' ') ++i;
    } else {
      parts.back() += text[i];
    }
  }
  return parts;
}

std::string unescaped(std::string_view text) {
  std::string out;
  for (std::size_t i = 0; i < text.size(); ++i) {
    if (text[i] == '\\' && i + 1 < text.size()) ++i;
    out += text[i];
  }
  return out;
}

std::string details_cell(const Item& item) {
  std::string cell;
  for (const auto& [key, value] : item.details)
    cell += (cell.empty() ? "" : "; ") + escaped(key, ";=") + "=" + escaped(value, ";");
  return cell;
}

std::string contents_cell(const Item& item) {
  std::string cell;
  for (const auto& content : item.contents)
    cell += (cell.empty() ? "" : "; ") + escaped(content.item, ";=") + "=" + std::to_string(content.pieces);
  return cell;
}

// The pairs of a list "name=value; name=value"; a part without "=" is refused.
std::vector<std::pair<std::string, std::string>> pairs(CsvCells& cells, std::string_view column) {
  std::vector<std::pair<std::string, std::string>> found;
  const std::string text = cells.text(column);
  if (text.empty()) return found;
  for (const std::string& part : parted(text, ';')) {
    const auto sides = parted(part, '=');
    if (sides.size() < 2 || sides[0].empty()) {
      cells.refuse(column, "'" + part + "' is not a name and a value", "write name=value; name=value");
      return {};
    }
    found.emplace_back(unescaped(sides[0]), unescaped(std::string_view(part).substr(sides[0].size() + 1)));
  }
  return found;
}

std::optional<catalogue::Price> price_of(CsvCells& cells) {
  const auto amount = cells.money("price");
  const bool by_others = cells.yes("by_others");
  if (!amount && !by_others) return std::nullopt;
  return catalogue::Price{amount.value_or(units::Money()), cells.text("price_unit"), cells.text("price_date"),
                          by_others};
}

void read_lists(CsvCells& cells, Item& item) {
  for (auto& [key, value] : pairs(cells, "details"))
    if (!item.details.emplace(key, value).second)
      cells.refuse("details", "'" + key + "' is given twice", "take one of them out");
  for (const auto& [id, pieces] : pairs(cells, "contents")) {
    const auto count = units::read_number(pieces);
    if (!count || *count != static_cast<int>(std::min(*count, 1e9)) || *count < 1)
      cells.refuse("contents", "'" + pieces + "' of " + id + " is not a whole number of 1 or more",
                   "enter how many pieces the pack holds");
    else
      item.contents.push_back({id, static_cast<int>(*count)});
  }
}

Result<Item> item_of(const CsvTable& table, const CsvRow& row) {
  CsvCells cells(table, row);
  Item item;
  item.id = cells.needed_text("id");
  item.kind = cells.needed_text("kind");
  item.name = {cells.needed_text("name_en"), cells.text("name_es")};
  item.supplier = cells.text("supplier");
  item.unit = cells.needed_text("unit");
  item.length = cells.millimetres("length_mm");
  item.width = cells.millimetres("width_mm");
  item.height = cells.millimetres("height_mm");
  item.joint = cells.millimetres("joint_mm");
  item.mass_kg = cells.number("mass_kg");
  item.density_kg_m3 = cells.number("density_kg_m3");
  item.void_share = cells.number("void_share");
  item.sold_by = cells.text("sold_by");
  item.pack = {cells.text("pack_kind"), cells.count("pieces_per_layer"), cells.count("layers_per_pack"),
               cells.count("pieces_per_pack")};
  item.price = price_of(cells);
  item.breakage = cells.percent("breakage_pct");
  item.rule = cells.text("rule");
  item.rule_source = cells.text("rule_source");
  item.notes = cells.text("notes");
  read_lists(cells, item);
  if (cells.fault()) return std::unexpected(*cells.fault());
  return item;
}

std::string maybe(const std::optional<units::Length>& length) { return length ? millimetres_of(*length) : ""; }
std::string maybe(const std::optional<double>& number) { return number ? units::write_number(*number) : ""; }
std::string maybe(int count) { return count > 0 ? std::to_string(count) : ""; }

std::string row_of(const Item& item) {
  const bool priced = item.price.has_value();
  return csv_row({csv_text(item.id),
                  csv_text(item.kind),
                  csv_text(item.name.en),
                  csv_text(item.name.es),
                  csv_text(item.supplier),
                  csv_text(item.unit),
                  maybe(item.length),
                  maybe(item.width),
                  maybe(item.height),
                  maybe(item.joint),
                  maybe(item.mass_kg),
                  maybe(item.density_kg_m3),
                  maybe(item.void_share),
                  csv_text(item.sold_by),
                  csv_text(item.pack.kind),
                  maybe(item.pack.pieces_per_layer),
                  maybe(item.pack.layers),
                  maybe(item.pack.pieces),
                  priced ? units::write_money(item.price->amount, 2) : "",
                  priced ? csv_text(item.price->unit) : "",
                  priced ? csv_text(item.price->date) : "",
                  priced && item.price->by_others ? "yes" : "",
                  item.breakage == 0 ? "" : percent_of(item.breakage),
                  csv_text(item.rule),
                  csv_text(item.rule_source),
                  csv_text(item.notes),
                  csv_text(contents_cell(item)),
                  csv_text(details_cell(item))});
}

// Which column a fault of catalogue::check speaks of.
std::string column_of(const std::string& code) {
  static const std::map<std::string, std::string> columns{{"item-id", "id"},
                                                          {"item-kind", "kind"},
                                                          {"item-length", "length_mm"},
                                                          {"item-width", "width_mm"},
                                                          {"item-height", "height_mm"},
                                                          {"item-joint", "joint_mm"},
                                                          {"item-mass", "mass_kg"},
                                                          {"item-density", "density_kg_m3"},
                                                          {"item-void", "void_share"},
                                                          {"item-breakage", "breakage_pct"},
                                                          {"item-pack", "pieces_per_pack"},
                                                          {"item-contents", "contents"},
                                                          {"item-price", "price"},
                                                          {"item-price-unit", "price_unit"},
                                                          {"item-date", "price_date"},
                                                          {"item-detail", "details"},
                                                          {"item-factor", "details"}};
  const auto found = columns.find(code);
  return found == columns.end() ? "id" : found->second;
}

}  // namespace

Result<std::vector<ItemRow>> read_item_rows(std::string_view text, const std::string& file) {
  auto table = read_csv(text, file);
  if (!table) return std::unexpected(table.error());
  const auto good = check_columns(*table, {"id", "kind", "name_en", "unit"},
                                  {"name_es",         "supplier",        "length_mm",    "width_mm",
                                   "height_mm",       "joint_mm",        "mass_kg",      "density_kg_m3",
                                   "void_share",      "sold_by",         "pack_kind",    "pieces_per_layer",
                                   "layers_per_pack", "pieces_per_pack", "price",        "price_unit",
                                   "price_date",      "by_others",       "breakage_pct", "rule",
                                   "rule_source",     "notes",           "contents",     "details"});
  if (!good) return std::unexpected(good.error());
  std::vector<ItemRow> rows;
  std::map<std::string, int> lines;
  for (const CsvRow& row : table->rows) {
    auto item = item_of(*table, row);
    if (!item) return std::unexpected(item.error());
    const auto [first, is_new] = lines.emplace(item->id, row.line);
    if (!is_new)
      return cell_fault(*table, row, "id", item->id + " stands in line " + std::to_string(first->second) + " already",
                        "give each item its own id, or take one row out");
    rows.push_back({std::move(*item), row.line});
  }
  return rows;
}

Result<void> check_item_row(const ItemRow& row, const std::string& file) {
  const auto good = catalogue::check(row.item);
  if (good) return {};
  problem::Problem fault = good.error();
  fault.text = "column " + column_of(fault.code) + ": " + fault.text;
  fault.place.file = file;
  fault.place.line = row.line;
  return std::unexpected(fault);
}

std::string write_catalogue_csv(const catalogue::Catalogue& catalogue) {
  std::string text =
      csv_row({"id",          "kind",       "name_en",    "name_es",          "supplier",        "unit",
               "length_mm",   "width_mm",   "height_mm",  "joint_mm",         "mass_kg",         "density_kg_m3",
               "void_share",  "sold_by",    "pack_kind",  "pieces_per_layer", "layers_per_pack", "pieces_per_pack",
               "price",       "price_unit", "price_date", "by_others",        "breakage_pct",    "rule",
               "rule_source", "notes",      "contents",   "details"});
  for (const auto& [id, item] : catalogue.items) text += row_of(*item);
  return text;
}

Result<std::vector<Item>> read_catalogue_csv(std::string_view text, const std::string& file) {
  auto rows = read_item_rows(text, file);
  if (!rows) return std::unexpected(rows.error());
  std::vector<Item> items;
  for (ItemRow& row : *rows) {
    if (auto good = check_item_row(row, file); !good) return std::unexpected(good.error());
    items.push_back(std::move(row.item));
  }
  return items;
}

}  // namespace files
