// How the ground lies when the next thing is dug: as measured, less topsoil and what was removed, and less every hole
// that was dug before.
#pragma once

#include <memory>
#include <span>

#include "takeoff/ground/trench.h"
#include "takeoff/levels/terrain.h"

namespace takeoff::ground {

// What an area was dug down to.
struct Formation {
  geometry::Region footprint;
  double depth = 0;                          // below the finished surface
  std::vector<levels::SurfacePtr> surfaces;  // none: by one depth
};

// A piece of ground and what came off it before the dig: a removal's thickness, or topsoil.
struct Cleared {
  geometry::Region ground;
  double off = 0;        // metres
  bool topsoil = false;  // it is earth of the site, kept apart
  bool stays = false;    // a slab that is built on: nothing is dug
};

class Lie {
 public:
  Lie(const plan::Job& job, const plan::Site& site, const levels::Terrain& terrain);
  void add(Formation formation);
  void add(Hole hole);
  // `otherwise`: the height of the ground where no survey tells it; NaN: none. Nothing where no height is known.
  std::optional<Lies> at(geometry::Point point, double otherwise) const;
  LiesAt asked() const;
  // Without a survey some things are dug by their depth alone: their heights are no site's, so no other hole is seen.
  LiesAt asked_by_depth() const;
  // The height down to which an area was dug there.
  std::optional<double> formation(geometry::Point point, double ground) const;
  // A region in pieces by what came off first; areas add up to the region's.
  problem::Result<std::vector<Cleared>> cleared(const geometry::Region& region) const;

 private:
  struct Taken {
    geometry::Region ground;
    geometry::Box box;
    double off = 0;
    bool stays = false;
  };
  struct Dug {
    geometry::Box box;
    std::unique_ptr<const Formation> formation;
  };
  // What was dug at a place: nothing where nothing was.
  struct Down {
    const Formation* formation = nullptr;
    const geometry::Facet* facet = nullptr;
    std::optional<double> level;  // nothing where it was dug by depth
  };
  Down down(geometry::Point point) const;
  std::optional<Lies> at(geometry::Point point, double otherwise, bool with_holes) const;
  const levels::Terrain& terrain_;
  double topsoil_ = 0;
  std::vector<Taken> taken_;
  std::vector<Dug> formations_;
  std::vector<std::unique_ptr<const Hole>> holes_;
};

}  // namespace takeoff::ground
