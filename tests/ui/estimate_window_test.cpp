// The estimate's window: what is typed is priced, told and undone; nothing that is no number gets in.
#include <gtest/gtest.h>

#include <QDir>
#include <QLabel>
#include <QLineEdit>

#include "person.h"
#include "ui/look/theme.h"
#include "ui/money/estimate_window.h"
#include "ui/money/money_bars.h"
#include "ui/money/options_view.h"
#include "ui/panels/field_form.h"
#include "ui/words/words.h"

namespace {

using person::Person;

class Estimating {
 public:
  Estimating() : who(person::job_of("pool-terrace-a")) {
    who.choose("estimate");
    window = who.window->findChild<ui::EstimateWindow*>();
  }
  ui::FieldEditor* editor(int page, const char* id) const { return window->form(page).editor(id); }
  void turn_to(int page) const {
    window->show_page(page);
    for (int i = 0; i < 3; ++i) QCoreApplication::processEvents();
  }
  void type(int page, const char* id, const char* text) {
    turn_to(page);
    ASSERT_NE(editor(page, id), nullptr) << id;
    auto* line = qobject_cast<QLineEdit*>(editor(page, id)->input());
    ASSERT_NE(line, nullptr) << id;
    line->setFocus();
    line->selectAll();
    QTest::keyClicks(line, QString::fromUtf8(text));
    QTest::keyClick(line, Qt::Key_Return);
  }
  void press(int page, const char* id) {
    turn_to(page);
    ASSERT_NE(editor(page, id), nullptr) << id;
    QTest::mouseClick(editor(page, id)->input(), Qt::LeftButton);
  }
  std::int64_t step(const std::string& code) const {
    for (const auto& step : who.desk.results()->priced.steps)
      if (step.code == code) return step.amount.coins();
    return 0;
  }

