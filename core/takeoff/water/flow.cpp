#include "takeoff/water/flow.h"

#include <cmath>
#include <numbers>

#include "units/quantity.h"

namespace takeoff::water::flow {

using std::numbers::pi;

namespace {

constexpr double foot = units::metres_per_foot;
constexpr double cubic_foot = units::cubic_metres_per_cubic_foot;

Flow manning(double area, double wetted, double n, double slope) {
  if (area <= 0 || wetted <= 0 || slope <= 0) return {};
  const double speed = std::cbrt(std::pow(area / wetted, 2)) * std::sqrt(slope) / n;
  return {speed * area, speed};
}

}  // namespace

Flow full_pipe(double diameter, double n, double slope) {
  return manning(pi * diameter * diameter / 4, pi * diameter, n, slope);
}

Flow part_full(double diameter, double depth, double n, double slope) {
  if (depth <= 0) return {};
  if (depth >= diameter) return full_pipe(diameter, n, slope);
  const double angle = 2 * std::acos(1 - 2 * depth / diameter);  // at the centre, over the wetted arc
  const double area = diameter * diameter / 8 * (angle - std::sin(angle));
  return manning(area, diameter * angle / 2, n, slope);
}

Flow trapezoid(double bottom, double side, double depth, double n, double slope) {
  return manning((bottom + side * depth) * depth, bottom + 2 * depth * std::hypot(1.0, side), n, slope);
}

// Half full is half of what the full pipe carries: Q = 1/2 (pi D^2 / 4) (D/4)^(2/3) S^(1/2) / n.
double diameter_half_full(double m3_s, double n, double slope) {
  const double of_one = full_pipe(1, n, slope).m3_s / 2;
  return std::pow(m3_s / of_one, 3.0 / 8);
}

double slope_for(double diameter, double n, double m_s) {
  return std::pow(m_s * n / std::cbrt(std::pow(diameter / 4, 2)), 2);
}

double rational(double c, double intensity_m_s, double area_m2) { return c * intensity_m_s * area_m2; }

double weir(double length, double head, double contractions) {
  const double wide = (length - 0.1 * contractions * head) / foot;
  return wide <= 0 || head <= 0 ? 0 : 3.33 * wide * std::pow(head / foot, 1.5) * cubic_foot;
}

double weir_head(double length, double m3_s) {
  return std::cbrt(std::pow(m3_s / cubic_foot / (3.33 * length / foot), 2)) * foot;
}

double orifice(double cd, double area, double head) {
  return head <= 0 ? 0 : cd * area * std::sqrt(2 * units::gravity_m_s2 * head);
}

double sheet_time(double n, double length, double rain, double slope) {
  const double hours =
      0.007 * std::pow(n * length / foot, 0.8) / (std::sqrt(rain / units::metres_per_inch) * std::pow(slope, 0.4));
  return hours * 3600;
}

double shallow_time(double length, double slope, bool paved) {
  return length / foot / ((paved ? 20.3282 : 16.1345) * std::sqrt(slope));
}

double channel_time(double length, double area, double wetted, double slope, double n) {
  const double radius = area / wetted / foot;
  return length / foot / (1.49 * std::cbrt(radius * radius) * std::sqrt(slope) / n);
}

}  // namespace takeoff::water::flow
