#include "catalogue/item.h"

#include <cmath>

#include "problem/ensure.h"
#include "units/number.h"

namespace catalogue {

namespace {

// Steps of the grid to a foot and to a metre, so that an area is a whole number of square steps and is divided once.
constexpr double steps_per_foot = 12.0 * static_cast<double>(units::Length::steps_per_inch);

// Whole numbers under 2^53: a module of 1.2 m x 1.2 m is 1.5e11 square steps.
double square_steps(const Item& item) {
  const units::Length joint = item.joint.value_or(units::Length());
  return static_cast<double>((*item.length + joint).steps()) * static_cast<double>((*item.width + joint).steps());
}

std::optional<double> per_area(const Item& item, double square_steps_per_unit, double metres2_per_unit) {
  const double coins = static_cast<double>(item.price->amount.coins());
  if (const auto area = item.number("pack_area_m2")) return coins * *area / metres2_per_unit;
  if (!item.length || !item.width) return std::nullopt;
  return coins * square_steps(item) / square_steps_per_unit;
}

std::optional<double> per_length(const Item& item, double steps_per_unit) {
  if (!item.length) return std::nullopt;
  const auto steps = (*item.length + item.joint.value_or(units::Length())).steps();
  return static_cast<double>(item.price->amount.coins()) * static_cast<double>(steps) / steps_per_unit;
}

std::optional<double> per_count(const Item& item, int pieces) {
  if (pieces < 1) return std::nullopt;
  return static_cast<double>(item.price->amount.coins()) / pieces;
}

}  // namespace

std::optional<double> Item::number(const std::string& detail) const {
  const auto found = details.find(detail);
  return found == details.end() ? std::nullopt : units::read_number(found->second);
}

std::optional<units::Length> Item::length_of(const std::string& detail) const {
  const auto millimetres = number(detail);
  if (!millimetres || std::abs(*millimetres) > 1e9) return std::nullopt;
  return units::Length::nearest(units::Metres(*millimetres / 1000));
}

const std::vector<std::string>& known_kinds() {
  static const std::vector<std::string> kinds{
      "paving-unit", "slab",      "permeable-unit", "clay-unit",    "mixed-pack", "coping",       "kerb-unit",
      "edging-unit", "step-unit", "tread",          "wall-block",   "seat-block", "pillar-block", "cap",
      "pillar-cap",  "adhesive",  "reinforcement",  "fabric",       "pipe",       "fitting",      "outlet",
      "inlet",       "channel",   "channel-part",   "conduit",      "aggregate",  "joint-sand",   "joint-chips",
      "rod",         "sealant",   "primer",         "filler-strip", "weep",       "restraint",    "spike",
      "concrete",    "bar",       "bonding",        "light",        "spout",      "basin",        "saw",
      "blade",       "machine",   "truck",          "labour",       "finish",     "protection",   "deposit",
      "credit",      "disposal",  "allowance"};
  return kinds;
}

units::SquareMetres module_area(const Item& item) {
  problem::ensure(item.length && item.width, "a module area is asked of a unit with length and width");
  return units::SquareMetres(square_steps(item) / (units::Length::steps_per_metre * units::Length::steps_per_metre));
}

std::optional<PiecePrice> price_of_one(const Item& item) {
  if (!item.price) return std::nullopt;
  const std::string& unit = item.price->unit;
  constexpr double metre = units::Length::steps_per_metre;
  std::optional<double> coins;
  if (unit == item.unit)
    coins = per_count(item, 1);
  else if (unit == "sq ft")
    coins = per_area(item, steps_per_foot * steps_per_foot, units::square_metres_per_square_foot);
  else if (unit == "m2")
    coins = per_area(item, metre * metre, 1);
  else if (unit == "ft")
    coins = per_length(item, steps_per_foot);
  else if (unit == "m")
    coins = per_length(item, metre);
  else if (unit == "layer")
    coins = per_count(item, item.pack.pieces_per_layer);
  else if (unit == "pack" || (!unit.empty() && unit == item.pack.kind))
    coins = per_count(item, item.pack.pieces);
  if (!coins) return std::nullopt;
  return PiecePrice{*coins};
}

}  // namespace catalogue
