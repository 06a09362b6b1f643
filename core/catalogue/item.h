// What can be bought, hired or done: one row of the catalogue.
#pragma once

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "units/length.h"
#include "units/money.h"

namespace catalogue {

using Id = std::string;  // small letters, digits, dot, dash and underscore; never changes its meaning

struct Words {
  std::string en;
  std::string es;
  bool operator==(const Words&) const = default;
};

// How it comes: pieces to a layer, layers to a pack. 0 is "not given".
struct Pack {
  std::string kind;  // pallet, mixed pallet, roll, box, load ...
  int pieces_per_layer = 0;
  int layers = 0;
  int pieces = 0;
  bool operator==(const Pack&) const = default;
};

// A price is per `unit`: piece, sq ft, ton, cu yd, roll, hour, load, job ... 0 is only a price where `by_others`; below
// 0 only for kinds deposit and credit.
struct Price {
  units::Money amount;
  std::string unit;
  std::string date;  // 2025-03-01
  bool by_others = false;
  bool operator==(const Price&) const = default;
};

// What one size of a mixed pack brings.
struct PackContent {
  Id item;
  int pieces = 0;
  bool operator==(const PackContent&) const = default;
};

struct Item {
  Id id;
  std::string kind;  // paving-unit, slab, coping, aggregate ... : see `known_kinds`
  Words name;
  Id supplier;
  std::string unit;  // what one of it is: piece, pack, tube, bag, roll, stick, ton, cu yd, day, hour, load, job
  // Actual size without joint. Units: length is the long side. Coping and kerb: along the edge, then depth, then
  // height. Rolls: length, width.
  std::optional<units::Length> length;
  std::optional<units::Length> width;
  std::optional<units::Length> height;
  std::optional<units::Length> joint;  // the joint it is laid with; module = size + joint
  std::optional<double> mass_kg;       // of one `unit`
  std::optional<double> density_kg_m3;
  std::optional<double> void_share;
  std::string sold_by;  // the least that can be bought: piece, layer, pack, bag, ton ...
  Pack pack;
  std::vector<PackContent> contents;  // of a mixed pack, size by size
  std::optional<Price> price;
  double breakage = 0;  // share broken or spoilt, 0..1; cuts are counted by laying, not by this
  std::string rule;
  std::string rule_source;
  std::string notes;
  std::map<std::string, std::string>
      details;  // numbers that only some kinds have: porosity, loose_density_kg_m3, volume_l ...
  bool operator==(const Item&) const = default;

  std::optional<double> number(const std::string& detail) const;            // of `details`
  std::optional<units::Length> length_of(const std::string& detail) const;  // a detail in mm, as Length
};

const std::vector<std::string>& known_kinds();

// Length x width with the joint round it: what one unit covers when laid. Needs length, width (joint 0 if not given).
units::SquareMetres module_area(const Item& item);

// Price of one piece in coins per piece, exact: `coins` / `pieces` so that money is multiplied and rounded once. A
// price per sq ft is turned by the module area of a full pack over its pieces (of a unit without a pack: by its own
// module).
struct PiecePrice {
  double coins = 0;  // not rounded
  bool operator==(const PiecePrice&) const = default;
};
std::optional<PiecePrice> price_of_one(const Item& item);

}  // namespace catalogue
