#include "sketch/site_plan_tool.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

#include "geometry/index.h"
#include "sketch/chips.h"
#include "sketch/next_edge.h"
#include "sketch/site_plan_numbers.h"
#include "sketch/words.h"
#include "units/number.h"

namespace sketch {

using geometry::Point;
using geometry::Vec;
using plan::SitePlan;

namespace {

enum class Way { place, turn, scale, check };
struct WayWord {
  Way way;
  const char* id;
  const char* label;
};
constexpr std::array way_words{
    WayWord{Way::place, "place", words::plan_place}, WayWord{Way::turn, "turn", words::plan_turn},
    WayWord{Way::scale, "scale", words::plan_scale}, WayWord{Way::check, "check", words::plan_check}};

const plan::Element* the_plan(const Scene& scene) {
  const plan::Element* only = nullptr;
  int count = 0;
  for (const plan::ElementPtr& element : scene.job.elements) {
    if (!std::holds_alternative<SitePlan>(element->kind)) continue;
    if (std::ranges::find(scene.selected, element->id) != scene.selected.end()) return element.get();
    only = element.get();
    ++count;
  }
  return count == 1 ? only : nullptr;
}

Answer refuse(std::string code, std::string text, std::string mend) {
  return {{},
          {},
          problem::Problem{problem::Severity::problem, std::move(code), std::move(text), std::move(mend), {}},
          false};
}

Answer edited(const Scene& scene, const plan::Element& of, SitePlan made, const char* verb) {
  plan::Element element = of;
  element.kind = std::move(made);
  return {Edit{plan::with(scene.job, element), std::string(verb) + " " + of.id, {of.id}}, {}, {}, false};
}

class SitePlanTool : public Tool {
 public:
  SitePlanTool() { renew_fields(); }

  Answer take(const Event& event, const Scene& scene) override {
    if (const auto* moved = std::get_if<Moved>(&event)) pointer_ = {moved->at, moved->hold};
    if (std::holds_alternative<Key>(event) && std::get<Key>(event) == Key::escape) return escape();
    const plan::Element* of = the_plan(scene);
    if (!of) {
      drop();
      return {};
    }
    const SitePlan& now = std::get<SitePlan>(of->kind);
    if (const auto* chosen = std::get_if<Chosen>(&event)) return choose(chosen->id, scene, *of, now);
    if (const auto* typed = std::get_if<Typed>(&event)) fields_.take(*typed, scene.job.heading.units);
    if (const auto* key = std::get_if<Key>(&event)) return push(*key, scene, *of, now);
    const bool moves = std::holds_alternative<Pressed>(event) || std::holds_alternative<Nudged>(event);
    if (moves && now.locked && way_ != Way::check)
      return refuse("plan-locked", words::plan_locked, words::plan_locked_mend);
    if (const auto* pressed = std::get_if<Pressed>(&event)) {
      pointer_ = Pointer{pressed->at, pressed->hold};
      return pressed->twice ? Answer{} : press(scene, *of, now);
    }
    if (const auto* released = std::get_if<Released>(&event)) return release(released->at, scene, *of, now);
    if (const auto* nudged = std::get_if<Nudged>(&event)) {
      const double step = scene.grid >= 1 ? scene.grid : static_cast<double>(units::Length::steps_per_inch);
      return edited(scene, *of, moved(now, step * nudged->by), words::edit_place_plan);
    }
    return {};
  }

  View view(const Scene& scene) const override {
    View view;
    view.hand = words::site_plan;
    const plan::Element* of = the_plan(scene);
    view.wants = of ? wants() : words::plan_none;
    if (!of) return view;
    const SitePlan& now = std::get<SitePlan>(of->kind);
    view.busy = !points_.empty();
    for (const WayWord& one : way_words) view.choices.push_back({one.id, one.label, one.way == way_, false});
    view.choices.push_back(
        {now.locked ? "unlock" : "lock", now.locked ? words::plan_unlock : words::plan_lock, false, true});
    Fields fields = fields_;
    fields.point("opacity", std::round(now.opacity * 100));
    if (points_.size() == 2 && measures())
      fields.point("length", units::Length::of_steps(std::llround(length(points_[1] - points_[0]))),
                   scene.job.heading.units);
    view.fields = fields.shown();
    if (way_ == Way::check && now.check && points_.empty())
      view.fields.push_back(
          {"error", words::f_error, units::show_number(error_percent(*now.check), 2) + " %", {}, false, false});
    show_points(view, scene);
    return view;
  }

 private:
  bool measures() const { return way_ == Way::scale || way_ == Way::check; }

  void renew_fields() {
    if (measures() && points_.size() == 2) return fields_.become({field::length(), field::opacity()});
    if (way_ == Way::place) return fields_.become({field::x(), field::y(), field::opacity()});
    if (way_ == Way::turn) return fields_.become({field::turn(), field::opacity()});
    fields_.become({field::opacity()});
  }

  void drop() {
    points_.clear();
    fields_.clear();
    renew_fields();
  }

  Answer escape() {
    const bool leave = points_.empty() && !fields_.typed();
    drop();
    return {{}, {}, {}, leave};
  }

  const char* wants() const {
    switch (way_) {
      case Way::place: return words::plan_drag;
      case Way::turn:
        return points_.empty() ? words::turn_about : points_.size() == 1 ? words::turn_from : words::turn_to;
      case Way::scale:
      case Way::check: break;
    }
    if (points_.size() == 2) return words::type_length;
    if (points_.size() == 1) return words::length_end;
    return way_ == Way::scale ? words::scale_begin : words::check_begin;
  }

