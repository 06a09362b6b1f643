// Pallet by pallet: which area empties which, and where it is set down.
#pragma once

#include "sheets/crew_parts.h"

namespace sheets {

// Where pallets and stone may stand, as drawn, with the room that it has.
struct DropSpot {
  plan::ElementId id;
  std::string name;
  geometry::Vec at;  // its middle, metres
  double area = 0;   // m2; 0 of one that is a point
};
std::vector<DropSpot> drop_spots(const Printed& printed);

// The middle of the ground that an element takes; nothing where it takes none.
std::optional<geometry::Vec> middle_of(const Printed& printed, const plan::ElementId& id);
// How far something is carried: straight, or where a way in is drawn by the shortest of those: straight to it, along
// it, straight from it. Metres.
double carry(const Printed& printed, geometry::Vec from, geometry::Vec to);
bool has_path(const Printed& printed);
// The drop spot with the shortest way; null where none is drawn.
const DropSpot* nearest(const Printed& printed, const std::vector<DropSpot>& spots, geometry::Vec to);

// What of one pallet goes where. Pallets of an item are numbered from 1 in the order in which they are opened; equal
// ones in a row are told together.
struct PalletRow {
  std::size_t line = 0;  // of the estimate
  int from = 1;
  int to = 1;
  double pieces = 0;  // on each
  struct Part {
    plan::ElementId of;  // empty: to spare
    double pieces = 0;   // of each pallet
    bool operator==(const Part&) const = default;
  };
  std::vector<Part> parts;
};
// Elements are laid in the order of the plan, each from full pallets first; what is bought over the need stands on the
// last one. A mixed pallet is shared out by the ground that its sizes cover. Shares of elements are whole pieces that
// add up.
std::vector<PalletRow> pallet_rows(const Printed& printed, const estimate::OrderLine& line);

}  // namespace sheets
