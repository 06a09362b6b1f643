#include <algorithm>
#include <cmath>

#include "takeoff/ground/ground.h"
#include "units/number.h"

namespace takeoff::ground {

using problem::Severity;

Working area_of(const plan::Site& site, const Body& body) {
  std::vector<Working> parts;
  double net = 0;
  for (const plan::ElementId& id : body.of) {
    const plan::Ground* ground = site.find(id);
    const double own = ground->net.area().si();
    net += own;
    const auto* area = std::get_if<plan::PavedArea>(&ground->element->kind);
    const bool taped = area && area->taped_area_m2 && *area->taped_area_m2 > 0;
    parts.push_back(taped ? term("area taped on site", *area->taped_area_m2, units::square_metre, id)
                          : term("net area", own, units::square_metre, id));
  }
  const double past = body.footprint.area().si() - net;
  if (std::abs(past) > 1e-9)
    parts.push_back(term("past the edge", past, units::square_metre, body.build_up + "/past_edge"));
  return parts.size() == 1 ? parts.front() : Working::sum(std::move(parts));
}

namespace {

Working thickness_of(const Body& body) {
  return term("thickness", body.thickness, units::metre, body.build_up + "/" + body.layer.role);
}

std::string where(const Body& body) {
  std::string text;
  for (const plan::ElementId& id : body.of) text += (text.empty() ? "" : ", ") + id;
  return text;
}

Stage stage_for(const std::string& role) { return role == "bedding" || role == "mortar" ? Stage::paving : Stage::base; }

// Lifts of a placed layer: as many as the greatest lift asks for.
int lifts(const Body& body) {
  if (!body.layer.lift || body.layer.lift->steps() <= 0) return 1;
  return static_cast<int>(std::ceil(body.thickness / body.layer.lift->metres().si() - 1e-9));
}

struct Maker {
  const plan::Job& job;
  const plan::Site& site;
  Share share;

  void of(const Body& body) {
    const catalogue::Item* item = job.catalogue->item(body.layer.item);
    if (body.layer.role == "fabric") return;  // laid in strips, see fabric.cpp
    if (!item) {
      share.problems.push_back({Severity::problem,
                                "item-unknown",
                                "the job's catalogue has no '" + body.layer.item + "' for the " + body.layer.role +
                                    " of build-up " + body.build_up,
                                "choose an item that it has, or copy it in",
                                {body.of.front(), "", 0, 0, {}}});
      return;
    }
    if (item->kind == "aggregate") return stone(body, *item);
    if (item->kind == "concrete") return poured(body, *item);
    if (item->kind == "bar") return mesh(body, *item);
    line(body, *item, area_of(site, body), body.layer.role + " of " + where(body));
  }

  // By weight: placed volume x placed density, and nothing beside it (a factor would count compaction twice).
  void stone(const Body& body, const catalogue::Item& item) {
    const auto density = item.number("compacted_density_kg_m3");
    if (!density) {
      share.problems.push_back(
          {Severity::problem,
           "density-missing",
           "'" + item.id + "' has no placed density, so the weight of the " + body.layer.role + " can't be worked out",
           "give compacted_density_kg_m3 in the catalogue",
           {body.of.front(), "", 0, 0, {}}});
      return;
    }
    const Working volume = Working::product({area_of(site, body), thickness_of(body)}).named("placed volume");
    line(body, item,
         Working::product({volume, term("placed density", *density, units::kilogram_per_cubic_metre,
                                        item.id + "/compacted_density_kg_m3")}),
         body.layer.role + " of " + where(body) + lifts_in_words(body));
    if (body.layer.role == "bedding") {
      share.facts.push_back("bedding");
      share.facts.push_back(body.open ? "open-bedding" : "sand-bedding");
      task(body, "screed", area_of(site, body), Stage::paving);
    } else {
      share.facts.push_back(body.open ? "open-base" : "dense-base");
      share.facts.push_back("base");
      share.facts.push_back(body.open && job.choices.infiltration_counts ? "infiltrates" : "firm-formation");
      const double kg = share.lines.back().working.amount().value;
      task(body, base_rate(body), term("stone placed", kg, units::kilogram, body.of.front()), Stage::base);
    }
  }

  void poured(const Body& body, const catalogue::Item& item) {
    line(body, item, Working::product({area_of(site, body), thickness_of(body)}).named("placed volume"),
         body.layer.role + " of " + where(body));
    share.facts.push_back(body.layer.role == "slab" ? "slab" : "mortar");
  }

  // Sheets lap one square; by area, with the item's waste as the lap allowance.
  void mesh(const Body& body, const catalogue::Item& item) {
    line(body, item, area_of(site, body), body.layer.role + " of " + where(body));
  }

  void line(const Body& body, const catalogue::Item& item, Working working, std::string text) {
    share.lines.push_back(
        {stage_for(body.layer.role), item.id, std::move(text), body.of, std::move(working), {}, false});
  }

  void task(const Body& body, const std::string& rate, Working working, Stage stage) {
    share.tasks.push_back({stage, rate, body.layer.role + " of " + where(body), body.of, std::move(working), 1, {}});
  }

  std::string base_rate(const Body& body) const {
    if (body.layer.role == "sub-base") return "subbase-machine";
    const bool driven = std::ranges::any_of(body.of, [this](const plan::ElementId& id) {
      const auto* area = std::get_if<plan::PavedArea>(&site.find(id)->element->kind);
      return area && area->vehicles;
    });
    if (driven) return "base-drive";
    return job.choices.access == "hand" ? "base-barrow" : "base-machine";
  }

  static std::string lifts_in_words(const Body& body) {
    const int count = lifts(body);
    return count > 1 ? ", in " + std::to_string(count) + " lifts" : "";
  }

  // The choke rule, from the gradings' mid curves: D15 of the lower over D50 of the upper under 5, D50 over D50
  // over 2.
  void interface(const Body& upper, const Body& lower) {
    const catalogue::Item* above = job.catalogue->item(upper.layer.item);
    const catalogue::Item* below = job.catalogue->item(lower.layer.item);
    if (!above || !below) return;
    const auto upper_50 = above->number("d50_mm");
    const auto lower_15 = below->number("d15_mm");
    const auto lower_50 = below->number("d50_mm");
    if (!upper_50 || !lower_15 || !lower_50 || above->id == below->id) return;
    const double small_end = *lower_15 / *upper_50;
    const double middle = *lower_50 / *upper_50;
    if (small_end < 5 && middle > 2) return;
    share.problems.push_back({Severity::notice,
                              "layers-fall-into-each-other",
                              above->id + " over " + below->id + ": D15/D50 is " + units::show_number(small_end, 2) +
                                  " (under 5 wanted), D50/D50 is " + units::show_number(middle, 2) + " (over 2 wanted)",
                              "lay fabric between, a layer of chips below, or another stone (choke rule of the "
                              "trade association, from memory)",
                              {upper.of.front(), "", 0, 0, {}}});
  }
};

bool lies_on(const Body& upper, const Body& lower) {
  return upper.group == lower.group && lower.thickness > 0 && upper.thickness > 0 &&
         std::abs(upper.top + upper.thickness - lower.top) < 1e-9;
}

}  // namespace

Share layers(const plan::Job& job, const plan::Site& site, const Bodies& bodies) {
  Maker maker{job, site, {}};
  maker.share.problems = bodies.problems;
  for (const Body& body : bodies.bodies) maker.of(body);
  for (const Body& upper : bodies.bodies)
    for (const Body& lower : bodies.bodies)
      if (lies_on(upper, lower)) maker.interface(upper, lower);
  return std::move(maker.share);
}

}  // namespace takeoff::ground
