// Figures to scale, with their dimensions, labels and notes.
#include <QCoreApplication>
#include <QMarginsF>
#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

#include "ui/look/theme.h"
#include "ui/paint/figure_painter.h"
#include "ui/paint/marks.h"
#include "ui/print/paper.h"
#include "ui/print/scales.h"
#include "ui/print/slices.h"

namespace ui {

namespace {

using sheets::Drawing;

constexpr double title_points = 13, note_points = 10.5, dim_points = 10.5;
constexpr double notes_least = 0.3, notes_most = 0.5;  // of the width, where there are notes
constexpr double leader_wide = mm(12);

// A metre on paper at 1 : scale, in u.
double u_per_metre(int scale) { return 1000.0 / scale * u_per_mm; }

struct Laid {
  std::shared_ptr<const Drawing> drawing;
  std::shared_ptr<const FigurePainter> painter;
  int scale = 1;
  double title_high = 0;
  QMarginsF around;        // u kept free about the figure for dimensions and labels
  double figure_wide = 0;  // u, with what is kept free
  double figure_high = 0;
  double notes_wide = 0;
  double notes_high = 0;
};

// What stands out of the figure at each side: lines of dimensions, words at its edge.
QMarginsF kept_free(const Drawing& drawing) {
  QMarginsF out(mm(2), mm(2), mm(2), mm(2));
  const auto take = [&](geometry::Vec way, double millimetres) {
    constexpr double half = 0.5;  // of the way: what goes askew takes room at two sides
    if (way.x < -half) out.setLeft(std::max(out.left(), mm(millimetres)));
    if (way.x > half) out.setRight(std::max(out.right(), mm(millimetres)));
    if (way.y > half) out.setTop(std::max(out.top(), mm(millimetres)));
    if (way.y < -half) out.setBottom(std::max(out.bottom(), mm(millimetres)));
  };
  for (const sheets::Dimension& one : drawing.dimensions) {
    const geometry::Vec left = geometry::left_of(one.to - one.from);
    const double length = geometry::length(left);
    if (length > 0) take(((one.out_mm < 0 ? -1 : 1) / length) * left, std::abs(one.out_mm) + 6);
  }
  const sheets::Figure& figure = *drawing.figure;
  const double near_x = 0.04 * (figure.high.x - figure.low.x), near_y = 0.04 * (figure.high.y - figure.low.y);
  for (const sheets::Label& label : drawing.labels) {
    if (label.at.x < figure.low.x + near_x) take({-1, 0}, 8);
    if (label.at.x > figure.high.x - near_x) take({1, 0}, 8);
    if (label.at.y < figure.low.y + near_y) take({0, -1}, 8);
    if (label.at.y > figure.high.y - near_y) take({0, 1}, 8);
  }
  return out;
}

double notes_wide(const Drawing& drawing, double width) {
  const QFontMetricsF metrics(print_font(note_points));
  double longest = 0;
  for (const sheets::Note& note : drawing.notes)
    longest = std::max(longest, metrics.horizontalAdvance(words(note.said.words)));
  return drawing.notes.empty() ? 0 : std::clamp(longest + leader_wide + mm(1), notes_least * width, notes_most * width);
}

double notes_high(const Drawing& drawing, double width) {
  const QFont font = print_font(note_points);
  double high = 0;
  for (const sheets::Note& note : drawing.notes)
    high += static_cast<double>(broken(words(note.said.words), font, width).size()) * line_height(font) + mm(1.6);
  return high;
}

Laid laid(const Drawing& drawing, double width, double height, units::System units) {
  Laid made;
  made.drawing = std::make_shared<const Drawing>(drawing);
  made.title_high = drawing.title.empty() ? 0 : line_height(print_font(title_points)) + mm(1.5);
  made.around = kept_free(drawing);
  made.notes_wide = notes_wide(drawing, width);
  made.notes_high = notes_high(drawing, made.notes_wide - leader_wide);
  const double bar = drawing.bar || drawing.north ? mm(12) : 0;
  const sheets::Figure& figure = *drawing.figure;
  const double wide = std::max(figure.high.x - figure.low.x, 1e-3), high = std::max(figure.high.y - figure.low.y, 1e-3);
  const double around_wide = made.around.left() + made.around.right();
  const double around_high = made.around.top() + made.around.bottom();
  const double room_wide = width - made.notes_wide - around_wide;
  const double room_high = height - made.title_high - bar - around_high;
  made.scale = drawing.scale > 0 ? drawing.scale
                                 : fitting_scale(std::min(room_wide / wide, room_high / high) / u_per_mm / 1000, units);
  made.figure_wide = wide * u_per_metre(made.scale) + around_wide;
  made.figure_high = high * u_per_metre(made.scale) + around_high + bar;
  return made;
}

// From metres to u, the figure centred in its part of the room.
Sight sight_in(const Laid& laid, const QRectF& room) {
  const sheets::Figure& figure = *laid.drawing->figure;
  Sight sight;
  sight.scale = u_per_metre(laid.scale);
  const double bar = laid.drawing->bar || laid.drawing->north ? mm(12) : 0;
  const QPointF middle = room.adjusted(0, 0, 0, -bar).marginsRemoved(laid.around).center();
  sight.origin = middle - QPointF((figure.low.x + figure.high.x) / 2 * sight.scale,
                                  -(figure.low.y + figure.high.y) / 2 * sight.scale);
  return sight;
}

// All but the flags of problems: who builds can't mend them, and their chips would cover the plan.
std::vector<const sheets::Mark*> printed_marks(const sheets::Figure& figure) {
  std::vector<const sheets::Mark*> marks;
  for (const sheets::Part& part : figure.parts) {
    const auto* mark = std::get_if<sheets::Mark>(&part);
    if (mark && mark->sign != sheets::Sign::problem && mark->sign != sheets::Sign::care) marks.push_back(mark);
  }
  return marks;
}

void paint_figure(QPainter& painter, const Laid& laid, const Sight& sight, const QRectF& room) {
  const OnPaper paper(laid.drawing->colour);
  painter.save();
  painter.scale(u_per_px, u_per_px);
  const Sight in_px{sight.scale / u_per_px, sight.origin / u_per_px};
  const QRectF clip(room.topLeft() / u_per_px, room.size() / u_per_px);
  laid.painter->paint(painter, in_px, clip);
  if (laid.drawing->plan) ui::paint_marks(painter, printed_marks(*laid.drawing->figure), in_px, clip);
  painter.restore();
}

// A line with slanting ticks, its words over the middle, turned to be read from below or from the right.
void paint_dimension(QPainter& painter, const sheets::Dimension& dimension, const Sight& sight) {
  const QPointF a = sight.to_px(dimension.from), b = sight.to_px(dimension.to);
  const QPointF way = b - a;
  const double length = std::hypot(way.x(), way.y());
  if (length < mm(1)) return;
  const QPointF ahead = way / length, left(ahead.y(), -ahead.x());
  const QPointF out = left * mm(dimension.out_mm);
  const QPointF from = a + out, to = b + out;
  painter.setPen(ink_pen(0.15));
  const double sign = dimension.out_mm < 0 ? -1 : 1;
  for (const auto& [foot, end] : {std::pair(a, from), std::pair(b, to)})
    painter.drawLine(foot + left * sign * mm(1), end + left * sign * mm(1.5));
  painter.drawLine(from - ahead * mm(1), to + ahead * mm(1));
  painter.setPen(ink_pen(0.4));
  const QPointF tick = (ahead + left) * mm(1);
  painter.drawLine(from - tick, from + tick);
  painter.drawLine(to - tick, to + tick);
  const QFont font = print_font(dim_points);
  const QString text = words(dimension.said.words);
  const double wide = QFontMetricsF(font).horizontalAdvance(text);
  double angle = std::atan2(ahead.y(), ahead.x());
  if (angle > std::numbers::pi / 2 - 1e-6) angle -= std::numbers::pi;
  if (angle < -std::numbers::pi / 2 - 1e-6) angle += std::numbers::pi;
  painter.save();
  painter.translate((from + to) / 2);
  painter.rotate(angle * 180 / std::numbers::pi);
  painter.fillRect(QRectF(-wide / 2 - mm(0.6), -line_height(font), wide + mm(1.2), line_height(font) - mm(0.3)),
                   Qt::white);
  painter.setFont(font);
  painter.setPen(Qt::black);
  painter.drawText(QPointF(-wide / 2, -mm(1)), text);
  painter.restore();
}

void paint_label(QPainter& painter, const sheets::Label& label, const Sight& sight) {
  const QFont font = print_font(dim_points, label.framed);
  const QString text = words(label.said.words);
  const QFontMetricsF metrics(font);
  const double wide = metrics.horizontalAdvance(text), high = line_height(font);
  painter.save();
  painter.translate(sight.to_px(label.at));
  painter.rotate(-label.turn * 180 / std::numbers::pi);
  const double left = label.align == sheets::Align::left ? 0 : label.align == sheets::Align::right ? -wide : -wide / 2;
  const QRectF box(left, -high / 2, wide, high);
  painter.setPen(label.framed ? ink_pen(0.25) : QPen(Qt::NoPen));
  painter.setBrush(Qt::white);
  painter.drawRect(label.framed ? box.adjusted(-mm(1), -mm(0.3), mm(1), mm(0.3)) : box);
  paint_lines(painter, {text}, font, box);
  painter.restore();
}

// Words in a column at the right, a leader from each to its place.
void paint_notes(QPainter& painter, const Laid& laid, const Sight& sight, const QRectF& room) {
  const auto& notes = laid.drawing->notes;
  if (notes.empty()) return;
  const QFont font = print_font(note_points);
  const double left = room.right() - laid.notes_wide + leader_wide, width = laid.notes_wide - leader_wide;
  const double spare = std::max(0.0, room.height() - laid.notes_high);
  const double apart = std::min(mm(6), spare / static_cast<double>(notes.size() + 1));
  double y = room.top() + std::max(0.0, (spare - apart * static_cast<double>(notes.size() - 1)) / 2);
  for (const sheets::Note& note : notes) {
    const QStringList lines = broken(words(note.said.words), font, width);
    const QPointF end(left - mm(1.5), y + line_height(font) / 2);
    const QPointF at = sight.to_px(note.at);
    painter.setPen(ink_pen(0.18));
    painter.setBrush(Qt::NoBrush);
    painter.drawPolyline(QPolygonF{at, end - QPointF(mm(5), 0), end});
    painter.setBrush(Qt::black);
    painter.setPen(Qt::NoPen);
    painter.drawEllipse(at, mm(0.6), mm(0.6));
    y += paint_lines(painter, lines, font, {left, y, width, 0}) + mm(1.6) + apart;
  }
}

void paint_bar(QPainter& painter, const Laid& laid, const QRectF& room, units::System units) {
  const ScaleBar bar = scale_bar(laid.scale, units);
  const double length = bar.metres * u_per_metre(laid.scale);
  const QFont font = print_font(note_points);
  const double y = room.bottom() - mm(4);
  double x = room.left();
  if (laid.drawing->bar) {
    painter.setPen(ink_pen(0.35));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(QRectF(x, y, length, mm(1.6)));
    for (int i = 0; i < bar.parts; i += 2)
      painter.fillRect(QRectF(x + length * i / bar.parts, y, length / bar.parts, mm(1.6)), Qt::black);
    const QString told = bar.words + QStringLiteral("   ") + scale_words(laid.scale, units);
    paint_lines(painter, {told}, font, {x + length + mm(2.5), y - mm(1.6), room.width(), 0});
    x += length + mm(2.5) + QFontMetricsF(font).horizontalAdvance(told);
  }
  if (!laid.drawing->north) return;
  painter.save();
  painter.translate(x + mm(10), y - mm(1.5));
  painter.rotate(-*laid.drawing->north * 180 / std::numbers::pi);
  painter.setPen(ink_pen(0.35));
  painter.drawLine(QPointF(0, mm(5)), QPointF(0, -mm(4)));
  painter.setBrush(Qt::black);
  painter.drawPolygon(QPolygonF{QPointF(0, -mm(5)), QPointF(-mm(1.5), -mm(1)), QPointF(mm(1.5), -mm(1))});
  painter.restore();
  paint_lines(painter, {QCoreApplication::translate("print", "N")}, print_font(note_points, true),
              {x + mm(12.5), y - mm(3), mm(6), 0});
}

void paint_drawing(QPainter& painter, const Laid& laid, QRectF room, units::System units) {
  if (laid.title_high > 0) {
    paint_lines(painter, {words(laid.drawing->title)}, print_font(title_points, true), room);
    room.setTop(room.top() + laid.title_high);
  }
  const QRectF figure_room = room.adjusted(0, 0, -laid.notes_wide, 0);
  const Sight sight = sight_in(laid, figure_room);
  paint_figure(painter, laid, sight, figure_room);
  for (const sheets::Dimension& dimension : laid.drawing->dimensions) paint_dimension(painter, dimension, sight);
  for (const sheets::Label& label : laid.drawing->labels) paint_label(painter, label, sight);
  paint_notes(painter, laid, sight, room);
  if (laid.drawing->bar || laid.drawing->north) paint_bar(painter, laid, room, units);
}

}  // namespace

Slice drawing_slice(const Drawing& drawing, const Setting& setting) {
  Slice made;
  if (!drawing.figure || drawing.figure->parts.empty()) {
    made.paint = [](QPainter&, const QRectF&) {};
    return made;
  }
  const bool rest = drawing.height_mm <= 0;
  // A drawing that takes what is left is planned for most of a page; where less is left it begins the next one.
  const double height = rest ? setting.page_height * 0.72 : std::min(mm(drawing.height_mm), setting.page_height);
  Laid plan = laid(drawing, setting.width, height, setting.units);
  plan.painter = std::make_shared<const FigurePainter>(drawing.figure);
  made.height = plan.title_high + std::max(plan.figure_high, plan.notes_high) + mm(2);
  made.scale = plan.scale;
  made.stretches = rest;
  made.paint = [plan, units = setting.units](QPainter& painter, const QRectF& room) {
    painter.save();
    paint_drawing(painter, plan, room, units);
    painter.restore();
  };
  return made;
}

}  // namespace ui
