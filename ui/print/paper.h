// Paper, its units and its type. Everything on a page is measured in u, 1/1440 in: twenty to the point, so that every
// size of type is a whole number of them. Figures are painted in px of 1/96 in, fifteen u each.
#pragma once

#include <QFont>
#include <QFontMetricsF>
#include <QPainter>
#include <QRectF>
#include <QString>
#include <string>

namespace ui {

inline constexpr double u_per_inch = 1440;
inline constexpr double u_per_mm = u_per_inch / 25.4;
inline constexpr double u_per_point = 20;
inline constexpr double u_per_px = 15;
constexpr double mm(double millimetres) { return millimetres * u_per_mm; }
constexpr double pt(double points) { return points * u_per_point; }

enum class Paper { a4, letter };

// Upright or lying, with its margins: 13 mm all round.
struct PageSize {
  Paper paper = Paper::a4;
  bool landscape = false;
  QSizeF size() const;    // u
  QRectF inside() const;  // u, within the margins
};

// Noto Sans, unhinted: the same widths on every screen and printer.
QFont print_font(double points, bool bold = false);

QString words(const std::string& text);

// A text broken into lines of at most `width`, at spaces; a word that is too long is broken where it must be.
QStringList broken(const QString& text, const QFont& font, double width);
double line_height(const QFont& font);
// The lines one under the other from the top of `room`; gives the height taken.
double paint_lines(QPainter& painter, const QStringList& lines, const QFont& font, const QRectF& room,
                   Qt::Alignment align = Qt::AlignLeft);

// A line of so many mm, black, butt ends.
QPen ink_pen(double width_mm);

}  // namespace ui
