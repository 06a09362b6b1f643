#include "takeoff/paving/layout.h"

#include <algorithm>

#include "problem/ensure.h"
#include "takeoff/paving/walk.h"

namespace takeoff::paving {

namespace {

void ensure_can_be_laid(const Lattice& lattice) {
  problem::ensure(lattice.along > 0 && lattice.across.y > 0, "a lattice has rows of units");
  for (const Kind& kind : lattice.kinds) {
    problem::ensure(kind.width > 2 * grazing && kind.height > 2 * grazing, "a unit is wider than what only grazes it");
  }
}

Piece piece(const Room& room, const Lattice& lattice, const Cut& cut, const Slivers& slivers) {
  const Kind& kind = lattice.kinds[static_cast<std::size_t>(cut.kind)];
  Piece made;
  made.kind = cut.kind;
  made.a = cut.a;
  made.b = cut.b;
  const auto sides = room.clip.sides(cut.part);
  made.sides.reserve(sides.size());
  for (const Clip::Side& side : sides) {
    const bool along_edge = side.edge >= 0;
    made.sides.push_back(
        {side.from, along_edge,
         along_edge ? room.outline.edges[static_cast<std::size_t>(side.edge)].origin : geometry::Origin()});
  }
  made.area = cut.part.area;
  made.cut_length = cut.part.cut_length;
  made.least_width = cut.breadth.least;
  made.convex = cut.breadth.convex;
  made.sliver = is_sliver(made.area, made.least_width, kind.width * kind.height, slivers);
  return made;
}

}  // namespace

std::int64_t Layout::whole() const {
  std::int64_t sum = 0;
  for (const Run& run : runs) sum += run.count();
  return sum;
}

std::int64_t Layout::whole(int kind) const {
  std::int64_t sum = 0;
  for (const Run& run : runs) {
    if (run.kind == kind) sum += run.count();
  }
  return sum;
}

std::int64_t Layout::cut(int kind) const {
  return std::count_if(pieces.begin(), pieces.end(), [&](const Piece& p) { return p.kind == kind; });
}

Layout lay(const geometry::Region& region, const Lattice& lattice, const Slivers& slivers) {
  ensure_can_be_laid(lattice);
  Layout made;
  made.lattice = lattice;
  Room room;
  frame(chords(region), lattice, room.outline);
  made.region_area = room.outline.area;
  double cut_area = 0;
  walk_units(
      room, lattice, [&](const Run& run) { made.runs.push_back(run); },
      [&](const Cut& cut) {
        made.pieces.push_back(piece(room, lattice, cut, slivers));
        cut_area += cut.part.area;
      });
  made.unit_area = cut_area;
  for (int k = 0; k < static_cast<int>(lattice.kinds.size()); ++k) {
    const Kind& kind = lattice.kinds[static_cast<std::size_t>(k)];
    made.unit_area += static_cast<double>(made.whole(k)) * (kind.width * kind.height);
  }
  return made;
}

Tally tally(Room& room, const Lattice& lattice, const Slivers& slivers) {
  Tally found;
  Counts& counts = found.counts;
  walk_units(
      room, lattice, [&](const Run& run) { counts.whole += run.count(); },
      [&](const Cut& cut) {
        const Kind& kind = lattice.kinds[static_cast<std::size_t>(cut.kind)];
        const double least = cut.breadth.least;
        if (counts.cut == 0 || least < counts.least_width) counts.least_width = least;
        ++counts.cut;
        counts.slivers += is_sliver(cut.part.area, least, kind.width * kind.height, slivers) ? 1 : 0;
        found.present += cut.first ? 1 : 0;
      });
  found.present += counts.whole;
  return found;
}

Counts count(const geometry::Region& region, const Lattice& lattice, const Slivers& slivers) {
  ensure_can_be_laid(lattice);
  Room room;
  frame(chords(region), lattice, room.outline);
  return tally(room, lattice, slivers).counts;
}

}  // namespace takeoff::paving
