#include "takeoff/walls/pressure.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace takeoff::walls {

namespace {

double squared(double x) { return x * x; }
constexpr double quarter_turn = std::numbers::pi / 2;

}  // namespace

double rankine(double phi) { return squared(std::tan((quarter_turn - phi) / 2)); }

double passive_rankine(double phi) { return squared(std::tan((quarter_turn + phi) / 2)); }

std::optional<double> rankine_sloped(double phi, double beta) {
  if (std::abs(beta) > phi) return std::nullopt;
  const double b = std::cos(beta);
  // At beta = phi the difference is 0 but for its last bit.
  const double r = std::sqrt(std::max(0.0, squared(b) - squared(std::cos(phi))));
  return b * (b - r) / (b + r);
}

std::optional<double> coulomb(double phi, double delta, double beta, double omega) {
  const double back = std::cos(omega - delta);
  const double slope = std::cos(omega + beta);
  if (beta > phi || phi + delta < 0 || back <= 0 || slope <= 0 || phi + omega >= quarter_turn) return std::nullopt;
  const double root = 1 + std::sqrt(std::sin(phi + delta) * std::sin(phi - beta) / (back * slope));
  return squared(std::cos(phi + omega)) / (squared(std::cos(omega)) * back * squared(root));
}

std::optional<double> coulomb_theta(double phi, double delta, double beta, double theta) {
  const double back = std::sin(theta - delta);
  const double slope = std::sin(theta + beta);
  if (beta > phi || phi + delta < 0 || back <= 0 || slope <= 0) return std::nullopt;
  const double gamma = squared(1 + std::sqrt(std::sin(phi + delta) * std::sin(phi - beta) / (back * slope)));
  return squared(std::sin(theta + phi)) / (gamma * squared(std::sin(theta)) * back);
}

double with_cohesion(double ka, double cohesion, double weight, double height) {
  return ka - 2 * cohesion * std::sqrt(ka) / (weight * height);
}

double friction_of(double ka) { return quarter_turn - 2 * std::atan(std::sqrt(ka)); }

double thrust(double ka, double weight, double height) { return ka * weight * height * height / 2; }

double surcharge(double ka, double load, double height) { return load * ka * height; }

double cohesive_thrust(double ka, double cohesion, double weight, double height) {
  return thrust(ka, weight, height) - 2 * cohesion * std::sqrt(ka) * height;
}

double crack_depth(double ka, double cohesion, double weight) { return 2 * cohesion / (weight * std::sqrt(ka)); }

double cracked_thrust(double ka, double cohesion, double weight, double height) {
  const double pressed = height - crack_depth(ka, cohesion, weight);
  return pressed <= 0 ? 0 : thrust(ka, weight, pressed);
}

Bearing bearing_factors(double phi) {
  Bearing factors;
  factors.q = std::exp(std::numbers::pi * std::tan(phi)) * passive_rankine(phi);
  factors.c = phi > 1e-9 ? (factors.q - 1) / std::tan(phi) : 2 + std::numbers::pi;  // the limit as phi goes to 0
  factors.g = 2 * (factors.q + 1) * std::tan(phi);
  return factors;
}

Bearing bearing_factors_on_slope(double phi, double beta) {
  const Bearing level = bearing_factors(phi);
  if (!(beta > 0)) return level;
  if (phi <= 1e-9) return {level.c - 2 * beta, level.q, -2 * std::sin(beta)};
  if (beta >= phi) return {};
  const double ground = squared(1 - std::tan(beta));
  return {std::max(0.0, level.c * ground - (1 - ground) / std::tan(phi)), level.q * ground, level.g * ground};
}

double bearing_capacity(double cohesion, double phi, double weight, double width, double depth) {
  const Bearing factors = bearing_factors(phi);
  return cohesion * factors.c + weight * width * factors.g / 2 + weight * depth * factors.q;
}

double slip_plane(double phi, double delta, double beta, double omega) {
  const double t = std::tan(phi - beta);
  const double c = 1 / std::tan(phi + omega);
  const double u = std::tan(delta - omega);
  return phi + std::atan((-t + std::sqrt(t * (t + c) * (1 + u * c))) / (1 + u * (t + c)));
}

}  // namespace takeoff::walls
