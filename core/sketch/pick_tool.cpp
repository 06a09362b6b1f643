#include "sketch/pick_tool.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "sketch/change.h"
#include "sketch/change_words.h"
#include "sketch/chips.h"
#include "sketch/grips.h"
#include "sketch/words.h"

namespace sketch {

namespace {

using geometry::Point;
using geometry::Vec;

constexpr double quarter_bulge = 0.41421356237309503;  // tan(90 degrees / 4)

bool is_locked(const plan::Element& element) {
  const auto* plan = std::get_if<plan::SitePlan>(&element.kind);
  return plan != nullptr && plan->locked;
}

// What is done with the button held.
enum class Gesture { none, box, move, corner, edge, bend };

class PickTool : public Tool {
 public:
  Answer take(const Event& event, const Scene& scene) override {
    if (const auto* moved = std::get_if<Moved>(&event)) return move(*moved, scene);
    if (const auto* pressed = std::get_if<Pressed>(&event)) return press(*pressed, scene);
    if (const auto* released = std::get_if<Released>(&event)) return release(*released, scene);
    if (const auto* key = std::get_if<Key>(&event)) return take_key(*key, scene);
    if (const auto* nudged = std::get_if<Nudged>(&event)) return move_by(nudged->by, scene);
    if (const auto* chosen = std::get_if<Chosen>(&event)) return choose(chosen->id, scene);
    if (const auto* typed = std::get_if<Typed>(&event)) fields_.take(*typed, scene.job.heading.units);
    return {};
  }

  View view(const Scene& scene) const override {
    View view;
    view.hand = words::pick;
    view.busy = gesture_ != Gesture::none && dragged_;
    view.wants = !view.busy ? words::pick_rest : gesture_ == Gesture::box ? words::pick_box : words::pick_drag;
    if (view.busy && gesture_ == Gesture::box) {
      show_box(view);
    } else if (view.busy) {
      show_change(view, scene);
    } else if (const auto hot = grip_at(scene, at_)) {
      view.marks.push_back({hot->what == GripKind::corner ? Takes::corner : Takes::middle, hot->at});
    }
    if (!view.busy && picked_edge(scene)) show_edge(view, *picked_edge(scene), scene);
    return view;
  }

 private:
  // --- pointer
  Answer move(const Moved& moved, const Scene& scene) {
    at_ = moved.at;
    hold_ = moved.hold;
    // A hand that shakes a little is not dragging.
    if (gesture_ != Gesture::none && geometry::length(at_ - from_) > scene.reach / 4) dragged_ = true;
    return {};
  }

  Answer press(const Pressed& pressed, const Scene& scene) {
    at_ = from_ = pressed.at;
    hold_ = pressed.hold;
    dragged_ = false;
    already_ = false;
    if (pressed.twice) {
      gesture_ = Gesture::none;
      return add_corner(scene);
    }
    if (const auto grip = grip_at(scene, at_)) {
      grip_ = *grip;
      gesture_ = grip->what == GripKind::corner ? Gesture::corner
                 : grip->what == GripKind::edge ? Gesture::edge
                                                : Gesture::bend;
      rest_ = std::make_unique<Snaps>(scene.job, std::vector{grip->of});
      return {};
    }
    const auto found = here(scene);
    if (found.empty()) {
      gesture_ = Gesture::box;
      return {};
    }
    gesture_ = Gesture::move;
    already_ = std::ranges::count(scene.selected, found.front()) > 0 ||
               std::ranges::any_of(found, [&](const auto& id) { return std::ranges::count(scene.selected, id) > 0; });
    const std::vector<plan::ElementId> selected = already_ ? scene.selected : with_more(scene.selected, found.front());
    rest_ = std::make_unique<Snaps>(scene.job, selected);
    grabbed_ = grab(scene, selected);
    if (already_) return {};
    return {{}, selected, {}, false};
  }

