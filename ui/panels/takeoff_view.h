// The list of the takeoff: a tree of two levels, painted as a cash book with the stages in its gutter.
#pragma once

#include <QStyledItemDelegate>
#include <QTreeView>

#include "ui/panels/takeoff_items.h"

namespace ui {

// Paints one cell. Old numbers, while new ones are computed, in ink 3 and italics.
class TakeoffDelegate : public QStyledItemDelegate {
  Q_OBJECT
 public:
  TakeoffDelegate(const TakeoffItems& items, QTreeView& view);
  void set_old(bool old) { old_ = old; }
  bool old() const { return old_; }
  void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
  QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;
  static QFont font_of(const TakeoffItems& items, const QModelIndex& index, bool open);
  static int gutter();  // from the left edge to the words

 private:
  void paint_line(QPainter& painter, const QRect& cell, const QModelIndex& index, const TakeoffRow& line) const;
  void paint_under(QPainter& painter, const QRect& cell, const QModelIndex& index, const UnderRow& under) const;
  int words_left(const QModelIndex& index) const;  // from the cell's left edge
  const TakeoffItems& items_;
  QTreeView& view_;
  bool old_ = false;
};

// Right opens a line, Left closes it, Enter and a click do either; on a row of the working they follow its link.
// Columns are as wide as their figures, and what a line is for gets the rest, in two lines where it must.
class TakeoffView : public QTreeView {
  Q_OBJECT
 public:
  explicit TakeoffView(TakeoffItems& items, QWidget* parent = nullptr);
  void set_old(bool old);
  bool old() const { return delegate_->old(); }
  void set_empty_words(const QString& words) { empty_words_ = words; }
  void fit_columns();

 signals:
  void followed(const QModelIndex& index);  // a row of the working, by its link
  void pointed(const QModelIndex& index);   // under the pointer or with the keyboard; invalid: nowhere

 protected:
  void drawRow(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
  void drawBranches(QPainter*, const QRect&, const QModelIndex&) const override {}
  void paintEvent(QPaintEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void leaveEvent(QEvent* event) override;
  void mouseReleaseEvent(QMouseEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void currentChanged(const QModelIndex& current, const QModelIndex& previous) override;
  void changeEvent(QEvent* event) override;

 private:
  void open_or_follow(const QModelIndex& index);
  void paint_gutter(QPainter& painter, const QRect& row, const QModelIndex& index) const;
  TakeoffItems& items_;
  TakeoffDelegate* delegate_;
  QString empty_words_;
};

}  // namespace ui
