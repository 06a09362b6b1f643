#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

#include "geometry/flatten.h"
#include "sheets/parts.h"
#include "sheets/plan_sheet_parts.h"
#include "sheets/source.h"
#include "takeoff/setting_out/drawings.h"

namespace sheets {

namespace {

constexpr double least_mm = 12;    // of an edge on paper: shorter ones have no room for their words
constexpr double out_mm = 6;       // of a dimension's line from its edge
constexpr double beside_mm = 3.0;  // of words along an edge
constexpr double per_metre = units::Length::steps_per_metre;
constexpr double same_place = 0.35;  // metres: edges that run so near beside each other are measured once

geometry::Point point(Vec metres) {
  return {units::Length::nearest(units::Metres(metres.x)), units::Length::nearest(units::Metres(metres.y))};
}

bool built(const plan::Kind& kind) {
  return std::holds_alternative<plan::PavedArea>(kind) || std::holds_alternative<plan::Pool>(kind) ||
         std::holds_alternative<plan::Steps>(kind) || std::holds_alternative<plan::Wall>(kind) ||
         std::holds_alternative<plan::EdgeRun>(kind);
}

// One edge with its outside to the left of the way from `from` to `to`.
struct Side {
  plan::ElementId of;
  int number = 0;
  geometry::Curve curve;  // as drawn
  Vec from;
  Vec to;
  bool turned = false;  // against the way it was drawn
  double length() const { return geometry::length(to - from); }
  Vec at(double share) const { return metres(curve.start) + (1 / per_metre) * curve.at(share); }
  Vec outside(double share) const { return (turned ? -1.0 : 1.0) * geometry::left_of(curve.direction(share)); }
  Vec centre() const { return metres(curve.start) + (1 / per_metre) * curve.centre(); }
  double radius() const { return curve.straight() ? 0 : curve.radius() / per_metre; }
};

// Beside a line: behind a wall, and where a kerb's paving is not.
bool outside_is_left(const plan::Kind& kind) {
  if (const auto* wall = std::get_if<plan::Wall>(&kind)) return wall->behind == geometry::Side::left;
  if (const auto* run = std::get_if<plan::EdgeRun>(&kind)) return run->paving == geometry::Side::right;
  return false;
}

// Rings are kept as they were drawn, either way round; of an island what is outside the ground lies in it.
bool walked_round_left(const takeoff::setting_out::Drawn& drawn) {
  std::vector<Vec> corners;
  for (const geometry::Curve& curve : drawn.curves) {
    corners.push_back(metres(curve.start));
    if (!curve.straight()) corners.push_back(metres(curve.start) + (1 / per_metre) * curve.at(0.5));
  }
  const bool island = drawn.first_edge > 1;
  return (area_of(polygon(std::move(corners))) > 0) == island;
}

std::vector<Side> sides_of(const plan::Ground& ground) {
  std::vector<Side> all;
  for (const takeoff::setting_out::Drawn& drawn : takeoff::setting_out::drawings(ground)) {
    int number = drawn.first_edge;
    const bool left = ground.path ? outside_is_left(ground.element->kind) : walked_round_left(drawn);
    for (const geometry::Curve& curve : drawn.curves) {
      Side side{ground.element->id, number++, curve, metres(curve.start), metres(curve.end), !left};
      if (side.turned) std::swap(side.from, side.to);
      all.push_back(side);
    }
  }
  return all;
}

bool same(const Side& a, const Side& b) {
  if (a.curve.straight() != b.curve.straight()) return false;
  if (!a.curve.straight())
    return geometry::length(a.centre() - b.centre()) < same_place && std::abs(a.radius() - b.radius()) < 0.01;
  return geometry::length(a.at(0.5) - b.at(0.5)) < same_place && std::abs(a.length() - b.length()) < same_place;
}

// Tried one after the other along an edge: its middle first.
constexpr std::array shares{0.5, 0.38, 0.62, 0.26, 0.74, 0.15, 0.85};

class Measurer {
 public:
  Measurer(const Printed& printed, Places places, Drawing& drawing)
      : printed_(printed), places_(std::move(places)), drawing_(drawing) {
    places_.take_marks(*drawing.figure);
  }

  // Areas first, so that what runs along them is measured as their edge.
  void edges() {
    for (const bool areas : {true, false})
      for (const auto& ground : printed_.results->site.grounds) {
        const plan::Kind& kind = ground->element->kind;
        if (!built(kind) || std::holds_alternative<plan::PavedArea>(kind) != areas) continue;
        for (const Side& side : sides_of(*ground)) take(side);
      }
  }

  // From a pool's water to the building that is nearest.
  void offsets() {
    for (const auto& ground : printed_.results->site.grounds)
      if (std::holds_alternative<plan::Pool>(ground->element->kind)) offset_of(*ground);
  }

 private:
  double under(double millimetres) const { return places_.scale().under(millimetres); }

  void take(const Side& side) {
    if (under(least_mm) > side.length()) return;
    if (std::ranges::any_of(taken_, [&](const Side& other) { return same(side, other); })) return;
    taken_.push_back(side);
    const std::string from = of_element(side.of, "edge " + std::to_string(side.number));
    if (!side.curve.straight())
      return beside(side, {filled(printed_, "R %1", {length_words(printed_, side.radius())}), from}, false);
    const Said said{length_words(printed_, side.length()), from};
    if (!outside(side, said)) beside(side, said, true);
  }

