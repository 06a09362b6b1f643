#include "ui/panels/strip_section.h"

#include <QPainterPath>

#include "ui/look/theme.h"
#include "ui/paint/figure_painter.h"
#include "ui/paint/lines.h"

namespace ui {

namespace {

using sheets::Line;
using sheets::Material;
using takeoff::Stage;

// Heights as shares of the room, from its top down: ground as it was, top of paving, of bedding, of base, formation.
constexpr double ground = 0.30, top = 0.34, bed = 0.46, base = 0.54, formation = 0.78;
// Along it, in cells: foot and head of the slopes of the hole.
constexpr double left_head = 1.12, left_foot = 1.42, right_foot = 8.0, right_head = 8.34;

class Section {
 public:
  Section(QPainter& painter, QRectF room, StripKinds kinds, std::optional<Stage> upto)
      : painter_(painter), room_(room), kinds_(kinds), upto_(upto) {}
  void draw() {
    soil();
    if (!kinds_.any) return lawn(0, 9);
    lawn(0, left_head);
    if (built(Stage::finish)) lawn(right_head, 9);
    fence();
    stake();
    if (kinds_.pipe) trench();
    fabric();
    base_layers();
    if (kinds_.wall) wall();
    if (kinds_.pool) pool();
    paving();
    if (kinds_.kerb) kerb();
    finish();
  }

 private:
  bool built(Stage stage) const { return !upto_ || *upto_ >= stage; }
  QPointF at(double cell, double y) const {
    return {room_.left() + cell / 9 * room_.width(), room_.top() + y * room_.height()};
  }
  QPainterPath shape(std::initializer_list<QPointF> corners, bool closed = true) const {
    QPainterPath path(*corners.begin());
    for (const QPointF& corner : corners)
      if (&corner != corners.begin()) path.lineTo(corner);
    if (closed) path.closeSubpath();
    return path;
  }
  QPainterPath box(double from, double high, double to, double low) const {
    return shape({at(from, high), at(to, high), at(to, low), at(from, low)});
  }
  void put(Stage stage, const QPainterPath& path, Material material, int tone = 0) {
    paint_material(painter_, path, material, tone, !built(stage));
  }
  void line(const QPainterPath& path, Line kind) { stroke(painter_, path, kind); }
  void ink(const QPainterPath& path, double width) {
    painter_.strokePath(path, QPen(theme().ink2, width, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin));
  }

