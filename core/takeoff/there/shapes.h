// Distances over the plan: what lies within so much of a mark, and how long a line is inside a piece of ground.
#pragma once

#include <functional>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "geometry/index.h"
#include "plan/site.h"

namespace takeoff::there {

// Something drawn, as points, curves and ground; whatever of them it has. Metres throughout.
struct Drawn {
  geometry::Region region;  // ground that it is itself
  std::vector<geometry::Curve> curves;
  std::vector<geometry::Point> points;
  bool empty() const { return region.empty() && curves.empty() && points.empty(); }
  geometry::Box bounds() const;
};
Drawn drawn(const plan::Ground& ground);  // a site mark's points too

// All within `reach` of it, itself included; round about points, ends and corners, so that nothing further away is in
// it. Lines are taken by their chords (within 0.5 mm of an arc). Of no reach: the ground itself, nothing for lines.
problem::Result<geometry::Region> around(const Drawn& what, double reach);
problem::Result<geometry::Region> disc(geometry::Point centre, double radius);

// Metres from the point to what is drawn; 0 inside it.
double distance(const Drawn& from, geometry::Point to);

// Metres of the curves for which `holds`, tried every 10 cm (a shorter stretch between two tries is not seen), its ends
// found to a thousandth of a millimetre, and where the first begins.
struct Stretches {
  double length = 0;
  std::optional<geometry::Point> at;
};
// The point, and its curve with the share of its length where the point lies.
using Holds = std::function<bool(geometry::Point, const geometry::Curve&, double)>;
Stretches where(std::span<const geometry::Curve> curves, const Holds& holds);

// The first place where a curve of one crosses a curve of the other, by their chords.
std::optional<geometry::Point> crossing(std::span<const geometry::Curve> one, std::span<const geometry::Curve> other);

std::vector<geometry::Curve> curves(const geometry::Region& region);
std::vector<geometry::Curve> curves(const geometry::Path& path);

// "12.5 sq ft" or "1.2 m2"; what a person reads as the place of a plan.
std::string shown_area(const plan::Job& job, double square_metres);
std::string called(const plan::Element& element);  // its name, or its id
problem::Xy middle(const geometry::Region& region);

}  // namespace takeoff::there
