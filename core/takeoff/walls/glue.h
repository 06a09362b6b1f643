// Adhesive by the bead.
#pragma once

#include "takeoff/line.h"

namespace takeoff::walls {

// Metres of a round bead that a volume gives: V / (pi d^2 / 4). 28 US fl oz at 1/4 in: 85.8 ft. SI; diameter over 0.
double bead_length(double volume_m3, double diameter);

// Adhesive along what is glued: beads (limit adhesive-beads, 2) of one diameter (limit adhesive-bead, 1/4 in) over the
// whole length; what the gaps for water save is the allowance of practice. The line is in m3, the measure
// adhesive_tubes in whole tubes of the item's volume_l. Nothing where no adhesive is chosen or no length is glued.
void add_glue(const plan::Job& job, const plan::Id& adhesive, Stage stage, const std::string& text,
              const plan::ElementId& of, const Working& glued, Share& share);

}  // namespace takeoff::walls
