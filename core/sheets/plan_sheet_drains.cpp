#include <algorithm>
#include <cmath>
#include <utility>

#include "sheets/parts.h"
#include "sheets/plan_sheet_parts.h"
#include "sheets/source.h"
#include "takeoff/water/network.h"
#include "units/number.h"

namespace sheets {

namespace {

using takeoff::water::Run;

constexpr double near = 0.5;  // metres: ends that share one place

class DrainMeasurer {
 public:
  DrainMeasurer(const Printed& printed, Places places, Drawing& drawing)
      : printed_(printed), places_(std::move(places)), drawing_(drawing) {
    places_.take_marks(*drawing.figure);
  }

  void take(const plan::ElementId& id, const Run& run) {
    if (const auto start = run.start()) invert(metres(run.path.edges().front().from), *start, id, "start_level_m");
    if (const auto end = run.end()) invert(metres(run.path.end()), *end, id, "end_level_m");
    // Beside its longest edge.
    geometry::Curve longest = run.path.curve(0);
    for (std::size_t i = 1; i < run.path.size(); ++i)
      if (run.path.curve(i).length() > longest.length()) longest = run.path.curve(i);
    const std::string length = length_words(printed_, run.length);
    const auto start = run.start(), end = run.end();
    const std::string words = start && end && run.length > 0
                                  ? filled(printed_, "%1: %2 at %3 %",
                                           {id, length, units::show_number((*start - *end) / run.length * 100, 1)})
                                  : filled(printed_, "%1: %2", {id, length});
    along(longest, {words, of_measure(id, "length_m")});
  }

  // What lies in the ground already, with how deep.
  void take(const plan::Ground& ground, const plan::SiteMark& mark) {
    if (!mark.depth || !ground.path) return;
    const plan::Element& element = *ground.element;
    const std::string depth = length_words(printed_, mark.depth->metres().si());
    const std::string words = filled(printed_, "%1: %2 deep", {element.id, depth});
    along(ground.path->curve(0), {words, of_element(element.id, "depth")});
  }

 private:
  double under(double millimetres) const { return places_.scale().under(millimetres); }

  void put(const std::vector<Spot>& spots, const Said& said) {
    const int found = places_.take_first(spots);
    const Spot& spot = spots[found < 0 ? 0 : static_cast<std::size_t>(found)];
    drawing_.labels.push_back({spot.middle, said, Align::centre, spot.turn});
  }

  // To the right of a place, to its left, under it or over it, further and further out.
  std::vector<Spot> about(Vec at, const std::string& words) const {
    const double wide = label_wide_mm(words);
    std::vector<Spot> spots;
    for (const double further : {0.0, 5.0, 10.0, 15.0})
      for (const Vec way : {Vec{1, 0}, Vec{-1, 0}, Vec{0, -1}, Vec{0, 1}}) {
        const double off = std::abs(way.x) * wide / 2 + 3 + further;
        spots.push_back({at + under(off) * way, wide, label_high_mm, 0});
      }
    return spots;
  }

  // Beside an edge where it is long enough for the words, else about its middle.
  void along(const geometry::Curve& edge, const Said& said) {
    constexpr double per_metre = units::Length::steps_per_metre;
    const double wide = label_wide_mm(said.words);
    std::vector<Spot> spots;
    for (const double share : {0.5, 0.35, 0.65, 0.2, 0.8})
      for (const double out : {-3.0, 3.0}) {
        if (edge.length() / per_metre < under(wide)) continue;
        const Vec way = edge.direction(share), at = metres(edge.start) + (1 / per_metre) * edge.at(share);
        spots.push_back(
            {at + under(out) * geometry::left_of(way), wide, label_high_mm, readable(std::atan2(way.y, way.x))});
      }
    for (const Spot& spot : about(metres(edge.start) + (1 / per_metre) * edge.at(0.5), said.words))
      spots.push_back(spot);
    put(spots, said);
  }

  // Two runs that meet at one level share the words.
  void invert(Vec at, double level, const plan::ElementId& id, const std::string& measure) {
    const std::string words = filled(printed_, "inv %1", {show_height(level, printed_.job().heading.units)});
    const auto same = [&](const EndAt& one) { return one.words == words && geometry::length(one.at - at) < near; };
    if (std::ranges::any_of(inverts_, same)) return;
    inverts_.push_back({at, words});
    put(about(at, words), {words, of_measure(id, measure)});
  }

  struct EndAt {
    Vec at;
    std::string words;
  };
  const Printed& printed_;
  Places places_;
  Drawing& drawing_;
  std::vector<EndAt> inverts_;
};

}  // namespace

void measure_drains(const Printed& printed, const PlanRoom& room, double wide_mm, double high_mm, Drawing& drawing) {
  if (room.empty) return;
  const PaperScale scale =
      fitting(room.high.x - room.low.x, room.high.y - room.low.y, wide_mm, high_mm, printed.job().heading.units);
  const takeoff::water::Network network = takeoff::water::network(printed.job());
  DrainMeasurer measurer(printed, places_in(room, scale, wide_mm, high_mm), drawing);
  for (const auto& [id, run] : network.runs) measurer.take(id, run);
  for (const auto& ground : printed.results->site.grounds)
    if (const auto* mark = std::get_if<plan::SiteMark>(&ground->element->kind)) measurer.take(*ground, *mark);
}

}  // namespace sheets
