#include "geometry/private/strips.h"

#include <algorithm>

namespace geometry {

namespace {

class Strips {
 public:
  Strips(const Row& row, Corner corner, double limit) : row_(row), corner_(corner), limit_(limit) {}

  std::vector<Ring> of_edge(std::size_t i) {
    add_strip(i);
    return std::move(made_);
  }

  std::vector<Ring> of_corner(std::size_t i) {
    if (has_next(i)) add_corner(row_.edges[i], row_.edges[(i + 1) % row_.edges.size()]);
    return std::move(made_);
  }

 private:
  bool has_next(std::size_t i) const { return row_.closed || i + 1 < row_.edges.size(); }
  bool has_previous(std::size_t i) const { return row_.closed || i > 0; }

  Point grid(Vec at) const { return moved(row_.origin, at); }
  Vec back(Point at) const { return at - row_.origin; }

  // The square end of a strip; at a smooth joint one point for both neighbours.
  Vec foot_at_end(std::size_t i) const {
    const Beside& edge = row_.edges[i];
    const Beside& next = row_.edges[(i + 1) % row_.edges.size()];
    if (has_next(i) && smooth(edge, next)) return joint_of_neighbours(edge, next, row_.left, limit_).points[0];
    return edge.foot_at_end(row_.left);
  }
  Vec foot_at_start(std::size_t i) const {
    const std::size_t count = row_.edges.size();
    if (has_previous(i) && smooth(row_.edges[(i + count - 1) % count], row_.edges[i])) {
      return foot_at_end((i + count - 1) % count);
    }
    return row_.edges[i].foot_at_start(row_.left);
  }

  // Rings are made for a move to the left, where the ground beside an edge lies left of it, and turned for the right.
  void add(Ring ring) {
    Ring kept;
    for (std::size_t i = 0; i < ring.size(); ++i) {
      if (ring[i].from != ring[(i + 1) % ring.size()].from) kept.push_back(ring[i]);
    }
    if (kept.size() < 2) return;
    made_.push_back(row_.left > 0 ? std::move(kept) : reversed(kept));
  }

  void add_strip(std::size_t i) {
    const Beside& edge = row_.edges[i];
    const Point start = grid(edge.start);
    const Point end = grid(edge.end());
    const Origin nobody;
    if (!edge.on) {
      add({{start, edge.from.bulge, edge.origin},
           {end, 0, nobody},
           {grid(edge.start + edge.from.centre()), 0, nobody}});
      return;
    }
    const Point far_start = grid(foot_at_start(i));
    const Point far_end = grid(foot_at_end(i));
    const double bulge = bulge_between(*edge.on, back(far_start), back(far_end), edge.from.sweep());
    add({{start, edge.from.bulge, edge.origin},
         {end, 0, nobody},
         {far_end, -bulge, edge.origin},
         {far_start, 0, nobody}});
  }

  void add_corner(const Beside& before, const Beside& after) {
    if (smooth(before, after) || !outside(before, after, row_.left)) return;
    const Point corner = grid(after.start);
    const Point first = grid(before.foot_at_end(row_.left));
    const Point last = grid(after.foot_at_start(row_.left));
    const Origin nobody;
    if (corner_ == Corner::round) {
      const Carrier on{back(corner), {}, std::abs(row_.left), row_.left > 0 ? -1 : 1};
      const double turn = turning(before.from.direction(1), after.from.direction(0));
      const double bulge = bulge_between(on, back(first), back(last), turn);
      add({{corner, 0, nobody}, {last, -bulge, before.origin}, {first, 0, nobody}});
      return;
    }
    // From the corner out along the later edge's foot, and back over the tip.
    const Joint joint = joint_of_neighbours(before, after, row_.left, limit_);
    Ring kite{{corner, 0, nobody}};
    const auto along = [&](const Beside& edge, Point from, Point to) {
      return edge.on ? -bulge_between(*edge.on, back(from), back(to), 0) : 0.0;
    };
    Point at = grid(joint.points.back());
    kite.push_back({last, along(after, at, last), after.origin});
    for (std::size_t k = joint.points.size() - 1; k > 0; --k) {
      kite.push_back({at, 0, joint.origins[k - 1]});
      at = grid(joint.points[k - 1]);
    }
    kite.push_back({at, along(before, first, at), before.origin});
    kite.push_back({first, 0, nobody});
    add(std::move(kite));
  }

  const Row& row_;
  Corner corner_;
  double limit_;
  std::vector<Ring> made_;
};

}  // namespace

Row row(std::span<const Edge> ring, Point origin, double left) {
  Row made{origin, {}, true, left};
  for (std::size_t i = 0; i < ring.size(); ++i) {
    const Curve from = curve(ring, i);
    made.edges.push_back(beside(from, from.start - origin, ring[i].origin, left));
  }
  return made;
}

Row row(const Path& path, double left) {
  Row made{path.edges().front().from, {}, path.closed(), left};
  for (std::size_t i = 0; i < path.size(); ++i) {
    const Curve from = path.curve(i);
    made.edges.push_back(beside(from, from.start - made.origin, path.edges()[i].origin, left));
  }
  return made;
}

std::vector<Ring> strip(const Row& row, std::size_t i) { return Strips(row, Corner::mitred, mitre_limit).of_edge(i); }

std::vector<Ring> corner_piece(const Row& row, std::size_t i, Corner corner, double limit) {
  return Strips(row, corner, limit).of_corner(i);
}

}  // namespace geometry
