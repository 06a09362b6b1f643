#include "takeoff/edges/coping_kit.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "takeoff/edges/notes.h"

namespace takeoff::edges {

namespace {

using How = paving::RowMake::How;
constexpr units::Length none;

bool same_section(const catalogue::Item& a, const catalogue::Item& b) {
  return a.width == b.width && a.height == b.height;
}

bool is_corner(const catalogue::Item& item, const std::string& which, const std::string& short_word) {
  const auto said = item.details.find("corner");
  if (said != item.details.end()) return said->second == which;
  return item.id.find("corner-" + short_word) != std::string::npos;
}

// Radius pieces are known by both their lines; the one nearer to the centre of curvature is the near one.
paving::RowRules radius_rules(const Kit& kit, const catalogue::Item& item) {
  paving::RowRules rules = kit.rules;
  const double nose = item.number("nose_radius_mm").value_or(0) / 1000;
  const double back = item.number("back_radius_mm").value_or(0) / 1000;
  const double near = std::min(nose, back);
  rules.stock_radii = {{near, near * item.number("turn_deg").value_or(0) * std::numbers::pi / 180 - rules.joint}};
  return rules;
}

bool square(double turn) { return std::abs(std::abs(turn) - std::numbers::pi / 2) < std::numbers::pi / 180; }

// A straight by its two lines: the nose over the water and the back on the land.
struct Sides {
  double nose = 0;
  double back = 0;
};
Sides sides(const TurnedRun& turned) {
  const bool back_longer = std::tan(turned.before / 2) + std::tan(turned.after / 2) >= 0;
  const double shorter = turned.run.near_length;
  const double longer = turned.run.far_length;
  return back_longer ? Sides{shorter, longer} : Sides{longer, shorter};
}

// A corner piece of leg c and width w takes c off the line that goes round the outside of the corner and c - w off the
// other.
void end_at_piece(Sides& run, double turn, double leg, double deep) {
  run.back -= turn > 0 ? leg : leg - deep;
  run.nose -= turn > 0 ? leg - deep : leg;
}

// What stands at a run's end: a corner piece if the catalogue has one that fits, else the mitre that the run already
// has.
const catalogue::Item* corner_item(const Kit& kit, double turn, bool both_straight) {
  if (turn == 0 || !both_straight || !square(turn)) return nullptr;
  return turn > 0 ? kit.inside : kit.outside;
}

}  // namespace

Kit kit(const plan::Job& job, const catalogue::Item& piece, const plan::Coping& coping) {
  Kit found;
  found.piece = &piece;
  for (const auto& [id, item] : job.catalogue->items) {
    if (item->kind != "coping" || !item->length || !item->width || item->height != piece.height) continue;
    if (is_corner(*item, "inside", "in"))
      found.inside = found.inside ? found.inside : item.get();
    else if (is_corner(*item, "outside", "out"))
      found.outside = found.outside ? found.outside : item.get();
    else if (same_section(*item, piece) && item->number("nose_radius_mm"))
      found.radius.push_back(item.get());
  }
  const units::Length joint = coping.joint.value_or(piece.joint.value_or(none));
  found.rules.piece = piece.length->metres().si();
  found.rules.deep = piece.width->metres().si();
  found.rules.joint = joint.metres().si();
  found.rules.joint_least =
      std::min(found.rules.joint, limit_inches(job, "coping-joint-width", Bound::least, 1.0 / 16));
  found.rules.joint_greatest =
      std::max(found.rules.joint, limit_inches(job, "coping-joint-width", Bound::greatest, 3.0 / 8));
  found.rules.least_face = found.rules.piece * job.catalogue->number_limit("coping-near", 0.5);
  found.rules.flat_limit = limit_inches(job, "coping-flat", Bound::greatest, 1.0 / 8);
  return found;
}

std::vector<Way> all_ways(const Kit& kit, const TurnedRun& turned) {
  std::vector<Way> found;
  for (const paving::RowMake& make : paving::ways(turned.run, kit.rules)) found.push_back({kit.piece, make});
  if (turned.run.radius == 0) return found;
  for (const catalogue::Item* item : kit.radius) {
    for (const paving::RowMake& make : paving::ways(turned.run, radius_rules(kit, *item))) {
      if (make.how == How::radius) found.push_back({item, make});
    }
  }
  return found;
}

std::optional<Way> pick(const std::vector<Way>& found, const catalogue::Item* piece, bool curved,
                        plan::Coping::Make make) {
  for (const Way& way : found) {
    const bool fits = !curved || (make == plan::Coping::Make::any       ? way.item == piece
                                  : make == plan::Coping::Make::uncut   ? way.make.how == How::uncut
                                  : make == plan::Coping::Make::tapered ? way.make.how == How::tapered
                                                                        : way.make.how == How::radius);
    if (fits) return way;
  }
  return std::nullopt;
}

CopingCorners take_corners(const Kit& kit, std::vector<TurnedRun>& runs) {
  const std::size_t count = runs.size();
  CopingCorners corners{std::vector<const catalogue::Item*>(count), 0};
  std::vector<Sides> left(count);
  std::ranges::transform(runs, left.begin(), sides);
  for (std::size_t i = 0; i < count; ++i) {
    const std::size_t next = (i + 1) % count;
    const double turn = runs[i].after;
    if (turn == 0) continue;
    const catalogue::Item* item = corner_item(kit, turn, runs[i].run.radius == 0 && runs[next].run.radius == 0);
    if (!item) {
      if (turn < 0) ++corners.outside_missing;
      continue;
    }
    const double leg = item->length->metres().si();
    end_at_piece(left[i], turn, leg, kit.rules.deep);
    end_at_piece(left[next], turn, leg, kit.rules.deep);
    runs[i].run.corner_after = runs[next].run.corner_before = 0;
    corners.after[i] = item;
  }
  for (std::size_t i = 0; i < count; ++i) {
    if (runs[i].run.radius > 0) continue;
    runs[i].run.near_length = std::min(left[i].nose, left[i].back);
    runs[i].run.far_length = std::max(left[i].nose, left[i].back);
  }
  return corners;
}

namespace {

std::optional<CopingRow> laid_row(const plan::Coping& coping, const Kit& kit, const geometry::Outline& outline) {
  const problem::Result<geometry::Path> water = closed_path(outline);
  if (!water) return std::nullopt;
  CopingRow row{-coping.overhang.metres().si(), kit.rules.deep, {}};
  std::vector<paving::PlacedRun> placed = paving::placed_runs(*water, row.from, row.deep, geometry::Side::right);
  std::vector<TurnedRun> runs = turned_runs(*water, row.from, row.deep, geometry::Side::right);
  const CopingCorners corners = take_corners(kit, runs);
  for (std::size_t i = 0; i < runs.size(); ++i) {
    const paving::RowRun& run = runs[i].run;
    placed[i].run = run;
    LaidCoping laid{std::move(placed[i]), std::nullopt, corners.after[(i + runs.size() - 1) % runs.size()],
                    corners.after[i]};
    if (run.far_length > 1e-6) laid.way = pick(all_ways(kit, runs[i]), kit.piece, run.radius > 0, coping.make);
    row.runs.push_back(std::move(laid));
  }
  return row;
}

}  // namespace

std::vector<CopingRow> laid_coping(const plan::Job& job, const plan::Ground& ground) {
  const auto* pool = std::get_if<plan::Pool>(&ground.element->kind);
  const catalogue::Item* piece = pool && pool->coping ? job.catalogue->item(pool->coping->item) : nullptr;
  if (!piece || !piece->length || !piece->width || *piece->width <= pool->coping->overhang) return {};
  const Kit found = kit(job, *piece, *pool->coping);
  std::vector<CopingRow> rows;
  for (const geometry::Outline* outline : ground.drawn.outlines())
    if (auto row = laid_row(*pool->coping, found, *outline)) rows.push_back(std::move(*row));
  return rows;
}

}  // namespace takeoff::edges
