// What differs between two jobs, in words: never nothing where something does.
#include "plan/differences.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <set>

#include "files/files.h"
#include "plan/instead.h"

namespace {

using plan::Differs;

const plan::Job& demo() {
  static const plan::Job job = [] {
    const std::string path = std::string(HOUSE_ROOT) + "/demo-jobs/pool-terrace-a.json";
    return files::read_job(files::read_file(path).value(), path).value();
  }();
  return job;
}

plan::Element area(const std::string& id, const std::string& build_up) {
  plan::PavedArea made;
  made.build_up = build_up;
  return {id, "", made};
}

TEST(Differences, aJobHasNoneFromItself) {
  EXPECT_TRUE(plan::differences(demo(), demo()).none());
  const std::string text = files::write_job(demo());
  EXPECT_TRUE(plan::differences(demo(), files::read_job(text, "again").value()).none());
}

TEST(Differences, nameWhatCameWentAndChanged) {
  plan::Job before = demo();
  before.elements.clear();
  const plan::Job first = plan::with(plan::with(before, area("A1", "dense")), area("A2", "dense"));
  plan::PavedArea laid;
  laid.build_up = "open";
  laid.laying.emplace();
  plan::Job second = plan::with(plan::without(first, "A2"), {"A1", "Deck", laid});
  second = plan::with(second, area("A3", "dense"));
  second.choices.crew = first.choices.crew + 1;
  second.offer.overhead = 0.1;
  const auto made = plan::differences(first, second);
  ASSERT_EQ(made.elements.size(), 3u);
  EXPECT_EQ(made.elements[0].id, "A1");
  EXPECT_EQ(made.elements[0].what, (std::vector<std::string>{"name", "build-up", "pattern"}));
  EXPECT_EQ(made.elements[1].how, Differs::added);
  EXPECT_EQ(made.elements[1].id, "A3");
  EXPECT_EQ(made.elements[2].how, Differs::gone);
  EXPECT_EQ(made.elements[2].id, "A2");
  EXPECT_EQ(made.job, (std::vector<std::string>{"crew", "overhead"}));
}

TEST(Differences, ofPricesAreNamedByItemApartFromWhatTheItemIs) {
  catalogue::Catalogue list = *demo().catalogue;
  const auto priced = std::ranges::find_if(
      list.items, [](const auto& row) { return row.second->price && row.second->price->amount.coins() > 0; });
  ASSERT_NE(priced, list.items.end());
  catalogue::Item item = *priced->second;
  item.price->amount += units::Money::of_coins(100);
  item.notes += " other notes";
  priced->second = std::make_shared<const catalogue::Item>(item);
  const plan::Job dearer = plan::at_prices_of(demo(), list);
  const auto made = plan::differences(demo(), dearer);
  EXPECT_EQ(made.prices, std::vector<plan::Id>{item.id});
  EXPECT_TRUE(made.catalogue.empty()) << "only the price was taken over";
  EXPECT_TRUE(made.elements.empty() && made.job.empty());
}

// Elements of the demo job taken out, doubled under other ids, moved to the end and emptied at random, against a loop
// that looks through both lists for each id.
RC_GTEST_PROP(DifferencesRandom, areWhatASlowLoopFinds, ()) {
  plan::Job before = demo(), after = demo();
  for (plan::Job* job : {&before, &after})
    for (int count = *rc::gen::inRange(0, 6); count > 0 && !job->elements.empty(); --count) {
      const auto at = static_cast<std::size_t>(*rc::gen::inRange<int>(0, static_cast<int>(job->elements.size())));
      plan::Element element = *job->elements[at];
      const int way = *rc::gen::inRange(0, 3);
      if (way == 0) *job = plan::without(*job, element.id);
      if (way == 1) element.id += "-copy";
      if (way == 2) element.kind = plan::Note{};
      if (way != 0) *job = plan::with(*job, element);
    }
  std::set<std::string> slow, fast;
  for (const auto& old : before.elements) {
    const plan::Element* now = after.find(old->id);
    if (!now) slow.insert("gone " + old->id);
    if (now && !(*now == *old)) slow.insert("changed " + old->id);
  }
  for (const auto& now : after.elements)
    if (!before.find(now->id)) slow.insert("added " + now->id);
  const auto made = plan::differences(before, after);
  for (const auto& one : made.elements) {
    fast.insert((one.how == Differs::gone ? "gone " : one.how == Differs::added ? "added " : "changed ") + one.id);
    RC_ASSERT((one.how == Differs::changed) == !one.what.empty());
  }
  RC_ASSERT(fast == slow);
  RC_ASSERT(made.elements.size() == fast.size());
  RC_ASSERT(made.none() == plan::same(before, after));
}

}  // namespace
