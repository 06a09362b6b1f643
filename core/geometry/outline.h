// What is drawn closed: outlines, and regions of them. Both are valid by construction.
#pragma once

#include <span>
#include <vector>

#include "geometry/edge.h"

namespace geometry {

struct Box {
  Point low;
  Point high;
  bool operator==(const Box&) const = default;
};
Box grown(Box box, units::Length by);
bool overlap(const Box& a, const Box& b);  // touching counts

// One closed ring that neither crosses nor touches itself and has an area. Counter-clockwise round ground, clockwise
// round a hole: the ground always lies to the left. Made by validity.h and by overlays; can't be made invalid.
class Outline {
 public:
  const Ring& edges() const { return edges_; }
  units::SquareMetres signed_area() const;
  units::Metres perimeter() const;
  Box bounds() const;
  bool operator==(const Outline&) const = default;

 private:
  friend class Shapes;  // the one door: geometry's own makers, which have checked the ring
  explicit Outline(Ring edges) : edges_(std::move(edges)) {}
  Ring edges_;
};

struct Polygon {
  Outline outer;
  std::vector<Outline> holes;
  bool operator==(const Polygon&) const = default;
};

// Any number of polygons that do not overlap; they may touch at points. Empty is a region too.
class Region {
 public:
  Region() = default;
  const std::vector<Polygon>& polygons() const { return polygons_; }
  bool empty() const { return polygons_.empty(); }
  std::vector<const Outline*> outlines() const;  // outer and holes in order

  units::SquareMetres area() const;  // exact over arcs
  units::Metres perimeter() const;   // holes too
  problem::Xy centroid() const;      // metres; exact over arcs; (0, 0) of an empty region
  Box bounds() const;                // arcs' bellies included; of an empty region: a box at the origin
  bool contains(Point point) const;  // on the edge counts; true arcs, not chords
  bool operator==(const Region&) const = default;

 private:
  friend class Shapes;
  std::vector<Polygon> polygons_;
};

// An open line of edges, or a closed one: `edges` and the point where the last one ends.
class Path {
 public:
  // At least one edge, none of zero length, none past the plan's reach: path-empty, edge-zero-length, path-too-far,
  // each with its place. A line without an end to its length would be counted piece by piece until the memory ends.
  static problem::Result<Path> make(Ring edges, Point end);
  const Ring& edges() const { return edges_; }
  Point end() const { return end_; }
  bool closed() const { return edges_.front().from == end_; }
  std::size_t size() const { return edges_.size(); }
  Curve curve(std::size_t i) const;
  units::Metres length() const;
  Box bounds() const;
  bool operator==(const Path&) const = default;

 private:
  Path(Ring edges, Point end) : edges_(std::move(edges)), end_(end) {}
  Ring edges_;
  Point end_;
};

}  // namespace geometry
