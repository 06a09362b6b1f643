#include "sheets/running.h"

#include <algorithm>
#include <cmath>

#include "takeoff/paving/area.h"
#include "takeoff/paving/rows.h"
#include "units/number.h"

namespace sheets {

using geometry::Vec;
using takeoff::paving::FrameEdge;
using takeoff::paving::Lattice;

namespace {

constexpr double per_metre = units::Length::steps_per_metre;
constexpr double seen = 0.0254 / 32;         // metres a joint
constexpr double on_the_edge = 0.0005;       // metres: what no tape tells
constexpr double straight_enough = 1.0 / 3;  // of the field's width, of edges that lie at one end of it

// The field in the frame of its pattern, metres from the start.
struct FieldFrame {
  std::vector<std::pair<Vec, Vec>> edges;
  Vec low, high;
};

FieldFrame in_frame(const geometry::Region& field, const Lattice& lattice) {
  takeoff::paving::FrameOutline outline;
  takeoff::paving::frame(takeoff::paving::chords(field), lattice, outline);
  FieldFrame made;
  for (const FrameEdge& edge : outline.edges) {
    const Vec from = (1 / per_metre) * edge.from, to = (1 / per_metre) * edge.to;
    const bool first = made.edges.empty();
    made.low = first ? from : Vec{std::min(made.low.x, from.x), std::min(made.low.y, from.y)};
    made.high = first ? from : Vec{std::max(made.high.x, from.x), std::max(made.high.y, from.y)};
    made.edges.emplace_back(from, to);
  }
  return made;
}

// True where edges as long as a third of the field lie at this end of it.
bool straight_end(const FieldFrame& field, bool along, double end) {
  const double across = along ? field.high.y - field.low.y : field.high.x - field.low.x;
  double length = 0;
  for (const auto& [from, to] : field.edges) {
    const double a = along ? from.x : from.y, b = along ? to.x : to.y;
    if (std::abs(a - end) < on_the_edge && std::abs(b - end) < on_the_edge) length += geometry::length(to - from);
  }
  return across > 0 && length >= straight_enough * across;
}

// One unit is one step: all units of the repeat have one size and lie one way, and follow each other without a gap.
bool one_unit(const Lattice& lattice, bool along) {
  const auto& first = lattice.kinds.front();
  const bool alike = std::ranges::all_of(
      lattice.kinds, [&](const auto& kind) { return kind.width == first.width && kind.height == first.height; });
  const double step = along ? lattice.along : lattice.across.y, unit = along ? first.width : first.height;
  return alike && lattice.kinds.size() == 1 && std::abs(step - unit - lattice.joint) < 1;
}

Running running(const plan::ElementId& area, const Lattice& lattice, const FieldFrame& field, bool along) {
  Running made;
  made.of = area;
  made.along = along;
  made.module = (along ? lattice.along : lattice.across.y) / per_metre;
  made.joint = lattice.joint / per_metre;
  made.units = one_unit(lattice, along);
  if (!along && lattice.along > 0) {
    const double moved = std::fmod(lattice.across.x, lattice.along);
    made.shift = (moved < 0 ? moved + lattice.along : moved) / per_metre;
  }
  const double low = along ? field.low.x : field.low.y, high = along ? field.high.x : field.high.y;
  made.back = std::max(0.0, -low);
  made.ahead = std::max(0.0, high);
  if (!made.units || !straight_end(field, along, low) || !straight_end(field, along, high)) return made;
  made.whole = come_out_whole(high - low, made.module - made.joint, made.joint);
  if (!made.whole) {
    const double over = std::fmod(high - low, made.module);
    made.last = over < on_the_edge ? 0 : over;
  }
  return made;
}

}  // namespace

std::optional<Running::Whole> come_out_whole(double span, double width, double joint) {
  const double steps = std::round((span + joint) / (width + joint));
  if (!(width > 0) || steps < 2 || steps > 1e6) return std::nullopt;
  const double open = (span - steps * width) / (steps - 1) - joint;
  if (std::abs(open) > seen) return std::nullopt;
  return Running::Whole{static_cast<int>(steps), open};
}

std::vector<Running> running_measures(const Printed& printed, const plan::ElementId& area) {
  const results::Results& all = *printed.results;
  const plan::Ground* ground = all.site.find(area);
  const auto laid = all.takeoff.layouts.find(area);
  if (!ground || laid == all.takeoff.layouts.end() || !laid->second || laid->second->lattice.kinds.empty()) return {};
  const Lattice& lattice = laid->second->lattice;
  const FieldFrame field = in_frame(takeoff::paving::lay_area(printed.job(), all.site, *ground).field, lattice);
  if (field.edges.empty()) return {};
  return {running(area, lattice, field, true), running(area, lattice, field, false)};
}

std::vector<int> marked_steps(const Running& running) {
  constexpr std::size_t most = 12;
  std::vector<int> steps;
  const double reach = std::max(running.back, running.ahead);
  for (int step = 1; steps.size() < most && step * running.module <= reach;
       step += step < 10 ? (step == 1 ? 4 : 5) : 10)
    steps.push_back(step);
  return steps;
}

std::optional<std::string> working_of_running(const Printed& printed, const std::string& area, const std::string& way) {
  for (const Running& one : running_measures(printed, area)) {
    if (way != (one.along ? "along" : "out")) continue;
    std::string text = "steps of " + units::show_number(one.module * 1000, 3) + " mm, joint of " +
                       units::show_number(one.joint * 1000, 3) + " mm included, from the start of " + area;
    if (one.whole)
      text += "; " + std::to_string(one.whole->count) + " of them between its two ends with each joint " +
              units::show_number(one.whole->open * 1000, 3) + " mm wider";
    return text;
  }
  return std::nullopt;
}

}  // namespace sheets
