#include "geometry/private/trace.h"

#include <algorithm>
#include <numbers>

#include "geometry/flatten.h"
#include "geometry/index.h"
#include "geometry/private/match.h"
#include "geometry/private/shapes.h"

namespace geometry {

namespace {

using geos::Loop;
using geos::Patch;

constexpr double corner_reach = 640;  // 2 mm

constexpr double trouble_reach = 320;  // 1 mm: twice what a curve can differ from its chords
constexpr int tries = 24;

// Where curves put back would cross each other; segments within reach keep their chords, and corners their place.
struct Trouble {
  Point at;
  double reach = trouble_reach;
};
struct Care {
  std::vector<Trouble> troubles;
  bool chords = false;  // everywhere
};

// A stretch of a result loop on one source, up to the next piece's `from`.
struct Piece {
  Point from;
  Match on;
  bool plain = false;  // keeps its chord
};
using Pieces = std::vector<Piece>;

// Which of several rings comes first: by earliest source, and how far along it the ring begins.
struct Rank {
  std::uint32_t source = nobody;
  double in = 0;
  Point from;
  auto operator<=>(const Rank&) const = default;
};
struct Traced {
  Rank rank;
  Ring ring;
};

class Tracer {
 public:
  explicit Tracer(std::span<const Source> sources) : sources_(sources), matcher_(sources) {}

  Traced ring(const Loop& loop, std::span<const Point> shared, const Care& care) const;

 private:
  Pieces pieces(const Loop& loop, std::span<const Point> shared, const Care& care) const;
  void put_corners(Pieces& pieces, std::span<const Point> shared, const Care& care) const;
  bool ends_at(std::uint32_t source, Point point) const;
  Point corner(const Piece& before, const Piece& after) const;
  double bulge(const Match& on, Point from, Point to) const;
  Ring edges(const Pieces& pieces) const;
  Rank rank(const Piece& piece) const;

