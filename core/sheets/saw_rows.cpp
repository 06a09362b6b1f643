// Border courses, copings and kerbs at the saw.
#include <cmath>

#include "sheets/saw_list.h"
#include "takeoff/edges/coping_kit.h"
#include "takeoff/paving/bordered.h"

namespace sheets {

namespace {

using takeoff::paving::RowMake;
using takeoff::paving::RowRun;

double thick(const catalogue::Item& item) { return item.height ? item.height->metres().si() : 0; }

// The runs as they are laid, ends square where a corner is butted; squares at corners are cut from one unit each.
void add_course(SawList& list, const takeoff::paving::LaidCourse& course, const catalogue::Item& item,
                const plan::ElementId& of) {
  std::vector<RowRun> runs;
  for (const auto& placed :
       takeoff::paving::placed_runs(course.line, course.from, course.rules.deep, geometry::Side::left))
    runs.push_back(placed.run);
  const auto made =
      takeoff::paving::at_corners(std::move(runs), course.corner, course.rules, course.course, course.line.closed());
  if (made.runs.size() != course.makes.size()) return;
  for (std::size_t i = 0; i < made.runs.size(); ++i)
    if (course.makes[i].pieces > 0)
      add_row(list,
              {&item, course.rules.piece, course.rules.deep, course.makes[i], made.runs[i].corner_before,
               made.runs[i].corner_after},
              of);
  if (course.rules.piece <= course.rules.deep + 1e-9) return;
  SawCut square;
  square.item = item.id;
  square.what = "across, square for a corner";
  square.least = square.most = by_fence(list.printed(), course.rules.deep);
  square.pieces = made.blocks;
  square.metres = made.blocks * course.rules.deep;
  square.thickness = thick(item);
  list.add(square, of, "");
}

// Whole units from the start of each straight, the last one cut to what is left; curves as the kerb's own rules say.
void add_kerb(SawList& list, const plan::Ground& ground, const plan::EdgeRun& kerb, const catalogue::Item& unit) {
  const plan::ElementId& of = ground.element->id;
  const geometry::Side outside = kerb.paving == geometry::Side::left ? geometry::Side::right : geometry::Side::left;
  for (const RowRun& run : takeoff::paving::row_runs(*ground.path, 0, unit.width->metres().si(), outside)) {
    const catalogue::Item* own =
        run.radius > 0 && !kerb.item_on_curves.empty() ? list.job().catalogue->item(kerb.item_on_curves) : &unit;
    if (!own || !own->length || !own->width) continue;
    const takeoff::paving::RowRules rules = takeoff::edges::kerb_rules(list.job(), *own);
    RowCuts row{own, rules.piece, rules.deep, {}, run.corner_before, run.corner_after};
    if (run.radius > 0) {
      std::vector<RowMake> ways = takeoff::paving::ways(run, rules);
      if (!rules.stock_radii.empty())
        std::erase_if(ways, [](const RowMake& make) { return make.how != RowMake::How::radius; });
      if (ways.empty()) continue;
      row.make = ways.front();
      add_row(list, row, of);
      continue;
    }
    const double module = rules.piece + rules.joint;
    const double whole = std::round(run.far_length / module);
    row.make.pieces = 1;
    row.make.how = RowMake::How::uncut;
    add_row(list, row, of);  // its mitres
    if (std::abs(run.far_length / module - whole) < 1e-4) continue;
    SawCut last;
    last.item = own->id;
    last.what = "across, last of its run";
    last.least = last.most =
        by_fence(list.printed(), std::min(rules.piece, run.far_length - std::floor(run.far_length / module) * module));
    last.pieces = 1;
    last.metres = rules.deep;
    last.thickness = thick(*own);
    list.add(last, of, "");
  }
}

}  // namespace

void add_borders(SawList& list) {
  for (const auto& ground : list.printed().results->site.grounds) {
    const auto* area = std::get_if<plan::PavedArea>(&ground->element->kind);
    if (!area || area->borders.empty() || ground->net.empty()) continue;
    for (const auto& course : takeoff::paving::bordered(list.job(), *ground).courses)
      if (const catalogue::Item* item = list.job().catalogue->item(area->borders[course.border].item))
        add_course(list, course, *item, ground->element->id);
  }
}

void add_copings(SawList& list) {
  for (const auto& ground : list.printed().results->site.grounds) {
    if (!std::holds_alternative<plan::Pool>(ground->element->kind) || ground->drawn.empty()) continue;
    for (const auto& row : takeoff::edges::laid_coping(list.job(), *ground))
      for (const auto& laid : row.runs)
        if (laid.way)
          add_row(list,
                  {laid.way->item, laid.way->item->length->metres().si(), row.deep, laid.way->make,
                   laid.placed.run.corner_before, laid.placed.run.corner_after},
                  ground->element->id);
  }
}

void add_kerbs(SawList& list) {
  for (const auto& ground : list.printed().results->site.grounds) {
    const auto* run = std::get_if<plan::EdgeRun>(&ground->element->kind);
    if (!run || run->what != "kerb" || !ground->path) continue;
    const catalogue::Item* unit = list.job().catalogue->item(run->item);
    if (unit && unit->length && unit->width) add_kerb(list, *ground, *run, *unit);
  }
}

}  // namespace sheets