  // A line with ticks outside everything that is built, its words over it.
  bool outside(const Side& side, const Said& said) {
    const Vec out = side.outside(0.5), way = side.to - side.from;
    const double turn = std::atan2(way.y, way.x);
    const Vec middle = side.at(0.5) + under(out_mm) * out;
    // The words stand on the side of the line from which they are read.
    const Vec up = geometry::left_of(from_angle(readable(turn)));
    const Spot words{middle + under(label_high_mm / 2) * up, label_wide_mm(said.words), label_high_mm, turn};
    const Spot line{middle, side.length() / under(1), 1.5, turn};
    if (!free_there(side.at(0.5) + under(out_mm + 2) * out) || !places_.free(words) || !places_.free(line))
      return false;
    places_.take(words);
    places_.take(line);
    drawing_.dimensions.push_back({side.from, side.to, out_mm, said});
    return true;
  }

  // Words along the edge or beside it, where there is room; where there is none the sheet for setting out has it.
  void beside(const Side& side, const Said& said, bool along) {
    std::vector<Spot> spots;
    for (const double share : shares)
      for (const double out : {-1.0, 1.0}) {
        const Vec way = side.curve.direction(share);
        const double wide = label_wide_mm(said.words);
        const double off = along ? beside_mm : beside_mm + std::abs(side.outside(share).x) * wide / 2;
        spots.push_back({side.at(share) + (out * under(off)) * side.outside(share), wide, label_high_mm,
                         along ? readable(std::atan2(way.y, way.x)) : 0});
      }
    const int found = places_.take_first(spots);
    if (found < 0) return;
    const Spot& spot = spots[static_cast<std::size_t>(found)];
    drawing_.labels.push_back({spot.middle, said, Align::centre, spot.turn});
  }

  bool free_there(Vec at) const {
    return std::ranges::none_of(printed_.results->site.grounds, [at](const auto& ground) {
      return (built(ground->element->kind) || std::holds_alternative<plan::Building>(ground->element->kind)) &&
             ground->drawn.contains(point(at));
    });
  }

  struct Nearest {
    Vec from;
    Vec to;
    double apart = 1e9;
  };

  static std::vector<Vec> ring_of(const geometry::Outline& outline) {
    std::vector<Vec> ring;
    for (const geometry::Point& at : geometry::flatten(outline.edges(), units::Length::millimetres(1)))
      ring.push_back(metres(at));
    return ring;
  }

  static Vec nearest_on(Vec a, Vec b, Vec at) {
    const Vec along = b - a;
    const double square = geometry::dot(along, along);
    return a + (square > 0 ? std::clamp(geometry::dot(at - a, along) / square, 0.0, 1.0) : 0.0) * along;
  }

  // Corner to side, both ways round.
  static void take_nearest(const std::vector<Vec>& one, const std::vector<Vec>& other, bool turned, Nearest& nearest) {
    for (const Vec& corner : one)
      for (std::size_t i = 0; i < other.size(); ++i) {
        const Vec on = nearest_on(other[i], other[(i + 1) % other.size()], corner);
        const double apart = geometry::length(on - corner);
        if (apart >= nearest.apart) continue;
        nearest = turned ? Nearest{on, corner, apart} : Nearest{corner, on, apart};
      }
  }

  void offset_of(const plan::Ground& pool) {
    Nearest nearest;
    for (const auto& ground : printed_.results->site.grounds) {
      if (!std::holds_alternative<plan::Building>(ground->element->kind)) continue;
      for (const geometry::Outline* water : pool.drawn.outlines())
        for (const geometry::Outline* house : ground->drawn.outlines()) {
          take_nearest(ring_of(*house), ring_of(*water), false, nearest);
          take_nearest(ring_of(*water), ring_of(*house), true, nearest);
        }
    }
    if (nearest.apart > 1e8 || nearest.apart < under(least_mm)) return;
    drawing_.dimensions.push_back(
        {nearest.from,
         nearest.to,
         0,
         {length_words(printed_, nearest.apart), of_element(pool.element->id, "distance from the building")}});
  }

  const Printed& printed_;
  Places places_;
  Drawing& drawing_;
  std::vector<Side> taken_;
};

}  // namespace

PlanRoom plan_room(const Printed& printed, bool deep) {
  Extent extent;
  for (const auto& ground : printed.results->site.grounds) {
    const plan::Kind& kind = ground->element->kind;
    const bool drain = std::holds_alternative<plan::DrainRun>(kind);
    if (!built(kind) && !(deep && drain) && !std::holds_alternative<plan::KeepOut>(kind)) continue;
    for (const Contour& contour : contours(ground->footprint.empty() ? ground->drawn : ground->footprint))
      extent.take(contour);
    if (ground->path) extent.take(contour(*ground->path));
  }
  if (extent.empty()) return {};
  constexpr double margin = 0.3;  // metres, of what stands beside it
  return {
      {extent.low().x - margin, extent.low().y - margin}, {extent.high().x + margin, extent.high().y + margin}, false};
}

Places places_in(const PlanRoom& room, PaperScale scale, double wide_mm, double high_mm) {
  constexpr double round = 10;  // mm that words may stand out into what is kept free round the plan
  Places places(scale);
  places.keep_within(0.5 * (room.low + room.high), wide_mm + 2 * round, high_mm + 2 * round);
  return places;
}

void measure_plan(const Printed& printed, const PlanRoom& room, double wide_mm, double high_mm, Drawing& drawing) {
  if (room.empty) return;
  const PaperScale scale =
      fitting(room.high.x - room.low.x, room.high.y - room.low.y, wide_mm, high_mm, printed.job().heading.units);
  Measurer measurer(printed, places_in(room, scale, wide_mm, high_mm), drawing);
  measurer.offsets();
  measurer.edges();
}

}  // namespace sheets
