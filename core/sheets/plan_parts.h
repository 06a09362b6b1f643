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

  void put(Part part) { figure_.parts.push_back(std::move(part)); }
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

// The roomiest place of a region, metres; of several about equal ones the lowest. Nothing of an empty region.
std::optional<Vec> inside(const geometry::Region& region);

// From the bottom up.
void draw_ground(Plan& plan);     // removals, the open dig, base layers, ground made good       plan_stage.cpp
void draw_buildings(Plan& plan);  //                                                              plan_standing.cpp
void draw_pools(Plan& plan);      // water, shell, coping                                         plan_areas.cpp
void draw_areas(Plan& plan);      // borders and fields                                           plan_areas.cpp
void draw_standing(Plan& plan);   // walls, steps, pillars and what else is kept out              plan_standing.cpp
void draw_runs(Plan& plan);       // kerbs, restraint, drains                                     plan_runs.cpp
void draw_marks(Plan& plan);      // features, site marks, levels, falls, junctions, tags, faults plan_marks.cpp

}  // namespace sheets
