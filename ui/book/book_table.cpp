#include "ui/book/book_table.h"

#include <QApplication>
#include <QHeaderView>
#include <QPainter>
#include <QPushButton>
#include <QTableView>
#include <algorithm>

#include "ui/look/theme.h"

namespace ui {

void WholeRows::initStyleOption(QStyleOptionViewItem* option, const QModelIndex& index) const {
  QStyledItemDelegate::initStyleOption(option, index);
  option->state &= ~QStyle::State_HasFocus;
}

// The ground of the whole cell, then its words as far from the edge as those of the head are.
void WholeRows::paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const {
  QStyleOptionViewItem cell = option;
  initStyleOption(&cell, index);
  const QStyle* style = option.widget != nullptr ? option.widget->style() : QApplication::style();
  style->drawPrimitive(QStyle::PE_PanelItemViewItem, &cell, painter, option.widget);
  cell = option;
  cell.rect.adjust(px(5), 0, -px(5), 0);
  QStyledItemDelegate::paint(painter, cell, index);
}

QSize WholeRows::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const {
  return QStyledItemDelegate::sizeHint(option, index) + QSize(2 * px(5), 0);
}

void make_list(QTableView* table, const char* name, const QString& spoken) {
  table->setObjectName(QString::fromLatin1(name));
  table->setAccessibleName(spoken);
  table->setItemDelegate(new WholeRows(table));
  table->verticalHeader()->hide();
  table->verticalHeader()->setDefaultSectionSize(px(26));
  table->horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
  table->horizontalHeader()->setHighlightSections(false);
  table->setShowGrid(false);
  table->setWordWrap(false);
  table->setIconSize({px(14), px(14)});
  table->setSelectionBehavior(QAbstractItemView::SelectRows);
  table->setEditTriggers(QAbstractItemView::NoEditTriggers);
  table->setTabKeyNavigation(false);
  table->setMinimumHeight(px(96));
}

void set_widths(QTableView* table, int wide) {
  QHeaderView* head = table->horizontalHeader();
  const int columns = table->model()->columnCount();
  for (int column = 0; column < columns; ++column) head->setSectionResizeMode(column, QHeaderView::Interactive);
  table->resizeColumnsToContents();
  for (int column = 0; column < columns; ++column)
    head->resizeSection(column, std::min(head->sectionSize(column) + px(6), px(240)));
  head->setSectionResizeMode(wide, QHeaderView::Stretch);
}

void make_main(QPushButton* button) {
  button->setProperty("main", true);
  const QFontMetrics bold(font(Type::text, true));
  button->setMinimumWidth(bold.horizontalAdvance(button->text()) + px(32));
}

}  // namespace ui
