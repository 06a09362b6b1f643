// How high its surface lies and where its water goes.
#pragma once

#include <QWidget>

#include "ui/panels/field_form.h"

namespace ui {

class LevelsPage : public QWidget {
  Q_OBJECT
 public:
  LevelsPage(Desk& desk, const Source& book, QWidget* parent = nullptr);
  void show_element(const plan::ElementId& id);
  FieldEditor* editor(const std::string& id) const { return form_->editor(id); }

 private:
  Desk& desk_;
  FieldForm* form_;
};

}  // namespace ui
