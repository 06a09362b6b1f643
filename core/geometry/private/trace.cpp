#include "geometry/private/trace.h"

#include <algorithm>
#include <array>
#include <limits>
#include <numbers>

#include "geometry/flatten.h"
#include "geometry/index.h"
#include "geometry/private/shapes.h"

namespace geometry {

namespace {

using geos::Loop;
using geos::Patch;

// GEOS moves what it rounds by less than a step; two overlays in a row by less than twice that, which is rare.
constexpr std::array<double, 2> tolerances{1.5, 3.0};
constexpr double corner_reach = 640;  // 2 mm
constexpr std::uint32_t nobody = std::numeric_limits<std::uint32_t>::max();

// How much of the curves is put back.
enum class Care { corners, curves, chords };

struct Chord {
  Point from;
  Point to;
  std::uint32_t source = 0;
};

// A source that a segment lies on, which way, and how far off.
struct Match {
  std::uint32_t source = nobody;
  bool along = true;
  double off = 0;
  bool same(const Match& other) const { return source == other.source && along == other.along; }
};

// A stretch of a result loop on one source, up to the next piece's `from`.
struct Piece {
  Point from;
  Match on;
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

std::vector<Chord> chords_of(std::span<const Source> sources) {
  std::vector<Chord> chords;
  for (std::uint32_t s = 0; s < sources.size(); ++s) {
    const std::vector<Point> points = flatten(sources[s].curve);
    for (std::size_t i = 0; i + 1 < points.size(); ++i) chords.push_back({points[i], points[i + 1], s});
  }
  return chords;
}

Box box_of(Point a, Point b) {
  return {{std::min(a.x, b.x), std::min(a.y, b.y)}, {std::max(a.x, b.x), std::max(a.y, b.y)}};
}

Index index_of(std::span<const Chord> chords) {
  std::vector<Box> boxes;
  boxes.reserve(chords.size());
  for (const Chord& chord : chords) boxes.push_back(box_of(chord.from, chord.to));
  return Index(boxes);
}

double distance(const Chord& chord, Point to) {
  const Vec line = chord.to - chord.from;
  const Vec p = to - chord.from;
  const double square = dot(line, line);
  const double share = square == 0 ? 0 : std::clamp(dot(p, line) / square, 0.0, 1.0);
  return length(p - share * line);
}

void keep_best(std::vector<Match>& matches, Match found) {
  for (Match& match : matches) {
    if (!match.same(found)) continue;
    match.off = std::min(match.off, found.off);
    return;
  }
  matches.push_back(found);
}

class Tracer {
 public:
  explicit Tracer(std::span<const Source> sources)
      : sources_(sources), chords_(chords_of(sources)), index_(index_of(chords_)) {}

  Traced ring(const Loop& loop, std::span<const Point> shared, Care care) const;

 private:
  std::vector<Match> matches(Point from, Point to) const;
  Pieces pieces(const Loop& loop, std::span<const Point> shared, Care care) const;
  void put_corners(Pieces& pieces, std::span<const Point> shared) const;
  bool ends_at(std::uint32_t source, Point point) const;
  Point corner(const Piece& before, const Piece& after) const;
  double bulge(const Match& on, Point from, Point to) const;
  Ring edges(const Pieces& pieces, Care care) const;
  Rank rank(const Piece& piece) const;

