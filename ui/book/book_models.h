// The lists of the job book: jobs as they are wanted, and the versions of one.
#pragma once

#include <QAbstractTableModel>
#include <optional>
#include <vector>

#include "store/job_rows.h"
#include "store/version_tables.h"

namespace ui {

class JobModel : public QAbstractTableModel {
  Q_OBJECT
 public:
  using QAbstractTableModel::QAbstractTableModel;
  static constexpr int columns = 8;  // in the order of store::Column

  void take(std::vector<store::JobRow> all);
  void want(const store::Wanted& wanted);
  const store::Wanted& wanted() const { return wanted_; }
  const store::JobRow* job(int row) const;  // null past the end
  int row_of(std::int64_t id) const;        // -1: not in the list

  int rowCount(const QModelIndex& parent = {}) const override;
  int columnCount(const QModelIndex& parent = {}) const override;
  QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
  QVariant headerData(int section, Qt::Orientation orientation, int role = Qt::DisplayRole) const override;
  void sort(int column, Qt::SortOrder order = Qt::AscendingOrder) override;  // -1: the newest first

 private:
  QString text(const store::JobRow& row, int column) const;
  std::vector<store::JobRow> all_;
  std::vector<store::JobRow> shown_;
  store::Wanted wanted_;
};

class VersionModel : public QAbstractTableModel {
  Q_OBJECT
 public:
  using QAbstractTableModel::QAbstractTableModel;
  static constexpr int columns = 7;  // number, name, note, saved, program, total, printed

  void take(std::vector<store::VersionRow> versions);
  const store::VersionRow* version(int row) const;

  int rowCount(const QModelIndex& parent = {}) const override;
  int columnCount(const QModelIndex& parent = {}) const override;
  QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
  QVariant headerData(int section, Qt::Orientation orientation, int role = Qt::DisplayRole) const override;

 private:
  QString text(const store::VersionRow& row, int column) const;
  std::vector<store::VersionRow> versions_;
};

}  // namespace ui
