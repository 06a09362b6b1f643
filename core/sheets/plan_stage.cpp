#include <algorithm>
#include <cmath>

#include "sheets/plan_parts.h"
#include "takeoff/ground/ground.h"

namespace sheets {

using takeoff::Stage;
using takeoff::ground::Body;

namespace {

bool is_base(const Body& body) {
  const std::string& role = body.layer.role;
  return role == "base" || role == "sub-base" || role == "slab";
}

// Of each group of bodies the uppermost base and the one that reaches furthest: that is as far as is dug.
struct Dug {
  const Body* base = nullptr;
  const Body* widest = nullptr;
  const Body* fabric = nullptr;
};

std::map<int, Dug> groups(const std::vector<Body>& bodies) {
  std::map<int, Dug> found;
  for (const Body& body : bodies) {
    Dug& dug = found[body.group];
    if (is_base(body) && (!dug.base || body.top < dug.base->top)) dug.base = &body;
    if (body.layer.role == "fabric") dug.fabric = &body;
    if (!dug.widest || body.footprint.area() > dug.widest->footprint.area()) dug.widest = &body;
  }
  return found;
}

Material material_of(const Body& body) {
  if (body.layer.role == "slab") return Material::concrete;
  return body.open ? Material::open_stone : Material::dense_base;
}

void put(Plan& plan, const Body& body, Material material, Line line) {
  Area area;
  area.contours = contours(body.footprint);
  area.material = material;
  area.line = line;
  area.of = body.of.empty() ? plan::ElementId() : body.of.front();
  plan.put(std::move(area));
}

// Both edges of each lap, strips laid along the longer side.
void draw_laps(Plan& plan, const Body& fabric) {
  const catalogue::Item* roll = plan.catalogue().item(fabric.layer.item);
  if (!roll || !roll->width) return;
  const bool soft = plan.job().choices.cbr == "soft";
  const double lap =
      plan.catalogue()
          .length_limit(soft ? "fabric-overlap-soft" : "fabric-overlap-firm", units::Length::inches(soft ? 24 : 12))
          .metres()
          .si();
  const double wide = roll->width->metres().si();
  if (wide <= lap) return;
  const geometry::Box box = fabric.footprint.bounds();
  const Vec low = metres(box.low), high = metres(box.high);
  const bool upright = high.y - low.y > high.x - low.x;
  const double from = upright ? low.x : low.y, to = upright ? high.x : high.y;
  const plan::ElementId of = fabric.of.empty() ? plan::ElementId() : fabric.of.front();
  const int laps = std::min(200, static_cast<int>((to - from) / (wide - lap)));
  for (int i = 1; i <= laps; ++i)
    for (const double edge : {from + i * (wide - lap), from + i * (wide - lap) + lap})
      for (const auto& [a, b] : crossing(fabric.footprint, edge, upright))
        plan.stroke(line(a, b), Line::geotextile, of);
}

}  // namespace

void draw_ground(Plan& plan) {
  // Of the finished job nothing of the ground shows; what was made good is a thing of the last stage.
  if (!plan.wants().stage || !plan.built(Stage::dig)) return;
  const takeoff::ground::Bodies under = takeoff::ground::bodies(plan.job(), plan.site());
  const bool made_good = plan.built(Stage::finish);
  for (const auto& [number, dug] : groups(under.bodies)) {
    // What was dug past the edges is filled and sown at the end; until then it lies open.
    put(plan, *dug.widest, made_good ? Material::lawn : Material::soil, made_good ? Line::none : Line::open_dig);
    if (made_good || !plan.built(Stage::base)) continue;
    if (dug.base) put(plan, *dug.base, material_of(*dug.base), Line::element);
    if (dug.fabric) draw_laps(plan, *dug.fabric);
  }
}

}  // namespace sheets
