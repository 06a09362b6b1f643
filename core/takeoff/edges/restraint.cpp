#include <algorithm>

#include "takeoff/edges/edges.h"
#include "takeoff/edges/junction.h"
#include "takeoff/edges/notes.h"
#include "takeoff/edges/spikes.h"

namespace takeoff::edges {

namespace {

struct Spaced {
  double length = 0;
  units::Length spacing;
  bool curved = false;
};

std::vector<Spaced> spaced_parts(const geometry::Path& path, units::Length straight, units::Length on_curves) {
  std::vector<Spaced> result;
  for (const Part& part : parts(path)) {
    const units::Length spacing = part.curved ? on_curves : straight;
    if (!result.empty() && result.back().spacing == spacing) {
      result.back().length += part.length;
    } else {
      result.push_back({part.length, spacing, part.curved});
    }
  }
  if (path.closed() && result.size() > 1 && result.front().spacing == result.back().spacing) {
    result.front().length += result.back().length;
    result.pop_back();
  }
  return result;
}

bool any_over(const std::vector<geometry::Path>& paths, bool curved) {
  return std::ranges::any_of(paths, [&](const geometry::Path& path) {
    const Lengths sum = lengths(path);
    return (curved ? sum.curved : sum.straight) > 0;
  });
}

void check_spacing(const plan::Job& job, const std::vector<geometry::Path>& paths, const plan::Spikes& spikes,
                   const plan::ElementId& of, Share& share) {
  const auto check = [&](const char* id, units::Length spacing, const std::string& where) {
    const auto limit = job.catalogue->limits.find(id);
    if (limit == job.catalogue->limits.end() || !limit->second.greatest) return;
    if (spacing.inches() <= *limit->second.greatest) return;
    share.problems.push_back(flag(id,
                                  "spikes stand " + shown(job, spacing.metres().si()) + " apart " + where +
                                      ", further than the catalogue's limit",
                                  "set them closer, or change the limit", of));
  };
  if (any_over(paths, false)) check("spike-spacing", spikes.spacing, "on straight parts");
  if (any_over(paths, true)) check("spike-spacing-curve", spikes.on_curves, "on curves");
}

// A run alone does not know what it stands on: the areas that lie against it do.
bool stands_on_open_stone(const plan::Job& job, const plan::Site& site, const plan::ElementId& run) {
  return std::ranges::any_of(site.grounds, [&](const auto& ground) {
    const auto* area = std::get_if<plan::PavedArea>(&ground->element->kind);
    return area && open_base(job, *area) &&
           std::ranges::any_of(ground->stretches, [&](const plan::Stretch& s) { return s.other == run; });
  });
}

void add_spikes(const plan::Job& job, const std::vector<geometry::Path>& paths, const Edging& wanted_edging,
                const plan::ElementId& of, Share& share) {
  plan::Spikes chosen = *wanted_edging.spikes;
  if (chosen.on_curves == units::Length()) chosen.on_curves = chosen.spacing;  // none given: the same all along
  if (!wanted(job, chosen.item, "the spikes", of, share)) return;
  if (chosen.spacing <= units::Length() || chosen.on_curves < units::Length()) {
    share.problems.push_back(fault("spike-spacing", "the spacing of the spikes is not above 0", "enter a spacing", of));
    return;
  }
  check_spacing(job, paths, chosen, of, share);
  std::vector<Working> counts;
  for (const geometry::Path& path : paths) counts.push_back(spikes(path, chosen.spacing, chosen.on_curves, of));
  const Working count = Working::sum(counts).named("spikes");
  share.lines.push_back({Stage::joints, chosen.item, "spikes of " + wanted_edging.text, {of}, count, {}, false});
  share.measures.put("spikes", count.amount().value);
}

}  // namespace

Working spikes(const geometry::Path& path, units::Length straight, units::Length on_curves, const plan::ElementId& of) {
  std::vector<Working> counts;
  for (const Spaced& part : spaced_parts(path, straight, on_curves)) {
    const std::string what = straight == on_curves ? "line" : part.curved ? "curved part" : "straight part";
    counts.push_back(Working::up(Working::quotient(term(what, part.length, units::metre, of),
                                                   term("spacing", part.spacing.metres().si(), units::metre, of))));
  }
  if (!path.closed()) counts.push_back(term("one more at the end", 1, units::piece));
  return Working::sum(std::move(counts));
}

Share edging(const plan::Job& job, const std::vector<geometry::Path>& paths, const Edging& edging,
             const plan::ElementId& of) {
  Share share;
  const catalogue::Item* item = wanted(job, edging.item, edging.text, of, share);
  if (!item || paths.empty()) return share;
  std::vector<Working> straight, curved, all;
  for (const geometry::Path& path : paths) {
    const Lengths sum = lengths(path);
    if (sum.straight > 0) straight.push_back(term("straight part", sum.straight, units::metre, of));
    if (sum.curved > 0) curved.push_back(term("curved part", sum.curved, units::metre, of));
    all.push_back(term("length", sum.both(), units::metre, of));
  }
  const Working length = Working::sum(std::move(all)).named("length along the edge");
  share.measures.put("restraint_m", length.amount().value);
  if (item->length) {
    share.lines.push_back({Stage::joints,
                           edging.item,
                           edging.text,
                           {of},
                           Working::quotient(length, term("stock length", item->length->metres().si(), units::metre,
                                                          edging.item + "/length")),
                           {},
                           false});
  } else {
    share.problems.push_back(fault(
        "restraint-no-length",
        "the item " + edging.item + " has no stock length, so the pieces for " + edging.text + " can't be counted",
        "enter its length in the catalogue, or choose an edging that comes in lengths", of));
  }
  const auto metres_of = [](std::vector<Working> parts_of) {
    return parts_of.empty() ? Working(term("none", 0, units::metre)) : Working::sum(std::move(parts_of));
  };
  add_task(job, "restraint", Stage::joints, edging.text, of,
           {metres_of(std::move(straight)), metres_of(std::move(curved))}, share);
  if (edging.spikes) add_spikes(job, paths, edging, of, share);
  return share;
}

Share restraint(const plan::Job& job, const plan::Site& site, const plan::Ground& ground) {
  const auto* run = std::get_if<plan::EdgeRun>(&ground.element->kind);
  if (!run || !ground.path) return {};
  const plan::ElementId& id = ground.element->id;
  const catalogue::Item* item = job.catalogue->item(run->item);
  if (item && (item->kind == "edging-unit" || item->kind == "kerb-unit")) return kerb(job, site, ground);
  Share share = edging(job, {*ground.path}, {run->item, run->spikes, run->what + " along the edge"}, id);
  share.measures.element = id;
  if (run->spikes && stands_on_open_stone(job, site, id)) {
    share.problems.push_back(notice("spikes-in-open-stone",
                                    "spiked edging holds badly in open-graded stone (common practice)",
                                    "take an edging with a wide foot made for open stone, or a kerb on a footing", id));
  }
  return share;
}

}  // namespace takeoff::edges