  Person who;
  ui::EstimateWindow* window = nullptr;
};

TEST(EstimateWindow, sharesArePricedAsTheyAreTypedAndUndone) {
  Estimating at;
  ASSERT_NE(at.window, nullptr);
  at.type(0, "overhead", "10");
  at.type(0, "profit", "20");
  ASSERT_TRUE(at.who.results());
  EXPECT_DOUBLE_EQ(at.who.desk.job().offer.overhead, 0.1);
  const auto& priced = at.who.desk.results()->priced;
  const std::int64_t direct = priced.direct.coins();
  EXPECT_EQ(direct, at.who.desk.results()->estimate.total.amount().coins());
  const std::int64_t overhead = (direct + 5) / 10;  // a tenth, half up
  EXPECT_EQ(at.step("overhead"), overhead);
  const std::int64_t profit = (2 * (direct + overhead) + 5) / 10;  // a fifth of the sum before it
  EXPECT_EQ(at.step("profit"), profit);
  EXPECT_EQ(priced.price.coins(), direct + overhead + profit);
  at.who.desk.undo();
  at.who.desk.undo();
  ASSERT_TRUE(at.who.results());
  EXPECT_EQ(at.who.desk.results()->priced.price.coins(), direct);
}

TEST(EstimateWindow, whatIsNoShareChangesNothing) {
  Estimating at;
  const ui::JobPtr before = at.who.desk.job_ptr();
  for (const char* text : {"many", "-5", "1/0"}) at.type(0, "overhead", text);
  EXPECT_EQ(at.who.desk.job_ptr(), before);
}

TEST(EstimateWindow, aLineIsAddedPricedAndTakenOut) {
  Estimating at;
  ASSERT_TRUE(at.who.results());
  const std::int64_t before = at.who.desk.results()->priced.direct.coins();
  at.press(2, "added/add");
  at.type(2, "added/0/text", "Permit");
  at.type(2, "added/0/price", "1,250.50");
  ASSERT_EQ(at.who.desk.job().offer.lines.size(), 1u);
  EXPECT_EQ(at.who.desk.job().offer.lines[0].unit_price.coins(), 125050);
  ASSERT_TRUE(at.who.results());
  EXPECT_EQ(at.who.desk.results()->priced.direct.coins(), before + 125050);
  at.type(2, "added/0/price", "12,50");  // no amount: read as 1,250 it would be ten times too dear
  EXPECT_EQ(at.who.desk.job().offer.lines[0].unit_price.coins(), 125050);
  at.press(2, "added/0/out");
  EXPECT_TRUE(at.who.desk.job().offer.lines.empty());
}

TEST(EstimateWindow, paymentsAddUpToTheTotal) {
  Estimating at;
  at.press(3, "payment/add");
  at.type(3, "payment/0/share", "33.33");
  at.press(3, "payment/add");
  ASSERT_TRUE(at.who.results());
  const auto& priced = at.who.desk.results()->priced;
  ASSERT_EQ(priced.payments.size(), 2u);
  EXPECT_EQ(priced.payments[0].amount + priced.payments[1].amount, priced.total);
}

TEST(EstimateWindow, whatIsForgottenIsLookedAt) {
  Estimating at;
  ASSERT_TRUE(at.who.results());
  at.turn_to(2);
  ASSERT_NE(at.editor(2, "check/permit"), nullptr);
  at.editor(2, "check/permit")->give(std::string("nothing"));
  ASSERT_EQ(at.who.desk.job().offer.lines.size(), 1u);
  EXPECT_EQ(at.who.desk.job().offer.lines[0].id, "permit");
  EXPECT_TRUE(at.who.desk.job().offer.lines[0].nothing_on_purpose);
  ASSERT_TRUE(at.who.results());
  at.editor(2, "check/permit")->give(std::string("open"));
  EXPECT_TRUE(at.who.desk.job().offer.lines.empty());
}

TEST(EstimateWindow, whatCouldBiteIsWorkedOutBesideTheWindow) {
  Estimating at;
  ASSERT_TRUE(at.who.results());
  at.turn_to(5);
  auto* go = at.window->findChild<QAbstractButton*>("bite_go");
  ASSERT_NE(go, nullptr);
  QTest::mouseClick(go, Qt::LeftButton);
  EXPECT_FALSE(go->isEnabled());  // the window goes on meanwhile
  ASSERT_TRUE(QTest::qWaitFor([go] { return go->isEnabled(); }, 60000));
  auto* bars = at.window->findChild<ui::MoneyBars*>("bite_bars");
  ASSERT_NE(bars, nullptr);
  EXPECT_TRUE(bars->accessibleDescription().contains("$"));
  at.type(0, "overhead", "5");
  EXPECT_TRUE(at.window->findChild<QLabel*>("bite_told")->text().contains("again"));
}

// What is selected leaves the base, is priced beside it, and comes back when it is taken.
TEST(EstimateWindow, anOptionIsMadeOfWhatIsSelectedPricedAndTaken) {
  Estimating at;
  ASSERT_TRUE(at.who.results());
  const units::Money whole = at.who.desk.results()->priced.total;
  auto* view = at.window->findChild<ui::OptionsView*>();
  ASSERT_NE(view, nullptr);
  at.window->show_page(ui::EstimateWindow::options_page);
  auto* bring = at.window->findChild<QAbstractButton*>("options-bring");
  EXPECT_FALSE(bring->isEnabled()) << "nothing is selected";
  const plan::ElementId last = at.who.desk.job().elements.back()->id;
  const std::size_t count = at.who.desk.job().elements.size();
  at.who.desk.select({last});
  ASSERT_TRUE(bring->isEnabled());
  QTest::mouseClick(bring, Qt::LeftButton);
  EXPECT_EQ(at.who.desk.job().find(last), nullptr);
  ASSERT_EQ(at.who.desk.job().offer.options.size(), 1u);
  ASSERT_TRUE(at.who.results());
  const units::Money base = at.who.desk.results()->priced.total;
  auto* go = at.window->findChild<QAbstractButton*>("options-go");
  ASSERT_TRUE(go->isEnabled());
  QTest::mouseClick(go, Qt::LeftButton);
  EXPECT_FALSE(go->isEnabled());  // the window goes on meanwhile
  ASSERT_TRUE(QTest::qWaitFor([go] { return go->isEnabled(); }, 60000));
  ASSERT_EQ(view->prices().size(), 1u);
  EXPECT_EQ(view->prices()[0].total, whole - base);
  auto* take = qobject_cast<QAbstractButton*>(view->form().editor("option/0/take")->input());
  QTest::mouseClick(take, Qt::LeftButton);
  EXPECT_TRUE(at.who.desk.job().offer.options.empty());
  EXPECT_EQ(at.who.desk.job().elements.size(), count);
  EXPECT_NE(at.who.desk.job().find(last), nullptr);
  ASSERT_TRUE(at.who.results());
  EXPECT_EQ(at.who.desk.results()->priced.total, whole);
  at.who.desk.undo();
  at.who.desk.undo();
  EXPECT_EQ(at.who.desk.job().elements.size(), count);
  EXPECT_TRUE(at.who.desk.job().offer.options.empty());
}

TEST(EstimateWindow, saysInWordsWhereTheMoneyGoes) {
  Estimating at;
  ASSERT_TRUE(at.who.results());
  auto* kinds = at.window->findChild<ui::MoneyBars*>("money_by_kind");
  ASSERT_NE(kinds, nullptr);
  EXPECT_TRUE(kinds->accessibleDescription().contains("Labour"));
  EXPECT_TRUE(kinds->accessibleDescription().contains("$"));
}

// Pictures of every page (HOUSE_PICTURES keeps them).
TEST(EstimateWindow, isDrawnInEveryLook) {
  const QString folder = qEnvironmentVariable("HOUSE_PICTURES");
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
    Estimating at;
    at.type(0, "overhead", "12");
    at.type(0, "profit", "15");
    at.press(1, "factor/add");
    at.press(2, "added/add");
    at.press(3, "payment/add");
    EXPECT_TRUE(at.who.results());
    auto* go = at.window->findChild<QAbstractButton*>("bite_go");
    go->click();
    EXPECT_TRUE(QTest::qWaitFor([go] { return go->isEnabled(); }, 60000));
    auto* options = at.window->findChild<ui::OptionsView*>();
    at.who.desk.select({at.who.desk.job().elements.back()->id});
    at.window->findChild<QAbstractButton*>("options-bring")->click();
    options->form().editor("option/0/add")->give({});
    EXPECT_TRUE(at.who.results());
    auto* price = at.window->findChild<QAbstractButton*>("options-go");
    price->click();
    EXPECT_TRUE(QTest::qWaitFor([price] { return price->isEnabled(); }, 60000));
    for (int page = 0; page < ui::EstimateWindow::pages; ++page) {
      at.window->show_page(page);
      QTest::qWait(30);
      const QPixmap picture = at.window->grab();
      EXPECT_GT(picture.width(), 800);
      if (folder.isEmpty()) continue;
      QDir().mkpath(folder);
      EXPECT_TRUE(picture.save(folder + "/estimate-" + look.name + "-" + QString::number(page) + ".png"));
    }
  }
  ui::speak("en");
  ui::set_dark(false);
  ui::set_type_factor(1);
}

}  // namespace
