#include "takeoff/walls/stone.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "takeoff/edges/notes.h"
#include "takeoff/walls/words.h"
#include "takeoff/walls/zone.h"

namespace takeoff::walls {

namespace {

using edges::notice;

// Base of the wall, layer by layer.
struct Base {
  const plan::Job& job;
  const plan::ElementId& id;
  const Profile& profile;
  double depth = 0;
  Share share;

  Working wide(const catalogue::BuildUp& build_up, const catalogue::Layer& layer) const {
    return Working::sum({term("depth of the block", depth, units::metre, id),
                         term("past front and back", 2 * layer.past_edge.metres().si(), units::metre,
                              build_up.id + "/past_edge")})
        .named("width");
  }

  Working drawn() const { return term("length as drawn", profile.length, units::metre, id); }

  std::string in_lifts(const catalogue::Layer& layer, double thickness) const {
    if (!layer.lift || layer.lift->steps() <= 0) return "";
    const int count = static_cast<int>(std::ceil(thickness / layer.lift->metres().si() - 1e-9));
    return count > 1 ? ", in " + std::to_string(count) + " lifts" : "";
  }

  std::optional<Working> layer(const catalogue::BuildUp& build_up, const catalogue::Layer& layer) {
    if (layer.role == "fabric") {
      sheet(build_up, layer);
      return std::nullopt;
    }
    const units::Length thick =
        layer.thickness.value_or(job.catalogue->length_limit("wall-pad", units::Length::inches(6)));
    const double thickness = thick.metres().si();
    const Working volume =
        Working::product({drawn(), wide(build_up, layer),
                          term("thickness", thickness, units::metre, build_up.id + "/" + layer.role)})
            .named("placed volume of the " + layer.role);
    add_stone(job, layer.item, "leveling base of the wall" + in_lifts(layer, thickness), id, volume, {}, share);
    return volume;
  }

  // Along the trench; what is wider than the roll laps.
  void sheet(const catalogue::BuildUp& build_up, const catalogue::Layer& layer) {
    const catalogue::Item* item = edges::wanted(job, layer.item, "the fabric under the base", id, share);
    if (!item) return;
    const Working area = Working::product({drawn(), wide(build_up, layer)}).named("under the base");
    share.lines.push_back({Stage::wall, item->id, "fabric under the wall base", {id}, area, {}, true});
  }

