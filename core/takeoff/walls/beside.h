// What lies beside a wall: how near, on which side, at which place along it.
#pragma once

#include <optional>
#include <vector>

#include "plan/site.h"

namespace takeoff::walls {

// What touches the face lies in front of it: behind it is the wall's own body.
struct Beside {
  double distance = 0;  // metres from the face
  double station = 0;   // along the wall
  bool behind = false;
};

// The edges by which an element stands on the plan: of what it takes of the ground, else its line, else its outline.
std::vector<geometry::Curve> edges_of(const plan::Ground& ground);

// An edge with the box outside of which nothing is within reach of it.
struct Reaching {
  geometry::Curve curve;
  geometry::Box box;
};
std::vector<Reaching> reaching(const std::vector<geometry::Curve>& edges, double reach);

// The wall's line as something to measure from. Distances are to true arcs; of two arcs a sixteenth of each is tried.
class FaceLine {
 public:
  // `stations`: places along it that are to be measured from, besides its corners.
  FaceLine(const geometry::Path& path, geometry::Side behind, std::vector<double> stations);
  // Every place where the edges may come nearest, none further than `reach`. What lies past a free end counts up to 45
  // degrees from it.
  std::vector<Beside> beside(const std::vector<geometry::Curve>& edges, double reach) const;
  geometry::Point at(double station) const;
  // From a place on the wall to the nearest of the edges behind it; infinite where none of them reaches it. What lies
  // in front of another leg is not behind this one, though it may be reached through the fill.
  double behind(double station, const std::vector<Reaching>& edges) const;
  double length() const { return starts_.back(); }

 private:
  struct Foot {
    Beside found;
    bool counts = false;  // not past a free end
  };
  // The nearest place on the wall; nothing where it is further than `reach`.
  std::optional<Foot> foot(geometry::Point point, double reach) const;
  std::size_t edge_at(double station) const;
  // Which way the wall runs where it is nearest: at a corner between its two edges.
  geometry::Vec direction(std::size_t edge, double share) const;
  std::vector<geometry::Curve> curves_;
  std::vector<geometry::Box> boxes_;  // of the curves
  std::vector<double> starts_;        // stations, one more than curves
  std::vector<geometry::Point> points_;
  bool closed_ = false;
  bool left_ = true;
};

}  // namespace takeoff::walls
