#include "sketch/start_tool.h"

#include <cmath>

#include "sketch/change.h"
#include "sketch/change_words.h"
#include "sketch/words.h"

namespace sketch {

namespace {

using geometry::Point;

// The pattern of the one selected area; null where there is none.
const plan::Laying* laying_of(const Scene& scene) {
  if (scene.selected.size() != 1) return nullptr;
  const plan::Element* element = scene.job.find(scene.selected.front());
  const auto* area = element != nullptr ? std::get_if<plan::PavedArea>(&element->kind) : nullptr;
  return area != nullptr && area->laying ? &*area->laying : nullptr;
}

// Drag or click sets the start; typed, it moves along and across the pattern's own direction.
class StartTool : public Tool {
 public:
  Answer take(const Event& event, const Scene& scene) override {
    if (const auto* moved = std::get_if<Moved>(&event)) {
      at_ = moved->at;
      hold_ = moved->hold;
      return {};
    }
    if (const auto* pressed = std::get_if<Pressed>(&event); pressed != nullptr && !pressed->twice) {
      at_ = pressed->at;
      hold_ = pressed->hold;
      if (laying_of(scene) == nullptr) return select(scene);
      held_ = true;
      return {};
    }
    if (const auto* released = std::get_if<Released>(&event); released != nullptr && held_) {
      held_ = false;
      at_ = released->at;
      return set(scene, aim(scene).at, std::nullopt);
    }
    if (const auto* typed = std::get_if<Typed>(&event)) {
      fields_.take(*typed, scene.job.heading.units);
      return {};
    }
    if (const auto* nudged = std::get_if<Nudged>(&event); nudged != nullptr && laying_of(scene) != nullptr)
      return set(scene, geometry::moved(laying_of(scene)->start, nudged->by), std::nullopt);
    const auto* key = std::get_if<Key>(&event);
    if (key == nullptr) return {};
    if (*key == Key::enter) return take_typed(scene);
    if (*key == Key::escape) {
      const bool leave = !held_;
      held_ = false;
      fields_.clear();
      return {{}, {}, {}, leave};
    }
    return {};
  }

  View view(const Scene& scene) const override {
    View view;
    view.hand = words::start_point;
    view.busy = held_;
    const plan::Laying* laying = laying_of(scene);
    view.wants = laying != nullptr ? words::start_wants : words::select_area;
    if (laying == nullptr) return view;
    Fields fields = fields_;
    fields.point("angle", laying->direction.degrees());
    if (held_ && at_) {
      const geometry::Vec by = turned_back(aim(scene).at - laying->start, laying->direction);
      fields.point("along", units::Length::of_steps(std::llround(by.x)), scene.job.heading.units);
      fields.point("across", units::Length::of_steps(std::llround(by.y)), scene.job.heading.units);
    }
    view.fields = fields.shown();
    const Point start = held_ && at_ ? aim(scene).at : laying->start;
    const units::Turn turn = units::turn(laying->direction);
    const double reach = 4 * scene.reach;
    const Point tip = geometry::moved(start, {reach * turn.cosine, reach * turn.sine});
    view.strokes.push_back({{{{start, 0, {}}}, tip, {}}, false, Pen::in_hand});
    view.marks.push_back({Takes::centre, start});
    return view;
  }

 private:
  static geometry::Vec turned_back(geometry::Vec by, units::Angle direction) {
    const units::Turn turn = units::turn(direction);
    return {by.x * turn.cosine + by.y * turn.sine, by.y * turn.cosine - by.x * turn.sine};
  }

  Taken aim(const Scene& scene) const {
    if (hold_.free) return {Takes::nothing, *at_, {}, {}};
    return scene.snaps.take(*at_, scene.reach, scene.grid);
  }

  Answer select(const Scene& scene) const {
    for (const plan::ElementId& id : under(scene.job, *at_, scene.reach)) {
      const auto* area = std::get_if<plan::PavedArea>(&scene.job.find(id)->kind);
      if (area == nullptr) continue;
      if (!area->laying) return refuse("no-pattern", words::no_pattern, words::no_pattern_mend);
      return {{}, std::vector{id}, {}, false};
    }
    return refuse("nothing-selected", words::nothing_selected, words::nothing_selected_mend);
  }

  Answer take_typed(const Scene& scene) {
    const plan::Laying* laying = laying_of(scene);
    if (laying == nullptr || !fields_.typed()) return {};
    const auto steps = [this](const char* id) {
      const auto typed = fields_.has(id) ? fields_.length(id) : std::nullopt;
      return typed ? static_cast<double>(typed->steps()) : 0.0;
    };
    const units::Turn turn = units::turn(laying->direction);
    const geometry::Vec by{steps("along"), steps("across")};
    const Point at =
        geometry::moved(laying->start, {by.x * turn.cosine - by.y * turn.sine, by.x * turn.sine + by.y * turn.cosine});
    const auto direction = fields_.has("angle") ? fields_.number("angle") : std::nullopt;
    fields_.clear();
    return set(scene, at, direction);
  }

  static Answer set(const Scene& scene, Point at, std::optional<double> direction) {
    plan::Element element = *scene.job.find(scene.selected.front());
    plan::Laying& laying = *std::get<plan::PavedArea>(element.kind).laying;
    laying.start = at;
    if (direction) laying.direction = units::Angle::degrees(*direction);
    const plan::ElementId id = element.id;
    return done(plan::with(scene.job, std::move(element)),
                direction ? "Direction of " + id : "Move start point of " + id, {id});
  }

  std::optional<Point> at_;
  Hold hold_;
  bool held_ = false;
  Fields fields_{
      {{"along", words::f_along, Reads::length}, {"across", words::f_across, Reads::length}, field::direction()}};
};

}  // namespace

std::unique_ptr<Tool> start_point_tool() { return std::make_unique<StartTool>(); }

}  // namespace sketch
