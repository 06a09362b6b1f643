#include "takeoff/paving/clip.h"

#include <algorithm>
#include <cmath>

namespace takeoff::paving {

namespace {

using geometry::Vec;

// Places on the border this close are one, and the direction of the chains decides: rounding must not put two edges
// that share a corner there in the wrong order. Steps: far under what can be drawn, over what doubles lose at 5 km.
constexpr double same_place = 1e-5;

}  // namespace

// The part of an edge inside the open rectangle. An end that is no corner of the outline lies on the border, exactly.
struct Clip::Piece {
  Vec from;
  Vec to;
  bool from_inside;
  bool to_inside;
};

bool Clip::inside(const FrameEdge& edge, Piece& piece) const {
  const Vec p = edge.from - corner_;
  const Vec q = edge.to - corner_;
  const double in_p[4] = {p.y, width_ - p.x, height_ - p.y, p.x};
  const double in_q[4] = {q.y, width_ - q.x, height_ - q.y, q.x};
  double enter = 0, leave = 1;
  int enter_side = -1, leave_side = -1;
  for (int side = 0; side < 4; ++side) {
    const double a = in_p[side];
    const double b = in_q[side];
    if (a <= 0 && b <= 0) return false;
    if (a <= 0) {
      const double t = a / (a - b);
      if (enter_side < 0 || t > enter) enter = t, enter_side = side;
    } else if (b <= 0) {
      const double t = a / (a - b);
      if (leave_side < 0 || t < leave) leave = t, leave_side = side;
    }
  }
  piece.from_inside = enter_side < 0;
  piece.to_inside = leave_side < 0;
  if (!piece.from_inside && !piece.to_inside && enter >= leave) return false;
  const auto on_border = [&](double t, int side) {
    const Vec at = t <= 0 ? p : t >= 1 ? q : p + t * (q - p);
    Vec snapped{std::clamp(at.x, 0.0, width_), std::clamp(at.y, 0.0, height_)};
    if (side == 0) snapped.y = 0;
    if (side == 1) snapped.x = width_;
    if (side == 2) snapped.y = height_;
    if (side == 3) snapped.x = 0;
    return snapped;
  };
  piece.from = piece.from_inside ? p : on_border(enter, enter_side);
  piece.to = piece.to_inside ? q : on_border(leave, leave_side);
  return true;
}

void Clip::gather(std::span<const FrameEdge> edges, std::span<const Near> near) {
  std::int32_t last_edge = -1;
  for (const Near& n : near) {
    const std::int32_t number = n.edge();
    const FrameEdge& edge = edges[static_cast<std::size_t>(number)];
    Piece piece{};
    if (!inside(edge, piece)) continue;
    const bool goes_on =
        piece.from_inside && !chains_.empty() && !chains_.back().ends_on_border && last_edge == edge.previous;
    if (goes_on) {
      points_.back().edge = number;  // the end point of the edge before is where this one starts
    } else {
      chains_.push_back({points_.size(), 1, !piece.from_inside, false, -1, false});
      points_.push_back({piece.from, number});
    }
    points_.push_back({piece.to, -1});
    ++chains_.back().count;
    chains_.back().ends_on_border = !piece.to_inside;
    last_edge = number;
  }
}

// Edges come in the order of their ring, so a ring's first and last edge may stand in two chains that are one.
void Clip::link(std::span<const FrameEdge> edges) {
  for (std::size_t i = 0; i < chains_.size(); ++i) {
    if (chains_[i].starts_on_border) continue;
    const std::int32_t before = edges[static_cast<std::size_t>(points_[chains_[i].first].edge)].previous;
    for (Chain& other : chains_) {
      if (!other.ends_on_border && points_[other.first + other.count - 2].edge == before)
        other.next = static_cast<int>(i);
    }
  }
}

double Clip::along(Vec p) const {
  if (p.y <= 0 && p.x < width_) return p.x;
  if (p.x >= width_ && p.y < height_) return width_ + p.y;
  if (p.y >= height_ && p.x > 0) return width_ + height_ + (width_ - p.x);
  const double left = 2 * width_ + height_ + (height_ - p.y);
  return p.y <= 0 ? 0 : left;
}

double Clip::angle(double at, Vec direction) const {
  const Vec side = at < width_                 ? Vec{1, 0}
                   : at < width_ + height_     ? Vec{0, 1}
                   : at < 2 * width_ + height_ ? Vec{-1, 0}
                                               : Vec{0, -1};
  return std::atan2(cross(side, direction), dot(side, direction));
}

void Clip::meet_border() {
  for (std::size_t i = 0; i < chains_.size(); ++i) {
    const Chain& chain = chains_[i];
    const Side* p = points_.data() + chain.first;
    if (chain.starts_on_border) {
      events_.push_back({along(p[0].from), 0, static_cast<int>(i), true});
    }
    if (chain.ends_on_border) events_.push_back({along(p[chain.count - 1].from), 0, static_cast<int>(i), false});
  }
  std::sort(events_.begin(), events_.end(), [](const Event& a, const Event& b) {
    return a.along != b.along ? a.along < b.along : a.chain != b.chain ? a.chain < b.chain : a.start < b.start;
  });
  // At one place: the walk along the border passes the chains from the greatest angle to the least.
  for (std::size_t i = 0; i < events_.size();) {
    std::size_t end = i + 1;
    while (end < events_.size() && events_[end].along - events_[end - 1].along <= same_place) ++end;
    if (end - i > 1) {
      for (std::size_t k = i; k < end; ++k) {
        const Chain& chain = chains_[static_cast<std::size_t>(events_[k].chain)];
        const Side* p = points_.data() + chain.first;
        const std::size_t n = chain.count;
        events_[k].angle =
            angle(events_[i].along, events_[k].start ? p[1].from - p[0].from : p[n - 2].from - p[n - 1].from);
      }
      std::stable_sort(events_.begin() + static_cast<std::ptrdiff_t>(i),
                       events_.begin() + static_cast<std::ptrdiff_t>(end),
                       [](const Event& a, const Event& b) { return a.angle > b.angle; });
    }
    i = end;
  }
}

// Adds a chain and what goes on from it inside; the last point, on the border, becomes the start of a side of the unit.
void Clip::add_chain(int number) {
  while (true) {
    Chain& chain = chains_[static_cast<std::size_t>(number)];
    chain.used = true;
    const bool goes_on = chain.next >= 0;
    for (std::size_t k = 0; k + (goes_on ? 1 : 0) < chain.count; ++k) sides_.push_back(points_[chain.first + k]);
    if (!goes_on || chains_[static_cast<std::size_t>(chain.next)].used) return;
    number = chain.next;
  }
}

void Clip::go_round(double from, double to) {
  const double round = 2 * (width_ + height_);
  const double corner_at[4] = {width_, width_ + height_, 2 * width_ + height_, round};
  const Vec corner[4] = {{width_, 0}, {width_, height_}, {0, height_}, {0, 0}};
  for (int lap = 0; lap < 2; ++lap) {
    for (int k = 0; k < 4; ++k) {
      const double at = corner_at[k] + lap * round;
      if (at > from && at < to) sides_.push_back({corner[k], -1});
    }
  }
}

void Clip::trace() {
  for (std::size_t begin = 0; begin < events_.size(); ++begin) {
    if (!events_[begin].start || chains_[static_cast<std::size_t>(events_[begin].chain)].used) continue;
    const std::size_t first_side = sides_.size();
    std::size_t at = begin;
    while (true) {
      add_chain(events_[at].chain);
      // The chain's last link ends on the border; find where, then the next start after it.
      int last = events_[at].chain;
      while (chains_[static_cast<std::size_t>(last)].next >= 0) last = chains_[static_cast<std::size_t>(last)].next;
      std::size_t end = 0;
      while (end < events_.size() && (events_[end].start || events_[end].chain != last)) ++end;
      if (end == events_.size()) break;
      std::size_t next = end;
      do {
        next = next + 1 == events_.size() ? 0 : next + 1;
      } while (next != end && next != begin &&
               (!events_[next].start || chains_[static_cast<std::size_t>(events_[next].chain)].used));
      // A walk of no length must not be taken for one all the way round.
      const bool wraps = next < end;
      const double from = events_[end].along;
      const double to = events_[next].along;
      if (wraps)
        go_round(from, to + 2 * (width_ + height_));
      else if (to > from)
        go_round(from, to);
      if (next == begin || next == end) break;
      at = next;
    }
    finish_part(first_side);
  }
}

double Clip::area(std::size_t first, std::size_t count) const {
  double twice = 0;
  const Vec origin = sides_[first].from;
  for (std::size_t k = 1; k + 1 < count; ++k) {
    twice += cross(sides_[first + k].from - origin, sides_[first + k + 1].from - origin);
  }
  return twice / 2;
}

void Clip::finish_part(std::size_t first) {
  // Two points on one spot are one: a chain that starts where the last one ended, or in a corner.
  std::size_t kept = first;
  for (std::size_t i = first; i < sides_.size(); ++i) {
    const Side& next = i + 1 == sides_.size() ? sides_[first] : sides_[i + 1];
    if (sides_[i].from == next.from) continue;
    sides_[kept++] = sides_[i];
  }
  sides_.resize(kept);
  Part part{first, kept - first, 0, 0};
  if (part.count < 3) {
    sides_.resize(first);
    return;
  }
  part.area = area(part.first, part.count);
  // An outline is checked within 0.5 mm; one that crosses itself by less leaves loops the wrong way round, which are
  // nothing.
  if (part.area <= 0) {
    sides_.resize(first);
    return;
  }
  for (std::size_t k = 0; k < part.count; ++k) {
    const Side& side = sides_[first + k];
    if (side.edge < 0) continue;
    const Vec along_edge = sides_[first + (k + 1 == part.count ? 0 : k + 1)].from - side.from;
    part.cut_length += std::sqrt(dot(along_edge, along_edge));
  }
  parts_.push_back(part);
}

void Clip::whole_part() {
  const std::size_t first = sides_.size();
  for (const Vec& at : {Vec{0, 0}, Vec{width_, 0}, Vec{width_, height_}, Vec{0, height_}}) sides_.push_back({at, -1});
  finish_part(first);
}

bool Clip::holds(const Part& part, Vec p) const {
  bool in = false;
  for (std::size_t k = 0; k < part.count; ++k) {
    const Vec a = sides_[part.first + k].from;
    const Vec b = sides_[part.first + (k + 1 == part.count ? 0 : k + 1)].from;
    if ((a.y <= p.y) != (b.y <= p.y) && p.x < a.x + (p.y - a.y) * (b.x - a.x) / (b.y - a.y)) in = !in;
  }
  return in;
}

// The hole's ring stands at sides_[first .. first + count), behind all parts. It is taken into the smallest part round
// it, by a slit from that part's nearest corner and back.
void Clip::join_hole(std::size_t first, std::size_t count) {
  std::vector<Side> hole(sides_.begin() + static_cast<std::ptrdiff_t>(first), sides_.end());
  sides_.resize(first);
  Part* round = nullptr;
  for (Part& part : parts_) {
    if (holds(part, hole[0].from) && (round == nullptr || part.area < round->area)) round = &part;
  }
  if (round == nullptr) return;
  std::size_t near = 0;
  std::size_t entry = 0;
  double least = -1;
  for (std::size_t k = 0; k < round->count; ++k) {
    for (std::size_t h = 0; h < count; ++h) {
      const Vec gap = sides_[round->first + k].from - hole[h].from;
      if (least < 0 || dot(gap, gap) < least) least = dot(gap, gap), near = k, entry = h;
    }
  }
  std::vector<Side> joined(sides_.begin() + static_cast<std::ptrdiff_t>(round->first),
                           sides_.begin() + static_cast<std::ptrdiff_t>(round->first + round->count));
  std::rotate(joined.begin(), joined.begin() + static_cast<std::ptrdiff_t>(near), joined.end());
  std::rotate(hole.begin(), hole.begin() + static_cast<std::ptrdiff_t>(entry), hole.end());
  const Side back = joined[0];
  std::vector<Side> there_and_back{Side{back.from, -1}};
  there_and_back.insert(there_and_back.end(), hole.begin(), hole.end());
  there_and_back.push_back(Side{hole[0].from, -1});
  joined.insert(joined.begin(), there_and_back.begin(), there_and_back.end());
  parts_.erase(parts_.begin() + (round - parts_.data()));
  const std::size_t at = sides_.size();
  sides_.insert(sides_.end(), joined.begin(), joined.end());
  finish_part(at);
}

// Rings that lie in the unit without touching its border: islands of ground are parts, holes are taken out of one.
void Clip::trace_rings() {
  std::vector<std::vector<Side>> holes;
  double leftmost = 0;
  bool ground_outside = false;
  bool any = false;
  for (std::size_t i = 0; i < chains_.size(); ++i) {
    if (chains_[i].used || chains_[i].ends_on_border) continue;
    const std::size_t first = sides_.size();
    add_chain(static_cast<int>(i));
    const std::size_t count = sides_.size() - first;
    if (count < 3) {
      sides_.resize(first);
      continue;
    }
    double left = sides_[first].from.x;
    for (std::size_t k = 0; k < count; ++k) left = std::min(left, sides_[first + k].from.x);
    const bool hole = area(first, count) < 0;
    if (!any || left < leftmost) leftmost = left, ground_outside = hole;
    any = true;
    if (!hole) {
      finish_part(first);
      continue;
    }
    holes.emplace_back(sides_.begin() + static_cast<std::ptrdiff_t>(first), sides_.end());
    sides_.resize(first);
  }
  if (events_.empty() && ground_outside) whole_part();
  for (const auto& hole : holes) {
    const std::size_t first = sides_.size();
    sides_.insert(sides_.end(), hole.begin(), hole.end());
    join_hole(first, hole.size());
  }
}

void Clip::unit(Vec corner, double width, double height, std::span<const FrameEdge> edges, std::span<const Near> near) {
  corner_ = corner;
  width_ = width;
  height_ = height;
  points_.clear();
  chains_.clear();
  events_.clear();
  sides_.clear();
  parts_.clear();
  gather(edges, near);
  bool rings = false;
  for (const Chain& chain : chains_) rings = rings || !chain.starts_on_border;
  if (rings) link(edges);
  meet_border();
  trace();
  if (rings) trace_rings();
}

}  // namespace takeoff::paving
