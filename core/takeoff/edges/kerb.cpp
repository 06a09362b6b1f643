#include <algorithm>
#include <cmath>
#include <map>

#include "takeoff/edges/edges.h"
#include "takeoff/edges/notes.h"
#include "takeoff/edges/rows.h"
#include "takeoff/edges/weeps.h"

namespace takeoff::edges {

namespace {

constexpr units::Length least_side = units::Length::millimetres(10);

geometry::Side other(geometry::Side side) {
  return side == geometry::Side::left ? geometry::Side::right : geometry::Side::left;
}

// The units stand on the side that is not paving: a line `out` metres from the drawn one on that side.
problem::Result<geometry::Path> outside(const geometry::Path& drawn, geometry::Side paving, double out) {
  const double left = paving == geometry::Side::right ? out : -out;
  return geometry::parallel(drawn, units::Length::nearest(units::Metres(left)));
}

struct Laid {
  std::map<catalogue::Id, std::vector<Working>> units;
  double cut = 0;
  std::vector<KerbStretch> stretches;
};

std::string run_name(const plan::Job& job, const paving::RowRun& run, std::size_t number) {
  return "run " + std::to_string(number + 1) + (run.radius > 0 ? ": arc " : ": straight ") +
         shown(job, (run.near_length + run.far_length) / 2);
}

// Straights are whole units from one end with a cut to fit: each run rounded up by itself.
std::pair<Working, int> straight_units(const paving::RowRun& run, const paving::RowRules& rules,
                                       const std::string& name, const plan::ElementId& of) {
  const Working count = Working::up(Working::quotient(term(name, run.far_length, units::metre, of),
                                                      term("module", rules.piece + rules.joint, units::metre)));
  const double whole = run.far_length / (rules.piece + rules.joint);
  const bool fits = std::abs(whole - std::round(whole)) < 1e-4;
  const int mitres = (run.corner_before != 0 ? 1 : 0) + (run.corner_after != 0 ? 1 : 0);
  return {count, std::min(static_cast<int>(count.amount().value), (fits ? 0 : 1) + mitres)};
}

struct Pieces {
  Working count;
  int cut = 0;
};

std::optional<Pieces> pieces(const plan::Job& job, const paving::RowRun& run, const catalogue::Item& unit,
                             const std::string& name, const plan::ElementId& of) {
  const paving::RowRules rules = kerb_rules(job, unit);
  if (run.radius == 0) {
    auto [count, cut] = straight_units(run, rules, name, of);
    return Pieces{std::move(count), cut};
  }
  std::vector<paving::RowMake> ways = paving::ways(run, rules);
  if (!rules.stock_radii.empty()) {
    std::erase_if(ways, [](const paving::RowMake& make) { return make.how != paving::RowMake::How::radius; });
  }
  if (ways.empty()) return std::nullopt;
  const paving::RowMake& make = ways.front();
  const std::string how = make.how == paving::RowMake::How::uncut     ? ", uncut with wedge joints"
                          : make.how == paving::RowMake::How::tapered ? ", both sides cut to a taper"
                                                                      : ", radius units";
  return Pieces{term(name + how, make.pieces, units::piece, of), make.cut};
}

// Units of a straight run are whole from its start, those of a curve lie evenly; where one run goes on into the next
// without a corner there is a head joint too.
void add_joints(KerbStretch& stretch, double run_length, double step, bool goes_on) {
  for (int k = 1; k * step < run_length - 1e-6; ++k) stretch.joints.push_back(stretch.length + k * step);
  stretch.length += run_length;
  if (goes_on) stretch.joints.push_back(stretch.length);
}

Laid lay(const plan::Job& job, const plan::EdgeRun& run, const geometry::Path& path, const catalogue::Item& unit,
         const plan::ElementId& of, Share& share) {
  Laid laid;
  const double deep = unit.width->metres().si();
  const double module = (*unit.length + unit.joint.value_or(units::Length())).metres().si();
  const std::vector<paving::RowRun> runs = paving::row_runs(path, 0, deep, other(run.paving));
  laid.stretches.emplace_back();
  for (std::size_t i = 0; i < runs.size(); ++i) {
    const paving::RowRun& row = runs[i];
    const bool curved = row.radius > 0;
    const catalogue::Item* own = &unit;
    if (curved && !run.item_on_curves.empty()) {
      own = wanted(job, run.item_on_curves, "the kerb on curves", of, share);
      if (!own) continue;
    }
    const std::string name = run_name(job, row, i);
    const std::optional<Pieces> count = own->length && own->width ? pieces(job, row, *own, name, of) : std::nullopt;
    if (!count) {
      share.problems.push_back(fault("kerb-curve",
                                     name + " can't be made of " + own->id + " uncut, tapered or as it comes",
                                     "choose shorter units or radius units for curves", of));
    } else {
      laid.units[own->id].push_back(count->count);
      laid.cut += count->cut;
    }
    const bool last = i + 1 == runs.size();
    const bool corner = row.corner_after != 0;
    const double length = (row.near_length + row.far_length) / 2;
    const double step = curved ? length / (count ? count->count.amount().value : 1) : module;
    add_joints(laid.stretches.back(), length, step, !last && !corner);
    if (corner && !last) laid.stretches.emplace_back();
  }
  return laid;
}

void add_footing(const plan::Job& job, const plan::EdgeRun& run, const geometry::Path& path, double centre_length,
                 double width, const plan::ElementId& of, Share& share) {
  const plan::Footing& footing = *run.footing;
  if (!wanted(job, footing.concrete, "the kerb's footing", of, share)) return;
  std::vector<Working> parts{Working::product({term("centre line", centre_length, units::metre, of),
                                               term("width", footing.width.metres().si(), units::metre, of),
                                               term("thickness", footing.thickness.metres().si(), units::metre, of)})};
  const double ledge = (footing.width.metres().si() - width) / 2;
  const double haunch = footing.haunch.metres().si();
  if (haunch > 0 && ledge > 0) {
    // A triangle behind the unit: its own centre lies a third of the ledge from the unit's back.
    const problem::Result<geometry::Path> line = outside(path, run.paving, width + ledge / 3);
    if (!line) {
      share.problems.push_back(problem::in_element(line.error(), of));
      return;
    }
    parts.push_back(Working::product({term("line of the haunch", line->length().si(), units::metre, of),
                                      term("height of the haunch", haunch, units::metre, of),
                                      Working::quotient(term("ledge behind the unit", ledge, units::metre, of),
                                                        term("triangle", 2, units::piece))}));
  }
  const Working volume = Working::sum(std::move(parts)).named("footing of the kerb");
  share.lines.push_back({Stage::coping, footing.concrete, "footing of the kerb", {of}, volume, {}, false});
  share.measures.put("footing_m3", volume.amount().value);
  share.facts.push_back("concrete");
}

void add_units(const plan::Job& job, Laid& laid, const plan::ElementId& of, Share& share) {
  for (auto& [id, counts] : laid.units) {
    const Working count = Working::sum(std::move(counts)).named("units, run by run");
    share.lines.push_back({Stage::coping, id, "units of the kerb", {of}, count, {}, false});
    share.measures.put("kerb_units:" + id, count.amount().value);
    const catalogue::Item* item = job.catalogue->item(id);
    if (item) add_weight(job, *item, std::llround(count.amount().value), of, share);
  }
  share.measures.put("kerb_cut", laid.cut);
  if (laid.cut > 0) share.facts.push_back("cuts");
}

}  // namespace

Share kerb(const plan::Job& job, const plan::Site&, const plan::Ground& ground) {
  const auto* run = std::get_if<plan::EdgeRun>(&ground.element->kind);
  if (!run || !ground.path) return {};
  const plan::ElementId& id = ground.element->id;
  Share share;
  share.measures.element = id;
  share.facts.push_back("kerb");
  const catalogue::Item* unit = wanted(job, run->item, "the kerb", id, share);
  if (!unit) return share;
  if (!unit->length || !unit->width || std::min(*unit->length, *unit->width) < least_side) {
    share.problems.push_back(fault(
        "kerb-size", "the item " + unit->id + " has no length and width of 10 mm or more, so the kerb can't be counted",
        "enter its sizes in the catalogue", id));
    return share;
  }
  const double width = unit->width->metres().si();
  const problem::Result<geometry::Path> centre = outside(*ground.path, run->paving, width / 2);
  if (!centre) {
    share.problems.push_back(problem::in_element(centre.error(), id));
    return share;
  }
  const Lengths length = lengths(*centre);
  share.measures.put("kerb_centre_length_m", length.both());
  Laid laid = lay(job, *run, *ground.path, *unit, id, share);
  add_units(job, laid, id, share);
  add_task(job, "kerb-set", Stage::coping, "kerb", id,
           {term("centre line, straight", length.straight, units::metre, id),
            term("centre line, curved", length.curved, units::metre, id)},
           share);
  if (run->footing) add_footing(job, *run, *ground.path, length.both(), width, id, share);
  if (run->weeps) share.add(weeps(job, *run, *unit, laid.stretches, id));
  return share;
}

}  // namespace takeoff::edges
