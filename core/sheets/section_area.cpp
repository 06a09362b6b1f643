#include <algorithm>
#include <cmath>

#include "sheets/section_parts.h"
#include "takeoff/edges/junction.h"

namespace sheets {

using takeoff::Stage;

namespace {

constexpr double inch = units::metres_per_inch;
constexpr double ground_shown = 4 * inch;  // under the lowest layer

double si(const std::optional<units::Length>& length, double otherwise) {
  return length ? length->metres().si() : otherwise;
}

Stage stage_of(const catalogue::Layer& layer, Stage stone) {
  if (layer.role == "unit" || layer.role == "bedding" || layer.role == "mortar") return Stage::paving;
  return stone;
}

// How a layer that has no thickness of its own is drawn: fabric and mesh are lines.
bool is_sheet(const catalogue::Layer& layer) { return layer.role == "fabric" || layer.role == "mesh"; }

void draw_units(Cut& cut, const LayersUnder& under, const catalogue::Layer& layer, double high) {
  const catalogue::Item* unit = cut.catalogue().item(under.unit);
  const double long_one = si(unit ? unit->length : std::nullopt, 6 * inch);
  const double joint = si(unit ? unit->joint : std::nullopt, inch / 8);
  for (double x = under.from; x < under.to - 1e-6; x += long_one + joint) {
    const double to = std::min(x + long_one, under.to);
    cut.box({x, under.top - high}, {to, under.top}, Material::paving, stage_of(layer, under.stone));
  }
}

double thickness_of(const Cut& cut, const LayersUnder& under, const catalogue::Layer& layer) {
  if (layer.thickness) return layer.thickness->metres().si();
  const catalogue::Item* unit = layer.role == "unit" ? cut.catalogue().item(under.unit) : nullptr;
  return si(unit ? unit->height : std::nullopt, 0);
}

plan::Id first_unit(const plan::PavedArea& area) {
  if (!area.laying || area.laying->units.empty()) return {};
  return area.laying->units.begin()->second;
}

// What lies along the edge at which the section is taken.
struct Edges {
  const plan::Stretch* coping = nullptr;
  bool free = false;  // planting, restraint or kerb somewhere: the base goes on past it
};

Edges edges_of(const plan::Ground& ground) {
  Edges found;
  for (const plan::Stretch& stretch : ground.stretches) {
    if (stretch.meets == plan::Meets::coping && !found.coping) found.coping = &stretch;
    found.free = found.free || stretch.meets == plan::Meets::planting || stretch.meets == plan::Meets::restraint ||
                 stretch.meets == plan::Meets::kerb;
  }
  return found;
}

// Coping on its concrete, the joint beside it full depth; gives where the paving begins.
double draw_coping_side(Cut& cut, const plan::Stretch& stretch, double bottom) {
  const plan::Ground* pool = cut.site().find(stretch.other);
  const auto* what = pool ? std::get_if<plan::Pool>(&pool->element->kind) : nullptr;
  const catalogue::Item* piece = what && what->coping ? cut.catalogue().item(what->coping->item) : nullptr;
  const double high = si(piece ? piece->height : std::nullopt, 2 * inch);
  const double wide = 5 * inch;  // of it the back part is shown
  const catalogue::Junction* row = takeoff::edges::junction_for(cut.job(), cut.ground(), stretch);
  const double joint = row ? si(row->joint, 0) : 0;
  cut.box({0, bottom}, {wide, -high}, Material::concrete, Stage::coping);
  cut.box({0, -high}, {wide, 0}, Material::coping, Stage::coping);
  if (joint <= 0) return wide;
  const double rod = std::min(joint * 0.6, high / 3);
  cut.ring({wide + joint / 2, -joint / 2 - rod}, rod, Material::joint, Stage::joints);
  cut.leader({wide + joint / 2, -joint / 4}, "Joint to the coping", cut.shown(joint), {}, Stage::joints);
  return wide + joint;
}

}  // namespace

Material material_of(const catalogue::Catalogue& catalogue, const catalogue::Layer& layer) {
  const catalogue::Item* item = catalogue.item(layer.item);
  const bool open = item && catalogue::open_graded(*item);
  if (layer.role == "unit") return Material::paving;
  if (layer.role == "mortar") return Material::mortar;
  if (layer.role == "slab") return Material::concrete;
  if (layer.role == "bedding") return open ? Material::open_stone : Material::sand;
  if (is_sheet(layer)) return Material::geotextile;
  return open ? Material::open_stone : Material::dense_base;
}

double draw_layers(Cut& cut, const catalogue::BuildUp& build_up, const LayersUnder& under) {
  LayersUnder at = under;
  double lead = 0.88;  // share of the width at which a leader ends: each further left, so that none crosses another
  for (std::size_t i = 0; i < build_up.layers.size(); ++i) {
    const catalogue::Layer& layer = build_up.layers[i];
    const double high = thickness_of(cut, at, layer);
    const Stage stage = stage_of(layer, at.stone);
    const double past = std::min(at.past_edge, layer.past_edge.metres().si());
    const std::string field = "layer/" + std::to_string(i) + "/thickness";
    const Vec end{at.from + lead * (at.to - at.from), at.top - high / 2};
    lead -= 0.09;
    if (is_sheet(layer)) {
      cut.stroke(line({at.from, at.top}, {at.to + past, at.top}), Line::geotextile, stage);
      cut.leader(end, cut.name(layer.item, layer.role), {}, {}, stage);
      continue;
    }
    if (high <= 0) continue;
    if (layer.role == "unit")
      draw_units(cut, at, layer, high);
    else
      cut.box({at.from, at.top - high}, {at.to + past, at.top}, material_of(cut.catalogue(), layer), stage);
    const std::string label = layer.role == "unit" ? cut.name(at.unit, "Unit") : cut.name(layer.item, layer.role);
    cut.leader(end, label, cut.shown(high), field, stage);
    at.top -= high;
  }
  return at.top;
}

bool section_of_area(Cut& cut, const plan::PavedArea& area) {
  const catalogue::BuildUp* build_up = cut.catalogue().build_up(area.build_up);
  if (!build_up || build_up->layers.empty()) return false;
  const Edges edges = edges_of(cut.ground());
  LayersUnder under;
  under.unit = first_unit(area);
  double deep = 0, past = 0;
  for (const catalogue::Layer& layer : build_up->layers) {
    deep += thickness_of(cut, under, layer);
    if (edges.free && !is_sheet(layer)) past = std::max(past, layer.past_edge.metres().si());
  }
  under.past_edge = past;
  const double width = std::max(1.1 * (deep + ground_shown), 12 * inch);
  if (edges.coping) under.from = draw_coping_side(cut, *edges.coping, -deep);
  under.to = std::max(width, under.from + 9 * inch);
  const double right = under.to + (past > 0 ? past + 3 * inch : 0);
  cut.ground_box({0, -deep - ground_shown}, {right, -deep});
  if (past > 0) {
    cut.ground_box({under.to + past, -deep}, {right, -inch});
    cut.area(rectangle({under.to, -deep}, {under.to + past, -inch}), Material::made_up_ground, Stage::finish,
             Line::none);
  }
  draw_layers(cut, *build_up, under);
  if (area.laying) {
    const catalogue::Item* unit = cut.catalogue().item(under.unit);
    const double joint =
        area.laying->joint ? area.laying->joint->metres().si() : si(unit ? unit->joint : std::nullopt, 0);
    const double x = under.from + si(unit ? unit->length : std::nullopt, 6 * inch) + joint / 2;
    if (joint > 0 && x < under.to)
      cut.leader({x, -inch / 4}, "Joint between units", cut.shown(joint), "joint", Stage::joints);
  }
  if (past > 0)
    cut.leader({under.to + past / 2, -deep + inch}, "Base past the edge", cut.shown(past), "past_edge", Stage::base);
  cut.leader({under.from + 0.3 * (under.to - under.from), -deep - ground_shown / 2}, "Ground", "firm, level", {},
             Stage::protect);
  return true;
}

}  // namespace sheets
