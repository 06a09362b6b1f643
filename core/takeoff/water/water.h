// Water on the site: what runs off, where it goes, and the runs that carry it.
#pragma once

#include <map>

#include "takeoff/ground/ground.h"
#include "takeoff/levels/terrain.h"
#include "takeoff/line.h"

namespace takeoff::water {

// Each drain run: its levels (start_level_m, end_level_m, joint_level_m), cover, outlet, joint, flow against capacity,
// and what is bought and laid for it. A pipe needs levels; channels and sleeves may go without.
//
// Problems: "drain-level" (a pipe without one), "drain-inverts" (out of order), "pipe-uphill" (no fall, an invert that
// rises along the run, or a joint that comes in below the run that it joins), "run-not-joined" (it ends beside the run
// that it should join), "outlet-above-pipe" (the ground at an outlet stands above its invert), "pipe-in-the-air",
// "run-into", "run-cycle", "item-missing", "density-missing". Flags: "pipe-fall" (limit pipe-fall), "pipe-cover" (limit
// pipe-cover), "pipe-small" (less than what arrives; full pipe by Manning). Notices: "outlet-shallow", "outlet-ground",
// "pipe-slow" (limit pipe-speed).
std::map<plan::ElementId, Share> runs(const plan::Job& job, const plan::Site& site, const levels::Terrain& terrain);

// Of each paved area and downspout what runs off (runoff_l_s; limits runoff-paving, runoff-open-joints, runoff-roof;
// where a rain is chosen) and who takes it, and of each body of open stone the water that its voids hold
// (storage_m3, and storage_rain_m over its own paving, at its first area). Problem "run-into": the water goes to what
// is no drain run. Flag "water-nowhere": every edge of a finished area holds its water and no drain takes it. Notice
// "no-rain", once.
std::map<plan::ElementId, Share> runoff(const plan::Job& job, const plan::Site& site, const ground::Bodies& bodies,
                                        const levels::Terrain& terrain);

// What arrives at each drain run straight from areas and downspouts, not through other runs. Cubic metres a second. An
// area's water goes to its `water_to`, else to the channel along its edge to which its finished surface falls.
std::map<plan::ElementId, double> arriving(const plan::Job& job, const plan::Site& site,
                                           const levels::Terrain& terrain);

// What a feature takes: its item, and for a spout the flow of its sheet of water.
Share feature(const plan::Job& job, const plan::Ground& ground);

// Invert of a run (metres) at a place along it (metres from its start); nothing where it has no level. The trench and
// the sheet read it too.
std::optional<double> invert(const plan::Job& job, const plan::DrainRun& run, double at);

}  // namespace takeoff::water
