#include "sketch/join_tool.h"

#include "sketch/change.h"
#include "sketch/change_words.h"

namespace sketch {

namespace {

class JoinTool : public Tool {
 public:
  Answer take(const Event& event, const Scene& scene) override {
    if (const auto* key = std::get_if<Key>(&event); key != nullptr && *key == Key::escape) return {{}, {}, {}, true};
    const auto* pressed = std::get_if<Pressed>(&event);
    if (pressed == nullptr || pressed->twice) return {};
    const auto found = under(scene.job, pressed->at, scene.reach);
    if (found.empty()) return refuse("nothing-selected", words::nothing_selected, words::nothing_selected_mend);
    const auto ids = free_of(scene);
    if (ids.empty()) return {{}, std::vector{found.front()}, {}, false};
    for (const plan::ElementId& other : found) {
      if (other == ids.front()) continue;
      const auto made = plan::joined(*scene.job.find(ids.front()), *scene.job.find(other));
      if (!made) return refuse(made.error());
      plan::Job after = plan::without(plan::with(scene.job, *made), other);
      return done(std::move(after), edit_name("Join", scene.job, std::vector{ids.front()}), {ids.front()});
    }
    return refuse("same-place", words::same_place, words::join_wants);
  }

  View view(const Scene& scene) const override {
    View view;
    view.hand = words::join;
    view.wants = free_of(scene).empty() ? words::select_first : words::join_wants;
    return view;
  }
};

}  // namespace

std::unique_ptr<Tool> join_tool() { return std::make_unique<JoinTool>(); }

}  // namespace sketch
