#include <algorithm>

#include "takeoff/edges/notes.h"
#include "takeoff/there/rule.h"

namespace takeoff::there {

using geometry::Curve;
using geometry::Point;
using geometry::Vec;

namespace {

const plan::SiteMark* site_mark(const Mark& mark) { return std::get_if<plan::SiteMark>(&mark.ground->element->kind); }

// What must pass here under the job's access. A barrow passes everywhere a machine does.
bool passes_here(const plan::Job& job, const std::string& against) {
  if (against == "barrow") return true;
  return against == (job.choices.access == "tight" ? "tight" : job.choices.access == "machine" ? "machine" : "");
}

void hold_width(const plan::Job& job, const catalogue::SiteRule& rule, const Mark& mark, Share& share) {
  const plan::SiteMark* gate = site_mark(mark);
  if (!gate || !rule.distance || !passes_here(job, rule.against)) return;
  if (gate->width && *gate->width >= *rule.distance) return;
  const std::string finding = gate->width ? units::show_length(*gate->width, job.heading.units) + " wide, under " +
                                                units::show_length(*rule.distance, job.heading.units)
                                          : "its width is not known";
  share.problems.push_back(said(job, rule, mark, finding, {}));
}

void hold_downspout(const plan::Job& job, const catalogue::SiteRule& rule, const Mark& mark,
                    const std::vector<Subject>& subjects, Share& share) {
  const plan::SiteMark* spout = site_mark(mark);
  if (!spout || !spout->into.empty()) return;
  const double within = reach(rule, mark);
  const auto near_it = zone(mark, within);
  if (!near_it) return;
  for (const Subject& subject : subjects) {
    if (!subject.words.contains("paving")) continue;
    const auto part = part_in(subject.region, *near_it);
    if (!part || part->area().si() <= 1e-4) continue;
    std::string finding = subject.of.front() + " is within " + edges::shown(job, within);
    if (spout->roof_area_m2) finding += ", roof " + shown_area(job, *spout->roof_area_m2);
    share.problems.push_back(said(job, rule, mark, finding, middle(*part)));
    return;
  }
}

// The barrier's top is its height above the ground as it lies; beside it, at a foot and at a yard on either side, the
// finished ground is asked for.
void hold_level(const plan::Job& job, const catalogue::SiteRule& rule, const Mark& mark, const levels::Terrain& terrain,
                Share& share) {
  const plan::SiteMark* barrier = site_mark(mark);
  if (!barrier || !rule.distance || terrain.finished.empty()) return;
  std::vector<Curve> line = mark.shape.curves;
  for (const Curve& curve : curves(mark.shape.region)) line.push_back(curve);
  double lowest = 0;
  const auto beside = [&](Point point, const Curve& curve, double share_of) -> std::optional<double> {
    std::optional<double> highest;
    for (const double metres : {0.05, 0.3048, 0.9144, -0.05, -0.3048, -0.9144}) {
      const Vec side = (metres * plan::Length::steps_per_metre) * geometry::left_of(curve.direction(share_of));
      if (const auto height = terrain.finished_at(geometry::moved(point, side)))
        highest = std::max(highest.value_or(*height), *height);
    }
    return highest;
  };
  const Stretches low = where(line, [&](Point point, const Curve& curve, double share_of) {
    const auto finished = beside(point, curve, share_of);
    const auto ground = terrain.existing_at(point);
    if (!finished || !ground) return false;
    if (!barrier->height) return true;
    const double left = *ground + barrier->height->metres().si() - *finished;
    const bool under = left < rule.distance->metres().si() - 1e-6;
    if (under) lowest = lowest == 0 ? left : std::min(lowest, left);
    return under;
  });
  if (low.length < 1e-3) return;
  const std::string along = " for " + edges::shown(job, low.length);
  const std::string finding =
      barrier->height ? "only " + edges::shown(job, lowest) + " is left above what is finished beside it" + along
                      : "its height is not known, and paving is finished beside it" + along;
  share.problems.push_back(
      said(job, rule, mark, finding, low.at ? std::optional(geometry::xy(*low.at)) : std::nullopt));
}

}  // namespace

bool hold_other(const plan::Job& job, const catalogue::SiteRule& rule, const Mark& mark,
                const std::vector<Subject>& subjects, const levels::Terrain& terrain, Share& share) {
  if (rule.against == "machine" || rule.against == "tight" || rule.against == "barrow")
    return hold_width(job, rule, mark, share), true;
  if (rule.against == "no-run") return hold_downspout(job, rule, mark, subjects, share), true;
  if (rule.against == "level") return hold_level(job, rule, mark, terrain, share), true;
  return false;
}

}  // namespace takeoff::there
