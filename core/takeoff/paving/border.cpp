#include "takeoff/paving/border.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

#include "takeoff/paving/placed.h"

namespace takeoff::paving {

namespace {

constexpr double per_metre = units::Length::steps_per_metre;
constexpr double corner_from = 5 * std::numbers::pi / 180;  // less is a bend
constexpr double least_piece = 0.01;                        // metres: nobody lays smaller ones
constexpr double refit = 8128.0 / 16;                       // steps: 1/16 in

// Neighbouring edges that make one run, as walked.
struct Stretch {
  std::vector<geometry::Curve> curves;
  double turn = 0;    // signed, of the arcs
  double length = 0;  // steps
  double bends = 0;   // sum of tan(A/2) of the bends inside, signed
  double before = 0;  // signed turn at its ends; bends too
  double after = 0;
  bool straight() const { return curves.front().straight(); }
  double radius() const { return straight() ? 0 : length / std::abs(turn); }
};

double turn_between(const geometry::Curve& a, const geometry::Curve& b) {
  const geometry::Vec out = a.direction(1);
  const geometry::Vec in = b.direction(0);
  return std::atan2(geometry::cross(out, in), geometry::dot(out, in));
}

Stretch stretch_of(const geometry::Curve& curve) {
  return {{curve}, curve.straight() ? 0 : curve.sweep(), curve.length(), 0, 0, 0};
}

// Does the one arc from the first start to the last end, with the turn of all, pass within 1/16 in of each end and
// middle?
bool one_arc_follows(const Stretch& a, const Stretch& b) {
  const double turn = a.turn + b.turn;
  const geometry::Point start = a.curves.front().start;
  if (std::abs(turn) >= 3 || start == b.curves.back().end) return false;
  const geometry::Curve arc{start, b.curves.back().end, std::tan(turn / 4)};
  const geometry::Vec centre = arc.centre();
  const auto near = [&](const geometry::Curve& c) {
    const geometry::Vec from = c.start - start;
    return std::abs(geometry::length(from - centre) - arc.radius()) <= refit &&
           std::abs(geometry::length(from + c.at(0.5) - centre) - arc.radius()) <= refit;
  };
  return std::all_of(a.curves.begin(), a.curves.end(), near) && std::all_of(b.curves.begin(), b.curves.end(), near);
}

bool about_one_centre(const Stretch& a, const Stretch& b) {
  const geometry::Curve& p = a.curves.front();
  const geometry::Curve& q = b.curves.front();
  return geometry::length((q.start - p.start) + q.centre() - p.centre()) <= refit &&
         std::abs(p.radius() - q.radius()) <= refit;
}

bool one_run(const Stretch& a, const Stretch& b, double turn) {
  if (std::abs(turn) > corner_from || a.straight() != b.straight()) return false;
  if (a.straight()) return true;
  if ((a.turn > 0) != (b.turn > 0)) return false;
  return about_one_centre(a, b) || one_arc_follows(a, b);
}

void join(Stretch& a, const Stretch& b, double turn) {
  a.curves.insert(a.curves.end(), b.curves.begin(), b.curves.end());
  a.turn += b.turn;
  a.length += b.length;
  a.bends += b.bends + std::tan(turn / 2);
  a.after = b.after;
}

std::vector<Stretch> stretches(const geometry::Path& line) {
  std::vector<Stretch> found;
  for (std::size_t i = 0; i < line.size(); ++i) {
    Stretch next = stretch_of(line.curve(i));
    const double turn = found.empty() ? 0 : turn_between(found.back().curves.back(), next.curves.front());
    if (!found.empty() && one_run(found.back(), next, turn)) {
      join(found.back(), next, turn);
      continue;
    }
    if (!found.empty()) found.back().after = next.before = turn;
    found.push_back(std::move(next));
  }
  if (!line.closed()) return found;
  const double turn = turn_between(found.back().curves.back(), found.front().curves.front());
  if (found.size() > 1 && one_run(found.back(), found.front(), turn)) {
    join(found.back(), found.front(), turn);
    found.front() = std::move(found.back());
    found.pop_back();
  } else {
    found.back().after = found.front().before = turn;
  }
  return found;
}

// What is left of an arc's turn where corners take from its ends: the line that still takes more says it.
void settle_turn(RowRun& run, double deep) {
  if (run.radius > 0) run.turn = std::max(run.near_length / run.radius, run.far_length / (run.radius + deep));
}

RowRun row_run(const Stretch& s, double left_from, double left_to) {
  const double ends = std::tan(s.before / 2) + std::tan(s.after / 2) + s.bends;
  const auto long_at = [&](double left) { return s.length / per_metre - left * (s.turn + ends); };
  RowRun run;
  run.corner_before = std::abs(s.before) > corner_from ? std::abs(s.before) : 0;
  run.corner_after = std::abs(s.after) > corner_from ? std::abs(s.after) : 0;
  const double a = long_at(left_from);
  const double b = long_at(left_to);
  if (s.straight()) {
    run.near_length = std::min(a, b);
    run.far_length = std::max(a, b);
    return run;
  }
  const double sign = s.turn > 0 ? 1 : -1;
  const double at_from = s.radius() / per_metre - sign * left_from;
  const double at_to = s.radius() / per_metre - sign * left_to;
  run.near_length = at_from < at_to ? a : b;
  run.far_length = at_from < at_to ? b : a;
  // An arc whose radius is used up has no near line; a radius next to nothing is one that no piece can be cut to.
  run.radius = std::max(std::min(at_from, at_to), 1e-9);
  run.turn = std::abs(s.turn);
  if (run.corner_before > 0 || run.corner_after > 0) settle_turn(run, std::abs(left_to - left_from));
  return run;
}

bool square(double turn) { return std::abs(turn - std::numbers::pi / 2) < std::numbers::pi / 180; }

RowCorner built_at(double turn, RowCorner wanted, const RowRules& rules) {
  const double least = rules.least_face > 0 ? rules.least_face : rules.piece / 2;
  if (turn > 0.75 * std::numbers::pi) return RowCorner::butt;
  if (wanted == RowCorner::mitre && rules.piece < rules.deep * std::tan(turn / 2) + least) return RowCorner::butt;
  if (wanted == RowCorner::block && (rules.piece < rules.deep || !square(turn))) return RowCorner::butt;
  return wanted;
}

// The end is no longer mitred: the leg that runs through keeps its longer line, the one that stops loses what the
// other takes.
void end_square(RowRun& run, double& corner, const RowRules& rules, bool stops) {
  const double turn = corner;
  const double mitre = rules.deep * std::tan(turn / 2);
  const double taken = turn <= std::numbers::pi / 2 ? mitre : rules.deep / std::sin(turn);
  if (stops) {
    run.far_length -= taken + rules.joint;
    run.near_length -= rules.joint;
  } else {
    run.near_length += mitre;
  }
  run.near_length = std::max(run.near_length, 0.0);
  run.far_length = std::max(run.far_length, 0.0);
  if (run.radius == 0 && run.near_length > run.far_length) std::swap(run.near_length, run.far_length);
  if (square(turn)) corner = 0;
  settle_turn(run, rules.deep);
}

}  // namespace

std::vector<PlacedRun> placed_runs(const geometry::Path& line, double from, double deep, geometry::Side towards) {
  const double sign = towards == geometry::Side::left ? 1 : -1;
  std::vector<PlacedRun> runs;
  std::vector<Stretch> all = stretches(line);
  for (Stretch& s : all) {
    const RowRun run = row_run(s, sign * from, sign * (from + deep));
    if (run.far_length > 1e-9) runs.push_back({run, std::move(s.curves), s.before, s.after});
  }
  return runs;
}

std::vector<RowRun> row_runs(const geometry::Path& line, double from, double deep, geometry::Side towards) {
  std::vector<RowRun> runs;
  for (const PlacedRun& placed : placed_runs(line, from, deep, towards)) runs.push_back(placed.run);
  return runs;
}

RowCorners at_corners(std::vector<RowRun> runs, RowCorner corner, const RowRules& rules, int course, bool closed) {
  RowCorners made{std::move(runs), 0, 0, 0};
  const std::size_t count = made.runs.size();
  for (std::size_t i = 0; i < count; ++i) {
    if (i + 1 == count && !closed) break;
    RowRun& first = made.runs[i];
    RowRun& second = made.runs[(i + 1) % count];
    if (first.corner_after == 0 || second.corner_before == 0) continue;
    const RowCorner how = built_at(first.corner_after, corner, rules);
    if (how == RowCorner::mitre) {
      ++made.mitres;
      continue;
    }
    ++(how == RowCorner::block ? made.blocks : made.butts);
    const bool first_through = course % 2 == 0;
    end_square(first, first.corner_after, rules, how == RowCorner::block || !first_through);
    end_square(second, second.corner_before, rules, how == RowCorner::block || first_through);
  }
  return made;
}

namespace {

// What the saw does at the ends of a run, whatever lies between them.
void add_end_cuts(RowMake& make, const RowRun& run, double deep) {
  for (const double corner : {run.corner_before, run.corner_after}) {
    if (corner == 0) continue;
    make.cut = std::min(make.cut + 1, make.pieces);
    make.cut_length += deep / std::cos(std::min(corner / 2, 1.5));
  }
}

void straight_ways(const RowRun& run, const RowRules& rules, std::vector<RowMake>& found) {
  const double whole = run.far_length;
  const double module = rules.piece + rules.joint;
  const double least = std::min(rules.joint_least, rules.joint) - 1e-7;
  const double greatest = std::max(rules.joint_greatest, rules.joint) + 1e-7;
  const int n = std::max(1, static_cast<int>(std::ceil(whole / module - 1e-6)));
  const auto evened = [&](int count) { return whole / count - rules.piece; };
  const int other = std::max(1, n - 1);
  const bool fewer = std::abs(evened(other) - rules.joint) < std::abs(evened(n) - rules.joint);
  for (const int count : {fewer ? other : n, fewer ? n : other}) {
    const double joint = evened(count);
    if (joint < least || joint > greatest) continue;
    found.push_back({RowMake::How::straight_even, count, 0, rules.piece, rules.piece, joint, joint, 0, 0, 0});
    break;
  }
  const double even = whole / n - rules.joint;
  if (even > 0)
    found.push_back({RowMake::How::straight_even, n, n, even, even, rules.joint, rules.joint, 0, 0, n * rules.deep});
  const double closer = (whole - (n - 2) * module) / 2 - rules.joint;
  if (n >= 2 && closer >= rules.piece / 2 - 1e-9 && closer <= rules.piece)
    found.push_back(
        {RowMake::How::straight_closers, n, 2, closer, closer, rules.joint, rules.joint, 0, 0, 2 * rules.deep});
}

// Joint at the near line for pieces that lie uncut, by the distance of neighbouring corners.
double wedge_near(double p, double a, double piece) { return 2 * p * std::sin(a) - piece * std::cos(a); }

void uncut_way(const RowRun& run, const RowRules& rules, std::vector<RowMake>& found) {
  const double p = run.radius;
  const double about = run.turn * p / (rules.piece + rules.joint);
  RowMake best;
  double best_off = std::numeric_limits<double>::infinity();
  // The count that brings the middle of the wedge nearest to the joint wanted lies between those of the two lines.
  const int half_turns = static_cast<int>(std::ceil(run.turn / std::numbers::pi));
  const int first = std::max({1, static_cast<int>(about) - 1, half_turns});
  const int last = static_cast<int>(about * (p + rules.deep) / p) + 2;
  for (int n = first; n <= last; ++n) {
    const double a = run.turn / (2 * n);
    const double near = wedge_near(p, a, rules.piece);
    const double far = near + 2 * rules.deep * std::sin(a);
    if (near < rules.joint_least - 1e-9) break;
    const double off = std::abs((near + far) / 2 - rules.joint);
    if (far > rules.joint_greatest + 1e-9 || off >= best_off) continue;
    best_off = off;
    best = {RowMake::How::uncut, n, 0, rules.piece, rules.piece, near, far, 0, p * (1 / std::cos(a) - 1), 0};
  }
  if (best.pieces > 0) found.push_back(best);
}

void tapered_way(const RowRun& run, const RowRules& rules, std::vector<RowMake>& found) {
  const double p = run.radius;
  const double least = rules.least_face > 0 ? rules.least_face : rules.piece / 2;
  const double flat_limit = rules.flat_limit > 0 ? rules.flat_limit : 0.0254 / 8;
  const double by_length = run.turn * (p + rules.deep) / (rules.piece + rules.joint);
  const double by_flat = run.turn / (2 * std::acos(p / (p + flat_limit)));
  if (!(std::max(by_length, by_flat) < 1e7)) return;
  int n = std::max({1, static_cast<int>(std::max(by_length, by_flat)) - 2,
                    static_cast<int>(std::floor(run.turn / std::numbers::pi)) + 1});
  for (;; ++n) {
    const double a = run.turn / (2 * n);
    const double near = 2 * p * std::tan(a) - rules.joint / std::cos(a);
    const double far = 2 * (p + rules.deep) * std::tan(a) - rules.joint / std::cos(a);
    const double flat = p * (1 / std::cos(a) - 1);
    if (near < least - 1e-12) return;
    if (far > rules.piece + 1e-9 || flat > flat_limit + 1e-12) continue;
    found.push_back(
        {RowMake::How::tapered, n, n, near, far, rules.joint, rules.joint, a, flat, 2 * n * rules.deep / std::cos(a)});
    return;
  }
}

void radius_ways(const RowRun& run, const RowRules& rules, std::vector<RowMake>& found) {
  constexpr double fits = 0.0254 / 16;
  for (const auto& [stock, length] : rules.stock_radii) {
    if (!(stock > 0 && length > 0)) continue;
    const double far = run.radius + rules.deep;
    const bool on_near = std::abs(stock - run.radius) < std::abs(stock - far);
    const double radius = on_near ? run.radius : far;
    if (std::abs(length * length / 8 * (1 / radius - 1 / stock)) > fits) continue;
    const int n = std::max(1, static_cast<int>(std::ceil(radius * run.turn / (length + rules.joint) - 1e-6)));
    const double other = length * (on_near ? far : run.radius) / radius;
    found.push_back({RowMake::How::radius, n, 0, on_near ? length : other, on_near ? other : length, rules.joint,
                     rules.joint, 0, 0, 0});
  }
}

}  // namespace

std::vector<RowMake> ways(const RowRun& run, const RowRules& rules) {
  std::vector<RowMake> found;
  if (!(rules.piece >= least_piece && rules.deep > 0 && run.far_length > 0)) return found;
  if (run.radius == 0) {
    straight_ways(run, rules, found);
  } else {
    uncut_way(run, rules, found);
    tapered_way(run, rules, found);
    radius_ways(run, rules, found);
  }
  for (RowMake& make : found) add_end_cuts(make, run, rules.deep);
  std::stable_sort(found.begin(), found.end(), [](const RowMake& a, const RowMake& b) {
    if (a.cut != b.cut) return a.cut < b.cut;
    if (a.cut_length != b.cut_length) return a.cut_length < b.cut_length;
    return a.pieces < b.pieces;
  });
  return found;
}

double least_radius_uncut(double piece, double deep, double joint_least, double joint_greatest) {
  const double sine = (joint_greatest - joint_least) / (2 * deep);
  if (!(sine > 0)) return std::numeric_limits<double>::infinity();
  const double cosine = std::sqrt(1 - std::min(sine * sine, 1.0));
  return (joint_least + piece * cosine) / (2 * sine);
}

}  // namespace takeoff::paving
