#include "ui/panels/edges_page.h"

#include <QLabel>
#include <QVBoxLayout>

#include "ui/look/theme.h"
#include "ui/panels/edge_fields.h"

namespace ui {

EdgesPage::EdgesPage(Desk& desk, const Source& book, QWidget* parent) : QWidget(parent), desk_(desk) {
  setObjectName("edges");
  nothing_ = new QLabel(tr("Its edges are not known yet."), this);
  nothing_->setFont(ui::font(Type::text));
  nothing_->setWordWrap(true);
  form_ = new FieldForm(desk, book, this);
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->addWidget(nothing_);
  column->addWidget(form_);
  column->addStretch(1);
}

// Stretches are of the newest results; while those are on their way the old ones stay.
void EdgesPage::show_element(const plan::ElementId& id) {
  const ResultsPtr results = desk_.results();
  if (!results || !results->job->find(id) || !desk_.job().find(id)) {
    nothing_->show();
    return form_->show_fields({});
  }
  std::vector<Field> fields = edge_fields(*results, desk_.job(), id);
  nothing_->setVisible(fields.empty());
  form_->show_fields(std::move(fields));
}

}  // namespace ui
