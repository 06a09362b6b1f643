#include "ui/panels/takeoff_view.h"

#include <QHeaderView>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <algorithm>

#include "ui/look/theme.h"

namespace ui {

TakeoffView::TakeoffView(TakeoffItems& items, QWidget* parent)
    : QTreeView(parent), items_(items), delegate_(new TakeoffDelegate(items, *this)) {
  delegate_->setParent(this);
  setObjectName(QStringLiteral("takeoff_list"));
  setModel(&items);
  setItemDelegate(delegate_);
  setIndentation(0);
  setRootIsDecorated(false);
  setHeaderHidden(true);
  setExpandsOnDoubleClick(false);
  setUniformRowHeights(false);
  setFrameShape(QFrame::NoFrame);
  setSelectionMode(QAbstractItemView::NoSelection);
  setEditTriggers(QAbstractItemView::NoEditTriggers);
  setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
  setMouseTracking(true);
  setTabKeyNavigation(false);
  header()->setStretchLastSection(false);
  header()->setMinimumSectionSize(0);
  connect(this, &QTreeView::entered, this, &TakeoffView::pointed);
}

void TakeoffView::set_old(bool old) {
  if (old == delegate_->old()) return;
  delegate_->set_old(old);
  viewport()->update();
}

// Figures are never cut: the widest of what is listed or open gives the width.
void TakeoffView::fit_columns() {
  int quantity = px(56), amount = px(72);
  const auto take = [&](const QModelIndex& at) {
    const bool open = isExpanded(at.siblingAtColumn(0));
    const QFontMetrics metrics(TakeoffDelegate::font_of(items_, at, open));
    const auto wide = [&](int column) {
      return metrics.horizontalAdvance(at.siblingAtColumn(column).data().toString());
    };
    const TakeoffRow* line = items_.line_at(at);
    quantity = std::max(quantity, wide(TakeoffItems::quantity_column) + px(10));
    amount = std::max(amount, wide(TakeoffItems::amount_column) + px(line && line->no_price ? 34 : 12));
  };
  for (int row = 0; row < items_.rowCount(); ++row) {
    const QModelIndex line = items_.index(row, 0);
    take(line);
    if (!isExpanded(line)) continue;
    for (int under = 0; under < items_.rowCount(line); ++under) take(items_.index(under, 0, line));
  }
  const int all = viewport()->width();
  quantity = std::min(quantity, all * 2 / 5);
  header()->resizeSection(TakeoffItems::quantity_column, quantity);
  header()->resizeSection(TakeoffItems::amount_column, amount);
  header()->resizeSection(TakeoffItems::what_column, std::max(all - quantity - amount, px(80)));
  scheduleDelayedItemsLayout();
}

void TakeoffView::open_or_follow(const QModelIndex& index) {
  const QModelIndex first = index.siblingAtColumn(0);
  if (const TakeoffRow* line = items_.line_at(first)) {
    if (line->kind == TakeoffRow::Kind::line) setExpanded(first, !isExpanded(first));
    return;
  }
  const UnderRow* under = items_.under_at(first);
  if (under && under->row.leads != Leads::nowhere) emit followed(first);
}

void TakeoffView::mouseReleaseEvent(QMouseEvent* event) {
  const QModelIndex at = indexAt(event->position().toPoint());
  const bool line = items_.line_at(at) != nullptr;
  QTreeView::mouseReleaseEvent(event);
  if (event->button() != Qt::LeftButton || !at.isValid()) return;
  if (line || at.column() == TakeoffItems::amount_column) open_or_follow(at);
}

void TakeoffView::keyPressEvent(QKeyEvent* event) {
  const bool enter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter || event->key() == Qt::Key_Space;
  if (enter && currentIndex().isValid()) return open_or_follow(currentIndex());
  if (event->key() == Qt::Key_Left && currentIndex().parent().isValid()) {
    const QModelIndex line = currentIndex().parent();
    setCurrentIndex(line);
    return collapse(line);
  }
  QTreeView::keyPressEvent(event);
}

void TakeoffView::currentChanged(const QModelIndex& current, const QModelIndex& previous) {
  QTreeView::currentChanged(current, previous);
  viewport()->update();
  if (hasFocus()) emit pointed(current);
}

void TakeoffView::leaveEvent(QEvent* event) {
  QTreeView::leaveEvent(event);
  emit pointed({});
}

void TakeoffView::resizeEvent(QResizeEvent* event) {
  QTreeView::resizeEvent(event);
  fit_columns();
}

void TakeoffView::changeEvent(QEvent* event) {
  QTreeView::changeEvent(event);
  if (event->type() == QEvent::FontChange || event->type() == QEvent::PaletteChange ||
      event->type() == QEvent::StyleChange)
    fit_columns();
}

void TakeoffView::drawRow(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const {
  const QModelIndex line = index.parent().isValid() ? index.parent() : index.siblingAtColumn(0);
  if (isExpanded(line)) {
    painter->fillRect(option.rect, theme().raised);
    painter->fillRect(QRect(option.rect.left(), option.rect.top(), px(3), option.rect.height()), theme().chalk);
  }
  paint_gutter(*painter, option.rect, index);
  QTreeView::drawRow(painter, option, index);
  if (hasFocus() && index.row() == currentIndex().row() && index.parent() == currentIndex().parent()) {
    painter->setPen(QPen(theme().chalk, 2));
    painter->setBrush(Qt::NoBrush);
    painter->drawRect(option.rect.adjusted(1, 1, -1, -1));
  }
}

// A line down the gutter, with the stage's number where it begins and a dot at each further line of it.
void TakeoffView::paint_gutter(QPainter& painter, const QRect& row, const QModelIndex& index) const {
  const QModelIndex parent = index.parent();
  const auto& lines = items_.lines();
  const auto at = static_cast<std::size_t>(parent.isValid() ? parent.row() : index.row());
  const TakeoffRow& line = lines[at];
  if (line.kind == TakeoffRow::Kind::group) return;
  const bool under = parent.isValid();
  const auto joined = [&](std::size_t other) {
    return other < lines.size() && lines[other].kind == TakeoffRow::Kind::line;
  };
  const int x = row.left() + px(15);
  const int middle = row.top() + px(12);
  const int top = under || (at > 0 && joined(at - 1)) ? row.top() : middle;
  const bool goes_on = joined(at + 1) || (!under && isExpanded(index.siblingAtColumn(0)) && joined(at + 1));
  const int bottom = goes_on ? row.bottom() + 1 : (under ? row.top() : middle);
  painter.fillRect(QRect(x, top, 1, bottom - top), theme().rule);
  if (under) return;
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setPen(Qt::NoPen);
  const bool first = at == 0 || !joined(at - 1) || lines[at - 1].stage != line.stage;
  const double radius = first ? px(9) : px(2.5);
  painter.setBrush(first ? theme().ink : theme().ink3);
  painter.drawEllipse(QPointF(x + 0.5, middle + 0.5), radius, radius);
  painter.setRenderHint(QPainter::Antialiasing, false);
  if (!first) return;
  painter.setFont(ui::font(Type::small, true));
  painter.setPen(theme().panel);
  painter.drawText(QRect(x - px(12), middle - px(12), 2 * px(12) + 1, 2 * px(12) + 1), Qt::AlignCenter,
                   QString::number(static_cast<int>(line.stage) + 1));
}

void TakeoffView::paintEvent(QPaintEvent* event) {
  QTreeView::paintEvent(event);
  if (items_.rowCount() > 0) return;
  QPainter painter(viewport());
  painter.setFont(ui::font(Type::text));
  painter.setPen(theme().ink2);
  painter.drawText(viewport()->rect().adjusted(px(16), px(8), -px(16), -px(8)),
                   int(Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap), empty_words_);
}

}  // namespace ui
