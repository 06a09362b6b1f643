// The furniture's own buttons: flat, with words, each state with a shape as well as a colour.
#pragma once

#include <QAbstractButton>

namespace ui {

// `tab`: a word with a bar under it where it is chosen. `segment`: one of a switch, filled where it is chosen.
// `action`: a framed button. `link`: an underlined word. `quiet`: an icon, and nothing round it. All are reached by
// Tab, pressed by Space and Enter, and ringed while they have the keyboard.
class FlatButton : public QAbstractButton {
  Q_OBJECT
 public:
  enum class Form { tab, segment, action, link, quiet };
  FlatButton(Form form, const QString& text, QWidget* parent = nullptr);

  void set_picture(const QString& name);  // an icon before the words; of `quiet` instead of them
  void set_count(const QString& count);   // after the words of a tab, in flag or ink: "2"
  void set_count_grave(bool grave);       // the count is of what stops the total
  QSize sizeHint() const override;
  QSize minimumSizeHint() const override;

 protected:
  void paintEvent(QPaintEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  bool event(QEvent* event) override;

 private:
  QFont font_now(bool chosen) const;
  QColor ink_now() const;
  void paint_ground(QPainter& painter) const;
  int padding() const;
  Form form_;
  QString picture_;
  QString count_;
  bool grave_ = false;
};

// A square to tick: a tick as well as a colour says that it is.
class TickBox : public QAbstractButton {
  Q_OBJECT
 public:
  explicit TickBox(QWidget* parent = nullptr);
  QSize sizeHint() const override;

 protected:
  void paintEvent(QPaintEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
};

}  // namespace ui
