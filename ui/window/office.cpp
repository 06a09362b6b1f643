#include "ui/window/office.h"

#include <QApplication>
#include <QFileDialog>

#include "results/kept_of.h"
#include "ui/actual/actual_window.h"
#include "ui/book/book_window.h"
#include "ui/book/book_words.h"
#include "ui/book/save_version.h"
#include "ui/catalogue/catalogue_window.h"
#include "ui/office/backups_window.h"
#include "ui/office/order_book.h"
#include "ui/office/restoring.h"
#include "ui/office/visit_window.h"
#include "ui/panels/panel_words.h"

namespace ui {

Office::Office(Desk& desk, store::JobBook& book, Keeper& keeper, std::function<MainWindow*()> window,
               const Shelf& shelf, std::string folder)
    : desk_(desk),
      book_(book),
      keeper_(keeper),
      window_(std::move(window)),
      keep_(shelf.keep),
      folder_(std::move(folder)),
      side_by_side_(desk, book, [this] { return window_(); }, shelf.catalogue) {
  connect(&side_by_side_, &SideBySide::said, this, &Office::say);
  connect(&side_by_side_, &SideBySide::change_order, this, &Office::change_order);
}

void Office::tell(const problem::Problem& problem) { say(told(problem)); }

void Office::say(const QString& sentence) {
  auto* shown = window_()->findChild<BookWindow*>();
  if (shown != nullptr && shown->isVisible()) shown->tell(sentence);
  desk_.say(sentence);
}

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
  connect(shown, &BookWindow::compare_versions, &side_by_side_, &SideBySide::versions);
  connect(shown, &BookWindow::at_todays_prices, &side_by_side_, &SideBySide::today);
  connect(shown, &BookWindow::built_otherwise, &side_by_side_, &SideBySide::otherwise);
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

std::optional<store::VersionRow> Office::version_as_it_stands() {
  const auto rows = book_.versions(keeper_.id());
  if (!rows || rows->empty()) return std::nullopt;
  const auto newest = book_.version(rows->front().id);
  if (!newest || !plan::same(newest->job, desk_.job())) return std::nullopt;
  return newest->row;
}

SheetsShelf Office::sheets() {
  SheetsShelf shelf;
  shelf.version = [this] {
    const auto version = version_as_it_stands();
    return version ? std::to_string(version->number) : std::string();
  };
  shelf.keep = [this](const std::string& sheet, const std::string& language,
                      const QByteArray& pdf) -> problem::Result<QString> {
    const auto version = version_as_it_stands();
    if (!version)
      return std::unexpected(problem::Problem{problem::Severity::problem,
                                              "sheet-no-version",
                                              tr("The job is not as its newest version has it").toStdString(),
                                              tr("save a version, then keep the sheet with it").toStdString(),
                                              {}});
    const auto kept = book_.issue(version->id, sheet, language, pdf.toStdString());
    if (!kept) return std::unexpected(kept.error());
    refresh();
    return tr("Kept with version %1: it shows this sheet from now on").arg(version->number);
  };
  return shelf;
}

void Office::compare_with_now() { side_by_side_.with_now(keeper_.id()); }

std::optional<std::int64_t> Office::chosen_version() {
  auto* shown = window_()->findChild<BookWindow*>();
  if (shown != nullptr && shown->isVisible())
    if (const auto chosen = shown->chosen_versions(); !chosen.empty()) return chosen.front();
  const auto versions = book_.versions(keeper_.id());
  if (!versions) {
    tell(versions.error());
  } else if (versions->empty()) {
    say(tr("No version of this job is saved yet: save one first"));
  } else {
    return versions->front().id;
  }
  return std::nullopt;
}

std::vector<std::pair<const char*, std::function<void()>>> Office::actions() {
  return {{"today",
           [this] {
             if (const auto version = chosen_version()) side_by_side_.today(*version);
           }},
          {"otherwise", [this] { side_by_side_.otherwise(0); }},
          {"change-order", [this] { change_order_of_newest(); }},
          {"actual",
           [this] {
             if (const auto version = chosen_version()) show_actual_window(book_, *version, window_(), folder_);
           }},
          {"catalogue-window", [this] { show_catalogue_window(folder_, window_()); }},
          {"visit", [this] { show_visit_window(desk_, keep_, window_()); }},
          {"backups", [this] { show_backups(); }}};
}

void Office::show_backups() {
  auto* window = new BackupsWindow(folder_, !book_.only_read(), window_());
  connect(window, &BackupsWindow::restore, this, &Office::restore);
  window->show();
  window->activateWindow();
}

void Office::restore(const QString& backup) {
  if (const auto noted = note_restore(folder_, backup.toStdString()); !noted) return tell(noted.error());
  QApplication::exit(start_again);
}

void Office::change_order(std::int64_t before, std::int64_t after) {
  if (const auto shown = show_change_order(book_, before, after, window_()); !shown) tell(shown.error());
}

void Office::change_order_of_newest() {
  auto* shown = window_()->findChild<BookWindow*>();
  if (shown != nullptr && shown->isVisible())
    if (const auto chosen = shown->chosen_versions(); chosen.size() == 2)
      return change_order(chosen.back(), chosen.front());
  const auto versions = book_.versions(keeper_.id());
  if (!versions) return tell(versions.error());
  if (versions->size() < 2)
    return say(tr("A change order is made of two saved versions: save one as it was agreed and one as it is wanted"));
  change_order((*versions)[1].id, (*versions)[0].id);
}

void Office::write_job(std::int64_t job) {
  const auto value = book_.read(job);
  if (!value) return tell(value.error());
  const QString file = QFileDialog::getSaveFileName(window_(), tr("Write a job file"), {}, tr("Job files (*.json)"));
  if (!file.isEmpty()) window_()->write_job_file(file, *value);
}

}  // namespace ui
