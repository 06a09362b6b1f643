// A tool is a small state machine: it takes events, shows itself as a View, and answers with an edit of the job when a
// gesture is done. It knows no window; a window knows no tool but by this page.
#pragma once

#include <memory>
#include <optional>

#include "sketch/event.h"
#include "sketch/snap.h"
#include "sketch/view.h"

namespace sketch {

// What a tool may read. The job is the value that the person sees; tools never keep it between events.
struct Scene {
  const plan::Job& job;
  const Snaps& snaps;
  double reach = 0;  // steps: how far the pointer takes hold at the present zoom
  double grid = 0;   // steps; 0 is none
  std::vector<plan::ElementId> selected;
};

// An edit that is done: the job after it, its name for undo ("Move area A1"), and what is selected then.
struct Edit {
  plan::Job after;
  std::string name;
  std::vector<plan::ElementId> selected;
};

struct Answer {
  std::optional<Edit> edit;
  std::optional<std::vector<plan::ElementId>> select;  // a new selection without an edit
  std::optional<problem::Problem> refused;             // why nothing came of it; what was in hand stays
  bool leave = false;                                  // back to Pick
};

class Tool {
 public:
  Tool() = default;
  Tool(const Tool&) = delete;
  Tool& operator=(const Tool&) = delete;
  virtual ~Tool() = default;
  virtual Answer take(const Event& event, const Scene& scene) = 0;
  virtual View view(const Scene& scene) const = 0;
};

// All tools, in the order of building, then those that change what is drawn. `word` is the name in files and tests.
enum class Hand {
  pick,
  site_plan,  // scale, place, check length of the plan underneath
  site_mark,
  building,
  keep_out,
  removal,
  protection,
  level,
  wall,
  drain,
  pool,
  steps,
  area,
  edge,
  feature,
  measure,
  dimension,
  note,
  move,
  turn,
  copy,
  mirror,
  offset,
  split,
  join,
  hole,
  edge_to_arc,
  trace,
  start_point
};
std::unique_ptr<Tool> make_tool(Hand hand);

}  // namespace sketch
