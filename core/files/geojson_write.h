// The drawing of a job as GeoJSON, for those who draw with other programs.
#pragma once

#include <string>

#include "files/drawn_things.h"

namespace files {

// A FeatureCollection (RFC 7946) in metres from the job's origin, not in degrees: its member `units` says "m", as the
// import of this program reads it. A feature a thing, its id the element's, `layer` its kind's word, so that
// `--layer KIND=KIND` brings it back; a level has its height as third number. Outer rings run counter-clockwise and
// islands clockwise; arcs are chords, none further than 0.5 mm from its arc.
std::string write_geojson(const plan::Job& job, const DrawnThings& drawn);

}  // namespace files