  std::span<const Source> sources_;
  std::vector<Chord> chords_;
  Index index_;
};

std::vector<Match> Tracer::matches(Point from, Point to) const {
  const Vec way = to - from;
  const bool tiny = length(way) < 4;  // rounding may have turned it any way
  std::vector<Match> found;
  for (const double tolerance : tolerances) {
    const auto reach = units::Length::of_steps(static_cast<std::int64_t>(std::ceil(tolerance)));
    for (const std::uint32_t c : index_.touching(grown(box_of(from, to), reach))) {
      const Chord& chord = chords_[c];
      const double off = std::max(distance(chord, from), distance(chord, to));
      if (off > tolerance) continue;
      const bool along = dot(way, chord.to - chord.from) > 0;
      keep_best(found, {chord.source, along, off});
      if (tiny) keep_best(found, {chord.source, !along, off});
    }
    if (!found.empty()) break;
  }
  return found;
}

// Those of `run` that also hold for the next segment, each with its worst distance.
std::vector<Match> still_holding(const std::vector<Match>& run, const std::vector<Match>& next) {
  std::vector<Match> both;
  for (const Match& a : run) {
    for (const Match& b : next) {
      if (a.same(b)) both.push_back({a.source, a.along, std::max(a.off, b.off)});
    }
  }
  return both;
}

// The earliest source among those that fit as well as the best, give or take the rounding.
Match chosen(const std::vector<Match>& matches) {
  if (matches.empty()) return {};
  double best = matches.front().off;
  for (const Match& match : matches) best = std::min(best, match.off);
  Match choice;
  for (const Match& match : matches) {
    if (match.off <= best + 1 && match.source < choice.source) choice = match;
  }
  return choice;
}

bool is_shared(std::span<const Point> shared, Point point) {
  return std::binary_search(shared.begin(), shared.end(), point);
}

Pieces Tracer::pieces(const Loop& loop, std::span<const Point> shared, Care care) const {
  const std::size_t n = loop.size();
  std::vector<std::vector<Match>> on(n);
  for (std::size_t i = 0; i < n; ++i) on[i] = matches(loop[i], loop[(i + 1) % n]);
  const auto breaks = [&](std::size_t i) {
    return care == Care::chords || is_shared(shared, loop[i]) || still_holding(on[(i + n - 1) % n], on[i]).empty();
  };
  std::size_t start = 0;
  while (start < n && !breaks(start)) ++start;
  start %= n;

  Pieces made;
  std::vector<Match> run;
  Point from = loop[start];
  for (std::size_t k = 0; k < n; ++k) {
    const std::size_t i = (start + k) % n;
    std::vector<Match> both = k == 0 ? on[i] : still_holding(run, on[i]);
    if (k > 0 && (both.empty() || breaks(i))) {
      made.push_back({from, chosen(run)});
      from = loop[i];
      both = on[i];
    }
    run = std::move(both);
  }
  made.push_back({from, chosen(run)});
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

void Tracer::put_corners(Pieces& pieces, std::span<const Point> shared) const {
  const Pieces as_found = pieces;
  for (std::size_t i = 0; i < pieces.size(); ++i) {
    const Piece& before = as_found[(i + pieces.size() - 1) % pieces.size()];
    const Piece& after = as_found[i];
    const std::uint32_t a = before.on.source;
    const std::uint32_t b = after.on.source;
    if (a == b || a == nobody || b == nobody || is_shared(shared, after.from)) continue;
    if (sources_[a].curve.straight() && sources_[b].curve.straight()) continue;
    if (ends_at(a, after.from) && ends_at(b, after.from)) continue;
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

Ring Tracer::edges(const Pieces& pieces, Care care) const {
  Ring ring;
  const std::size_t n = pieces.size();
  for (std::size_t i = 0; i < n; ++i) {
    const Piece& piece = pieces[i];
    const Point to = pieces[(i + 1) % n].from;
    if (piece.from == to) continue;
    const Origin origin = piece.on.source == nobody ? Origin{} : sources_[piece.on.source].origin;
    ring.push_back({piece.from, care == Care::chords ? 0 : bulge(piece.on, piece.from, to), origin});
  }
  return ring;
}

Traced Tracer::ring(const Loop& loop, std::span<const Point> shared, Care care) const {
  Pieces found = pieces(loop, shared, care);
  if (care == Care::corners) put_corners(found, shared);
  const auto first = std::min_element(found.begin(), found.end(),
                                      [this](const Piece& a, const Piece& b) { return rank(a) < rank(b); });
  std::rotate(found.begin(), first, found.end());
  return {rank(found.front()), edges(found, care)};
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

Ranked polygon(const Tracer& tracer, const Patch& patch, std::span<const Point> shared, Care care) {
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

// Whether the region, flattened as the next overlay will do it, still has all its rings and is valid.
bool sound(const Region& region, std::size_t rings) {
  const std::vector<Patch> flat = geos::flattened(region);
  return rings_of(flat) == rings && geos::valid(flat);
}

// Each polygon with as much of its curves as it can bear.
Region region_at_most(const Tracer& tracer, std::span<const Patch> patches, std::span<const Point> shared, Care most) {
  std::vector<Ranked> all;
  for (const Patch& patch : patches) {
    Ranked made = polygon(tracer, patch, shared, most);
    for (Care care = most; care != Care::chords;) {
      if (sound(Shapes::region({made.polygon}), 1 + patch.holes.size())) break;
      care = care == Care::corners ? Care::curves : Care::chords;
      made = polygon(tracer, patch, shared, care);
    }
    all.push_back(std::move(made));
  }
  return in_order(std::move(all));
}

}  // namespace

std::vector<Source> sources(std::span<const Edge> ring) {
  std::vector<Source> made;
  for (std::size_t i = 0; i < ring.size(); ++i) made.push_back({curve(ring, i), ring[i].origin});
  return made;
}

std::vector<Source> sources(const Region& region) {
  std::vector<Source> made;
  for (const Outline* outline : region.outlines()) {
    for (const Source& source : sources(outline->edges())) made.push_back(source);
  }
  return made;
}

Region traced(std::span<const Patch> patches, std::span<const Source> sources) {
  if (patches.empty()) return {};
  const Tracer tracer(sources);
  const std::vector<Point> shared = shared_points(patches);
  Region region = region_at_most(tracer, patches, shared, Care::corners);
  // Polygons that are sound alone may still lie over each other once their arcs are back.
  for (const Care care : {Care::curves, Care::chords}) {
    if (patches.size() < 2 || sound(region, rings_of(patches))) break;
    region = region_at_most(tracer, patches, shared, care);
  }
  return region;
}

}  // namespace geometry
