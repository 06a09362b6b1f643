#include <algorithm>
#include <cmath>
#include <numbers>

#include "takeoff/edges/notes.h"
#include "takeoff/walls/checking.h"
#include "takeoff/walls/pressure.h"
#include "takeoff/walls/words.h"
#include "units/number.h"

namespace takeoff::walls {

using units::newton_per_cubic_metre;
using units::newton_per_metre;
using units::piece;

namespace {

// Strengths of an item, each only where it is one: reduction factors are 1 or more, and of the earth's own friction a
// layer gets its share.
struct Strengths {
  std::optional<double> tensile, creep, damage, durability, interaction, direct, joint, joint_most;
  double joint_degrees = 0;
};
constexpr const char* tension_details[] = {"tensile_strength_kn_m", "rf_creep", "rf_damage", "rf_durability"};

constexpr double any_strength = 1e6;  // kN/m: more is no roll's

std::optional<double> within(const catalogue::Item& item, const char* detail, double least, double most) {
  const std::optional<double> value = item.number(detail);
  return value && *value > 0 && *value >= least && *value <= most ? value : std::nullopt;
}

Strengths strengths(const catalogue::Item& item) {
  Strengths made;
  made.tensile = within(item, "tensile_strength_kn_m", 0, any_strength);
  made.creep = within(item, "rf_creep", 1, any_strength);
  made.damage = within(item, "rf_damage", 1, any_strength);
  made.durability = within(item, "rf_durability", 1, any_strength);
  made.interaction = within(item, "interaction", 0, 1);
  made.direct = within(item, "direct_sliding", 0, 1);
  made.joint = within(item, "connection_kn_m", 0, any_strength);
  made.joint_most = within(item, "connection_max_kn_m", 0, any_strength);
  made.joint_degrees = item.number("connection_deg").value_or(0);
  if (made.joint_degrees < 0 || made.joint_degrees >= 80) made.joint_degrees = 0;
  return made;
}

Working kilonewtons(const std::string& name, double value, const std::string& of) {
  return term(name, value * 1000, newton_per_metre, of);
}

// The layers of one slice and what they hold in.
class Layered {
 public:
  Layered(const Checking& all, const Slice& slice, Governing& into)
      : all_(all), slice_(slice), into_(into), entries_(all.entries) {
    double shortest = slice.layers.front()->length.metres().si();
    for (const plan::Reinforcement* layer : slice.layers) {
      shortest = std::min(shortest, layer->length.metres().si());
      up_.push_back((layer->on_course - slice.column.base) * all.course_height);
    }
    omega_ = std::atan(all.block.setback / all.course_height);
    mass_ = {slice.height, shortest, all.block.depth, omega_, *entries_.slope, entries_.infill->weight};
  }

  // False where no earth pressure can be worked out.
  bool outside() {
    if (!behind()) return false;
    const Stratum& fill = *entries_.infill;
    const Working length = term("shortest layer", mass_.length, units::metre, all_.id + "/layers");
    std::vector<Working> weights{Working::product(
        {term("weight of the " + fill.name, fill.weight, newton_per_cubic_metre, fill.of + "/density_kg_m3"),
         term("height", mass_.height, units::metre), length})};
    std::vector<Working> moments{Working::product(
        {weights[0], term("arm: half the length and half the lean", mass_.block().arm, units::metre)})};
    if (mass_.beta > 0) {
      const Weight slope = mass_.wedge();
      weights.push_back(term("slope on top", slope.force, newton_per_metre, all_.entries.of + "/back_slope_deg"));
      moments.push_back(Working::product({weights[1], term("its arm", slope.arm, units::metre)}));
    }
    Standing what{Working::sum(weights).named("weight of the mass"),
                  Working::sum(moments).named("righting moment"),
                  driving(*behind_, pushed_, *entries_.retained, mass_.behind(), entries_),
                  length,
                  " of the reinforced mass",
                  {"fs-overturn-reinforced", 2},
                  {"ecc-reinforced", 1.0 / 6},
                  &fill};
    lift(what, entries_, mass_.height);
    stands(all_, slice_, what, into_);
    if (!(pushed_.load > 0)) return true;
    // Loads hold nothing, but they press on the ground.
    const Weight on = mass_.on_top();
    weights.push_back(
        Working::product({term("live and dead load", pushed_.load, units::newton_per_square_metre, entries_.of),
                          term("length behind the units", on.force, units::metre)}));
    moments.push_back(Working::product({weights.back(), term("its arm", on.arm, units::metre)}));
    what.weight = Working::sum(weights).named("weight of the mass and its load");
    what.righting = Working::sum(moments).named("righting moment");
    lift(what, entries_, mass_.height);
    bears(all_, slice_, what, into_);
    return true;
  }

