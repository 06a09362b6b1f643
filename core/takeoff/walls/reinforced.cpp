#include <algorithm>
#include <cmath>
#include <numbers>

#include "takeoff/walls/pressure.h"
#include "takeoff/walls/stability.h"

namespace takeoff::walls {

// The ground's line from the units' back meets the mass's leaning back at y = H + (L - Wu) tan b / (1 - tan w tan b).
double Mass::rise() const {
  const double over = std::max(0.0, length - from_face);
  return over * std::tan(beta) / (1 - std::tan(omega) * std::tan(beta));
}

double Mass::behind() const { return height + rise(); }

Weight Mass::block() const { return {weight * height * length, length / 2 + height * std::tan(omega) / 2}; }

Weight Mass::wedge() const {
  const double over = std::max(0.0, length - from_face);
  const double lean = std::tan(omega);
  const double front = from_face + height * lean;
  const double back = length + height * lean;
  const double tip = length + behind() * lean;
  return {weight * over * rise() / 2, (front + back + tip) / 3};
}

Weight Mass::on_top() const {
  const double over = std::max(0.0, length - from_face);
  return {over, from_face + height * std::tan(omega) + over / 2};
}

std::vector<Tributary> tributaries(const std::vector<double>& up, double height) {
  std::vector<Tributary> all;
  for (std::size_t i = 0; i < up.size(); ++i) {
    const double low = i == 0 ? 0 : (up[i - 1] + up[i]) / 2;
    const double high = i + 1 == up.size() ? height : (up[i] + up[i + 1]) / 2;
    all.push_back({high - low, height - (low + high) / 2});
  }
  return all;
}

double tension(double weight, double load, double kah, const Tributary& of) {
  return (weight * of.depth + load) * kah * of.height;
}

double allowable(double strength, double creep, double damage, double durability) {
  return strength / (creep * damage * durability);
}

Anchor anchor(const Mass& mass, double length, double up, double plane) {
  const double lean = std::tan(mass.omega);
  const double starts = mass.from_face + up / std::tan(plane);
  Anchor found;
  found.length = length + up * lean - starts;
  const double past_crest = starts + found.length / 2 - (mass.from_face + mass.height * lean);
  found.depth = mass.height - up + std::max(0.0, past_crest) * std::tan(mass.beta);
  return found;
}

double pullout(const Anchor& anchor, double interaction, double weight, double phi) {
  return 2 * std::max(0.0, anchor.length) * interaction * weight * anchor.depth * std::tan(phi);
}

HighwayPullout highway_pullout(const Mass& mass, double phi, double depth) {
  constexpr double scale = 0.8;  // of sheets that stretch
  HighwayPullout found;
  found.effective = mass.length - (mass.height - depth) * std::sqrt(rankine(phi));
  found.resistance = 2.0 / 3 * std::tan(phi) * scale * mass.weight * depth * std::max(0.0, found.effective) * 2;
  return found;
}

double connection(const Connection& line, double on_it) {
  const double strength = line.least + on_it * line.slope;
  return line.most > 0 ? std::min(line.most, strength) : strength;
}

double hinged(double above, double depth, double omega) {
  return omega > 0 ? std::min(above, depth / std::tan(omega)) : above;
}

double internal_sliding(double direct, double weight, double phi, double shear, double push) {
  return (direct * weight * std::tan(phi) + shear) / push;
}

double strip_thickness(const Strips& strips, double ka, double weight, double height, double factor) {
  return weight * height * ka * strips.apart_up * strips.apart_along * factor / (strips.width * strips.yield);
}

double strip_length(const Strips& strips, double ka, double phi, double height, double depth, double factor) {
  return (height - depth) * std::sqrt(rankine(phi)) +
         factor * ka * strips.apart_up * strips.apart_along / (2 * strips.width * std::tan(strips.friction));
}

}  // namespace takeoff::walls
