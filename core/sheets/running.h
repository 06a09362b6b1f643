// Running measures of a laid area: how far from its start line the courses lie, and what joint makes them come out
// whole.
#pragma once

#include "sheets/printed.h"
#include "takeoff/paving/layout.h"

namespace sheets {

// One direction of a pattern. Along the rows the same unit comes again every `module`; out from the start line every
// row lies `module` further and is moved by `shift` along. Metres, but for the counts.
struct Running {
  plan::ElementId of;
  bool along = false;  // along the rows; else out from them
  double module = 0;   // joint included
  double shift = 0;    // of rows only; between 0 and what they repeat by
  double joint = 0;
  bool units = false;  // one unit is one step; otherwise a step is a repeat of several units
  double back = 0;     // how far the field reaches from its start to either side
  double ahead = 0;
  // Where both ends of the field are straight edges along the rows (or square to them) and a step is one unit: how many
  // steps fit between them, and by how much each joint is opened (negative: closed) so that no step is cut. Nothing
  // where it would take more than 1/32 in a joint (common practice: more is seen).
  struct Whole {
    int count = 0;
    double open = 0;  // metres, of each joint
  };
  std::optional<Whole> whole;
  double last = 0;  // of one that does not come out whole: what is left of the last step, without its joint
};

// Both directions, along first. Nothing of an area that is not laid.
std::vector<Running> running_measures(const Printed& printed, const plan::ElementId& area);

// The numbers of steps that a tape is marked at: 1, 5, 10, 20, 30 ... as far as the field reaches; at most twelve.
std::vector<int> marked_steps(const Running& running);

// How `count` steps of `width` (no joint) with `count` - 1 joints are spread over `span`. "running/ID/along" and
// "running/ID/out" lead to the working.
std::optional<Running::Whole> come_out_whole(double span, double width, double joint);
std::optional<std::string> working_of_running(const Printed& printed, const std::string& area, const std::string& way);

}  // namespace sheets
