// What the crew reads and ticks.
#include <QCoreApplication>
#include <QPainterPath>
#include <algorithm>
#include <cmath>

#include "ui/print/paper.h"
#include "ui/print/slices.h"

namespace ui {

namespace {

constexpr double text_left = mm(12.5);
constexpr double tag_high = mm(7), tag_pad = mm(2.2), tag_between = mm(1.6);

QString print_word(const char* english) { return QCoreApplication::translate("print", english); }

double tag_wide(const std::string& tag) {
  return std::max(mm(9), QFontMetricsF(print_font(12, true)).horizontalAdvance(words(tag)) + 2 * tag_pad);
}

// Rows of tags that fit the width.
std::vector<std::vector<std::string>> tag_rows(const std::vector<std::string>& tags, double width) {
  std::vector<std::vector<std::string>> rows;
  double used = 0;
  for (const std::string& tag : tags) {
    const double wide = tag_wide(tag) + tag_between;
    if (rows.empty() || used + wide > width + tag_between) {
      rows.emplace_back();
      used = 0;
    }
    rows.back().push_back(tag);
    used += wide;
  }
  return rows;
}

void paint_tag_box(QPainter& painter, const QRectF& box, const std::string& tag) {
  const double cut = mm(1.6);
  const QPolygonF shape{box.topLeft(), box.topRight() - QPointF(cut, 0), box.topRight() + QPointF(0, cut),
                        box.bottomRight(), box.bottomLeft()};
  painter.setBrush(Qt::white);
  painter.setPen(ink_pen(0.4));
  painter.drawPolygon(shape);
  painter.setFont(print_font(12, true));
  painter.drawText(box, Qt::AlignCenter, words(tag));
}

}  // namespace

double tick_side() { return mm(5.6); }

void paint_tick_box(QPainter& painter, QPointF corner) {
  painter.setBrush(Qt::NoBrush);
  painter.setPen(ink_pen(0.5));
  painter.drawRect(QRectF(corner, QSizeF(tick_side(), tick_side())));
}

void paint_triangle(QPainter& painter, QRectF square) {
  painter.setBrush(Qt::NoBrush);
  painter.setPen(ink_pen(0.4));
  const QRectF s =
      square.adjusted(square.width() * 0.04, square.height() * 0.06, -square.width() * 0.04, -square.height() * 0.08);
  painter.drawPolygon(QPolygonF{QPointF(s.center().x(), s.top()), s.bottomRight(), s.bottomLeft()});
  painter.setPen(ink_pen(0.55));
  const double x = s.center().x();
  painter.drawLine(QPointF(x, s.top() + s.height() * 0.38), QPointF(x, s.top() + s.height() * 0.68));
  painter.drawLine(QPointF(x, s.top() + s.height() * 0.76), QPointF(x, s.top() + s.height() * 0.88));
}

void paint_eye(QPainter& painter, QRectF s) {
  QPainterPath lids(QPointF(s.left(), s.top() + s.height() * 0.42));
  lids.quadTo(QPointF(s.center().x(), s.top() - s.height() * 0.12), QPointF(s.right(), s.top() + s.height() * 0.42));
  lids.quadTo(QPointF(s.center().x(), s.top() + s.height() * 0.96), QPointF(s.left(), s.top() + s.height() * 0.42));
  painter.setBrush(Qt::NoBrush);
  painter.setPen(ink_pen(0.4));
  painter.drawPath(lids);
  painter.setBrush(Qt::black);
  painter.setPen(Qt::NoPen);
  painter.drawEllipse(QPointF(s.center().x(), s.top() + s.height() * 0.42), s.width() * 0.13, s.width() * 0.13);
  painter.setPen(ink_pen(0.6));
  painter.drawLine(QPointF(s.left(), s.bottom()), QPointF(s.right(), s.bottom()));
}

QSizeF tags_size(const std::vector<std::string>& tags, double width) {
  double wide = 0;
  const auto rows = tag_rows(tags, width);
  for (const auto& row : rows) {
    double used = -tag_between;
    for (const std::string& tag : row) used += tag_wide(tag) + tag_between;
    wide = std::max(wide, used);
  }
  const auto count = static_cast<double>(rows.size());
  return {wide, rows.empty() ? 0 : count * tag_high + (count - 1) * tag_between};
}

void paint_tags(QPainter& painter, const std::vector<std::string>& tags, const QRectF& room) {
  const auto rows = tag_rows(tags, room.width());
  double y = room.center().y() - tags_size(tags, room.width()).height() / 2;
  for (const auto& row : rows) {
    double x = room.right();
    for (auto tag = row.rbegin(); tag != row.rend(); ++tag) {
      const double wide = tag_wide(*tag);
      x -= wide;
      paint_tag_box(painter, {x, y, wide, tag_high}, *tag);
      x -= tag_between;
    }
    y += tag_high + tag_between;
  }
}

// From the left: box, name over its detail, how much at two thirds, tags at the right.
Slice bring_slice(const sheets::Bring& bring, const Setting& setting) {
  const QFont name = print_font(12, true), detail = print_font(10.5), much = print_font(16, true);
  const double tags_wide = setting.width * 0.2;
  const double much_right = setting.width * 0.66, unit_left = much_right + mm(2);
  const double number = QFontMetricsF(much).horizontalAdvance(words(bring.quantity.words));
  const double text_wide = much_right - text_left - std::max(number, mm(14)) - mm(3);
  const QStringList names = broken(words(bring.name), name, text_wide);
  const QStringList details =
      bring.detail.words.empty() ? QStringList() : broken(words(bring.detail.words), detail, text_wide);
  const double unit_wide = setting.width - tags_wide - unit_left;
  const QStringList unit = broken(words(bring.unit), print_font(12), unit_wide);
  const double text_high =
      static_cast<double>(names.size()) * line_height(name) + static_cast<double>(details.size()) * line_height(detail);
  Slice made;
  made.height = std::max({text_high, tags_size(bring.tags, tags_wide).height(), mm(8),
                          static_cast<double>(unit.size()) * line_height(print_font(12))}) +
                mm(3);
  made.tags = bring.tags;
  made.paint = [=](QPainter& painter, const QRectF& room) {
    const double middle = room.center().y();
    paint_tick_box(painter, {room.left(), middle - tick_side() / 2});
    QRectF text(room.left() + text_left, middle - text_high / 2, text_wide, text_high);
    text.setTop(text.top() + paint_lines(painter, names, name, text));
    paint_lines(painter, details, detail, text);
    const double quantity_top = middle - line_height(much) / 2;
    paint_lines(painter, {words(bring.quantity.words)}, much, {room.left(), quantity_top, much_right, 0},
                Qt::AlignRight);
    const double units_high = static_cast<double>(unit.size()) * line_height(print_font(12));
    paint_lines(painter, unit, print_font(12),
                {room.left() + unit_left, middle - units_high / 2 + mm(0.5), unit_wide, 0});
    paint_tags(painter, bring.tags, {room.right() - tags_wide, room.top(), tags_wide, room.height()});
    painter.setPen(ink_pen(0.18));
    painter.drawLine(QPointF(room.left() + text_left, room.bottom()), room.bottomRight());
  };
  return made;
}

Slice hold_slice(const sheets::Hold& hold, const Setting& setting) {
  const QFont name = print_font(12, true), plain = print_font(10.5);
  const double sign_wide = std::max(mm(72), setting.width * 0.38);
  const double text_wide = setting.width - text_left - sign_wide - mm(4);
  const QStringList names = broken(words(hold.look_at), name, text_wide);
  QStringList told;
  for (const std::string& one : {hold.limit, hold.by})
    if (!one.empty()) told << words(one);
  const QStringList limits =
      told.isEmpty() ? QStringList() : broken(told.join(QStringLiteral(" · ")), plain, text_wide);
  const double text_high =
      static_cast<double>(names.size()) * line_height(name) + static_cast<double>(limits.size()) * line_height(plain);
  Slice made;
  made.height = std::max(text_high, mm(8)) + mm(4.5);
  made.paint = [=](QPainter& painter, const QRectF& room) {
    const QRectF box = room.adjusted(mm(0.35), mm(1), -mm(0.35), -mm(0.5));
    const double middle = box.center().y();
    painter.setBrush(Qt::NoBrush);
    painter.setPen(ink_pen(0.7));
    painter.drawRect(box);
    paint_eye(painter, {box.left() + mm(2), middle - mm(2.6), mm(6), mm(5.2)});
    QRectF text(room.left() + text_left, middle - text_high / 2, text_wide, text_high);
    text.setTop(text.top() + paint_lines(painter, names, name, text));
    paint_lines(painter, limits, plain, text);
    const double left = box.right() - sign_wide;
    paint_tick_box(painter, {left, middle - tick_side() / 2});
    const bool looked = !hold.who.empty();
    if (looked) {
      painter.setPen(ink_pen(0.7));
      painter.drawPolyline(QPolygonF{QPointF(left + mm(1), middle), QPointF(left + mm(2.4), middle + mm(1.8)),
                                     QPointF(left + mm(4.8), middle - mm(2))});
    }
    const QFontMetricsF metrics(plain);
    const double base = middle - line_height(plain) / 2;
    const QString by = print_word(QT_TRANSLATE_NOOP("print", "looked at by")),
                  on = print_word(QT_TRANSLATE_NOOP("print", "on"));
    const double from = left + tick_side() + mm(2), on_left = box.right() - mm(26);
    paint_lines(painter, {looked ? by + ' ' + words(hold.who) : by}, plain, {from, base, on_left - from, 0});
    paint_lines(painter, {looked ? on + ' ' + words(hold.when) : on}, plain, {on_left, base, mm(26), 0});
    if (looked) return;
    painter.setPen(ink_pen(0.25));
    const double under = base + line_height(plain) * 0.92;
    painter.drawLine(QPointF(from + metrics.horizontalAdvance(by) + mm(1.5), under), QPointF(on_left - mm(2), under));
    painter.drawLine(QPointF(on_left + metrics.horizontalAdvance(on) + mm(1.5), under),
                     QPointF(box.right() - mm(2), under));
  };
  return made;
}

Slice caution_slice(const sheets::Caution& caution, const Setting& setting) {
  const QFont plain = print_font(12);
  const QStringList lines = broken(words(caution.words), plain, setting.width - text_left);
  Slice made;
  made.height = std::max(static_cast<double>(lines.size()) * line_height(plain), mm(6)) + mm(1.5);
  made.paint = [lines, plain](QPainter& painter, const QRectF& room) {
    paint_triangle(painter, {room.left() + mm(2), room.top() + mm(0.4), mm(5.6), mm(5.4)});
    paint_lines(painter, lines, plain, room.adjusted(text_left, mm(0.4), 0, 0));
  };
  return made;
}

}  // namespace ui
