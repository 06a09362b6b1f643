#include "catalogue/catalogue.h"

#include <algorithm>
#include <cmath>

#include "units/number.h"

namespace catalogue {

namespace {

using problem::Result;

template <class Map>
auto find_in(const Map& map, const Id& id) -> decltype(&map.begin()->second) {
  const auto found = map.find(id);
  return found == map.end() ? nullptr : &found->second;
}

std::unexpected<problem::Problem> refuse(const Item& item, const char* code, const std::string& what,
                                         const char* mend) {
  return problem::fault(code, (item.id.empty() ? "an item without id" : "item " + item.id) + ": " + what, mend);
}

bool good_id(const Id& id) {
  if (id.empty() || id.size() > 100) return false;
  const auto plain = [](char c) { return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9'); };
  return plain(id.front()) &&
         std::all_of(id.begin(), id.end(), [&](char c) { return plain(c) || c == '.' || c == '-' || c == '_'; });
}

bool share(double value) { return std::isfinite(value) && value >= 0 && value <= 1; }

// A calendar day of the years 1900 to 2999, as 2025-03-01.
bool good_date(const std::string& date) {
  if (date.size() != 10 || date[4] != '-' || date[7] != '-') return false;
  for (const std::size_t i : {0u, 1u, 2u, 3u, 5u, 6u, 8u, 9u})
    if (date[i] < '0' || date[i] > '9') return false;
  const auto number = [&](std::size_t from, std::size_t count) { return std::stoi(date.substr(from, count)); };
  const int year = number(0, 4), month = number(5, 2), day = number(8, 2);
  const bool leap = (year % 4 == 0 && year % 100 != 0) || year % 400 == 0;
  const int days[] = {31, leap ? 29 : 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
  return year >= 1900 && year < 3000 && month >= 1 && month <= 12 && day >= 1 && day <= days[month - 1];
}

Result<void> check_names(const Item& item) {
  if (!good_id(item.id))
    return refuse(item, "item-id", "its id is not plain", "use small letters, digits, dot, dash and underscore");
  const auto& kinds = known_kinds();
  if (std::find(kinds.begin(), kinds.end(), item.kind) == kinds.end())
    return refuse(item, "item-kind", "the kind '" + item.kind + "' is not known",
                  "use a kind such as paving-unit, aggregate or labour");
  for (const auto& [key, value] : item.details)
    if (!good_id(key))
      return refuse(item, "item-detail", "the detail '" + key + "' is not named plainly",
                    "use small letters, digits, dot, dash and underscore");
  return {};
}

Result<void> check_sizes(const Item& item) {
  const std::pair<const std::optional<units::Length>*, std::string> sides[] = {
      {&item.length, "length"}, {&item.width, "width"}, {&item.height, "height"}};
  for (const auto& [side, name] : sides)
    if (*side && **side <= units::Length())
      return refuse(item, ("item-" + name).c_str(), "its " + name + " is 0 or less",
                    "enter what it measures, or leave it empty");
  if (item.joint && *item.joint < units::Length())
    return refuse(item, "item-joint", "its joint is below 0", "enter 0 for laid tight");
  if (item.mass_kg && !(std::isfinite(*item.mass_kg) && *item.mass_kg > 0))
    return refuse(item, "item-mass", "its mass is 0 or less", "enter what one weighs, or leave it empty");
  if (item.density_kg_m3 && !(std::isfinite(*item.density_kg_m3) && *item.density_kg_m3 > 0))
    return refuse(item, "item-density", "its density is 0 or less", "enter it, or leave it empty");
  if (item.void_share && !(share(*item.void_share) && *item.void_share < 1))
    return refuse(item, "item-void", "its void share is not from 0 to under 1", "enter a share, as 0.4 for 40 %");
  if (!share(item.breakage))
    return refuse(item, "item-breakage", "its breakage is not from 0 to 100 %", "enter what breaks of a hundred");
  return {};
}

Result<void> check_pack(const Item& item) {
  const Pack& pack = item.pack;
  if (pack.pieces < 0 || pack.pieces_per_layer < 0 || pack.layers < 0)
    return refuse(item, "item-pack", "its pack holds less than nothing", "enter how many pieces a pack holds");
  if (pack.pieces > 0 && pack.layers > 0 && pack.pieces_per_layer > 0 &&
      std::int64_t{pack.pieces_per_layer} * pack.layers != pack.pieces)
    return refuse(item, "item-pack",
                  std::to_string(pack.pieces_per_layer) + " pieces a layer and " + std::to_string(pack.layers) +
                      " layers do not make a pack of " + std::to_string(pack.pieces),
                  "correct one of the three");
  std::int64_t sum = 0;
  for (const PackContent& content : item.contents) {
    if (content.pieces < 1 || content.item.empty())
      return refuse(item, "item-contents", "its pack holds 0 or less of " + content.item,
                    "enter how many of each size it holds");
    sum += content.pieces;
  }
  if (sum > 0 && pack.pieces > 0 && sum != pack.pieces)
    return refuse(
        item, "item-pack",
        "its sizes add up to " + std::to_string(sum) + " pieces, its pack holds " + std::to_string(pack.pieces),
        "correct the sizes or the pack");
  if (item.kind == "mixed-pack" && item.contents.empty())
    return refuse(item, "item-contents", "it does not say what the mixed pack holds",
                  "enter how many of each size it holds");
  return {};
}

Result<void> check_price(const Item& item) {
  if (!item.price) return {};
  const units::Money none;
  const bool gives_back = item.kind == "deposit" || item.kind == "credit";
  if (item.price->unit.empty())
    return refuse(item, "item-price-unit", "its price does not say per what",
                  "enter the price unit: piece, sq ft, ton ...");
  if (item.price->amount < none && !gives_back)
    return refuse(item, "item-price", "its price is below 0",
                  "only a deposit or a credit may be: enter a price, or leave it empty");
  if (item.price->amount == none && !item.price->by_others)
    return refuse(item, "item-price", "its price is 0", "say that it is supplied by others, or leave the price empty");
  if (!item.price->date.empty() && !good_date(item.price->date))
    return refuse(item, "item-date", "the price date '" + item.price->date + "' is no day", "write it as 2025-03-01");
  return {};
}

// Four decimals of a factor are what a supplier's sheet prints, so that much may it differ by.
Result<void> check_densities(const Item& item) {
  for (const char* key : {"loose_density_kg_m3", "compacted_density_kg_m3", "loose_per_compacted", "porosity"}) {
    const auto found = item.details.find(key);
    if (found == item.details.end() || found->second.empty()) continue;
    const auto value = units::read_number(found->second);
    if (!value || *value <= 0)
      return refuse(item, "item-factor", std::string(key) + " is not a number over 0", "enter it, or leave it out");
  }
  const auto loose = item.number("loose_density_kg_m3"), placed = item.number("compacted_density_kg_m3");
  const auto factor = item.number("loose_per_compacted");
  if (loose && placed && factor && std::abs(*placed / *loose - *factor) > 0.0001)
    return refuse(item, "item-factor",
                  "its densities make " + units::show_number(*placed / *loose, 4) +
                      " loose for one compacted, its factor says " + item.details.at("loose_per_compacted"),
                  "leave the factor out: it follows from the two densities");
  return {};
}

}  // namespace

const Item* Catalogue::item(const Id& id) const {
  const auto found = items.find(id);
  return found == items.end() ? nullptr : found->second.get();
}

const Pattern* Catalogue::pattern(const Id& id) const { return find_in(patterns, id); }
const BuildUp* Catalogue::build_up(const Id& id) const { return find_in(build_ups, id); }
const Rate* Catalogue::rate(const Id& id) const { return find_in(rates, id); }

units::Length Catalogue::length_limit(const Id& id, units::Length otherwise) const {
  const Limit* limit = find_in(limits, id);
  if (limit == nullptr || !limit->usual) return otherwise;
  double metres_each = 0;
  if (limit->unit == "in") metres_each = units::metres_per_inch;
  if (limit->unit == "ft") metres_each = units::metres_per_foot;
  if (limit->unit == "mm") metres_each = 0.001;
  if (metres_each == 0) return otherwise;
  return units::Length::nearest(units::Metres(*limit->usual * metres_each));
}

double Catalogue::number_limit(const Id& id, double otherwise) const {
  const Limit* limit = find_in(limits, id);
  return limit == nullptr ? otherwise : limit->usual.value_or(otherwise);
}

bool same(const Catalogue& a, const Catalogue& b) {
  const auto equal_items = [](const auto& one, const auto& other) {
    return one.first == other.first &&
           (one.second == other.second || (one.second && other.second && *one.second == *other.second));
  };
  return std::equal(a.items.begin(), a.items.end(), b.items.begin(), b.items.end(), equal_items) &&
         a.patterns == b.patterns && a.build_ups == b.build_ups && a.limits == b.limits && a.rates == b.rates &&
         a.suppliers == b.suppliers && a.junctions == b.junctions && a.hold_points == b.hold_points &&
         a.cautions == b.cautions && a.site_rules == b.site_rules && a.note == b.note;
}

problem::Result<void> check(const Item& item) {
  for (const auto& part : {check_names, check_sizes, check_pack, check_price, check_densities})
    if (auto good = part(item); !good) return good;
  return {};
}

}  // namespace catalogue
