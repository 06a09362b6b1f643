#include <algorithm>
#include <cmath>
#include <optional>
#include <utility>

#include "geometry/flatten.h"
#include "takeoff/ground/fabric.h"
#include "takeoff/ground/ground.h"

namespace takeoff::ground {

using geometry::Point;
using geometry::Region;
using units::Length;

int strips(Length across, Length roll, Length lap) {
  if (across <= roll) return 1;
  const std::int64_t step = (roll - lap).steps();
  return static_cast<int>(((across - lap).steps() + step - 1) / step);
}

namespace {

// The strips one way: how long each is.
struct Laid {
  std::vector<Length> lengths;
  Length total;
};

// One connected piece of ground, as its corners.
using Corners = std::vector<Point>;

Length across(Point point, bool along_x) { return along_x ? point.y : point.x; }
Length along(Point point, bool along_x) { return along_x ? point.x : point.y; }

struct Span {
  Length low;
  Length high;
};
Span span_of(const Corners& corners, Length (*side)(Point, bool), bool along_x) {
  Span span{side(corners.front(), along_x), side(corners.front(), along_x)};
  for (const Point point : corners)
    span = {std::min(span.low, side(point, along_x)), std::max(span.high, side(point, along_x))};
  return span;
}

// How far the ground reaches along the strips between two lines across them; nothing where it does not lie there.
std::optional<Span> under(const Corners& corners, Length from, Length to, bool along_x) {
  std::optional<Span> found;
  const auto meet = [&found](double at) {
    const Length place = Length::of_steps(std::llround(at));
    found = found ? Span{std::min(found->low, place), std::max(found->high, place)} : Span{place, place};
  };
  for (std::size_t i = 0; i < corners.size(); ++i) {
    const Point a = corners[i], b = corners[(i + 1) % corners.size()];
    const auto a_across = static_cast<double>(across(a, along_x).steps()),
               b_across = static_cast<double>(across(b, along_x).steps());
    const auto a_along = static_cast<double>(along(a, along_x).steps()),
               b_along = static_cast<double>(along(b, along_x).steps());
    if (across(a, along_x) >= from && across(a, along_x) <= to) meet(a_along);
    for (const Length line : {from, to}) {
      const auto at = static_cast<double>(line.steps());
      if ((a_across < at) != (b_across < at))
        meet(a_along + (b_along - a_along) * (at - a_across) / (b_across - a_across));
    }
  }
  return found;
}

// Strips over one piece of ground, beginning at its low or its high side, with what stands up beside it.
Laid lay(const Corners& corners, Length roll, Length lap, Length turn_up, bool along_x, bool from_low) {
  const Span whole = span_of(corners, across, along_x);
  const Length low = whole.low - turn_up, high = whole.high + turn_up;
  Laid laid;
  const int count = strips(high - low, roll, lap);
  for (int i = 0; i < count; ++i) {
    const Length from = from_low ? low + (roll - lap) * i : high - (roll - lap) * i - roll;
    // A strip that only stands up beside the ground is as long as the ground's own edge there.
    const Length nearest = std::clamp(from, whole.low, whole.high),
                 furthest = std::clamp(from + roll, whole.low, whole.high);
    const auto reach = under(corners, nearest, furthest, along_x);
    const Length length = turn_up * 2 + (reach ? reach->high - reach->low : Length());
    laid.lengths.push_back(length);
    laid.total += length;
  }
  return laid;
}

// Both ways and from either side, the least of the four; of equals the first.
Laid best(const Corners& corners, Length roll, Length lap, Length turn_up) {
  Laid found = lay(corners, roll, lap, turn_up, true, true);
  for (const auto& [along_x, from_low] : {std::pair{true, false}, {false, true}, {false, false}})
    if (Laid other = lay(corners, roll, lap, turn_up, along_x, from_low); other.total < found.total)
      found = std::move(other);
  return found;
}

// Every connected piece of ground has strips of its own.
Laid laid_under(const Region& footprint, Length roll, Length lap, Length turn_up) {
  Laid all;
  for (const geometry::Polygon& polygon : footprint.polygons()) {
    const Laid one = best(geometry::flatten(polygon.outer.edges()), roll, lap, turn_up);
    all.lengths.insert(all.lengths.end(), one.lengths.begin(), one.lengths.end());
    all.total += one.total;
  }
  return all;
}

// A layer says in its notes that it is for soft ground alone.
bool left_out(const plan::Job& job, const Body& body) {
  return job.choices.cbr != "soft" && body.layer.notes.find("soft ground only") != std::string::npos;
}

}  // namespace

Share fabric(const plan::Job& job, const plan::Site&, const Bodies& bodies) {
  Share share;
  for (const Body& body : bodies.bodies) {
    if (body.layer.role != "fabric") continue;
    if (left_out(job, body)) {
      share.problems.push_back({problem::Severity::notice,
                                "fabric-left-out",
                                "fabric left out: firm ground",
                                "say that the ground is soft where it is, and the fabric is laid",
                                {body.of.front(), "", 0, 0, {}}});
      continue;
    }
    const catalogue::Item* item = job.catalogue->item(body.layer.item);
    if (!item || !item->length || !item->width) {
      share.problems.push_back({problem::Severity::problem,
                                "item-unknown",
                                "the fabric '" + body.layer.item + "' is not in the job's catalogue with its roll size",
                                "choose a roll that it has",
                                {body.of.front(), "", 0, 0, {}}});
      continue;
    }
    const Body* base = nullptr;  // the layer that lies on the fabric
    for (const Body& other : bodies.bodies)
      if (other.group == body.group && other.thickness > 0) base = &other;
    if (!base) continue;
    const Length lap = job.catalogue->length_limit("fabric-overlap-" + job.choices.cbr, Length::inches(12));
    // Open-graded stone is wrapped: up its sides by its own depth and 12 in over (common practice).
    const Length turn_up =
        base->open ? Length::nearest(units::Metres(base->thickness)) + body.layer.past_edge : Length();
    // Under dense stone it reaches past the edge as its layer says.
    const Length past = base->open ? Length() : std::max(Length(), body.layer.past_edge - base->layer.past_edge);
    const Laid laid = laid_under(base->footprint, *item->width, lap, turn_up > Length() ? turn_up : past);
    std::vector<Working> parts;
    for (std::size_t i = 0; i < laid.lengths.size(); ++i)
      parts.push_back(
          term("strip " + std::to_string(i + 1), laid.lengths[i].metres().si(), units::metre, body.of.front()));
    share.lines.push_back(
        {Stage::base,
         item->id,
         "fabric under the base, laps " + units::show_length(lap, job.heading.units) +
             (turn_up > Length() ? ", turned up " + units::show_length(turn_up, job.heading.units) + " at the sides"
                                 : ""),
         body.of,
         Working::sum(std::move(parts)),
         {},
         false});
    share.tasks.push_back({Stage::base,
                           "fabric-lay",
                           "fabric",
                           body.of,
                           Working::product({share.lines.back().working, term("roll width", item->width->metres().si(),
                                                                              units::metre, item->id + "/width")}),
                           1,
                           {}});
    share.facts.push_back("fabric");
  }
  return share;
}

}  // namespace takeoff::ground
