// The whole takeoff of a site: each trade is asked, in the order of building.
#pragma once

#include <map>
#include <memory>

#include "plan/site.h"
#include "takeoff/line.h"
#include "takeoff/paving/layout.h"
#include "takeoff/walls/courses.h"

namespace takeoff {

struct Takeoff {
  std::vector<Measures> measures;  // one per element, in the job's order
  std::vector<Line> lines;         // by stage, then in the order of the elements
  std::vector<Task> tasks;
  std::vector<StageNotes> stages;
  std::vector<Check> checks;               // preliminary, in the job's order
  std::vector<Cut> cuts;                   // of blocks, caps and steps, as the saw meets them
  std::vector<problem::Problem> problems;  // the site's and the trades'
  std::map<plan::ElementId, std::shared_ptr<const paving::Layout>> layouts;
};

// What one takeoff leaves for the next of the same job, edited: never read for anything but what would come out the
// same.
struct Memory {
  std::map<plan::ElementId, std::shared_ptr<const walls::Courses>> courses;  // of the walls of the last takeoff
};

Takeoff takeoff(const plan::Job& job, const plan::Site& site);
Takeoff takeoff(const plan::Job& job, const plan::Site& site, Memory& memory);

}  // namespace takeoff
