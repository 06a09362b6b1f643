// The widget for one field, whatever its sort: it shows the job's value and gives what a person enters to the desk as
// one step of history.
#pragma once

#include <QWidget>

#include "ui/desk/desk.h"
#include "ui/panels/offers.h"

namespace ui {

class FieldEditor : public QWidget {
  Q_OBJECT
 public:
  // `book` outlives the editor: where items can be taken in from.
  FieldEditor(Desk& desk, const Source& book, Field field, QWidget* parent = nullptr);

  const Field& field() const { return field_; }
  QWidget* input() const { return input_; }  // the line, button, box or list itself
  void show_field(Field field);              // the same field of a newer job: its value is shown
  void give(const Value& value);
  static bool is_wide(const Field& field);  // has its label above it rather than beside it

 private:
  QWidget* make();
  QWidget* make_typed();
  QWidget* make_told();
  QWidget* make_words();
  QWidget* make_choice();
  QWidget* make_long_text();
  QWidget* make_action();
  void refresh();
  Desk& desk_;
  const Source& book_;
  Field field_;
  QWidget* input_ = nullptr;
  units::System units_;
};

}  // namespace ui
