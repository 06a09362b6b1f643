// The top of the window: the mark, the menus, which job this is and how it is kept, undo and redo, and the two things
// that end a day's work.
#pragma once

#include <QWidget>

#include "ui/desk/desk.h"

class QLabel;
class QMenuBar;

namespace ui {

class FlatButton;

class Header : public QWidget {
  Q_OBJECT
 public:
  Header(Desk& desk, QWidget* parent = nullptr);
  void set_menu(QMenuBar* menu);                 // the header owns it then
  void set_version_state(const QString& state);  // "working copy, after version 3"
  // They come with the job book and the sheets: until then they say so, and can't be pressed.
  void allow_save(bool allowed);

 signals:
  void wanted_undo();  // of a point in hand, or of the last edit: the window knows
  void wanted_save();
  void wanted_print();

 protected:
  void paintEvent(QPaintEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;

 private:
  void show_job();
  void show_steps();
  Desk& desk_;
  QString state_;
  QWidget* menu_room_;
  QLabel* name_;
  QLabel* version_;
  FlatButton* undo_;
  FlatButton* redo_;
  FlatButton* save_;
  FlatButton* print_;
};

}  // namespace ui
