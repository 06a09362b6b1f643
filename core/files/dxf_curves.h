// Curves of a drawing that no bulge can hold (ellipses, splines, arcs stretched one way) as circular arcs, end to end.
#pragma once

#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "files/dxf_pairs.h"
#include "files/geojson_shapes.h"

namespace files {

struct Spot2 {
  double x = 0;
  double y = 0;
};
using CurveAt = std::function<Spot2(double)>;

// No arc lies further than this from its curve, in metres.
inline constexpr double curve_within_m = 1e-4;

// Arcs through the curve from t = from to t = to, halved until their quarter points lie within `within` of it; of each
// the first corner and its bulge. The last corner is not added, so that pieces can be put one after the other.
void arcs_along(const CurveAt& curve, double from, double to, double within, std::vector<Position>& into);

// The arc of one edge as a curve from t = 0 to 1; straight where the bulge is 0.
Spot2 on_edge(const Position& from, const Position& to, double t);

// An ELLIPSE (centre 10 20, end of the long axis from there 11 21, ratio 40, from 41 to 42 in radians) as corners with
// bulges, the last one with none; closed where it runs once round. Nothing where it has no size, or numbers are
// missing.
std::optional<std::vector<Position>> ellipse_of(const DxfEntity& entity, double within);

// A SPLINE by its knots (40), control points (10 20), weights (41) and degree (71), piece by piece between its knots.
// Nothing where these do not belong together: other than points + degree + 1 knots, knots that fall, a degree outside
// 1 to 15, no control points (a spline that says only what it fits).
std::optional<std::vector<Position>> spline_of(const DxfEntity& entity, double within);

}  // namespace files