  Answer release(const Released& released, const Scene& scene) {
    at_ = released.at;
    hold_ = released.hold;
    const Gesture gesture = gesture_;
    gesture_ = Gesture::none;
    if (gesture == Gesture::none) return {};
    if (!dragged_) return click(gesture, scene);
    dragged_ = false;
    if (gesture == Gesture::box) return take_box(scene);
    auto after = change(gesture, scene);
    if (!after) return refuse(after.error());
    const auto ids = gesture == Gesture::move ? free_of(scene) : std::vector{grip_.of};
    const std::string name = gesture == Gesture::move     ? edit_name("Move", scene.job, ids)
                             : gesture == Gesture::corner ? "Move corner of " + grip_.of
                             : gesture == Gesture::edge   ? "Move edge of " + grip_.of
                                                          : "Bend edge of " + grip_.of;
    return done(std::move(*after), name, scene.selected);
  }

  // Pressed and let go at one place: on what is selected already, its edge is picked, or what lies below is.
  Answer click(Gesture gesture, const Scene& scene) {
    if (gesture == Gesture::box) {
      edge_.reset();
      return hold_.more || scene.selected.empty() ? Answer{} : Answer{{}, std::vector<plan::ElementId>{}, {}, false};
    }
    if (gesture != Gesture::move) return {};
    const auto found = here(scene);
    if (hold_.more && already_ && !found.empty()) return {{}, without(scene.selected, found.front()), {}, false};
    const auto edge = edge_here(scene);
    // On a line every place is on its edge: the second click picks the edge, the next one what lies below.
    const bool same_edge = edge && edge_ && edge->of == edge_->of && edge->edge == edge_->edge;
    edge_ = edge;
    const bool again = already_ && last_click_ && geometry::length(at_ - *last_click_) <= scene.reach / 2;
    last_click_ = at_;
    if (!again || (edge_ && !same_edge)) return {};
    edge_.reset();
    return below(scene);
  }

  Answer below(const Scene& scene) const {
    const auto found = here(scene);
    if (found.size() < 2 || scene.selected.size() != 1) return {};
    const auto now = std::ranges::find(found, scene.selected.front());
    const std::size_t next = now == found.end() ? 0 : static_cast<std::size_t>(now - found.begin() + 1) % found.size();
    return {{}, std::vector{found[next]}, {}, false};
  }

  Answer take_box(const Scene& scene) const {
    std::vector<plan::ElementId> ids = inside(scene.job, from_, at_);
    std::erase_if(ids, [&](const plan::ElementId& id) { return is_locked(*scene.job.find(id)); });
    if (hold_.more) {
      for (const plan::ElementId& id : scene.selected) {
        if (std::ranges::count(ids, id) == 0) ids.push_back(id);
      }
    }
    return {{}, std::move(ids), {}, false};
  }

  // --- keys, choices, typed
  Answer take_key(Key key, const Scene& scene) {
    if (key == Key::escape) {
      if (gesture_ != Gesture::none) {
        gesture_ = Gesture::none;
        dragged_ = false;
        return {};
      }
      edge_.reset();
      if (!scene.selected.empty()) return {{}, std::vector<plan::ElementId>{}, {}, false};
      return {};
    }
    if (key == Key::undo || key == Key::back) {
      gesture_ = Gesture::none;
      dragged_ = false;
    }
    if (key == Key::next_below) return below(scene);
    if (key == Key::line_or_arc) return toggle_arc(scene);
    if (key == Key::erase) return erase(scene);
    if (key == Key::enter) return set_length(scene);
    return {};
  }

  Answer choose(const std::string& id, const Scene& scene) {
    return id == "line-or-arc" ? toggle_arc(scene) : Answer{};
  }

  Answer toggle_arc(const Scene& scene) {
    const auto edge = picked_edge(scene);
    if (!edge) return {};
    const double bulge = edge->curve.straight() ? quarter_bulge : 0;
    auto made = plan::with_bulge(*scene.job.find(edge_->of), edge->start, bulge);
    if (!made) return refuse(made.error());
    return done(plan::with(scene.job, std::move(*made)),
                "Edge of " + edge_->of + (bulge == 0 ? " straight" : " to arc"), scene.selected);
  }

