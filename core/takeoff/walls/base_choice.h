// What a stepped base saves, and what a level one would take.
#pragma once

#include "takeoff/walls/courses.h"

namespace takeoff::walls {

// Times that the base of a profile steps.
int steps_of_base(const Profile& profile);

// The same wall on one level base, its lowest; nothing where the base has no step.
std::optional<Profile> on_level_base(const Profile& profile);

// The notice "wall-steps" for a wall whose base goes by the rule: units as laid (`units`, with the steps that bury the
// least) beside those of the level base, which has the fewest steps and the most below ground. Both are laid, not
// reckoned. Nothing where the base was given or has no step.
Share base_choice(const plan::Job& job, const plan::Ground& ground, const Profile& profile, const Blocks& blocks,
                  double units);

}  // namespace takeoff::walls
