// Steps and pillars: a pad under each.
#include <algorithm>
#include <cmath>

#include "takeoff/ground/digger.h"
#include "takeoff/walls/pad.h"
#include "takeoff/walls/walls.h"

namespace takeoff::ground {

using geometry::Point;
using geometry::Vec;

namespace {

constexpr double steps = units::Length::steps_per_metre;

bool surveyed(const Digger& d) { return d.terrain.existing && !d.terrain.existing->empty(); }

// A rectangle of ground along a direction, metres, from the middle of its first side.
struct Plot {
  Point foot;
  Vec way;  // unit vector
  double length = 0;
  double width = 0;
};

Plot plot(const geometry::Region& region, Vec way) {
  const geometry::Ring& ring = region.polygons().front().outer.edges();
  const Vec left = geometry::left_of(way);
  double low = 0, high = 0, right = 0, most_left = 0;
  for (const geometry::Edge& edge : ring) {
    const Vec from = edge.from - ring.front().from;
    low = std::min(low, dot(from, way)), high = std::max(high, dot(from, way));
    right = std::min(right, dot(from, left)), most_left = std::max(most_left, dot(from, left));
  }
  const Point foot = geometry::moved(ring.front().from, low * way + ((right + most_left) / 2) * left);
  return {foot, way, (high - low) / steps, (most_left - right) / steps};
}

struct Base {
  double thickness = 0;
  double past = 0;
};
std::optional<Base> base_of(const plan::Job& job, const plan::Id& id) {
  const catalogue::BuildUp* build_up = id.empty() ? nullptr : job.catalogue->build_up(id);
  if (!build_up) return std::nullopt;
  Base made;
  for (const catalogue::Layer& layer : build_up->layers) {
    if (layer.thickness) made.thickness += layer.thickness->metres().si();
    made.past = std::max(made.past, layer.past_edge.metres().si());
  }
  return made;
}

// The ground as it shall be just outside of a plot, where it is known, else as it lies.
std::optional<double> ground_beside(const Digger& d, const Plot& plot) {
  constexpr double out = 0.05;
  for (const double along : {-out, plot.length + out})
    if (const auto height = d.terrain.finished_at(geometry::moved(plot.foot, steps * along * plot.way))) return height;
  for (const double side : {-1.0, 1.0}) {
    const Vec across = (side * (plot.width / 2 + out)) * geometry::left_of(plot.way);
    if (const auto height =
            d.terrain.finished_at(geometry::moved(plot.foot, steps * (plot.length / 2 * plot.way + across))))
      return height;
  }
  return d.terrain.existing_at(geometry::moved(plot.foot, steps * (plot.length / 2) * plot.way));
}

// Digs stretches of a plot, each to a level of its own.
struct Pads {
  Digger& d;
  const plan::ElementId& id;
  const Plot& plot;
  double past = 0;
  std::function<double(double)> ground;  // by places along, where no survey tells it
  Hole hole = {};
  double volume = 0, virgin = 0, deepest = 0, length = 0, deep = 0, protect = 0;

  void dig(double from, double to, double level) {
    const auto slice = [&](double station) {
      Slice made;
      made.station = station;
      made.at = geometry::moved(plot.foot, steps * station * plot.way);
      made.across = geometry::left_of(plot.way);
      const double half = plot.width / 2 + past;
      made.bottom = {{-half, level}, {half, level}};
      const double given = ground(station);
      made.given = [given](double) { return given; };
      return made;
    };
    const auto measure = [](const Slice&, const Section& cut) {
      return std::vector<double>{cut.area(0), cut.virgin_width(0)};
    };
    const Along run = along(from, to, slice, surveyed(d) ? d.lie.asked() : d.lie.asked_by_depth(), measure, hole);
    length += run.length;
    if (!run.volumes.empty()) volume += run.volumes[0], virgin += run.volumes[1];
    deepest = std::max(deepest, run.deepest);
    deep += run.as_deep_as(d.limit("dig-egress", 48));
    protect += run.as_deep_as(d.limit("dig-protect", 60));
  }

