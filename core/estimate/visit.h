// What is looked at on the site visit: a list by what the job has. What nobody looked at is an assumption of the quote.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "estimate/work.h"

namespace estimate {

// Stands with every word about buried services.
inline constexpr const char* locating_caution =
    "Before any digging the locating service is called and its marks are waited for; local law says how near to a mark "
    "is dug by hand.";

struct VisitPoint {
  std::string code;  // stable: gate, path, soil ...
  std::string question;
  // Which jobs it is for: "always", or kinds of estimate/work.h, any of which is enough ("wall steps").
  std::string jobs;
  // open: nobody knows; said: the visit has an answer; shown: the plan itself shows it (a gate with its width, a tree,
  // a lot line ...).
  enum class Answer { open, said, shown };
  Answer answer = Answer::open;
  std::string text;  // what was said, when, and the photo with it: of the latest entry with an answer
  std::string when;
  std::string photo;
  std::string assumption;  // what the quote takes for granted while the point is open; never empty
  std::string caution;     // where someone can be hurt: what local code and licensed practice decide
  bool called_for = true;  // false: answered before, and the plan no longer has what it is about
};

// In a fixed order: the way in, what lies there, the ground, the house, the kind of job. Only the points that the plan
// calls for, all of them while nothing is built on it (who visits first and draws later needs the whole list), and
// those that have an answer. An answer of blanks is none; a photo alone is none either. Answers to points that the list
// has not are of no use to it and stay in the job.
std::vector<VisitPoint> visit_list(const plan::Job& job);

// The job's entry of a point that is meant when it is answered: the latest with an answer, else the last one entered;
// null where there is none.
const plan::VisitAnswer* entry_of(const plan::Job& job, std::string_view point);
// The job with that entry replaced by this one, or with it added. One with neither answer nor photo is taken out.
plan::Job answered(const plan::Job& job, const plan::VisitAnswer& entry);

// The codes of all points, whatever the job.
std::vector<std::string> visit_codes();

}  // namespace estimate
