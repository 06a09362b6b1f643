#include <algorithm>
#include <cmath>
#include <limits>

#include "geometry/overlay.h"
#include "takeoff/edges/weeps.h"
#include "takeoff/ground/ways.h"
#include "units/number.h"

namespace takeoff::ground {

using problem::Severity;

namespace {

// One connected body of open-graded stone: its layers share areas and build-up.
struct Stone {
  std::vector<plan::ElementId> of;
  plan::Id build_up;
  double formation = 0;  // metres below the finished surface: the underside of the lowest open layer
  double porosity = 1;
  geometry::Region footprint;
  std::optional<double> low;  // height of the lowest place of its formation, where the areas have levels
};

// The lowest place of the finished surfaces of these areas; nothing where one of them has none.
std::optional<double> lowest(const std::vector<plan::ElementId>& areas, const levels::Terrain& terrain) {
  double low = std::numeric_limits<double>::infinity();
  for (const plan::ElementId& id : areas) {
    const auto surface = terrain.finished.find(id);
    if (surface == terrain.finished.end()) return {};
    for (const geometry::Facet& facet : surface->second->facets())
      for (const geometry::Vec corner : facet.ring) low = std::min(low, facet.plane.at(corner));
  }
  return low;
}

std::vector<Stone> stones(const plan::Job& job, const Bodies& bodies, const levels::Terrain& terrain) {
  std::vector<Stone> found;
  for (const Body& body : bodies.bodies) {
    if (!body.open || body.thickness <= 0) continue;
    const auto known = std::ranges::find_if(
        found, [&body](const Stone& stone) { return stone.of == body.of && stone.build_up == body.build_up; });
    Stone& stone = known == found.end() ? found.emplace_back() : *known;
    if (body.top + body.thickness < stone.formation) continue;
    stone = {body.of,
             body.build_up,
             body.top + body.thickness,
             job.catalogue->item(body.layer.item)->number("porosity").value_or(1),
             body.footprint,
             {}};
  }
  for (Stone& stone : found)
    if (const auto low = lowest(stone.of, terrain)) stone.low = *low - stone.formation;
  return found;
}

// A way for water out of the stone: how far below the finished surface its sill lies, and how high, where the stone has
// levels.
struct Out {
  std::string what;
  double sill = 0;
  std::optional<double> height;
  bool level_known = true;
  bool rain = true;  // false: damp only, as through a cord left in its hole
};

struct Finder {
  const plan::Job& job;
  const plan::Site& site;
  const levels::Terrain& terrain;
  const Stone& stone;
  std::vector<Out> ways;
  Share share;

  void find() {
    for (const auto& ground : site.grounds) {
      if (const auto* run = std::get_if<plan::EdgeRun>(&ground->element->kind)) kerb(*ground, *run);
      if (const auto* drain = std::get_if<plan::DrainRun>(&ground->element->kind)) pipe(*ground, *drain);
    }
    judge();
  }

  bool touches(const plan::Ground& kerb) const {
    return std::ranges::any_of(stone.of, [&](const plan::ElementId& id) {
      const plan::Ground* area = site.find(id);
      return std::ranges::any_of(area->stretches, [&](const auto& s) { return s.other == kerb.element->id; });
    });
  }

  bool sealed() const {
    return std::ranges::any_of(stone.of, [&](const plan::ElementId& id) {
      const auto* area = std::get_if<plan::PavedArea>(&site.find(id)->element->kind);
      const catalogue::Item* fill =
          area && !area->joint_fill.empty() ? job.catalogue->item(area->joint_fill.front().item) : nullptr;
      return fill && fill->kind != "joint-chips";
    });
  }

  // Nothing gets in from above that would have to get out.
  bool all_sealed() const {
    return std::ranges::all_of(stone.of, [&](const plan::ElementId& id) {
      const auto* area = std::get_if<plan::PavedArea>(&site.find(id)->element->kind);
      const catalogue::Item* fill =
          area && !area->joint_fill.empty() ? job.catalogue->item(area->joint_fill.front().item) : nullptr;
      return fill && fill->kind != "joint-chips";
    });
  }

  // A weep that sits on the kerb's footing drains only what is above it: the footing is a dam.
  void kerb(const plan::Ground& ground, const plan::EdgeRun& run) {
    if (run.what != "kerb" || !touches(ground)) return;
    if (sealed() && run.upstand > units::Length() && !run.weeps)
      say(Severity::problem, "kerb-dams-the-surface",
          "kerb " + ground.element->id + " stands " + units::show_length(run.upstand, job.heading.units) +
              " proud of a sealed surface and has no opening, so rain is dammed",
          "make openings at surface level, or set the kerb flush", ground.element->id);
    if (!run.weeps) return;
    const catalogue::Item* item = job.catalogue->item(run.item);
    const double height = item && item->height ? item->height->metres().si() : 0;
    const double under_the_kerb = height - run.upstand.metres().si();
    const double sill = run.footing ? under_the_kerb : stone.formation;
    const auto beside = stone.low ? lowest_along(site, terrain, stone.of, ground.element->id) : std::nullopt;
    const auto high = beside ? std::optional(*beside - sill) : std::nullopt;
    ways.push_back({"weeps of " + ground.element->id, sill, high, true, edges::rain_passes(job, *run.weeps)});
    if (high) outside(ground, sill);
  }

