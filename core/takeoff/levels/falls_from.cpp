#include "takeoff/levels/falls_from.h"

#include <algorithm>

#include "takeoff/levels/inlets.h"
#include "takeoff/levels/joins.h"
#include "takeoff/levels/merge.h"
#include "takeoff/levels/sources.h"
#include "takeoff/levels/words.h"

namespace takeoff::levels {

using geometry::Surface;
using geometry::Vec;
using problem::Severity;

namespace {

constexpr double under_trace = 1e-3;  // metres
constexpr double beside = 5e-3;       // metres: how far an edge may lie off the ground that it bounds (flattened arcs)
constexpr double valley_trace = 0.3;  // metres: a shorter valley is no place for water to gather
constexpr double inlet_reach = 0.3;   // metres
constexpr double look_every = 0.1;    // metres along a valley

struct Used {
  int number = 0;  // in the finish
  Source source;
};

bool counts(const Piece& piece, Vec place) {
  return std::ranges::all_of(piece.sides, [&](const HalfPlane& side) { return side.at(place) >= 0; });
}

// How far a place of one source lies under what falls from the others.
double under(const std::vector<Piece>& pieces, int own, Vec place, double height) {
  double most = 0;
  for (const Piece& piece : pieces)
    if (piece.source != own && counts(piece, place)) most = std::max(most, piece.plane.at(place) - height);
  return most;
}

bool on_ground(const Surface& ground, Vec place) {
  for (const Vec by : {Vec{0, 0}, Vec{beside, 0}, Vec{-beside, 0}, Vec{0, beside}, Vec{0, -beside}})
    if (ground.facet(place + by) != nullptr) return true;
  return false;
}

void look_under(const plan::Job& job, const plan::Ground& ground, const Surface& area, const std::vector<Used>& used,
                const std::vector<Piece>& pieces, std::vector<problem::Problem>& problems) {
  const auto& from = std::get<plan::PavedArea>(ground.element->kind).finish->from;
  for (const Used& one : used) {
    double most = 0;
    Vec where;
    const auto look = [&](Vec place, double height) {
      const double here = under(pieces, one.number, place, height);
      if (here <= most || !on_ground(area, place)) return;
      most = here;
      where = place;
    };
    for (const Line& line : one.source.lines)
      for (const Chord& chord : line.chords) {
        look(chord.from, chord.height);
        look(0.5 * (chord.from + chord.to), (chord.height + chord.height_end) / 2);
        look(chord.to, chord.height_end);
      }
    if (most <= under_trace) continue;
    const plan::ElementId& id = from[static_cast<std::size_t>(one.number)].element;
    problems.push_back(said(Severity::problem, "finish-under",
                            (id.empty() ? std::string("its own edge") : name_of(job, id)) + " lies " +
                                shown(job, most) + " under what falls towards it from another edge",
                            "give it more fall, or build a step there", ground.element->id, area.point(where)));
  }
}

// Lines where what falls from two edges meets, and nothing on them takes the water.
void look_for_valleys(const plan::Job& job, const plan::Site& site, const plan::Ground& ground, const Surface& surface,
                      const std::vector<int>& sources, std::vector<problem::Problem>& problems) {
  if (std::ranges::all_of(sources, [&](int one) { return one == sources.front(); })) return;
  const Inlets inlets(site);
  double dry = 0;
  bool taken = false;
  double lowest = 1e9;
  Vec where;
  for (const Join& join : joints(surface).joins) {
    if (sources[join.a] == sources[join.b]) continue;
    const double run = length(join.to - join.from);
    const int count = std::max(1, static_cast<int>(run / look_every));
    for (int i = 0; i < count && !taken; ++i)
      taken = inlets.takes(surface.point(join.from + ((i + 0.5) / count) * (join.to - join.from)), inlet_reach);
    dry += run;
    for (const Vec end : {join.from, join.to}) {
      const double height = surface.facets()[join.a].plane.at(end);
      if (height >= lowest) continue;
      lowest = height;
      where = end;
    }
  }
  if (taken || dry < valley_trace) return;
  problems.push_back(said(Severity::flag, "finish-valley",
                          "two falls meet in a valley of " + shown(job, dry) + " with neither inlet nor channel on it",
                          "put an inlet or a channel on it", ground.element->id, surface.point(where)));
}

}  // namespace

problem::Result<Finished> falls_from(const plan::Job& job, const plan::Site& site, const plan::Ground& ground,
                                     const Surface& pieces) {
  const plan::Finish& finish = *std::get<plan::PavedArea>(ground.element->kind).finish;
  Finished made;
  std::vector<Used> used;
  std::vector<Piece> laid;
  for (std::size_t i = 0; i < finish.from.size(); ++i) {
    auto one = source(job, site, ground, finish.from[i], pieces.origin());
    if (!one) {
      made.problems.push_back(one.error());
      continue;
    }
    used.push_back({static_cast<int>(i), std::move(*one)});
    add_pieces(used.back().source, used.back().number, laid);
  }
  if (used.empty() && !made.problems.empty()) return std::unexpected(made.problems.front());
  if (used.empty())
    return problem::fault("finish-from", "nothing is named that its surface falls away from",
                          "choose the edges that it falls away from", {ground.element->id, {}, 0, 0, {}});

  std::vector<Cell> cells = highest(pieces, laid);
  for (Cell& cell : cells) {
    if (cell.source < 0) {
      // Deeper inside something's outline than its surface reaches: dust of what was cut off along it.
      const auto near = std::ranges::max_element(laid, {}, [&](const Piece& piece) {
        return counts(piece, cell.ring.front()) ? piece.rank.at(cell.ring.front()) : -1e9;
      });
      cell.plane = near->plane;
      cell.source = near->source;
    }
  }
  std::vector<geometry::Facet> facets;
  std::vector<int> sources;
  for (Cell& cell : merged(std::move(cells))) {
    facets.push_back({std::move(cell.ring), cell.plane, false});
    sources.push_back(cell.source);
  }
  made.surface = Surface(pieces.origin(), std::move(facets));
  look_under(job, ground, pieces, used, laid, made.problems);
  look_for_valleys(job, site, ground, made.surface, sources, made.problems);
  return made;
}

}  // namespace takeoff::levels
