#include "ui/panels/stage_model.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

#include "estimate/labour.h"
#include "ui/words/words.h"

namespace ui {

namespace {

struct StageWords {
  Q_DECLARE_TR_FUNCTIONS(Stage)
};

const plan::LookedAt* look(const plan::Job& job, const std::string& stage, const std::string& look_at) {
  const auto known = std::ranges::find_if(
      job.looked_at, [&](const plan::LookedAt& seen) { return seen.stage == stage && seen.look_at == look_at; });
  return known == job.looked_at.end() ? nullptr : &*known;
}

double hours_of(const results::Results& results, takeoff::Stage stage) {
  const auto known = results.estimate.stages.find(stage);
  return known == results.estimate.stages.end() ? 0 : known->second.hours;
}

HoldRow hold_row(const catalogue::HoldPoint& point, const plan::Job& job, takeoff::Stage stage) {
  HoldRow row{point.look_at,
              said(point.look_at),
              said(point.limit),
              said(point.before),
              said(point.who),
              said(point.source),
              false,
              {},
              {}};
  if (const plan::LookedAt* seen = look(job, takeoff::word(stage), point.look_at)) {
    row.seen = true;
    row.seen_by = QString::fromStdString(seen->who);
    row.seen_when = QString::fromStdString(seen->when);
  }
  return row;
}

}  // namespace

StageSaid stage_said(const results::Results& results, const plan::Job& job, takeoff::Stage stage) {
  StageSaid made;
  made.number = static_cast<int>(stage) + 1;
  made.title = said(takeoff::title(stage));
  made.hours = hours_of(results, stage);
  const std::vector<takeoff::Stage> covered = takeoff::covers(stage);
  for (const takeoff::StageNotes& notes : results.takeoff.stages) {
    const bool under = std::ranges::find(covered, notes.stage) != covered.end();
    for (const catalogue::HoldPoint& point : notes.hold_points) {
      if (notes.stage == stage) made.holds.push_back(hold_row(point, job, stage));
      if (under && !look(job, takeoff::word(notes.stage), point.look_at))
        made.covers_unseen.push_back(said(point.look_at));
    }
    if (notes.stage != stage) continue;
    for (const catalogue::Caution& caution : notes.cautions)
      made.cautions.push_back({said(caution.text), said(caution.who), said(caution.source)});
  }
  return made;
}

QString days_of(const results::Results& results, takeoff::Stage stage) {
  double before = 0;
  for (const auto& [each, total] : results.estimate.stages)
    if (each < stage) before += total.hours;
  const plan::Choices& choices = results.job->choices;
  const double own = hours_of(results, stage);
  const double from = estimate::crew_days(before, choices.crew, choices.day_hours);
  const double to = estimate::crew_days(before + own, choices.crew, choices.day_hours);
  if (!(to > from)) return {};
  const int first = static_cast<int>(std::floor(from + 1e-9)) + 1;
  const int last = std::max(first, static_cast<int>(std::ceil(to - 1e-9)));
  return first == last ? StageWords::tr("day %1").arg(first) : StageWords::tr("days %1 to %2").arg(first).arg(last);
}

plan::Job with_look(const plan::Job& job, takeoff::Stage stage, const std::string& look_at, const std::string& who,
                    const std::string& when) {
  plan::Job after = without_look(job, stage, look_at);
  after.looked_at.push_back({takeoff::word(stage), look_at, who, when});
  return after;
}

plan::Job without_look(const plan::Job& job, takeoff::Stage stage, const std::string& look_at) {
  plan::Job after = job;
  std::erase_if(after.looked_at, [&](const plan::LookedAt& seen) {
    return seen.stage == takeoff::word(stage) && seen.look_at == look_at;
  });
  return after;
}

}  // namespace ui
