// Sight, pointer and keys of the plan.
#include "ui/plan/plan_view.h"

#include <gtest/gtest.h>

#include <QSignalSpy>

#include "person.h"

namespace {

using person::Person;

TEST(PlanView, aPlaceUnderThePointerStaysThereWhenZooming) {
  Person who(person::job_of("bakery-court"));
  ui::PlanView& plan = who.window->plan();
  const QPointF pointer(300, 250);
  const geometry::Vec before = plan.sight().to_metres(pointer);
  plan.zoom(3, pointer);
  const geometry::Vec after = plan.sight().to_metres(pointer);
  EXPECT_NEAR(before.x, after.x, 1e-9);
  EXPECT_NEAR(before.y, after.y, 1e-9);
}

TEST(PlanView, theWholeJobIsInView) {
  Person who(person::job_of("pool-terrace-a"));
  ui::PlanView& plan = who.window->plan();
  plan.zoom(40, {10, 10});
  plan.whole_job();
  for (const char* id : {"A1", "P", "H", "RW"}) EXPECT_TRUE(plan.rect().contains(plan.rect_of(id))) << id;
}

TEST(PlanView, itCanBePannedByMiddleButtonAndBySpace) {
  Person who(person::job_of("bakery-court"));
  ui::PlanView& plan = who.window->plan();
  const QPointF origin = plan.sight().origin;
  QTest::mousePress(&plan, Qt::MiddleButton, {}, {200, 200});
  QTest::mouseMove(&plan, {250, 230});
  QTest::mouseRelease(&plan, Qt::MiddleButton, {}, {250, 230});
  EXPECT_EQ(plan.sight().origin, origin + QPointF(50, 30));
  QTest::keyPress(&plan, Qt::Key_Space);
  QTest::mousePress(&plan, Qt::LeftButton, {}, {200, 200});
  QTest::mouseMove(&plan, {190, 200});
  QTest::mouseRelease(&plan, Qt::LeftButton, {}, {190, 200});
  QTest::keyRelease(&plan, Qt::Key_Space);
  EXPECT_EQ(plan.sight().origin, origin + QPointF(40, 30));
  EXPECT_TRUE(who.desk.selected().empty());
  EXPECT_FALSE(who.desk.history().can_undo());
}

// Digits choose a stage with Pick at rest and type a length while a tool is at work.
TEST(PlanView, digitsAreStagesAtRestAndLengthsAtWork) {
  Person who(person::job_of("bakery-court"));
  who.key(Qt::Key_3);
  EXPECT_EQ(who.desk.stage(), takeoff::Stage::under_ground);
  who.key(Qt::Key_0);
  EXPECT_FALSE(who.desk.stage().has_value());
  who.key(Qt::Key_A);
  who.click(0, 0);
  who.type("3");
  EXPECT_FALSE(who.desk.stage().has_value());
  ASSERT_FALSE(who.window->plan().view().fields.empty());
  EXPECT_EQ(who.window->plan().view().fields.front().text, "3");
}

TEST(PlanView, aProblemsPlaceIsBroughtIntoView) {
  Person who(person::job_of("pool-terrace-a"));
  ui::PlanView& plan = who.window->plan();
  plan.zoom(30, {10, 10});
  problem::Place place;
  place.element = "RW";
  who.desk.go_to(place);
  EXPECT_EQ(who.desk.selected(), std::vector<plan::ElementId>{"RW"});
  EXPECT_TRUE(plan.rect().intersects(plan.rect_of("RW")));
}

// Panning moves the picture and then draws it afresh: both show the same.
TEST(PlanView, thePictureIsTheSameAfterPanningThereAndBack) {
  Person who(person::job_of("bakery-court"));
  ASSERT_TRUE(who.results());
  ui::PlanView& plan = who.window->plan();
  const QImage before = plan.grab().toImage();
  QTest::mousePress(&plan, Qt::MiddleButton, {}, {200, 200});
  QTest::mouseMove(&plan, {320, 260});
  QTest::mouseMove(&plan, {200, 200});
  QTest::mouseRelease(&plan, Qt::MiddleButton, {}, {200, 200});
  QTest::qWait(100);
  EXPECT_EQ(plan.grab().toImage(), before);
}

}  // namespace
