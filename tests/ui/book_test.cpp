// The job book's window used as a person does: jobs are searched, sorted, copied, archived; versions are read with
// their old totals, and two are chosen to be compared.
#include "ui/book/book_window.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QCheckBox>
#include <QComboBox>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QTableView>
#include <QTableWidget>
#include <QTemporaryDir>
#include <QTest>

#include "ui/book/book_words.h"
#include "ui/book/differences_dialog.h"
#include "ui/book/save_version.h"
#include "ui/book/version_window.h"
#include "ui/look/style.h"
#include "ui/look/theme.h"
#include "ui/words/words.h"

namespace {

plan::Job named(const char* number, const char* name, const char* customer, const char* place) {
  plan::Job job;
  job.heading.number = number;
  job.heading.name = name;
  job.heading.customer = customer;
  job.heading.place = place;
  job.catalogue = std::make_shared<const catalogue::Catalogue>();
  return job;
}

estimate::Kept kept_of(std::int64_t coins) {
  estimate::Kept kept;
  kept.currency = "USD";
  kept.program = "0.6";
  kept.final = true;
  const struct {
    const char *stage, *words, *unit;
    double quantity;
    std::int64_t share;
  } lines[] = {{"base", "Crushed stone, 3/4 in minus", "ton", 26, 20},
               {"lay", "Paver 6 x 9 in, grey", "pack", 9, 45},
               {"lay", "Laying pavers", "hour", 46.5, 30},
               {"joints", "Jointing sand", "bag", 12, 5}};
  for (const auto& one : lines) {
    estimate::KeptLine line;
    line.stage = one.stage;
    line.description = one.words;
    line.order_quantity = one.quantity;
    line.order_unit = one.unit;
    line.amount = units::Money::of_coins(coins * one.share / 100);
    kept.direct += *line.amount;
    kept.lines.push_back(line);
  }
  kept.steps = {{"direct", "Direct cost", kept.direct, "the lines together"},
                {"overhead", "Overhead, 10 % of the direct cost", units::times(kept.direct, 0.1), "10 % of the lines"}};
  kept.price = kept.total = kept.direct + units::times(kept.direct, 0.1);
  return kept;
}

struct Book {
  Book() {
    if (qEnvironmentVariableIsSet("GROUNDCOURSE_PICTURES")) ui::dress(*qApp);
    elm = add(named("2026-14", "Pool terrace", "R. Alder", "12 Elm Row"));
    pena = add(named("2026-9", "Terraza del patio", "Familia Peña", "Calle Olmo 4"));
    walk = add(named("2025-2", "Front walk and steps", "Hill House", "9 Elm Row"));
    for (int i = 1; i <= 3; ++i)
      versions.push_back(book.save_version(elm, book.read(elm).value(), kept_of(1'000'000 * i),
                                           i == 1   ? "As quoted"
                                           : i == 2 ? "With steps"
                                                    : "Second price",
                                           "sent to the owners by post")
                             .value()
                             .id);
    book.issue(versions[0], "quote", "en", "%PDF-1.4 the quote").value();
    book.set_state(elm, store::State::agreed).value();
    book.set_state(walk, store::State::closed).value();
    window = std::make_unique<ui::BookWindow>(book);
    window->setAttribute(Qt::WA_DeleteOnClose, false);
    window->show();
    QApplication::setActiveWindow(window.get());
  }
  std::int64_t add(const plan::Job& job) { return book.add(job).value(); }
  template <class T>
  T* child(const char* name) {
    T* found = window->findChild<T*>(QString::fromLatin1(name));
    EXPECT_NE(found, nullptr) << name;
    return found;
  }
  void press(const char* name) {
    auto* button = child<QAbstractButton>(name);
    ASSERT_TRUE(button->isEnabled()) << name;
    QTest::mouseClick(button, Qt::LeftButton);
  }
  QStringList names() {
    QStringList list;
    const auto* model = child<QTableView>("book-jobs")->model();
    for (int row = 0; row < model->rowCount(); ++row) list << model->index(row, 1).data().toString();
    return list;
  }
  void choose_versions(std::initializer_list<int> rows) {
    auto* table = child<QTableView>("book-versions");
    table->clearSelection();
    for (const int row : rows)
      QTest::mouseClick(table->viewport(), Qt::LeftButton, Qt::ControlModifier,
                        table->visualRect(table->model()->index(row, 1)).center());
  }

