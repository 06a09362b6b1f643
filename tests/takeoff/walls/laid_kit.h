// A wall profiled and laid in one go, and plain ways to look at it.
#pragma once

#include <cmath>
#include <random>

#include "takeoff/walls/courses.h"
#include "takeoff/walls/kit.h"

namespace kit {

namespace walls = takeoff::walls;

struct Laying {
  plan::Job job;
  plan::Element element;
  plan::Ground ground;
  takeoff::Share share;
  std::optional<walls::Blocks> blocks;
  std::optional<walls::Profile> profile;
  walls::Courses courses;

  Laying(const WallBook& book, const plan::Wall& wall) : job(site_kit::job(book, {})), element{"RW", "wall", wall} {
    job = plan::with(job, element);
    ground = ground_of(element);
    blocks = walls::chosen_blocks(job, wall, "RW", share);
    if (blocks) profile = walls::profile(job, ground, blocks->block, share);
  }
  Laying& lay(const walls::Courses* before = nullptr) {
    const auto& wall = std::get<plan::Wall>(element.kind);
    courses = walls::lay(*profile, *blocks, walls::lay_rules(job, wall, *blocks), before);
    return *this;
  }
  takeoff::Share counted() const { return walls::counted(job, ground, *profile, *blocks, courses); }
};

// The demo's wall: 31 ft 6 in facing west, a return of 9 ft 2 in facing north round an outside corner; invented levels.
// Inches; heights above a datum of their own. Stretches as the demo's table gives them.
inline plan::Wall demo_wall() {
  plan::Wall wall;
  wall.line = line({{480, -54}, {480, 324}}, 590, 324);
  wall.behind = geometry::Side::right;
  wall.block = "wb-8x18";
  wall.corner_block = "wb-8x18-corner";
  wall.cap = "cap-18";
  wall.ground = {level(0, 1188), level(54, 1195.4375), level(378, 1197.9375), level(488, 1225.4375)};
  wall.base = {level(0, 1179),   level(54, 1179),  level(54, 1187), level(414, 1187),
               level(414, 1195), level(450, 1195), level(450, 1203)};
  wall.top = {level(0, 1214),   level(54, 1214),  level(54, 1222),  level(120, 1222),
              level(120, 1230), level(234, 1230), level(234, 1238), level(488, 1238)};
  return wall;
}

// The demo's seat wall: 48 in straight, then a quarter circle of 6 ft towards the deck, 12 in thick, one course buried.
inline plan::Wall demo_seat_wall() {
  plan::Wall wall;
  wall.line = line({{0, 264}, {0, 312, bulge(-pi / 2)}}, 72, 384);
  wall.behind = geometry::Side::left;
  wall.block = "sw-6x12";
  wall.curve_block = "sw-6x12-taper";
  wall.end_block = "sw-6x12-end";
  wall.cap = "seatcap-24";
  wall.free_standing = true;
  wall.least_overlap = 0;
  wall.ground = {level(0, 0)};
  wall.top = {level(0, 20.25)};
  return wall;
}

inline std::vector<double> cut_lengths_in(const walls::Courses& courses) {
  std::vector<double> result;
  for (const auto& bay : courses.bays)
    for (const walls::Run& run : bay->runs)
      for (const walls::Laid& one : run.units)
        if (one.make == walls::Make::cut) result.push_back(one.length / in);
  std::ranges::sort(result);
  return result;
}

inline bool told(const walls::Courses& courses, const std::string& code) {
  return std::ranges::find(courses.problems, code, &problem::Problem::code) != courses.problems.end();
}

}  // namespace kit
