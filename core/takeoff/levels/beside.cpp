#include <algorithm>

#include "geometry/index.h"
#include "takeoff/levels/follow.h"
#include "takeoff/levels/judged.h"
#include "takeoff/levels/words.h"

namespace takeoff::levels {

using geometry::Point;
using geometry::Vec;
using problem::Severity;

namespace {

constexpr double inch = units::metres_per_inch;
constexpr double near_pool = 0.5;     // metres: how far from the coping a reading of it may be marked
constexpr double beside = 0.3;        // metres behind a wall or off a coping where the ground is looked at
constexpr double every = 0.5;         // metres along them
constexpr double ground_over = 0.01;  // metres: less is within what anybody reads

// Ground as it will lie there: finished paving, or the ground as measured; never a guess.
std::optional<double> ground_at(const Look& look, Point at) {
  if (const auto finished = look.terrain.finished_at(at)) return finished;
  return look.terrain.guessed_at(at) ? std::nullopt : look.terrain.existing_at(at);
}

struct Highest {
  double over = ground_over;
  std::optional<Point> at;
  void take(const std::optional<double>& ground, double top, Point place) {
    if (!ground || *ground - top <= over) return;
    over = *ground - top;
    at = place;
  }
};

// Places off a curve on one side of it.
template <class See>
void walk(const geometry::Curve& curve, double off_left, See see) {
  const double run = curve.length() / units::Length::steps_per_metre;
  const int count = std::max(1, static_cast<int>(run / every));
  for (int i = 0; i <= count; ++i) {
    const double share = static_cast<double>(i) / count;
    const Vec off = (off_left * units::Length::steps_per_metre) * left_of(curve.direction(share));
    see(moved(curve.start, curve.at(share) + off), share * run);
  }
}

void look_at_readings(const Look& look, const plan::Ground& ground, Share& share) {
  double least = 1e9;
  double greatest = -1e9;
  for (const auto& element : look.job.elements) {
    const auto* level = std::get_if<plan::Level>(&element->kind);
    const auto height = look.terrain.points.find(element->id);
    if (level == nullptr || level->what != "coping" || height == look.terrain.points.end()) continue;
    double distance = 1e9;
    for (const geometry::Outline* outline : ground.footprint.outlines())
      for (const geometry::Curve& curve : geometry::curves(outline->edges()))
        distance = std::min(distance, geometry::nearest(curve, level->at).distance);
    if (distance > near_pool && !ground.footprint.contains(level->at)) continue;
    least = std::min(least, height->second);
    greatest = std::max(greatest, height->second);
  }
  if (greatest < least) return;
  share.measures.put("coping_range_m", greatest - least);
  if (greatest - least <= limit(look.job, "coping-range", Bound::greatest, 0.25 * inch) + 1e-6) return;
  share.problems.push_back(
      said(Severity::flag, "coping-range",
           "readings round its coping differ by " + shown(look.job, greatest - least) + ": the water will show it",
           "reset the coping, or agree it with the owner", ground.element->id));
}

}  // namespace

void look_at_pool(const Look& look, const plan::Ground& ground, Share& share) {
  look_at_readings(look, ground, share);
  const auto& pool = std::get<plan::Pool>(ground.element->kind);
  if (!pool.coping_level) return;
  Highest highest;
  const auto outlines = ground.net.outlines();
  for (const plan::Stretch& stretch : ground.stretches) {
    if (stretch.meets != plan::Meets::planting) continue;
    const geometry::Ring& ring = outlines[static_cast<std::size_t>(stretch.outline)]->edges();
    const geometry::Curve curve = geometry::curve(ring, static_cast<std::size_t>(stretch.edge));
    walk(curve, -beside, [&](Point at, double station) {
      if (station >= stretch.from && station <= stretch.to)
        highest.take(ground_at(look, at), pool.coping_level->metres().si(), at);
    });
  }
  if (!highest.at) return;
  share.problems.push_back(said(Severity::flag, "coping-low",
                                "the ground beside its coping lies up to " + shown(look.job, highest.over) +
                                    " over it: rain carries earth into the pool",
                                "lower the ground there, hold it with a wall, or lead the water away",
                                ground.element->id, highest.at));
}

void look_at_wall(const Look& look, const plan::Ground& ground, Share& share) {
  const auto& wall = std::get<plan::Wall>(ground.element->kind);
  if (wall.free_standing || wall.top.empty() || !ground.path) return;
  double depth = wall.thickness.metres().si();
  if (const catalogue::Item* block = look.job.catalogue->item(wall.block); depth == 0 && block && block->width)
    depth = block->width->metres().si();
  const double off = (depth + beside) * (wall.behind == geometry::Side::left ? 1 : -1);
  Highest highest;
  double station = 0;
  for (std::size_t i = 0; i < ground.path->size(); ++i) {
    const geometry::Curve curve = ground.path->curve(i);
    walk(curve, off, [&](Point at, double along) {
      highest.take(ground_at(look, at), height_at(wall.top, station + along, true), at);
    });
    station += curve.length() / units::Length::steps_per_metre;
  }
  if (!highest.at) return;
  share.problems.push_back(said(Severity::flag, "cap-low",
                                "the ground behind it lies up to " + shown(look.job, highest.over) + " over its top",
                                "raise the wall, or cut the ground down behind it", ground.element->id, highest.at));
}

}  // namespace takeoff::levels
