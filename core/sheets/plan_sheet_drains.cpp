#include <algorithm>
#include <cmath>
#include <numbers>

#include "sheets/parts.h"
#include "sheets/plan_sheet_parts.h"
#include "sheets/source.h"
#include "takeoff/water/network.h"
#include "units/number.h"

namespace sheets {

namespace {

using takeoff::water::Run;

constexpr double same_place = 0.05;  // metres

class DrainMeasurer {
 public:
  DrainMeasurer(const Printed& printed, Drawing& drawing) : printed_(printed), drawing_(drawing) {}

  void take(const plan::ElementId& id, const Run& run) {
    along(id, run);
    if (const auto start = run.start()) invert(metres(run.path.edges().front().from), *start, id, "start_level_m");
    if (const auto end = run.end()) invert(metres(run.path.end()), *end, id, "end_level_m");
  }

 private:
  // Along its longest straight, or its middle where it has none.
  void along(const plan::ElementId& id, const Run& run) {
    geometry::Curve longest = run.path.curve(0);
    for (std::size_t i = 1; i < run.path.size(); ++i)
      if (run.path.curve(i).length() > longest.length()) longest = run.path.curve(i);
    constexpr double per_metre = units::Length::steps_per_metre;
    const Vec at = metres(longest.start) + (1 / per_metre) * longest.at(0.3), way = longest.direction(0.3);
    double angle = std::atan2(way.y, way.x);
    if (angle > std::numbers::pi / 2 + 1e-6) angle -= std::numbers::pi;
    if (angle <= -std::numbers::pi / 2 + 1e-6) angle += std::numbers::pi;
    const std::string length = length_words(printed_, run.length);
    const auto start = run.start(), end = run.end();
    const std::string words =
        start && end && run.length > 0
            ? filled(printed_, "%1 at %2 %", {length, units::show_number((*start - *end) / run.length * 100, 1)})
            : length;
    drawing_.labels.push_back({at, {words, of_measure(id, "length_m")}, Align::centre, angle});
  }

  // Two runs that meet at one level share a label.
  void invert(Vec at, double level, const plan::ElementId& id, const std::string& measure) {
    const std::string words = filled(printed_, "inv %1", {show_height(level, printed_.job().heading.units)});
    const bool said = std::ranges::any_of(drawing_.labels, [&](const Label& label) {
      return label.said.words == words && geometry::length(label.at - at) < same_place + 0.5;
    });
    if (!said) drawing_.labels.push_back({{at.x, at.y - 0.4}, {words, of_measure(id, measure)}});
  }

  const Printed& printed_;
  Drawing& drawing_;
};

}  // namespace

void measure_drains(const Printed& printed, Drawing& drawing) {
  const takeoff::water::Network network = takeoff::water::network(printed.job());
  DrainMeasurer measurer(printed, drawing);
  for (const auto& [id, run] : network.runs) measurer.take(id, run);
}

}  // namespace sheets
