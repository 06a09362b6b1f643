#include <algorithm>

#include "takeoff/edges/notes.h"
#include "takeoff/walls/checks.h"
#include "takeoff/walls/flagging.h"
#include "takeoff/walls/words.h"
#include "units/number.h"

namespace takeoff::walls {

namespace {

constexpr double dust = 1e-6;  // metres
constexpr const char* engineer = "a licensed engineer decides";

// Thickness of the leveling base; where none is chosen the limit's, and so it says.
struct BaseUnder {
  double thickness = 0;
  bool assumed = false;
};
BaseUnder base_under(const Flagging& all) {
  const catalogue::BuildUp* chosen = all.wall.stone ? all.job.catalogue->build_up(all.wall.stone->build_up) : nullptr;
  double thickness = 0;
  if (chosen)
    for (const catalogue::Layer& layer : chosen->layers)
      if (layer.thickness) thickness += layer.thickness->metres().si();
  if (thickness > 0) return {thickness, false};
  return {all.job.catalogue->length_limit("wall-pad", units::Length::inches(6)).metres().si(), true};
}

// The lower of the two limits, in words.
struct HeightLimit {
  double metres = 0;
  std::string name;
};
HeightLimit height_limit(const plan::Job& job) {
  const auto of = [&job](const char* id) {
    return job.catalogue->length_limit(id, units::Length::feet(4)).metres().si();
  };
  const double permit = of("wall-permit");
  const double advised = of("wall-engineer");
  if (permit == advised) return {permit, "a permit and an engineer"};
  return permit < advised ? HeightLimit{permit, "a permit"} : HeightLimit{advised, "an engineer"};
}

void flag_height(const Flagging& all, const std::vector<Tier>& near, Share& share) {
  const Column& tallest = *std::ranges::max_element(all.profile.columns, {}, &Column::courses);
  const double units_high = tallest.courses() * all.profile.course_height;
  const BaseUnder base = base_under(all);
  const double whole = units_high + base.thickness;
  double others = 0;
  std::string with;
  for (const Tier& tier : near) {
    others += tier.height.value_or(0);
    with += ", " + called(*tier.other->element) + (tier.above ? " above it " : " below it ") +
            (tier.height ? edges::shown(all.job, *tier.height) : "of unknown height");
  }
  const HeightLimit limit = height_limit(all.job);
  const double total = whole + all.profile.cap_height + others;
  const bool unknown = std::ranges::any_of(near, [](const Tier& tier) { return !tier.height; });
  if (total <= limit.metres + dust && !unknown) return;
  const auto shown = [&all](double metres) { return edges::shown(all.job, metres); };
  std::string text = "the wall is " + shown(whole) + " high from the bottom of its leveling base" +
                     (base.assumed ? " (" + shown(base.thickness) + " taken, none is chosen)" : "") +
                     " to the top of its blocks and " + shown(units_high) + " from the bottom of the lowest unit";
  if (all.profile.cap_height > 0) text += "; with its cap " + shown(whole + all.profile.cap_height);
  if (!near.empty()) text += "; added up" + with + (unknown ? "" : ", " + shown(total) + " in all");
  text += ": " + std::string(total <= limit.metres + dust ? "it may be over " : "over ") + shown(limit.metres) +
          ", from where " + limit.name + " may be wanted, " + between(all.job, tallest.from, tallest.to);
  all.raise("wall-height-limit", text,
            "ask the building office which height it measures and what it wants; a licensed engineer designs walls "
            "over the limit",
            share);
}

std::string pressure_words(const plan::Job& job, double pascals) {
  if (job.heading.units == units::System::metric) return units::show_number(pascals / 1000, 1) + " kPa";
  return units::show_number(pascals * units::square_metres_per_square_foot / units::newtons_per_pound, 0) + " lb/sq ft";
}

double at_least_0(double pascals) { return std::clamp(pascals, 0.0, 1e12); }  // entries() says what can't be

void flag_ground(const Flagging& all, Share& share) {
  double over = 0;
  const Column* where = nullptr;
  for (const Column& column : all.profile.columns) {
    const double above =
        all.profile.behind.greatest(column.from, column.to) - all.profile.top_level(column) - all.profile.cap_height;
    if (above <= over + dust) continue;
    over = above;
    where = &column;
  }
  if (where)
    all.raise("wall-loaded",
              "the ground behind stands " + edges::shown(all.job, over) + " over the top of the wall, " +
                  between(all.job, where->from, where->to),
              std::string("correct the levels or slope the bank: ") + engineer, share);
  if (!all.wall.loads) return;
  const plan::WallLoads& loads = *all.wall.loads;
  if (loads.back_slope_deg > 0)
    all.raise("wall-loaded",
              "the ground behind the wall rises at " + units::show_number(loads.back_slope_deg, 1) +
                  " degrees: a bank loads it",
              engineer, share);
  if (loads.live_pa > 0 || loads.dead_pa > 0)
    all.raise("wall-loaded",
              "a load of " + pressure_words(all.job, at_least_0(loads.live_pa) + at_least_0(loads.dead_pa)) +
                  " on the ground behind the wall is entered",
              engineer, share);
}

std::string force_words(const plan::Job& job, double newtons_per_metre) {
  if (job.heading.units == units::System::metric) return units::show_number(newtons_per_metre / 1000, 1) + " kN/m";
  return units::show_number(newtons_per_metre * units::metres_per_foot / units::newtons_per_pound, 0) + " lb/ft";
}

void flag_water_and_toe(const Flagging& all, Share& share) {
  if (all.wall.loads && all.wall.loads->water_behind) {
    const Column& tallest = *std::ranges::max_element(all.profile.columns, {}, &Column::courses);
    const double height = tallest.courses() * all.profile.course_height;
    const double push = 1000 * units::gravity_m_s2 * height * height / 2;  // fresh water, to the top
    all.raise("wall-water",
              "water stands behind the wall: the checks count its push to the top, " + force_words(all.job, push) +
                  ", and its uplift, but nothing that it washes out or softens, " +
                  between(all.job, tallest.from, tallest.to),
              std::string("drain it; ") + engineer, share);
  }
  if (all.wall.toe_slope > 0)
    all.raise("wall-toe",
              "the ground in front of the wall falls 1 in " + units::show_number(all.wall.toe_slope, 1) +
                  ": less holds its foot than on level ground",
              engineer, share);
}

void flag_free_height(const Flagging& all, Share& share) {
  const auto limit = all.blocks.block.item->length_of("free_standing_limit_mm");
  if (!limit) return;
  double most = 0;
  const Column* where = nullptr;
  for (const Column& column : all.profile.columns) {
    const double height =
        all.profile.top_level(column) + all.profile.cap_height - all.profile.ground.least(column.from, column.to);
    if (height <= most) continue;
    most = height;
    where = &column;
  }
  if (!where || most <= limit->metres().si() + dust) return;
  all.raise("wall-free-height",
            "the free-standing wall is " + edges::shown(all.job, most) + " high over the ground with its cap, over " +
                edges::shown(all.job, limit->metres().si()) + " that " + all.blocks.block.item->id + " is good for, " +
                between(all.job, where->from, where->to),
            std::string("lower it or have it reinforced: ") + engineer, share);
}

}  // namespace

void Flagging::raise(const std::string& code, const std::string& text, const std::string& mend, Share& share) const {
  share.problems.push_back(edges::flag(code, text, mend, id()));
}

std::string called(const plan::Element& element) {
  return element.name.empty() ? element.id : element.id + " " + element.name;
}

Share flags(const plan::Job& job, const plan::Site& site, const plan::Ground& ground, const Profile& profile,
            const Blocks& blocks) {
  Share share;
  const auto* wall = std::get_if<plan::Wall>(&ground.element->kind);
  if (!wall || wall->existing || profile.columns.empty()) return share;
  const Flagging all{job, site, ground, *wall, profile, blocks};
  flag_height(all, wall->free_standing || !ground.path ? std::vector<Tier>{} : tiers(all), share);
  if (wall->free_standing) flag_free_height(all, share);
  if (!wall->free_standing) {
    flag_ground(all, share);
    flag_water_and_toe(all, share);
  }
  if (!ground.path) return share;
  if (!wall->free_standing) flag_neighbours(all, share);
  flag_people(all, share);
  return share;
}

}  // namespace takeoff::walls
