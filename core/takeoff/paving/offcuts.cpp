#include "takeoff/paving/offcuts.h"

#include <algorithm>
#include <cmath>
#include <optional>

#include "takeoff/cutting_stock.h"

namespace takeoff::paving {

namespace {

using geometry::Vec;

// The piece in its unit's own frame: x along the long side.
struct OwnShape {
  std::vector<Vec> points;
  std::vector<bool> cut;  // of the side that starts there
  double length = 0;
  double width = 0;
};

OwnShape own_shape(const Kind& kind, const Piece& piece) {
  OwnShape shape;
  shape.length = kind.turned ? kind.height : kind.width;
  shape.width = kind.turned ? kind.width : kind.height;
  for (const PieceSide& side : piece.sides) {
    shape.points.push_back(kind.turned ? Vec{side.from.y, kind.width - side.from.x} : side.from);
    shape.cut.push_back(side.cut);
  }
  return shape;
}

// The one line of all cut sides, where they follow each other and stay within half a millimetre of it.
struct Line {
  Vec from;
  Vec to;
};
std::optional<Line> one_line(const OwnShape& shape) {
  const std::size_t n = shape.points.size();
  std::size_t chains = 0, first = 0, sides = 0;
  for (std::size_t i = 0; i < n; ++i) {
    if (shape.cut[i]) ++sides;
    if (!shape.cut[i] || shape.cut[(i + n - 1) % n]) continue;
    ++chains;
    first = i;
  }
  if (chains != 1) return {};
  const Line line{shape.points[first], shape.points[(first + sides) % n]};
  const Vec along = line.to - line.from;
  if (length(along) <= grazing) return {};
  for (std::size_t i = 1; i < sides; ++i) {
    const Vec off = shape.points[(first + i) % n] - line.from;
    if (std::abs(cross(along, off)) > grazing * length(along)) return {};
  }
  return line;
}

struct Reach {
  double low = 0;
  double high = 0;
};
Reach reach(const OwnShape& shape, double Vec::* axis) {
  Reach found{shape.points.front().*axis, shape.points.front().*axis};
  for (const Vec p : shape.points) found = {std::min(found.low, p.*axis), std::max(found.high, p.*axis)};
  return found;
}

// Of a piece that touches one end of its unit and not the other.
std::optional<Need> by_reach(const OwnShape& shape, bool lengthwise) {
  const Reach r = reach(shape, lengthwise ? &Vec::y : &Vec::x);
  Need need;
  need.whole = lengthwise ? shape.width : shape.length;
  need.lengthwise = lengthwise;
  const bool low = r.low <= grazing;
  const bool high = r.high >= need.whole - grazing;
  if (low == high) return {};
  need.straight = true;
  need.turned = high;
  need.along = need.middle = low ? r.high : need.whole - r.low;
  return need;
}

Need by_line(const OwnShape& shape, const Line& line) {
  const Vec way = line.to - line.from;
  Need need;
  need.lengthwise = std::abs(way.x) > std::abs(way.y);
  double Vec::* const axis = need.lengthwise ? &Vec::y : &Vec::x;
  double Vec::* const across = need.lengthwise ? &Vec::x : &Vec::y;
  need.whole = need.lengthwise ? shape.width : shape.length;
  const double other = need.lengthwise ? shape.length : shape.width;
  need.straight = true;
  need.slope = way.*axis / way.*across;
  const double at = line.from.*axis + need.slope * (other / 2 - line.from.*across);
  // Ground lies left of the cut: towards the far end where the cut runs down across the unit.
  need.turned = need.lengthwise ? way.x > 0 : way.y < 0;
  const Reach r = reach(shape, axis);
  need.along = need.turned ? need.whole - r.low : r.high;
  need.middle = need.turned ? need.whole - at : at;
  if (std::abs(need.slope) * other <= grazing) {
    need.slope = 0;
    need.middle = need.along;
  }
  return need;
}

// A unit that is its own quarter turn: a rip is a cut of the turned unit, and its slope runs the other way.
Need as_cut(Need need) {
  need.lengthwise = false;
  need.slope = -need.slope;
  return need;
}

struct Size {
  double size = 0;
  bool turned = false;
  std::size_t number = 0;
};

// Numbers of pieces that share a unit, two by two. Exact: the largest either goes with the smallest or with none.
std::vector<std::size_t> pairs(std::vector<Size> sizes, double room, bool directional) {
  std::stable_sort(sizes.begin(), sizes.end(), [](const Size& a, const Size& b) { return a.size < b.size; });
  std::vector<std::size_t> paired;
  if (!directional) {
    for (std::size_t low = 0, high = sizes.size(); low + 1 < high; --high) {
      if (sizes[low].size + sizes[high - 1].size > room) continue;
      paired.push_back(sizes[low++].number);
      paired.push_back(sizes[high - 1].number);
    }
    return paired;
  }
  std::vector<Size> near, far;
  for (const Size& size : sizes) (size.turned ? far : near).push_back(size);
  std::size_t smallest = 0;
  for (auto largest = near.rbegin(); largest != near.rend() && smallest < far.size(); ++largest) {
    if (largest->size + far[smallest].size > room) continue;
    paired.push_back(largest->number);
    paired.push_back(far[smallest++].number);
  }
  return paired;
}

// All pieces of one unit cut one way.
class Family {
 public:
  Family(std::vector<Need> needs, const Cutting& cutting) : needs_(std::move(needs)), cutting_(cutting) {}

