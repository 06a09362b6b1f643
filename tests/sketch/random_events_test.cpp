// Random events over all tools: whatever comes, no tool ends the program, every edit keeps ids apart, undoing all edits
// gives the job as it was, and what one tool has in hand never shows in the next.
#include <gtest/gtest.h>

#include <algorithm>
#include <cstdlib>
#include <iostream>
#include <random>
#include <set>

#include "bench_of_hands.h"
#include "plan/history.h"
#include "sketch/words.h"

namespace {

using hands::Bench;
using hands::feet;
using sketch::Hand;
using sketch::Key;

constexpr int hands_in_all = static_cast<int>(Hand::start_point) + 1;

// 4,000 events from one seed unless the nightly run asks for more and others.
long events_wanted() {
  const char* given = std::getenv("RANDOM_EVENTS");
  return given ? std::atol(given) : 4000;
}
std::uint32_t seed_wanted() {
  const char* given = std::getenv("RANDOM_SEED");
  return given ? static_cast<std::uint32_t>(std::atol(given)) : 11;
}

class Person {
 public:
  explicit Person(std::uint32_t seed) : dice_(seed) {}
  int below(int count) { return std::uniform_int_distribution<int>(0, count - 1)(dice_); }
  bool now_and_then() { return below(6) == 0; }

  // Mostly near what is drawn, on a coarse grid, so that places are met again; at times very far out.
  geometry::Point place() {
    if (below(300) == 0) return {units::Length::of_steps(4'000'000'000'000), units::Length::of_steps(-17)};
    if (below(3) == 0) return feet(below(4000) / 100.0 - 20, below(4000) / 100.0 - 20);
    return feet(below(9) * 5 - 20, below(9) * 5 - 20);
  }
  sketch::Hold hold() { return {now_and_then(), now_and_then(), now_and_then()}; }

  sketch::Event event(const sketch::View& view) {
    static const std::vector<Key> keys{Key::enter,       Key::escape, Key::back,      Key::undo,
                                       Key::line_or_arc, Key::erase,  Key::next_below};
    switch (below(12)) {
      case 0:
      case 1: return sketch::Moved{place(), hold()};
      case 2:
      case 3:
      case 4:
      case 5: return sketch::Pressed{place(), hold(), below(12) == 0};
      case 6:
      case 7: return sketch::Released{place(), hold()};
      case 8: return keys[static_cast<std::size_t>(below(static_cast<int>(keys.size())))];
      case 9: return typed(view);
      case 10: return sketch::Nudged{{static_cast<double>(below(21) - 10), static_cast<double>(below(21) - 10)}};
      default: return chosen(view);
    }
  }

 private:
  sketch::Event typed(const sketch::View& view) {
    static const std::vector<std::string> texts{"12' 6\"", "20",  "0",     "-5'", "3/4",   "",     "45",       "90",
                                                "-400",    "1e9", "apple", "7 6", "0.5\"", "100'", "4000000'", "\xff"};
    static const std::vector<std::string> ids{"length", "angle", "x",    "y",      "radius",
                                              "width",  "depth", "rise", "height", "text"};
    const std::string id = !view.fields.empty() && below(5) != 0
                               ? view.fields[static_cast<std::size_t>(below(static_cast<int>(view.fields.size())))].id
                               : ids[static_cast<std::size_t>(below(static_cast<int>(ids.size())))];
    return sketch::Typed{id, texts[static_cast<std::size_t>(below(static_cast<int>(texts.size())))], below(2) == 0};
  }
  sketch::Event chosen(const sketch::View& view) {
    if (view.choices.empty() || now_and_then()) return sketch::Chosen{"nothing-like-that"};
    return sketch::Chosen{view.choices[static_cast<std::size_t>(below(static_cast<int>(view.choices.size())))].id};
  }
  std::mt19937 dice_;
};

bool ids_differ(const plan::Job& job) {
  std::set<plan::ElementId> ids;
  return std::ranges::all_of(
      job.elements, [&](const plan::ElementPtr& one) { return !one->id.empty() && ids.insert(one->id).second; });
}

void expect_known_words(const sketch::View& view, const std::set<std::string>& known) {
  EXPECT_TRUE(known.contains(view.hand)) << view.hand;
  EXPECT_TRUE(known.contains(view.wants)) << view.wants;
  for (const sketch::Field& field : view.fields) EXPECT_TRUE(known.contains(field.label)) << field.label;
  for (const sketch::Choice& choice : view.choices) EXPECT_TRUE(known.contains(choice.label)) << choice.label;
}

TEST(RandomEvents, NothingBreaksAndUndoOfAllGivesTheStart) {
  const std::uint32_t seed = seed_wanted();
  std::cout << "seed " << seed << " (RANDOM_SEED repeats it, RANDOM_EVENTS sets how many)" << std::endl;
  Person person(seed);
  const auto words = sketch::all_words();
  const std::set<std::string> known(words.begin(), words.end());
  Bench bench;
  plan::SitePlan site_plan;
  site_plan.file = "survey.png";
  bench.job = plan::with(bench.job, {"X1", "", site_plan});
  bench.tool = sketch::make_tool(Hand::pick);
  const auto start = std::make_shared<const plan::Job>(bench.job);
  plan::History history(start);
  const long wanted = events_wanted();
  long edits = 0;
  for (long i = 0; i < wanted; ++i) {
    if (person.below(25) == 0) {
      auto hand = static_cast<Hand>(person.below(hands_in_all));
      // Moving a wild outline of many arcs out by offset can take minutes in the overlay: no crash, but no test either.
      if (hand == Hand::offset) hand = Hand::area;
      bench.tool = sketch::make_tool(hand);
      ASSERT_TRUE(bench.tool);
      // Nothing of the tool before is in hand.
      const sketch::View fresh = bench.view();
      ASSERT_FALSE(fresh.busy) << "hand " << static_cast<int>(hand);
      for (const sketch::Field& field : fresh.fields) ASSERT_FALSE(field.locked) << field.id;
    }
    const sketch::View view = bench.view();
    expect_known_words(view, known);
    const plan::Job before = bench.job;
    bench.feed(person.event(view));
    if (bench.last.refused) {
      EXPECT_FALSE(bench.last.refused->text.empty());
    }
    if (bench.last.leave) bench.tool = sketch::make_tool(Hand::pick);
    if (!bench.last.edit) {
      ASSERT_EQ(before.elements, bench.job.elements);  // the very same values
      continue;
    }
    ++edits;
    ASSERT_TRUE(ids_differ(bench.job)) << bench.last.edit->name;
    EXPECT_FALSE(bench.last.edit->name.empty());
    for (const plan::ElementId& id : bench.selected)
      EXPECT_NE(bench.job.find(id), nullptr) << bench.last.edit->name << " " << id;
    history.record(std::make_shared<const plan::Job>(bench.job), bench.last.edit->name);
    // A job that grows without end would only slow the test: it is begun anew, as one more edit.
    if (bench.job.elements.size() > 25) {
      bench.job = *start;
      bench.selected.clear();
      bench.tool = sketch::make_tool(Hand::pick);
      history.record(std::make_shared<const plan::Job>(bench.job), "Begin anew");
    }
    if (::testing::Test::HasFailure()) FAIL() << "after event " << i;
  }
  EXPECT_GT(edits, wanted / 100);
  while (history.can_undo()) history.undo();
  EXPECT_TRUE(plan::same(*history.now(), *start));
}

}  // namespace
