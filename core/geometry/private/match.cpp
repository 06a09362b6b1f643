#include "geometry/private/match.h"

#include <algorithm>
#include <array>

#include "geometry/flatten.h"

namespace geometry {

namespace {

// GEOS moves what it rounds by less than a step; two overlays in a row by less than twice that, which is rare.
constexpr std::array<double, 2> tolerances{1.5, 3.0};

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

void keep_best(std::vector<Match>& matches, Match found) {
  for (Match& match : matches) {
    if (!match.same(found)) continue;
    match.off = std::min(match.off, found.off);
    return;
  }
  matches.push_back(found);
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

double distance(const Chord& chord, Point to) {
  const Vec line = chord.to - chord.from;
  const Vec p = to - chord.from;
  const double square = dot(line, line);
  const double share = square == 0 ? 0 : std::clamp(dot(p, line) / square, 0.0, 1.0);
  return length(p - share * line);
}

Matcher::Matcher(std::span<const Source> sources) : chords_(chords_of(sources)), index_(index_of(chords_)) {}

std::vector<Match> Matcher::matches(Point from, Point to) const {
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

std::vector<Match> still_holding(const std::vector<Match>& run, const std::vector<Match>& next) {
  std::vector<Match> both;
  for (const Match& a : run) {
    for (const Match& b : next) {
      if (a.same(b)) both.push_back({a.source, a.along, std::max(a.off, b.off)});
    }
  }
  return both;
}

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

}  // namespace geometry
