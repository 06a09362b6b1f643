// Marks that stand over the plan: they keep their size in px, have a casing of paper, and get out of each other's way.
#pragma once

#include <QPainter>
#include <QRectF>
#include <vector>

#include "ui/paint/figure_painter.h"

namespace ui {

// A mark where it will stand, in px. Nothing else may stand on `room`.
struct Placed {
  const sheets::Mark* mark = nullptr;
  QPointF at;
  QRectF room;
  QRectF chip;  // of a flag's words; empty where there is no room for them
};

// Flags keep their place; their words are left out where they would cover others', what stops the total first. Tags
// step aside for flags and for each other; names and levels are left out where they would cover anything. Nearer by,
// all have room.
std::vector<Placed> place_marks(const std::vector<const sheets::Mark*>& marks, const Sight& sight, const QRectF& clip);
void paint_marks(QPainter& painter, const std::vector<const sheets::Mark*>& marks, const Sight& sight,
                 const QRectF& clip);
// How much room a mark takes about `at`.
QRectF room_of(const sheets::Mark& mark, QPointF at);

}  // namespace ui
