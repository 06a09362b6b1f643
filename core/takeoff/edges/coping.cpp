#include <algorithm>
#include <cmath>
#include <map>

#include "takeoff/edges/coping_kit.h"
#include "takeoff/edges/edges.h"
#include "takeoff/edges/notes.h"
#include "takeoff/edges/pool_parts.h"

namespace takeoff::edges {

namespace {

using How = paving::RowMake::How;
constexpr units::Length none;

std::string words(const Way& way) {
  const std::string count = std::to_string(way.make.pieces) + " of " + way.item->id;
  switch (way.make.how) {
    case How::straight_even: return count + ", even pieces, " + std::to_string(way.make.cut) + " cut";
    case How::straight_closers: return count + ", whole with two equal closers";
    case How::uncut: return count + ", uncut with wedge joints";
    case How::tapered: return count + ", both sides cut to a taper";
    case How::radius: return count + ", radius pieces";
  }
  return count;
}

// Lines round one outline of the water, and what has been laid along all of them.
struct Row {
  double nose = 0, back = 0, bearing_middle = 0;
  Lengths back_parts;
  std::map<const catalogue::Item*, std::vector<Working>> pieces;
  double cut = 0;
  double by_longer_line = 0;  // metres
  std::vector<std::string> ways;
};

// Corner pieces are counted once for the corner between two runs.
void set_corners(const Kit& kit, std::vector<TurnedRun>& runs, const plan::ElementId& of, Row& row, Share& share) {
  const CopingCorners corners = take_corners(kit, runs);
  for (std::size_t i = 0; i < runs.size(); ++i)
    if (const catalogue::Item* item = corners.after[i])
      row.pieces[item].push_back(term(runs[i].after > 0 ? "inside corner" : "outside corner", 1, units::piece, of));
  if (corners.outside_missing == 0) return;
  share.problems.push_back(fault("coping-outside-corner",
                                 std::to_string(corners.outside_missing) +
                                     " corners where the deck stands out into the water need a " +
                                     "piece nosed on two edges, and the catalogue has none that fits",
                                 "add such a corner piece, or round the corner", of));
}

std::string run_name(const plan::Job& job, const paving::RowRun& run, std::size_t number) {
  if (run.radius == 0) return "run " + std::to_string(number) + ": straight " + shown(job, run.far_length);
  return "run " + std::to_string(number) + ": arc, near line " + shown(job, run.near_length) + " at radius " +
         shown(job, run.radius);
}

void lay_run(const plan::Job& job, const Kit& kit, const plan::Coping& coping, const TurnedRun& turned,
             const plan::ElementId& of, Row& row, Share& share) {
  const std::string name = run_name(job, turned.run, row.ways.size() + 1);
  if (turned.run.far_length < 1e-6 && turned.run.far_length > -1e-3) return;  // two corner pieces meet
  const bool curved = turned.run.radius > 0;
  const std::vector<Way> found = turned.run.far_length > 0 ? all_ways(kit, turned) : std::vector<Way>{};
  std::string said = name + ": ";
  for (std::size_t i = 0; i < found.size(); ++i) said += (i ? " or " : "") + words(found[i]);
  row.ways.push_back(found.empty() ? said + "none" : said);
  const std::optional<Way> way = pick(found, kit.piece, curved, coping.make);
  if (!way) {
    share.problems.push_back(fault("coping-run", name + " can't be made as chosen of " + kit.piece->id,
                                   found.empty() ? "choose shorter pieces, radius pieces or wider joints"
                                                 : "take one of the ways that work: " + said,
                                   of));
    return;
  }
  row.pieces[way->item].push_back(term(name + ", " + words(*way), way->make.pieces, units::piece, of));
  row.cut += way->make.cut;
}

problem::Result<geometry::Path> beside(const geometry::Path& water, units::Length to_the_land) {
  return geometry::parallel(water, -to_the_land);
}

problem::Result<void> lay_outline(const plan::Job& job, const Kit& kit, const plan::Coping& coping,
                                  const geometry::Outline& outline, const plan::ElementId& of, Row& row, Share& share) {
  const problem::Result<geometry::Path> water = closed_path(outline);
  if (!water) return std::unexpected(water.error());
  const units::Length bearing = *kit.piece->width - coping.overhang;
  const auto nose = beside(*water, -coping.overhang);
  if (!nose) return std::unexpected(nose.error());
  const auto back = beside(*water, bearing);
  if (!back) return std::unexpected(back.error());
  const auto middle = beside(*water, units::Length::of_steps(bearing.steps() / 2));
  if (!middle) return std::unexpected(middle.error());
  row.nose += nose->length().si();
  row.back += back->length().si();
  row.bearing_middle += middle->length().si();
  const Lengths parts_of = lengths(*back);
  row.back_parts.straight += parts_of.straight;
  row.back_parts.curved += parts_of.curved;
  // The water lies to the left of its edge, the land to the right.
  std::vector<TurnedRun> runs =
      turned_runs(*water, -coping.overhang.metres().si(), kit.rules.deep, geometry::Side::right);
  for (const TurnedRun& turned : runs) row.by_longer_line += turned.run.far_length;
  set_corners(kit, runs, of, row, share);
  for (const TurnedRun& turned : runs) lay_run(job, kit, coping, turned, of, row, share);
  return {};
}

void add_pieces(const plan::Job& job, const Kit& kit, Row& row, const plan::ElementId& of, Share& share) {
  double all = 0;
  std::vector<std::pair<catalogue::Id, const catalogue::Item*>> in_order;
  for (const auto& [item, counts] : row.pieces) in_order.emplace_back(item->id, item);
  std::ranges::sort(in_order);
  for (const auto& [id, item] : in_order) {
    const Working count = Working::sum(std::move(row.pieces[item])).named("pieces, run by run");
    all += count.amount().value;
    share.lines.push_back(
        {Stage::coping, id, "coping, preliminary until the water's edge is measured as built", {of}, count, {}, false});
    add_weight(job, *item, std::llround(count.amount().value), of, share);
  }
  share.measures.put("coping_units", all);
  share.measures.put("coping_cut", row.cut);
  if (row.cut > 0) share.facts.push_back("cuts");
  // What a count by length alone would give, rounded once: beside the runs as a cross-check.
  share.measures.put("coping_units_by_length",
                     std::ceil(row.by_longer_line / (kit.rules.piece + kit.rules.joint) - 1e-9));
  std::string said;
  for (const std::string& way : row.ways) said += (said.empty() ? "" : "; ") + way;
  if (!said.empty()) {
    share.problems.push_back(notice("coping-ways", "the coping can be made so: " + said,
                                    "choose uncut, tapered or radius for the curves, or leave it at the least cutting",
                                    of));
  }
  add_task(job, "coping-straight", Stage::coping, "coping, straight", of,
           term("back line, straight", row.back_parts.straight, units::metre, of), share);
  add_task(job, "coping-curve", Stage::coping, "coping on curves", of,
           term("back line, curved", row.back_parts.curved, units::metre, of), share);
}

struct Bed {
  catalogue::Id mortar;
  units::Length thickness;
  std::string from;
};

// The bed is that of the catalogue's build-up for pools; where it has none, its first mortar at the usual thickness.
std::optional<Bed> bed_of(const plan::Job& job) {
  for (const auto& [id, build_up] : job.catalogue->build_ups) {
    if (build_up.use != "pool") continue;
    for (const catalogue::Layer& layer : build_up.layers)
      if (layer.role == "mortar" && layer.thickness) return Bed{layer.item, *layer.thickness, id + "/mortar"};
  }
  for (const auto& [id, item] : job.catalogue->items)
    if (item->kind == "concrete" && id.starts_with("mortar"))
      return Bed{id, job.catalogue->length_limit("coping-bed", units::Length::inch_64ths(32)), "coping-bed"};
  return std::nullopt;
}

// The joints between pieces are of the same mortar as the bed.
void add_mortar(const plan::Job& job, const Kit& kit, const plan::Coping& coping, const Row& row, double units_laid,
                const plan::ElementId& of, Share& share) {
  const std::optional<Bed> bed = bed_of(job);
  if (!bed) {
    // The rates for coping are hours on mortar.
    const bool paid = std::ranges::any_of(share.tasks, [](const Task& t) { return t.rate.starts_with("coping-"); });
    share.problems.push_back(said(paid ? problem::Severity::problem : problem::Severity::notice, "coping-mortar",
                                  "no mortar is listed for the coping: the job's catalogue has none",
                                  "add a mortar, or a build-up for pools with its bed", of));
    return;
  }
  const catalogue::Item* mortar = wanted(job, bed->mortar, "the coping's bed", of, share);
  if (!mortar) return;
  const auto metres = [&](const std::string& name, units::Length value, const std::string& from) {
    return term(name, value.metres().si(), units::metre, from);
  };
  std::vector<Working> parts{
      Working::product({metres("bearing", *kit.piece->width - coping.overhang, of),
                        metres("thickness of the bed", bed->thickness, bed->from),
                        term("middle line of the bearing", row.bearing_middle, units::metre, of)})};
  if (kit.piece->height && kit.rules.joint > 0) {
    parts.push_back(Working::product({term("joints, one a piece", units_laid, units::piece, of),
                                      term("joint", kit.rules.joint, units::metre, of),
                                      metres("width of the piece", *kit.piece->width, kit.piece->id + "/width"),
                                      metres("height of the piece", *kit.piece->height, kit.piece->id + "/height")}));
  }
  const Working volume = Working::sum(std::move(parts)).named("bed and joints of the coping");
  share.measures.put("coping_mortar_m3", volume.amount().value);
  // Mortar is never laid to the last trowel: a tenth on top where the item says nothing of its own (common practice).
  const auto allowance = mortar->breakage > 0 ? std::nullopt : std::optional(0.10);
  share.lines.push_back({Stage::coping, bed->mortar, "bed and joints of the coping", {of}, volume, allowance, true});
}

void check_bearing(const plan::Job& job, const plan::Pool& pool, units::Length bearing, const plan::ElementId& of,
                   Share& share) {
  if (bearing < pool.shell) {
    share.problems.push_back(fault("coping-bearing",
                                   "the coping bears on " + shown(job, bearing.metres().si()) + " of a wall " +
                                       shown(job, pool.shell.metres().si()) +
                                       " thick, so the paving would stand on the shell",
                                   "take a wider coping or less overhang, or cut the wall's top back", of));
  } else if (pool.collar && bearing < pool.collar->width) {
    share.problems.push_back(
        notice("coping-on-collar",
               "the paving's first " + shown(job, (pool.collar->width - bearing).metres().si()) +
                   " behind the coping stand on the collar",
               "keep the joint full depth and the bedding under the first units at its full thickness", of));
  }
}

Share coping_row(const plan::Job& job, const plan::Ground& ground, const plan::Pool& pool) {
  Share share;
  const plan::ElementId& id = ground.element->id;
  const plan::Coping& coping = *pool.coping;
  const catalogue::Item* piece = wanted(job, coping.item, "the coping", id, share);
  if (!piece) return share;
  if (!piece->length || !piece->width || *piece->width <= coping.overhang || coping.overhang < none) {
    share.problems.push_back(fault("coping-size",
                                   "the coping " + piece->id + " has no length, or is no wider than its overhang",
                                   "enter its sizes, or a smaller overhang", id));
    return share;
  }
  check_bearing(job, pool, *piece->width - coping.overhang, id, share);
  const Kit found = kit(job, *piece, coping);
  Row row;
  for (const geometry::Outline* outline : ground.drawn.outlines()) {
    const problem::Result<void> laid = lay_outline(job, found, coping, *outline, id, row, share);
    if (laid) continue;
    share.problems.push_back(problem::in_element(laid.error(), id));
    return share;
  }
  share.facts.push_back("coping");
  share.measures.put("coping_nose_m", row.nose);
  share.measures.put("coping_back_m", row.back);
  share.measures.put("coping_length_m", std::max(row.nose, row.back));
  const auto inner = geometry::offset(ground.drawn, -coping.overhang, geometry::Corner::mitred);
  const auto outer = geometry::offset(ground.drawn, *piece->width - coping.overhang, geometry::Corner::mitred);
  if (inner && outer)
    share.measures.put("coping_area_m2", outer->area().si() - inner->area().si());
  else
    share.problems.push_back(problem::in_element(inner ? outer.error() : inner.error(), id));
  add_pieces(job, found, row, id, share);
  add_mortar(job, found, coping, row, share.measures.get("coping_units").value_or(0), id, share);
  if (!pool.as_built) {
    share.problems.push_back(
        notice("coping-preliminary", "the coping is preliminary until the water's edge is measured as built",
               "measure the water's edge again once the shell is set, before the coping is ordered", id));
  }
  return share;
}

}  // namespace

Share coping(const plan::Job& job, const plan::Site&, const plan::Ground& ground) {
  const auto* pool = std::get_if<plan::Pool>(&ground.element->kind);
  if (!pool || ground.drawn.empty()) return {};
  Share share;
  share.measures.element = ground.element->id;
  share.facts.push_back("pool");
  if (pool->coping) {
    share.add(coping_row(job, ground, *pool));
  } else {
    share.problems.push_back(
        notice("pool-no-coping", "the pool has no coping", "choose one if it is to have one", ground.element->id));
  }
  if (pool->surround) share.add(surround(job, ground, *pool));
  if (pool->collar) share.add(collar(job, ground, *pool));
  if (pool->bonding) share.add(bonding(job, ground, *pool));
  return share;
}

}  // namespace takeoff::edges
