#include "takeoff/levels/merge.h"

#include <algorithm>
#include <optional>
#include <tuple>

namespace takeoff::levels {

using geometry::Facet;
using geometry::Vec;

namespace {

using Ring = std::vector<Vec>;
constexpr double same_place = 1e-7;  // metres

bool same(Vec a, Vec b) { return std::abs(a.x - b.x) < same_place && std::abs(a.y - b.y) < same_place; }

// How far a corner stands out of the line between its neighbours; negative: it is a dent.
double stands_out(Vec before, Vec corner, Vec after) {
  const double run = length(after - before);
  return run < same_place ? -1 : cross(corner - before, after - corner) / run;
}

// Where two rings also share the edges before and after the one that they were joined at, the joined ring runs there
// and back again.
void drop_spikes(Ring& ring) {
  for (std::size_t i = 0; ring.size() > 3 && i < ring.size();) {
    const std::size_t n = ring.size();
    const bool twice = same(ring[i], ring[(i + 1) % n]);
    const bool spike = same(ring[i], ring[(i + 2) % n]);
    if (!twice && !spike) {
      ++i;
      continue;
    }
    ring.erase(ring.begin() + static_cast<std::ptrdiff_t>((i + 1) % n));
    i = i > 1 ? i - 2 : 0;
  }
}

std::optional<Ring> together(const Ring& a, const Ring& b) {
  for (std::size_t i = 0; i < a.size(); ++i)
    for (std::size_t k = 0; k < b.size(); ++k) {
      if (!same(a[i], b[(k + 1) % b.size()]) || !same(a[(i + 1) % a.size()], b[k])) continue;
      Ring ring;
      for (std::size_t n = 0; n < a.size(); ++n) ring.push_back(a[(i + 1 + n) % a.size()]);
      for (std::size_t n = 0; n + 2 < b.size(); ++n) ring.push_back(b[(k + 2 + n) % b.size()]);
      drop_spikes(ring);
      const std::size_t m = ring.size();
      for (std::size_t n = 0; n < m; ++n)
        if (stands_out(ring[n], ring[(n + 1) % m], ring[(n + 2) % m]) < -same_place) return {};
      return ring;
    }
  return {};
}

void straighten(Ring& ring) {
  for (std::size_t i = 0; ring.size() > 3 && i < ring.size();) {
    const std::size_t n = ring.size();
    if (stands_out(ring[(i + n - 1) % n], ring[i], ring[(i + 1) % n]) > same_place)
      ++i;
    else
      ring.erase(ring.begin() + static_cast<std::ptrdiff_t>(i));
  }
}

void merge(std::vector<Ring>& rings) {
  for (std::size_t i = 0; i < rings.size();) {
    bool grew = false;
    for (std::size_t k = i + 1; k < rings.size(); ++k) {
      std::optional<Ring> one = together(rings[i], rings[k]);
      if (!one) continue;
      rings[i] = std::move(*one);
      rings.erase(rings.begin() + static_cast<std::ptrdiff_t>(k));
      grew = true;
      break;
    }
    if (!grew) ++i;
  }
  for (Ring& ring : rings) straighten(ring);
}

auto key(const Cell& cell) { return std::tuple(cell.source, cell.plane.z, cell.plane.gx, cell.plane.gy); }

}  // namespace

std::vector<Cell> merged(std::vector<Cell> cells) {
  std::ranges::stable_sort(cells, {}, key);
  std::vector<Cell> all;
  for (std::size_t from = 0; from < cells.size();) {
    std::size_t to = from;
    std::vector<Ring> rings;
    for (; to < cells.size() && key(cells[to]) == key(cells[from]); ++to) rings.push_back(std::move(cells[to].ring));
    merge(rings);
    for (Ring& ring : rings) all.push_back({std::move(ring), cells[from].rank, cells[from].plane, cells[from].source});
    from = to;
  }
  return all;
}

std::vector<Facet> merged(std::vector<Facet> facets) {
  std::vector<Cell> cells;
  cells.reserve(facets.size());
  for (Facet& facet : facets) cells.push_back({std::move(facet.ring), {}, facet.plane, facet.guess ? 1 : 0});
  std::vector<Facet> all;
  for (Cell& cell : merged(std::move(cells))) all.push_back({std::move(cell.ring), cell.plane, cell.source == 1});
  return all;
}

}  // namespace takeoff::levels
