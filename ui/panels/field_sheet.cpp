#include "ui/panels/field_sheet.h"

#include <QHeaderView>
#include <QKeyEvent>
#include <QLineEdit>
#include <QStyledItemDelegate>

#include "ui/look/theme.h"

namespace ui {

namespace {

class SheetDelegate : public QStyledItemDelegate {
 public:
  SheetDelegate(SheetModel* model, FieldSheet* sheet) : QStyledItemDelegate(sheet), model_(model), sheet_(sheet) {}

  QWidget* createEditor(QWidget* parent, const QStyleOptionViewItem&, const QModelIndex& index) const override {
    auto* line = new QLineEdit(parent);
    line->setObjectName(QStringLiteral("cell-editor"));
    line->setAccessibleName(model_->headerData(index.column(), Qt::Horizontal).toString());
    line->setFont(ui::font(Type::text));
    line->setFrame(false);
    const QPersistentModelIndex at(index);
    connect(line, &QLineEdit::textEdited, this, [this, at](const QString& text) {
      const SheetModel::Echo echo = text.trimmed().isEmpty() ? SheetModel::Echo{} : model_->echo(at, text);
      emit sheet_->echoed(echo.text, echo.wrong);
    });
    return line;
  }
  void setEditorData(QWidget* editor, const QModelIndex& index) const override {
    static_cast<QLineEdit*>(editor)->setText(index.data(Qt::EditRole).toString());
  }
  void setModelData(QWidget* editor, QAbstractItemModel*, const QModelIndex& index) const override {
    const QString text = static_cast<QLineEdit*>(editor)->text();
    const SheetModel::Echo echo = model_->echo(index, text);
    emit sheet_->echoed(echo.text, echo.wrong);
    if (!echo.wrong) model_->setData(index, text, Qt::EditRole);
  }
  bool eventFilter(QObject* object, QEvent* event) override {
    auto* line = qobject_cast<QLineEdit*>(object);
    if (line == nullptr || event->type() != QEvent::KeyPress) return QStyledItemDelegate::eventFilter(object, event);
    const int key = static_cast<QKeyEvent*>(event)->key();
    const bool tab = key == Qt::Key_Tab || key == Qt::Key_Backtab,
               enter = key == Qt::Key_Return || key == Qt::Key_Enter;
    if (!tab && !enter) return QStyledItemDelegate::eventFilter(object, event);
    const QModelIndex at = sheet_->currentIndex();
    if (const SheetModel::Echo echo = model_->echo(at, line->text()); echo.wrong) {
      emit sheet_->echoed(echo.text, true);  // it stays as typed
      return true;
    }
    // The row may move when what it says is taken; then the place is that of the row, not of the line on the screen.
    const QPersistentModelIndex here(at);
    emit commitData(line);
    emit closeEditor(line, QAbstractItemDelegate::NoHint);
    sheet_->setFocus();
    sheet_->go_on(here.isValid() ? QModelIndex(here) : sheet_->currentIndex(), key == Qt::Key_Backtab, enter);
    return true;
  }

 private:
  SheetModel* model_;
  FieldSheet* sheet_;
};

}  // namespace

FieldSheet::FieldSheet(SheetModel* model, QWidget* parent) : QTableView(parent), sheet_(model) {
  setModel(model);
  setItemDelegate(new SheetDelegate(model, this));
  setTabKeyNavigation(false);
  setEditTriggers(AnyKeyPressed | DoubleClicked | EditKeyPressed);
  setSelectionMode(SingleSelection);
  setSelectionBehavior(SelectItems);
  setFont(ui::font(Type::text));
  setWordWrap(false);
  verticalHeader()->hide();
  horizontalHeader()->setHighlightSections(false);
  horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
  horizontalHeader()->setFont(ui::font(Type::small));
  horizontalHeader()->setStretchLastSection(true);
  verticalHeader()->setDefaultSectionSize(px(26));
}

void FieldSheet::fit_columns() {
  verticalHeader()->setDefaultSectionSize(px(26));
  for (int column = 0; column + 1 < sheet_->columnCount(); ++column)
    setColumnWidth(column, std::max(sizeHintForColumn(column), horizontalHeader()->sectionSizeHint(column)) + px(4));
  if (wide_ > 0)
    for (int column = 0; column + 1 < sheet_->columnCount(); ++column)
      setColumnWidth(column, px(wide_) / sheet_->columnCount());
}

void FieldSheet::set_shown(int rows, int wide_at_100) {
  rows_shown_ = rows;
  wide_ = wide_at_100;
  setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Expanding);
}

QSize FieldSheet::sizeHint() const {
  return {px(wide_ > 0 ? wide_ : 600),
          horizontalHeader()->sizeHint().height() + rows_shown_ * px(26) + 2 * frameWidth()};
}

bool FieldSheet::go_on(const QModelIndex& from, bool back, bool next_row) {
  const int columns = sheet_->columnCount();
  int row = from.row(), column = from.column();
  if (next_row) {
    // The row's own empty cells first.
    for (int c = column + 1; c < columns; ++c) {
      const QModelIndex cell = sheet_->index(row, c);
      if (!sheet_->wanted(cell) || !cell.data(Qt::EditRole).toString().isEmpty() || sheet_->blank(row)) continue;
      setCurrentIndex(cell);
      return true;
    }
    if (sheet_->blank(row)) return true;  // nothing was typed: it stays
    ++row;
    column = -1;
  }
  for (;;) {
    column += back ? -1 : 1;
    if (column < 0 || column >= columns) {
      row += back ? -1 : 1;
      column = back ? columns - 1 : 0;
    }
    if (row < 0 || row >= sheet_->rowCount()) return false;
    const QModelIndex next = sheet_->index(row, column);
    if (!sheet_->wanted(next)) continue;
    setCurrentIndex(next);
    scrollTo(next);
    return true;
  }
}

// Tab, while nothing is typed. From the blank row's first cell it goes on to what stands after the table.
bool FieldSheet::focusNextPrevChild(bool next) {
  const QModelIndex at = currentIndex();
  const bool leaves = !at.isValid() || (next && sheet_->blank(at.row()));
  return (!leaves && go_on(at, !next, false)) || QTableView::focusNextPrevChild(next);
}

void FieldSheet::keyPressEvent(QKeyEvent* event) {
  const int key = event->key();
  if (key == Qt::Key_Return || key == Qt::Key_Enter) {
    go_on(currentIndex(), false, true);
    return event->accept();
  }
  QTableView::keyPressEvent(event);
}

// Before the view itself takes its first cell, which nobody can type into.
void FieldSheet::focusInEvent(QFocusEvent* event) {
  if (!currentIndex().isValid()) {
    const int row = sheet_->rowCount() - 1;
    int column = 0;
    while (column + 1 < sheet_->columnCount() && !sheet_->wanted(sheet_->index(row, column))) ++column;
    setCurrentIndex(sheet_->index(row, column));
  }
  QTableView::focusInEvent(event);
}

void FieldSheet::changeEvent(QEvent* event) {
  QTableView::changeEvent(event);
  if (event->type() != QEvent::StyleChange && event->type() != QEvent::PaletteChange) return;
  setFont(ui::font(Type::text));
  horizontalHeader()->setFont(ui::font(Type::small));
  fit_columns();
}

}  // namespace ui
