#include "takeoff/levels/terrain.h"

#include <algorithm>

#include "takeoff/levels/book.h"
#include "takeoff/levels/finish.h"
#include "takeoff/levels/words.h"

namespace takeoff::levels {

using geometry::Point;
using geometry::Spot;
using plan::Level;
using problem::Severity;

namespace {

constexpr double past_the_job = 20;  // metres: how far the guessed ground goes on past everything that is drawn

// Heights by the names of the points that the level books have, the first reading of each.
std::map<std::string, double> booked(const plan::Job& job, std::vector<problem::Problem>& problems) {
  std::map<std::string, double> heights;
  for (const auto& element : job.elements) {
    const auto* book = std::get_if<plan::LevelBook>(&element->kind);
    if (book == nullptr) continue;
    const auto reduced = reduce(*book, element->id);
    if (!reduced) {
      problems.push_back(problem::in_element(reduced.error(), element->id));
      continue;
    }
    for (problem::Problem& one : judged(*reduced, *book, job, element->id)) problems.push_back(std::move(one));
    for (const BookRow& row : reduced->rows)
      if (!row.point.empty()) heights.emplace(row.point, row.height);
  }
  return heights;
}

void read_heights(const plan::Job& job, Terrain& made) {
  const std::map<std::string, double> book = booked(job, made.problems);
  for (const auto& element : job.elements) {
    const auto* level = std::get_if<Level>(&element->kind);
    if (level == nullptr) continue;
    if (level->height) {
      made.points.emplace(element->id, level->height->metres().si());
    } else if (const auto found = book.find(element->id); found != book.end()) {
      made.points.emplace(element->id, found->second);
    } else {
      made.problems.push_back(said(Severity::problem, "level-height", "this level has no height",
                                   "type its height, or read it in a level book under the name " + element->id,
                                   element->id, level->at));
    }
  }
}

// Levels of one surface. Of two at one place the first counts; other heights there are a problem that names both.
class Spots {
 public:
  void add(const plan::Job& job, const plan::ElementId& id, Point at, double height,
           std::vector<problem::Problem>& problems) {
    const auto [there, fresh] = at_.emplace(at, Known{id, height});
    if (fresh) return spots_.push_back({at, height});
    if (there->second.height == height) return;
    problems.push_back(said(Severity::problem, "level-twice",
                            id + " and " + there->second.id + " stand at one place and differ by " +
                                shown(job, std::abs(height - there->second.height)),
                            "take one of them out", id, at));
  }
  const std::vector<Spot>& spots() const { return spots_; }

 private:
  struct Known {
    plan::ElementId id;
    double height = 0;
  };
  std::map<Point, Known> at_;
  std::vector<Spot> spots_;
};

struct Sorted {
  Spots existing;
  std::map<plan::ElementId, Spots> finished;
};

Sorted sorted(const plan::Job& job, Terrain& made) {
  Sorted all;
  for (const auto& element : job.elements) {
    const auto* level = std::get_if<Level>(&element->kind);
    if (level == nullptr) continue;
    const auto height = made.points.find(element->id);
    if (height == made.points.end()) continue;
    if (level->what == "existing") all.existing.add(job, element->id, level->at, height->second, made.problems);
    if (level->what == "finished" && !job.find(level->of))
      made.problems.push_back(said(Severity::notice, "level-of-nobody",
                                   "this finished level names no area, so no surface goes through it",
                                   "name the paved area that it belongs to", element->id, level->at));
    if (level->what == "finished" && !level->of.empty())
      all.finished[level->of].add(job, element->id, level->at, height->second, made.problems);
  }
  return all;
}

void widen(std::optional<geometry::Box>& box, geometry::Box by) {
  if (!box) {
    box = by;
    return;
  }
  box->low = {std::min(box->low.x, by.low.x), std::min(box->low.y, by.low.y)};
  box->high = {std::max(box->high.x, by.high.x), std::max(box->high.y, by.high.y)};
}

// So far that everything drawn lies within it, whichever side of the levels it lies on.
double reach(const plan::Site& site, const std::vector<Spot>& spots) {
  std::optional<geometry::Box> box;
  for (const auto& ground : site.grounds) {
    if (!ground->drawn.empty()) widen(box, ground->drawn.bounds());
    if (!ground->footprint.empty()) widen(box, ground->footprint.bounds());
    if (ground->path) widen(box, ground->path->bounds());
  }
  for (const Spot& spot : spots) widen(box, {spot.at, spot.at});
  return length(box->high - box->low) / units::Length::steps_per_metre + past_the_job;
}

SurfacePtr existing(const plan::Site& site, const std::vector<Spot>& spots, std::vector<problem::Problem>& problems) {
  if (spots.empty()) return nullptr;
  auto made = geometry::through(spots, reach(site, spots));
  if (made) return std::make_shared<const geometry::Surface>(std::move(*made));
  problems.push_back(made.error());
  return nullptr;
}

}  // namespace

std::optional<double> Terrain::existing_at(Point point) const {
  return existing ? existing->height(point) : std::nullopt;
}

std::optional<double> Terrain::finished_at(Point point) const {
  for (const auto& [id, surface] : finished)
    if (const auto height = surface->height(point)) return height;
  return {};
}

bool Terrain::guessed_at(Point point) const {
  if (!existing) return true;
  const geometry::Facet* facet = existing->facet(existing->place(point));
  return facet == nullptr || facet->guess;
}

Terrain terrain(const plan::Job& job, const plan::Site& site) {
  Terrain made;
  read_heights(job, made);
  const Sorted spots = sorted(job, made);
  made.existing = existing(site, spots.existing.spots(), made.problems);
  for (const auto& ground : site.grounds) {
    const auto* area = std::get_if<plan::PavedArea>(&ground->element->kind);
    if (area == nullptr || !area->finish || ground->net.empty()) continue;
    const plan::ElementId& id = ground->element->id;
    const auto own = spots.finished.find(id);
    auto surface = finished(job, site, *ground,
                            own == spots.finished.end() ? std::span<const Spot>() : std::span(own->second.spots()));
    if (!surface) {
      made.problems.push_back(problem::in_element(surface.error(), id));
      continue;
    }
    for (problem::Problem& one : surface->problems) made.problems.push_back(problem::in_element(std::move(one), id));
    made.finished.emplace(id, std::make_shared<const geometry::Surface>(std::move(surface->surface)));
  }
  return made;
}

}  // namespace takeoff::levels
