#include "takeoff/water/network.h"

#include <algorithm>
#include <set>

#include "geometry/index.h"
#include "plan/footprint.h"
#include "takeoff/levels/words.h"
#include "takeoff/water/water.h"

namespace takeoff::water {

using problem::Severity;

namespace {

constexpr double same_place = 0.05;  // metres along a run: what joins it here joins it at its start

std::optional<walls::Heights> own_levels(const plan::DrainRun& run, double length) {
  if (!run.inverts.empty()) return walls::Heights(run.inverts);
  if (!run.start) return std::nullopt;
  const double start = run.start->metres().si();
  return walls::Heights::of({{0, start}, {length, start - run.fall * length}});
}

// Of a channel the place of its outlet, of anything else its end.
double leaves_at(const Run& run) {
  for (const plan::AtRun& part : run.run->parts)
    if (part.what == "outlet") return std::clamp(part.at.metres().si(), 0.0, run.length);
  return run.length;
}

struct Maker {
  const plan::Job& job;
  Network made;

  void runs() {
    for (const plan::ElementPtr& element : job.elements) {
      const auto* run = std::get_if<plan::DrainRun>(&element->kind);
      if (!run) continue;
      auto path = plan::path(run->line, plan::mark(element->id));
      if (!path) continue;  // said by the site
      const double length = path->length().si();
      made.runs.emplace(element->id, Run{run, std::move(*path), length, own_levels(*run, length), {}});
    }
  }

  void joints() {
    for (auto& [id, run] : made.runs) {
      const plan::ElementId& into = run.run->into;
      if (into.empty()) continue;
      const auto other = made.runs.find(into);
      if (other == made.runs.end() || into == id) {
        made.problems.push_back(levels::said(Severity::problem, "run-into",
                                             id + " leads into " + into + ", which is no drain run of this job",
                                             "name the run that it joins, or leave it open", id));
        continue;
      }
      const double from = leaves_at(run);
      const NearestOn there = nearest_on(other->second.path, place_at(run.path, from));
      run.joint = Joint{into, from, there.station, there.distance};
    }
  }

  // Runs that lead round in a ring lead nowhere: the ring is said once and opened.
  void rings() {
    for (auto& [id, run] : made.runs) {
      std::set<plan::ElementId> seen{id};
      plan::ElementId at = id;
      while (made.runs.at(at).joint && seen.insert(made.runs.at(at).joint->into).second)
        at = made.runs.at(at).joint->into;
      if (!made.runs.at(at).joint || made.runs.at(at).joint->into != id) continue;
      made.problems.push_back(levels::said(Severity::problem, "run-cycle",
                                           id + " leads back into itself through the runs that it joins",
                                           "let one of them end in the open", id));
      run.joint.reset();
    }
  }

  void inherited() {
    // As many rounds as there are runs: each gives at least one more its level, or none is left to give.
    for (std::size_t round = 0; round < made.runs.size(); ++round)
      for (auto& [id, run] : made.runs)
        if (!run.level) inherit(id, run);
  }

  void inherit(const plan::ElementId& id, Run& run) {
    std::optional<double> start;
    for (const auto& [branch, other] : made.runs)
      if (other.joint && other.joint->into == id && other.joint->at < same_place && other.level) {
        const double comes = other.level->before(other.joint->from);
        if (!start || comes < *start) start = comes;
      }
    if (start) run.level = walls::Heights::of({{0, *start}, {run.length, *start - run.run->fall * run.length}});
  }
};

}  // namespace

geometry::Point place_at(const geometry::Path& path, double station) {
  double left = station * units::Length::steps_per_metre;
  for (std::size_t i = 0; i < path.size(); ++i) {
    const geometry::Curve curve = path.curve(i);
    const double length = curve.length();
    if (left <= length || i + 1 == path.size())
      return geometry::moved(curve.start, curve.at(length > 0 ? std::clamp(left / length, 0.0, 1.0) : 0));
    left -= length;
  }
  return path.end();
}

NearestOn nearest_on(const geometry::Path& path, geometry::Point to) {
  NearestOn best{0, 1e300};
  double before = 0;
  for (std::size_t i = 0; i < path.size(); ++i) {
    const geometry::Curve curve = path.curve(i);
    const double length = curve.length() / units::Length::steps_per_metre;
    const geometry::Nearest here = geometry::nearest(curve, to);
    if (here.distance < best.distance) best = {before + here.share * length, here.distance};
    before += length;
  }
  return best;
}

std::vector<plan::ElementId> Network::branches(const plan::ElementId& id) const {
  std::vector<plan::ElementId> found;
  for (const auto& [branch, run] : runs)
    if (run.joint && run.joint->into == id) found.push_back(branch);
  return found;
}

double Network::flow(const plan::ElementId& id, const std::map<plan::ElementId, double>& direct) const {
  const auto own = direct.find(id);
  double sum = own == direct.end() ? 0 : own->second;
  for (const plan::ElementId& branch : branches(id)) sum += flow(branch, direct);
  return sum;
}

Network network(const plan::Job& job) {
  Maker maker{job, {}};
  maker.runs();
  maker.joints();
  maker.rings();
  maker.inherited();
  return std::move(maker.made);
}

std::optional<double> invert(const plan::Job& job, const plan::DrainRun& run, double at) {
  if (!run.inverts.empty()) return walls::Heights(run.inverts).before(at);
  if (run.start) return run.start->metres().si() - run.fall * at;
  for (const auto& [id, known] : network(job).runs)
    if (*known.run == run && known.level) return known.level->before(at);
  return std::nullopt;
}

}  // namespace takeoff::water
