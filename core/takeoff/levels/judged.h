// One finished area looked at: each look adds what it finds to the share, and says of each facet what is wrong there.
#pragma once

#include <set>

#include "takeoff/levels/rims.h"
#include "takeoff/line.h"

namespace takeoff::levels {

struct Look {
  const plan::Job& job;
  const plan::Site& site;
  const Terrain& terrain;
  const Inlets& inlets;
};
struct Judged {
  Share share;
  std::vector<std::string> says;  // of each facet: "good" until a look says otherwise
};

// Measures fall_least_pct and fall_greatest_pct over all facets of more than a trace that are not flat,
// fall_flat_area_m2 (under 0.05 %). Flags: "fall-flat" (under the least fall for drainage; nothing is asked of
// permeable paving), "fall-steep" (over the greatest of a pool deck, or of permeable paving), and on an access route
// "access-cross" over 1:48 (which way people walk is not known); problem "access-run" over 1:20.
void look_at_falls(const Look& look, const Area& area, Judged& judged);

// "falls-to-house", "falls-to-pool": paving falls to an edge at which a building, a coping or the water stands, or from
// whose edge the water would run on straight down to one within 10 ft. An edge at which a channel, an inlet, steps, a
// wall or other paving with a surface of its own takes it, or a channel in between, is none. Because water reaches a
// building only over such an edge, looking at every edge finds it everywhere.
// "falls-to-pool" too where paving within 10 ft of a coping, square to it, falls back towards it and nothing lies
// between, though the water leaves elsewhere.
// Flag "fall-house": paving within 10 ft of a building's wall, square to it and with no channel between, that falls
// less than 2 % away from it (IRC R401.3).
void look_towards(const Look& look, const Area& area, Judged& judged);

// "low-point": water stands, with its depth, what holds it and about how much drains to it; where it spills before it
// is as deep as the limit ponding (1/8 in, what a hose test allows) a notice, "puddle".
void look_for_lows(const Look& look, const Area& area, Judged& judged);

// "lip" (other paving higher or lower along a shared edge; each pair once), "coping-lip", measures of both.
void look_at_lips(const Look& look, const Area& area, std::set<std::pair<plan::ElementId, plan::ElementId>>& pairs,
                  Judged& judged);

// "house-sill" (also where only the floor is known), "house-weep", "house-siding", "house-vent": paving too high there.
void look_at_house(const Look& look, const Area& area, Judged& judged);

// "warp" (units rock on a cone: fall x length^2 / (8 x radius)), "slab-over-hip" (slabs too long to bend over a hip or
// valley).
void look_at_slabs(const Look& look, const Area& area, Judged& judged);

// Of a pool: readings round its coping that differ ("coping-range"), ground that lies over it ("coping-low"). Of a
// wall: ground behind over its top ("cap-low").
void look_at_pool(const Look& look, const plan::Ground& ground, Share& share);
void look_at_wall(const Look& look, const plan::Ground& ground, Share& share);

}  // namespace takeoff::levels
