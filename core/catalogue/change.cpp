#include "catalogue/change.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace catalogue {

namespace {

using problem::fault;
using problem::Result;

constexpr std::size_t of_item = 0, of_supplier = 5, of_hold_point = 7, of_caution = 8;  // indices of Entry

template <class T>
const Id& own_id(const T& entry) {
  return entry.id;
}
Id own_id(const HoldPoint& point) { return point.stage + ": " + point.look_at; }
Id own_id(const Caution& caution) { return caution.stage + ": " + caution.text; }

// Where the entries of one type stand in a catalogue; given and taken as const or not.
template <class T, class C>
auto& shelf(C& catalogue) {
  if constexpr (std::is_same_v<T, Item>)
    return catalogue.items;
  else if constexpr (std::is_same_v<T, Pattern>)
    return catalogue.patterns;
  else if constexpr (std::is_same_v<T, BuildUp>)
    return catalogue.build_ups;
  else if constexpr (std::is_same_v<T, Limit>)
    return catalogue.limits;
  else if constexpr (std::is_same_v<T, Rate>)
    return catalogue.rates;
  else if constexpr (std::is_same_v<T, Supplier>)
    return catalogue.suppliers;
  else if constexpr (std::is_same_v<T, Junction>)
    return catalogue.junctions;
  else if constexpr (std::is_same_v<T, HoldPoint>)
    return catalogue.hold_points;
  else if constexpr (std::is_same_v<T, Caution>)
    return catalogue.cautions;
  else
    return catalogue.site_rules;
}

template <class T>
const T& value_of(const T& entry) {
  return entry;
}
template <class T>
const T& value_of(const std::pair<const Id, T>& entry) {
  return entry.second;
}
const Item& value_of(const std::pair<const Id, std::shared_ptr<const Item>>& entry) { return *entry.second; }

template <class T>
void put(std::map<Id, T>& shelf, const Id&, const T& entry) {
  shelf[entry.id] = entry;
}
void put(std::map<Id, std::shared_ptr<const Item>>& shelf, const Id&, const Item& item) {
  shelf[item.id] = std::make_shared<const Item>(item);
}
template <class T>
void put(std::vector<T>& shelf, const Id& in_place_of, const T& entry) {
  for (T& there : shelf)
    if (own_id(there) == in_place_of) {
      there = entry;
      return;
    }
  shelf.push_back(entry);
}

template <class T>
void take_out(std::map<Id, T>& shelf, const Id& id) {
  shelf.erase(id);
}
template <class T>
void take_out(std::vector<T>& shelf, const Id& id) {
  std::erase_if(shelf, [&](const T& there) { return own_id(there) == id; });
}

template <class T, class Each>
void each_of(const Catalogue& catalogue, Each each) {
  for (const auto& one : shelf<T>(catalogue)) each(value_of(one));
}

template <class Each, std::size_t... I>
void each_kind(const Catalogue& catalogue, Each each, std::index_sequence<I...>) {
  (each_of<std::variant_alternative_t<I, Entry>>(catalogue, each), ...);
}
template <class Each>
void each_entry(const Catalogue& catalogue, Each each) {
  each_kind(catalogue, each, std::make_index_sequence<std::variant_size_v<Entry>>());
}

template <class Each, std::size_t... I>
void each_of_kind(const Catalogue& catalogue, std::size_t kind, Each each, std::index_sequence<I...>) {
  ((I == kind ? each_of<std::variant_alternative_t<I, Entry>>(catalogue, each) : void()), ...);
}

Result<void> refused(const std::string& id, const std::string& what, const std::string& mend) {
  return fault("catalogue-entry", id + ": " + what, mend);
}

bool good_id(const Id& id) {
  return !id.empty() && std::all_of(id.begin(), id.end(), [](char c) {
    return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '.' || c == '-' || c == '_';
  });
}

Result<void> check_more(const Item& item) { return check(item); }
Result<void> check_more(const Pattern& pattern) { return check(pattern); }
Result<void> check_more(const BuildUp& build_up) {
  for (const Layer& layer : build_up.layers)
    if (layer.thickness && *layer.thickness < units::Length())
      return refused(build_up.id, "a layer is thinner than 0", "enter its thickness, or leave it empty");
  return {};
}
Result<void> check_more(const Limit& limit) {
  for (const auto& value : {limit.least, limit.greatest, limit.usual})
    if (value && !std::isfinite(*value)) return refused(limit.id, "a value is no number", "enter a number");
  if (limit.least && limit.greatest && *limit.least > *limit.greatest)
    return refused(limit.id, "its least is more than its greatest", "enter the smaller one as the least");
  if (limit.usual &&
      ((limit.least && *limit.usual < *limit.least) || (limit.greatest && *limit.usual > *limit.greatest)))
    return refused(limit.id, "its usual value is not between least and greatest", "enter one between them");
  return {};
}
Result<void> check_more(const Rate& rate) {
  if (!std::isfinite(rate.hours_per_si_unit) || rate.hours_per_si_unit < 0)
    return refused(rate.id, "its hours are below 0", "enter the hours that one takes");
  return {};
}
Result<void> check_more(const Supplier& supplier) {
  if (supplier.delivery < units::Money() || supplier.lead_days < 0)
    return refused(supplier.id, "delivery or days are below 0", "enter 0 or more");
  return {};
}
Result<void> check_more(const Junction&) { return {}; }
// The stage is a word, so that stage and text make a key that no other pair makes.
Result<void> check_more(const HoldPoint& point) {
  if (!good_id(point.stage)) return refused("hold point", "it has no stage", "choose the stage that it belongs to");
  if (point.look_at.empty()) return refused("hold point", "it says nothing to look at", "enter what must be seen");
  return {};
}
Result<void> check_more(const Caution& caution) {
  if (!good_id(caution.stage)) return refused("caution", "it has no stage", "choose the stage that it belongs to");
  if (caution.text.empty()) return refused("caution", "it says nothing", "enter what to take care of");
  return {};
}
Result<void> check_more(const SiteRule& rule) {
  if (!std::isfinite(rule.per_size) || rule.per_size < 0 || (rule.distance && *rule.distance < units::Length()))
    return refused(rule.id, "its distance is below 0", "enter 0 or more");
  if (rule.severity != "problem" && rule.severity != "flag" && rule.severity != "notice")
    return refused(rule.id, "'" + rule.severity + "' is no severity", "use problem, flag or notice");
  return {};
}

// The words of a crew, "1 lab-layer + 1/2 lab-labourer", that could be items; numbers are no items' ids.
std::vector<Id> words_of(const std::string& crew) {
  std::vector<Id> words(1);
  for (const char c : crew)
    if (good_id(Id(1, c)))
      words.back() += c;
    else if (!words.back().empty())
      words.emplace_back();
  return words;
}

struct Named {
  Key key;
  bool needed = false;  // must be there; else it only must not be retired
};
std::vector<Named> named_in(const Entry& entry) {
  std::vector<Named> found;
  const auto name = [&](std::size_t kind, const Id& id, bool needed) {
    if (!id.empty()) found.push_back({{kind, id}, needed});
  };
  if (const Item* item = std::get_if<Item>(&entry)) {
    for (const PackContent& content : item->contents) name(of_item, content.item, true);
    name(of_supplier, item->supplier, false);
  }
  if (const BuildUp* build_up = std::get_if<BuildUp>(&entry))
    for (const Layer& layer : build_up->layers) name(of_item, layer.item, true);
  if (const Rate* rate = std::get_if<Rate>(&entry)) {
    name(of_item, rate->machine, false);
    for (const Id& word : words_of(rate->crew)) name(of_item, word, false);
  }
  if (const Junction* junction = std::get_if<Junction>(&entry))
    for (const Id& id : {junction->rod, junction->sealant, junction->filler, junction->edge}) name(of_item, id, false);
  return found;
}

Result<void> check_names(const Stock& stock) {
  Result<void> result;
  each_entry(stock.all, [&](const auto& value) {
    if (!result) return;
    const Entry entry = value;
    const Key key = key_of(entry);
    for (const auto& [named, needed] : named_in(entry)) {
      if (needed && !stock.all.items.contains(named.id))
        result = fault("item-contents", key.id + " names " + named.id + ", which is no item of the catalogue",
                       "add that item, or take it out of " + key.id);
      else if (stock.retired.contains(named) && !stock.retired.contains(key))
        result = fault("catalogue-retired", named.id + " is retired, but " + key.id + " needs it",
                       "give " + key.id + " another one or retire it first");
      if (!result) return;
    }
  });
  return result;
}

Result<void> fits(const Stock& stock, const Step& step) {
  if (step.before && find(stock, key_of(step.before->entry)) != step.before)
    return fault("catalogue-changed", key_of(step.before->entry).id + " is not as it was when the change was begun",
                 "look at it again and change it anew");
  if (!step.after) return {};
  const Key after = key_of(step.after->entry);
  const bool same_key = step.before && key_of(step.before->entry) == after;
  if (step.before && !same_key &&
      ((after.kind != of_hold_point && after.kind != of_caution) || key_of(step.before->entry).kind != after.kind))
    return fault("catalogue-id", "an id stays what it is", "copy the entry under the new id and retire the old one");
  if (!same_key && find(stock, after))
    return fault("catalogue-doubled", after.id + " is in the catalogue already", "choose another id");
  return check(step.after->entry);
}

void apply(Stock& stock, const Step& step) {
  const auto& kept = step.after ? step.after : step.before;
  if (!kept) return;
  const Key before = key_of(step.before ? step.before->entry : kept->entry);
  std::visit(
      [&](const auto& value) {
        auto& there = shelf<std::decay_t<decltype(value)>>(stock.all);
        if (step.after)
          put(there, before.id, value);
        else
          take_out(there, before.id);
      },
      kept->entry);
  stock.retired.erase(before);
  if (step.after && step.after->retired) stock.retired.insert(key_of(step.after->entry));
}

}  // namespace