  QTemporaryDir folder;
  store::JobBook book = store::JobBook::open(folder.path().toStdString() + "/book").value();
  std::int64_t elm = 0, pena = 0, walk = 0;
  std::vector<std::int64_t> versions;
  std::unique_ptr<ui::BookWindow> window;
};

TEST(BookWindow, FindsJobsAsOneTypes) {
  Book here;
  EXPECT_EQ(here.names().size(), 3);
  auto* search = here.child<QLineEdit>("book-search");
  QTest::keyClicks(search, "elm");
  EXPECT_EQ(here.names(), (QStringList{"Front walk and steps", "Pool terrace"}));
  EXPECT_EQ(here.child<QLabel>("book-counted")->text(), "2 jobs");
  QTest::keyClicks(search, " 2026");
  EXPECT_EQ(here.names(), QStringList{"Pool terrace"});
  search->clear();
  QTest::keyClicks(search, "pena");
  EXPECT_EQ(here.names(), QStringList{"Terraza del patio"});
  search->setText("nobody");
  EXPECT_TRUE(here.names().isEmpty());
  EXPECT_FALSE(here.child<QAbstractButton>("book-open")->isEnabled());
  EXPECT_EQ(here.window->chosen_job(), 0);
}

TEST(BookWindow, SortsByAClickOnAHeadAndByTheKeyboard) {
  Book here;
  auto* head = here.child<QTableView>("book-jobs")->horizontalHeader();
  const auto click = [&](int column) {
    QTest::mouseClick(head->viewport(), Qt::LeftButton, {},
                      {head->sectionViewportPosition(column) + head->sectionSize(column) / 2, head->height() / 2});
  };
  click(0);  // numbers count as numbers: 9 before 14
  EXPECT_EQ(here.names(), (QStringList{"Front walk and steps", "Terraza del patio", "Pool terrace"}));
  click(0);
  EXPECT_EQ(here.names(), (QStringList{"Pool terrace", "Terraza del patio", "Front walk and steps"}));
  auto* sorted = here.child<QComboBox>("book-sorted");
  EXPECT_EQ(sorted->currentData().toInt(), 0);
  sorted->setFocus();
  QTest::keyClick(sorted, Qt::Key_Down);  // by the name of the job
  EXPECT_EQ(here.names(), (QStringList{"Front walk and steps", "Pool terrace", "Terraza del patio"}));
}

TEST(BookWindow, StatesCopiesAndArchives) {
  Book here;
  here.window->choose(here.pena);
  auto* state = here.child<QComboBox>("book-state");
  EXPECT_EQ(state->currentText(), "Asked for");
  state->setFocus();
  QTest::keyClick(state, Qt::Key_Down);
  EXPECT_EQ(here.book.jobs().value().front().state, store::State::quoted);
  EXPECT_EQ(here.window->chosen_job(), here.pena);
  here.press("book-copy");
  EXPECT_TRUE(here.names().contains("Copy of Terraza del patio"));
  EXPECT_NE(here.window->chosen_job(), here.pena);
  here.press("book-archive");
  EXPECT_FALSE(here.names().contains("Copy of Terraza del patio"));
  here.child<QCheckBox>("book-archived")->setChecked(true);
  EXPECT_TRUE(here.names().contains("Copy of Terraza del patio"));
  EXPECT_EQ(here.book.jobs().value().size(), 4u);
}

TEST(BookWindow, AsksForWhatBelongsToTheOpenJob) {
  Book here;
  here.window->choose(here.elm);
  QSignalSpy opened(here.window.get(), &ui::BookWindow::open_job);
  QSignalSpy written(here.window.get(), &ui::BookWindow::write_job);
  QSignalSpy compared(here.window.get(), &ui::BookWindow::compare_versions);
  QSignalSpy saved(here.window.get(), &ui::BookWindow::save_version);
  here.press("book-open");
  here.press("book-write");
  ASSERT_EQ(opened.size(), 1);
  EXPECT_EQ(opened[0][0].toLongLong(), here.elm);
  EXPECT_EQ(written.size(), 1);
  EXPECT_FALSE(here.child<QAbstractButton>("book-save-version")->isEnabled());
  here.window->set_open_job(here.elm);
  here.press("book-save-version");
  EXPECT_EQ(saved.size(), 1);
  EXPECT_FALSE(here.child<QAbstractButton>("book-compare")->isEnabled());
  here.choose_versions({0, 2});
  here.press("book-compare");
  ASSERT_EQ(compared.size(), 1);
  EXPECT_EQ(compared[0][0].toLongLong(), here.versions[0]);  // the older one first
  EXPECT_EQ(compared[0][1].toLongLong(), here.versions[2]);
}

TEST(BookWindow, ReadsTheFirstVersionWithItsOldTotal) {
  Book here;
  here.window->choose(here.elm);
  QSignalSpy on(here.window.get(), &ui::BookWindow::work_on_from);
  here.choose_versions({2});
  here.press("book-show-version");
  auto* version = here.child<ui::VersionWindow>("version-window");
  // 10,000.00 of lines and a tenth of overhead
  EXPECT_EQ(version->findChild<QLabel*>("version-total")->text(), "$11,000.00");
  EXPECT_EQ(version->findChild<QTableWidget*>("version-lines")->rowCount(), 4);
  QTest::mouseClick(version->findChild<QAbstractButton*>("version-work-on"), Qt::LeftButton);
  ASSERT_EQ(on.size(), 1);
  EXPECT_EQ(on[0][0].toLongLong(), here.versions[0]);
}

TEST(BookWindow, SaysWhatAVersionIsCalled) {
  ui::SaveVersionDialog dialog("<b>Pool</b>", "$11,000.00", false);
  dialog.show();
  QTest::keyClicks(dialog.findChild<QLineEdit*>("version-name"), "As quoted");
  QTest::keyClicks(dialog.findChild<QPlainTextEdit*>("version-note"), "by post");
  QTest::mouseClick(dialog.findChild<QAbstractButton*>("version-save"), Qt::LeftButton);
  EXPECT_EQ(dialog.result(), QDialog::Accepted);
  EXPECT_EQ(dialog.words().name, "As quoted");
  EXPECT_EQ(dialog.words().note, "by post");
}

TEST(BookWindow, StatesHaveASignEach) {
  std::vector<QImage> signs;
  for (const store::State state : store::all_states) {
    EXPECT_FALSE(ui::state_name(state).isEmpty());
    const QImage sign = ui::state_sign(state).pixmap(32, 32).toImage();
    for (const QImage& other : signs) EXPECT_NE(sign, other);
    signs.push_back(sign);
  }
}

std::vector<catalogue::PartDifference> some_differences() {
  using What = catalogue::PartDifference::What;
  const auto price = [](std::int64_t coins) {
    return catalogue::Price{units::Money::of_coins(coins), "ton", "2026-01-01", false};
  };
  return {{catalogue::Part::item, "stone", {"Crushed stone, 3/4 in minus", ""}, What::price, price(4200), price(3900)},
          {catalogue::Part::item,
           "paver",
           {"Paver 6 x 9 in, grey, with a long name of its own", ""},
           What::other,
           price(100),
           price(100)},
          {catalogue::Part::build_up, "drive", {"Drive on clay", ""}, What::missing, {}, {}}};
}

TEST(BookWindow, AsksWhatBecomesOfWhatAJobBrings) {
  using catalogue::Choice;
  ui::DifferencesDialog dialog(some_differences(), plan::Heading(), ui::Settling::bring_in);
  dialog.show();
  const auto chosen = [&] {
    std::vector<Choice> list;
    for (const auto& one : dialog.choices()) list.push_back(one.choice);
    return list;
  };
  // What the catalogue lacks goes into it unless the person says otherwise; what it has is not touched.
  EXPECT_EQ(chosen(), (std::vector<Choice>{Choice::keep_jobs, Choice::keep_jobs, Choice::put_into_book}));
  const auto press = [&](const char* name) {
    QTest::mouseClick(dialog.findChild<QAbstractButton*>(QString::fromLatin1(name)), Qt::LeftButton);
  };
  press("differences-take");  // there is none of the catalogue's to take for the third
  EXPECT_EQ(chosen(), (std::vector<Choice>{Choice::take_books, Choice::take_books, Choice::put_into_book}));
  press("differences-put");
  EXPECT_EQ(chosen(), (std::vector<Choice>{Choice::put_into_book, Choice::put_into_book, Choice::put_into_book}));
  auto* first = dialog.findChild<QComboBox*>("differences-choice-0");
  first->setFocus();
  QTest::keyClick(first, Qt::Key_Home);
  EXPECT_EQ(chosen().front(), Choice::keep_jobs);
  EXPECT_EQ(dialog.choices()[2].id, "drive");
  press("differences-done");
  EXPECT_EQ(dialog.result(), QDialog::Accepted);
  EXPECT_TRUE(ui::ask_differences({}, plan::Heading(), ui::Settling::bring_in, nullptr)->empty());  // asks nobody
}

// Names of any kind stand in the lists as they are, and nothing in them is taken for a command.
TEST(BookWindow, ShowsNamesOfAnyKind) {
  Book here;
  const std::string names[] = {"'; DROP TABLE jobs",   "%s %1",
                               "<b>bold</b>",          std::string(65'536, 'x'),
                               std::string("a\0b", 3), "\xE2\x80\xAE right to left"};
  for (const std::string& name : names) {
    plan::Job job = named("", "", "", "");
    job.heading.name = job.heading.customer = name;
    const auto id = here.book.add(job).value();
    here.book.save_version(id, job, kept_of(100), name, name).value();
    here.window->refresh();
    here.window->choose(id);
    EXPECT_EQ(here.names().size(), static_cast<int>(here.book.jobs().value().size()));
    here.press("book-show-version");
    auto* version = here.child<ui::VersionWindow>("version-window");
    for (const QLabel* label : version->findChildren<QLabel*>()) EXPECT_EQ(label->textFormat(), Qt::PlainText);
    delete version;
  }
  EXPECT_TRUE(here.names().contains("<b>bold</b>"));
}

// Only for looking: GROUNDCOURSE_PICTURES names a folder.
TEST(BookWindow, Pictures) {
  const QString into = qEnvironmentVariable("GROUNDCOURSE_PICTURES");
  if (into.isEmpty()) GTEST_SKIP() << "no folder for pictures";
  for (const char* look : {"light", "dark", "large"}) {
    ui::set_dark(QLatin1String(look) == QLatin1String("dark"));
    ui::set_type_factor(QLatin1String(look) == QLatin1String("large") ? 1.44 : 1);
    Book here;
    here.window->choose(here.elm);
    here.window->set_open_job(here.elm);
    here.choose_versions({2});
    QTest::qWait(50);
    here.window->grab().save(into + "/book-" + look + ".png");
    here.press("book-show-version");
    auto* version = here.child<ui::VersionWindow>("version-window");
    QTest::qWait(50);
    version->grab().save(into + "/version-" + look + ".png");
    ui::DifferencesDialog differences(some_differences(), plan::Heading(), ui::Settling::bring_in);
    differences.show();
    QTest::qWait(50);
    differences.grab().save(into + "/differences-" + look + ".png");
    ui::SaveVersionDialog dialog("Pool terrace", "$11,000.00", false);
    dialog.show();
    QTest::qWait(50);
    EXPECT_TRUE(dialog.grab().save(into + "/save-" + look + ".png"));
  }
  ui::set_dark(false);
  ui::set_type_factor(1);
}

}  // namespace
