#include <algorithm>
#include <cmath>

#include "sheets/section_parts.h"
#include "units/number.h"

namespace sheets {

using takeoff::Stage;

namespace {

constexpr double inch = units::metres_per_inch;

double si(const std::optional<units::Length>& length, double otherwise) {
  return length ? length->metres().si() : otherwise;
}

// The build-up of the first area that lies against the run.
const catalogue::BuildUp* beside(const Cut& cut) {
  for (const auto& ground : cut.site().grounds) {
    const auto* area = std::get_if<plan::PavedArea>(&ground->element->kind);
    if (!area) continue;
    for (const plan::Stretch& stretch : ground->stretches)
      if (stretch.other == cut.id()) return cut.catalogue().build_up(area->build_up);
  }
  return nullptr;
}

// The paving to the left of x = 0, its surface at y = 0; gives the bottom of its layers.
double draw_paving(Cut& cut, double from) {
  const catalogue::BuildUp* build_up = beside(cut);
  if (!build_up) return 0;
  double top = 0;
  for (const catalogue::Layer& layer : build_up->layers) {
    const double high = si(layer.thickness, 0);
    const bool late = layer.role == "unit" || layer.role == "bedding";
    if (high <= 0) continue;
    cut.box({from, top - high}, {0, top}, material_of(cut.catalogue(), layer), late ? Stage::paving : Stage::base);
    top -= high;
  }
  return top;
}

void draw_footing(Cut& cut, const plan::Footing& footing, double width, double top) {
  const double wide = footing.width.metres().si(), thick = footing.thickness.metres().si();
  const double haunch = footing.haunch.metres().si(), from = width / 2 - wide / 2;
  cut.box({from, top - thick}, {from + wide, top}, Material::concrete, Stage::coping);
  if (haunch > 0 && from + wide > width)
    cut.area(polygon({{width, top}, {from + wide, top}, {width, top + haunch}}), Material::concrete, Stage::coping);
  cut.leader({from + 0.8 * wide, top - 0.3 * thick}, "Footing, width", cut.shown(footing.width), "footing/width",
             Stage::coping);
  cut.leader({from + 0.7 * wide, top - 0.7 * thick}, "Footing, thickness", cut.shown(footing.thickness),
             "footing/thickness", Stage::coping);
  if (haunch > 0)
    cut.leader({width + 0.2 * (from + wide - width), top + 0.3 * haunch}, "Haunch", cut.shown(footing.haunch),
               "footing/haunch", Stage::coping);
}

bool draw_kerb(Cut& cut, const plan::EdgeRun& run) {
  const catalogue::Item* unit = cut.catalogue().item(run.item);
  if (!unit || !unit->width || !unit->height) return false;
  const double wide = unit->width->metres().si(), high = unit->height->metres().si();
  const double up = run.upstand.metres().si(), foot = up - high;
  const double thick = run.footing ? run.footing->thickness.metres().si() : 0;
  const double layers = draw_paving(cut, -8 * inch);
  const double bottom = std::min(layers, foot - thick) - 3 * inch;
  cut.ground_box({-8 * inch, bottom}, {wide + 8 * inch, std::min(layers, foot - thick)});
  cut.ground_box({-8 * inch, bottom}, {0, layers});
  cut.ground_box({wide, bottom}, {wide + 8 * inch, -inch});
  if (run.footing) draw_footing(cut, *run.footing, wide, foot);
  cut.box({0, foot}, {wide, up}, Material::kerb, Stage::coping);
  cut.leader({0.7 * wide, up - 0.2 * high}, cut.name(run.item, "Kerb"), cut.shown(wide) + " x " + cut.shown(high), {},
             Stage::coping);
  cut.leader({0.3 * wide, up - 0.05 * high}, "Above the paving", cut.shown(run.upstand), "kerb/upstand", Stage::coping);
  const auto spacing = cut.measured("weep_spacing_m");
  if (!run.weeps || !spacing) return true;
  cut.stroke(line({0, foot + inch / 2}, {wide, foot + inch / 2}), Line::pipe, Stage::coping);
  cut.leader({0.5 * wide, foot + inch / 2}, "Weeps, one each", cut.shown(*spacing), "weeps/spacing", Stage::coping);
  return true;
}

bool draw_restraint(Cut& cut, const plan::EdgeRun& run) {
  const catalogue::Item* item = cut.catalogue().item(run.item);
  if (!item) return false;
  const double layers = draw_paving(cut, -8 * inch);
  const double foot = 4 * inch, high = 1.5 * inch, deep = 2.5 * inch;
  cut.ground_box({-8 * inch, layers - 4 * inch}, {8 * inch, layers});
  cut.ground_box({foot, layers}, {8 * inch, -inch});
  // Its foot lies on the base; how high and wide it is the catalogue does not say.
  cut.area(polygon({{0, -deep}, {foot, -deep}, {foot, -deep + inch / 4}, {inch / 4, -deep + high}, {0, -deep + high}}),
           Material::kerb, Stage::joints);
  cut.leader({inch / 8, -deep + 0.8 * high}, cut.name(run.item, "Restraint"), {}, {}, Stage::joints);
  if (!run.spikes) return true;
  cut.stroke(line({foot / 2, -deep + inch / 2}, {foot / 2, -deep - 8 * inch}), Line::cut_edge, Stage::joints);
  cut.leader({foot / 2, -deep - 2 * inch}, "Spikes, one each", cut.shown(run.spikes->spacing), "spikes/spacing",
             Stage::joints);
  cut.leader({foot / 2, -deep - 4 * inch}, "On curves", cut.shown(run.spikes->on_curves), "spikes/on_curves",
             Stage::joints);
  return true;
}

// A channel stands flush in what is paved on both sides.
bool draw_channel(Cut& cut, const plan::DrainRun& run) {
  const double wide = run.width.metres().si();
  const catalogue::Item* item = cut.catalogue().item(run.item);
  const double high = si(item ? item->height : std::nullopt, wide);
  cut.ground_box({-6 * inch, -high - 4 * inch}, {wide + 6 * inch, -high});
  cut.ground_box({-6 * inch, -high}, {0, 0});
  cut.ground_box({wide, -high}, {wide + 6 * inch, 0});
  cut.box({0, -high}, {wide, 0}, Material::kerb, Stage::under_ground);
  cut.box({0.15 * wide, -0.85 * high}, {0.85 * wide, -0.12 * high}, Material::none, Stage::under_ground);
  cut.leader({0.9 * wide, -0.06 * high}, cut.name(run.item, "Channel"), {}, {}, Stage::under_ground);
  cut.leader({0.5 * wide, -0.12 * high}, "Width that shows", cut.shown(run.width), "run/width", Stage::under_ground);
  return true;
}

}  // namespace

bool section_of_edge(Cut& cut, const plan::EdgeRun& run) {
  return run.what == "kerb" ? draw_kerb(cut, run) : draw_restraint(cut, run);
}

bool section_of_drain(Cut& cut, const plan::DrainRun& run) {
  const catalogue::Item* item = cut.catalogue().item(run.item);
  if (!item) return false;
  if (run.what == "channel") return draw_channel(cut, run);
  const double bore = item->number("nominal_diameter_in").value_or(4) * inch;
  const double wide = bore + 2 * cut.catalogue().length_limit("trench-side", units::Length::inches(6)).metres().si();
  const auto cover = cut.measured("cover_least_m");
  // Deep runs are cut short over the pipe: the cover is told.
  const double over = std::clamp(cover.value_or(12 * inch), 4 * inch, 24 * inch);
  const catalogue::BuildUp* build_up = cut.catalogue().build_up(run.build_up);
  double stone = 0;
  std::size_t number = 0;
  for (std::size_t i = 0; build_up && i < build_up->layers.size(); ++i) {
    if (stone > 0 || !build_up->layers[i].thickness) continue;
    stone = build_up->layers[i].thickness->metres().si();
    number = i;
  }
  // Two inches of it under the pipe (common practice), the top as far up as it comes.
  const double bed = stone > 0 ? 2 * inch : 0, bottom = -over - bore - bed, stone_top = std::min(bottom + stone, 0.0);
  cut.ground_box({-wide / 2 - 5 * inch, bottom - 4 * inch}, {wide / 2 + 5 * inch, bottom});
  cut.ground_box({-wide / 2 - 5 * inch, bottom}, {-wide / 2, 0});
  cut.ground_box({wide / 2, bottom}, {wide / 2 + 5 * inch, 0});
  cut.box({-wide / 2, std::max(bottom, stone_top)}, {wide / 2, 0}, Material::made_up_ground, Stage::under_ground);
  if (stone > 0) {
    const catalogue::Layer& layer = build_up->layers[number];
    cut.box({-wide / 2, bottom}, {wide / 2, stone_top}, material_of(cut.catalogue(), layer), Stage::under_ground);
    cut.leader({0.4 * wide, stone_top - 0.2 * (stone_top - bottom)}, cut.name(layer.item, "Stone"), cut.shown(stone),
               "layer/" + std::to_string(number) + "/thickness", Stage::under_ground);
  }
  cut.ring({0, bottom + bed + bore / 2}, bore / 2, Material::pipe, Stage::under_ground);
  cut.leader({0, bottom + bed + 0.8 * bore}, cut.name(run.item, "Pipe"), {}, {}, Stage::under_ground);
  cut.leader({-0.3 * bore, bottom + bed + 0.3 * bore}, "Fall", units::show_number(run.fall * 100, 2) + " %",
             run.inverts.empty() ? "run/fall" : "", Stage::under_ground);
  if (run.start)
    cut.leader({0.1 * bore, bottom + bed}, "Invert at its start",
               show_height(run.start->metres().si(), cut.job().heading.units), "run/start", Stage::under_ground);
  if (cover) cut.leader({0.2 * wide, -0.2 * over}, "Least cover", cut.shown(*cover), {}, Stage::under_ground);
  return true;
}

}  // namespace sheets
