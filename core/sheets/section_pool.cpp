#include <algorithm>

#include "sheets/section_parts.h"

namespace sheets {

using takeoff::Stage;

namespace {

constexpr double inch = units::metres_per_inch;
constexpr double shown_below = 14 * inch;  // of shell, stone and ground under the coping; deeper is told, not drawn

double si(const std::optional<units::Length>& length, double otherwise) {
  return length ? length->metres().si() : otherwise;
}

// The bed of the coping as the catalogue's build-up for pools has it.
double bed_of(const catalogue::Catalogue& catalogue) {
  for (const auto& [id, build_up] : catalogue.build_ups)
    if (build_up.use == "pool")
      for (const catalogue::Layer& layer : build_up.layers)
        if (layer.role == "mortar" && layer.thickness) return layer.thickness->metres().si();
  return catalogue.length_limit("coping-bed", units::Length::inch_64ths(32)).metres().si();
}

// Water's edge at x = 0, the water to the left, the top of the coping at y = 0.
void draw_coping(Cut& cut, const plan::Coping& coping, double high, double wide, double bed) {
  const double nose = -coping.overhang.metres().si();
  cut.box({0, -high - bed}, {nose + wide, -high}, Material::mortar, Stage::coping);
  cut.box({nose, -high}, {nose + wide, 0}, Material::coping, Stage::coping);
  cut.leader({nose + wide * 0.8, -high * 0.3}, cut.name(coping.item, "Coping"), cut.shown(wide), {}, Stage::coping);
  cut.leader({nose / 2, -high * 0.6}, "Overhang", cut.shown(coping.overhang), "coping/overhang", Stage::coping);
  cut.leader({nose + wide * 0.7, -high - bed / 2}, "Bed", cut.shown(bed), {}, Stage::coping);
}

// Gives how far down the concrete goes.
double draw_collar(Cut& cut, const plan::Collar& collar, double top) {
  const double wide = collar.width.metres().si(), thick = collar.thickness.metres().si();
  cut.box({0, top - thick}, {wide, top}, Material::concrete, Stage::coping);
  for (const units::Length& ring : collar.rings)
    cut.ring({ring.metres().si(), top - thick / 2}, 0.35 * inch, Material::joint, Stage::coping);
  cut.leader({wide * 0.9, top - thick * 0.3}, "Collar, width", cut.shown(collar.width), "collar/width", Stage::coping);
  cut.leader({wide * 0.8, top - thick * 0.7}, "Collar, thickness", cut.shown(collar.thickness), "collar/thickness",
             Stage::coping);
  return top - thick;
}

}  // namespace

bool section_of_pool(Cut& cut, const plan::Pool& pool) {
  const catalogue::Item* piece = pool.coping ? cut.catalogue().item(pool.coping->item) : nullptr;
  const double high = piece ? si(piece->height, 2 * inch) : 0;
  const double wide = piece ? si(piece->width, 12 * inch) : 0;
  const double bed = piece ? bed_of(cut.catalogue()) : 0;
  const double shell = pool.shell.metres().si();
  const double clear = pool.surround ? pool.surround->clearance.metres().si() : 0;
  const double bottom = -high - bed - shown_below;
  const double right = std::max({wide, shell + clear + 3 * inch, pool.collar ? si(pool.collar->width, 0) : 0.0});
  const double level = -high - bed - 2 * inch;  // of the water, as pools are mostly filled: nothing is measured from it
  cut.ground_box({0, bottom}, {right, -high - bed});
  cut.area(rectangle({-9 * inch, bottom}, {0, level}), Material::water, Stage::finish, Line::none);
  if (pool.surround) cut.box({shell, bottom}, {shell + clear, -high - bed}, Material::open_stone, Stage::coping);
  if (shell > 0) cut.box({0, bottom}, {shell, -high - bed}, Material::concrete, Stage::protect);
  double top = -high - bed;
  if (piece) draw_coping(cut, *pool.coping, high, wide, bed);
  if (pool.collar) top = draw_collar(cut, *pool.collar, top);
  cut.leader({-4.5 * inch, level - inch}, "Water", {}, {}, Stage::finish);
  cut.leader({shell / 2, top - 0.25 * (top - bottom)}, "Shell", cut.shown(pool.shell), "shell", Stage::protect);
  if (!pool.surround) return true;
  const double at = shell + clear / 2;
  cut.leader({at, top - 0.4 * (top - bottom)}, cut.name(pool.surround->item, "Stone"), {}, {}, Stage::coping);
  cut.leader({at - clear / 6, top - 0.6 * (top - bottom)}, "Clearance", cut.shown(pool.surround->clearance),
             "surround/clearance", Stage::coping);
  cut.leader({at - clear / 3, top - 0.8 * (top - bottom)}, "Depth", cut.shown(pool.surround->depth), "surround/depth",
             Stage::coping);
  return true;
}

}  // namespace sheets
