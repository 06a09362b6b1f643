// A section to scale: its figure, its title and its scale bar.
#pragma once

#include <QPainter>
#include <QString>
#include <vector>

#include "sheets/section_figure.h"
#include "ui/paint/figure_painter.h"

namespace ui {

// The largest scale at which the whole figure stands in `room` with a little air about it.
Sight sight_of_section(const sheets::Section& section, const QRectF& room);

// Paints into `room` and gives where the leaders begin, in px, in their order. `bar`: the scale bar's length in words.
std::vector<QPointF> paint_section(QPainter& painter, const sheets::Section& section, const FigurePainter& figure,
                                   const QRectF& room, const QString& bar, const QString& title = "A–A");

}  // namespace ui
