#include "geometry/private/ring_faults.h"

#include <algorithm>

#include "geometry/index.h"

namespace geometry {

namespace {

constexpr double bulge_limit = 1e3;

problem::Problem fault(const char* code, const char* text, const char* mend, Point at) {
  return problem::fault(code, text, mend, {.element = {}, .file = {}, .at = xy(at)}).error();
}

__extension__ using Wide = __int128;

// Exactly back along the same straight line.
bool turns_back(Point a, Point b, Point c) {
  const Wide ux = (b.x - a.x).steps();
  const Wide uy = (b.y - a.y).steps();
  const Wide vx = (c.x - b.x).steps();
  const Wide vy = (c.y - b.y).steps();
  return ux * vy == uy * vx && ux * vx + uy * vy < 0;
}

// Back along the same circle (or the line that an arc all but is). The ends lie on the grid, so the two may part by
// some steps over the shorter one, through their tangents or their curvatures, and still be drawn as one.
bool turns_back(const Curve& before, const Curve& after) {
  const Vec in = before.direction(1);
  const Vec out = after.direction(0);
  if (dot(in, out) >= 0) return false;
  const auto curvature = [](const Curve& c) { return c.straight() ? 0 : std::copysign(1 / c.radius(), c.bulge); };
  const double shorter = std::min(before.length(), after.length());
  const double bend = std::abs(curvature(before) + curvature(after));
  return std::abs(cross(in, out)) * shorter + bend * shorter * shorter / 2 < 4;
}

}  // namespace

std::optional<problem::Problem> fault_of_numbers(const Ring& ring) {
  if (ring.empty()) {
    return problem::fault("outline-empty", "the outline has no points", "draw it again or take it out").error();
  }
  for (const Edge& edge : ring) {
    if (past_reach(edge.from)) {
      return fault("outline-too-far", "a point of the outline lies more than 5 km from the job's origin",
                   "move the drawing to the origin, or make it a job of its own", edge.from);
    }
    if (!(std::abs(edge.bulge) <= bulge_limit)) {
      return fault("edge-bulge", "an arc of the outline is no arc, or all but a whole circle", "draw it as two arcs",
                   edge.from);
    }
  }
  if (ring.size() == 1 || (ring.size() == 2 && ring[0].bulge == 0 && ring[1].bulge == 0)) {
    return fault("outline-empty", "the outline has fewer than three edges", "draw the missing points",
                 ring.front().from);
  }
  for (const Curve& c : curves(ring)) {
    if (c.start == c.end) {
      return fault("edge-zero-length", "two points of the outline that follow each other are the same point",
                   "take one of them out", c.start);
    }
    if (past_reach(c)) {
      return fault("outline-too-far", "an arc of the outline runs more than 5 km from the job's origin",
                   "make the arc flatter, or move the drawing to the origin", c.start);
    }
  }
  return std::nullopt;
}

std::vector<Spike> spikes(const Ring& ring) {
  const std::vector<Curve> all = curves(ring);
  std::vector<Spike> found;
  for (std::size_t i = 0; i < all.size(); ++i) {
    const Curve& next = all[(i + 1) % all.size()];
    const bool lines = all[i].straight() && next.straight();
    if (lines ? turns_back(all[i].start, all[i].end, next.end) : turns_back(all[i], next)) {
      found.push_back({next.start, lines});
    }
  }
  return found;
}

}  // namespace geometry
