// The inside of measuring in: points and rows by number, in metres from the first known point.
#pragma once

#include <array>
#include <optional>
#include <string>
#include <vector>

#include "sketch/taped.h"

namespace sketch::net {

using geometry::Vec;

struct Row {
  std::size_t number = 0;  // in the book
  bool tie = true;
  std::size_t point = 0;
  std::size_t from = 0;
  std::size_t to = 0;  // of an offset
  double measure = 0;
  double offset = 0;  // left of the line is positive
  geometry::Side side = geometry::Side::left;
  bool counts = true;
};

struct Spot {
  std::string name;
  bool known = false;
  bool placed = false;
  Vec at;
  std::optional<Vec> other;  // where the two arcs cross a second time
  bool wrong_side = false;   // the other crossing fits the further ties better
};

struct Net {
  geometry::Point origin;
  std::vector<Spot> spots;
  std::vector<Row> rows;              // those without a fault
  bool usable(const Row& row) const;  // all its points are placed
  double off(const Row& tie) const;   // read less computed, of a tie between placed points
};

// The ties of a point, seen from it: also those that were read from its side.
struct Tied {
  const Row* row;
  std::size_t from;
};
std::vector<Tied> ties_of(const Net& net, std::size_t spot);

// Rows with a fault are left out and said in `problems`.
Net made(const plan::TapeBook& book, std::vector<problem::Problem>& problems);

// The arcs of two ties: where they cross (twice the same place where they touch), or the gap by which they do not meet
// (positive: too far apart; negative: one inside the other by so much). A gap of at most `slack` counts as touching.
struct Crossing {
  std::optional<std::array<Vec, 2>> at;  // left of the line from a to b, then right
  double gap = 0;
};
Crossing crossing(Vec a, double radius_a, Vec b, double radius_b, double slack = 0);

// Places every point that rows can place.
void place_all(Net& net, double slack);

// One reading and how it changes with the points it hangs on.
struct Reading {
  double misfit = 0;  // read less computed
  int points = 0;
  std::array<std::size_t, 3> spot{};
  std::array<Vec, 3> slope{};  // of the computed value
};
struct Readings {
  int count = 0;
  std::array<Reading, 2> each;
};
Readings readings(const Net& net, const Row& row);

// Moves the points that are not known to the least sum of squares over the usable rows that count (but `without`) and
// gives that sum, m2.
constexpr std::size_t none = static_cast<std::size_t>(-1);
double settle(Net& net, std::size_t without = none);

// How much of its own misfit each row hides by pulling at the points: per row the 2 x 2 block of (1 - leverage), of a
// tie only [0]. Empty where the points are not held in every direction.
using Block = std::array<double, 4>;
std::vector<Block> freedom(const Net& net);

// What a person has to know; needs the settled net.
void check(const Net& net, const plan::TapeBook& book, units::System system, Allowed allowed, Measured& out);

}  // namespace sketch::net
