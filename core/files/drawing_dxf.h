// The drawing of a job as DXF (release 2000, AC1015, text form), for those who draw with other programs.
#pragma once

#include <string>

#include "files/drawn_things.h"

namespace files {

// In metres or feet from the job's origin, as the job is read, and $INSUNITS says which (6 or 2). A layer for each kind
// of element, named by the kind's word (of site marks site-mark-gate), and one for tags. Closed shapes are closed
// LWPOLYLINEs, each ring one, lines open ones; arcs are kept as bulges. Levels are POINTs with their height; tags,
// notes and figures are TEXT. Each shape carries its element's id and the number of its ring as extended data of the
// application GROUNDCOURSE, by which the import puts islands back into their shapes; other programs pass it over.
// Letters past ASCII are written by their numbers, as that release does (\U+00F1).
std::string drawing_dxf(const plan::Job& job, const DrawnThings& drawn);

inline constexpr const char* dxf_application = "GROUNDCOURSE";

}  // namespace files
