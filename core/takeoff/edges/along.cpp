#include "takeoff/edges/along.h"

namespace takeoff::edges {

namespace {

double metres(double steps) { return steps / units::Length::steps_per_metre; }

}  // namespace

std::vector<Part> parts(const geometry::Path& path) {
  std::vector<Part> result;
  for (std::size_t i = 0; i < path.size(); ++i) {
    const geometry::Curve curve = path.curve(i);
    const bool curved = !curve.straight();
    if (result.empty() || result.back().curved != curved) result.push_back({0, curved});
    result.back().length += metres(curve.length());
  }
  return result;
}

Lengths lengths(const geometry::Path& path) {
  Lengths sum;
  for (const Part& part : parts(path)) (part.curved ? sum.curved : sum.straight) += part.length;
  return sum;
}

problem::Result<geometry::Path> closed_path(const geometry::Outline& outline) {
  return geometry::Path::make(outline.edges(), outline.edges().front().from);
}

}  // namespace takeoff::edges
