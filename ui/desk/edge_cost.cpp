#include "ui/desk/edge_cost.h"

#include <algorithm>
#include <cmath>
#include <tuple>

#include "results/results.h"
#include "takeoff/paving/area.h"

namespace ui {

namespace {

using geometry::Vec;
using takeoff::paving::Layout;
using takeoff::paving::Piece;
using units::Length;

constexpr std::size_t most_sides =
    40;  // of units that are tried; a slanting edge passes as many corners as it cuts units

bool only_planting(const plan::Ground& ground, int number) {
  const std::uint64_t mark = plan::mark(ground.element->id);
  bool any = false;
  for (const plan::Stretch& stretch : ground.stretches) {
    if (stretch.origin.element != mark || stretch.origin.edge != number) continue;
    if (stretch.meets != plan::Meets::planting) return false;
    any = true;
  }
  return any;
}

// How far out from where the edge cuts them the corners of one piece's unit lie, in steps.
void add_sides(const Layout& layout, const Piece& piece, const geometry::Origin& edge, std::vector<double>& outs) {
  const takeoff::paving::Kind& kind = layout.lattice.kinds[static_cast<std::size_t>(piece.kind)];
  const double gap = layout.lattice.joint / 2;
  for (std::size_t i = 0; i < piece.sides.size(); ++i) {
    if (!piece.sides[i].cut || piece.sides[i].against != edge) continue;
    const Vec from = piece.sides[i].from;
    const Vec along = piece.sides[(i + 1) % piece.sides.size()].from - from;
    if (geometry::length(along) < takeoff::paving::grazing) continue;
    const Vec out = (-1 / geometry::length(along)) * geometry::left_of(along);
    for (const double x : {-gap, kind.width + gap})
      for (const double y : {-gap, kind.height + gap}) outs.push_back(geometry::dot(Vec{x, y} - from, out));
  }
}

std::vector<double> sides(const Layout& layout, const geometry::Origin& edge, double reach) {
  std::vector<double> outs;
  for (const Piece& piece : layout.pieces) add_sides(layout, piece, edge, outs);
  std::erase_if(outs, [reach](double out) { return std::abs(out) > reach; });
  std::ranges::sort(outs);
  const auto near = [](double a, double b) { return b - a < takeoff::paving::grazing / 2; };
  outs.erase(std::unique(outs.begin(), outs.end(), near), outs.end());
  if (outs.size() <= most_sides) return outs;
  std::vector<double> some;  // evenly out of all
  for (std::size_t i = 0; i < most_sides; ++i) some.push_back(outs[i * outs.size() / most_sides]);
  return some;
}

struct Laid {
  Length half_unit;
  std::vector<double> sides;
};
problem::Result<Laid> as_it_is(const plan::Job& job, const plan::ElementId& area, const FreeEdge& edge, Length reach) {
  const plan::Site site = plan::site(job);
  const plan::Ground* ground = site.find(area);
  const takeoff::paving::LaidArea laid = takeoff::paving::lay_area(job, site, *ground);
  double longest = 0;
  for (const takeoff::paving::Kind& kind : laid.layout->lattice.kinds)
    longest = std::max({longest, kind.width, kind.height});
  Laid found;
  found.half_unit = Length::of_steps(std::llround(longest / 2));
  const double within = static_cast<double>((reach > Length() ? reach : found.half_unit).steps());
  found.sides = sides(*laid.layout, {plan::mark(area), edge.number}, within);
  return found;
}

std::vector<Length> places(const Laid& laid, Length reach, Length step) {
  std::vector<Length> outs;
  for (Length out = step; out <= reach; out += step) {
    outs.push_back(out);
    outs.push_back(-out);
  }
  for (const double out : laid.sides) outs.push_back(Length::of_steps(std::llround(out)));
  std::erase(outs, Length());
  return outs;
}

auto rank(const EdgeTry& made) {
  const std::int64_t way = std::abs(made.out.steps());
  return std::tuple(made.laid.cut + made.laid.slivers, made.laid.bought, way, -made.out.steps());
}

problem::Result<plan::Job> moved(const plan::Job& job, const plan::ElementId& area, const FreeEdge& edge, Length out) {
  auto element = plan::with_edge_moved(*job.find(area), edge.start, out);
  if (!element) return std::unexpected(element.error());
  return plan::with(job, std::move(*element));
}

std::optional<units::Money> difference(const plan::Job& before, const plan::Job& after) {
  const auto of = [](const plan::Job& job) { return results::compute(std::make_shared<const plan::Job>(job)); };
  const results::Results was = of(before);
  const results::Results is = of(after);
  if (!was.estimate.final || !is.estimate.final) return {};
  return is.estimate.total.amount() - was.estimate.total.amount();
}

}  // namespace

std::vector<FreeEdge> free_edges(const plan::Site& site, const plan::Job& job, const plan::ElementId& area) {
  std::vector<FreeEdge> found;
  const plan::Element* element = job.find(area);
  const plan::Ground* ground = site.find(area);
  if (!element || !ground || !ground->computed) return found;
  int number = 0;
  for (const plan::DrawnEdge& edge : plan::drawn_edges(*element)) {
    const int own = number++;
    if (!edge.curve.straight() || !only_planting(*ground, own)) continue;
    const double steps = geometry::length(edge.curve.chord());
    found.push_back({edge.start, own, Length::of_steps(std::llround(steps))});
  }
  return found;
}

problem::Result<EdgeCost> edge_cost(const plan::Job& whole, const plan::ElementId& area, const FreeEdge& edge,
                                    Length reach, Length step, const GoesOn& goes_on) {
  const plan::Job job = only_ground(whole);
  const auto now = laid_numbers(job, area);
  if (!now) return std::unexpected(now.error());
  const auto laid = as_it_is(job, area, edge, reach);
  if (!laid) return std::unexpected(laid.error());
  EdgeCost cost{{Length(), *now}, {Length(), *now}, 0, whole, {}};
  const std::vector<Length> outs = places(*laid, reach > Length() ? reach : laid->half_unit, step);
  for (const Length out : outs) {
    if (goes_on && !goes_on(static_cast<double>(cost.tried) / static_cast<double>(outs.size() + 1))) break;
    ++cost.tried;
    const auto tried = moved(job, area, edge, out);  // where it can't go there, that place is none
    if (!tried) continue;
    const auto numbers = laid_numbers(*tried, area);
    if (numbers && rank({out, *numbers}) < rank(cost.best)) cost.best = {out, *numbers};
  }
  if (cost.best.out == Length()) return cost;
  auto after = moved(whole, area, edge, cost.best.out);
  if (!after) return std::unexpected(after.error());
  cost.money = difference(whole, *after);
  cost.after = std::move(*after);
  return cost;
}

}  // namespace ui
