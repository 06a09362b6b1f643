#include <algorithm>
#include <cmath>
#include <map>

#include "takeoff/levels/judged.h"
#include "takeoff/levels/words.h"

namespace takeoff::levels {

using geometry::Vec;
using plan::Meets;
using problem::Severity;

namespace {

constexpr double past_gap = 0.005;  // metres into the other's ground
constexpr double inch = units::metres_per_inch;

struct Seen {  // along all stretches with one other
  double least = 1e9;
  double greatest = -1e9;
  Vec at_least;
  Vec at_greatest;
  void take(double value, Vec at) {
    if (value < least) {
      least = value;
      at_least = at;
    }
    if (value > greatest) {
      greatest = value;
      at_greatest = at;
    }
  }
};

std::map<plan::ElementId, Seen> seen(const Area& area, Meets meets, const auto& value) {
  std::map<plan::ElementId, Seen> all;
  for (std::size_t r = 0; r < area.joints.rims.size(); ++r) {
    const plan::Stretch* facing = area.facing[r];
    if (facing == nullptr || facing->meets != meets) continue;
    const Rim& rim = area.joints.rims[r];
    for (const Vec place : {rim.from, 0.5 * (rim.from + rim.to), rim.to}) {
      const double height = area.surface->facets()[rim.facet].plane.at(place);
      if (const std::optional<double> found = value(*facing, rim, place, height))
        all[facing->other].take(*found, place);
    }
  }
  return all;
}

bool is_access(const plan::Job& job, const plan::ElementId& id) {
  const plan::Element* element = job.find(id);
  const auto* area = element == nullptr ? nullptr : std::get_if<plan::PavedArea>(&element->kind);
  return area != nullptr && area->access;
}

void coping_lips(const Look& look, const Area& area, Judged& judged) {
  const auto over_paving = [&](const plan::Stretch& facing, const Rim&, Vec, double height) -> std::optional<double> {
    const plan::Element* element = look.job.find(facing.other);
    const auto* pool = element == nullptr ? nullptr : std::get_if<plan::Pool>(&element->kind);
    if (pool == nullptr || !pool->coping_level) return {};
    return pool->coping_level->metres().si() - height;
  };
  for (const auto& [id, lip] : seen(area, Meets::coping, over_paving)) {
    judged.share.measures.put("coping_lip_least_m", lip.least);
    judged.share.measures.put("coping_lip_greatest_m", lip.greatest);
    const double most = limit(look.job, "lip-step", Bound::greatest, 0.25 * inch);
    const double proud = limit(look.job, "lip", Bound::greatest, 0.125 * inch);
    const std::string name = name_of(look.job, id);
    if (lip.greatest > most + 1e-6)
      judged.share.problems.push_back(said(Severity::flag, "coping-lip",
                                           "the paving lies up to " + shown(look.job, lip.greatest) +
                                               " under the coping of " + name + ": that is a step to trip over",
                                           "bring it up to the coping, or show it as a step", area.ground->element->id,
                                           area.surface->point(lip.at_greatest)));
    if (-lip.least > proud + 1e-6)
      judged.share.problems.push_back(
          said(Severity::flag, "coping-lip",
               "the paving stands up to " + shown(look.job, -lip.least) + " over the coping of " + name,
               "bring it down to the coping", area.ground->element->id, area.surface->point(lip.at_least)));
  }
}

}  // namespace

void look_at_lips(const Look& look, const Area& area, std::set<std::pair<plan::ElementId, plan::ElementId>>& pairs,
                  Judged& judged) {
  const plan::ElementId& own = area.ground->element->id;
  const auto step = [&](const plan::Stretch& facing, const Rim& rim, Vec place,
                        double height) -> std::optional<double> {
    const auto found = look.terrain.finished.find(facing.other);
    if (found == look.terrain.finished.end()) return {};
    const geometry::Surface& other = *found->second;
    const Vec over = other.place(area.surface->point(place + facing.gap * outwards(rim)));
    const geometry::Facet* facet = other.facet(over + past_gap * outwards(rim));
    if (facet == nullptr) return {};
    return height - facet->plane.at(over);
  };
  for (const auto& [id, lip] : seen(area, Meets::paving, step)) {
    if (!pairs.insert(std::minmax(own, id)).second) continue;
    const bool over = std::abs(lip.greatest) >= std::abs(lip.least);
    const double greatest = over ? lip.greatest : lip.least;
    judged.share.measures.put("lip_greatest_m", std::abs(greatest));
    const bool access = area.paved->access || is_access(look.job, id);
    const double most = access ? limit(look.job, "lip", Bound::greatest, 0.125 * inch)
                               : limit(look.job, "lip-step", Bound::greatest, 0.25 * inch);
    if (std::abs(greatest) <= most + 1e-6) continue;
    judged.share.problems.push_back(said(Severity::flag, "lip",
                                         "it stands " + shown(look.job, std::abs(greatest)) +
                                             (greatest > 0 ? " over " : " under ") + name_of(look.job, id) +
                                             " where they meet, more than " + shown(look.job, most),
                                         "bring the levels together, or build a step there", own,
                                         area.surface->point(over ? lip.at_greatest : lip.at_least)));
  }
  coping_lips(look, area, judged);
}

namespace {

struct Clear {
  const std::optional<units::Length>& height;
  double least;
  const char* code;
  const char* what;
};

bool veneer(const std::string& face) {
  return std::ranges::any_of(std::initializer_list<const char*>{"masonry", "brick", "stone", "block"},
                             [&](const char* word) { return face.contains(word); });
}

}  // namespace

void look_at_house(const Look& look, const Area& area, Judged& judged) {
  const auto height_of = [](const plan::Stretch&, const Rim&, Vec, double height) { return std::optional(height); };
  for (const auto& [id, heights] : seen(area, Meets::building, height_of)) {
    const auto& house = std::get<plan::Building>(look.job.find(id)->kind);
    const double wood = limit(look.job, "clear-wood", Bound::least, 6 * inch);
    const double weep = veneer(house.face) ? limit(look.job, "clear-masonry", Bound::least, 4 * inch) : wood;
    const double sill = limit(look.job, "sill", Bound::usual, 6 * inch);
    const std::optional<units::Length>& threshold = house.sill ? house.sill : house.floor;
    const std::string paving = "the paving lies only ";
    for (const Clear& one :
         {Clear{threshold, sill, "house-sill", house.sill ? "the sill" : "the floor"},
          Clear{house.weep, weep, "house-weep", "the lowest weep"},
          Clear{house.siding, limit(look.job, "clear-siding", Bound::least, 2 * inch), "house-siding", "the siding"},
          Clear{house.vent, weep, "house-vent", "the vent"}}) {
      if (!one.height) continue;
      const double clear = one.height->metres().si() - heights.greatest;
      if (clear >= one.least - 1e-6) continue;
      const std::string found = clear < 0 ? "the paving lies " + shown(look.job, -clear) + " over "
                                          : paving + shown(look.job, clear) + " under ";
      judged.share.problems.push_back(
          said(Severity::problem, one.code,
               found + one.what + " of " + name_of(look.job, id) + "; " + shown(look.job, one.least) + " are asked for",
               "lower the paving there, or have the building's own rules looked up", area.ground->element->id,
               area.surface->point(heights.at_greatest)));
    }
  }
}

}  // namespace takeoff::levels
