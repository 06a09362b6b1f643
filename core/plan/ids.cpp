#include <algorithm>
#include <set>

#include "plan/edits.h"

namespace plan {

namespace {

struct Letter {
  const char* operator()(const PavedArea&) const { return "A"; }
  const char* operator()(const Pool&) const { return "P"; }
  const char* operator()(const Wall&) const { return "W"; }
  const char* operator()(const Steps&) const { return "S"; }
  const char* operator()(const Building&) const { return "B"; }
  const char* operator()(const KeepOut&) const { return "N"; }
  const char* operator()(const EdgeRun&) const { return "K"; }
  const char* operator()(const DrainRun&) const { return "D"; }
  const char* operator()(const Level&) const { return "L"; }
  const char* operator()(const Feature&) const { return "F"; }
  const char* operator()(const Removal&) const { return "R"; }
  const char* operator()(const SiteMark&) const { return "M"; }
  const char* operator()(const Protection&) const { return "T"; }
  const char* operator()(const Note&) const { return "note"; }
  const char* operator()(const Dimension&) const { return "dim"; }
  const char* operator()(const SitePlan&) const { return "plan"; }
  const char* operator()(const LevelBook&) const { return "LB"; }
  const char* operator()(const BaseLine&) const { return "BL"; }
  const char* operator()(const TapeBook&) const { return "TB"; }
};

}  // namespace

ElementId free_id(const Job& job, const Kind& kind) {
  const std::string letter = std::visit(Letter{}, kind);
  std::set<ElementId> taken;
  for (const ElementPtr& element : job.elements) taken.insert(element->id);
  int number = 1;
  while (taken.contains(letter + std::to_string(number))) ++number;
  return letter + std::to_string(number);
}

std::pair<Job, std::vector<ElementId>> with_copies(const Job& job, const std::vector<ElementId>& ids,
                                                   geometry::Vec by) {
  Job after = job;
  std::vector<ElementId> made;
  for (const ElementId& id : ids) {
    const Element* element = job.find(id);
    if (element == nullptr) continue;
    Element copy = moved(*element, by);
    copy.id = free_id(after, copy.kind);
    made.push_back(copy.id);
    after = with(after, std::move(copy));
  }
  return {std::move(after), std::move(made)};
}

}  // namespace plan
