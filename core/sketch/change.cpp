#include "sketch/change.h"

#include <algorithm>

#include "sketch/change_words.h"
#include "sketch/next_edge.h"
#include "sketch/words.h"

namespace sketch {

std::string noun(const plan::Kind& kind) {
  std::string word = plan::kind_name(kind);
  std::ranges::replace(word, '-', ' ');
  return word == "paved area" ? "area" : word == "edge run" ? "edge" : word == "drain run" ? "drain" : word;
}

std::string edit_name(const std::string& verb, const plan::Job& job, std::span<const plan::ElementId> ids) {
  if (ids.size() != 1) return verb + " " + std::to_string(ids.size()) + " elements";
  const plan::Element* element = job.find(ids.front());
  return verb + " " + (element != nullptr ? noun(element->kind) + " " : "") + ids.front();
}

Answer refuse(problem::Problem why) { return {{}, {}, std::move(why), false}; }

Answer refuse(const char* code, const char* text, const char* mend) {
  return refuse(problem::Problem{problem::Severity::problem, code, text, mend, {}});
}

Answer done(plan::Job after, std::string name, std::vector<plan::ElementId> selected) {
  return {Edit{std::move(after), std::move(name), std::move(selected)}, {}, {}, false};
}

std::vector<plan::ElementId> free_of(const Scene& scene) {
  std::vector<plan::ElementId> free;
  for (const plan::ElementId& id : scene.selected) {
    const plan::Element* element = scene.job.find(id);
    const auto* plan = element != nullptr ? std::get_if<plan::SitePlan>(&element->kind) : nullptr;
    if (element != nullptr && (plan == nullptr || !plan->locked)) free.push_back(id);
  }
  return free;
}

problem::Result<plan::Job> changed(const plan::Job& job, std::span<const plan::ElementId> ids,
                                   const std::function<problem::Result<plan::Element>(plan::Element)>& change) {
  plan::Job after = job;
  for (const plan::ElementId& id : ids) {
    const plan::Element* element = job.find(id);
    if (element == nullptr) continue;
    auto made = change(*element);
    if (!made) return std::unexpected(made.error());
    after = plan::with(after, std::move(*made));
  }
  return after;
}

void add_strokes(View& view, const plan::Element& element, Pen pen) {
  Stroke stroke;
  stroke.pen = pen;
  const auto flush = [&] {
    if (!stroke.line.edges.empty()) view.strokes.push_back(stroke);
    stroke.line = {};
  };
  for (const plan::DrawnEdge& edge : plan::drawn_edges(element)) {
    if (!stroke.line.edges.empty() && stroke.line.end != edge.curve.start) flush();
    stroke.line.edges.push_back({edge.curve.start, edge.curve.bulge, {}});
    stroke.line.end = edge.curve.end;
  }
  flush();
}

void add_strokes(View& view, const plan::Job& job, std::span<const plan::ElementId> ids, Pen pen,
                 const std::function<problem::Result<plan::Element>(plan::Element)>& change) {
  for (const plan::ElementId& id : ids) {
    const plan::Element* element = job.find(id);
    if (element == nullptr) continue;
    if (const auto made = change(*element)) add_strokes(view, *made, pen);
  }
}

PointsTool::PointsTool(const char* hand, std::size_t count, std::vector<FieldKind> fields)
    : hand_(hand), count_(count), fields_(std::move(fields)) {}

bool PointsTool::typed_is_enough(std::size_t) const { return false; }
bool PointsTool::choose(const std::string&) { return false; }
void PointsTool::show_fields(Fields&, const std::vector<geometry::Point>&, const Scene&) const {}

Aimed PointsTool::aim(const Scene& scene) const {
  InHand in_hand;
  in_hand.points = points_;
  for (std::size_t i = 0; i + 1 < points_.size(); ++i) in_hand.edges.push_back({points_[i], points_[i + 1], 0});
  return pointer_->hold.steps && !points_.empty() ? aimed(scene, in_hand, *pointer_)
                                                  : aimed_at_points(scene, in_hand, *pointer_);
}

std::vector<geometry::Point> PointsTool::with_pointer(const Scene& scene) const {
  std::vector<geometry::Point> points = points_;
  if (pointer_ && points.size() < count_) {
    const geometry::Point at = aim(scene).at();
    points.push_back(points.empty() ? at : placed(points.back(), at, fields_));
  }
  return points;
}

Answer PointsTool::end(const std::vector<geometry::Point>& points, const Scene& scene) {
  Answer answer = finish(points, scene);
  if (answer.edit) {
    points_.clear();
    fields_.clear();
  } else if (answer.refused && !points_.empty()) {
    points_.resize(std::min(points_.size(), count_ - 1));
  }
  return answer;
}

Answer PointsTool::set(geometry::Point at, const Scene& scene) {
  points_.push_back(at);
  return points_.size() < count_ ? Answer{} : end(points_, scene);
}

Answer PointsTool::press(const Pressed& pressed, const Scene& scene) {
  pointer_ = Pointer{pressed.at, pressed.hold};
  if (pressed.twice) return {};
  if (free_of(scene).empty()) {
    const auto found = under(scene.job, pressed.at, scene.reach);
    if (found.empty()) return refuse("nothing-selected", words::nothing_selected, words::nothing_selected_mend);
    return {{}, std::vector{found.front()}, {}, false};
  }
  const auto points = with_pointer(scene);
  if (!points_.empty() && points.back() == points_.back())
    return refuse("same-place", words::same_place, words::same_place_mend);
  return set(points.back(), scene);
}

Answer PointsTool::take(const Event& event, const Scene& scene) {
  if (const auto* moved = std::get_if<Moved>(&event)) pointer_ = Pointer{moved->at, moved->hold};
  if (const auto* pressed = std::get_if<Pressed>(&event)) return press(*pressed, scene);
  if (const auto* chosen = std::get_if<Chosen>(&event)) choose(chosen->id);
  if (const auto* typed = std::get_if<Typed>(&event)) fields_.take(*typed, scene.job.heading.units);
  const auto* key = std::get_if<Key>(&event);
  if (key != nullptr && (*key == Key::back || *key == Key::undo)) {
    if (!points_.empty()) points_.pop_back();
    return {};
  }
  if (key != nullptr && *key == Key::escape) {
    const bool leave = points_.empty();
    points_.clear();
    fields_.clear();
    return {{}, {}, {}, leave};
  }
  if (key == nullptr || *key != Key::enter) return {};
  if (const std::string* wrong = fields_.wrong())
    return refuse(problem::Problem{problem::Severity::problem, "text-wrong", *wrong, words::text_wrong_mend, {}});
  if (free_of(scene).empty()) return refuse("nothing-selected", words::nothing_selected, words::nothing_selected_mend);
  if (typed_is_enough(points_.size()) && fields_.typed()) return end(points_, scene);
  const auto points = with_pointer(scene);
  if (points.size() <= points_.size()) return {};
  return set(points.back(), scene);
}

View PointsTool::view(const Scene& scene) const {
  View view;
  view.hand = hand_;
  view.busy = !points_.empty();
  const bool ready = !free_of(scene).empty();
  view.wants = ready ? wants(points_.size()) : words::select_first;
  Fields fields = fields_;
  const auto points = with_pointer(scene);
  show_fields(fields, points, scene);
  if (ready) view.fields = fields.shown();
  if (pointer_ && ready) {
    const Aimed aim_now = aim(scene);
    if (aim_now.taken.takes != Takes::nothing) view.marks.push_back({aim_now.taken.takes, aim_now.at()});
  }
  if (ready) show(view, points, scene);
  return view;
}

}  // namespace sketch
