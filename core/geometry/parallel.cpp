#include <algorithm>
#include <limits>

#include "geometry/offset.h"
#include "geometry/private/carrier.h"
#include "geometry/private/far_side.h"
#include "geometry/private/strips.h"

namespace geometry {

namespace {

constexpr double smooth_turn = 1e-3;  // radians: under it the mitre of a corner is a ten millionth longer than its foot

Joint bridge(const Beside& before, const Beside& after, double left) {
  return {{before.foot_at_end(left), after.foot_at_start(left)}, {before.origin}, true, 0};
}

Joint rounded(const Beside& before, const Beside& after, double left) {
  const double turn = turning(before.from.direction(1), after.from.direction(0));
  const Vec first = before.foot_at_end(left);
  const Vec last = after.foot_at_start(left);
  const Carrier on{after.start, {}, std::abs(left), left > 0 ? -1 : 1};
  // The points as they will be on the grid: the path's first point, from which they are told, is on it.
  const auto whole = [](Vec at) { return Vec{std::round(at.x), std::round(at.y)}; };
  return {{first, last}, {before.origin}, false, bulge_between(on, whole(first), whole(last), turn)};
}

// Edges that are neighbours only because what lay between them is gone.
Joint joint_of_strangers(const Beside& before, const Beside& after, double left) {
  const Vec near = 0.5 * (before.foot_at_end(left) + after.foot_at_start(left));
  const auto met = meeting(*before.on, *after.on, near);
  if (met && length(*met - near) <= 4 * (length(after.start - before.end()) + std::abs(left)))
    return {{*met}, {}, false, 0};
  return bridge(before, after, left);
}

// The edges that are left, in order, and the joints before each and after the last.
class Chain {
 public:
  Chain(const Path& path, double left, double limit, Corner corner)
      : left_(left), limit_(limit), corner_(corner), closed_(path.closed()), edges_(row(path, left).edges) {
    for (std::size_t i = 0; i < edges_.size(); ++i) {
      if (edges_[i].on) numbers_.push_back(i);
    }
  }

  FarSide build(Point origin) {
    while (drop_backward_edge()) {
    }
    FarSide made;
    const std::size_t count = numbers_.size();
    made.whole = count == edges_.size();
    if (count == 0 || (closed_ && (count == 1 || shut()))) return made;
    for (std::size_t k = 0; k < count; ++k) {
      const Beside& edge = edges_[numbers_[k]];
      const Joint& after = joints_[k + 1];
      const Point from = moved(origin, joints_[k].points.back());
      const Point to = moved(origin, after.points.front());
      made.edges.push_back({from, bulge_between(*edge.on, from - origin, to - origin, edge.from.sweep()), edge.origin});
      for (std::size_t i = 0; i < after.origins.size(); ++i) {
        made.edges.push_back({moved(origin, after.points[i]), after.bulge, after.origins[i]});
      }
      made.bridged = made.bridged || joints_[k].bridged || after.bridged;
    }
    made.end = moved(origin, joints_[count].points.back());
    drop_empty_edges(made);
    return made;
  }

 private:
  const Beside& edge(std::size_t k) const { return edges_[numbers_[k % numbers_.size()]]; }

  Joint joint(std::size_t k) const {
    const std::size_t count = numbers_.size();
    if (!closed_ && k == 0) return {{edge(0).foot_at_start(left_)}, {}, false, 0};
    if (!closed_ && k == count) return {{edge(count - 1).foot_at_end(left_)}, {}, false, 0};
    const std::size_t before = (k + count - 1) % count;
    if ((numbers_[before] + 1) % edges_.size() == numbers_[k % count]) {
      const bool opens = !smooth(edge(before), edge(k)) && outside(edge(before), edge(k), left_);
      if (opens && corner_ == Corner::round) return rounded(edge(before), edge(k), left_);
      return joint_of_neighbours(edge(before), edge(k), left_, limit_);
    }
    return joint_of_strangers(edge(before), edge(k), left_);
  }

  double turn(std::size_t k) const {
    const Beside& at = edge(k);
    if (at.on->turn == 0) return 0;
    return turn_between(*at.on, joints_[k].points.back(), joints_[k + 1].points.front(), at.from.sweep());
  }

  // The share of its old length that edge k has now; negative when it runs backwards.
  double share(std::size_t k) const {
    const Beside& at = edge(k);
    if (at.on->turn != 0) return turn(k) / std::abs(at.from.sweep());
    return dot(joints_[k + 1].points.front() - joints_[k].points.back(), at.on->along) / length(at.from.chord());
  }

  // The most backward edge goes, and its neighbours meet instead.
  bool drop_backward_edge() {
    const std::size_t count = numbers_.size();
    if (count == 0) return false;
    if (stale_) {
      joints_.clear();
      for (std::size_t k = 0; k <= count; ++k) joints_.push_back(joint(k));
      stale_ = false;
    }
    std::size_t worst = count;
    double least = 0;
    for (std::size_t k = 0; k < count; ++k) {
      if (share(k) < least) least = share(worst = k);
    }
    if (worst == count) return false;
    numbers_.erase(numbers_.begin() + static_cast<std::ptrdiff_t>(worst));
    joints_.erase(joints_.begin() + static_cast<std::ptrdiff_t>(worst));
    const std::size_t left_over = numbers_.size();
    if (left_over == 0) return false;
    joints_[worst] = joint(worst);
    if (closed_ && (worst == 0 || worst == left_over)) joints_.front() = joints_.back() = joint(0);
    return true;
  }

