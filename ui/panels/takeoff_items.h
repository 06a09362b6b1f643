// The rows of the takeoff as Qt's views read them: lines, and under each its working.
#pragma once

#include <QAbstractItemModel>
#include <vector>

#include "ui/panels/takeoff_model.h"
#include "ui/panels/working_rows.h"

namespace ui {

// A row under a line: a price to give (of `price`), or a row of the working.
struct UnderRow {
  plan::Id price;
  WorkingRow row;
};

// Columns: what; quantity, or the value of a term; amount, or where a term leads.
class TakeoffItems : public QAbstractItemModel {
  Q_OBJECT
 public:
  enum Column { what_column, quantity_column, amount_column, columns };
  explicit TakeoffItems(QObject* parent = nullptr) : QAbstractItemModel(parent) {}

  void show(std::shared_ptr<const results::Results> results, const Asked& asked);
  const std::vector<TakeoffRow>& lines() const { return lines_; }
  const results::Results* results() const { return results_.get(); }
  bool shows_tags() const { return asked_.scope != Scope::element; }

  const TakeoffRow* line_at(const QModelIndex& index) const;              // of the line itself; null under it
  const UnderRow* under_at(const QModelIndex& index) const;               // null of a line
  const std::vector<UnderRow>& under(int row) const;                      // made when first asked for
  const estimate::OrderLine* order_line(const QModelIndex& index) const;  // of the line or the one that it is under
  std::vector<std::string> rings(int row) const;                          // see rings_of
  QModelIndex index_of_line(int number) const;  // by its number in the estimate; invalid: not listed

  QModelIndex index(int row, int column, const QModelIndex& parent = {}) const override;
  QModelIndex parent(const QModelIndex& child) const override;
  int rowCount(const QModelIndex& parent = {}) const override;
  int columnCount(const QModelIndex& parent = {}) const override;
  QVariant data(const QModelIndex& index, int role) const override;
  Qt::ItemFlags flags(const QModelIndex& index) const override;

 private:
  std::vector<UnderRow> made_under(const TakeoffRow& line) const;
  QString in_words(const QModelIndex& index) const;  // the whole row in words
  std::shared_ptr<const results::Results> results_;
  Asked asked_;
  std::vector<TakeoffRow> lines_;
  mutable std::vector<std::vector<UnderRow>> under_;
};

// "plan", "section", "catalogue", "choices": the word of the link; empty: no link.
QString link_word(Leads leads);

}  // namespace ui
