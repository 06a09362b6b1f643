#include "ui/office/order_result.h"

#include <QHeaderView>
#include <QLabel>
#include <QTreeWidget>
#include <QVBoxLayout>
#include <cmath>

#include "takeoff/stage.h"
#include "ui/book/book_table.h"
#include "ui/book/book_words.h"
#include "ui/look/theme.h"
#include "ui/panels/panel_words.h"

namespace ui {

namespace {

QLabel* label(QWidget* parent, const char* name, Type type = Type::text, bool bold = false) {
  auto* made = new QLabel(parent);
  made->setObjectName(QString::fromLatin1(name));
  made->setTextFormat(Qt::PlainText);
  made->setWordWrap(true);
  made->setFont(ui::font(type, bold));
  made->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
  return made;
}

QString priced_by(estimate::PricedBy by) {
  switch (by) {
    case estimate::PricedBy::unit_price: return OrderResult::tr("unit price of the quote");
    case estimate::PricedBy::quoted: return OrderResult::tr("as quoted");
    case estimate::PricedBy::new_line: return OrderResult::tr("new line");
    case estimate::PricedBy::ticket: return OrderResult::tr("ticket");
    case estimate::PricedBy::not_charged: return OrderResult::tr("not charged");
  }
  return {};
}

QString title_of(const estimate::OrderedChange& line) {
  if (line.stage.empty()) return OrderResult::tr("Met on site");
  const auto stage = takeoff::stage_of(line.stage);
  return stage ? said(takeoff::title(*stage)) : QString::fromStdString(line.stage);
}

QTreeWidgetItem* row(const QStringList& cells) {
  auto* made = new QTreeWidgetItem(cells);
  for (const int column : {1, 3}) made->setTextAlignment(column, Qt::AlignRight | Qt::AlignVCenter);
  return made;
}

}  // namespace

OrderResult::OrderResult(plan::Heading heading, QWidget* parent) : QWidget(parent), heading_(std::move(heading)) {
  rows_ = new QVBoxLayout(this);
  rows_->setContentsMargins(px(16), px(12), px(16), 0);
  rows_->setSpacing(px(8));
  names_ = label(this, "order-names");
  rows_->addWidget(names_);
  amount_ = label(this, "order-amount", Type::name, true);
  rows_->addWidget(amount_);
  lines_ = new QTreeWidget(this);
  lines_->setObjectName(QStringLiteral("order-lines"));
  lines_->setAccessibleName(tr("Lines of the change order"));
  lines_->setHeaderLabels({tr("Line"), tr("More, less"), tr("Priced by"), tr("Amount")});
  for (const int right : {1, 3}) lines_->headerItem()->setTextAlignment(right, Qt::AlignRight | Qt::AlignVCenter);
  lines_->setItemDelegate(new WholeRows(lines_));
  lines_->setAllColumnsShowFocus(true);
  lines_->header()->setStretchLastSection(false);
  for (int at = 0; at < 4; ++at)
    lines_->header()->setSectionResizeMode(at, at == 0 ? QHeaderView::Stretch : QHeaderView::ResizeToContents);
  rows_->addWidget(lines_, 1);
  running_ = label(this, "order-running");
  days_ = label(this, "order-days");
  rows_->addWidget(running_);
  rows_->addWidget(days_);
}

void OrderResult::set_names(const QString& names) { names_->setText(names); }

void OrderResult::show_order(const estimate::ChangeOrder& order, const std::vector<problem::Problem>& problems) {
  show_lines(order);
  show_sums(order);
  show_problems(problems);
}

QString OrderResult::money(units::Money amount) const { return shown_money(amount, heading_); }
QString OrderResult::by(units::Money amount) const {
  return (amount > units::Money() ? QStringLiteral("+") : QString()) + money(amount);
}

void OrderResult::show_lines(const estimate::ChangeOrder& order) {
  lines_->clear();
  QTreeWidgetItem* group = nullptr;
  for (const estimate::OrderedChange& line : order.lines) {
    if (line.quantity == 0 && line.amount == units::Money() && line.kept == units::Money()) continue;
    if (const QString title = title_of(line); !group || group->text(0) != title) {
      group = row({title});
      lines_->addTopLevelItem(group);
      group->setFirstColumnSpanned(true);
    }
    const QString sign = line.quantity > 0 ? QStringLiteral("+") : line.quantity < 0 ? QStringLiteral("−") : QString();
    const QString quantity = sign + shown_count(std::abs(line.quantity), line.unit);
    auto* item = row({QString::fromStdString(line.description), quantity, priced_by(line.by), by(line.amount)});
    item->setToolTip(0, QString::fromStdString(line.working).toHtmlEscaped());
    group->addChild(item);
  }
  if (!order.on_top.empty()) {
    group = row({tr("On top")});
    lines_->addTopLevelItem(group);
    group->setFirstColumnSpanned(true);
  }
  for (const estimate::KeptStep& step : order.on_top) {
    auto* item = row({QString::fromStdString(step.name), {}, {}, by(step.amount)});
    item->setToolTip(0, QString::fromStdString(step.working).toHtmlEscaped());
    group->addChild(item);
  }
  lines_->expandAll();
}

void OrderResult::show_sums(const estimate::ChangeOrder& order) {
  amount_->setText(order.final ? tr("The contract changes by %1").arg(by(order.amount))
                               : tr("Not final: the contract changes by %1").arg(by(order.amount)));
  const std::size_t earlier = order.input.earlier.size();
  running_->setText(earlier == 0 ? tr("%1 as signed, %2 by this order: %3 from now on")
                                       .arg(money(order.input.contract), by(order.amount), money(order.after))
                                 : tr("%1 as signed, %2 by earlier orders (%3), %4 by this one: %5 from now on")
                                       .arg(money(order.input.contract), by(order.before - order.input.contract),
                                            QString::number(earlier), by(order.amount), money(order.after)));
  days_->setText(tr("Days more by all orders: %1").arg(order.days));
}

void OrderResult::show_problems(const std::vector<problem::Problem>& problems) {
  delete problems_;
  problems_ = new QWidget(this);
  auto* rows = new QVBoxLayout(problems_);
  rows->setContentsMargins(0, 0, 0, 0);
  for (std::size_t i = 0; i < problems.size(); ++i) {
    const bool grave = problems[i].severity == problem::Severity::problem;
    auto* one = label(problems_, "order-problem");
    one->setText((grave ? tr("To be mended: %1") : tr("To be decided: %1")).arg(told(problems[i])));
    QPalette palette = one->palette();
    palette.setColor(QPalette::WindowText, grave ? theme().flag : theme().care);
    one->setPalette(palette);
    rows->addWidget(one);
  }
  rows_->addWidget(problems_);
}

}  // namespace ui
