#include "ui/panels/takeoff_items.h"

#include <QCoreApplication>

#include "ui/panels/panel_words.h"

namespace ui {

namespace {

constexpr quintptr a_line = 0;  // a row under line n carries n + 1

int line_of(const QModelIndex& index) {
  return index.internalId() == a_line ? index.row() : static_cast<int>(index.internalId() - 1);
}

QString tags_of(const estimate::OrderLine& line) {
  QStringList ids;
  for (const plan::ElementId& id : line.of) ids << QString::fromStdString(id);
  return ids.join(QStringLiteral(", "));
}

}  // namespace

QString link_word(Leads leads) {
  switch (leads) {
    case Leads::nowhere: return {};
    case Leads::plan: return TakeoffItems::tr("plan");
    case Leads::section: return TakeoffItems::tr("section");
    case Leads::catalogue: return TakeoffItems::tr("catalogue");
    case Leads::choices: return TakeoffItems::tr("choices");
  }
  return {};
}

void TakeoffItems::show(std::shared_ptr<const results::Results> results, const Asked& asked) {
  beginResetModel();
  results_ = std::move(results);
  asked_ = asked;
  lines_ = results_ ? takeoff_rows(*results_, asked_) : std::vector<TakeoffRow>();
  under_.assign(lines_.size(), {});
  endResetModel();
}

const TakeoffRow* TakeoffItems::line_at(const QModelIndex& index) const {
  if (!index.isValid() || index.internalId() != a_line) return nullptr;
  return &lines_[static_cast<std::size_t>(index.row())];
}

const UnderRow* TakeoffItems::under_at(const QModelIndex& index) const {
  if (!index.isValid() || index.internalId() == a_line) return nullptr;
  return &under(line_of(index))[static_cast<std::size_t>(index.row())];
}

const estimate::OrderLine* TakeoffItems::order_line(const QModelIndex& index) const {
  if (!index.isValid()) return nullptr;
  const int number = lines_[static_cast<std::size_t>(line_of(index))].line;
  return number < 0 ? nullptr : &results_->estimate.lines[static_cast<std::size_t>(number)];
}

const std::vector<UnderRow>& TakeoffItems::under(int row) const {
  auto& made = under_[static_cast<std::size_t>(row)];
  const TakeoffRow& line = lines_[static_cast<std::size_t>(row)];
  if (made.empty() && line.kind == TakeoffRow::Kind::line) made = made_under(line);
  return made;
}

std::vector<UnderRow> TakeoffItems::made_under(const TakeoffRow& line) const {
  const estimate::OrderLine& order = results_->estimate.lines[static_cast<std::size_t>(line.line)];
  std::vector<UnderRow> made;
  for (plan::Id& item : items_without_price(order, *results_->job)) made.push_back({std::move(item), {}});
  for (WorkingRow& row : working_rows(order, *results_->job)) made.push_back({{}, std::move(row)});
  if (line.part == std::optional<double>(1)) return made;
  WorkingRow told;
  told.kind = WorkingRow::Kind::told;
  const std::string unit = order.work ? "h" : order.order_unit;
  const QString all = shown_count(order.order_quantity, unit);
  told.name = line.part ? tr("The share of %1: %2 of %3, as it is needed for %4.")
                              .arg(QString::fromStdString(asked_.element), line.quantity, all, tags_of(order))
                        : tr("%1 for %2 together.").arg(all, tags_of(order));
  made.push_back({{}, std::move(told)});
  return made;
}

std::vector<std::string> TakeoffItems::rings(int row) const {
  std::vector<WorkingRow> rows;
  for (const UnderRow& under_row : under(row)) rows.push_back(under_row.row);
  return rings_of(rows);
}

QModelIndex TakeoffItems::index_of_line(int number) const {
  for (std::size_t i = 0; i < lines_.size(); ++i)
    if (lines_[i].line == number && number >= 0) return index(static_cast<int>(i), 0);
  return {};
}

QModelIndex TakeoffItems::index(int row, int column, const QModelIndex& parent) const {
  if (row < 0 || column < 0 || column >= columns || row >= rowCount(parent)) return {};
  return createIndex(row, column, parent.isValid() ? static_cast<quintptr>(parent.row()) + 1 : a_line);
}

QModelIndex TakeoffItems::parent(const QModelIndex& child) const {
  if (!child.isValid() || child.internalId() == a_line) return {};
  return createIndex(line_of(child), 0, a_line);
}

int TakeoffItems::rowCount(const QModelIndex& parent) const {
  if (!parent.isValid()) return static_cast<int>(lines_.size());
  if (parent.internalId() != a_line || parent.column() != 0) return 0;
  const TakeoffRow& line = lines_[static_cast<std::size_t>(parent.row())];
  return line.kind == TakeoffRow::Kind::group ? 0 : static_cast<int>(under(parent.row()).size());
}

int TakeoffItems::columnCount(const QModelIndex&) const { return columns; }

Qt::ItemFlags TakeoffItems::flags(const QModelIndex& index) const {
  return index.isValid() ? Qt::ItemIsEnabled | Qt::ItemIsSelectable : Qt::NoItemFlags;
}

QString TakeoffItems::in_words(const QModelIndex& index) const {
  QStringList words;
  if (const TakeoffRow* line = line_at(index)) {
    if (line->kind == TakeoffRow::Kind::line) words << tr("Stage %1").arg(static_cast<int>(line->stage) + 1);
    if (!line->tag.isEmpty()) words << line->tag;
    words << line->what << line->quantity << line->amount;
    return words.join(QStringLiteral(", "));
  }
  const UnderRow& under_row = *under_at(index);
  if (!under_row.price.empty()) return tr("Give a price for %1").arg(QString::fromStdString(under_row.price));
  const WorkingRow& row = under_row.row;
  if (row.ring > 0) words << QString::number(row.ring);
  words << (row.sign + QLatin1Char(' ') + row.name).trimmed();
  if (!row.value.isEmpty()) words << row.value;
  if (!row.ordered.isEmpty()) words << tr("ordered %1").arg(row.ordered);
  if (row.leads != Leads::nowhere) words << link_word(row.leads);
  return words.join(QStringLiteral(", "));
}

QVariant TakeoffItems::data(const QModelIndex& index, int role) const {
  if (!index.isValid()) return {};
  if (role == Qt::AccessibleTextRole) return in_words(index);
  if (role != Qt::DisplayRole) return {};
  if (const TakeoffRow* line = line_at(index)) {
    if (index.column() == what_column) return line->what;
    return index.column() == quantity_column ? line->quantity : line->amount;
  }
  const UnderRow& under_row = *under_at(index);
  if (!under_row.price.empty()) return {};
  const WorkingRow& row = under_row.row;
  if (index.column() == what_column) return (row.sign + QLatin1Char(' ') + row.name).trimmed();
  if (index.column() == quantity_column) return row.value;
  if (row.kind == WorkingRow::Kind::order && !row.ordered.isEmpty()) return QStringLiteral("→ ") + row.ordered;
  return link_word(row.leads);
}

}  // namespace ui
