// What the preliminary checks share: the wall's entries after a look, its slices, and checks in the making.
#pragma once

#include "takeoff/walls/courses.h"
#include "takeoff/walls/stability.h"

namespace takeoff::walls {

// Earth as it was entered, in the units of stability.h. `of` leads back to the entry.
struct Stratum {
  std::string name;     // "fill", "earth behind", "ground under the base"
  double phi = 0;       // radians
  double weight = 0;    // N/m3
  double cohesion = 0;  // Pa
  double degrees = 0;   // friction as entered
  std::string of;
  // A limit has no fields.
  std::string friction_of() const { return of == "pad-friction" ? of : of + "/friction_deg"; }
};

// The entries that make sense; those that don't were told and are missing here.
struct Entries {
  std::optional<Stratum> infill;
  std::optional<Stratum> retained;
  std::optional<Stratum> foundation;
  std::optional<double> slope;  // radians; empty: steeper than the earth stands
  double live = 0;              // Pa
  double dead = 0;
  double water = 0;            // N/m3 of water that stands behind up to the top; 0: none does
  std::optional<Stratum> pad;  // stone of the leveling base, on which the blocks may slide
  std::string of;              // the wall's loads
};
// Problems "wall-loads", each naming its field: friction not over 0 or 50 degrees and more, density not over 0,
// anything below 0 or beyond what earth and loads come to, a slope over the friction. Stratum under the base may have
// cohesion alone; earth behind need not be entered where no layers reach it (notice "retained-assumed"). Friction of
// the base's stone: its item's detail friction_deg, else the limit pad-friction.
Entries entries(const plan::Job& job, const plan::Wall& wall, const plan::ElementId& id, Share& share);

// A stretch of the wall that is checked as one: a column, or a part of it with layers of its own.
struct Slice {
  double from = 0;
  double to = 0;
  Column column;
  double height = 0;  // on which the earth pushes: the blocks', or up to the ground behind where that is higher
  double deep = 0;    // of its base under the ground in front, where that is level; 0 otherwise
  std::vector<const plan::Reinforcement*> layers;  // that hold there, going up
};
// Distinct ones only: of those that are alike the first. A layer that the takeoff refuses (holds_at_all) holds nothing.
std::vector<Slice> slices(const plan::Job& job, const Profile& profile, const plan::Wall& wall, const Unit& block);

// Everything that a check is made from.
struct Checking {
  const plan::Job& job;
  const plan::ElementId& id;
  const plan::Wall& wall;
  const Unit& block;
  const Entries& entries;
  double course_height = 0;
};

// Limits of the catalogue, with what they are where it has none.
struct Wanted {
  const char* limit;
  double otherwise;
};

// Keeps of each name the one that is worst: least value over limit, or greatest where it must not be over it.
class Governing {
 public:
  void take(Check check);
  std::vector<Check> checks() const { return kept_; }

 private:
  std::vector<Check> kept_;
};

Check check(const Checking& all, const Slice& slice, std::string name, Working value, Wanted wanted,
            bool at_most = false);

// --- workings that gravity and reinforced walls have in common ---

// "Ka by Coulomb, friction 30, on the wall 20, slope 0, batter 7.1 degrees": the value with what it was made from.
Working pressure_share(const Thrusts& found, const Fill& fill, const Stratum& ground);
// Horizontal thrusts of the earth, of what loads it and of water behind it (where there are any), and their moments
// about the toe.
struct Driving {
  Working push;
  Working turning;
};
Driving driving(const Thrusts& found, const Fill& fill, const Stratum& ground, double height, const Entries& entries);
// Water behind as high as `height` and none in front lifts a base of that width by a triangle: what is left of weight
// and righting moment. Both as they were where no water stands.
struct Standing;
void lift(Standing& what, const Entries& entries, double height);

// What stands on a base and is pushed: sliding, overturning, eccentricity, bearing.
struct Standing {
  Working weight;    // N/m
  Working righting;  // N
  Driving driven;
  Working width;     // of the base
  std::string name;  // "" or " of the reinforced mass"
  Wanted overturning;
  Wanted eccentricity;
  const Stratum* also = nullptr;  // earth that slides on itself at the base
};
void stands(const Checking& all, const Slice& slice, const Standing& what, Governing& into);
// The bearing check alone, with other weights: loads that press on the ground hold nothing.
void bears(const Checking& all, const Slice& slice, const Standing& what, Governing& into);

void gravity_checks(const Checking& all, const Slice& slice, Share& share, Governing& into);
// The blocks over the top layer stand by themselves: overturning about the front of the lowest of them.
void crest_check(const Checking& all, const Slice& slice, Governing& into);
void reinforced_checks(const Checking& all, const Slice& slice, Share& share, Governing& into);
// Problem "checks-not-made", once: the angles of this slice leave the range of the formula for earth pressure.
void say_no_pressure(const Checking& all, const Slice& slice, Share& share);
// Notice "strength-missing" for each item of the layers: which of its details a check would need.
void say_missing_strengths(const Checking& all, Share& share);

std::string degrees(double radians);

}  // namespace takeoff::walls
