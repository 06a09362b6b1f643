#include "ui/print/slices.h"

#include <algorithm>

#include "ui/print/paper.h"

namespace ui {

namespace {

Slice gap(double high) {
  Slice made;
  made.height = high;
  made.paint = [](QPainter&, const QRectF&) {};
  return made;
}

Slice rule() {
  Slice made;
  made.height = mm(3);
  made.paint = [](QPainter& painter, const QRectF& room) {
    painter.setPen(ink_pen(0.35));
    painter.drawLine(QPointF(room.left(), room.center().y()), QPointF(room.right(), room.center().y()));
  };
  return made;
}

double total(const std::vector<Slice>& all) {
  double high = 0;
  for (const Slice& slice : all) high += slice.height;
  return high;
}

std::vector<Slice> column(const std::vector<sheets::Block>& blocks, const Setting& setting) {
  std::vector<Slice> made;
  for (const sheets::Block& block : blocks)
    for (Slice& slice : slices_of(block, setting)) made.push_back(std::move(slice));
  return made;
}

void paint_column(QPainter& painter, const std::vector<Slice>& all, QRectF room) {
  for (const Slice& slice : all) {
    slice.paint(painter, QRectF(room.left(), room.top(), room.width(), slice.height));
    room.setTop(room.top() + slice.height);
  }
}

Slice beside(const sheets::Beside& two, const Setting& setting) {
  constexpr double between = mm(6);
  const double left_width = (setting.width - between) * two.share;
  Setting left = setting, right = setting;
  left.width = left_width;
  right.width = setting.width - between - left_width;
  auto lefts = std::make_shared<std::vector<Slice>>(column(two.left, left));
  auto rights = std::make_shared<std::vector<Slice>>(column(two.right, right));
  Slice made;
  made.height = std::max(total(*lefts), total(*rights));
  for (const auto& side : {lefts, rights})
    for (const Slice& slice : *side)
      if (slice.scale > 0 && made.scale == 0) made.scale = slice.scale;
  made.paint = [lefts, rights, left, right](QPainter& painter, const QRectF& room) {
    paint_column(painter, *lefts, {room.left(), room.top(), left.width, room.height()});
    paint_column(painter, *rights, {room.right() - right.width, room.top(), right.width, room.height()});
  };
  return made;
}

struct Cutter {
  const Setting& setting;
  using Made = std::vector<Slice>;
  Made operator()(const sheets::Heading& block) const { return {heading_slice(block, setting)}; }
  Made operator()(const sheets::Paragraph& block) const { return paragraph_slices(block, setting); }
  Made operator()(const sheets::Bring& block) const { return {bring_slice(block, setting)}; }
  Made operator()(const sheets::Hold& block) const { return {hold_slice(block, setting)}; }
  Made operator()(const sheets::Caution& block) const { return {caution_slice(block, setting)}; }
  Made operator()(const sheets::Framed& block) const { return {framed_slice(block, setting)}; }
  Made operator()(const sheets::Table& block) const { return table_slices(block, setting); }
  Made operator()(const sheets::Drawing& block) const { return {drawing_slice(block, setting)}; }
  Made operator()(const sheets::Blanks& block) const { return {blanks_slice(block, setting)}; }
  Made operator()(const sheets::Squares& block) const { return {squares_slice(block, setting)}; }
  Made operator()(const sheets::Bars& block) const { return {bars_slice(block, setting)}; }
  Made operator()(const sheets::Rule&) const { return {rule()}; }
  Made operator()(const sheets::Gap& block) const { return {gap(mm(block.mm))}; }
  Made operator()(const sheets::NewPage&) const {
    Slice made = gap(0);
    made.new_page = true;
    return {made};
  }
  Made operator()(const std::shared_ptr<const sheets::Beside>& block) const { return {beside(*block, setting)}; }
};

bool looks_back(const sheets::Block& block) {
  return std::holds_alternative<sheets::Hold>(block) || std::holds_alternative<sheets::Caution>(block);
}

// Where a stage goes on over a page its heading is told again, smaller.
std::shared_ptr<const Slice> heading_again(const sheets::Passage& passage, const Setting& setting) {
  if (!passage.stage || passage.blocks.empty()) return nullptr;
  const auto* heading = std::get_if<sheets::Heading>(&passage.blocks.front());
  if (!heading) return nullptr;
  return std::make_shared<const Slice>(heading_slice({heading->words, {}, heading->number, 2}, setting));
}

// The first of a stage's hold points and cautions keeps to the line before it, and no last one stands alone; all of
// them together would leave most of a page empty.
std::vector<Slice> cut(const sheets::Passage& passage, const Setting& setting) {
  std::vector<Slice> made;
  bool before = true;
  for (const sheets::Block& block : passage.blocks) {
    if (looks_back(block) && !before && !made.empty()) made.back().with_next = true;
    before = looks_back(block);
    for (Slice& slice : slices_of(block, setting)) made.push_back(std::move(slice));
  }
  const auto again = heading_again(passage, setting);
  for (Slice& slice : made) {
    slice.stage = passage.stage;
    if (!slice.head) slice.head = again;
  }
  if (made.empty()) return made;
  made.front().head = nullptr;
  if (made.size() < 2) return made;
  made.front().with_next = true;
  made[made.size() - 2].with_next = true;
  if (passage.whole)
    for (std::size_t i = 0; i + 1 < made.size(); ++i) made[i].with_next = true;
  return made;
}

}  // namespace

std::vector<Slice> slices_of(const sheets::Block& block, const Setting& setting) {
  return std::visit(Cutter{setting}, block);
}

std::vector<Slice> slices(const sheets::Sheet& sheet, const Setting& setting) {
  std::vector<Slice> made;
  for (const sheets::Passage& passage : sheet.passages)
    for (Slice& slice : cut(passage, setting)) made.push_back(std::move(slice));
  return made;
}

}  // namespace ui
