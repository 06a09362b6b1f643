#include "plan/net.h"

#include <algorithm>

#include "geometry/index.h"
#include "geometry/overlay.h"
#include "units/number.h"

namespace plan {

using geometry::Region;
using problem::Problem;
using problem::Severity;

// Overlaps smaller than this are the grid's own rounding along a shared edge of a large area, not ground.
static constexpr double no_overlap_m2 = 1e-5;

int rank(const Kind& kind) {
  struct Rank {
    int operator()(const Building&) const { return 8; }
    int operator()(const Pool&) const { return 7; }
    int operator()(const KeepOut&) const { return 6; }
    int operator()(const Wall&) const { return 5; }
    int operator()(const Steps&) const { return 4; }
    int operator()(const EdgeRun&) const { return 3; }
    int operator()(const DrainRun&) const { return 2; }
    int operator()(const PavedArea&) const { return 1; }
    int operator()(const Level&) const { return 0; }
    int operator()(const Feature&) const { return 0; }
    int operator()(const Removal&) const { return 0; }
    int operator()(const SiteMark&) const { return 0; }
    int operator()(const Protection&) const { return 0; }
    int operator()(const Note&) const { return 0; }
    int operator()(const Dimension&) const { return 0; }
    int operator()(const SitePlan&) const { return 0; }
    int operator()(const LevelBook&) const { return 0; }
    int operator()(const BaseLine&) const { return 0; }
    int operator()(const TapeBook&) const { return 0; }
  };
  return std::visit(Rank{}, kind);
}

static bool paved(const Ground& ground) { return std::holds_alternative<PavedArea>(ground.element->kind); }

static std::string square_metres(double area) { return units::show_number(area, 3) + " m2"; }

static void say_overlap(const Ground& loser, const Ground& winner, std::vector<Problem>& problems) {
  const auto both = geometry::meet(loser.footprint, winner.footprint);
  if (!both || both->area().si() < no_overlap_m2) return;
  problems.push_back({Severity::notice,
                      "paving-overlaps",
                      loser.element->id + " and " + winner.element->id + " overlap in " +
                          square_metres(both->area().si()) + ", counted once, in " + winner.element->id,
                      "draw their common edge once if that is not meant",
                      {loser.element->id, "", 0, 0, both->centroid()}});
}

static void say_covered(const Ground& ground, std::vector<Problem>& problems) {
  problems.push_back({Severity::problem,
                      "paving-covered",
                      "other elements cover all of " + ground.element->id,
                      "move it or take it out",
                      {ground.element->id, "", 0, 0, ground.footprint.centroid()}});
}

// Those that keep ground from `i`: of higher rank, or of its own rank and drawn later.
static std::vector<std::size_t> winners(const std::vector<Ground>& grounds, std::size_t i,
                                        const geometry::Index& index) {
  std::vector<std::size_t> found;
  const int own = rank(grounds[i].element->kind);
  for (const std::uint32_t j : index.touching(grounds[i].footprint.bounds())) {
    if (j == i || grounds[j].footprint.empty()) continue;
    const int other = rank(grounds[j].element->kind);
    if (other > own || (other == own && j > i)) found.push_back(j);
  }
  return found;
}

static void cut_one(std::vector<Ground>& grounds, std::size_t i, const geometry::Index& index,
                    std::vector<Problem>& problems) {
  Ground& ground = grounds[i];
  ground.net = ground.footprint;
  if (ground.footprint.empty()) return;
  std::vector<Region> cutters;
  for (const std::size_t j : winners(grounds, i, index)) {
    cutters.push_back(grounds[j].footprint);
    if (paved(ground) && paved(grounds[j])) say_overlap(ground, grounds[j], problems);
  }
  if (cutters.empty()) return;
  auto net = geometry::subtract(ground.footprint, cutters);
  if (!net) {
    ground.computed = false;
    ground.net = {};
    problems.push_back(problem::in_element(net.error(), ground.element->id));
    return;
  }
  ground.net = std::move(*net);
  if (paved(ground) && ground.net.empty()) say_covered(ground, problems);
}

void cut(std::vector<Ground>& grounds, std::vector<Problem>& problems) {
  std::vector<geometry::Box> boxes;
  boxes.reserve(grounds.size());
  for (const Ground& ground : grounds) boxes.push_back(ground.footprint.bounds());
  const geometry::Index index(boxes);
  for (std::size_t i = 0; i < grounds.size(); ++i) cut_one(grounds, i, index, problems);
}

}  // namespace plan
