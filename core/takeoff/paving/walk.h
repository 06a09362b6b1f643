// The walk over all units of a layout, for those that keep shapes and those that only count.
#pragma once

#include <cmath>
#include <vector>

#include "takeoff/paving/clip.h"
#include "takeoff/paving/slivers.h"

namespace takeoff::paving {

// Room to work in. Kept from one try to the next, so that a start is tried without new memory.
struct Room {
  FrameOutline outline;
  Rows rows;
  Clip clip;
  std::vector<geometry::Vec> polygon;
  std::vector<geometry::Vec> hull;
  std::vector<int> marked;  // units of a row that are not whole, in order
};

// A part that is kept: not narrower than `grazing`.
struct Cut {
  int kind;
  int a;
  int b;
  const Clip::Part& part;
  Breadth breadth;
  bool first;  // of its unit
};

// Clips the units of one row that an edge enters, tells `on_cut` of each part, and leaves in `marked` what is not
// whole.
template <class OnCut>
void cut_row(Room& room, const Lattice& lattice, int number, int row, OnCut& on_cut) {
  const Kind& kind = lattice.kinds[static_cast<std::size_t>(number)];
  const int b = room.rows.first() + row;
  const std::span<const Near> near = room.rows.near(row);
  const double x0 = kind.low.x + b * lattice.across.x;
  const double y0 = kind.low.y + b * lattice.across.y;
  const double full = kind.width * kind.height;
  room.marked.clear();
  for (std::size_t i = 0; i < near.size();) {
    const int a = near[i].a();
    std::size_t end = i;
    bool enters = false;
    for (; end < near.size() && near[end].a() == a; ++end) enters = enters || near[end].enters();
    const std::span<const Near> edges = near.subspan(i, end - i);
    i = end;
    if (!enters) continue;
    room.clip.unit({x0 + a * lattice.along, y0}, kind.width, kind.height, room.outline.edges, edges);
    const auto parts = room.clip.parts();
    // Nothing taken away, but for rounding: the unit is as good as not entered.
    if (!room.clip.crossed() || (parts.size() == 1 && parts[0].area >= full * (1 - 1e-12))) continue;
    room.marked.push_back(a);
    bool first = true;
    for (const Clip::Part& part : parts) {
      room.polygon.clear();
      for (const Clip::Side& side : room.clip.sides(part)) room.polygon.push_back(side.from);
      const Breadth found = breadth(room.polygon, room.hull);
      if (found.least < grazing) continue;
      on_cut(Cut{number, a, b, part, found, first});
      first = false;
    }
  }
}

// Runs of units whose middle lies inside and that no edge enters.
template <class OnRun>
void run_row(Room& room, const Lattice& lattice, int number, int row, OnRun& on_run) {
  const Kind& kind = lattice.kinds[static_cast<std::size_t>(number)];
  const int b = room.rows.first() + row;
  const std::span<const double> crossings = room.rows.crossings(row);
  const double middle = kind.low.x + b * lattice.across.x + kind.width / 2;
  auto marked = room.marked.begin();
  for (std::size_t i = 0; i + 1 < crossings.size(); i += 2) {
    int first = static_cast<int>(std::ceil((crossings[i] - middle) / lattice.along));
    const int last = static_cast<int>(std::floor((crossings[i + 1] - middle) / lattice.along));
    while (marked != room.marked.end() && *marked < first) ++marked;
    for (; marked != room.marked.end() && *marked <= last; ++marked) {
      if (first < *marked) on_run(Run{number, b, first, *marked - 1});
      first = *marked + 1;
    }
    if (first <= last) on_run(Run{number, b, first, last});
  }
}

// `room.outline` is framed for the lattice. Kinds in order, rows in order; of a row the cuts first, then the runs.
template <class OnRun, class OnCut>
void walk_units(Room& room, const Lattice& lattice, OnRun on_run, OnCut on_cut) {
  for (int number = 0; number < static_cast<int>(lattice.kinds.size()); ++number) {
    room.rows.fill(room.outline, lattice, lattice.kinds[static_cast<std::size_t>(number)]);
    for (int row = 0; row < room.rows.count(); ++row) {
      cut_row(room, lattice, number, row, on_cut);
      run_row(room, lattice, number, row, on_run);
    }
  }
}

// Counts as `lay` would find them. `present` counts units, whole or in parts.
struct Tally {
  Counts counts;
  std::int64_t present = 0;
};
Tally tally(Room& room, const Lattice& lattice, const Slivers& slivers);

}  // namespace takeoff::paving
