// What the catalogue shows of a pattern and of a build-up, drawn by itself: no job, no area.
#pragma once

#include "sheets/section_figure.h"

namespace sheets {

// The module (size and joint) of the pattern's first size, which its cells are shares of.
struct Module {
  units::Length length = units::Length::inches(8);
  units::Length width = units::Length::inches(4);
};

// The pieces laid over a rectangle of `across` by `up` metres about the origin, turned as the pattern is; whole pieces,
// so some stand out of it: clip to `low` and `high`. Nothing for a pattern that catalogue::check refuses
// or whose cells are tiny beside it.
std::optional<Figure> pattern_figure(const catalogue::Pattern& pattern, const Module& module, double across, double up);

// The layers under one another on the ground, with a leader each, as the section of an area has them. The layer of
// role unit is as thick as it says and is drawn with any unit. Nothing where no layer has a thickness.
std::optional<Section> build_up_figure(const catalogue::Catalogue& catalogue, const catalogue::BuildUp& build_up,
                                       units::System system);

}  // namespace sheets
