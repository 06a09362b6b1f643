#include "ui/print/paper.h"

#include <algorithm>
#include <cmath>

namespace ui {

QSizeF PageSize::size() const {
  const QSizeF upright = paper == Paper::a4 ? QSizeF(mm(210), mm(297)) : QSizeF(8.5 * u_per_inch, 11 * u_per_inch);
  return landscape ? upright.transposed() : upright;
}

QRectF PageSize::inside() const {
  constexpr double margin = mm(13);
  return QRectF(QPointF(), size()).adjusted(margin, margin, -margin, -margin);
}

QFont print_font(double points, bool bold) {
  QFont made(QStringLiteral("Noto Sans"));
  made.setPixelSize(static_cast<int>(std::lround(pt(points))));
  made.setWeight(bold ? QFont::Bold : QFont::Normal);
  made.setHintingPreference(QFont::PreferNoHinting);
  return made;
}

QString words(const std::string& text) { return QString::fromStdString(text); }

namespace {

// As many letters as fit, at least one.
qsizetype fitting(const QString& word, const QFontMetricsF& metrics, double width) {
  qsizetype count = 1;
  while (count < word.size() && metrics.horizontalAdvance(word.left(count + 1)) <= width) ++count;
  return count;
}

}  // namespace

QStringList broken(const QString& text, const QFont& font, double width) {
  const QFontMetricsF metrics(font);
  QStringList lines;
  for (const QString& paragraph : text.split('\n')) {
    QString line;
    for (QString word : paragraph.split(' ', Qt::SkipEmptyParts)) {
      const QString longer = line.isEmpty() ? word : line + ' ' + word;
      if (metrics.horizontalAdvance(longer) <= width) {
        line = longer;
        continue;
      }
      if (!line.isEmpty()) lines << line;
      while (metrics.horizontalAdvance(word) > width && word.size() > 1) {
        const qsizetype count = fitting(word, metrics, width);
        lines << word.left(count);
        word.remove(0, count);
      }
      line = word;
    }
    lines << line;
  }
  return lines;
}

double line_height(const QFont& font) { return font.pixelSize() * 1.28; }

double paint_lines(QPainter& painter, const QStringList& lines, const QFont& font, const QRectF& room,
                   Qt::Alignment align) {
  const QFontMetricsF metrics(font);
  const double high = line_height(font);
  const double base = (high + metrics.ascent() - metrics.descent()) / 2;
  painter.setFont(font);
  painter.setPen(Qt::black);
  for (qsizetype i = 0; i < lines.size(); ++i) {
    const double wide = metrics.horizontalAdvance(lines[i]);
    const double x = align & Qt::AlignRight     ? room.right() - wide
                     : align & Qt::AlignHCenter ? room.center().x() - wide / 2
                                                : room.left();
    painter.drawText(QPointF(x, room.top() + static_cast<double>(i) * high + base), lines[i]);
  }
  return static_cast<double>(lines.size()) * high;
}

QPen ink_pen(double width_mm) { return QPen(Qt::black, mm(width_mm), Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin); }

}  // namespace ui
