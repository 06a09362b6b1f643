#include <algorithm>
#include <cmath>

#include "takeoff/edges/notes.h"
#include "takeoff/walls/caps.h"
#include "takeoff/walls/flight.h"
#include "takeoff/walls/words.h"

namespace takeoff::walls {

namespace {

// One column to a tread: from under the ground at its riser's foot to over the tread.
Profile stepping(const plan::Job& job, const plan::Cheeks& cheeks, const Flight& flight, double height) {
  Profile profile;
  const double deep = std::max(height, edges::limit_inches(job, "wall-embed", edges::Bound::least, 6));
  profile.length = flight.run();
  profile.legs = {{0, profile.length, 0, 0}};
  profile.datum = -deep;
  profile.course_height = height;
  profile.ground = profile.behind = Heights::level(0);
  for (int i = 1; i <= flight.risers; ++i) {
    const double foot = i == 1 ? 0 : flight.level(i - 1);
    const double top = flight.level(i) + cheeks.above.metres().si();
    Column column;
    column.from = (i - 1) * flight.tread;
    column.to = i == flight.risers ? profile.length : i * flight.tread;
    column.base = static_cast<int>(std::floor(foot / height + 1e-6));
    column.top = std::max(column.base + 1, static_cast<int>(std::ceil((top + deep) / height - 1e-6)));
    profile.columns.push_back(column);
    profile.courses = std::max(profile.courses, column.top);
  }
  return profile;
}

// As a wall with two faces is laid.
LayRules rules_of(const plan::Job& job, const Blocks& blocks) {
  plan::Wall wall;
  wall.free_standing = true;
  return lay_rules(job, wall, blocks);
}

void add_blocks(const plan::Job& job, const Unit& block, const Courses& courses, int walls, const plan::ElementId& of,
                Share& share) {
  std::vector<double> pieces;
  int whole = 0;
  for (const auto& bay : courses.bays) {
    for (const Run& run : bay->runs) {
      for (const Laid& unit : run.units) {
        if (unit.make == Make::whole) {
          ++whole;
          continue;
        }
        pieces.insert(pieces.end(), static_cast<std::size_t>(walls), unit.length);
        share.cuts.push_back({of, block.item->id, "wall beside the steps, " + course(run.course),
                              between(job, run.from, run.to), walls, unit.length, 0, block.depth, block.height,
                              unit.from <= 0 ? "left" : "right", false});
      }
    }
  }
  const auto cut = static_cast<double>(pieces.size());
  const auto bought = static_cast<double>(
      units_for(pieces, block.length, job.choices.kerf.metres().si(), job.choices.reuse != plan::Reuse::none));
  const Working laid =
      Working::product({term("walls", walls, units::piece, of), term("whole blocks", whole, units::piece, of)});
  const Working needed =
      cut == 0 ? laid : Working::sum({laid, term("bought for cut pieces", bought, units::piece, of)});
  const double set = walls * whole + cut;
  share.lines.push_back({Stage::coping, block.item->id, "walls beside the steps", {of}, needed, {}, false});
  share.measures.put("cheek_blocks", set);
  share.measures.put("cheek_cut", cut);
  edges::add_weight(job, *block.item, std::llround(set), of, share);
  edges::add_task(job, block.item->kind == "seat-block" ? "seat-block" : "wall-block", Stage::coping,
                  "walls beside the steps", of, Working(term("blocks set", set, units::piece, of)), share);
  edges::add_task(job, "wall-cut", Stage::coping, "cut blocks beside the steps", of,
                  Working(term("cut pieces", cut, units::piece, of)), share);
}

void add_caps(const plan::Job& job, const plan::Cheeks& cheeks, const Profile& profile, const Blocks& blocks, int walls,
              const plan::ElementId& of, Share& share) {
  if (cheeks.cap.empty()) return;
  const catalogue::Item* cap = edges::wanted(job, cheeks.cap, "the caps beside the steps", of, share);
  if (!cap) return;
  if (!cap->length || !cap->width || !cap->height || cap->length->steps() <= 0) {
    share.problems.push_back(edges::fault("cap-size", "the cap " + cap->id + " has no length, depth or height",
                                          "give all three in the catalogue", of));
    return;
  }
  const double length = cap->length->metres().si();
  const double depth = cap->width->metres().si();
  std::vector<Working> runs;
  int count = 0;
  for (const CapRun& run : cap_runs(profile, blocks, 0, depth)) {
    const CapRow row = cap_row(run.longer, length, {}, length / 4);
    count += walls * row.caps;
    runs.push_back(Working::up(Working::quotient(term("run on " + course(run.course), run.longer, units::metre, of),
                                                 term("length of a cap", length, units::metre, cap->id + "/length"))));
    for (const double closer : {row.first_closer, row.second_closer})
      if (closer > 0)
        share.cuts.push_back({of, cap->id, "cap beside the steps, closer", between(job, run.from, run.to), walls,
                              closer, 0, depth, cap->height->metres().si(), "left", false});
  }
  if (runs.empty()) return;
  const Working needed = Working::product({term("walls", walls, units::piece, of), Working::sum(std::move(runs))});
  share.lines.push_back({Stage::coping, cap->id, "caps beside the steps", {of}, needed, {}, false});
  share.measures.put("cheek_caps", count);
  edges::add_weight(job, *cap, count, of, share);
  edges::add_task(job, "cap-set", Stage::coping, "caps beside the steps", of, needed, share);
}

}  // namespace

Share cheek_walls(const plan::Job& job, const plan::Cheeks& cheeks, const Flight& flight, const plan::ElementId& of) {
  Share share;
  const int walls = (cheeks.left ? 1 : 0) + (cheeks.right ? 1 : 0);
  if (walls == 0 || !edges::wanted(job, cheeks.block, "the walls beside the steps", of, share)) return share;
  std::optional<Unit> block = unit(job, cheeks.block, "the walls beside the steps", of, share);
  if (!block) return share;
  block->setback = 0;  // both faces show, so they stand plumb
  const Profile profile = stepping(job, cheeks, flight, block->height);
  Blocks blocks;
  blocks.block = *block;
  const Courses courses = lay(profile, blocks, rules_of(job, blocks));
  for (const problem::Problem& said : courses.problems) share.problems.push_back(problem::in_element(said, of));
  add_blocks(job, *block, courses, walls, of, share);
  add_caps(job, cheeks, profile, blocks, walls, of, share);
  share.problems.push_back(edges::notice(
      "cheek-base", "no base is counted under the walls beside the steps, whose ground is taken to follow the flight",
      "draw them as walls of their own where they stand higher or need a base", of));
  return share;
}

}  // namespace takeoff::walls
