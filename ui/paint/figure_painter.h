// Draws a sheets::Figure with the theme's materials, hatches and lines.
#pragma once

#include <QPainter>
#include <QRectF>
#include <QTransform>
#include <memory>

#include "sheets/figure.h"

namespace ui {

// From metres to px: `scale` px a metre, `origin` is where (0, 0) lies. y goes up in metres, down in px.
struct Sight {
  double scale = 50;
  QPointF origin;
  QPointF to_px(geometry::Vec metres) const { return {origin.x() + metres.x * scale, origin.y() - metres.y * scale}; }
  geometry::Vec to_metres(QPointF px) const { return {(px.x() - origin.x()) / scale, (origin.y() - px.y()) / scale}; }
  bool operator==(const Sight&) const = default;
};

// A figure made ready for drawing: its paths are built once, so that a frame only fills and strokes them. Hatches keep
// their size in px. Units under 3 px become rows of lines, under 1.5 px a flat tone.
class FigurePainter {
 public:
  explicit FigurePainter(std::shared_ptr<const sheets::Figure> figure);
  ~FigurePainter();
  FigurePainter(FigurePainter&&) noexcept;
  FigurePainter& operator=(FigurePainter&&) noexcept;

  // Everything but the marks; only what lies in `clip` (px).
  void paint(QPainter& painter, const Sight& sight, const QRectF& clip) const;
  // Marks stand over everything and keep their size in px.
  void paint_marks(QPainter& painter, const Sight& sight, const QRectF& clip) const;

  const sheets::Figure& figure() const;

 private:
  struct Ready;
  std::unique_ptr<Ready> ready_;
};

// The same hatch as a figure's, into any path in px: for legends, the strip and swatches.
void paint_material(QPainter& painter, const QPainterPath& path, sheets::Material material, int tone = 0,
                    bool later = false);
// The cut-corner tag, centred at `at`; chalk when it is in hand.
QRectF paint_tag(QPainter& painter, QPointF at, const QString& text, bool in_hand);
// A marking flag on its stake with a chip of words.
void paint_flag(QPainter& painter, QPointF foot, const QString& words, bool care);

}  // namespace ui
