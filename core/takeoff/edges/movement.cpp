#include "takeoff/edges/movement.h"

#include <algorithm>
#include <cmath>

#include "geometry/flatten.h"
#include "geometry/offset.h"
#include "geometry/overlay.h"
#include "takeoff/edges/junction.h"
#include "takeoff/edges/notes.h"
#include "takeoff/edges/seal.h"

namespace takeoff::edges {

namespace {

using geometry::Vec;
using units::Length;

struct Grid {
  Vec low;  // of the field in the pattern's frame, steps
  Vec high;
};

Grid extent(const paving::LaidArea& area, const paving::Lattice& lattice) {
  Grid grid{{INFINITY, INFINITY}, {-INFINITY, -INFINITY}};
  for (const geometry::Outline* outline : area.field.outlines())
    for (const geometry::Point point : geometry::flatten(outline->edges())) {
      const Vec at = lattice.to_frame(point);
      grid.low = {std::min(grid.low.x, at.x), std::min(grid.low.y, at.y)};
      grid.high = {std::max(grid.high.x, at.x), std::max(grid.high.y, at.y)};
    }
  return grid;
}

// Lines between low and high so that no part is longer than `most`, each on a whole repeat of `module`.
std::vector<double> lines(double low, double high, double most, double module) {
  std::vector<double> found;
  const int parts = static_cast<int>(std::ceil((high - low) / most - 1e-9));
  for (int i = 1; i < parts; ++i) {
    const double even = low + (high - low) * i / parts;
    found.push_back(module > 0 ? std::round(even / module) * module : even);
  }
  return found;
}

// Metres of the line from one frame point to another that lie in the field: the strip of the joint's width over its
// width.
double metres_within(const geometry::Region& field, const paving::Lattice& lattice, Vec from, Vec to, Length width) {
  const auto path = geometry::Path::make({{geometry::moved(lattice.start, lattice.from_frame(from)), 0, {}}},
                                         geometry::moved(lattice.start, lattice.from_frame(to)));
  if (!path) return 0;
  const auto strip = geometry::band(*path, width, geometry::Side::left);
  if (!strip) return 0;
  const auto inside = geometry::meet(field, *strip);
  return inside ? inside->area().si() / width.metres().si() : 0;
}

// 3/8 in at 8 ft, 1/2 in at 12 ft, in proportion between.
Length joint_width(const plan::Job& job, Length spacing) {
  const double at_8 = job.catalogue->length_limit("movement-width-8", Length::inch_64ths(24)).metres().si();
  const double at_12 = job.catalogue->length_limit("movement-width-12", Length::inch_64ths(32)).metres().si();
  const double share = std::clamp((spacing.metres().si() / units::metres_per_foot - 8) / 4, 0.0, 1.0);
  return Length::nearest(units::Metres(at_8 + share * (at_12 - at_8)));
}

const catalogue::Item* sealant(const plan::Job& job) {
  for (const catalogue::Junction& row : job.catalogue->junctions)
    if (row.side_b == "coping" && !row.sealant.empty())
      if (const catalogue::Item* item = job.catalogue->item(row.sealant)) return item;
  return nullptr;
}

void add_lines(const plan::Job& job, const plan::ElementId& of, double metres, Length width, Share& share) {
  const Working length = term("movement joints", metres, units::metre, of);
  const Working wide = term("width", width.metres().si(), units::metre, "limits/movement-width-12");
  if (const catalogue::Item* rod = rod_for(job, width))
    share.lines.push_back({Stage::joints, rod->id, "rod in the movement joints of " + of, {of}, length, {}, false});
  if (const catalogue::Item* filler = sealant(job))
    share.lines.push_back({Stage::joints,
                           filler->id,
                           "movement joints of " + of,
                           {of},
                           Working::product({length, wide, seal_depth(job, wide)}),
                           {},
                           false});
  else
    share.problems.push_back(fault("item-missing", "the job's catalogue has no sealant for the movement joints",
                                   "copy one in, with a junction of the coping that names it", of));
  add_task(job, "joint-seal", Stage::joints, "movement joints of " + of, of, length, share);
}

}  // namespace

Share movement(const plan::Job& job, const paving::LaidArea& area) {
  Share share;
  const auto& paved = std::get<plan::PavedArea>(area.ground->element->kind);
  if (!area.layout || !bound(job, paved) || area.field.empty()) return share;
  const plan::ElementId& of = area.ground->element->id;
  const paving::Lattice& lattice = area.layout->lattice;
  const Length spacing = job.catalogue->length_limit("movement-spacing", Length::feet(12));
  const Length width = joint_width(job, spacing);
  const Grid grid = extent(area, lattice);
  const auto most = static_cast<double>(spacing.steps());
  double metres = 0;
  for (const double x : lines(grid.low.x, grid.high.x, most, lattice.along))
    metres += metres_within(area.field, lattice, {x, grid.low.y}, {x, grid.high.y}, width);
  for (const double y : lines(grid.low.y, grid.high.y, most, lattice.across.y))
    metres += metres_within(area.field, lattice, {grid.low.x, y}, {grid.high.x, y}, width);
  share.measures.put("movement_joint_m", metres);
  if (metres > 0) add_lines(job, of, metres, width, share);
  share.problems.push_back(flag("movement-joints",
                                "units bound on concrete: joints stand on a grid of " +
                                    units::show_length(spacing, job.heading.units) + " at most, " +
                                    units::show_length(width, job.heading.units) + " wide",
                                "put one over every joint of the slab and every change of plane too, and widen them by "
                                "1/16 in for each 15 F of yearly range over 100 F; the designer decides",
                                of));
  share.facts.push_back("sealed-joint");
  return share;
}

}  // namespace takeoff::edges
