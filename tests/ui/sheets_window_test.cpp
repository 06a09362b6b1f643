// The window of the sheets as a person uses it: pages are looked at, kept with a version, and shown again as they were.
#include "ui/print/sheets_window.h"

#include <gtest/gtest.h>

#include <QListWidget>
#include <set>

#include "seat.h"
#include "sheets/all_sheets.h"
#include "ui/look/theme.h"
#include "ui/words/words.h"

namespace {

ui::SheetsWindow* opened(seat::Seat& at) {
  EXPECT_TRUE(person::wait_for_results(at.desk));
  at.window->actions_by_id()["print-sheets"].trigger();
  return at.window->findChild<ui::SheetsWindow*>();
}

void click(QWidget& window, const char* name) {
  auto* button = window.findChild<QAbstractButton*>(name);
  ASSERT_NE(button, nullptr) << name;
  QTest::mouseClick(button, Qt::LeftButton);
}

TEST(SheetsWindow, everySheetIsShownPageByPage) {
  seat::Seat at;
  ui::SheetsWindow* sheets = opened(at);
  ASSERT_NE(sheets, nullptr);
  auto* kinds = sheets->findChild<QListWidget*>("sheet-kinds");
  ASSERT_EQ(kinds->count(), static_cast<int>(sheets::sheet_kinds().size()));
  kinds->setFocus();
  std::set<std::string> seen;
  for (int row = 0; row < kinds->count(); ++row) {
    seen.insert(sheets->sheet());
    ASSERT_GT(sheets->pages(), 0u) << sheets->sheet();
    EXPECT_NE(sheets->findChild<QLabel*>(QString("page-%1").arg(sheets->pages())), nullptr);
    EXPECT_EQ(sheets->findChild<QLabel*>(QString("page-%1").arg(sheets->pages() + 1)), nullptr);
    const auto* first = sheets->findChild<QLabel*>("page-1");  // shown whole, whatever the window's height
    EXPECT_GE(first->height(), first->pixmap().deviceIndependentSize().height());
    QTest::keyClick(kinds, Qt::Key_Down);
  }
  EXPECT_EQ(seen.size(), sheets::sheet_kinds().size());
}

TEST(SheetsWindow, theSheetSpeaksItsOwnLanguage) {
  seat::Seat at;
  ui::SheetsWindow* sheets = opened(at);
  sheets->show_sheet("crew-list");
  const QByteArray english = sheets->pdf();
  auto* language = sheets->findChild<QComboBox*>("sheet-language");
  language->setFocus();
  QTest::keyClick(language, Qt::Key_Down);
  EXPECT_EQ(language->currentData().toString(), "es");
  EXPECT_NE(sheets->pdf(), english);
  EXPECT_EQ(ui::language(), "en");  // the window's own stays
  QTest::keyClick(language, Qt::Key_Up);
  EXPECT_EQ(sheets->pdf(), english);
}

TEST(SheetsWindow, theQuoteOpensItsPriceAsFarAsTheOfficeWants) {
  seat::Seat at;
  ui::SheetsWindow* sheets = opened(at);
  auto* detail = sheets->findChild<QComboBox*>("sheet-detail");
  sheets->show_sheet("plan");
  EXPECT_TRUE(detail->isHidden());
  sheets->show_sheet("quote");
  EXPECT_FALSE(detail->isHidden());
  const QByteArray by_stage = sheets->pdf();
  detail->setFocus();
  QTest::keyClick(detail, Qt::Key_Down);
  const QByteArray in_one_sum = sheets->pdf();
  EXPECT_NE(in_one_sum, by_stage);
  EXPECT_LT(in_one_sum.size(), by_stage.size());
}

// Kept with the version as bytes; what came after is refused with what to do; the version shows what was given out.
TEST(SheetsWindow, whatIsGivenOutIsKeptWithItsVersion) {
  seat::Seat at;
  ui::SheetsWindow* sheets = opened(at);
  sheets->show_sheet("quote");
  click(*sheets, "sheet-keep");
  EXPECT_TRUE(sheets->findChild<QLabel*>("sheet-told")->text().contains("save a version"));

  at.save_version("As quoted");
  sheets->show_sheet("working");
  sheets->show_sheet("quote");
  const QByteArray given = sheets->pdf();
  click(*sheets, "sheet-keep");
  const auto version = at.book.versions(at.keeper.id()).value().front();
  const auto documents = at.book.documents(version.id).value();
  ASSERT_EQ(documents.size(), 1u);
  EXPECT_EQ(documents.front().name, "quote");
  const QByteArray kept = QByteArray::fromStdString(at.book.document(documents.front().id).value().bytes);
  EXPECT_TRUE(kept == given) << "two PDFs of one sheet differ: " << kept.size() << " and " << given.size() << " bytes";

  const std::string item = seat::bought_item(*at.desk.results());
  at.give_price(item.c_str(), "99.99");
  EXPECT_NE(sheets->pdf(), given);
  click(*sheets, "sheet-keep");
  EXPECT_EQ(at.book.documents(version.id).value().size(), 1u);
  EXPECT_TRUE(at.book.document(documents.front().id).value().bytes == kept.toStdString());
}

TEST(SheetsWindow, picturesToBeLookedAt) {
  const QString folder = qEnvironmentVariable("HOUSE_PICTURES");
  if (folder.isEmpty()) GTEST_SKIP() << "pictures are made where HOUSE_PICTURES names a folder";
  seat::Seat at(person::job_of("pool-terrace-a"));
  for (const bool dark : {false, true}) {
    ui::set_dark(dark);
    ui::SheetsWindow* sheets = opened(at);
    sheets->show_sheet("plan");
    QTest::qWait(50);
    sheets->grab().save(folder + (dark ? "/sheets-dark.png" : "/sheets-light.png"));
  }
  ui::set_dark(false);
}

}  // namespace
