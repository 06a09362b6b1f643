#include "ui/window/job_list.h"

#include <QDialog>
#include <QDialogButtonBox>
#include <QHeaderView>
#include <QLineEdit>
#include <QPushButton>
#include <QTableWidget>
#include <QVBoxLayout>

#include "ui/look/theme.h"

namespace ui {

namespace {

QTableWidget* table_of(const std::vector<store::JobRow>& rows, QWidget* parent) {
  auto* table = new QTableWidget(static_cast<int>(rows.size()), 3, parent);
  table->setObjectName("job-list");
  table->setAccessibleName(QDialog::tr("Jobs"));
  table->setHorizontalHeaderLabels({QDialog::tr("Job"), QDialog::tr("Customer"), QDialog::tr("Place")});
  table->verticalHeader()->hide();
  table->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
  table->setSelectionBehavior(QAbstractItemView::SelectRows);
  table->setSelectionMode(QAbstractItemView::SingleSelection);
  table->setEditTriggers(QAbstractItemView::NoEditTriggers);
  for (std::size_t i = 0; i < rows.size(); ++i) {
    const int at = static_cast<int>(i);
    auto* name = new QTableWidgetItem(QString::fromStdString(rows[i].name));
    name->setData(Qt::UserRole, QVariant::fromValue<qlonglong>(rows[i].id));
    table->setItem(at, 0, name);
    table->setItem(at, 1, new QTableWidgetItem(QString::fromStdString(rows[i].customer)));
    table->setItem(at, 2, new QTableWidgetItem(QString::fromStdString(rows[i].place)));
  }
  if (!rows.empty()) table->selectRow(0);
  return table;
}

}  // namespace

std::optional<std::int64_t> choose_job(store::JobBook& book, QWidget* parent) {
  const auto rows = book.jobs();
  if (!rows) return std::nullopt;
  QDialog dialog(parent);
  dialog.setObjectName("job-list-dialog");
  dialog.setWindowTitle(QDialog::tr("Open a job"));
  auto* column = new QVBoxLayout(&dialog);
  auto* words = new QLineEdit(&dialog);
  words->setAccessibleName(QDialog::tr("Part of a name"));
  words->setPlaceholderText(QDialog::tr("Part of a name, customer or place"));
  QTableWidget* table = table_of(*rows, &dialog);
  QObject::connect(words, &QLineEdit::textChanged, table, [table](const QString& part) {
    for (int row = 0; row < table->rowCount(); ++row) {
      bool found = false;
      for (int column_at = 0; column_at < 3; ++column_at)
        found = found || table->item(row, column_at)->text().contains(part, Qt::CaseInsensitive);
      table->setRowHidden(row, !found);
    }
  });
  auto* buttons = new QDialogButtonBox(&dialog);
  buttons->addButton(QDialog::tr("Open it"), QDialogButtonBox::AcceptRole)->setEnabled(!rows->empty());
  buttons->addButton(QDialog::tr("Leave it"), QDialogButtonBox::RejectRole);
  QObject::connect(buttons, &QDialogButtonBox::accepted, &dialog, &QDialog::accept);
  QObject::connect(buttons, &QDialogButtonBox::rejected, &dialog, &QDialog::reject);
  QObject::connect(table, &QTableWidget::itemActivated, &dialog, &QDialog::accept);
  column->addWidget(words);
  column->addWidget(table);
  column->addWidget(buttons);
  dialog.resize(px(720), px(420));
  if (dialog.exec() != QDialog::Accepted || table->currentRow() < 0) return std::nullopt;
  return table->item(table->currentRow(), 0)->data(Qt::UserRole).toLongLong();
}

}  // namespace ui
