#include <algorithm>

#include "files/price_list.h"
#include "ui/catalogue/entry_making.h"
#include "ui/panels/length_field.h"
#include "ui/panels/panel_words.h"
#include "ui/words/words.h"
#include "units/number.h"

namespace ui {

using catalogue::Item;

namespace {

std::vector<Choice> supplier_choices(const catalogue::Stock& stock) {
  std::vector<Choice> choices;
  for (const auto& [id, supplier] : stock.all.suppliers)
    if (!stock.retired.contains({5, id})) choices.push_back({id, own_name(supplier.name, id)});
  return choices;
}

std::vector<Choice> kind_choices() {
  std::vector<Choice> choices;
  for (const std::string& kind : catalogue::known_kinds())
    choices.push_back({kind, QString::fromStdString(kind).replace(QLatin1Char('-'), QLatin1Char(' '))});
  return choices;
}

// Deposits and credits may be below 0, so they are read as they are written in files.
Typing signed_money() {
  Typing typing = money_typing(2, true);
  typing.read = [](const QString& text) -> std::expected<Value, QString> {
    QString plain = text.trimmed();
    plain.replace(QChar(0x2212), QLatin1Char('-')).remove(QLatin1Char('$'));
    const auto money = units::read_money(plain.toStdString(), 2);
    if (!money) return std::unexpected(Entries::tr("This takes an amount of money, such as -28.00"));
    return Value(money->coins());
  };
  return typing;
}

// An amount that is typed is the price of today.
EntryField price_field(const Item& item, const Around& around) {
  EntryField field = entry_field<Item>(
      "price/amount", Entries::tr("Price"), Editor::money,
      [](const Item& of) -> Value {
        return of.price && !of.price->by_others ? Value(of.price->amount.coins()) : Value{};
      },
      [today = around.today](Item& of, const Value& value) {
        const auto* coins = std::get_if<std::int64_t>(&value);
        if (!coins) {
          of.price.reset();
          return QString();
        }
        if (!of.price) of.price = catalogue::Price{{}, of.unit, {}, false};
        of.price->amount = units::Money::of_coins(*coins);
        of.price->date = today;
        of.price->by_others = false;
        return QString();
      });
  field.look.may_be_empty = true;
  field.look.otherwise = Entries::tr("no price");
  if (item.kind == "deposit" || item.kind == "credit") field.typing = signed_money();
  return blamed(std::move(field), {"item-price"});
}

EntryField by_others_field(const Around& around) {
  return entry_field<Item>(
      "price/by_others", Entries::tr("Supplied by others"), Editor::yes_no,
      [](const Item& item) -> Value { return item.price && item.price->by_others; },
      [today = around.today](Item& item, const Value& value) {
        const bool* on = std::get_if<bool>(&value);
        if (on && *on)
          item.price = catalogue::Price{{}, item.price ? item.price->unit : item.unit, today, true};
        else
          item.price.reset();
        return QString();
      });
}

std::vector<EntryField> price_fields(const Item& item, const Around& around) {
  const auto price = [](auto& of) { return of.price ? &*of.price : nullptr; };
  std::vector<EntryField> all{price_field(item, around)};
  if (item.price) {
    all.push_back(blamed(made_of<Item>("price/unit", Entries::tr("For a"),
                                       [price](auto& of) { return price(of) ? &price(of)->unit : nullptr; }),
                         {"item-price-unit"}));
    all.push_back(blamed(made_of<Item>("price/date", Entries::tr("Price of the day"),
                                       [price](auto& of) { return price(of) ? &price(of)->date : nullptr; }),
                         {"item-date"}));
  }
  all.push_back(by_others_field(around));
  all.push_back(
      blamed(percent(made_of("breakage", Entries::tr("Breakage"), &Item::breakage), 0, 1), {"item-breakage"}));
  return all;
}

std::vector<EntryField> size_fields() {
  std::vector<EntryField> all{
      blamed(made_of("length", Entries::tr("Length"), &Item::length), {"item-length"}),
      blamed(made_of("width", Entries::tr("Width"), &Item::width), {"item-width"}),
      blamed(made_of("height", Entries::tr("Height"), &Item::height), {"item-height"}),
      blamed(made_of("joint", Entries::tr("Joint"), &Item::joint), {"item-joint"}),
      blamed(made_of("mass_kg", Entries::tr("Mass of one, kg"), &Item::mass_kg), {"item-mass"}),
      blamed(made_of("density", Entries::tr("Density, kg/m³"), &Item::density_kg_m3), {"item-density", "item-factor"}),
      blamed(percent(made_of("void_share", Entries::tr("Voids"), &Item::void_share), 0, 1), {"item-void"})};
  return all;
}

// 0 is "not given" in a pack, and an empty field says so.
EntryField count_field(std::string id, const QString& label, int catalogue::Pack::* member) {
  EntryField field = entry_field<Item>(
      std::move(id), label, Editor::whole,
      [member](const Item& item) -> Value {
        return item.pack.*member == 0 ? Value{} : Value(std::int64_t{item.pack.*member});
      },
      [member](Item& item, const Value& value) {
        const auto* count = std::get_if<std::int64_t>(&value);
        item.pack.*member = count ? static_cast<int>(*count) : 0;
        return QString();
      });
  field.look.may_be_empty = true;
  return blamed(between(std::move(field), 0, 1e6), {"item-pack"});
}

std::vector<EntryField> pack_fields() {
  return {made_of("sold_by", Entries::tr("Least that is sold"), &Item::sold_by),
          made_of<Item>("pack/kind", Entries::tr("Pack"), [](auto& item) { return &item.pack.kind; }),
          count_field("pack/per_layer", Entries::tr("Pieces to a layer"), &catalogue::Pack::pieces_per_layer),
          count_field("pack/layers", Entries::tr("Layers to a pack"), &catalogue::Pack::layers),
          count_field("pack/pieces", Entries::tr("Pieces to a pack"), &catalogue::Pack::pieces)};
}

// A mixed pack, size by size; a size of which there is none goes.
std::vector<EntryField> content_fields(const Item& item, const Around& around) {
  std::vector<EntryField> all;
  for (std::size_t i = 0; i < item.contents.size(); ++i) {
    EntryField pieces = entry_field<Item>(
        "contents/" + std::to_string(i), item_name(around.stock.all, item.contents[i].item), Editor::whole,
        [i](const Item& of) -> Value {
          return i < of.contents.size() ? Value(std::int64_t{of.contents[i].pieces}) : Value{};
        },
        [i](Item& of, const Value& value) {
          const auto* count = std::get_if<std::int64_t>(&value);
          if (i >= of.contents.size()) return QString();
          if (!count || *count == 0)
            of.contents.erase(of.contents.begin() + static_cast<std::ptrdiff_t>(i));
          else
            of.contents[i].pieces = static_cast<int>(*count);
          return QString();
        });
    all.push_back(blamed(between(std::move(pieces), 0, 1e6), {"item-contents"}));
  }
  if (item.kind != "mixed-pack") return all;
  EntryField more = entry_field<Item>(
      "contents/add", Entries::tr("Add a size"), Editor::item, [](const Item&) -> Value { return {}; },
      [](Item& of, const Value& value) {
        if (const auto* id = std::get_if<std::string>(&value); id && !id->empty()) of.contents.push_back({*id, 1});
        return QString();
      });
  all.push_back(
      blamed(of_items(std::move(more), {"paving-unit", "slab", "permeable-unit", "clay-unit"}), {"item-contents"}));
  return all;
}

QString detail_label(const std::string& key) {
  return QString::fromStdString(key).replace(QLatin1Char('_'), QLatin1Char(' '));
}

EntryField detail_field(const std::string& key, const QString& label) {
  EntryField field = entry_field<Item>(
      "details/" + key, label, Editor::text,
      [key](const Item& item) -> Value {
        const auto found = item.details.find(key);
        return found == item.details.end() ? std::string() : found->second;
      },
      [key](Item& item, const Value& value) {
        const auto* text = std::get_if<std::string>(&value);
        const auto found = item.details.find(key);
        if (text && found != item.details.end() && found->second == *text) return QString();
        if (!text || text->empty())
          item.details.erase(key);
        else
          item.details[key] = *text;
        return QString();
      });
  return field;
}

EntryField add_detail() {
  EntryField field = entry_field<Item>(
      "details/add", Entries::tr("Add one, as name = value"), Editor::text,
      [](const Item&) -> Value { return std::string(); },
      [](Item& item, const Value& value) {
        const auto* text = std::get_if<std::string>(&value);
        if (!text || text->empty()) return QString();
        const QStringList sides = QString::fromStdString(*text).split(QLatin1Char('='));
        if (sides.size() != 2 || sides[0].trimmed().isEmpty() || sides[1].trimmed().isEmpty())
          return Entries::tr("This takes a name and a value, such as porosity = 0.4");
        const std::string key = sides[0].trimmed().toLower().replace(QLatin1Char(' '), QLatin1Char('_')).toStdString();
        if (item.details.contains(key)) return Entries::tr("There is one of that name already: change it there");
        item.details[key] = sides[1].trimmed().toStdString();
        return QString();
      });
  return blamed(std::move(field), {"item-detail"});
}

std::vector<EntryField> detail_fields(const Item& item) {
  std::vector<EntryField> all;
  for (const auto& [key, value] : item.details) {
    if (key == files::supplier_number) continue;
    EntryField field = detail_field(key, detail_label(key));
    const bool weighed = key.find("density") != std::string::npos || key == "loose_per_compacted" || key == "porosity";
    if (weighed) field.faults = {"item-factor"};
    all.push_back(std::move(field));
  }
  all.push_back(add_detail());
  return all;
}

}  // namespace

std::vector<EntryField> item_fields(const Item& item, const Around& around) {
  std::vector<EntryField> all = named_fields<Item>();
  all.front().faults = {"item-id"};
  add(all, {blamed(words(made_of("kind", Entries::tr("Kind"), &Item::kind), kind_choices()), {"item-kind"}),
            words(made_of("supplier", Entries::tr("Supplier"), &Item::supplier), supplier_choices(around.stock), true),
            detail_field(files::supplier_number, Entries::tr("Supplier’s number")),
            made_of("unit", Entries::tr("One is a"), &Item::unit)});
  add(all, price_fields(item, around), Entries::tr("Price"));
  add(all, size_fields(), Entries::tr("Size and weight"));
  add(all, pack_fields(), Entries::tr("How it is sold"));
  add(all, content_fields(item, around), Entries::tr("What the pack holds"));
  add(all, detail_fields(item), Entries::tr("Details"));
  add(all,
      {long_text(made_of("rule", Entries::tr("Rule"), &Item::rule)),
       long_text(made_of("rule_source", Entries::tr("Source of the rule"), &Item::rule_source)),
       long_text(made_of("notes", Entries::tr("Notes"), &Item::notes))},
      Entries::tr("Rule and notes"));
  return all;
}

}  // namespace ui
