#include <algorithm>
#include <cmath>

#include "geometry/overlay.h"
#include "geometry/validity.h"
#include "takeoff/ground/fabric.h"
#include "takeoff/ground/ground.h"

namespace takeoff::ground {

using geometry::Box;
using geometry::Point;
using geometry::Region;
using units::Length;

int strips(Length across, Length roll, Length lap) {
  if (across <= roll) return 1;
  const std::int64_t step = (roll - lap).steps();
  return static_cast<int>(((across - lap).steps() + step - 1) / step);
}

namespace {

// A rectangle of the plan as a region.
Region rectangle(const Box& box) {
  const auto made = geometry::region({{box.low, 0, {}},
                                      {{box.high.x, box.low.y}, 0, {}},
                                      {box.high, 0, {}},
                                      {{box.low.x, box.high.y}, 0, {}}});
  return made ? *made : Region{};
}

// The strips one way: how long each is, from the footprint under it.
struct Laid {
  std::vector<Length> lengths;
  Length total;
};

Laid lay(const Region& footprint, Length roll, Length lap, Length turn_up, bool along_x) {
  const Box box = footprint.bounds();
  const Length low = (along_x ? box.low.y : box.low.x) - turn_up;
  const Length high = (along_x ? box.high.y : box.high.x) + turn_up;
  Laid laid;
  const int count = strips(high - low, roll, lap);
  for (int i = 0; i < count; ++i) {
    const Length from = low + (roll - lap) * i;
    const Length to = from + roll;
    const Box under = along_x ? Box{{box.low.x, from}, {box.high.x, to}} : Box{{from, box.low.y}, {to, box.high.y}};
    const auto part = geometry::meet(footprint, rectangle(under));
    Length length = turn_up + turn_up;
    if (part && !part->empty()) {
      const Box reach = part->bounds();
      length += along_x ? reach.high.x - reach.low.x : reach.high.y - reach.low.y;
    } else if (turn_up == Length()) {
      continue;
    } else {
      // A strip that only stands up beside the footprint is as long as its neighbour.
      length = laid.lengths.empty() ? high - low : laid.lengths.back();
    }
    laid.lengths.push_back(length);
    laid.total += length;
  }
  return laid;
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
      share.problems.push_back({problem::Severity::notice, "fabric-left-out", "fabric left out: firm ground",
                                "say that the ground is soft where it is, and the fabric is laid",
                                {body.of.front(), "", 0, 0, {}}});
      continue;
    }
    const catalogue::Item* item = job.catalogue->item(body.layer.item);
    if (!item || !item->length || !item->width) {
      share.problems.push_back({problem::Severity::problem, "item-unknown",
                                "the fabric '" + body.layer.item + "' is not in the job's catalogue with its roll size",
                                "choose a roll that it has",
                                {body.of.front(), "", 0, 0, {}}});
      continue;
    }
    const Body* base = nullptr;  // the layer that lies on the fabric
    for (const Body& other : bodies.bodies)
      if (other.of == body.of && other.build_up == body.build_up && other.thickness > 0) base = &other;
    if (!base) continue;
    const Length lap = job.catalogue->length_limit("fabric-overlap-" + job.choices.cbr, Length::inches(12));
    // Open-graded stone is wrapped: up its sides by its own depth and 12 in over (common practice).
    const Length turn_up =
        base->open ? Length::nearest(units::Metres(base->thickness)) + body.layer.past_edge : Length();
    const Laid one = lay(base->footprint, *item->width, lap, turn_up, true);
    const Laid two = lay(base->footprint, *item->width, lap, turn_up, false);
    const Laid& laid = two.total < one.total ? two : one;
    std::vector<Working> parts;
    for (std::size_t i = 0; i < laid.lengths.size(); ++i)
      parts.push_back(term("strip " + std::to_string(i + 1), laid.lengths[i].metres().si(), units::metre,
                           body.of.front()));
    share.lines.push_back({Stage::base, item->id,
                           "fabric under the base, laps " + units::show_length(lap, job.heading.units) +
                               (turn_up > Length()
                                    ? ", turned up " + units::show_length(turn_up, job.heading.units) + " at the sides"
                                    : ""),
                           body.of, Working::sum(std::move(parts)), {}, false});
    share.tasks.push_back({Stage::base, "fabric-lay", "fabric", body.of,
                           Working::product({share.lines.back().working,
                                             term("roll width", item->width->metres().si(), units::metre,
                                                  item->id + "/width")}),
                           1, {}});
    share.facts.push_back("fabric");
  }
  return share;
}

}  // namespace takeoff::ground
