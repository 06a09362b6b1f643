#include "takeoff/walls/checking.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <set>
#include <tuple>

#include "takeoff/edges/notes.h"
#include "takeoff/walls/pressure.h"
#include "takeoff/walls/reinforcement.h"
#include "takeoff/walls/words.h"
#include "units/number.h"

namespace takeoff::walls {

using units::newton_per_cubic_metre;
using units::newton_per_metre;
using units::newton_per_square_metre;
using units::piece;

namespace {

constexpr double dust = 1e-6;  // metres

// Height on which earth pushes between two places.
double pushed(const Profile& profile, const Column& column, double from, double to) {
  const double blocks = column.courses() * profile.course_height;
  if (profile.behind.empty()) return blocks;
  return std::max(blocks, profile.behind.greatest(from, to) - profile.base_level(column));
}

double deep(const Profile& profile, const plan::Wall& wall, const Column& column, double from, double to) {
  if (wall.toe_slope > 0 || profile.ground.empty()) return 0;
  return std::max(0.0, profile.ground.least(from, to) - profile.base_level(column));
}

std::vector<const plan::Reinforcement*> layers_in(const std::vector<const plan::Reinforcement*>& holding,
                                                  const Column& column, double middle) {
  std::vector<const plan::Reinforcement*> found;
  for (const plan::Reinforcement* layer : holding) {
    const bool here = layer->from.metres().si() <= middle && (!layer->to || middle <= layer->to->metres().si());
    if (here && held_down(column, *layer)) found.push_back(layer);
  }
  std::ranges::stable_sort(found, {}, &plan::Reinforcement::on_course);
  return found;
}

std::vector<double> cuts(const std::vector<const plan::Reinforcement*>& holding, const Column& column) {
  std::vector<double> at{column.from, column.to};
  const auto cut = [&](double station) {
    if (station > column.from + dust && station < column.to - dust) at.push_back(station);
  };
  for (const plan::Reinforcement* layer : holding) {
    cut(layer->from.metres().si());
    if (layer->to) cut(layer->to->metres().si());
  }
  std::ranges::sort(at);
  const auto same = std::ranges::unique(at, [](double a, double b) { return b - a < dust; });
  at.erase(same.begin(), same.end());
  return at;
}

// What tells one slice from another: tenths of a millimetre are enough.
auto key(const Slice& slice) {
  const auto tenth = [](double metres) { return std::llround(metres * 1e4); };
  return std::tuple(slice.column.courses(), slice.column.base, tenth(slice.height), tenth(slice.deep), slice.layers);
}

}  // namespace

std::vector<Slice> slices(const plan::Job& job, const Profile& profile, const plan::Wall& wall, const Unit& block) {
  std::vector<const plan::Reinforcement*> holding;
  for (const plan::Reinforcement& layer : wall.layers)
    if (holds_at_all(job, layer, block)) holding.push_back(&layer);
  std::vector<Slice> all;
  std::set<decltype(key(Slice{}))> known;
  for (const Column& column : profile.columns) {
    const std::vector<double> at = cuts(holding, column);
    for (std::size_t i = 0; i + 1 < at.size(); ++i) {
      Slice made{at[i],
                 at[i + 1],
                 column,
                 pushed(profile, column, at[i], at[i + 1]),
                 deep(profile, wall, column, at[i], at[i + 1]),
                 {}};
      made.layers = layers_in(holding, column, (at[i] + at[i + 1]) / 2);
      auto what = key(made);
      // Where no layers lie, the same courses behave the same at any level.
      if (made.layers.empty()) std::get<1>(what) = 0;
      if (known.insert(std::move(what)).second) all.push_back(std::move(made));
    }
  }
  return all;
}

void Governing::take(Check check) {
  const auto same = std::ranges::find(kept_, check.name, &Check::name);
  if (same == kept_.end()) {
    kept_.push_back(std::move(check));
    return;
  }
  const double now = check.working.amount().value, before = same->working.amount().value;
  if (check.at_most ? now > before : now < before) *same = std::move(check);
}

Check check(const Checking& all, const Slice& slice, std::string name, Working value, Wanted wanted, bool at_most) {
  const auto found = all.job.catalogue->limits.find(wanted.limit);
  const bool given = found != all.job.catalogue->limits.end() && !found->second.source.empty();
  return {all.id,
          std::move(name),
          between(all.job, slice.from, slice.to),
          std::move(value),
          all.job.catalogue->number_limit(wanted.limit, wanted.otherwise),
          at_most,
          "as in TEK 15-5B and the segmental wall design manual, from memory; limit " + std::string(wanted.limit) +
              " " + (given ? found->second.source : "from memory of the same")};
}

void say_no_pressure(const Checking& all, const Slice& slice, Share& share) {
  const auto told = [](const problem::Problem& one) { return one.code == "checks-not-made"; };
  if (!all.entries.slope || std::ranges::any_of(share.problems, told)) return;
  share.problems.push_back(edges::fault("checks-not-made",
                                        "the setback of the blocks and the friction entered give no earth pressure, so "
                                        "nothing of what holds the wall was checked, " +
                                            between(all.job, slice.from, slice.to),
                                        "correct the block's setback or the friction: a licensed engineer decides",
                                        all.id));
}

std::string degrees(double radians) { return units::show_number(radians * 180 / std::numbers::pi, 1); }

static Working of_water(const Entries& entries) {
  return term("weight of water", entries.water, newton_per_cubic_metre, entries.of + "/water_behind");
}

Working pressure_share(const Thrusts& found, const Fill& fill, const Stratum& stratum) {
  return term("Ka of the " + stratum.name + " by Coulomb (degrees: friction " + degrees(fill.phi) + ", on the wall " +
                  degrees(fill.delta) + ", slope " + degrees(fill.beta) + ", batter " + degrees(fill.omega) + ")",
              found.ka, piece, stratum.of + "/friction_deg");
}

Driving driving(const Thrusts& found, const Fill& fill, const Stratum& stratum, double height, const Entries& entries) {
  const Working ka = pressure_share(found, fill, stratum);
  const Working across = term("share that is level", found.across, piece);
  const Working high = term("height", height, units::metre);
  const Working earth = Working::product({term("half", 0.5, piece), ka,
                                          term("weight of the " + stratum.name, fill.weight, newton_per_cubic_metre,
                                               stratum.of + "/density_kg_m3"),
                                          high, high, across})
                            .named("thrust of the earth");
  const Working at_third = term("a third of the height", height / 3, units::metre);
  const Working turned = Working::product({earth, at_third});
  std::vector<Working> pushes{earth}, moments{turned};
  if (fill.load > 0) {
    pushes.push_back(
        Working::product(
            {ka, term("live and dead load behind", fill.load, newton_per_square_metre, entries.of), high, across})
            .named("thrust of the loads"));
    moments.push_back(Working::product({pushes.back(), term("half of the height", height / 2, units::metre)}));
  }
  if (entries.water > 0) {
    pushes.push_back(
        Working::product({term("half", 0.5, piece), of_water(entries), high, high}).named("push of water"));
    moments.push_back(Working::product({pushes.back(), at_third}));
  }
  if (pushes.size() == 1) return {earth, turned.named("turning moment")};
  return {Working::sum(std::move(pushes)).named("thrust"), Working::sum(std::move(moments)).named("turning moment")};
}

void lift(Standing& what, const Entries& entries, double height) {
  if (!(entries.water > 0)) return;
  const Working up = Working::product({term("half", 0.5, piece), of_water(entries),
                                       term("height of water", height, units::metre), what.width})
                         .named("uplift of water");
  const Working arm = term("two thirds of the base", what.width.amount().value * 2 / 3, units::metre);
  constexpr double nothing = 1;  // N/m: what floats has no weight, and is not divided by
  if (what.weight.amount().value - up.amount().value <= nothing) {
    what.weight = term("weight: the water lifts all of it", nothing, newton_per_metre);
    what.righting = term("righting moment: none", 0, units::newton);
    return;
  }
  what.weight = Working::difference(what.weight, up).named("weight less uplift");
  what.righting = Working::difference(what.righting, Working::product({up, arm})).named("righting moment");
}

namespace {

// Friction and, under the base, cohesion: the weaker of what can slide there.
Working holding(const Standing& what, const Stratum& under) {
  const auto rubs = [&what](const Stratum& stratum) {
    return Working::product(
        {what.weight, term("tan of friction " + units::show_number(stratum.degrees, 1) + " of the " + stratum.name,
                           std::tan(stratum.phi), piece, stratum.friction_of())});
  };
  Working base = rubs(under);
  if (under.cohesion > 0)
    base = Working::sum(
        {Working::product(
             {term("cohesion", under.cohesion, newton_per_square_metre, under.of + "/cohesion_pa"), what.width}),
         base});
  if (!what.also) return base.named("friction at the base");
  return Working::least({base, rubs(*what.also)}).named("friction at the base");
}

Working eccentricity(const Standing& what) {
  return Working::difference(Working::quotient(what.width, term("2", 2, piece)),
                             Working::quotient(Working::difference(what.righting, what.driven.turning), what.weight))
      .named("eccentricity");
}

Working effective(const Standing& what, const Working& e) {
  const double off = e.amount().value;
  if (off <= 0) return what.width;
  if (2 * off >= what.width.amount().value) return term("effective width: nothing bears", 0, units::metre);
  return Working::difference(what.width, Working::product({term("2", 2, piece), e})).named("effective width");
}

// Earth under water bears as its weight less the water's.
Working capacity(const Checking& all, const Slice& slice, const Stratum& under, const Working& width) {
  const double falls = all.wall.toe_slope > 0 ? std::atan(1 / all.wall.toe_slope) : 0;
  const Bearing factors = bearing_factors_on_slope(under.phi, falls);
  const Working weight =
      term(std::string("weight of the ") + under.name + (all.entries.water > 0 ? ", under water" : ""),
           std::max(0.0, under.weight - all.entries.water), newton_per_cubic_metre, under.of + "/density_kg_m3");
  std::vector<Working> parts{Working::product({term("half", 0.5, piece), weight, width, term("Ng", factors.g, piece)})};
  if (under.cohesion > 0)
    parts.push_back(
        Working::product({term("cohesion", under.cohesion, newton_per_square_metre, under.of + "/cohesion_pa"),
                          term("Nc", factors.c, piece)}));
  if (slice.deep > 0)
    parts.push_back(Working::product(
        {weight, term("depth in the ground", slice.deep, units::metre), term("Nq", factors.q, piece)}));
  return Working::sum(std::move(parts)).named("bearing capacity");
}

}  // namespace

void stands(const Checking& all, const Slice& slice, const Standing& what, Governing& into) {
  if (all.entries.foundation)
    into.take(check(all, slice, "sliding" + what.name,
                    Working::quotient(holding(what, *all.entries.foundation), what.driven.push).named("sliding"),
                    {"fs-sliding", 1.5}));
  into.take(check(all, slice, "overturning" + what.name,
                  Working::quotient(what.righting, what.driven.turning).named("overturning"), what.overturning));
  into.take(check(all, slice, "eccentricity" + what.name + ", share of the base",
                  Working::quotient(eccentricity(what), what.width), what.eccentricity, true));
  bears(all, slice, what, into);
}

void bears(const Checking& all, const Slice& slice, const Standing& what, Governing& into) {
  if (!all.entries.foundation) return;
  const Working width = effective(what, eccentricity(what));
  // Capacity over pressure, the pressure being weight over effective width, which may be 0.
  const Working value =
      Working::quotient(Working::product({capacity(all, slice, *all.entries.foundation, width), width}), what.weight);
  into.take(check(all, slice, "bearing" + what.name, value.named("bearing"), {"fs-bearing", 2}));
}

}  // namespace takeoff::walls
