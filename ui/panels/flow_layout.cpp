#include "ui/panels/flow_layout.h"

#include <QWidget>
#include <algorithm>

namespace ui {

FlowLayout::~FlowLayout() {
  for (const Kept& kept : items_) delete kept.item;
}

void FlowLayout::set_gaps(int across, int down) {
  across_ = across;
  down_ = down;
  invalidate();
}

void FlowLayout::set_least_row(int height) {
  least_row_ = height;
  invalidate();
}

void FlowLayout::addItem(QLayoutItem* item) { items_.push_back({item, false}); }

void FlowLayout::add_at_right(QWidget* widget) {
  addWidget(widget);
  items_.back().at_right = true;
}

QLayoutItem* FlowLayout::itemAt(int index) const {
  return index >= 0 && index < count() ? items_[static_cast<std::size_t>(index)].item : nullptr;
}

QLayoutItem* FlowLayout::takeAt(int index) {
  if (index < 0 || index >= count()) return nullptr;
  QLayoutItem* taken = items_[static_cast<std::size_t>(index)].item;
  items_.erase(items_.begin() + index);
  return taken;
}

QSize FlowLayout::minimumSize() const {
  QSize size(0, least_row_);
  for (const Kept& kept : items_)
    if (!kept.item->isEmpty()) size = size.expandedTo(QSize(kept.item->minimumSize().width(), size.height()));
  const QMargins margins = contentsMargins();
  return size + QSize(margins.left() + margins.right(), margins.top() + margins.bottom());
}

void FlowLayout::setGeometry(const QRect& room) {
  QLayout::setGeometry(room);
  placed(room, true);
}

int FlowLayout::placed(const QRect& outer, bool really) const {
  struct Put {
    const Kept* kept;
    QSize size;
  };
  const QRect room = outer.marginsRemoved(contentsMargins());
  std::vector<std::vector<Put>> rows(1);
  int x = 0;
  for (const Kept& kept : items_) {
    if (kept.item->isEmpty()) continue;
    QSize size = kept.item->sizeHint();
    if (size.width() > room.width()) {
      size.setWidth(room.width());
      if (kept.item->hasHeightForWidth()) size.setHeight(kept.item->heightForWidth(room.width()));
    }
    if (!rows.back().empty() && x + size.width() > room.width()) {
      rows.emplace_back();
      x = 0;
    }
    rows.back().push_back({&kept, size});
    x += size.width() + across_;
  }
  int y = room.top();
  for (const std::vector<Put>& row : rows) {
    int high = least_row_, right = 0;
    for (const Put& put : row) {
      high = std::max(high, put.size.height());
      if (put.kept->at_right) right += put.size.width() + across_;
    }
    int left_x = room.left(), right_x = room.right() + 1 - std::max(0, right - across_);
    for (const Put& put : row) {
      int& at = put.kept->at_right ? right_x : left_x;
      if (really) put.kept->item->setGeometry({{at, y + (high - put.size.height()) / 2}, put.size});
      at += put.size.width() + across_;
    }
    y += high + down_;
  }
  return y - down_ + contentsMargins().bottom() - outer.top();
}

}  // namespace ui
