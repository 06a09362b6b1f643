#include "sketch/split_tool.h"

#include "sketch/change.h"
#include "sketch/change_words.h"
#include "sketch/next_edge.h"

namespace sketch {

namespace {

using geometry::Point;

class SplitTool : public PointsTool {
 public:
  SplitTool() : PointsTool(words::split, 2, {field::length(), field::direction()}) {}

 protected:
  const char* wants(std::size_t set) const override { return set == 0 ? words::split_from : words::split_to; }

  Answer finish(const std::vector<Point>& points, const Scene& scene) override {
    const plan::ElementId id = free_of(scene).front();
    const plan::Element& element = *scene.job.find(id);
    auto parts = plan::split(element, points[0], points[1], plan::free_id(scene.job, element.kind));
    if (!parts) return refuse(parts.error());
    const plan::ElementId second = parts->second.id;
    plan::Job after = plan::with(plan::with(scene.job, std::move(parts->first)), std::move(parts->second));
    return done(std::move(after), edit_name("Split", scene.job, std::vector{id}), {id, second});
  }

  void show_fields(Fields& shown, const std::vector<Point>& points, const Scene& scene) const override {
    if (points.size() == 2) show_place(shown, points[0], points[1], scene.job.heading.units);
  }

  void show(View& view, const std::vector<Point>& points, const Scene&) const override {
    if (points.size() == 2 && points[0] != points[1])
      view.strokes.push_back({{{{points[0], 0, {}}}, points[1], {}}, false, Pen::rubber});
  }
};

}  // namespace

std::unique_ptr<Tool> split_tool() { return std::make_unique<SplitTool>(); }

}  // namespace sketch
