#include "ui/window/run_window.h"

#include <QApplication>
#include <QFile>
#include <QProcess>
#include <QTimer>
#include <clocale>
#include <cstdio>
#include <thread>

#include "files/files.h"
#include "problem/ensure.h"
#include "store/backup.h"
#include "store/catalogue_book.h"
#include "store/job_book.h"
#include "store/now.h"
#include "ui/book/differences_dialog.h"
#include "ui/look/theme.h"
#include "ui/office/restoring.h"
#include "ui/window/keeper.h"
#include "ui/window/main_window.h"
#include "ui/window/office.h"
#include "ui/window/settings_dialog.h"
#include "ui/words/words.h"

namespace ui {

namespace {

int refuse(const QString& sentence) {
  std::fprintf(stderr, "groundcourse: %s\n", sentence.toUtf8().constData());
  return 1;
}

int refuse(const problem::Problem& problem) {
  return refuse(QString::fromStdString(problem.text + (problem.mend.empty() ? "" : ": " + problem.mend)));
}

// Without a display Qt would end the program with words of its own.
bool display_there() {
  const bool chosen = qEnvironmentVariableIsSet("QT_QPA_PLATFORM");
  return chosen || qEnvironmentVariableIsSet("DISPLAY") || qEnvironmentVariableIsSet("WAYLAND_DISPLAY");
}

// Makes the window, and makes it anew when language, light or size of text change: every word of it is said when it is
// made.
class Windows {
 public:
  explicit Windows(Desk& desk) : desk_(desk) {}
  void set_shelf(Shelf shelf) {
    shelf_ = std::move(shelf);
    shelf_.look_changed = [this] { QTimer::singleShot(0, qApp, [this] { make(); }); };
  }
  void make() {
    keep_place();
    const Settings settings = read_settings();
    speak(settings.language);
    set_type_factor(settings.text_px / 13.0);
    set_dark(is_dark(settings));
    auto made = std::make_unique<MainWindow>(desk_, shelf_);
    QSettings file = settings_file();
    if (!made->restoreGeometry(file.value("window/geometry").toByteArray())) made->resize(px(1440), px(900));
    made->show();
    window_ = std::move(made);
  }
  void keep_place() const {
    if (window_) settings_file().setValue("window/geometry", window_->saveGeometry());
  }
  MainWindow& window() { return *window_; }

