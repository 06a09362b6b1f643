// Words, frames, lines to write on and bars.
#include <algorithm>

#include "ui/print/paper.h"
#include "ui/print/slices.h"

namespace ui {

namespace {

struct Sizes {
  double points;
  bool bold;
  double above;  // mm
  double rule;   // mm, under it
};
Sizes sizes(int level) { return level <= 1 ? Sizes{17, true, 4, 0.9} : Sizes{13, true, 3, 0.35}; }

void paint_disc(QPainter& painter, QPointF middle, const QString& number) {
  const double reach = mm(4.2);
  painter.setPen(Qt::NoPen);
  painter.setBrush(Qt::black);
  painter.drawEllipse(middle, reach, reach);
  painter.setPen(Qt::white);
  painter.setFont(print_font(15, true));
  painter.drawText(QRectF(middle.x() - reach, middle.y() - reach, 2 * reach, 2 * reach), Qt::AlignCenter, number);
}

}  // namespace

Slice heading_slice(const sheets::Heading& heading, const Setting& setting) {
  const Sizes is = sizes(heading.level);
  const QFont bold = print_font(is.points, is.bold), plain = print_font(12);
  const double indent = heading.number.empty() ? 0 : mm(12.5);
  const double right = QFontMetricsF(plain).horizontalAdvance(words(heading.right.words));
  const QStringList lines = broken(words(heading.words), bold, setting.width - indent - right - mm(4));
  Slice made;
  made.with_next = true;
  made.height = mm(is.above) + static_cast<double>(lines.size()) * line_height(bold) + mm(2.2);
  made.paint = [=](QPainter& painter, const QRectF& room) {
    const QRectF inside = room.adjusted(indent, mm(is.above), 0, 0);
    if (indent > 0)
      paint_disc(painter, {room.left() + mm(4.6), inside.top() + line_height(bold) / 2}, words(heading.number));
    paint_lines(painter, lines, bold, inside);
    paint_lines(painter, {words(heading.right.words)}, plain,
                inside.adjusted(0, line_height(bold) - line_height(plain) - mm(0.6), 0, 0), Qt::AlignRight);
    painter.setPen(ink_pen(is.rule));
    const double y = room.bottom() - mm(1.2);
    painter.drawLine(QPointF(room.left(), y), QPointF(room.right(), y));
  };
  return made;
}

// A slice a line, so that a long text goes on to the next page.
std::vector<Slice> paragraph_slices(const sheets::Paragraph& text, const Setting& setting) {
  using Kind = sheets::Paragraph::Kind;
  const QFont font = print_font(text.kind == Kind::note ? 10.5 : 12, text.kind == Kind::strong);
  const QStringList lines = broken(words(text.said.words), font, setting.width);
  std::vector<Slice> made;
  for (const QString& line : lines) {
    Slice slice;
    slice.height = line_height(font);
    slice.paint = [line, font](QPainter& painter, const QRectF& room) { paint_lines(painter, {line}, font, room); };
    made.push_back(std::move(slice));
  }
  if (made.size() > 1) made.front().with_next = made[made.size() - 2].with_next = true;
  made.back().height += mm(1.2);
  return made;
}

Slice framed_slice(const sheets::Framed& framed, const Setting& setting) {
  const QFont bold = print_font(14, true), plain = print_font(11);
  constexpr double pad = mm(3);
  const double indent = framed.caution ? mm(9) : 0;
  QStringList lines;
  for (const sheets::Said& said : framed.lines) lines += broken(words(said.words), plain, setting.width - 2 * pad);
  const double head = framed.title.empty() ? 0 : line_height(bold);
  Slice made;
  made.height = mm(2) + 2 * pad + head + static_cast<double>(lines.size()) * line_height(plain);
  made.paint = [=](QPainter& painter, const QRectF& room) {
    const QRectF box = room.adjusted(mm(0.4), mm(1), -mm(0.4), -mm(1));
    painter.setBrush(Qt::NoBrush);
    painter.setPen(ink_pen(0.8));
    painter.drawRect(box);
    const QRectF inside = box.adjusted(pad, pad, -pad, -pad);
    if (framed.caution) paint_triangle(painter, {inside.left(), inside.top() + mm(0.2), mm(6.4), mm(6.4)});
    paint_lines(painter, {words(framed.title)}, bold, inside.adjusted(indent, 0, 0, 0));
    paint_lines(painter, lines, plain, inside.adjusted(0, head, 0, 0));
  };
  return made;
}

Slice blanks_slice(const sheets::Blanks& blanks, const Setting& setting) {
  constexpr double row = mm(11);
  Slice made;
  made.height = blanks.rows * row;
  made.paint = [blanks, width = setting.width](QPainter& painter, const QRectF& room) {
    const QFont plain = print_font(10.5);
    const double cell = width / std::max<double>(1, static_cast<double>(blanks.labels.size()));
    for (int i = 0; i < blanks.rows; ++i) {
      for (std::size_t k = 0; k < blanks.labels.size(); ++k) {
        const QRectF box(room.left() + static_cast<double>(k) * cell, room.top() + i * row, cell - mm(4), row);
        const QString label = words(blanks.labels[k]);
        const double base = box.bottom() - mm(2);
        paint_lines(painter, {label}, plain, box.adjusted(0, row - mm(1.6) - line_height(plain), 0, 0));
        const double from = box.left() + QFontMetricsF(plain).horizontalAdvance(label) + mm(2);
        painter.setPen(ink_pen(0.25));
        if (from < box.right()) painter.drawLine(QPointF(from, base), QPointF(box.right(), base));
      }
    }
  };
  return made;
}

Slice squares_slice(const sheets::Squares& squares, const Setting&) {
  Slice made;
  made.stretches = squares.height_mm <= 0;
  made.height = mm(made.stretches ? 60 : squares.height_mm);
  made.paint = [step = mm(squares.step_mm)](QPainter& painter, const QRectF& room) {
    const int across = static_cast<int>(room.width() / step), down = static_cast<int>(room.height() / step);
    painter.setPen(ink_pen(0.1));
    for (int i = 0; i <= across; ++i)
      painter.drawLine(QPointF(room.left() + i * step, room.top()),
                       QPointF(room.left() + i * step, room.top() + down * step));
    for (int i = 0; i <= down; ++i)
      painter.drawLine(QPointF(room.left(), room.top() + i * step),
                       QPointF(room.left() + across * step, room.top() + i * step));
  };
  return made;
}

Slice bars_slice(const sheets::Bars& bars, const Setting&) {
  constexpr double row = mm(7);
  Slice made;
  made.height = static_cast<double>(bars.bars.size()) * row + mm(2);
  made.paint = [bars](QPainter& painter, const QRectF& room) {
    const QFont plain = print_font(10.5);
    const QFontMetricsF metrics(plain);
    double names = 0, ends = 0;
    for (const auto& bar : bars.bars) {
      names = std::max(names, metrics.horizontalAdvance(words(bar.name)));
      ends = std::max(ends, metrics.horizontalAdvance(words(bar.said.words)));
    }
    names += mm(3), ends += mm(3);
    const double full = std::max(0.0, room.width() - names - ends);
    double y = room.top();
    for (const auto& bar : bars.bars) {
      paint_lines(painter, {words(bar.name)}, plain, {room.left(), y + mm(1), names, row});
      painter.fillRect(QRectF(room.left() + names, y + mm(1.5), full * std::clamp(bar.share, 0.0, 1.0), mm(4)),
                       Qt::black);
      paint_lines(painter, {words(bar.said.words)}, plain, {room.left(), y + mm(1), room.width(), row}, Qt::AlignRight);
      y += row;
    }
  };
  return made;
}

}  // namespace ui