  Answer choose(const std::string& id, const Scene& scene, const plan::Element& of, SitePlan now) {
    if (id == "lock" || id == "unlock") {
      now.locked = id == "lock";
      drop();
      return edited(scene, of, now, now.locked ? words::edit_lock_plan : words::edit_unlock_plan);
    }
    const auto* found = std::ranges::find_if(way_words, [&](const WayWord& one) { return id == one.id; });
    if (found == way_words.end()) return {};
    way_ = found->way;
    drop();
    return {};
  }

  Answer push(Key key, const Scene& scene, const plan::Element& of, const SitePlan& now) {
    if (key == Key::enter) return enter(scene, of, now);
    if ((key == Key::back || key == Key::undo) && !points_.empty()) {
      points_.pop_back();
      fields_.clear();
      renew_fields();
    }
    return {};
  }

  Answer enter(const Scene& scene, const plan::Element& of, SitePlan now) {
    if (const std::string* wrong = fields_.wrong()) return refuse("field-wrong", *wrong, words::text_wrong_mend);
    if (const auto percent = fields_.number("opacity")) {
      if (*percent < 0 || *percent > 100)
        return refuse("plan-opacity", words::opacity_range, words::opacity_range_mend);
      now.opacity = *percent / 100;
      fields_.clear("opacity");
      return edited(scene, of, now, words::edit_opacity);
    }
    if (measures() && points_.size() == 2) return known_length(scene, of, now);
    if (!fields_.typed()) return {};
    if (now.locked) return refuse("plan-locked", words::plan_locked, words::plan_locked_mend);
    if (way_ == Way::turn && fields_.has("angle"))
      return turn(scene, of, now, points_.empty() ? now.at : points_.front(), *fields_.number("angle"));
    if (way_ != Way::place) return {};
    const Point to = placed(now.at, now.at, fields_);
    if (geometry::past_reach(to)) return refuse("place-too-far", words::too_far, words::too_far_mend);
    drop();
    return edited(scene, of, moved(now, to - now.at), words::edit_place_plan);
  }

  Answer known_length(const Scene& scene, const plan::Element& of, SitePlan now) {
    const auto typed = fields_.length("length");
    if (!typed) return refuse("scale-length", words::scale_length, words::scale_length_mend);
    const plan::KnownLength known{points_[0], points_[1], *typed};
    const auto made = scaled(now, known);
    if (!made) return refuse(made.error().code, made.error().text, made.error().mend);
    const bool scales = way_ == Way::scale;
    if (scales && now.locked) return refuse("plan-locked", words::plan_locked, words::plan_locked_mend);
    if (!scales) now.check = known;
    drop();
    return edited(scene, of, scales ? *made : now, scales ? words::edit_scale_plan : words::edit_check_plan);
  }

  Answer turn(const Scene& scene, const plan::Element& of, const SitePlan& now, Point about, double degrees) {
    const SitePlan made = turned(now, about, units::Angle::degrees(degrees));
    if (geometry::past_reach(made.at)) return refuse("place-too-far", words::too_far, words::too_far_mend);
    drop();
    return edited(scene, of, made, words::edit_turn_plan);
  }

  Answer press(const Scene& scene, const plan::Element& of, const SitePlan& now) {
    const Point at = aimed(scene, {}, *pointer_).at();
    if (geometry::past_reach(at)) return refuse("place-too-far", words::too_far, words::too_far_mend);
    if (way_ == Way::turn && points_.size() == 2) {
      const Vec from = points_[1] - points_[0];
      const Vec to = at - points_[0];
      return turn(scene, of, now, points_[0], std::atan2(cross(from, to), dot(from, to)) * 180 / std::numbers::pi);
    }
    if (measures() && points_.size() == 2) points_.clear();
    if (way_ == Way::place) points_.clear();
    if (!points_.empty() && at == points_.back())
      return refuse("scale-points", words::scale_points, words::scale_points_mend);
    points_.push_back(at);
    renew_fields();
    return {};
  }

  Answer release(Point at, const Scene& scene, const plan::Element& of, const SitePlan& now) {
    if (way_ != Way::place || points_.empty()) return {};
    pointer_ = Pointer{at, {}};
    const Vec by = at - points_.front();
    drop();
    if (by == Vec{} || now.locked) return {};
    if (geometry::past_reach(geometry::moved(now.at, by)))
      return refuse("place-too-far", words::too_far, words::too_far_mend);
    return edited(scene, of, moved(now, by), words::edit_place_plan);
  }

  void show_points(View& view, const Scene& scene) const {
    for (const Point at : points_) view.marks.push_back({Takes::corner, at});
    if (points_.empty()) return;
    const bool set = measures() && points_.size() == 2;
    const Point to = set ? points_[1] : pointer_ ? pointer_->at : points_.back();
    const Point from = points_.front();
    if (to == from) return;
    view.strokes.push_back({{{{from, 0, {}}}, to, {}}, false, set ? Pen::in_hand : Pen::rubber});
    if (measures()) view.chips.push_back(length_chip({from, to, 0}, scene.job.heading.units));
  }

  Way way_ = Way::place;
  std::vector<Point> points_;  // set so far: where a drag began, ends of a length, turned about and from
  std::optional<Pointer> pointer_;
  Fields fields_;
};

}  // namespace

std::unique_ptr<Tool> site_plan_tool() { return std::make_unique<SitePlanTool>(); }

}  // namespace sketch
