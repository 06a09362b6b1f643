// Digging beside what the ground holds up.
#pragma once

#include "takeoff/there/subjects.h"
#include "takeoff/there/there.h"

namespace takeoff::there {

// For a building by the depth of its footing, for a pool by the depth of its shell: no dig may go below the line that
// falls at 45 degrees from the bottom of its outer edge (UPC 314.1; IRC P2604.4; for a shell common practice). At a
// distance x from the wall that is f + x below the existing ground, so what is t deep breaks it within t - f. The
// footing is taken to end at the wall's face: one that stands out reaches further. Depths are the build-up's under the
// finished surface, or under the existing ground at the deepest corner where both surfaces are known; of a pipe the
// existing ground less its invert and 3 in of bed.
// Codes trench-by-footing, footing-unknown (a dig within its own depth of it, and the depth of the footing not known);
// dig-by-shell, shell-unknown.
void trenches(const plan::Job& job, const plan::Site& site, const plan::Ground& ground, const ground::Bodies& bodies,
              const levels::Terrain& terrain, Share& share);

}  // namespace takeoff::there
