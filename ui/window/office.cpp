#include "ui/window/office.h"

#include <QFileDialog>

#include "results/kept_of.h"
#include "ui/book/book_window.h"
#include "ui/book/book_words.h"
#include "ui/book/save_version.h"
#include "ui/compare/compare_window.h"
#include "ui/panels/panel_words.h"

namespace ui {

namespace {

// A saved version as one side of a comparison.
Version side(const store::Version& version) {
  const QString name = QString::fromStdString(version.row.name);
  return {std::make_shared<const plan::Job>(version.job), version.kept,
          name.isEmpty() ? Office::tr("Version %1").arg(version.row.number)
                         : Office::tr("Version %1, %2").arg(version.row.number).arg(name)};
}

}  // namespace

Office::Office(Desk& desk, store::JobBook& book, Keeper& keeper, std::function<MainWindow*()> window)
    : desk_(desk), book_(book), keeper_(keeper), window_(std::move(window)) {}

void Office::tell(const problem::Problem& problem) { desk_.say(told(problem)); }

BookWindow* Office::show_book() {
  MainWindow* window = window_();
  const bool fresh = window->findChild<BookWindow*>() == nullptr;
  BookWindow* shown = show_book_window(book_, window);
  shown->set_open_job(keeper_.id());
  if (!fresh) return shown;
  connect(shown, &BookWindow::open_job, this, [this](qint64 job) { open_job(job); });
  connect(shown, &BookWindow::new_job, this, [this] {
    window_()->actions_by_id()["new-job"].trigger();
    refresh();
  });
  connect(shown, &BookWindow::bring_in_job, this, [this] {
    window_()->actions_by_id()["read-file"].trigger();
    refresh();
  });
  connect(shown, &BookWindow::write_job, this, [this](qint64 job) { write_job(job); });
  connect(shown, &BookWindow::save_version, this, [this](qint64) { save_version(); });
  connect(shown, &BookWindow::compare_versions, this, [this](qint64 before, qint64 after) { compare(before, after); });
  connect(shown, &BookWindow::work_on_from, this, [this](qint64 version) { work_on_from(version); });
  return shown;
}

void Office::refresh() {
  if (auto* shown = window_()->findChild<BookWindow*>()) {
    shown->set_open_job(keeper_.id());
    shown->refresh();
  }
  window_()->show_version_state();
}

void Office::save_version() {
  const ResultsPtr results = desk_.results();
  if (!results || results->job != desk_.job_ptr()) {
    desk_.say(tr("The numbers are still being worked out: save the version in a moment"));
    return;
  }
  const plan::Job& job = *results->job;
  const auto words =
      save_version_dialog(QString::fromStdString(job.heading.name), shown_money(results->priced.total, job.heading),
                          results->final() && results->priced.final, window_());
  if (!words) return;
  const auto saved =
      book_.save_version(keeper_.id(), job, results::kept_of(*results, GROUNDCOURSE_VERSION), words->name, words->note);
  if (!saved) return tell(saved.error());
  desk_.say(tr("Version %1 is saved").arg(saved->number));
  refresh();
}

QString Office::version_state() const {
  const auto versions = book_.versions(keeper_.id());
  if (!versions || versions->empty()) return {};
  return tr("working copy, after version %1").arg(versions->front().number);
}

void Office::open_job(std::int64_t job) {
  if (job == keeper_.id()) return;
  auto value = book_.read(job);
  if (!value) return tell(value.error());
  desk_.open(std::make_shared<const plan::Job>(std::move(*value)));
  keeper_.adopt(job);
  refresh();
}

void Office::work_on_from(std::int64_t version) {
  const auto kept = book_.version(version);
  if (!kept) return tell(kept.error());
  open_job(kept->row.job);
  if (keeper_.id() != kept->row.job) return;
  desk_.edit(kept->job, tr("Work on from version %1").arg(kept->row.number));
}

void Office::compare(std::int64_t before, std::int64_t after) {
  const auto first = book_.version(before);
  if (!first) return tell(first.error());
  const auto second = book_.version(after);
  if (!second) return tell(second.error());
  show_comparison(side(*first), side(*second), window_());
}

void Office::compare_with_now() {
  const auto versions = book_.versions(keeper_.id());
  if (!versions) return tell(versions.error());
  const ResultsPtr results = desk_.results();
  if (versions->empty() || !results || results->job != desk_.job_ptr()) {
    desk_.say(versions->empty() ? tr("No version of this job is saved yet: save one, and later changes show against it")
                                : tr("The numbers are still being worked out: compare in a moment"));
    return;
  }
  const auto newest = book_.version(versions->front().id);
  if (!newest) return tell(newest.error());
  show_comparison(side(*newest), {results->job, results::kept_of(*results, GROUNDCOURSE_VERSION), tr("Now")},
                  window_());
}

void Office::write_job(std::int64_t job) {
  const auto value = book_.read(job);
  if (!value) return tell(value.error());
  const QString file = QFileDialog::getSaveFileName(window_(), tr("Write a job file"), {}, tr("Job files (*.json)"));
  if (!file.isEmpty()) window_()->write_job_file(file, *value);
}

}  // namespace ui
