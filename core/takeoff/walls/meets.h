// What stands or lies in the zone of a layer of reinforcement.
#pragma once

#include "takeoff/walls/reinforcement.h"

namespace takeoff::walls {

// The part of a path between two stations (metres from its start); nothing where it is shorter than a step.
std::optional<geometry::Path> piece_of(const geometry::Path& path, double from, double to);

// One flag "layer-meets" for each thing inside the band behind the face that the layer takes, its length deep, between
// its places: pool, building, pillar or other keep-out, steps, drain run (but the one that drains this wall), another
// wall with its own stone and layers. Seen in plan; what lies over or under it is for the engineer.
std::vector<problem::Problem> layer_meets(const plan::Job& job, const plan::Site& site, const plan::Ground& ground,
                                          const plan::Wall& wall, const Profile& profile, std::size_t layer);

}  // namespace takeoff::walls