 private:
  Desk& desk_;
  Shelf shelf_;
  std::unique_ptr<MainWindow> window_;
};

struct Begun {
  plan::Job job;
  std::optional<std::int64_t> id;  // in the book already
  bool first = false;              // nobody has been here before
};

problem::Result<Begun> begin_with(store::JobBook& book, const std::string& file) {
  if (!file.empty()) {
    const auto text = files::read_file(file);
    if (!text) return std::unexpected(text.error());
    auto job = files::read_job(*text, file);
    if (!job) return std::unexpected(job.error());
    return Begun{std::move(*job), std::nullopt, false};
  }
  const std::int64_t last = settings_file().value("job/open", 0).toLongLong();
  const auto rows = book.jobs();
  if (!rows) return std::unexpected(rows.error());
  const auto open = [&](std::int64_t id) -> problem::Result<Begun> {
    auto job = book.read(id);
    if (!job) return std::unexpected(job.error());
    return Begun{std::move(*job), id, false};
  };
  for (const store::JobRow& row : *rows) {
    if (row.id == last) return open(last);
  }
  if (!rows->empty()) return open(rows->front().id);
  auto demo = demo_job();
  if (!demo) return std::unexpected(demo.error());
  return Begun{std::move(*demo), std::nullopt, true};
}

}  // namespace

problem::Result<plan::Job> demo_job() {
  QFile file(QStringLiteral(":/demo-jobs/pool-terrace-a.json"));
  problem::ensure(file.open(QIODevice::ReadOnly), "the demo job is built in");
  return files::read_job(file.readAll().toStdString(), "demo job");
}

namespace {

// What the window asks of the book and its catalogue.
Shelf shelf_of(store::JobBook& book) {
  Shelf shelf;
  shelf.catalogue = []() -> std::shared_ptr<const catalogue::Catalogue> {
    auto from = store::CatalogueBook::open();
    if (!from) return std::make_shared<const catalogue::Catalogue>();
    auto read = from->read();
    return std::make_shared<const catalogue::Catalogue>(read ? std::move(*read) : catalogue::Catalogue{});
  };
  shelf.put_items = [](const catalogue::Catalogue& settled) -> problem::Result<void> {
    auto into = store::CatalogueBook::open();
    if (!into) return std::unexpected(into.error());
    return into->put(settled, "job file");
  };
  shelf.keep = [&book](const QByteArray& bytes) {
    const auto kept = book.keep(bytes.toStdString());
    return kept ? *kept : std::string();
  };
  shelf.body = [&book](const std::string& sha) {
    const auto bytes = book.body(sha);
    return bytes ? QByteArray::fromStdString(*bytes) : QByteArray();
  };
  return shelf;
}

// From the opening of the book to its end. `first_said` is said in the prompt.
int sit(const std::string& file, const std::optional<QString>& first_said) {
  auto book = store::JobBook::open_or_read();
  if (!book) return refuse(book.error());
  auto begun = begin_with(*book, file);
  if (!begun) return refuse(begun.error());

  Desk desk(std::make_shared<const plan::Job>(begun->job));
  Keeper keeper(desk, *book);
  // A book that is held by another window, or is of a newer program, is only read; what is done here is then not kept,
  // and that is said.
  const std::optional<problem::Problem> only_read = book->only_read();
  if (begun->id) {
    keeper.adopt(*begun->id);
  } else if (auto kept = keeper.add(); !kept && !only_read) {
    return refuse(kept.error());
  }
  Shelf shelf = shelf_of(*book);
  Windows windows(desk);
  shelf.take_job = [&keeper, &desk, &windows](plan::Job job) {
    desk.open(std::make_shared<const plan::Job>(std::move(job)));
    if (auto kept = keeper.add(); !kept) desk.say(QString::fromStdString(kept.error().text));
    windows.window().show_version_state();
  };
  Office office(desk, *book, keeper, [&windows] { return &windows.window(); }, shelf);
  shelf.show_book = [&office] { office.show_book(); };
  shelf.save_version = [&office] { office.save_version(); };
  shelf.compare = [&office] { office.compare_with_now(); };
  shelf.version_state = [&office] { return office.version_state(); };
  shelf.office = office.actions();
  shelf.sheets = office.sheets();
  windows.set_shelf(shelf);
  windows.make();
  if (begun->first) windows.window().show_first_start();
  if (only_read) desk.say(QString::fromStdString(only_read->text + ": " + only_read->mend));
  if (first_said) desk.say(*first_said);
  // A job from a file is asked about as one that is brought in.
  if (!file.empty()) QTimer::singleShot(0, qApp, [&windows] { windows.window().settle_prices(Settling::bring_in); });
  // Today's backup, beside the window: it reads the book and waits for nobody.
  std::optional<std::jthread> backup;
  if (!only_read) {
    backup.emplace([&desk] {
      if (const auto made = store::back_up_daily(store::data_folder(), store::utc_now()); !made)
        QMetaObject::invokeMethod(&desk, [&desk, why = made.error().text] { desk.say(QString::fromStdString(why)); });
    });
  }
  const int code = QApplication::exec();
  windows.keep_place();
  settings_file().setValue("job/open", QVariant::fromValue<qlonglong>(keeper.id()));
  if (auto settled = book->settle(); !settled) return refuse(settled.error());
  return code;
}

}  // namespace

int run_window(int& count, char** words, const std::string& file) {
  if (!display_there())
    return refuse(
        QStringLiteral("there is no display for the window: start it where DISPLAY or WAYLAND_DISPLAY is set, "
                       "or give a command (groundcourse --help)"));
  QApplication application(count, words);
  // Qt has taken over the person's locale. Whatever writes numbers by printf (spreadsheets) keeps its decimal points.
  std::setlocale(LC_NUMERIC, "C");
  QApplication::setApplicationName(QStringLiteral("groundcourse"));
  if (const QString fault = prepare(application); !fault.isEmpty()) return refuse(fault);
  const int code = sit(file, restore_noted(store::data_folder(), store::utc_now()));
  if (code != Office::start_again) return code;
  return QProcess::startDetached(QCoreApplication::applicationFilePath(), {}) ? 0 : 1;
}

}  // namespace ui
