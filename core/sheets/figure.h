// A picture as plain values: what is shown, of which material, with which line. Whoever draws it (screen, paper) knows
// colours, hatches and pens; nothing here does. Plan figures are in metres from the job's origin, y to the north;
// section figures in metres, y up.
#pragma once

#include <memory>
#include <string>
#include <variant>
#include <vector>

#include "geometry/edge.h"
#include "plan/job.h"
#include "takeoff/paving/layout.h"

namespace sheets {

using geometry::Vec;

// A corner and the bulge of the edge that leaves it, as geometry::Edge has it.
struct Turn {
  Vec at;
  double bulge = 0;
  bool operator==(const Turn&) const = default;
};
struct Contour {
  std::vector<Turn> turns;
  bool closed = true;
  bool operator==(const Contour&) const = default;
};

enum class Material {
  none,  // outline only
  paving,
  border,
  walk,
  coping,
  block,
  cap,
  kerb,
  concrete,
  mortar,
  dense_base,
  open_stone,
  sand,
  soil,
  made_up_ground,
  geotextile,
  pipe,
  water,
  building,
  planting,
  lawn,
  joint  // ground of the joints between units
};

enum class Line {
  none,
  unit,         // a unit's edge
  element,      // an element's outline
  house,        // a building's wall
  house_joint,  // isolation joint at the house
  coping_joint,
  geotextile,
  pipe,
  cut_edge,  // of a section
  later,     // not there yet: dashed
  open_dig,  // top edge of a hole
  light      // ornament
};

struct Area {
  std::vector<Contour> contours;  // even-odd
  Material material = Material::none;
  Line line = Line::none;
  int tone = 0;         // of the material's tones: which way a unit lies
  bool cut = false;     // a cut unit: lighter
  bool sliver = false;  // solid
  bool later = false;   // dashed outline, no fill
  plan::ElementId of;
  std::string word = {};  // of a patch of fall, what it says: good, flat, steep, to the house, to the pool
};
struct Stroke {
  Contour contour;
  Line line = Line::element;
  plan::ElementId of;
};
// A field of units as it is laid. Rows of whole units are kept as runs: whoever draws it makes units, lines or a flat
// tone of them by how large they come out.
struct Units {
  std::shared_ptr<const takeoff::paving::Layout> layout;
  std::vector<Contour> field;  // the ground it lies on
  Material material = Material::paving;
  plan::ElementId of;
};

enum class Sign {
  tag,          // cut-corner tag with the id
  name,         // text in the middle of something
  level,        // cross with its figure
  fall,         // arrow with per cent, turned towards where water runs
  weep,         // open triangle, tip at the kerb
  wall_step,    // heavy tick across
  outlet,       // open arrow head
  problem,      // marking flag
  care,         // the same, to be decided by somebody
  start_point,  // ring with cross and arrow
  junction,     // letter on a stretch
  section,      // A-A with arrows
  tree,
  light_point,
  inlet,
  plain_point
};
struct Mark {
  Sign sign = Sign::tag;
  Vec at;
  double turn = 0;  // radians
  std::string text;
  plan::ElementId of;
};

using Part = std::variant<Area, Stroke, Units, Mark>;

struct Figure {
  std::vector<Part> parts;  // from the bottom up
  Vec low;
  Vec high;
};

Contour contour(std::span<const geometry::Edge> ring);  // closed, metres from the origin
Contour contour(const geometry::Path& path);            // open or closed
std::vector<Contour> contours(const geometry::Region& region);

}  // namespace sheets
