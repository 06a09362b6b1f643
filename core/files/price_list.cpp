#include "files/price_list.h"

#include <algorithm>
#include <array>
#include <map>

#include "files/csv_cells.h"
#include "units/number.h"

namespace files {

namespace {

using catalogue::Item;
using problem::Result;

// What a column is for, and the heads it goes by; the first that the file has is taken.
enum class Part { item, number, price, unit, date, name, pack, supplier };
struct Heads {
  Part part;
  std::vector<std::string_view> names;
};
const std::array<Heads, 8>& all_heads() {
  static const std::array<Heads, 8> heads{{
      {Part::item, {"item", "item id", "id"}},
      {Part::number, {"supplier number", "item number", "part number", "article", "number", "code"}},
      {Part::price, {"price", "unit price", "net price", "list price"}},
      {Part::unit, {"price unit", "per", "uom", "unit"}},
      {Part::date, {"price date", "date", "valid from"}},
      {Part::name, {"name", "name en", "description"}},
      {Part::pack, {"pieces per pack", "pack size", "pack"}},
      {Part::supplier, {"supplier"}},
  }};
  return heads;
}

std::string plain(std::string_view head) {
  std::string made;
  for (const char c : head)
    made += c == '_' || c == '-' ? ' ' : c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
  while (made.ends_with(' ')) made.pop_back();
  while (made.starts_with(' ')) made.erase(0, 1);
  return made;
}

using Columns = std::map<Part, std::string>;  // by what it is for, as the file writes it

Result<Columns> columns_of(const CsvTable& table, std::vector<std::string>& left_out) {
  std::map<std::string, std::string> there;
  for (const std::string& column : table.columns) there.emplace(plain(column), column);
  Columns columns;
  for (const auto& [part, names] : all_heads())
    for (const std::string_view name : names)
      if (const auto found = there.find(std::string(name)); found != there.end()) {
        columns.emplace(part, found->second);
        break;
      }
  for (const std::string& column : table.columns)
    if (std::ranges::none_of(columns, [&](const auto& one) { return one.second == column; }))
      left_out.push_back(column);
  const auto missing = [&](const std::string& what, const std::string& mend) {
    return problem::fault("csv-columns", what, mend, csv_place(table.file, 1));
  };
  if (!columns.contains(Part::item) && !columns.contains(Part::number))
    return missing("no column says which item a price is of", "name one 'item' or 'supplier number' in the head line");
  if (!columns.contains(Part::price)) return missing("the column 'price' is missing", "add it to the head line");
  if (!columns.contains(Part::unit))
    return missing("no column says per what a price is", "name one 'per' or 'price unit' in the head line");
  return columns;
}

// How the trade writes units besides the catalogue's own words.
std::string unit_of(const std::string& written) {
  static const std::map<std::string, std::string> words{
      {"ea", "piece"},   {"each", "piece"}, {"pc", "piece"},      {"pcs", "piece"},     {"pieces", "piece"},
      {"sf", "sq ft"},   {"sqft", "sq ft"}, {"sq. ft.", "sq ft"}, {"ft2", "sq ft"},     {"lf", "ft"},
      {"lin ft", "ft"},  {"cy", "cu yd"},   {"cuyd", "cu yd"},    {"cu. yd.", "cu yd"}, {"yd3", "cu yd"},
      {"tn", "ton"},     {"tons", "ton"},   {"bags", "bag"},      {"rolls", "roll"},    {"hr", "hour"},
      {"hours", "hour"}, {"days", "day"},   {"tubes", "tube"},    {"pails", "pail"},    {"sqm", "m2"}};
  const std::string simple = plain(written);
  const auto found = words.find(simple);
  return found == words.end() ? simple : found->second;
}

// "$1,234.50": the currency's sign may stand before it, and commas between thousands. "12,50" is no amount, lest it be
// read as 1,250.
std::optional<units::Money> amount_of(std::string text) {
  if (text.starts_with('$')) text.erase(0, 1);
  const std::size_t dot = std::min(text.find('.'), text.size());
  if (text.find(',') != std::string::npos) {
    for (std::size_t i = 0; i < text.size(); ++i) {
      const bool mark = i < dot && i > 0 && (dot - i) % 4 == 0;
      if ((text[i] == ',') != (mark && text.find(',') <= i)) return std::nullopt;
    }
    if (text.find(',') > 3) return std::nullopt;
    std::erase(text, ',');
  }
  const auto money = units::read_money(text, 2);
  return money ? std::optional(*money) : std::nullopt;
}

// Items by what a list may call them.
struct Known {
  explicit Known(const catalogue::Catalogue& all) : catalogue(all) {
    for (const auto& [id, item] : all.items)
      if (const auto found = item->details.find(supplier_number); found != item->details.end())
        numbers.emplace(found->second, item.get());
  }
  // The items that the words can mean; of several those of the supplier.
  std::vector<const Item*> find(const std::string& words, const std::string& supplier) const {
    if (const Item* item = catalogue.item(words)) return {item};
    std::vector<const Item*> found;
    for (auto [at, end] = numbers.equal_range(words); at != end; ++at) found.push_back(at->second);
    if (found.size() > 1 && !supplier.empty())
      std::erase_if(found, [&](const Item* item) { return item->supplier != supplier; });
    return found;
  }
  const catalogue::Catalogue& catalogue;
  std::multimap<std::string, const Item*> numbers;
};

class Reader {
 public:
  Reader(const CsvTable& table, Columns columns, const catalogue::Stock& stock, std::string today)
      : table_(table), columns_(std::move(columns)), stock_(stock), known_(stock.all), today_(std::move(today)) {}

