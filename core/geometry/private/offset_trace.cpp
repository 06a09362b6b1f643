#include "geometry/private/offset_trace.h"

#include <algorithm>

#include "geometry/flatten.h"

namespace geometry {

namespace {

constexpr double noise = 3;   // steps: the loops are rounded to the grid, and so are the chords of arcs
constexpr double close = 40;  // how far a chord may be off its source: flattening and rounding, and some to spare

Vec middle(Vec a, Vec b) { return 0.5 * (a + b); }

}  // namespace

OffsetTrace::OffsetTrace(const Region& region, Point origin, double out, Corner corner, double limit)
    : origin_(origin), left_(-out), limit_(limit), corner_(corner) {
  for (const Outline* outline : region.outlines()) add_ring(outline->edges());
  std::vector<Box> boxes;
  const double reach = (corner == Corner::mitred ? limit : 1.0) * std::abs(out) + close + noise;
  for (std::size_t e = 0; e < edges_.size(); ++e) add_ways(e);
  boxes.reserve(ways_.size());
  for (const Way& way : ways_) {
    boxes.push_back(grown(bounds(edges_[way.edge].from), units::Length::of_steps(std::llround(std::ceil(reach)))));
  }
  index_.emplace(boxes);
}

void OffsetTrace::add_ring(const Ring& ring) {
  const std::size_t first = edges_.size();
  for (std::size_t i = 0; i < ring.size(); ++i) {
    const Curve from = curve(ring, i);
    edges_.push_back(beside(from, from.start - origin_, ring[i].origin, left_));
    next_.push_back(first + (i + 1) % ring.size());
    previous_.push_back(first + (i + ring.size() - 1) % ring.size());
  }
}

void OffsetTrace::add_ways(std::size_t e) {
  const Beside& edge = edges_[e];
  const Beside& after = edges_[next_[e]];
  const Beside& before = edges_[previous_[e]];
  const bool mitred = corner_ == Corner::mitred;
  const auto opens = [&](const Beside& a, const Beside& b) { return !smooth(a, b) && outside(a, b, left_); };
  const double reach = limit_ * std::abs(left_) + noise;
  if (edge.on) {
    const double past_start = mitred && opens(before, edge) ? reach : noise;
    const double past_end = mitred && opens(edge, after) ? reach : noise;
    ways_.push_back({Kind::edge, e, *edge.on, -past_start, span(e) + past_end});
  }
  if (!mitred && opens(edge, after)) {
    ways_.push_back({Kind::corner, e, {after.start, {}, std::abs(left_), left_ < 0 ? 1 : -1}, 0, 0});
  }
}

// Steps along the moved edge from its start to the foot of `at`.
double OffsetTrace::along(std::size_t e, Vec at) const {
  const Beside& edge = edges_[e];
  if (edge.on->turn == 0) return dot(at - edge.start, edge.on->along);
  const double half = std::abs(edge.from.sweep()) / 2;
  return edge.on->radius * turn_between(*edge.on, edge.foot_at_start(left_), at, half);
}

double OffsetTrace::span(std::size_t e) const {
  const Beside& edge = edges_[e];
  return edge.on->turn == 0 ? length(edge.from.chord()) : edge.on->radius * std::abs(edge.from.sweep());
}

// How far the piece from a to b is off the way; endless when it doesn't belong there at all.
double OffsetTrace::misfit(Vec a, Vec b, const Way& way) const {
  const Vec half_way = middle(a, b);
  if (dot(way.on.direction(half_way), b - a) <= 0) return HUGE_VAL;
  const double off = std::max(std::abs(way.on.left(a)), std::abs(way.on.left(b)));
  if (way.on.turn != 0 && std::abs(way.on.left(half_way)) > close) return HUGE_VAL;
  if (way.kind == Kind::edge) {
    const double at = along(way.edge, half_way);
    if (at < way.from || at > way.to) return HUGE_VAL;
  }
  return off;
}

// The way with the least misfit. What fits as well but for rounding gives way to the one before, then to the first.
std::optional<std::size_t> OffsetTrace::way_of(Vec a, Vec b, std::optional<std::size_t> before) const {
  const Point asked = moved(origin_, middle(a, b));
  double least = close;
  std::vector<std::pair<double, std::size_t>> fits;
  for (const std::uint32_t w : index_->touching({asked, asked})) {
    const double off = misfit(a, b, ways_[w]);
    if (off > close) continue;
    fits.emplace_back(off, w);
    least = std::min(least, off);
  }
  std::optional<std::size_t> best;
  for (const auto& [off, w] : fits) {
    if (off > least + noise) continue;
    if (before == w) return w;
    if (!best) best = w;
  }
  return best;
}

// The piece from a to b along an edge, cut where it runs on over a smooth joint into the neighbour.
void OffsetTrace::add_along(Vec a, Vec b, std::size_t e, Runs& found) const {
  struct Cut {
    std::size_t edge;
    Vec start;
  };
  std::vector<Cut> cuts{{e, a}};
  const auto joint_before = [&](std::size_t k) { return edges_[k].foot_at_start(left_); };
  for (std::size_t k = e; smooth(edges_[previous_[k]], edges_[k]) && edges_[previous_[k]].on && previous_[k] != e;) {
    if (along(k, a) > -noise) break;
    cuts.front().start = joint_before(k);
    k = previous_[k];
    cuts.insert(cuts.begin(), {k, a});
  }
  for (std::size_t k = e; smooth(edges_[k], edges_[next_[k]]) && edges_[next_[k]].on && next_[k] != e; k = next_[k]) {
    if (along(k, b) < span(k) + noise) break;
    cuts.push_back({next_[k], joint_before(next_[k])});
  }
  for (std::size_t i = 0; i < cuts.size(); ++i) {
    const Vec end = i + 1 < cuts.size() ? cuts[i + 1].start : b;
    found.push_back({Kind::edge, cuts[i].edge, cuts[i].start, length(end - cuts[i].start)});
  }
}

OffsetTrace::Runs OffsetTrace::runs(const geos::Loop& loop) const {
  const std::size_t count = loop.size();
  const auto at = [&](std::size_t i) { return loop[i % count] - origin_; };
  std::size_t longest = 0;  // to begin where there is least doubt
  for (std::size_t i = 1; i < count; ++i) {
    if (length(at(i + 1) - at(i)) > length(at(longest + 1) - at(longest))) longest = i;
  }
  Runs pieces;
  std::optional<std::size_t> way;
  for (std::size_t k = 0; k < count; ++k) {
    const Vec a = at(longest + k);
    const Vec b = at(longest + k + 1);
    way = way_of(a, b, way);
    if (!way) {
      pieces.push_back({Kind::none, 0, a, length(b - a)});
    } else if (ways_[*way].kind == Kind::edge) {
      add_along(a, b, ways_[*way].edge, pieces);
    } else {
      pieces.push_back({Kind::corner, ways_[*way].edge, a, length(b - a)});
    }
  }
  Runs joined;
  for (const Run& piece : pieces) {
    if (!joined.empty() && joined.back().same(piece)) {
      joined.back().length += piece.length;
    } else {
      joined.push_back(piece);
    }
  }
  while (joined.size() > 1 && joined.back().same(joined.front())) {
    joined.front().start = joined.back().start;
    joined.front().length += joined.back().length;
    joined.pop_back();
  }
  drop_noise(joined);
  for (std::size_t i = 0; i < 2 * joined.size(); ++i) {  // what is nobody's is named after the edge before it
    Run& run = joined[i % joined.size()];
    if (run.kind == Kind::none) run.edge = joined[(i + joined.size() - 1) % joined.size()].edge;
  }
  return joined;
}

// Crumbs of rounding between two runs. The corner is then sought between them.
void OffsetTrace::drop_noise(Runs& found) const {
  bool again = true;
  while (again && found.size() > 2) {
    again = false;
    for (std::size_t i = 0; i < found.size(); ++i) {
      const Run& crumb = found[i];
      const std::size_t after = (i + 1) % found.size();
      const std::size_t before = (i + found.size() - 1) % found.size();
      const bool between = found[before].kind != Kind::none && found[after].kind != Kind::none;
      const double small = crumb.kind == Kind::none && between ? close : noise;
      if (crumb.length >= small) continue;
      found[after].start = middle(crumb.start, found[after].start);
      if (found.size() > 3 && found[before].same(found[after])) {
        found[before].length += found[after].length;
        found.erase(found.begin() + static_cast<std::ptrdiff_t>(std::max(i, after)));
        found.erase(found.begin() + static_cast<std::ptrdiff_t>(std::min(i, after)));
      } else {
        found.erase(found.begin() + static_cast<std::ptrdiff_t>(i));
      }
      again = true;
      break;
    }
  }
}

// The points at which one run ends and the next begins (the same one, mostly), near where the loop has its own.
Joint OffsetTrace::joint(const Run& before, const Run& after) const {
  const Vec seen = after.start;
  const auto near = [&](Vec at) { return length(at - seen) <= 4 * close; };
  if (before.kind == Kind::none || after.kind == Kind::none) return {{seen}, {}, false, 0};
  if (before.kind == Kind::edge && after.kind == Kind::corner && before.edge == after.edge) {
    const Vec foot = edges_[before.edge].foot_at_end(left_);
    if (near(foot)) return {{foot}, {}, false, 0};
  }
  if (before.kind == Kind::corner && after.kind == Kind::edge && next_[before.edge] == after.edge) {
    const Vec foot = edges_[after.edge].foot_at_start(left_);
    if (near(foot)) return {{foot}, {}, false, 0};
  }
  if (before.kind == Kind::edge && after.kind == Kind::edge && next_[before.edge] == after.edge) {
    const Joint made = joint_of_neighbours(edges_[before.edge], edges_[after.edge], left_, limit_);
    if (made.points.size() == 1 && near(made.points.front())) return made;
  }
  // At a grazing angle chords meet far from where their curves do.
  const Carrier a = carrier_of(before);
  const Carrier b = carrier_of(after);
  const double angle = std::max(0.01, std::abs(cross(a.direction(seen), b.direction(seen))));
  const auto met = meeting(a, b, seen);
  if (met && length(*met - seen) <= 4 * close / angle) return {{*met}, {}, false, 0};
  return {{seen}, {}, false, 0};
}

// How many runs from `from` on are the straight pieces of an outside corner: a cut past the limit, and the tangents of
// arcs that do not meet.
std::size_t OffsetTrace::corner_pieces(const Runs& all, std::size_t from) const {
  const std::size_t count = all.size();
  const Run& before = all[(from + count - 1) % count];
  std::size_t pieces = 0;
  while (pieces < 3 && pieces + 2 < count && all[(from + pieces) % count].kind == Kind::none) ++pieces;
  const Run& after = all[(from + pieces) % count];
  if (pieces == 0 || corner_ != Corner::mitred || before.kind != Kind::edge || after.kind != Kind::edge) return 0;
  if (next_[before.edge] != after.edge) return 0;
  const Beside& a = edges_[before.edge];
  const Beside& b = edges_[after.edge];
  if (smooth(a, b) || !outside(a, b, left_)) return 0;
  const Joint corner = joint_of_neighbours(a, b, left_, limit_);
  if (corner.points.size() != pieces + 1) return 0;
  for (std::size_t k = 0; k <= pieces; ++k) {
    if (length(corner.points[k] - all[(from + k) % count].start) > 4 * close) return 0;
  }
  return pieces;
}

Carrier OffsetTrace::carrier_of(const Run& run) const {
  if (run.kind == Kind::edge) return *edges_[run.edge].on;
  return {edges_[run.edge].end(), {}, std::abs(left_), left_ < 0 ? 1 : -1};
}

Origin OffsetTrace::origin_of(const Run& run) const { return edges_[run.edge].origin; }

Edge OffsetTrace::edge(const Run& run, Vec from, Vec to) const {
  const Point start = moved(origin_, from);
  if (run.kind == Kind::none) return {start, 0, origin_of(run)};
  const Carrier on = carrier_of(run);
  const double sweep = on.turn == 0 ? 0 : run.length / on.radius;
  return {start, bulge_between(on, start - origin_, moved(origin_, to) - origin_, sweep), origin_of(run)};
}

OffsetTrace::Traced OffsetTrace::trace(const geos::Loop& loop) const {
  const Runs all = runs(loop);
  const std::size_t count = all.size();
  if (count < 2) return {};
  std::vector<Joint> joints(count);  // before each run
  for (std::size_t i = 0; i < count; ++i) joints[i] = joint(all[(i + count - 1) % count], all[i]);
  std::vector<bool> done(count, false);
  for (std::size_t i = 0; i < count; ++i) {
    const std::size_t pieces = corner_pieces(all, i);
    if (pieces == 0) continue;
    const std::size_t then = (i + pieces) % count;
    joints[i] = joint_of_neighbours(edges_[all[(i + count - 1) % count].edge], edges_[all[then].edge], left_, limit_);
    joints[then] = {{joints[i].points.back()}, {}, false, 0};
    for (std::size_t k = 0; k < pieces; ++k) done[(i + k) % count] = true;
  }
  Traced traced;
  traced.rank = edges_.size();
  Ring ring;
  std::size_t first = 0;
  for (std::size_t i = 0; i < count; ++i) {
    if (done[i]) continue;  // its points are those of the joint before it
    const Run& run = all[i];
    if (run.kind == Kind::edge && run.edge < traced.rank) {
      traced.rank = run.edge;
      first = ring.size();
    }
    const Joint& then = joints[(i + 1) % count];
    ring.push_back(edge(run, joints[i].points.back(), then.points.front()));
    for (std::size_t k = 0; k < then.origins.size(); ++k) {
      ring.push_back({moved(origin_, then.points[k]), 0, then.origins[k]});
    }
  }
  std::ranges::rotate(ring, ring.begin() + static_cast<std::ptrdiff_t>(first));
  for (std::size_t i = 0; i < ring.size(); ++i) {
    if (ring[i].from != ring[(i + 1) % ring.size()].from) traced.ring.push_back(ring[i]);
  }
  return traced;
}

OffsetTrace::Traced OffsetTrace::plain(const geos::Loop& loop) const {
  Traced traced;
  traced.rank = edges_.size();
  std::optional<std::size_t> way;
  for (std::size_t i = 0; i < loop.size(); ++i) {
    way = way_of(loop[i] - origin_, loop[(i + 1) % loop.size()] - origin_, way);
    traced.ring.push_back({loop[i], 0, way ? edges_[ways_[*way].edge].origin : Origin{}});
    if (way) traced.rank = std::min(traced.rank, ways_[*way].edge);
  }
  return traced;
}

}  // namespace geometry
