// What is on the site already: removals and overlays, marks with their rules, protection.
#pragma once

#include "takeoff/ground/ground.h"
#include "takeoff/levels/terrain.h"
#include "takeoff/line.h"

namespace takeoff::there {

Share removal(const plan::Job& job, const plan::Site& site, const plan::Ground& ground);
Share protection(const plan::Job& job, const plan::Ground& ground);
// The rules of site-rules.csv, held by every mark (and tree, building, pool) against all that is built or dug near it.
Share marks(const plan::Job& job, const plan::Site& site, const ground::Bodies& bodies, const levels::Terrain& terrain);
// What hurts people and can be seen from the plan: guards, barriers, trenches by footings and the pool's shell.
Share dangers(const plan::Job& job, const plan::Site& site, const ground::Bodies& bodies,
              const levels::Terrain& terrain);

}  // namespace takeoff::there
