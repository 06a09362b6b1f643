#include "ui/catalogue/price_list_dialog.h"

#include <QDialogButtonBox>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QSignalBlocker>
#include <QTableWidget>
#include <QVBoxLayout>
#include <algorithm>

#include "ui/book/book_table.h"
#include "ui/book/book_words.h"
#include "ui/catalogue/entry_fields.h"
#include "ui/look/theme.h"
#include "ui/panels/flow_layout.h"
#include "ui/panels/panel_words.h"
#include "ui/words/words.h"
#include "units/number.h"

namespace ui {

using files::PriceFate;
using files::PriceRow;

namespace {

enum Column { tick_at, item_at, before_at, after_at, by_at, what_at, columns };

QString unit_words(const std::string& unit) { return unit.empty() ? PriceListDialog::tr("nothing said") : said(unit); }

// What one should look at before the row is taken.
QStringList doubts(const PriceRow& row) {
  QStringList found;
  if (row.large) found << PriceListDialog::tr("by more than half");
  if (row.older) found << PriceListDialog::tr("older than the catalogue’s");
  if (row.by_others) found << PriceListDialog::tr("supplied by others so far");
  if (row.retired) found << PriceListDialog::tr("the item is retired");
  if (row.other_pack > 0) found << PriceListDialog::tr("%1 to a pack in the file").arg(row.other_pack);
  return found;
}

// What can be taken and wants a look first, then what goes without saying, then the rest.
int rank(const PriceRow& row) {
  if (row.can_be_taken()) return row.to_look_at() ? 0 : row.fate == PriceFate::changes ? 1 : 3;
  return row.fate == PriceFate::same ? 4 : 2;
}

QLabel* plain(const QString& words, QWidget* parent) {
  auto* label = new QLabel(words, parent);
  label->setTextFormat(Qt::PlainText);
  label->setWordWrap(true);
  return label;
}

}  // namespace

QString percent_words(const PriceRow& row) {
  const auto percent = row.percent();
  if (!percent) return {};
  const std::string figure = units::show_grouped(std::abs(*percent), 1);
  const QString sign = *percent > 0 ? QStringLiteral("+") : *percent < 0 ? QStringLiteral("−") : QString();
  return sign + QString::fromStdString(figure) + QStringLiteral(" %");
}

QString fate_words(const PriceRow& row) {
  switch (row.fate) {
    case PriceFate::changes: {
      const QStringList found = doubts(row);
      const QString what = !row.before || row.before->by_others    ? PriceListDialog::tr("a first price")
                           : row.after.amount > row.before->amount ? PriceListDialog::tr("goes up")
                                                                   : PriceListDialog::tr("goes down");
      return found.isEmpty() ? what
                             : PriceListDialog::tr("%1; look at it: %2").arg(what, found.join(QStringLiteral(", ")));
    }
    case PriceFate::confirmed: return PriceListDialog::tr("the same price on a later day");
    case PriceFate::same: return PriceListDialog::tr("the same");
    case PriceFate::unknown: return PriceListDialog::tr("no item has this number");
    case PriceFate::ambiguous: return PriceListDialog::tr("several items have this number");
    case PriceFate::other_unit:
      return PriceListDialog::tr("not taken: for a %1 in the file, for a %2 in the catalogue")
          .arg(unit_words(row.after.unit), unit_words(row.before ? row.before->unit : std::string()));
    case PriceFate::no_price: return PriceListDialog::tr("the file gives no price");
    case PriceFate::doubled:
    case PriceFate::unreadable: return row.why ? told(*row.why) : PriceListDialog::tr("not taken");
  }
  return {};
}

PriceListDialog::PriceListDialog(files::PriceList list, const catalogue::Stock& stock, QWidget* parent)
    : QDialog(parent), list_(std::move(list)), table_(new QTableWidget(this)) {
  setObjectName(QStringLiteral("price-list"));
  setWindowTitle(tr("Price list"));
  auto* rows = new QVBoxLayout(this);
  rows->setContentsMargins(px(16), px(14), px(16), px(14));
  auto* title = plain(tr("Prices from %1").arg(QString::fromStdString(list_.file)), this);
  title->setFont(ui::font(Type::name, true));
  rows->addWidget(title);
  auto* words = plain(summary(), this);
  words->setObjectName(QStringLiteral("price-list-summary"));
  rows->addWidget(words);
  fill(stock);
  rows->addWidget(table_, 1);
  auto* flow = new FlowLayout;
  flow->set_gaps(px(6), px(6));
  for (const bool on : {true, false}) {
    auto* button = new QPushButton(on ? tr("Tick all that can be taken") : tr("Tick none"), this);
    button->setObjectName(on ? QStringLiteral("price-list-all") : QStringLiteral("price-list-none"));
    button->setAutoDefault(false);
    connect(button, &QPushButton::clicked, this, [this, on] { tick_all(on); });
    flow->addWidget(button);
  }
  rows->addLayout(flow);
  counted_ = plain({}, this);
  counted_->setObjectName(QStringLiteral("price-list-counted"));
  counted_->setFont(ui::font(Type::text, true));
  rows->addWidget(counted_);
  auto* buttons = new QDialogButtonBox(this);
  apply_ = buttons->addButton(tr("Apply"), QDialogButtonBox::AcceptRole);
  apply_->setObjectName(QStringLiteral("price-list-apply"));
  apply_->setDefault(true);
  make_main(apply_);
  buttons->addButton(tr("Leave it"), QDialogButtonBox::RejectRole)->setObjectName(QStringLiteral("price-list-leave"));
  connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
  connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
  rows->addWidget(buttons);
  connect(table_, &QTableWidget::itemChanged, this, &PriceListDialog::count);
  count();
  resize(px(980), px(600));
}

QString PriceListDialog::summary() const {
  const auto those = [this](auto is) { return static_cast<int>(std::ranges::count_if(list_.rows, is)); };
  const int change = those([](const PriceRow& row) { return row.fate == PriceFate::changes; });
  const int same =
      those([](const PriceRow& row) { return row.fate == PriceFate::same || row.fate == PriceFate::confirmed; });
  const int unknown = those([](const PriceRow& row) { return row.fate == PriceFate::unknown; });
  const int rest = static_cast<int>(list_.rows.size()) - change - same - unknown;
  QString words =
      tr("%1 prices change, %2 stay the same, %3 are of items that the catalogue does not have, %4 can’t be taken.")
          .arg(change)
          .arg(same)
          .arg(unknown)
          .arg(rest);
  QStringList left;
  for (const std::string& column : list_.left_out) left << QString::fromStdString(column).left(40).simplified();
  if (!left.isEmpty()) words += QLatin1Char(' ') + tr("Columns left out: %1.").arg(left.join(QStringLiteral(", ")));
  return words;
}

void PriceListDialog::fill(const catalogue::Stock& stock) {
  for (std::size_t i = 0; i < list_.rows.size(); ++i) shown_.push_back(i);
  std::ranges::sort(shown_, [this](std::size_t a, std::size_t b) {
    return std::pair(rank(list_.rows[a]), a) < std::pair(rank(list_.rows[b]), b);
  });
  table_->setColumnCount(columns);
  table_->setRowCount(static_cast<int>(shown_.size()));
  table_->setHorizontalHeaderLabels(
      {tr("Take"), tr("Item"), tr("Now"), tr("In the file"), tr("By"), tr("What becomes of it")});
  make_list(table_, "price-list-rows", tr("Rows of the file"));
  table_->setSelectionMode(QAbstractItemView::SingleSelection);
  for (int at = 0; at < table_->rowCount(); ++at) {
    const PriceRow& row = list_.rows[shown_[static_cast<std::size_t>(at)]];
    const QString own =
        QString::fromStdString(row.number + (row.name.empty() ? "" : ", " + row.name)).left(200).simplified();
    const QString name = row.item.empty() ? own : item_name(stock.all, row.item);
    const bool says_price = row.fate != PriceFate::no_price && row.fate != PriceFate::unreadable;
    const QString cells[] = {{},
                             name,
                             shown_price(row.before),
                             says_price ? shown_price(row.after) : QString(),
                             percent_words(row),
                             fate_words(row)};
    for (int column = 0; column < columns; ++column) {
      auto* cell = new QTableWidgetItem(cells[column]);
      cell->setToolTip(column == item_at ? tr("Line %1: %2").arg(row.line).arg(own) : cells[column]);
      cell->setFlags(Qt::ItemIsSelectable | Qt::ItemIsEnabled);
      if (column >= before_at && column <= by_at) cell->setTextAlignment(Qt::AlignRight | Qt::AlignVCenter);
      if (!row.can_be_taken()) cell->setForeground(theme().ink3);
      if (column == what_at && row.can_be_taken() && row.to_look_at()) cell->setForeground(theme().care);
      table_->setItem(at, column, cell);
    }
    if (!row.can_be_taken()) continue;
    QTableWidgetItem* tick = table_->item(at, tick_at);
    tick->setFlags(tick->flags() | Qt::ItemIsUserCheckable);
    tick->setCheckState(row.to_look_at() ? Qt::Unchecked : Qt::Checked);
    tick->setData(Qt::AccessibleTextRole, tr("Take the price of %1").arg(name));
  }
  for (const int column : {before_at, after_at, by_at})
    table_->horizontalHeaderItem(column)->setTextAlignment(Qt::AlignRight | Qt::AlignVCenter);
  set_widths(table_, what_at);
  if (table_->rowCount() > 0) table_->setCurrentCell(0, tick_at);
}

std::vector<std::size_t> PriceListDialog::chosen() const {
  std::vector<std::size_t> found;
  for (int at = 0; at < table_->rowCount(); ++at)
    if (table_->item(at, tick_at)->checkState() == Qt::Checked) found.push_back(shown_[static_cast<std::size_t>(at)]);
  std::ranges::sort(found);
  return found;
}

void PriceListDialog::tick_all(bool on) {
  {
    const QSignalBlocker quiet(table_);
    for (int at = 0; at < table_->rowCount(); ++at)
      if (list_.rows[shown_[static_cast<std::size_t>(at)]].can_be_taken())
        table_->item(at, tick_at)->setCheckState(on ? Qt::Checked : Qt::Unchecked);
  }
  table_->viewport()->update();
  count();
}

void PriceListDialog::count() {
  const auto ticked = static_cast<int>(chosen().size());
  const auto all = static_cast<int>(std::ranges::count_if(list_.rows, &PriceRow::can_be_taken));
  counted_->setText(tr("%1 of %2 that can be taken are ticked").arg(ticked).arg(all));
  apply_->setEnabled(ticked > 0);
}

}  // namespace ui
