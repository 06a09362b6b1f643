#include <QPainter>
#include <algorithm>

#include "ui/look/theme.h"
#include "ui/paint/figure_painter.h"
#include "ui/panels/takeoff_view.h"

namespace ui {

namespace {

constexpr int right_margin = 10;

int tag_room() { return px(54); }
int step_in() { return px(10); }  // of what a figure is made of
int ring_room() { return px(24); }

void paint_ringed(QPainter& painter, QPointF centre, int number) {
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setPen(QPen(theme().chalk, 1.2));
  painter.setBrush(theme().raised);
  painter.setFont(ui::font(Type::small, true));
  const QString text = QString::number(number);
  const double radius = px(8.5);
  const double wide = std::max(radius, QFontMetricsF(painter.font()).horizontalAdvance(text) / 2 + px(3));
  painter.drawRoundedRect(QRectF(centre.x() - wide, centre.y() - radius, 2 * wide, 2 * radius), radius, radius);
  painter.setRenderHint(QPainter::Antialiasing, false);
  painter.drawText(QRectF(centre.x() - wide, centre.y() - radius, 2 * wide, 2 * radius), int(Qt::AlignCenter), text);
}

}  // namespace

TakeoffDelegate::TakeoffDelegate(const TakeoffItems& items, QTreeView& view) : items_(items), view_(view) {}

int TakeoffDelegate::gutter() { return px(30); }

QFont TakeoffDelegate::font_of(const TakeoffItems& items, const QModelIndex& index, bool open) {
  if (const TakeoffRow* line = items.line_at(index.siblingAtColumn(0)))
    return ui::font(Type::text, open || line->kind == TakeoffRow::Kind::group);
  const UnderRow* under = items.under_at(index.siblingAtColumn(0));
  const bool order = under && under->row.kind == WorkingRow::Kind::order;
  return ui::font(Type::note, order && index.column() == TakeoffItems::amount_column);
}

int TakeoffDelegate::words_left(const QModelIndex& index) const {
  if (index.column() != TakeoffItems::what_column) return 0;
  if (const TakeoffRow* line = items_.line_at(index)) {
    if (line->kind == TakeoffRow::Kind::group) return px(6);
    return gutter() + (items_.shows_tags() ? tag_room() : 0);
  }
  const WorkingRow& row = items_.under_at(index)->row;
  if (row.kind == WorkingRow::Kind::told || row.kind == WorkingRow::Kind::order) return gutter();
  return gutter() + std::min(row.depth, 5) * step_in() + ring_room();
}

QSize TakeoffDelegate::sizeHint(const QStyleOptionViewItem&, const QModelIndex& index) const {
  const UnderRow* under = items_.under_at(index);
  if (under && !under->price.empty()) return {px(80), px(68)};
  const int least = px(under ? 20 : 24);
  if (index.column() != TakeoffItems::what_column) return {px(40), least};
  const bool spans = under && under->row.kind == WorkingRow::Kind::told;
  const int room = (spans ? view_.viewport()->width() : view_.columnWidth(0)) - words_left(index) - px(6);
  const QFontMetrics metrics(font_of(items_, index, view_.isExpanded(index)));
  const QRect words = metrics.boundingRect(QRect(0, 0, std::max(room, px(60)), 10000),
                                           int(Qt::TextWordWrap | Qt::AlignLeft), index.data().toString());
  return {px(80), std::max(least, words.height() + px(under ? 4 : 7))};
}

void TakeoffDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const {
  painter->save();
  if (const TakeoffRow* line = items_.line_at(index)) paint_line(*painter, option.rect, index, *line);
  if (const UnderRow* under = items_.under_at(index); under && under->price.empty())
    paint_under(*painter, option.rect, index, *under);
  painter->restore();
}

// Figures stand on the first line of what they are for.
void TakeoffDelegate::paint_line(QPainter& painter, const QRect& cell, const QModelIndex& index,
                                 const TakeoffRow& line) const {
  const bool open = view_.isExpanded(index.siblingAtColumn(0));
  QFont font = font_of(items_, index, open);
  const int band = px(24);
  painter.setPen(theme().ink);
  if (index.column() == TakeoffItems::what_column) {
    if (items_.shows_tags() && !line.tag.isEmpty())
      paint_tag(painter, QPointF(cell.left() + gutter() + tag_room() / 2.0 - px(4), cell.top() + band / 2.0), line.tag,
                false);
    painter.setFont(font);
    painter.setPen(theme().ink);
    const QFontMetrics metrics(font);
    const int top = cell.top() + (band - metrics.height()) / 2;
    painter.drawText(
        QRect(cell.left() + words_left(index), top, cell.width() - words_left(index) - px(6), cell.height()),
        int(Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap), index.data().toString());
    return;
  }
  const bool flagged = line.no_price && index.column() == TakeoffItems::amount_column;
  if (old_) {
    font.setItalic(true);
    painter.setPen(theme().ink3);
  }
  if (flagged) {
    font.setBold(true);
    painter.setPen(theme().flag);
  }
  painter.setFont(font);
  const int margin = index.column() == TakeoffItems::amount_column ? px(right_margin) : px(4);
  const QRect room(cell.left(), cell.top(), cell.width() - margin, band);
  painter.drawText(room, int(Qt::AlignRight | Qt::AlignVCenter), index.data().toString());
  if (!flagged) return;
  const int wide = QFontMetrics(font).horizontalAdvance(index.data().toString());
  paint_icon(painter, QStringLiteral("solve"),
             QRectF(room.right() - wide - px(20), cell.top() + (band - px(16)) / 2.0, px(16), px(16)), theme().flag);
}

void TakeoffDelegate::paint_under(QPainter& painter, const QRect& cell, const QModelIndex& index,
                                  const UnderRow& under) const {
  const WorkingRow& row = under.row;
  QFont font = font_of(items_, index, false);
  const bool order = row.kind == WorkingRow::Kind::order;
  const bool quiet = order || row.kind == WorkingRow::Kind::told || row.kind == WorkingRow::Kind::made;
  painter.setPen(quiet ? theme().ink2 : theme().ink);
  const int band = px(20);
  if (index.column() == TakeoffItems::what_column) {
    const int left = words_left(index);
    if (row.ring > 0)
      paint_ringed(painter, QPointF(cell.left() + left - ring_room() + px(9), cell.top() + band / 2.0 + 0.5), row.ring);
    if (order)
      painter.fillRect(
          QRect(cell.left() + gutter(), cell.top(), view_.viewport()->width() - gutter() - px(right_margin), 1),
          theme().rule);
    painter.setFont(font);
    painter.setPen(quiet ? theme().ink2 : theme().ink);
    const int top = cell.top() + std::max(px(2), (band - QFontMetrics(font).height()) / 2);
    painter.drawText(QRect(cell.left() + left, top, cell.width() - left - px(6), cell.height()),
                     int(Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap), index.data().toString());
    return;
  }
  const bool link = index.column() == TakeoffItems::amount_column && row.leads != Leads::nowhere;
  if (old_ && !link) {
    font.setItalic(true);
    painter.setPen(theme().ink3);
  }
  if (link) {
    font.setUnderline(true);
    painter.setPen(theme().chalk);
  }
  painter.setFont(font);
  const bool value = index.column() == TakeoffItems::quantity_column;
  const QRect room(cell.left() + (value ? 0 : px(12)), cell.top(), cell.width() - px(value ? 4 : 12), band);
  painter.drawText(room, value ? int(Qt::AlignRight | Qt::AlignVCenter) : int(Qt::AlignLeft | Qt::AlignVCenter),
                   index.data().toString());
}

}  // namespace ui
