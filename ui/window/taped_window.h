// The table of taped measures in a window of its own beside the plan.
#pragma once

class QWidget;

namespace ui {

class Desk;
void show_taped_window(Desk& desk, QWidget* parent);

}  // namespace ui
