#include "ui/panels/flat_button.h"

#include <QEvent>
#include <QFontMetrics>
#include <QKeyEvent>
#include <QPainter>
#include <algorithm>

#include "ui/look/theme.h"

namespace ui {

namespace {

constexpr int height_at_100 = 28;
constexpr int ring_px = 2;

void paint_ring(QPainter& painter, const QRect& around) {
  painter.setPen(QPen(theme().chalk, ring_px));
  painter.setBrush(Qt::NoBrush);
  painter.drawRect(around.adjusted(1, 1, -1, -1));
}

}  // namespace

FlatButton::FlatButton(Form form, const QString& text, QWidget* parent) : QAbstractButton(parent), form_(form) {
  setText(text);
  setFocusPolicy(Qt::StrongFocus);
  setCursor(form == Form::link ? Qt::PointingHandCursor : Qt::ArrowCursor);
  setAttribute(Qt::WA_Hover);
  setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
  setCheckable(form == Form::tab || form == Form::segment);
}

void FlatButton::set_picture(const QString& name) {
  picture_ = name;
  updateGeometry();
  update();
}

void FlatButton::set_count(const QString& count) {
  if (count == count_) return;
  count_ = count;
  updateGeometry();
  update();
}

void FlatButton::set_count_grave(bool grave) {
  grave_ = grave;
  update();
}

QFont FlatButton::font_now(bool chosen) const {
  return ui::font(form_ == Form::segment ? Type::note : Type::text, chosen && form_ != Form::action);
}

int FlatButton::padding() const {
  if (form_ == Form::link || form_ == Form::tab) return px(2);
  return form_ == Form::quiet ? 0 : px(10);
}

QSize FlatButton::sizeHint() const {
  if (form_ == Form::quiet) return {px(height_at_100), px(height_at_100)};
  const QFontMetrics metrics(font_now(true));
  int width = metrics.horizontalAdvance(text()) + 2 * padding();
  if (!picture_.isEmpty()) width += px(20) + px(6);
  if (!count_.isEmpty()) width += px(6) + metrics.horizontalAdvance(count_);
  const int high = form_ == Form::link ? std::max(px(24), metrics.height()) : px(height_at_100);
  return {width, high};
}

QSize FlatButton::minimumSizeHint() const { return sizeHint(); }

QColor FlatButton::ink_now() const {
  const Theme& look = theme();
  if (!isEnabled()) return look.rule;
  if (form_ == Form::link) return look.chalk;
  if (form_ == Form::segment && isChecked()) return look.panel;
  if (form_ == Form::tab && !isChecked()) return look.ink2;
  return look.ink;
}

void FlatButton::paint_ground(QPainter& painter) const {
  const Theme& look = theme();
  const QRect all = rect();
  if (form_ == Form::segment || form_ == Form::action) {
    QColor ground = isDown() ? look.line : look.raised;
    if (form_ == Form::segment && isChecked()) ground = look.ink;
    if (!isEnabled()) ground = look.panel;
    painter.setPen(QPen(underMouse() && isEnabled() ? look.ink : look.rule, 1));
    painter.setBrush(ground);
    painter.drawRect(all.adjusted(0, 0, -1, -1));
  }
  if (form_ == Form::quiet && (underMouse() || isDown()) && isEnabled()) {
    painter.setPen(QPen(look.rule, 1));
    painter.setBrush(isDown() ? look.line : look.raised);
    painter.drawRect(all.adjusted(0, 0, -1, -1));
  }
  if (form_ == Form::tab && isChecked()) painter.fillRect(0, height() - px(3), width(), px(3), look.ink);
  if (form_ == Form::tab && !isChecked() && underMouse()) painter.fillRect(0, height() - 1, width(), 1, look.rule);
}

void FlatButton::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  paint_ground(painter);
  const int side = px(20);
  if (form_ == Form::quiet) {
    const QRect middle((width() - side) / 2, (height() - side) / 2, side, side);
    paint_icon(painter, picture_, middle, ink_now());
    if (hasFocus()) paint_ring(painter, rect());
    return;
  }
  const QFont font = font_now(isChecked());
  const QFontMetrics metrics(font);
  int x = padding();
  if (!picture_.isEmpty()) {
    paint_icon(painter, picture_, QRect(x, (height() - side) / 2, side, side), ink_now());
    x += side + px(6);
  }
  painter.setFont(font);
  painter.setPen(ink_now());
  const int wide = metrics.horizontalAdvance(text());
  const bool middle = picture_.isEmpty() && count_.isEmpty() && form_ != Form::link;
  const QRect words = middle ? rect() : QRect(x, 0, wide, height());
  painter.drawText(words, middle ? int(Qt::AlignCenter) : int(Qt::AlignLeft | Qt::AlignVCenter), text());
  if (form_ == Form::link) {
    const int y = (height() + metrics.height()) / 2 - metrics.descent() + 2;
    painter.fillRect(x, y, wide, 1, ink_now());
  }
  if (!count_.isEmpty()) {
    painter.setFont(font_now(true));
    painter.setPen(grave_ ? theme().flag : theme().care);
    painter.drawText(QRect(x + wide + px(6), 0, width(), height()), Qt::AlignLeft | Qt::AlignVCenter, count_);
  }
  if (hasFocus()) paint_ring(painter, rect());
}

// Enter presses what has the keyboard, as Space does.
void FlatButton::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) return click();
  QAbstractButton::keyPressEvent(event);
}

bool FlatButton::event(QEvent* event) {
  if (event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange) updateGeometry();
  return QAbstractButton::event(event);
}

TickBox::TickBox(QWidget* parent) : QAbstractButton(parent) {
  setCheckable(true);
  setFocusPolicy(Qt::StrongFocus);
  setAttribute(Qt::WA_Hover);
  setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
}

QSize TickBox::sizeHint() const { return {px(24), px(24)}; }

void TickBox::paintEvent(QPaintEvent*) {
  const Theme& look = theme();
  QPainter painter(this);
  const int side = px(14);
  const QRect box((width() - side) / 2, (height() - side) / 2, side, side);
  painter.setPen(QPen(isChecked() ? look.good : underMouse() ? look.ink : look.rule, 1));
  painter.setBrush(look.raised);
  painter.drawRect(box);
  if (isChecked()) {
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(look.good, px(2), Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin));
    painter.drawPolyline(QPolygonF{QPointF(box.left() + side * 0.2, box.top() + side * 0.55),
                                   QPointF(box.left() + side * 0.42, box.top() + side * 0.78),
                                   QPointF(box.left() + side * 0.85, box.top() + side * 0.22)});
    painter.setRenderHint(QPainter::Antialiasing, false);
  }
  if (hasFocus()) paint_ring(painter, rect());
}

void TickBox::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) return click();
  QAbstractButton::keyPressEvent(event);
}

}  // namespace ui
