#include "ui/office/backups_window.h"

#include <QLabel>
#include <QLocale>
#include <QMessageBox>
#include <QPushButton>
#include <QTableWidget>
#include <QVBoxLayout>

#include "ui/book/book_table.h"
#include "ui/book/book_words.h"
#include "ui/look/theme.h"

namespace ui {

namespace {

QString why_word(store::Why why) {
  switch (why) {
    case store::Why::day: return BackupsWindow::tr("the day's");
    case store::Why::new_form: return BackupsWindow::tr("before the book got a new form");
    case store::Why::restore: return BackupsWindow::tr("before a backup was put back");
  }
  return {};
}

QLabel* label(const QString& words, QWidget* parent) {
  auto* made = new QLabel(words, parent);
  made->setTextFormat(Qt::PlainText);
  made->setWordWrap(true);
  return made;
}

}  // namespace

BackupsWindow::BackupsWindow(const std::string& folder, bool may_restore, QWidget* parent)
    : QDialog(parent),
      rows_(store::backups(folder)),
      may_restore_(may_restore),
      table_(new QTableWidget(static_cast<int>(rows_.size()), 4, this)) {
  setObjectName(QStringLiteral("backups-window"));
  setWindowTitle(tr("Backups of the book"));
  setAttribute(Qt::WA_DeleteOnClose);
  auto* rows = new QVBoxLayout(this);
  rows->setContentsMargins(px(16), px(14), px(16), px(14));
  rows->setSpacing(px(8));
  rows->addWidget(
      label(tr("A backup is made on each day that the program is started, and kept for 14 days. They lie in "
               "the folder %1.")
                .arg(QString::fromStdString(folder) + QStringLiteral("/backups")),
            this));
  fill();
  rows->addWidget(table_, 1);
  said_ = label({}, this);
  said_->setObjectName(QStringLiteral("backups-said"));
  said_->hide();
  rows->addWidget(said_);
  auto* foot = new QHBoxLayout;
  restore_ = new QPushButton(tr("Put it back ..."), this);
  restore_->setObjectName(QStringLiteral("backups-restore"));
  restore_->setAutoDefault(false);
  auto* close = new QPushButton(tr("Close"), this);
  close->setDefault(true);
  make_main(close);
  foot->addWidget(restore_);
  foot->addStretch(1);
  foot->addWidget(close);
  rows->addLayout(foot);
  connect(restore_, &QPushButton::clicked, this, &BackupsWindow::ask);
  connect(close, &QPushButton::clicked, this, &QDialog::close);
  connect(table_, &QTableWidget::itemSelectionChanged, this, &BackupsWindow::chosen_changed);
  if (rows_.empty()) tell(tr("There is no backup yet"));
  if (!may_restore_) tell(tr("The book is only read here, so no backup can be put back"));
  chosen_changed();
  resize(px(760), px(420));
}

void BackupsWindow::fill() {
  table_->setHorizontalHeaderLabels({tr("Made"), tr("Why"), tr("Jobs"), tr("Size")});
  make_list(table_, "backups-list", tr("Backups"));
  table_->setSelectionMode(QAbstractItemView::SingleSelection);
  for (int row = 0; row < table_->rowCount(); ++row) {
    const store::BackupRow& one = rows_[static_cast<std::size_t>(row)];
    const QString cells[] = {shown_when(one.backup.made), why_word(one.backup.why),
                             one.jobs ? QString::number(*one.jobs) : tr("can't be read"),
                             QLocale().formattedDataSize(static_cast<qint64>(one.backup.bytes))};
    for (int column = 0; column < 4; ++column) {
      auto* cell = new QTableWidgetItem(cells[column]);
      if (column > 1) cell->setTextAlignment(Qt::AlignRight | Qt::AlignVCenter);
      table_->setItem(row, column, cell);
    }
  }
  for (const int column : {2, 3})
    table_->horizontalHeaderItem(column)->setTextAlignment(Qt::AlignRight | Qt::AlignVCenter);
  set_widths(table_, 1);
}

const store::Backup* BackupsWindow::chosen() const {
  const auto rows = table_->selectionModel()->selectedRows();
  return rows.isEmpty() ? nullptr : &rows_[static_cast<std::size_t>(rows.front().row())].backup;
}

void BackupsWindow::chosen_changed() { restore_->setEnabled(may_restore_ && chosen() != nullptr); }

void BackupsWindow::tell(const QString& sentence) {
  said_->setText(sentence);
  said_->setVisible(!sentence.isEmpty());
}

void BackupsWindow::ask() {
  const store::Backup* one = chosen();
  if (one == nullptr) return;
  QMessageBox box(QMessageBox::Question, tr("Put a backup back"),
                  tr("Put the job book back to how it stood on %1?").arg(shown_when(one->made)), QMessageBox::NoButton,
                  this);
  box.setObjectName(QStringLiteral("backups-ask"));
  box.setInformativeText(
      tr("All jobs, versions and prices become those of the backup. The book as it is now becomes a backup first, so "
         "that it can be put back too. The program closes and starts again."));
  auto* yes = box.addButton(tr("Put it back"), QMessageBox::AcceptRole);
  yes->setObjectName(QStringLiteral("backups-yes"));
  auto* no = box.addButton(tr("Leave it"), QMessageBox::RejectRole);
  no->setObjectName(QStringLiteral("backups-no"));
  box.setDefaultButton(no);
  box.setEscapeButton(no);
  box.exec();
  if (box.clickedButton() == yes) emit restore(QString::fromStdString(one->path));
}

}  // namespace ui
