// What stands up out of blocks: walls with their stone, pipe, reinforcement and caps; steps; pillars.
//
// Along a wall everything is given by places on its line as drawn (the face, at the base), measured from its start.
// Heights are above the job's datum, as the levels are. What is empty is not chosen: a wall without a base has no base
// in the takeoff, and a notice says so. Nothing here is a design: layers of reinforcement, soils and strengths are what
// an engineer gave.
#pragma once

#include "plan/drawn.h"

namespace plan {

// A height at a place along a line. Between two the straight line between them; before the first and after the last
// their own. Two at one place are a step there: the first holds before it, the second from there on. In order of `at`.
struct HeightAt {
  Length at;
  Length height;
  bool operator==(const HeightAt&) const = default;
};

// Stone under, in and behind a wall.
struct WallStone {
  Id build_up;                        // of use wall-base: the leveling base
  Id core;                            // in the voids and wedges of the blocks; empty: the drainage stone
  Id drain;                           // behind the blocks
  std::optional<Length> drain_depth;  // front to back; the limit wall-stone otherwise
  std::optional<Length> soil_cap;     // earth over the stone, below the top; the limit wall-soil-cap otherwise
  Id fabric;                          // round the back and top of the stone
  Id fill;                            // of the reinforced zone behind the stone; empty: earth from the site
  bool operator==(const WallStone&) const = default;
};

// Drain low behind the wall. Its invert is worked out from the outlets, going up at `fall` from each.
struct WallPipe {
  Id item;
  Id outlet_item;  // solid pipe from the drain to daylight; empty: none is bought
  double fall = 0.01;
  std::vector<HeightAt> outlets;  // inverts, at places along the wall
  Length outlet_length;           // solid pipe of one outlet, through or round the wall
  bool operator==(const WallPipe&) const = default;
};

// One layer as the engineer gave it: it lies on top of course `on_course` (1 is the lowest of the wall) between two
// places along the line, `length` from the front face into the fill, its strong way across the wall.
struct Reinforcement {
  int on_course = 0;
  Id item;
  Length length;
  Length from;
  std::optional<Length> to;  // the end of the wall otherwise
  double coverage = 1;       // share of the face that is covered
  bool along = false;        // rolled out along the wall: only for an item that is strong across its roll too
  bool operator==(const Reinforcement&) const = default;
};

struct Earth {
  double friction_deg = 0;
  double density_kg_m3 = 0;
  double cohesion_pa = 0;
  bool operator==(const Earth&) const = default;
};

// What the preliminary checks go by, as a person entered it.
struct WallLoads {
  Earth infill;      // reinforced zone, or what lies right behind a gravity wall
  Earth retained;    // behind that
  Earth foundation;  // under the base
  double back_slope_deg = 0;
  double live_pa = 0;  // on the ground behind: adds to the thrust, never to what holds
  double dead_pa = 0;
  bool water_behind = false;
  bool operator==(const WallLoads&) const = default;
};

struct Wall {
  DrawnLine line;  // the face, at the base
  Id block;
  Id curve_block;   // on curves; empty: the block
  Id half_block;    // empty: halves are cut
  Id corner_block;  // at square outside corners; empty: mitred cuts
  Id end_block;     // at ends that show; empty: none
  Id cap;
  Id curve_cap;                        // on curves; empty: the cap
  std::optional<Length> cap_overhang;  // over the face (both faces where free-standing); limit cap-overhang otherwise
  Id adhesive;                         // under caps, and between courses too where `glued`
  bool glued = false;
  Length thickness;                              // of its body on the plan; 0: the depth of the block
  geometry::Side behind = geometry::Side::left;  // on which side of the line the wall's body lies
  bool free_standing = false;                    // two faces: seat wall, screen
  bool existing = false;                         // it stands already and stays: a neighbour, nothing of it is built
  std::optional<Length> height;                  // top above the ground in front where no heights are given
  std::vector<HeightAt> ground;                  // in front, finished
  std::vector<HeightAt> ground_behind;           // empty: up to the limit wall-below-cap under the top
  std::vector<HeightAt> top;                     // finished, cap included
  std::vector<HeightAt> base;                    // bottom of the lowest course, as given; empty: by the rule
  enum class Fixed { top, base } fixed = Fixed::top;  // which of the two keeps its height when courses are shared out
  int bury_courses = 1;                               // the rule may ask for more
  double toe_slope = 0;                               // the ground in front falls 1 in so many (3 is 3H:1V); 0 is level
  std::optional<double>
      least_overlap;  // of courses, share of a unit; 0: joints may stand over each other (glued walls)
  enum class End { free, grade, against };  // shows; dies into the ground; stands against something
  End start_end = End::free;
  End finish_end = End::free;
  std::optional<WallStone> stone;
  std::optional<WallPipe> pipe;
  ElementId drained_by;  // a drain run that was drawn for this wall, instead of a pipe of its own
  std::vector<Reinforcement> layers;
  std::optional<WallLoads> loads;
  bool operator==(const Wall&) const = default;
};

// A wall beside the steps, of the same length, stepping with the treads.
struct Cheeks {
  Id block;
  Id cap;
  bool left = true;  // as one climbs
  bool right = true;
  Length above;  // top of the blocks above the tread beside them
  bool operator==(const Cheeks&) const = default;
};

// A flight. The outline is what it takes of the plan; `up` is the way one climbs. Solid units lie `lap` on the one
// below; treads of slabs lie on risers of blocks, `overhang` past them.
struct Steps {
  DrawnShape outline;
  Id unit;         // step-unit (solid) or tread (a slab over risers)
  Id riser_block;  // under slab treads
  int risers = 0;  // 0: shared out within the limits
  Length rise;     // from the ground at the foot to the landing
  units::Angle up = units::Angle::degrees(90);
  std::optional<double> tread_fall;  // of each tread, share; the limit tread-pitch otherwise
  Length lap;
  Length overhang;
  Id build_up;  // of use steps: under each tread
  Id adhesive;
  bool public_way = false;  // limits riser-public and tread-public
  std::optional<Cheeks> cheeks;
  bool operator==(const Steps&) const = default;
};

// Courses of blocks round a square or oblong core, one or more of them below ground.
struct Pillar {
  Id block;
  Id cap;
  Id adhesive;
  Length height;  // of the blocks above the ground
  int bury_courses = 1;
  Id build_up;  // of use wall-base
  bool operator==(const Pillar&) const = default;
};

}  // namespace plan
