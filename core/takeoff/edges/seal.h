// Sealed joints: rod, sealant, sand on top.
#pragma once

#include "plan/along.h"
#include "takeoff/line.h"

namespace takeoff::edges {

// Depth of sealant in a joint: half its width, not under 1/4 and not over 1/2 in (limit seal-depth).
Working seal_depth(const plan::Job& job, const Working& width);

// The smallest rod of the catalogue that is at least 1.25 of the joint (limit rod-least; ASTM D5249: 25 to 35 % wider),
// nullptr where none is wide enough. Of equal ones the one with the first id.
const catalogue::Item* rod_for(const plan::Job& job, units::Length joint);

// One row of the table along its chains: length on the joint's own middle line, rod in metres, sealant by width x depth
// in m3, sand broadcast into the wet sealant where the row names it (0.5 lb per sq ft of its face, common practice).
// Sealant takes its item's breakage, or 10 % (limit sealant-allowance, common practice). Joints outside the limit
// seal-width are a problem. Measures sealed_joint_m:ROW and sealant_m3:ROW.
Share sealed_joint(const plan::Job& job, const catalogue::Junction& row, const std::vector<plan::Along>& chains,
                   const plan::ElementId& of);

// Adds sealed_joint_m and sealant_m3, the sums over all rows, where there are any.
void add_totals(Share& share);

}  // namespace takeoff::edges
