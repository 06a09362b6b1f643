// How the lists of the job book look: rows without a grid, columns as wide as their words.
#pragma once

#include <QStyledItemDelegate>

class QPushButton;
class QTableView;

namespace ui {

// The chosen row says where one is; the cell of it that has the keyboard is not marked besides.
class WholeRows : public QStyledItemDelegate {
 public:
  using QStyledItemDelegate::QStyledItemDelegate;
  void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
  QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;

 protected:
  void initStyleOption(QStyleOptionViewItem* option, const QModelIndex& index) const override;
};

// Read only, by rows, Tab leaves it; `name` for tests, `spoken` for those who hear it.
void make_list(QTableView* table, const char* name, const QString& spoken);
// Columns as wide as their words but for `wide`, which takes the rest.
void set_widths(QTableView* table, int wide);
// The one main button of a window; its bold words have their room.
void make_main(QPushButton* button);

}  // namespace ui
