// One unit against the edges that cross it: what is left of it, part by part.
//
// The edges inside the open rectangle make chains; the ground lies on their left, so from a chain's end the part goes
// on along the rectangle's border, counter-clockwise, to the next chain's start. Edges that run along the border, or
// only touch it, take nothing away.
#pragma once

#include <span>
#include <vector>

#include "takeoff/paving/rows.h"

namespace takeoff::paving {

class Clip {
 public:
  // A side from `from` to the next side's `from`; edge is the number of the outline's edge, or -1: a side of the unit,
  // or the slit that joins a hole to the side round it.
  struct Side {
    geometry::Vec from;  // from the unit's corner
    std::int32_t edge = -1;
  };
  struct Part {
    std::size_t first = 0;  // in sides()
    std::size_t count = 0;
    double area = 0;
    double cut_length = 0;
  };

  // `corner` is the unit's lower left corner in the frame; `near` names every edge that comes near it, sorted.
  void unit(geometry::Vec corner, double width, double height, std::span<const FrameEdge> edges,
            std::span<const Near> near);

  bool crossed() const { return !chains_.empty(); }  // some edge does run inside
  std::span<const Part> parts() const { return parts_; }
  std::span<const Side> sides(const Part& part) const { return {sides_.data() + part.first, part.count}; }

 private:
  struct Chain {
    std::size_t first = 0;  // in points_
    std::size_t count = 0;  // with its end point
    bool starts_on_border = false;
    bool ends_on_border = false;
    int next = -1;  // the chain that goes on inside
    bool used = false;
  };
  struct Event {
    double along = 0;  // counter-clockwise round the border from the corner
    double angle = 0;  // of the chain from there, against the border's own direction
    int chain = 0;
    bool start = false;
  };
  struct Piece;  // of an edge, inside the rectangle

  bool inside(const FrameEdge& edge, Piece& piece) const;
  void gather(std::span<const FrameEdge> edges, std::span<const Near> near);
  void link(std::span<const FrameEdge> edges);
  void meet_border();
  double along(geometry::Vec p) const;
  double angle(double along, geometry::Vec direction) const;
  void add_chain(int chain);
  void go_round(double from, double to);
  void trace();
  void trace_rings();
  void finish_part(std::size_t first);
  void whole_part();
  void join_hole(std::size_t first, std::size_t count);
  double area(std::size_t first, std::size_t count) const;
  bool holds(const Part& part, geometry::Vec p) const;

  geometry::Vec corner_;
  double width_ = 0;
  double height_ = 0;
  std::vector<Side> points_;
  std::vector<Chain> chains_;
  std::vector<Event> events_;
  std::vector<Side> sides_;
  std::vector<Part> parts_;
};

}  // namespace takeoff::paving
