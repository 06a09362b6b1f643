// What is drawn of a job, as every form of drawing wants it: closed shapes with their islands, lines, points; arcs by
// their bulges.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "files/geojson_shapes.h"
#include "plan/job.h"

namespace files {

struct DrawnThing {
  plan::ElementId id;  // of its element; a further thing of the same element has ID#2, ID#3
  std::string name;
  std::string layer;  // the kind's word; of a site mark "site-mark:gate"
  DrawnAs drawn = DrawnAs::point;
  std::vector<geometry::Ring> rings;      // outside, then islands; of a line its edges
  geometry::Point end;                    // of a line its last point, of a point its place
  std::optional<units::Length> height{};  // of a level
  std::string text{};                     // that stands beside it: of a note, a dimension, a level
};

struct DrawnThings {
  std::vector<DrawnThing> things;           // in the job's order
  std::vector<plan::ElementId> left_out{};  // lines with a fault (no edge, no length): there is nothing to draw
};

// Elements as they were drawn, not as they cut each other. A level without a height is on the layer "level-no-height".
// Site plans and books of levels and tapes draw nothing.
DrawnThings drawn_things(const plan::Job& job);

// Where a tag may stand, in metres: inside a closed shape and not in one of its islands, in the middle of a line.
problem::Xy place_of_tag(const DrawnThing& thing);

}  // namespace files
