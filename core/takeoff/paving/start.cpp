#include "takeoff/paving/start.h"

#include <algorithm>
#include <cmath>

#include "geometry/offset.h"
#include "problem/ensure.h"
#include "takeoff/paving/walk.h"

namespace takeoff::paving {

namespace {

using geometry::Point;
using geometry::Vec;

// Edges in line with the pattern are where a start can save a whole row of cuts, and no even spread ever hits them: so
// the starts that put a corner of a module on two such edges are tried too. The longest few decide.
constexpr std::size_t lines_each_way = 4;

struct Line {
  double at = 0;
  double length = 0;
};

void add_line(std::vector<Line>& lines, double at, double length) {
  for (Line& line : lines) {
    if (std::abs(line.at - at) > 1) continue;
    line.length += length;
    return;
  }
  lines.push_back({at, length});
}

void keep_longest(std::vector<Line>& lines) {
  std::stable_sort(lines.begin(), lines.end(), [](const Line& a, const Line& b) { return a.length > b.length; });
  if (lines.size() > lines_each_way) lines.resize(lines_each_way);
}

// Where along x and y the frame's axes have straight edges of the field.
struct InLine {
  std::vector<Line> x;
  std::vector<Line> y;
};
InLine in_line(const FrameOutline& outline) {
  InLine found;
  for (const FrameEdge& edge : outline.edges) {
    const Vec along = edge.to - edge.from;
    const double size = length(along);
    if (size < 4 * grazing) continue;
    if (std::abs(along.x) < 1) add_line(found.x, edge.from.x, size);
    if (std::abs(along.y) < 1) add_line(found.y, edge.from.y, size);
  }
  keep_longest(found.x);
  keep_longest(found.y);
  return found;
}

// The start itself, then those that fit the corners of modules to edges, then an even spread over one repeat: the
// sequence of Kronecker for two dimensions, whose step is the plastic number's powers.
std::vector<Point> starts(const FrameOutline& outline, const Lattice& lattice, int tries) {
  std::vector<Point> made{lattice.start};
  const auto add = [&](Vec in_frame) {
    const Point p = geometry::moved(lattice.start, lattice.from_frame(in_frame));
    if (std::find(made.begin(), made.end(), p) == made.end()) made.push_back(p);
  };
  const auto wanted = static_cast<std::size_t>(std::max(tries, 1));
  const InLine edges = in_line(outline);
  for (const Kind& kind : lattice.kinds) {
    for (const Line& x : edges.x) {
      for (const Line& y : edges.y) {
        const Vec corner{kind.low.x - lattice.joint / 2, kind.low.y - lattice.joint / 2};
        if (made.size() < std::max<std::size_t>(wanted / 2, 1)) add(Vec{x.at, y.at} - corner);
      }
    }
  }
  constexpr double first = 0.7548776662466927;   // 1 / plastic number
  constexpr double second = 0.5698402909980532;  // its square
  for (int i = 1; made.size() < wanted && i < 4 * tries; ++i) {
    const double u = i * first - std::floor(i * first);
    const double v = i * second - std::floor(i * second);
    add(u * Vec{lattice.along, 0} + v * lattice.across);
  }
  return made;
}

double least_side(const Lattice& lattice) {
  double least = lattice.kinds.front().width;
  for (const Kind& kind : lattice.kinds) least = std::min({least, kind.width, kind.height});
  return least;
}

// As an edge moves in over a unit the width of what is left falls until nothing is, then jumps to the next unit's: a
// sawtooth. So its least over a range is what stands at the inmost place, unless a unit vanishes on the way: then every
// width down to the 0.5 mm that still counts was there.
void rate_for_site(Room& room, const Chords& inmost, const Chords& outmost, const Lattice& lattice,
                   const Slivers& slivers, Start& start) {
  frame(outmost, lattice, room.outline);
  const Tally out = tally(room, lattice, slivers);
  frame(inmost, lattice, room.outline);
  const Tally in = tally(room, lattice, slivers);
  start.at_risk = std::max<std::int64_t>(out.present - in.present, 0);
  start.worst_width = start.at_risk > 0 ? grazing : in.counts.cut > 0 ? in.counts.least_width : least_side(lattice);
}

Chords moved_out(const geometry::Region& field, double by, const Chords& as_it_is) {
  const auto moved = geometry::offset(field, units::Length::of_steps(std::llround(by)), geometry::Corner::mitred);
  return moved ? chords(*moved) : as_it_is;
}

bool better(const Start& a, const Start& b, For what) {
  const Counts& l = a.counts;
  const Counts& r = b.counts;
  switch (what) {
    case For::cuts: return l.cut != r.cut ? l.cut < r.cut : l.slivers < r.slivers;
    case For::slivers: return l.slivers != r.slivers ? l.slivers < r.slivers : l.cut < r.cut;
    case For::site:
      if (a.worst_width != b.worst_width) return a.worst_width > b.worst_width;
      return a.at_risk != b.at_risk ? a.at_risk < b.at_risk : l.cut < r.cut;
  }
  return false;
}

}  // namespace

std::vector<Start> best_starts(const geometry::Region& field, const Lattice& lattice, const Slivers& slivers, For what,
                               int tries, double tolerance, const std::function<bool(double)>& goes_on) {
  problem::ensure(!lattice.kinds.empty() && tolerance >= 0, "a lattice has units and a tolerance is not negative");
  const Chords drawn = chords(field);
  const bool site = what == For::site;
  const Chords outmost = site ? moved_out(field, tolerance, drawn) : Chords();
  const Chords inmost = site ? moved_out(field, -tolerance, drawn) : Chords();

  Room room;
  frame(drawn, lattice, room.outline);
  std::vector<Start> found;
  Lattice tried = lattice;
  const std::vector<Point> all = starts(room.outline, lattice, tries);
  for (const Point& p : all) {
    const double done = static_cast<double>(found.size()) / static_cast<double>(all.size());
    if (goes_on && !found.empty() && !goes_on(done)) break;
    tried.start = p;
    Start start;
    start.start = p;
    frame(drawn, tried, room.outline);
    start.counts = tally(room, tried, slivers).counts;
    if (site) rate_for_site(room, inmost, outmost, tried, slivers, start);
    found.push_back(start);
  }
  std::stable_sort(found.begin(), found.end(), [&](const Start& a, const Start& b) { return better(a, b, what); });
  return found;
}

}  // namespace takeoff::paving
