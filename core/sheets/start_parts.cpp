#include "sheets/start_parts.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <utility>

#include "sheets/numbered.h"
#include "sheets/pallet_plan.h"
#include "sheets/parts.h"
#include "sheets/source.h"
#include "takeoff/setting_out/drawings.h"
#include "takeoff/setting_out/tapes.h"

namespace sheets {

using takeoff::setting_out::SettingOut;

namespace {

const plan::Laying* laying_of(const Printed& printed, const plan::ElementId& area) {
  const plan::Element* element = printed.job().find(area);
  const auto* paved = element ? std::get_if<plan::PavedArea>(&element->kind) : nullptr;
  return paved && paved->laying ? &*paved->laying : nullptr;
}

const plan::BaseLine* base_line(const Printed& printed, const SettingOut& out) {
  const plan::Element* element = printed.job().find(out.base_line);
  return element ? std::get_if<plan::BaseLine>(&element->kind) : nullptr;
}

double apart(geometry::Point a, geometry::Point b) { return geometry::length(a - b) / units::Length::steps_per_metre; }

Table by_base_line(const Printed& printed, const plan::ElementId& area, geometry::Point start,
                   const plan::BaseLine& line) {
  const std::string from = of_element(area, "start");
  const auto place = takeoff::setting_out::station(geometry::xy(line.from), geometry::xy(line.to), geometry::xy(start));
  const std::string side = std::abs(place.out) < 0.0005 ? "on it" : place.out > 0 ? "left of it" : "right of it";
  const auto said = [&](double metres) { return Said(length_words(printed, metres), from); };
  return {{{printed.say("Along the base line"), Align::right, 0.22},
           {printed.say("Out from it"), Align::right, 0.18},
           {printed.say("Side"), Align::left, 0.2},
           {printed.say("Tie from its start"), Align::right, 0.2},
           {printed.say("Tie from its end"), Align::right, 0.2}},
          {{{said(place.along), said(std::abs(place.out)), printed.say(side), said(apart(start, line.from)),
             said(apart(start, line.to))}}}};
}

// Without a base line: taped from the two corners of the area that lie nearest.
std::optional<Table> by_corners(const Printed& printed, const plan::ElementId& area, geometry::Point start) {
  const plan::Ground* ground = printed.results->site.find(area);
  if (!ground) return std::nullopt;
  Table table{{{printed.say("Tied from"), Align::left, 0.6}, {printed.say("Tape"), Align::right, 0.4}}, {}};
  std::vector<std::pair<double, int>> corners;
  for (const auto& drawn : takeoff::setting_out::drawings(*ground))
    for (std::size_t i = 0; i < drawn.curves.size(); ++i)
      corners.emplace_back(apart(start, drawn.curves[i].start), drawn.first_corner + static_cast<int>(i));
  std::ranges::sort(corners);
  for (std::size_t i = 0; i < std::min<std::size_t>(2, corners.size()); ++i)
    table.rows.push_back({{filled(printed, "corner %1 of %2", {std::to_string(corners[i].second), area}),
                           {length_words(printed, corners[i].first), of_element(area, "start")}}});
  return table.rows.empty() ? std::nullopt : std::optional(std::move(table));
}

// Which way the rows run, against the base line or else the plan's east.
std::string direction_words(const Printed& printed, const takeoff::paving::Lattice& lattice,
                            const plan::BaseLine* line) {
  constexpr double none = 0.05;  // degrees
  double turn = std::atan2(lattice.sine, lattice.cosine);
  if (line) {
    const geometry::Vec way = line->to - line->from;
    turn -= std::atan2(way.y, way.x);
  }
  double degrees = std::fmod(turn * 180 / std::numbers::pi, 180);
  if (degrees < 0) degrees += 180;
  if (degrees > 90) degrees -= 180;
  const bool left = degrees > 0;
  degrees = std::abs(degrees);
  if (degrees < none)
    return printed.say(line ? "The rows run along the base line." : "The rows run along the plan's east.");
  if (degrees > 90 - none)
    return printed.say(line ? "The rows run square to the base line." : "The rows run square to the plan's east.");
  const std::string number = number_words(printed, std::round(degrees * 100) / 100);
  if (line)
    return filled(printed,
                  left ? "The rows are turned %1° to the left of the base line."
                       : "The rows are turned %1° to the right of the base line.",
                  {number});
  return filled(printed,
                left ? "The rows are turned %1° to the left of the plan's east."
                     : "The rows are turned %1° to the right of the plan's east.",
                {number});
}

// Thickness of what lies over the bedding, and over the base.
struct Above {
  double bedding = 0;
  double base = 0;
};
std::optional<Above> above(const Printed& printed, const plan::ElementId& area) {
  const plan::Element* element = printed.job().find(area);
  const auto* paved = element ? std::get_if<plan::PavedArea>(&element->kind) : nullptr;
  const catalogue::BuildUp* build_up = paved ? printed.job().catalogue->build_up(paved->build_up) : nullptr;
  if (!build_up) return std::nullopt;
  Above made;
  bool unit = false;
  for (const catalogue::Layer& layer : build_up->layers) {
    double thickness = layer.thickness ? layer.thickness->metres().si() : 0;
    if (layer.role == "unit") {
      const catalogue::Item* item = paved->laying && !paved->laying->units.empty()
                                        ? printed.job().catalogue->item(paved->laying->units.begin()->second)
                                        : nullptr;
      if (item && item->height) thickness = item->height->metres().si();
      made.bedding = made.base = thickness;
      unit = thickness > 0;
    } else if (layer.role == "bedding" || layer.role == "mortar") {
      made.base += thickness;
    } else if (layer.role == "base" || layer.role == "slab" || layer.role == "sub-base") {
      break;
    }
  }
  return unit ? std::optional(made) : std::nullopt;
}

}  // namespace

std::vector<Block> start_point(const Printed& printed, const plan::ElementId& area, const SettingOut& out) {
  const plan::Laying* laying = laying_of(printed, area);
  const auto laid = printed.results->takeoff.layouts.find(area);
  if (!laying || laid == printed.results->takeoff.layouts.end() || !laid->second) return {};
  const plan::BaseLine* line = base_line(printed, out);
  std::vector<Block> blocks;
  if (line)
    blocks.emplace_back(by_base_line(printed, area, laying->start, *line));
  else if (auto table = by_corners(printed, area, laying->start))
    blocks.emplace_back(*std::move(table));
  blocks.emplace_back(Paragraph{{direction_words(printed, laid->second->lattice, line), of_element(area, "direction")},
                                Paragraph::Kind::strong});
  return blocks;
}

std::optional<Table> level_table(const Printed& printed, const plan::ElementId& area, const SettingOut& out,
                                 const takeoff::levels::Terrain& terrain) {
  const auto layers = above(printed, area);
  const plan::Laying* laying = laying_of(printed, area);
  const units::System system = printed.job().heading.units;
  Table table{{{printed.say("Level at"), Align::left, 0.32},
               {printed.say("Finish"), Align::right, 0.17},
               {printed.say("Top of bedding"), Align::right, 0.17},
               {printed.say("Top of base"), Align::right, 0.17},
               {printed.say("Formation"), Align::right, 0.17}},
              {}};
  const auto add = [&](const std::string& where, double finish, std::optional<double> formation,
                       const std::string& from) {
    const auto said = [&](double height) { return Said(show_height(height, system), from); };
    table.rows.push_back({{where, said(finish), layers ? said(finish - layers->bedding) : Said(),
                           layers ? said(finish - layers->base) : Said(), formation ? said(*formation) : Said()}});
  };
  const auto surface = terrain.finished.find(area);
  if (laying && surface != terrain.finished.end() && surface->second)
    if (const auto height = surface->second->height(laying->start))
      add(printed.say("start point"), *height, std::nullopt,
          counted_here("finished surface of " + area + " at its start point"));
  for (std::size_t i = 0; i < out.stakes.size(); ++i)
    if (const auto& stake = out.stakes[i]; stake.of == area && stake.finish)
      add(numbered(printed, stake.what), *stake.finish, stake.formation, of_setting_out("stake", i));
  return table.rows.empty() ? std::nullopt : std::optional(std::move(table));
}

std::optional<Table> first_pallets(const Printed& printed, const plan::ElementId& area) {
  constexpr int at_once = 3;
  Table table{{{printed.say("First pallets"), Align::left, 0.5},
               {printed.say("Open"), Align::left, 0.3},
               {printed.say("Pieces on each"), Align::right, 0.2}},
              {}};
  for (const estimate::OrderLine& line : printed.results->estimate.lines) {
    if (line.stage != takeoff::Stage::paving || !is_brought(printed, line)) continue;
    int left = at_once;
    std::string name = name_of(printed, line.item);
    for (const PalletRow& row : pallet_rows(printed, line)) {
      const bool here = std::ranges::find(row.parts, area, &PalletRow::Part::of) != row.parts.end();
      if (!here || left <= 0) continue;
      const int last = std::min(row.to, row.from + left - 1);
      left -= last - row.from + 1;
      const std::string from = of_line(printed, line);
      const std::string which =
          row.from == last ? filled(printed, "pallet %1", {std::to_string(row.from)})
                           : filled(printed, "pallets %1 to %2", {std::to_string(row.from), std::to_string(last)});
      table.rows.push_back({{std::exchange(name, ""), {which, from}, {number_words(printed, row.pieces), from}}});
    }
  }
  return table.rows.empty() ? std::nullopt : std::optional(std::move(table));
}

}  // namespace sheets
