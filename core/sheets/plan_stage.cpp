#include "sheets/plan_parts.h"

namespace sheets {

void draw_ground(Plan&) {}

}  // namespace sheets
