#include "ui/book/book_models.h"

#include "ui/book/book_words.h"

namespace ui {

using store::Column;

namespace {

// A name may hold line breaks and be as long as a book; a cell shows the start of it on one line.
QString on_one_line(const std::string& text) { return QString::fromStdString(text.substr(0, 400)).simplified(); }

QVariant number_side(bool number) { return QVariant((number ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter); }

}  // namespace

void JobModel::take(std::vector<store::JobRow> all) {
  all_ = std::move(all);
  want(wanted_);
}

void JobModel::want(const store::Wanted& wanted) {
  beginResetModel();
  wanted_ = wanted;
  shown_ = store::arranged(all_, wanted_);
  endResetModel();
}

const store::JobRow* JobModel::job(int row) const {
  return row >= 0 && static_cast<std::size_t>(row) < shown_.size() ? &shown_[static_cast<std::size_t>(row)] : nullptr;
}

int JobModel::row_of(std::int64_t id) const {
  for (std::size_t row = 0; row < shown_.size(); ++row)
    if (shown_[row].id == id) return static_cast<int>(row);
  return -1;
}

int JobModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(shown_.size());
}

int JobModel::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : columns; }

QString JobModel::text(const store::JobRow& row, int column) const {
  switch (static_cast<Column>(column)) {
    case Column::number: return on_one_line(row.number);
    case Column::name: return on_one_line(row.name);
    case Column::customer: return on_one_line(row.customer);
    case Column::place: return on_one_line(row.place);
    case Column::state: return row.archived ? tr("%1, archived").arg(state_name(row.state)) : state_name(row.state);
    case Column::changed: return shown_when(row.changed);
    case Column::versions: return row.versions == 0 ? QString() : QString::number(row.versions);
    case Column::total: return row.total ? shown_sum(*row.total, row.currency, row.decimals) : QString();
  }
  return {};
}

QVariant JobModel::data(const QModelIndex& index, int role) const {
  const store::JobRow* row = job(index.row());
  if (row == nullptr) return {};
  const auto column = static_cast<Column>(index.column());
  if (role == Qt::DisplayRole || role == Qt::ToolTipRole) return text(*row, index.column());
  if (role == Qt::DecorationRole && column == Column::state) return state_sign(row->state);
  if (role == Qt::TextAlignmentRole) return number_side(column == Column::versions || column == Column::total);
  return {};
}

QVariant JobModel::headerData(int section, Qt::Orientation orientation, int role) const {
  const auto column = static_cast<Column>(section);
  if (orientation != Qt::Horizontal) return {};
  if (role == Qt::TextAlignmentRole) return number_side(column == Column::versions || column == Column::total);
  if (role != Qt::DisplayRole) return {};
  switch (column) {
    case Column::number: return tr("No.");
    case Column::name: return tr("Job");
    case Column::customer: return tr("Customer");
    case Column::place: return tr("Place");
    case Column::state: return tr("State");
    case Column::changed: return tr("Changed");
    case Column::versions: return tr("Versions");
    case Column::total: return tr("Total");
  }
  return {};
}

void JobModel::sort(int column, Qt::SortOrder order) {
  store::Wanted wanted = wanted_;
  wanted.by = column < 0 ? std::nullopt : std::optional(static_cast<Column>(column));
  wanted.falling = order == Qt::DescendingOrder;
  want(wanted);
}

void VersionModel::take(std::vector<store::VersionRow> versions) {
  beginResetModel();
  versions_ = std::move(versions);
  endResetModel();
}

const store::VersionRow* VersionModel::version(int row) const {
  return row >= 0 && static_cast<std::size_t>(row) < versions_.size() ? &versions_[static_cast<std::size_t>(row)]
                                                                      : nullptr;
}

int VersionModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(versions_.size());
}

int VersionModel::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : columns; }

QString VersionModel::text(const store::VersionRow& row, int column) const {
  switch (column) {
    case 0: return QString::number(row.number);
    case 1: return on_one_line(row.name);
    case 2: return on_one_line(row.note);
    case 3: return shown_when(row.made);
    case 4: return on_one_line(row.program);
    case 5: {
      const QString sum = shown_sum(row.total, row.currency, row.decimals);
      return row.final ? sum : tr("%1, not complete").arg(sum);
    }
    case 6:
      return row.documents == 0 ? tr("No") : row.documents == 1 ? tr("1 sheet") : tr("%1 sheets").arg(row.documents);
    default: return {};
  }
}

QVariant VersionModel::data(const QModelIndex& index, int role) const {
  const store::VersionRow* row = version(index.row());
  if (row == nullptr) return {};
  if (role == Qt::DisplayRole || role == Qt::ToolTipRole) return text(*row, index.column());
  if (role == Qt::TextAlignmentRole) return number_side(index.column() == 0 || index.column() == 5);
  return {};
}

QVariant VersionModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (orientation != Qt::Horizontal) return {};
  if (role == Qt::TextAlignmentRole) return number_side(section == 0 || section == 5);
  if (role != Qt::DisplayRole) return {};
  const QString heads[columns] = {tr("Version"), tr("Name"),  tr("Note"),  tr("Saved"),
                                  tr("Program"), tr("Total"), tr("Issued")};
  return section < columns ? heads[section] : QString();
}

}  // namespace ui
