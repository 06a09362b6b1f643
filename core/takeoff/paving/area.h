// A paved area laid: its border courses, the field inside them, the units in it.
#pragma once

#include <map>
#include <memory>
#include <vector>

#include "plan/site.h"
#include "takeoff/line.h"
#include "takeoff/paving/border.h"
#include "takeoff/paving/layout.h"
#include "takeoff/paving/offcuts.h"

namespace takeoff::paving {

struct LaidBorder {
  plan::BorderCourse course;
  double strip_area = 0;  // m2 of its ground, joint on the field side included
  double mid_length = 0;  // metres, of its middle line
  std::vector<RowMake> runs;
  std::int64_t units = 0;  // whole ones, cut ones included
  std::int64_t cut = 0;
  double joint_area = 0;     // m2: strip less units
  double curved_length = 0;  // metres of mid_length on arcs
};

struct LaidArea {
  const plan::Ground* ground = nullptr;
  std::vector<LaidBorder> borders;
  geometry::Region field;  // net less borders, less the joint to coping and others where the junction has one
  std::shared_ptr<const Layout> layout;  // null where nothing is chosen or there is a problem
  std::vector<problem::Problem> problems;
};

// The joint that a junction keeps clear of units between the net edge and the first unit comes from `junction_joint`.
LaidArea lay_area(const plan::Job& job, const plan::Site& site, const plan::Ground& ground);

// Units, cuts and labour: lines, tasks and measures of one laid area. One line per unit: whole ones, those bought for
// cuts under the job's choice of reuse, those of border courses. A taped area takes the field's units and hours in
// its proportion to the net area, shown in the working. Measures: field_area_m2, joint_share_percent (of the field as
// laid), units_whole, units_cut (pieces that are cut), units_from_offcuts (under the job's choice), bought_none and
// bought_area (units for cuts without reuse and with), cut_length_m (of the field), slivers, notched_pieces,
// units_by_area (field over the share of each unit in an endless field) and waste_share (bought over laid, less 1) as
// a cross-check of the trade's percentages, border_units, border_mid_m, border_area_m2; per item units_whole:ITEM,
// units_cut:ITEM, slivers:ITEM, border_units:ITEM.
Share paving(const plan::Job& job, const LaidArea& area);

// Reuse::job: what travels between areas saves units that paving() bought area by area. One line per item with the
// saving as a negative number of pieces, its working naming both counts; nothing under any other choice. Also a
// measure-free comparison: `bought_for_job` counts under Reuse::job whatever is chosen.
Share saved_between_areas(const plan::Job& job, const std::vector<const LaidArea*>& areas);
std::map<Id, Bought> bought_for_job(const plan::Job& job, const std::vector<const LaidArea*>& areas);

// The joint in metres that the junction table keeps between a stretch and the units: 0 where it names none, and where
// the joint is the area's own (filler `area`, a strip of fabric) and so lies within the module of the units that are
// cut there.
double junction_joint(const plan::Job& job, const plan::Ground& ground, const plan::Stretch& stretch);

}  // namespace takeoff::paving
