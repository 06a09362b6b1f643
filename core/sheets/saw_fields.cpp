// The units of paved fields at the saw. A straight cut has a fence setting or an angle; what follows a curve or goes
// round a corner is marked in its place.
#include <cmath>
#include <numbers>

#include "sheets/saw_list.h"
#include "takeoff/paving/offcuts.h"

namespace sheets {

namespace {

constexpr double degree = std::numbers::pi / 180;
double metres(double steps) { return steps / units::Length::steps_per_metre; }

SawCut cut_of(const SawList& list, const takeoff::paving::Layout& layout, const takeoff::paving::Piece& piece) {
  const takeoff::paving::Need need = takeoff::paving::need(layout, piece);
  SawCut cut;
  cut.pieces = 1;
  cut.metres = metres(piece.cut_length);
  if (!need.straight) {
    cut.marked = true;
    cut.what = piece.convex ? "cut more than once" : "notched";
    return cut;
  }
  cut.what = need.lengthwise ? "lengthwise" : "across";
  cut.least = cut.most = by_fence(list.printed(), metres(need.along));
  if (need.slope == 0) return cut;
  // The fence stands at the angle once for all of them; how long each becomes is marked.
  cut.marked = true;
  cut.angle = std::max(1.0, std::round(std::atan(std::abs(need.slope)) / degree)) * degree;
  return cut;
}

}  // namespace

void add_fields(SawList& list) {
  for (const auto& [of, layout] : list.printed().results->takeoff.layouts) {
    if (!layout) continue;
    for (const takeoff::paving::Piece& piece : layout->pieces) {
      const catalogue::Id& id = layout->lattice.kinds[static_cast<std::size_t>(piece.kind)].item;
      const catalogue::Item* item = list.job().catalogue->item(id);
      SawCut cut = cut_of(list, *layout, piece);
      cut.item = id;
      cut.thickness = item && item->height ? item->height->metres().si() : 0;
      list.add(std::move(cut), of, "");
    }
  }
}

}  // namespace sheets
