// A table that is filled in as a field sheet is: Tab and Enter go on to the next cell that the row needs, and at the
// end to the next row, which is there by itself. What can't be understood stays in the cell with a sentence about it.
#pragma once

#include <QAbstractTableModel>
#include <QTableView>

namespace ui {

// Rows are those of the job, then one blank one.
class SheetModel : public QAbstractTableModel {
  Q_OBJECT
 public:
  using QAbstractTableModel::QAbstractTableModel;
  // How the text is understood ("12′ 6 1/2″"), or what is wrong with it; then `wrong` is set.
  struct Echo {
    QString text;
    bool wrong = false;
  };
  virtual Echo echo(const QModelIndex& index, const QString& text) const = 0;
  virtual bool wanted(const QModelIndex& index) const = 0;  // Tab stops there
  bool blank(int row) const { return row == rowCount() - 1; }
};

class FieldSheet : public QTableView {
  Q_OBJECT
 public:
  explicit FieldSheet(SheetModel* model, QWidget* parent = nullptr);
  // The next cell that is wanted; false at the end, where Tab leaves the table.
  bool go_on(const QModelIndex& from, bool back, bool next_row);
  void fit_columns();
  QSize sizeHint() const override;
  void set_shown(int rows, int wide_at_100);  // how large it wants to be; no wider than that

 signals:
  void echoed(const QString& text, bool wrong);

 protected:
  void keyPressEvent(QKeyEvent* event) override;
  bool focusNextPrevChild(bool next) override;
  void focusInEvent(QFocusEvent* event) override;
  void changeEvent(QEvent* event) override;

 private:
  SheetModel* sheet_;
  int rows_shown_ = 6;
  int wide_ = 0;  // px at 100 %; 0: as wide as there is room
};

}  // namespace ui
