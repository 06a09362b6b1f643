#include "geometry/surface.h"

#include <algorithm>
#include <cmath>

#include "geometry/flatten.h"
#include "geometry/private/geos.h"

namespace geometry {

namespace {

constexpr double metres_per_step = 1.0 / 320'000;
constexpr double on_edge = 1e-9;  // m2: a point this little outside of an edge (times its length) is still on it

bool has(const Facet& facet, Vec place) {
  const auto& ring = facet.ring;
  for (std::size_t i = 0; i < ring.size(); ++i) {
    const Vec along = ring[(i + 1) % ring.size()] - ring[i];
    if (cross(along, place - ring[i]) < -on_edge) return false;
  }
  return true;
}

struct Extent {
  Vec low{1e300, 1e300};
  Vec high{-1e300, -1e300};
  void take(Vec v) {
    low = {std::min(low.x, v.x), std::min(low.y, v.y)};
    high = {std::max(high.x, v.x), std::max(high.y, v.y)};
  }
};

Extent extent(std::span<const Vec> ring) {
  Extent found;
  for (const Vec v : ring) found.take(v);
  return found;
}

}  // namespace

Plane plane_through(Vec a, double za, Vec b, double zb, Vec c, double zc) {
  const Vec ab = b - a, ac = c - a;
  const double twice = cross(ab, ac);
  if (std::abs(twice) < 1e-12) return {(za + zb + zc) / 3, 0, 0};
  const double gx = ((zb - za) * ac.y - (zc - za) * ab.y) / twice;
  const double gy = ((zc - za) * ab.x - (zb - za) * ac.x) / twice;
  return {za - gx * a.x - gy * a.y, gx, gy};
}

// Square buckets, about one facet each, with the numbers of the facets whose box touches them.
struct Surface::Grid {
  Extent all;
  double side = 1;
  int columns = 1;
  int rows = 1;
  std::vector<std::uint32_t> start;  // of each bucket in `numbers`, and one more
  std::vector<std::uint32_t> numbers;
  std::vector<Extent> boxes;

  explicit Grid(std::span<const Facet> facets) {
    boxes.reserve(facets.size());
    for (const Facet& facet : facets) {
      boxes.push_back(extent(facet.ring));
      all.take(boxes.back().low);
      all.take(boxes.back().high);
    }
    if (facets.empty()) return;
    const Vec size = all.high - all.low;
    side = std::max(std::sqrt(std::max(size.x * size.y, 1e-6) / static_cast<double>(facets.size())), 1e-3);
    side = std::max({side, size.x / 4096, size.y / 4096});
    columns = static_cast<int>(size.x / side) + 1;
    rows = static_cast<int>(size.y / side) + 1;
    start.assign(static_cast<std::size_t>(columns) * static_cast<std::size_t>(rows) + 1, 0);
    for (const Extent& box : boxes) each_bucket(box, [this](std::size_t i) { ++start[i + 1]; });
    for (std::size_t i = 1; i < start.size(); ++i) start[i] += start[i - 1];
    numbers.resize(start.back());
    std::vector<std::uint32_t> next(start.begin(), start.end() - 1);
    for (std::uint32_t n = 0; n < boxes.size(); ++n)
      each_bucket(boxes[n], [&](std::size_t i) { numbers[next[i]++] = n; });
  }

  int column(double x) const { return std::clamp(static_cast<int>((x - all.low.x) / side), 0, columns - 1); }
  int row(double y) const { return std::clamp(static_cast<int>((y - all.low.y) / side), 0, rows - 1); }

  std::size_t bucket(Vec place) const {
    return static_cast<std::size_t>(row(place.y)) * static_cast<std::size_t>(columns) +
           static_cast<std::size_t>(column(place.x));
  }

