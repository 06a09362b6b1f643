// What the plan and the sections build their figures with.
#pragma once

#include <string>
#include <utility>

#include "sheets/figure.h"
#include "units/read_length.h"

namespace sheets {

inline Vec metres(geometry::Point p) { return {p.x.metres().si(), p.y.metres().si()}; }
inline Vec from_angle(double radians) { return {std::cos(radians), std::sin(radians)}; }

// A closed contour of straight sides.
Contour polygon(std::vector<Vec> corners);
Contour rectangle(Vec low, Vec high);
Contour line(Vec from, Vec to);

// Of a closed contour; counter-clockwise positive, the arcs' bellies counted. Square metres.
double area_of(const Contour& contour);

// A height of the site as a surveyor writes it: 102.00 in feet, 31.090 in metres.
std::string show_fixed(double value, int decimals);  // whatever the machine's language
std::string show_height(double metres, units::System system);

// Grows from nothing over all that is put in; arcs' bellies included.
class Extent {
 public:
  void take(Vec at);
  void take(const Contour& contour);
  void take(const Part& part);
  bool empty() const { return empty_; }
  Vec low() const { return low_; }
  Vec high() const { return high_; }

 private:
  bool empty_ = true;
  Vec low_;
  Vec high_;
};

// Sets low and high from the parts.
void settle(Figure& figure);

}  // namespace sheets
