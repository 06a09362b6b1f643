#include "catalogue/pattern.h"

#include <algorithm>
#include <cstdint>

namespace catalogue {

namespace {

// A pattern with more cells in its repeat than this is no pattern that a crew can lay, and checking it would not end.
constexpr std::int64_t most_cells = 1'000'000;
constexpr int most_side = 10'000;

std::unexpected<problem::Problem> refuse(const Pattern& pattern, const char* code, const std::string& what) {
  return problem::fault(code, "pattern " + pattern.id + ": " + what, "correct the repeat or the pieces");
}

std::string cell_name(std::int64_t x, std::int64_t y) {
  return "(" + std::to_string(x) + ", " + std::to_string(y) + ")";
}

std::int64_t floor_div(std::int64_t a, std::int64_t b) { return a / b - (a % b != 0 && (a < 0) != (b < 0) ? 1 : 0); }

problem::Result<void> check_vectors(const Pattern& pattern) {
  if (pattern.along < 1 || pattern.across_y < 1)
    return refuse(pattern, "pattern-vectors", "a row must repeat along itself and the next rows lie across it");
  if (pattern.along > most_side || pattern.across_y > most_side || std::abs(pattern.across_x) > most_side)
    return refuse(pattern, "pattern-vectors", "the repeat is over 10,000 cells long");
  if (std::int64_t{pattern.along} * pattern.across_y > most_cells)
    return refuse(pattern, "pattern-vectors", "the repeat has over a million cells");
  if (pattern.pieces.empty()) return refuse(pattern, "pattern-gap", "there is no piece in it");
  return {};
}

problem::Result<void> check_pieces(const Pattern& pattern) {
  for (const PatternPiece& piece : pattern.pieces) {
    if (piece.w < 1 || piece.h < 1 || piece.w > most_side || piece.h > most_side || std::abs(piece.x) > most_side ||
        std::abs(piece.y) > most_side)
      return refuse(pattern, "pattern-vectors",
                    "the piece at " + cell_name(piece.x, piece.y) + " has no size, or lies over 10,000 cells away");
    if (std::int64_t{piece.w} * piece.h > most_cells)
      return refuse(pattern, "pattern-overlap",
                    "the piece at " + cell_name(piece.x, piece.y) + " is larger than the repeat");
    if (piece.size.empty())
      return refuse(pattern, "pattern-size", "the piece at " + cell_name(piece.x, piece.y) + " names no size");
    for (const PatternPiece& other : pattern.pieces)
      if (other.size == piece.size && std::minmax(other.w, other.h) != std::minmax(piece.w, piece.h))
        return refuse(pattern, "pattern-size", "pieces of the size '" + piece.size + "' differ in their cells");
  }
  return {};
}

}  // namespace

// The plane is covered once by the repeats exactly if one cell of each class is: cells that differ by a whole a x along
// + b x across are one class, and each class has one cell with 0 <= y < across_y and 0 <= x < along.
problem::Result<void> check(const Pattern& pattern) {
  if (auto vectors = check_vectors(pattern); !vectors) return vectors;
  if (auto pieces = check_pieces(pattern); !pieces) return pieces;
  const std::int64_t along = pattern.along, rows = pattern.across_y;
  std::vector<char> covered(static_cast<std::size_t>(along * rows), 0);
  for (const PatternPiece& piece : pattern.pieces) {
    for (std::int64_t y = piece.y; y < piece.y + piece.h; ++y) {
      const std::int64_t b = floor_div(y, rows);
      for (std::int64_t x = piece.x; x < piece.x + piece.w; ++x) {
        const std::int64_t shifted = x - b * pattern.across_x;
        const std::int64_t column = shifted - floor_div(shifted, along) * along;
        char& cell = covered[static_cast<std::size_t>((y - b * rows) * along + column)];
        if (cell != 0) return refuse(pattern, "pattern-overlap", "two pieces lie on the cell " + cell_name(x, y));
        cell = 1;
      }
    }
  }
  const auto gap = std::find(covered.begin(), covered.end(), 0);
  if (gap == covered.end()) return {};
  const std::int64_t at = gap - covered.begin();
  return refuse(pattern, "pattern-gap", "no piece lies on the cell " + cell_name(at % along, at / along));
}

std::vector<std::string> sizes(const Pattern& pattern) {
  std::vector<std::string> names;
  for (const PatternPiece& piece : pattern.pieces)
    if (std::find(names.begin(), names.end(), piece.size) == names.end()) names.push_back(piece.size);
  return names;
}

// g = (2 W + 3 j - L) / 2 grows with j, so g in [least, greatest] is a range of j; halves are taken towards the inside.
HerringboneFit herringbone_fit(units::Length length, units::Length width, units::Length least, units::Length greatest) {
  const std::int64_t over = length.steps() - 2 * width.steps();  // L - 2 W = 3 j - 2 g
  const std::int64_t low = -floor_div(-(2 * least.steps() + over), 3);
  const std::int64_t high = floor_div(2 * greatest.steps() + over, 3);
  HerringboneFit fit;
  const std::int64_t joint = std::max(low, least.steps());
  fit.fits = joint <= std::min(high, greatest.steps());
  if (fit.fits) {
    fit.joint = units::Length::of_steps(joint);
    fit.end_gap = units::Length::of_steps(floor_div(3 * joint - over, 2));
  } else {
    fit.would_fit_least = units::Length::of_steps(low);
    fit.would_fit_greatest = units::Length::of_steps(high);
  }
  return fit;
}

}  // namespace catalogue
