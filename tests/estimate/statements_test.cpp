// Exclusions and assumptions: each rule by a small plan that calls for it and one that does not; the office's edits.
#include "estimate/statements.h"

#include <algorithm>
#include <set>

#include "estimate/estimate_kit.h"
#include "files/files.h"

namespace {

using namespace estimate_kit;
using State = estimate::Sentence::State;
using What = plan::Statement::What;
using estimate::Sentence;
using takeoff::Stage;

plan::Job job_of(std::vector<plan::Kind> kinds) {
  plan::Job job = starter_job();
  int count = 0;
  for (plan::Kind& kind : kinds)
    job = plan::with(job, {"E" + std::to_string(++count), "thing " + std::to_string(count), std::move(kind)});
  return job;
}
plan::Kind mark(const char* what) {
  plan::SiteMark made;
  made.what = what;
  return made;
}
plan::Kind light() {
  plan::Feature made;
  made.item = "light-path";
  return made;
}
plan::Kind pipe() {
  plan::DrainRun made;
  made.what = "pipe";
  return made;
}
plan::Kind ground() {
  plan::Level made;
  made.what = "existing";
  made.height = units::Length::feet(100);
  return made;
}
plan::Kind removed(const char* fate) {
  plan::Removal made;
  made.what = "concrete";
  made.fate = fate;
  return made;
}
plan::Job with_line(plan::Job job, const char* code, bool nothing = false) {
  const auto price = nothing ? units::Money() : units::Money::of_coins(100);
  job.offer.lines.push_back({code, "protect", plan::CostKind::fee, code, 1, "job", price, nothing, ""});
  return job;
}
takeoff::Takeoff saying(const char* code, problem::Severity severity = problem::Severity::flag) {
  takeoff::Takeoff made;
  made.problems.push_back({severity, code, "said", "mend", {"E1", {}, 0, 0, {}}});
  return made;
}
takeoff::Takeoff needing(std::vector<std::string> items, bool approximate = false) {
  takeoff::Takeoff made;
  for (const std::string& item : items) {
    made.lines.push_back(line(Stage::dig, item, amount(2.2, units::piece)));
    made.lines.back().approximate = approximate;
  }
  return made;
}

const Sentence* found(const std::vector<Sentence>& all, const std::string& code) {
  const auto at = std::ranges::find(all, code, &Sentence::code);
  return at == all.end() ? nullptr : &*at;
}
bool calls(const plan::Job& job, const std::string& code, const takeoff::Takeoff& made = {}) {
  return found(estimate::statements(job, made), code) != nullptr;
}

const plan::PavedArea paving;
const plan::Pool pool;
const plan::Wall wall;

TEST(Statements, NothingBuiltCallsForNone) {
  EXPECT_TRUE(estimate::statements(starter_job(), {}).empty());
  EXPECT_TRUE(estimate::statements(job_of({mark("lot-line"), plan::Building()}), {}).empty());
}

TEST(Statements, CodesDiffer) {
  const auto codes = estimate::statement_codes();
  EXPECT_EQ(std::set<std::string>(codes.begin(), codes.end()).size(), codes.size());
}

TEST(Statements, APool) {
  const plan::Job only = job_of({pool});
  const plan::Job none = job_of({paving});
  for (const char* code : {"no-barrier", "no-bonding", "no-electrician", "no-shell", "pool-to-measure"}) {
    EXPECT_TRUE(calls(only, code)) << code;
    EXPECT_FALSE(calls(none, code)) << code;
  }
  EXPECT_FALSE(calls(job_of({pool, mark("barrier")}), "no-barrier"));
  EXPECT_TRUE(calls(job_of({pool, mark("barrier")}), "barrier-stands"));
  EXPECT_FALSE(calls(only, "barrier-stands"));
  EXPECT_FALSE(calls(with_line(only, "barrier"), "no-barrier"));
  EXPECT_FALSE(calls(with_line(only, "bonding"), "no-bonding"));
  EXPECT_FALSE(calls(only, "no-electrician", needing({"light-allow"})));
  plan::Pool built;
  built.bonding.emplace();
  built.as_built = true;
  EXPECT_FALSE(calls(job_of({built}), "no-bonding"));
  EXPECT_FALSE(calls(job_of({built}), "pool-to-measure"));
  EXPECT_TRUE(calls(job_of({light()}), "no-electrician"));
}

TEST(Statements, RailsWhereTheTakeoffSawADrop) {
  const plan::Job job = job_of({paving});
  for (const char* code : {"edge-guard", "steps-guard", "wall-guard"}) {
    const auto all = estimate::statements(job, saying(code));
    ASSERT_TRUE(found(all, "no-rail")) << code;
    EXPECT_EQ(found(all, "no-rail")->value, "thing 1");
    EXPECT_NE(found(all, "no-rail")->caution.find("Local code"), std::string::npos);
  }
  EXPECT_FALSE(calls(job, "no-rail"));
  EXPECT_FALSE(calls(with_line(job, "rail"), "no-rail", saying("edge-guard")));
  EXPECT_TRUE(calls(job, "no-handrail", saying("steps-handrail")));
  EXPECT_FALSE(calls(job, "no-handrail", saying("steps-guard")));
  EXPECT_TRUE(calls(job, "on-backfill", saying("deck-on-backfill")));
  EXPECT_FALSE(calls(job, "on-backfill"));
  EXPECT_TRUE(calls(job, "not-counted", saying("no-price", problem::Severity::problem)));
  EXPECT_FALSE(calls(job, "not-counted", saying("no-price")));
}

TEST(Statements, WhatIsNotDrawn) {
  const plan::Job bare = job_of({paving});
  EXPECT_TRUE(calls(bare, "no-lighting"));
  EXPECT_FALSE(calls(job_of({paving, light()}), "no-lighting"));
  EXPECT_TRUE(calls(bare, "no-drainage"));
  EXPECT_FALSE(calls(job_of({paving, pipe()}), "no-drainage"));
  EXPECT_TRUE(calls(bare, "no-protection"));
  EXPECT_FALSE(calls(job_of({paving, plan::Protection()}), "no-protection"));
  EXPECT_TRUE(calls(bare, "services-unmarked"));
  EXPECT_FALSE(calls(bare, "services-as-marked"));
  EXPECT_FALSE(calls(job_of({paving, mark("buried-service")}), "services-unmarked"));
  EXPECT_TRUE(calls(job_of({paving, mark("buried-service")}), "services-as-marked"));
  EXPECT_TRUE(calls(bare, "no-levels"));
  EXPECT_FALSE(calls(job_of({paving, ground()}), "no-levels"));
  EXPECT_FALSE(calls(bare, "slab-stays"));
  EXPECT_TRUE(calls(job_of({paving, removed("leave")}), "slab-stays"));
}

TEST(Statements, WhatHasNoPrice) {
  const plan::Job job = job_of({wall});
  for (const auto& [code, line] : std::map<std::string, const char*>{{"no-permit", "permit"},
                                                                     {"no-engineer", "engineer"},
                                                                     {"no-irrigation", "irrigation"},
                                                                     {"no-irrigation-repair", "irrigation-repair"},
                                                                     {"no-lawn-repair", "lawn-repair"}}) {
    EXPECT_TRUE(calls(job, code)) << code;
    EXPECT_TRUE(calls(with_line(job, line, true), code)) << code << ", nothing on purpose";
    EXPECT_FALSE(calls(with_line(job, line), code)) << code;
  }
  EXPECT_FALSE(calls(job, "no-permit", needing({"permit-allow"})));
  EXPECT_FALSE(calls(job_of({paving}), "no-engineer"));
  EXPECT_FALSE(calls(job_of({removed("haul")}), "no-lawn-repair"));
}

TEST(Statements, TheGround) {
  plan::Job job = job_of({paving});
  for (const char* code : {"rock", "soil-unknown"}) {
    EXPECT_TRUE(calls(job, code)) << code;
    EXPECT_FALSE(calls(job_of({removed("haul")}), code)) << code;
  }
  EXPECT_FALSE(calls(job, "spoil-reuse"));
  EXPECT_FALSE(calls(job, "soaks-away"));
  job.choices.soil.reusable = 0.4;
  job.choices.soil.source = "probe, invented";
  job.choices.infiltration_counts = true;
  job.offer.unit_prices.push_back({"rock", "Rock", "cu yd", 2, units::Money::of_coins(9000)});
  const auto all = estimate::statements(job, {});
  EXPECT_FALSE(found(all, "soil-unknown"));
  EXPECT_TRUE(found(all, "soil-as-given"));
  ASSERT_TRUE(found(all, "spoil-reuse"));
  EXPECT_TRUE(found(all, "spoil-reuse")->text.starts_with("40 % of what is dug"));
  EXPECT_NE(found(all, "rock")->text.find("unit prices of this quote"), std::string::npos);
  EXPECT_TRUE(found(all, "soaks-away"));
}

TEST(Statements, HaulAndAccess) {
  plan::Job job = job_of({paving});
  EXPECT_FALSE(calls(job, "haul"));
  EXPECT_FALSE(calls(job, "no-dump"));
  EXPECT_TRUE(calls(job, "no-haul", saying("haul-not-chosen")));
  EXPECT_FALSE(calls(job, "no-haul"));
  // Two lines of 2.2 loads: 4.4, so 5 loads come.
  const auto all = estimate::statements(job, needing({"truck-5", "truck-5"}));
  ASSERT_TRUE(found(all, "haul"));
  EXPECT_EQ(found(all, "haul")->value, "5 loads of Dump truck, 5 ton");
  EXPECT_TRUE(found(all, "no-dump"));
  EXPECT_FALSE(calls(job, "no-dump", needing({"truck-5", "disposal-soil"})));
  EXPECT_FALSE(calls(job, "allowances", needing({"agg-no57"})));
  EXPECT_TRUE(calls(job, "allowances", needing({"agg-no57"}, true)));
  EXPECT_NE(found(all, "access")->text.find("machines"), std::string::npos);
  job.choices.access = "hand";
  EXPECT_NE(found(estimate::statements(job, {}), "access")->text.find("barrows"), std::string::npos);
}

TEST(Statements, OpenPointsOfTheVisitAreAssumptions) {
  plan::Job job = job_of({paving});
  EXPECT_TRUE(calls(job, "visit-wet"));
  EXPECT_FALSE(calls(job, "visit-soil")) << "soil-unknown says it";
  EXPECT_FALSE(calls(job, "visit-gate")) << "access says it";
  EXPECT_FALSE(calls(job, "visit-wall-load"));
  job.visit.push_back({"wet", "dry, sand", "2026-11-20", ""});
  EXPECT_FALSE(calls(job, "visit-wet"));
}

TEST(Statements, EditsChangeAndStrike) {
  plan::Job job = job_of({paving});
  const auto before = estimate::statements(job, {});
  job = estimate::with_statement(job,
                                 {"no-lighting", What::assumption, "The owner's brother does the lights.", false, ""});
  job = estimate::with_statement(job, {"no-permit", What::exclusion, "", true, "the town wants none"});
  const auto all = estimate::statements(job, {});
  EXPECT_EQ(all.size(), before.size());
  const Sentence* changed = found(all, "no-lighting");
  EXPECT_EQ(changed->state, State::changed);
  EXPECT_EQ(changed->text, "The owner's brother does the lights.");
  EXPECT_EQ(changed->written, "No lighting is in the price.");
  EXPECT_EQ(changed->what, What::exclusion) << "the program knows which it is";
  const Sentence* struck = found(all, "no-permit");
  EXPECT_TRUE(struck->struck);
  EXPECT_EQ(struck->why, "the town wants none");
  EXPECT_EQ(struck->text, found(before, "no-permit")->text);
  EXPECT_FALSE(struck->caution.empty()) << "the caution stands whatever is edited";
  job = estimate::without_statement(job, "no-permit");
  EXPECT_FALSE(found(estimate::statements(job, {}), "no-permit")->struck);
}

TEST(Statements, AnEditOfNoMoreCallIsKept) {
  plan::Job job = job_of({pool});
  job = estimate::with_statement(job, {"no-barrier", What::exclusion, "The fence is the owner's.", false, ""});
  job = estimate::with_statement(job, {"visit-pool-kind", What::assumption, "", true, "seen"});
  job = plan::with(plan::without(job, "E1"), {"A", "", paving});
  const auto all = estimate::statements(job, {});
  ASSERT_TRUE(found(all, "no-barrier"));
  EXPECT_EQ(found(all, "no-barrier")->state, State::no_longer);
  EXPECT_EQ(found(all, "no-barrier")->text, "The fence is the owner's.");
  ASSERT_TRUE(found(all, "visit-pool-kind"));
  EXPECT_FALSE(found(all, "visit-pool-kind")->text.empty());
  EXPECT_EQ(found(all, "visit-pool-kind")->what, What::assumption);
}

TEST(Statements, OwnOnesComeLastAndATwiceEditedOneIsSaid) {
  plan::Job job = job_of({paving});
  job.offer.statements = {{"own-1", What::exclusion, "No snow is cleared.", false, ""},
                          {"no-permit", What::exclusion, "first", false, ""},
                          {"no-permit", What::exclusion, "second", false, ""},
                          {"own-2", What::assumption, "", true, ""}};
  const auto all = estimate::statements(job, {});
  ASSERT_GE(all.size(), 3U);
  EXPECT_EQ(all.back().code, "own-2");
  EXPECT_EQ(all[all.size() - 2].text, "No snow is cleared.");
  EXPECT_EQ(all[all.size() - 3].state, State::twice);
  EXPECT_EQ(all[all.size() - 3].text, "first");
  EXPECT_EQ(found(all, "no-permit")->text, "second");
  std::multiset<std::string> codes;
  for (const auto& one : estimate::statement_problems(all)) codes.insert(one.code);
  EXPECT_EQ(codes, (std::multiset<std::string>{"statement-twice", "statement-no-text", "statement-no-reason"}));
}

TEST(Statements, StrikingACautionIsFlagged) {
  plan::Job job = job_of({pool});
  job = estimate::with_statement(job, {"no-barrier", What::exclusion, "", true, "the owner asked"});
  const auto said = estimate::statement_problems(estimate::statements(job, {}));
  ASSERT_EQ(said.size(), 1U);
  EXPECT_EQ(said[0].code, "statement-caution-struck");
  EXPECT_EQ(said[0].severity, problem::Severity::flag);
}

TEST(Statements, WhereOneCanBeHurtTheSentenceDefers) {
  const auto all = estimate::statements(job_of({pool, paving, wall, plan::Steps(), light()}), saying("edge-guard"));
  for (const char* code : {"no-barrier", "no-rail", "no-bonding", "no-electrician", "no-engineer", "services-unmarked",
                           "soil-unknown", "visit-overhead", "visit-wet"}) {
    ASSERT_TRUE(found(all, code)) << code;
    const std::string& caution = found(all, code)->caution;
    EXPECT_TRUE(caution.contains("code") || caution.contains("law") || caution.contains("licensed") ||
                caution.contains("competent"))
        << code;
  }
}

// Read line by line against the plan: a pool without a barrier, lights, irrigation or permit; a wall without an
// engineer; bonding, pipes and removal are drawn, levels were taken, one cable, the gate and the drop spot are marked;
// half of the soil goes back.
TEST(Statements, TheDemoJobLineByLine) {
  const std::string path = std::string(HOUSE_ROOT) + "/demo-jobs/pool-terrace-a.json";
  const auto job = files::read_job(files::read_file(path).value_or(""), path);
  ASSERT_TRUE(job.has_value());
  std::vector<std::string> codes;
  const auto all = estimate::statements(*job, takeoff::takeoff(*job, plan::site(*job)));
  for (const Sentence& one : all) {
    if (one.code != "not-counted") codes.push_back(one.code);
    EXPECT_FALSE(one.text.contains("%1")) << one.text;
  }
  EXPECT_EQ(codes, (std::vector<std::string>{"no-barrier",
                                             "no-electrician",
                                             "no-lighting",
                                             "no-irrigation",
                                             "no-irrigation-repair",
                                             "no-permit",
                                             "no-engineer",
                                             "no-shell",
                                             "no-lawn-repair",
                                             "no-protection",
                                             "rock",
                                             "services-as-marked",
                                             "soil-as-given",
                                             "spoil-reuse",
                                             "haul",
                                             "access",
                                             "pool-to-measure",
                                             "on-backfill",
                                             "allowances",
                                             "visit-path",
                                             "visit-parking",
                                             "visit-neighbours",
                                             "visit-overhead",
                                             "visit-power-water",
                                             "visit-septic",
                                             "visit-well",
                                             "visit-lot-line",
                                             "visit-setbacks",
                                             "visit-easements",
                                             "visit-trees",
                                             "visit-downspouts",
                                             "visit-wet",
                                             "visit-pool-kind",
                                             "visit-pool-beam",
                                             "visit-pool-skimmers",
                                             "visit-wall-load",
                                             "visit-wall-outlet",
                                             "visit-steps-ends",
                                             "visit-old-work"}));
  EXPECT_TRUE(found(all, "spoil-reuse")->text.starts_with("50 %"));
  EXPECT_TRUE(estimate::statement_problems(all).empty());
}

}  // namespace
