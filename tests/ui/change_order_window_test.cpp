// A change order through its window: made of two saved versions, entered field by field, found again as it was, and
// counted by the next one.
#include "ui/office/change_order_window.h"

#include <gtest/gtest.h>

#include <QDir>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QTreeWidget>

#include "estimate/money_words.h"
#include "printed_text.h"
#include "seat.h"
#include "ui/book/book_window.h"
#include "ui/compare/compare_window.h"
#include "ui/look/theme.h"
#include "ui/office/order_book.h"
#include "ui/office/order_form.h"
#include "ui/words/words.h"

namespace {

// A job with three versions: as agreed, dearer, dearer still; its quote has a unit price for rock.
class Ordering {
 public:
  Ordering() : at(agreed()) {
    EXPECT_TRUE(person::wait_for_results(at.desk));
    const std::string item = seat::bought_item(*at.desk.results());
    at.save_version("As agreed");
    plan::Job less = plan::without(at.desk.job(), at.desk.job().elements.back()->id);
    at.desk.edit(less, "Less");
    EXPECT_TRUE(person::wait_for_results(at.desk));
    at.save_version("Without the last");
    plan::AddedLine more;
    more.id = "bench";
    more.stage = takeoff::word(takeoff::Stage::paving);
    more.text = "A bench";
    more.unit_price = units::Money::of_coins(50000);
    less.offer.lines.push_back(more);
    at.desk.edit(less, "A bench");
    EXPECT_TRUE(person::wait_for_results(at.desk));
    at.save_version("With a bench");
    versions = at.book.versions(at.keeper.id()).value();
    EXPECT_EQ(versions.size(), 3u);
  }
  static plan::Job agreed() {
    plan::Job job = person::job_of("bakery-court");
    job.offer.unit_prices = {{"rock", "Rock dug out", "cu yd", 2, units::Money::of_coins(9500)}};
    job.offer.lines.clear();
    return job;
  }
  // The order of the n-th and the next version, counted from 1, as the window of the two versions opens it.
  ui::ChangeOrderWindow* open(int n) {
    const std::size_t newest = versions.size();
    const auto shown = ui::show_change_order(at.book, versions[newest - static_cast<std::size_t>(n)].id,
                                             versions[newest - static_cast<std::size_t>(n) - 1].id, at.window.get());
    EXPECT_TRUE(shown.has_value());
    window = shown.value_or(nullptr);
    for (int i = 0; i < 3; ++i) QCoreApplication::processEvents();
    return window;
  }
  void type(const char* field, const char* text) {
    QWidget* input = window->form().input(field);
    ASSERT_NE(input, nullptr) << field;
    input->setFocus();
    if (auto* line = qobject_cast<QLineEdit*>(input)) {
      line->selectAll();
      QTest::keyClicks(line, QString::fromUtf8(text));
      QTest::keyClick(line, Qt::Key_Return);
    } else if (auto* words = qobject_cast<QPlainTextEdit*>(input)) {
      words->selectAll();
      QTest::keyClicks(words, QString::fromUtf8(text));
      QTest::keyClick(words, Qt::Key_Tab);
    }
  }
  void press(const char* field) {
    auto* button = qobject_cast<QAbstractButton*>(window->form().input(field));
    ASSERT_NE(button, nullptr) << field;
    button->setFocus();
    QTest::keyClick(button, Qt::Key_Space);
  }
  QString told(const char* name) const { return window->findChild<QLabel*>(QString::fromLatin1(name))->text(); }
  QString fault(const char* field) const {
    auto* label = window->findChild<QLabel*>(QStringLiteral("order-fault/") + field);
    return label->isHidden() ? QString() : label->text();
  }
  void fill() {
    type("cause", "rock under the walk");
    type("asked_by", "the foreman");
    type("date", "2026-11-28");
  }

