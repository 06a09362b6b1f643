// A small yard for the tests of what lies under the surface: a paved rectangle with a build-up, in feet and inches.
#pragma once

#include <memory>
#include <string>

#include "takeoff/ground/ground.h"

namespace yard {

using geometry::Point;
using geometry::Ring;
using units::Length;

inline Point at(long x, long y) { return {Length::inches(x), Length::inches(y)}; }
inline Ring rectangle(long x0, long y0, long x1, long y1) {
  return {{at(x0, y0), 0, {}}, {at(x1, y0), 0, {}}, {at(x1, y1), 0, {}}, {at(x0, y1), 0, {}}};
}

inline void put(catalogue::Catalogue& all, catalogue::Item item) {
  const catalogue::Id id = item.id;
  all.items[id] = std::make_shared<const catalogue::Item>(std::move(item));
}

inline catalogue::Item stone(const std::string& id, double placed, double porosity) {
  catalogue::Item item;
  item.id = id;
  item.kind = "aggregate";
  item.unit = item.sold_by = "ton";
  item.details["compacted_density_kg_m3"] = std::to_string(placed);
  if (porosity > 0) item.details["porosity"] = std::to_string(porosity);
  return item;
}

inline catalogue::Layer layer(std::string role, std::string item, long eighths, long past_inches) {
  catalogue::Layer made;
  made.role = std::move(role);
  made.item = std::move(item);
  made.thickness = Length::inch_64ths(eighths * 8);
  made.past_edge = Length::inches(past_inches);
  return made;
}

// Dense and open build-ups: unit 2 3/8 in, bedding 1 in, base 4 in dense or 6 in open, 6 in past the edge.
inline std::shared_ptr<catalogue::Catalogue> catalogue() {
  auto all = std::make_shared<catalogue::Catalogue>();
  put(*all, stone("dense", 2349.4, 0));
  put(*all, stone("sand", 1776, 0));
  put(*all, stone("open", 1650, 0.40));
  put(*all, stone("chips", 1620, 0.39));
  catalogue::Item fabric;
  fabric.id = "fabric";
  fabric.kind = "fabric";
  fabric.length = Length::feet(360);
  fabric.width = Length::inches(150);
  put(*all, fabric);
  catalogue::Item kerb;
  kerb.id = "kerb";
  kerb.kind = "kerb-unit";
  kerb.width = Length::inches(4);
  kerb.height = Length::inches(8);
  put(*all, kerb);
  all->build_ups["dense"] = {"dense",
                             "paving",
                             {},
                             "",
                             "",
                             "",
                             {layer("unit", "", 19, 0), layer("bedding", "sand", 8, 0), layer("base", "dense", 32, 6)}};
  all->build_ups["open"] = {"open",
                            "paving",
                            {},
                            "",
                            "",
                            "",
                            {layer("unit", "", 19, 0), layer("bedding", "chips", 8, 0), layer("base", "open", 48, 6),
                             layer("fabric", "fabric", 0, 12)}};
  all->build_ups["open"].layers[3].thickness.reset();
  return all;
}

inline plan::Element paved(std::string id, Ring ring, std::string build_up) {
  plan::PavedArea area;
  area.outline = {{std::move(ring), {}}};
  area.build_up = std::move(build_up);
  return {std::move(id), "", area};
}

inline plan::Job job(std::vector<plan::Element> elements) {
  plan::Job made;
  made.catalogue = catalogue();
  for (plan::Element& element : elements) made = plan::with(made, std::move(element));
  return made;
}

inline double square_feet(const geometry::Region& region) {
  return region.area().si() / units::square_metres_per_square_foot;
}

inline bool said(const takeoff::Share& share, const std::string& code) {
  for (const auto& problem : share.problems)
    if (problem.code == code) return true;
  return false;
}

}  // namespace yard
