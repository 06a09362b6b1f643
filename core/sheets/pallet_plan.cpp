#include "sheets/pallet_plan.h"

#include <algorithm>
#include <cmath>

#include "estimate/charges.h"
#include "sheets/parts.h"
#include "takeoff/water/network.h"

namespace sheets {

using catalogue::Item;
using estimate::OrderLine;
using geometry::Vec;

namespace {

Vec vec(problem::Xy at) { return {at.x, at.y}; }

geometry::Point grid(Vec at) {
  return {units::Length::nearest(units::Metres(at.x)), units::Length::nearest(units::Metres(at.y))};
}

// The ways in that are drawn as lines.
std::vector<const geometry::Path*> paths(const Printed& printed) {
  std::vector<const geometry::Path*> found;
  for (const auto& ground : printed.results->site.grounds) {
    const auto* mark = std::get_if<plan::SiteMark>(&ground->element->kind);
    if (mark && mark->what == "path" && ground->path) found.push_back(&*ground->path);
  }
  return found;
}

// Pieces on one full pallet; of a mixed one all its sizes.
double on_one(const Item& item) {
  if (item.unit != "pack") return item.pack.pieces;
  double sum = 0;
  for (const catalogue::PackContent& content : item.contents) sum += content.pieces;
  return sum > 0 ? sum : item.pack.pieces;
}

double pieces_of(const Item& item, const OrderLine& line) {
  return item.unit == "pack" ? line.order_quantity * on_one(item) : line.order_quantity;
}

bool lies_in(const Item& item, const catalogue::Id& size) {
  return item.id == size ||
         std::ranges::any_of(item.contents, [&](const auto& content) { return content.item == size; });
}

// How much of the line each element asks for, in any one measure: pieces, or of mixed pallets the ground they cover.
std::vector<PalletRow::Part> asked_by(const Printed& printed, const OrderLine& line, const Item& item) {
  std::vector<PalletRow::Part> parts;
  for (const plan::ElementId& id : tags(printed, line.of)) parts.push_back({id, 0});
  for (const takeoff::Line& need : printed.results->takeoff.lines) {
    if (need.stage != line.stage || need.of.empty() || !lies_in(item, need.item)) continue;
    const Item* size = printed.job().catalogue->item(need.item);
    const bool by_ground = item.unit == "pack" && size && size->length && size->width;
    const double measure = need.working.amount().value * (by_ground ? catalogue::module_area(*size).si() : 1);
    for (PalletRow::Part& part : parts)
      if (std::ranges::find(need.of, part.of) != need.of.end())
        part.pieces += std::max(0.0, measure) / static_cast<double>(need.of.size());
  }
  std::erase_if(parts, [](const PalletRow::Part& part) { return !(part.pieces > 0); });
  return parts;
}

// The same as whole pieces, the rest of the order to spare at the end.
std::vector<PalletRow::Part> shared_out(const Printed& printed, const OrderLine& line, const Item& item) {
  std::vector<PalletRow::Part> parts = asked_by(printed, line, item);
  const double all = pieces_of(item, line);
  const bool mixed = item.unit == "pack";
  const double needed = mixed || !(line.shares.needed > 0) ? all : std::min(all, line.shares.needed);
  double sum = 0, before = 0, given = 0;
  for (const PalletRow::Part& part : parts) sum += part.pieces;
  for (PalletRow::Part& part : parts) {
    before += part.pieces;
    const double upto = std::round(needed * before / sum);
    part.pieces = upto - given;
    given = upto;
  }
  if (all - given > 0.5) parts.push_back({{}, all - given});
  return parts;
}

void put(std::vector<PalletRow>& rows, PalletRow row) {
  if (!rows.empty() && rows.back().parts == row.parts && rows.back().pieces == row.pieces && row.parts.size() == 1)
    rows.back().to = row.to;
  else
    rows.push_back(std::move(row));
}

}  // namespace

bool has_path(const Printed& printed) { return !paths(printed).empty(); }

double carry(const Printed& printed, Vec from, Vec to) {
  std::optional<double> least;
  for (const geometry::Path* path : paths(printed)) {
    const auto on = takeoff::water::nearest_on(*path, grid(from)), off = takeoff::water::nearest_on(*path, grid(to));
    const double way = on.distance + std::abs(off.station - on.station) + off.distance;
    least = std::min(way, least.value_or(way));
  }
  return least.value_or(geometry::length(to - from));
}

std::optional<Vec> middle_of(const Printed& printed, const plan::ElementId& id) {
  const plan::Ground* ground = printed.results->site.find(id);
  if (!ground) return std::nullopt;
  if (!ground->net.empty()) return vec(ground->net.centroid());
  if (!ground->footprint.empty()) return vec(ground->footprint.centroid());
  if (!ground->drawn.empty()) return vec(ground->drawn.centroid());
  if (!ground->path) return std::nullopt;
  const geometry::Box box = ground->path->bounds();
  return 0.5 * (metres(box.low) + metres(box.high));
}

std::vector<DropSpot> drop_spots(const Printed& printed) {
  std::vector<DropSpot> spots;
  for (const plan::ElementPtr& element : printed.job().elements) {
    const auto* mark = std::get_if<plan::SiteMark>(&element->kind);
    if (!mark || mark->what != "drop-spot") continue;
    const plan::Ground* ground = printed.results->site.find(element->id);
    const double area = ground ? ground->drawn.area().si() : 0;
    if (const auto middle = middle_of(printed, element->id))
      spots.push_back({element->id, element->name, *middle, area});
    else if (!mark->points.empty())
      spots.push_back({element->id, element->name, metres(mark->points.front()), 0});
  }
  return spots;
}

const DropSpot* nearest(const Printed& printed, const std::vector<DropSpot>& spots, Vec to) {
  const auto way = [&](const DropSpot& spot) { return carry(printed, spot.at, to); };
  const auto found = std::ranges::min_element(spots, {}, way);
  return found == spots.end() ? nullptr : &*found;
}

std::vector<PalletRow> pallet_rows(const Printed& printed, const OrderLine& line) {
  const Item* item = printed.job().catalogue->item(line.item);
  if (!item || estimate::pallets(*item, line.order_quantity) <= 0) return {};
  const double full = on_one(*item), all = pieces_of(*item, line);
  if (!(full > 0)) return {};
  std::vector<PalletRow::Part> open = shared_out(printed, line, *item);
  const auto number = static_cast<std::size_t>(&line - printed.results->estimate.lines.data());
  std::vector<PalletRow> rows;
  std::size_t next = 0;
  double left = all;
  for (int pallet = 1; left > 0.5 && next < open.size(); ++pallet) {
    PalletRow row{number, pallet, pallet, std::min(full, left), {}};
    double free = row.pieces;
    while (free > 0.5 && next < open.size()) {
      const double taken = std::min(free, open[next].pieces);
      row.parts.push_back({open[next].of, taken});
      open[next].pieces -= taken;
      free -= taken;
      if (open[next].pieces < 0.5) ++next;
    }
    left -= row.pieces;
    put(rows, std::move(row));
  }
  return rows;
}

}  // namespace sheets
