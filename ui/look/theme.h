// Colours, sizes and type of the window: one place, light and dark. Everything that paints asks here.
#pragma once

#include <QColor>
#include <QFont>
#include <QPalette>
#include <QString>

#include "sheets/figure.h"

class QApplication;
class QPainter;
class QIcon;

namespace ui {

// Grounds and inks of the furniture. Only the work has colour: materials, below. `chalk` is what is in hand (the tool,
// the selection, the place measured, keyboard focus) and nothing else; `flag` stops the total; `care` is a caution;
// `good` is solved. A wash is the ground behind text of that colour.
struct Theme {
  bool dark = false;
  bool on_paper = false;   // black on white, see OnPaper
  bool in_colour = false;  // on paper, with the colours of the materials
  QColor window, panel, raised, paper;
  QColor ink, ink2, ink3, rule, line;
  QColor chalk, chalk_wash, on_chalk;
  QColor flag, flag_wash, care, care_wash, good;
  QColor site_plan;
};
const Theme& theme();      // the one in use
void set_dark(bool dark);  // and tells everybody by QApplication's palette
bool system_is_dark();

// While one lives, all that paints does so for a sheet of paper: black on white, at 100 %, whatever the window's look;
// materials by their hatches alone, or in the colours that they have by day.
class OnPaper {
 public:
  explicit OnPaper(bool in_colour);
  ~OnPaper();
  OnPaper(const OnPaper&) = delete;
  OnPaper& operator=(const OnPaper&) = delete;

 private:
  Theme before_;
  double factor_before_;
};
// Pixels that the painter's device has for one px of the drawing: tiles of hatches are made as sharp as that.
double device_px(const QPainter& painter);

// A material's ground (two or more tones), its line, and the ground of its cut pieces.
struct MaterialLook {
  QColor low, high;  // tones run from one to the other
  QColor line;
  QColor cut;
};
const MaterialLook& look(sheets::Material material);

// Type in px at 100 %: 11 marks and small labels, 12 notes and working, 13 text, 16 a name, 22 window titles, 30 the
// total. All grow by one factor with the person's font size.
enum class Type { small = 11, note = 12, text = 13, name = 16, title = 22, total = 30 };
QFont font(Type type, bool bold = false);
double type_factor();                 // 1 at 13 px text
void set_type_factor(double factor);  // 1 to 1.6: font 14 pt is 1.44
int px(double at_100);                // a size of the furniture, grown by the factor

// Noto Sans Regular and Bold must be there, else text could vanish: gives the sentence to say, empty when all is well.
QString prepare(QApplication& application);

// A drawing of ours, in ink or chalk by its state, sharp at any scale: "pick", "area", "undo" ... (resources/icons).
QIcon icon(const QString& name);
// The same painted into a square of `side` px at `at`.
void paint_icon(QPainter& painter, const QString& name, QRectF square, QColor colour);

}  // namespace ui
