// What was really used, entered as a person does: deliveries, use, hours, corrections, what closed jobs offer the
// catalogue.
#include "ui/actual/actual_window.h"

#include <gtest/gtest.h>

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QMessageBox>
#include <QPushButton>
#include <QTabWidget>
#include <QTableWidget>
#include <QTemporaryDir>
#include <QTest>
#include <QTimer>
#include <QTreeWidget>
#include <set>

#include "printed_text.h"
#include "store/catalogue_book.h"
#include "ui/actual/offers_page.h"
#include "ui/look/style.h"
#include "ui/look/theme.h"
#include "ui/words/words.h"

namespace {

using estimate::Act;
using plan::CostKind;
using units::Money;

estimate::KeptLine line(const char* stage, const char* item, CostKind kind, const char* words, double net,
                        const char* unit, double order, const char* order_unit, std::int64_t coins) {
  estimate::KeptLine made;
  made.stage = stage;
  made.item = item;
  made.kind = kind;
  made.description = words;
  made.quantity = net;
  made.unit = unit;
  made.order_quantity = order;
  made.order_unit = order_unit;
  made.amount = Money::of_coins(coins);
  return made;
}

// 24 tons of stone for 720.00, 20 h for 800.00; 2,250 units for 2,475.00 (2,150 needed), 110 h of laying for 4,950.00,
// 12 bags of sand for 96.00: 9,041.00 in all.
estimate::Kept kept() {
  estimate::Kept made;
  made.currency = "USD";
  made.program = "0.6";
  made.lines = {
      line("base", "agg-no57", CostKind::material, "Open stone No. 57", 19'958, "kg", 24, "ton", 72'000),
      line("base", "base-barrow", CostKind::labour, "Base stone, by wheelbarrow", 20, "h", 20, "h", 80'000),
      line("paving", "unit-4x8-60", CostKind::material, "Paving unit 4 x 8 in", 2150, "piece", 2250, "piece", 247'500),
      line("paving", "lay-running", CostKind::labour, "Lay units, running bond", 110, "h", 110, "h", 495'000),
      line("joints", "sand", CostKind::material, "<b>Joint sand</b>", 12, "piece", 12, "bag", 9'600)};
  for (const auto& one : made.lines) made.direct += *one.amount;
  made.price = made.total = made.direct;
  return made;
}

struct Here {
  Here() {
    if (qEnvironmentVariableIsSet("HOUSE_PICTURES")) ui::dress(*qApp);
    job = add("Court at Elm Row");
    version = save(job, kept());
  }
  std::string path() const { return folder.path().toStdString() + "/book"; }
  std::int64_t add(const char* name) {
    plan::Job made;
    made.heading.name = name;
    made.catalogue =
        std::make_shared<const catalogue::Catalogue>(store::CatalogueBook::open(path()).value().read().value());
    made.offer.factors = {{"narrow gate", 1.15, "", ""}};
    return book.add(made).value();
  }
  std::int64_t save(std::int64_t of, const estimate::Kept& what) {
    return book.save_version(of, book.read(of).value(), what, "As agreed", "").value().id;
  }
  void open() {
    const auto read = book.version(version).value();
    window = std::make_unique<ui::ActualWindow>(book, read, path());
    window->show();
    QApplication::setActiveWindow(window.get());
    QApplication::processEvents();
  }
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
  void page(int index) {
    child<QTabWidget>("actual-pages")->setCurrentIndex(index);
    QApplication::processEvents();
  }
  // Clicks the row of that name.
  void choose(const char* table, const char* name) {
    auto* tree = child<QTreeWidget>(table);
    const auto found = tree->findItems(QString::fromUtf8(name), Qt::MatchExactly | Qt::MatchRecursive, 0);
    ASSERT_FALSE(found.isEmpty()) << name;
    tree->scrollToItem(found.front());
    QTest::mouseClick(tree->viewport(), Qt::LeftButton, {}, tree->visualItemRect(found.front()).center());
  }
  void type(const char* field, const char* text) {
    auto* line = child<QLineEdit>(field);
    ASSERT_TRUE(line->isVisible() && line->isEnabled()) << field;
    line->setFocus();
    line->selectAll();
    QTest::keyClicks(line, QString::fromUtf8(text));
  }
  void act(const char* combo, Act which) {
    auto* box = child<QComboBox>(combo);
    box->setFocus();
    box->setCurrentIndex(box->findData(static_cast<int>(which)));
  }
  QString cell(const char* table, const char* name, int column) {
    const auto found =
        child<QTreeWidget>(table)->findItems(QString::fromUtf8(name), Qt::MatchExactly | Qt::MatchRecursive, 0);
    return found.isEmpty() ? QStringLiteral("no such row") : found.front()->text(column);
  }
  std::vector<estimate::Entry> entries() { return book.entries(version).value(); }

  QTemporaryDir folder;
  store::JobBook book = store::JobBook::open(path()).value();
  std::int64_t job = 0, version = 0;
  std::unique_ptr<ui::ActualWindow> window;
};

// Presses the button of that name in the next question.
void answer(const char* button) {
  QTimer::singleShot(0, [button] {
    auto* asked = qobject_cast<QMessageBox*>(QApplication::activeModalWidget());
    ASSERT_NE(asked, nullptr);
    auto* found = asked->findChild<QAbstractButton*>(QString::fromLatin1(button));
    ASSERT_NE(found, nullptr) << button;
    QTest::mouseClick(found, Qt::LeftButton);
  });
}

TEST(ActualWindow, ADeliveryAndItsUseAreEnteredAndShown) {
  Here here;
  here.open();
  EXPECT_FALSE(here.child<QPushButton>("line-enter")->isEnabled()) << "no line is chosen";
  here.choose("actual-lines", "Open stone No. 57");
  EXPECT_EQ(here.child<QLabel>("line-title")->text(), "Open stone No. 57");
  here.type("line-date", "2026-11-20");
  here.type("line-quantity", "26 tons");
  here.type("line-price", "31.50");
  here.type("line-ticket", "T-118");
  QTest::keyClick(here.child<QLineEdit>("line-ticket"), Qt::Key_Return);
  ASSERT_EQ(here.entries().size(), 1U);
  const auto delivered = here.entries().front();
  EXPECT_EQ(delivered.act, Act::delivered);
  EXPECT_EQ(delivered.quantity, 26);
  EXPECT_EQ(delivered.price, Money::of_coins(3150));
  EXPECT_EQ(delivered.ticket, "T-118");
  EXPECT_EQ(here.cell("actual-lines", "Open stone No. 57", 1), "Delivered");
  EXPECT_EQ(here.cell("actual-lines", "Open stone No. 57", 3), "26 tons");
  EXPECT_EQ(here.cell("actual-lines", "Open stone No. 57", 6), "+$99.00");  // 26 x 31.50 = 819.00 for 720.00
  here.act("line-act", Act::used);
  EXPECT_FALSE(here.child<QLineEdit>("line-price")->isVisible());
  here.type("line-quantity", "20 t");  // 20,000 / 907.18474 = 22.046 short tons
  here.press("line-enter");
  EXPECT_EQ(here.cell("actual-lines", "Open stone No. 57", 4), "22.05 tons");
  EXPECT_EQ(here.cell("actual-lines", "Open stone No. 57", 5), "3.95 tons");
  EXPECT_EQ(here.child<QTableWidget>("line-entries")->rowCount(), 2);
  EXPECT_NE(here.child<QLabel>("actual-total")->text().indexOf("spent $819.00"), -1)
      << here.child<QLabel>("actual-total")->text().toStdString();
  EXPECT_NE(here.window->text().find("Open stone No. 57"), std::string::npos);
  const QString paper = printed_text(here.window->pdf());
  EXPECT_TRUE(paper.contains("Stone No. 57")) << paper.toStdString();
  EXPECT_TRUE(paper.contains("819.00 USD")) << paper.toStdString();
}

TEST(ActualWindow, WhatCannotBeIsSaidAndStaysTyped) {
  Here here;
  here.open();
  here.choose("actual-lines", "Paving unit 4 x 8 in");
  const auto refused = [&](const char* part) {
    auto* said = here.child<QLabel>("line-said");
    EXPECT_TRUE(said->isVisible());
    EXPECT_NE(said->text().indexOf(QLatin1String(part)), -1) << said->text().toStdString();
    EXPECT_TRUE(here.entries().empty());
  };
  here.press("line-enter");
  refused("is no quantity");
  here.type("line-quantity", "3 tons");
  here.press("line-enter");
  refused("can't be turned into 'piece'");
  EXPECT_EQ(here.child<QLineEdit>("line-quantity")->text(), "3 tons");
  here.type("line-quantity", "40");
  here.type("line-date", "2026-02-30");
  here.press("line-enter");
  refused("is not a day");
  here.type("line-date", "2026-02-28");
  here.type("line-price", "1,10");
  here.press("line-enter");
  EXPECT_TRUE(here.entries().empty());
  here.type("line-price", "1.10");
  here.press("line-enter");
  EXPECT_FALSE(here.child<QLabel>("line-said")->isVisible());
  EXPECT_EQ(here.entries().size(), 1U);
}

TEST(ActualWindow, ACorrectionIsAnEntryOfItsOwn) {
  Here here;
  here.open();
  here.choose("actual-lines", "<b>Joint sand</b>");
  here.type("line-quantity", "21");
  here.press("line-enter");
  auto* list = here.child<QTableWidget>("line-entries");
  QTest::mouseClick(list->viewport(), Qt::LeftButton, {}, list->visualItemRect(list->item(0, 0)).center());
  here.press("line-correct");
  EXPECT_EQ(here.child<QLineEdit>("line-quantity")->text(), "21");
  EXPECT_FALSE(here.child<QComboBox>("line-act")->isEnabled());
  here.type("line-quantity", "12");
  here.press("line-enter");
  ASSERT_EQ(here.entries().size(), 2U);
  EXPECT_EQ(here.entries()[0].quantity, 21) << "what stood is untouched";
  EXPECT_EQ(here.entries()[1].corrects, 1);
  EXPECT_EQ(list->rowCount(), 1);
  EXPECT_EQ(here.cell("actual-lines", "<b>Joint sand</b>", 3), "12 bags");
  EXPECT_TRUE(here.child<QComboBox>("line-act")->isEnabled());
  QTest::mouseClick(list->viewport(), Qt::LeftButton, {}, list->visualItemRect(list->item(0, 0)).center());
  here.press("line-take-back");
  EXPECT_EQ(here.cell("actual-lines", "<b>Joint sand</b>", 3), QString::fromUtf8("–"));
  EXPECT_EQ(here.entries().size(), 3U);
}

TEST(ActualWindow, HoursAndWhatIsDoneGiveTheCostToFinish) {
  Here here;
  here.open();
  here.page(1);
  here.choose("actual-work", "Base layers");
  here.type("work-quantity", "14.5");
  here.type("work-who", "R. Alder's crew");
  here.press("work-enter");
  EXPECT_EQ(here.cell("actual-work", "Base layers", 2), "14.5 h");
  here.act("work-act", Act::measured);
  here.type("work-quantity", "300");
  here.type("work-whole", "600 sq ft");
  here.press("work-enter");
  ASSERT_EQ(here.entries().size(), 2U);
  EXPECT_EQ(here.entries()[1].unit, "sq ft");
  EXPECT_EQ(here.cell("actual-work", "Base layers", 3), "300 of 600 sq ft");
  EXPECT_EQ(here.cell("actual-work", "Base layers", 4), "0.033 h/sq ft");  // 20 h for 600
  EXPECT_EQ(here.cell("actual-work", "Base layers", 5), "0.048 h/sq ft");  // 14.5 h for 300
  here.page(2);
  EXPECT_EQ(here.cell("actual-cost", "Base layers", 1), "50 %");
  // Half of 720.00 and of 800.00; at the own rate 14.5 h x 40.00 = 580.00 once more.
  EXPECT_EQ(here.cell("actual-cost", "Base layers", 5), "$760.00");
  EXPECT_EQ(here.cell("actual-cost", "Base layers", 6), "$940.00");
}

TEST(ActualWindow, AnEditAfterTheOrderIsOfferedAsAnAddOrAReturn) {
  Here here;
  here.open();
  here.choose("actual-lines", "Open stone No. 57");
  here.act("line-act", Act::ordered);
  here.type("line-quantity", "24");
  here.press("line-enter");
  EXPECT_FALSE(here.child<QPushButton>("actual-edit-enter")->isVisible());
  here.window.reset();
  auto later = kept();
  later.lines[0].order_quantity = 27;
  here.save(here.job, later);
  here.open();
  EXPECT_NE(here.child<QLabel>("actual-edit")->text().indexOf("Version 2"), -1);
  answer("actual-edit-yes");
  here.press("actual-edit-enter");
  ASSERT_EQ(here.entries().size(), 2U);
  EXPECT_EQ(here.entries()[0].quantity, 24) << "the order stands";
  EXPECT_EQ(here.entries()[1].act, Act::ordered);
  EXPECT_EQ(here.entries()[1].quantity, 3);
  EXPECT_FALSE(here.child<QPushButton>("actual-edit-enter")->isVisible());
}

// Three closed jobs: 2,193, 2,236 and 2,279 units used of 2,150 needed (2, 4, 6 %); 121, 132 and 99 h of laying for
// 110.
void close_three(Here& here) {
  const double used[] = {2193, 2236, 2279}, laid[] = {121, 132, 99};
  for (int i = 0; i < 3; ++i) {
    const auto id = here.add(i == 0 ? "Hill House" : i == 1 ? "Brook Lane" : "Mill Yard");
    const auto version = here.save(id, kept());
    estimate::Entry entry;
    entry.act = Act::used;
    entry.line = {"paving", "unit-4x8-60", CostKind::material};
    entry.date = "2026-10-01";
    entry.quantity = used[i];
    entry.unit = "piece";
    here.book.enter(version, entry).value();
    entry.act = Act::hours;
    entry.line = {"paving", "lay-running", CostKind::labour};
    entry.quantity = laid[i];
    entry.unit = "h";
    here.book.enter(version, entry).value();
    here.book.set_state(id, store::State::closed).value();
  }
}

TEST(ActualWindow, WhatClosedJobsOfferIsTakenOnlyWhenAPersonSaysSo) {
  Here here;
  close_three(here);
  here.open();
  here.page(3);
  auto* list = here.child<QTableWidget>("offers-list");
  ASSERT_EQ(list->rowCount(), 2);
  EXPECT_EQ(list->item(0, 3)->text(), "4 %");
  EXPECT_EQ(list->item(0, 9)->text(), "3");
  EXPECT_EQ(here.child<QTableWidget>("offers-jobs")->rowCount(), 3);
  const auto catalogue = [&] { return store::CatalogueBook::open(here.path()).value().read().value(); };
  const double before = catalogue().item("unit-4x8-60")->breakage;
  EXPECT_NE(before, 0.04);
  answer("offers-yes");
  const auto rate_before = catalogue().rate("lay-running")->hours_per_si_unit;
  here.press("offers-take");
  EXPECT_EQ(catalogue().item("unit-4x8-60")->breakage, 0.04);
  EXPECT_EQ(list->item(0, 2)->text(), "4 %");
  EXPECT_EQ(catalogue().rate("lay-running")->hours_per_si_unit, rate_before) << "nothing else was touched";
  // The next offer is refused: Enter on the question leaves it.
  QTest::mouseClick(list->viewport(), Qt::LeftButton, {}, list->visualItemRect(list->item(1, 1)).center());
  QTimer::singleShot(0, [] { QTest::keyClick(QApplication::activeModalWidget(), Qt::Key_Return); });
  here.press("offers-take");
  EXPECT_EQ(catalogue().rate("lay-running")->hours_per_si_unit, rate_before);
  // The change can be undone as any other of the catalogue.
  EXPECT_TRUE(store::CatalogueBook::open(here.path()).value().undo().value());
  EXPECT_EQ(catalogue().item("unit-4x8-60")->breakage, before);
}

TEST(ActualWindow, AJobUnlikeTheNextOneIsLeftOut) {
  Here here;
  close_three(here);
  here.open();
  here.page(3);
  auto* list = here.child<QTableWidget>("offers-list");
  auto* jobs = here.child<QTableWidget>("offers-jobs");
  EXPECT_TRUE(here.child<QPushButton>("offers-take")->isEnabled());
  jobs->setFocus();
  jobs->setCurrentCell(2, 0);  // 6 %
  QTest::keyClick(jobs, Qt::Key_Space);
  EXPECT_EQ(jobs->item(2, 0)->checkState(), Qt::Unchecked);
  EXPECT_EQ(jobs->item(2, 0)->text(), "Mill Yard (left out)");
  EXPECT_EQ(list->item(0, 9)->text(), "2, too few");
  EXPECT_EQ(list->item(0, 6)->text(), "3 %");  // the middle of 2 and 4 %
  EXPECT_FALSE(here.child<QPushButton>("offers-take")->isEnabled());
  QTest::keyClick(jobs, Qt::Key_Space);
  EXPECT_EQ(list->item(0, 3)->text(), "4 %");
  EXPECT_TRUE(here.child<QPushButton>("offers-take")->isEnabled());
}

TEST(ActualWindow, ABookThatIsOnlyReadShowsAndRefuses) {
  Here here;
  auto second = store::JobBook::open_or_read(here.path()).value();
  ASSERT_TRUE(second.only_read());
  ui::ActualWindow window(second, second.version(here.version).value(), here.path());
  window.show();
  auto* tree = window.findChild<QTreeWidget*>("actual-lines");
  tree->setCurrentItem(tree->topLevelItem(0)->child(0));
  EXPECT_FALSE(window.findChild<QPushButton*>("line-enter")->isEnabled());
  EXPECT_FALSE(window.findChild<QLineEdit*>("line-quantity")->isEnabled());
  EXPECT_TRUE(window.findChild<QLabel*>("line-said")->isVisible());
}

TEST(ActualWindow, IsReachedWithTheKeyboard) {
  Here here;
  here.open();
  here.choose("actual-lines", "Open stone No. 57");
  auto* tree = here.child<QTreeWidget>("actual-lines");
  tree->setFocus();
  std::set<QString> seen;
  for (int i = 0; i < 30; ++i) {
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
    if (auto* now = QApplication::focusWidget()) seen.insert(now->objectName());
  }
  for (const char* name : {"line-act", "line-date", "line-quantity", "line-price", "line-note", "line-enter",
                           "line-entries", "actual-text", "actual-close"})
    EXPECT_TRUE(seen.contains(QString::fromLatin1(name))) << name;
  for (auto* one : here.window->findChildren<QLineEdit*>()) {
    if (one->objectName().startsWith(QLatin1String("qt_"))) continue;
    EXPECT_FALSE(one->accessibleName().isEmpty()) << one->objectName().toStdString();
  }
}

TEST(ActualWindow, LooksRight) {
  const QByteArray pictures = qgetenv("HOUSE_PICTURES");
  if (pictures.isEmpty()) GTEST_SKIP() << "pictures are made where HOUSE_PICTURES names a folder";
  struct Look {
    bool dark;
    double factor;
    const char* language;
  };
  for (const Look& look :
       {Look{false, 1, "en"}, Look{true, 1, "es"}, Look{false, 1.44, "en"}, Look{false, 1.44, "es"}}) {
    ui::set_dark(look.dark);
    ui::set_type_factor(look.factor);
    ui::speak(look.language);
    Here here;
    close_three(here);
    here.open();
    here.choose("actual-lines", "Open stone No. 57");
    for (const auto& [act, quantity] : {std::pair{Act::ordered, "26"}, {Act::delivered, "20"}, {Act::used, "17.5"}}) {
      here.act("line-act", act);
      here.type("line-quantity", quantity);
      here.press("line-enter");
    }
    here.act("line-act", Act::delivered);
    here.type("line-quantity", "6 barrows");
    here.press("line-enter");
    here.page(1);
    here.choose("actual-work",
                ui::language() == "es"
                    ? here.child<QTreeWidget>("actual-work")->topLevelItem(0)->text(0).toUtf8().constData()
                    : "Base layers");
    here.type("work-quantity", "14.5");
    here.press("work-enter");
    here.act("work-act", Act::measured);
    here.type("work-quantity", "300");
    here.type("work-whole", "600");
    here.press("work-enter");
    for (int page = 0; page < 4; ++page) {
      here.page(page);
      QApplication::processEvents();
      EXPECT_TRUE(here.window->grab().save(QString::fromLocal8Bit(pictures) + QString("/actual-%1-%2-%3-%4.png")
                                                                                  .arg(page)
                                                                                  .arg(look.dark ? "dark" : "light")
                                                                                  .arg(look.factor)
                                                                                  .arg(look.language)));
    }
  }
  ui::set_dark(false);
  ui::set_type_factor(1);
  ui::speak("en");
}

}  // namespace
