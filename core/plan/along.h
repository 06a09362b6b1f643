// Paths along chosen stretches: what lies along an edge (base past a free edge, a joint, a border) is drawn from these.
#pragma once

#include <functional>
#include <vector>

#include "plan/site.h"

namespace plan {

// The part of a curve between two shares of its length (0..1), its ends on the grid.
geometry::Curve part(const geometry::Curve& curve, double from, double to);

// Consecutive stretches of one outline that belong together, as a path with the ground on its left.
struct Along {
  int group = 0;
  geometry::Path path;
  std::vector<Stretch> stretches;
};

// `group` says for each stretch which number it has; equal numbers that follow each other round an outline make one
// path (closed where they go all the way round); a negative number is left out.
std::vector<Along> along(const Ground& ground, const std::function<int(const Stretch&)>& group);

}  // namespace plan