  PriceRow row(const CsvRow& from) {
    CsvCells cells(table_, from);
    PriceRow row;
    row.line = from.line;
    row.name = text(cells, Part::name);
    const std::string own = text(cells, Part::item), number = text(cells, Part::number);
    row.number = own.empty() ? number : own;
    row.after.unit = unit_of(text(cells, Part::unit));
    row.after.date = text(cells, Part::date);
    if (row.after.date.empty()) row.after.date = today_;
    const std::string supplier = text(cells, Part::supplier);
    auto items = known_.find(own, supplier);
    if (items.empty()) items = known_.find(number, supplier);
    if (items.size() == 1) {
      const Item& item = *items.front();
      row.item = item.id;
      row.before = item.price;
      judge(row, item, cells);
    } else {
      row.fate = items.empty() ? PriceFate::unknown : PriceFate::ambiguous;
      if (const auto amount = amount_of(text(cells, Part::price))) row.after.amount = *amount;
    }
    if (cells.fault()) {
      row.fate = PriceFate::unreadable;
      row.why = cells.fault();
    }
    return row;
  }

 private:
  std::string head(Part part) const {
    const auto found = columns_.find(part);
    return found == columns_.end() ? std::string() : found->second;
  }
  std::string text(CsvCells& cells, Part part) const {
    std::string cell = cells.text(head(part));
    while (cell.ends_with(' ')) cell.pop_back();
    while (cell.starts_with(' ')) cell.erase(0, 1);
    return cell;
  }

  void judge(PriceRow& row, const Item& item, CsvCells& cells) const {
    const std::string written = text(cells, Part::price);
    row.retired = stock_.retired.contains({0, item.id});
    row.other_pack = other_pack(item, cells);
    if (written.empty()) {
      row.fate = PriceFate::no_price;
      return;
    }
    const auto amount = amount_of(written);
    if (!amount)
      return cells.refuse(head(Part::price), "'" + written.substr(0, 40) + "' is not an amount of money",
                          "write digits with a dot and at most two decimals");
    row.after.amount = *amount;
    if (row.before && unit_of(row.before->unit) == row.after.unit) row.after.unit = row.before->unit;
    row.by_others = row.before && row.before->by_others;
    if (row.by_others && *amount == units::Money()) {
      row.fate = PriceFate::same;
      row.by_others = false;
      return;
    }
    if (!fits_unit(row, item)) {
      row.fate = PriceFate::other_unit;
      return;
    }
    Item priced = item;
    priced.price = row.after;
    if (const auto good = catalogue::check(priced); !good)
      return cells.refuse(head(good.error().code == "item-date" ? Part::date : Part::price), good.error().text,
                          good.error().mend);
    weigh(row);
  }

