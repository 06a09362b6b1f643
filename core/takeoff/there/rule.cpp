#include "takeoff/there/rule.h"

#include <algorithm>
#include <map>

#include "geometry/offset.h"
#include "geometry/overlay.h"
#include "takeoff/edges/notes.h"

namespace takeoff::there {

using geometry::Curve;
using geometry::Point;
using geometry::Region;

namespace {

constexpr double nothing_m2 = 1e-4;
constexpr double nothing_m = 1e-3;

std::optional<double> metres(const std::optional<plan::Length>& length) {
  return length ? std::optional(length->metres().si()) : std::nullopt;
}

struct MarkOf {
  Mark made;
  bool operator()(const plan::SiteMark& mark) {
    made.what = mark.what;
    made.size = metres(mark.depth);
    made.bounds = mark.what == "lot-line" || mark.what == "setback";
    made.hollow = mark.what == "barrier";
    return true;
  }
  bool operator()(const plan::KeepOut& out) {
    made.what = out.what;
    made.size = metres(out.trunk);
    return out.what == "tree";
  }
  bool operator()(const plan::Building& building) {
    made.what = "building";
    made.size = metres(building.footing_depth);
    return true;
  }
  bool operator()(const plan::Pool& pool) {
    made.what = "pool";
    if (pool.surround) made.size = pool.surround->depth.metres().si();
    return true;
  }
  template <class Other>
  bool operator()(const Other&) {
    return false;
  }
};

std::string names(const plan::Site& site, const std::vector<plan::ElementId>& of) {
  std::string all;
  for (const plan::ElementId& id : of) {
    const plan::Ground* ground = site.find(id);
    all += (all.empty() ? "" : " and ") + (ground ? called(*ground->element) : id);
  }
  return all;
}

// What was found of one subject.
struct Found {
  std::string name;
  double area = 0;
  double length = 0;
  int points = 0;
  std::optional<problem::Xy> at;
  bool any() const { return area > nothing_m2 || length > nothing_m || points > 0; }
};

Found look(const plan::Site& site, const Subject& subject, const Zone& zone, const Mark& mark) {
  Found found{names(site, subject.of), 0, 0, 0, {}};
  if (!subject.region.empty() && (!zone.ground.empty() || zone.outside)) {
    if (const auto part = part_in(subject.region, zone)) {
      found.area = part->area().si();
      if (found.area > nothing_m2) found.at = middle(*part);
    }
  }
  // A line of no width that is crossed.
  if (zone.ground.empty() && !zone.outside && !subject.region.empty()) {
    const std::vector<Curve> own = mark.shape.curves;
    const Stretches crossed =
        where(own, [&](Point point, const Curve&, double) { return subject.region.contains(point); });
    found.length = crossed.length;
    if (crossed.at) found.at = geometry::xy(*crossed.at);
  }
  if (const auto met = mark.bounds ? crossing(mark.shape.curves, subject.curves) : std::nullopt) {
    ++found.points;
    found.at = geometry::xy(*met);
  }
  const Stretches inside = where(subject.curves, [&](Point p, const Curve&, double) { return zone.contains(p); });
  found.length += inside.length;
  if (inside.at && !found.at) found.at = geometry::xy(*inside.at);
  for (const Point point : subject.points)
    if (zone.contains(point)) {
      ++found.points;
      if (!found.at) found.at = geometry::xy(point);
    }
  return found;
}

std::string shown(const plan::Job& job, const Found& found) {
  if (found.area > nothing_m2) return found.name + " " + shown_area(job, found.area);
  if (found.length > nothing_m) return found.name + " for " + edges::shown(job, found.length);
  return found.name;
}

}  // namespace

std::optional<Mark> mark(const plan::Ground& ground) {
  MarkOf of;
  if (!ground.computed || !std::visit(of, ground.element->kind)) return std::nullopt;
  of.made.ground = &ground;
  of.made.shape = drawn(ground);
  if (of.made.shape.empty()) return std::nullopt;
  return std::move(of.made);
}

double reach(const catalogue::SiteRule& rule, const Mark& mark) {
  const double given = rule.distance ? rule.distance->metres().si() : 0;
  const double by_size = rule.per_size * mark.size.value_or(0);
  return std::clamp(std::max(given, by_size), 0.0, geometry::reach_of_plan.metres().si());
}

problem::Result<Zone> zone(const Mark& mark, double reach) {
  const plan::Length by = plan::Length::nearest(units::Metres(reach));
  if (mark.bounds && !mark.shape.region.empty()) {
    auto inside = reach > 0 ? geometry::offset(mark.shape.region, -by, geometry::Corner::mitred)
                            : problem::Result<Region>(mark.shape.region);
    if (!inside) return std::unexpected(inside.error());
    return Zone{std::move(*inside), true};
  }
  auto ground = around(mark.shape, reach);
  if (!ground) return std::unexpected(ground.error());
  if (mark.hollow && !mark.shape.region.empty()) {
    const auto core = geometry::offset(mark.shape.region, -by, geometry::Corner::mitred);
    if (!core) return std::unexpected(core.error());
    if (!core->empty()) ground = geometry::subtract(*ground, std::vector<Region>{*core});
    if (!ground) return std::unexpected(ground.error());
  }
  return Zone{std::move(*ground), false};
}

problem::Result<Region> part_in(const Region& region, const Zone& zone) {
  if (!zone.outside) return geometry::meet(region, zone.ground);
  if (zone.ground.empty()) return region;
  return geometry::subtract(region, std::vector<Region>{zone.ground});
}

std::vector<const Subject*> asked(const catalogue::SiteRule& rule, const Mark& mark,
                                  const std::vector<Subject>& subjects) {
  const units::Metres by(reach(rule, mark) + 0.01);
  const geometry::Box box = geometry::grown(mark.shape.bounds(), plan::Length::nearest(by));
  const bool all_beyond = mark.bounds && !mark.shape.region.empty();
  std::vector<const Subject*> found;
  for (const Subject& subject : subjects) {
    if (!subject.words.contains(rule.against) || subject.of.front() == mark.ground->element->id) continue;
    if (all_beyond || geometry::overlap(Drawn{subject.region, subject.curves, subject.points}.bounds(), box))
      found.push_back(&subject);
  }
  return found;
}

problem::Severity severity(const catalogue::SiteRule& rule) {
  if (rule.severity == "problem") return problem::Severity::problem;
  return rule.severity == "notice" ? problem::Severity::notice : problem::Severity::flag;
}

problem::Problem said(const plan::Job& job, const catalogue::SiteRule& rule, const Mark& mark,
                      const std::string& finding, std::optional<problem::Xy> at) {
  std::string text = rule.text;
  const double given = rule.distance ? rule.distance->metres().si() : 0;
  if (rule.per_size > 0) {
    if (!mark.size)
      text += ", its own size not being known";
    else if (reach(rule, mark) > given)
      text += ", here " + edges::shown(job, reach(rule, mark));
  }
  problem::Problem made = edges::said(severity(rule), "site-" + rule.id, text + ": " + finding,
                                      rule.who + " decides; " + rule.source, mark.ground->element->id);
  made.place.at = at;
  return made;
}

namespace {

// The rule reaches as far as the mark is deep or thick, and nobody knows that: what it would look at is named.
void say_unknown(const plan::Job& job, const plan::Site& site, const catalogue::SiteRule& rule, const Mark& mark,
                 const std::vector<Subject>& subjects, Share& share) {
  std::string finding;
  for (const Subject& subject : subjects)
    if (subject.words.contains(rule.against))
      finding += (finding.empty() ? "how far that is from " : ", ") + names(site, subject.of);
  if (!finding.empty()) share.problems.push_back(said(job, rule, mark, finding + " is to be asked", {}));
}

}  // namespace

void hold(const plan::Job& job, const plan::Site& site, const catalogue::SiteRule& rule, const Mark& mark,
          const std::vector<Subject>& subjects, Share& share) {
  if (rule.per_size > 0 && !mark.size && !rule.distance.value_or(plan::Length()).steps())
    return say_unknown(job, site, rule, mark, subjects, share);
  const std::vector<const Subject*> looked_at = asked(rule, mark, subjects);
  if (looked_at.empty()) return;
  const auto where_it_holds = zone(mark, reach(rule, mark));
  if (!where_it_holds) {
    share.problems.push_back(problem::in_element(where_it_holds.error(), mark.ground->element->id));
    return;
  }
  std::map<std::string, Found> found;  // by name: a body and its other layers are one thing to people
  std::vector<std::string> order;
  for (const Subject* subject : looked_at) {
    Found one = look(site, *subject, *where_it_holds, mark);
    if (!one.any()) continue;
    const auto [known, fresh] = found.try_emplace(one.name, one);
    if (fresh) order.push_back(one.name);
    if (known->second.area < one.area) known->second = one;
  }
  if (found.empty()) return;
  std::string finding;
  for (const std::string& name : order) finding += (finding.empty() ? "" : ", ") + shown(job, found.at(name));
  share.problems.push_back(said(job, rule, mark, finding, found.at(order.front()).at));
}

}  // namespace takeoff::there
