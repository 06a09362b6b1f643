// What is chosen from the book is copied into the job's own catalogue, with all that it needs.
#pragma once

#include <vector>

#include "catalogue/catalogue.h"

namespace ui {

struct Wanted {
  std::vector<catalogue::Id> items;
  std::vector<catalogue::Id> patterns;
  std::vector<catalogue::Id> build_ups;
};

// The job's catalogue with what is wanted of the book and with what that needs: the items of a build-up's layers, the
// pieces of a mixed pack, the mixed packs that bring a piece, the supplier of each item, the restraint, rod, sealant
// and filler that the job's junctions name. What the job has already stays as it is there, its prices too: a job keeps
// what it was priced with. Ids that neither has are left for the takeoff to complain of.
catalogue::Catalogue with_needs(const catalogue::Catalogue& job, const catalogue::Catalogue& book,
                                const Wanted& wanted);

}  // namespace ui
