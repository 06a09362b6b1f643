#include "takeoff/ground/lie.h"

#include <array>
#include <cmath>

#include "geometry/overlay.h"

namespace takeoff::ground {

using geometry::Point;
using geometry::Region;

namespace {

bool within(const geometry::Box& box, Point p) {
  return p.x >= box.low.x && p.y >= box.low.y && p.x <= box.high.x && p.y <= box.high.y;
}

}  // namespace

Lie::Lie(const plan::Job& job, const plan::Site& site, const levels::Terrain& terrain)
    : terrain_(terrain), topsoil_(job.choices.soil.topsoil.metres().si()) {
  for (const auto& ground : site.grounds) {
    const auto* removal = std::get_if<plan::Removal>(&ground->element->kind);
    if (!removal) continue;
    const Region& region = ground->footprint.empty() ? ground->drawn : ground->footprint;
    if (region.empty()) continue;
    taken_.push_back({region, region.bounds(), removal->thickness.metres().si(), removal->fate == "leave"});
  }
}

void Lie::add(Formation formation) {
  const geometry::Box box = formation.footprint.bounds();
  formations_.push_back({box, std::make_unique<const Formation>(std::move(formation))});
}
void Lie::add(Hole hole) { holes_.push_back(std::make_unique<const Hole>(std::move(hole))); }

Lie::Down Lie::down(Point point) const {
  for (const auto& one : formations_) {
    if (!within(one.box, point)) continue;
    // Surfaces cover all of their footprint, so asking them is asking it, and quicker.
    for (const levels::SurfacePtr& surface : one.formation->surfaces) {
      const geometry::Vec place = surface->place(point);
      if (const geometry::Facet* facet = surface->facet(place))
        return {one.formation.get(), facet, facet->plane.at(place)};
    }
    if (one.formation->surfaces.empty() && one.formation->footprint.contains(point))
      return {one.formation.get(), nullptr, {}};
  }
  return {};
}

std::optional<double> Lie::formation(Point point, double ground) const {
  const Down found = down(point);
  if (!found.formation) return {};
  return found.level.value_or(ground - found.formation->depth);
}

std::optional<Lies> Lie::at(Point point, double otherwise) const { return at(point, otherwise, true); }

std::optional<Lies> Lie::at(Point point, double otherwise, bool with_holes) const {
  const std::optional<double> measured = terrain_.existing_at(point);
  if (!measured && std::isnan(otherwise)) return {};
  Lies made;
  made.existing = measured.value_or(otherwise);
  made.level = made.existing - topsoil_;
  made.virgin = true;
  if (measured) made.source.push_back(terrain_.existing->facet(terrain_.existing->place(point)));
  for (const Taken& taken : taken_)
    if (within(taken.box, point) && taken.ground.contains(point)) {
      made.level = made.existing - taken.off;
      made.virgin = false;
      made.source.push_back(&taken);
      break;
    }
  if (const Down found = down(point); found.formation) {
    made.source.push_back(found.formation);
    if (found.facet) made.source.push_back(found.facet);
    made.level = std::min(made.level, found.level.value_or(made.existing - found.formation->depth));
    made.virgin = false;
  }
  if (!with_holes) return made;
  for (const auto& hole : holes_)
    if (const auto found = hole->bottom(point); found && found->level < made.level) {
      made.level = found->level;
      made.source.push_back(found->source);
      made.virgin = false;
    }
  return made;
}

LiesAt Lie::asked() const {
  return [this](Point point, double otherwise) { return at(point, otherwise); };
}

LiesAt Lie::asked_by_depth() const {
  return [this](Point point, double otherwise) { return at(point, otherwise, false); };
}

problem::Result<std::vector<Cleared>> Lie::cleared(const Region& region) const {
  std::vector<Cleared> pieces;
  Region rest = region;
  for (const Taken& taken : taken_) {
    if (rest.empty() || !geometry::overlap(rest.bounds(), taken.box)) continue;
    auto part = geometry::meet(rest, taken.ground);
    if (!part) return std::unexpected(part.error());
    if (part->empty()) continue;
    auto left = geometry::subtract(rest, std::array{taken.ground});
    if (!left) return std::unexpected(left.error());
    pieces.push_back({std::move(*part), taken.off, false, taken.stays});
    rest = std::move(*left);
  }
  if (!rest.empty()) pieces.push_back({std::move(rest), topsoil_, topsoil_ > 0, false});
  return pieces;
}

}  // namespace takeoff::ground
