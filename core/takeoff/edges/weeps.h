// Openings through a kerb, so that what gets into the stone gets out of it again.
#pragma once

#include <string_view>

#include "takeoff/line.h"
#include "takeoff/paving/border.h"

namespace takeoff::edges {

// A kind of weep. A cord left in passes damp, not rain; the catalogue's item may say more narrowly what passes rain.
struct WeepKind {
  std::string_view word;   // open-joint, tube, hole, cord-left, cord-pulled, strip
  std::string_view limit;  // the limit that keeps its usual spacing
  double spacing_inches =
      0;  // where the limit is not there: cord and tube 16 (masonry journal, installing weep holes), open
          // joint 24 (BIA TN 7, from memory), hole 120 (trade bulletins, from memory), strip 48 (common practice)
  bool passes_rain = false;
  bool in_joint = false;  // sits in a head joint; others are bored where they are wanted
  bool of_cord = false;   // bought by length: the kerb's width, a tail of 6 in and 1 in
};
const WeepKind* weep_kind(std::string_view word);  // nullptr for another word

// May rain be counted on to get out here? Open joints, tubes, holes and strips pass it unless their item says no, a
// pulled cord's hole only where its item says yes (detail passes_rain), a cord left in never. False for a kind that is
// not known.
bool rain_passes(const plan::Job& job, const plan::Weeps& weeps);

// Metres along a kerb's centre line where weeps go, between two corners `length` apart: m = max(1, ceil(length /
// spacing)) at (i + 1/2) length / m, each moved to the nearest of `joints` (metres from the first corner, increasing;
// corners are not among them) where there are any. `shared` counts those that came to a joint already taken.
struct WeepPlaces {
  std::vector<double> at;
  int shared = 0;
};
WeepPlaces weep_places(double length, double spacing, const std::vector<double>& joints);

// A kerb between two corners: its length on its own centre line and its head joints.
struct KerbStretch {
  double length = 0;
  std::vector<double> joints;
};

// Lines, the task weep-set, measures weeps, weep_spacing_m, weep_opening_m2 (what rain is credited with). The person's
// kind and spacing go before the item's (details kind, spacing_mm), the item's before the catalogue's limits.
Share weeps(const plan::Job& job, const plan::EdgeRun& run, const catalogue::Item& unit,
            const std::vector<KerbStretch>& stretches, const plan::ElementId& of);

}  // namespace takeoff::edges
