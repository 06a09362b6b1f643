// A line to type a value into: what was understood is echoed under it while one types, what can't be understood is
// refused with a sentence and the old value stays.
#pragma once

#include <QLineEdit>
#include <QPointer>
#include <QTimer>
#include <expected>
#include <functional>

#include "ui/panels/fields.h"

class QLabel;

namespace ui {

// How one sort of value is read and written.
struct Typing {
  std::function<std::expected<Value, QString>(const QString&)> read;  // the error is one sentence
  std::function<QString(const Value&)> show;                          // at rest, rounded for people
  std::function<QString(const Value&)> full;                          // while typing: reads back as the same value
  std::function<Value(const Value&, int steps)> step;                 // for the arrow keys; empty: they do nothing
  bool may_be_empty = false;
};

// Enter, Tab or a click elsewhere takes what was typed; Esc puts the old value back. Arrow up and down step, Shift ten
// steps; a run of steps is taken once, when it has rested for a moment. The wheel changes nothing.
class TypedField : public QLineEdit {
  Q_OBJECT
 public:
  explicit TypedField(Typing typing, QWidget* parent = nullptr);
  ~TypedField() override;

  const Value& value() const { return value_; }
  void set_value(const Value& value);  // what is being typed is not disturbed
  void set_typing(Typing typing);      // other units: shown anew
  QString echo() const;                // what stands under it now; empty at rest

 signals:
  void given(ui::Value value);     // a person gave another value
  void refused(QString sentence);  // what was typed is gone, the old value is back

 protected:
  void keyPressEvent(QKeyEvent* event) override;
  void focusInEvent(QFocusEvent* event) override;
  void focusOutEvent(QFocusEvent* event) override;
  void wheelEvent(QWheelEvent* event) override;

 private:
  void typed();
  void take();
  void stepped(int steps);
  void show_value();
  void say(const QString& sentence, bool wrong);
  void place_echo();
  Typing typing_;
  Value value_;
  QTimer rest_;
  QPointer<QLabel> echo_;
  bool stepping_ = false;
};

}  // namespace ui