  void all(const catalogue::BuildUp& build_up) {
    std::vector<Working> volumes;
    for (const catalogue::Layer& one : build_up.layers)
      if (auto volume = layer(build_up, one)) volumes.push_back(std::move(*volume));
    if (volumes.empty()) return;
    share.measures.put("leveling_base_m3", Working::sum(std::move(volumes)).amount().value);
    edges::add_task(job, "wall-base", Stage::wall, "leveling base of the wall", id, drawn(), share);
  }
};

Share base(const plan::Job& job, const plan::ElementId& id, const plan::Wall& wall, const Profile& profile,
           const Blocks& blocks) {
  Base made{job, id, profile, blocks.block.depth, {}};
  if (!wall.stone || wall.stone->build_up.empty()) {
    made.share.problems.push_back(notice("wall-no-base", "no leveling base is chosen, so none is in the takeoff",
                                         "choose a build-up of use wall-base", id));
    return std::move(made.share);
  }
  const catalogue::BuildUp* build_up = job.catalogue->build_up(wall.stone->build_up);
  if (build_up) {
    made.all(*build_up);
  } else {
    made.share.problems.push_back(edges::fault(
        "build-up-unknown", "the job's catalogue has no build-up '" + wall.stone->build_up + "' for the leveling base",
        "choose one that it has, or copy it in", id));
  }
  return std::move(made.share);
}

const Unit& unit_of(const Blocks& blocks, const Laid& laid) {
  const std::optional<Unit>* own = nullptr;
  if (laid.make == Make::half) own = &blocks.half;
  if (laid.make == Make::corner) own = &blocks.corner;
  if (laid.make == Make::end) own = &blocks.end;
  if (own && *own) return **own;
  return laid.curved && blocks.curve ? *blocks.curve : blocks.block;
}

// How many of one kind lie in the wall, cut ones as their share of its face.
struct Kind {
  const Unit* unit = nullptr;
  double uncut = 0;
  double cut = 0;
};

std::vector<Kind> kinds(const Blocks& blocks, const Courses& courses) {
  std::vector<Kind> found;
  for (const auto& bay : courses.bays)
    for (const Run& run : bay->runs)
      for (const Laid& laid : run.units) {
        if (laid.again) continue;
        const Unit& unit = unit_of(blocks, laid);
        auto known = std::ranges::find(found, &unit, &Kind::unit);
        if (known == found.end()) known = found.insert(found.end(), Kind{&unit, 0, 0});
        if (laid.make != Make::cut) {
          known->uncut += 1;
        } else if (unit.length > 0) {
          known->cut += std::min(1.0, laid.length / unit.length);
        }
      }
  return found;
}

Working core(const plan::ElementId& id, const Blocks& blocks, const Courses& courses) {
  std::vector<Working> parts;
  for (const Kind& kind : kinds(blocks, courses)) {
    if (kind.unit->core <= 0) continue;
    const std::string name = kind.unit->item ? kind.unit->item->id : "block";
    const Term voids = term("voids of one", kind.unit->core, units::cubic_metre, name + "/core_void_share");
    if (kind.uncut > 0) parts.push_back(Working::product({term(name + " uncut", kind.uncut, units::piece, id), voids}));
    if (kind.cut > 0)
      parts.push_back(Working::product({term(name + " cut, by their share", kind.cut, units::piece, id), voids}));
  }
  if (parts.empty()) return term("core", 0, units::cubic_metre);
  return Working::sum(std::move(parts)).named("core");
}

// Where the legs part a run: metres of its own line from its start, and the turn of an arc.
struct LegPart {
  double from = 0;
  double to = 0;
  double radius = 0;  // of the course, signed; 0 straight
  double turn = 0;    // radians
};

std::vector<LegPart> leg_parts(const Bay& bay, const Run& run, double back, const Blocks& blocks, bool free_standing) {
  std::vector<LegPart> parts;
  double at = 0;
  for (const Leg& leg : bay.legs) {
    const double drawn = std::min(leg.to, run.to) - std::max(leg.from, run.from);
    if (drawn < 1e-9) continue;
    LegPart part{at, at, 0, 0};
    double length = drawn;
    if (leg.radius != 0) {
      part.turn = drawn / std::abs(leg.radius);
      part.radius = leg.radius - back;
      const bool outer_is_longer = free_standing && leg.radius < 0;
      length = part.turn * (std::abs(part.radius) + (outer_is_longer ? blocks.block.depth : 0));
    }
    part.to = at += length;
    parts.push_back(part);
  }
  if (parts.empty()) return parts;
  // A corner at the start has shortened or lengthened the run there, or hides some of it behind the other leg.
  double at_start = 0;
  if (run.from < bay.legs.front().from + 1e-9) {
    at_start = -back * std::tan(std::clamp(bay.before, -3.0, 3.0) / 2);
    if (bay.before < 0 && bay.legs.back().corner >= 0) at_start += run.hidden;
  }
  for (LegPart& part : parts) {
    part.from += at_start;
    part.to += at_start;
  }
  parts.front().from = -1;
  parts.back().to = std::numeric_limits<double>::infinity();
  return parts;
}

// Plan area of the wedges of one course's part between its units.
double wedge_area(const LegPart& part, const Run& run, const Blocks& blocks) {
  const double depth = blocks.block.depth;
  double tapers = 0;  // what tapered units leave open
  double units = 0;   // what all units cover
  for (const Laid& laid : run.units) {
    const double middle = laid.from + laid.length / 2;
    if (middle < part.from || middle >= part.to) continue;
    const Unit& unit = unit_of(blocks, laid);
    const double own = std::min(unit.depth > 0 ? unit.depth : depth, depth);
    const double back = unit.length > 0 && unit.back > 0 ? unit.back / unit.length : 1;
    tapers += laid.length * (1 - back) / 2 * own;
    units += laid.length * (1 + back) / 2 * own;
  }
  if (part.radius == 0 || units == 0) return std::max(0.0, tapers);
  const double face = std::abs(part.radius);
  const double far = part.radius > 0 ? std::max(0.0, face - depth) : face + depth;
  return std::max(0.0, part.turn * std::abs(far * far - face * face) / 2 - units);
}

Working wedges(const plan::ElementId& id, const plan::Wall& wall, const Profile& profile, const Blocks& blocks,
               const Courses& courses) {
  std::vector<double> areas(static_cast<std::size_t>(std::max(0, profile.courses)), 0);
  for (const auto& bay : courses.bays)
    for (const Run& run : bay->runs) {
      if (run.course < 0 || run.course >= profile.courses) continue;
      for (const LegPart& part : leg_parts(*bay, run, run.course * blocks.block.setback, blocks, wall.free_standing))
        areas[static_cast<std::size_t>(run.course)] += wedge_area(part, run, blocks);
    }
  std::vector<Working> parts;
  for (std::size_t i = 0; i < areas.size(); ++i)
    if (areas[i] > 1e-9)
      parts.push_back(term("between the units of " + course(static_cast<int>(i)), areas[i], units::square_metre, id));
  if (parts.empty()) return term("wedges", 0, units::cubic_metre);
  return Working::product({Working::sum(std::move(parts)).named("plan area"),
                           term("course", profile.course_height, units::metre, id)})
      .named("wedges");
}

Share inside(const plan::Job& job, const plan::ElementId& id, const plan::Wall& wall, const Profile& profile,
             const Blocks& blocks, const Courses& courses) {
  Share share;
  const Working voids = core(id, blocks, courses);
  const Working between_units = wedges(id, wall, profile, blocks, courses);
  if (voids.amount().value + between_units.amount().value <= 0) return share;
  const bool chosen = wall.stone && !(wall.stone->core.empty() && wall.stone->drain.empty());
  if (!chosen) {
    share.problems.push_back(notice("wall-no-core",
                                    volume_in_words(job, voids.amount().value + between_units.amount().value) +
                                        " of voids in and between the blocks have nothing to fill them",
                                    "choose a stone for the core", id));
    return share;
  }
  share.measures.put("core_fill_m3", voids.amount().value);
  share.measures.put("wedges_m3", between_units.amount().value);
  add_stone(job, wall.stone->core.empty() ? wall.stone->drain : wall.stone->core, "core and wedges of the blocks", id,
            Working::sum({voids, between_units}), "wall-stone", share);
  return share;
}

}  // namespace

Share stone(const plan::Job& job, const plan::Ground& ground, const Profile& profile, const Blocks& blocks,
            const Courses& courses) {
  Share share;
  const auto* wall = std::get_if<plan::Wall>(&ground.element->kind);
  if (!wall || profile.columns.empty()) return share;
  const plan::ElementId& id = ground.element->id;
  share.add(base(job, id, *wall, profile, blocks));
  share.add(inside(job, id, *wall, profile, blocks, courses));
  if (!wall->free_standing && (!wall->stone || wall->stone->drain.empty()))
    share.problems.push_back(notice("wall-no-stone",
                                    "no drainage stone is chosen, so none stands behind the wall in the takeoff",
                                    "choose a stone for the column", id));
  share.add(behind_the_blocks(job, id, *wall, profile, blocks));
  share.measures.element = id;
  return share;
}

}  // namespace takeoff::walls
