// What the panel of a stage says, as plain values.
#pragma once

#include <QString>
#include <optional>
#include <vector>

#include "results/results.h"

namespace ui {

// A hold point of the stage: what is looked at before it is covered up, and who saw it when.
struct HoldRow {
  bool operator==(const HoldRow&) const = default;
  std::string look_at;  // its key in the job
  QString what;
  QString limit;
  QString before;
  QString who;  // who is to look
  QString source;
  bool seen = false;
  QString seen_by;
  QString seen_when;
};
struct CautionRow {
  bool operator==(const CautionRow&) const = default;
  QString text;
  QString who;
  QString source;
};
struct StageSaid {
  bool operator==(const StageSaid&) const = default;
  int number = 1;
  QString title;
  double hours = 0;
  std::vector<HoldRow> holds;
  std::vector<CautionRow> cautions;
  // Of the stages that this one covers: what nobody has looked at yet.
  std::vector<QString> covers_unseen;
};
StageSaid stage_said(const results::Results& results, const plan::Job& job, takeoff::Stage stage);

// The working days that the stage takes of the whole, one after the other at the job's crew: "day 4", "days 4 to 6".
// Empty where the stage has no hours or the crew none.
QString days_of(const results::Results& results, takeoff::Stage stage);

// The hold point looked at by somebody on some day; looked at again, the newer stands. `without_look` takes it back.
plan::Job with_look(const plan::Job& job, takeoff::Stage stage, const std::string& look_at, const std::string& who,
                    const std::string& when);
plan::Job without_look(const plan::Job& job, takeoff::Stage stage, const std::string& look_at);

}  // namespace ui
