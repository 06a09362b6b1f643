// A pattern bound to its units: rectangles on a lattice, in the pattern's own frame, in steps as doubles.
#pragma once

#include <string>
#include <vector>

#include "catalogue/catalogue.h"
#include "geometry/point.h"
#include "plan/element.h"

namespace takeoff::paving {

using plan::Id;

// One unit of the repeat: its corner in the frame for (a, b) = (0, 0), and its size without joint. It stands again at
// low + a * along + b * across for all whole a, b.
struct Kind {
  std::string size;  // of the pattern
  Id item;
  geometry::Vec low;  // steps; half a joint in from its module's corner
  double width = 0;   // along x, steps
  double height = 0;
  bool turned = false;  // the unit's long side runs along y
};

// The frame: x runs along the rows; a frame point q lies at start + turn(q). along = (a, 0), across = (s, t).
struct Lattice {
  geometry::Point start;
  double cosine = 1;
  double sine = 0;
  double along = 0;  // steps
  geometry::Vec across;
  std::vector<Kind> kinds;
  double joint = 0;        // steps
  double joint_share = 0;  // of an endless field: 1 - units / modules

  geometry::Vec to_frame(geometry::Point p) const;
  geometry::Vec from_frame(geometry::Vec q) const;  // steps from start
};

// Problems: pattern-unknown, unit-unknown, unit-missing (a size without a unit), unit-size (no length or width, or
// under 10 mm), herringbone-misfit (with the joints that would fit), pattern-misfit (a unit that does not fill its
// cells: sizes of a mixed pattern must be whole numbers of cells less one joint, within 1/64 in).
//
// A herringbone needs room at the ends of its units too: with cell c = width + joint j the end gap is (2 width + 3 j -
// length) / 2. A joint that is given fits if length = 2 width + j, or if that gap lies in the limits of the unit's
// kind, under the greatest; where none is given the least joint that fits is taken.
problem::Result<Lattice> lattice(const catalogue::Catalogue& catalogue, const plan::Laying& laying);

}  // namespace takeoff::paving
