// What the catalogue's table builds where a paved area meets something.
#pragma once

#include "plan/site.h"

namespace takeoff::edges {

// The first layer of role base or sub-base from the top is of open-graded stone. False where no build-up is chosen.
bool open_base(const plan::Job& job, const plan::PavedArea& area);

// Units bound on concrete: the build-up holds mortar or a slab.
bool bound(const plan::Job& job, const plan::PavedArea& area);

// The row of the table that holds for a stretch of a paved area, nullptr where none does (nothing is built there, the
// ground is no paved area, or the person said "none" for that edge of the drawing). A person's choice for an edge goes
// before the table. Of the rows that fit, one whose condition speaks of this case (open base, dense base, bound deck,
// open base meets dense base, pillar, inlet, planter) goes before a general one; then the order of the table decides.
const catalogue::Junction* junction_for(const plan::Job& job, const plan::Ground& ground, const plan::Stretch& stretch);

}  // namespace takeoff::edges
