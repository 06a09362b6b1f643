// The list of the catalogue's entries as it is wanted: one group, or all that hold the words searched for.
#pragma once

#include <QAbstractTableModel>
#include <map>
#include <optional>

#include "ui/catalogue/catalogue_groups.h"
#include "units/read_length.h"

namespace ui {

// One row as it is shown. `drafts` of the model are edits that the catalogue did not take yet.
struct EntryRow {
  catalogue::Key key;
  QString name;
  QString size;  // size of an item, limits, hours, what is built: what tells it from its neighbours
  QString price;
  QString from;  // supplier or source
  QString state;
  double price_order = 0;
  bool retired = false;
};

using Drafts = std::map<catalogue::Key, catalogue::Entry>;

class EntryModel : public QAbstractTableModel {
  Q_OBJECT
 public:
  using QAbstractTableModel::QAbstractTableModel;
  static constexpr int columns = 5;
  void set_units(units::System system) { system_ = system; }  // of what is shown next

  // Words are looked for in all groups, in names, ids, details and suppliers; without any the group is shown.
  void show(const catalogue::Stock& stock, const Drafts& drafts, std::size_t group, const QString& words, bool retired);
  const EntryRow* row(int at) const;            // null past the end
  int row_of(const catalogue::Key& key) const;  // -1: not in the list

  int rowCount(const QModelIndex& parent = {}) const override;
  int columnCount(const QModelIndex& parent = {}) const override;
  QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
  QVariant headerData(int section, Qt::Orientation orientation, int role = Qt::DisplayRole) const override;
  void sort(int column, Qt::SortOrder order = Qt::AscendingOrder) override;

 private:
  void put_in_order();
  units::System system_ = units::System::us;
  std::vector<EntryRow> rows_;
  int by_ = 0;
  Qt::SortOrder order_ = Qt::AscendingOrder;
  std::size_t kind_ = 0;
  bool searched_ = false;
};

// "7 7/8 × 3 7/8 × 2 3/8 in" of an item, "1/16 to 3/16 in, usual 1/8" of a limit ...
QString size_of(const catalogue::Entry& entry, units::System system);

}  // namespace ui
