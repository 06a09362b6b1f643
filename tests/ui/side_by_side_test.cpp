// A version at today's prices and the job built otherwise, beside it: shown, never put in its place.
#include "ui/office/side_by_side.h"

#include <gtest/gtest.h>

#include <QDir>
#include <QHeaderView>
#include <QListWidget>
#include <QPushButton>
#include <QScrollBar>
#include <QSignalSpy>
#include <QTreeWidget>

#include "plan/instead.h"
#include "seat.h"
#include "ui/book/book_window.h"
#include "ui/look/theme.h"
#include "ui/words/words.h"

namespace {

ui::CompareWindow* compared(seat::Seat& at) {
  EXPECT_TRUE(QTest::qWaitFor([&at] { return at.window->findChild<ui::CompareWindow*>() != nullptr; }, 60000));
  return at.window->findChild<ui::CompareWindow*>();
}

TEST(SideBySide, aVersionAtTodaysPricesStaysAsItWas) {
  seat::Seat at;
  ASSERT_TRUE(person::wait_for_results(at.desk));
  const std::string item = seat::bought_item(*at.desk.results());
  ASSERT_FALSE(item.empty());
  at.save_version("As quoted");
  const store::VersionRow row = at.book.versions(at.keeper.id())->front();
  at.price_in_book(item, 9999);
  const ui::JobPtr job = at.desk.job_ptr();
  at.window->actions_by_id()["today"].trigger();
  ui::CompareWindow* window = compared(at);
  ASSERT_NE(window, nullptr);
  // The same by hand: the job of the version at the list's prices, worked out whole.
  const auto version = at.book.version(row.id).value();
  const auto then =
      results::compute(std::make_shared<const plan::Job>(plan::at_prices_of(version.job, *at.catalogue()())));
  EXPECT_EQ(window->comparison().total_by, then.priced.total - version.kept.total);
  EXPECT_NE(window->comparison().total_by, units::Money());
  EXPECT_FALSE(window->findChild<QPushButton*>("compare-order")->isEnabled()) << "one of the two is not kept";
  EXPECT_EQ(at.desk.job_ptr(), job);
  EXPECT_EQ(at.book.versions(at.keeper.id()).value(), std::vector{row});
}

TEST(SideBySide, withoutAVersionItSaysSo) {
  seat::Seat at;
  QSignalSpy said(&at.desk, &ui::Desk::said);
  at.window->actions_by_id()["today"].trigger();
  ASSERT_EQ(said.count(), 1);
  EXPECT_TRUE(said.front().front().toString().contains("No version"));
  EXPECT_EQ(at.window->findChild<ui::CompareWindow*>(), nullptr);
}

// Another pattern of the job or the book for the first area that is laid, chosen in the dialog.
TEST(SideBySide, theSameJobInAnotherPattern) {
  seat::Seat at(person::job_of("pool-terrace-a"));
  ASSERT_TRUE(person::wait_for_results(at.desk));
  const ui::JobPtr job = at.desk.job_ptr();
  plan::ElementId area;
  std::string pattern;
  seat::in_dialog([&](QWidget& dialog) {
    auto* areas = dialog.findChild<QListWidget*>("otherwise-areas");
    auto* patterns = dialog.findChild<QComboBox*>("otherwise-pattern");
    auto* done = dialog.findChild<QPushButton*>("otherwise-done");
    EXPECT_FALSE(done->isEnabled()) << "nothing is otherwise yet";
    for (int row = 0; row < areas->count(); ++row) {
      const auto id = areas->item(row)->data(Qt::UserRole).toString().toStdString();
      const auto& kind = std::get<plan::PavedArea>(job->find(id)->kind);
      const bool first = area.empty() && kind.laying;
      areas->item(row)->setCheckState(first ? Qt::Checked : Qt::Unchecked);
      if (!first) continue;
      area = id;
      for (int at_list = 1; pattern.empty() && at_list < patterns->count(); ++at_list)
        if (patterns->itemData(at_list).toString().toStdString() != kind.laying->pattern) {
          pattern = patterns->itemData(at_list).toString().toStdString();
          patterns->setCurrentIndex(at_list);
        }
    }
    ASSERT_TRUE(done->isEnabled());
    QTest::mouseClick(done, Qt::LeftButton);
  });
  at.window->actions_by_id()["otherwise"].trigger();
  ui::CompareWindow* window = compared(at);
  ASSERT_NE(window, nullptr);
  ASSERT_FALSE(pattern.empty());
  const auto book = at.catalogue()();
  const plan::Job built = ui::built_otherwise(*job, book.get(), {{area}, pattern, {}});
  EXPECT_EQ(std::get<plan::PavedArea>(built.find(area)->kind).laying->pattern, pattern);
  const auto then = results::compute(std::make_shared<const plan::Job>(built));
  EXPECT_EQ(window->comparison().total_by, then.priced.total - at.desk.results()->priced.total);
  EXPECT_FALSE(window->comparison().changes.empty());
  EXPECT_EQ(at.desk.job_ptr(), job) << "the job on the plan stays";
}

TEST(SideBySide, fromTheJobBookOfTheVersionChosen) {
  seat::Seat at;
  at.save_version("As quoted");
  at.window->actions_by_id()["open-job"].trigger();
  auto* book = at.window->findChild<ui::BookWindow*>();
  book->choose(at.keeper.id());
  seat::choose_rows(book->findChild<QTableView*>("book-versions"), {0});
  auto* today = book->findChild<QPushButton*>("book-today");
  ASSERT_TRUE(today->isEnabled());
  QTest::mouseClick(today, Qt::LeftButton);
  ASSERT_NE(compared(at), nullptr);
}

// Words of quantities are right, and the list needs no bar to be pushed sideways (HOUSE_PICTURES keeps pictures).
TEST(SideBySide, theListFitsItsWindow) {
  const QString folder = qEnvironmentVariable("HOUSE_PICTURES");
  for (const bool dark : {false, true})
    for (const double factor : {1.0, 1.44}) {
      ui::set_dark(dark);
      ui::set_type_factor(factor);
      seat::Seat at(person::job_of("pool-terrace-a"));
      at.save_version("As quoted");
      for (const char* price : {"77.77"}) at.give_price(seat::bought_item(*at.desk.results()).c_str(), price);
      plan::Job after = plan::without(at.desk.job(), at.desk.job().elements.back()->id);
      after.offer.overhead = 0.1;
      at.desk.edit(after, "Less");
      ASSERT_TRUE(person::wait_for_results(at.desk));
      at.window->actions_by_id()["compare"].trigger();
      ui::CompareWindow* window = compared(at);
      ASSERT_NE(window, nullptr);
      QTest::qWait(30);
      auto* lines = window->findChild<QTreeWidget*>("compare-lines");
      EXPECT_TRUE(factor > 1 || !lines->horizontalScrollBar()->isVisible());
      if (folder.isEmpty()) continue;
      QDir().mkpath(folder);
      const QString name = QString("/side-%1-%2.png").arg(dark ? "dark" : "light").arg(factor);
      EXPECT_TRUE(window->grab().save(folder + name));
      ui::OtherwiseDialog dialog(at.desk.job(), at.catalogue()().get(), {}, at.window.get());
      dialog.show();
      QTest::qWait(30);
      EXPECT_TRUE(
          dialog.grab().save(folder + QString("/otherwise-%1-%2.png").arg(dark ? "dark" : "light").arg(factor)));
    }
  ui::set_dark(false);
  ui::set_type_factor(1);
}

}  // namespace
