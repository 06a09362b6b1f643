#include "takeoff/walls/checks.h"

#include <algorithm>
#include <cmath>

#include "takeoff/edges/notes.h"
#include "takeoff/walls/checking.h"
#include "takeoff/walls/words.h"
#include "units/number.h"

namespace takeoff::walls {

namespace {

constexpr const char* who_decides = "a licensed engineer and local code decide: show them the wall and its working";

// A value and its limit with as many decimals as tell them apart.
struct Shown {
  std::string value, limit, gap;
};
Shown shown(const plan::Job& job, const Check& check) {
  const double value = check.working.amount().value;
  const double gap = std::abs(value - check.limit);
  if (check.working.amount().unit == units::metre)
    return {edges::shown(job, value), edges::shown(job, check.limit), edges::shown(job, gap)};
  int decimals = 2;
  while (decimals < 6 && gap < 0.5 * std::pow(10.0, -decimals)) ++decimals;
  return {units::show_number(value, decimals), units::show_number(check.limit, 2), units::show_number(gap, decimals)};
}

problem::Problem failed(const plan::Job& job, const Check& check) {
  const Shown words = shown(job, check);
  return edges::flag("check-failed",
                     "preliminary: " + check.name + " " + words.value + " where " + (check.at_most ? "at most " : "") +
                         words.limit + " is wanted, " + (check.at_most ? "over by " : "short by ") + words.gap + ", " +
                         check.where,
                     who_decides, check.of);
}

}  // namespace

Share checks(const plan::Job& job, const plan::Ground& ground, const Profile& profile, const Blocks& blocks) {
  Share share;
  const auto* wall = std::get_if<plan::Wall>(&ground.element->kind);
  if (!wall || wall->free_standing || wall->existing) return share;
  const plan::ElementId& id = ground.element->id;
  if (!wall->loads) {
    share.problems.push_back(edges::notice(
        "checks-not-made", "no loads are entered, so nothing of what holds this wall was checked",
        "enter friction and density of the fill, of the earth behind it and of the ground under the base, "
        "the slope behind and what stands on it",
        id));
    return share;
  }
  const Entries entered = entries(job, *wall, id, share);
  const Checking all{job, id, *wall, blocks.block, entered, profile.course_height};
  Governing governing;
  bool any_layers = false;
  for (const Slice& slice : slices(job, profile, *wall, blocks.block)) {
    any_layers = any_layers || !slice.layers.empty();
    if (slice.layers.empty())
      gravity_checks(all, slice, share, governing);
    else
      reinforced_checks(all, slice, share, governing);
  }
  if (any_layers) say_missing_strengths(all, share);
  share.checks = governing.checks();
  for (const Check& check : share.checks)
    if (!check.passes()) share.problems.push_back(failed(job, check));
  return share;
}

}  // namespace takeoff::walls
