// Fields one under the other, under their headings: what the pages of the panel are made of.
#pragma once

#include <QWidget>

#include "ui/panels/field_editor.h"

class QVBoxLayout;

namespace ui {

class FieldForm : public QWidget {
  Q_OBJECT
 public:
  FieldForm(Desk& desk, const Source& book, QWidget* parent = nullptr);

  // The same fields again only show their values; others make the form anew, and the keyboard stays in the field of the
  // same id.
  void show_fields(std::vector<Field> fields);
  FieldEditor* editor(const std::string& id) const;  // null where there is none
  bool empty() const { return editors_.empty(); }

 private:
  void make(std::vector<Field> fields);
  QWidget* make_row(FieldEditor* editor);
  void add_heading(const QString& words);
  Desk& desk_;
  const Source& book_;
  QVBoxLayout* rows_;
  QWidget* body_ = nullptr;
  std::vector<FieldEditor*> editors_;
};

}  // namespace ui
