// The section through one element, to scale, and the rows of words and fields that hang on it by leaders.
#pragma once

#include <optional>

#include "results/results.h"
#include "sheets/figure.h"
#include "takeoff/stage.h"

namespace sheets {

// A leader's end in the figure, its words, and what it leads to. `field` names what can be typed there
// ("layer/1/thickness", "coping/overhang", "wall/bury"); empty: only told.
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

// Areas: joint, unit, bedding, base, fabric, ground. Pools: coping on its shell, collar, stone, water. Walls: courses
// with setback, cap, base, stone, pipe, layers. Steps: treads, risers, base. Kerbs: kerb, footing, haunch. Runs: trench
// with pipe, stone, fabric. Others have none.
std::optional<Section> section_figure(const results::Results& results, const plan::ElementId& element,
                                      std::optional<takeoff::Stage> stage);

}  // namespace sheets
