// From the loops of a widened region, in chords, back to the edges that they run along, and from those to exact lines
// and arcs.
#pragma once

#include "geometry/index.h"
#include "geometry/offset.h"
#include "geometry/private/far_side.h"
#include "geometry/private/geos.h"

namespace geometry {

// Arcs are handed to GEOS as chords within 0.1 mm: fine enough to find each of its points on the true curve again.
inline constexpr units::Length offset_flattening = units::Length::of_steps(32);

class OffsetTrace {
 public:
  // `out` in steps, not 0. All places inside are steps from `origin`.
  OffsetTrace(const Region& region, Point origin, double out, Corner corner, double limit);

  // The loop as exact edges, ground to the left, starting with the lowest edge of the source; empty when it has no area
  // to speak of. `rank` is the number of that lowest edge, for putting results in order.
  struct Traced {
    Ring ring;
    std::size_t rank = 0;
  };
  Traced trace(const geos::Loop& loop) const;

  // The loop with its own points, each edge named after the source that it runs along.
  Traced plain(const geos::Loop& loop) const;

 private:
  enum class Kind { none, edge, corner };
  // Something a piece of a loop can run along: a moved edge, or the circle about the corner at an edge's end.
  struct Way {
    Kind kind = Kind::none;
    std::size_t edge = 0;
    Carrier on;
    double from = 0;  // where it begins and stops, steps along from the place of its edge's start
    double to = 0;
  };
  // A stretch of a loop along one source, and where it begins.
  struct Run {
    Kind kind = Kind::none;
    std::size_t edge = 0;
    Vec start;
    double length = 0;
    bool same(const Run& other) const { return kind != Kind::none && kind == other.kind && edge == other.edge; }
  };
  using Runs = std::vector<Run>;

  void add_ring(const Ring& ring);
  void add_ways(std::size_t edge);
  double misfit(Vec a, Vec b, const Way& way) const;
  std::optional<std::size_t> way_of(Vec a, Vec b, std::optional<std::size_t> before) const;
  Runs runs(const geos::Loop& loop) const;
  void add_along(Vec a, Vec b, std::size_t edge, Runs& found) const;
  double along(std::size_t edge, Vec at) const;
  double span(std::size_t edge) const;  // the moved edge's length
  void drop_noise(Runs& found) const;
  Joint joint(const Run& before, const Run& after) const;
  std::size_t corner_pieces(const Runs& all, std::size_t from) const;
  Carrier carrier_of(const Run& run) const;
  Edge edge(const Run& run, Vec from, Vec to) const;
  Origin origin_of(const Run& run) const;

  Point origin_;
  double left_;  // the move as everybody below knows it: to the left
  double limit_;
  Corner corner_;
  std::vector<Beside> edges_;
  std::vector<std::size_t> next_;
  std::vector<std::size_t> previous_;
  std::vector<Way> ways_;
  std::optional<Index> index_;
};

}  // namespace geometry
