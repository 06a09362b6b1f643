// Every drain run of a job with its levels, and which runs join which.
#pragma once

#include <map>
#include <optional>
#include <string>

#include "geometry/outline.h"
#include "plan/job.h"
#include "takeoff/walls/profile.h"

namespace takeoff::water {

// Where a run hands its water on: at its end, or where the outlet of a channel hangs under it.
struct Joint {
  plan::ElementId into;
  double from = 0;  // station on the run itself, metres
  double at = 0;    // station on the other
  double gap = 0;   // metres between the two lines
};

struct Run {
  const plan::DrainRun* run = nullptr;
  geometry::Path path;
  double length = 0;                    // metres
  std::optional<walls::Heights> level;  // inverts along it; nothing where they are not known
  std::optional<Joint> joint;
  std::optional<double> start() const { return level ? std::optional(level->after(0)) : std::nullopt; }
  std::optional<double> end() const { return level ? std::optional(level->before(length)) : std::nullopt; }
};

// A run without a level of its own starts at the lowest end of the runs that join it at its start. Problems:
// "run-into" (what it joins is no run of the job), "run-cycle" (runs that lead round in a ring).
struct Network {
  std::map<plan::ElementId, Run> runs;
  std::vector<problem::Problem> problems;
  std::vector<plan::ElementId> branches(const plan::ElementId& id) const;  // that join it
  // What arrives at the end of a run, its branches' included, from what arrives at each directly. Metres^3 a second.
  double flow(const plan::ElementId& id, const std::map<plan::ElementId, double>& direct) const;
};
Network network(const plan::Job& job);

// The place on a path at a station, and the nearest station to a place (with its distance), metres.
geometry::Point place_at(const geometry::Path& path, double station);
struct NearestOn {
  double station = 0;
  double distance = 0;
};
NearestOn nearest_on(const geometry::Path& path, geometry::Point to);

}  // namespace takeoff::water
