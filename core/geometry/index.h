// Where things lie: an R-tree of boxes, for tracing, junctions, snapping and hit tests.
#pragma once

#include <cstdint>
#include <memory>
#include <span>
#include <vector>

#include "geometry/outline.h"

namespace geometry {

// Built once over boxes; finds the numbers (0..n-1, ascending) of those that a box touches.
class Index {
 public:
  explicit Index(std::span<const Box> boxes);
  ~Index();
  Index(Index&&) noexcept;
  Index& operator=(Index&&) noexcept;
  std::vector<std::uint32_t> touching(const Box& box) const;

 private:
  struct Tree;
  std::unique_ptr<Tree> tree_;
};

Box bounds(const Curve& curve);
// Whether it leaves the square of `reach_of_plan` around the origin; an arc may bulge out of it between its ends.
bool past_reach(Point point);
bool past_reach(const Curve& curve);

// Distance in metres from a point to the nearest place on the true curve, and where along it (0..1).
struct Nearest {
  double distance = 0;
  double share = 0;
};
Nearest nearest(const Curve& curve, Point to);

}  // namespace geometry
