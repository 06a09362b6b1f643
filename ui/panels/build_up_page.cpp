#include "ui/panels/build_up_page.h"

#include <QVBoxLayout>

#include "ui/look/theme.h"

namespace ui {

BuildUpPage::BuildUpPage(Desk& desk, const Source& book, QWidget* parent) : QWidget(parent), desk_(desk) {
  setObjectName("build-up");
  section_ = new SectionForm(desk, book, this);
  form_ = new FieldForm(desk, book, this);
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(px(12));
  column->addWidget(section_);
  column->addWidget(form_);
  column->addStretch(1);
}

FieldEditor* BuildUpPage::editor(const std::string& id) const {
  FieldEditor* found = section_->editor(id);
  return found ? found : form_->editor(id);
}

void BuildUpPage::show_element(const plan::ElementId& id) {
  std::vector<Field> fields = fields_of(desk_.job(), id, Page::build_up);
  std::vector<Field> in_section = fields;  // and the joint, which is asked for among the pattern
  for (Field& field : fields_of(desk_.job(), id, Page::pattern))
    if (field.id == "joint") in_section.push_back(std::move(field));
  const ResultsPtr results = desk_.results();
  const bool there = results && results->job->find(id);
  section_->show_section(there ? sheets::section_figure(*results, id, desk_.stage()) : std::nullopt, in_section);
  // What hangs on a leader is not asked for twice; its heading goes on to the next.
  QString heading;
  std::vector<Field> rest;
  for (Field& field : fields) {
    if (!field.group.isEmpty()) heading = field.group;
    if (section_->taken().contains(field.id)) continue;
    field.group = heading;
    heading.clear();
    rest.push_back(std::move(field));
  }
  form_->show_fields(std::move(rest));
}

}  // namespace ui
