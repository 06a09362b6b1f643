#include <algorithm>
#include <array>

#include "geometry/overlay.h"
#include "takeoff/ground/ground.h"
#include "takeoff/loads.h"

namespace takeoff::ground {

using problem::Severity;

namespace {

// The deepest layers, one body each: their footprint is what is dug, down to their underside.
std::vector<const Body*> lowest(const Bodies& bodies) {
  std::vector<const Body*> found;
  for (const Body& body : bodies.bodies) {
    if (body.thickness <= 0 || body.layer.role == "fabric") continue;
    const bool something_below = std::ranges::any_of(bodies.bodies, [&body](const Body& other) {
      return other.group == body.group && other.thickness > 0 && other.top > body.top;
    });
    if (!something_below) found.push_back(&body);
  }
  return found;
}

struct Maker {
  const plan::Job& job;
  const plan::Site& site;
  Share share;
  std::vector<Working> bank;

  void of(const Body& body) {
    const Working area = area_of(site, body);
    const Working volume =
        Working::product({area, term("depth of the build-up", body.top + body.thickness, units::metre, body.build_up)})
            .named("bank volume");
    bank.push_back(volume);
    std::string where;
    for (const plan::ElementId& id : body.of) where += (where.empty() ? "" : ", ") + id;
    task(digging_rate(), "dig " + where + ", bank volume", body.of, volume);
    task("grade-fine", "formation of " + where, body.of, area);
    // Soil that is counted on to soak stays as it is unless the engineer says otherwise; any other is compacted.
    if (!body.open || !job.choices.infiltration_counts) task("compact-ground", "formation of " + where, body.of, area);
    share.facts.push_back("dig");
    if (body.top + body.thickness >= way_out_of_a_dig() - 1e-9) share.facts.push_back("deep-dig");
  }

  // Metres; a way out is asked for from 4 ft (29 CFR 1926.651).
  double way_out_of_a_dig() const {
    return job.catalogue->length_limit("dig-egress", units::Length::feet(4)).metres().si();
  }

  std::string digging_rate() const {
    if (job.choices.access == "hand") return "dig-hand";
    return job.choices.access == "tight" ? "dig-tight" : "dig-open";
  }

  void task(const std::string& rate, std::string text, std::vector<plan::ElementId> of, Working working) {
    share.tasks.push_back({Stage::dig, rate, std::move(text), std::move(of), std::move(working), 1, {}});
  }

  void haul() {
    const plan::Soil& soil = job.choices.soil;
    std::vector<plan::ElementId> all;
    for (const auto& t : share.tasks) all.insert(all.end(), t.of.begin(), t.of.end());
    std::ranges::sort(all);
    all.erase(std::unique(all.begin(), all.end()), all.end());
    const Working volume = Working::sum(bank).named("bank volume");
    const Working loose =
        Working::product({volume, term("loose for bank, " + soil.name, 1 + soil.swell, units::piece, "soil/swell")})
            .named("loose volume");
    const Working weight = Working::product({volume, term("bank density", soil.bank_density_kg_m3,
                                                          units::kilogram_per_cubic_metre, "soil/bank_density")})
                               .named("weight");
    if (const catalogue::Item* truck = chosen(job.choices.truck, "truck")) {
      auto count = loads(loose, weight, *truck);
      if (!count) return share.problems.push_back(count.error());
      share.lines.push_back({Stage::dig, truck->id, "spoil to haul; nothing reused", all, *count, 0, false});
      task("load-haul", "load and haul spoil", all, *count);
    }
    if (const catalogue::Item* fee = chosen(job.choices.disposal, "disposal fee"))
      share.lines.push_back({Stage::dig, fee->id, "spoil, by weight", all, weight, 0, false});
  }

  const catalogue::Item* chosen(const plan::Id& id, const std::string& what) {
    if (id.empty()) {
      share.problems.push_back({Severity::notice,
                                "haul-not-chosen",
                                "no " + what + " is chosen, so its cost is not here",
                                "choose one for the job",
                                {}});
      return nullptr;
    }
    const catalogue::Item* item = job.catalogue->item(id);
    if (!item)
      share.problems.push_back({Severity::problem,
                                "item-unknown",
                                "the job's catalogue has no '" + id + "'",
                                "choose an item that it has, or copy it in",
                                {}});
    return item;
  }
};

}  // namespace

Share dig(const plan::Job& job, const plan::Site& site, const Bodies& bodies) {
  Maker maker{job, site, {}, {}};
  for (const Body* body : lowest(bodies)) maker.of(*body);
  if (!maker.bank.empty()) maker.haul();
  return std::move(maker.share);
}

}  // namespace takeoff::ground
