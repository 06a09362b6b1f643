#include "takeoff/edges/rows.h"

#include <cmath>
#include <numbers>

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