  bool inside() {
    const Stratum& fill = *entries_.infill;
    const Fill inner{fill.phi, fill.phi * 2 / 3, fill.weight, *entries_.slope, omega_, entries_.live + entries_.dead};
    const std::optional<Thrusts> found = thrusts(inner, mass_.height);
    if (!found) return false;
    plane_ = slip_plane(inner.phi, inner.delta, inner.beta, inner.omega);
    const std::vector<Tributary> parts = tributaries(up_, mass_.height);
    for (std::size_t i = 0; i < up_.size(); ++i) layer(i, parts[i], *found, inner);
    return true;
  }

 private:
  bool behind() {
    if (!entries_.retained) return false;
    const double delta = std::min(entries_.infill->phi, entries_.retained->phi);
    pushed_ = {entries_.retained->phi, delta,  entries_.retained->weight,
               *entries_.slope,        omega_, entries_.live + entries_.dead};
    behind_ = thrusts(pushed_, mass_.behind());
    return behind_.has_value();
  }

  std::string name(std::size_t i, const char* what) const {
    return "layer on " + course(slice_.layers[i]->on_course - 1) + ", " + what;
  }

  void layer(std::size_t i, const Tributary& part, const Thrusts& found, const Fill& inner) {
    const catalogue::Item* item = all_.job.catalogue->item(slice_.layers[i]->item);
    const Strengths has = item ? strengths(*item) : Strengths{};
    const std::string of = slice_.layers[i]->item + "/";
    const Working force = tension(part, found, inner);
    if (force.amount().value > 0) {
      if (has.tensile && has.creep && has.damage && has.durability) tensile(i, has, of, force);
      anchored(i, has, of, force);
      if (has.joint) joined(i, has, of, force);
    }
    if (has.direct) slides(i, *has.direct, of);
  }

  Working tension(const Tributary& part, const Thrusts& found, const Fill& inner) const {
    Working pressure = Working::product({term("weight of the " + entries_.infill->name, inner.weight,
                                              newton_per_cubic_metre, entries_.infill->of + "/density_kg_m3"),
                                         term("depth of the middle of what it holds", part.depth, units::metre)});
    if (inner.load > 0)
      pressure =
          Working::sum({pressure, term("live and dead load", inner.load, units::newton_per_square_metre, entries_.of)});
    const Working held = term("height that it holds", part.height, units::metre);
    const Working earth = Working::product({pressure, pressure_share(found, inner, *entries_.infill),
                                            term("share that is level", found.across, piece), held});
    if (!(entries_.water > 0)) return earth.named("tension");
    const Working water = Working::product(
        {term("weight of water", entries_.water, newton_per_cubic_metre, entries_.of + "/water_behind"),
         term("its depth there", part.depth, units::metre), held});
    return Working::sum({earth, water}).named("tension");
  }

  // What presses on a layer: under water the earth weighs less.
  Working pressing(const Stratum& fill) const {
    return term(std::string("weight of the ") + fill.name + (entries_.water > 0 ? ", under water" : ""),
                std::max(0.0, fill.weight - entries_.water), newton_per_cubic_metre, fill.of + "/density_kg_m3");
  }

  // A layer that covers a part of the face holds all of it.
  Working covering(std::size_t i, Working strength) const {
    const double share = std::clamp(slice_.layers[i]->coverage, 0.0, 1.0);
    if (share == 1) return strength;
    return Working::product({std::move(strength), term("coverage", share, piece, all_.id + "/layers")});
  }

  void tensile(std::size_t i, const Strengths& has, const std::string& of, const Working& force) {
    const Working factors = Working::product({term("creep", *has.creep, piece, of + "rf_creep"),
                                              term("damage", *has.damage, piece, of + "rf_damage"),
                                              term("durability", *has.durability, piece, of + "rf_durability")});
    const Working strength =
        Working::quotient(kilonewtons("strength", *has.tensile, of + "tensile_strength_kn_m"), factors);
    into_.take(check(all_, slice_, name(i, "tension"),
                     Working::quotient(covering(i, strength).named("long-term strength"), force), {"fs-tension", 1.5}));
  }

  void anchored(std::size_t i, const Strengths& has, const std::string& of, const Working& force) {
    const double length = slice_.layers[i]->length.metres().si();
    const Anchor held = anchor(mass_, length, up_[i], plane_);
    const Working behind_plane =
        term("length behind the slip plane at " + degrees(plane_) + " degrees", held.length, units::metre);
    Check least = check(all_, slice_, name(i, "length behind the slip plane"), behind_plane, {"grid-anchor", 0});
    least.limit = all_.job.catalogue->length_limit("grid-anchor", units::Length::feet(1)).metres().si();
    into_.take(std::move(least));
    if (!has.interaction) return;
    const Stratum& fill = *entries_.infill;
    const Working counted = held.length > 0 ? behind_plane : term("nothing behind the slip plane", 0, units::metre);
    const Working grip = Working::product({term("both faces", 2, piece), counted,
                                           term("interaction", *has.interaction, piece, of + "interaction"),
                                           pressing(fill), term("earth over it", held.depth, units::metre),
                                           term("tan of friction " + units::show_number(fill.degrees, 1),
                                                std::tan(fill.phi), piece, fill.of + "/friction_deg")});
    into_.take(check(all_, slice_, name(i, "pullout"),
                     Working::quotient(covering(i, grip).named("held in the earth"), force), {"fs-pullout", 1.5}));
  }

