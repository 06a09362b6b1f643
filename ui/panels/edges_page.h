// Every stretch of an area's edge: what it meets, what is built there, how long it is; and a choice for each edge.
#pragma once

#include <QWidget>

#include "ui/panels/field_form.h"

class QLabel;

namespace ui {

class EdgesPage : public QWidget {
  Q_OBJECT
 public:
  EdgesPage(Desk& desk, const Source& book, QWidget* parent = nullptr);
  void show_element(const plan::ElementId& id);
  FieldEditor* editor(const std::string& id) const { return form_->editor(id); }

 private:
  Desk& desk_;
  QLabel* nothing_;
  FieldForm* form_;
};

}  // namespace ui