  seat::Seat at;
  std::vector<store::VersionRow> versions;
  ui::ChangeOrderWindow* window = nullptr;
};

TEST(ChangeOrderWindow, opensFromTheComparisonOfTwoVersions) {
  Ordering on;
  on.at.window->actions_by_id()["open-job"].trigger();
  auto* book = on.at.window->findChild<ui::BookWindow*>();
  book->choose(on.at.keeper.id());
  seat::choose_rows(book->findChild<QTableView*>("book-versions"), {1, 2});
  QTest::mouseClick(book->findChild<QPushButton*>("book-compare"), Qt::LeftButton);
  auto* compared = on.at.window->findChild<ui::CompareWindow*>();
  ASSERT_NE(compared, nullptr);
  auto* button = compared->findChild<QPushButton*>("compare-order");
  ASSERT_TRUE(button->isEnabled());
  QTest::mouseClick(button, Qt::LeftButton);
  on.window = on.at.window->findChild<ui::ChangeOrderWindow*>();
  ASSERT_NE(on.window, nullptr);
  EXPECT_EQ(on.window->order().input.number, "1");
  EXPECT_EQ(on.window->order().input.contract, on.versions.back().total) << "as it was agreed";
  // Opened is not begun: nothing is kept that nobody entered.
  EXPECT_TRUE(ui::read_orders(on.at.book, on.at.keeper.id())->empty());
}

TEST(ChangeOrderWindow, whatIsMissingIsSaidByItsField) {
  Ordering on;
  ASSERT_NE(on.open(1), nullptr);
  EXPECT_FALSE(on.window->order().final);
  for (const char* field : {"cause", "asked_by", "date"}) EXPECT_FALSE(on.fault(field).isEmpty()) << field;
  on.type("days", "2");
  EXPECT_FALSE(on.fault("days_cause").isEmpty());
  on.fill();
  for (const char* field : {"cause", "asked_by", "date"}) EXPECT_TRUE(on.fault(field).isEmpty()) << field;
  on.type("days_cause", "rock is broken by hand");
  EXPECT_TRUE(on.fault("days_cause").isEmpty());
  EXPECT_EQ(on.window->order().days, 2);
  on.type("date", "2026-02-30");
  EXPECT_FALSE(on.fault("date").isEmpty());
  EXPECT_TRUE(on.told("order-amount").startsWith("Not final"));
}

// To be signed: why, by whom, and the contract's sum, as a reader of PDF finds them.
TEST(ChangeOrderWindow, isPrinted) {
  Ordering on;
  ASSERT_NE(on.open(1), nullptr);
  on.fill();
  const QString text = printed_text(on.window->pdf());
  EXPECT_TRUE(text.contains("rock under the walk")) << text.toStdString();
  EXPECT_TRUE(text.contains("the foreman"));
  const auto& order = on.window->order();
  const auto& heading = on.at.desk.job().heading;
  EXPECT_TRUE(text.contains(QString::fromStdString(estimate::shown_money(order.after, heading)))) << text.toStdString();
}

TEST(ChangeOrderWindow, isFoundAgainAndCountedByTheNext) {
  Ordering on;
  ASSERT_NE(on.open(1), nullptr);
  on.fill();
  on.press("met/add");
  on.type("met/0/quantity", "5");
  on.press("ticket/add");
  on.type("ticket/0/number", "7");
  on.type("ticket/0/signed_by", "the owner");
  on.type("ticket/0/row/0/text", "Two men, breaking rock");
  on.type("ticket/0/row/0/quantity", "6");
  on.type("ticket/0/row/0/price", "45");
  on.press("done/protect");
  const estimate::ChangeOrder first = on.window->order();
  // Rock: 5 met less 2 in the quote, at 95.00; the ticket 6 x 45.00 before what comes on top.
  const auto coins_of = [&](const char* item) {
    for (const auto& line : first.lines)
      if (line.item == item) return line.amount.coins();
    return std::int64_t{0};
  };
  EXPECT_EQ(coins_of("rock"), 28500);
  EXPECT_EQ(coins_of("ticket:7"), 27000);
  on.window->close();

  ASSERT_NE(on.open(1), nullptr);
  EXPECT_EQ(on.window->order().input, first.input);
  EXPECT_EQ(on.window->order().amount, first.amount);
  EXPECT_EQ(on.window->order().input.done, std::vector<std::string>{"protect"});

  // The second order: the sum begins where the first ended, and the first measure is not charged again.
  ASSERT_NE(on.open(2), nullptr);
  EXPECT_EQ(on.window->order().input.number, "2");
  EXPECT_EQ(on.window->order().before, on.versions.back().total + first.amount);
  on.fill();
  on.press("met/add");
  on.type("met/0/quantity", "6");
  const auto& lines = on.window->order().lines;
  const auto rock = std::ranges::find(lines, "rock", &estimate::OrderedChange::item);
  ASSERT_NE(rock, lines.end());
  EXPECT_EQ(rock->amount.coins(), 9500) << "6 to date, 2 in the quote, 3 charged: one at 95.00";
  EXPECT_TRUE(on.told("order-running").contains("earlier orders (1)")) << on.told("order-running").toStdString();
  EXPECT_EQ(on.window->order().after, on.versions.back().total + first.amount + on.window->order().amount);
  const auto kept = ui::read_orders(on.at.book, on.at.keeper.id()).value();
  ASSERT_EQ(kept.size(), 2u);
  EXPECT_EQ(kept[0].amount, first.amount);
  EXPECT_NE(on.window->text().find("Change order 2"), std::string::npos);

  // Dropped, it counts no more; before that the person is asked.
  seat::in_dialog(
      [](QWidget& box) { QTest::mouseClick(box.findChild<QAbstractButton*>("order-drop"), Qt::LeftButton); });
  QTest::mouseClick(on.window->findChild<QPushButton*>("order-out"), Qt::LeftButton);
  EXPECT_EQ(ui::read_orders(on.at.book, on.at.keeper.id())->size(), 1u);
}

TEST(ChangeOrderWindow, whatIsNoNumberChangesNothingAndIsSaid) {
  Ordering on;
  ASSERT_NE(on.open(1), nullptr);
  on.fill();
  const auto before = on.window->order().input;
  on.type("contract", "12,50,x");
  QWidget* contract = on.window->form().input("contract");
  on.window->form().input("number")->setFocus();
  EXPECT_EQ(on.window->order().input.contract, before.contract);
  EXPECT_FALSE(on.fault("contract").isEmpty());
  EXPECT_TRUE(contract->accessibleName().contains("12.50")) << "said to who hears it too";
}

TEST(ChangeOrderWindow, aKeptTextThatIsNoneIsNotWrittenOver) {
  Ordering on;
  const std::string key = "change-orders/" + std::to_string(on.at.keeper.id());
  ASSERT_TRUE(on.at.book.set(key, "{}").has_value());
  const auto shown = ui::show_change_order(on.at.book, on.versions[1].id, on.versions[0].id, on.at.window.get());
  ASSERT_FALSE(shown.has_value());
  EXPECT_EQ(shown.error().code, "field-missing");
  EXPECT_EQ(on.at.book.setting(key).value(), "{}");
}

// Pictures (HOUSE_PICTURES keeps them).
TEST(ChangeOrderWindow, isDrawnInEveryLook) {
  const QString folder = qEnvironmentVariable("HOUSE_PICTURES");
  if (folder.isEmpty()) GTEST_SKIP() << "pictures are made where HOUSE_PICTURES names a folder";
  QDir().mkpath(folder);
  struct Look {
    const char* name;
    bool dark;
    double type;
    const char* language;
  };
  for (const Look& look : {Look{"light", false, 1, "en"}, Look{"dark", true, 1, "en"}, Look{"large", false, 1.44, "en"},
                           Look{"spanish", false, 1, "es"}}) {
    ui::speak(look.language);
    ui::set_dark(look.dark);
    ui::set_type_factor(look.type);
    Ordering on;
    on.open(1);
    on.press("met/add");
    on.type("met/0/quantity", "5");
    on.press("ticket/add");
    on.type("days", "2");
    on.window->form().input("number")->setFocus();
    QTest::qWait(30);
    EXPECT_TRUE(on.window->grab().save(folder + "/order-" + look.name + ".png"));
    on.window->form().input("ticket/0/out")->setFocus();
    QTest::qWait(30);
    EXPECT_TRUE(on.window->grab().save(folder + "/order-below-" + look.name + ".png"));
  }
  ui::speak("en");
  ui::set_dark(false);
  ui::set_type_factor(1);
}

}  // namespace
