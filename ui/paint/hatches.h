// The signs of materials, as a drafter hatches them: in px of the screen, whatever the scale of the plan. Each is a
// tile that repeats without a seam, made once for a theme and a device's px, always the same.
#pragma once

#include <QBrush>
#include <QColor>

#include "sheets/figure.h"

namespace ui {

// The ground of a material: its tone (0, 1, ... from low to high) or that of a cut piece.
QColor ground_of(sheets::Material material, int tone, bool cut = false);
QColor ground_at(sheets::Material material, double share);  // 0: the low tone, 1: the high one

bool has_sign(sheets::Material material);

// Ground and sign as one brush for a painter whose world transform is the identity but for the device's px.
// `anchor`: where the tile's corner lies, so that a hatch moves with what it fills.
QBrush hatch(sheets::Material material, const QColor& ground, double device_px, QPointF anchor);

}  // namespace ui
