#include <algorithm>
#include <cmath>

#include "geometry/offset.h"
#include "sheets/plan_parts.h"
#include "sheets/row_pieces.h"
#include "takeoff/edges/rows.h"
#include "takeoff/edges/weeps.h"
#include "takeoff/water/network.h"

namespace sheets {

using takeoff::Stage;

namespace {

constexpr units::Length least_side = units::Length::millimetres(10);  // as the takeoff has it

geometry::Side other(geometry::Side side) {
  return side == geometry::Side::left ? geometry::Side::right : geometry::Side::left;
}

// One run of a kerb with its units.
struct KerbRun {
  PlacedRun placed;
  std::vector<RowPiece> pieces;
  double length = 0;  // of its middle line
  double step = 0;    // from head joint to head joint along it
};

std::vector<KerbRun> kerb_runs(const Plan& plan, const plan::EdgeRun& run, const geometry::Path& path,
                               const catalogue::Item& unit) {
  const double deep = unit.width->metres().si();
  const Strip strip = Strip::beside(0, deep, other(run.paving));
  std::vector<KerbRun> runs;
  for (PlacedRun& placed : takeoff::paving::placed_runs(path, 0, deep, other(run.paving))) {
    const bool curved = placed.run.radius > 0;
    const catalogue::Item* own =
        curved && !run.item_on_curves.empty() ? plan.catalogue().item(run.item_on_curves) : &unit;
    KerbRun made{placed, {}, (placed.run.near_length + placed.run.far_length) / 2, 0};
    const RunEnd before{placed.run.corner_before > 0, 0}, after{placed.run.corner_after > 0, 0};
    if (own && own->length && own->width && std::min(*own->length, *own->width) >= least_side) {
      const takeoff::paving::RowRules rules = takeoff::edges::kerb_rules(plan.job(), *own);
      const PlacedRow row(placed, strip, before, after);
      if (!curved) {
        made.pieces = row.straight(whole_from_start(row.length(), rules.piece, rules.joint), rules.joint);
        made.step = rules.piece + rules.joint;
      } else {
        std::vector<RowMake> ways = takeoff::paving::ways(placed.run, rules);
        if (!rules.stock_radii.empty())
          std::erase_if(ways, [](const RowMake& m) { return m.how != RowMake::How::radius; });
        if (!ways.empty()) made.pieces = row.pieces(ways.front());
        if (!ways.empty()) made.step = made.length / ways.front().pieces;
      }
    }
    runs.push_back(std::move(made));
  }
  return runs;
}

// Runs between two corners, their joints and where each run begins in them.
struct Between {
  double length = 0;
  std::vector<double> joints;
  std::vector<std::pair<const KerbRun*, double>> runs;
};

std::vector<Between> between_corners(const std::vector<KerbRun>& runs) {
  std::vector<Between> all(1);
  for (std::size_t i = 0; i < runs.size(); ++i) {
    const KerbRun& run = runs[i];
    Between& here = all.back();
    here.runs.emplace_back(&run, here.length);
    for (int k = 1; run.step > 0 && k * run.step < run.length - 1e-6; ++k)
      here.joints.push_back(here.length + k * run.step);
    here.length += run.length;
    const bool corner = run.placed.run.corner_after != 0;
    if (i + 1 == runs.size()) break;
    if (corner)
      all.emplace_back();
    else
      here.joints.push_back(here.length);
  }
  return all;
}

void draw_weeps(Plan& plan, const plan::EdgeRun& run, const catalogue::Item& unit, const std::vector<KerbRun>& runs,
                double spacing, const plan::ElementId& of) {
  const takeoff::edges::WeepKind* kind = takeoff::edges::weep_kind(run.weeps->kind);
  const bool in_joint = kind && kind->in_joint;
  const Strip strip = Strip::beside(0, unit.width->metres().si(), other(run.paving));
  for (const Between& stretch : between_corners(runs)) {
    const auto places =
        takeoff::edges::weep_places(stretch.length, spacing, in_joint ? stretch.joints : std::vector<double>{});
    for (const double at : places.at) {
      auto on = stretch.runs.begin();
      while (std::next(on) != stretch.runs.end() && std::next(on)->second <= at) ++on;
      const KerbRun& kerb = *on->first;
      const PlacedRow row(kerb.placed, strip, {}, {});
      const auto [foot, along] = row.place(std::clamp((at - on->second) / kerb.length, 0.0, 1.0), strip.second);
      // Water goes out of the kerb on the side that is not paved.
      const Vec out = (strip.second > 0 ? 1.0 : -1.0) * geometry::left_of(along);
      plan.mark(Sign::weep, foot, {}, of, std::atan2(out.y, out.x));
    }
  }
}

void draw_kerb(Plan& plan, const plan::Ground& ground, const plan::EdgeRun& run) {
  const plan::ElementId& id = ground.element->id;
  const catalogue::Item* unit = plan.catalogue().item(run.item);
  plan.put(contours(ground.footprint), Material::joint, Line::element, Stage::coping, id);
  if (!unit || !unit->length || !unit->width || !plan.built(Stage::coping)) return;
  const std::vector<KerbRun> runs = kerb_runs(plan, run, *ground.path, *unit);
  for (const KerbRun& kerb : runs) {
    for (const RowPiece& piece : kerb.pieces) {
      Area area;
      area.contours = {piece.contour};
      area.material = Material::kerb;
      area.line = Line::unit;
      area.cut = piece.cut;
      area.of = id;
      plan.put(std::move(area));
    }
  }
  const std::optional<double> spacing = measured(plan, id, "weep_spacing_m");
  if (run.weeps && spacing && *spacing > 0) draw_weeps(plan, run, *unit, runs, *spacing, id);
}

void draw_edge(Plan& plan, const plan::Ground& ground, const plan::EdgeRun& run) {
  if (run.what == "kerb") return draw_kerb(plan, ground, run);
  const plan::ElementId& id = ground.element->id;
  plan.put(contours(ground.footprint), Material::kerb, Line::element, Stage::joints, id);
  plan.stroke(contour(*ground.path), plan.built(Stage::joints) ? Line::element : Line::later, id);
}

// Bars of a grate, one each 3 in and at most 400 of them: they tell a channel from a kerb.
void draw_grate(Plan& plan, const geometry::Path& path, double width, const plan::ElementId& of) {
  const double length = path.length().si();
  const int bars = std::min(400, static_cast<int>(length / (3 * units::metres_per_inch)));
  const double half = 0.35 * width;
  for (int i = 1; i < bars; ++i) {
    const double station = length * i / bars;
    const Vec at = metres(takeoff::water::place_at(path, station));
    const Vec ahead = metres(takeoff::water::place_at(path, std::min(station + 0.01, length))) - at;
    const double by = geometry::length(ahead);
    if (by <= 0) continue;
    const Vec across = (half / by) * geometry::left_of(ahead);
    plan.stroke(line(at - across, at + across), Line::light, of);
  }
}

double heading_at_end(const geometry::Path& path) {
  const Vec way = path.curve(path.size() - 1).direction(1);
  return std::atan2(way.y, way.x);
}

void draw_parts(Plan& plan, const geometry::Path& path, const plan::DrainRun& run, const plan::ElementId& of) {
  for (const plan::AtRun& part : run.parts) {
    const double station = std::clamp(part.at.metres().si(), 0.0, path.length().si());
    const Vec at = metres(takeoff::water::place_at(path, station));
    if (part.what == "inlet") plan.mark(Sign::inlet, at, {}, of);
    if (part.what == "cleanout") plan.mark(Sign::plain_point, at, part.what, of);
  }
}

void draw_drain(Plan& plan, const plan::Ground& ground, const plan::DrainRun& run) {
  const plan::ElementId& id = ground.element->id;
  const bool built = plan.built(Stage::under_ground);
  const bool shows = !ground.footprint.empty();
  if (shows) plan.put(contours(ground.footprint), Material::kerb, Line::element, Stage::under_ground, id);
  if (shows && built) draw_grate(plan, *ground.path, run.width.metres().si(), id);
  if (!shows) plan.stroke(contour(*ground.path), built ? Line::pipe : Line::later, id);
  if (!built) return;
  draw_parts(plan, *ground.path, run, id);
  if (run.what == "pipe" && run.into.empty())
    plan.mark(Sign::outlet, metres(ground.path->end()), {}, id, heading_at_end(*ground.path));
}

}  // namespace

void draw_runs(Plan& plan) {
  for (const auto& ground : plan.site().grounds) {
    if (!ground->path) continue;
    if (const auto* edge = std::get_if<plan::EdgeRun>(&ground->element->kind)) draw_edge(plan, *ground, *edge);
    if (const auto* drain = std::get_if<plan::DrainRun>(&ground->element->kind)) draw_drain(plan, *ground, *drain);
  }
}

}  // namespace sheets
