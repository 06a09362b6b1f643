#include "plan/footprint.h"

#include <array>

#include "geometry/freeform.h"
#include "geometry/overlay.h"

namespace plan {

using geometry::Region;
using problem::Problem;

// The tangent arcs of a freeform curve; too few points for one are straight edges, which validity then refuses by name.
static geometry::Ring smooth(const std::vector<geometry::Point>& through, bool closed, std::uint64_t mark) {
  if (through.size() >= (closed ? 3U : 2U)) return geometry::freeform(through, closed, mark);
  geometry::Ring ring;
  for (std::size_t i = 0; i < through.size(); ++i)
    ring.push_back({through[i], 0, {mark, static_cast<std::int32_t>(i)}});
  return ring;
}

geometry::Drawn drawing(const DrawnShape& shape, std::uint64_t mark) {
  geometry::Drawn rings;
  std::int32_t number = 0;
  for (const DrawnRing& drawn : shape) {
    geometry::Ring ring = drawn.through.empty() ? drawn.edges : smooth(drawn.through, true, mark);
    for (std::size_t i = 0; i < ring.size(); ++i) {
      const std::int32_t own = drawn.through.empty() ? static_cast<std::int32_t>(i) : ring[i].origin.edge;
      ring[i].origin = {mark, number + own};
    }
    number += static_cast<std::int32_t>(drawn.through.empty() ? ring.size() : drawn.through.size());
    rings.push_back(std::move(ring));
  }
  return rings;
}

problem::Result<geometry::Path> path(const DrawnLine& line, std::uint64_t mark) {
  geometry::Ring edges = line.edges;
  geometry::Point end = line.end;
  if (!line.through.empty()) {
    edges = line.through.size() < 2 ? geometry::Ring{} : smooth(line.through, false, mark);
    end = line.through.back();
  } else {
    for (std::size_t i = 0; i < edges.size(); ++i) edges[i].origin = {mark, static_cast<std::int32_t>(i)};
  }
  return geometry::Path::make(std::move(edges), end);
}

namespace {

// Collects what one element says, so that each kind below is a line or two.
class Maker {
 public:
  Maker(const Job& job, const ElementPtr& element, std::vector<Problem>& problems)
      : job_(job), mark_(mark(element->id)), problems_(problems) {
    ground_.element = element;
  }

  Ground make() {
    std::visit([this](const auto& kind) { of(kind); }, ground_.element->kind);
    return std::move(ground_);
  }

 private:
  void of(const PavedArea& area) { closed(area.outline); }
  void of(const Building& building) { closed(building.outline); }
  void of(const KeepOut& keep_out) { closed(keep_out.outline); }
  void of(const Steps& steps) { closed(steps.outline); }

  void of(const Pool& pool) {
    closed(pool.outline);
    const catalogue::Item* item = pool.coping ? job_.catalogue->item(pool.coping->item) : nullptr;
    if (!item || !item->width || ground_.drawn.empty()) return;
    const Length back = *item->width - pool.coping->overhang;
    if (back > Length()) take(geometry::offset(ground_.drawn, back, geometry::Corner::mitred));
  }

  void of(const Wall& wall) {
    open(wall.line);
    const catalogue::Item* block = job_.catalogue->item(wall.block);
    const bool by_block = wall.thickness == Length() && block && block->width;
    strip(by_block ? *block->width : wall.thickness, wall.behind);
  }

  void of(const EdgeRun& run) {
    open(run.line);
    const catalogue::Item* item = job_.catalogue->item(run.item);
    const bool stands = run.what != "restraint" && item && item->width;
    strip(stands ? *item->width : Length(),
          run.paving == geometry::Side::left ? geometry::Side::right : geometry::Side::left);
  }

  void of(const DrainRun& run) {
    open(run.line);
    if (!ground_.path || run.width <= Length()) return;
    const Length half = Length::of_steps(run.width.steps() / 2);
    const auto left = geometry::band(*ground_.path, half, geometry::Side::left);
    const auto right = geometry::band(*ground_.path, run.width - half, geometry::Side::right);
    if (!left || !right) return fail(left ? right.error() : left.error());
    take(geometry::unite(std::array{*left, *right}));
  }

  // Measured as drawn; they take no ground.
  void of(const Removal& removal) { closed_or_open(removal.outline, removal.line); }
  void of(const Protection& protection) { closed_or_open(protection.outline, protection.line); }
  void of(const SiteMark& site_mark) { closed_or_open(site_mark.outline, site_mark.line); }
  void of(const Level&) {}
  void of(const Feature&) {}
  void of(const Note&) {}
  void of(const Dimension&) {}
  void of(const SitePlan&) {}
  void of(const LevelBook&) {}
  void of(const BaseLine&) {}
  void of(const TapeBook&) {}

  void closed_or_open(const DrawnShape& outline, const std::optional<DrawnLine>& line) {
    if (!outline.empty()) closed(outline);
    if (line) open(*line);
    ground_.footprint = {};
  }

  void closed(const DrawnShape& outline) {
    auto made = geometry::shape(drawing(outline, mark_));
    if (!made) return fail(made.error());
    for (Problem& notice : made->notices) problems_.push_back(problem::in_element(std::move(notice), id()));
    ground_.drawn = std::move(made->region);
    ground_.footprint = ground_.drawn;
  }

  void open(const DrawnLine& line) {
    auto made = path(line, mark_);
    if (!made) return fail(made.error());
    ground_.path = std::move(*made);
  }

  void strip(Length width, geometry::Side side) {
    if (ground_.path && width > Length()) take(geometry::band(*ground_.path, width, side));
  }

  void take(problem::Result<Region> region) {
    if (!region) return fail(region.error());
    ground_.footprint = std::move(*region);
  }

  void fail(const Problem& fault) {
    ground_.computed = false;
    problems_.push_back(problem::in_element(fault, id()));
  }

  const ElementId& id() const { return ground_.element->id; }

  const Job& job_;
  std::uint64_t mark_;
  std::vector<Problem>& problems_;
  Ground ground_;
};

}  // namespace

Ground footprint(const Job& job, const ElementPtr& element, std::vector<Problem>& problems) {
  return Maker(job, element, problems).make();
}

}  // namespace plan
