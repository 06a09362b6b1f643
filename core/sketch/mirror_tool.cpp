#include "sketch/mirror_tool.h"

#include "sketch/change.h"
#include "sketch/change_words.h"

namespace sketch {

namespace {

using geometry::Point;

class MirrorTool : public PointsTool {
 public:
  MirrorTool() : PointsTool(words::mirror, 2, {}) {}

 protected:
  const char* wants(std::size_t set) const override { return set == 0 ? words::mirror_from : words::mirror_to; }
  bool choose(const std::string& id) override {
    if (id != "keep") return false;
    keep_ = !keep_;
    return true;
  }

  Answer finish(const std::vector<Point>& points, const Scene& scene) override {
    auto ids = free_of(scene);
    plan::Job job = scene.job;
    if (keep_) {
      auto [with, made] = plan::with_copies(job, ids, {});
      job = std::move(with);
      ids = std::move(made);
    }
    const std::string name = edit_name("Mirror", job, keep_ ? free_of(scene) : ids);
    auto after = changed(
        job, ids, [&](plan::Element element) { return plan::mirrored(std::move(element), points[0], points[1]); });
    if (!after) return refuse(after.error());
    return done(std::move(*after), name, std::move(ids));
  }

  void show(View& view, const std::vector<Point>& points, const Scene& scene) const override {
    view.choices.push_back({"keep", words::keep_first, keep_, false});
    if (points.size() < 2 || points[0] == points[1]) return;
    view.strokes.push_back({{{{points[0], 0, {}}}, points[1], {}}, false, Pen::guide});
    add_strokes(view, scene.job, free_of(scene), Pen::rubber,
                [&](plan::Element element) { return plan::mirrored(std::move(element), points[0], points[1]); });
  }

 private:
  bool keep_ = false;
};

}  // namespace

std::unique_ptr<Tool> mirror_tool() { return std::make_unique<MirrorTool>(); }

}  // namespace sketch
