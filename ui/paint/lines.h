// The kinds of line of a figure, each with its own weight and dash, so that none is told by colour alone.
#pragma once

#include <QPainter>
#include <QPainterPath>

#include "sheets/figure.h"

namespace ui {

// A cosmetic pen; `of` gives the colour where a line is the edge of a material.
QPen pen_of(sheets::Line line, sheets::Material of = sheets::Material::none);
// Strokes a path in px, with what the kind of line adds: light dashes along the house, slope marks of an open dig.
void stroke(QPainter& painter, const QPainterPath& path, sheets::Line line,
            sheets::Material of = sheets::Material::none);

}  // namespace ui
