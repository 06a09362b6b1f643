// What rules of marks look at: all that is built, dug, stored or driven on, by the words of the rules.
#pragma once

#include <set>

#include "takeoff/ground/ground.h"
#include "takeoff/there/shapes.h"

namespace takeoff::there {

// One thing near which a mark may lie. Its words are what a rule's `against` can name:
//   dig         the deepest layer of each body, walls and pillars built here, steps, drain runs, what is removed
//   paving      paved areas
//   base        base and sub-base layers; infiltrates: those of open stone, where water is counted on to soak away
//   sealed      paved areas without open stone below
//   wall, steps, structure (walls, steps, pillars)
//   stand       to stand on: steps, pillars, planters, boulders.
//               (Walls built here say themselves what they come near to.)
//   any         all of them that are built or dug
// and a site mark answers to its own kind: drop-spot, path, septic ...
struct Subject {
  std::vector<plan::ElementId> of;
  std::set<std::string> words;
  geometry::Region region;
  std::vector<geometry::Curve> curves;  // of what is drawn as a line and takes no ground
  std::vector<geometry::Point> points;
  double depth = 0;  // metres under the finished surface, of a body that is dug
};
std::vector<Subject> subjects(const plan::Job& job, const plan::Site& site, const ground::Bodies& bodies);

// The deepest body of each group: what is dug.
std::vector<const ground::Body*> lowest(const ground::Bodies& bodies);

}  // namespace takeoff::there
