// The one door through which outlines and regions are made. Only for geometry's own .cpp files and for tests that make
// shapes by formula; it trusts what it is given.
#pragma once

#include "geometry/outline.h"

namespace geometry {

class Shapes {
 public:
  static Outline outline(Ring edges) { return Outline(std::move(edges)); }
  static Region region(std::vector<Polygon> polygons) {
    Region made;
    made.polygons_ = std::move(polygons);
    return made;
  }
};

}  // namespace geometry