  void soil() {
    QPainterPath dug = shape({at(0, ground), at(left_head, ground), at(left_foot, formation), at(right_foot, formation),
                              at(right_head, ground), at(9, ground), at(9, 1.1), at(0, 1.1)});
    const QPainterPath whole = box(0, ground, 9, 1.1);
    const bool open = kinds_.any && built(Stage::dig);
    painter_.save();
    painter_.setClipRect(room_);
    paint_material(painter_, open ? dug : whole, Material::soil);
    painter_.restore();
    if (!kinds_.any) return;
    // Where the ground was, or where it will be dug.
    line(open ? shape({at(left_head, ground), at(right_head, ground)}, false)
              : shape({at(left_head, ground), at(left_foot, formation), at(right_foot, formation),
                       at(right_head, ground)},
                      false),
         Line::later);
  }
  void lawn(double from, double to) {
    const double step = 5 * 9 / room_.width();
    QPainterPath blades;
    for (double cell = from + step / 2; cell < to; cell += step) {
      blades.moveTo(at(cell, ground));
      blades.lineTo(at(cell, ground) + QPointF(-1.5, -4));
      blades.moveTo(at(cell, ground));
      blades.lineTo(at(cell, ground) + QPointF(1.5, -4));
    }
    painter_.strokePath(blades, QPen(look(Material::planting).line, 1));
  }
  // The tree that stays, and the fence about it.
  void fence() {
    const QPen green(look(Material::planting).line, 1.4);
    painter_.strokePath(shape({at(0.15, ground), at(0.15, 0.1)}, false), green);
    QPainterPath crown;
    crown.addEllipse(at(0.15, 0.08), 9, 9);
    paint_material(painter_, crown, Material::planting);
    QPainterPath posts;
    for (const double cell : {0.3, 0.41, 0.52}) posts.addPath(shape({at(cell, ground), at(cell, 0.02)}, false));
    posts.addPath(shape({at(0.3, 0.08), at(0.52, 0.08)}, false));
    posts.addPath(shape({at(0.3, 0.19), at(0.52, 0.19)}, false));
    if (built(Stage::protect))
      ink(posts, 1.3);
    else
      line(posts, Line::later);
  }
  void stake() {
    if (!built(Stage::dig)) return;
    ink(shape({at(1.72, formation + 0.12), at(1.72, 0.12)}, false), 2);
    ink(shape({at(1.64, ground), at(1.80, ground)}, false), 1.6);
  }
  void trench() {
    put(Stage::under_ground, shape({at(2.26, formation), at(2.34, 1), at(2.66, 1), at(2.74, formation)}),
        Material::open_stone);
    const QPointF middle = at(2.5, 0.88);
    const double reach = 0.09 * room_.height();
    QPainterPath ring;
    ring.addEllipse(middle, reach, reach);
    if (!built(Stage::under_ground)) return line(ring, Line::later);
    painter_.fillPath(ring, theme().panel);
    painter_.strokePath(ring, QPen(look(Material::pipe).line, 2.2));
  }
  void fabric() {
    const double from = 4.12;
    const QPainterPath path = shape({at(from, formation), at(right_foot, formation)}, false);
    line(path, built(Stage::base) ? Line::geotextile : Line::later);
  }
  void base_layers() {
    const double slope = 0.12;
    const double to = right_foot - 0.03;
    if (!kinds_.pool)
      return put(Stage::base,
                 shape({at(4.1, formation - 0.01), at(4.1 + slope, base), at(to, base), at(to, formation - 0.01)}),
                 Material::dense_base);
    put(Stage::base,
        shape({at(4.1, formation - 0.01), at(4.1 + slope, base), at(5.1, base), at(5.1, formation - 0.01)}),
        Material::dense_base);
    put(Stage::base, box(5.9, base, to, formation - 0.01), Material::dense_base);
  }
  // Courses step back; the ground behind is made up again.
  void wall() {
    const double high = 0.105, foot = formation - 0.02;
    const bool there = built(Stage::wall);
    const double back = 3.62;
    const QPainterPath fill =
        shape({at(back, foot), at(3.98, foot), at(3.84, ground + 0.04), at(back + 0.06, ground + 0.04)});
    if (there) paint_material(painter_, fill, Material::made_up_ground);
    put(Stage::wall, box(3.22, foot, 3.74, formation + 0.07), Material::dense_base);
    for (int i = 0; i < 4; ++i) {
      const double front = 3.32 + 0.025 * i;
      put(Stage::wall, box(front, foot - (i + 1) * high, front + 0.3, foot - i * high), Material::block, i % 2);
    }
    put(Stage::wall, box(3.39, foot - 4 * high - 0.06, 3.77, foot - 4 * high), Material::cap);
  }
  void pool() {
    const double left = 5.16, right = 5.84, shell = 0.06, floor = 0.97;
    QPainterPath walls = shape({at(left, bed), at(left, 1.06), at(right, 1.06), at(right, bed), at(right - shell, bed),
                                at(right - shell, floor), at(left + shell, floor), at(left + shell, bed)});
    painter_.save();
    painter_.setClipRect(room_);
    const QPainterPath inner = box(left + shell, 0.5, right - shell, floor);
    painter_.fillPath(box(left, bed, right, floor), theme().panel);
    paint_material(painter_, walls, Material::concrete);
    if (built(Stage::finish)) paint_material(painter_, inner, Material::water);
    painter_.restore();
    for (const double from : {left - 0.05, right - shell - 0.03})
      put(Stage::coping, box(from, top, from + 0.14, bed), Material::coping);
  }
  // Bedding from the sixth cell on; joints are filled from the seventh.
  void paving() {
    if (!kinds_.paving) return;
    const double to = kinds_.kerb ? 7.72 : 7.78;
    put(Stage::paving, box(6.08, bed, to, base), Material::sand);
    const double unit = 0.17, joint = 0.025;
    for (int i = 0;; ++i) {
      const double from = 6.16 + i * (unit + joint);
      if (from + unit > to) break;
      put(Stage::paving, box(from, top, from + unit, bed), Material::paving, i % 2);
      if (from > 7 && built(Stage::joints))
        painter_.fillPath(box(from - joint, top + 0.01, from, bed), look(Material::paving).line);
    }
  }
  void kerb() {
    put(Stage::coping,
        shape({at(7.72, base), at(7.95, base + 0.14), at(7.95, formation - 0.02), at(7.72, formation - 0.02)}),
        Material::concrete);
    put(Stage::coping, box(7.74, top - 0.03, 7.82, formation - 0.08), Material::kerb);
  }
  void finish() {
    const double from = kinds_.kerb ? 7.95 : 7.86;
    const QPainterPath fill = shape({at(from, formation - 0.01), at(from, top + 0.02), at(right_head, ground),
                                     at(right_foot + 0.02, formation - 0.01)});
    put(Stage::finish, fill, Material::made_up_ground);
    if (!built(Stage::finish)) return;
    const QPen green(look(Material::planting).line, 1.6);
    for (const double lean : {-0.07, 0.0, 0.07}) {
      QPainterPath leaf(at(8.62, ground));
      leaf.quadTo(at(8.62 + lean / 4, ground - 0.12), at(8.62 + lean, ground - 0.22));
      painter_.strokePath(leaf, green);
    }
  }

  QPainter& painter_;
  QRectF room_;
  StripKinds kinds_;
  std::optional<Stage> upto_;
};

}  // namespace

void paint_strip_section(QPainter& painter, const QRectF& room, const StripKinds& kinds, std::optional<Stage> upto) {
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  Section(painter, room, kinds, upto).draw();
  painter.restore();
}

}  // namespace ui
