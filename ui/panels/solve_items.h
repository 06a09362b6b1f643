// The rows of what is to solve.
#pragma once

#include <QAbstractListModel>
#include <QListView>
#include <QStyledItemDelegate>
#include <vector>

#include "problem/problem.h"

namespace ui {

// The word and the drawing that tell how grave it is.
QString grave_word(problem::Severity severity);  // "Problem", "To decide", "To know"
QString grave_icon(problem::Severity severity);
QColor grave_colour(problem::Severity severity);
// "Text. Mend." with capitals and full stops.
QString sentence_of(const std::string& text);

// Problems first, then flags, then notices where they are shown; each kind in the order found.
class SolveItems : public QAbstractListModel {
  Q_OBJECT
 public:
  using QAbstractListModel::QAbstractListModel;
  void show(std::vector<problem::Problem> all, bool notices);
  const problem::Problem& at(int row) const { return shown_[static_cast<std::size_t>(row)]; }
  int count(problem::Severity severity) const;
  int rowCount(const QModelIndex& parent = {}) const override;
  QVariant data(const QModelIndex& index, int role) const override;

 private:
  std::vector<problem::Problem> all_;
  std::vector<problem::Problem> shown_;
};

class SolveDelegate : public QStyledItemDelegate {
  Q_OBJECT
 public:
  explicit SolveDelegate(QListView& view);
  void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
  QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;

 private:
  QRect text_room(const QRect& row) const;
  QListView& view_;
};

class SolveView : public QListView {
  Q_OBJECT
 public:
  explicit SolveView(QWidget* parent = nullptr);

 signals:
  void wanted(int row);

 protected:
  void keyPressEvent(QKeyEvent* event) override;
  void paintEvent(QPaintEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
};

}  // namespace ui
