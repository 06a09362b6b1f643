// Exclusions and assumptions: what a quote says beside its price, written from the plan, then edited by the office.
#pragma once

#include <string>
#include <vector>

#include "problem/problem.h"
#include "takeoff/takeoff.h"

namespace estimate {

struct Sentence {
  // as_written: as the plan calls for it; changed: called for, in the office's words; own: the office's alone;
  // no_longer: edited by the office, and the plan has no call for it any more: kept and shown as such, for a person to
  // take out; twice: an edit of a code that a later entry edits again: that one holds.
  enum class State { as_written, changed, own, no_longer, twice };
  std::string code;  // stable; of an unanswered point of the visit: visit-<its code>
  plan::Statement::What what = plan::Statement::What::exclusion;
  State state = State::as_written;
  std::string text;     // as it stands now
  std::string written;  // as the program writes it; empty for own ones and where the plan has no call for it
  std::string pattern;  // of `written`, with %1 for `value`: for other languages
  std::string value;
  std::string rule;     // why it is called for, in words
  std::string caution;  // stands after the text whatever the office writes: where someone can be hurt it defers to
                        // local code and licensed practice
  bool struck = false;  // still listed, with the reason
  std::string why;
};

// Those that the plan calls for (exclusions, assumptions, open points of the visit: a fixed order), then edits that it
// no longer calls for, then own ones as entered. A plan on which nothing is built calls for none. Only the base counts,
// not what the options would add. A thing counts as priced where the takeoff has its item, or the offer an added line
// of its code with a price: one that is nothing on purpose leaves it out of the price, and the sentence stands.
std::vector<Sentence> statements(const plan::Job& job, const takeoff::Takeoff& takeoff);

// What is odd in the edits: a sentence struck out without a reason and an own one without text (problem), one struck
// out that has a caution (flag: the hazard is still there), one of no more call, one entered twice (notice). Each names
// its code.
std::vector<problem::Problem> statement_problems(const std::vector<Sentence>& sentences);

// The codes that the plan may call for, visit-... included.
std::vector<std::string> statement_codes();

// The job with this edit in place of the one of its code, else added at the end.
plan::Job with_statement(plan::Job job, plan::Statement edit);
// The job without edits of this code: as the program writes it; an own one is gone.
plan::Job without_statement(plan::Job job, const std::string& code);

}  // namespace estimate
