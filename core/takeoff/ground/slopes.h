// How steep a cut face stands, and volumes summed from cross-sections. Metres, square metres, cubic metres.
#pragma once

#include <span>
#include <string>

namespace takeoff::ground {

// Horizontal run for a rise of 1 of a cut face: soil A 3/4, B 1, C 1 1/2 (29 CFR 1926 subpart P, appendix B); what is
// none of the three stands like C. The competent person on site says which soil it is.
double side_slope(const std::string& stands);

// A trapezoid: a flat bottom and two sides that run out `slope` for a rise of 1.
double trapezoid(double bottom, double depth, double slope);

// One cross-section at its place along the line.
struct Station {
  double at = 0;
  double area = 0;
};
// (A1 + A2) / 2 x L from section to section.
double end_areas(std::span<const Station> sections);
// Three sections, the middle one halfway: (A1 + 4 Am + A2) / 6 x L; exact where the section grows with the square of
// the length, as it does between plane faces.
double prismoid(double first, double middle, double last, double length);
// Over many: pairs of equal lengths by the prismoid, in order; what has no equal partner by end areas.
double prismoids(std::span<const Station> sections);

}  // namespace takeoff::ground
