// Backups are listed; one is put back after the person was asked, at the next start, and what was there before is kept.
#include "ui/office/backups_window.h"

#include <gtest/gtest.h>

#include <QDir>
#include <QLabel>
#include <QMessageBox>
#include <QPushButton>
#include <QSignalSpy>
#include <QTableWidget>
#include <QTemporaryDir>
#include <QTest>
#include <QTimer>

#include "files/files.h"
#include "store/job_book.h"
#include "ui/look/theme.h"
#include "ui/office/restoring.h"
#include "ui/words/words.h"

namespace {

plan::Job named(const char* name) {
  plan::Job job;
  job.heading.name = name;
  job.catalogue = std::make_shared<const catalogue::Catalogue>();
  return job;
}

// A folder with a book of one job, a backup of that day, and a second job that came after it.
struct Kept {
  Kept() {
    {
      auto book = store::JobBook::open(path()).value();
      EXPECT_TRUE(book.add(named("first")).has_value());
    }
    EXPECT_TRUE(store::back_up_daily(path(), "2026-11-27T08:00:00Z").value().has_value());
    auto book = store::JobBook::open(path()).value();
    EXPECT_TRUE(book.add(named("second")).has_value());
  }
  std::string path() const { return folder.path().toStdString(); }
  std::vector<std::string> jobs() const {
    std::vector<std::string> names;
    const auto rows = store::JobBook::open(path()).value().jobs().value();
    for (const store::JobRow& row : rows) names.push_back(row.name);
    std::ranges::sort(names);
    return names;
  }
  QTemporaryDir folder;
};

void answer(const char* button) {
  QTimer::singleShot(0, [button] {
    QWidget* box = QApplication::activeModalWidget();
    ASSERT_NE(box, nullptr);
    QTest::mouseClick(box->findChild<QAbstractButton*>(QString::fromLatin1(button)), Qt::LeftButton);
  });
}

TEST(BackupsWindow, listsAndAsksBeforeAnything) {
  const Kept kept;
  ui::BackupsWindow window(kept.path(), true);
  window.setAttribute(Qt::WA_DeleteOnClose, false);
  window.show();
  auto* list = window.findChild<QTableWidget*>("backups-list");
  ASSERT_EQ(list->rowCount(), 1);
  EXPECT_EQ(list->item(0, 2)->text(), "1");
  auto* put_back = window.findChild<QPushButton*>("backups-restore");
  list->clearSelection();
  EXPECT_FALSE(put_back->isEnabled());
  list->selectRow(0);
  ASSERT_TRUE(put_back->isEnabled());
  QSignalSpy wanted(&window, &ui::BackupsWindow::restore);
  answer("backups-no");
  QTest::mouseClick(put_back, Qt::LeftButton);
  EXPECT_EQ(wanted.count(), 0);
  answer("backups-yes");
  QTest::mouseClick(put_back, Qt::LeftButton);
  ASSERT_EQ(wanted.count(), 1);
  EXPECT_EQ(wanted.front().front().toString().toStdString(), store::backup_files(kept.path()).front().path);
}

TEST(BackupsWindow, whereTheBookIsOnlyReadNothingIsPutBack) {
  const Kept kept;
  ui::BackupsWindow window(kept.path(), false);
  window.setAttribute(Qt::WA_DeleteOnClose, false);
  window.show();
  window.findChild<QTableWidget*>("backups-list")->selectRow(0);
  EXPECT_FALSE(window.findChild<QPushButton*>("backups-restore")->isEnabled());
  EXPECT_FALSE(window.findChild<QLabel*>("backups-said")->isHidden());
}

TEST(BackupsWindow, theNextStartPutsItBackOnce) {
  const Kept kept;
  EXPECT_FALSE(ui::restore_noted(kept.path(), "2026-11-28T08:00:00Z").has_value()) << "nothing is wanted";
  EXPECT_EQ(kept.jobs(), (std::vector<std::string>{"first", "second"}));
  ASSERT_TRUE(ui::note_restore(kept.path(), store::backup_files(kept.path()).front().path).has_value());
  const auto said = ui::restore_noted(kept.path(), "2026-11-28T08:00:00Z");
  ASSERT_TRUE(said.has_value());
  EXPECT_TRUE(said->contains("is back")) << said->toStdString();
  EXPECT_EQ(kept.jobs(), std::vector<std::string>{"first"});
  EXPECT_FALSE(ui::restore_noted(kept.path(), "2026-11-28T08:00:01Z").has_value()) << "once";
  // And what was there before can be put back too.
  const auto all = store::backup_files(kept.path());
  ASSERT_EQ(all.size(), 2u);
  EXPECT_EQ(all.front().why, store::Why::restore);
  ASSERT_TRUE(ui::note_restore(kept.path(), all.front().path).has_value());
  ASSERT_TRUE(ui::restore_noted(kept.path(), "2026-11-28T08:00:02Z").has_value());
  EXPECT_EQ(kept.jobs(), (std::vector<std::string>{"first", "second"}));
}

TEST(BackupsWindow, whatCantBePutBackIsSaidAndTheBookStays) {
  const Kept kept;
  const std::string damaged = kept.path() + "/backups/damaged";
  ASSERT_TRUE(files::write_file(damaged, "no book").has_value());
  for (const std::string& backup : {damaged, kept.path() + "/nowhere"}) {
    ASSERT_TRUE(ui::note_restore(kept.path(), backup).has_value());
    const auto said = ui::restore_noted(kept.path(), "2026-11-28T08:00:00Z");
    ASSERT_TRUE(said.has_value());
    EXPECT_TRUE(said->contains("not put back")) << said->toStdString();
    EXPECT_EQ(kept.jobs(), (std::vector<std::string>{"first", "second"}));
  }
  // Held by another window: the other one is named, and nothing happens.
  const auto other = store::JobBook::open(kept.path()).value();
  ASSERT_TRUE(ui::note_restore(kept.path(), store::backup_files(kept.path()).front().path).has_value());
  EXPECT_TRUE(ui::restore_noted(kept.path(), "2026-11-28T08:00:03Z")->contains("not put back"));
}

// Pictures (HOUSE_PICTURES keeps them).
TEST(BackupsWindow, isDrawnInEveryLook) {
  const QString folder = qEnvironmentVariable("HOUSE_PICTURES");
  if (folder.isEmpty()) GTEST_SKIP() << "pictures are made where HOUSE_PICTURES names a folder";
  QDir().mkpath(folder);
  const Kept kept;
  for (const bool dark : {false, true})
    for (const double factor : {1.0, 1.44}) {
      ui::set_dark(dark);
      ui::set_type_factor(factor);
      ui::BackupsWindow window(kept.path(), true);
      window.setAttribute(Qt::WA_DeleteOnClose, false);
      window.show();
      window.findChild<QTableWidget*>("backups-list")->selectRow(0);
      QTest::qWait(30);
      EXPECT_TRUE(window.grab().save(folder + QString("/backups-%1-%2.png").arg(dark ? "dark" : "light").arg(factor)));
    }
  ui::set_dark(false);
  ui::set_type_factor(1);
}

}  // namespace
