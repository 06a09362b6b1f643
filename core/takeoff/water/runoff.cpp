// What runs off paving and roofs by the rational method, and what open bases hold.
#include <algorithm>

#include "takeoff/edges/notes.h"
#include "takeoff/edges/weeps.h"
#include "takeoff/water/flow.h"
#include "takeoff/water/water.h"

namespace takeoff::water {

namespace {

constexpr double drop = 0.001;  // metres: paving that lies this much lower at a channel falls towards it

double rain(const plan::Job& job) { return job.choices.rain_mm_h / 1000 / 3600; }  // metres a second

// Joints filled with chips take much of the rain; all other paving sheds it.
bool open_joints(const plan::Job& job, const plan::PavedArea& area) {
  const catalogue::Item* fill = area.joint_fill.empty() ? nullptr : job.catalogue->item(area.joint_fill.front().item);
  return fill && fill->kind == "joint-chips";
}

double from_paving(const plan::Job& job, const plan::Ground& ground, const plan::PavedArea& area) {
  const double c = open_joints(job, area) ? job.catalogue->number_limit("runoff-open-joints", 0.3)
                                          : job.catalogue->number_limit("runoff-paving", 0.85);
  return flow::rational(c, rain(job), ground.net.area().si());
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
      if (!into.empty()) direct[into] += from_paving(job, *ground, *area);
    }
    if (const auto* mark = std::get_if<plan::SiteMark>(&ground->element->kind))
      if (!mark->into.empty()) direct[mark->into] += from_roof(job, *mark);
  }
  return direct;
}

namespace {

// What an edge lets water off to, in words; empty where it holds it.
std::string lets_off(const plan::Job& job, const plan::Site& site, const plan::Stretch& stretch) {
  switch (stretch.meets) {
    case plan::Meets::planting:
    case plan::Meets::restraint: return "the ground beside it";
    case plan::Meets::steps: return "the steps";
    case plan::Meets::paving: return "paving " + stretch.other;
    case plan::Meets::channel: return "channel " + stretch.other;
    case plan::Meets::inlet: return "inlet " + stretch.other;
    case plan::Meets::kerb: {
      const plan::Ground* kerb = site.find(stretch.other);
      const auto* run = kerb ? std::get_if<plan::EdgeRun>(&kerb->element->kind) : nullptr;
      if (run && run->upstand <= units::Length()) return "the ground past the flush kerb " + stretch.other;
      if (run && run->weeps && edges::rain_passes(job, *run->weeps)) return "the weeps of " + stretch.other;
      return {};
    }
    case plan::Meets::coping:
    case plan::Meets::building:
    case plan::Meets::wall_face:
    case plan::Meets::wall_back:
    case plan::Meets::seat_wall:
    case plan::Meets::pillar:
    case plan::Meets::planter:
    case plan::Meets::water: return {};
  }
  return {};
}

struct Teller {
  const plan::Job& job;
  const plan::Site& site;
  const levels::Terrain& terrain;
  std::map<plan::ElementId, Share> made;
  bool rain_missing = false;

  Share& of(const plan::ElementId& id) {
    Share& share = made[id];
    share.measures.element = id;
    return share;
  }

  void says(const plan::ElementId& id, const plan::ElementId& into, double amount) {
    if (job.choices.rain_mm_h > 0) {
      of(id).measures.put("runoff_l_s", amount * 1000);
    } else if (!into.empty() && !rain_missing) {
      rain_missing = true;
      of(id).problems.push_back(
          edges::notice("no-rain", "no rain intensity is chosen, so no drain is checked for the water that arrives",
                        "enter one from local records, with its source", id));
    }
    const plan::Ground* run = site.find(into);
    if (!into.empty() && (!run || !std::holds_alternative<plan::DrainRun>(run->element->kind)))
      of(id).problems.push_back(
          edges::fault("run-into", "the water of " + id + " goes to " + into + ", which is no drain run of this job",
                       "name the run that takes it, or leave it open", id));
  }

  void goes(const plan::Ground& ground, const plan::ElementId& into) {
    const plan::ElementId& id = ground.element->id;
    if (!terrain.finished.contains(id)) return;
    std::vector<std::string> ways;
    if (!into.empty()) ways.push_back(into);
    for (const plan::Stretch& stretch : ground.stretches)
      if (const std::string way = lets_off(job, site, stretch); !way.empty() && into.empty())
        if (std::ranges::find(ways, way) == ways.end()) ways.push_back(way);
    std::string text;
    for (const std::string& way : ways) text += (text.empty() ? "" : ", ") + way;
    if (ways.empty())
      of(id).problems.push_back(edges::flag("water-nowhere",
                                            "the rain on " + id + " has nowhere to go: every edge of it holds water",
                                            "set a channel or an inlet, or open an edge: the estimator decides", id));
    else
      of(id).problems.push_back(edges::notice("water-goes", "the rain on " + id + " goes to " + text,
                                              "see that it does no harm there; never onto a neighbour", id));
  }

  void stored(const ground::Body& body) {
    const catalogue::Item* item = body.open ? job.catalogue->item(body.layer.item) : nullptr;
    const auto porosity = item ? item->number("porosity") : std::nullopt;
    if (!porosity || body.of.empty() || body.net.empty()) return;
    Storage& all = storage[body.of.front()];
    all.volume += body.footprint.area().si() * body.thickness * *porosity;
    all.area = body.net.area().si();
  }

  void put_storage() {
    for (const auto& [id, all] : storage) {
      of(id).measures.put("storage_m3", all.volume);
      of(id).measures.put("storage_rain_m", all.volume / all.area);
    }
  }

  struct Storage {
    double volume = 0;
    double area = 0;
  };
  std::map<plan::ElementId, Storage> storage;
};

}  // namespace

std::map<plan::ElementId, Share> runoff(const plan::Job& job, const plan::Site& site, const ground::Bodies& bodies,
                                        const levels::Terrain& terrain) {
  Teller teller{job, site, terrain, {}, false, {}};
  for (const auto& ground : site.grounds) {
    const plan::ElementId& id = ground->element->id;
    if (const auto* area = std::get_if<plan::PavedArea>(&ground->element->kind); area && !ground->net.empty()) {
      const plan::ElementId into = taken_by(*ground, *area, terrain);
      teller.says(id, into, from_paving(job, *ground, *area));
      teller.goes(*ground, into);
    }
    if (const auto* mark = std::get_if<plan::SiteMark>(&ground->element->kind); mark && mark->roof_area_m2)
      teller.says(id, mark->into, from_roof(job, *mark));
  }
  for (const ground::Body& body : bodies.bodies) teller.stored(body);
  teller.put_storage();
  return std::move(teller.made);
}

}  // namespace takeoff::water
