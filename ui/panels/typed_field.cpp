#include "ui/panels/typed_field.h"

#include <QKeyEvent>
#include <QLabel>

#include "ui/look/theme.h"

namespace ui {

TypedField::TypedField(Typing typing, QWidget* parent) : QLineEdit(parent), typing_(std::move(typing)) {
  setFont(ui::font(Type::text));
  rest_.setSingleShot(true);
  rest_.setInterval(350);
  connect(&rest_, &QTimer::timeout, this, &TypedField::take);
  connect(this, &QLineEdit::textEdited, this, &TypedField::typed);
  show_value();
}

TypedField::~TypedField() { delete echo_; }

void TypedField::set_value(const Value& value) {
  if (value == value_) return;
  value_ = value;
  if (!(hasFocus() && isModified())) show_value();
}

void TypedField::set_typing(Typing typing) {
  typing_ = std::move(typing);
  show_value();
}

QString TypedField::echo() const { return echo_ && !echo_->isHidden() ? echo_->text() : QString(); }

void TypedField::show_value() {
  setText(hasFocus() ? typing_.full(value_) : typing_.show(value_));
  setCursorPosition(0);
  setModified(false);
}

void TypedField::typed() {
  rest_.stop();
  stepping_ = false;
  if (text().trimmed().isEmpty()) return say({}, false);
  const auto read = typing_.read(text());
  if (read)
    say(typing_.full(*read), false);
  else
    say(read.error(), true);
}

void TypedField::take() {
  rest_.stop();
  if (!isModified()) return;
  const bool empty = text().trimmed().isEmpty();
  std::expected<Value, QString> read{Value{}};
  if (!empty || !typing_.may_be_empty) read = typing_.read(text());
  if (!read) {
    if (hasFocus()) return say(read.error(), true);
    show_value();
    emit refused(read.error());
    return;
  }
  say({}, false);
  const bool other = *read != value_;
  value_ = *read;
  show_value();
  if (other) emit given(value_);
}

void TypedField::stepped(int steps) {
  if (!typing_.step) return;
  const auto now = isModified() ? typing_.read(text()) : std::expected<Value, QString>(value_);
  if (!now) return say(now.error(), true);
  setText(typing_.full(typing_.step(*now, steps)));
  setModified(true);
  rest_.start();
}

void TypedField::keyPressEvent(QKeyEvent* event) {
  const int many = event->modifiers().testFlag(Qt::ShiftModifier) ? 10 : 1;
  switch (event->key()) {
    case Qt::Key_Up: return stepped(many);
    case Qt::Key_Down: return stepped(-many);
    case Qt::Key_Return:
    case Qt::Key_Enter:
      take();
      if (!isModified()) selectAll();
      return;
    case Qt::Key_Escape:
      if (!isModified()) break;
      rest_.stop();
      say({}, false);
      show_value();
      return;
    default: break;
  }
  QLineEdit::keyPressEvent(event);
}

void TypedField::focusInEvent(QFocusEvent* event) {
  if (!isModified()) show_value();
  QLineEdit::focusInEvent(event);
  if (event->reason() != Qt::MouseFocusReason) selectAll();
}

void TypedField::focusOutEvent(QFocusEvent* event) {
  QLineEdit::focusOutEvent(event);
  take();
  say({}, false);
  if (!isModified()) show_value();
}

void TypedField::wheelEvent(QWheelEvent* event) { event->ignore(); }

// The echo lies over the window, so that nothing moves while one types.
void TypedField::say(const QString& sentence, bool wrong) {
  setAccessibleDescription(sentence);
  if (sentence.isEmpty()) {
    if (echo_) echo_->hide();
    return;
  }
  if (!echo_) {
    echo_ = new QLabel(window());
    echo_->setObjectName("echo");
    echo_->setWordWrap(true);
    echo_->setFocusPolicy(Qt::NoFocus);
    echo_->setAttribute(Qt::WA_TransparentForMouseEvents);
  }
  echo_->setFont(ui::font(Type::note));
  const Theme& now = theme();
  echo_->setStyleSheet(QString("QLabel { background: %1; color: %2; border: 1px solid %3; padding: 2px 6px; }")
                           .arg((wrong ? now.flag_wash : now.raised).name(), (wrong ? now.flag : now.ink3).name(),
                                (wrong ? now.flag : now.rule).name()));
  echo_->setText(sentence);
  place_echo();
  echo_->show();
  echo_->raise();
}

void TypedField::place_echo() {
  const QWidget* over = window();
  const int room = std::max(px(120), std::min(over->width() - 2 * px(8), px(300)));
  echo_->setFixedWidth(QWIDGETSIZE_MAX);
  const int wanted = echo_->fontMetrics().horizontalAdvance(echo_->text()) + px(18);
  echo_->setFixedWidth(std::min(wanted, room));
  echo_->setFixedHeight(echo_->heightForWidth(echo_->width()));
  QPoint at = mapTo(over, QPoint(width() - echo_->width(), height() + 2));
  at.setX(std::clamp(at.x(), px(4), std::max(px(4), over->width() - echo_->width() - px(4))));
  if (at.y() + echo_->height() > over->height()) at.setY(mapTo(over, QPoint(0, 0)).y() - echo_->height() - 2);
  echo_->move(at);
}

}  // namespace ui
