// What the elements make together: who takes which ground, and who meets whom. Trades read the Site; none works out an
// overlap or a neighbour by itself.
#pragma once

#include <map>
#include <memory>
#include <string>
#include <vector>

#include "geometry/outline.h"
#include "plan/job.h"

namespace plan {

// What a stretch of an edge faces.
enum class Meets {
  planting,  // nothing within reach: lawn or bed
  coping,
  building,
  wall_face,
  wall_back,
  seat_wall,
  kerb,
  restraint,
  paving,
  steps,
  pillar,
  planter,
  inlet,
  channel,
  water
};
std::string word(Meets meets);  // as the junction table has it: "planting", "wall face", "wall cap", "seat wall" ...

// A part of one net edge and what faces it (running the opposite way within 20 degrees, within the job's reach, nearest
// wins; under 50 mm it joins its longer side). Stretches of an element add up to the perimeter of its net.
struct Stretch {
  int outline = 0;  // number in net.outlines()
  int edge = 0;     // number in that outline
  double from = 0;  // metres along the edge
  double to = 0;
  geometry::Origin origin;
  Meets meets = Meets::planting;
  ElementId other;      // empty for planting
  int other_edge = -1;  // edge of the other's drawing that it faces
  double gap = 0;       // metres, mean
  double radius = 0;    // metres; 0 is straight
  units::Metres length() const { return units::Metres(to - from); }
};

// The ground of one element. A shape that is not valid has empty regions and a problem; lines have a path and, where
// they stand on the ground, a footprint.
struct Ground {
  ElementPtr element;
  geometry::Region drawn;      // as drawn
  geometry::Region footprint;  // what it takes: pool to the back of its coping, wall its thickness, run its width
  geometry::Region net;        // footprint less what outranks it nearby
  std::vector<Stretch> stretches;
  std::optional<geometry::Path> path;  // of what is drawn as a line
  bool computed = true;                // false: the shape has a fault and nothing is taken off
};

struct Site {
  std::vector<std::shared_ptr<const Ground>> grounds;  // one per element, in the job's order
  std::vector<problem::Problem> problems;
  const Ground* find(const ElementId& id) const;
  const Ground* find(std::uint64_t mark) const;
};

// Solid things cut paving whatever the order: building, pool, keep-out, wall, steps, edge run, drain run with a width;
// among themselves in this rank, and of equals the later drawn keeps the ground. Of paved areas the later drawn keeps
// an overlap and a notice says how much: never counted twice, never silent.
int rank(const Kind& kind);  // 0 takes no ground; higher wins

Site site(const Job& job);

}  // namespace plan
