// What is built, as curves to set out: rings closed, lines open.
#pragma once

#include <vector>

#include "plan/site.h"

namespace takeoff::setting_out {

struct Drawn {
  std::vector<geometry::Curve> curves;
  int first_edge = 1;    // number of its first edge in the drawing, from 1: rings count on
  int first_corner = 1;  // an open line has one corner more than edges
  bool closed = true;
};
// Nothing for what is not built or has a fault of its shape.
std::vector<Drawn> drawings(const plan::Ground& ground);

}  // namespace takeoff::setting_out
