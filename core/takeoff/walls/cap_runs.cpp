#include <algorithm>
#include <cmath>

#include "takeoff/walls/caps.h"

namespace takeoff::walls {

namespace {

constexpr double dust = 1e-9;

struct Level {
  double from = 0;
  double to = 0;
  int top = 0;
};

// Caps know nothing of steps in the base.
std::vector<Level> levels(const Profile& profile) {
  std::vector<Level> made;
  for (const Column& column : profile.columns) {
    if (!made.empty() && made.back().top == column.top)
      made.back().to = column.to;
    else
      made.push_back({column.from, column.to, column.top});
  }
  return made;
}

double corner_before(const Profile& profile, std::size_t leg) {
  if (leg > 0) return profile.legs[leg - 1].corner;
  return profile.closed ? profile.legs.back().corner : 0;
}

int top_just(const Profile& profile, double station, bool before) {
  for (const Column& column : profile.columns) {
    const bool holds = before ? column.from < station - dust && station <= column.to + dust
                              : column.from <= station + dust && station < column.to - dust;
    if (holds) return column.top;
  }
  return -1;
}

// The level on the other side of an end of the run; -1 where the wall ends.
int top_beyond(const Profile& profile, const CapRun& run, bool at_start) {
  if (at_start) {
    if (run.from > dust) return top_just(profile, run.from, true);
    return profile.closed ? top_just(profile, profile.length, true) : -1;
  }
  if (run.to < profile.length - dust) return top_just(profile, run.to, false);
  return profile.closed ? top_just(profile, 0, false) : -1;
}

// An inside corner is mitred on the front, so that the back edge is the one that reaches furthest.
double inside_reach(double turn, double depth) { return turn < 0 ? depth * std::tan(-turn / 2) : 0; }

CapRun run_on(const Profile& profile, const Blocks& blocks, std::size_t leg, const Level& level, double overhang,
              double depth) {
  const Leg& line = profile.legs[leg];
  CapRun run;
  run.course = level.top - 1;
  run.from = std::max(line.from, level.from);
  run.to = std::min(line.to, level.to);
  const double back = run.course * blocks.block.setback;
  run.under = own_length(profile, leg, back, run.from, run.to);
  run.length = own_length(profile, leg, back - overhang, run.from, run.to);
  const int before = top_beyond(profile, run, true);
  const int after = top_beyond(profile, run, false);
  const bool same_before = before == level.top;
  const bool same_after = after == level.top;
  run.shows_before = before < level.top;
  run.shows_after = after < level.top;
  if (same_before && run.from <= line.from + dust) run.mitre_before = corner_before(profile, leg);
  if (same_after && run.to >= line.to - dust) run.mitre_after = line.corner;
  run.joined_before = same_before && run.mitre_before == 0;
  run.joined_after = same_after && run.mitre_after == 0;
  if (line.radius != 0) {
    run.radius = line.radius - (back - overhang);
    run.turn = (run.to - run.from) / std::abs(line.radius);
  }
  const double outer = run.radius >= 0 ? run.radius : depth - run.radius;
  run.longer = (run.radius == 0 ? run.length : run.turn * outer) + inside_reach(run.mitre_before, depth) +
               inside_reach(run.mitre_after, depth);
  return run;
}

// A closed line begins somewhere along a straight: that is no end of a run.
void join_seam(const Profile& profile, std::vector<CapRun>& runs) {
  if (!profile.closed || runs.size() < 2) return;
  CapRun& first = runs.front();
  const CapRun& last = runs.back();
  if (!first.joined_before || !last.joined_after || first.radius != last.radius) return;
  first.from = last.from;
  first.length += last.length;
  first.under += last.under;
  first.longer += last.longer;
  first.turn += last.turn;
  first.mitre_before = last.mitre_before;
  first.joined_before = last.joined_before;
  runs.pop_back();
}

}  // namespace

double own_length(const Profile& profile, std::size_t leg, double back, double from, double to) {
  const Leg& line = profile.legs[leg];
  if (line.radius != 0) return (to - from) * (1 - back / line.radius);
  double length = to - from;
  if (from <= line.from + dust) length -= back * std::tan(corner_before(profile, leg) / 2);
  if (to >= line.to - dust) length -= back * std::tan(line.corner / 2);
  return length;
}

std::vector<CapRun> cap_runs(const Profile& profile, const Blocks& blocks, double overhang, double depth) {
  std::vector<CapRun> runs;
  const std::vector<Level> tops = levels(profile);
  std::size_t at = 0;  // both lists are in order, so a wall of many legs and steps is walked once
  for (std::size_t leg = 0; leg < profile.legs.size(); ++leg) {
    const Leg& line = profile.legs[leg];
    while (at < tops.size() && tops[at].to <= line.from + dust) ++at;
    for (std::size_t i = at; i < tops.size() && tops[i].from < line.to - dust; ++i) {
      const CapRun run = run_on(profile, blocks, leg, tops[i], overhang, depth);
      if (run.to - run.from > dust && run.length > dust) runs.push_back(run);
    }
  }
  join_seam(profile, runs);
  return runs;
}

}  // namespace takeoff::walls
