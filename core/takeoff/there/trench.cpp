#include "takeoff/there/trench.h"

#include <algorithm>

#include "geometry/flatten.h"
#include "geometry/offset.h"
#include "geometry/overlay.h"
#include "takeoff/edges/notes.h"
#include "takeoff/walls/profile.h"

namespace takeoff::there {

namespace {

using geometry::Curve;
using geometry::Point;
using geometry::Region;

// What stands there, and how deep.
struct Held {
  const plan::Ground& ground;
  Region region;  // out to the outer face of its footing or shell
  std::optional<double> depth;
  bool pool = false;
};

std::optional<Held> held(const plan::Ground& ground) {
  if (ground.drawn.empty()) return std::nullopt;
  if (const auto* building = std::get_if<plan::Building>(&ground.element->kind)) {
    Held made{ground, ground.drawn, {}, false};
    if (building->footing_depth) made.depth = building->footing_depth->metres().si();
    return made;
  }
  const auto* pool = std::get_if<plan::Pool>(&ground.element->kind);
  if (!pool) return std::nullopt;
  const auto shell = geometry::offset(ground.drawn, pool->shell, geometry::Corner::round);
  Held made{ground, shell ? *shell : ground.drawn, {}, true};
  if (pool->surround && pool->surround->depth > plan::Length()) made.depth = pool->surround->depth.metres().si();
  return made;
}

// Of what is dug there, below the ground as it lies: at the deepest of the corners.
double depth_of(const ground::Body& body, const levels::Terrain& terrain) {
  const double build_up = body.top + body.thickness;
  std::optional<double> deepest;
  for (const geometry::Outline* outline : body.net.outlines())
    for (const Point point : geometry::flatten(outline->edges())) {
      const auto finished = terrain.finished_at(point);
      const auto existing = terrain.existing_at(point);
      if (finished && existing) deepest = std::max(deepest.value_or(0), *existing - *finished + build_up);
    }
  return deepest.value_or(build_up);
}

std::optional<double> invert_at(const plan::DrainRun& run, double station) {
  if (!run.inverts.empty()) return walls::Heights(run.inverts).before(station);
  if (run.start) return run.start->metres().si() - run.fall * station;
  return std::nullopt;
}

struct Finding {
  std::string what;
  double deepest = 0;
  std::optional<problem::Xy> at;
  void add(const std::string& one, double depth, std::optional<problem::Xy> place) {
    what += (what.empty() ? "" : ", ") + one;
    deepest = std::max(deepest, depth);
    if (!at) at = place;
  }
};

void look_at_body(const plan::Job& job, const plan::Site& site, const Held& held, const ground::Body& body,
                  double depth, Finding& finding) {
  const double within = depth - held.depth.value_or(0);
  if (within <= 1e-3) return;
  const geometry::Box box = geometry::grown(held.region.bounds(), plan::Length::nearest(units::Metres(within)));
  if (!geometry::overlap(body.footprint.bounds(), box)) return;
  const auto zone = around({held.region, {}, {}}, within);
  if (!zone) return;
  auto part = geometry::meet(body.footprint, *zone);
  if (part && !part->empty()) part = geometry::subtract(*part, std::vector<Region>{held.region});
  if (!part || part->area().si() <= 1e-3) return;
  std::string names;
  for (const plan::ElementId& id : body.of) {
    const plan::Ground* ground = site.find(id);
    names += (names.empty() ? "" : " and ") + (ground ? called(*ground->element) : id);
  }
  finding.add(names + " " + shown_area(job, part->area().si()), depth, middle(*part));
}

void look_at_run(const plan::Job& job, const Held& held, const plan::Ground& line, const levels::Terrain& terrain,
                 Finding& finding) {
  const auto* run = std::get_if<plan::DrainRun>(&line.element->kind);
  if (!run || !line.path || run->what == "channel") return;
  const double bed = job.catalogue->length_limit("pipe-bedding", units::Length::inches(3)).metres().si();
  const Drawn from{held.region, {}, {}};
  double before = 0;
  double deepest = 0;
  Stretches all;
  for (const Curve& edge : curves(*line.path)) {
    const double whole = edge.length() / units::Length::steps_per_metre;
    const Stretches found = where(std::vector<Curve>{edge}, [&](Point point, const Curve&, double at) {
      const auto invert = invert_at(*run, before + at * whole);
      const auto ground = terrain.existing_at(point);
      if (!invert || !ground) return false;
      const double depth = *ground - *invert + bed;
      if (distance(from, point) >= depth - held.depth.value_or(0)) return false;
      deepest = std::max(deepest, depth);
      return true;
    });
    before += whole;
    all.length += found.length;
    if (!all.at) all.at = found.at;
  }
  if (all.length > 1e-3)
    finding.add(called(*line.element) + " for " + edges::shown(job, all.length), deepest, geometry::xy(*all.at));
}

void say(const plan::Job& job, const Held& held, const Finding& finding, Share& share) {
  const std::string name = called(*held.ground.element);
  const std::string deep = " (" + finding.what + ", up to " + edges::shown(job, finding.deepest) + " deep)";
  std::string code, text, mend;
  if (held.pool) {
    code = held.depth ? "dig-by-shell" : "shell-unknown";
    text = held.depth ? "digging goes below the line at 45 degrees from the shell of " + name + deep
                      : "the depth of the shell of " + name + " is not known, and there is digging beside it" + deep;
    mend = "the pool's builder or a licensed engineer decides before the ground is opened";
  } else {
    code = held.depth ? "trench-by-footing" : "footing-unknown";
    text = held.depth ? "digging goes below the line at 45 degrees from the footing of " + name + deep
                      : "the depth of the footing of " + name + " is not known, and there is digging beside it" + deep;
    mend = held.depth ? "move it out or dig shallower; else a licensed engineer decides (UPC 314.1; IRC P2604.4)"
                      : "find its depth and enter it; below its 45 degree line a licensed engineer decides";
  }
  problem::Problem made = edges::flag(code, text, mend, held.ground.element->id);
  made.place.at = finding.at;
  share.problems.push_back(std::move(made));
}

}  // namespace

void trenches(const plan::Job& job, const plan::Site& site, const plan::Ground& ground, const ground::Bodies& bodies,
              const levels::Terrain& terrain, Share& share) {
  const auto stands = held(ground);
  if (!stands) return;
  Finding finding;
  for (const ground::Body* body : lowest(bodies))
    look_at_body(job, site, *stands, *body, depth_of(*body, terrain), finding);
  for (const auto& other : site.grounds) look_at_run(job, *stands, *other, terrain, finding);
  if (!finding.what.empty()) say(job, *stands, finding, share);
}

}  // namespace takeoff::there
