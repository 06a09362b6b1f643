#include "ui/paint/lines.h"

#include <algorithm>
#include <cmath>

#include "ui/look/theme.h"

namespace ui {

namespace {

using sheets::Line;
using sheets::Material;

QPen pen(const QColor& colour, double width, std::initializer_list<double> dash_px = {}) {
  QPen made(colour, width, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin);
  QList<qreal> dash;
  for (const double px : dash_px) dash << px / width;
  if (!dash.isEmpty()) made.setDashPattern(dash);
  return made;
}

QColor edge_of(Material material) { return material == Material::none ? theme().ink2 : look(material).line; }

// From where to where on a segment one sees it: all of a hole of kilometres, close to, would be millions of marks.
std::pair<double, double> seen(QPointF from, QPointF way, double length, const QRectF& room) {
  double first = 0, last = length;
  const auto between = [&](double at, double by, double low, double high) {
    if (by == 0) {
      if (at < low || at > high) last = first;
      return;
    }
    const auto [near, far] = std::minmax({(low - at) / by, (high - at) / by});  // by value
    first = std::max(first, near);
    last = std::min(last, far);
  };
  between(from.x(), way.x(), room.left(), room.right());
  between(from.y(), way.y(), room.top(), room.bottom());
  return {first, last};
}

// From the top edge down the slope, which is to the left of an outline that runs counter-clockwise on the plan; long
// ones and short ones by turns.
void slope_marks(QPainter& painter, const QPainterPath& path) {
  constexpr double apart = 5, deep = 8, shallow = 4;
  const QRectF clip = painter.hasClipping() ? painter.clipBoundingRect() : path.boundingRect();
  const QRectF room = clip.adjusted(-deep, -deep, deep, deep);
  bool whole = true;
  for (const QPolygonF& ring : path.toSubpathPolygons()) {
    double left = apart;
    for (qsizetype i = 0; i + 1 < ring.size(); ++i) {
      const QPointF way = ring[i + 1] - ring[i];
      const double length = std::hypot(way.x(), way.y());
      if (length <= 0) continue;
      const QPointF ahead = way / length, down(ahead.y(), -ahead.x());
      const auto [first, last] = seen(ring[i], ahead, length, room);
      // Marks passed over unseen keep their turn.
      const auto pass = [&](double to) {
        const double marks = std::max(0.0, std::ceil((to - left) / apart));
        if (std::fmod(marks, 2) == 1) whole = !whole;
        left += marks * apart;
      };
      pass(std::min(first, length));
      for (; left <= last; left += apart, whole = !whole) {
        const QPointF at = ring[i] + left * ahead;
        painter.drawLine(at, at + (whole ? deep : shallow) * down);
      }
      pass(std::nextafter(length, 2 * length));
      left -= length;
    }
  }
}

}  // namespace

QPen pen_of(Line line, Material of) {
  const Theme& t = theme();
  switch (line) {
    case Line::none: return Qt::NoPen;
    case Line::unit: return pen(edge_of(of), 0.7);
    case Line::element: return pen(edge_of(of), 1.1);
    case Line::house: return pen(t.ink, 1.75);
    case Line::house_joint: return pen(t.ink, 2.4);
    case Line::coping_joint: return pen(t.ink, 1.6);
    case Line::geotextile: return pen(look(Material::geotextile).line, 2, {7, 3});
    case Line::pipe: return pen(look(Material::pipe).line, 2, {10, 3, 2, 3});
    case Line::cut_edge: return pen(t.ink, 1.2);
    case Line::later: return pen(t.rule, 1.1, {4, 3});
    case Line::open_dig: return pen(t.ink2, 1);
    case Line::light: return pen(of == Material::none ? t.rule : edge_of(of), 0.8);
  }
  return Qt::NoPen;
}

void stroke(QPainter& painter, const QPainterPath& path, Line line, Material of) {
  if (line == Line::none) return;
  painter.strokePath(path, pen_of(line, of));
  if (line == Line::house_joint) painter.strokePath(path, pen(theme().paper, 1, {5, 4}));
  if (line != Line::open_dig) return;
  painter.setPen(pen_of(line));
  slope_marks(painter, path);
}

}  // namespace ui
