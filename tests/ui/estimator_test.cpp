// An estimator's first job, from the scan of a plan to the order list, without the manual: by what the window offers.
#include <gtest/gtest.h>

#include <QImage>
#include <QLineEdit>
#include <QPainter>
#include <QTemporaryDir>

#include "person.h"
#include "ui/panels/field_editor.h"
#include "ui/panels/item_choice.h"
#include "ui/panels/selected_panel.h"

namespace {

using person::Person;

constexpr double foot = 0.3048;

// A scan of a yard: 1,200 x 900 px at 20 px a foot, a house wall and a fence drawn on it.
QString scan(const QTemporaryDir& folder) {
  QImage picture(1200, 900, QImage::Format_RGB32);
  picture.fill(Qt::white);
  QPainter painter(&picture);
  painter.setPen(QPen(Qt::black, 3));
  painter.drawRect(100, 100, 1000, 300);  // the house: 50 x 15 ft
  painter.drawLine(100, 850, 1100, 850);
  painter.end();
  const QString file = folder.filePath("yard.png");
  EXPECT_TRUE(picture.save(file));
  return file;
}

void choose(Person& who, const char* field, const char* words) {
  ++who.actions;
  auto* panel = who.window->findChild<ui::SelectedPanel*>();
  ui::FieldEditor* editor = panel->editor(field);
  ASSERT_NE(editor, nullptr) << field;
  auto* choice = qobject_cast<ui::ItemChoice*>(editor->input());
  ASSERT_NE(choice, nullptr) << field;
  ui::OfferList* list = choice->open();
  QTest::keyClicks(list->search(), words);
  QTest::keyClick(list->search(), Qt::Key_Return);
  QTest::qWait(20);                                 // the list closes
  QApplication::setActiveWindow(who.window.get());  // offscreen nobody does it then
  who.window->plan().setFocus();
}

void keep(Person& who, const char* name) {
  const QString folder = qEnvironmentVariable("HOUSE_PICTURES");
  if (folder.isEmpty()) return;
  QTest::qWait(60);
  EXPECT_TRUE(who.window->grab().save(folder + "/estimator-" + name + ".png"));
}

TEST(Estimator, drawsADeckWithPoolWalkAndKerbOverAScanAndReadsTheList) {
  const QTemporaryDir folder;
  Person who(person::empty_job());
  ui::PlanView& plan = who.window->plan();

  // The scan comes in; two points of the house's long side and its typed length give the scale: 1,000 px are 50 ft.
  ASSERT_TRUE(who.window->bring_in_site_plan(scan(folder)));
  ASSERT_TRUE(QTest::qWaitFor([&] { return who.desk.job().elements.size() == 1; }, 20000));
  ASSERT_EQ(plan.hand(), sketch::Hand::site_plan);
  const auto scan_now = [&] { return std::get<plan::SitePlan>(who.desk.job().elements.front()->kind); };
  const auto on_scan = [&](double x_px, double y_px) {  // from the scan's pixels, y down, to metres
    const problem::Xy corner = geometry::xy(scan_now().at);
    const double scale = scan_now().metres_per_pixel;
    return geometry::Vec{corner.x + x_px * scale, corner.y + (900 - y_px) * scale};
  };
  who.press("choice_scale");
  const geometry::Vec left = on_scan(100, 100);
  const geometry::Vec right = on_scan(1100, 100);
  who.click(left.x, left.y);
  who.click(right.x, right.y);
  who.type("50'");
  who.key(Qt::Key_Return);
  // A click lies within half a px of the screen: over 1,000 px of the scan that is a share of at most 1 / 500.
  EXPECT_NEAR(scan_now().metres_per_pixel, foot / 20, foot / 20 / 100) << plan.view().wants;
  who.choose("whole-job");
  EXPECT_LT(plan.sight().scale, plan.width() / (60 * foot) * 1.05) << "all 60 ft of the scan are in view";
  keep(who, "1-scan");

  // The deck of 30 x 20 ft under the house, the pool of 16 x 8 ft in it, a walk of 4 x 15 ft beside it.
  const geometry::Vec deck = on_scan(300, 820);
  who.key(Qt::Key_A);
  who.press("choice_rectangle");
  who.click(deck.x, deck.y);
  who.type("30'");
  who.key(Qt::Key_Tab);
  who.type("20'");
  who.key(Qt::Key_Return);
  ASSERT_NE(who.desk.job().find("A1"), nullptr) << plan.view().wants;
  who.key(Qt::Key_P);
  who.press("choice_rectangle");
  who.click(deck.x + 7 * foot, deck.y + 6 * foot);
  who.type("16'");
  who.key(Qt::Key_Tab);
  who.type("8'");
  who.key(Qt::Key_Return);
  ASSERT_NE(who.desk.job().find("P1"), nullptr) << plan.view().wants;
  keep(who, "2-deck-and-pool");

  // What it is built of.
  who.desk.select({"A1"});
  auto* panel = who.window->findChild<ui::SelectedPanel*>();
  choose(who, "build_up", "pool deck: open base");
  panel->show_tab(ui::SelectedPanel::pattern);
  choose(who, "pattern", "running bond");
  ASSERT_TRUE(who.results());
  const auto& area = std::get<plan::PavedArea>(who.desk.job().find("A1")->kind);
  EXPECT_FALSE(area.build_up.empty());
  ASSERT_TRUE(area.laying.has_value());
  EXPECT_EQ(area.laying->pattern, "running-half");

  // The walk takes over what the deck is built of; the kerb runs along the deck's left and lower sides.
  who.key(Qt::Key_Escape);
  plan.take_hand(sketch::Hand::area);
  who.press("choice_rectangle");
  who.click(deck.x + 34 * foot, deck.y);
  who.type("4'");
  who.key(Qt::Key_Tab);
  who.type("15'");
  who.key(Qt::Key_Return);
  ASSERT_NE(who.desk.job().find("A2"), nullptr) << plan.view().wants;
  EXPECT_EQ(std::get<plan::PavedArea>(who.desk.job().find("A2")->kind).build_up, area.build_up);
  plan.take_hand(sketch::Hand::trace);
  who.click(deck.x, deck.y + 20 * foot);
  who.click(deck.x + 30 * foot, deck.y);
  ASSERT_NE(who.desk.job().find("K1"), nullptr) << plan.view().wants;

  // The order list: 600 less 128 square feet laid, units and stone with a price.
  ASSERT_TRUE(who.results());
  EXPECT_NEAR(who.measure("A1", "outline_area_m2"), 600 * foot * foot, 1e-6);
  EXPECT_NEAR(who.measure("K1", "length_m"), 50 * foot, 2 * foot) << "20 + 30 ft, ends picked by hand";
  int priced = 0;
  bool units = false;
  for (const auto& line : who.desk.results()->estimate.lines) {
    if (line.amount) ++priced;
    const auto* item = who.desk.job().catalogue->item(line.item);
    units = units || (item != nullptr && item->kind == "paving-unit");
  }
  EXPECT_GT(priced, 5);
  EXPECT_TRUE(units);
  who.desk.select({});
  plan.take_hand(sketch::Hand::pick);
  keep(who, "3-order-list");
  const QString file = folder.filePath("list.csv");
  EXPECT_TRUE(who.window->write_material_list(file));
  std::printf("%d actions\n", who.actions);
  EXPECT_LE(who.actions, 36);
}

}  // namespace
