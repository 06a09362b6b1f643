// How a shape in hand shows itself: its fields, what it wants, strokes, marks and chips.
#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

#include "sketch/chips.h"
#include "sketch/shaper.h"
#include "sketch/shapes.h"
#include "sketch/words.h"

namespace sketch {

using geometry::Curve;
using geometry::Point;
using Way = Shaper::Way;

namespace {

struct WayWord {
  Way way;
  const char* id;
  const char* label;
  bool closes_only;
};
constexpr std::array ways{
    WayWord{Way::corners, "corners", words::corners, false},
    WayWord{Way::rectangle, "rectangle", words::rectangle, true},
    WayWord{Way::circle, "circle", words::circle, true},
    WayWord{Way::across, "circle-across", words::across, true},
    WayWord{Way::three, "circle-three", words::three, true},
    WayWord{Way::freeform, "freeform", words::freeform, false},
};
struct EdgeWord {
  EdgeWay way;
  const char* id;
  const char* label;
};
constexpr std::array edge_ways{
    EdgeWord{EdgeWay::line, "line", words::line},
    EdgeWord{EdgeWay::tangent, "tangent", words::arc_tangent_way},
    EdgeWord{EdgeWay::through, "through-third", words::arc_through_way},
    EdgeWord{EdgeWay::centre, "centre-start-end", words::arc_centre_way},
};

void show_aim(View& view, const Aimed& aim) {
  if (aim.taken.takes != Takes::nothing) view.marks.push_back({aim.taken.takes, aim.at()});
  if (aim.guide && aim.guide->radius == 0 && aim.guide->from != aim.at())
    view.strokes.push_back({{{{aim.guide->from, 0, {}}}, aim.at(), {}}, false, Pen::guide});
}

}  // namespace

std::optional<Way> shape_way(const std::string& id) {
  const auto* found = std::ranges::find_if(ways, [&](const WayWord& one) { return id == one.id; });
  if (found == ways.end()) return {};
  return found->way;
}

std::optional<EdgeWay> edge_way(const std::string& id) {
  const auto* found = std::ranges::find_if(edge_ways, [&](const EdgeWord& one) { return id == one.id; });
  if (found == edge_ways.end()) return {};
  return found->way;
}

std::string word(EdgeWay way) { return std::ranges::find(edge_ways, way, &EdgeWord::way)->id; }

std::string Shaper::wants() const {
  const bool none = points_.empty();
  switch (way_) {
    case Way::rectangle: return none ? words::first_corner : words::opposite_corner;
    case Way::circle: return none ? words::circle_centre : words::circle_radius;
    case Way::across: return none ? words::circle_point : words::circle_opposite;
    case Way::three:
      return none ? words::circle_point : points_.size() == 1 ? words::circle_second : words::circle_third;
    case Way::freeform: return closes_ ? words::curve_close : words::curve_end;
    case Way::corners: break;
  }
  if (none) return closes_ ? words::first_corner : words::first_point;
  switch (start().way) {
    case EdgeWay::through: return set_ ? words::arc_point : words::arc_end;
    case EdgeWay::centre: return set_ ? words::arc_swing : words::arc_centre;
    case EdgeWay::tangent: return words::arc_tangent;
    case EdgeWay::line: break;
  }
  if (!enough()) return words::next_corner;
  return closes_ ? words::next_or_close : words::next_or_end;
}

void Shaper::show(View& view, const Scene& scene) const {
  view.busy = busy();
  view.wants = wants();
  show_choices(view);
  Fields fields = fields_;
  if (points_.empty()) {
    const Next next = first_corner(scene, pointer(), fields_);
    show_place(fields, {}, next.at, scene.job.heading.units);
    if (pointer_) show_aim(view, next.aimed);
  } else if (whole()) {
    show_whole_shape(view, fields, scene);
  } else if (way_ == Way::freeform) {
    show_freeform(view, fields, scene);
  } else {
    show_corners(view, fields, scene);
  }
  for (Field& field : fields.shown()) view.fields.push_back(std::move(field));
}

// Before the first point: what shape it shall be. After it: what the next edge shall be. Both together would fill the
// prompt.
void Shaper::show_choices(View& view) const {
  if (!busy()) {
    for (const WayWord& one : ways)
      if (closes_ || !one.closes_only) view.choices.push_back({one.id, one.label, one.way == way_, false});
    return;
  }
  if (way_ != Way::corners) return;
  for (const EdgeWord& one : edge_ways) view.choices.push_back({one.id, one.label, one.way == edge_way_, false});
}

void Shaper::show_corners(View& view, Fields& fields, const Scene& scene) const {
  const Start now = start();
  const Next next = next_edge(scene, now, pointer(), fields_);
  show_edge(fields, now, next, scene.job.heading.units);
  if (!now.in_hand.edges.empty()) view.strokes.push_back({set_so_far(), false, Pen::in_hand});
  show_aim(view, next.aimed);
  if (next.at == points_.back()) return;
  const bool of_centre = now.way == EdgeWay::centre && !set_;
  const Curve rubber{points_.back(), next.at, of_centre ? 0 : next.bulge};
  view.strokes.push_back({as_line({rubber}), false, of_centre ? Pen::guide : Pen::rubber});
  if (of_centre) return;
  view.chips.push_back(length_chip(rubber, scene.job.heading.units));
  if (!now.in_hand.edges.empty() && !set_) view.chips.push_back(corner_chip(now.in_hand.edges.back(), rubber));
  std::vector<Curve> ring = now.in_hand.edges;
  ring.push_back(rubber);
  if (!closes_ || ring.size() < 2 || next.at == points_.front()) return;
  const Curve closing{next.at, points_.front(), 0};
  view.strokes.push_back({as_line({closing}), false, Pen::guide});
  ring.push_back(closing);
  view.chips.push_back(area_chip(ring, scene.job.heading.units));
}

void Shaper::show_whole_shape(View& view, Fields& fields, const Scene& scene) const {
  const WholeStart now = whole_start(scene);
  const Aimed aim = aimed_at_points(scene, {}, pointer());
  show_aim(view, aim);
  if (points_.size() + 1 < places_needed(now.whole)) {
    show_place(fields, points_.back(), placed(points_.back(), aim.at(), fields_), scene.job.heading.units);
    return;
  }
  const auto ring = whole_ring(now, aim.at(), fields_);
  if (!ring) return;
  const std::vector<Curve> curves = geometry::curves(*ring);
  show_whole(fields, now, *ring, scene.job.heading.units);
  view.strokes.push_back({as_line(curves), true, Pen::rubber});
  if (now.whole == Whole::rectangle) {
    view.chips.push_back(length_chip(curves[0], scene.job.heading.units));
    view.chips.push_back(length_chip(curves[1], scene.job.heading.units));
  } else {
    view.chips.push_back(radius_chip(curves[0], scene.job.heading.units));
  }
  view.chips.push_back(area_chip(curves, scene.job.heading.units));
}

Aimed Shaper::control_point(const Scene& scene) const {
  InHand in_hand;
  in_hand.points = points_;
  Aimed aim = aimed_at_points(scene, in_hand, pointer());
  const Point at = placed(points_.back(), aim.at(), fields_);
  if (at != aim.at()) aim = {{Takes::nothing, at, {}, {}}, {}};
  return aim;
}

void Shaper::show_freeform(View& view, Fields& fields, const Scene& scene) const {
  const Aimed aim = control_point(scene);
  show_aim(view, aim);
  show_place(fields, points_.back(), aim.at(), scene.job.heading.units);
  std::vector<Point> through = points_;
  if (aim.at() != points_.back() && aim.at() != points_.front()) through.push_back(aim.at());
  if (through.size() < 2) return;
  const bool closed = closes_ && through.size() >= 3;
  const plan::DrawnRing ring{{}, through};
  const plan::DrawnLine line{{}, through.back(), through};
  const std::vector<Curve> curves = closed ? drawn_curves(ring) : drawn_curves(line);
  view.strokes.push_back({as_line(curves), closed, Pen::rubber});
  if (closed) view.chips.push_back(area_chip(curves, scene.job.heading.units));
}

}  // namespace sketch