  template <class Do>
  void each_bucket(const Extent& box, Do act) const {
    for (int r = row(box.low.y); r <= row(box.high.y); ++r)
      for (int c = column(box.low.x); c <= column(box.high.x); ++c)
        act(static_cast<std::size_t>(r) * static_cast<std::size_t>(columns) + static_cast<std::size_t>(c));
  }
};

Surface::Surface(Point origin, std::vector<Facet> facets)
    : origin_(origin), facets_(std::move(facets)), grid_(std::make_shared<const Grid>(facets_)) {}

Vec Surface::place(Point point) const { return metres_per_step * (point - origin_); }

Point Surface::point(Vec place) const { return moved(origin_, (1 / metres_per_step) * place); }

std::vector<std::uint32_t> Surface::touching(Vec low, Vec high) const {
  std::vector<std::uint32_t> found;
  if (facets_.empty()) return found;
  const Grid& grid = *grid_;
  if (high.x < grid.all.low.x || high.y < grid.all.low.y || low.x > grid.all.high.x || low.y > grid.all.high.y)
    return found;
  grid.each_bucket({low, high}, [&](std::size_t i) {
    for (std::uint32_t n = grid.start[i]; n < grid.start[i + 1]; ++n) {
      const Extent& box = grid.boxes[grid.numbers[n]];
      if (box.low.x <= high.x && box.high.x >= low.x && box.low.y <= high.y && box.high.y >= low.y)
        found.push_back(grid.numbers[n]);
    }
  });
  std::ranges::sort(found);
  found.erase(std::unique(found.begin(), found.end()), found.end());
  return found;
}

const Facet* Surface::facet(Vec place) const {
  if (facets_.empty()) return nullptr;
  // Mostly one of the place's own bucket has it; one that ends a hair short of it may stand in the next.
  const Grid& grid = *grid_;
  const std::size_t bucket = grid.bucket(place);
  for (std::uint32_t n = grid.start[bucket]; n < grid.start[bucket + 1]; ++n)
    if (has(facets_[grid.numbers[n]], place)) return &facets_[grid.numbers[n]];
  for (const std::uint32_t n : touching(place - Vec{1e-9, 1e-9}, place + Vec{1e-9, 1e-9}))
    if (has(facets_[n], place)) return &facets_[n];
  return nullptr;
}

std::optional<double> Surface::height(Vec place) const {
  const Facet* found = facet(place);
  return found ? std::optional(found->plane.at(place)) : std::nullopt;
}

double Surface::area() const {
  double sum = 0;
  for (const Facet& facet : facets_) sum += geometry::area(facet.ring);
  return sum;
}

bool Surface::operator==(const Surface& other) const { return origin_ == other.origin_ && facets_ == other.facets_; }

std::vector<Vec> cut(std::span<const Vec> ring, double a, double b, double c) {
  std::vector<Vec> kept;
  kept.reserve(ring.size() + 1);
  for (std::size_t i = 0; i < ring.size(); ++i) {
    const Vec here = ring[i], next = ring[(i + 1) % ring.size()];
    const double at_here = a * here.x + b * here.y + c, at_next = a * next.x + b * next.y + c;
    if (at_here >= 0) kept.push_back(here);
    if ((at_here < 0) != (at_next < 0)) kept.push_back(here + (at_here / (at_here - at_next)) * (next - here));
  }
  return kept.size() < 3 ? std::vector<Vec>() : kept;
}

double area(std::span<const Vec> ring) {
  double twice = 0;
  for (std::size_t i = 1; i + 1 < ring.size(); ++i) twice += cross(ring[i] - ring[0], ring[i + 1] - ring[0]);
  return twice / 2;
}

problem::Result<Surface> pieces(const Region& region, Point origin, double flat) {
  const units::Length within = std::max(units::Length::nearest(units::Metres(flat)), units::Length::of_steps(1));
  std::vector<Facet> facets;
  double flattened = 0;
  for (const Polygon& polygon : region.polygons()) {
    geos::Patch patch{flatten(polygon.outer.edges(), within), {}};
    for (const Outline& hole : polygon.holes) patch.holes.push_back(flatten(hole.edges(), within));
    const Point corner = patch.outer.front();
    const geos::Geometry drawn = geos::multipolygon(std::span(&patch, 1), corner);
    flattened += geos::area(*drawn) * metres_per_step * metres_per_step;
    auto made = geos::made(GEOSConstrainedDelaunayTriangulation_r(geos::context(), drawn.get()), corner);
    if (!made) return std::unexpected(made.error());
    for (const geos::Patch& triangle : geos::patches(**made, corner)) {
      Facet facet;
      for (const Point p : triangle.outer) facet.ring.push_back(metres_per_step * (p - origin));
      if (facet.ring.size() >= 3) facets.push_back(std::move(facet));
    }
  }
  Surface surface(origin, std::move(facets));
  const double off = std::abs(surface.area() - flattened);
  if (off > region.perimeter().si() * metres_per_step + 1e-9) {
    problem::Problem fault{problem::Severity::problem,
                           "pieces-disagree",
                           "the pieces of an area do not add up to it",
                           "draw it a little differently here",
                           {}};
    fault.place.at = xy(region.polygons().front().outer.edges().front().from);
    return std::unexpected(std::move(fault));
  }
  return surface;
}

Surface raised(const Surface& surface, double by) {
  std::vector<Facet> facets = surface.facets();
  for (Facet& facet : facets) facet.plane.z += by;
  return {surface.origin(), std::move(facets)};
}

}  // namespace geometry
