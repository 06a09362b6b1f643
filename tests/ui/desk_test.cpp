// The desk: one step of history for each edit, results that follow, nothing selected that is gone.
#include "ui/desk/desk.h"

#include <gtest/gtest.h>

#include <QSignalSpy>

#include "person.h"

namespace {

plan::Job renamed(plan::Job job, const std::string& name) {
  job.heading.name = name;
  return job;
}

TEST(Desk, resultsFollowTheJobAndNameIt) {
  ui::Desk desk(std::make_shared<const plan::Job>(person::job_of("bakery-court")));
  EXPECT_TRUE(desk.computing());
  ASSERT_TRUE(person::wait_for_results(desk));
  EXPECT_EQ(desk.results()->job, desk.job_ptr());
  desk.edit(renamed(desk.job(), "other"), "Name");
  EXPECT_TRUE(desk.computing());
  EXPECT_NE(desk.results()->job, desk.job_ptr()) << "the old numbers stay until the new ones are there";
  ASSERT_TRUE(person::wait_for_results(desk));
  EXPECT_EQ(desk.results()->job, desk.job_ptr());
}

TEST(Desk, anEditThatChangesNothingIsNoStep) {
  ui::Desk desk(std::make_shared<const plan::Job>(person::empty_job()));
  QSignalSpy changed(&desk, &ui::Desk::job_changed);
  desk.edit(desk.job(), "Nothing");
  EXPECT_EQ(changed.count(), 0);
  EXPECT_FALSE(desk.history().can_undo());
}

TEST(Desk, aThousandStepsAreUndoneAndRedoneByName) {
  ui::Desk desk(std::make_shared<const plan::Job>(person::empty_job()));
  const ui::JobPtr first = desk.job_ptr();
  for (int i = 0; i < 1000; ++i) desk.edit(renamed(desk.job(), std::to_string(i)), QString("Step %1").arg(i));
  const ui::JobPtr last = desk.job_ptr();
  for (int i = 999; i >= 0; --i) {
    ASSERT_EQ(desk.history().undo_name(), "Step " + std::to_string(i));
    desk.undo();
  }
  EXPECT_EQ(desk.job_ptr(), first);
  EXPECT_FALSE(desk.history().can_undo());
  for (int i = 0; i < 1000; ++i) desk.redo();
  EXPECT_EQ(desk.job_ptr(), last);
}

TEST(Desk, whatIsGoneIsNotSelected) {
  ui::Desk desk(std::make_shared<const plan::Job>(person::job_of("bakery-court")));
  const plan::ElementId id = desk.job().elements.front()->id;
  desk.select({id, "nobody"});
  EXPECT_EQ(desk.selected(), std::vector<plan::ElementId>{id});
  desk.edit(plan::without(desk.job(), id), "Remove");
  EXPECT_TRUE(desk.selected().empty());
}

TEST(Desk, stopDropsTheComputationAndAnEditBeginsAnother) {
  ui::Desk desk(std::make_shared<const plan::Job>(person::job_of("pool-terrace-a")));
  desk.stop();
  EXPECT_FALSE(desk.computing());
  QTest::qWait(300);
  EXPECT_EQ(desk.results(), nullptr);
  desk.edit(renamed(desk.job(), "after"), "Name");
  ASSERT_TRUE(person::wait_for_results(desk));
}

TEST(Desk, anotherJobBeginsANewHistory) {
  ui::Desk desk(std::make_shared<const plan::Job>(person::job_of("bakery-court")));
  desk.edit(renamed(desk.job(), "edited"), "Name");
  desk.select({desk.job().elements.front()->id});
  desk.show_stage(takeoff::Stage::base);
  desk.open(std::make_shared<const plan::Job>(person::job_of("pool-terrace-b")));
  EXPECT_FALSE(desk.history().can_undo());
  EXPECT_TRUE(desk.selected().empty());
  EXPECT_FALSE(desk.stage().has_value());
  ASSERT_TRUE(person::wait_for_results(desk));
  EXPECT_EQ(desk.results()->job->heading.name, desk.job().heading.name);
}

}  // namespace
