// What stands over the figure: what is selected, what the tool in hand shows, what is drawn and not computed yet.
#include <QPainter>
#include <QPainterPath>
#include <algorithm>
#include <cmath>
#include <numbers>

#include "geometry/flatten.h"
#include "geometry/index.h"
#include "ui/look/theme.h"
#include "ui/plan/plan_view.h"

namespace ui {

namespace {

QPointF to_px(geometry::Point point, const Sight& sight) {
  const problem::Xy at = geometry::xy(point);
  return sight.to_px({at.x, at.y});
}

// A curve as chords that no eye tells from it: a quarter of a pixel.
void add_curve(QPainterPath& path, const geometry::Curve& curve, const Sight& sight) {
  if (curve.straight()) {
    path.lineTo(to_px(curve.end, sight));
    return;
  }
  const double steps = std::max(1.0, 0.25 / sight.scale * units::Length::steps_per_metre);
  const auto within = units::Length::of_steps(std::max<std::int64_t>(1, std::llround(steps)));
  for (const geometry::Point& point : geometry::flatten(curve, within)) path.lineTo(to_px(point, sight));
}

void cased(QPainter& painter, const QPainterPath& path, QPen pen) {
  QPen casing(theme().paper, pen.widthF() + 2);
  painter.strokePath(path, casing);
  painter.strokePath(path, pen);
}

// So that it reads from below or from the right.
double upright(double turn) {
  while (turn > std::numbers::pi / 2 + 1e-9) turn -= std::numbers::pi;
  while (turn <= -std::numbers::pi / 2 + 1e-9) turn += std::numbers::pi;
  return turn;
}

void paint_chip(QPainter& painter, QPointF at, double turn, const QString& text) {
  painter.save();
  painter.translate(at);
  painter.rotate(-upright(turn) * 180 / std::numbers::pi);
  painter.setFont(font(Type::small, true));
  const QRectF words = painter.fontMetrics().boundingRect(text);
  const QRectF box(-words.width() / 2 - 5, -words.height() / 2 - 1, words.width() + 10, words.height() + 2);
  painter.setPen(QPen(theme().chalk, 1));
  painter.setBrush(theme().raised);
  painter.drawRoundedRect(box, 2, 2);
  painter.setPen(theme().ink);
  painter.drawText(box, Qt::AlignCenter, text);
  painter.restore();
}

constexpr double chip_room = 56;  // px that an edge must have to carry its length

void paint_edge_lengths(QPainter& painter, const std::vector<plan::DrawnEdge>& edges, const Overlay& overlay) {
  for (const plan::DrawnEdge& edge : edges) {
    const double metres = edge.curve.length() / units::Length::steps_per_metre;
    if (metres * overlay.sight.scale < chip_room) continue;
    const geometry::Vec direction = edge.curve.direction(0.5);
    const QPointF at = to_px(geometry::moved(edge.curve.start, edge.curve.at(0.5)), overlay.sight);
    if (!overlay.clip.contains(at)) continue;
    const auto system = overlay.job.heading.units;
    const auto shown = [system](double steps) {
      return QString::fromStdString(units::show_length(units::Length::of_steps(std::llround(steps)), system));
    };
    const QString text =
        edge.curve.straight() ? shown(edge.curve.length()) : QStringLiteral("R ") + shown(edge.curve.radius());
    paint_chip(painter, at, std::atan2(direction.y, direction.x), text);
  }
}

void paint_grips(QPainter& painter, const plan::Element& element, const Overlay& overlay) {
  painter.setPen(QPen(theme().chalk, 1.5));
  painter.setBrush(theme().raised);
  for (const plan::Grip& grip : plan::corners(element)) {
    const QPointF at = to_px(grip.at, overlay.sight);
    if (!overlay.clip.contains(at)) continue;
    if (grip.control) {
      painter.drawEllipse(at, 4.5, 4.5);
    } else {
      painter.drawRect(QRectF(at.x() - 4, at.y() - 4, 8, 8));
    }
  }
  for (const plan::DrawnEdge& edge : plan::drawn_edges(element)) {
    if (edge.curve.straight()) continue;
    const QPointF at = to_px(geometry::moved(edge.curve.start, edge.curve.at(0.5)), overlay.sight);
    painter.drawEllipse(at, 4.5, 4.5);
  }
}

// Each thing taken hold of has a shape of its own, so that colour is not the only sign.
void paint_taken(QPainter& painter, const sketch::Mark& mark, const Sight& sight) {
  const QPointF at = to_px(mark.at, sight);
  painter.setPen(QPen(theme().chalk, 2));
  painter.setBrush(Qt::NoBrush);
  constexpr double r = 6;
  using sketch::Takes;
  const auto line = [&](double x1, double y1, double x2, double y2) {
    painter.drawLine(at + QPointF(x1, y1), at + QPointF(x2, y2));
  };
  switch (mark.takes) {
    case Takes::nothing: painter.drawEllipse(at, 2, 2); break;
    case Takes::corner: painter.drawRect(QRectF(at.x() - r, at.y() - r, 2 * r, 2 * r)); break;
    case Takes::crossing:
      line(-r, -r, r, r);
      line(-r, r, r, -r);
      break;
    case Takes::middle:
      painter.drawPolygon(QPolygonF({at + QPointF(0, -r), at + QPointF(r, r), at + QPointF(-r, r)}));
      break;
    case Takes::centre:
      painter.drawEllipse(at, r, r);
      line(0, -r, 0, r);
      line(-r, 0, r, 0);
      break;
    case Takes::edge:  // two triangles, tip to tip
      painter.drawPolygon(
          QPolygonF({at + QPointF(-r, -r), at + QPointF(r, -r), at + QPointF(-r, r), at + QPointF(r, r)}));
      break;
    case Takes::square:
    case Takes::closing:
      line(-r, r, r, r);
      line(-r, r, -r, -r);
      line(-r, 1, -1, 1);
      line(-1, 1, -1, r);
      break;
    case Takes::parallel:
      line(-r, r, 0, -r);
      line(0, r, r, -r);
      break;
    case Takes::tangent:
      painter.drawEllipse(at + QPointF(0, 2), r - 2, r - 2);
      line(-r, -r + 4, r, -r + 4);
      break;
    case Takes::equal:
      line(-r, -2, r, -2);
      line(-r, 2, r, 2);
      break;
    case Takes::grid:
      line(-r, 0, r, 0);
      line(0, -r, 0, r);
      break;
    case Takes::angle:
      line(-r, r, r, r);
      line(-r, r, r - 2, -r);
      break;
  }
}

}  // namespace

QPainterPath path_of(std::span<const plan::DrawnEdge> edges, const Sight& sight) {
  QPainterPath path;
  std::optional<geometry::Point> at;
  for (const plan::DrawnEdge& edge : edges) {
    if (at != edge.curve.start) path.moveTo(to_px(edge.curve.start, sight));
    add_curve(path, edge.curve, sight);
    at = edge.curve.end;
  }
  return path;
}

QPainterPath path_of(const plan::DrawnLine& line, bool closed, const Sight& sight) {
  QPainterPath path;
  const geometry::Ring edges = line.through.empty() ? line.edges : geometry::Ring{};
  if (edges.empty()) return path;
  path.moveTo(to_px(edges.front().from, sight));
  for (std::size_t i = 0; i < edges.size(); ++i) {
    const geometry::Point end = i + 1 < edges.size() ? edges[i + 1].from : closed ? edges.front().from : line.end;
    add_curve(path, {edges[i].from, end, edges[i].bulge}, sight);
  }
  return path;
}

void paint_pending(QPainter& painter, const Overlay& overlay) {
  if (overlay.results && overlay.results->job.get() == &overlay.job) return;
  const QPen pen(theme().ink3, 1.1, Qt::DashLine);
  for (const auto& element : overlay.job.elements) {
    const plan::Element* computed = overlay.results ? overlay.results->job->find(element->id) : nullptr;
    if (computed == element.get()) continue;
    cased(painter, path_of(plan::drawn_edges(*element), overlay.sight), pen);
  }
}

void paint_selection(QPainter& painter, const Overlay& overlay) {
  for (const plan::ElementId& id : overlay.selected) {
    const plan::Element* element = overlay.job.find(id);
    if (element == nullptr) continue;
    const auto edges = plan::drawn_edges(*element);
    cased(painter, path_of(edges, overlay.sight), QPen(theme().chalk, 2.2));
    if (overlay.selected.size() > 1) continue;
    paint_edge_lengths(painter, edges, overlay);
    paint_grips(painter, *element, overlay);
  }
}

void paint_tool(QPainter& painter, const Overlay& overlay) {
  for (const sketch::Stroke& stroke : overlay.view.strokes) {
    QPen pen(theme().chalk, 1.8);
    if (stroke.pen == sketch::Pen::guide) {
      pen.setWidthF(1);
      pen.setDashPattern({2, 4});
    } else if (stroke.pen == sketch::Pen::rubber) {
      pen.setDashPattern({6, 3});
    } else if (stroke.pen == sketch::Pen::tape) {
      pen.setDashPattern({8, 2, 1, 2});
    }
    cased(painter, path_of(stroke.line, stroke.closed, overlay.sight), pen);
  }
  for (const sketch::Chip& chip : overlay.view.chips)
    paint_chip(painter, to_px(chip.at, overlay.sight), chip.turn, QString::fromStdString(chip.text));
  for (const sketch::Mark& mark : overlay.view.marks) paint_taken(painter, mark, overlay.sight);
}

void paint_scale_and_north(QPainter& painter, const Sight& sight, QRectF room, units::System units) {
  const bool us = units == units::System::us;
  const double unit = us ? 0.3048 : 1.0;
  // The longest round length that takes no more than 160 px.
  double shown = 0.01;
  for (const double round : {0.1, 0.2, 0.5, 1.0, 2.0, 5.0, 10.0, 20.0, 50.0, 100.0, 200.0, 500.0, 1000.0, 5000.0}) {
    if (round * unit * sight.scale <= 160) shown = round;
  }
  const double length = shown * unit * sight.scale;
  painter.setFont(font(Type::small));
  const double text_height = painter.fontMetrics().height();
  const QPointF end(room.right() - 44, room.bottom());
  const QRectF bar(end.x() - length, end.y() - 4, length, 4);
  const QColor ground(theme().paper.red(), theme().paper.green(), theme().paper.blue(), 215);
  painter.fillRect(QRectF(bar.left() - 12, bar.top() - text_height - 4, length + 72, text_height + 14), ground);
  painter.setPen(QPen(theme().ink, 1));
  painter.setBrush(theme().paper);
  painter.drawRect(bar);
  painter.setBrush(theme().ink);
  painter.drawRect(QRectF(bar.left(), bar.top(), length / 2, 4));
  const QString words = QString::number(shown) + (us ? QStringLiteral(" ft") : QStringLiteral(" m"));
  painter.drawText(QPointF(bar.left() - 3, bar.top() - 4), QStringLiteral("0"));
  painter.drawText(QRectF(bar.right() - 80, bar.top() - text_height - 2, 96, text_height), Qt::AlignRight, words);
  const QPointF foot(room.right() - 8, room.bottom());
  painter.drawLine(foot, foot + QPointF(0, -26));
  painter.setBrush(theme().ink);
  painter.drawPolygon(QPolygonF({foot + QPointF(0, -30), foot + QPointF(-4, -18), foot + QPointF(4, -18)}));
  painter.setFont(font(Type::small, true));
  painter.drawText(QRectF(foot.x() - 10, foot.y() - 30 - text_height, 20, text_height), Qt::AlignCenter,
                   QStringLiteral("N"));
}

void paint_legend(QPainter& painter, QRectF room, bool junctions, bool stage) {
  struct Row {
    QString sign;
    QString words;
  };
  std::vector<Row> rows;
  if (stage) rows.push_back({QStringLiteral("- -"), PlanView::tr("later")});
  if (junctions) {
    rows.push_back({QStringLiteral("E"), PlanView::tr("expansion joint")});
    rows.push_back({QStringLiteral("I"), PlanView::tr("isolation joint")});
    rows.push_back({QStringLiteral("R"), PlanView::tr("restraint")});
    rows.push_back({QStringLiteral("K"), PlanView::tr("kerb")});
    rows.push_back({QStringLiteral("F"), PlanView::tr("flush")});
  }
  if (rows.empty()) return;
  painter.setFont(font(Type::small));
  const QFontMetricsF metrics(painter.font());
  double width = 16;
  for (const Row& row : rows) width += 22 + metrics.horizontalAdvance(row.words) + 14;
  const double height = metrics.height() + 10;
  const QRectF box(room.left(), room.bottom() - height, width, height);
  painter.setPen(QPen(theme().rule, 1));
  painter.setBrush(theme().panel);
  painter.drawRect(box);
  double x = box.left() + 10;
  for (const Row& row : rows) {
    painter.setPen(theme().ink);
    painter.setFont(font(Type::small, true));
    painter.drawText(QRectF(x, box.top(), 20, height), Qt::AlignVCenter, row.sign);
    painter.setFont(font(Type::small));
    painter.drawText(QPointF(x + 22, box.center().y() + metrics.ascent() / 2 - 1), row.words);
    x += 22 + metrics.horizontalAdvance(row.words) + 14;
  }
}

}  // namespace ui
