// What a change order must say before it can be signed.
#include "estimate/change_lines.h"
#include "estimate/date.h"

namespace estimate {

using problem::Problem;
using problem::Severity;

std::vector<Problem> missing(const ChangeInput& input) {
  std::vector<Problem> all;
  const auto say = [&](const char* code, std::string text, std::string mend) {
    all.push_back({Severity::problem, code, std::move(text), std::move(mend), {}});
  };
  if (!is_date(input.date)) say("change-date", "the change order has no date", "enter it as in 2026-11-28");
  if (input.asked_by.empty()) say("change-asked", "nobody asked for the change", "enter who did");
  if (input.cause.empty()) say("change-cause", "the change order does not say why", "say what happened or is wished");
  if (input.days != 0 && input.days_cause.empty())
    say("change-cause", "the change order does not say why it takes other days", "say what takes them");
  for (const std::string& stage : input.done)
    if (!takeoff::stage_of(stage))
      say("change-stage", "the stage '" + stage + "' is said to be done, and there is none",
          "choose one of the job's stages");
  return all;
}

}  // namespace estimate
