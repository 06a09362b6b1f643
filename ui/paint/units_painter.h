// A field of laid units, drawn as fits its size on the screen: unit by unit, as a pattern that repeats, as rows of
// lines, or as a flat tone with the sign of the material. The cost follows what is seen and not how many were laid.
#pragma once

#include <QBrush>
#include <QPainter>
#include <QPainterPath>
#include <vector>

#include "ui/paint/figure_painter.h"

namespace ui {

// The least side of a unit in px from which each next way holds.
inline constexpr double flat_under = 1.5, lines_under = 3, pattern_under = 9;

class UnitsPainter {
 public:
  explicit UnitsPainter(const sheets::Units& units);
  QRectF bounds() const { return bounds_; }  // metres
  void paint(QPainter& painter, const Sight& sight, const QRectF& clip) const;

 private:
  struct Cut {
    QPolygonF corners;  // steps, frame
    QRectF bounds;
    bool sliver = false;
  };
  QTransform to_px_from_frame(const Sight& sight) const;
  double least_side() const;  // metres
  void paint_flat(QPainter& painter, const QPainterPath& field, const Sight& sight) const;
  void paint_lines(QPainter& painter, const QPainterPath& field, const QTransform& frame) const;
  void paint_pattern(QPainter& painter, const QPainterPath& field, const QTransform& frame, double scale) const;
  void paint_units(QPainter& painter, const QTransform& frame, const QRectF& seen, double px_per_step) const;
  void paint_cuts(QPainter& painter, const QTransform& frame, const QRectF& seen) const;
  QColor colour(int kind, int a, int b) const;
  QColor mean() const;
  QImage pattern(int across_u, int across_v, QSize pixels, double gap) const;

  std::shared_ptr<const takeoff::paving::Layout> layout_;
  sheets::Material material_;
  QPainterPath field_;  // metres
  QRectF bounds_;
  std::vector<Cut> cuts_;
  // The newest pattern made, and what it was made for.
  mutable QImage pattern_;
  mutable double pattern_scale_ = 0;
  mutable bool pattern_dark_ = false;
  mutable QSize pattern_cells_;
};

}  // namespace ui
