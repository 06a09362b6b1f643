// Water on the site: what runs off, where it goes, and the runs that carry it.
#pragma once

#include "takeoff/ground/ground.h"
#include "takeoff/levels/terrain.h"
#include "takeoff/line.h"

namespace takeoff::water {

// Level, depth, cover and cost of a drain run; its outlet, its joining another run, its capacity against what arrives.
Share run(const plan::Job& job, const plan::Site& site, const levels::Terrain& terrain, const plan::Ground& ground);

// Runoff of each paved area and downspout, where it goes, storage in open bases, flow of weeps; pipes too small.
Share runoff(const plan::Job& job, const plan::Site& site, const ground::Bodies& bodies,
             const levels::Terrain& terrain);

// What a feature takes: its item, and for a spout the flow of its sheet of water.
Share feature(const plan::Job& job, const plan::Ground& ground);

// Invert of a run (metres) at a place along it (metres from its start); nothing where it has no level. The trench and
// the sheet read it too.
std::optional<double> invert(const plan::Job& job, const plan::DrainRun& run, double at);

}  // namespace takeoff::water