  // Water does not leave into ground that stands higher. Only the ground as it lies is known there.
  void outside(const plan::Ground& ground, double sill) {
    const auto above = highest_outside(site, terrain, stone.of, ground, sill);
    if (!above) return;
    say(Severity::flag, "weep-buried",
        "the ground outside " + ground.element->id + " stands up to " + depth_in_words(above->by) +
            " over the sill of its weeps as it lies now",
        "grade it down there below the weeps, or give the water another way", ground.element->id, above->at);
  }

  void pipe(const plan::Ground& ground, const plan::DrainRun& drain) {
    const catalogue::Item* item = job.catalogue->item(drain.item);
    if (!ground.path || drain.what != "pipe" || !item) return;
    const auto holes = item->details.find("perforated");
    if (holes == item->details.end() || holes->second != "yes") return;
    const auto found = lowest_inside(job, *ground.path, drain, stone.footprint);
    if (!found) return;
    const std::string what = "pipe " + ground.element->id;
    if (stone.low && found->invert)
      ways.push_back({what, 0, found->invert, true, true});
    else
      ways.push_back({what, stone.formation, {}, false, true});
  }

  // How deep water stands in the stone below its lowest way out: by heights where all are known, else by depths below
  // the surface.
  double dead_depth() const {
    double deepest = 0, lowest_sill = std::numeric_limits<double>::infinity();
    for (const Out& way : ways) {
      deepest = std::max(deepest, way.sill);
      if (way.height) lowest_sill = std::min(lowest_sill, *way.height);
    }
    if (stone.low && std::ranges::all_of(ways, [](const Out& way) { return way.height.has_value(); }))
      return std::max(0.0, lowest_sill - *stone.low);
    return std::max(0.0, stone.formation - deepest);
  }

  void judge() {
    const bool soaks = job.choices.infiltration_counts && job.choices.infiltration_m_s > 0;
    const bool rain_gets_out = std::ranges::any_of(ways, &Out::rain);
    if (!rain_gets_out && !soaks) {
      if (ways.empty() || !all_sealed()) return bath();
      damp_only();
    }
    // Where something lets rain out, the cords beside it count for nothing.
    if (rain_gets_out || soaks) std::erase_if(ways, [](const Out& way) { return !way.rain; });
    const double dead = dead_depth();
    const double allowed = job.catalogue->length_limit("dead-depth", units::Length()).metres().si();
    if (soaks) return draw_down(ways.empty() ? stone.formation : dead);
    if (dead > allowed + 1e-9)
      say(Severity::problem, "dead-depth",
          depth_in_words(dead) + " of the stone under " + named() + " lies below the lowest way out and stays full",
          "carry the kerb's footing on the stone with openings below it, or lay a pipe at the formation",
          stone.of.front());
    if (std::ranges::any_of(ways, [](const Out& way) { return !way.level_known; }))
      say(Severity::notice, "way-out-level",
          "a pipe takes the water out of the stone under " + named() + "; its level is not checked without levels",
          "hold its invert at the formation or below, falling to its outlet", stone.of.front());
  }

  void bath() {
    const std::string how = ways.empty() ? " has no way out for water: it fills like a bath"
                                         : " takes rain through its joints and has only cords that pass damp to let it "
                                           "out: it fills like a bath";
    say(Severity::problem, "no-way-out", "the open stone under " + named() + how,
        "give the kerb open weeps at the formation, lay a perforated pipe below, daylight the stone, or enter a "
        "measured infiltration",
        stone.of.front());
  }

  void damp_only() {
    say(Severity::flag, "way-out-damp-only",
        "only cords that pass damp lead out of the stone under " + named() + "; nothing lets rain out that gets in",
        "add open joints, tubes, holes or strips at the formation, or a perforated pipe below", stone.of.front());
  }

  // Dead depth x porosity / rate: the water must be gone within the limit (48 h; 48 to 72 h in stormwater manuals, from
  // memory).
  void draw_down(double depth) {
    const double hours = depth * stone.porosity / job.choices.infiltration_m_s / 3600;
    const double most = job.catalogue->number_limit("draw-down", 48);
    if (hours <= most) return;
    say(Severity::problem, "draw-down",
        "water in the stone under " + named() + " needs " + units::show_number(hours, 0) + " h to soak away, over " +
            units::show_number(most, 0) + " h",
        "lay a pipe at the formation", stone.of.front());
  }

  std::string depth_in_words(double metres) const {
    return units::show_length(units::Length::nearest(units::Metres(metres)), job.heading.units);
  }

  std::string named() const {
    std::string text;
    for (const plan::ElementId& id : stone.of) text += (text.empty() ? "" : ", ") + id;
    return text;
  }

  void say(Severity severity, std::string code, std::string text, std::string mend, const plan::ElementId& element,
           std::optional<geometry::Point> at = {}) {
    share.problems.push_back({severity, std::move(code), std::move(text), std::move(mend), {element, "", 0, 0, {}}});
    if (at) share.problems.back().place.at = geometry::xy(*at);
  }
};

}  // namespace

Share way_out(const plan::Job& job, const plan::Site& site, const Bodies& bodies, const levels::Terrain& terrain) {
  Share share;
  const std::vector<Stone> all = stones(job, bodies, terrain);
  for (const Stone& stone : all) {
    Finder finder{job, site, terrain, stone, {}, {}};
    finder.find();
    share.add(std::move(finder.share));
  }
  return share;
}

}  // namespace takeoff::ground
