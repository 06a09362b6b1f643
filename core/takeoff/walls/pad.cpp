#include "takeoff/walls/pad.h"

#include <algorithm>

#include "takeoff/edges/notes.h"

namespace takeoff::walls {

namespace {

Working side(const char* name, double length, double past, const plan::Id& build_up, const plan::ElementId& of) {
  return Working::sum(
      {term(name, length, units::metre, of), term("past both sides", 2 * past, units::metre, build_up + "/past_edge")});
}

std::optional<Working> placed_weight(const catalogue::Item& item, const Working& volume, const plan::ElementId& of,
                                     Share& share) {
  const std::optional<double> density = item.number("compacted_density_kg_m3");
  if (!density) {
    share.problems.push_back(edges::fault(
        "density-missing", "'" + item.id + "' has no placed density, so the weight of the base can't be worked out",
        "give compacted_density_kg_m3 in the catalogue", of));
    return std::nullopt;
  }
  return Working::product({volume, term("placed density", *density, units::kilogram_per_cubic_metre,
                                        item.id + "/compacted_density_kg_m3")});
}

}  // namespace

Sides sides(const geometry::Region& region, geometry::Vec direction) {
  const geometry::Ring& ring = region.polygons().front().outer.edges();
  double least_along = 0, most_along = 0, least_across = 0, most_across = 0;
  for (const geometry::Edge& edge : ring) {
    const geometry::Vec from = edge.from - ring.front().from;
    const double along = geometry::dot(from, direction);
    const double across = geometry::cross(direction, from);
    least_along = std::min(least_along, along);
    most_along = std::max(most_along, along);
    least_across = std::min(least_across, across);
    most_across = std::max(most_across, across);
  }
  Sides made{(most_along - least_along) / units::Length::steps_per_metre,
             (most_across - least_across) / units::Length::steps_per_metre, false};
  const double full = made.along * made.across;
  made.rectangle = std::abs(region.area().si() - full) <= full / 1000;
  return made;
}

std::optional<Working> add_pad(const plan::Job& job, const plan::Id& build_up, double along, double across, Stage stage,
                               const std::string& text, const plan::ElementId& of, Share& share) {
  const catalogue::BuildUp* found = job.catalogue->build_up(build_up);
  if (!found) {
    share.problems.push_back(edges::fault(
        "build-up-missing", "the build-up " + build_up + ", chosen for " + text + ", is not in the catalogue",
        "choose another build-up or add it", of));
    return std::nullopt;
  }
  std::vector<Working> volumes;
  for (const catalogue::Layer& layer : found->layers) {
    const catalogue::Item* item = edges::wanted(job, layer.item, text, of, share);
    if (!item) continue;
    const double past = layer.past_edge.metres().si();
    const Working area =
        Working::product({side("length", along, past, build_up, of), side("width", across, past, build_up, of)})
            .named("footprint");
    if (!layer.thickness || (item->kind != "aggregate" && item->kind != "concrete")) {
      share.lines.push_back({stage, item->id, text, {of}, area, {}, false});
      continue;
    }
    const Working volume = Working::product({area, term("thickness", layer.thickness->metres().si(), units::metre,
                                                        build_up + "/" + layer.role)})
                               .named("placed volume");
    volumes.push_back(volume);
    const std::optional<Working> ordered = item->kind == "concrete" ? volume : placed_weight(*item, volume, of, share);
    if (ordered) share.lines.push_back({stage, item->id, text, {of}, *ordered, {}, false});
  }
  if (volumes.empty()) return std::nullopt;
  return volumes.size() == 1 ? volumes.front() : Working::sum(std::move(volumes));
}

}  // namespace takeoff::walls
