// Undo and redo: a list of job values, each with the name of the edit that made it.
#pragma once

#include <memory>
#include <string>
#include <vector>

#include "plan/job.h"

namespace plan {

class History {
 public:
  explicit History(std::shared_ptr<const Job> first);

  const std::shared_ptr<const Job>& now() const { return steps_[at_].job; }
  // Keeps `after` as the newest step and drops what could be redone; an edit that changes nothing is no step.
  void record(std::shared_ptr<const Job> after, std::string edit);
  bool can_undo() const { return at_ > 0; }
  bool can_redo() const { return at_ + 1 < steps_.size(); }
  void undo();  // nothing happens where nothing can be undone; redo alike
  void redo();
  const std::string& undo_name() const;  // of the edit that undo takes back; empty where there is none
  const std::string& redo_name() const;

 private:
  struct Step {
    std::shared_ptr<const Job> job;
    std::string edit;
  };
  std::vector<Step> steps_;
  std::size_t at_ = 0;
};

}  // namespace plan
