#include "plan/history.h"

#include <gtest/gtest.h>
#include <rapidcheck.h>

#include "plan/small_jobs.h"

using namespace small;

static std::shared_ptr<const plan::Job> value(plan::Job job) {
  return std::make_shared<const plan::Job>(std::move(job));
}

TEST(History, undoAndRedoNameTheEdit) {
  plan::History history(value(job({})));
  EXPECT_FALSE(history.can_undo());
  EXPECT_EQ(history.undo_name(), "");
  history.record(value(plan::with(*history.now(), paved("A1", rectangle(0, 0, 12, 12)))), "Draw an area");
  EXPECT_EQ(history.undo_name(), "Draw an area");
  history.undo();
  EXPECT_TRUE(history.now()->elements.empty());
  EXPECT_EQ(history.redo_name(), "Draw an area");
  history.redo();
  EXPECT_EQ(history.now()->elements.size(), 1u);
}

TEST(History, anEditThatChangesNothingIsNoStep) {
  plan::History history(value(job({paved("A1", rectangle(0, 0, 12, 12))})));
  history.record(value(job({paved("A1", rectangle(0, 0, 12, 12))})), "Move");
  EXPECT_FALSE(history.can_undo());
}

TEST(History, recordingDropsWhatCouldBeRedone) {
  plan::History history(value(job({})));
  history.record(value(job({paved("A1", rectangle(0, 0, 12, 12))})), "one");
  history.undo();
  history.record(value(job({paved("A2", rectangle(0, 0, 12, 12))})), "other");
  EXPECT_FALSE(history.can_redo());
  EXPECT_EQ(history.now()->elements[0]->id, "A2");
}

// Random edits, then undo all: the first job; redo all: the last. The seed is printed on a failure.
TEST(History, undoAllThenRedoAll) {
  EXPECT_TRUE(rc::check("undo all is the start, redo all the end", [] {
    plan::History history(value(job({})));
    const auto sizes = *rc::gen::container<std::vector<int>>(rc::gen::inRange(1, 40));
    for (std::size_t i = 0; i < sizes.size(); ++i) {
      const std::string id = "A" + std::to_string(sizes[i] % 7);
      plan::Job next = sizes[i] % 5 == 0 ? plan::without(*history.now(), id)
                                         : plan::with(*history.now(), paved(id, rectangle(0, 0, sizes[i], 12)));
      history.record(value(std::move(next)), "edit");
    }
    const auto last = history.now();
    while (history.can_undo()) history.undo();
    RC_ASSERT(history.now()->elements.empty());
    while (history.can_redo()) history.redo();
    RC_ASSERT(history.now() == last);
  }));
}
