// Water followed downhill over a finished surface, facet by facet.
#pragma once

#include "takeoff/levels/rims.h"

namespace takeoff::levels {

class Tracer {
 public:
  Tracer(const Area& area, const std::vector<char>& open) : area_(area), open_(open) {}
  // Where water from here comes to rest; nothing where it runs off over an open rim. Over a facet it runs straight down
  // its fall; where two facets both lead to their common edge, along that edge; along a closed rim likewise.
  std::optional<geometry::Vec> sink(geometry::Vec from) const;

 private:
  struct Way {
    geometry::Vec to;
    double fall = 0;
  };
  void over(const geometry::Facet& facet, geometry::Vec from, std::optional<Way>& best) const;
  bool leaves(geometry::Vec at) const;

  const Area& area_;
  const std::vector<char>& open_;
};

}  // namespace takeoff::levels
