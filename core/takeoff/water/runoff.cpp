// What runs off paving and roofs by the rational method, and what open bases hold.
#include "takeoff/edges/notes.h"
#include "takeoff/water/flow.h"
#include "takeoff/water/water.h"

namespace takeoff::water {

namespace {

constexpr double drop = 0.001;  // metres: paving that lies this much lower at a channel falls towards it

double rain(const plan::Job& job) { return job.choices.rain_mm_h / 1000 / 3600; }  // metres a second

double from_paving(const plan::Job& job, const plan::Ground& ground) {
  return flow::rational(job.catalogue->number_limit("runoff-paving", 0.85), rain(job), ground.net.area().si());
}

double from_roof(const plan::Job& job, const plan::SiteMark& mark) {
  return flow::rational(job.catalogue->number_limit("runoff-roof", 0.9), rain(job), mark.roof_area_m2.value_or(0));
}

// The middle of the heights at the corners, of those that are known.
std::optional<double> mean_height(const plan::Ground& ground, const levels::Terrain& terrain) {
  double sum = 0;
  int count = 0;
  const auto outlines = ground.net.outlines();
  for (const geometry::Outline* outline : outlines)
    for (const geometry::Edge& edge : outline->edges())
      if (const auto height = terrain.finished_at(edge.from)) sum += *height, ++count;
  return count > 0 ? std::optional(sum / count) : std::nullopt;
}

// The channel with the longest stretch along the area to which the finished surface falls.
plan::ElementId channel_of(const plan::Ground& ground, const levels::Terrain& terrain) {
  const auto mean = mean_height(ground, terrain);
  if (!mean) return {};
  std::map<plan::ElementId, double> lengths;
  const auto outlines = ground.net.outlines();
  for (const plan::Stretch& stretch : ground.stretches) {
    if (stretch.meets != plan::Meets::channel) continue;
    const geometry::Ring& ring = outlines[static_cast<std::size_t>(stretch.outline)]->edges();
    const geometry::Curve curve = geometry::curve(ring, static_cast<std::size_t>(stretch.edge));
    const double length = curve.length() / units::Length::steps_per_metre;
    const double middle = length > 0 ? (stretch.from + stretch.to) / 2 / length : 0;
    const auto there = terrain.finished_at(geometry::moved(curve.start, curve.at(middle)));
    if (there && *there < *mean - drop) lengths[stretch.other] += stretch.to - stretch.from;
  }
  plan::ElementId best;
  for (const auto& [id, length] : lengths)
    if (best.empty() || length > lengths.at(best)) best = id;
  return best;
}

plan::ElementId taken_by(const plan::Ground& ground, const plan::PavedArea& area, const levels::Terrain& terrain) {
  return area.water_to.empty() ? channel_of(ground, terrain) : area.water_to;
}

}  // namespace

std::map<plan::ElementId, double> arriving(const plan::Job& job, const plan::Site& site,
                                           const levels::Terrain& terrain) {
  std::map<plan::ElementId, double> direct;
  if (job.choices.rain_mm_h <= 0) return direct;
  for (const auto& ground : site.grounds) {
    if (const auto* area = std::get_if<plan::PavedArea>(&ground->element->kind)) {
      const plan::ElementId into = taken_by(*ground, *area, terrain);
      if (!into.empty()) direct[into] += from_paving(job, *ground);
    }
    if (const auto* mark = std::get_if<plan::SiteMark>(&ground->element->kind))
      if (!mark->into.empty()) direct[mark->into] += from_roof(job, *mark);
  }
  return direct;
}

namespace {

struct Teller {
  const plan::Job& job;
  const plan::Site& site;
  const levels::Terrain& terrain;
  std::map<plan::ElementId, Share> made;

  Share& of(const plan::ElementId& id) {
    Share& share = made[id];
    share.measures.element = id;
    return share;
  }

  void says(const plan::ElementId& id, const plan::ElementId& into, double amount) {
    if (job.choices.rain_mm_h > 0)
      of(id).measures.put("runoff_l_s", amount * 1000);
    else if (!into.empty())
      of(id).problems.push_back(edges::notice(
          "no-rain",
          "no rain intensity is chosen, so the drain that takes the water of " + id + " is not checked for it",
          "enter one from local records, with its source", id));
    const plan::Ground* run = site.find(into);
    if (!into.empty() && (!run || !std::holds_alternative<plan::DrainRun>(run->element->kind)))
      of(id).problems.push_back(
          edges::fault("run-into", "the water of " + id + " goes to " + into + ", which is no drain run of this job",
                       "name the run that takes it, or leave it open", id));
  }

  void stored(const ground::Body& body) {
    const catalogue::Item* item = body.open ? job.catalogue->item(body.layer.item) : nullptr;
    const auto porosity = item ? item->number("porosity") : std::nullopt;
    if (!porosity || body.of.empty()) return;
    of(body.of.front())
        .measures.put("storage_" + body.layer.role + "_m3", body.footprint.area().si() * body.thickness * *porosity);
  }
};

}  // namespace

std::map<plan::ElementId, Share> runoff_by_element(const plan::Job& job, const plan::Site& site,
                                                   const ground::Bodies& bodies, const levels::Terrain& terrain) {
  Teller teller{job, site, terrain, {}};
  for (const auto& ground : site.grounds) {
    const plan::ElementId& id = ground->element->id;
    if (const auto* area = std::get_if<plan::PavedArea>(&ground->element->kind))
      teller.says(id, taken_by(*ground, *area, terrain), from_paving(job, *ground));
    if (const auto* mark = std::get_if<plan::SiteMark>(&ground->element->kind); mark && mark->roof_area_m2)
      teller.says(id, mark->into, from_roof(job, *mark));
  }
  for (const ground::Body& body : bodies.bodies) teller.stored(body);
  return std::move(teller.made);
}

Share runoff(const plan::Job& job, const plan::Site& site, const ground::Bodies& bodies,
             const levels::Terrain& terrain) {
  Share share;
  for (const auto& [id, said] : runoff_by_element(job, site, bodies, terrain))
    share.problems.insert(share.problems.end(), said.problems.begin(), said.problems.end());
  return share;
}

}  // namespace takeoff::water
