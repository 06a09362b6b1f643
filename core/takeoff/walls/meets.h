// What stands or lies in the zone of a layer of reinforcement.
#pragma once

#include "takeoff/walls/reinforcement.h"

namespace takeoff::walls {

// The part of a path between two stations (metres from its start); nothing where it is shorter than a step.
std::optional<geometry::Path> piece_of(const geometry::Path& path, double from, double to);

// A thing inside the band behind the face that a layer takes, its length deep.
struct Meeting {
  std::string what;               // "the pool P"
  Extent extent;                  // of the layer, in which it was found
  std::optional<problem::Xy> at;  // empty: the band can't be drawn, so nobody knows whether they meet
};
// Each thing once: pool, building, pillar or other keep-out, steps, drain run (but the one that drains this wall),
// another wall with its own stone and layers. Seen in plan; what lies over or under it is for the engineer. Layers of
// one length and the same places meet the same: ask once.
std::vector<Meeting> meetings(const plan::Job& job, const plan::Site& site, const plan::Ground& ground,
                              const plan::Wall& wall, const std::vector<Extent>& there, units::Length length);
// Flag "layer-meets", or notice "layer-zone" where the band can't be drawn.
problem::Problem in_words(const plan::Job& job, const plan::ElementId& of, int on_course, const Meeting& one);

}  // namespace takeoff::walls
