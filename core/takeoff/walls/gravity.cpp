#include <cmath>

#include "takeoff/walls/stability.h"

namespace takeoff::walls {

std::vector<Weight> weights(const Trapezoid& wall) {
  const double wedge = wall.base - wall.top;
  return {{wall.top * wall.height * wall.weight, wedge + wall.top / 2},
          {wedge * wall.height / 2 * wall.weight, wedge * 2 / 3}};
}

double Stack::omega() const { return std::atan(setback / height); }

Weight weight(const Stack& stack) {
  const double lean = (stack.total() - stack.height) / 2 * stack.setback / stack.height;
  return {stack.courses * stack.course_weight, stack.depth / 2 + lean};
}

}  // namespace takeoff::walls