  void joined(std::size_t i, const Strengths& has, const std::string& of, const Working& force) {
    const Unit& block = all_.block;
    const double above = slice_.column.courses() * all_.course_height - up_[i];
    // Blocks alone, without what fills them: the joint's line is of the blocks as tested, and less weight is safe.
    const Working weight = Working::product(
        {term("weight of one unit", block.mass * units::gravity_m_s2, units::newton, block.item->id + "/mass_kg"),
         term("height of blocks on it", hinged(above, block.depth, omega_), units::metre)});
    const Working on_it = Working::quotient(
        weight, Working::product({term("face of a unit", block.length, units::metre, block.item->id + "/length"),
                                  term("its height", all_.course_height, units::metre)}));
    Working strength =
        Working::sum({kilonewtons("joint without load", *has.joint, of + "connection_kn_m"),
                      Working::product({on_it, term("tan of " + units::show_number(has.joint_degrees, 1) + " degrees",
                                                    std::tan(has.joint_degrees / 180 * std::numbers::pi), piece,
                                                    of + "connection_deg")})});
    if (has.joint_most)
      strength = Working::least({strength, kilonewtons("most", *has.joint_most, of + "connection_max_kn_m")});
    into_.take(check(all_, slice_, name(i, "connection"),
                     Working::quotient(covering(i, strength).named("strength of the joint"), force),
                     {"fs-connection", 1.5}));
  }

  // Everything above the layer slides on it, pushed by the earth behind.
  void slides(std::size_t i, double direct, const std::string& of) {
    if (!behind()) return;
    const Stratum& fill = *entries_.infill;
    Mass above = mass_;
    above.height = mass_.height - up_[i];
    above.length = slice_.layers[i]->length.metres().si();
    for (std::size_t k = i; k < slice_.layers.size(); ++k)  // a shorter one above holds no more earth than its own
      above.length = std::min(above.length, slice_.layers[k]->length.metres().si());
    if (above.height <= 0 || above.length <= above.from_face) return;
    const std::optional<Thrusts> push = thrusts(pushed_, above.behind());
    if (!push) return;
    Working weight = Working::product(
        {pressing(fill), term("height above it", above.height, units::metre),
         term("length behind the units", above.length - above.from_face, units::metre, all_.id + "/layers")});
    if (above.beta > 0)
      weight = Working::sum(
          {weight, term("slope on top", above.wedge().force, newton_per_metre, entries_.of + "/back_slope_deg")});
    const Working grip = Working::product({term("direct sliding", direct, piece, of + "direct_sliding"), weight,
                                           term("tan of friction " + units::show_number(fill.degrees, 1),
                                                std::tan(fill.phi), piece, fill.of + "/friction_deg")});
    into_.take(check(all_, slice_, name(i, "internal sliding"),
                     Working::quotient(grip.named("friction along it"),
                                       driving(*push, pushed_, *entries_.retained, above.behind(), entries_).push),
                     {"fs-internal-sliding", 1.5}));
  }

  const Checking& all_;
  const Slice& slice_;
  Governing& into_;
  const Entries& entries_;
  std::vector<double> up_;  // of each layer over the base
  double omega_ = 0;
  double plane_ = 0;
  Mass mass_;
  Fill pushed_;
  std::optional<Thrusts> behind_;
};

}  // namespace

void reinforced_checks(const Checking& all, const Slice& slice, Share& share, Governing& into) {
  if (!all.entries.infill || !all.entries.slope) return;
  Layered layered(all, slice, into);
  const bool pressed = layered.outside();
  if (!layered.inside() || (!pressed && all.entries.retained)) say_no_pressure(all, slice, share);
  crest_check(all, slice, into);
}

void say_missing_strengths(const Checking& all, Share& share) {
  std::vector<catalogue::Id> told;
  for (const plan::Reinforcement& layer : all.wall.layers) {
    const catalogue::Item* item = all.job.catalogue->item(layer.item);
    if (!item || std::ranges::find(told, layer.item) != told.end()) continue;
    told.push_back(layer.item);
    std::string missing;
    const auto add = [&missing](const char* detail, const char* what) {
      missing += (missing.empty() ? "" : ", ") + std::string(detail) + " (" + what + ")";
    };
    for (const char* detail : tension_details)
      if (!within(*item, detail, std::string_view(detail).starts_with("rf_") ? 1 : 0, any_strength))
        add(detail, "tension");
    const Strengths has = strengths(*item);
    if (!has.interaction) add("interaction", "pullout");
    if (!has.direct) add("direct_sliding", "internal sliding");
    if (!has.joint) add("connection_kn_m", "connection");
    if (missing.empty()) continue;
    share.problems.push_back(edges::notice(
        "strength-missing", item->id + " has no " + missing + ", so these checks of its layers are not made",
        "enter what the maker certifies and the engineer accepts", all.id));
  }
}

}  // namespace takeoff::walls
