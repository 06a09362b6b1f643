// The drawings of the marks, each with a casing of paper so that it is seen over any material.
#pragma once

#include <QPainter>

#include "ui/paint/figure_painter.h"

namespace ui {

// The chip of words beside a marking flag: where it stands, and its painting.
QRectF flag_chip(QPointF foot, const QString& words);
void paint_chip(QPainter& painter, const QRectF& chip, const QString& words, bool care);

void paint_sign(QPainter& painter, const sheets::Mark& mark, QPointF at);
// A text with a casing of paper, its middle at `at`, or beginning there.
enum class Stand { middle, begin };
void paint_cased(QPainter& painter, QPointF at, const QString& text, const QFont& font, const QColor& colour,
                 Stand stand = Stand::middle);

}  // namespace ui