const std::vector<std::string>& kind_words() {
  static const std::vector<std::string> words{"item",     "pattern",  "build-up",   "limit",   "rate",
                                              "supplier", "junction", "hold-point", "caution", "site-rule"};
  return words;
}

Key key_of(const Entry& entry) {
  return {entry.index(), std::visit([](const auto& value) -> Id { return own_id(value); }, entry)};
}

Catalogue offered(const Stock& stock) {
  Stock left = stock;
  for (const Key& key : stock.retired)
    if (const auto kept = find(stock, key)) apply(left, {kept, std::nullopt});
  return left.all;
}

std::vector<Kept> entries(const Stock& stock, std::size_t kind) {
  std::vector<Kept> found;
  const auto keep = [&](const auto& value) {
    const Entry entry = value;
    found.push_back({entry, stock.retired.contains(key_of(entry))});
  };
  each_of_kind(stock.all, kind, keep, std::make_index_sequence<std::variant_size_v<Entry>>());
  return found;
}

std::optional<Kept> find(const Stock& stock, const Key& key) {
  if (key.kind == of_item) {
    const Item* item = stock.all.item(key.id);
    if (item == nullptr) return std::nullopt;
    return Kept{*item, stock.retired.contains(key)};
  }
  for (const Kept& kept : entries(stock, key.kind))
    if (key_of(kept.entry) == key) return kept;
  return std::nullopt;
}

