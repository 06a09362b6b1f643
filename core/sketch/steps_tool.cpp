#include "sketch/steps_tool.h"

#include <cmath>
#include <numbers>
#include <utility>

#include "sketch/chips.h"
#include "sketch/defaults.h"
#include "sketch/draw_tool.h"
#include "sketch/shapes.h"
#include "sketch/words.h"

namespace sketch {

using geometry::Point;
using geometry::Vec;

namespace {

Point middle(const std::vector<geometry::Curve>& ring) {
  Vec sum;
  for (const geometry::Curve& curve : ring) sum = sum + (curve.start - ring.front().start);
  return geometry::moved(ring.front().start, (1.0 / static_cast<double>(ring.size())) * sum);
}

double degrees(Vec along) { return std::atan2(along.y, along.x) * 180 / std::numbers::pi; }

bool event_is_enter(const Event& event) {
  const auto* key = std::get_if<Key>(&event);
  return key && *key == Key::enter;
}

class StepsTool : public Tool {
 public:
  StepsTool() {
    fields_.become({field::rise(), field::up()});
    shaper_.take_way(Shaper::Way::rectangle);
  }

  Answer take(const Event& event, const Scene& scene) override {
    if (!outline_) return outline(event, scene);
    // The Enter that ended the last side's field ends no flight.
    const bool of_the_side = std::exchange(by_typing_, false) && event_is_enter(event);
    if (of_the_side) return {};
    if (const auto* moved = std::get_if<Moved>(&event)) pointer_ = moved->at;
    if (const auto* typed = std::get_if<Typed>(&event)) fields_.take(*typed, scene.job.heading.units);
    if (const auto* pressed = std::get_if<Pressed>(&event)) {
      pointer_ = pressed->at;
      return pressed->twice ? Answer{} : finish(scene);
    }
    const auto* key = std::get_if<Key>(&event);
    if (!key) return {};
    if (*key == Key::enter) return finish(scene);
    if (*key == Key::escape || *key == Key::back || *key == Key::undo) drop();
    return {};
  }

  View view(const Scene& scene) const override {
    View view;
    view.hand = words::steps;
    if (!outline_) {
      shaper_.show(view, scene);
      if (!shaper_.busy()) view.wants = words::steps_begin;
      return view;
    }
    view.busy = true;
    view.wants = words::steps_up;
    Fields fields = fields_;
    fields.point("angle", up());
    view.fields = fields.shown();
    const std::vector<geometry::Curve> ring = drawn_curves(outline_->ring);
    view.strokes.push_back({as_line(ring), true, Pen::in_hand});
    const Point from = middle(ring);
    const units::Turn turn = units::turn(units::Angle::degrees(up()));
    const double half = std::sqrt(std::abs(area(ring))) / 2 * units::Length::steps_per_metre;
    const Point to = geometry::moved(from, half * Vec{turn.cosine, turn.sine});
    if (to != from) view.strokes.push_back({{{{from, 0, {}}}, to, {}}, false, Pen::rubber});
    return view;
  }

 private:
  Answer outline(const Event& event, const Scene& scene) {
    Shaper::Step step = shaper_.take(event, scene);
    if (step.done) {
      by_typing_ = std::holds_alternative<Typed>(event);
      outline_ = std::move(step.done);
      pointer_.reset();
    }
    return {{}, {}, std::move(step.refused), step.leave};
  }

  void drop() {
    outline_.reset();
    fields_.clear();
  }

  // Square to the side towards which the pointer lies; away from the first side where it is still.
  double up() const {
    if (const auto typed = fields_.number("angle")) return *typed;
    const std::vector<geometry::Curve> ring = drawn_curves(outline_->ring);
    if (!pointer_) return degrees(left_of(ring.front().direction(0.5)));
    const Vec to = *pointer_ - middle(ring);
    double best = 0;
    Vec way = left_of(ring.front().direction(0.5));
    for (const geometry::Curve& side : ring) {
      const Vec out = -left_of(side.direction(0.5));
      if (dot(to, out) <= best) continue;
      best = dot(to, out);
      way = out;
    }
    return degrees(way);
  }

  Answer finish(const Scene& scene) {
    const auto refuse = [](std::string text, const char* mend) {
      return Answer{
          {}, {}, problem::Problem{problem::Severity::problem, "field-wrong", std::move(text), mend, {}}, false};
    };
    if (const std::string* wrong = fields_.wrong()) return refuse(*wrong, words::text_wrong_mend);
    const auto rise = fields_.length("rise");
    if (rise && *rise < units::Length()) return refuse(words::rise_down, words::rise_down_mend);
    plan::Kind kind = fresh(Hand::steps, scene.job, {*outline_, {}}, {});
    auto& steps = std::get<plan::Steps>(kind);
    steps.up = units::Angle::degrees(up());
    steps.rise = rise.value_or(units::Length());
    drop();
    return {drawn(Hand::steps, scene.job, std::move(kind)), {}, {}, false};
  }

  Shaper shaper_{true};
  std::optional<Finished> outline_;
  std::optional<Point> pointer_;
  bool by_typing_ = false;  // the last event was the typed side that finished the outline
  Fields fields_;
};

}  // namespace

std::unique_ptr<Tool> steps_tool() { return std::make_unique<StepsTool>(); }

}  // namespace sketch
