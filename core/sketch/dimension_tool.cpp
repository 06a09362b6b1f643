#include "sketch/dimension_tool.h"

#include "geometry/index.h"
#include "sketch/chips.h"
#include "sketch/draw_tool.h"
#include "sketch/next_edge.h"
#include "sketch/words.h"

namespace sketch {

using geometry::Point;

namespace {

class DimensionTool : public Tool {
 public:
  Answer take(const Event& event, const Scene& scene) override {
    if (const auto* moved = std::get_if<Moved>(&event)) pointer_ = {moved->at, moved->hold};
    if (const auto* pressed = std::get_if<Pressed>(&event)) {
      pointer_ = Pointer{pressed->at, pressed->hold};
      return pressed->twice ? Answer{} : press(scene);
    }
    const auto* key = std::get_if<Key>(&event);
    if (!key || *key == Key::enter) return {};
    if (*key == Key::escape || *key == Key::back || *key == Key::undo) {
      const bool leave = !from_ && *key == Key::escape;
      from_.reset();
      return {{}, {}, {}, leave};
    }
    return {};
  }

  View view(const Scene& scene) const override {
    View view;
    view.hand = words::dimension;
    view.busy = from_.has_value();
    view.wants = from_ ? words::dimension_end : words::dimension_begin;
    if (!pointer_) return view;
    const Aimed aim = aimed(scene, in_hand(), *pointer_);
    if (aim.taken.takes != Takes::nothing) view.marks.push_back({aim.taken.takes, aim.at()});
    if (!from_ || aim.at() == *from_) return view;
    view.strokes.push_back({{{{*from_, 0, {}}}, aim.at(), {}}, false, Pen::rubber});
    view.chips.push_back(length_chip({*from_, aim.at(), 0}, scene.job.heading.units));
    return view;
  }

 private:
  static Answer refuse(const char* code, const char* text, const char* mend) {
    return {{}, {}, problem::Problem{problem::Severity::problem, code, text, mend, {}}, false};
  }

  Answer press(const Scene& scene) {
    const Point at = aimed(scene, in_hand(), *pointer_).at();
    if (geometry::past_reach(at)) return refuse("place-too-far", words::too_far, words::too_far_mend);
    if (!from_) {
      from_ = at;
      return {};
    }
    if (at == *from_) return refuse("edge-no-length", words::no_length, words::no_length_mend);
    const plan::Dimension made{*from_, at};
    from_.reset();
    return {drawn(Hand::dimension, scene.job, made), {}, {}, false};
  }

  InHand in_hand() const {
    InHand made;
    if (from_) made.points = {*from_};
    return made;
  }

  std::optional<Point> from_;
  std::optional<Pointer> pointer_;
};

}  // namespace

std::unique_ptr<Tool> dimension_tool() { return std::make_unique<DimensionTool>(); }

}  // namespace sketch
