// The office's day through the windows: a job is made, three versions are saved, prices change, the first is read again
// with its old total and compared with the third.
#include "ui/window/office.h"

#include <gtest/gtest.h>

#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTableView>
#include <QTemporaryDir>
#include <QTimer>

#include "person.h"
#include "ui/book/book_window.h"
#include "ui/book/version_window.h"
#include "ui/compare/compare_window.h"
#include "ui/panels/panel_words.h"
#include "ui/panels/takeoff_model.h"

namespace {

// The window with a book behind it, as run_window joins them.
class Seat {
 public:
  Seat()
      : book(store::JobBook::open(folder.path().toStdString()).value()),
        desk(std::make_shared<const plan::Job>(person::job_of("bakery-court"))),
        keeper(desk, book),
        office(desk, book, keeper, [this] { return window.get(); }) {
    EXPECT_TRUE(keeper.add().has_value());
    ui::Shelf shelf;
    shelf.show_book = [this] { office.show_book(); };
    shelf.save_version = [this] { office.save_version(); };
    shelf.version_state = [this] { return office.version_state(); };
    window = std::make_unique<ui::MainWindow>(desk, shelf);
    window->resize(1440, 900);
    window->show();
    (void)QTest::qWaitForWindowExposed(window.get());
  }

  // The dialog that the next action opens is filled in and sent off.
  void save_version(const char* name) {
    ASSERT_TRUE(person::wait_for_results(desk));
    QTimer::singleShot(0, [name] {
      QWidget* dialog = QApplication::activeModalWidget();
      ASSERT_NE(dialog, nullptr);
      auto* line = dialog->findChild<QLineEdit*>("version-name");
      QTest::keyClicks(line, QString::fromLatin1(name));
      QTest::keyClick(line, Qt::Key_Return);
    });
    window->actions_by_id()["save-version"].trigger();
  }
  void give_price(const char* item, const char* price) {
    const auto after = ui::with_price(desk.job(), item, price, "2026-11-28");
    ASSERT_TRUE(after.has_value());
    desk.edit(*after, "Change a price");
    ASSERT_TRUE(person::wait_for_results(desk));
  }
  QString total() const { return ui::shown_money(desk.results()->priced.total, desk.job().heading); }

  QTemporaryDir folder;
  store::JobBook book;
  ui::Desk desk;
  ui::Keeper keeper;
  std::unique_ptr<ui::MainWindow> window;
  ui::Office office;
};

// An item that the job buys for money.
std::string bought_item(const results::Results& results) {
  for (const auto& line : results.estimate.lines) {
    const bool bought = line.kind == plan::CostKind::material && line.amount && line.amount->coins() > 0;
    if (bought && results.job->catalogue->item(line.item)) return line.item;
  }
  return {};
}

void choose_rows(QTableView* table, std::vector<int> rows) {
  table->clearSelection();
  for (const int row : rows)
    table->selectionModel()->select(table->model()->index(row, 0),
                                    QItemSelectionModel::Select | QItemSelectionModel::Rows);
}

TEST(Office, threeVersionsAndTheFirstKeepsItsTotal) {
  Seat at;
  ASSERT_TRUE(person::wait_for_results(at.desk));
  const std::string item = bought_item(*at.desk.results());
  ASSERT_FALSE(item.empty());
  const QString first = at.total();
  at.save_version("As quoted");
  at.give_price(item.c_str(), "77.77");
  const QString second = at.total();
  at.save_version("Dearer");
  at.give_price(item.c_str(), "88.88");
  const QString third = at.total();
  at.save_version("Dearer still");
  EXPECT_NE(first, second);
  EXPECT_NE(second, third);
  EXPECT_EQ(at.office.version_state(), "working copy, after version 3");

  at.window->actions_by_id()["open-job"].trigger();
  auto* shown = at.window->findChild<ui::BookWindow*>();
  ASSERT_NE(shown, nullptr);
  shown->choose(at.keeper.id());
  auto* versions = shown->findChild<QTableView*>("book-versions");
  ASSERT_NE(versions, nullptr);
  ASSERT_EQ(versions->model()->rowCount(), 3);
  choose_rows(versions, {2});  // the newest stands first
  QTest::mouseClick(shown->findChild<QPushButton*>("book-show-version"), Qt::LeftButton);
  auto* version = shown->findChild<ui::VersionWindow*>();
  ASSERT_NE(version, nullptr);
  EXPECT_TRUE(version->findChild<QLabel*>("version-total")->text().contains(first))
      << version->findChild<QLabel*>("version-total")->text().toStdString() << " for " << first.toStdString();
  version->close();

  // Compared with the third: every coin of the difference in the lines, and the sum of them in words.
  choose_rows(versions, {0, 2});
  QTest::mouseClick(shown->findChild<QPushButton*>("book-compare"), Qt::LeftButton);
  auto* compared = at.window->findChild<ui::CompareWindow*>();
  ASSERT_NE(compared, nullptr);
  const estimate::Comparison& found = compared->comparison();
  units::Money sum;
  for (const auto& change : found.changes) sum += change.by;
  EXPECT_EQ(sum, found.direct_by);
  const auto kept = at.book.versions(at.keeper.id()).value();
  EXPECT_EQ(found.total_by, kept.front().total - kept.back().total);
  EXPECT_FALSE(found.changes.empty());
  compared->close();
  choose_rows(versions, {2});

  // Work goes on from the first: its prices are back, as one step that can be undone.
  QTest::mouseClick(shown->findChild<QPushButton*>("book-work-on"), Qt::LeftButton);
  ASSERT_TRUE(person::wait_for_results(at.desk));
  EXPECT_EQ(at.total(), first);
  at.desk.undo();
  ASSERT_TRUE(person::wait_for_results(at.desk));
  EXPECT_EQ(at.total(), third);
}

}  // namespace
