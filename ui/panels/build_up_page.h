// What it is built of: the section with its fields, then the fields that no leader leads to. Of every kind of element.
#pragma once

#include <QWidget>

#include "ui/panels/field_form.h"
#include "ui/panels/section_form.h"

namespace ui {

class BuildUpPage : public QWidget {
  Q_OBJECT
 public:
  BuildUpPage(Desk& desk, const Source& book, QWidget* parent = nullptr);
  void show_element(const plan::ElementId& id);      // again after each edit and each result
  FieldEditor* editor(const std::string& id) const;  // in the section or under it

 private:
  Desk& desk_;
  SectionForm* section_;
  FieldForm* form_;
};

}  // namespace ui
