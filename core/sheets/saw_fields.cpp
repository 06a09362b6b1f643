// The units of paved fields at the saw. A straight cut has a fence setting or an angle; what follows a curve or goes
// round a corner is marked in its place.
#include <algorithm>
#include <cmath>
#include <numbers>
#include <optional>
#include <set>

#include "sheets/saw_list.h"
#include "takeoff/paving/bordered.h"
#include "takeoff/paving/offcuts.h"

namespace sheets {

namespace {

constexpr double degree = std::numbers::pi / 180;
double metres(double steps) { return steps / units::Length::steps_per_metre; }

// All cut sides lie on one line, within half a millimetre.
bool one_line(const takeoff::paving::Piece& piece) {
  std::optional<geometry::Vec> from, along;
  for (std::size_t i = 0; i < piece.sides.size(); ++i) {
    if (!piece.sides[i].cut) continue;
    const geometry::Vec start = piece.sides[i].from, end = piece.sides[(i + 1) % piece.sides.size()].from;
    if (!from) {
      from = start;
      along = end - start;
    }
    for (const geometry::Vec point : {start, end})
      if (std::abs(geometry::cross(*along, point - *from)) > takeoff::paving::grazing * geometry::length(*along))
        return false;
  }
  return from.has_value();
}

// Edges of the field that are arcs.
std::set<geometry::Origin> arcs_of(const geometry::Region& field) {
  std::set<geometry::Origin> arcs;
  for (const geometry::Outline* outline : field.outlines())
    for (const geometry::Edge& edge : outline->edges())
      if (edge.bulge != 0) arcs.insert(edge.origin);
  return arcs;
}

bool follows(const takeoff::paving::Piece& piece, const std::set<geometry::Origin>& arcs) {
  return std::ranges::any_of(
      piece.sides, [&](const takeoff::paving::PieceSide& side) { return side.cut && arcs.contains(side.against); });
}

SawCut cut_of(const SawList& list, const takeoff::paving::Layout& layout, const takeoff::paving::Piece& piece,
              bool curved) {
  const takeoff::paving::Need need = takeoff::paving::need(layout, piece);
  SawCut cut;
  cut.pieces = 1;
  cut.metres = metres(piece.cut_length);
  if (!need.straight || curved || !one_line(piece)) {
    cut.marked = true;
    cut.what = !piece.convex ? "notched" : curved ? "along a curve" : "cut more than once";
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
  const auto& layouts = list.printed().results->takeoff.layouts;
  for (const auto& ground : list.printed().results->site.grounds) {
    const plan::ElementId& of = ground->element->id;
    const auto laid = layouts.find(of);
    const auto* layout = laid == layouts.end() ? nullptr : laid->second.get();
    if (!layout) continue;
    const std::set<geometry::Origin> arcs = arcs_of(takeoff::paving::bordered(list.job(), *ground).field);
    for (const takeoff::paving::Piece& piece : layout->pieces) {
      const catalogue::Id& id = layout->lattice.kinds[static_cast<std::size_t>(piece.kind)].item;
      const catalogue::Item* item = list.job().catalogue->item(id);
      SawCut cut = cut_of(list, *layout, piece, follows(piece, arcs));
      cut.item = id;
      cut.thickness = item && item->height ? item->height->metres().si() : 0;
      list.add(std::move(cut), of, "");
    }
  }
}

}  // namespace sheets
