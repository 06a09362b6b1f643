// The plan as it is being drawn: what it is drawn from, at which moment of the work, and the parts so far.
#pragma once

#include <map>

#include "sheets/parts.h"
#include "sheets/plan_figure.h"

namespace sheets {

class Plan {
 public:
  Plan(const results::Results& results, const PlanWants& wants) : results_(results), wants_(wants) {}

  const results::Results& results() const { return results_; }
  const plan::Job& job() const { return *results_.job; }
  const catalogue::Catalogue& catalogue() const { return *results_.job->catalogue; }
  const plan::Site& site() const { return results_.site; }
  const PlanWants& wants() const { return wants_; }
  units::System system() const { return results_.job->heading.units; }

  // Is it there at the moment shown? Of the finished job everything is.
  bool built(takeoff::Stage stage) const { return !wants_.stage || *wants_.stage >= stage; }
  bool at(takeoff::Stage stage) const { return wants_.stage == stage; }

  // Built in its place: g++ 12 fears for the other kinds of part where one is moved in.
  template <class Kind>
  void put(Kind part) {
    figure_.parts.emplace_back(std::in_place_type<Kind>, std::move(part));
  }
  // Filled where it is built, a dashed outline before; `line` is its edge once it is there.
  void put(std::vector<Contour> contours, Material material, Line line, takeoff::Stage stage,
           const plan::ElementId& of);
  void later(std::vector<Contour> contours, const plan::ElementId& of);
  void stroke(Contour contour, Line line, const plan::ElementId& of) { put(Stroke{std::move(contour), line, of}); }
  void mark(Sign sign, Vec at, std::string text, const plan::ElementId& of, double turn = 0) {
    put(Mark{sign, at, turn, std::move(text), of});
  }
  Figure finish() {
    settle(figure_);
    return std::move(figure_);
  }

 private:
  const results::Results& results_;
  const PlanWants& wants_;
  Figure figure_;
};

// Where an element's tag and its faults stand: the middle of a line, the roomiest place of its ground, its point.
std::optional<Vec> middle(const plan::Ground& ground);

// The roomiest place of a region, metres; of several about equal ones the lowest. Nothing of an empty region.
std::optional<Vec> inside(const geometry::Region& region);

// The parts of the level line y = `at` that lie in the region (`upright`: of the line x = `at`).
std::vector<std::pair<Vec, Vec>> crossing(const geometry::Region& region, double at, bool upright);

std::optional<double> measured(const Plan& plan, const plan::ElementId& of, std::string_view name);

// From the bottom up.
void draw_ground(Plan& plan);     // removals, the open dig, base layers, ground made good       plan_stage.cpp
void draw_buildings(Plan& plan);  //                                                              plan_standing.cpp
void draw_pools(Plan& plan);      // water, shell, coping                                         plan_areas.cpp
void draw_areas(Plan& plan);      // borders and fields                                           plan_areas.cpp
void draw_standing(Plan& plan);   // walls, steps, pillars and what else is kept out              plan_standing.cpp
void draw_wall(Plan& plan, const plan::Ground& ground, const plan::Wall& wall);  // plan_walls.cpp
void draw_runs(Plan& plan);       // kerbs, restraint, drains                                     plan_runs.cpp
void draw_marks(Plan& plan);      // features, site marks, levels, tags, and what follows         plan_marks.cpp
void draw_falls(Plan& plan);      //                                                              plan_said.cpp
void draw_junctions(Plan& plan);  //                                                              plan_said.cpp
void draw_faults(Plan& plan);     //                                                              plan_said.cpp

}  // namespace sheets
