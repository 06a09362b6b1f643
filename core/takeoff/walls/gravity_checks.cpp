#include <algorithm>

#include "takeoff/edges/notes.h"
#include "takeoff/walls/checking.h"

namespace takeoff::walls {

namespace {

struct Pushing {
  Fill fill;
  const Stratum* stratum = nullptr;
  Thrusts found;
};

// A thin strip of good fill does not keep the earth behind it from pushing: the one that pushes more counts.
std::optional<Pushing> pushing(const Entries& entries, double height, double omega) {
  std::optional<Pushing> worst;
  for (const std::optional<Stratum>* one : {&entries.infill, &entries.retained}) {
    if (!*one || !entries.slope) continue;
    const Fill fill{(*one)->phi, (*one)->phi * 2 / 3,        (*one)->weight, *entries.slope,
                    omega,       entries.live + entries.dead};
    const std::optional<Thrusts> found = thrusts(fill, height);
    if (!found) continue;
    if (!worst || found->earth + found->load > worst->found.earth + worst->found.load)
      worst = Pushing{fill, &**one, *found};
  }
  return worst;
}

// Loose where the catalogue says it: nobody compacts what is poured into voids.
std::optional<double> core_density(const plan::Job& job, const plan::Wall& wall, std::string& of) {
  if (!wall.stone) return std::nullopt;
  const plan::Id& id = wall.stone->core.empty() ? wall.stone->drain : wall.stone->core;
  const catalogue::Item* item = job.catalogue->item(id);
  if (!item) return std::nullopt;
  for (const char* field : {"loose_density_kg_m3", "compacted_density_kg_m3"})
    if (const std::optional<double> density = item->number(field)) {
      of = id + "/" + field;
      return density;
    }
  return std::nullopt;
}

bool weighed(const Checking& all) { return all.block.mass > 1e-3; }  // under a gram nobody entered it

// N per metre of one course.
Working course_weight(const Checking& all) {
  const Unit& block = all.block;
  const std::string& id = block.item->id;
  Working weight = term("weight of one unit", block.mass * units::gravity_m_s2, units::newton, id + "/mass_kg");
  std::string of;
  const std::optional<double> density = core_density(all.job, all.wall, of);
  if (density && block.core > 0)
    weight = Working::sum(
        {weight, Working::product({term("its voids", block.core, units::cubic_metre, id + "/core_void_share"),
                                   term("weight of the stone in them", *density * units::gravity_m_s2,
                                        units::newton_per_cubic_metre, of)})});
  return Working::quotient(weight, term("face of a unit", block.length, units::metre, id + "/length"))
      .named("weight of a course");
}

// Courses that stand by themselves, without layers.
struct Alone {
  Working weight;
  Working righting;
  Driving driven;
};
std::optional<Alone> alone(const Checking& all, int courses, double height) {
  const Working one = course_weight(all);
  const Stack stack{courses, all.course_height, all.block.depth, all.block.setback, one.amount().value};
  const auto behind = pushing(all.entries, height, stack.omega());
  if (!behind) return std::nullopt;
  const Working weight =
      Working::product({term("courses", stack.courses, units::piece), one}).named("weight of the wall");
  const Working arm = term("arm: half the depth and half the lean of the courses above the lowest",
                           walls::weight(stack).arm, units::metre);
  return Alone{weight, Working::product({weight, arm}).named("righting moment"),
               driving(behind->found, behind->fill, *behind->stratum, height, all.entries)};
}

}  // namespace

void gravity_checks(const Checking& all, const Slice& slice, Share& share, Governing& into) {
  if (!weighed(all)) {
    const bool told = std::ranges::find(share.problems, "wall-weight", &problem::Problem::code) != share.problems.end();
    if (!told)
      share.problems.push_back(edges::notice(
          "wall-weight",
          "the catalogue has no weight of " + all.block.item->id + ", so what its weight holds is not checked",
          "enter its mass", all.id));
    return;
  }
  std::optional<Alone> wall = alone(all, slice.column.courses(), slice.height);
  if (!wall && (all.entries.infill || all.entries.retained)) say_no_pressure(all, slice, share);
  if (!wall) return;
  Standing what{wall->weight,
                wall->righting,
                wall->driven,
                term("depth of a unit", all.block.depth, units::metre, all.block.item->id + "/width"),
                "",
                {"fs-overturn", 1.5},
                {"ecc-gravity", 0.25},
                all.entries.pad ? &*all.entries.pad : nullptr};
  lift(what, all.entries, slice.height);
  stands(all, slice, what, into);
}

void crest_check(const Checking& all, const Slice& slice, Governing& into) {
  const int below = slice.layers.back()->on_course - slice.column.base;
  const int above = slice.column.courses() - below;
  if (!weighed(all) || above < 1) return;
  const std::optional<Alone> crest = alone(all, above, slice.height - below * all.course_height);
  if (!crest) return;
  into.take(check(all, slice, "overturning of the blocks over the top layer",
                  Working::quotient(crest->righting, crest->driven.turning).named("overturning"),
                  {"fs-overturn", 1.5}));
}

}  // namespace takeoff::walls
