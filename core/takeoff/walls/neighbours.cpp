#include <algorithm>
#include <cmath>

#include "geometry/index.h"
#include "takeoff/edges/notes.h"
#include "takeoff/walls/beside.h"
#include "takeoff/walls/flagging.h"
#include "takeoff/walls/words.h"
#include "units/number.h"

namespace takeoff::walls {

namespace {

constexpr double loaded_within =
    2;  // times the height: how far back what stands on the ground is felt (common practice)
constexpr const char* engineer = "a licensed engineer decides";

// Where the wall's height changes, and the middles between.
std::vector<double> stations(const Profile& profile) {
  constexpr double inside = 1e-4;
  std::vector<double> all;
  for (const Column& column : profile.columns)
    for (const double at : {column.from + inside, (column.from + column.to) / 2, column.to - inside})
      all.push_back(std::clamp(at, column.from, column.to));
  return all;
}

double body(const Flagging& all) {
  return std::max(all.wall.thickness.metres().si(), all.wall.thickness > units::Length() ? 0 : all.blocks.block.depth);
}

double tallest(const Flagging& all) {
  return std::ranges::max_element(all.profile.columns, {}, &Column::courses)->courses() * all.profile.course_height;
}

bool far(const plan::Ground& wall, const std::vector<geometry::Curve>& edges, double reach) {
  const geometry::Box box = geometry::grown(wall.path->bounds(), units::Length::nearest(units::Metres(reach + 0.01)));
  return std::ranges::none_of(
      edges, [&box](const geometry::Curve& edge) { return geometry::overlap(box, geometry::bounds(edge)); });
}

// The place where an element is deepest inside `within(station)` of the wall's back (or of its face in front).
struct Nearby {
  double distance = 0;  // from back or face
  double station = 0;
};
template <class Within>
std::optional<Nearby> nearby(const Flagging& all, const plan::Ground& other, bool behind, double reach, Within within) {
  const std::vector<geometry::Curve> edges = edges_of(other);
  const double off = behind ? body(all) : 0;
  if (edges.empty() || far(all.ground, edges, reach + off)) return std::nullopt;
  const FaceLine line(*all.ground.path, all.wall.behind, stations(all.profile));
  std::optional<Nearby> worst;
  double deepest = 0;
  for (const Beside& one : line.beside(edges, reach + off)) {
    if (one.behind != behind) continue;
    const double distance = std::max(0.0, one.distance - off);
    const double inside = within(one.station) - distance;
    if (inside <= 1e-6 || (worst && inside <= deepest)) continue;
    deepest = inside;
    worst = Nearby{distance, one.station};
  }
  return worst;
}

// What it is to the ground behind a wall, in words; empty: nothing that loads it.
std::string load_word(const plan::Element& element) {
  struct Word {
    std::string operator()(const plan::Pool&) const { return "the pool"; }
    std::string operator()(const plan::Building&) const { return "the building"; }
    std::string operator()(const plan::PavedArea& area) const { return area.vehicles ? "paving for vehicles," : ""; }
    std::string operator()(const plan::Wall& wall) const { return wall.free_standing ? "the free-standing wall" : ""; }
    std::string operator()(const plan::KeepOut& out) const { return out.what == "equipment" ? "the equipment" : ""; }
    std::string operator()(const plan::SiteMark& mark) const {
      return mark.what == "drop-spot" ? "the drop spot with its pallets," : "";
    }
    std::string operator()(const plan::Steps&) const { return {}; }
    std::string operator()(const plan::EdgeRun&) const { return {}; }
    std::string operator()(const plan::DrainRun&) const { return {}; }
    std::string operator()(const plan::Level&) const { return {}; }
    std::string operator()(const plan::Feature&) const { return {}; }
    std::string operator()(const plan::Removal&) const { return {}; }
    std::string operator()(const plan::Protection&) const { return {}; }
    std::string operator()(const plan::Note&) const { return {}; }
    std::string operator()(const plan::Dimension&) const { return {}; }
    std::string operator()(const plan::SitePlan&) const { return {}; }
    std::string operator()(const plan::LevelBook&) const { return {}; }
    std::string operator()(const plan::BaseLine&) const { return {}; }
    std::string operator()(const plan::TapeBook&) const { return {}; }
  };
  return std::visit(Word{}, element.kind);
}

// Of a wall that is not laid here: its top over the ground in front, from what was given.
std::optional<double> exposed(const plan::Wall& wall) {
  if (wall.height) return wall.height->metres().si();
  const Heights top(wall.top);
  const Heights ground(wall.ground.empty() ? wall.base : wall.ground);
  if (top.empty() || ground.empty()) return std::nullopt;
  double most = 0;
  for (const Heights* heights : {&top, &ground})
    for (const Heights::Knot& knot : heights->knots())
      most = std::max({most, top.before(knot.at) - ground.before(knot.at), top.after(knot.at) - ground.after(knot.at)});
  return most;
}

double tier_limit(const plan::Job& job) { return job.catalogue->number_limit("tier-distance", 2); }

void flag_pool(const Flagging& all, const plan::Ground& other, Share& share) {
  const double reach = loaded_within * tallest(all);
  const auto within = [&all](double station) { return loaded_within * all.height_at(station); };
  for (const bool behind : {true, false}) {
    const auto found = nearby(all, other, behind, reach, within);
    if (!found) continue;
    all.raise("wall-pool-line",
              called(*other.element) + " lies " + edges::shown(all.job, found->distance) +
                  (behind ? " behind the wall" : " in front of the wall") +
                  " and the depth of its shell is not known: digging for the wall may go below the shell's 1:1 line" +
                  (behind ? "" : ", and the wall may press on it") + ", " + walls::at(all.job, found->station),
              "ask the pool's builder for its depth: the builder and a licensed engineer decide", share);
    return;
  }
}

}  // namespace

std::vector<Tier> tiers(const Flagging& all) {
  std::vector<Tier> found;
  const double times = tier_limit(all.job);
  for (const auto& other : all.site.grounds) {
    const auto* wall = std::get_if<plan::Wall>(&other->element->kind);
    if (!wall || wall->free_standing || other->element->id == all.id()) continue;
    const std::optional<double> height = exposed(*wall);
    const auto above =
        nearby(all, *other, true, times * tallest(all), [&](double station) { return times * all.height_at(station); });
    if (above) found.push_back({other.get(), true, above->distance, above->station, height});
    if (above || !wall->existing) continue;
    const double reach = times * height.value_or(tallest(all));
    const auto below = nearby(all, *other, false, reach, [reach](double) { return reach; });
    if (below) found.push_back({other.get(), false, below->distance, below->station, height});
  }
  return found;
}

void flag_neighbours(const Flagging& all, Share& share) {
  const double reach = loaded_within * tallest(all);
  const bool none = all.wall.loads && !(all.wall.loads->live_pa > 0) && !(all.wall.loads->dead_pa > 0);
  const std::string uncounted = none ? ", and the checks count no load for it" : "";
  for (const auto& other : all.site.grounds) {
    if (other->element->id == all.id()) continue;
    const std::string word = load_word(*other->element);
    if (word.empty()) continue;
    const auto found =
        nearby(all, *other, true, reach, [&all](double station) { return loaded_within * all.height_at(station); });
    if (found)
      all.raise("wall-loaded",
                word + " " + called(*other->element) + " lies " + edges::shown(all.job, found->distance) +
                    " behind the wall, within twice its height" + uncounted + ", " + walls::at(all.job, found->station),
                engineer, share);
    if (std::holds_alternative<plan::Pool>(other->element->kind)) flag_pool(all, *other, share);
  }
  for (const Tier& tier : tiers(all))
    all.raise("wall-tiers",
              "the wall " + called(*tier.other->element) + " stands " + edges::shown(all.job, tier.distance) +
                  (tier.above ? " behind this one, nearer than " : " in front of this one, nearer than ") +
                  units::show_number(tier_limit(all.job), 1) + " times the lower wall's height" +
                  (tier.above ? uncounted : "") + ", " + walls::at(all.job, tier.station),
              std::string("the two are designed together: ") + engineer, share);
}

namespace {

// Stretches of the wall for which `there` holds: tried every quarter of a metre, ends then found to a centimetre.
struct Found {
  double length = 0;
  double from = 0;  // of the first
  double to = 0;    // of the last
};
template <class There>
Found along_where(double from, double to, There there) {
  Found found;
  const int steps = std::max(1, static_cast<int>(std::ceil((to - from) / 0.25)));
  const double step = (to - from) / steps;
  const auto end = [&there](double in, double out) {
    while (std::abs(out - in) > 0.01) (there((in + out) / 2) ? in : out) = (in + out) / 2;
    return in;
  };
  const auto add = [&found](double a, double b) {
    if (found.length == 0) found.from = a;
    found.length += b - a;
    found.to = b;
  };
  constexpr double inside = 1e-4;
  bool last = there(from + inside);
  for (int i = 0; i < steps; ++i) {
    const double a = from + i * step;
    const double b = a + step;
    const bool now = there(i + 1 == steps ? b - inside : b);
    if (last && now) add(a, b);
    if (last && !now) add(a, end(a, b));
    if (!last && now) add(end(b, a), b);
    last = now;
  }
  return found;
}

struct GuardRule {
  double drop, near, guard;
};

// From where people walk, in or out.
void flag_guard(const Flagging& all, const plan::Ground& walk, const GuardRule& rule, Share& share) {
  const std::vector<geometry::Curve> edges = edges_of(walk);
  const double off = body(all);
  if (edges.empty() || far(all.ground, edges, rule.near + off)) return;
  const FaceLine line(*all.ground.path, all.wall.behind, {});
  const std::vector<Reaching> near = reaching(edges, rule.near + off);
  Found found;
  double most = 0;
  for (const Column& column : all.profile.columns) {
    const double top = all.profile.top_level(column) + all.profile.cap_height;
    const auto drop = [&](double s) { return all.profile.behind.before(s) - all.profile.ground.before(s); };
    const double deepest =
        all.profile.behind.greatest(column.from, column.to) - all.profile.ground.least(column.from, column.to);
    if (deepest <= rule.drop + 1e-6) continue;
    const Found here = along_where(column.from, column.to, [&](double s) {
      return drop(s) > rule.drop + 1e-6 && top - all.profile.behind.before(s) < rule.guard &&
             line.behind(s, near) - off <= rule.near + 1e-6;
    });
    if (here.length == 0) continue;
    if (found.length == 0) found.from = here.from;
    found.length += here.length;
    found.to = here.to;
    for (const double s : {here.from, (here.from + here.to) / 2, here.to}) most = std::max(most, drop(s));
  }
  if (found.length == 0) return;
  const auto shown = [&all](double metres) { return edges::shown(all.job, metres); };
  all.raise("wall-guard",
            called(*walk.element) + " comes within " + shown(rule.near) + " of a drop of up to " + shown(most) +
                ", over " + shown(rule.drop) + ", for " + shown(found.length) + " of the wall's length, " +
                between(all.job, found.from, found.to),
            "local code decides on a guard; its posts through reinforcement want a licensed engineer", share);
}

// Something to stand on beside a barrier, on either side of the wall.
void flag_barrier(const Flagging& all, const plan::Ground& barrier, double near, Share& share) {
  for (const bool behind : {true, false}) {
    const auto found = nearby(all, barrier, behind, near, [near](double) { return near; });
    if (!found) continue;
    all.raise("wall-barrier",
              "the wall is something to stand on and comes within " + edges::shown(all.job, found->distance) +
                  " of the barrier " + called(*barrier.element) + ", nearer than " + edges::shown(all.job, near) +
                  ", " + walls::at(all.job, found->station),
              "move one of them or raise the barrier: local code decides", share);
    return;
  }
}

}  // namespace

void flag_people(const Flagging& all, Share& share) {
  const auto metres = [&all](const char* id, int inches) {
    return all.job.catalogue->length_limit(id, units::Length::inches(inches)).metres().si();
  };
  const GuardRule rule{metres("guard-drop", 30), metres("guard-near", 36), metres("guard-height", 36)};
  for (const auto& other : all.site.grounds) {
    const plan::Kind& kind = other->element->kind;
    const bool walked = std::holds_alternative<plan::PavedArea>(kind) || std::holds_alternative<plan::Steps>(kind);
    if (walked && !all.wall.free_standing) flag_guard(all, *other, rule, share);
    const auto* mark = std::get_if<plan::SiteMark>(&kind);
    if (mark && mark->what == "barrier") flag_barrier(all, *other, metres("barrier-near", 36), share);
  }
}

}  // namespace takeoff::walls
