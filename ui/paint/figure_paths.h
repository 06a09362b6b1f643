// Contours of figures as paths to fill and stroke.
#pragma once

#include <QPainterPath>
#include <QTransform>
#include <span>

#include "ui/paint/figure_painter.h"

namespace ui {

// In metres, y up; arcs stay arcs, so that they are round at any scale. Several contours fill even-odd.
QPainterPath path_in_metres(const sheets::Contour& contour);
QPainterPath path_in_metres(std::span<const sheets::Contour> contours);
QTransform to_px(const Sight& sight);

}  // namespace ui
