// What a change order must say before it can be signed.
#include <chrono>

#include "estimate/change_lines.h"

namespace estimate {

using problem::Problem;
using problem::Severity;

namespace {

// 2026-11-28, and a day that there is.
bool is_date(std::string_view text) {
  if (text.size() != 10 || text[4] != '-' || text[7] != '-') return false;
  const auto number = [&](std::size_t from, std::size_t count) {
    int value = 0;
    for (const char digit : text.substr(from, count)) {
      if (digit < '0' || digit > '9') return -1;
      value = value * 10 + (digit - '0');
    }
    return value;
  };
  const int year = number(0, 4), month = number(5, 2), day = number(8, 2);
  if (year < 1 || month < 1 || day < 1) return false;
  return std::chrono::year_month_day(std::chrono::year(year), std::chrono::month(static_cast<unsigned>(month)),
                                     std::chrono::day(static_cast<unsigned>(day)))
      .ok();
}

}  // namespace

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
