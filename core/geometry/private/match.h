// Which source edges a segment of a result lies on.
#pragma once

#include <cstdint>
#include <limits>
#include <span>
#include <vector>

#include "geometry/index.h"

namespace geometry {

// An edge that a result can lie on, either way round.
struct Source {
  Curve curve;
  Origin origin;
};

std::vector<Source> sources(std::span<const Edge> ring);
std::vector<Source> sources(const Region& region);  // all its outlines, in order

inline constexpr std::uint32_t nobody = std::numeric_limits<std::uint32_t>::max();

struct Chord {
  Point from;
  Point to;
  std::uint32_t source = nobody;
};
double distance(const Chord& chord, Point to);  // steps

// A source that a segment lies on, whether it runs the source's way, and how far off it is, in steps.
struct Match {
  std::uint32_t source = nobody;
  bool along = true;
  double off = 0;
  bool same(const Match& other) const { return source == other.source && along == other.along; }
};

class Matcher {
 public:
  explicit Matcher(std::span<const Source> sources);
  // All sources whose chords the segment lies on, within the rounding of an overlay; none twice the same way.
  std::vector<Match> matches(Point from, Point to) const;

 private:
  std::vector<Chord> chords_;
  Index index_;
};

// Those of `run` that also hold for the next segment, each with its worst distance.
std::vector<Match> still_holding(const std::vector<Match>& run, const std::vector<Match>& next);

// The earliest source among those that fit as well as the best, give or take the rounding; nobody of none.
Match chosen(const std::vector<Match>& matches);

}  // namespace geometry