  Answer set_length(const Scene& scene) {
    const auto edge = picked_edge(scene);
    if (!edge || !fields_.has("length")) return {};
    const units::Length length = *fields_.length("length");
    fields_.clear();
    auto made = plan::with_edge_length(*scene.job.find(edge_->of), edge->start, length);
    if (!made) return refuse(made.error());
    return done(plan::with(scene.job, std::move(*made)), "Length of an edge of " + edge_->of, scene.selected);
  }

  Answer erase(const Scene& scene) {
    const auto hot = grip_at(scene, at_);
    if (hot && hot->what == GripKind::corner && hot->corner.ring > -2) {
      auto made = plan::without_corner(*scene.job.find(hot->of), hot->corner);
      if (!made) return refuse(made.error());
      return done(plan::with(scene.job, std::move(*made)), "Take a corner from " + hot->of, scene.selected);
    }
    const auto ids = free_of(scene);
    if (ids.empty()) return {};
    plan::Job after = scene.job;
    for (const plan::ElementId& id : ids) after = plan::without(after, id);
    return done(std::move(after), edit_name("Remove", scene.job, ids), {});
  }

  Answer add_corner(const Scene& scene) {
    const auto edge = edge_here(scene);
    if (!edge) return {};
    auto made = plan::with_new_corner(*scene.job.find(edge->of), edge->edge, edge->at);
    if (!made) return refuse(made.error());
    edge_.reset();
    return done(plan::with(scene.job, std::move(*made)), "Add a corner to " + edge->of, scene.selected);
  }

  // --- what the gesture makes of the job
  Answer move_by(Vec by, const Scene& scene) const {
    const auto ids = free_of(scene);
    if (ids.empty()) return {};
    auto after = changed(scene.job, ids, [by](plan::Element element) { return plan::moved(std::move(element), by); });
    if (!after) return refuse(after.error());
    return done(std::move(*after), edit_name("Move", scene.job, ids), scene.selected);
  }

  problem::Result<plan::Job> change(Gesture gesture, const Scene& scene) const {
    if (gesture == Gesture::move) {
      const Vec by = drop(scene, grabbed_) - grabbed_;
      return changed(scene.job, free_of(scene),
                     [by](plan::Element element) { return plan::moved(std::move(element), by); });
    }
    const plan::Element* element = scene.job.find(grip_.of);
    if (element == nullptr) return scene.job;
    auto made = changed_grip(*element, grip_, drop(scene, grip_.at));
    if (!made) return std::unexpected(made.error());
    return plan::with(scene.job, std::move(*made));
  }

  // Where what was taken hold of at `grabbed` comes to lie.
  Point drop(const Scene& scene, Point grabbed) const {
    Point to = geometry::moved(grabbed, at_ - from_);
    if (hold_.steps) {  // along the plan's own axes or at 45 degrees
      const Vec by = to - grabbed;
      const double step = std::numbers::pi / 4;
      const double turn = std::round(std::atan2(by.y, by.x) / step) * step;
      to = geometry::moved(grabbed, geometry::length(by) * Vec{std::cos(turn), std::sin(turn)});
    }
    if (hold_.free || rest_ == nullptr) return to;
    const Taken taken = rest_->take(to, scene.reach, scene.grid);
    return taken.at;
  }

  // The corner of what is moved that lies nearest to the pointer, within reach; else the pointer itself.
  Point grab(const Scene& scene, const std::vector<plan::ElementId>& ids) const {
    Point best = from_;
    double least = scene.reach;
    for (const plan::ElementId& id : ids) {
      for (const plan::Grip& grip : plan::corners(*scene.job.find(id))) {
        const double distance = geometry::length(grip.at - from_);
        if (distance <= least) {
          least = distance;
          best = grip.at;
        }
      }
    }
    return best;
  }

  std::optional<HotGrip> grip_at(const Scene& scene, Point at) const {
    if (scene.selected.size() != 1) return std::nullopt;
    const plan::Element* element = scene.job.find(scene.selected.front());
    if (element == nullptr || is_locked(*element)) return std::nullopt;
    return hot_grip(*element, at, scene.reach * 0.75);
  }