  void put(const std::string& text) {
    d.measured(id, "dig_m3", volume);
    d.measured(id, "dig_deepest_m", deepest);
    if (volume > 1e-9)
      d.dug({.text = text,
             .of = {id},
             .bank = of_sections("bank volume under " + id, length, volume, id),
             .deepest = deepest,
             .way_out = deep,
             .protect = protect,
             .trench = true});
    d.topsoil_off({id}, virgin);
    if (surveyed(d)) d.lie.add(std::move(hole));
  }
};

}  // namespace

// Under each tread to the underside of its base; without levels the ground is taken to rise evenly with the flight.
void dig_steps(Digger& d) {
  for (const auto& ground : d.site.grounds) {
    const auto* steps_here = std::get_if<plan::Steps>(&ground->element->kind);
    if (!steps_here || ground->drawn.empty()) continue;
    const plan::ElementId& id = ground->element->id;
    const Measures flight = walls::steps(d.job, d.site, *ground).measures;
    const auto risers = flight.get("risers"), riser = flight.get("riser_m"), lowest = flight.get("riser_lowest_m"),
               tread = flight.get("tread_m");
    if (!risers || !riser || !lowest || !tread || *risers < 1) continue;
    const double up = steps_here->up.radians();
    const Plot here = plot(ground->drawn, {std::cos(up), std::sin(up)});
    const Base base = base_of(d.job, steps_here->build_up).value_or(Base());
    const double fall = steps_here->tread_fall.value_or(d.job.catalogue->number_limit("tread-pitch", 0.125) / 12);
    // The foot: the ground in front of the flight.
    const Point before = geometry::moved(here.foot, -0.05 * steps * here.way);
    const auto finished = d.terrain.finished_at(before), existing = d.terrain.existing_at(before);
    const double foot = finished ? *finished : existing.value_or(0);
    const double rise = steps_here->rise.metres().si(), run = std::max(here.length, 1e-6);
    Pads pads{d, id, here, base.past, [=](double at) { return foot + rise * std::clamp(at / run, 0.0, 1.0); }};
    const int count = static_cast<int>(std::lround(*risers));
    for (int i = 0; i < count; ++i) {
      const double below = i == 0 ? 0 : *lowest + (i - 1) * (*riser + *tread * fall);
      const double from = i == 0 ? -base.past : i * *tread;
      const double to = i + 1 == count ? here.length + base.past : (i + 1) * *tread;
      pads.dig(from, to, foot + below - base.thickness);
    }
    if (!surveyed(d)) d.by_one_depth.push_back(id);
    pads.put("dig under " + id);
  }
}

void dig_pillars(Digger& d) {
  for (const auto& ground : d.site.grounds) {
    const auto* out = std::get_if<plan::KeepOut>(&ground->element->kind);
    if (!out || !out->pillar || ground->drawn.empty()) continue;
    const plan::ElementId& id = ground->element->id;
    const Measures stands = walls::pillar(d.job, *ground).measures;
    const auto courses = stands.get("pillar_courses"), above = stands.get("pillar_height_m");
    const catalogue::Item* block = d.job.catalogue->item(out->pillar->block);
    if (!courses || !above || !block || !block->height) continue;
    const geometry::Ring& ring = ground->drawn.polygons().front().outer.edges();
    const Vec first = ring.at(1).from - ring.front().from;
    const Plot here = plot(ground->drawn, (1 / geometry::length(first)) * first);
    const Base base = base_of(d.job, out->pillar->build_up).value_or(Base());
    const double level = ground_beside(d, here).value_or(0);
    const double buried = *courses * block->height->metres().si() - *above;
    Pads pads{d, id, here, base.past, [level](double) { return level; }};
    pads.dig(-base.past, here.length + base.past, level - buried - base.thickness);
    if (!surveyed(d)) d.by_one_depth.push_back(id);
    pads.put("dig under " + id);
  }
}

}  // namespace takeoff::ground
