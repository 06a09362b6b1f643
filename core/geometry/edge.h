// Edges of outlines and paths: straight lines and circular arcs, each knowing where it came from.
#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <vector>

#include "geometry/point.h"
#include "units/angle.h"

namespace geometry {

// Whose edge this is: `element` is the caller's mark of a source (plan uses a hash of the element's id; 0 is nobody),
// `edge` the number of the edge in the source's drawing, rings counted on from each other. It survives cuts and
// offsets.
struct Origin {
  std::uint64_t element = 0;
  std::int32_t edge = -1;
  constexpr auto operator<=>(const Origin&) const = default;
};

// The edge runs from `from` to the start of the next edge. bulge = tan(sweep / 4): 0 is straight, 1 a half circle,
// positive turns left (counter-clockwise). Moving and turning leave it alone; walking backwards changes its sign.
// |bulge| is at most 1e3 (a sweep of 359.77 degrees); a whole circle is two edges.
struct Edge {
  Point from;
  double bulge = 0;
  Origin origin;
  bool operator==(const Edge&) const = default;
};

// A closed ring of edges: the last one runs to the first one's `from`. Anything can stand in a Ring; an Outline is
// valid.
using Ring = std::vector<Edge>;

// The curve of one edge from `start` to `end`. All vectors are steps from `start`, so that moving it by whole steps
// changes nothing. For a straight edge radius is 0 and centre means nothing.
struct Curve {
  Point start;
  Point end;
  double bulge = 0;

  Vec chord() const { return end - start; }
  bool straight() const { return bulge == 0; }
  double sweep() const { return 4 * std::atan(bulge); }  // signed turn, radians
  double radius() const;                                 // positive, steps; 0 when straight
  Vec centre() const;                                    // from `start`
  double length() const;                                 // steps, along the curve
  Vec at(double share) const;                            // from `start`; share 0..1 of the length
  Vec direction(double share) const;                     // unit tangent
  // Area between chord and arc, positive where the arc bulges to the right of the chord (bulge > 0); steps squared.
  double segment_area() const;
  Curve reversed() const { return {end, start, -bulge}; }
};

Curve curve(std::span<const Edge> ring, std::size_t i);  // of the closed ring's edge i
std::vector<Curve> curves(std::span<const Edge> ring);

// The bulge of the arc with signed radius-side from `start` to `end` about `centre` (from start, steps), going
// counter-clockwise or clockwise; a turn under 1e-12 gives 0.
double bulge_about(Vec centre, Vec end_from_start, bool counter_clockwise);

Ring reversed(const Ring& ring);  // the same ring walked backwards; origins stay with their edges
Ring moved(Ring ring, Vec whole_steps);
// Turned about `about`; rounds every point to the grid once (do it from the first position of a gesture).
Ring turned(Ring ring, Point about, units::Angle angle);

// Exact sums over lines and arcs. Area is signed: counter-clockwise positive. Computed from the ring's own first point,
// so that moving the ring by whole steps gives the same bits.
units::SquareMetres signed_area(std::span<const Edge> ring);
units::Metres perimeter(std::span<const Edge> ring);

}  // namespace geometry
