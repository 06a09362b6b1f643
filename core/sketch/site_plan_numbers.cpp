#include "sketch/site_plan_numbers.h"

#include <cmath>

#include "sketch/words.h"

namespace sketch {

using geometry::Point;
using geometry::Vec;
using plan::KnownLength;
using plan::SitePlan;

namespace {

template <class Move>
void move_all(SitePlan& plan, const Move& move) {
  plan.at = move(plan.at);
  for (auto* known : {&plan.scale, &plan.check}) {
    if (!*known) continue;
    (*known)->from = move((*known)->from);
    (*known)->to = move((*known)->to);
  }
}

}  // namespace

double metres_per_pixel(const SitePlan& plan) {
  return plan.metres_per_pixel > 0 ? plan.metres_per_pixel : metres_per_pixel_unscaled;
}

problem::Result<SitePlan> scaled(SitePlan plan, const KnownLength& known) {
  if (known.length <= units::Length())
    return problem::fault("scale-length", words::scale_length, words::scale_length_mend);
  const double drawn = length(known.to - known.from);
  if (drawn < 1) return problem::fault("scale-points", words::scale_points, words::scale_points_mend);
  const double times = static_cast<double>(known.length.steps()) / drawn;
  const double made = metres_per_pixel(plan) * times;
  if (!(made > 1e-6 && made < 1e3)) return problem::fault("scale-size", words::scale_size, words::scale_size_mend);
  plan.metres_per_pixel = made;
  plan.scale = known;
  move_all(plan, [&](Point at) { return geometry::moved(known.from, times * (at - known.from)); });
  plan.locked = true;
  return plan;
}

SitePlan turned(SitePlan plan, Point about, units::Angle by) {
  const units::Turn turn = units::turn(by);
  move_all(plan, [&](Point at) {
    const Vec out = at - about;
    return geometry::moved(about, {turn.cosine * out.x - turn.sine * out.y, turn.sine * out.x + turn.cosine * out.y});
  });
  plan.turn = units::Angle::degrees(std::remainder(plan.turn.degrees() + by.degrees(), 360));
  return plan;
}

SitePlan moved(SitePlan plan, Vec whole_steps) {
  move_all(plan, [&](Point at) { return geometry::moved(at, whole_steps); });
  return plan;
}

double error_percent(const KnownLength& check) {
  const auto typed = static_cast<double>(check.length.steps());
  return (length(check.to - check.from) - typed) / typed * 100;
}

}  // namespace sketch
