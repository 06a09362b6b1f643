// A paved area laid: its border courses, the field inside them, the units in it.
#pragma once

#include <memory>

#include "plan/site.h"
#include "takeoff/line.h"
#include "takeoff/paving/border.h"
#include "takeoff/paving/layout.h"
#include "takeoff/paving/offcuts.h"

namespace takeoff::paving {

struct LaidBorder {
  plan::BorderCourse course;
  geometry::Region strip;      // its ground, joint on the field side included
  double mid_length = 0;       // metres, of its middle line
  std::vector<RowMake> runs;
  std::int64_t units = 0;      // whole ones, cut ones included
  std::int64_t cut = 0;
  double joint_area = 0;       // m2: strip less units
  double curved_length = 0;    // metres of mid_length on arcs
};

struct LaidArea {
  const plan::Ground* ground = nullptr;
  std::vector<LaidBorder> borders;
  geometry::Region field;      // net less borders, less the joint to coping, building and others where the junction has one
  std::shared_ptr<const Layout> layout;  // null where nothing is chosen or there is a problem
  std::vector<problem::Problem> problems;
};

// The joint that a junction keeps clear of units between the net edge and the first unit comes from `junction_joint`.
LaidArea lay_area(const plan::Job& job, const plan::Site& site, const plan::Ground& ground);

// Units, cuts, bedding of labour: lines, tasks and measures of one laid area. Measures: units_whole, units_cut, units_from_offcuts,
// cut_length_m, slivers, field_area_m2, border_units, and per item units_whole:ITEM ...
Share paving(const plan::Job& job, const LaidArea& area);

// The joint in metres that the junction table keeps between a stretch and the units (0 where it names none).
double junction_joint(const plan::Job& job, const plan::Ground& ground, const plan::Stretch& stretch);

}  // namespace takeoff::paving
