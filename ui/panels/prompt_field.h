// One field of the prompt: its label, the field, and under it how it was read.
#pragma once

#include <QWidget>

#include "sketch/event.h"
#include "sketch/view.h"

class QKeyEvent;
class QLabel;
class QLineEdit;

namespace ui {

class PromptField : public QWidget {
  Q_OBJECT
 public:
  explicit PromptField(const QString& id, QWidget* parent = nullptr);
  const QString& id() const { return id_; }
  QLineEdit* edit() const { return edit_; }
  // What is being typed stays as it is, with its cursor, while the tool shows the same text.
  void show(const sketch::Field& field);
  void begin(const QString& text);  // as if it were typed into the empty field

 signals:
  void typed(const QString& text, bool locked);
  void entered();               // Enter where the text is locked already: what is in hand is done
  void keyed(sketch::Key key);  // Escape; Backspace while the text is the pointer's: they are the tool's

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;
  void paintEvent(QPaintEvent* event) override;

 private:
  bool take(QKeyEvent& event);
  QString id_;
  QLabel* label_;
  QLineEdit* edit_;
  QLabel* echo_;
  bool wrong_ = false;
  bool locked_ = false;
  bool typing_ = false;  // the text is the person's
};

}  // namespace ui
