// Events at random, as no person would give them: nothing breaks, and undoing everything gives the start. HOUSE_SECONDS
// sets how long (2 by itself; 30 in the landing check, 600 by night), HOUSE_SEED repeats a run.
#include <gtest/gtest.h>

#include <random>
#include <set>

#include "person.h"
#include "ui/panels/tool_list.h"

namespace {

int seconds() {
  const int wanted = qEnvironmentVariableIntValue("HOUSE_SECONDS");
  return wanted > 0 ? wanted : 2;
}

unsigned seed() {
  const int wanted = qEnvironmentVariableIntValue("HOUSE_SEED");
  return wanted > 0 ? static_cast<unsigned>(wanted) : std::random_device{}() % 1000000 + 1;
}

class Monkey {
 public:
  Monkey(person::Person& who, unsigned seed) : who_(who), random_(seed) {}

  void act() {
    switch (pick(12)) {
      case 0:
      case 1:
      case 2: click({}); break;
      case 3: click(Qt::ShiftModifier); break;
      case 4: drag(); break;
      case 5: who_.window->plan().take_hand(static_cast<sketch::Hand>(pick(29))); break;
      case 6: key(); break;
      case 7: type(); break;
      case 8: choose(); break;
      case 9: who_.choose(pick(2) == 0 ? "undo" : "redo"); break;
      case 10: action(); break;
      default: who_.window->plan().zoom(pick(2) == 0 ? 1.3 : 0.8, place()); break;
    }
  }

 private:
  int pick(int count) { return static_cast<int>(random_() % static_cast<unsigned>(count)); }
  QPoint place() {
    const QRect room = who_.window->plan().rect();
    return {pick(room.width()), pick(room.height())};
  }
  void click(Qt::KeyboardModifiers held) {
    const QPoint at = place();
    QTest::mouseMove(&who_.window->plan(), at);
    if (pick(6) == 0) {
      QTest::mouseDClick(&who_.window->plan(), Qt::LeftButton, held, at);
    } else {
      QTest::mouseClick(&who_.window->plan(), Qt::LeftButton, held, at);
    }
  }
  void drag() {
    const auto button = pick(4) == 0 ? Qt::MiddleButton : Qt::LeftButton;
    QTest::mousePress(&who_.window->plan(), button, {}, place());
    QTest::mouseMove(&who_.window->plan(), place());
    QTest::mouseMove(&who_.window->plan(), place());
    QTest::mouseRelease(&who_.window->plan(), button, {}, place());
  }
  void key() {
    static constexpr Qt::Key keys[] = {Qt::Key_Return, Qt::Key_Escape, Qt::Key_Backspace, Qt::Key_Delete,
                                       Qt::Key_Left,   Qt::Key_Up,     Qt::Key_A,         Qt::Key_Tab,
                                       Qt::Key_5,      Qt::Key_PageUp};
    QTest::keyClick(&who_.window->plan(), keys[pick(10)], pick(5) == 0 ? Qt::ShiftModifier : Qt::NoModifier);
  }
  void type() {
    static const char* const texts[] = {"12' 6\"",       "3.81 m", "",   "-4", "1/0",
                                        "9999999999 ft", "0",      "45", "''", "5 5 5"};
    const auto fields = who_.window->plan().view().fields;
    if (fields.empty()) return;
    const std::string field = fields[static_cast<std::size_t>(pick(static_cast<int>(fields.size())))].id;
    who_.window->plan().take(sketch::Typed{field, texts[pick(10)], pick(2) == 0});
  }
  void choose() {
    const auto choices = who_.window->plan().view().choices;
    if (choices.empty()) return;
    who_.window->plan().take(
        sketch::Chosen{choices[static_cast<std::size_t>(pick(static_cast<int>(choices.size())))].id});
  }
  void action() {
    static const char* const ids[] = {"stage-before", "stage-after", "finished",     "whole-job", "junctions",
                                      "select-all",   "next-part",   "next-problem", "below",     "remove"};
    who_.choose(ids[pick(10)]);
  }

  person::Person& who_;
  std::mt19937 random_;
};

void let_loose(plan::Job job, unsigned with, int for_seconds) {
  SCOPED_TRACE("HOUSE_SEED=" + std::to_string(with));
  std::printf("HOUSE_SEED=%u\n", with);  // first: a run that ends in the middle must be repeatable
  std::fflush(stdout);
  person::Person who(std::move(job));
  const ui::JobPtr start = who.desk.job_ptr();
  Monkey monkey(who, with);
  QElapsedTimer watch;
  watch.start();
  int acts = 0;
  while (watch.elapsed() < for_seconds * 1000) {
    monkey.act();
    if (++acts % 8 == 0) QCoreApplication::processEvents(QEventLoop::AllEvents, 20);
    std::set<plan::ElementId> ids;
    for (const auto& element : who.desk.job().elements) ASSERT_TRUE(ids.insert(element->id).second) << element->id;
  }
  who.key(Qt::Key_Escape);
  while (who.desk.history().can_undo()) who.desk.undo();
  EXPECT_EQ(who.desk.job_ptr(), start);
  EXPECT_TRUE(who.results());
  std::printf("%d events\n", acts);
}

TEST(Random, anEmptyJob) { let_loose(person::empty_job(), seed(), seconds()); }
TEST(Random, aFullJob) { let_loose(person::job_of("bakery-court"), seed(), seconds()); }

}  // namespace
