#include "ui/plan/site_plan_layer.h"

#include <algorithm>
#include <cmath>

#include "sketch/site_plan_numbers.h"
#include "ui/look/theme.h"

namespace ui {

namespace {

constexpr double first_side = 30;    // m, the longer side of a picture that nobody has scaled
constexpr double first_ratio = 100;  // of a page: 1:100
constexpr double line_width = 1;     // px
constexpr double too_small_to_see = 0.5;

// The copy that has at least as many pixels as are shown.
std::size_t copy_for(const LoadedPlan& loaded, double px_per_pixel) {
  std::size_t copy = 0;
  while (copy + 1 < loaded.copies.size() && px_per_pixel <= 0.5) {
    px_per_pixel *= 2;
    ++copy;
  }
  return copy;
}

void paint_picture(QPainter& painter, const LoadedPlan& loaded, const QTransform& to_px, const QRectF& clip) {
  const QImage& whole = loaded.copies.front();
  const double px_per_pixel = std::sqrt(std::abs(to_px.determinant()));
  const QImage& copy = loaded.copies[copy_for(loaded, px_per_pixel)];
  // From pixels of the copy: its size is a rounded part of the whole one's.
  QTransform from_copy = to_px;
  from_copy.scale(double(whole.width()) / copy.width(), double(whole.height()) / copy.height());
  bool turns_back = false;
  const QTransform back = from_copy.inverted(&turns_back);
  if (!turns_back) return;
  const QRect seen = back.mapRect(clip).toAlignedRect().adjusted(-1, -1, 1, 1).intersected(copy.rect());
  if (seen.isEmpty()) return;
  painter.setTransform(from_copy, true);
  painter.setRenderHint(QPainter::SmoothPixmapTransform, px_per_pixel < 4);  // from near, pixels are to be seen as such
  painter.drawImage(seen, copy, seen);
}

void paint_outlines(QPainter& painter, const LoadedPlan& loaded, const QTransform& to_px, const QRectF& clip) {
  painter.setRenderHint(QPainter::Antialiasing);
  QPen pen(theme().site_plan, line_width);
  pen.setCosmetic(true);
  painter.setPen(pen);
  painter.setBrush(Qt::NoBrush);
  for (const QPainterPath& path : loaded.outlines) {
    const QRectF box = to_px.mapRect(path.boundingRect());
    if (!box.adjusted(-1, -1, 1, 1).intersects(clip)) continue;
    if (box.width() < too_small_to_see && box.height() < too_small_to_see)
      painter.drawPoint(box.center());
    else
      painter.drawPath(to_px.map(path));
  }
}

}  // namespace

double first_metres_per_pixel(const LoadedPlan& loaded) {
  if (!loaded.picture()) return 1;
  if (loaded.dots_per_inch > 0) return first_ratio * 0.0254 / loaded.dots_per_inch;
  return first_side / std::max(loaded.size().width(), loaded.size().height());
}

QTransform to_metres(const plan::SitePlan& plan, const LoadedPlan& loaded) {
  const problem::Xy at = geometry::xy(plan.at);
  const units::Turn turn = units::turn(plan.turn);
  const double scale = sketch::metres_per_pixel(plan);
  // Turned counter-clockwise with y up; Qt's matrix is written for row vectors.
  const QTransform turned(turn.cosine * scale, turn.sine * scale, -turn.sine * scale, turn.cosine * scale, at.x, at.y);
  if (!loaded.picture()) return turned;
  return QTransform(1, 0, 0, -1, 0, loaded.size().height()) * turned;
}

QTransform to_window(const plan::SitePlan& plan, const LoadedPlan& loaded, const Sight& sight) {
  return to_metres(plan, loaded) * QTransform(sight.scale, 0, 0, -sight.scale, sight.origin.x(), sight.origin.y());
}

void paint_site_plan(QPainter& painter, const plan::SitePlan& plan, const LoadedPlan& loaded, const Sight& sight,
                     const QRectF& clip) {
  painter.save();
  painter.setOpacity(painter.opacity() * std::clamp(plan.opacity, 0.0, 1.0));
  const QTransform to_px = to_window(plan, loaded, sight);
  if (loaded.picture())
    paint_picture(painter, loaded, to_px, clip);
  else
    paint_outlines(painter, loaded, to_px, clip);
  painter.restore();
}

QRectF rect_of(const plan::SitePlan& plan, const LoadedPlan& loaded, const Sight& sight) {
  const QRectF own = loaded.picture() ? QRectF(QPointF(0, 0), loaded.size()) : loaded.bounds;
  return to_window(plan, loaded, sight).mapRect(own);
}

}  // namespace ui
