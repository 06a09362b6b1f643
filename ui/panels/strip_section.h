// The order of building as one long stepped section, drawn once for all jobs of a kind.
#pragma once

#include <QPainter>
#include <QRectF>
#include <optional>

#include "ui/panels/strip_model.h"

namespace ui {

// Nine cells share the width of `room`. What is built after `upto` is dashed; none: all is built. Of what the job has
// not (a wall, a pool, pipes, kerbs, paving) nothing is drawn.
void paint_strip_section(QPainter& painter, const QRectF& room, const StripKinds& kinds,
                         std::optional<takeoff::Stage> upto);

}  // namespace ui
