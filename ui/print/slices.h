// A sheet's blocks cut into slices, each as high as it is and never parted: what pages are filled with.
#pragma once

#include <QPainter>
#include <QRectF>
#include <functional>
#include <memory>
#include <optional>
#include <vector>

#include "sheets/sheet.h"
#include "units/read_length.h"

namespace ui {

struct Slice {
  double height = 0;                                    // u
  std::function<void(QPainter&, const QRectF&)> paint;  // into a room of that height
  bool with_next = false;                               // on one page with what follows
  bool stretches = false;                               // takes what is left of the page
  bool new_page = false;                                // what follows begins a page
  std::shared_ptr<const Slice> head = nullptr;          // painted again where a page begins with this slice
  std::optional<takeoff::Stage> stage = std::nullopt;
  int scale = 0;                       // of its drawing, 1 : scale
  std::vector<std::string> tags = {};  // that it names: the key plan of its page shows these
};

struct Setting {
  double width = 0;        // u
  double page_height = 0;  // what a page holds at most, u
  units::System units = units::System::us;
};

std::vector<Slice> slices(const sheets::Sheet& sheet, const Setting& setting);

// One block; the makers of each kind stand in the files named.
std::vector<Slice> slices_of(const sheets::Block& block, const Setting& setting);
std::vector<Slice> table_slices(const sheets::Table& table, const Setting& setting);         // table_slices.cpp
Slice drawing_slice(const sheets::Drawing& drawing, const Setting& setting);                 // drawing_slice.cpp
Slice bring_slice(const sheets::Bring& bring, const Setting& setting);                       // crew_slices.cpp
Slice hold_slice(const sheets::Hold& hold, const Setting& setting);                          // crew_slices.cpp
Slice caution_slice(const sheets::Caution& caution, const Setting& setting);                 // crew_slices.cpp
Slice heading_slice(const sheets::Heading& heading, const Setting& setting);                 // text_slices.cpp
std::vector<Slice> paragraph_slices(const sheets::Paragraph& text, const Setting& setting);  // text_slices.cpp
Slice framed_slice(const sheets::Framed& framed, const Setting& setting);                    // text_slices.cpp
Slice blanks_slice(const sheets::Blanks& blanks, const Setting& setting);                    // text_slices.cpp
Slice squares_slice(const sheets::Squares& squares, const Setting& setting);                 // text_slices.cpp
Slice bars_slice(const sheets::Bars& bars, const Setting& setting);                          // text_slices.cpp

// A box to tick; the triangle of a caution; the eye over the ground line.
void paint_tick_box(QPainter& painter, QPointF corner);
double tick_side();
void paint_triangle(QPainter& painter, QRectF square);
void paint_eye(QPainter& painter, QRectF square);
// Cut-corner tags one after the other, in rows of at most `width`; `at_right`: rows end at the right.
QSizeF tags_size(const std::vector<std::string>& tags, double width);
void paint_tags(QPainter& painter, const std::vector<std::string>& tags, const QRectF& room);

}  // namespace ui
