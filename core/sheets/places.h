// Where words have room on a drawing: nothing is written over what stands there already.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "sheets/paper_scale.h"

namespace sheets {

// A rectangle on paper about a place of the figure, turned by so many radians.
struct Spot {
  Vec middle;
  double wide_mm = 0;
  double high_mm = 0;
  double turn = 0;
};

inline constexpr double label_high_mm = 4.4;
double label_wide_mm(const std::string& words);  // of a label's words, about
double readable(double angle);                   // the same line, to be read from below or from the right

class Places {
 public:
  explicit Places(PaperScale scale) : scale_(scale) {}

  // Nothing is free outside so many mm about a place.
  void keep_within(Vec middle, double wide_mm, double high_mm) { room_ = Spot{middle, wide_mm, high_mm, 0}; }
  bool free(const Spot& spot) const;
  void take(const Spot& spot) { taken_.push_back(spot); }
  // What the figure's marks cover: they keep their size on paper.
  void take_marks(const Figure& figure);
  // Takes the first of these that is free and gives its number; -1: none is.
  int take_first(const std::vector<Spot>& spots);
  PaperScale scale() const { return scale_; }

 private:
  bool meet(const Spot& a, const Spot& b) const;
  bool inside(const Spot& spot) const;
  PaperScale scale_;
  std::optional<Spot> room_;
  std::vector<Spot> taken_;
};

}  // namespace sheets
