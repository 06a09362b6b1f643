#include "sketch/snap.h"

#include <algorithm>
#include <cmath>

#include "geometry/index.h"
#include "sketch/crossings.h"

namespace sketch {

using geometry::Box;
using geometry::Curve;
using geometry::Point;
using units::Length;

namespace {

struct Spot {
  Taken taken;
  double distance = 0;  // steps
};

Box around(Point at, double reach) {
  const Length by = Length::of_steps(static_cast<std::int64_t>(std::ceil(std::max(0.0, reach))));
  return geometry::grown(Box{at, at}, by);
}

// The nearer of two; of equals the one that was first.
void keep_nearer(std::optional<Spot>& kept, const Spot& other, double reach) {
  if (other.distance <= reach && (!kept || other.distance < kept->distance)) kept = other;
}

}  // namespace

struct Snaps::Drawn {
  struct Edge {
    plan::ElementId of;
    plan::DrawnEdge edge;
  };
  std::vector<Taken> corners;
  std::vector<Taken> middles;  // centres of arcs too
  std::vector<Edge> edges;
  std::optional<geometry::Index> corner_index;
  std::optional<geometry::Index> middle_index;
  std::optional<geometry::Index> edge_index;

  void take(const plan::Element& element);
  void index();
  std::optional<Spot> nearest_spot(const std::vector<Taken>& spots, const geometry::Index& spot_index, Point pointer,
                                   double reach) const;
  std::vector<std::uint32_t> near_edges(Point pointer, double reach) const;
  Spot on_edge(std::uint32_t i, Point pointer) const;
  std::optional<Spot> crossing(Point pointer, double reach) const;
  std::optional<Spot> edge(Point pointer, double reach) const;
};

void Snaps::Drawn::take(const plan::Element& element) {
  std::vector<int> freeform;  // rings whose arcs nobody drew: they have no middles
  for (const plan::Grip& grip : plan::corners(element)) {
    corners.push_back({Takes::corner, grip.at, element.id, grip.corner});
    if (grip.control) freeform.push_back(grip.corner.ring);
  }
  for (plan::DrawnEdge& edge : plan::drawn_edges(element)) {
    if (edge.curve.start == edge.curve.end) continue;
    if (std::ranges::find(freeform, edge.start.ring) == freeform.end()) {
      const Curve& curve = edge.curve;
      middles.push_back({Takes::middle, geometry::moved(curve.start, curve.at(0.5)), element.id, edge.start});
      if (!curve.straight())
        middles.push_back({Takes::centre, geometry::moved(curve.start, curve.centre()), element.id, edge.start});
    }
    edges.push_back({element.id, edge});
  }
}

void Snaps::Drawn::index() {
  const auto boxes = [](const std::vector<Taken>& spots) {
    std::vector<Box> made;
    for (const Taken& spot : spots) made.push_back({spot.at, spot.at});
    return made;
  };
  std::vector<Box> edge_boxes;
  for (const Edge& edge : edges) edge_boxes.push_back(geometry::bounds(edge.edge.curve));
  corner_index.emplace(boxes(corners));
  middle_index.emplace(boxes(middles));
  edge_index.emplace(edge_boxes);
}

std::optional<Spot> Snaps::Drawn::nearest_spot(const std::vector<Taken>& spots, const geometry::Index& spot_index,
                                               Point pointer, double reach) const {
  std::optional<Spot> kept;
  for (const std::uint32_t i : spot_index.touching(around(pointer, reach)))
    keep_nearer(kept, {spots[i], geometry::length(spots[i].at - pointer)}, reach);
  return kept;
}

Spot Snaps::Drawn::on_edge(std::uint32_t i, Point pointer) const {
  const Curve& curve = edges[i].edge.curve;
  const geometry::Nearest place = geometry::nearest(curve, pointer);
  return {{Takes::edge, geometry::moved(curve.start, curve.at(place.share)), edges[i].of, edges[i].edge.start},
          place.distance * Length::steps_per_metre};
}

std::vector<std::uint32_t> Snaps::Drawn::near_edges(Point pointer, double reach) const {
  std::vector<std::uint32_t> near = edge_index->touching(around(pointer, reach));
  std::erase_if(near, [&](std::uint32_t i) { return on_edge(i, pointer).distance > reach; });
  return near;
}

// Only edges that come within reach can cross within reach.
std::optional<Spot> Snaps::Drawn::crossing(Point pointer, double reach) const {
  std::optional<Spot> kept;
  const std::vector<std::uint32_t> near = near_edges(pointer, reach);
  for (std::size_t i = 0; i < near.size(); ++i) {
    for (std::size_t j = i + 1; j < near.size(); ++j) {
      const Edge& one = edges[near[i]];
      for (const Point at : crossings(one.edge.curve, edges[near[j]].edge.curve))
        keep_nearer(kept, {{Takes::crossing, at, one.of, one.edge.start}, geometry::length(at - pointer)}, reach);
    }
  }
  return kept;
}

std::optional<Spot> Snaps::Drawn::edge(Point pointer, double reach) const {
  std::optional<Spot> kept;
  for (const std::uint32_t i : near_edges(pointer, reach)) keep_nearer(kept, on_edge(i, pointer), reach);
  return kept;
}

Snaps::Snaps(const plan::Job& job, const std::vector<plan::ElementId>& but) : drawn_(std::make_unique<Drawn>()) {
  for (const plan::ElementPtr& element : job.elements)
    if (std::ranges::find(but, element->id) == but.end()) drawn_->take(*element);
  drawn_->index();
}
Snaps::~Snaps() = default;
Snaps::Snaps(Snaps&&) noexcept = default;
Snaps& Snaps::operator=(Snaps&&) noexcept = default;

Taken grid_point(Point pointer, double reach, double grid) {
  const Taken none{Takes::nothing, pointer, {}, {}};
  if (!(grid >= 1) || !(reach >= 0)) return none;
  const auto nearest = [grid](Length along) {
    return Length::of_steps(std::llround(std::round(static_cast<double>(along.steps()) / grid) * grid));
  };
  const Point at{nearest(pointer.x), nearest(pointer.y)};
  return geometry::length(at - pointer) <= reach ? Taken{Takes::grid, at, {}, {}} : none;
}

Taken Snaps::take(Point pointer, double reach, double grid) const {
  if (const auto corner = drawn_->nearest_spot(drawn_->corners, *drawn_->corner_index, pointer, reach))
    return corner->taken;
  if (const auto crossing = drawn_->crossing(pointer, reach)) return crossing->taken;
  if (const auto middle = drawn_->nearest_spot(drawn_->middles, *drawn_->middle_index, pointer, reach))
    return middle->taken;
  if (const auto edge = drawn_->edge(pointer, reach)) return edge->taken;
  return grid_point(pointer, reach, grid);
}

std::optional<Curve> Snaps::curve(const Taken& edge) const {
  const auto of = [&edge](const Drawn::Edge& one) { return one.of == edge.of && one.edge.start == edge.edge; };
  std::optional<Curve> best;
  double least = 0;
  for (const Drawn::Edge& one : drawn_->edges) {  // a freeform edge is several arcs: the one at the place
    if (!of(one)) continue;
    const double away = geometry::nearest(one.edge.curve, edge.at).distance;
    if (best && away >= least) continue;
    best = one.edge.curve;
    least = away;
  }
  return best;
}

std::vector<Taken> Snaps::edges(Point pointer, double reach) const {
  std::vector<Spot> spots;
  for (const std::uint32_t i : drawn_->near_edges(pointer, reach)) spots.push_back(drawn_->on_edge(i, pointer));
  std::ranges::stable_sort(spots, {}, &Spot::distance);
  std::vector<Taken> taken;
  for (Spot& spot : spots) taken.push_back(std::move(spot.taken));
  return taken;
}

}  // namespace sketch
