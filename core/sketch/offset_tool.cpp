#include "sketch/offset_tool.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "geometry/index.h"
#include "plan/footprint.h"
#include "sketch/change.h"
#include "sketch/change_words.h"
#include "sketch/words.h"

namespace sketch {

namespace {

using geometry::Point;

// How far the point lies off the drawing: outlines positive outside, lines positive to their left.
double off(const plan::Element& element, Point at) {
  const auto edges = plan::drawn_edges(element);
  double least = std::numeric_limits<double>::infinity();
  const geometry::Curve* nearest = nullptr;
  for (const plan::DrawnEdge& edge : edges) {
    const double distance = geometry::nearest(edge.curve, at).distance;
    if (distance < least) {
      least = distance;
      nearest = &edge.curve;
    }
  }
  if (nearest == nullptr) return 0;
  const double share = geometry::nearest(*nearest, at).share;
  const geometry::Vec from = at - geometry::moved(nearest->start, nearest->at(share));
  const bool left = geometry::cross(nearest->direction(share), from) > 0;
  const double steps = least * units::Length::steps_per_metre;
  if (edges.front().start.ring < 0) return left ? steps : -steps;
  geometry::Ring ring;
  for (const plan::DrawnEdge& edge : edges) {
    if (edge.start.ring == 0) ring.push_back({edge.curve.start, edge.curve.bulge, {}});
  }
  const bool counter_clockwise = geometry::signed_area(ring).si() > 0;
  return left == counter_clockwise ? -steps : steps;
}

bool past_the_plan(units::Length by) { return by > geometry::reach_of_plan || by < -geometry::reach_of_plan; }

class OffsetTool : public PointsTool {
 public:
  OffsetTool() : PointsTool(words::offset, 1, {{"offset", words::f_offset, Reads::length}}) {}

 protected:
  bool typed_is_enough(std::size_t) const override { return true; }
  const char* wants(std::size_t) const override { return words::offset_wants; }
  bool choose(const std::string& id) override {
    if (id != "keep") return false;
    keep_ = !keep_;
    return true;
  }

  Answer finish(const std::vector<Point>& points, const Scene& scene) override {
    auto ids = free_of(scene);
    const units::Length by = how_far(points, scene);
    // Past the plan's reach an offset has no meaning, and its round corners no end of chords.
    if (past_the_plan(by)) return refuse("place-too-far", words::too_far, words::too_far_mend);
    const std::string name = edit_name("Offset", scene.job, ids);
    plan::Job job = scene.job;
    if (keep_) {
      auto [with, made] = plan::with_copies(job, ids, {});
      job = std::move(with);
      ids = std::move(made);
    }
    auto after = changed(job, ids, [by](plan::Element element) { return plan::offset(std::move(element), by); });
    if (!after) return refuse(after.error());
    return done(std::move(*after), name, std::move(ids));
  }

  void show_fields(Fields& shown, const std::vector<Point>& points, const Scene& scene) const override {
    if (!points.empty()) shown.point("offset", how_far(points, scene), scene.job.heading.units);
  }

  void show(View& view, const std::vector<Point>& points, const Scene& scene) const override {
    view.choices.push_back({"keep", words::keep_first, keep_, false});
    const units::Length by = how_far(points, scene);
    if (by == units::Length{} || past_the_plan(by)) return;
    add_strokes(view, scene.job, free_of(scene), Pen::rubber,
                [by](plan::Element element) { return plan::offset(std::move(element), by); });
  }

 private:
  units::Length how_far(const std::vector<Point>& points, const Scene& scene) const {
    if (const auto typed = fields().length("offset"); typed && fields().has("offset")) return *typed;
    const auto ids = free_of(scene);
    if (points.empty() || ids.empty()) return {};
    return units::Length::of_steps(std::llround(off(*scene.job.find(ids.front()), points.back())));
  }
  bool keep_ = false;
};

}  // namespace

std::unique_ptr<Tool> offset_tool() { return std::make_unique<OffsetTool>(); }

}  // namespace sketch
