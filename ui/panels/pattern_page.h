// How an area is laid: pattern, units, direction, start point, border courses; and what the program can find better.
#pragma once

#include <QWidget>

#include "ui/panels/field_form.h"
#include "ui/panels/start_box.h"

namespace ui {

class PatternPage : public QWidget {
  Q_OBJECT
 public:
  PatternPage(Desk& desk, const Source& book, QWidget* parent = nullptr);
  void show_element(const plan::ElementId& id);
  FieldEditor* editor(const std::string& id) const { return form_->editor(id); }
  StartBox& start_box() const { return *start_; }

 private:
  Desk& desk_;
  FieldForm* form_;
  StartBox* start_;
};

}  // namespace ui
