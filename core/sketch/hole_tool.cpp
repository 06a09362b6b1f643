#include "sketch/hole_tool.h"

#include "sketch/change.h"
#include "sketch/change_words.h"
#include "sketch/shaper.h"

namespace sketch {

namespace {

class HoleTool : public Tool {
 public:
  Answer take(const Event& event, const Scene& scene) override {
    const auto ids = free_of(scene);
    const auto* pressed = std::get_if<Pressed>(&event);
    if (ids.empty() && pressed != nullptr) {
      const auto found = under(scene.job, pressed->at, scene.reach);
      if (found.empty()) return refuse("nothing-selected", words::nothing_selected, words::nothing_selected_mend);
      return {{}, std::vector{found.front()}, {}, false};
    }
    const Shaper::Step step = shaper_.take(event, scene);
    if (!step.done || ids.empty()) return {{}, {}, step.refused, step.leave};
    auto made = plan::with_hole(*scene.job.find(ids.front()), step.done->ring);
    if (!made) return refuse(made.error());
    return done(plan::with(scene.job, std::move(*made)),
                edit_name("Cut a hole in", scene.job, std::vector{ids.front()}), {ids.front()});
  }

  View view(const Scene& scene) const override {
    View view;
    view.hand = words::hole;
    if (free_of(scene).empty()) {
      view.wants = words::select_first;
      return view;
    }
    shaper_.show(view, scene);
    return view;
  }

 private:
  Shaper shaper_{true};
};

}  // namespace

std::unique_ptr<Tool> hole_tool() { return std::make_unique<HoleTool>(); }

}  // namespace sketch
