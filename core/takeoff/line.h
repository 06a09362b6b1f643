// What the job needs, line by line.
#pragma once

#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "problem/problem.h"
#include "takeoff/stage.h"
#include "takeoff/working.h"

namespace takeoff {

// A quantity of a catalogue item. It can't be made from a number, only from a working. Nothing is rounded here but
// units bought for cuts and other whole things; packs are estimate's business.
struct Line {
  Stage stage;
  plan::Id item;
  std::string text;  // what for: "field of A1", "joint along the coping"
  std::vector<plan::ElementId> of;
  Working working;  // in the item's measure: pieces, m, m2, m3, kg (estimate turns it into the item's own unit)
  std::optional<double> allowance;  // a share on top, in place of the item's breakage; 0 is none
  bool approximate = false;  // a rule of thumb in place of a measured number: marked as an allowance, in the open
};

// Work to be done: a rate of the catalogue and how much of its unit.
struct Task {
  Stage stage;
  plan::Id rate;
  std::string text;
  std::vector<plan::ElementId> of;
  Working working;    // in the rate's si_unit (t: kg)
  double factor = 1;  // named condition (curves, thickness); 1 is none
  std::string condition;
};

// One preliminary check: a number against its limit. It defers to local code and a licensed engineer, and so says every
// sheet that shows it.
struct Check {
  plan::ElementId of;
  std::string name;      // "sliding", "overturning", "bearing", "layer on course 3, pullout" ...
  std::string where;     // "0 to 12.5 ft along the wall"
  Working working;       // its value
  double limit = 0;      // in the working's unit
  bool at_most = false;  // the value must not be over the limit; otherwise not under it
  std::string source;    // of method and limit
  bool passes() const;
};

// One saw cut, or `count` equal ones: what the cut list shows.
struct Cut {
  plan::ElementId of;
  plan::Id item;
  std::string what;   // "course 3, end piece", "cap, taper"
  std::string where;  // "0 to 12.5 ft along the wall"
  int count = 1;
  double kept = 0;       // metres: length of the piece that is kept, along the wall; 0 where it is a bevel only
  double angle = 0;      // radians off square
  double length = 0;     // metres of saw cut each
  double thickness = 0;  // metres, through which the saw goes
  std::string keep;      // which part is kept: "left", "right", "middle"
  bool from_offcut = false;
};

// Named numbers of one element, in the order found; the unit is in the name: net_area_m2, units_whole, cut_length_m.
struct Measures {
  plan::ElementId element;
  std::vector<std::pair<std::string, double>> values;
  void put(std::string name, double value) { values.emplace_back(std::move(name), value); }
  std::optional<double> get(std::string_view name) const;
};

// What one trade says of one element.
struct Share {
  std::vector<Line> lines;
  std::vector<Task> tasks;
  Measures measures;
  std::vector<problem::Problem> problems;
  std::vector<std::string> facts;  // for stage_notes
  std::vector<Check> checks;
  std::vector<Cut> cuts;
  void add(Share other);  // everything of `other` after what is here
};

}  // namespace takeoff
