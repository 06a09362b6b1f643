// Widgets in a row that goes on in the next one where the width ends, as words do.
#pragma once

#include <QLayout>
#include <vector>

namespace ui {

// What is `at_right` is pushed to the right end of the last row.
class FlowLayout : public QLayout {
 public:
  explicit FlowLayout(QWidget* parent = nullptr) : QLayout(parent) {}
  ~FlowLayout() override;
  void set_gaps(int across, int down);
  void set_least_row(int height);  // of each row; what is lower stands in its middle
  void add_at_right(QWidget* widget);

  void addItem(QLayoutItem* item) override;
  int count() const override { return static_cast<int>(items_.size()); }
  QLayoutItem* itemAt(int index) const override;
  QLayoutItem* takeAt(int index) override;
  Qt::Orientations expandingDirections() const override { return {}; }
  bool hasHeightForWidth() const override { return true; }
  int heightForWidth(int width) const override { return placed({0, 0, width, 0}, false); }
  QSize sizeHint() const override { return minimumSize(); }
  QSize minimumSize() const override;
  void setGeometry(const QRect& room) override;

 private:
  struct Kept {
    QLayoutItem* item;
    bool at_right = false;
  };
  int placed(const QRect& room, bool really) const;  // gives the height
  std::vector<Kept> items_;
  int across_ = 8;
  int down_ = 4;
  int least_row_ = 0;
};

}  // namespace ui
