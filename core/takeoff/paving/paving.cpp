#include <algorithm>
#include <cmath>
#include <set>

#include "takeoff/edges/junction.h"
#include "takeoff/edges/notes.h"
#include "takeoff/paving/advice.h"
#include "takeoff/paving/area.h"

namespace takeoff::paving {

namespace {

constexpr double per_metre = units::Length::steps_per_metre;
constexpr double per_square_metre = per_metre * per_metre;

const plan::PavedArea& paved(const LaidArea& area) { return std::get<plan::PavedArea>(area.ground->element->kind); }
const plan::ElementId& id(const LaidArea& area) { return area.ground->element->id; }

// What the field takes of one item.
struct FieldUnits {
  std::int64_t whole = 0;
  std::int64_t cut = 0;
  std::int64_t slivers = 0;
  Bought none;
  Bought area;
  double unit_area = 0;  // m2, of one
};

std::map<Id, FieldUnits> field_units(const plan::Job& job, const LaidArea& area) {
  std::map<Id, FieldUnits> found;
  if (!area.layout) return found;
  const Layout& layout = *area.layout;
  for (std::size_t k = 0; k < layout.lattice.kinds.size(); ++k) {
    const Kind& kind = layout.lattice.kinds[k];
    FieldUnits& units = found[kind.item];
    units.whole += layout.whole(static_cast<int>(k));
    units.cut += layout.cut(static_cast<int>(k));
    units.unit_area = kind.width * kind.height / per_square_metre;
  }
  for (const Piece& piece : layout.pieces)
    if (piece.sliver) ++found[layout.lattice.kinds[static_cast<std::size_t>(piece.kind)].item].slivers;
  Needs needs;
  add_needs(needs, layout);
  for (auto& [item, units] : found) {
    const Cutting how = cutting(*job.catalogue->item(item), job.choices.kerf);
    units.none = bought_for_cuts(needs[item], how, plan::Reuse::none);
    units.area = bought_for_cuts(needs[item], how, plan::Reuse::area);
  }
  return found;
}

const Bought& bought(const plan::Job& job, const FieldUnits& units) {
  return job.choices.reuse == plan::Reuse::none ? units.none : units.area;
}

Term pieces(const std::string& name, std::int64_t count, const LaidArea& area) {
  return term(name, static_cast<double>(count), units::piece, id(area));
}

// Taped by a person: the field is taken in the proportion of what was taped to what is drawn.
Working as_taped(Working working, const LaidArea& area) {
  const auto taped = paved(area).taped_area_m2;
  const double net = area.ground->net.area().si();
  if (!taped || !(*taped > 0) || net <= 0) return working;
  return Working::product(
      {std::move(working), Working::quotient(term("area taped on site", *taped, units::square_metre, id(area)),
                                             term("net area as drawn", net, units::square_metre, id(area)))});
}

Working of_field(const plan::Job& job, const LaidArea& area, const FieldUnits& units) {
  std::vector<Working> parts;
  if (units.whole > 0) parts.emplace_back(pieces("whole units", units.whole, area));
  const Bought& cuts = bought(job, units);
  if (cuts.from_offcuts > 0)
    parts.push_back(Working::difference(pieces("cut pieces", cuts.pieces, area),
                                        pieces("of them out of offcuts", cuts.from_offcuts, area))
                        .named("units bought for cuts"));
  else if (cuts.pieces > 0)
    parts.emplace_back(pieces("units bought for cuts", cuts.units, area));
  return as_taped(parts.size() == 1 ? parts.front() : Working::sum(std::move(parts)), area);
}

void add_lines(const plan::Job& job, const LaidArea& area, const std::map<Id, FieldUnits>& field, Share& share) {
  std::vector<std::pair<Id, std::vector<Working>>> found;
  const auto parts_of = [&](const Id& item) -> std::vector<Working>& {
    const auto known = std::ranges::find(found, item, &std::pair<Id, std::vector<Working>>::first);
    return known != found.end() ? known->second : found.emplace_back(item, std::vector<Working>{}).second;
  };
  if (area.layout)
    for (const Kind& kind : area.layout->lattice.kinds)
      if (const FieldUnits& units = field.at(kind.item); units.whole + units.cut > 0 && parts_of(kind.item).empty())
        parts_of(kind.item).push_back(of_field(job, area, units));
  for (std::size_t k = 0; k < area.borders.size(); ++k)
    if (area.borders[k].units > 0)
      parts_of(area.borders[k].course.item)
          .emplace_back(pieces("border course " + std::to_string(k + 1), area.borders[k].units, area));
  for (auto& [item, parts] : found) {
    if (parts.empty()) continue;
    const bool in_field = field.contains(item);
    Working all = parts.size() == 1 ? parts.front() : Working::sum(std::move(parts));
    share.lines.push_back({Stage::paving,
                           item,
                           (in_field ? "units of " : "border of ") + id(area),
                           {id(area)},
                           paved(area).taped_area_m2 && in_field ? Working::up(std::move(all)) : std::move(all),
                           {},
                           false});
  }
}

// Which rate lays what, first match: kind of the unit, longest side over which it holds (metres), and then the pattern.
Id laying_rate(const plan::Job& job, const LaidArea& area) {
  constexpr double lifted = 16 * units::metres_per_inch;  // larger slabs are laid with a lifter
  const catalogue::Item* item = job.catalogue->item(area.layout->lattice.kinds.front().item);
  const catalogue::Pattern* pattern = job.catalogue->pattern(paved(area).laying->pattern);
  struct Row {
    bool holds;
    const char* rate;
  };
  const bool slab = item->kind == "slab";
  const Row rows[] = {{edges::bound(job, paved(area)), "lay-bound"},
                      {slab && item->length->metres().si() > lifted + 1e-9, "lay-slab-large"},
                      {slab, "lay-slab"},
                      {item->kind == "clay-unit", "lay-clay"},
                      {item->kind == "permeable-unit", "lay-permeable"},
                      {pattern->herringbone, "lay-herringbone"},
                      {catalogue::sizes(*pattern).size() > 1, "lay-mixed"},
                      {pattern->id.starts_with("basket"), "lay-basket"}};
  for (const Row& row : rows)
    if (row.holds) return row.rate;
  return "lay-running";
}

// Metres of saw cuts. A cut along an arc of the field is scribed.
struct CutMetres {
  double straight = 0;
  double curved = 0;
};
std::map<Id, CutMetres> cut_metres(const LaidArea& area) {
  std::map<Id, CutMetres> found;
  std::set<geometry::Origin> arcs;
  for (const geometry::Outline* outline : area.field.outlines())
    for (const geometry::Edge& edge : outline->edges())
      if (edge.bulge != 0) arcs.insert(edge.origin);
  if (area.layout) {
    for (const Piece& piece : area.layout->pieces) {
      CutMetres& metres = found[area.layout->lattice.kinds[static_cast<std::size_t>(piece.kind)].item];
      for (std::size_t i = 0; i < piece.sides.size(); ++i) {
        if (!piece.sides[i].cut) continue;
        const geometry::Vec side = piece.sides[(i + 1) % piece.sides.size()].from - piece.sides[i].from;
        (arcs.contains(piece.sides[i].against) ? metres.curved : metres.straight) += geometry::length(side) / per_metre;
      }
    }
  }
  // Tapers of a border on a curve are in its own rate.
  for (const LaidBorder& border : area.borders)
    for (const RowMake& run : border.runs)
      if (run.cut_angle == 0) found[border.course.item].straight += run.cut_length;
  return found;
}

// The cutting rates are for 60 mm units; their condition: 80 mm x 1.3, 2 in slabs x 0.9.
std::pair<double, std::string> thickness_factor(const catalogue::Item& item) {
  const double height = item.height ? item.height->millimetres() : 60;
  if (height >= 70) return {1.3, "80 mm thick"};
  if (height <= 52) return {0.9, "2 in thick"};
  return {1, ""};
}

void add_cut_tasks(const plan::Job& job, const LaidArea& area, Share& share) {
  std::map<std::pair<double, std::string>, CutMetres> by_factor;
  for (const auto& [item, metres] : cut_metres(area)) {
    CutMetres& all = by_factor[thickness_factor(*job.catalogue->item(item))];
    all.straight += metres.straight;
    all.curved += metres.curved;
  }
  for (const auto& [factor, metres] : by_factor) {
    for (const bool curved : {false, true}) {
      const std::size_t before = share.tasks.size();
      edges::add_task(job, curved ? "cut-60-curve" : "cut-60", Stage::paving, "cuts of " + id(area), id(area),
                      as_taped(term(curved ? "scribed cuts" : "straight cuts", curved ? metres.curved : metres.straight,
                                    units::metre, id(area)),
                               area),
                      share);
      if (share.tasks.size() > before) std::tie(share.tasks.back().factor, share.tasks.back().condition) = factor;
    }
  }
}

void add_tasks(const plan::Job& job, const LaidArea& area, Share& share) {
  const double field = area.field.area().si();
  std::vector<Working> compacted;
  if (area.layout && field > 0) {
    const Working laid = as_taped(term("area of the field", field, units::square_metre, id(area)), area);
    edges::add_task(job, laying_rate(job, area), Stage::paving, "field of " + id(area), id(area), laid, share);
    compacted.push_back(laid);
  }
  for (std::size_t k = 0; k < area.borders.size(); ++k) {
    const LaidBorder& border = area.borders[k];
    const bool soldier = border.course.way == plan::BorderCourse::Way::soldier;
    const std::string name = "border course " + std::to_string(k + 1);
    edges::add_task(
        job, soldier ? "border-soldier" : "border-sailor", Stage::paving, name + " of " + id(area), id(area),
        edges::RunOfWork{term("middle line of " + name + ", straight", border.mid_length - border.curved_length,
                              units::metre, id(area)),
                         term("middle line of " + name + ", curved", border.curved_length, units::metre, id(area))},
        share);
    if (border.units > 0)
      compacted.emplace_back(term("strip of " + name, border.strip_area, units::square_metre, id(area)));
  }
  add_cut_tasks(job, area, share);
  if (!edges::bound(job, paved(area)) && !compacted.empty())
    edges::add_task(job, "compact-units", Stage::paving, "compact units of " + id(area), id(area),
                    compacted.size() == 1 ? compacted.front() : Working::sum(compacted), share);
}

void add_border_measures(const LaidArea& area, Measures& measures) {
  if (area.borders.empty()) return;
  std::int64_t all = 0;
  double middle = 0, strip = 0;
  std::map<Id, std::int64_t> by_item;
  for (const LaidBorder& border : area.borders) {
    all += border.units;
    by_item[border.course.item] += border.units;
    middle += border.mid_length;
    strip += border.strip_area;
  }
  measures.put("border_units", static_cast<double>(all));
  measures.put("border_mid_m", middle);
  measures.put("border_area_m2", strip);
  for (const auto& [item, count] : by_item) measures.put("border_units:" + item, static_cast<double>(count));
}

// How many units an endless field of this size would take, whatever its edges.
double units_by_area(const Layout& layout, double field) {
  const double repeat = layout.lattice.along * layout.lattice.across.y / per_square_metre;
  return repeat > 0 ? field / repeat * static_cast<double>(layout.lattice.kinds.size()) : 0;
}

void add_field_measures(const plan::Job& job, const LaidArea& area, const std::map<Id, FieldUnits>& field,
                        Measures& measures) {
  if (!area.layout) return;
  const Layout& layout = *area.layout;
  FieldUnits all;
  double bought_area = 0, cut_length = 0;
  for (const auto& [item, units] : field) {
    all.whole += units.whole;
    all.cut += units.cut;
    all.slivers += units.slivers;
    all.none.units += units.none.units;
    all.area.units += units.area.units;
    all.area.from_offcuts += bought(job, units).from_offcuts;
    bought_area += static_cast<double>(units.whole + bought(job, units).units) * units.unit_area;
  }
  for (const Piece& piece : layout.pieces) cut_length += piece.cut_length / per_metre;
  const auto put = [&](const std::string& name, std::int64_t value) { measures.put(name, static_cast<double>(value)); };
  measures.put("joint_share_percent", layout.region_area > 0 ? 100 * (1 - layout.unit_area / layout.region_area) : 0);
  put("units_whole", all.whole);
  put("units_cut", all.cut);
  put("units_from_offcuts", all.area.from_offcuts);
  put("bought_none", all.none.units);
  put("bought_area", all.area.units);
  measures.put("cut_length_m", cut_length);
  put("slivers", all.slivers);
  measures.put("units_by_area", units_by_area(layout, area.field.area().si()));
  const double laid = layout.unit_area / per_square_metre;
  measures.put("waste_share", laid > 0 ? bought_area / laid - 1 : 0);
  for (const auto& [item, units] : field) {
    put("units_whole:" + item, units.whole);
    put("units_cut:" + item, units.cut);
    put("slivers:" + item, units.slivers);
  }
}

}  // namespace

Share paving(const plan::Job& job, const LaidArea& area) {
  Share share;
  share.measures.element = id(area);
  share.problems = area.problems;
  const std::map<Id, FieldUnits> field = field_units(job, area);
  if (area.layout || !area.borders.empty()) share.measures.put("field_area_m2", area.field.area().si());
  add_field_measures(job, area, field, share.measures);
  add_border_measures(area, share.measures);
  add_lines(job, area, field, share);
  if (share.lines.empty()) return share;
  add_tasks(job, area, share);
  share.facts.push_back("laid-units");
  const bool cuts = std::ranges::any_of(field, [](const auto& units) { return units.second.cut > 0; }) ||
                    std::ranges::any_of(area.borders, [](const LaidBorder& border) { return border.cut > 0; });
  if (cuts) share.facts.push_back("cuts");
  add_advice(job, area, share);
  return share;
}

std::map<Id, Bought> bought_for_job(const plan::Job& job, const std::vector<const LaidArea*>& areas) {
  Needs needs;
  for (const LaidArea* area : areas)
    if (area->layout) add_needs(needs, *area->layout);
  std::map<Id, Bought> found;
  for (const auto& [item, all] : needs)
    found[item] = bought_for_cuts(all, cutting(*job.catalogue->item(item), job.choices.kerf), plan::Reuse::job);
  return found;
}

Share saved_between_areas(const plan::Job& job, const std::vector<const LaidArea*>& areas) {
  Share share;
  if (job.choices.reuse != plan::Reuse::job) return share;
  for (const auto& [item, together] : bought_for_job(job, areas)) {
    std::vector<Working> apart;
    std::vector<plan::ElementId> of;
    std::int64_t sum = 0;
    for (const LaidArea* area : areas) {
      const auto field = field_units(job, *area);
      const auto own = field.find(item);
      if (own == field.end() || own->second.cut == 0) continue;
      sum += own->second.area.units;
      apart.emplace_back(pieces("units bought for cuts of " + id(*area), own->second.area.units, *area));
      of.push_back(id(*area));
    }
    if (together.units >= sum) continue;
    share.lines.push_back({Stage::paving,
                           item,
                           "offcuts that travel between areas",
                           of,
                           Working::difference(term("units bought for all cuts together",
                                                    static_cast<double>(together.units), units::piece, item),
                                               Working::sum(std::move(apart))),
                           {},
                           false});
  }
  return share;
}

}  // namespace takeoff::paving
