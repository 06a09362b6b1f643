#include <algorithm>
#include <map>

#include "geometry/flatten.h"
#include "geometry/index.h"
#include "takeoff/levels/judged.h"
#include "takeoff/levels/lows.h"
#include "takeoff/levels/words.h"

namespace takeoff::levels {

using geometry::Facet;
using geometry::Point;
using geometry::Vec;
using plan::Meets;
using problem::Severity;

namespace {

constexpr double house_reach = 3.048;   // metres: 10 ft
constexpr double trace = 1e-4;          // m2
constexpr double least_towards = 5e-4;  // a share: less is level along the edge
constexpr double short_rim = 0.01;      // metres

struct Thing {
  const plan::Ground* ground = nullptr;
  bool pool = false;
  std::vector<geometry::Curve> edges;
};

std::vector<Thing> things(const plan::Site& site) {
  std::vector<Thing> all;
  for (const auto& ground : site.grounds) {
    const bool pool = std::holds_alternative<plan::Pool>(ground->element->kind);
    if (!pool && !std::holds_alternative<plan::Building>(ground->element->kind)) continue;
    Thing thing{ground.get(), pool, {}};
    for (const geometry::Outline* outline : ground->footprint.outlines())
      std::ranges::move(geometry::curves(outline->edges()), std::back_inserter(thing.edges));
    all.push_back(std::move(thing));
  }
  return all;
}

// How far along the way from `from` an edge is met, as a share of it; more than 1: it is not.
double met(const std::vector<geometry::Curve>& edges, Point from, Vec way) {
  double least = 2;
  for (const geometry::Curve& curve : edges) {
    if (!geometry::overlap(geometry::bounds(curve),
                           {{std::min(from.x, moved(from, way).x), std::min(from.y, moved(from, way).y)},
                            {std::max(from.x, moved(from, way).x), std::max(from.y, moved(from, way).y)}}))
      continue;
    const std::vector<Point> points = geometry::flatten(curve);
    for (std::size_t i = 1; i < points.size(); ++i) {
      const Vec one = points[i - 1] - from;
      const Vec edge = points[i] - points[i - 1];
      const double across = cross(way, edge);
      if (std::abs(across) < 1e-9) continue;
      const double on_way = cross(one, edge) / across;
      const double on_edge = cross(one, way) / across;
      if (on_way >= 0 && on_way <= 1 && on_edge >= 0 && on_edge <= 1) least = std::min(least, on_way);
    }
  }
  return least;
}

// The building or pool that water leaving over this rim runs to; nullptr: none within reach.
const Thing* runs_to(const Look& look, const Area& area, const std::vector<Thing>& all, std::size_t r, Vec down) {
  const plan::Stretch* facing = area.facing[r];
  const Meets meets = facing == nullptr ? Meets::planting : facing->meets;
  if (meets == Meets::building || meets == Meets::coping || meets == Meets::water) {
    const auto found = std::ranges::find(all, facing->other, [](const Thing& one) { return one.ground->element->id; });
    return found == all.end() ? nullptr : &*found;
  }
  if (meets == Meets::paving && look.terrain.finished.contains(facing->other)) return nullptr;
  const bool goes_on = meets == Meets::planting || meets == Meets::restraint || meets == Meets::paving ||
                       (meets == Meets::kerb && lets_off(area, r, look.site, look.terrain));
  if (!goes_on) return nullptr;
  const Point from = past(area, r, 0);
  const Vec way = (house_reach * units::Length::steps_per_metre / length(down)) * down;
  const Thing* nearest = nullptr;
  double least = 1;
  for (const Thing& thing : all) {
    const double share = met(thing.edges, from, way);
    if (share > least || look.inlets.channel_between(from, moved(from, share * way))) continue;
    least = share;
    nearest = &thing;
  }
  return nearest;
}

struct Towards {
  double fall = 0;
  double run = 0;  // metres of edge
  Point at;
};

void tell(const Look& look, const Area& area, const Thing& thing, const Towards& found, Judged& judged) {
  judged.share.problems.push_back(
      said(Severity::problem, thing.pool ? "falls-to-pool" : "falls-to-house",
           "it falls towards " + name_of(look.job, thing.ground->element->id) + " by up to " + percent(found.fall) +
               " along " + shown(look.job, found.run) + " of its edge",
           "change the levels so that it falls away, or put a channel between", area.ground->element->id, found.at));
}

// The least fall away from a building's wall or a coping, of the paving square in front of it. From a coping it must
// only not fall back towards it.
void look_away(const Look& look, const Area& area, const Thing& house, Judged& judged) {
  const double least = house.pool ? -least_towards : limit(look.job, "fall-house", Bound::least, 0.02);
  const std::vector<Facet>& facets = area.surface->facets();
  double size = 0;
  double worst = least;
  Point at;
  for (std::size_t i = 0; i < facets.size(); ++i) {
    const Facet& facet = facets[i];
    const double here = geometry::area(facet.ring);
    if (here <= trace) continue;
    Vec middle;
    for (const Vec corner : facet.ring) middle = middle + (1.0 / static_cast<double>(facet.ring.size())) * corner;
    const Point place = area.surface->point(middle);
    for (const geometry::Curve& wall : house.edges) {
      const geometry::Nearest foot = geometry::nearest(wall, place);
      if (foot.distance > house_reach || foot.share <= 0 || foot.share >= 1) continue;
      const Point on_wall = moved(wall.start, wall.at(foot.share));
      const Vec direction = wall.direction(foot.share);
      const Vec away{direction.y, -direction.x};  // the building lies on the left of its outline
      if (dot(away, place - on_wall) <= 0) continue;
      const double fall = -(facet.plane.gx * away.x + facet.plane.gy * away.y);
      if (fall >= least - 1e-7 || look.inlets.channel_between(place, on_wall)) continue;
      if (house.pool) judged.says[i] = "to the pool";
      size += here;
      if (fall < worst) {
        worst = fall;
        at = place;
      }
      break;
    }
  }
  if (size <= trace) return;
  if (house.pool) {
    judged.share.problems.push_back(
        said(Severity::problem, "falls-to-pool",
             shown_area(look.job, size) + " fall towards " + name_of(look.job, house.ground->element->id) +
                 ", by up to " + percent(-worst),
             "change the levels so that it falls away, or put a channel between", area.ground->element->id, at));
    return;
  }
  judged.share.problems.push_back(said(Severity::flag, "fall-house",
                                       shown_area(look.job, size) + " within " + shown(look.job, house_reach) + " of " +
                                           name_of(look.job, house.ground->element->id) + " fall less than " +
                                           percent(least) + " away from it, down to " + percent(worst),
                                       "let it fall away from the wall, or put a channel between",
                                       area.ground->element->id, at));
}

}  // namespace

void look_towards(const Look& look, const Area& area, Judged& judged) {
  const std::vector<Thing> all = things(look.site);
  std::map<const Thing*, Towards> found;
  for (std::size_t r = 0; r < area.joints.rims.size(); ++r) {
    const Rim& rim = area.joints.rims[r];
    const Facet& facet = area.surface->facets()[rim.facet];
    const Vec down{-facet.plane.gx, -facet.plane.gy};
    const double fall = dot(down, outwards(rim));
    if (fall <= least_towards || length(rim.to - rim.from) < short_rim || geometry::area(facet.ring) <= trace) continue;
    const Thing* thing = runs_to(look, area, all, r, down);
    if (thing == nullptr) continue;
    judged.says[rim.facet] = thing->pool ? "to the pool" : "to the house";
    Towards& one = found[thing];
    one.run += length(rim.to - rim.from);
    if (fall <= one.fall) continue;
    one.fall = fall;
    one.at = past(area, r, 0);
  }
  for (const Thing& thing : all) {
    const auto one = found.find(&thing);
    if (one != found.end()) tell(look, area, thing, one->second, judged);
    if (!thing.pool || one == found.end()) look_away(look, area, thing, judged);
  }
}

void look_for_lows(const Look& look, const Area& area, Judged& judged) {
  for (const Low& low : lows(area, look.site, look.terrain, look.inlets)) {
    const std::string held =
        low.held_by == nullptr || low.held_by->other.empty() ? "" : " against " + name_of(look.job, low.held_by->other);
    const std::string deep = low.depth ? shown(look.job, *low.depth) + " deep before it spills" : "with no way off";
    const bool shallow =
        low.depth && *low.depth <= limit(look.job, "ponding", Bound::greatest, units::metres_per_inch / 8);
    judged.share.problems.push_back(said(
        shallow ? Severity::notice : Severity::problem, shallow ? "puddle" : "low-point",
        "water stands" + held + ", " + deep + "; about " + shown_area(look.job, low.drains) + " drain to this place",
        "put an inlet there, open the edge, or change the levels", area.ground->element->id,
        area.surface->point(low.at)));
  }
}

}  // namespace takeoff::levels
