#include "ui/money/estimate_window.h"

#include <QBoxLayout>
#include <QScrollArea>
#include <QStackedWidget>

#include "ui/look/theme.h"
#include "ui/money/bite_view.h"
#include "ui/money/money_fields.h"
#include "ui/money/options_view.h"
#include "ui/money/price_view.h"
#include "ui/panels/field_form.h"
#include "ui/panels/fields_making.h"
#include "ui/panels/flat_button.h"

namespace ui {

namespace {

struct PageRow {
  const char* name;
  const char* id;
  std::vector<Field> (*fields)(const plan::Job&);  // null: the page is no form
};
const PageRow page_rows[EstimateWindow::pages] = {
    {QT_TRANSLATE_NOOP("ui::EstimateWindow", "Price"), "estimate-price", price_fields},
    {QT_TRANSLATE_NOOP("ui::EstimateWindow", "Hours"), "estimate-hours", hours_fields},
    {QT_TRANSLATE_NOOP("ui::EstimateWindow", "Beside the drawing"), "estimate-added", added_fields},
    {QT_TRANSLATE_NOOP("ui::EstimateWindow", "Payments"), "estimate-payments", payment_fields},
    {QT_TRANSLATE_NOOP("ui::EstimateWindow", "Words"), "estimate-words", words_fields},
    {QT_TRANSLATE_NOOP("ui::EstimateWindow", "What could bite"), "estimate-bite", nullptr},
    {QT_TRANSLATE_NOOP("ui::EstimateWindow", "Options"), "estimate-options", nullptr},
};

const Source no_book;  // nothing here is chosen out of a catalogue

QScrollArea* scrolled(QWidget* inside, QWidget* parent) {
  auto* area = new QScrollArea(parent);
  area->setWidget(inside);
  area->setWidgetResizable(true);
  area->setFrameShape(QFrame::NoFrame);
  area->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  return area;
}

}  // namespace

EstimateWindow::EstimateWindow(Desk& desk, QWidget* parent)
    : QDialog(parent), desk_(desk), stack_(new QStackedWidget(this)) {
  setObjectName(QStringLiteral("estimate-window"));
  setWindowTitle(tr("Estimate"));
  setAttribute(Qt::WA_DeleteOnClose);
  auto* tabs = new QHBoxLayout;
  tabs->setContentsMargins(px(16), px(10), px(16), 0);
  for (int page = 0; page < pages; ++page) {
    const PageRow& row = page_rows[page];
    auto* tab = new FlatButton(FlatButton::Form::tab, tr(row.name), this);
    tab->setObjectName(QString::fromLatin1(row.id));
    tab->setCheckable(true);
    tab->setAutoExclusive(true);
    connect(tab, &QAbstractButton::clicked, this, [this, page] { show_page(page); });
    tabs->addWidget(tab);
    tabs_.push_back(tab);
    stack_->addWidget(make_page(page));
  }
  tabs->addStretch(1);
  stack_->setMinimumWidth(px(360));
  auto* sides = new QHBoxLayout;
  sides->setContentsMargins(0, 0, 0, 0);
  sides->addWidget(stack_, 2);
  sides->addWidget(scrolled(new PriceView(desk_, this), this), 3);
  auto* rows = new QVBoxLayout(this);
  rows->setContentsMargins(0, 0, 0, 0);
  rows->addLayout(tabs);
  rows->addLayout(sides, 1);
  connect(&desk_, &Desk::job_changed, this, &EstimateWindow::show_fields);
  connect(&desk_, &Desk::results_changed, this, &EstimateWindow::show_fields);
  show_page(0);
  show_fields();
  resize(px(1080), px(720));
}

QWidget* EstimateWindow::make_page(int page) {
  if (page == bite_page) return scrolled(new BiteView(desk_, this), this);
  if (page == options_page) return scrolled(new OptionsView(desk_, this), this);
  auto* room = new QWidget(this);
  auto* rows = new QVBoxLayout(room);
  rows->setContentsMargins(px(16), px(12), px(16), px(12));
  forms_.push_back(new FieldForm(desk_, no_book, room));
  rows->addWidget(forms_.back());
  rows->addStretch(1);
  auto* area = scrolled(room, this);
  area->setAccessibleName(tr(page_rows[page].name));
  return area;
}

void EstimateWindow::show_page(int page) {
  stack_->setCurrentIndex(page);
  tabs_[static_cast<std::size_t>(page)]->setChecked(true);
}

void EstimateWindow::show_fields() {
  const ResultsPtr results = desk_.results();
  for (int page = 0; page < pages; ++page) {
    if (!page_rows[page].fields) continue;
    std::vector<Field> fields = page_rows[page].fields(desk_.job());
    if (page_rows[page].fields == added_fields && results)
      add(fields, checklist_fields(desk_.job(), results->estimate));
    form(page).show_fields(std::move(fields));
  }
}

EstimateWindow* show_estimate_window(Desk& desk, QWidget* parent) {
  auto* window = parent->findChild<EstimateWindow*>();
  if (window == nullptr) window = new EstimateWindow(desk, parent);
  window->show();
  window->raise();
  window->activateWindow();
  return window;
}

}  // namespace ui
