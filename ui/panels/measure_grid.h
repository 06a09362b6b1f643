// Small labels with a number under each, three or two in a row as there is room; and the tag of what is selected.
#pragma once

#include <QWidget>
#include <vector>

#include "ui/panels/six_measures.h"

class QLabel;

namespace ui {

class MeasureGrid : public QWidget {
  Q_OBJECT
 public:
  explicit MeasureGrid(QWidget* parent = nullptr);
  // `old`: the numbers are of a job before this one; they stay, in italics.
  void show_measures(const std::vector<Told>& measures, bool old);
  QString value(const QString& label) const;  // empty where there is none
  bool old() const { return old_; }
  QSize sizeHint() const override;
  bool hasHeightForWidth() const override { return true; }
  int heightForWidth(int width) const override;

 protected:
  void resizeEvent(QResizeEvent* event) override;

 private:
  struct Cell {
    QLabel* label = nullptr;
    QLabel* value = nullptr;
  };
  int columns(int width) const;
  int place(int width, bool really) const;
  std::vector<Cell> cells_;
  std::size_t used_ = 0;
  bool old_ = false;
};

// The cut-corner tag with an element's id.
class TagLabel : public QWidget {
  Q_OBJECT
 public:
  explicit TagLabel(QWidget* parent = nullptr);
  void show_tag(const QString& text);
  QSize sizeHint() const override;

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  QString text_;
};

}  // namespace ui
