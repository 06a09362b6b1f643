#include "takeoff/there/drops.h"

#include <algorithm>
#include <cmath>

#include "takeoff/edges/notes.h"
#include "takeoff/walls/profile.h"

namespace takeoff::there {

namespace {

using geometry::Curve;
using geometry::Point;
using geometry::Vec;

struct Guard {
  double drop = 0;
  double near = 0;
};

Guard guard(const plan::Job& job) {
  const auto metres = [&job](const char* id, int inches) {
    return job.catalogue->length_limit(id, units::Length::inches(inches)).metres().si();
  };
  return {metres("guard-drop", 30), metres("guard-near", 36)};
}

Vec steps_of(double metres, Vec unit) { return (metres * units::Length::steps_per_metre) * unit; }

void flag(const plan::Job& job, const plan::Ground& ground, const char* code, const std::string& what, double most,
          const Stretches& found, Share& share) {
  problem::Problem said = edges::flag(
      code,
      what + " is a walking surface beside a drop of up to " + edges::shown(job, most) + ", over " +
          edges::shown(job, guard(job).drop) + ", for " + edges::shown(job, found.length),
      "local code decides on a guard (IRC R312.1); posts by a wall's reinforcement want a licensed engineer",
      ground.element->id);
  if (found.at) said.place.at = geometry::xy(*found.at);
  share.problems.push_back(std::move(said));
}

// How far a place lies up the flight, as a share of its run.
struct Flight {
  Vec up;
  double low = 0;
  double run = 0;
  Point from;

