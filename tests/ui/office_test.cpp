// The office's day through the windows: a job is made, three versions are saved, prices change, the first is read again
// with its old total and compared with the third.
#include "ui/window/office.h"

#include <gtest/gtest.h>

#include <QLabel>
#include <QPushButton>
#include <QTableView>

#include "seat.h"
#include "ui/book/book_window.h"
#include "ui/book/version_window.h"
#include "ui/compare/compare_window.h"

namespace {

TEST(Office, threeVersionsAndTheFirstKeepsItsTotal) {
  seat::Seat at;
  ASSERT_TRUE(person::wait_for_results(at.desk));
  const std::string item = seat::bought_item(*at.desk.results());
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
  seat::choose_rows(versions, {2});  // the newest stands first
  QTest::mouseClick(shown->findChild<QPushButton*>("book-show-version"), Qt::LeftButton);
  auto* version = shown->findChild<ui::VersionWindow*>();
  ASSERT_NE(version, nullptr);
  EXPECT_TRUE(version->findChild<QLabel*>("version-total")->text().contains(first))
      << version->findChild<QLabel*>("version-total")->text().toStdString() << " for " << first.toStdString();
  version->close();

  // Compared with the third: every coin of the difference in the lines, and the sum of them in words.
  seat::choose_rows(versions, {0, 2});
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
  seat::choose_rows(versions, {2});

  // Work goes on from the first: its prices are back, as one step that can be undone.
  QTest::mouseClick(shown->findChild<QPushButton*>("book-work-on"), Qt::LeftButton);
  ASSERT_TRUE(person::wait_for_results(at.desk));
  EXPECT_EQ(at.total(), first);
  at.desk.undo();
  ASSERT_TRUE(person::wait_for_results(at.desk));
  EXPECT_EQ(at.total(), third);
}

// Each action of the office opens its window, of the book that the office has.
TEST(Office, everyActionOpensItsWindow) {
  seat::Seat at;
  at.save_version("As quoted");
  const struct {
    const char* action;
    const char* window;
  } rows[] = {{"visit", "visit-window"},
              {"backups", "backups-window"},
              {"actual", "actual-window"},
              {"catalogue-window", "catalogue-window"}};
  for (const auto& row : rows) {
    at.window->actions_by_id()[row.action].trigger();
    auto* opened = at.window->findChild<QDialog*>(QString::fromLatin1(row.window));
    ASSERT_NE(opened, nullptr) << row.action;
    EXPECT_TRUE(opened->isVisible()) << row.action;
    opened->close();
  }
}

}  // namespace
