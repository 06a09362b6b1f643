#include <algorithm>

#include "takeoff/levels/judged.h"
#include "takeoff/levels/sources.h"
#include "takeoff/levels/words.h"

namespace takeoff::levels {

using geometry::Facet;
using geometry::Vec;
using problem::Severity;

namespace {

constexpr double trace = 1e-6;        // m2: less is dust between two cuts
constexpr double level = 5e-4;        // a share: flatter than this is flat
constexpr double exact = 1e-7;        // a share: floating dust on a fall that is just the limit
constexpr double crease_bend = 5e-3;  // a share: two facets that differ by less are one surface to a slab

struct Beyond {  // the facets past one limit
  double area = 0;
  double worst = 0;
  Vec at;
};

Vec middle(const Facet& facet) {
  Vec sum;
  for (const Vec corner : facet.ring) sum = sum + corner;
  return (1.0 / static_cast<double>(facet.ring.size())) * sum;
}

bool permeable(const plan::Job& job, const plan::PavedArea& area) {
  const auto found = job.catalogue->build_ups.find(area.build_up);
  return found != job.catalogue->build_ups.end() && found->second.surface.starts_with("permeable");
}

bool meets_pool(const Area& area) {
  return std::ranges::any_of(area.ground->stretches, [](const plan::Stretch& stretch) {
    return stretch.meets == plan::Meets::coping || stretch.meets == plan::Meets::water;
  });
}

template <class Passes>
Beyond beyond_limit(const Area& area, Judged& judged, const std::string& word, Passes passes, bool least) {
  Beyond found;
  const std::vector<Facet>& facets = area.surface->facets();
  for (std::size_t i = 0; i < facets.size(); ++i) {
    const double size = geometry::area(facets[i].ring);
    const double fall = facets[i].plane.fall();
    if (size <= trace || passes(fall)) continue;
    if (found.area == 0 || (least ? fall < found.worst : fall > found.worst)) {
      found.worst = fall;
      found.at = middle(facets[i]);
    }
    found.area += size;
    if (judged.says[i] == "good") judged.says[i] = word;
  }
  return found;
}

void tell(const Look& look, const Area& area, const Beyond& found, Severity severity, const char* code,
          const std::string& what, const std::string& mend, Judged& judged) {
  if (found.area <= trace) return;
  judged.share.problems.push_back(said(severity, code, shown_area(look.job, found.area) + what, mend,
                                       area.ground->element->id, area.surface->point(found.at)));
}

void look_at_access(const Look& look, const Area& area, Judged& judged) {
  const double run = limit(look.job, "fall-access-run", Bound::greatest, 0.05);
  double cross = limit(look.job, "fall-access-cross", Bound::greatest, 1.0 / 48);
  if (std::abs(cross - 1.0 / 48) < 1e-5) cross = 1.0 / 48;  // a row in per cent rounds it
  const Beyond steep = beyond_limit(area, judged, "steep", [&](double fall) { return fall <= run + exact; }, false);
  tell(look, area, steep, Severity::problem, "access-run",
       " of this access route fall by more than " + percent(run) + ", up to " + percent(steep.worst),
       "make it flatter, or build it as a ramp with landings and rails", judged);
  const Beyond across = beyond_limit(area, judged, "good", [&](double fall) { return fall <= cross + exact; }, false);
  tell(look, area, across, Severity::flag, "access-cross",
       " of this access route fall by more than " + percent(cross) + ", up to " + percent(across.worst) +
           ": that is allowed along the way people walk, not across it",
       "see that it falls along the way, or make it flatter", judged);
}

double longest_unit(const plan::Job& job, const plan::PavedArea& area) {
  double longest = 0;
  if (!area.laying) return longest;
  for (const auto& [size, id] : area.laying->units)
    if (const catalogue::Item* item = job.catalogue->item(id); item != nullptr && item->length)
      longest = std::max(longest, item->length->metres().si());
  return longest;
}

void look_at_warp(const Look& look, const Area& area, double unit, Judged& judged) {
  const double most = limit(look.job, "warp", Bound::greatest, units::metres_per_inch / 16);
  if (area.paved->finish->way != plan::Finish::Way::edges) return;
  double worst = 0;
  for (const plan::FallFrom& from : area.paved->finish->from) {
    const auto source = levels::source(look.job, look.site, *area.ground, from, area.surface->origin());
    if (!source || source->radius == 0) continue;
    // Nearer to the tip of a cone than half its length no unit lies.
    const double radius = std::max(source->radius, unit / 2);
    worst = std::max(worst, std::abs(source->fall) * unit * unit / (8 * radius));
  }
  if (worst <= most) return;
  judged.share.problems.push_back(said(Severity::flag, "warp",
                                       "the longest units (" + shown(look.job, unit) + ") rock by " +
                                           shown(look.job, worst) + " on the curve that the surface falls away from",
                                       "use shorter units there, or cut them", area.ground->element->id));
}

}  // namespace

void look_at_falls(const Look& look, const Area& area, Judged& judged) {
  double least = 1e9;
  double greatest = 0;
  double flat = 0;
  for (const Facet& facet : area.surface->facets()) {
    const double size = geometry::area(facet.ring);
    const double fall = facet.plane.fall();
    if (size <= trace) continue;
    if (fall < level) flat += size;
    if (fall >= level) least = std::min(least, fall);
    greatest = std::max(greatest, fall);
  }
  if (least < 1e9) judged.share.measures.put("fall_least_pct", least * 100);
  judged.share.measures.put("fall_greatest_pct", greatest * 100);
  judged.share.measures.put("fall_flat_area_m2", flat);

  const bool open = permeable(look.job, *area.paved);
  const double lowest =
      open ? limit(look.job, "fall-permeable", Bound::least, 0) : limit(look.job, "fall-paving", Bound::least, 0.02);
  double highest = open ? limit(look.job, "fall-permeable", Bound::greatest, 0.05) : 1e9;
  if (meets_pool(area)) highest = std::min(highest, limit(look.job, "fall-deck", Bound::greatest, 0.5 / 12));
  const Beyond shallow = beyond_limit(area, judged, "flat", [&](double fall) { return fall >= lowest - exact; }, true);
  tell(look, area, shallow, Severity::flag, "fall-flat",
       " fall by less than " + percent(lowest) + ", down to " + percent(shallow.worst) + ": water stands there",
       "change the levels there, or accept a wet place", judged);
  const Beyond steep = beyond_limit(area, judged, "steep", [&](double fall) { return fall <= highest + exact; }, false);
  tell(look, area, steep, Severity::flag, "fall-steep",
       " fall by more than " + percent(highest) + ", up to " + percent(steep.worst), "make it flatter", judged);
  if (area.paved->access) look_at_access(look, area, judged);
}

void look_at_slabs(const Look& look, const Area& area, Judged& judged) {
  const double unit = longest_unit(look.job, *area.paved);
  if (unit <= 0) return;
  look_at_warp(look, area, unit, judged);
  const double longest = limit(look.job, "slab-over-hip", Bound::greatest, 16 * units::metres_per_inch);
  if (unit <= longest) return;
  double run = 0;
  const std::vector<Facet>& facets = area.surface->facets();
  for (const Join& join : area.joints.joins) {
    const geometry::Plane& a = facets[join.a].plane;
    const geometry::Plane& b = facets[join.b].plane;
    if (std::hypot(a.gx - b.gx, a.gy - b.gy) > crease_bend) run += length(join.to - join.from);
  }
  if (run <= unit) return;
  judged.share.problems.push_back(said(Severity::flag, "slab-over-hip",
                                       "slabs of " + shown(look.job, unit) + " lie over " + shown(look.job, run) +
                                           " of hips and valleys, over which nothing longer than " +
                                           shown(look.job, longest) + " lies without rocking",
                                       "cut the slabs along them", area.ground->element->id));
}

}  // namespace takeoff::levels
