#include "takeoff/walls/profile.h"

#include <algorithm>
#include <cmath>

#include "takeoff/edges/notes.h"
#include "takeoff/walls/base_steps.h"
#include "takeoff/walls/crossing.h"
#include "takeoff/walls/words.h"

namespace takeoff::walls {

double Profile::buried(const Column& c) const { return ground.least(c.from, c.to) - base_level(c); }

const Column& Profile::at(double station) const {
  const auto next = std::ranges::upper_bound(columns, station, {}, &Column::from);
  return next == columns.begin() ? columns.front() : *std::prev(next);
}

namespace {

constexpr double dust = 1e-6;                              // metres
constexpr double sixteenth = units::metres_per_inch / 16;  // what nobody builds to
constexpr int most_courses = 60;                           // more, or higher, is a typing error
constexpr double most_height = 30;                         // metres
constexpr std::size_t most_heights = 10'000;

// Heights as they are reckoned with: places that mean a corner or an end lie exactly on it.
struct Given {
  Heights ground;
  Heights top;
  Heights base;  // empty: by the rule
};

using Where = std::vector<double>;  // stations that heights snap to

Heights on_places(const std::vector<plan::HeightAt>& given, const Where& places) {
  const Heights plain(given);
  std::vector<Heights::Knot> knots = plain.knots();
  for (Heights::Knot& knot : knots) {
    for (double place : places) {
      if (std::abs(knot.at - place) < sixteenth) knot.at = place;
    }
  }
  return Heights::of(std::move(knots));
}

void told_order(const plan::Job& job, const std::vector<plan::HeightAt>& given, const std::string& what, double length,
                const plan::ElementId& of, Share& share) {
  const bool sorted = std::ranges::is_sorted(given, {}, &plan::HeightAt::at);
  const bool inside = std::ranges::all_of(given, [&](const plan::HeightAt& one) {
    return one.at.metres().si() > -sixteenth && one.at.metres().si() < length + sixteenth;
  });
  if (sorted && inside) return;
  share.problems.push_back(edges::notice("wall-heights",
                                         "the " + what + " is not in order along the wall, or goes past its end at " +
                                             edges::shown(job, length) + "; it was sorted and still counts",
                                         "look at the places of its heights", of));
}

Heights raised(const Heights& heights, double by) {
  std::vector<Heights::Knot> knots = heights.knots();
  for (Heights::Knot& knot : knots) knot.height += by;
  return Heights::of(std::move(knots));
}

std::optional<Given> given_heights(const plan::Job& job, const plan::Wall& wall, const Profile& profile,
                                   const plan::ElementId& of, Share& share) {
  Where places{0, profile.length};
  for (const Leg& leg : profile.legs) places.push_back(leg.to);
  Given given{on_places(wall.ground, places), on_places(wall.top, places), on_places(wall.base, places)};
  told_order(job, wall.ground, "ground in front", profile.length, of, share);
  told_order(job, wall.top, "top", profile.length, of, share);
  told_order(job, wall.base, "base", profile.length, of, share);
  const double height = wall.height ? wall.height->metres().si() : 0;
  const auto fails = [&](const char* text, const char* mend) {
    share.problems.push_back(edges::fault("wall-no-height", text, mend, of));
    return std::optional<Given>();
  };
  if (given.top.empty()) {
    if (!wall.height)
      return fails("the wall has neither a top nor a height", "enter a height or the levels of its top");
    if (given.ground.empty()) given.ground = Heights::level(0);
    given.top = raised(given.ground, height);
  } else if (given.ground.empty()) {
    if (!wall.height) return fails("the wall has a top and no ground in front", "enter the levels of the ground");
    given.ground = raised(given.top, -height);
  }
  return given;
}

// How deep the base has to lie, and under what.
struct Rule {
  const Given* given = nullptr;
  double least = 0;    // metres: courses and the limit
  double divisor = 1;  // of the exposed height
  double bury(double ground, double top) const { return std::max(least, (top - ground) / divisor); }
  double under(double ground, double top) const { return ground - bury(ground, top); }
  // Straight parts make it bend down only, so its least lies at an end of a part.
  double least_under(double from, double to) const {
    const Heights &g = given->ground, &t = given->top;
    double result = std::min(under(g.after(from), t.after(from)), under(g.before(to), t.before(to)));
    for (const Heights* of : {&g, &t}) {
      for (auto k = std::ranges::upper_bound(of->knots(), from, {}, &Heights::Knot::at);
           k != of->knots().end() && k->at < to; ++k) {
        result = std::min({result, under(g.before(k->at), t.before(k->at)), under(g.after(k->at), t.after(k->at))});
      }
    }
    return result;
  }
};

bool stepped(const Heights& heights) {
  for (std::size_t i = 1; i < heights.knots().size(); ++i) {
    const Heights::Knot &a = heights.knots()[i - 1], &b = heights.knots()[i];
    if (b.at > a.at && std::abs(b.height - a.height) > dust) return false;
  }
  return true;
}

void add_steps(const Heights& heights, double length, std::vector<double>& places) {
  for (const Heights::Knot& knot : heights.knots()) {
    if (std::abs(heights.after(knot.at) - heights.before(knot.at)) < dust) continue;  // says nothing new
    if (knot.at > sixteenth && knot.at < length - sixteenth) places.push_back(knot.at);
  }
}

// Stretches within which nothing steps: between given steps, and on half-unit modules where something slopes. Walls are
// begun at their lower end, and so are the modules.
std::vector<double> cell_ends(const Given& given, bool modules, double module, double length, bool from_finish) {
  std::vector<double> ends{0, length};
  for (const Heights* of : {&given.top, &given.base}) {
    if (stepped(*of)) add_steps(*of, length, ends);
  }
  std::ranges::sort(ends);
  const std::size_t kept = ends.size();
  if (modules) {
    for (int i = 1; i * module < length - sixteenth; ++i) {
      const double at = from_finish ? length - i * module : i * module;
      const auto next = std::lower_bound(ends.begin(), ends.begin() + static_cast<std::ptrdiff_t>(kept), at);
      const bool taken = std::abs(*next - at) < sixteenth || std::abs(*std::prev(next) - at) < sixteenth;
      if (!taken) ends.push_back(at);
    }
    std::ranges::sort(ends);
  }
  std::vector<double> result;
  for (double end : ends) {
    if (result.empty() || end > result.back() + sixteenth) result.push_back(end);
  }
  if (result.size() == 1) result.push_back(length);
  result.back() = length;
  return result;
}

// Heights beyond all reason are told of later; till then they have to be numbers.
int down(double value) { return static_cast<int>(std::floor(std::clamp(value, -1e6, 1e6))); }
int up(double value) { return static_cast<int>(std::ceil(std::clamp(value, -1e6, 1e6))); }

struct Work {
  const plan::Job& job;
  const plan::Wall& wall;
  const plan::ElementId& of;
  const Unit& block;
  Share& share;
};

// True where there is something to build.
bool shows(const Work& w, const Given& given) {
  const Heights &g = given.ground, &t = given.top;
  double most = t.after(0) - g.after(0);
  for (const Heights* of : {&g, &t}) {
    for (const Heights::Knot& k : of->knots()) {
      most = std::max({most, t.after(k.at) - g.after(k.at), t.before(k.at) - g.before(k.at)});
    }
  }
  if (most > dust) return true;
  w.share.problems.push_back(edges::fault("wall-height", "the wall stands nowhere above the ground in front",
                                          "raise its top or lower the ground", w.of));
  return false;
}

// Heights beyond all reason are typing errors, and nobody waits for their courses.
bool of_human_height(const Work& w, double height) {
  if (height <= most_height && height / w.block.height <= most_courses) return true;
  w.share.problems.push_back(
      edges::fault("wall-height",
                   "the wall would stand " + edges::shown(w.job, height) + " from its lowest base to its top, over " +
                       std::to_string(most_courses) + " courses or " + edges::shown(w.job, most_height),
                   "look at its heights and its buried courses: they may be in another unit", w.of));
  return false;
}

struct Grid {
  double zero = 0;  // a level on which courses begin
  double height = 0;
  double courses(double level) const { return (level - zero) / height; }
};

std::vector<int> bases(const Work& w, const Rule& rule, const Given& given, const Grid& grid,
                       const std::vector<double>& ends) {
  std::vector<Allowed> allowed;
  const bool kept = !given.base.empty() && stepped(given.base);
  for (std::size_t i = 0; i + 1 < ends.size(); ++i) {
    const double from = ends[i], to = ends[i + 1];
    const double level = given.base.empty() ? rule.least_under(from, to) : given.base.least(from, to);
    allowed.push_back({from, to, down(grid.courses(level + (kept ? sixteenth : dust)))});
  }
  std::vector<int> result;
  if (kept) {
    for (const Allowed& one : allowed) result.push_back(one.course);
    return result;
  }
  const double step_run = w.job.catalogue->length_limit("wall-step-run", units::Length::feet(4)).metres().si();
  return base_steps(allowed, std::max(2 * w.block.length, step_run), w.block.length);
}

void fill_columns(Profile& profile, const std::vector<double>& ends, const std::vector<int>& base,
                  const std::vector<int>& top) {
  const int lowest = std::ranges::min(base);
  profile.datum += lowest * profile.course_height;
  for (std::size_t i = 0; i < base.size(); ++i) {
    const Column next{ends[i], ends[i + 1], base[i] - lowest, top[i] - lowest};
    profile.courses = std::max(profile.courses, next.top);
    if (!profile.columns.empty() && profile.columns.back().base == next.base &&
        profile.columns.back().top == next.top) {
      profile.columns.back().to = next.to;
    } else {
      profile.columns.push_back(next);
    }
  }
}

bool stands(const Work& w, const Profile& profile) {
  for (const Column& c : profile.columns) {
    if (c.top > c.base) continue;
    w.share.problems.push_back(
        edges::fault("wall-height", "the top of the wall lies under its base from " + between(w.job, c.from, c.to),
                     "raise the top there, lower the base, or end the wall before it", w.of));
    return false;
  }
  return true;
}

void told_rest(const Work& w, const Given& given, const Profile& profile) {
  double most = sixteenth;
  const Column* worst = nullptr;
  for (const Column& c : profile.columns) {
    const double wanted = given.top.greatest(c.from, c.to);
    const double rest = profile.top_level(c) + profile.cap_height - wanted;
    if (wanted - given.top.least(c.from, c.to) > dust || rest <= most) continue;
    most = rest;
    worst = &c;
  }
  if (!worst) return;
  w.share.problems.push_back(edges::notice("wall-rest",
                                           "whole courses bring the top " + edges::shown(w.job, most) +
                                               " over what was wanted from " + between(w.job, worst->from, worst->to),
                                           w.wall.fixed == plan::Wall::Fixed::base
                                               ? "keep the top fixed instead, so that the rest goes into the ground"
                                               : "let the steps of the top differ by whole courses",
                                           w.of));
}

void told_base(const Work& w, const Given& given, const Profile& profile) {
  if (given.base.empty()) return;
  double most = sixteenth;
  const Column* worst = nullptr;
  for (const Column& c : profile.columns) {
    const double rest = given.base.least(c.from, c.to) - profile.base_level(c);
    if (rest <= most || !stepped(given.base)) continue;
    most = rest;
    worst = &c;
  }
  if (!worst) return;
  w.share.problems.push_back(edges::notice("wall-base-step",
                                           "the base lies " + edges::shown(w.job, most) +
                                               " lower than it was given, so that whole courses fit, from " +
                                               between(w.job, worst->from, worst->to),
                                           "give the base in whole courses under the top", w.of));
}

void told_bury(const Work& w, const Rule& rule, const Profile& profile) {
  double most = sixteenth;
  const Column* worst = nullptr;
  for (const Column& c : profile.columns) {
    const double lack = profile.base_level(c) - rule.least_under(c.from, c.to);
    if (lack <= most) continue;
    most = lack;
    worst = &c;
  }
  if (!worst) return;
  const double buried = profile.buried(*worst);
  w.share.problems.push_back(edges::fault(
      "wall-bury",
      (buried > 0 ? "the base is buried only " + edges::shown(w.job, buried)
                  : "the base stands " + edges::shown(w.job, -buried) + " above the ground in front") +
          ", " + edges::shown(w.job, most) + " less than the rule, from " + between(w.job, worst->from, worst->to),
      "lower the base by whole courses there; local code and a licensed engineer decide", w.of));
}

// Ground behind by the rule: a little under the cap, step by step as the top is built.
Heights below_cap(const Work& w, const Profile& profile) {
  const double below = w.job.catalogue->length_limit("wall-below-cap", units::Length::inches(1)).metres().si();
  std::vector<Heights::Knot> knots;
  for (const Column& c : profile.columns) {
    const double level = profile.top_level(c) + profile.cap_height - below;
    knots.push_back({c.from, level});
    knots.push_back({c.to, level});
  }
  return Heights::of(std::move(knots));
}

void build(const Work& w, const Given& given, Profile& profile) {
  const double h = w.block.height;
  const Rule rule{
      &given,
      std::max(std::max(1, w.wall.bury_courses) * h, edges::limit_inches(w.job, "wall-embed", edges::Bound::least, 6)),
      bury_divisor(w.wall.toe_slope)};
  const bool top_fixed = w.wall.fixed == plan::Wall::Fixed::top;
  const double lowest = given.base.empty() ? rule.least_under(0, profile.length) : given.base.least(0, profile.length);
  const double highest = given.top.greatest(0, profile.length);
  if (!of_human_height(w, highest - lowest)) return;
  const Grid grid{top_fixed ? highest - profile.cap_height : lowest, h};
  const bool slopes =
      !stepped(given.top) ||
      (given.base.empty() ? !stepped(given.ground) || given.ground.knots().size() > 1 : !stepped(given.base));
  const Heights& lower = given.base.empty() ? given.ground : given.base;
  const bool from_finish = lower.before(profile.length) < lower.after(0) - dust;
  const std::vector<double> ends = cell_ends(given, slopes, w.block.length / 2, profile.length, from_finish);
  const std::vector<int> base = bases(w, rule, given, grid, ends);
  std::vector<int> top;
  for (std::size_t i = 0; i + 1 < ends.size(); ++i) {
    const double wanted = given.top.greatest(ends[i], ends[i + 1]) - profile.cap_height;
    top.push_back(up(grid.courses(wanted - sixteenth)));
  }
  profile.datum = grid.zero;
  profile.course_height = h;
  fill_columns(profile, ends, base, top);
  if (!stands(w, profile)) {
    profile.columns.clear();
    return;
  }
  told_rest(w, given, profile);
  told_base(w, given, profile);
  told_bury(w, rule, profile);
}

}  // namespace

std::optional<Profile> profile(const plan::Job& job, const plan::Ground& ground, const Unit& block, Share& share) {
  const auto* wall = std::get_if<plan::Wall>(&ground.element->kind);
  if (!wall || !ground.path) return std::nullopt;
  const plan::ElementId& of = ground.element->id;
  if (const auto place = crossing(*ground.path)) {
    problem::Problem told =
        edges::fault("wall-crosses-itself", "the line of the wall crosses or touches itself", "draw two walls", of);
    told.place.at = *place;
    share.problems.push_back(std::move(told));
    return std::nullopt;
  }
  Profile made;
  made.legs = legs(*ground.path, wall->behind);
  made.closed = ground.path->closed();
  made.length = made.legs.back().to;
  const catalogue::Item* cap = wall->cap.empty() ? nullptr : job.catalogue->item(wall->cap);
  if (cap && cap->height) made.cap_height = cap->height->metres().si();
  if (std::max({wall->ground.size(), wall->top.size(), wall->base.size(), wall->ground_behind.size()}) > most_heights) {
    share.problems.push_back(edges::fault(
        "wall-heights", "the wall has more than " + std::to_string(most_heights) + " levels of one kind along its line",
        "keep those where it bends or steps", of));
    return std::nullopt;
  }
  const auto given = given_heights(job, *wall, made, of, share);
  if (!given) return std::nullopt;
  const Work work{job, *wall, of, block, share};
  if (!shows(work, *given)) return std::nullopt;
  build(work, *given, made);
  if (made.columns.empty()) return std::nullopt;
  made.ground = given->ground;
  Where places{0, made.length};
  for (const Leg& leg : made.legs) places.push_back(leg.to);
  if (!wall->ground_behind.empty()) {
    made.behind = on_places(wall->ground_behind, places);
    told_order(job, wall->ground_behind, "ground behind", made.length, of, share);
  } else {
    made.behind = wall->free_standing ? made.ground : below_cap(work, made);
  }
  return made;
}

}  // namespace takeoff::walls