  std::span<const Source> sources_;
  Matcher matcher_;
};

bool is_shared(std::span<const Point> shared, Point point) {
  return std::binary_search(shared.begin(), shared.end(), point);
}

bool near_trouble(const Care& care, const Chord& segment, double further) {
  return std::any_of(care.troubles.begin(), care.troubles.end(),
                     [&](const Trouble& trouble) { return distance(segment, trouble.at) <= trouble.reach + further; });
}

Pieces Tracer::pieces(const Loop& loop, std::span<const Point> shared, const Care& care) const {
  const std::size_t n = loop.size();
  std::vector<std::vector<Match>> on(n);
  std::vector<bool> plain(n);
  for (std::size_t i = 0; i < n; ++i) {
    const Chord segment{loop[i], loop[(i + 1) % n]};
    on[i] = matcher_.matches(segment.from, segment.to);
    plain[i] = care.chords || near_trouble(care, segment, 0);
  }
  const auto breaks = [&](std::size_t i) {
    const std::size_t before = (i + n - 1) % n;
    return plain[i] || plain[before] || is_shared(shared, loop[i]) || still_holding(on[before], on[i]).empty();
  };
  std::size_t start = 0;
  while (start < n && !breaks(start)) ++start;
  start %= n;

  Pieces made;
  std::vector<Match> run = on[start];
  std::size_t first = start;
  for (std::size_t k = 1; k < n; ++k) {
    const std::size_t i = (start + k) % n;
    std::vector<Match> both = still_holding(run, on[i]);
    if (both.empty() || breaks(i)) {
      made.push_back({loop[first], chosen(run), plain[first]});
      first = i;
      both = on[i];
    }
    run = std::move(both);
  }
  made.push_back({loop[first], chosen(run), plain[first]});
  return made;
}

bool Tracer::ends_at(std::uint32_t source, Point point) const {
  const Curve& c = sources_[source].curve;
  return point == c.start || point == c.end;
}

// Signed distance of a point from the whole line or circle of a curve, and the direction in which it grows.
struct Away {
  double distance = 0;
  Vec outwards;
};
Away away(const Curve& c, Vec from_start) {
  if (c.straight()) {
    const Vec along = c.direction(0);
    return {cross(along, from_start), left_of(along)};
  }
  const Vec arm = from_start - c.centre();
  const double out = length(arm);
  return {out - c.radius(), (1 / out) * arm};
}

// Newton's steps from the corner of the chords to that of the curves; the corner itself when there is none close by.
Point Tracer::corner(const Piece& before, const Piece& after) const {
  const Curve& a = sources_[before.on.source].curve;
  const Curve& b = sources_[after.on.source].curve;
  const Point near = after.from;
  Vec by;
  double step = corner_reach;
  for (int i = 0; i < 30 && step > 1e-6; ++i) {
    const Away from_a = away(a, (near - a.start) + by);
    const Away from_b = away(b, (near - b.start) + by);
    const double sine = cross(from_a.outwards, from_b.outwards);
    if (!(std::abs(sine) > 1e-4)) return near;
    const Vec change = (1 / sine) * Vec{from_b.distance * from_a.outwards.y - from_a.distance * from_b.outwards.y,
                                        from_a.distance * from_b.outwards.x - from_b.distance * from_a.outwards.x};
    by = by + change;
    step = length(change);
    if (!(length(by) <= 2 * corner_reach)) return near;
  }
  if (step > 1e-3 || length(by) > corner_reach) return near;
  const Point there = moved(near, by);
  const double off = std::max(nearest(a, there).distance, nearest(b, there).distance);
  return off * units::Length::steps_per_metre < 1 ? there : near;
}

void Tracer::put_corners(Pieces& pieces, std::span<const Point> shared, const Care& care) const {
  const Pieces as_found = pieces;
  for (std::size_t i = 0; i < pieces.size(); ++i) {
    const Piece& before = as_found[(i + pieces.size() - 1) % pieces.size()];
    const Piece& after = as_found[i];
    const std::uint32_t a = before.on.source;
    const std::uint32_t b = after.on.source;
    if (a == b || a == nobody || b == nobody || is_shared(shared, after.from)) continue;
    if (sources_[a].curve.straight() && sources_[b].curve.straight()) continue;
    if (ends_at(a, after.from) && ends_at(b, after.from)) continue;
    if (before.plain || after.plain || near_trouble(care, {after.from, after.from}, corner_reach)) continue;
    pieces[i].from = corner(before, after);
  }
}

// Angle from the arc's start about its centre, the way the arc runs; a little below 0 just before the start.
double angle_along(const Curve& arc, Point point) {
  const Vec centre = arc.centre();
  const Vec p = point - arc.start;
  const double side = arc.bulge > 0 ? 1 : -1;
  const double angle = std::atan2(-side * cross(centre, p), dot(centre, centre) - dot(centre, p));
  const double rest = std::numbers::pi - std::abs(arc.sweep()) / 2;
  return angle < -rest ? angle + 2 * std::numbers::pi : angle;
}

double Tracer::bulge(const Match& on, Point from, Point to) const {
  if (on.source == nobody) return 0;
  const Curve walked = on.along ? sources_[on.source].curve : sources_[on.source].curve.reversed();
  if (walked.straight()) return 0;
  if (from == walked.start && to == walked.end) return walked.bulge;
  const double turn = angle_along(walked, to) - angle_along(walked, from);
  if (turn <= 1e-12) return 0;
  return std::copysign(std::tan(turn / 4), walked.bulge);
}

Rank Tracer::rank(const Piece& piece) const {
  const Vec in = piece.on.source == nobody ? Vec{} : piece.from - sources_[piece.on.source].curve.start;
  return {piece.on.source, dot(in, in), piece.from};
}

Ring Tracer::edges(const Pieces& pieces) const {
  Ring ring;
  const std::size_t n = pieces.size();
  for (std::size_t i = 0; i < n; ++i) {
    const Piece& piece = pieces[i];
    const Point to = pieces[(i + 1) % n].from;
    if (piece.from == to) continue;
    const Origin origin = piece.on.source == nobody ? Origin{} : sources_[piece.on.source].origin;
    ring.push_back({piece.from, piece.plain ? 0 : bulge(piece.on, piece.from, to), origin});
  }
  return ring;
}

Traced Tracer::ring(const Loop& loop, std::span<const Point> shared, const Care& care) const {
  Pieces found = pieces(loop, shared, care);
  put_corners(found, shared, care);
  const auto first = std::min_element(found.begin(), found.end(),
                                      [this](const Piece& a, const Piece& b) { return rank(a) < rank(b); });
  std::rotate(found.begin(), first, found.end());
  Traced made{rank(found.front()), edges(found)};
  if (care.chords || flatten(made.ring).size() >= 3) return made;
  return ring(loop, shared, {.troubles = {}, .chords = true});  // too small a ring for anything but its chords
}

// Points that the result meets more than once: there it touches itself.
std::vector<Point> shared_points(std::span<const Patch> patches) {
  std::vector<Point> all;
  for (const Patch& patch : patches) {
    all.insert(all.end(), patch.outer.begin(), patch.outer.end());
    for (const Loop& hole : patch.holes) all.insert(all.end(), hole.begin(), hole.end());
  }
  std::sort(all.begin(), all.end());
  std::vector<Point> shared;
  for (std::size_t i = 1; i < all.size(); ++i) {
    if (all[i] == all[i - 1] && (shared.empty() || shared.back() != all[i])) shared.push_back(all[i]);
  }
  return shared;
}

struct Ranked {
  Rank rank;
  Polygon polygon;
};

Ranked polygon(const Tracer& tracer, const Patch& patch, std::span<const Point> shared, const Care& care) {
  std::vector<Traced> holes;
  for (const Loop& hole : patch.holes) holes.push_back(tracer.ring(hole, shared, care));
  std::sort(holes.begin(), holes.end(), [](const Traced& a, const Traced& b) { return a.rank < b.rank; });
  Traced outer = tracer.ring(patch.outer, shared, care);
  Ranked made{outer.rank, {Shapes::outline(std::move(outer.ring)), {}}};
  for (Traced& hole : holes) made.polygon.holes.push_back(Shapes::outline(std::move(hole.ring)));
  return made;
}

Region in_order(std::vector<Ranked> ranked) {
  std::sort(ranked.begin(), ranked.end(), [](const Ranked& a, const Ranked& b) { return a.rank < b.rank; });
  std::vector<Polygon> polygons;
  for (Ranked& one : ranked) polygons.push_back(std::move(one.polygon));
  return Shapes::region(std::move(polygons));
}

std::size_t rings_of(std::span<const Patch> patches) {
  std::size_t rings = patches.size();
  for (const Patch& patch : patches) rings += patch.holes.size();
  return rings;
}

Region region_of(const Tracer& tracer, std::span<const Patch> patches, std::span<const Point> shared,
                 const Care& care) {
  std::vector<Ranked> all;
  for (const Patch& patch : patches) all.push_back(polygon(tracer, patch, shared, care));
  return in_order(std::move(all));
}

void add_trouble(std::vector<Trouble>& troubles, Point at) {
  for (Trouble& known : troubles) {
    if (length(known.at - at) > 2 * known.reach) continue;
    known.reach *= 2;
    return;
  }
  troubles.push_back({at});
}

}  // namespace

// The next overlay will flatten the region afresh, so that is how it has to be valid.
Region traced(std::span<const Patch> patches, std::span<const Source> sources) {
  if (patches.empty()) return {};
  const Tracer tracer(sources);
  const std::vector<Point> shared = shared_points(patches);
  Care care;
  for (int i = 0; i < tries; ++i) {
    Region region = region_of(tracer, patches, shared, care);
    const std::vector<Patch> flat = geos::flattened(region);
    if (rings_of(flat) != rings_of(patches)) break;
    const Point origin = flat.front().outer.front();
    const auto fault = geos::fault_of(*geos::multipolygon(flat, origin));
    if (!fault) return region;
    add_trouble(care.troubles, moved(origin, *fault));
  }
  care.chords = true;
  return region_of(tracer, patches, shared, care);
}

}  // namespace geometry
