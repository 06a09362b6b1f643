// Whether a body that earth pushes stays where it is: pure functions over doubles, SI, per metre run of wall.
//
// The methods are those of the segmental wall design manual and TEK 15-5B (from memory), with two values of the highway
// manual FHWA-NHI-10-024 beside them. Nothing here knows a job: checks.h says which numbers come from where. Arms of
// weights are measured from the toe (front edge of the base) into the fill, heights above the base.
#pragma once

#include <optional>
#include <vector>

namespace takeoff::walls {

struct Weight {
  double force = 0;  // N/m
  double arm = 0;    // m
};

struct Push {
  double horizontal = 0;  // N/m, away from the fill
  double height = 0;      // m
  double vertical = 0;    // N/m, down: what is not counted is left at 0
  double arm = 0;         // m, of the vertical part
};

struct Base {
  double width = 0;
  double friction = 0;  // tan of the angle at the base
  double adhesion = 0;  // Pa
  double passive = 0;   // N/m in front, where it may be counted
};

struct Stability {
  double vertical = 0;    // N/m
  double horizontal = 0;  // N/m, driving
  double holding = 0;     // N/m, against sliding
  double righting = 0;    // N, moment about the toe
  double turning = 0;     // N
  double sliding = 0;     // holding / horizontal; infinite where nothing drives
  double overturning = 0;
  double eccentricity = 0;  // m, + towards the toe
  double effective = 0;     // m: B - 2e (Meyerhof), the whole width where e is towards the heel; 0 where nothing bears
  double pressure = 0;      // Pa: vertical over `effective`
  double contact = 0;       // m of a rigid base that can't pull: less than its width where e > B/6
  double toe = 0;           // Pa at its two edges
  double heel = 0;
};
Stability stability(const std::vector<Weight>& weights, const std::vector<Push>& pushes, const Base& base);

// Earth behind a wall: angles in radians, `weight` N/m3, `load` Pa on the ground.
struct Fill {
  double phi = 0;
  double delta = 0;  // on the wall
  double weight = 0;
  double beta = 0;
  double omega = 0;
  double load = 0;
};
// Coulomb's two thrusts on `height`, horizontal parts at H/3 and H/2; the vertical part is not counted (safe side).
struct Thrusts {
  double ka = 0;
  double across = 1;  // cos(d - w): the share that is horizontal
  double earth = 0;   // N/m
  double load = 0;
  std::vector<Push> pushes(double height) const;
};
std::optional<Thrusts> thrusts(const Fill& fill, double height);

// --- gravity ---

// A wall with an upright back and a face that widens to the base; weight as a rectangle and a wedge.
struct Trapezoid {
  double height = 0;
  double top = 0;
  double base = 0;
  double weight = 0;  // N/m3
};
std::vector<Weight> weights(const Trapezoid& wall);

// Courses of equal blocks, each set back behind the one below.
struct Stack {
  int courses = 0;
  double height = 0;  // of one
  double depth = 0;
  double setback = 0;
  double course_weight = 0;  // N/m of one course
  double total() const { return courses * height; }
  double omega() const;  // atan(setback / height)
};
Weight weight(const Stack& stack);  // at depth/2 + (H - h) tan(w) / 2

// --- reinforced ---

// The mass that the layers hold together; its back leans as its face does. The ground rises at beta from the back of
// the units at the top (`from_face` behind the face: the depth of a unit, 0 for a thin facing).
struct Mass {
  double height = 0;
  double length = 0;  // of the layers, from the face
  double from_face = 0;
  double omega = 0;
  double beta = 0;
  double weight = 0;      // N/m3
  double rise() const;    // of the ground between its front and the back of the mass
  double behind() const;  // height on which the earth behind pushes: H + rise
  Weight block() const;   // g H L, at L/2 + H tan(w) / 2
  Weight wedge() const;   // the slope on top of it
  Weight on_top() const;  // of 1 Pa on the ground, from the units back
};

// What one layer has to hold: from half way to the layer below (the base for the first) to half way to the one above
// (the top for the last), and how deep the middle of that lies. The heights go up.
struct Tributary {
  double height = 0;
  double depth = 0;
};
std::vector<Tributary> tributaries(const std::vector<double>& up, double height);

double tension(double weight, double load, double kah, const Tributary& of);  // (g D + q) Ka cos(d - w) A
double allowable(double strength, double creep, double damage, double durability);

// Where a layer is held behind the slip plane, which starts at the back of the units at the base.
struct Anchor {
  double length = 0;  // L - Wu - E / tan(a) + E tan(w); below 0 the layer ends before the plane
  double depth = 0;   // of earth over its middle
};
Anchor anchor(const Mass& mass, double length, double up, double plane);
double pullout(const Anchor& anchor, double interaction, double weight, double phi);  // 2 La Ci g d tan(phi)

// As FHWA has it, on a Rankine plane from the toe.
struct HighwayPullout {
  double effective = 0;   // L - (H - z) tan(45 - phi/2)
  double resistance = 0;  // 2/3 tan(phi) x 0.8 x g z Le x 2
};
HighwayPullout highway_pullout(const Mass& mass, double phi, double depth);

// Strength of the joint between layer and block under the weight of what stands on it.
struct Connection {
  double least = 0;  // N/m without load
  double slope = 0;  // tan of the line's angle
  double most = 0;   // N/m; 0: no cap known
};
double connection(const Connection& line, double on_it);
// Height of blocks whose weight comes down on a joint: of a battered stack no more than leans without tipping back.
double hinged(double above, double depth, double omega);

// (Cds W' tan(phi) + V) / P' along a layer.
double internal_sliding(double direct, double weight, double phi, double shear, double push);

// Steel strips: thickness that keeps `factor` against breaking, and length that keeps it against pulling out.
struct Strips {
  double apart_up = 0;
  double apart_along = 0;
  double width = 0;
  double yield = 0;     // Pa
  double friction = 0;  // radians, earth on strip
};
double strip_thickness(const Strips& strips, double ka, double weight, double height, double factor);
double strip_length(const Strips& strips, double ka, double phi, double height, double depth, double factor);

}  // namespace takeoff::walls
