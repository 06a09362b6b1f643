// Walls whose numbers are the regressions GW8 and RW5, through everything that a job's checks go through.
#pragma once

#include <gtest/gtest.h>

#include <algorithm>

#include "takeoff/walls/checks.h"
#include "takeoff/walls/kit.h"

namespace kit {

using namespace takeoff::walls;  // NOLINT

inline constexpr double pcf = 16.018463374;                          // kg/m3: 0.45359237 / 0.3048^3
inline constexpr double pound_foot = 0.45359237 * 9.80665 / 0.3048;  // N/m
inline constexpr double psf = 47.880258980;                          // Pa: 4.4482216 N / 0.3048^2 m2

// Units 12 in deep, 8 in high, 18 in long, 1 in back a course, solid at 130 pcf: as the regressions GW8 and RW5 have.
inline WallBook stacked() {
  WallBook made = book();
  made.block("dry-8x18", "wall-block", 18, 12, 8, 1, 0, 130 * 1.5 * 8 / 12 * 0.45359237);
  return made;
}

inline Unit dry(const WallBook& from) {
  const catalogue::Item* item = from.all->item("dry-8x18");
  return {item, 18 * in, 12 * in, 8 * in, 18 * in, 1 * in, 0, *item->mass_kg};
}

inline Profile standing(std::vector<Column> columns, double ground_in = 0) {
  Profile made;
  made.length = columns.back().to;
  made.legs = {{0, made.length, 0, 0}};
  made.course_height = 8 * in;
  made.columns = std::move(columns);
  made.ground = Heights::level(ground_in * in);
  made.behind = Heights::level(0);
  for (const Column& column : made.columns) made.courses = std::max(made.courses, column.top);
  return made;
}

inline plan::WallLoads loads(double phi_fill, double phi_behind, double behind_pcf, double live_psf) {
  plan::WallLoads made;
  made.infill = {phi_fill, 120 * pcf, 0};
  made.retained = {phi_behind, behind_pcf * pcf, 0};
  made.foundation = {30, 120 * pcf, 0};
  made.live_pa = live_psf * psf;
  return made;
}

inline plan::Wall dry_wall(plan::WallLoads with) {
  plan::Wall wall = straight(120, 40);
  wall.block = "dry-8x18";
  wall.loads = with;
  return wall;
}

inline takeoff::Share checked(const WallBook& from, const plan::Wall& wall, const Profile& profile) {
  const plan::Element element{"RW", "", wall};
  return checks(job(from, {element}), ground_of(element), profile, {dry(from), {}, {}, {}, {}});
}

inline const takeoff::Check* find(const takeoff::Share& share, const std::string& name) {
  const auto found = std::ranges::find(share.checks, name, &takeoff::Check::name);
  return found == share.checks.end() ? nullptr : &*found;
}
inline double value(const takeoff::Share& share, const std::string& name) {
  const takeoff::Check* found = find(share, name);
  EXPECT_NE(found, nullptr) << name;
  return found ? found->working.amount().value : -1;
}
inline std::vector<std::string> failures(const takeoff::Share& share) {
  std::vector<std::string> all;
  for (const auto& one : share.problems)
    if (one.code == "check-failed") all.push_back(one.text);
  return all;
}

inline plan::Reinforcement layer(int course, double feet) {
  plan::Reinforcement made;
  made.on_course = course;
  made.item = "grid-6x150";
  made.length = inches(feet * 12);
  return made;
}

// RW5: 8 ft, four layers at 8, 32, 56 and 80 in.
inline plan::Wall layered(double feet) {
  plan::Wall wall = dry_wall(loads(30, 28, 115, 100));
  for (const int course : {1, 4, 7, 10}) wall.layers.push_back(layer(course, feet));
  return wall;
}

inline const Column ten_feet_of_five{0, 120 * in, 0, 5};
inline const Column ten_feet_of_six{0, 120 * in, 0, 6};

}  // namespace kit
