#include <algorithm>

#include "takeoff/edges/notes.h"
#include "takeoff/walls/courses.h"

namespace takeoff::walls {

namespace {

constexpr double least_size = 0.02;  // metres: less is a typing error

std::optional<std::string> wrong_with(const catalogue::Item& item, const Unit& unit) {
  if (!item.length || unit.length <= 0) return "has no length";
  if (!item.width || unit.depth <= 0) return "has no depth";
  if (!item.height || unit.height <= 0) return "has no height";
  if (std::min({unit.length, unit.depth, unit.height}) < least_size)
    return "is under 20 mm (3/4 in) long, deep or high, and nobody lays a wall of that";
  if (unit.back <= 0 || unit.back > unit.length) return "has a back face that is not between 0 and its front face";
  if (unit.setback < 0) return "has a setback below 0";
  if (unit.setback >= unit.depth)
    return "has a setback that is not under its depth, so no course would rest on another";
  return std::nullopt;
}

double metres(const std::optional<units::Length>& length, double otherwise = 0) {
  return length ? length->metres().si() : otherwise;
}

}  // namespace

std::optional<Unit> unit(const plan::Job& job, const catalogue::Id& id, const std::string& use,
                         const plan::ElementId& of, Share& share) {
  const catalogue::Item* item = edges::wanted(job, id, use, of, share);
  if (!item) return std::nullopt;
  Unit made;
  made.item = item;
  made.length = metres(item->length);
  made.depth = metres(item->width);
  made.height = metres(item->height);
  made.back = metres(item->length_of("back_length_mm"), made.length);
  made.setback = metres(item->length_of("setback_mm"));
  if (const auto wrong = wrong_with(*item, made)) {
    share.problems.push_back(edges::fault("wall-block", "the item " + id + ", chosen for " + use + ", " + *wrong,
                                          "enter its sizes in the catalogue, or choose another block", of));
    return std::nullopt;
  }
  // The share is of the block's own outline, taper taken off.
  const double outline = (made.length + made.back) / 2 * made.depth * made.height;
  const double voids = item->number("core_void_share").value_or(item->void_share.value_or(0));
  made.core = item->number("core_void_m3").value_or(voids * outline);
  made.mass = item->mass_kg.value_or(0);
  return made;
}

namespace {

std::optional<Unit> of_one_height(const plan::Job& job, const catalogue::Id& id, const std::string& use,
                                  const Unit& block, const plan::ElementId& of, Share& share) {
  if (id.empty()) return std::nullopt;
  const auto made = unit(job, id, use, of, share);
  if (!made) return std::nullopt;
  if (std::abs(made->height - block.height) < 1e-6) return made;
  share.problems.push_back(edges::fault("wall-block",
                                        "the item " + id + ", chosen for " + use + ", is " +
                                            edges::shown(job, made->height) + " high and the block " +
                                            edges::shown(job, block.height),
                                        "choose pieces of one height", of));
  return std::nullopt;
}

}  // namespace

std::optional<Blocks> chosen_blocks(const plan::Job& job, const plan::Wall& wall, const plan::ElementId& of,
                                    Share& share) {
  const auto block = unit(job, wall.block, "the blocks of the wall", of, share);
  if (!block) return std::nullopt;
  Blocks made{*block, {}, {}, {}, {}};
  made.curve = of_one_height(job, wall.curve_block, "the blocks on curves", *block, of, share);
  made.half = of_one_height(job, wall.half_block, "the half blocks", *block, of, share);
  made.corner = of_one_height(job, wall.corner_block, "the corners", *block, of, share);
  made.end = of_one_height(job, wall.end_block, "the ends", *block, of, share);
  return made;
}

LayRules lay_rules(const plan::Job& job, const plan::Wall& wall, const Blocks& blocks) {
  const auto bond = job.catalogue->limits.find("wall-bond");
  const double least = bond == job.catalogue->limits.end() ? 0.25 : bond->second.least.value_or(0.25);
  LayRules rules;
  rules.least_overlap = std::clamp(wall.least_overlap.value_or(least), 0.0, 0.5);  // no joint is further from two
  rules.sliver = std::max(job.choices.sliver_share * blocks.block.length, job.choices.sliver_width.metres().si());
  rules.kerf = std::max(0.0, job.choices.kerf.metres().si());
  rules.free_standing = wall.free_standing;
  rules.depth = blocks.block.depth;
  rules.start_shows = wall.start_end == plan::Wall::End::free;
  rules.finish_shows = wall.finish_end == plan::Wall::End::free;
  rules.joint_on_curves = edges::limit_inches(job, "wall-joint", edges::Bound::greatest, 0.25);
  rules.system = job.heading.units;
  return rules;
}

double least_radius(const Unit& unit, double joint) {
  const double taper = unit.length - unit.back;
  const double by_shape =
      taper > 0 ? unit.length * unit.depth / taper : (unit.length + joint) * unit.depth / std::max(joint, 1e-6);
  const auto given = unit.item ? unit.item->length_of("min_outside_radius_mm") : std::nullopt;
  return std::max(by_shape, metres(given));
}

}  // namespace takeoff::walls
