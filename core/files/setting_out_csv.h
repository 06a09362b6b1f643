// What the crew sets out, as one table that a spreadsheet opens and a person can read beside the stakes.
#pragma once

#include <string>

#include "plan/job.h"
#include "takeoff/setting_out/setting_out.h"

namespace files {

// One row a thing, told apart by the column `kind`; cells that a kind does not have are empty:
//   base-line  its two ends: along, and where they lie
//   mark       a corner or a centre: along and out from the base line with the side in words, ties from
//              its start and its end, third measure (`check`), radius of a centre
//   diagonal   value its length, `note` whether the shape is a rectangle
//   offset     along the chord and out to the curve, its side as one looks along the chord; value the chord
//   stake      ground, formation, finish, and cut (positive) or fill (negative) from the ground to each
//   notice     of the element, in words
// Lengths stand twice: as they are read in the job's units, and in metres (columns ending in _m); heights in decimal
// feet or metres. What people read has no sign: sides and "before the start" stand in words;
// out_m is positive to the left. x and y are metres from
// the job's origin.
std::string setting_out_csv(const plan::Job& job, const takeoff::setting_out::SettingOut& out);

}  // namespace files
