#include "sketch/measure_tool.h"

#include <cmath>
#include <numbers>

#include "geometry/index.h"
#include "sketch/chips.h"
#include "sketch/next_edge.h"
#include "sketch/shapes.h"
#include "sketch/words.h"

namespace sketch {

using geometry::Curve;
using geometry::Point;

namespace {

class MeasureTool : public Tool {
 public:
  Answer take(const Event& event, const Scene& scene) override {
    if (const auto* moved = std::get_if<Moved>(&event)) pointer_ = {moved->at, moved->hold};
    if (const auto* pressed = std::get_if<Pressed>(&event)) return press(*pressed, scene);
    const auto* key = std::get_if<Key>(&event);
    if (!key) return {};
    if (*key == Key::enter && !ended_) {
      ended_ = points_.size() >= 2;
      return {};
    }
    if (*key == Key::back || *key == Key::undo) {
      if (!points_.empty()) points_.pop_back();
      ended_ = false;
    }
    if (*key == Key::escape) {
      const bool leave = points_.empty();
      points_.clear();
      ended_ = false;
      return {{}, {}, {}, leave};
    }
    return {};
  }

  View view(const Scene& scene) const override {
    View view;
    view.hand = words::measure;
    view.busy = !points_.empty() && !ended_;
    view.wants = points_.empty() || ended_ ? words::measure_begin : words::measure_next;
    std::vector<Point> points = points_;
    if (!ended_ && pointer_) {
      const Aimed aim = aimed(scene, in_hand(), *pointer_);
      if (aim.taken.takes != Takes::nothing) view.marks.push_back({aim.taken.takes, aim.at()});
      if (!points.empty() && aim.at() != points.back()) points.push_back(aim.at());
    }
    if (points.size() >= 2) show(view, points, scene.job.heading.units);
    return view;
  }

 private:
  Answer press(const Pressed& pressed, const Scene& scene) {
    pointer_ = Pointer{pressed.at, pressed.hold};
    if (pressed.twice) {
      ended_ = points_.size() >= 2;
      return {};
    }
    if (ended_) points_.clear();
    ended_ = false;
    const Point at = aimed(scene, in_hand(), *pointer_).at();
    if (geometry::past_reach(at))
      return {{},
              {},
              problem::Problem{problem::Severity::problem, "place-too-far", words::too_far, words::too_far_mend, {}},
              false};
    if (!points_.empty() && at == points_.back()) return {};
    points_.push_back(at);
    return {};
  }

  InHand in_hand() const {
    InHand made;
    made.points = points_;
    for (std::size_t i = 0; i + 1 < points_.size(); ++i) made.edges.push_back({points_[i], points_[i + 1], 0});
    return made;
  }

  static void show(View& view, const std::vector<Point>& points, units::System system) {
    plan::DrawnLine line;
    std::vector<Curve> edges;
    double total = 0;
    for (std::size_t i = 0; i + 1 < points.size(); ++i) {
      edges.push_back({points[i], points[i + 1], 0});
      line.edges.push_back({points[i], 0, {}});
      total += edges.back().length();
      view.chips.push_back(length_chip(edges.back(), system));
      if (i > 0) view.chips.push_back(corner_chip(edges[i - 1], edges[i]));
    }
    line.end = points.back();
    view.strokes.push_back({line, false, Pen::tape});
    view.fields.push_back({"length", words::f_length, show_length(edges.back().length(), system), {}, false, false});
    view.fields.push_back({"total", words::f_total, show_length(total, system), {}, false, false});
    const geometry::Vec last = edges.back().chord();
    view.fields.push_back({"angle",
                           words::f_direction,
                           show_angle(std::atan2(last.y, last.x) * 180 / std::numbers::pi),
                           {},
                           false,
                           false});
    if (edges.size() < 2) return;
    if (points.back() != points.front()) edges.push_back({points.back(), points.front(), 0});
    view.fields.push_back({"area", words::f_area, show_area(std::abs(area(edges)), system), {}, false, false});
  }

  std::vector<Point> points_;
  bool ended_ = false;  // it stays in view until the next is begun
  std::optional<Pointer> pointer_;
};

}  // namespace

std::unique_ptr<Tool> measure_tool() { return std::make_unique<MeasureTool>(); }

}  // namespace sketch
