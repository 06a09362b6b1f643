#include "takeoff/edges/rows.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "takeoff/edges/notes.h"

namespace takeoff::edges {

namespace {

// Signed turns at the corners in the order in which the path comes to them; of a closed path its first point is the
// last.
std::vector<double> corner_turns(const geometry::Path& path) {
  std::vector<double> turns;
  const std::size_t count = path.size();
  const auto turn_after = [&](std::size_t i) {
    const geometry::Vec out = path.curve(i).direction(1);
    const geometry::Vec in = path.curve((i + 1) % count).direction(0);
    return std::atan2(geometry::cross(out, in), geometry::dot(out, in));
  };
  for (std::size_t i = 0; i < count; ++i) {
    if (i + 1 == count && !path.closed()) break;
    const double turn = turn_after(i);
    if (std::abs(turn) > corner_from * std::numbers::pi / 180) turns.push_back(turn);
  }
  return turns;
}

}  // namespace

paving::RowRules kerb_rules(const plan::Job& job, const catalogue::Item& unit) {
  paving::RowRules rules;
  rules.piece = unit.length->metres().si();
  rules.deep = unit.width->metres().si();
  rules.joint = unit.joint ? unit.joint->metres().si() : 0;
  rules.joint_least = std::min(rules.joint, limit_inches(job, "coping-joint-width", Bound::least, 1.0 / 16));
  rules.joint_greatest = limit_inches(job, "border-curve", Bound::greatest, 3.0 / 8);
  // A kerb is seen from further off than a nose at the water, so its chords may lie further off the arc (common
  // practice).
  rules.flat_limit = limit_inches(job, "kerb-flat", Bound::greatest, 1.0 / 4);
  if (const auto radius = unit.length_of("outer_radius_mm")) {
    const double turn = unit.number("turn_deg").value_or(0) * std::numbers::pi / 180;
    const double near = radius->metres().si() - unit.length_of("unit_width_mm").value_or(*unit.width).metres().si();
    rules.stock_radii.emplace_back(near, near * turn - rules.joint);
  }
  return rules;
}

std::vector<TurnedRun> turned_runs(const geometry::Path& path, double from, double deep, geometry::Side towards) {
  std::vector<TurnedRun> result;
  for (const paving::RowRun& run : paving::row_runs(path, from, deep, towards)) {
    result.push_back({run, run.corner_before, run.corner_after});
  }
  // The runs tell how far a corner turns, not to which side; they come in the path's order, so the corners do too.
  const std::vector<double> turns = corner_turns(path);
  std::size_t next = 0;
  for (std::size_t i = 0; i < result.size(); ++i) {
    if (result[i].after == 0 || next == turns.size()) continue;
    const double turn = turns[next++];
    result[i].after = std::copysign(result[i].after, turn);
    if (i + 1 < result.size())
      result[i + 1].before = std::copysign(result[i + 1].before, turn);
    else
      result.front().before = std::copysign(result.front().before, turn);
  }
  return result;
}

}  // namespace takeoff::edges
