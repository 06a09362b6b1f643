// From the tapes as read on site (plan/taped.h) to points of the plan.
//
// Points are placed one after another from those that are placed already: at an offset from a line, or where the arcs
// of two ties cross (on the named side of the line from the first point that it was tied from to the second, whether
// those rows count or not). Then all rows that count pull at once: least squares over ties and offsets, each reading
// weighing the same. A tape's error grows a little with the length, but at the lengths of a yard the hook, the sag and
// the reading itself outweigh that, and these are alike for all. An offset is two readings: along the line and away
// from it. Known points stay where they are.
//
// A row whose residual is over the greater of 1/2 in and 1:500 of its length is flagged (common practice). Rows struck
// out do not count but show their residual. A row with a fault of its own (no name, a point tied from itself) is a
// problem and does not count; the rest is worked out without it.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "catalogue/catalogue.h"
#include "plan/taped.h"
#include "units/read_length.h"

namespace sketch {

struct Allowed {
  units::Length least = units::Length::inch_64ths(32);
  double share = 1.0 / 500;  // of the length that was read
};
Allowed allowed(const catalogue::Catalogue& catalogue);  // limits tape-residual and tape-residual-share

struct FoundPoint {
  std::string name;
  geometry::Point at;
  bool operator==(const FoundPoint&) const = default;
};

// How well one row agrees with the points found: read less computed, so that a positive one was read too long.
struct RowFit {
  std::optional<units::Length> residual;  // none where a point of the row is not found
  units::Length across;                   // of an offset: away from the line; `residual` is along it
  bool over = false;                      // more than is allowed
  bool checked = false;                   // other rows would show it if it was misread
  units::Length size() const;             // the greater of both, without its sign
};

// The row that, struck out, brings the sum of squares down most, and by how much its tape seems to be off (read less
// what the others give). Several rows where each would bring nearly as much (95 %): then the tapes can't tell which.
struct Suspect {
  std::vector<std::size_t> rows;
  units::Length off;  // of the first
};

struct Measured {
  std::vector<FoundPoint> points;        // known ones first, then as they were first named
  std::vector<std::string> missing;      // named but not found
  std::vector<RowFit> rows;              // beside the book's rows
  std::vector<std::size_t> worst_first;  // numbers of rows: those that count, then those struck out, then the rest
  double sum_of_squares = 0;             // m2, of the rows that count
  int spare = 0;                         // readings beyond what the points need: 0 is no check at all
  std::optional<Suspect> suspect;        // where a row that counts is over
  std::vector<problem::Problem> problems;

  const geometry::Point* find(const std::string& name) const;  // null: not found
};

// Moving the known points by whole steps moves all points by the same steps and changes no residual.
Measured measured(const plan::TapeBook& book, units::System system, Allowed allowed = {});

}  // namespace sketch