  Flight(const plan::Steps& steps, const plan::Ground& ground) {
    const double turn = steps.up.radians();
    up = {std::cos(turn), std::sin(turn)};
    from = ground.drawn.polygons().front().outer.edges().front().from;
    double high = low = 0;
    for (const geometry::Edge& edge : ground.drawn.polygons().front().outer.edges()) {
      low = std::min(low, geometry::dot(edge.from - from, up));
      high = std::max(high, geometry::dot(edge.from - from, up));
    }
    run = high - low;
  }
  double share(Point point) const { return run > 0 ? (geometry::dot(point - from, up) - low) / run : 0; }
};

void of_steps(const plan::Job& job, const plan::Ground& ground, const plan::Steps& steps, Share& share) {
  const Guard rule = guard(job);
  const double rise = steps.rise.metres().si();
  if (rise <= rule.drop + 1e-6 || ground.drawn.empty()) return;
  const Flight flight(steps, ground);
  Stretches all;
  for (const plan::Stretch& stretch : ground.stretches) {
    if (stretch.meets != plan::Meets::planting && stretch.meets != plan::Meets::restraint) continue;
    const auto outlines = ground.net.outlines();
    const Curve edge = geometry::curve(outlines[static_cast<std::size_t>(stretch.outline)]->edges(),
                                       static_cast<std::size_t>(stretch.edge));
    const Vec along = edge.direction(0.5);
    if (std::abs(geometry::dot(along, flight.up)) < 0.5) continue;  // foot and landing
    // An edge has its ground on the left, so one that goes up has the flight on its left and is its right side.
    const bool right = geometry::dot(along, flight.up) > 0;
    if (steps.cheeks && (right ? steps.cheeks->right : steps.cheeks->left)) continue;
    const double whole = edge.length() / units::Length::steps_per_metre;
    const Stretches high = where(std::vector<Curve>{edge}, [&](Point point, const Curve&, double at) {
      return at * whole >= stretch.from && at * whole <= stretch.to && flight.share(point) * rise > rule.drop;
    });
    all.length += high.length;
    if (!all.at) all.at = high.at;
  }
  if (all.length > 1e-3) flag(job, ground, "steps-guard", "the side of " + called(*ground.element), rise, all, share);
}

void of_area(const plan::Job& job, const plan::Ground& ground, const levels::Terrain& terrain, Share& share) {
  const auto finished = terrain.finished.find(ground.element->id);
  if (finished == terrain.finished.end() || !finished->second || !terrain.existing) return;
  const Guard rule = guard(job);
  double most = 0;
  Stretches all;
  const auto outlines = ground.net.outlines();
  for (const plan::Stretch& stretch : ground.stretches) {
    if (stretch.meets != plan::Meets::planting && stretch.meets != plan::Meets::restraint) continue;
    const Curve edge = geometry::curve(outlines[static_cast<std::size_t>(stretch.outline)]->edges(),
                                       static_cast<std::size_t>(stretch.edge));
    const double whole = edge.length() / units::Length::steps_per_metre;
    const Stretches high = where(std::vector<Curve>{edge}, [&](Point point, const Curve&, double at) {
      if (at * whole < stretch.from || at * whole > stretch.to) return false;
      const Vec in = geometry::left_of(edge.direction(at));
      const auto top = finished->second->height(geometry::moved(point, steps_of(0.01, in)));
      const auto below = terrain.existing_at(geometry::moved(point, steps_of(-units::metres_per_foot, in)));
      if (!top || !below || *top - *below <= rule.drop + 1e-6) return false;
      most = std::max(most, *top - *below);
      return true;
    });
    all.length += high.length;
    if (!all.at) all.at = high.at;
  }
  if (all.length > 1e-3) flag(job, ground, "edge-guard", "the edge of " + called(*ground.element), most, all, share);
}

// A wall that stands already: its top over the ground in front.
std::optional<double> drop_at(const plan::Wall& wall, double station) {
  if (!wall.top.empty() && !wall.ground.empty())
    return walls::Heights(wall.top).before(station) - walls::Heights(wall.ground).before(station);
  return wall.height ? std::optional(wall.height->metres().si()) : std::nullopt;
}

void of_wall(const plan::Job& job, const plan::Site& site, const plan::Ground& ground, const plan::Wall& wall,
             Share& share) {
  if (!wall.existing || wall.free_standing || !ground.path) return;
  const Guard rule = guard(job);
  const double side = wall.behind == geometry::Side::left ? 1 : -1;
  for (const auto& other : site.grounds) {
    const plan::Kind& kind = other->element->kind;
    if (!std::holds_alternative<plan::PavedArea>(kind) && !std::holds_alternative<plan::Steps>(kind)) continue;
    if (other->net.empty() ||
        !geometry::overlap(other->net.bounds(),
                           geometry::grown(ground.path->bounds(), plan::Length::nearest(units::Metres(rule.near + 1)))))
      continue;
    const Drawn walked{other->net, {}, {}};
    double most = 0;
    double before = 0;  // length of the edges before this one
    Stretches all;
    for (const Curve& edge : curves(*ground.path)) {
      const double whole = edge.length() / units::Length::steps_per_metre;
      const Stretches found = where(std::vector<Curve>{edge}, [&](Point point, const Curve&, double at) {
        const auto drop = drop_at(wall, before + at * whole);
        if (!drop || *drop <= rule.drop + 1e-6) return false;
        const Vec back = side * geometry::left_of(edge.direction(at));
        const Point top = geometry::moved(point, steps_of(wall.thickness.metres().si(), back));
        if (distance(walked, top) > rule.near) return false;
        most = std::max(most, *drop);
        return true;
      });
      before += whole;
      all.length += found.length;
      if (!all.at) all.at = found.at;
    }
    if (all.length > 1e-3) flag(job, ground, "wall-guard", called(*other->element), most, all, share);
  }
}

}  // namespace

void guards(const plan::Job& job, const plan::Site& site, const plan::Ground& ground, const levels::Terrain& terrain,
            Share& share) {
  const plan::Kind& kind = ground.element->kind;
  if (const auto* steps = std::get_if<plan::Steps>(&kind)) of_steps(job, ground, *steps, share);
  if (std::holds_alternative<plan::PavedArea>(kind)) of_area(job, ground, terrain, share);
  if (const auto* wall = std::get_if<plan::Wall>(&kind)) of_wall(job, site, ground, *wall, share);
}

}  // namespace takeoff::there
