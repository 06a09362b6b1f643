#include "ui/desk/lay_pattern.h"

#include <algorithm>
#include <set>
#include <string_view>
#include <vector>

#include "takeoff/paving/lattice.h"

namespace ui {

namespace {

using catalogue::Item;
using units::Length;

bool can_be_laid(const Item& item) {
  constexpr std::string_view kinds[] = {"paving-unit", "slab", "permeable-unit", "clay-unit"};
  return std::ranges::find(kinds, item.kind) != std::end(kinds) && item.length && item.width;
}

// Those wanted first, then all that can be laid.
std::vector<const Item*> candidates(const catalogue::Catalogue& catalogue,
                                    const std::map<std::string, plan::Id>& wanted) {
  std::vector<const Item*> found;
  const auto add = [&found](const Item* item) {
    if (item && can_be_laid(*item) && std::ranges::find(found, item) == found.end()) found.push_back(item);
  };
  for (const auto& [size, id] : wanted) add(catalogue.item(id));
  for (const auto& [id, item] : catalogue.items) add(item.get());
  return found;
}

std::int64_t side(const catalogue::CellSide& cell, const Item& item) {
  if (cell.of == catalogue::CellSide::Of::fixed) return cell.fixed.steps();
  const Length own = cell.of == catalogue::CellSide::Of::module_length ? *item.length : *item.width;
  return (own + item.joint.value_or(Length())).steps() / std::max(cell.parts, 1);
}

// The first of the candidates that fills so many cells, less a joint, within 1/64 in; as thick as the first unit, so
// that one bed serves all.
const Item* filling(const std::vector<const Item*>& all, const Item& first, const catalogue::PatternPiece& piece,
                    std::int64_t cell_x, std::int64_t cell_y) {
  const std::int64_t joint = first.joint.value_or(Length()).steps();
  const std::int64_t along = piece.w * cell_x - joint;
  const std::int64_t across = piece.h * cell_y - joint;
  const auto near = [](Length a, std::int64_t b) { return std::abs(a.steps() - b) <= Length::inch_64ths(1).steps(); };
  const auto fits = [&](const Item* item) {
    return item->height == first.height && near(*item->length, std::max(along, across)) &&
           near(*item->width, std::min(along, across));
  };
  const auto found = std::ranges::find_if(all, fits);
  return found == all.end() ? nullptr : *found;
}

using Units = std::map<std::string, plan::Id>;
std::optional<Units> units_with(const std::vector<const Item*>& all, const catalogue::Pattern& pattern,
                                const Item& first) {
  Units units;
  for (const catalogue::PatternPiece& piece : pattern.pieces) {
    if (units.contains(piece.size)) continue;
    const Item* item =
        units.empty() ? &first : filling(all, first, piece, side(pattern.cell_x, first), side(pattern.cell_y, first));
    if (!item) return {};
    units[piece.size] = item->id;
  }
  return units;
}

}  // namespace

std::optional<Units> units_for(const catalogue::Catalogue& catalogue, const catalogue::Pattern& pattern,
                               const Units& wanted) {
  catalogue::Catalogue with_it = catalogue;
  with_it.patterns.insert_or_assign(pattern.id, pattern);
  const std::vector<const Item*> all = candidates(catalogue, wanted);
  for (const Item* first : all) {
    const auto units = units_with(all, pattern, *first);
    if (!units) continue;
    plan::Laying laying;
    laying.pattern = pattern.id;
    laying.units = *units;
    if (takeoff::paving::lattice(with_it, laying)) return units;
  }
  return {};
}

plan::PavedArea with_pattern(plan::PavedArea area, const catalogue::Catalogue& catalogue,
                             const catalogue::Pattern* pattern) {
  if (!pattern) {
    area.laying.reset();
    return area;
  }
  if (!area.laying) {
    area.laying.emplace();
    for (const plan::DrawnRing& ring : area.outline) {
      if (ring.edges.empty()) continue;
      area.laying->start = ring.edges.front().from;
      break;
    }
  }
  area.laying->pattern = pattern->id;
  if (auto units = units_for(catalogue, *pattern, area.laying->units)) area.laying->units = std::move(*units);
  return area;
}

}  // namespace ui
