// What a layer needs before the first unit goes down: the parts of the start sheet, area by area.
#pragma once

#include "sheets/crew_parts.h"
#include "sheets/running.h"
#include "takeoff/levels/terrain.h"
#include "takeoff/setting_out/setting_out.h"

namespace sheets {

// Where the start point lies, by the base line or else by two corners of the area, and which way the rows run.
std::vector<Block> start_point(const Printed& printed, const plan::ElementId& area,
                               const takeoff::setting_out::SettingOut& out);

// Three sides that make a square corner at the start: 3, 4 and 5 parts, as large as the field has room for.
struct Square {
  double along = 0;  // metres
  double out = 0;
  double across = 0;
};
Square square_for(double along, double out, units::System system);
std::vector<Block> running_blocks(const Printed& printed, const std::vector<Running>& measures);

// Finish, top of the bedding, top of the base and formation at the start and at each stake of the area. Nothing where
// its levels are not known.
std::optional<Table> level_table(const Printed& printed, const plan::ElementId& area,
                                 const takeoff::setting_out::SettingOut& out, const takeoff::levels::Terrain& terrain);

// The first three pallets of each unit that the area is laid with; nothing where none of it comes on pallets.
std::optional<Table> first_pallets(const Printed& printed, const plan::ElementId& area);

}  // namespace sheets
