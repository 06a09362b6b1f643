// Earth pressure and bearing: the published formulas, nothing else. Angles in radians, SI.
//
// phi friction of the earth, delta friction on the wall, beta slope of the ground behind, omega lean of the wall into
// the fill (0 vertical, + into the backfill).
#pragma once

#include <optional>

namespace takeoff::walls {

double rankine(double phi);                                     // level ground: tan^2(45 - phi/2)
std::optional<double> rankine_sloped(double phi, double beta);  // thrust parallel to the slope; beta <= phi
// Cos^2(phi + w) / {cos^2 w cos(w - d) [1 + sqrt(sin(phi + d) sin(phi - b) / (cos(w - d) cos(w + b)))]^2}. Nothing
// where the ground is steeper than its friction, or where the angles leave the formula's range (a wall that lies on
// its fill).
std::optional<double> coulomb(double phi, double delta, double beta, double omega);
// The same by theta = 90 degrees + omega, as highway manuals print it: sin^2(theta + phi) / {G sin^2 theta
// sin(theta - d)}.
std::optional<double> coulomb_theta(double phi, double delta, double beta, double theta);
double passive_rankine(double phi);
double with_cohesion(double ka, double cohesion, double weight, double height);  // Ka - 2 c sqrt(Ka) / (g H)
double friction_of(double ka);  // the friction whose Rankine value on level ground is `ka`

double thrust(double ka, double weight, double height);   // N/m: Ka g H^2 / 2, at H/3
double surcharge(double ka, double load, double height);  // N/m: q Ka H, at H/2

// Earth with cohesion, which pulls at the top until a crack opens there: before it, how deep it goes, after it.
double cohesive_thrust(double ka, double cohesion, double weight, double height);  // Ka g H^2 / 2 - 2 c sqrt(Ka) H
double crack_depth(double ka, double cohesion, double weight);                     // 2 c / (g sqrt(Ka))
double cracked_thrust(double ka, double cohesion, double weight, double height);

struct Bearing {
  double c = 0;
  double q = 0;
  double g = 0;
};
Bearing bearing_factors(double phi);  // Nq, Nc as Prandtl and Reissner, Ng = 2 (Nq + 1) tan phi (Vesic)
// The same where the ground in front falls at beta: q and g x (1 - tan b)^2, c x gq - (1 - gq) / (Nc tan phi); on
// cohesion alone Nc - 2 b and Ng = -2 sin b (Vesic's ground factors, from memory). All 0 where friction alone would not
// keep the slope.
Bearing bearing_factors_on_slope(double phi, double beta);
// Pressure under which the ground gives way: c Nc + g B' Ng / 2 + g D Nq.
double bearing_capacity(double cohesion, double phi, double weight, double width, double depth);

// Angle of the failure plane above level behind a wall of batter omega (the Coulomb wedge of least resistance).
double slip_plane(double phi, double delta, double beta, double omega);

}  // namespace takeoff::walls
