// What the pointer takes hold of. Built once over a job's drawing; asked at each move of the pointer.
//
// Classes in order: corner (ends, control points, points) before crossing before middle (of an edge; centre of an arc)
// before edge before grid before angle. Within a class the nearest wins. A guide (square, parallel, tangent, equal
// length, closing) stands between edge and grid, and where a guide crosses an edge within reach that crossing counts
// as a crossing. Help lines never take hold of each other, and an angle never beats a corner.
// Source of the order: conventions of sketching in common practice.
#pragma once

#include <memory>
#include <optional>
#include <vector>

#include "plan/edits.h"
#include "sketch/view.h"

namespace sketch {

struct Taken {
  Takes takes = Takes::nothing;
  geometry::Point at;
  plan::ElementId of;  // whose corner or edge it is; empty for guides and the grid
  plan::Corner edge;   // corner: itself; edge, middle: the corner where the edge starts
};

class Snaps {
 public:
  // Of everything drawn, except the elements on `but` (those that are moved just now).
  explicit Snaps(const plan::Job& job, const std::vector<plan::ElementId>& but = {});
  ~Snaps();
  Snaps(Snaps&&) noexcept;
  Snaps& operator=(Snaps&&) noexcept;

  // `reach` and `grid` in steps; a grid of 0 is none. Takes::nothing with `pointer` itself where nothing is near.
  Taken take(geometry::Point pointer, double reach, double grid = 0) const;
  // The drawn curve that an edge of `edges` was taken from; none where it is no edge of this drawing.
  std::optional<geometry::Curve> curve(const Taken& edge) const;
  // Edges within reach, nearest first: to trace, to pick, to measure.
  std::vector<Taken> edges(geometry::Point pointer, double reach) const;

 private:
  struct Drawn;
  std::unique_ptr<Drawn> drawn_;
};

// The point of the grid within reach; Takes::nothing with `pointer` itself otherwise.
Taken grid_point(geometry::Point pointer, double reach, double grid);

// Elements that the place touches (within reach of a line or point, or inside an outline), the topmost first: points
// and lines before outlines, the later drawn before the earlier.
std::vector<plan::ElementId> under(const plan::Job& job, geometry::Point at, double reach);
// Elements wholly inside the box (dragged to the right), or touched by it (dragged to the left).
std::vector<plan::ElementId> inside(const plan::Job& job, geometry::Point from, geometry::Point to);

}  // namespace sketch