  int other_pack(const Item& item, CsvCells& cells) const {
    const auto pieces = units::read_number(text(cells, Part::pack));
    const bool other = pieces && *pieces >= 1 && *pieces < 1e9 && item.pack.pieces > 0 && *pieces != item.pack.pieces;
    return other ? static_cast<int>(*pieces) : 0;
  }

  // Where the item has no price yet: any unit that the price of one follows from.
  static bool fits_unit(const PriceRow& row, const Item& item) {
    if (row.before && !row.before->unit.empty()) return row.before->unit == row.after.unit;
    Item priced = item;
    priced.price = row.after;
    return catalogue::price_of_one(priced).has_value();
  }

  static void weigh(PriceRow& row) {
    const bool priced = row.before && !row.before->by_others;
    row.older = priced && !row.before->date.empty() && row.after.date < row.before->date;
    if (priced && row.before->amount == row.after.amount) {
      row.fate = row.after.date > row.before->date ? PriceFate::confirmed : PriceFate::same;
      row.older = false;
      return;
    }
    row.fate = PriceFate::changes;
    if (!priced) return;
    const std::int64_t was = row.before->amount.coins(), by = row.after.amount.coins() - was;
    row.large = 2 * std::abs(by) > std::abs(was);
  }

  const CsvTable& table_;
  Columns columns_;
  const catalogue::Stock& stock_;
  Known known_;
  std::string today_;
};

// Of rows for one item none is taken where their prices differ; where they are alike, the first.
void part_doubles(PriceList& list) {
  std::map<catalogue::Id, std::vector<PriceRow*>> by_item;
  for (PriceRow& row : list.rows)
    if (row.can_be_taken() || row.fate == PriceFate::same) by_item[row.item].push_back(&row);
  for (auto& [id, rows] : by_item) {
    const bool alike =
        std::ranges::all_of(rows, [&](const PriceRow* row) { return row->after == rows.front()->after; });
    for (std::size_t i = alike ? 1 : 0; rows.size() > 1 && i < rows.size(); ++i) {
      const PriceRow& other = *rows[i == 0 ? 1 : 0];
      rows[i]->fate = PriceFate::doubled;
      rows[i]->why = problem::Problem{
          problem::Severity::flag, "price-doubled",
          id + " stands in line " + std::to_string(other.line) + " too" + (alike ? "" : ", at another price"),
          alike ? "" : "ask which one holds and take the other row out of the file",
          csv_place(list.file, rows[i]->line)};
    }
  }
}

}  // namespace

std::optional<double> PriceRow::percent() const {
  const bool compared = can_be_taken() || fate == PriceFate::same || fate == PriceFate::doubled;
  if (!compared || !before || before->by_others || before->amount == units::Money()) return std::nullopt;
  const std::int64_t was = before->amount.coins();
  return static_cast<double>(after.amount.coins() - was) * 100 / static_cast<double>(std::abs(was));
}

Result<PriceList> read_price_list(std::string_view text, const std::string& file, const catalogue::Stock& stock,
                                  const std::string& today) {
  const auto table = read_csv(text, file);
  if (!table) return std::unexpected(table.error());
  PriceList list;
  list.file = file;
  auto columns = columns_of(*table, list.left_out);
  if (!columns) return std::unexpected(columns.error());
  if (table->rows.empty())
    return problem::fault("csv-row", "there is no price in the file", "check that it is the list that was sent",
                          csv_place(file, 1));
  Reader reader(*table, std::move(*columns), stock, today);
  for (const CsvRow& row : table->rows) list.rows.push_back(reader.row(row));
  part_doubles(list);
  return list;
}

catalogue::Change price_change(const catalogue::Stock& stock, const PriceList& list,
                               const std::vector<std::size_t>& chosen) {
  catalogue::Change change{{}, list.file};
  for (const std::size_t at : chosen) {
    if (at >= list.rows.size() || !list.rows[at].can_be_taken()) continue;
    const auto before = catalogue::find(stock, {0, list.rows[at].item});
    if (!before) continue;
    Item item = std::get<Item>(before->entry);
    item.price = list.rows[at].after;
    change.steps.push_back({before, catalogue::Kept{std::move(item), before->retired}});
  }
  return change;
}

}  // namespace files
