// Where the face of a wall stands at the level of what lies before it.
#pragma once

#include <optional>

#include "takeoff/walls/beside.h"
#include "takeoff/walls/profile.h"

namespace takeoff::walls {

// A dry-laid wall is drawn at its base; each course stands its setback behind the one below, so that at paving level
// the face is some way behind the line, and paving that ends on the line leaves that gap.
class FaceBack {
 public:
  // Nothing for a wall that can't be worked out (its own trade says why), that stands already or has no setback.
  static std::optional<FaceBack> of(const plan::Job& job, const plan::Ground& wall);
  // Metres behind the line as drawn, mean over the places where `curve` comes within reach of the wall; 0 where none.
  double along(const geometry::Curve& curve, double reach) const;

 private:
  FaceBack(FaceLine line, Profile profile, double setback);
  double at(double station) const;
  FaceLine line_;
  Profile profile_;
  double setback_ = 0;
};

}  // namespace takeoff::walls
