// Which units of a catalogue a pattern can be laid with, and an area laid with it.
#pragma once

#include <map>
#include <optional>
#include <string>

#include "catalogue/catalogue.h"
#include "plan/element.h"

namespace ui {

// Size of the pattern -> item, all fitting each other: of `wanted` what fits, then the first of the catalogue that
// does, by id. Nothing where the catalogue has no such units.
std::optional<std::map<std::string, plan::Id>> units_for(const catalogue::Catalogue& catalogue,
                                                         const catalogue::Pattern& pattern,
                                                         const std::map<std::string, plan::Id>& wanted);

// The area with another pattern. Start, direction and joint stay; where nothing was laid it starts at the first corner
// of the drawing. Without units that fit it has those it had, and the takeoff says what is wrong. Null: nothing is
// laid.
plan::PavedArea with_pattern(plan::PavedArea area, const catalogue::Catalogue& catalogue,
                             const catalogue::Pattern* pattern);

}  // namespace ui
