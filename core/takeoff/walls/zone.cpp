#include "takeoff/walls/zone.h"

#include <algorithm>
#include <cmath>

#include "takeoff/edges/notes.h"
#include "takeoff/walls/reinforcement.h"
#include "takeoff/walls/words.h"
#include "units/number.h"

namespace takeoff::walls {

namespace {

constexpr double hair = 1e-6;  // metres: less is no stretch

std::vector<double> breaks(const Profile& profile, const plan::Wall& wall) {
  std::vector<double> at;
  for (const Column& column : profile.columns) at.insert(at.end(), {column.from, column.to});
  for (const Leg& leg : profile.legs) at.insert(at.end(), {leg.from, leg.to});
  for (const plan::Reinforcement& layer : wall.layers)
    for (const Extent& extent : extents(profile, layer)) at.insert(at.end(), {extent.from, extent.to});
  std::ranges::sort(at);
  return at;
}

void set_leg(const Profile& profile, Stretch& stretch) {
  for (std::size_t i = 0; i < profile.legs.size(); ++i) {
    const Leg& leg = profile.legs[i];
    if (stretch.from < leg.from - hair || stretch.to > leg.to + hair) continue;
    stretch.radius = leg.radius;
    stretch.leg_from = leg.from;
    stretch.leg_to = leg.to;
    stretch.corner_after = leg.corner;
    const Leg* before = i > 0 ? &profile.legs[i - 1] : profile.closed ? &profile.legs.back() : nullptr;
    if (before) stretch.corner_before = before->corner;
    return;
  }
}

bool is_stone(const catalogue::Layer& layer) { return layer.role != "fabric" && layer.role != "mesh"; }

}  // namespace

std::vector<Stretch> stretches(const Profile& profile, const plan::Wall& wall) {
  const std::vector<double> at = breaks(profile, wall);
  std::vector<std::vector<Extent>> layers;
  for (const plan::Reinforcement& layer : wall.layers) layers.push_back(extents(profile, layer));
  std::vector<Stretch> found;
  std::size_t next = 0;
  for (std::size_t i = 0; i + 1 < at.size(); ++i) {
    Stretch one{at[i], at[i + 1], {}, 0, 0, 0, 0, 0, 0};
    if (one.length() < hair) continue;
    const double middle = (one.from + one.to) / 2;
    while (next + 1 < profile.columns.size() && profile.columns[next].to < middle) ++next;
    one.column = profile.columns[next];
    set_leg(profile, one);
    for (std::size_t k = 0; k < layers.size(); ++k)
      if (std::ranges::any_of(layers[k], [&](const Extent& e) { return e.from < middle && middle < e.to; }))
        one.reach = std::max(one.reach, wall.layers[k].length.metres().si());
    found.push_back(one);
  }
  return found;
}

std::optional<Pad> pad(const plan::Job& job, const plan::Wall& wall) {
  const catalogue::BuildUp* build_up =
      wall.stone && !wall.stone->build_up.empty() ? job.catalogue->build_up(wall.stone->build_up) : nullptr;
  if (!build_up) return std::nullopt;
  Pad made{build_up, 0, 0, true, 0};
  bool any = false;
  for (const catalogue::Layer& layer : build_up->layers) {
    const catalogue::Item* item = job.catalogue->item(layer.item);
    if (!is_stone(layer) || !item) continue;
    made.thickness +=
        layer.thickness.value_or(job.catalogue->length_limit("wall-pad", units::Length::inches(6))).metres().si();
    made.past = layer.past_edge.metres().si();
    made.open = made.open && catalogue::open_graded(*item);
    made.porosity = item->number("porosity").value_or(0);
    any = true;
  }
  made.open = made.open && any;
  return made;
}

Behind behind(const plan::Job& job, const plan::Wall& wall, const Blocks& blocks) {
  Behind made;
  made.depth = blocks.block.depth;
  if (!wall.stone) return made;
  const plan::WallStone& stone = *wall.stone;
  if (!stone.drain.empty())
    made.stone_depth =
        stone.drain_depth.value_or(job.catalogue->length_limit("wall-stone", units::Length::inches(12))).metres().si();
  made.soil_cap =
      stone.soil_cap.value_or(job.catalogue->length_limit("wall-soil-cap", units::Length::inches(8))).metres().si();
  const catalogue::Item* fill = stone.fill.empty() ? nullptr : job.catalogue->item(stone.fill);
  made.clean_fill = fill && catalogue::open_graded(*fill);
  return made;
}

Section section(const Profile& profile, const Behind& behind, const Stretch& stretch) {
  Section made;
  const double whole = stretch.column.courses() * profile.course_height;
  made.cap = std::min(behind.soil_cap, whole);
  made.height = whole - made.cap;
  const double zone = std::max(0.0, stretch.reach - behind.depth);
  const bool swallowed = behind.clean_fill && zone > behind.stone_depth;
  made.column = swallowed ? 0 : behind.stone_depth;
  made.fill = std::max(0.0, zone - made.column);
  const double stone = made.column + (behind.clean_fill ? made.fill : 0);
  if (stone > 0 && made.height > 0) made.girth = made.height + stone;
  return made;
}

Working length_of(const plan::Job& job, const std::vector<Stretch>& alike, const plan::ElementId& of) {
  double sum = 0;
  bool whole = true;  // without gaps
  for (std::size_t i = 0; i < alike.size(); ++i) {
    sum += alike[i].length();
    whole = whole && (i == 0 || alike[i].from < alike[i - 1].to + hair);
  }
  const std::string place = between(job, alike.front().from, alike.back().to);
  return term(whole ? "length, " + place : "length of alike parts within " + place, sum, units::metre, of);
}

void add_stone(const plan::Job& job, const catalogue::Id& id, const std::string& text, const plan::ElementId& of,
               const Working& volume, const catalogue::Id& rate, Share& share) {
  if (volume.amount().value <= 0) return;
  const catalogue::Item* item = edges::wanted(job, id, "the " + text, of, share);
  if (!item) return;
  if (item->kind != "aggregate") {
    share.lines.push_back({Stage::wall, id, text, {of}, volume, {}, false});
    return;
  }
  const auto density = item->number("compacted_density_kg_m3");
  if (!density || *density <= 0) {
    share.problems.push_back(edges::fault(
        "density-missing", "'" + id + "' has no placed density, so the weight of the " + text + " can't be worked out",
        "give compacted_density_kg_m3 in the catalogue", of));
    return;
  }
  const Working weight = Working::product(
      {volume, term("placed density", *density, units::kilogram_per_cubic_metre, id + "/compacted_density_kg_m3")});
  share.lines.push_back({Stage::wall, id, text, {of}, weight, {}, false});
  if (!rate.empty())
    edges::add_task(job, rate, Stage::wall, text, of,
                    Working(term("stone placed", weight.amount().value, units::kilogram, of)), share);
}

std::string volume_in_words(const plan::Job& job, double cubic_metres) {
  if (job.heading.units == units::System::us)
    return units::show_number(cubic_metres / units::cubic_metres_per_cubic_yard, 2) + " cu yd";
  return units::show_number(cubic_metres, 2) + " m3";
}

}  // namespace takeoff::walls
