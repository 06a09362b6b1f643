// Lines that every estimate forgets.
#include "estimate/checklist.h"

#include <algorithm>
#include <set>

#include "estimate/estimate_kit.h"

namespace {

using namespace estimate_kit;
using Answer = estimate::ChecklistPoint::Answer;
using plan::CostKind;
using takeoff::Stage;

const estimate::ChecklistPoint& point(const std::vector<estimate::ChecklistPoint>& all, const std::string& code) {
  static const estimate::ChecklistPoint none;
  const auto found = std::ranges::find(all, code, &estimate::ChecklistPoint::code);
  EXPECT_NE(found, all.end()) << code;
  return found == all.end() ? none : *found;
}

TEST(Checklist, IsOpenUntilSomebodyAnswers) {
  const plan::Job job = starter_job();
  const auto all = estimate::checklist(job, estimate::estimate(job, takeoff_of({})));
  std::set<std::string> codes;
  for (const auto& one : all) {
    EXPECT_EQ(one.answer, Answer::open) << one.code;
    EXPECT_FALSE(one.name.empty());
    codes.insert(one.code);
  }
  EXPECT_EQ(codes.size(), all.size());
  // permit, engineer, locate, mobilise, machine move, fuel, dump, toilet, protection, lawn, irrigation, delivery,
  // deposit, blades, tools, wash down, punch list, warranty, card
  EXPECT_EQ(all.size(), 19U);
}

TEST(Checklist, LinesOfTheTakeoffAnswer) {
  const plan::Job job = starter_job();
  const auto made =
      estimate::estimate(job, takeoff_of({line(Stage::paving, "unit-4x8-60", amount(900, units::piece)),
                                          line(Stage::dig, "disposal-soil", amount(9000, units::kilogram)),
                                          line(Stage::paving, "blade-14", amount(1, units::piece))}));
  const auto all = estimate::checklist(job, made);
  for (const char* code : {"dump", "delivery", "pallet-deposit", "saw-blades"})
    EXPECT_EQ(point(all, code).answer, Answer::line) << code;
  EXPECT_EQ(point(all, "dump").by, "disposal-soil");
  EXPECT_EQ(point(all, "dump").amount, *line_of(made, "disposal-soil").amount);
  EXPECT_EQ(point(all, "permit").answer, Answer::open);
}

TEST(Checklist, AddedLinesAnswerAlsoWithNothing) {
  plan::Job job = starter_job();
  job.offer.lines = {{"permit", "protect", CostKind::fee, "Permit", 1, "job", units::Money::of_coins(42000), false, ""},
                     {"toilet", "protect", CostKind::fee, "", 1, "job", {}, true, "the owner's"},
                     {"other", "protect", CostKind::fee, "Fuel", 1, "job", units::Money::of_coins(1), false, ""}};
  const auto all = estimate::checklist(job, estimate::estimate(job, takeoff_of({})));
  EXPECT_EQ(point(all, "permit").answer, Answer::line);
  EXPECT_EQ(point(all, "permit").amount.coins(), 42000);
  EXPECT_EQ(point(all, "toilet").answer, Answer::nothing);
  EXPECT_EQ(point(all, "fuel").answer, Answer::open);
}

}  // namespace
