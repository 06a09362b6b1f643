// What people come to do, done as they do it: by clicks, keys and typed words. The number of actions of each task is
// counted and may not grow.
#include <gtest/gtest.h>

#include <QFile>
#include <QFileDialog>
#include <QLineEdit>
#include <QTemporaryDir>
#include <QTimer>

#include "person.h"
#include "ui/panels/selected_panel.h"

namespace {

using person::Person;

constexpr double foot = 0.3048;

// A rectangle of 12' 6" x 20' by one click and what is typed: 250 square feet.
TEST(Tasks, aRectangleByOneClickAndTypedSides) {
  Person who(person::empty_job());
  who.key(Qt::Key_A);
  who.press("choice_rectangle");
  who.click(0, 0);
  who.type("12' 6\"");
  who.key(Qt::Key_Tab);
  who.type("20'");
  who.key(Qt::Key_Return);
  ASSERT_EQ(who.desk.job().elements.size(), 1U) << who.window->plan().view().wants;
  ASSERT_TRUE(who.results());
  EXPECT_NEAR(who.measure("A1", "net_area_m2"), 250 * foot * foot, 1e-9);
  EXPECT_NEAR(who.measure("A1", "perimeter_m"), 65 * foot, 1e-9);
  EXPECT_LE(who.actions, 7);
}

// A deck of 30 x 20 ft with a pool of 16 x 8 ft in it, corner by corner with typed sides: 600 - 128 square feet.
TEST(Tasks, aDeckWithAPoolIsDrawnUndoneAndRedone) {
  Person who(person::empty_job());
  const plan::Job start = who.desk.job();
  who.key(Qt::Key_A);
  who.click(-3, -3);
  const auto side = [&who](double towards_x, double towards_y, const char* typed) {
    who.point(towards_x, towards_y);
    who.type(typed);
    who.key(Qt::Key_Return);
  };
  side(5, -3, "30'");
  side(-3 + 30 * foot, 2, "20'");
  side(-2, -3 + 20 * foot, "30'");
  who.key(Qt::Key_Return);
  ASSERT_EQ(who.desk.job().elements.size(), 1U) << who.window->plan().view().wants;
  who.key(Qt::Key_P);
  who.press("choice_rectangle");
  who.click(-2, -2);
  who.type("16'");
  who.key(Qt::Key_Tab);
  who.type("8'");
  who.key(Qt::Key_Return);
  ASSERT_EQ(who.desk.job().elements.size(), 2U) << who.window->plan().view().wants;
  ASSERT_TRUE(who.results());
  EXPECT_NEAR(who.measure("A1", "outline_area_m2"), 600 * foot * foot, 1e-6);
  EXPECT_NEAR(who.measure("A1", "net_area_m2"), (600 - 128) * foot * foot, 1e-6);
  EXPECT_LE(who.actions, 16);

  const plan::Job drawn = who.desk.job();
  while (who.desk.history().can_undo()) who.choose("undo");
  EXPECT_TRUE(plan::same(who.desk.job(), start));
  while (who.desk.history().can_redo()) who.choose("redo");
  EXPECT_TRUE(plan::same(who.desk.job(), drawn));
}

// While drawing, undo takes back a point and not the edit before.
TEST(Tasks, undoTakesBackAPointWhileDrawing) {
  Person who(person::empty_job());
  who.key(Qt::Key_A);
  who.press("choice_rectangle");
  who.click(0, 0);
  who.click(3, 2);
  ASSERT_EQ(who.desk.job().elements.size(), 1U);
  who.press("choice_corners");
  who.click(4, 0);
  who.click(6, 0);
  who.click(6, 2);
  ASSERT_TRUE(who.window->plan().view().busy);
  who.choose("undo");
  EXPECT_EQ(who.desk.job().elements.size(), 1U);
  EXPECT_TRUE(who.window->plan().view().busy);
  who.choose("undo");
  who.choose("undo");
  EXPECT_FALSE(who.window->plan().view().busy);
  EXPECT_EQ(who.desk.job().elements.size(), 1U);
  who.choose("undo");
  EXPECT_TRUE(who.desk.job().elements.empty());
}

// The demo job to its material list: it is open at the first start, so one action and the name of the file.
TEST(Tasks, theDemoJobToAMaterialListInFiveActions) {
  Person who(person::job_of("pool-terrace-a"));
  ASSERT_TRUE(who.results());
  const QTemporaryDir folder;
  const QString file = folder.filePath("list.csv");
  QTimer asks;  // the dialog runs until it is answered: by its name and Enter
  QObject::connect(&asks, &QTimer::timeout, [&] {
    auto* dialog = qobject_cast<QFileDialog*>(QApplication::activeModalWidget());
    auto* name = dialog != nullptr ? dialog->findChild<QLineEdit*>("fileNameEdit") : nullptr;
    if (name == nullptr) return;
    asks.stop();
    who.actions += 2;
    name->setText(file);
    QTest::keyClick(name, Qt::Key_Return);
  });
  asks.start(20);
  who.key(Qt::Key_P, Qt::ControlModifier | Qt::ShiftModifier);
  QFile made(file);
  ASSERT_TRUE(made.open(QIODevice::ReadOnly));
  EXPECT_EQ(made.readAll().toStdString(), files::takeoff_csv(*who.desk.results()));
  EXPECT_EQ(who.actions, 3);
}

// A place where nothing can be written is told, and nothing is lost.
TEST(Tasks, aListThatCantBeWrittenIsTold) {
  Person who(person::job_of("bakery-court"));
  ASSERT_TRUE(who.results());
  EXPECT_FALSE(who.window->write_material_list("/nowhere/at/all/list.csv"));
}

TEST(Tasks, anElementIsPickedMovedAndPutBack) {
  Person who(person::empty_job());
  who.key(Qt::Key_A);
  who.press("choice_rectangle");
  who.click(0, 0);
  who.click(3, 2);
  who.key(Qt::Key_Escape);
  EXPECT_EQ(who.window->plan().hand(), sketch::Hand::pick);
  const plan::Job before = who.desk.job();
  who.click(1.5, 1);
  ASSERT_EQ(who.desk.selected(), std::vector<plan::ElementId>{"A1"});
  who.drag(1.5, 1, 2.5, 2);
  EXPECT_FALSE(plan::same(who.desk.job(), before));
  EXPECT_EQ(who.desk.history().undo_name().substr(0, 4), "Move");
  who.choose("undo");
  EXPECT_TRUE(plan::same(who.desk.job(), before));
  // An arrow key moves it by an inch, with Shift by ten.
  who.key(Qt::Key_Right);
  who.key(Qt::Key_Right, Qt::ShiftModifier);
  const auto& area = std::get<plan::PavedArea>(who.desk.job().elements.front()->kind);
  const auto& was = std::get<plan::PavedArea>(before.elements.front()->kind);
  EXPECT_EQ((area.outline[0].edges[0].from.x - was.outline[0].edges[0].from.x).steps(),
            units::Length::inches(11).steps());
}

}  // namespace
