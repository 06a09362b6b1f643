// Walls made by hand, so that what stands behind them is tested on its own: profiles, courses, the demo's wall.
#pragma once

#include "takeoff/walls/laid_kit.h"
#include "takeoff/walls/reinforcement.h"
#include "takeoff/walls/stone.h"

namespace kit {

using takeoff::Share;
using namespace takeoff::walls;  // NOLINT

inline constexpr double in3 = in * in * in;
inline constexpr double yd3 = 27 * ft * ft * ft;

// A wall block of inches with so many cubic inches of voids.
inline Unit block_of(double length, double depth, double height, double back, double setback, double voids,
                     const catalogue::Item* item = nullptr) {
  return {item, length * in, depth * in, height * in, back * in, setback * in, voids * in3, 20};
}
// 18 x 12 x 8 in, voids 40 % of 1,728 cu in.
inline Blocks plain_blocks() { return {block_of(18, 12, 8, 18, 0.75, 691.2), {}, {}, {}, {}}; }

struct Stands {  // inches, courses from 0
  double from = 0;
  double to = 0;
  int base = 0;
  int top = 0;
};
inline Profile profile_of(const std::vector<Stands>& columns, double datum_in = 0, double course_in = 8) {
  Profile made;
  for (const Stands& one : columns) {
    made.columns.push_back({one.from * in, one.to * in, one.base, one.top});
    made.courses = std::max(made.courses, one.top);
  }
  made.length = columns.back().to * in;
  made.legs = {{0, made.length, 0, 0}};
  made.datum = datum_in * in;
  made.course_height = course_in * in;
  return made;
}

// The demo's retaining wall: 31 ft 6 in facing west, an outside corner, 9 ft 2 in facing north; its stretches with
// their lowest and highest courses as the demo's table gives them, counted here from 0.
inline Profile demo_profile() {
  Profile made = profile_of({{0, 54, 0, 4},
                             {54, 120, 1, 5},
                             {120, 234, 1, 6},
                             {234, 378, 1, 7},
                             {378, 414, 1, 7},
                             {414, 450, 2, 7},
                             {450, 488, 3, 7}},
                            98.25 * 12);
  made.legs = {{0, 378 * in, 0, pi / 2}, {378 * in, 488 * in, 0, 0}};
  return made;
}
inline plan::Wall stone_demo() {
  plan::Wall wall = demo_wall();
  plan::WallStone stone;
  stone.build_up = "wall-base-open";
  stone.drain = "agg-no57";
  wall.stone = stone;
  wall.layers = {{3, "grid-6x150", inches(60), inches(54), inches(450), 1, false},
                 {5, "grid-6x150", inches(60), inches(120), {}, 1, false}};
  return wall;
}

inline plan::Element element(const plan::Wall& wall) { return {"RW", "wall", wall}; }

// A bay of one leg with units end to end in one course.
inline Courses one_course(const Leg& leg, const std::vector<Laid>& units, int course = 0) {
  auto bay = std::make_shared<Bay>();
  bay->legs = {leg};
  Run run;
  run.course = course;
  run.from = leg.from;
  run.to = leg.to;
  for (Laid one : units) {
    one.from = run.length;
    run.length += one.length;
    run.units.push_back(one);
  }
  bay->runs = {run};
  Courses made;
  made.bays = {bay};
  return made;
}

inline WallBook stone_book() {
  WallBook made = book();
  for (const char* rate : {"wall-base", "wall-stone", "wall-fill", "wall-grid", "pipe-lay", "fabric-lay"})
    made.rate(rate);
  catalogue::Item& fabric = made.add("fabric-nw-6", "fabric");
  fabric.unit = "roll";
  fabric.length = inches(1200);
  fabric.width = inches(72);
  made.stone("fill-sand", 1500, 1800, false);
  return made;
}

inline Share stone_of(const plan::Wall& wall, const Profile& profile, const Blocks& blocks = plain_blocks(),
                      const Courses& courses = {}) {
  const plan::Element one = element(wall);
  return takeoff::walls::stone(job(stone_book(), {one}), ground_of(one), profile, blocks, courses);
}
inline Share pipe_of(const plan::Wall& wall, const Profile& profile, const std::vector<plan::Element>& others = {}) {
  const plan::Element one = element(wall);
  std::vector<plan::Element> all{one};
  all.insert(all.end(), others.begin(), others.end());
  return takeoff::walls::pipe(job(stone_book(), all), ground_of(one), profile, plain_blocks());
}
inline Share reinforcement_of(const plan::Wall& wall, const Profile& profile, const WallBook& book = stone_book(),
                              const plan::Site& site = {}) {
  const plan::Element one = element(wall);
  return takeoff::walls::reinforcement(job(book, {one}), site, ground_of(one), profile, plain_blocks());
}

inline int times(const Share& share, const std::string& code) {
  return static_cast<int>(std::ranges::count(share.problems, code, &problem::Problem::code));
}

}  // namespace kit
