// What the tests of walls share: an invented catalogue of blocks, caps, stone and rolls, and walls in a few lines.
#pragma once

#include "takeoff/edges/site_kit.h"
#include "takeoff/walls/walls.h"

namespace kit {

using namespace site_kit;  // NOLINT: inches, feet, shapes, what a share holds

struct WallBook : Book {
  catalogue::Item& block(const std::string& id, const std::string& kind, double l, double w, double h, double setback,
                         double core, double kg) {
    catalogue::Item& item = sized(id, kind, l, w, h, 0);
    item.joint.reset();
    item.mass_kg = kg;
    item.details["setback_mm"] = std::to_string(setback * 25.4);
    item.details["core_void_share"] = std::to_string(core);
    return item;
  }
  catalogue::Item& stone(const std::string& id, double loose, double compacted, bool open) {
    catalogue::Item& item = add(id, "aggregate");
    item.unit = "ton";
    item.details["loose_density_kg_m3"] = std::to_string(loose);
    item.details["compacted_density_kg_m3"] = std::to_string(compacted);
    if (open) item.details["porosity"] = "0.38";
    return item;
  }
  void base(const std::string& id, const std::string& item, double thick, double past) {
    catalogue::BuildUp made;
    made.id = id;
    made.use = "wall-base";
    catalogue::Layer layer;
    layer.role = "base";
    layer.item = item;
    layer.thickness = inches(thick);
    layer.past_edge = inches(past);
    layer.lift = inches(4);
    made.layers.push_back(layer);
    all->build_ups[id] = made;
  }
};

// Sizes as in the starter catalogue: inches, setback 3/4 in on 8, invented.
inline WallBook book() {
  WallBook made;
  made.block("wb-8x18", "wall-block", 18, 12, 8, 0.75, 0.40, 38.23);
  made.block("wb-8x9-half", "wall-block", 9, 12, 8, 0.75, 0.35, 20.71);
  made.block("wb-8x18-corner", "wall-block", 18, 9, 8, 0.75, 0.10, 43.01);
  made.block("wb-8x18-taper", "wall-block", 18, 12, 8, 0.75, 0.34, 35.04).details["back_length_mm"] = "304.8";
  made.block("sw-6x12", "seat-block", 12, 12, 6, 0, 0, 22.3);
  made.block("sw-6x12-taper", "seat-block", 12, 12, 6, 0, 0, 20.71).details["back_length_mm"] = "254";
  made.block("sw-6x12-end", "seat-block", 12, 12, 6, 0, 0, 28.67);
  made.block("pillar-6x16", "pillar-block", 16, 8, 6, 0, 0, 26.9);
  made.sized("cap-18", "cap", 18, 13, 3, 0).mass_kg = 26.46;
  made.sized("seatcap-24", "cap", 24, 14, 2.25, 0).mass_kg = 28.49;
  made.sized("seatcap-12", "cap", 12, 14, 2.25, 0).mass_kg = 14.25;
  made.sized("pillarcap-28", "pillar-cap", 28, 28, 3, 0).mass_kg = 88.65;
  made.sized("step-6x16x48", "step-unit", 48, 16, 6, 0).mass_kg = 173.68;
  made.stone("agg-no57", 1570, 1650, true);
  made.stone("agg-dense", 1950, 2349.4, false);
  made.base("wall-base-open", "agg-no57", 6, 6);
  made.base("wall-base-dense", "agg-dense", 6, 6);
  made.base("steps-base", "agg-dense", 4, 6);
  made.all->build_ups["steps-base"].use = "steps";
  catalogue::Item& grid = made.add("grid-6x150", "reinforcement");
  grid.unit = "roll";
  grid.length = inches(150 * 12);
  grid.width = inches(72);
  grid.details["strong_direction"] = "along the roll";
  catalogue::Item& pipe = made.add("pipe-smooth-perf-4", "pipe");
  pipe.unit = "stick";
  pipe.length = inches(120);
  pipe.details["nominal_diameter_in"] = "4";
  pipe.details["perforated"] = "yes";
  catalogue::Item& tube = made.add("adh-28", "adhesive");
  tube.unit = "tube";
  tube.details["volume_l"] = "0.828059";
  return made;
}

inline plan::HeightAt level(double at_in, double height_in) { return {inches(at_in), inches(height_in)}; }

// A straight wall of so many inches along x, its fill to the left (north), on level ground at 0.
inline plan::Wall straight(double length_in, double top_in, const std::string& cap = {}) {
  plan::Wall wall;
  wall.line = line({{0, 0}}, length_in, 0);
  wall.block = "wb-8x18";
  wall.cap = cap;
  wall.ground = {level(0, 0)};
  wall.top = {level(0, top_in)};
  return wall;
}

inline plan::Ground ground_of(const plan::Element& element) {
  plan::Ground made = ground(element);
  if (const auto* wall = std::get_if<plan::Wall>(&element.kind)) {
    auto path = geometry::Path::make(wall->line.edges, wall->line.end);
    if (path) made.path = std::move(*path);
  }
  return made;
}

}  // namespace kit
