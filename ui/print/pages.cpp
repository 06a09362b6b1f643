#include "ui/print/pages.h"

#include <algorithm>

#include "ui/paint/figure_painter.h"
#include "ui/print/heads.h"

namespace ui {

namespace {

using Slices = std::vector<std::shared_ptr<const Slice>>;

// Slices that stay together, from `first` on.
std::size_t chain_end(const Slices& all, std::size_t first) {
  std::size_t end = first + 1;
  while (end < all.size() && all[end - 1]->with_next && !all[end]->new_page) ++end;
  return end;
}

double high(const Slices& all, std::size_t first, std::size_t end) {
  double sum = 0;
  for (std::size_t i = first; i < end; ++i) sum += all[i]->height;
  return sum;
}

// Fills one page after the other.
class Filler {
 public:
  Filler(std::vector<LaidPage>& pages, std::function<QRectF(bool)> body) : pages_(pages), body_(std::move(body)) {
    turn();
  }
  void take(const Slices& all) {
    for (std::size_t first = 0; first < all.size();) {
      const std::size_t end = chain_end(all, first);
      if (all[first]->new_page) {
        if (!pages_.back().placed.empty()) turn();
        ++first;
        continue;
      }
      const double needed = high(all, first, end);
      if (y_ + needed > room_.bottom() && !pages_.back().placed.empty()) turn_to(*all[first]);
      // A chain longer than a page is parted after all, slice by slice.
      for (; first < end; ++first) {
        if (y_ + all[first]->height > room_.bottom() && !pages_.back().placed.empty()) turn_to(*all[first]);
        put(all[first]);
      }
    }
  }

 private:
  void turn() {
    pages_.emplace_back();
    room_ = body_(pages_.size() == 1);
    y_ = room_.top();
  }
  void turn_to(const Slice& next) {
    turn();
    if (next.head) put(next.head);
  }
  void put(const std::shared_ptr<const Slice>& slice) {
    const double height = slice->stretches ? std::max(slice->height, room_.bottom() - y_) : slice->height;
    LaidPage& page = pages_.back();
    page.placed.push_back({slice, y_, height});
    if (slice->stage) page.stages.insert(*slice->stage);
    if (slice->scale > 0) page.scales.insert(slice->scale);
    page.tags.insert(slice->tags.begin(), slice->tags.end());
    y_ += height;
  }
  std::vector<LaidPage>& pages_;
  std::function<QRectF(bool)> body_;
  QRectF room_;
  double y_ = 0;
};

}  // namespace

LaidSheet::LaidSheet(sheets::Sheet sheet, const sheets::Printed& printed, Paper paper)
    : sheet_(std::move(sheet)), printed_(printed), page_{paper, sheet_.landscape} {
  if (sheet_.key_plan) key_plan_ = key_plan(*printed_.results);
  fill();
}

void LaidSheet::fill() {
  const QRectF later = body(false);
  const Setting setting{later.width(), later.height(), printed_.job().heading.units};
  Slices all;
  for (Slice& slice : slices(sheet_, setting)) all.push_back(std::make_shared<const Slice>(std::move(slice)));
  Filler(pages_, [this](bool first) { return body(first); }).take(all);
  if (pages_.size() > 1 && pages_.back().placed.empty()) pages_.pop_back();
}

void LaidSheet::paint(QPainter& painter, std::size_t number) const {
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  painter.fillRect(QRectF(QPointF(), page_.size()), Qt::white);
  paint_head(painter, number);
  const QRectF inside = page_.inside();
  for (const OnPage& placed : pages_.at(number).placed) {
    painter.save();
    placed.slice->paint(painter, QRectF(inside.left(), placed.top, inside.width(), placed.height));
    painter.restore();
  }
  paint_foot(painter, number);
  painter.restore();
}

}  // namespace ui