Change reversed(const Change& change) {
  Change back{{}, change.source};
  for (auto step = change.steps.rbegin(); step != change.steps.rend(); ++step)
    back.steps.push_back({step->after, step->before});
  return back;
}

Result<Stock> changed(const Stock& stock, const Change& change) {
  Stock after = stock;
  for (const Step& step : change.steps) {
    if (auto good = fits(after, step); !good) return std::unexpected(good.error());
    apply(after, step);
  }
  if (auto good = check_names(after); !good) return std::unexpected(good.error());
  return after;
}

Result<void> check(const Entry& entry) {
  const Key key = key_of(entry);
  if (key.kind != of_hold_point && key.kind != of_caution && !good_id(key.id))
    return fault("catalogue-id", "'" + key.id + "' can't be an id",
                 "use small letters, digits, dot, dash and underscore");
  return std::visit([](const auto& value) { return check_more(value); }, entry);
}

Entry copied(const Entry& entry, const Id& id) {
  Entry copy = entry;
  std::visit(
      [&](auto& value) {
        using T = std::decay_t<decltype(value)>;
        if constexpr (std::is_same_v<T, HoldPoint>)
          value.look_at += " " + id;
        else if constexpr (std::is_same_v<T, Caution>)
          value.text += " " + id;
        else
          value.id = id;
      },
      copy);
  return copy;
}

Change change_to(const Stock& stock, const Catalogue& wanted, const std::string& source) {
  Change change{{}, source};
  std::set<Key> taken;  // a list may have one twice: the first of them holds
  each_entry(wanted, [&](const auto& value) {
    const Entry entry = value;
    if (!taken.insert(key_of(entry)).second) return;
    const auto before = find(stock, key_of(entry));
    if (before && before->entry == entry) return;
    change.steps.push_back({before, Kept{entry, before && before->retired}});
  });
  return change;
}

}  // namespace catalogue
