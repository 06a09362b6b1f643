#include "sketch/move_tool.h"

#include "sketch/change.h"
#include "sketch/change_words.h"
#include "sketch/chips.h"
#include "sketch/next_edge.h"

namespace sketch {

namespace {

using geometry::Point;

class MoveTool : public PointsTool {
 public:
  explicit MoveTool(bool copies)
      : PointsTool(copies ? words::copy : words::move, 2,
                   {field::x(), field::y(), field::length(), field::direction()}),
        copies_(copies) {}

 protected:
  bool typed_is_enough(std::size_t) const override { return true; }
  const char* wants(std::size_t set) const override { return set == 0 ? words::move_from : words::move_to; }

  Answer finish(const std::vector<Point>& points, const Scene& scene) override {
    const geometry::Vec by = move(points);
    if (by == geometry::Vec{}) return refuse("same-place", words::same_place, words::same_place_mend);
    const auto ids = free_of(scene);
    if (copies_) {
      auto [after, made] = plan::with_copies(scene.job, ids, by);
      return done(std::move(after), edit_name("Copy", scene.job, ids), std::move(made));
    }
    auto after = changed(scene.job, ids, [by](plan::Element element) { return plan::moved(std::move(element), by); });
    if (!after) return refuse(after.error());
    return done(std::move(*after), edit_name("Move", scene.job, ids), ids);
  }

  void show_fields(Fields& fields, const std::vector<Point>& points, const Scene& scene) const override {
    if (points.size() == 2) show_place(fields, points[0], points[1], scene.job.heading.units);
  }

  void show(View& view, const std::vector<Point>& points, const Scene& scene) const override {
    const geometry::Vec by = move(points);
    if (by == geometry::Vec{}) return;
    add_strokes(view, scene.job, free_of(scene), Pen::rubber,
                [by](plan::Element element) { return plan::moved(std::move(element), by); });
    if (points.size() == 2) view.chips.push_back(length_chip({points[0], points[1], 0}, scene.job.heading.units));
  }

 private:
  // Typed without a point: from anywhere.
  geometry::Vec move(const std::vector<Point>& points) const {
    if (points.size() == 2) return points[1] - points[0];
    if (!fields().typed()) return {};
    return placed({}, {}, fields()) - Point{};
  }
  bool copies_;
};

}  // namespace

std::unique_ptr<Tool> move_tool() { return std::make_unique<MoveTool>(false); }
std::unique_ptr<Tool> copy_tool() { return std::make_unique<MoveTool>(true); }

}  // namespace sketch
