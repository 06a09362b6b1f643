// What was measured on site with a tape, entered as it was read: points by two ties or more, by offsets from a line, by
// running measures along one. core/sketch/taped.h works out where the points lie and how well the tapes agree.
#pragma once

#include "plan/drawn.h"

namespace plan {

// A point whose place is taken as it is: a stake, a corner of the house.
struct KnownPoint {
  std::string name;
  geometry::Point at;
  bool operator==(const KnownPoint&) const = default;
};

// One row of the field sheet. Points are named; a name that is not known is a point to be found.
//   tie      the tape from `from` to `point` reads `measure` (a diagonal is a tie between two points to be found)
//   offset   from the foot at `measure` along the line from `from` to `to`, `point` lies `offset` away on `side`
//            (a running measure is an offset of 0)
// `side` of a tie: on which side of the line from the first point it was tied from to the second, where the two arcs
// cross twice; only the first two ties of a point need it.
struct Taped {
  std::string point;
  enum class Way { tie, offset } way = Way::tie;
  std::string from;
  std::string to;
  Length measure;
  Length offset;
  geometry::Side side = geometry::Side::left;
  std::string struck;  // why this row does not count; empty: it counts
  bool operator==(const Taped&) const = default;
};

struct TapeBook {
  std::vector<KnownPoint> known;
  std::vector<Taped> rows;
  bool operator==(const TapeBook&) const = default;
};

// A length between two places of the plan that is known from elsewhere: typed, not drawn.
struct KnownLength {
  geometry::Point from;
  geometry::Point to;
  Length length;
  bool operator==(const KnownLength&) const = default;
};

// A picture, a page or outlines that somebody else drew, lying under the plan. Nothing is computed from it. A picture's
// `at` is its lower left corner, one pixel is `metres_per_pixel` wide, turned about `at`; of outlines one unit of the
// file is so many metres and its origin lies at `at`.
struct SitePlan {
  std::string file;  // PNG, JPEG, PDF, GeoJSON or DXF
  geometry::Point at;
  double metres_per_pixel = 0;  // 0: not scaled yet
  units::Angle turn;
  int page = 1;  // of a PDF
  double opacity = 0.6;
  bool locked = false;
  std::optional<KnownLength> scale;  // the two points and the typed length that gave the scale
  std::optional<KnownLength> check;  // a second length: drawn against typed shows the error
  bool operator==(const SitePlan&) const = default;
};

}  // namespace plan
