#include "ui/paint/section_painter.h"

#include <QFontMetricsF>
#include <algorithm>

#include "ui/look/theme.h"

namespace ui {

namespace {

constexpr double air = 4;

void paint_bar(QPainter& painter, double length, const QString& words, const QRectF& room) {
  const QFont letters = font(Type::small);
  const QPointF from(room.left() + px(8), room.bottom() - px(9));
  const double text = QFontMetricsF(letters).horizontalAdvance(words);
  painter.fillRect(QRectF(from.x() - px(4), from.y() - px(9), length + text + px(14), px(16)), theme().panel);
  painter.setPen(QPen(theme().ink, 1.2, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin));
  const QPointF to = from + QPointF(length, 0), tick(0, px(4));
  painter.drawPolyline(QPolygonF{from - tick, from, to, to - tick});
  painter.setFont(letters);
  painter.drawText(to + QPointF(px(6), px(4)), words);
}

}  // namespace

Sight sight_of_section(const sheets::Section& section, const QRectF& room) {
  const auto& [low, high] = std::pair(section.figure.low, section.figure.high);
  const double wide = std::max(high.x - low.x, 1e-6), tall = std::max(high.y - low.y, 1e-6);
  Sight sight;
  sight.scale = std::min((room.width() - 2 * air) / wide, (room.height() - 2 * air) / tall);
  sight.origin = room.center() - QPointF((low.x + high.x) / 2 * sight.scale, -(low.y + high.y) / 2 * sight.scale);
  return sight;
}

std::vector<QPointF> paint_section(QPainter& painter, const sheets::Section& section, const FigurePainter& figure,
                                   const QRectF& room, const QString& bar, const QString& title) {
  const Sight sight = sight_of_section(section, room);
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setClipRect(room, Qt::IntersectClip);
  painter.fillRect(room, theme().paper);
  figure.paint(painter, sight, room);
  figure.paint_marks(painter, sight, room);
  painter.setFont(font(Type::small, true));
  painter.setPen(theme().ink);
  painter.drawText(room.topLeft() + QPointF(px(8), px(15)), title);
  if (section.scale_bar > 0) paint_bar(painter, section.scale_bar * sight.scale, bar, room);
  painter.setPen(QPen(theme().rule, 1));
  painter.setBrush(Qt::NoBrush);
  painter.drawRect(room.adjusted(0.5, 0.5, -0.5, -0.5));
  painter.restore();
  std::vector<QPointF> ends;
  for (const sheets::Leader& leader : section.leaders) ends.push_back(sight.to_px(leader.at));
  return ends;
}

}  // namespace ui
