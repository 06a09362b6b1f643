#include "sketch/within_reach.h"

#include <algorithm>

#include "geometry/index.h"
#include "plan/edits.h"
#include "sketch/change.h"
#include "sketch/words.h"

namespace sketch {

namespace {

bool past_reach(const plan::Element& element) {
  const auto far_corner = [](const plan::Grip& grip) { return geometry::past_reach(grip.at); };
  const auto far_edge = [](const plan::DrawnEdge& edge) { return geometry::past_reach(edge.curve); };
  return std::ranges::any_of(plan::corners(element), far_corner) ||
         std::ranges::any_of(plan::drawn_edges(element), far_edge);
}

class Bounded final : public Tool {
 public:
  explicit Bounded(std::unique_ptr<Tool> tool) : tool_(std::move(tool)) {}

  Answer take(const Event& event, const Scene& scene) override {
    Answer answer = tool_->take(event, scene);
    if (!answer.edit) return answer;
    for (const plan::ElementPtr& element : answer.edit->after.elements) {
      const bool as_before = std::ranges::find(scene.job.elements, element) != scene.job.elements.end();
      if (!as_before && past_reach(*element)) return refuse("place-too-far", words::too_far, words::too_far_mend);
    }
    return answer;
  }

  View view(const Scene& scene) const override { return tool_->view(scene); }

 private:
  std::unique_ptr<Tool> tool_;
};

}  // namespace

std::unique_ptr<Tool> within_reach(std::unique_ptr<Tool> tool) { return std::make_unique<Bounded>(std::move(tool)); }

}  // namespace sketch
