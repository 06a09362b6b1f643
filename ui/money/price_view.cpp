#include "ui/money/price_view.h"

#include <QGridLayout>
#include <QLabel>
#include <QVBoxLayout>

#include "ui/look/theme.h"
#include "ui/money/money_bars.h"

namespace ui {

namespace {

QLabel* label(const QString& text, Type type, bool bold, QColor colour, QWidget* parent) {
  auto* made = new QLabel(text, parent);
  made->setFont(font(type, bold));
  made->setTextFormat(Qt::PlainText);
  made->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
  QPalette palette = made->palette();
  palette.setColor(QPalette::WindowText, colour);
  made->setPalette(palette);
  return made;
}

// One grid of rows, made anew with each price: there are twenty of them at most.
QWidget* table_of(const std::vector<PriceRow>& rows, QWidget* parent) {
  auto* table = new QWidget(parent);
  table->setObjectName(QStringLiteral("price_table"));
  auto* grid = new QGridLayout(table);
  grid->setContentsMargins(0, 0, 0, 0);
  grid->setHorizontalSpacing(px(12));
  grid->setVerticalSpacing(px(6));
  grid->setColumnStretch(1, 1);
  int at = 0;
  for (const PriceRow& row : rows) {
    const bool sum = row.kind == PriceRow::Kind::sum;
    const QColor ink = row.kind == PriceRow::Kind::note ? theme().ink2 : theme().ink;
    auto* name = label(row.name, sum ? Type::name : Type::text, sum, ink, table);
    auto* working = label(row.working, Type::note, false, theme().ink2, table);
    working->setWordWrap(true);
    auto* amount = label(row.amount, sum ? Type::name : Type::text, sum, ink, table);
    amount->setObjectName("price_amount/" + QString::number(at));
    name->setAccessibleDescription(row.working + QStringLiteral(" ") + row.amount);
    name->setWordWrap(true);
    name->setMinimumWidth(px(200));
    grid->addWidget(name, at, 0, Qt::AlignTop);
    grid->addWidget(working, at, 1, Qt::AlignTop);
    grid->addWidget(amount, at, 2, Qt::AlignRight | Qt::AlignTop);
    ++at;
  }
  return table;
}

}  // namespace

PriceView::PriceView(Desk& desk, QWidget* parent)
    : QWidget(parent),
      desk_(desk),
      state_(label({}, Type::note, false, theme().ink2, this)),
      room_(new QWidget(this)),
      kinds_(new MoneyBars(tr("Direct cost by kind"), this)),
      stages_(new MoneyBars(tr("Direct cost by stage"), this)) {
  setObjectName(QStringLiteral("price_view"));
  setAccessibleName(tr("Price"));
  kinds_->setObjectName(QStringLiteral("money_by_kind"));
  stages_->setObjectName(QStringLiteral("money_by_stage"));
  state_->setObjectName(QStringLiteral("price_state"));
  auto* inside = new QVBoxLayout(room_);
  inside->setContentsMargins(0, 0, 0, 0);
  auto* rows = new QVBoxLayout(this);
  rows->setContentsMargins(px(16), px(12), px(16), px(12));
  rows->setSpacing(px(14));
  rows->addWidget(state_);
  rows->addWidget(room_);
  rows->addWidget(kinds_);
  rows->addWidget(stages_);
  rows->addStretch(1);
  connect(&desk_, &Desk::results_changed, this, &PriceView::show_price);
  connect(&desk_, &Desk::computing_changed, this, &PriceView::show_price);
  show_price();
}

void PriceView::show_price() {
  const ResultsPtr results = desk_.results();
  delete table_;
  table_ = nullptr;
  state_->setText(!results                          ? tr("The numbers are being worked out")
                  : results->job != desk_.job_ptr() ? tr("Being worked out anew; these are the numbers before")
                  : results->final() && results->priced.final
                      ? tr("All lines have their price")
                      : tr("Not final: something has no price or no result, see what is to solve"));
  if (!results) return;
  table_ = table_of(price_rows(*results), room_);
  room_->layout()->addWidget(table_);
  kinds_->show_bars(by_kind(*results));
  stages_->show_bars(by_stage(*results));
}

}  // namespace ui
