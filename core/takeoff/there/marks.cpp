#include <algorithm>
#include <set>

#include "geometry/overlay.h"
#include "takeoff/edges/notes.h"
#include "takeoff/there/rule.h"
#include "takeoff/there/there.h"

namespace takeoff::there {

namespace {

using geometry::Region;

struct Marked {
  const plan::Job& job;
  const plan::Site& site;
  const levels::Terrain& terrain;
  std::vector<Subject> subjects;
  std::vector<Region> by_hand;  // strips along services that were counted: where two lie side by side it is dug once

  Share of(const Mark& mark) {
    Share share;
    share.measures.element = mark.ground->element->id;
    bool ruled = false;
    for (const catalogue::SiteRule& rule : job.catalogue->site_rules) {
      if (rule.mark != mark.what) continue;
      ruled = true;
      if (!hold_other(job, rule, mark, subjects, terrain, share)) hold(job, site, rule, mark, subjects, share);
      if (mark.what == "buried-service" && rule.against == "dig") dig_by_hand(rule, mark, share);
    }
    if (!ruled && std::holds_alternative<plan::SiteMark>(mark.ground->element->kind))
      share.problems.push_back(
          edges::notice("mark-no-rule", "the catalogue has no rule for '" + mark.what + "': nothing was checked",
                        "check it by eye, or give the job's catalogue a rule for it", mark.ground->element->id));
    return share;
  }

  // What the bodies dig within the strip, and what hands cost more than the machine that is counted for all of it.
  void dig_by_hand(const catalogue::SiteRule& rule, const Mark& mark, Share& share) {
    const std::vector<const Subject*> looked_at = asked(rule, mark, subjects);
    if (looked_at.empty()) return;
    const auto strip = zone(mark, reach(rule, mark));
    if (!strip || strip->ground.empty()) return;
    double area = 0;
    std::vector<Working> volumes;
    for (const Subject* subject : looked_at) {
      if (subject->depth <= 0) continue;
      auto part = part_in(subject->region, *strip);
      if (part && !by_hand.empty() && !part->empty()) part = geometry::subtract(*part, by_hand);
      if (!part || part->area().si() <= 1e-4) continue;
      area += part->area().si();
      volumes.push_back(
          Working::product({term("dug within the strip", part->area().si(), units::square_metre, subject->of.front()),
                            term("depth of the build-up", subject->depth, units::metre, subject->of.front())}));
    }
    by_hand.push_back(strip->ground);
    if (volumes.empty()) return;
    const Working volume = Working::sum(std::move(volumes)).named("dug by hand");
    share.measures.put("hand_dig_area_m2", area);
    share.measures.put("hand_dig_m3", volume.amount().value);
    price(mark, volume, share);
  }

  // All digging is counted at the job's rate already, so only the rest of the hand's hours is added.
  void price(const Mark& mark, const Working& volume, Share& share) const {
    if (job.choices.access == "hand") return;
    const catalogue::Rate* hand = job.catalogue->rate("dig-hand");
    const catalogue::Rate* machine = job.catalogue->rate(job.choices.access == "tight" ? "dig-tight" : "dig-open");
    if (!hand || !machine || hand->hours_per_si_unit <= machine->hours_per_si_unit) return;
    const double rest = 1 - machine->hours_per_si_unit / hand->hours_per_si_unit;
    const plan::ElementId& id = mark.ground->element->id;
    share.tasks.push_back({Stage::dig,
                           hand->id,
                           "by hand along " + called(*mark.ground->element),
                           {id},
                           volume,
                           rest,
                           "what it takes more than by machine"});
  }
};

// What is said once for the whole job.
Share of_job(const plan::Job& job, const plan::Site& site) {
  Share share;
  const plan::Ground* pool = nullptr;
  const plan::Ground* first = nullptr;
  bool barrier = false;
  for (const auto& ground : site.grounds) {
    if (std::holds_alternative<plan::Pool>(ground->element->kind) && !pool) pool = ground.get();
    const auto* what = std::get_if<plan::SiteMark>(&ground->element->kind);
    if (what && !first) first = ground.get();
    barrier = barrier || (what && what->what == "barrier");
  }
  if (first && job.catalogue->site_rules.empty())
    share.problems.push_back(edges::notice("site-rules-missing",
                                           "this job's catalogue has no rules for site marks: nothing was checked",
                                           "copy the site rules into the job's catalogue", first->element->id));
  if (pool && !barrier)
    share.problems.push_back(edges::notice("barrier-not-checked",
                                           "no pool barrier is drawn: the barrier is not checked",
                                           "draw the barrier; local code decides what it must be", pool->element->id));
  return share;
}

}  // namespace

std::vector<Share> marks(const plan::Job& job, const plan::Site& site, const ground::Bodies& bodies,
                         const levels::Terrain& terrain) {
  std::vector<Share> all{of_job(job, site)};
  if (job.catalogue->site_rules.empty()) return all;
  Marked marked{job, site, terrain, subjects(job, site, bodies), {}};
  for (const auto& ground : site.grounds)
    if (const auto one = mark(*ground)) all.push_back(marked.of(*one));
  std::erase_if(all, [](const Share& share) {
    return share.problems.empty() && share.tasks.empty() && share.measures.values.empty();
  });
  return all;
}

}  // namespace takeoff::there
