// The list of the site visit: what each kind of job asks for, and what answers it.
#include "estimate/visit.h"

#include <algorithm>
#include <set>

#include "estimate/estimate_kit.h"

namespace {

using namespace estimate_kit;
using estimate::VisitPoint;
using Answer = VisitPoint::Answer;

plan::Job job_of(std::vector<plan::Kind> kinds) {
  plan::Job job = starter_job();
  int count = 0;
  for (plan::Kind& kind : kinds) job = plan::with(job, {"E" + std::to_string(++count), "", std::move(kind)});
  return job;
}

const VisitPoint* found(const std::vector<VisitPoint>& all, const std::string& code) {
  const auto at = std::ranges::find(all, code, &VisitPoint::code);
  return at == all.end() ? nullptr : &*at;
}

Answer answer(const plan::Job& job, const std::string& code) {
  const auto all = estimate::visit_list(job);
  const VisitPoint* point = found(all, code);
  EXPECT_TRUE(point) << code;
  return point ? point->answer : Answer::open;
}

TEST(Visit, CodesDifferAndEachPointAsksAndAssumes) {
  const auto codes = estimate::visit_codes();
  EXPECT_EQ(std::set<std::string>(codes.begin(), codes.end()).size(), codes.size());
  const auto all = estimate::visit_list(starter_job());
  EXPECT_EQ(all.size(), codes.size()) << "before anything is drawn the whole list is asked";
  for (const VisitPoint& point : all) {
    EXPECT_TRUE(point.question.ends_with('?')) << point.code;
    EXPECT_TRUE(point.assumption.ends_with('.')) << point.code;
    EXPECT_FALSE(point.jobs.empty()) << point.code;
    EXPECT_EQ(point.answer, Answer::open) << point.code;
  }
}

// Each point by a plan that calls for it and one that does not.
TEST(Visit, GoesByWhatTheJobHas) {
  plan::DrainRun pipe;
  pipe.what = "pipe";
  plan::Removal stays;
  stays.fate = "leave";
  plan::Removal goes;
  goes.fate = "haul";
  const plan::Job deck = job_of({plan::PavedArea()});
  const plan::Job basin = job_of({plan::Pool()});
  const plan::Job bank = job_of({plan::Wall()});
  const plan::Job flight = job_of({plan::Steps()});
  const plan::Job drained = job_of({pipe});
  const plan::Job old = job_of({goes});
  const plan::Job home = job_of({plan::PavedArea(), plan::Building()});
  const struct {
    const char* code;
    const plan::Job& has;
    const plan::Job& has_not;
  } rows[] = {{"services", deck, job_of({plan::Feature()})},
              {"septic", deck, old},
              {"well", drained, old},
              {"trees", bank, old},
              {"downspouts", deck, bank},
              {"house-levels", home, deck},
              {"soil", flight, old},
              {"wet", basin, old},
              {"pool-kind", basin, deck},
              {"pool-beam", basin, bank},
              {"pool-skimmers", basin, deck},
              {"pool-barrier", basin, deck},
              {"wall-load", bank, basin},
              {"wall-outlet", drained, deck},
              {"steps-ends", flight, deck},
              {"old-work", job_of({stays}), deck}};
  for (const auto& row : rows) {
    EXPECT_TRUE(found(estimate::visit_list(row.has), row.code)) << row.code;
    EXPECT_FALSE(found(estimate::visit_list(row.has_not), row.code)) << row.code;
  }
  for (const char* code : {"gate", "path", "drop-spot", "parking", "neighbours", "overhead", "power-water", "lot-line",
                           "setbacks", "easements"})
    for (const plan::Job* job : {&deck, &basin, &bank, &flight, &drained, &old})
      EXPECT_TRUE(found(estimate::visit_list(*job), code)) << code;
}

TEST(Visit, AWallThatStandsAlreadyAsksNothing) {
  plan::Wall stands;
  stands.existing = true;
  EXPECT_FALSE(found(estimate::visit_list(job_of({plan::Removal(), stands})), "wall-load"));
}

TEST(Visit, ThePlanAnswersWhatItShows) {
  plan::SiteMark gate;
  gate.what = "gate";
  EXPECT_EQ(answer(job_of({plan::PavedArea(), gate}), "gate"), Answer::open) << "a gate without a width";
  gate.width = units::Length::inches(40);
  EXPECT_EQ(answer(job_of({plan::PavedArea(), gate}), "gate"), Answer::shown);
  plan::KeepOut tree;
  tree.what = "tree";
  EXPECT_EQ(answer(job_of({plan::PavedArea(), tree}), "trees"), Answer::shown);
  plan::Building house;
  EXPECT_EQ(answer(job_of({plan::PavedArea(), house}), "house-levels"), Answer::open);
  house.weep = units::Length::feet(101);
  EXPECT_EQ(answer(job_of({plan::PavedArea(), house}), "house-levels"), Answer::shown);
  EXPECT_EQ(answer(job_of({plan::PavedArea(), house, plan::Building()}), "house-levels"), Answer::open) << "one of two";
}

TEST(Visit, TheLatestAnswerStands) {
  plan::Job job = job_of({plan::PavedArea()});
  job.visit = {{"soil", "clay", "2026-11-20", "photo"},
               {"soil", "clay over rock", "2026-11-22", ""},
               {"soil", "guessed", "2026-11-01", ""},
               {"soil", "  ", "2026-11-28", "later photo"}};
  const auto all = estimate::visit_list(job);
  const VisitPoint* soil = found(all, "soil");
  ASSERT_TRUE(soil);
  EXPECT_EQ(soil->answer, Answer::said);
  EXPECT_EQ(soil->text, "clay over rock");
  EXPECT_EQ(soil->when, "2026-11-22");
  job.visit = {{"soil", " ", "2026-11-28", "photo"}};
  EXPECT_EQ(answer(job, "soil"), Answer::open);
}

TEST(Visit, AnAnswerOutlivesWhatItWasAbout) {
  plan::Job job = job_of({plan::PavedArea()});
  job.visit = {{"pool-kind", "one-piece shell", "2026-11-20", ""}, {"unheard-of", "yes", "", ""}};
  const auto all = estimate::visit_list(job);
  ASSERT_TRUE(found(all, "pool-kind"));
  EXPECT_FALSE(found(all, "pool-kind")->called_for);
  EXPECT_TRUE(found(all, "soil")->called_for);
  EXPECT_FALSE(found(all, "unheard-of"));
}

// What is entered on the site takes the place of the entry that stands, and of no other.
TEST(Visit, AnAnswerIsChangedInItsPlace) {
  plan::Job job = job_of({plan::PavedArea()});
  EXPECT_EQ(estimate::entry_of(job, "soil"), nullptr);
  job = estimate::answered(job, {"soil", "clay", "2026-11-20", ""});
  job = estimate::answered(job, {"gate", "", "2026-11-20", "sha/gate.jpg"});  // a photo alone is an entry, no answer
  ASSERT_EQ(job.visit.size(), 2u);
  EXPECT_EQ(answer(job, "gate"), Answer::open);
  EXPECT_EQ(estimate::entry_of(job, "gate")->photo, "sha/gate.jpg");
  job.visit.push_back({"soil", "rock", "2026-11-10", ""});  // older
  job = estimate::answered(job, {"soil", "clay, wet", "2026-11-21", ""});
  ASSERT_EQ(job.visit.size(), 3u);
  EXPECT_EQ(job.visit[0], (plan::VisitAnswer{"soil", "clay, wet", "2026-11-21", ""}));
  EXPECT_EQ(job.visit[2].answer, "rock");
  job = estimate::answered(job, {"soil", " ", "2026-11-21", ""});  // taken back: what was said before stands again
  EXPECT_EQ(estimate::entry_of(job, "soil")->answer, "rock");
  EXPECT_EQ(estimate::answered(job, {"wet", "", "2026-11-21", ""}).visit, job.visit) << "nothing said is nothing kept";
}

}  // namespace
