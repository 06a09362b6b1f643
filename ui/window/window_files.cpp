// What goes into files and comes out of them: jobs, site plans, outlines, lists. Everything that is written goes by
// QSaveFile, so that a file is whole or as it was.
#include <QFileDialog>
#include <QFileInfo>
#include <QSaveFile>

#include "files/files.h"
#include "files/outlines_under.h"
#include "files/setting_out_csv.h"
#include "takeoff/setting_out/setting_out.h"
#include "ui/book/differences_dialog.h"
#include "ui/money/estimate_window.h"
#include "ui/panels/prompt.h"
#include "ui/plan/plan_view.h"
#include "ui/plan/site_plans.h"
#include "ui/print/plan_picture.h"
#include "ui/print/sheets_window.h"
#include "ui/window/main_window.h"
#include "ui/window/run_window.h"
#include "ui/window/taped_window.h"

namespace ui {

namespace {

QString in_words(const problem::Problem& problem) {
  QString said = QString::fromStdString(problem.text);
  if (problem.place.line > 0) said += MainWindow::tr(", line %1").arg(problem.place.line);
  if (!problem.mend.empty()) said += QStringLiteral(": ") + QString::fromStdString(problem.mend);
  return said;
}

// Tells what is wrong in words; empty when it is written.
QString write_whole(const QString& file, const std::string& text) {
  QSaveFile into(file);
  const QByteArray bytes = QByteArray::fromStdString(text);
  if (into.open(QIODevice::WriteOnly) && into.write(bytes) == bytes.size() && into.commit()) return {};
  return MainWindow::tr("%1 can't be written: %2").arg(file, into.errorString());
}

}  // namespace

void MainWindow::refuse(const problem::Problem& problem) { prompt_->say(in_words(problem)); }

void MainWindow::new_job() {
  plan::Job job;
  job.heading.name = tr("New job").toStdString();
  job.heading.units = desk_->units();
  job.catalogue = shelf_.catalogue ? shelf_.catalogue() : desk_->job().catalogue;
  if (shelf_.take_job) {
    shelf_.take_job(std::move(job));
  } else {
    desk_->open(std::make_shared<const plan::Job>(std::move(job)));
  }
}

bool MainWindow::write_material_list(const QString& file) {
  const ResultsPtr results = desk_->results();
  if (!results || desk_->computing()) {
    prompt_->say(tr("The list is still being worked out: write it in a moment"));
    return false;
  }
  const QString fault = write_whole(file, files::takeoff_csv(*results));
  prompt_->say(fault.isEmpty() ? tr("The material list is in %1").arg(file) : fault);
  return fault.isEmpty();
}

bool MainWindow::write_job_file(const QString& file, const plan::Job& job) {
  const QString fault = write_whole(file, files::write_job(job));
  prompt_->say(fault.isEmpty() ? tr("The job is in %1").arg(file) : fault);
  return fault.isEmpty();
}

// A job has items and prices of its own: where the book has them otherwise the person says what becomes of them. False
// where they leave it, or the book can't be written.
bool MainWindow::settle_with_book(plan::Job& job, Settling settling) {
  const auto book = shelf_.catalogue ? shelf_.catalogue() : nullptr;
  if (!book) return true;
  const auto found = catalogue::differences(*job.catalogue, *book);
  if (found.empty()) return true;
  const auto choices = ask_differences(found, job.heading, settling, this);
  if (!choices) return false;
  catalogue::Settled settled = catalogue::settled(*job.catalogue, *book, *choices);
  if (shelf_.put_items && !catalogue::same(settled.book, *book)) {
    if (auto put = shelf_.put_items(settled.book); !put) {
      refuse(put.error());
      return false;
    }
  }
  job.catalogue = std::make_shared<const catalogue::Catalogue>(std::move(settled.job));
  return true;
}

void MainWindow::settle_prices(Settling settling) {
  plan::Job job = desk_->job();
  if (!settle_with_book(job, settling)) return;
  if (plan::same(job, desk_->job()))
    prompt_->say(tr("The job stays as it is priced"));
  else
    desk_->edit(job, tr("Prices of the book"));
}

bool MainWindow::read_job_file(const QString& file) {
  const auto text = files::read_file(file.toStdString());
  if (!text) {
    refuse(text.error());
    return false;
  }
  auto job = files::read_job(*text, file.toStdString());
  if (!job) {
    refuse(job.error());
    return false;
  }
  if (!settle_with_book(*job, Settling::bring_in)) return false;
  if (shelf_.take_job) {
    shelf_.take_job(std::move(*job));
  } else {
    desk_->open(std::make_shared<const plan::Job>(std::move(*job)));
  }
  return true;
}

bool MainWindow::bring_in_site_plan(const QString& file, int page) {
  QFile from(file);
  if (!from.open(QIODevice::ReadOnly)) {
    prompt_->say(tr("%1 can't be read: %2").arg(file, from.errorString()));
    return false;
  }
  const QByteArray bytes = from.readAll();
  plan::SitePlan plan;
  plan.page = page;
  // Without a book that keeps the bytes the file itself is read again.
  const std::string kept = shelf_.keep ? shelf_.keep(bytes) : std::string();
  plan.file = kept.empty() ? file.toStdString() : kept + "/" + QFileInfo(file).fileName().toStdString();
  site_plans_->bring_in(plan, bytes, [this](const QString& fault) {
    if (!fault.isEmpty()) {
      prompt_->say(fault);
      return;
    }
    plan_->take_hand(sketch::Hand::site_plan);
  });
  return true;
}

bool MainWindow::bring_in_outlines(const QString& file) {
  const auto text = files::read_file(file.toStdString());
  if (!text) {
    refuse(text.error());
    return false;
  }
  const std::map<std::string, std::string> as_areas{{"*", "paved-area"}};
  // The file says its unit; a drawing that does not is read in the job's, and that is said.
  const bool dxf = files::is_dxf(file.toStdString());
  const auto read = [&](const std::string& units) {
    return dxf ? files::import_dxf(*text, file.toStdString(), units, as_areas)
               : files::import_geojson(*text, file.toStdString(), units, as_areas);
  };
  auto imported = read({});
  if (!imported && imported.error().code == "dxf-units") {
    const bool us = desk_->units() == units::System::us;
    imported = read(us ? "ft" : "m");
    prompt_->say(us ? tr("The drawing names no unit: it was read in feet")
                    : tr("The drawing names no unit: it was read in metres"));
  }
  if (!imported) {
    refuse(imported.error());
    return false;
  }
  plan::Job after = desk_->job();
  for (const auto& element : imported->job.elements) {
    plan::Element copy = *element;
    if (after.find(copy.id) != nullptr) copy.id = plan::free_id(after, copy.kind);
    after = plan::with(after, std::move(copy));
  }
  desk_->edit(after, tr("Bring in outlines"));
  plan_->whole_job();
  return true;
}

void MainWindow::write_plan_picture() {
  const ResultsPtr results = desk_->results();
  if (!results) return prompt_->say(tr("The numbers are still being worked out."));
  const QString file =
      QFileDialog::getSaveFileName(this, tr("The plan as a picture"), tr("plan.png"), tr("Pictures (*.png *.svg)"));
  if (file.isEmpty()) return;
  const bool drawn = file.endsWith(QLatin1String(".svg"), Qt::CaseInsensitive);
  const QString fault = write_whole(file, (drawn ? plan_svg(*results) : plan_png(*results)).toStdString());
  prompt_->say(fault.isEmpty() ? tr("The plan is in %1").arg(file) : fault);
}

void MainWindow::connect_files() {
  on("new-job", [this] { new_job(); });
  const auto kept_by = [this](const char* id, const std::function<void()>& does) {
    actions_[id].setEnabled(static_cast<bool>(does));
    if (does) on(id, does);
  };
  kept_by("open-job", shelf_.show_book);
  kept_by("save-version", shelf_.save_version);
  kept_by("compare", shelf_.compare);
  kept_by("book-prices", shelf_.catalogue ? [this] { settle_prices(Settling::open_job); } : std::function<void()>());
  for (const char* id : {"visit", "today", "otherwise", "change-order", "actual", "backups", "catalogue-window"})
    actions_[id].setEnabled(false);
  for (const auto& [id, does] : shelf_.office) kept_by(id, does);
  on("demo-job", [this] {
    auto job = demo_job();
    if (!job) {
      refuse(job.error());
    } else if (shelf_.take_job) {
      shelf_.take_job(std::move(*job));
    } else {
      desk_->open(std::make_shared<const plan::Job>(std::move(*job)));
    }
  });
  on("read-file", [this] {
    const QString file = QFileDialog::getOpenFileName(this, tr("Bring in a job file"), {}, tr("Job files (*.json)"));
    if (!file.isEmpty()) read_job_file(file);
  });
  on("write-file", [this] {
    const QString file = QFileDialog::getSaveFileName(this, tr("Write a job file"), {}, tr("Job files (*.json)"));
    if (!file.isEmpty()) write_job_file(file);
  });
  on("site-plan", [this] {
    const QString file = QFileDialog::getOpenFileName(
        this, tr("Bring in a site plan"), {}, tr("Site plans (*.png *.jpg *.jpeg *.pdf *.geojson *.json *.dxf)"));
    if (!file.isEmpty()) bring_in_site_plan(file);
  });
  on("outlines", [this] {
    const QString file = QFileDialog::getOpenFileName(this, tr("Bring in outlines as elements"), {},
                                                      tr("Outlines (*.geojson *.json *.dxf)"));
    if (!file.isEmpty()) bring_in_outlines(file);
  });
  on("taped", [this] { show_taped_window(*desk_, this); });
  on("estimate", [this] { show_estimate_window(*desk_, this); });
  on("print-sheets", [this] { show_sheets_window(*desk_, shelf_.sheets, this); });
  on("plan-picture", [this] { write_plan_picture(); });
  on("material-list", [this] {
    const QString file =
        QFileDialog::getSaveFileName(this, tr("Material list"), tr("material-list.csv"), tr("Tables (*.csv)"));
    if (!file.isEmpty()) write_material_list(file);
  });
  on("setting-out", [this] {
    const QString file =
        QFileDialog::getSaveFileName(this, tr("Setting-out table"), tr("setting-out.csv"), tr("Tables (*.csv)"));
    if (file.isEmpty()) return;
    const plan::Site site = plan::site(desk_->job());
    const auto terrain = takeoff::levels::terrain(desk_->job(), site);
    const auto out =
        takeoff::setting_out::setting_out(desk_->job(), site, takeoff::ground::bodies(desk_->job(), site), terrain);
    const QString fault = write_whole(file, files::setting_out_csv(desk_->job(), out));
    prompt_->say(fault.isEmpty() ? tr("The setting-out table is in %1").arg(file) : fault);
  });
  on("items-out", [this] {
    const QString file =
        QFileDialog::getSaveFileName(this, tr("Items of this job"), tr("items.csv"), tr("Tables (*.csv)"));
    if (file.isEmpty()) return;
    const QString fault = write_whole(file, files::write_catalogue_csv(*desk_->job().catalogue));
    prompt_->say(fault.isEmpty() ? tr("The items are in %1").arg(file) : fault);
  });
}

}  // namespace ui
