#include "ui/paint/marks.h"

#include <QFontMetricsF>
#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

#include "ui/look/theme.h"
#include "ui/paint/signs.h"

namespace ui {

namespace {

using sheets::Mark;
using sheets::Sign;

// Who may stay where two want one place: the least number.
int rank(Sign sign) {
  switch (sign) {
    case Sign::problem: return 0;
    case Sign::care: return 1;
    case Sign::start_point:
    case Sign::section: return 2;
    case Sign::tag: return 3;
    case Sign::name: return 5;
    case Sign::level: return 6;
    default: return 4;
  }
}

bool moves(Sign sign) { return sign == Sign::tag; }
bool thins(Sign sign) { return sign == Sign::level || sign == Sign::name || sign == Sign::junction; }
// Signs that are part of the drawing stand where they stand, however near to each other.
bool stays(Sign sign) { return !moves(sign) && !thins(sign); }

bool is_free(const std::vector<Placed>& taken, const QRectF& room) {
  return std::ranges::none_of(taken, [&](const Placed& placed) {
    const bool drawn = placed.mark->sign == Sign::weep || placed.mark->sign == Sign::wall_step;
    return !drawn && (placed.room.intersects(room) || placed.chip.intersects(room));
  });
}

bool is_flag(Sign sign) { return sign == Sign::problem || sign == Sign::care; }

// Right of the stake, left of it, or one row down.
QRectF chip_room(const std::vector<Placed>& taken, const Mark& mark, QPointF at) {
  const QRectF right = flag_chip(at, QString::fromStdString(mark.text));
  const double back = right.width() + 2 * (right.left() - at.x());
  for (const QPointF& by :
       {QPointF(0, 0), QPointF(-back, 0), QPointF(0, right.height() + 2), QPointF(-back, right.height() + 2)})
    if (is_free(taken, right.translated(by))) return right.translated(by);
  return {};
}

// The nearest free place on rings about its own; its own where all are taken.
QPointF nudged(const std::vector<Placed>& taken, const Mark& mark, QPointF at) {
  for (int ring = 0; ring <= 8; ++ring) {
    const int places = ring == 0 ? 1 : 8;
    for (int k = 0; k < places; ++k) {
      const double angle = k * std::numbers::pi / 4, reach = ring * px(10);
      const QPointF there = at + reach * QPointF(std::cos(angle), -std::sin(angle));
      if (is_free(taken, room_of(mark, there))) return there;
    }
  }
  return at;
}

}  // namespace

QRectF room_of(const Mark& mark, QPointF at) {
  const auto text_width = [&](Type type, bool bold) {
    return QFontMetricsF(font(type, bold)).horizontalAdvance(QString::fromStdString(mark.text));
  };
  const double high = px(16);
  const auto about = [&](double wide, double tall) { return QRectF(at.x() - wide / 2, at.y() - tall / 2, wide, tall); };
  switch (mark.sign) {
    case Sign::tag: return about(text_width(Type::small, true) + px(16), px(20));
    case Sign::name: return about(text_width(Type::note, false) + px(6), high);
    case Sign::level: return {at.x() - px(6), at.y() - px(8), text_width(Type::small, false) + px(16), high};
    case Sign::problem:
    case Sign::care: return QRectF(at.x() - px(3), at.y() - px(24), px(18), px(26));
    case Sign::weep:
    case Sign::wall_step: return about(px(8), px(8));
    default: return about(px(20), px(20));
  }
}

std::vector<Placed> place_marks(const std::vector<const Mark*>& marks, const Sight& sight, const QRectF& clip) {
  std::vector<const Mark*> order(marks);
  std::ranges::stable_sort(order, {}, [](const Mark* mark) { return rank(mark->sign); });
  const QRectF seen = clip.adjusted(-60, -60, 60, 60);
  std::vector<Placed> placed;
  for (const Mark* mark : order) {
    QPointF at = sight.to_px(mark->at);
    if (!seen.contains(at)) continue;
    if (moves(mark->sign)) at = nudged(placed, *mark, at);
    const QRectF room = room_of(*mark, at);
    if (!stays(mark->sign) && !moves(mark->sign) && !is_free(placed, room)) continue;
    const QRectF chip = is_flag(mark->sign) && !mark->text.empty() ? chip_room(placed, *mark, at) : QRectF();
    placed.push_back({mark, at, room, chip});
  }
  return placed;
}

void paint_marks(QPainter& painter, const std::vector<const Mark*>& marks, const Sight& sight, const QRectF& clip) {
  const std::vector<Placed> placed = place_marks(marks, sight, clip);
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  // The most important last, over all others.
  for (auto it = placed.rbegin(); it != placed.rend(); ++it) {
    if (!is_flag(it->mark->sign)) {
      paint_sign(painter, *it->mark, it->at);
      continue;
    }
    const bool care = it->mark->sign == Sign::care;
    paint_flag(painter, it->at, {}, care);
    if (!it->chip.isEmpty()) paint_chip(painter, it->chip, QString::fromStdString(it->mark->text), care);
  }
  painter.restore();
}

}  // namespace ui
