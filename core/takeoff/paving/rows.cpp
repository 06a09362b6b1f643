#include "takeoff/paving/rows.h"

#include <algorithm>
#include <cmath>
#include <numeric>

#include "problem/ensure.h"
#include "takeoff/paving/layout.h"

namespace takeoff::paving {

namespace {

using geometry::Vec;

// Finer than an overlay's flattening, so that the pieces' own shape is not seen to be made of chords.
constexpr double fine = 16;  // steps: 0.05 mm

// Near is asked with this to spare, so that rounding never loses an edge that the clip would see.
constexpr double spare = 1;

// Halved until no chord lies further than `fine` from its arc.
int chords_of(const geometry::Curve& curve) {
  const double radius = curve.radius();
  const double sweep = std::abs(curve.sweep());
  int count = 1;
  while (radius * (1 - std::cos(sweep / (2 * count))) > fine) count *= 2;
  return count;
}

std::vector<Chords::Spot> ring_chords(const geometry::Ring& ring) {
  std::vector<Chords::Spot> made;
  made.reserve(ring.size());
  for (std::size_t i = 0; i < ring.size(); ++i) {
    const geometry::Edge& edge = ring[i];
    if (edge.from == ring[i + 1 == ring.size() ? 0 : i + 1].from) continue;
    made.push_back({edge.from, {}, edge.origin});
    if (edge.bulge == 0) continue;
    const geometry::Curve curve = geometry::curve(ring, i);
    const int count = chords_of(curve);
    for (int k = 1; k < count; ++k) made.push_back({edge.from, curve.at(static_cast<double>(k) / count), edge.origin});
  }
  return made;
}

Vec framed(const Chords::Spot& spot, const Lattice& lattice) {
  const Vec v = (spot.from - lattice.start) + spot.by;
  return {lattice.cosine * v.x + lattice.sine * v.y, lattice.cosine * v.y - lattice.sine * v.x};
}

}  // namespace

Chords chords(const geometry::Region& region) {
  Chords made;
  for (const geometry::Outline* outline : region.outlines()) {
    made.rings.push_back(ring_chords(outline->edges()));
    if (made.rings.back().size() < 3) made.rings.pop_back();
  }
  return made;
}

void frame(const Chords& chords, const Lattice& lattice, FrameOutline& outline) {
  outline.edges.clear();
  std::size_t count = 0;
  for (const auto& ring : chords.rings) count += ring.size();
  outline.edges.reserve(count);
  double twice = 0;
  double low = 0, high = 0;
  for (const auto& ring : chords.rings) {
    const auto base = static_cast<std::int32_t>(outline.edges.size());
    const auto n = static_cast<std::int32_t>(ring.size());
    Vec at = framed(ring[0], lattice);
    const Vec first = at;
    if (base == 0) low = high = at.y;
    for (std::int32_t i = 0; i < n; ++i) {
      const auto k = static_cast<std::size_t>(i);
      const Vec to = i + 1 == n ? first : framed(ring[k + 1], lattice);
      outline.edges.push_back(
          {at, to, base + (i == 0 ? n - 1 : i - 1), base + (i + 1 == n ? 0 : i + 1), ring[k].origin});
      twice += cross(at - first, to - first);
      low = std::min(low, at.y);
      high = std::max(high, at.y);
      at = to;
    }
  }
  outline.area = twice / 2;
  outline.low_y = low;
  outline.high_y = high;
}

// What the rows of a kind have in common.
struct Rows::Band {
  double low_y;  // of row b = 0
  double low_x;
  double height;
  double width;
  double pitch;  // from row to row
  double shift;
  double along;
  double per_pitch;
  double per_along;
};

void Rows::walk(const FrameEdge& edge, std::int32_t number, const Band& band) {
  const bool up = edge.from.y <= edge.to.y;
  const Vec low = up ? edge.from : edge.to;
  const Vec high = up ? edge.to : edge.from;
  const double slope = high.y > low.y ? (high.x - low.x) / (high.y - low.y) : 0;
  const auto x_at = [&](double y) { return y <= low.y ? low.x : y >= high.y ? high.x : low.x + (y - low.y) * slope; };
  const auto first = static_cast<int>(std::ceil((low.y - spare - band.low_y - band.height) * band.per_pitch));
  const auto last = static_cast<int>(std::floor((high.y + spare - band.low_y) * band.per_pitch));
  for (int b = first; b <= last; ++b) {
    const std::int32_t row = b - first_;
    const double y0 = band.low_y + b * band.pitch;
    const double y1 = y0 + band.height;
    const double x0 = band.low_x + b * band.shift;

    const double middle = y0 + band.height / 2;
    if ((low.y <= middle) != (high.y <= middle)) found_cross_.push_back({row, x_at(middle)});

    // A flat edge has one height for all of its length; else its part in the band is asked for.
    const bool flat = low.y == high.y;
    const auto [left, right] = std::minmax({flat ? low.x : x_at(y0 - spare), flat ? high.x : x_at(y1 + spare)});
    const bool inside = high.y > y0 + grazing && low.y < y1 - grazing;
    const auto [in_left, in_right] =
        std::minmax({flat ? low.x : x_at(y0 + grazing), flat ? high.x : x_at(y1 - grazing)});

    const auto a_first = static_cast<int>(std::ceil((left - spare - band.width - x0) * band.per_along));
    const auto a_last = static_cast<int>(std::floor((right + spare - x0) * band.per_along));
    for (int a = a_first; a <= a_last; ++a) {
      const double x = x0 + a * band.along;
      const bool enters = inside && in_right > x + grazing && in_left < x + band.width - grazing;
      found_near_.push_back({row, Near::make(a, number, enters)});
    }
  }
}

void Rows::group() {
  const auto rows = static_cast<std::size_t>(count_);
  near_starts_.assign(rows + 1, 0);
  cross_starts_.assign(rows + 1, 0);
  for (const auto& f : found_near_) ++near_starts_[static_cast<std::size_t>(f.row)];
  for (const auto& f : found_cross_) ++cross_starts_[static_cast<std::size_t>(f.row)];
  std::exclusive_scan(near_starts_.begin(), near_starts_.end(), near_starts_.begin(), 0);
  std::exclusive_scan(cross_starts_.begin(), cross_starts_.end(), cross_starts_.begin(), 0);
  near_.resize(found_near_.size());
  cross_.resize(found_cross_.size());
  for (const auto& f : found_near_) {
    near_[static_cast<std::size_t>(near_starts_[static_cast<std::size_t>(f.row)]++)] = f.near;
  }
  for (const auto& f : found_cross_) {
    cross_[static_cast<std::size_t>(cross_starts_[static_cast<std::size_t>(f.row)]++)] = f.x;
  }
  // Each start now stands at its row's end; one place back they are starts again.
  std::copy_backward(near_starts_.begin(), near_starts_.end() - 1, near_starts_.end());
  std::copy_backward(cross_starts_.begin(), cross_starts_.end() - 1, cross_starts_.end());
  near_starts_[0] = cross_starts_[0] = 0;
  for (std::size_t i = 0; i < rows; ++i) {
    std::sort(near_.begin() + near_starts_[i], near_.begin() + near_starts_[i + 1]);
    std::sort(cross_.begin() + cross_starts_[i], cross_.begin() + cross_starts_[i + 1]);
  }
}

void Rows::fill(const FrameOutline& outline, const Lattice& lattice, const Kind& kind) {
  found_near_.clear();
  found_cross_.clear();
  count_ = 0;
  first_ = 0;
  if (!outline.edges.empty()) {
    const Band band{kind.low.y,       kind.low.x,    kind.height,          kind.width,       lattice.across.y,
                    lattice.across.x, lattice.along, 1 / lattice.across.y, 1 / lattice.along};
    // Counts of rows and units stay far inside an int: units are at least 10 mm and the plan's reach is 5 km.
    problem::ensure(lattice.along > 0 && lattice.across.y > 0, "a lattice has rows");
    problem::ensure(outline.edges.size() < (std::size_t{1} << 30), "an outline has under 2^30 chords");
    first_ = static_cast<int>(std::floor((outline.low_y - spare - band.low_y - band.height) * band.per_pitch)) - 1;
    const int last = static_cast<int>(std::ceil((outline.high_y + spare - band.low_y) * band.per_pitch)) + 1;
    count_ = last - first_ + 1;
    found_near_.reserve(3 * outline.edges.size());
    for (std::size_t i = 0; i < outline.edges.size(); ++i) {
      walk(outline.edges[i], static_cast<std::int32_t>(i), band);
    }
  }
  group();
}

}  // namespace takeoff::paving
