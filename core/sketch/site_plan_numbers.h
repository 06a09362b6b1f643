// Placing, turning and scaling a site plan under the drawing: numbers only.
#pragma once

#include <optional>

#include "plan/taped.h"

namespace sketch {

// A site plan that nobody has scaled yet is shown as if one pixel (or one unit of the file) were two centimetres.
inline constexpr double metres_per_pixel_unscaled = 0.02;
double metres_per_pixel(const plan::SitePlan& plan);

// The scale at which the two points of `known` lie its length apart. The first point stays where it is, all else moves
// away from it or towards it: corner, second point, points of the check. `known` is kept as `scale` with its second
// point there, and the plan is locked. Refused: a length that is not positive ("scale-length"), two points on one spot
// ("scale-points"), a scale that makes a pixel smaller than a micrometre or larger than a kilometre ("scale-size").
problem::Result<plan::SitePlan> scaled(plan::SitePlan plan, const plan::KnownLength& known);
// Everything of it turned about a point, its kept points too.
plan::SitePlan turned(plan::SitePlan plan, geometry::Point about, units::Angle by);
plan::SitePlan moved(plan::SitePlan plan, geometry::Vec whole_steps);

// How far the drawn length is off the typed one, in per cent of the typed: 1 is drawn 1 % too long. The typed length
// must be positive.
double error_percent(const plan::KnownLength& check);

}  // namespace sketch
