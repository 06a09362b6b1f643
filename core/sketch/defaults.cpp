#include "sketch/defaults.h"

#include <cmath>
#include <numbers>
#include <ranges>

namespace sketch {

using plan::Job;

namespace {

template <class T>
const T* last(const Job& job) {
  for (const plan::ElementPtr& element : job.elements | std::views::reverse)
    if (const T* kind = std::get_if<T>(&element->kind)) return kind;
  return nullptr;
}

template <class T>
const T* last_of(const Job& job, const std::string& what) {
  for (const plan::ElementPtr& element : job.elements | std::views::reverse) {
    const T* kind = std::get_if<T>(&element->kind);
    if (kind && kind->what == what) return kind;
  }
  return nullptr;
}

plan::DrawnShape outline(const Made& made) {
  if (!made.shape || !made.shape->closes) return {};
  return {made.shape->ring};
}
std::optional<plan::DrawnLine> line(const Made& made) {
  if (!made.shape || made.shape->closes) return {};
  return made.shape->line;
}

plan::Kind area(const Job& job, const Made& made) {
  plan::PavedArea area;
  area.outline = outline(made);
  const auto* before = last<plan::PavedArea>(job);
  if (!before) return area;
  area.build_up = before->build_up;
  area.laying = before->laying;
  area.borders = before->borders;
  area.joint_fill = before->joint_fill;
  area.vehicles = before->vehicles;
  if (area.laying) {
    area.laying->start = made.shape->first;
    const geometry::Vec along = made.shape->along;
    area.laying->direction = units::Angle::degrees(std::atan2(along.y, along.x) * 180 / std::numbers::pi);
  }
  return area;
}

plan::Kind pool(const Job& job, const Made& made) {
  plan::Pool pool;
  pool.outline = outline(made);
  const auto* before = last<plan::Pool>(job);
  if (!before) return pool;
  pool.coping = before->coping;
  pool.shell = before->shell;
  pool.surround = before->surround;
  pool.collar = before->collar;
  pool.bonding = before->bonding;
  return pool;
}

// All that it is built of; its heights, ground, outlets, reinforcement and loads are its own.
plan::Kind wall(const Job& job, const Made& made) {
  plan::Wall wall;
  if (const auto* before = last<plan::Wall>(job)) {
    wall = *before;
    wall.height.reset();
    for (auto* heights : {&wall.ground, &wall.ground_behind, &wall.top, &wall.base}) heights->clear();
    if (wall.pipe) wall.pipe->outlets.clear();
    wall.layers.clear();
    wall.loads.reset();
    wall.drained_by.clear();
    wall.existing = false;
    wall.toe_slope = 0;
    wall.start_end = wall.finish_end = plan::Wall::End::free;
  }
  wall.line = line(made).value_or(plan::DrawnLine{});
  return wall;
}

plan::Kind building(const Job& job, const Made& made) {
  plan::Building building;
  building.outline = outline(made);
  if (const auto* before = last<plan::Building>(job)) building.face = before->face;
  return building;
}

plan::Kind keep_out(const Job&, const Made& made, const std::string& what) {
  plan::KeepOut keep_out;
  keep_out.outline = outline(made);
  keep_out.what = what;
  return keep_out;
}

plan::Kind edge(const Job& job, const Made& made, const std::string& what) {
  plan::EdgeRun run;
  if (const auto* before = last_of<plan::EdgeRun>(job, what)) run = *before;
  run.line = line(made).value_or(plan::DrawnLine{});
  run.what = what;
  return run;
}

plan::Kind drain(const Job& job, const Made& made, const std::string& what) {
  plan::DrainRun run;
  if (const auto* before = last_of<plan::DrainRun>(job, what)) {
    run = *before;
    run.start.reset();
    run.inverts.clear();
    run.into.clear();
    run.outlet_ground.reset();
    run.parts.clear();
  }
  run.line = line(made).value_or(plan::DrawnLine{});
  run.what = what;
  return run;
}

plan::Kind removal(const Job& job, const Made& made, const std::string& what) {
  plan::Removal removal;
  if (const auto* before = last_of<plan::Removal>(job, what)) {
    removal = *before;
    removal.top.reset();
  }
  removal.outline = outline(made);
  removal.line = line(made);
  removal.what = what;
  return removal;
}

plan::Kind protection(const Job& job, const Made& made) {
  plan::Protection protection;
  if (const auto* before = last<plan::Protection>(job)) protection.item = before->item;
  protection.outline = outline(made);
  protection.line = line(made);
  return protection;
}

plan::Kind site_mark(const Made& made, const std::string& what) {
  plan::SiteMark mark;
  mark.outline = outline(made);
  mark.line = line(made);
  if (!made.shape) mark.points = {made.at};
  mark.what = what;
  return mark;
}

plan::Kind steps(const Job& job, const Made& made) {
  plan::Steps steps;
  if (const auto* before = last<plan::Steps>(job)) {
    steps = *before;
    steps.risers = 0;
    steps.rise = {};
  }
  steps.outline = outline(made);
  return steps;
}

plan::Kind feature(const Job& job, const Made& made) {
  plan::Feature feature;
  if (const auto* before = last<plan::Feature>(job)) feature.item = before->item;
  feature.at = made.at;
  return feature;
}

template <class T>
std::string what_of(const Job& job) {
  const T* before = last<T>(job);
  return before ? before->what : std::string();
}

}  // namespace

plan::Kind fresh(Hand hand, const Job& job, const Made& made, const std::string& what) {
  switch (hand) {
    case Hand::area: return area(job, made);
    case Hand::pool: return pool(job, made);
    case Hand::wall: return wall(job, made);
    case Hand::building: return building(job, made);
    case Hand::keep_out: return keep_out(job, made, what);
    case Hand::edge: return edge(job, made, what);
    case Hand::drain: return drain(job, made, what);
    case Hand::removal: return removal(job, made, what);
    case Hand::protection: return protection(job, made);
    case Hand::site_mark: return site_mark(made, what);
    case Hand::steps: return steps(job, made);
    case Hand::feature: return feature(job, made);
    case Hand::level: return plan::Level{made.at, {}, what, {}};
    default: return plan::Note{made.at, {}};
  }
}

std::string last_what(Hand hand, const Job& job) {
  switch (hand) {
    case Hand::keep_out: return what_of<plan::KeepOut>(job);
    case Hand::edge: return what_of<plan::EdgeRun>(job);
    case Hand::drain: return what_of<plan::DrainRun>(job);
    case Hand::removal: return what_of<plan::Removal>(job);
    case Hand::site_mark: return what_of<plan::SiteMark>(job);
    case Hand::level: return what_of<plan::Level>(job);
    default: return {};
  }
}

}  // namespace sketch
