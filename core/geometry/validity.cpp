#include "geometry/validity.h"

#include <algorithm>
#include <optional>

#include "geometry/flatten.h"
#include "geometry/private/geos.h"
#include "geometry/private/ring_faults.h"
#include "geometry/private/shapes.h"
#include "geometry/private/trace.h"

namespace geometry {

namespace {

using geos::Geometry;
using geos::Loop;
using geos::Patch;
using problem::Problem;
using problem::Result;

problem::Place place_of(Point at) { return {.element = {}, .file = {}, .at = xy(at)}; }

std::unexpected<Problem> fault(const char* code, const char* text, const char* mend, Point at) {
  return problem::fault(code, text, mend, place_of(at));
}

Problem touches(Point at) {
  return {problem::Severity::notice, "outline-touches-itself", "the outline touches itself here and is split there",
          "draw a gap if there should be one", place_of(at)};
}

std::unexpected<Problem> spiked(Point at) {
  return fault("outline-spike", "the outline turns straight back on itself here", "take this point out", at);
}

double twice_area(const Loop& loop) {
  double sum = 0;
  for (std::size_t i = 0; i < loop.size(); ++i) sum += cross(loop[i] - loop[0], loop[(i + 1) % loop.size()] - loop[0]);
  return sum;
}

double perimeter_of(const Loop& loop) {
  double sum = 0;
  for (std::size_t i = 0; i < loop.size(); ++i) sum += length(loop[(i + 1) % loop.size()] - loop[i]);
  return sum;
}

// How often the loop runs round a place that is given in steps from `origin`, counter-clockwise.
int windings(const Loop& loop, Point origin, Vec place) {
  int count = 0;
  for (std::size_t i = 0; i < loop.size(); ++i) {
    const Vec a = (loop[i] - origin) + -place;
    const Vec b = (loop[(i + 1) % loop.size()] - origin) + -place;
    if ((a.y > 0) == (b.y > 0)) continue;
    const double side = cross(a, b);
    if (b.y > a.y && side > 0) ++count;
    if (b.y < a.y && side < 0) --count;
  }
  return count;
}

// The first place where two segments of the loop cross inside both; none when it crosses itself at its corners only.
std::optional<Point> crossing(const Loop& loop) {
  const std::size_t n = loop.size();
  for (std::size_t i = 0; i < n; ++i) {
    const Vec u = loop[(i + 1) % n] - loop[i];
    for (std::size_t j = i + 2; j < n; ++j) {
      const Vec to = loop[j] - loop[i];
      const Vec v = loop[(j + 1) % n] - loop[j];
      const double sine = cross(u, v);
      if (sine == 0) continue;
      const double s = cross(to, v) / sine;
      const double t = cross(to, u) / sine;
      if (s > 0 && s < 1 && t > 0 && t < 1) return moved(loop[i], s * u);
    }
  }
  return std::nullopt;
}

std::unexpected<Problem> crosses(Point at) {
  return fault("outline-crosses-itself", "the outline crosses itself, so it has no area to count",
               "move the points on either side so that its edges do not cross", at);
}

Vec inner_point(const GEOSGeometry& face) {
  const Geometry point(GEOSPointOnSurface_r(geos::context(), &face));
  Vec at;
  if (point && GEOSisEmpty_r(geos::context(), point.get()) == 0) {
    GEOSGeomGetX_r(geos::context(), point.get(), &at.x);
    GEOSGeomGetY_r(geos::context(), point.get(), &at.y);
  }
  return at;
}

// The ground inside a loop that is not simple, cut into its faces. A loop that only touches itself runs once round each
// face of its ground and not at all round the others, and always the same way; so its area is its signed area. A face
// of less area than its own rim times a step is rounding and decides nothing.
Result<std::vector<Patch>> split(const Loop& loop, Point seen_at) {
  const Point origin = loop.front();
  const Geometry line = geos::closed_line(loop, origin);
  auto noded = geos::made(GEOSUnaryUnionPrec_r(geos::context(), line.get(), 1), seen_at);
  if (!noded) return std::unexpected(noded.error());
  const GEOSGeometry* lines[] = {noded->get()};
  auto faces = geos::made(GEOSPolygonize_r(geos::context(), lines, 1), seen_at);
  if (!faces) return std::unexpected(faces.error());
  const int way = twice_area(loop) > 0 ? 1 : -1;
  std::vector<Patch> ground;
  const int count = GEOSGetNumGeometries_r(geos::context(), faces->get());
  for (int i = 0; i < count; ++i) {
    const GEOSGeometry* face = GEOSGetGeometryN_r(geos::context(), faces->get(), i);
    const int round = windings(loop, origin, inner_point(*face));
    const bool slight = geos::area(*face) <= geos::length(*face);
    if (round != 0 && round != way && !slight) return crosses(crossing(loop).value_or(seen_at));
    if (round == way) {
      for (Patch& patch : geos::patches(*face, origin)) ground.push_back(std::move(patch));
    }
  }
  const Geometry pile = geos::multipolygon(ground, origin);
  auto whole = geos::made(GEOSUnaryUnionPrec_r(geos::context(), pile.get(), 1), seen_at);
  if (!whole) return std::unexpected(whole.error());
  if (std::abs(geos::area(**whole) - std::abs(twice_area(loop)) / 2) > perimeter_of(loop)) {
    return crosses(crossing(loop).value_or(seen_at));
  }
  return geos::patches(**whole, origin);
}

// One ring, turned counter-clockwise, with its ground.
struct Checked {
  Ring ring;
  std::vector<Patch> ground;
  std::optional<Point> touch;
  std::vector<Problem> notices;
};

Result<Checked> checked(const Ring& drawn) {
  if (auto bad = fault_of_numbers(drawn)) return std::unexpected(std::move(*bad));
  const std::vector<Spike> back = spikes(drawn);
  for (const Spike& one : back) {
    if (!one.lines) return spiked(one.at);
  }
  Loop loop = flatten(drawn);
  const Point start = drawn.front().from;
  const double twice = twice_area(loop);
  const auto no_area = [&]() -> std::unexpected<Problem> {
    if (!back.empty()) return spiked(back.front().at);
    return fault("outline-no-area", "the outline encloses no area", "draw it again or take it out", start);
  };
  if (loop.size() < 3) return no_area();
  const Patch patch{loop, {}};
  const auto wrong = geos::fault_of(*geos::multipolygon({&patch, 1}, start));
  // A figure of eight may well have a signed area of 0: what is wrong with it is that it crosses itself.
  if (!wrong && std::abs(twice) / 2 <= perimeter_of(loop)) return no_area();
  Checked made{twice > 0 ? drawn : reversed(drawn), {}, std::nullopt, {}};
  if (!wrong) {
    if (twice < 0) std::reverse(loop.begin(), loop.end());
    made.ground = {{std::move(loop), {}}};
    return made;
  }
  const Point at = moved(start, *wrong);
  auto ground = split(loop, at);
  if (!ground) return std::unexpected(ground.error());
  if (ground->empty()) return no_area();
  made.ground = std::move(*ground);
  made.touch = at;
  for (const Spike& one : back) made.notices.push_back(spiked(one.at).error());
  if (back.empty()) made.notices.push_back(touches(at));
  return made;
}

// The area that two grounds share, and a point of it (or of their meeting, where they only touch).
struct Meeting {
  double area = 0;
  std::optional<Point> at;
};
Result<Meeting> meeting(const Geometry& a, const Geometry& b, Point origin) {
  auto shared = geos::made(GEOSIntersectionPrec_r(geos::context(), a.get(), b.get(), 1), origin);
  if (!shared) return std::unexpected(shared.error());
  if (GEOSisEmpty_r(geos::context(), shared->get()) == 1) return Meeting{};
  return Meeting{geos::area(**shared), moved(origin, inner_point(**shared))};
}

struct Ground {
  Geometry geometry;
  double area = 0;
  double edge = 0;
};
Ground ground_of(const Checked& ring, Point origin) {
  Geometry geometry = geos::multipolygon(ring.ground, origin);
  const double area = geos::area(*geometry);
  const double edge = geos::length(*geometry);
  return {std::move(geometry), area, edge};
}

using Notices = std::vector<Problem>;

// An island has to lie in the ground.
std::optional<Problem> outside(const Checked& island, const Ground& ground, const Ground& taken, Point origin) {
  auto within = meeting(ground.geometry, taken.geometry, origin);
  if (!within) return within.error();
  if (within->area >= taken.area - taken.edge) return std::nullopt;
  const bool partly = within->area > taken.edge;
  return fault("hole-outside", partly ? "an island reaches past the outline" : "an island lies outside the outline",
               "move the island into the outline, or draw it as an element of its own", island.ring.front().from)
      .error();
}

// Islands have to lie beside each other. Says where two touch.
Result<Notices> beside(const Ground& a, const Ground& b, Point origin) {
  if (GEOSIntersects_r(geos::context(), a.geometry.get(), b.geometry.get()) == 0) return Notices{};
  auto both = meeting(a.geometry, b.geometry, origin);
  if (!both) return std::unexpected(both.error());
  if (both->area > std::min(a.edge, b.edge)) {
    return fault("holes-overlap", "two islands lie over each other", "draw them as one, or move them apart",
                 both->at.value_or(origin));
  }
  return both->at ? Notices{touches(*both->at)} : Notices{};
}

struct FreePrepared {
  void operator()(const GEOSPreparedGeometry* prepared) const { GEOSPreparedGeom_destroy_r(geos::context(), prepared); }
};

// Faults of the islands, or notices where they touch; `valid` rings need only be asked where they touch.
Result<Notices> islands(const std::vector<Checked>& rings, const std::vector<Ground>& grounds, Point origin,
                        bool valid) {
  Notices notices;
  if (rings.size() < 2) return notices;
  const Geometry rim(GEOSBoundary_r(geos::context(), grounds[0].geometry.get()));
  const std::unique_ptr<const GEOSPreparedGeometry, FreePrepared> prepared(GEOSPrepare_r(geos::context(), rim.get()));
  for (std::size_t i = 1; i < rings.size(); ++i) {
    if (!valid) {
      if (auto bad = outside(rings[i], grounds[0], grounds[i], origin)) return std::unexpected(std::move(*bad));
    }
    if (GEOSPreparedIntersects_r(geos::context(), prepared.get(), grounds[i].geometry.get()) != 0) {
      auto along = meeting(rim, grounds[i].geometry, origin);
      if (!along) return std::unexpected(along.error());
      if (along->at) notices.push_back(touches(*along->at));
    }
    for (std::size_t j = 1; j < i; ++j) {
      auto met = beside(grounds[j], grounds[i], origin);
      if (!met) return met;
      notices.insert(notices.end(), met->begin(), met->end());
    }
  }
  return notices;
}

Region as_drawn(const std::vector<Checked>& rings) {
  Polygon polygon{Shapes::outline(rings.front().ring), {}};
  for (std::size_t i = 1; i < rings.size(); ++i) polygon.holes.push_back(Shapes::outline(reversed(rings[i].ring)));
  return Shapes::region({std::move(polygon)});
}

// The ground less its islands where rings touch themselves or each other.
Result<Region> repaired(const std::vector<Checked>& rings, const std::vector<Ground>& grounds, Point origin) {
  std::vector<Patch> taken;
  std::vector<Source> lines;
  for (const Checked& ring : rings) {
    for (const Source& source : sources(ring.ring)) lines.push_back(source);
    if (&ring != &rings.front()) taken.insert(taken.end(), ring.ground.begin(), ring.ground.end());
  }
  const Geometry pile = geos::multipolygon(taken, origin);
  auto islands_united = geos::made(GEOSUnaryUnionPrec_r(geos::context(), pile.get(), 1), origin);
  if (!islands_united) return std::unexpected(islands_united.error());
  auto rest = geos::made(
      GEOSDifferencePrec_r(geos::context(), grounds.front().geometry.get(), islands_united->get(), 1), origin);
  if (!rest) return std::unexpected(rest.error());
  Region region = traced(geos::patches(**rest, origin), lines);
  double wanted = grounds.front().area;
  double edge = grounds.front().edge;
  for (std::size_t i = 1; i < grounds.size(); ++i) {
    wanted -= grounds[i].area;
    edge += grounds[i].edge;
  }
  if (std::abs(geos::area(**rest) - wanted) > edge) {
    return problem::fault("overlay-areas-disagree", "the outline and its islands do not add up",
                          "move the islands apart and away from the outline", place_of(origin));
  }
  if (region.empty()) {
    return fault("outline-no-area", "nothing is left of the outline between its islands",
                 "draw it again or take it out", origin);
  }
  return region;
}

}  // namespace

Result<Shape> shape(const Drawn& drawn) {
  if (drawn.empty()) {
    return problem::fault("outline-empty", "the outline has no points", "draw it again or take it out");
  }
  std::vector<Checked> rings;
  bool touch = false;
  Shape made;
  for (const Ring& ring : drawn) {
    auto one = checked(ring);
    if (!one) return std::unexpected(one.error());
    made.notices.insert(made.notices.end(), one->notices.begin(), one->notices.end());
    touch = touch || one->touch;
    rings.push_back(std::move(*one));
  }
  const Point origin = drawn.front().front().from;
  std::vector<Ground> grounds;
  for (const Checked& ring : rings) grounds.push_back(ground_of(ring, origin));
  // One point where an island touches makes nothing invalid, so such rings stay as drawn.
  made.region = as_drawn(rings);
  const bool valid = !touch && (rings.size() == 1 || geos::valid(geos::flattened(made.region)));
  auto notices = islands(rings, grounds, origin, valid);
  if (!notices) return std::unexpected(notices.error());
  made.notices.insert(made.notices.end(), notices->begin(), notices->end());
  if (valid) return made;
  auto region = repaired(rings, grounds, origin);
  if (!region) return std::unexpected(region.error());
  made.region = std::move(*region);
  return made;
}

Result<Region> region(Ring ring) {
  auto made = shape({std::move(ring)});
  if (!made) return std::unexpected(made.error());
  for (const Problem& one : made->notices) {
    if (one.severity == problem::Severity::problem) return std::unexpected(one);
  }
  return std::move(made->region);
}

}  // namespace geometry
