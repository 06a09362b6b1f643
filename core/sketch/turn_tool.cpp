#include "sketch/turn_tool.h"

#include <cmath>
#include <numbers>

#include "sketch/change.h"
#include "sketch/change_words.h"
#include "sketch/words.h"

namespace sketch {

namespace {

using geometry::Point;

// The point that stays, a point to turn, where that point lies then; or the point that stays and a typed angle.
class TurnTool : public PointsTool {
 public:
  TurnTool() : PointsTool(words::turn, 3, {field::turn()}) {}

 protected:
  bool typed_is_enough(std::size_t set) const override { return set >= 1; }
  const char* wants(std::size_t set) const override {
    return set == 0 ? words::turn_about : set == 1 ? words::turn_from : words::turn_to;
  }

  Answer finish(const std::vector<Point>& points, const Scene& scene) override {
    const auto by = angle(points);
    if (!by || *by == 0) return refuse("same-place", words::same_place, words::same_place_mend);
    const auto ids = free_of(scene);
    auto after = changed(scene.job, ids, [&](plan::Element element) {
      return plan::turned(std::move(element), points.front(), units::Angle::degrees(*by));
    });
    if (!after) return refuse(after.error());
    return done(std::move(*after), edit_name("Turn", scene.job, ids), ids);
  }

  void show_fields(Fields& shown, const std::vector<Point>& points, const Scene&) const override {
    if (const auto by = angle(points)) shown.point("angle", *by);
  }

  void show(View& view, const std::vector<Point>& points, const Scene& scene) const override {
    const auto by = angle(points);
    if (!by || points.empty()) return;
    add_strokes(view, scene.job, free_of(scene), Pen::rubber, [&](plan::Element element) {
      return plan::turned(std::move(element), points.front(), units::Angle::degrees(*by));
    });
    view.chips.push_back({points.front(), 0, show_angle(*by)});
  }

 private:
  std::optional<double> angle(const std::vector<Point>& points) const {
    if (fields().has("angle")) return fields().number("angle");
    if (points.size() < 3) return std::nullopt;
    const geometry::Vec from = points[1] - points[0];
    const geometry::Vec to = points[2] - points[0];
    return std::atan2(geometry::cross(from, to), geometry::dot(from, to)) * 180 / std::numbers::pi;
  }
};

}  // namespace

std::unique_ptr<Tool> turn_tool() { return std::make_unique<TurnTool>(); }

}  // namespace sketch
