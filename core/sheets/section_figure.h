// The section through one element, to scale, and the rows of words and fields that hang on it by leaders.
#pragma once

#include <optional>

#include "results/results.h"
#include "sheets/figure.h"
#include "takeoff/stage.h"

namespace sheets {

// A leader's end in the figure, its words, and what it leads to. `field` names what can be typed there
// ("layer/1/thickness", "coping/overhang", see the table below); empty: only told.
struct Leader {
  Vec at;
  std::string label;
  std::string value;  // as shown in the job's units
  std::string field;
  bool later = false;  // not built at the stage shown
};

struct Section {
  Figure figure;
  std::vector<Leader> leaders;  // from the top down
  double scale_bar = 0;         // metres: a round length for the scale
};

// What a leader's field leads to, by the element's kind. N counts from 0. A leader without a field is only told: it is
// the catalogue's, or it comes out of something else.
//
//   area    layer/N/thickness    of the build-up's layer N, the unit's too
//           joint                between units: the laying's own joint
//           past_edge            how far the base reaches past a free edge (the widest of its stone)
//   pool    coping/overhang      over the water
//           collar/width  collar/thickness
//           shell                thickness of its wall
//           surround/clearance  surround/depth   of the stone round the shell
//   wall    wall/height          of the top over the ground in front; only where no heights are given along the wall
//           wall/cap_overhang  wall/bury_courses
//           stone/soil_cap  stone/drain_depth
//           layer/N/length       of the wall's reinforcement layer N, as the engineer gave it
//           layer/0/thickness  past_edge         of the build-up of the leveling base
//   steps   steps/rise  steps/risers  steps/lap
//           layer/N/thickness    of the build-up under the treads
//   kerb    kerb/upstand  footing/width  footing/thickness  footing/haunch  weeps/spacing
//   edging  spikes/spacing  spikes/on_curves
//   drain   run/width (channel)  run/fall (per cent)  run/start (invert)
//           layer/N/thickness    of the trench's build-up
//
// Walls are cut at their tallest part, y = 0 the ground in front; all else with y = 0 at the surface beside it. What
// goes deep (a pool's shell, a trench) is drawn to scale as far down as the figure goes and told in full.
//
// Areas: joint, unit, bedding, base, fabric, ground. Pools: coping on its shell, collar, stone, water. Walls: courses
// with setback, cap, base, stone, pipe, layers. Steps: treads, risers, base. Kerbs: kerb, footing, haunch. Runs: trench
// with pipe, stone, fabric. Others have none.
std::optional<Section> section_figure(const results::Results& results, const plan::ElementId& element,
                                      std::optional<takeoff::Stage> stage);

}  // namespace sheets
