#include <algorithm>
#include <cmath>
#include <map>

#include "plan/along.h"
#include "takeoff/edges/edges.h"
#include "takeoff/edges/fill.h"
#include "takeoff/edges/junction.h"
#include "takeoff/edges/notes.h"
#include "takeoff/edges/rows.h"
#include "takeoff/edges/seal.h"
#include "takeoff/edges/spikes.h"
#include "takeoff/walls/face.h"
#include "units/number.h"

namespace takeoff::edges {

namespace {

using Row = catalogue::Junction;

// Where two pavings meet, the one drawn first builds what lies between them.
bool builds(const plan::Job& job, const plan::ElementId& id, const plan::Stretch& stretch) {
  if (stretch.meets != plan::Meets::paving) return true;
  for (const plan::ElementPtr& element : job.elements) {
    if (element->id == id) return true;
    if (element->id == stretch.other) return false;
  }
  return true;
}

// The words of the table are kept as people read them; this one is a rule.
bool sealed(const plan::Job& job, const plan::PavedArea& area, const Row& row) {
  if (row.sealant.empty()) return false;
  const bool only_open = row.built.find("sealed where the base is open") != std::string::npos;
  return !only_open || open_base(job, area);
}

// "spike-10 at 12 in, curves 8 in"
std::optional<plan::Spikes> spikes_of(const std::string& words) {
  const std::size_t at = words.find(" at ");
  if (at == std::string::npos) return std::nullopt;
  const auto inches = [](const std::string& text) -> std::optional<units::Length> {
    const std::size_t end = text.find(" in");
    const auto value = end == std::string::npos ? std::nullopt : units::read_number(text.substr(0, end));
    if (!value) return std::nullopt;
    return units::Length::nearest(units::Metres(*value * units::metres_per_inch));
  };
  const auto straight = inches(words.substr(at + 4));
  if (!straight) return std::nullopt;
  static constexpr std::string_view on_curves = "curves ";
  const std::size_t curves = words.find(on_curves);
  const auto curved = curves == std::string::npos ? straight : inches(words.substr(curves + on_curves.size()));
  return plan::Spikes{words.substr(0, at), *straight, curved.value_or(*straight)};
}

struct Built {
  const Row* row = nullptr;
  plan::Meets meets = plan::Meets::planting;
  std::vector<plan::Along> chains;
};

// What the table builds along this area, row by row in the order of the stretches, each row with the lines it lies on.
std::vector<Built> built(const plan::Job& job, const plan::Ground& ground) {
  struct Key {
    const Row* row;
    plan::Meets meets;
    plan::ElementId other;
    bool operator==(const Key&) const = default;
  };
  std::vector<Key> keys;
  const auto lines = plan::along(ground, [&](const plan::Stretch& stretch) {
    const Row* row = builds(job, ground.element->id, stretch) ? junction_for(job, ground, stretch) : nullptr;
    if (!row) return -1;
    const Key key{row, stretch.meets, stretch.other};
    const auto known = std::ranges::find(keys, key);
    if (known != keys.end()) return static_cast<int>(known - keys.begin());
    keys.push_back(key);
    return static_cast<int>(keys.size()) - 1;
  });
  std::vector<Built> result;
  for (const plan::Along& line : lines) {
    const Key& key = keys[static_cast<std::size_t>(line.group)];
    auto known = std::ranges::find_if(result, [&](const Built& b) { return b.row == key.row && b.meets == key.meets; });
    if (known == result.end()) known = result.insert(result.end(), Built{key.row, key.meets, {}});
    known->chains.push_back(line);
  }
  return result;
}

double length_of(const Built& one) {
  double sum = 0;
  for (const plan::Along& chain : one.chains) sum += chain.path.length().si();
  return sum;
}

Working length_working(const Built& one, const plan::ElementId& of) {
  std::vector<Working> parts;
  for (const plan::Along& chain : one.chains) {
    const plan::ElementId& other = chain.stretches.front().other;
    parts.push_back(
        term("along " + (other.empty() ? plan::word(one.meets) : other), chain.path.length().si(), units::metre, of));
  }
  return Working::sum(std::move(parts));
}

// A strip keeps paving off a building whether or not the joint is sealed on top.
void add_isolation(const plan::Job& job, const Built& one, const plan::ElementId& of, Share& share) {
  share.measures.put("isolation_m", length_of(one));
  const catalogue::Item* strip = one.row->edge.empty() ? nullptr : job.catalogue->item(one.row->edge);
  for (const auto& [id, item] : job.catalogue->items) {
    if (!strip && item->kind == "filler-strip" && one.row->joint && item->height == one.row->joint) strip = item.get();
  }
  if (!strip) {
    share.problems.push_back(notice("isolation-strip",
                                    "the catalogue has no strip as thick as the joint at the building",
                                    "add one, or name it in the junction table", of));
    return;
  }
  const Working length = length_working(one, of);
  share.lines.push_back({Stage::joints, strip->id, "isolation strip along the building", {of}, length, {}, false});
  add_task(job, "isolation", Stage::joints, "isolation strip along the building", of, length, share);
}

// How far the face stands behind the edge of the paving, chain by chain; 0 where that is not known.
double stands_back(const plan::Job& job, const plan::Site& site, const plan::Along& chain) {
  const plan::Ground* wall = site.find(chain.stretches.front().other);
  const auto face = wall ? walls::FaceBack::of(job, *wall) : std::nullopt;
  if (!face) return 0;
  double sum = 0;
  for (std::size_t i = 0; i < chain.path.size(); ++i)
    sum += chain.path.curve(i).length() *
           face->along(chain.path.curve(i), job.choices.reach.metres().si() + chain.stretches.front().gap);
  return sum / (chain.path.length().si() * units::Length::steps_per_metre);
}

// Area of a gap: the joint of the table, and at a wall's face what the setback of the courses makes of it.
Working gap_of(const plan::Job& job, const plan::Site& site, const Built& one, const plan::ElementId& of) {
  std::vector<Working> parts;
  for (const plan::Along& chain : one.chains) {
    const plan::ElementId& other = chain.stretches.front().other;
    const Working joint = term("gap", one.row->joint->metres().si(), units::metre, one.row->id);
    const double back = one.meets == plan::Meets::wall_face ? stands_back(job, site, chain) : 0;
    parts.push_back(Working::product(
        {term("along " + (other.empty() ? plan::word(one.meets) : other), chain.path.length().si(), units::metre, of),
         back > 0 ? Working::greatest({joint, term("face at paving level behind the line", back, units::metre, other)})
                  : joint}));
  }
  return Working::sum(std::move(parts));
}

// A gap with a filler of its own: as deep as the area's joints.
void add_gap(const plan::Job& job, const plan::Site& site, const plan::PavedArea& area, const catalogue::Item& filler,
             const Built& one, const plan::ElementId& of, Share& share) {
  const auto density = filler.number("loose_density_kg_m3");
  const catalogue::Item* unit = nullptr;
  if (area.laying && !area.laying->units.empty()) unit = job.catalogue->item(area.laying->units.begin()->second);
  if (!density || !unit || !unit->height || !one.row->joint) return;
  const Working volume = Working::product({gap_of(job, site, one, of), fill_depth(job, area, *unit)});
  share.measures.put("gap_fill_m3", volume.amount().value);
  share.lines.push_back(
      {Stage::joints,
       filler.id,
       "gap: " + one.row->name.en,
       {of},
       Working::product({volume, term("loose density", *density, units::kilogram_per_cubic_metre, filler.id)}),
       {},
       true});
}

// Units of a straight edging stand outside the paving; on a curve that they can't follow uncut or tapered they stand
// off it, or point into the bed.
void check_edging_curves(const plan::Job& job, const Built& one, const catalogue::Item& item, const plan::ElementId& of,
                         Share& share) {
  if (!item.width) return;
  const paving::RowRules rules = kerb_rules(job, item);
  double metres = 0;
  double tightest = 0;
  for (const plan::Along& chain : one.chains) {
    for (std::size_t i = 0; i < chain.path.size(); ++i) {
      const geometry::Curve curve = chain.path.curve(i);
      if (curve.straight()) continue;
      const double steps_per_metre = units::Length::steps_per_metre;
      const double drawn = curve.radius() / steps_per_metre;
      const bool centre_in_paving = curve.sweep() > 0;  // the paving lies to the left
      paving::RowRun run;
      run.turn = std::abs(curve.sweep());
      run.radius = centre_in_paving ? drawn : drawn - rules.deep;
      run.near_length = run.turn * run.radius;
      run.far_length = run.turn * (run.radius + rules.deep);
      if (run.radius > 0 && !paving::ways(run, rules).empty()) continue;
      metres += drawn * run.turn;
      tightest = tightest == 0 ? drawn : std::min(tightest, drawn);
    }
  }
  if (metres == 0) return;
  share.problems.push_back(flag("edging-curve",
                                shown(job, metres) + " of edging at " + plan::word(one.meets) +
                                    " turns about a radius down to " + shown(job, tightest) + ", too sharp for " +
                                    item.id + ", uncut or tapered",
                                "choose shorter units, a restraint that bends, or draw a wider curve", of));
}

// The table's edging of units: by its module, chain by chain, with its hours; what it stands on is nobody's line yet.
void add_edging_units(const plan::Job& job, const Built& one, const catalogue::Item& item, const plan::ElementId& of,
                      Share& share) {
  const std::string at = "edging at " + plan::word(one.meets);
  std::vector<Working> counts;
  for (const plan::Along& chain : one.chains) {
    counts.push_back(Working::up(Working::quotient(
        term("along " + plan::word(one.meets), chain.path.length().si(), units::metre, of),
        term("module", (*item.length + item.joint.value_or(units::Length())).metres().si(), units::metre, item.id))));
  }
  const Working count = Working::sum(std::move(counts));
  share.lines.push_back({Stage::joints, item.id, at, {of}, count, {}, true});
  double straight = 0, curved = 0;
  for (const plan::Along& chain : one.chains) {
    const Lengths sum = lengths(chain.path);
    straight += sum.straight;
    curved += sum.curved;
  }
  add_task(job, "kerb-set", Stage::joints, at, of,
           {term("straight part", straight, units::metre, of), term("curved part", curved, units::metre, of)}, share);
  add_weight(job, item, std::llround(count.amount().value), of, share);
  check_edging_curves(job, one, item, of, share);
  share.problems.push_back(notice("edging-footing", "the " + at + " has no footing or haunch in the list",
                                  "draw it as a kerb with its footing, or leave it on the base", of));
}

// Edging that the table puts where nothing was drawn.
void add_edge(const plan::Job& job, const Built& one, const plan::ElementId& of, Share& share) {
  if (one.row->edge.empty() || (one.meets != plan::Meets::planting && one.meets != plan::Meets::planter)) return;
  const catalogue::Item* item = wanted(job, one.row->edge, "the edge at " + plan::word(one.meets), of, share);
  if (!item) return;
  std::vector<geometry::Path> paths;
  for (const plan::Along& chain : one.chains) paths.push_back(chain.path);
  if (item->kind == "restraint") {
    share.add(
        edging(job, paths, {item->id, spikes_of(one.row->other), "edge restraint at " + plan::word(one.meets)}, of));
    return;
  }
  if ((item->kind == "edging-unit" || item->kind == "kerb-unit") && item->length)
    add_edging_units(job, one, *item, of, share);
}

void add_filler_strip(const plan::Job& job, const plan::Site& site, const plan::PavedArea& area, const Built& one,
                      const plan::ElementId& of, Share& share) {
  const std::string& id = one.row->filler;
  if (id.empty() || id == "area") return;
  const catalogue::Item* filler = wanted(job, id, one.row->name.en, of, share);
  if (!filler) return;
  if (filler->kind != "fabric") return add_gap(job, site, area, *filler, one, of, share);
  share.measures.put("fabric_strip_m", length_of(one));
  share.facts.push_back("fabric");
  share.lines.push_back(
      {Stage::base, filler->id, "fabric upright between the bases", {of}, length_working(one, of), {}, false});
}

void add_row(const plan::Job& job, const plan::Site& site, const plan::PavedArea& area, const Built& one,
             const plan::ElementId& of, Share& share) {
  if (one.meets == plan::Meets::building) add_isolation(job, one, of, share);
  if (sealed(job, area, *one.row)) {
    share.add(sealed_joint(job, *one.row, one.chains, of));
  } else {
    add_filler_strip(job, site, area, one, of, share);
  }
  add_edge(job, one, of, share);
  const auto not_worked_out = [&](const plan::Along& chain) { return stands_back(job, site, chain) <= 0; };
  if (one.meets == plan::Meets::wall_face && one.row->joint && std::ranges::any_of(one.chains, not_worked_out)) {
    share.problems.push_back(
        notice("wall-gap",
               "the gap of " + shown(job, one.row->joint->metres().si()) +
                   " at the wall's face is that of the junction table; it grows with the setback of the courses",
               "check it against the face at paving level before the units there are cut", of));
  }
}

// m2 of joints that the table fills with the area's own filler and that lie outside the field and the borders. Whether
// they do is seen from the ground that is left over: where the units stand against the edge there is none.
double gap_area(const plan::Job& job, const paving::LaidArea& area, const std::vector<Built>& rows) {
  double own = 0;
  double others = 0;
  for (const Built& one : rows) {
    const double strip = length_of(one) * one.row->joint.value_or(units::Length()).metres().si();
    const bool by_area =
        one.row->filler == "area" ||
        (!one.row->sealant.empty() && !sealed(job, std::get<plan::PavedArea>(area.ground->element->kind), *one.row));
    (by_area ? own : others) += strip;
  }
  double left_over = area.ground->net.area().si() - area.field.area().si() - others;
  for (const paving::LaidBorder& border : area.borders) left_over -= border.strip_area;
  return left_over > own / 2 ? own : 0;
}

void put_meets(const plan::Ground& ground, Share& share) {
  std::map<plan::Meets, double> metres;
  for (const plan::Stretch& stretch : ground.stretches) metres[stretch.meets] += stretch.length().si();
  for (const auto& [meets, length] : metres) share.measures.put("meets_m:" + plan::word(meets), length);
}

}  // namespace

Share joints(const plan::Job& job, const plan::Site& site, const paving::LaidArea& laid) {
  const plan::Ground& ground = *laid.ground;
  const auto* area = std::get_if<plan::PavedArea>(&ground.element->kind);
  if (!area) return {};
  const plan::ElementId& id = ground.element->id;
  Share share;
  share.measures.element = id;
  put_meets(ground, share);
  if (area->build_up.empty() && !area->laying) return share;  // nothing is chosen yet, so nothing is built
  const std::vector<Built> rows = built(job, ground);
  for (const Built& one : rows) add_row(job, site, *area, one, id, share);
  share.add(joint_fill(job, laid, gap_area(job, laid, rows)));
  add_totals(share);
  return share;
}

}  // namespace takeoff::edges
