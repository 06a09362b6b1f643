#include "ui/panels/levels_page.h"

#include <QVBoxLayout>

namespace ui {

LevelsPage::LevelsPage(Desk& desk, const Source& book, QWidget* parent) : QWidget(parent), desk_(desk) {
  setObjectName("levels");
  form_ = new FieldForm(desk, book, this);
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->addWidget(form_);
  column->addStretch(1);
}

void LevelsPage::show_element(const plan::ElementId& id) {
  form_->show_fields(fields_of(desk_.job(), id, Page::levels));
}

}  // namespace ui
