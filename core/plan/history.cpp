#include "plan/history.h"

#include "problem/ensure.h"

namespace plan {

static const std::string no_name;

History::History(std::shared_ptr<const Job> first) {
  problem::ensure(first != nullptr, "a history begins with a job");
  steps_.push_back({std::move(first), {}});
}

void History::record(std::shared_ptr<const Job> after, std::string edit) {
  problem::ensure(after != nullptr, "an edit makes a job");
  if (same(*after, *now())) return;
  steps_.resize(at_ + 1);
  steps_.push_back({std::move(after), std::move(edit)});
  ++at_;
}

void History::undo() {
  if (can_undo()) --at_;
}

void History::redo() {
  if (can_redo()) ++at_;
}

const std::string& History::undo_name() const { return can_undo() ? steps_[at_].edit : no_name; }

const std::string& History::redo_name() const { return can_redo() ? steps_[at_ + 1].edit : no_name; }

}  // namespace plan
