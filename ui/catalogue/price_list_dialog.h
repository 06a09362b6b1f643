// What a supplier's list would change, before it does: every row of the file, old and new price, by how much, and a
// tick where it can be taken. Rows that want a look are not ticked beforehand.
#pragma once

#include <QDialog>
#include <vector>

#include "files/price_list.h"

class QLabel;
class QPushButton;
class QTableWidget;

namespace ui {

class PriceListDialog : public QDialog {
  Q_OBJECT
 public:
  // `stock` is read for names.
  PriceListDialog(files::PriceList list, const catalogue::Stock& stock, QWidget* parent = nullptr);
  std::vector<std::size_t> chosen() const;  // places of the list's rows
  const files::PriceList& list() const { return list_; }

 private:
  void fill(const catalogue::Stock& stock);
  void count();
  void tick_all(bool on);
  QString summary() const;
  files::PriceList list_;
  std::vector<std::size_t> shown_;  // row of the table -> row of the list
  QTableWidget* table_;
  QLabel* counted_;
  QPushButton* apply_;
};

// "price goes up", "not known", "per piece, not per sq ft" ...: what becomes of a row, in words.
QString fate_words(const files::PriceRow& row);
QString percent_words(const files::PriceRow& row);  // "+20.0 %"

}  // namespace ui
