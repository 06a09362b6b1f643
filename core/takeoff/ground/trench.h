// A cut along a line, cross-section by cross-section: a trench, the base of a wall with the bank behind it. Metres.
#pragma once

#include <functional>
#include <optional>
#include <vector>

#include "geometry/outline.h"

namespace takeoff::ground {

// What lies at a place when the next thing is dug there. `source` is equal where the height is one plane.
struct Lies {
  double level = 0;     // where digging starts
  double existing = 0;  // the ground as it lay before anything was dug
  std::vector<const void*> source;
  bool virgin = false;  // nothing was dug here before
};
using LiesAt = std::function<std::optional<Lies>(geometry::Point, double fallback)>;

// Of the bottom of a cut: `across` the line, ascending, positive to the side that `Slice::across` points to. Straight
// between knots; two at one place are a step.
struct Knot {
  double across = 0;
  double level = 0;
};
struct Slice {
  double station = 0;  // along the line
  geometry::Point at;
  geometry::Vec across;      // unit vector, square to the line
  double turn = 0;           // 1/radius of the line, positive where the centre lies to the side of `across`
  std::vector<Knot> bottom;  // at least two
  double slope_before = 0;   // horizontal for a rise of 1, of the faces at both ends; 0 stands upright
  double slope_after = 0;
  std::function<double(double)> given;  // ground where no survey tells it, by `across`
  geometry::Point place(double across) const;
};

// The part of a cross-section between two places across, where digging starts above its bottom.
struct Strip {
  double from = 0, to = 0;
  double depth_from = 0, depth_to = 0;
  double below_from = 0, below_to = 0;  // depth under the existing ground
  bool virgin = false;
};
struct Section {
  std::vector<Strip> strips;
  struct Change {
    double across = 0;
    std::vector<const void*> source;  // from there on
  };
  std::vector<Change> changes;  // of the plane that is cut, in the order in which the section was walked
  bool known = true;            // false: the ground is not known somewhere
  // m2 times the length of its strip for a metre of line, between two places across.
  double area(double turn, double from = -1e9, double to = 1e9) const;
  double virgin_width(double turn) const;
  double deepest() const;
};
Section section(const Slice& slice, const LiesAt& lies);

// A leg of a line without corners over 5 degrees.
struct LegOfPath {
  std::vector<geometry::Curve> curves;
  double from = 0;  // station of its start on the whole path
  double length = 0;
};
std::vector<LegOfPath> legs_of(const geometry::Path& path);
// The place at `station` of the whole path, its left normal and curvature (left positive).
struct Frame {
  geometry::Point at;
  geometry::Vec left;
  double turn = 0;
};
Frame frame(const LegOfPath& leg, double station);

// A cut that was made, for the ones after it: its bottom where a place lies inside it.
class Hole {
 public:
  struct Piece {
    Slice from, to;
    double reach_before = 0, reach_after = 0;  // how far across it goes, faces included
  };
  void add(Piece piece);
  struct Found {
    double level = 0;
    const void* source = nullptr;
  };
  std::optional<Found> bottom(geometry::Point point) const;

 private:
  std::vector<Piece> pieces_;
  geometry::Box box_;
};

// Sums along a leg. `areas` are asked of each cross-section and summed by the prismoid, cut finer where the planes that
// are cut change.
struct Along {
  double length = 0;
  std::vector<double> volumes;  // of the numbers that `measure` gives
  double deepest = 0;
  int sections = 0;
  bool known = true;
  std::vector<std::pair<double, double>> depths;  // length, depth: pieces in order
  double as_deep_as(double depth) const;          // metres
};
using Measure = std::function<std::vector<double>(const Slice&, const Section&)>;
using SliceAt = std::function<Slice(double station)>;
Along along(double from, double to, const SliceAt& slice_at, const LiesAt& lies, const Measure& measure, Hole& hole);

}  // namespace takeoff::ground
