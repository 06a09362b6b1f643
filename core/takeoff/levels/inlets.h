// What takes water at the surface: inlets that are drawn, inlets on drain runs, channels.
#pragma once

#include "plan/site.h"

namespace takeoff::levels {

class Inlets {
 public:
  explicit Inlets(const plan::Site& site);
  bool takes(geometry::Point at, double within) const;  // metres
  bool channel_between(geometry::Point from, geometry::Point to) const;
  const std::vector<geometry::Point>& points() const { return points_; }  // of inlets on runs

 private:
  std::vector<geometry::Point> points_;
  std::vector<geometry::Curve> edges_;  // of inlets and channels
  std::vector<std::vector<geometry::Point>> channels_;
};

}  // namespace takeoff::levels
