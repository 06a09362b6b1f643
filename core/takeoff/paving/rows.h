// The outline in the lattice's frame, and which units of which row its edges come near.
//
// A row is all units of one kind with the same b. Each edge walks only the rows that its own height meets, and in a row
// only the units that it meets there, so that the cost follows the outline's length.
#pragma once

#include <cstdint>
#include <span>
#include <vector>

#include "geometry/outline.h"
#include "takeoff/paving/lattice.h"

namespace takeoff::paving {

// The region's outlines as chords within 0.05 mm of its arcs: cut once, framed for every start that is tried. Points on
// an arc are kept as they are, not put on the grid, so that turning the ground does not change its chords.
struct Chords {
  struct Spot {
    geometry::Point from;     // where the edge starts
    geometry::Vec by;         // from there, steps
    geometry::Origin origin;  // of the chord that leaves the spot
  };
  std::vector<std::vector<Spot>> rings;
};
Chords chords(const geometry::Region& region);

// Straight edges in the frame, steps; the ground lies on the left.
struct FrameEdge {
  geometry::Vec from;
  geometry::Vec to;
  std::int32_t previous = 0;  // of the same ring
  std::int32_t next = 0;
  geometry::Origin origin;
};

struct FrameOutline {
  std::vector<FrameEdge> edges;
  double area = 0;  // steps squared
  double low_y = 0;
  double high_y = 0;
};
void frame(const Chords& chords, const Lattice& lattice, FrameOutline& outline);

// An edge near the unit `a` of a row: `key` sorts by a, then by the number of the edge.
struct Near {
  std::uint64_t key = 0;
  static Near make(std::int64_t a, std::int32_t edge, bool enters) {
    const auto place = static_cast<std::uint32_t>(a + (std::int64_t{1} << 31));
    return {std::uint64_t{place} << 32 | static_cast<std::uint32_t>(edge) << 1 | (enters ? 1u : 0u)};
  }
  int a() const { return static_cast<int>(static_cast<std::int64_t>(key >> 32) - (std::int64_t{1} << 31)); }
  std::int32_t edge() const { return static_cast<std::int32_t>((key & 0xffffffffu) >> 1); }
  bool enters() const { return (key & 1) != 0; }  // comes into the unit shrunk by `grazing`
  bool operator<(const Near& other) const { return key < other.key; }
};

// All rows of one kind. Kept and filled again for the next kind, so that trying many starts needs no new memory.
class Rows {
 public:
  void fill(const FrameOutline& outline, const Lattice& lattice, const Kind& kind);

  int first() const { return first_; }  // b of the first row
  int count() const { return count_; }
  std::span<const Near> near(int row) const { return part(near_, near_starts_, row); }  // sorted
  std::span<const double> crossings(int row) const {
    return part(cross_, cross_starts_, row);
  }  // of the middle line, sorted

 private:
  template <class T>
  static std::span<const T> part(const std::vector<T>& all, const std::vector<std::int32_t>& starts, int row) {
    const auto i = static_cast<std::size_t>(row);
    return {all.data() + starts[i], all.data() + starts[i + 1]};
  }
  struct Band;
  void walk(const FrameEdge& edge, std::int32_t number, const Band& band);
  void group();

  struct FoundNear {
    std::int32_t row;
    Near near;
  };
  struct FoundCrossing {
    std::int32_t row;
    double x;
  };
  int first_ = 0;
  int count_ = 0;
  std::vector<FoundNear> found_near_;
  std::vector<FoundCrossing> found_cross_;
  std::vector<Near> near_;
  std::vector<double> cross_;
  std::vector<std::int32_t> near_starts_;
  std::vector<std::int32_t> cross_starts_;
};

}  // namespace takeoff::paving
