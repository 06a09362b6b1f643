#include "estimate/statements.h"

#include <algorithm>
#include <ranges>

#include "estimate/statement_rows.h"
#include "estimate/visit.h"

namespace estimate {

using State = Sentence::State;
using What = plan::Statement::What;

bool Known::has_kind(std::string_view kind) const {
  return std::ranges::any_of(takeoff.lines, [this, kind](const takeoff::Line& line) {
    const catalogue::Item* item = job.catalogue->item(line.item);
    return item && item->kind == kind;
  });
}

bool Known::has_item(std::string_view item) const {
  return std::ranges::any_of(takeoff.lines, [item](const takeoff::Line& line) { return line.item == item; });
}

bool Known::added(std::string_view code) const {
  return std::ranges::any_of(job.offer.lines, [code](const plan::AddedLine& line) {
    return line.id == code && !line.nothing_on_purpose && line.quantity > 0 && line.unit_price > units::Money();
  });
}

// Without codes: at which it has no result.
std::string Known::said_at(std::string_view codes) const {
  const auto asked = [codes](const problem::Problem& one) {
    if (codes.empty()) return one.severity == problem::Severity::problem;
    return std::ranges::any_of(std::views::split(codes, ' '), [&one](const auto part) {
      return std::string_view(part.begin(), part.end()) == one.code;
    });
  };
  std::vector<std::string> names;
  for (const problem::Problem& one : takeoff.problems) {
    if (!asked(one)) continue;
    const plan::Element* element = job.find(one.place.element);
    std::string name = element && !element->name.empty() ? element->name : one.place.element;
    if (name.empty()) name = "the whole job";
    if (std::ranges::find(names, name) == names.end()) names.push_back(std::move(name));
  }
  std::string text;
  for (const std::string& name : names) text += (text.empty() ? "" : ", ") + name;
  return text;
}

namespace {

constexpr std::string_view visit_prefix = "visit-";

Sentence written(const StatementRow& row, const Known& known) {
  Sentence made;
  made.code = row.code;
  made.what = row.what;
  made.pattern = row.text;
  made.value = row.value ? row.value(known) : "";
  made.written = row.text;
  if (const std::size_t at = made.written.find("%1"); at != std::string::npos) made.written.replace(at, 2, made.value);
  made.text = made.written;
  made.rule = row.rule;
  made.caution = row.caution;
  return made;
}

Sentence written(const VisitPoint& point) {
  Sentence made;
  made.code = std::string(visit_prefix) + point.code;
  made.what = What::assumption;
  made.text = made.written = made.pattern = point.assumption;
  made.rule = "nobody has looked yet: " + point.question;
  made.caution = point.caution;
  return made;
}

std::vector<Sentence> called_for(const plan::Job& job, const takeoff::Takeoff& takeoff) {
  const Known known{job, takeoff, work(job)};
  std::vector<Sentence> all;
  if (!known.work.anything()) return all;
  std::vector<std::string_view> covered;
  for (const auto rows : {exclusion_rows(), assumption_rows()})
    for (const StatementRow& row : rows) {
      if (!row.when(known)) continue;
      all.push_back(written(row, known));
      covered.emplace_back(row.visit);
    }
  for (const VisitPoint& point : visit_list(job))
    if (point.answer == VisitPoint::Answer::open && std::ranges::find(covered, point.code) == covered.end())
      all.push_back(written(point));
  return all;
}

void apply(const plan::Statement& edit, Sentence& to) {
  if (!edit.text.empty() && edit.text != to.written) {
    to.text = edit.text;
    to.state = State::changed;
  }
  to.struck = edit.struck;
  to.why = edit.why;
}

Sentence alone(const plan::Statement& edit, State state) {
  Sentence made;
  made.code = edit.code;
  made.what = edit.what;
  made.state = state;
  made.text = edit.text;
  made.struck = edit.struck;
  made.why = edit.why;
  return made;
}

// The words of a code that the plan does not call for now: an edit without a text of its own must not stand there
// blank. %1 is what it was about then, and nobody knows it any more.
void with_its_words(Sentence& edit) {
  for (const auto rows : {exclusion_rows(), assumption_rows()})
    for (const StatementRow& row : rows) {
      if (edit.code != row.code) continue;
      edit.what = row.what;
      edit.rule = row.rule;
      edit.caution = row.caution;
      edit.pattern = row.text;
      if (!edit.text.empty()) return;
      edit.text = row.text;
      if (const std::size_t at = edit.text.find("%1"); at != std::string::npos) edit.text.replace(at, 2, "...");
    }
  for (const VisitPoint& point : visit_list(plan::Job{})) {
    if (edit.code != std::string(visit_prefix) + point.code) continue;
    edit.what = What::assumption;
    edit.rule = point.question;
    edit.caution = point.caution;
    edit.pattern = point.assumption;
    if (edit.text.empty()) edit.text = point.assumption;
  }
}

}  // namespace

std::vector<Sentence> statements(const plan::Job& job, const takeoff::Takeoff& takeoff) {
  std::vector<Sentence> all = called_for(job, takeoff);
  std::vector<Sentence> kept;
  std::vector<Sentence> own;
  const std::vector<std::string> codes = statement_codes();
  const std::vector<plan::Statement>& edits = job.offer.statements;
  for (auto edit = edits.begin(); edit != edits.end(); ++edit) {
    if (std::ranges::find(codes, edit->code) == codes.end()) {
      own.push_back(alone(*edit, State::own));
      continue;
    }
    const auto again =
        std::find_if(edit + 1, edits.end(), [edit](const auto& other) { return other.code == edit->code; });
    const auto found = std::ranges::find(all, edit->code, &Sentence::code);
    if (again == edits.end() && found != all.end()) {
      apply(*edit, *found);
      continue;
    }
    kept.push_back(alone(*edit, again == edits.end() ? State::no_longer : State::twice));
    with_its_words(kept.back());
  }
  std::ranges::move(kept, std::back_inserter(all));
  std::ranges::move(own, std::back_inserter(all));
  return all;
}

std::vector<std::string> statement_codes() {
  std::vector<std::string> codes;
  for (const auto rows : {exclusion_rows(), assumption_rows()})
    for (const StatementRow& row : rows) codes.emplace_back(row.code);
  for (const std::string& code : visit_codes()) codes.push_back(std::string(visit_prefix) + code);
  return codes;
}

std::vector<problem::Problem> statement_problems(const std::vector<Sentence>& sentences) {
  using problem::Severity;
  std::vector<problem::Problem> all;
  for (const Sentence& one : sentences) {
    const std::string name = "the sentence \"" + (one.text.empty() ? one.code : one.text) + "\"";
    const auto say = [&all](Severity severity, const char* code, std::string text, const char* mend) {
      all.push_back({severity, code, std::move(text), mend, {}});
    };
    if (one.state == State::twice) {
      say(Severity::notice, "statement-twice", name + " was edited twice: the later entry of " + one.code + " holds",
          "take the earlier one out");
      continue;
    }
    if (one.state == State::own && one.text.empty())
      say(Severity::problem, "statement-no-text", "a sentence of the quote has no text: " + one.code,
          "write it or take it out");
    if (one.struck && one.why.empty())
      say(Severity::problem, "statement-no-reason", name + " is struck out without a reason",
          "say why, or let it stand");
    if (one.state == State::no_longer)
      say(Severity::notice, "statement-no-longer", name + " is still on the quote; the plan no longer calls for it",
          "take it out, or let it stand on purpose");
    else if (one.struck && !one.caution.empty())
      say(Severity::flag, "statement-caution-struck", name + " is struck out, and what it warns of is still there",
          "the estimator decides; local code and licensed practice hold all the same");
  }
  return all;
}

plan::Job with_statement(plan::Job job, plan::Statement edit) {
  auto& all = job.offer.statements;
  const auto found = std::find_if(all.rbegin(), all.rend(), [&edit](const auto& one) { return one.code == edit.code; });
  if (found == all.rend())
    all.push_back(std::move(edit));
  else
    *found = std::move(edit);
  return job;
}

plan::Job without_statement(plan::Job job, const std::string& code) {
  std::erase_if(job.offer.statements, [&code](const plan::Statement& one) { return one.code == code; });
  return job;
}

}  // namespace estimate
