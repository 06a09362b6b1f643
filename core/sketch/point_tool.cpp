#include "sketch/point_tool.h"

#include <algorithm>

#include "geometry/index.h"
#include "sketch/defaults.h"
#include "sketch/draw_tool.h"
#include "sketch/kinds.h"
#include "sketch/next_edge.h"
#include "sketch/words.h"

namespace sketch {

using geometry::Point;

namespace {

class PointTool : public Tool {
 public:
  explicit PointTool(const Drawing& drawing) : drawing_(drawing) { renew_fields(); }

  Answer take(const Event& event, const Scene& scene) override {
    if (const auto* moved = std::get_if<Moved>(&event)) pointer_ = {moved->at, moved->hold};
    if (const auto* pressed = std::get_if<Pressed>(&event)) return press(*pressed, scene);
    if (const auto* key = std::get_if<Key>(&event)) return push(*key, scene);
    if (const auto* typed = std::get_if<Typed>(&event)) fields_.take(*typed, scene.job.heading.units);
    if (const auto* chosen = std::get_if<Chosen>(&event)) choose(chosen->id);
    return {};
  }

  View view(const Scene& scene) const override {
    View view;
    view.hand = drawing_.label;
    view.busy = at_.has_value();
    view.wants = at_ ? wants_text() : drawing_.begin;
    for (const What& one : drawing_.whats)
      view.choices.push_back({one.word, one.label, what(scene.job) == one.word, false});
    Fields fields = fields_;
    if (at_) {
      view.marks.push_back({Takes::corner, *at_});
    } else if (pointer_) {
      const Next next = first_corner(scene, *pointer_, fields_);
      show_place(fields, {}, next.at, scene.job.heading.units);
      if (next.aimed.taken.takes != Takes::nothing) view.marks.push_back({next.aimed.taken.takes, next.at});
    }
    view.fields = fields.shown();
    return view;
  }

 private:
  bool waits() const { return drawing_.hand == Hand::level || drawing_.hand == Hand::note; }
  const char* wants_text() const { return drawing_.hand == Hand::level ? words::level_height : words::note_text; }

  void renew_fields() {
    if (!at_) return fields_.become({field::x(), field::y()});
    fields_.become({drawing_.hand == Hand::level ? field::height() : field::text()});
  }

  std::string what(const plan::Job& job) const {
    if (!what_.empty() || drawing_.whats.empty()) return what_;
    const std::string before = last_what(drawing_.hand, job);
    const bool listed = std::ranges::any_of(drawing_.whats, [&](const What& one) { return before == one.word; });
    return listed ? before : drawing_.whats.front().word;
  }

  void choose(const std::string& id) {
    if (std::ranges::any_of(drawing_.whats, [&](const What& one) { return id == one.word; })) what_ = id;
  }

  static Answer refuse(std::string text, const char* mend) {
    return {{}, {}, problem::Problem{problem::Severity::problem, "field-wrong", std::move(text), mend, {}}, false};
  }

  Answer press(const Pressed& pressed, const Scene& scene) {
    pointer_ = Pointer{pressed.at, pressed.hold};
    if (pressed.twice) return {};
    if (!at_) return set(scene);
    // The one in hand first; where its text is wrong, or a note has none, it stays.
    Answer answer = finish(scene);
    if (answer.refused) return answer;
    answer.refused = set(scene).refused;
    return answer;
  }

  Answer push(Key key, const Scene& scene) {
    switch (key) {
      case Key::enter: return at_ ? finish(scene) : fields_.typed() ? set(scene) : Answer{};
      case Key::escape:
        if (!at_) return {{}, {}, {}, true};
        drop();
        return {};
      case Key::back:
      case Key::undo: drop(); return {};
      default: return {};
    }
  }

  void drop() {
    at_.reset();
    fields_.clear();
    renew_fields();
  }

  Answer set(const Scene& scene) {
    if (const std::string* wrong = fields_.wrong()) return refuse(*wrong, words::text_wrong_mend);
    at_ = first_corner(scene, pointer_.value_or(Pointer{}), fields_).at;
    if (geometry::past_reach(*at_)) {
      drop();
      return refuse(words::too_far, words::too_far_mend);
    }
    fields_.clear();
    renew_fields();
    return waits() ? Answer{} : finish(scene);
  }

  Answer finish(const Scene& scene) {
    if (const std::string* wrong = fields_.wrong()) return refuse(*wrong, words::text_wrong_mend);
    plan::Kind kind = fresh(drawing_.hand, scene.job, {{}, *at_}, what(scene.job));
    if (auto* level = std::get_if<plan::Level>(&kind)) level->height = fields_.length("height");
    if (auto* note = std::get_if<plan::Note>(&kind)) {
      note->text = fields_.words("text");
      if (note->text.empty()) return refuse(words::note_empty, words::note_empty_mend);
    }
    drop();
    return {drawn(drawing_.hand, scene.job, std::move(kind)), {}, {}, false};
  }

  const Drawing& drawing_;
  std::string what_;
  std::optional<Point> at_;
  std::optional<Pointer> pointer_;
  Fields fields_;
};

}  // namespace

std::unique_ptr<Tool> point_tool(Hand hand) {
  if (hand != Hand::level && hand != Hand::feature && hand != Hand::note) return nullptr;
  return std::make_unique<PointTool>(*drawing(hand));
}

}  // namespace sketch
