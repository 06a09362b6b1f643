// What a coping is laid from, how each of its runs can be made, and the runs as they come to lie.
#pragma once

#include <optional>

#include "plan/site.h"
#include "takeoff/edges/rows.h"
#include "takeoff/paving/placed.h"

namespace takeoff::edges {

// What the coping is made of, as far as the catalogue has it.
struct Kit {
  const catalogue::Item* piece = nullptr;
  const catalogue::Item* inside = nullptr;   // corner piece where the deck goes round the water
  const catalogue::Item* outside = nullptr;  // nosed on two edges, where the water goes round the deck
  std::vector<const catalogue::Item*> radius;
  paving::RowRules rules;
};
Kit kit(const plan::Job& job, const catalogue::Item& piece, const plan::Coping& coping);

struct Way {
  const catalogue::Item* item = nullptr;
  paving::RowMake make;
};
// The chosen piece in every way that works, then radius pieces; the least cutting first in each.
std::vector<Way> all_ways(const Kit& kit, const TurnedRun& turned);
// The first of them that the person's choice allows.
std::optional<Way> pick(const std::vector<Way>& found, const catalogue::Item* piece, bool curved,
                        plan::Coping::Make make);

// Corner pieces are taken off the straights that they stand between. `after`: at the end of each run, nullptr where
// there is none.
struct CopingCorners {
  std::vector<const catalogue::Item*> after;
  int outside_missing = 0;
};
CopingCorners take_corners(const Kit& kit, std::vector<TurnedRun>& runs);

// One run of a pool's coping with its pieces: what `coping` counts, for whoever draws it. Runs that can't be made, or
// that two corner pieces leave no room, have no way. Nothing where no coping is chosen or it can't be.
struct LaidCoping {
  paving::PlacedRun placed;
  std::optional<Way> way;
  const catalogue::Item* before = nullptr;  // corner pieces at its ends; the one after it is counted with it
  const catalogue::Item* after = nullptr;
};
struct CopingRow {
  double from = 0;  // metres from the water's edge to the nose, on the land's side: not above 0
  double deep = 0;
  std::vector<LaidCoping> runs;
};
std::vector<CopingRow> laid_coping(const plan::Job& job, const plan::Ground& ground);  // one for each outline

}  // namespace takeoff::edges
