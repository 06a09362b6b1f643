#include "takeoff/levels/sources.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "geometry/flatten.h"
#include "plan/footprint.h"
#include "takeoff/levels/words.h"

namespace takeoff::levels {

using geometry::Vec;

namespace {

constexpr double height_error = 5e-5;   // metres: of a chord for its arc
constexpr double widest_error = 0.005;  // metres: however little the surface falls
constexpr double inner_strip = 0.05;    // metres: how far into an outline its surface reaches, for flattened arcs
constexpr double widest_wedge = 5 * std::numbers::pi / 180;
constexpr double cone_error = 1e-4;  // metres, ten metres from the corner

Vec metres(geometry::Point point, geometry::Point origin) {
  return (1 / units::Length::steps_per_metre) * (point - origin);
}

struct Chosen {
  std::vector<geometry::Curve> curves;
  bool outline = false;
};

bool wanted(const plan::FallFrom& from, const geometry::Edge& edge) {
  return !from.edge || *from.edge == edge.origin.edge;
}

void choose(const geometry::Ring& ring, const plan::FallFrom& from, Chosen& chosen) {
  for (std::size_t i = 0; i < ring.size(); ++i)
    if (wanted(from, ring[i])) chosen.curves.push_back(geometry::curve(ring, i));
}

// Own edges as drawn, so that `height` stands at the end where the drawing starts; a wall by its face; all else by the
// outline of what it takes of the ground.
Chosen chosen(const plan::Ground& own, const plan::Ground* other, const plan::FallFrom& from) {
  Chosen made;
  if (other == nullptr) {
    const auto& area = std::get<plan::PavedArea>(own.element->kind);
    for (const geometry::Ring& ring : plan::drawing(area.outline, plan::mark(own.element->id)))
      choose(ring, from, made);
    return made;
  }
  const bool by_line = std::holds_alternative<plan::Wall>(other->element->kind) || other->footprint.empty();
  if (by_line && other->path) {
    for (std::size_t i = 0; i < other->path->size(); ++i)
      if (wanted(from, other->path->edges()[i])) made.curves.push_back(other->path->curve(i));
    return made;
  }
  made.outline = true;
  for (const geometry::Outline* outline : other->footprint.outlines()) choose(outline->edges(), from, made);
  return made;
}

std::optional<units::Length> known_height(const plan::Ground* other, const plan::FallFrom& from) {
  if (from.height || other == nullptr) return from.height;
  if (const auto* pool = std::get_if<plan::Pool>(&other->element->kind)) return pool->coping_level;
  if (const auto* building = std::get_if<plan::Building>(&other->element->kind)) return building->floor;
  return {};
}

// Consecutive curves become one line; heights run evenly along all of it.
std::vector<Line> lines(const Chosen& chosen, double fall, geometry::Point origin) {
  const double within = std::min(widest_error, height_error / std::max(std::abs(fall), 1e-4));
  const auto flat = units::Length::nearest(units::Metres(within));
  std::vector<Line> all;
  geometry::Point start;
  for (std::size_t i = 0; i < chosen.curves.size(); ++i) {
    const geometry::Curve& curve = chosen.curves[i];
    if (i == 0 || chosen.curves[i - 1].end != curve.start) {
      all.emplace_back();
      start = curve.start;
    }
    const std::vector<geometry::Point> points = geometry::flatten(curve, flat);
    for (std::size_t p = 1; p < points.size(); ++p)
      all.back().chords.push_back({metres(points[p - 1], origin), metres(points[p], origin), 0, 0});
    if (curve.end == start) all.back().closed = true;
  }
  return all;
}

void set_heights(Line& line, double height, double height_end) {
  double whole = 0;
  for (const Chord& chord : line.chords) whole += length(chord.to - chord.from);
  double run = 0;
  for (Chord& chord : line.chords) {
    chord.height = height + (height_end - height) * run / whole;
    run += length(chord.to - chord.from);
    chord.height_end = height + (height_end - height) * run / whole;
  }
}

double tightest(const Chosen& chosen) {
  double least = 0;
  for (const geometry::Curve& curve : chosen.curves) {
    if (curve.straight() || (chosen.outline && curve.bulge < 0)) continue;
    const double radius = curve.radius() / units::Length::steps_per_metre;
    if (least == 0 || radius < least) least = radius;
  }
  return least;
}

Vec unit(Vec a) { return (1 / length(a)) * a; }
Vec turned(Vec a, double angle) {
  const double c = std::cos(angle);
  const double s = std::sin(angle);
  return {c * a.x - s * a.y, s * a.x + c * a.y};
}

void add_strip(const Chord& chord, double fall, bool right, double reach, int number, std::vector<Piece>& pieces) {
  const Vec along = unit(chord.to - chord.from);
  const Vec away = right ? -left_of(along) : left_of(along);
  const double rise = (chord.height_end - chord.height) / length(chord.to - chord.from);
  Piece piece;
  piece.sides = {beyond(chord.from, away), beyond(chord.from, along), beyond(chord.to, -along)};
  if (reach > 0) piece.sides.push_back(beyond(chord.from + reach * away, -away));
  piece.plane = plane_at(chord.from, chord.height, rise * along - fall * away);
  piece.rank = piece.plane;
  piece.source = number;
  pieces.push_back(std::move(piece));
}

}  // namespace

problem::Result<Source> source(const plan::Job& job, const plan::Site& site, const plan::Ground& ground,
                               const plan::FallFrom& from, geometry::Point origin) {
  const plan::ElementId& id = ground.element->id;
  const plan::Ground* other = from.element.empty() || from.element == id ? nullptr : site.find(from.element);
  const std::string what = from.element.empty() ? "its own edge" : name_of(job, from.element);
  if (!from.element.empty() && from.element != id && other == nullptr)
    return problem::fault("finish-from", "the surface falls away from " + what + ", which is not in the job",
                          "choose what it falls away from", {id, {}, 0, 0, {}});
  const Chosen edges = chosen(ground, other, from);
  if (edges.curves.empty())
    return problem::fault("finish-from", "the surface falls away from an edge of " + what + " that is not there",
                          "choose an edge that is drawn", {id, {}, 0, 0, {}});
  const std::optional<units::Length> height = known_height(other, from);
  if (!height)
    return problem::fault("finish-height", "the surface falls away from " + what + ", whose level is not known",
                          "enter the level there", {id, {}, 0, 0, {}});
  Source made;
  made.fall = from.fall;
  made.outline = edges.outline;
  made.radius = tightest(edges);
  made.lines = lines(edges, from.fall, origin);
  const double start = (*height - from.lip).metres().si();
  const double end = (from.height_end.value_or(*height) - from.lip).metres().si();
  for (Line& line : made.lines) set_heights(line, start, end);
  return made;
}

void add_fan(Vec at, Vec first, double sweep, double height, double fall, double rank_fall, double rank_height,
             int number, std::vector<Piece>& pieces) {
  // A plane through two rays of a cone lies fall x distance x angle^2 / 8 off it halfway between them.
  const double steepest = std::max({std::abs(fall), 1e-4});
  const double widest = std::min(widest_wedge, std::sqrt(8 * cone_error / (10 * steepest)));
  const int count = std::max(1, static_cast<int>(std::ceil(sweep / widest - 1e-9)));
  const double each = sweep / count;
  for (int i = 0; i < count; ++i) {
    const Vec one = turned(first, i * each);
    const Vec next = turned(first, (i + 1) * each);
    const Vec down = (1 / std::cos(each / 2)) * turned(first, (i + 0.5) * each);
    Piece piece;
    piece.sides = {beyond(at, left_of(one)), beyond(at, -left_of(next))};
    piece.plane = plane_at(at, height, -fall * down);
    piece.rank = plane_at(at, rank_height, -rank_fall * down);
    piece.source = number;
    pieces.push_back(std::move(piece));
  }
}

void add_pieces(const Source& source, int number, std::vector<Piece>& pieces) {
  const auto fan = [&](Vec at, Vec first, double sweep, double height) {
    add_fan(at, first, sweep, height, source.fall, source.fall, height, number, pieces);
  };
  for (const Line& line : source.lines) {
    const std::size_t n = line.chords.size();
    for (std::size_t i = 0; i < n; ++i) {
      const Chord& chord = line.chords[i];
      add_strip(chord, source.fall, true, 0, number, pieces);
      add_strip(chord, source.fall, false, source.outline ? inner_strip : 0, number, pieces);
      const Vec along = unit(chord.to - chord.from);
      const Vec left = left_of(along);
      if (i == 0 && !line.closed) fan(chord.from, left, std::numbers::pi, chord.height);
      if (i + 1 == n && !line.closed) fan(chord.to, -left, std::numbers::pi, chord.height_end);
      if (i + 1 == n && !line.closed) continue;
      const Chord& next = line.chords[(i + 1) % n];
      const Vec on = unit(next.to - next.from);
      const double turn = std::atan2(cross(along, on), dot(along, on));
      const double height = std::max(chord.height_end, next.height);
      if (turn > 1e-9) fan(chord.to, -left, turn, height);
      if (turn < -1e-9 && !source.outline) fan(chord.to, left_of(on), -turn, height);
    }
  }
}

}  // namespace takeoff::levels