  // A closed line has closed up when two edges face each other across what was left out between them.
  bool shut() const {
    for (std::size_t k = 0; k < numbers_.size(); ++k) {
      const std::size_t before = (k + numbers_.size() - 1) % numbers_.size();
      const bool strangers = (numbers_[before] + 1) % edges_.size() != numbers_[k];
      if (strangers && joints_[k].bridged) return true;
    }
    return false;
  }

  static void drop_empty_edges(FarSide& side) {
    Ring kept;
    for (std::size_t i = 0; i < side.edges.size(); ++i) {
      const Point to = i + 1 < side.edges.size() ? side.edges[i + 1].from : side.end;
      if (side.edges[i].from != to) kept.push_back(side.edges[i]);
    }
    side.edges = std::move(kept);
  }

  double left_;
  double limit_;
  Corner corner_;
  bool closed_;
  bool stale_ = true;
  std::vector<Beside> edges_;
  std::vector<std::size_t> numbers_;
  std::vector<Joint> joints_;
};

}  // namespace

Beside beside(const Curve& from, Vec start, Origin origin, double left) {
  return {from, start, origin, carrier(from, start, left)};
}

double turning(Vec before, Vec after) { return std::atan2(cross(before, after), dot(before, after)); }

bool smooth(const Beside& before, const Beside& after) {
  return std::abs(turning(before.from.direction(1), after.from.direction(0))) < smooth_turn;
}

bool outside(const Beside& before, const Beside& after, double left) {
  return (turning(before.from.direction(1), after.from.direction(0)) > 0) != (left > 0);
}

Joint joint_of_neighbours(const Beside& before, const Beside& after, double left, double limit) {
  const Vec in = before.from.direction(1);
  const Vec out = after.from.direction(0);
  const Vec corner = after.start;
  if (smooth(before, after)) {
    const Vec middle = left_of(in) + left_of(out);
    return {{corner + (left / length(middle)) * middle}, {}, false, 0};
  }
  if (1 + dot(in, out) < 1e-9 && !std::isfinite(limit)) return bridge(before, after, left);
  const bool opens = outside(before, after, left);
  const Vec tip = (left / (1 + dot(in, out))) * (left_of(in) + left_of(out));
  const double furthest = limit * std::abs(left);
  if (before.on && after.on && (!opens || length(tip) <= furthest)) {
    const auto met = meeting(*before.on, *after.on, corner + tip);
    if (met && length(*met - corner) <= std::min(opens ? furthest : HUGE_VAL, 4 * length(tip)))
      return {{*met}, {}, false, 0};
  }
  if (!opens) return bridge(before, after, left);
  Joint corners{{}, {}, !before.from.straight() || !after.from.straight(), 0};
  if (!before.from.straight()) corners.points.push_back(before.foot_at_end(left));
  for (const Vec at : mitre(in, out, left, limit)) corners.points.push_back(corner + at);
  if (!after.from.straight()) corners.points.push_back(after.foot_at_start(left));
  corners.origins.assign(corners.points.size() - 1, before.origin);
  if (!after.from.straight()) corners.origins.back() = after.origin;
  return corners;
}

std::vector<Vec> mitre(Vec before, Vec after, double to_the_left, double limit) {
  const double width = std::abs(to_the_left);
  const double sum = 1 + dot(before, after);
  const Vec both = left_of(before) + left_of(after);
  if (width * length(both) <= limit * width * sum) return {(to_the_left / sum) * both};
  // In the right triangle of corner, foot and tip: the cut lies limit x width out along the bisector. Written so that a
  // turn of half a round, whose tip is endlessly far, has its cut too.
  const double half = std::abs(turning(before, after)) / 2;
  const double past_foot = std::max(0.0, width * (limit - std::cos(half)) / std::sin(half));
  return {to_the_left * left_of(before) + past_foot * before, to_the_left * left_of(after) - past_foot * after};
}

FarSide far_side(const Path& path, double to_the_left, double limit, Corner corner) {
  return Chain(path, to_the_left, limit, corner).build(path.edges().front().from);
}

problem::Result<Path> parallel(const Path& path, units::Length to_the_left) {
  if (to_the_left == units::Length{}) return path;
  const double left = static_cast<double>(to_the_left.steps());
  FarSide side = far_side(path, left, std::numeric_limits<double>::infinity());
  if (side.edges.empty()) {
    problem::Place place;
    place.at = xy(path.edges().front().from);
    return problem::fault("parallel-nothing-left", "Nothing is left of the line when it is moved aside so far.",
                          "Move it less, or draw it wider.", place);
  }
  return Path::make(std::move(side.edges), side.end);
}

}  // namespace geometry
