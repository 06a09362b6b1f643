#include "sketch/shaper.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "geometry/index.h"
#include "sketch/shapes.h"
#include "sketch/words.h"

namespace sketch {

using geometry::Point;
using geometry::Vec;
using problem::Problem;
using Step = Shaper::Step;

namespace {

Step refused(const char* code, const char* text, const char* mend) {
  return {{}, Problem{problem::Severity::problem, code, text, mend, {}}, false};
}

Step refused_too_far() { return refused("place-too-far", words::too_far, words::too_far_mend); }

geometry::Ring edges_of(const std::vector<Point>& points, const std::vector<double>& bulges) {
  geometry::Ring edges;
  for (std::size_t i = 0; i < points.size(); ++i) edges.push_back({points[i], i < bulges.size() ? bulges[i] : 0, {}});
  return edges;
}

}  // namespace

Shaper::Shaper(bool closes) : closes_(closes) { renew_fields(); }

std::optional<Point> Shaper::first() const {
  if (points_.empty()) return {};
  return points_.front();
}

void Shaper::drop() {
  points_.clear();
  bulges_.clear();
  set_.reset();
  along_.reset();
  swing_ = 0;
  fields_.clear();
  renew_fields();
}

void Shaper::take_way(Way way) {
  drop();
  way_ = way;
}

void Shaper::close(bool closes) {
  closes_ = closes;
  if (!closes && whole()) way_ = Way::corners;
  drop();
}

std::optional<Whole> Shaper::whole() const {
  switch (way_) {
    case Way::rectangle: return Whole::rectangle;
    case Way::circle: return Whole::circle;
    case Way::across: return Whole::across;
    case Way::three: return Whole::three;
    case Way::corners:
    case Way::freeform: break;
  }
  return {};
}

// An arc with nothing to be tangent to goes through a point instead.
Start Shaper::start() const {
  Start start{edge_way_, {{}, points_, along_, closes_}, set_, swing_};
  for (std::size_t i = 0; i < bulges_.size(); ++i)
    start.in_hand.edges.push_back({points_[i], points_[i + 1], bulges_[i]});
  if (start.way == EdgeWay::tangent && bulges_.empty() && !along_) start.way = EdgeWay::through;
  return start;
}

WholeStart Shaper::whole_start(const Scene& scene) const {
  return {*whole(), points_, along_, scene.reach, pointer_ && pointer_->hold.steps};
}

void Shaper::renew_fields() {
  if (points_.empty()) return fields_.become({field::x(), field::y()});
  if (const auto kind = whole()) return fields_.become(fields_of(WholeStart{*kind, points_, {}, 0, false}));
  Start now = start();
  if (way_ == Way::freeform) now.way = EdgeWay::line;
  fields_.become(fields_of(now));
}

Step Shaper::take(const Event& event, const Scene& scene) {
  if (const auto* moved = std::get_if<Moved>(&event)) move({moved->at, moved->hold});
  if (const auto* released = std::get_if<Released>(&event)) move({released->at, released->hold});
  if (const auto* pressed = std::get_if<Pressed>(&event)) return press(*pressed, scene);
  if (const auto* pushed = std::get_if<Key>(&event)) return key(*pushed, scene);
  if (const auto* typed = std::get_if<Typed>(&event)) return type(*typed, scene);
  if (const auto* chosen = std::get_if<Chosen>(&event)) return choose(chosen->id);
  if (const auto* nudged = std::get_if<Nudged>(&event)) {
    const double step = scene.grid >= 1 ? scene.grid : static_cast<double>(units::Length::steps_per_inch);
    const Point from = pointer_ ? pointer_->at : points_.empty() ? Point{} : points_.back();
    move({geometry::moved(from, step * nudged->by), {}});
  }
  return {};
}

// How far the pointer has gone round the centre of an arc: of the turns that lead to its place the nearest to the last.
void Shaper::move(const Pointer& pointer) {
  pointer_ = pointer;
  if (!set_ || start().way != EdgeWay::centre) return;
  const Vec out = points_.back() - *set_;
  const Vec to = pointer.at - *set_;
  const double turn = std::atan2(cross(out, to), dot(out, to));
  constexpr double round = 2 * std::numbers::pi;
  swing_ = std::clamp(turn + round * std::round((swing_ - turn) / round), -round, round);
}

std::optional<Problem> Shaper::wrong_text() const {
  const std::string* wrong = fields_.wrong();
  if (!wrong) return {};
  return Problem{problem::Severity::problem, "field-wrong", *wrong, words::text_wrong_mend, {}};
}

Step Shaper::press(const Pressed& pressed, const Scene& scene) {
  move({pressed.at, pressed.hold});
  if (pressed.twice) return busy() && !whole() ? finish() : Step{};
  if (auto wrong = wrong_text()) return {{}, std::move(wrong), false};
  return set_point(scene);
}

Step Shaper::key(Key key, const Scene& scene) {
  switch (key) {
    case Key::enter:
      if (auto wrong = wrong_text()) return {{}, std::move(wrong), false};
      if (!fields_.typed()) return finish();
      // Of a rectangle the other side is still to be typed.
      if (busy() && way_ == Way::rectangle && !fixed(Whole::rectangle, fields_)) return {};
      return set_point(scene);
    case Key::escape:
      if (!busy()) return {{}, {}, true};
      drop();
      return {};
    case Key::back:
    case Key::undo: take_back(); return {};
    case Key::line_or_arc:
      if (way_ != Way::corners) return {};
      return choose(edge_way_ == EdgeWay::line ? word(last_arc_) : word(EdgeWay::line));
    case Key::erase:
    case Key::next_below: break;
  }
  return {};
}

void Shaper::take_back() {
  fields_.clear();
  if (set_) {
    set_.reset();
  } else if (!points_.empty()) {
    points_.pop_back();
    if (!bulges_.empty()) bulges_.pop_back();
  }
  if (points_.empty()) return drop();
  renew_fields();
}

Step Shaper::type(const Typed& typed, const Scene& scene) {
  fields_.take(typed, scene.job.heading.units);
  const auto kind = whole();
  const bool all_locked =
      std::ranges::all_of(fields_.shown(), [](const Field& one) { return one.text.empty() || one.locked; });
  if (kind && busy() && all_locked && *kind != Whole::three && fixed(*kind, fields_)) return set_point(scene);
  return {};
}

Step Shaper::choose(const std::string& id) {
  if (const auto edge = edge_way(id)) {
    if (way_ != Way::corners) return {};
    edge_way_ = *edge;
    if (*edge != EdgeWay::line) last_arc_ = *edge;
    set_.reset();
    swing_ = 0;
    renew_fields();
    return {};
  }
  const auto way = shape_way(id);
  if (!way || *way == way_) return {};
  if (points_.size() > 1 || set_) return refused("shape-unfinished", words::finish_first, words::finish_first_mend);
  if (!closes_ && *way != Way::corners && *way != Way::freeform) return {};
  way_ = *way;
  renew_fields();
  return {};
}

Step Shaper::set_point(const Scene& scene) {
  if (points_.empty()) return set_first(scene);
  if (whole()) return set_whole(scene);
  return way_ == Way::freeform ? add_control(scene) : set_edge(scene);
}

Step Shaper::set_first(const Scene& scene) {
  const Next next = first_corner(scene, pointer_.value_or(Pointer{}), fields_);
  if (geometry::past_reach(next.at)) return refused_too_far();
  const Takes takes = next.aimed.taken.takes;
  along_.reset();
  if ((takes == Takes::edge || takes == Takes::middle) && next.at == next.aimed.at()) {
    const auto curve = scene.snaps.curve(next.aimed.taken);
    if (curve && curve->straight()) along_ = curve->direction(0);
  }
  points_.push_back(next.at);
  fields_.clear();
  renew_fields();
  return {};
}

Step Shaper::set_edge(const Scene& scene) {
  const Start now = start();
  const Next next = next_edge(scene, now, pointer(), fields_);
  if (geometry::past_reach(next.at)) return refused_too_far();
  if (now.way == EdgeWay::through && set_ && arc_too_small(now, fields_))
    return refused("arc-too-small", words::arc_too_small, words::arc_too_small_mend);
  const bool first_of_two = !set_ && (now.way == EdgeWay::through || now.way == EdgeWay::centre);
  if (!first_of_two) return add_edge(next);
  if (next.at == points_.back()) return refused("edge-no-length", words::no_length, words::no_length_mend);
  set_ = next.at;
  swing_ = 0;
  fields_.clear();
  renew_fields();
  return {};
}

Step Shaper::add_edge(const Next& next) {
  if (next.at == points_.back()) return refused("edge-no-length", words::no_length, words::no_length_mend);
  const bool meets_first = next.at == points_.front();
  bulges_.push_back(next.bulge);
  if (meets_first && closes_) {
    if (enough()) return finish();
    bulges_.pop_back();
    return refused("shape-too-few", words::outline_too_few, words::too_few_mend);
  }
  points_.push_back(next.at);
  if (meets_first) return finish();
  set_.reset();
  swing_ = 0;
  fields_.clear();
  renew_fields();
  return {};
}

Step Shaper::add_control(const Scene& scene) {
  const Point at = control_point(scene).at();
  if (geometry::past_reach(at)) return refused_too_far();
  if (at == points_.back()) return refused("edge-no-length", words::no_length, words::no_length_mend);
  if (at == points_.front()) return finish();
  points_.push_back(at);
  fields_.clear();
  renew_fields();
  return {};
}

Step Shaper::set_whole(const Scene& scene) {
  const WholeStart now = whole_start(scene);
  const Point at = aimed_at_points(scene, {}, pointer()).at();
  if (points_.size() + 1 < places_needed(now.whole)) {
    const Point place = placed(points_.back(), at, fields_);
    if (geometry::past_reach(place)) return refused_too_far();
    if (place == points_.back()) return refused("edge-no-length", words::no_length, words::no_length_mend);
    points_.push_back(place);
    fields_.clear();
    renew_fields();
    return {};
  }
  const auto ring = whole_ring(now, at, fields_);
  if (!ring) return {{}, ring.error(), false};
  if (std::ranges::any_of(*ring, [](const geometry::Edge& edge) { return geometry::past_reach(edge.from); }))
    return refused_too_far();
  return finish_whole(*ring);
}

bool Shaper::enough() const {
  if (way_ == Way::freeform) return points_.size() >= (closes_ ? 3U : 2U);
  if (!closes_) return points_.size() >= 2;
  const bool bent = std::ranges::any_of(bulges_, [](double bulge) { return bulge != 0; });
  return points_.size() >= (bent ? 2U : 3U);
}

Step Shaper::finish_whole(const geometry::Ring& ring) {
  const Finished done{true, counter_clockwise({ring, {}}), {}, points_.front(), geometry::curve(ring, 0).direction(0)};
  drop();
  return {done, {}, false};
}

Step Shaper::finish() {
  if (!busy()) return {};
  if (whole()) return refused("shape-unfinished", words::finish_first, words::finish_first_mend);
  if (!enough())
    return refused("shape-too-few", closes_ ? words::outline_too_few : words::line_too_few, words::too_few_mend);
  Finished done;
  done.closes = closes_;
  done.first = points_.front();
  if (way_ == Way::freeform && closes_) done.ring = counter_clockwise({{}, points_});
  if (way_ == Way::freeform && !closes_) done.line = {{}, points_.back(), points_};
  if (way_ == Way::corners && closes_) done.ring = counter_clockwise({edges_of(points_, bulges_), {}});
  if (way_ == Way::corners && !closes_) done.line = set_so_far();
  const geometry::Vec first = points_[1] - points_[0];
  done.along =
      bulges_.empty() ? (1 / length(first)) * first : geometry::Curve{points_[0], points_[1], bulges_[0]}.direction(0);
  drop();
  return {done, {}, false};
}

plan::DrawnLine Shaper::set_so_far() const {
  geometry::Ring edges = edges_of(points_, bulges_);
  edges.pop_back();
  return {std::move(edges), points_.back(), {}};
}

Pointer Shaper::pointer() const { return pointer_.value_or(Pointer{points_.empty() ? Point{} : points_.back(), {}}); }

}  // namespace sketch
