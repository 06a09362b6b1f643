// Which piece each run of a bay starts with, so that the courses keep their bond.
#pragma once

#include "takeoff/walls/bay.h"

namespace takeoff::walls {

// [fixed start][a][whole x k][b][fixed finish]; no length: no piece.
struct Choice {
  double a = 0;
  int wholes = 0;
  double pitch = 0;  // face of a whole as it lies
  double b = 0;
};

// One choice for each slot: the least, in this order, of joints nearer than least_overlap (share of `unit`) to one of
// the course below, pieces under the sliver limit, cuts, cuts next to a corner, half units, the length of cut pieces,
// that of the smaller of two, cuts at the start. Exact: the runs of a wall without windows lie on each other as a tree,
// so the least cost is handed from run to run.
std::vector<Choice> choose(const std::vector<Slot>& slots, const std::vector<CourseLine>& lines, double unit,
                           double half, const LayRules& rules);

// The units of a slot, without their `curved`.
std::vector<Laid> pieces(const Slot& slot, const Choice& choice, double half);

}  // namespace takeoff::walls
