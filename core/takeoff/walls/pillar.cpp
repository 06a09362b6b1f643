#include <algorithm>
#include <cmath>

#include "takeoff/edges/notes.h"
#include "takeoff/walls/glue.h"
#include "takeoff/walls/pad.h"
#include "takeoff/walls/walls.h"
#include "units/number.h"

namespace takeoff::walls {

namespace {

// Blocks run round the core like a pinwheel: on each side some lengths and the end of the block round the corner.
struct Round {
  double length = 0, depth = 0, height = 0;  // of a block
  double first = 0, second = 0;              // sides of the pillar
  int on_first = 0, on_second = 0;           // blocks along a side
  int courses = 0, buried = 0;
  int each() const { return 2 * (on_first + on_second); }
};

constexpr double out_of_size = 0.125 * units::metres_per_inch;  // what joints and chipped faces take up

std::optional<geometry::Vec> direction(const geometry::Region& drawn) {
  if (drawn.polygons().size() != 1 || !drawn.polygons().front().holes.empty()) return std::nullopt;
  const geometry::Ring& ring = drawn.polygons().front().outer.edges();
  if (std::ranges::any_of(ring, [](const geometry::Edge& edge) { return edge.bulge != 0; })) return std::nullopt;
  const geometry::Vec first = ring.at(1).from - ring.front().from;
  return (1 / geometry::length(first)) * first;
}

int blocks_along(const Round& round, double side) {
  return std::max(1, static_cast<int>(std::lround((side - round.depth) / round.length)));
}
double side_of(const Round& round, int blocks) { return round.depth + blocks * round.length; }

bool fits(const Round& round) {
  return std::abs(side_of(round, round.on_first) - round.first) <= out_of_size &&
         std::abs(side_of(round, round.on_second) - round.second) <= out_of_size;
}

problem::Problem wrong_size(const plan::Job& job, const Round& round, const plan::ElementId& of) {
  return edges::fault("pillar-size",
                      "blocks of " + edges::shown(job, round.length) + " by " + edges::shown(job, round.depth) +
                          " do not go round a pillar of " + edges::shown(job, round.first) + " by " +
                          edges::shown(job, round.second),
                      "draw it " + edges::shown(job, side_of(round, round.on_first)) + " by " +
                          edges::shown(job, side_of(round, round.on_second)) +
                          ", the nearest that comes out in whole blocks, or choose another block",
                      of);
}

// At least the courses that were asked for, and as deep as the limit for walls.
int buried_courses(const plan::Job& job, const plan::Pillar& pillar, double height) {
  const double deep = edges::limit_inches(job, "wall-embed", edges::Bound::least, 6);
  return std::max({1, pillar.bury_courses, static_cast<int>(std::ceil(deep / height - 1e-9))});
}

std::optional<Round> round_of(const plan::Job& job, const plan::Ground& ground, const plan::Pillar& pillar,
                              const catalogue::Item& block, Share& share) {
  const plan::ElementId& id = ground.element->id;
  const auto refuse = [&](const char* code, const std::string& text, const std::string& mend) {
    share.problems.push_back(edges::fault(code, text, mend, id));
    return std::optional<Round>();
  };
  if (!block.length || !block.width || !block.height || block.length->steps() <= 0 || block.width->steps() <= 0 ||
      block.height->steps() <= 0)
    return refuse("pillar-block", "the block " + block.id + " has no length, depth or height",
                  "give all three in the catalogue");
  if (pillar.height.steps() <= 0)
    return refuse("pillar-height", "the pillar has no height above the ground", "enter its height");
  constexpr double tall = 100;  // metres, over ground or under it
  if (pillar.height.metres().si() > tall || pillar.bury_courses * block.height->metres().si() > tall)
    return refuse("pillar-height", "the pillar is over " + edges::shown(job, tall) + " high or deep",
                  "correct its height or the courses that are buried");
  const std::optional<geometry::Vec> along = direction(ground.drawn);
  const Sides drawn = along ? sides(ground.drawn, *along) : Sides();
  if (!drawn.rectangle)
    return refuse("pillar-outline", "the outline of the pillar is not a rectangle", "draw four square corners");
  Round round;
  round.length = block.length->metres().si();
  round.depth = block.width->metres().si();
  round.height = block.height->metres().si();
  round.first = drawn.along;
  round.second = drawn.across;
  round.on_first = blocks_along(round, round.first);
  round.on_second = blocks_along(round, round.second);
  round.buried = buried_courses(job, pillar, round.height);
  round.courses = static_cast<int>(std::ceil(pillar.height.metres().si() / round.height - 1e-6)) + round.buried;
  if (fits(round)) return round;
  share.problems.push_back(wrong_size(job, round, id));
  return std::nullopt;
}

void say_heights(const plan::Job& job, const plan::Pillar& pillar, const Round& round, const catalogue::Item& block,
                 const plan::ElementId& of, Share& share) {
  const double above = (round.courses - round.buried) * round.height;
  share.measures.put("pillar_height_m", above);
  if (above - pillar.height.metres().si() > 1e-6)
    share.problems.push_back(edges::notice("pillar-rest",
                                           "whole courses bring the pillar to " + edges::shown(job, above) +
                                               " above the ground in place of " +
                                               edges::shown(job, pillar.height.metres().si()),
                                           "enter a height of whole courses, or let it down", of));
  if (round.buried > pillar.bury_courses)
    share.problems.push_back(edges::notice("pillar-bury",
                                           std::to_string(round.buried) +
                                               (round.buried == 1 ? " course is" : " courses are") +
                                               " buried in place of " + std::to_string(pillar.bury_courses),
                                           "the limit wall-embed of the catalogue asks for it", of));
  const std::optional<double> limit = block.number("free_standing_limit_mm");
  if (limit && above > *limit / 1000 + 1e-9)
    share.problems.push_back(edges::flag("wall-free-height",
                                         "the pillar stands " + edges::shown(job, above) + " high, over the " +
                                             edges::shown(job, *limit / 1000) + " that " + block.id +
                                             " may stand free (preliminary check)",
                                         "local code and a licensed engineer decide", of));
}

// Overhang all round; more than one cap is no cap of a pillar.
bool covers(const plan::Job& job, const catalogue::Item& cap, const Round& round, const plan::ElementId& of,
            Share& share) {
  if (!cap.length || !cap.width) return true;
  const double longer = std::max(cap.length->metres().si(), cap.width->metres().si());
  const double shorter = std::min(cap.length->metres().si(), cap.width->metres().si());
  const double over =
      std::min(longer - std::max(round.first, round.second), shorter - std::min(round.first, round.second)) / 2;
  if (over >= -out_of_size) {
    share.measures.put("cap_overhang_m", over);
    return true;
  }
  share.problems.push_back(edges::fault("pillar-cap",
                                        "the cap " + cap.id + " of " + edges::shown(job, longer) + " by " +
                                            edges::shown(job, shorter) + " does not cover the pillar",
                                        "choose a larger cap", of));
  return false;
}

void add_cap(const plan::Job& job, const plan::Pillar& pillar, const Round& round, const plan::ElementId& of,
             Share& share) {
  if (pillar.cap.empty()) return;
  const catalogue::Item* cap = edges::wanted(job, pillar.cap, "the cap of the pillar", of, share);
  if (!cap || !covers(job, *cap, round, of, share)) return;
  const Working one = term("pillar", 1, units::piece, of);
  share.lines.push_back({Stage::wall, cap->id, "cap of the pillar", {of}, one, {}, false});
  share.measures.put("caps", 1);
  edges::add_weight(job, *cap, 1, of, share);
  edges::add_task(job, "pillar-cap", Stage::wall, "cap of the pillar", of, one, share);
}

void add_base(const plan::Job& job, const plan::Pillar& pillar, const Round& round, const plan::ElementId& of,
              Share& share) {
  if (pillar.build_up.empty()) {
    share.problems.push_back(
        edges::notice("no-base", "no base is chosen under the pillar", "choose a build-up for its base", of));
    return;
  }
  const std::optional<Working> volume =
      add_pad(job, pillar.build_up, round.first, round.second, Stage::wall, "base under the pillar", of, share);
  if (!volume) return;
  share.measures.put("pillar_base_m3", volume->amount().value);
  edges::add_task(job, "wall-base", Stage::wall, "base under the pillar, along its longer side", of,
                  Working(term("longer side", std::max(round.first, round.second), units::metre, of)), share);
}

}  // namespace

Share pillar(const plan::Job& job, const plan::Ground& ground) {
  const auto* out = std::get_if<plan::KeepOut>(&ground.element->kind);
  if (!out || !out->pillar || ground.drawn.empty()) return {};
  const plan::ElementId& id = ground.element->id;
  const plan::Pillar& pillar = *out->pillar;
  Share share;
  share.measures.element = id;
  const catalogue::Item* block = edges::wanted(job, pillar.block, "the pillar", id, share);
  const std::optional<Round> round = block ? round_of(job, ground, pillar, *block, share) : std::nullopt;
  if (!round) return share;
  const Working blocks = Working::product(
      {term("courses", round->courses, units::piece, id), term("blocks in a course", round->each(), units::piece, id)});
  const int count = round->courses * round->each();
  share.lines.push_back({Stage::wall, block->id, "blocks of the pillar, turned each course", {id}, blocks, {}, false});
  share.measures.put("pillar_blocks", count);
  share.measures.put("pillar_courses", round->courses);
  say_heights(job, pillar, *round, *block, id, share);
  edges::add_weight(job, *block, count, id, share);
  edges::add_task(job, "pillar", Stage::wall, "pillar of " + std::to_string(round->courses) + " courses", id,
                  Working(term("pillar", 1, units::piece, id)), share);
  add_cap(job, pillar, *round, id, share);
  const int glued = pillar.cap.empty() ? round->courses - 1 : round->courses;
  add_glue(job, pillar.adhesive, Stage::wall, "adhesive of the pillar", id,
           Working::product({term("glued courses", glued, units::piece, id),
                             term("blocks in a course", round->each(), units::piece, id),
                             term("length of a block", round->length, units::metre, block->id + "/length")}),
           share);
  add_base(job, pillar, *round, id, share);
  return share;
}

}  // namespace takeoff::walls
