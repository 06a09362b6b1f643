// What the job book's window does with what is chosen.
#include <QCheckBox>
#include <QComboBox>
#include <QFileDialog>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSaveFile>
#include <QTableView>
#include <algorithm>

#include "ui/book/book_table.h"
#include "ui/book/book_window.h"
#include "ui/book/book_words.h"
#include "ui/book/version_window.h"
#include "ui/look/theme.h"

namespace ui {

void BookWindow::tell(const QString& fault) {
  said_->setText(fault);
  said_->setVisible(!fault.isEmpty());
}

std::int64_t BookWindow::chosen_job() const {
  const auto rows = job_table_->selectionModel()->selectedRows();
  const store::JobRow* row = rows.isEmpty() ? nullptr : jobs_->job(rows.front().row());
  return row == nullptr ? 0 : row->id;
}

std::vector<std::int64_t> BookWindow::chosen_versions() const {
  std::vector<int> at;
  for (const QModelIndex& index : version_table_->selectionModel()->selectedRows()) at.push_back(index.row());
  std::sort(at.begin(), at.end());
  std::vector<std::int64_t> ids;
  for (const int row : at) ids.push_back(versions_->version(row)->id);
  return ids;
}

void BookWindow::set_open_job(std::int64_t id) {
  open_job_ = id;
  job_chosen();
}

// The job's row where the list shows it, else the first.
void BookWindow::choose(std::int64_t job) {
  const int row = std::max(0, jobs_->row_of(job));
  if (jobs_->rowCount() > 0) {
    job_table_->selectRow(row);
    job_table_->scrollTo(jobs_->index(row, 0));
  }
  job_chosen();
}

void BookWindow::search() {
  const std::int64_t was = chosen_job();
  store::Wanted wanted = jobs_->wanted();
  wanted.text = words_->text().toStdString();
  wanted.archived = archived_->isChecked() ? store::Archived::shown : store::Archived::left_out;
  jobs_->want(wanted);
  choose(was);
}

void BookWindow::job_chosen() {
  const auto rows = job_table_->selectionModel()->selectedRows();
  const store::JobRow* row = rows.isEmpty() ? nullptr : jobs_->job(rows.front().row());
  for (QPushButton* one : {open_, copy_, archive_, write_}) one->setEnabled(row != nullptr);
  state_->setEnabled(row != nullptr);
  save_->setEnabled(row != nullptr && row->id == open_job_);
  save_->setToolTip(save_->isEnabled() ? QString() : tr("A version is saved of the job that is open on the plan"));
  counted_->setText(jobs_->rowCount() == 1 ? tr("1 job") : tr("%1 jobs").arg(jobs_->rowCount()));
  archive_->setText(row != nullptr && row->archived ? tr("Bring back") : tr("Archive"));
  std::vector<store::VersionRow> versions;
  if (row != nullptr) {
    state_->setCurrentIndex(static_cast<int>(row->state));
    if (auto found = book_.versions(row->id))
      versions = std::move(*found);
    else
      tell(told(found.error()));
  }
  const QString name = row == nullptr ? QString() : QString::fromStdString(row->name.substr(0, 200)).simplified();
  of_job_->setText(row == nullptr     ? tr("No job is chosen")
                   : versions.empty() ? tr("%1: no version saved yet").arg(name)
                                      : tr("Versions of %1").arg(name));
  versions_->take(std::move(versions));
  set_widths(version_table_, 2);
  if (versions_->rowCount() > 0) version_table_->selectRow(0);
  versions_chosen();
}

void BookWindow::versions_chosen() {
  const auto chosen = chosen_versions();
  show_->setEnabled(chosen.size() == 1);
  for (QPushButton* one : {work_on_, today_, otherwise_}) one->setEnabled(chosen.size() == 1);
  compare_->setEnabled(chosen.size() == 2);
}

void BookWindow::copy_job() {
  const auto rows = job_table_->selectionModel()->selectedRows();
  const store::JobRow* row = rows.isEmpty() ? nullptr : jobs_->job(rows.front().row());
  if (row == nullptr) return;
  const auto made = book_.copy(row->id, tr("Copy of %1").arg(QString::fromStdString(row->name)).toStdString());
  if (!made) return tell(told(made.error()));
  refresh();
  choose(*made);
}

void BookWindow::archive_job() {
  const auto rows = job_table_->selectionModel()->selectedRows();
  const store::JobRow* row = rows.isEmpty() ? nullptr : jobs_->job(rows.front().row());
  if (row == nullptr) return;
  const auto put = book_.set_archived(row->id, !row->archived);
  if (!put) return tell(told(put.error()));
  refresh();
}

void BookWindow::set_state(int state) {
  const std::int64_t job = chosen_job();
  if (job == 0 || state < 0) return;
  const auto put = book_.set_state(job, store::all_states[static_cast<std::size_t>(state)]);
  if (!put) return tell(told(put.error()));
  refresh();
}

void BookWindow::open_version() {
  const auto chosen = chosen_versions();
  if (chosen.size() != 1) return;
  const auto version = book_.version(chosen.front());
  if (!version) return tell(told(version.error()));
  const auto documents = book_.documents(chosen.front());
  if (!documents) return tell(told(documents.error()));
  auto* window = new VersionWindow(*version, *documents, this);
  connect(window, &VersionWindow::work_on_from, this, &BookWindow::work_on_from);
  connect(window, &VersionWindow::show_document, this, [this](qint64 id) {
    const auto sheet = book_.document(id);
    if (!sheet) return tell(told(sheet.error()));
    const QString file =
        QFileDialog::getSaveFileName(this, tr("The printed sheet"), tr("%1.pdf").arg(id), tr("Printed sheets (*.pdf)"));
    if (!file.isEmpty()) write_sheet(*sheet, file);
  });
  window->show();
}

void BookWindow::write_sheet(const store::Document& sheet, const QString& file) {
  QSaveFile into(file);
  const auto size = static_cast<qint64>(sheet.bytes.size());
  if (into.open(QIODevice::WriteOnly) && into.write(sheet.bytes.data(), size) == size && into.commit()) return tell({});
  tell(tr("%1 can't be written: %2").arg(file, into.errorString()));
}

}  // namespace ui
