#include "ui/paint/signs.h"

#include <QFontMetricsF>
#include <QPainterPath>
#include <QPixmapCache>
#include <cmath>
#include <numbers>

#include "ui/look/theme.h"

namespace ui {

namespace {

using sheets::Mark;
using sheets::Sign;

// A little frame at the mark: x along its turn, y to the right of it, in px of the furniture.
class Frame {
 public:
  Frame(QPointF at, double turn) : at_(at), c_(std::cos(turn)), s_(std::sin(turn)) {}
  QPointF operator()(double ahead, double right) const {
    const double x = ahead * type_factor(), y = right * type_factor();
    return at_ + QPointF(c_ * x + s_ * y, -s_ * x + c_ * y);
  }

 private:
  QPointF at_;
  double c_;
  double s_;
};

QPainterPath polyline(std::initializer_list<QPointF> points, bool closed = false) {
  QPainterPath path(*points.begin());
  for (const QPointF& point : points)
    if (&point != points.begin()) path.lineTo(point);
  if (closed) path.closeSubpath();
  return path;
}

void cased(QPainter& painter, const QPainterPath& path, const QColor& colour, double width, bool solid = false) {
  const double w = width * type_factor();
  painter.setBrush(Qt::NoBrush);
  painter.strokePath(path, QPen(theme().paper, w + 2, Qt::SolidLine, Qt::SquareCap, Qt::MiterJoin));
  if (solid) painter.fillPath(path, colour);
  painter.strokePath(path, QPen(colour, w, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin));
}

void arrow(QPainter& painter, QPointF from, QPointF to, const QColor& colour) {
  const QPointF way = to - from;
  const double length = std::hypot(way.x(), way.y());
  if (length <= 0) return;
  const QPointF ahead = way / length, side(-ahead.y(), ahead.x());
  const double head = 9 * type_factor();
  cased(painter, polyline({from, to - 0.6 * head * ahead}), colour, 1.5);
  cased(painter, polyline({to, to - head * ahead + 0.38 * head * side, to - head * ahead - 0.38 * head * side}, true),
        colour, 0.5, true);
}

void level(QPainter& painter, const Mark& mark, QPointF at) {
  const Frame f(at, mark.turn);
  QPainterPath cross = polyline({f(-4.5, 0), f(4.5, 0)});
  cross.addPath(polyline({f(0, -4.5), f(0, 4.5)}));
  cased(painter, cross, theme().ink, 1.3);
  paint_cased(painter, at + QPointF(px(7), 0), QString::fromStdString(mark.text), font(Type::small), theme().ink,
              Stand::begin);
}

void fall(QPainter& painter, const Mark& mark, QPointF at) {
  const Frame f(at, mark.turn);
  arrow(painter, f(-24, 0), f(24, 0), theme().ink);
  paint_cased(painter, f(-2, std::cos(mark.turn) >= 0 ? -12 : 12), QString::fromStdString(mark.text),
              font(Type::small, true), theme().ink);
}

void start_point(QPainter& painter, const Mark& mark, QPointF at) {
  const QColor colour = theme().ink;
  const Frame f(at, mark.turn);
  arrow(painter, f(10, 0), f(38, 0), colour);
  QPainterPath ring;
  ring.addEllipse(at, px(9), px(9));
  QPainterPath cross = polyline({f(-13, 0), f(13, 0)});
  cross.addPath(polyline({f(0, -13), f(0, 13)}));
  cased(painter, ring, colour, 1.5);
  cased(painter, cross, colour, 1.2);
}

void section_end(QPainter& painter, const Mark& mark, QPointF at) {
  const Frame f(at, mark.turn);
  cased(painter, polyline({f(2, -5), f(10, 0), f(2, 5)}, true), theme().ink, 0.5, true);
  paint_cased(painter, f(-6, 0), QString::fromStdString(mark.text), font(Type::small, true), theme().ink);
}

void junction(QPainter& painter, const Mark& mark, QPointF at) {
  QPainterPath ring;
  ring.addEllipse(at, px(8), px(8));
  painter.fillPath(ring, theme().paper);
  cased(painter, ring, theme().ink, 1);
  paint_cased(painter, at, QString::fromStdString(mark.text), font(Type::small, true), theme().ink);
}

void tree(QPainter& painter, QPointF at) {
  constexpr int lobes = 11;
  const double reach = px(17);
  const auto point = [&](double k, double share) {
    const double angle = k * 2 * std::numbers::pi / lobes;
    return at + share * reach * QPointF(std::cos(angle), std::sin(angle));
  };
  QPainterPath crown(point(0, 0.88));
  for (int k = 0; k < lobes; ++k) crown.quadTo(point(k + 0.5, 1.25), point(k + 1, 0.88));
  const MaterialLook& leaf = look(sheets::Material::planting);
  painter.fillPath(crown, leaf.low);
  painter.strokePath(crown, QPen(leaf.line, 1.2));
  for (int k = 0; k < lobes; k += 2) painter.strokePath(polyline({point(k, 0.2), point(k, 0.55)}), QPen(leaf.line, 1));
  QPainterPath stem;
  stem.addEllipse(at, 2, 2);
  painter.fillPath(stem, leaf.line);
}

void light_point(QPainter& painter, QPointF at) {
  const Frame f(at, 0);
  QPainterPath rays;
  for (int k = 0; k < 8; ++k) {
    const Frame ray(at, k * std::numbers::pi / 4);
    rays.addPath(polyline({ray(5, 0), ray(8, 0)}));
  }
  cased(painter, rays, theme().ink, 1.2);
  QPainterPath ring;
  ring.addEllipse(f(0, 0), px(4), px(4));
  cased(painter, ring, theme().ink, 1.2);
}

void inlet(QPainter& painter, QPointF at) {
  const Frame f(at, 0);
  QPainterPath grate = polyline({f(-6, -6), f(6, -6), f(6, 6), f(-6, 6)}, true);
  painter.fillPath(grate, theme().paper);
  for (const double x : {-3.0, 0.0, 3.0}) grate.addPath(polyline({f(x, -6), f(x, 6)}));
  cased(painter, grate, look(sheets::Material::pipe).line, 1.2);
}

void plain_point(QPainter& painter, const Mark& mark, QPointF at) {
  QPainterPath dot;
  dot.addEllipse(at, px(3.5), px(3.5));
  cased(painter, dot, theme().ink, 1, true);
  if (mark.text.empty()) return;
  paint_cased(painter, at + QPointF(px(8), 0), QString::fromStdString(mark.text), font(Type::small), theme().ink2,
              Stand::begin);
}

}  // namespace

namespace {

// Letters with their casing are costly to outline: each text is made once.
QPixmap cased_text(const QString& text, const QFont& font, const QColor& colour, double device_px) {
  const QString key =
      QStringLiteral("cased %1 %2 %3 %4 %5").arg(text, font.key(), colour.name(), theme().paper.name()).arg(device_px);
  QPixmap made;
  if (QPixmapCache::find(key, &made)) return made;
  const QFontMetricsF metrics(font);
  const QSizeF size(metrics.horizontalAdvance(text) + 6, metrics.height() + 6);
  made = QPixmap((size * device_px).toSize());
  made.setDevicePixelRatio(device_px);
  made.fill(Qt::transparent);
  QPainter painter(&made);
  painter.setRenderHint(QPainter::Antialiasing);
  const QPointF base(3, 3 + metrics.ascent());
  QPainterPath letters;
  letters.addText(base, font, text);
  painter.strokePath(letters, QPen(theme().paper, 3, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
  painter.setFont(font);
  painter.setPen(colour);
  painter.drawText(base, text);
  painter.end();
  QPixmapCache::insert(key, made);
  return made;
}

}  // namespace

// On paper text stays text.
static void print_cased(QPainter& painter, QPointF at, const QString& text, const QFont& font, const QColor& colour,
                        Stand stand) {
  const QFontMetricsF metrics(font);
  const double wide = metrics.horizontalAdvance(text);
  const QPointF base(stand == Stand::middle ? at.x() - wide / 2 : at.x(),
                     at.y() + (metrics.ascent() - metrics.descent()) / 2);
  QPainterPath letters;
  letters.addText(base, font, text);
  painter.strokePath(letters, QPen(theme().paper, 3, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
  painter.setFont(font);
  painter.setPen(colour);
  painter.drawText(base, text);
}

void paint_cased(QPainter& painter, QPointF at, const QString& text, const QFont& font, const QColor& colour,
                 Stand stand) {
  if (theme().on_paper) return print_cased(painter, at, text, font, colour, stand);
  const double ratio = device_px(painter);
  const QPixmap made = cased_text(text, font, colour, ratio);
  const QSizeF size = made.deviceIndependentSize();
  const QPointF corner(stand == Stand::middle ? at.x() - size.width() / 2 : at.x() - 3, at.y() - size.height() / 2);
  painter.drawPixmap(QPointF(std::round(corner.x() * ratio) / ratio, std::round(corner.y() * ratio) / ratio), made);
}

void paint_sign(QPainter& painter, const Mark& mark, QPointF at) {
  const Frame f(at, mark.turn);
  const QString text = QString::fromStdString(mark.text);
  const QColor pipe = look(sheets::Material::pipe).line;
  switch (mark.sign) {
    case Sign::tag: paint_tag(painter, at, text, false); return;
    case Sign::name: return paint_cased(painter, at, text, font(Type::note), theme().ink);
    case Sign::level: return level(painter, mark, at);
    case Sign::fall: return fall(painter, mark, at);
    case Sign::weep: return cased(painter, polyline({f(0, 0), f(8, -4.5), f(8, 4.5)}, true), pipe, 1.2);
    case Sign::wall_step: return cased(painter, polyline({f(0, -9), f(0, 9)}), theme().ink, 2.5);
    case Sign::outlet: return cased(painter, polyline({f(11, 0), f(0, -6), f(0, 6)}, true), pipe, 1.5);
    case Sign::problem: return paint_flag(painter, at, text, false);
    case Sign::care: return paint_flag(painter, at, text, true);
    case Sign::start_point: return start_point(painter, mark, at);
    case Sign::junction: return junction(painter, mark, at);
    case Sign::section: return section_end(painter, mark, at);
    case Sign::tree: return tree(painter, at);
    case Sign::light_point: return light_point(painter, at);
    case Sign::inlet: return inlet(painter, at);
    case Sign::plain_point: return plain_point(painter, mark, at);
  }
}

QRectF paint_tag(QPainter& painter, QPointF at, const QString& text, bool in_hand) {
  const Theme& t = theme();
  const QFont letters = font(Type::small, true);
  const double wide = QFontMetricsF(letters).horizontalAdvance(text) + px(12), high = px(17), cut = px(5);
  const QRectF box(std::round(at.x() - wide / 2) + 0.5, std::round(at.y() - high / 2) + 0.5, std::round(wide), high);
  const QPainterPath tag = polyline({box.topLeft(), box.topRight() - QPointF(cut, 0), box.topRight() + QPointF(0, cut),
                                     box.bottomRight(), box.bottomLeft()},
                                    true);
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  painter.strokePath(tag, QPen(t.paper, 3.4, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin));
  painter.fillPath(tag, in_hand ? t.chalk : t.raised);
  painter.strokePath(tag, QPen(in_hand ? t.chalk : t.ink, 1.2, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin));
  painter.setPen(in_hand ? t.on_chalk : t.ink);
  painter.setFont(letters);
  painter.drawText(box, Qt::AlignCenter, text);
  painter.restore();
  return box;
}

QRectF flag_chip(QPointF foot, const QString& words) {
  const double wide = std::ceil(QFontMetricsF(font(Type::small, true)).horizontalAdvance(words)) + px(12);
  return {std::round(foot.x() + px(6)) + 0.5, std::round(foot.y() - px(11)) + 0.5, wide, px(17) * 1.0};
}

void paint_chip(QPainter& painter, const QRectF& chip, const QString& words, bool care) {
  const Theme& t = theme();
  painter.setPen(QPen(care ? t.care : t.flag, 1));
  painter.setBrush(care ? t.care_wash : t.flag_wash);
  painter.drawRoundedRect(chip, 2, 2);
  painter.setFont(font(Type::small, true));
  painter.drawText(chip, Qt::AlignCenter, words);
}

void paint_flag(QPainter& painter, QPointF foot, const QString& words, bool care) {
  const Theme& t = theme();
  const QColor colour = care ? t.care : t.flag;
  const Frame f(foot, 0);
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  cased(painter, polyline({f(0, 0), f(0, -23)}), t.ink, 1.5);
  cased(painter, polyline({f(0.5, -23), f(14, -18), f(0.5, -13)}, true), colour, 0.6, true);
  if (!words.isEmpty()) paint_chip(painter, flag_chip(foot, words), words, care);
  painter.restore();
}

}  // namespace ui
