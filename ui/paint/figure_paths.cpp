#include "ui/paint/figure_paths.h"

#include <cmath>
#include <numbers>

namespace ui {

namespace {

double degrees(double radians) { return radians * 180 / std::numbers::pi; }

void edge(QPainterPath& path, const sheets::Turn& from, geometry::Vec to) {
  const geometry::Vec chord = to - from.at;
  const double length = geometry::length(chord);
  if (from.bulge == 0 || length == 0) return path.lineTo(to.x, to.y);
  // The centre lies on the chord's middle line, at half the chord by tan(sweep / 2) = 2 b / (1 - b^2).
  const double b = from.bulge, off = (1 - b * b) / (4 * b);
  const geometry::Vec centre = from.at + 0.5 * chord + off * geometry::left_of(chord);
  const geometry::Vec arm = from.at - centre;
  const double radius = geometry::length(arm);
  // The toolkit measures angles against a y that goes down; ours goes up.
  path.arcTo(QRectF(centre.x - radius, centre.y - radius, 2 * radius, 2 * radius), -degrees(std::atan2(arm.y, arm.x)),
             -degrees(4 * std::atan(b)));
}

void add(QPainterPath& path, const sheets::Contour& contour) {
  const auto& turns = contour.turns;
  if (turns.empty()) return;
  path.moveTo(turns.front().at.x, turns.front().at.y);
  for (std::size_t i = 0; i + 1 < turns.size(); ++i) edge(path, turns[i], turns[i + 1].at);
  if (!contour.closed) return;
  edge(path, turns.back(), turns.front().at);
  path.closeSubpath();
}

}  // namespace

QPainterPath path_in_metres(const sheets::Contour& contour) { return path_in_metres(std::span(&contour, 1)); }

QPainterPath path_in_metres(std::span<const sheets::Contour> contours) {
  QPainterPath path;
  path.setFillRule(Qt::OddEvenFill);
  for (const sheets::Contour& contour : contours) add(path, contour);
  return path;
}

QTransform to_px(const Sight& sight) {
  return QTransform(sight.scale, 0, 0, -sight.scale, sight.origin.x(), sight.origin.y());
}

}  // namespace ui