  std::int64_t pairs_found() const {
    if (needs_.empty()) return 0;
    return std::max(by_slopes_then_reach(true), by_slopes_then_reach(false));
  }
  // Either way of pairing needs at least the smaller of middle and reach of both pieces, so this many pairs are never
  // beaten.
  std::int64_t pairs_at_most() const {
    if (needs_.empty()) return 0;
    std::vector<Size> sizes;
    for (std::size_t i = 0; i < needs_.size(); ++i)
      sizes.push_back({std::min(needs_[i].middle, needs_[i].along), needs_[i].turned, i});
    return count(pairs(std::move(sizes), room(), cutting_.directional));
  }

 private:
  double room() const { return needs_.front().whole - cutting_.kerf + 1e-6; }
  static std::int64_t count(const std::vector<std::size_t>& paired) {
    return static_cast<std::int64_t>(paired.size() / 2);
  }

  std::int64_t by_slopes_then_reach(bool slopes_first) const {
    std::vector<bool> used(needs_.size(), false);
    std::int64_t found = 0;
    for (const bool slopes : {slopes_first, !slopes_first}) found += slopes ? by_slopes(used) : by_reaches(used);
    return found;
  }

  std::int64_t by_reaches(std::vector<bool>& used) const {
    std::vector<Size> sizes;
    for (std::size_t i = 0; i < needs_.size(); ++i)
      if (!used[i]) sizes.push_back({needs_[i].along, needs_[i].turned, i});
    return take(pairs(std::move(sizes), room(), cutting_.directional), used);
  }

  // Slopes within 1 in 1000 are one fence setting of the saw.
  std::int64_t by_slopes(std::vector<bool>& used) const {
    std::map<std::int64_t, std::vector<Size>> by_slope;
    for (std::size_t i = 0; i < needs_.size(); ++i)
      if (!used[i] && needs_[i].slope != 0)
        by_slope[std::llround(needs_[i].slope * 1000)].push_back({needs_[i].middle, needs_[i].turned, i});
    std::int64_t found = 0;
    for (auto& [slope, sizes] : by_slope) {
      const double run = static_cast<double>(slope) / 1000;
      // A kerf is wider along the unit than across the cut.
      const double oblique_kerf = cutting_.kerf * (std::hypot(1, run) - 1);
      found += take(pairs(std::move(sizes), room() - oblique_kerf, cutting_.directional), used);
    }
    return found;
  }

  static std::int64_t take(const std::vector<std::size_t>& paired, std::vector<bool>& used) {
    for (const std::size_t i : paired) used[i] = true;
    return count(paired);
  }

  std::vector<Need> needs_;
  const Cutting& cutting_;
};

struct Stock {
  std::int64_t units = 0;
  std::int64_t bound = 0;
};

Stock sawn(const std::vector<Need>& needs, double kerf) {
  if (needs.empty()) return {};
  const auto steps = [](double value) { return units::Length::of_steps(std::llround(value)); };
  std::vector<units::Length> demands;
  const units::Length whole = steps(needs.front().whole);
  for (const Need& need : needs) demands.push_back(std::min(steps(std::ceil(need.along)), whole));
  const StockPlan plan = cutting_stock(demands, whole, steps(kerf));
  return {plan.bought, plan.bound};
}

}  // namespace

Cutting cutting(const catalogue::Item& item, units::Length kerf) {
  const auto detail = [&](const char* name) {
    const auto found = item.details.find(name);
    return found == item.details.end() ? std::string() : found->second;
  };
  Cutting cutting;
  cutting.finished_edges = detail("edges") != "sawn";
  cutting.directional = detail("face") == "directional";
  cutting.square = item.length && item.width && *item.length == *item.width;
  cutting.kerf = static_cast<double>(kerf.steps());
  return cutting;
}

Need need(const Layout& layout, const Piece& piece) {
  const Kind& kind = layout.lattice.kinds[static_cast<std::size_t>(piece.kind)];
  const OwnShape shape = own_shape(kind, piece);
  Need alone;
  alone.along = alone.middle = alone.whole = shape.length;
  if (!piece.convex || shape.points.size() < 3) return alone;
  if (const auto line = one_line(shape)) return by_line(shape, *line);
  if (const auto found = by_reach(shape, false)) return *found;
  return by_reach(shape, true).value_or(alone);
}

Bought bought_for_cuts(const std::vector<Need>& needs, const Cutting& cutting, plan::Reuse reuse) {
  Bought bought;
  bought.pieces = static_cast<std::int64_t>(needs.size());
  std::vector<Need> cuts, rips;
  for (const Need& need : needs) {
    if (!need.straight || reuse == plan::Reuse::none) {
      ++bought.units;
      ++bought.bound;
    } else if (!need.lengthwise) {
      cuts.push_back(need);
    } else if (cutting.square && !cutting.directional) {
      cuts.push_back(as_cut(need));
    } else {
      rips.push_back(need);
    }
  }
  for (const std::vector<Need>* same : {&cuts, &rips}) {
    if (!cutting.finished_edges) {
      const Stock stock = sawn(*same, cutting.kerf);
      bought.units += stock.units;
      bought.bound += stock.bound;
      continue;
    }
    const auto count = static_cast<std::int64_t>(same->size());
    const Family family(*same, cutting);
    bought.units += count - family.pairs_found();
    bought.bound += count - family.pairs_at_most();
  }
  bought.from_offcuts = bought.pieces - bought.units;
  return bought;
}

void add_needs(Needs& needs, const Layout& layout) {
  for (const Piece& piece : layout.pieces)
    needs[layout.lattice.kinds[static_cast<std::size_t>(piece.kind)].item].push_back(need(layout, piece));
}

}  // namespace takeoff::paving
