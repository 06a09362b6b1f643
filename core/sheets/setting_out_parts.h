// The parts of the sheet for setting out.
#pragma once

#include "sheets/printed.h"
#include "takeoff/setting_out/setting_out.h"

namespace sheets {

// The base line and the outlines of what is set out, each mark with its number; marks at one place share one label.
// Nothing where there are no marks.
std::optional<Drawing> set_out_drawing(const Printed& printed, const takeoff::setting_out::SettingOut& out);

// Empty tables have no rows.                                                                  file
Table mark_table(const Printed& printed, const takeoff::setting_out::SettingOut& out);      // set_out_tables.cpp
Table diagonal_table(const Printed& printed, const takeoff::setting_out::SettingOut& out);  // set_out_tables.cpp
Table offset_table(const Printed& printed, const takeoff::setting_out::SettingOut& out);    // set_out_tables.cpp
Table stake_table(const Printed& printed, const takeoff::setting_out::SettingOut& out);     // set_out_levels.cpp

// A level book reduced, with its check; one sentence where it can't be.
std::vector<Block> level_book(const Printed& printed, const plan::Element& element);  // set_out_levels.cpp

// "A1  deck round the pool"
std::string tag_and_name(const Printed& printed, const plan::ElementId& of);

}  // namespace sheets
