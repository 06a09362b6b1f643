// How the toolkit's own widgets are dressed: Fusion below, the theme's palette, and one sheet of rules made from the
// theme's colours and sizes. A button whose property "main" is true is the one main button of its window.
#pragma once

#include <QPalette>
#include <QString>

#include "ui/look/theme.h"

class QApplication;

namespace ui {

QPalette palette_of(const Theme& theme);
QString rules_of(const Theme& theme);   // sizes grown by the type factor
void dress(QApplication& application);  // all of it, for every widget there is and will be

}  // namespace ui
