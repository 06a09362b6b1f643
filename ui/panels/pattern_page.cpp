#include "ui/panels/pattern_page.h"

#include <QVBoxLayout>

#include "ui/look/theme.h"

namespace ui {

PatternPage::PatternPage(Desk& desk, const Source& book, QWidget* parent) : QWidget(parent), desk_(desk) {
  setObjectName("pattern");
  form_ = new FieldForm(desk, book, this);
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(px(12));
  start_ = new StartBox(desk, this);
  column->addWidget(form_);
  column->addWidget(start_);
  column->addStretch(1);
}

void PatternPage::show_element(const plan::ElementId& id) {
  form_->show_fields(fields_of(desk_.job(), id, Page::pattern));
  const plan::Element* element = desk_.job().find(id);
  const auto* area = element ? std::get_if<plan::PavedArea>(&element->kind) : nullptr;
  start_->setVisible(area && area->laying);
  start_->show_element(id);
}

}  // namespace ui