  std::vector<plan::ElementId> here(const Scene& scene) const {
    std::vector<plan::ElementId> found = under(scene.job, at_, scene.reach / 2);
    std::erase_if(found, [&](const plan::ElementId& id) { return is_locked(*scene.job.find(id)); });
    return found;
  }

  std::vector<plan::ElementId> with_more(const std::vector<plan::ElementId>& selected,
                                         const plan::ElementId& id) const {
    if (!hold_.more) return {id};
    std::vector<plan::ElementId> more = selected;
    more.push_back(id);
    return more;
  }
  static std::vector<plan::ElementId> without(std::vector<plan::ElementId> selected, const plan::ElementId& id) {
    std::erase(selected, id);
    return selected;
  }

  // The edge of the one selected element under the pointer.
  std::optional<Taken> edge_here(const Scene& scene) const {
    if (scene.selected.size() != 1) return std::nullopt;
    for (const Taken& edge : scene.snaps.edges(at_, scene.reach / 2)) {
      if (edge.of == scene.selected.front()) return edge;
    }
    return std::nullopt;
  }

  std::optional<plan::DrawnEdge> picked_edge(const Scene& scene) const {
    if (!edge_ || scene.selected != std::vector{edge_->of}) return std::nullopt;
    const plan::Element* element = scene.job.find(edge_->of);
    if (element == nullptr) return std::nullopt;
    for (const plan::DrawnEdge& edge : plan::drawn_edges(*element)) {
      if (edge.start == edge_->edge) return edge;
    }
    return std::nullopt;
  }

  // --- what is shown
  void show_box(View& view) const {
    const Point right{at_.x, from_.y};
    const Point left{from_.x, at_.y};
    view.strokes.push_back({{{{from_, 0, {}}, {right, 0, {}}, {at_, 0, {}}, {left, 0, {}}}, from_, {}},
                            true,
                            at_.x >= from_.x ? Pen::in_hand : Pen::rubber});
  }

  void show_change(View& view, const Scene& scene) const {
    const auto after = change(gesture_, scene);
    if (!after) return;
    const auto ids = gesture_ == Gesture::move ? free_of(scene) : std::vector{grip_.of};
    for (const plan::ElementId& id : ids) {
      const plan::Element* element = after->find(id);
      if (element == nullptr) continue;
      add_strokes(view, *element, Pen::rubber);
      if (gesture_ != Gesture::move) add_chips(view, *element, grip_, scene.job.heading.units);
    }
    if (rest_ != nullptr && !hold_.free) {
      const Point grabbed = gesture_ == Gesture::move ? grabbed_ : grip_.at;
      const Taken taken = rest_->take(geometry::moved(grabbed, at_ - from_), scene.reach, scene.grid);
      if (taken.takes != Takes::nothing && taken.takes != Takes::grid) view.marks.push_back({taken.takes, taken.at});
    }
  }

  void show_edge(View& view, const plan::DrawnEdge& edge, const Scene& scene) const {
    Fields fields = fields_;
    fields.point("length", units::Length::of_steps(std::llround(edge.curve.length())), scene.job.heading.units);
    view.fields = fields.shown();
    view.choices.push_back({"line-or-arc", edge.curve.straight() ? words::edge_to_arc : words::line, false, true});
    view.strokes.push_back({{{{edge.curve.start, edge.curve.bulge, {}}}, edge.curve.end, {}}, false, Pen::in_hand});
  }

  Gesture gesture_ = Gesture::none;
  bool dragged_ = false;
  bool already_ = false;  // pressed on what was selected before
  Point from_;
  Point at_;
  Hold hold_;
  Point grabbed_;
  HotGrip grip_;
  std::unique_ptr<Snaps> rest_;  // of everything but what is moved
  std::optional<Point> last_click_;
  std::optional<Taken> edge_;  // of the selected element, picked by a click
  Fields fields_{{field::length()}};
};

}  // namespace

std::unique_ptr<Tool> pick_tool() { return std::make_unique<PickTool>(); }

}  // namespace sketch
