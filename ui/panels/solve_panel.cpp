#include "ui/panels/solve_panel.h"

#include <QHBoxLayout>
#include <QVBoxLayout>
#include <algorithm>

#include "ui/look/theme.h"
#include "ui/panels/solve_items.h"

namespace ui {

using problem::Severity;

SolvePanel::SolvePanel(Desk& desk, QWidget* parent)
    : QWidget(parent),
      desk_(desk),
      items_(new SolveItems(this)),
      view_(new SolveView(this)),
      notices_(new QCheckBox(this)) {
  setObjectName(QStringLiteral("solve_panel"));
  setAccessibleName(tr("To solve"));
  view_->setAccessibleName(tr("What is to solve"));
  view_->setModel(items_);
  notices_->setObjectName(QStringLiteral("notices"));
  notices_->setFont(ui::font(Type::note));
  auto* rows = new QVBoxLayout(this);
  rows->setContentsMargins(0, 0, 0, 0);
  rows->setSpacing(px(4));
  auto* row = new QHBoxLayout;
  row->setContentsMargins(px(16), 0, px(16), 0);
  row->addWidget(notices_);
  row->addStretch(1);
  rows->addLayout(row);
  rows->addWidget(view_, 1);
  connect(view_, &SolveView::wanted, this, &SolvePanel::go_to);
  connect(notices_, &QCheckBox::toggled, this, &SolvePanel::show_problems);
  connect(&desk_, &Desk::results_changed, this, &SolvePanel::show_problems);
  show_problems();
}

QListView* SolvePanel::list() const { return view_; }

int SolvePanel::to_solve() const { return items_->count(Severity::problem) + items_->count(Severity::flag); }

void SolvePanel::show_notices(bool shown) { notices_->setChecked(shown); }

void SolvePanel::show_problems() {
  const int before = view_->currentIndex().row();
  const ResultsPtr results = desk_.results();
  items_->show(results ? results->problems() : std::vector<problem::Problem>(), notices_->isChecked());
  if (before >= 0 && items_->rowCount() > 0)
    view_->setCurrentIndex(items_->index(std::min(before, items_->rowCount() - 1), 0));
  show_counts();
}

void SolvePanel::show_counts() {
  notices_->setText(tr("Show what is to know (%1)").arg(items_->count(Severity::notice)));
  emit counted(to_solve(), items_->count(Severity::problem) > 0);
}

void SolvePanel::go_to(int row) {
  view_->setCurrentIndex(items_->index(row, 0));
  desk_.go_to(items_->at(row).place);
}

void SolvePanel::next() {
  const int rows = items_->rowCount();
  if (rows == 0) return desk_.say(tr("Nothing is to solve."));
  const int row = (view_->currentIndex().row() + 1) % rows;
  view_->scrollTo(items_->index(row, 0));
  go_to(row);
}

}  // namespace ui
