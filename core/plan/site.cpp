#include "plan/site.h"

#include "plan/footprint.h"
#include "plan/net.h"
#include "plan/stretch.h"

namespace plan {

const Ground* Site::find(const ElementId& id) const {
  for (const auto& ground : grounds)
    if (ground->element->id == id) return ground.get();
  return nullptr;
}

const Ground* Site::find(std::uint64_t mark) const {
  for (const auto& ground : grounds)
    if (plan::mark(ground->element->id) == mark) return ground.get();
  return nullptr;
}

Site site(const Job& job) {
  Site made;
  std::vector<Ground> grounds;
  grounds.reserve(job.elements.size());
  for (const ElementPtr& element : job.elements) grounds.push_back(footprint(job, element, made.problems));
  cut(grounds, made.problems);
  meet(grounds, job.choices.reach);
  made.grounds.reserve(grounds.size());
  for (Ground& ground : grounds) made.grounds.push_back(std::make_shared<const Ground>(std::move(ground)));
  return made;
}

}  // namespace plan
