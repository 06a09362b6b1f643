#include "takeoff/levels/finish.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "plan/footprint.h"
#include "takeoff/levels/falls_from.h"
#include "takeoff/levels/follow.h"
#include "takeoff/levels/merge.h"
#include "takeoff/levels/words.h"

namespace takeoff::levels {

using geometry::Facet;
using geometry::Surface;
using geometry::Vec;
using plan::Finish;
using problem::Severity;

namespace {

constexpr double past_levels_trace = 0.01;  // m2
constexpr double past_levels_reach = 100;   // metres added to the size of the area

std::unexpected<problem::Problem> missing(const char* code, const char* text, const char* mend,
                                          const plan::Ground& ground) {
  return problem::fault(code, text, mend, {ground.element->id, {}, 0, 0, {}});
}

problem::Result<Finished> plane(const Finish& finish, const plan::Ground& ground, Surface pieces) {
  if (!finish.height)
    return missing("finish-height", "the level of its plane is not given", "enter the level at one point", ground);
  const units::Turn turn = units::turn(finish.direction);
  const geometry::Plane made = plane_at(pieces.place(finish.at), finish.height->metres().si(),
                                        {-finish.fall * turn.cosine, -finish.fall * turn.sine});
  std::vector<Facet> facets = pieces.facets();
  for (Facet& facet : facets) facet.plane = made;
  return Finished{Surface(pieces.origin(), merged(std::move(facets))), {}};
}

problem::Result<geometry::Path> line_of(const Finish& finish, const plan::Ground& ground) {
  if (!finish.line)
    return missing("finish-line", "the line that its surface goes by is not drawn", "draw the line", ground);
  auto path = plan::path(*finish.line, plan::mark(ground.element->id));
  if (!path) return std::unexpected(problem::in_element(path.error(), ground.element->id));
  return path;
}

// By the nearest place on a line. What no piece reaches (past the middle of a curve) keeps the height of the piece that
// lies nearest to it.
Finished following(const geometry::Path& path, const Following& how, const Surface& pieces) {
  const std::vector<Piece> all = follow(path, how, pieces);
  std::vector<Facet> facets;
  for (Cell& cell : highest(pieces, all)) {
    if (cell.source < 0) {
      const auto nearest =
          std::ranges::max_element(all, {}, [&](const Piece& piece) { return piece.rank.at(cell.ring.front()); });
      cell.plane = nearest->plane;
    }
    facets.push_back({std::move(cell.ring), cell.plane, false});
  }
  return {Surface(pieces.origin(), merged(std::move(facets))), {}};
}

problem::Result<Finished> two_falls(const Finish& finish, const plan::Ground& ground, const Surface& pieces) {
  const auto path = line_of(finish, ground);
  if (!path) return std::unexpected(path.error());
  if (!finish.height)
    return missing("finish-height", "the level of the line between its two falls is not given",
                   "enter the level at the start of the line", ground);
  const units::Length end = units::Length::nearest(path->length());
  Following how;
  how.heights = {{{}, *finish.height}, {end, finish.height_end.value_or(*finish.height)}};
  how.fall_left = finish.fall;
  how.fall_right = finish.fall_right;
  how.goes_on = true;
  return following(*path, how, pieces);
}

problem::Result<Finished> along(const Finish& finish, const plan::Ground& ground, const Surface& pieces) {
  const auto path = line_of(finish, ground);
  if (!path) return std::unexpected(path.error());
  if (finish.heights.empty())
    return missing("finish-height", "no level along its line is given", "enter the levels along the line", ground);
  Following how;
  how.heights = finish.heights;
  std::ranges::stable_sort(how.heights, {}, &plan::HeightAt::at);
  how.fall_left = -finish.fall;
  how.fall_right = finish.fall;
  return following(*path, how, pieces);
}

void look_at_twist(const plan::Job& job, const plan::Ground& ground, std::span<const geometry::Spot> spots,
                   Finished& made) {
  if (spots.size() != 4) return;
  const double twist = out_of_plane(spots);
  const double most = limit(job, "twist", Bound::greatest, 0.375 * units::metres_per_inch);
  if (twist <= most) return;
  made.problems.push_back(said(Severity::flag, "finish-twist",
                               "its four corners are " + shown(job, twist) +
                                   " out of one plane, more than units can follow (" + shown(job, most) + ")",
                               "change a level, or let it fall in two parts with a ridge or valley between them",
                               ground.element->id));
}

problem::Result<Finished> levels(const plan::Job& job, const plan::Ground& ground, const Surface& pieces,
                                 std::span<const geometry::Spot> spots) {
  if (spots.empty())
    return missing("finish-levels", "its surface goes through finished levels, but none names it",
                   "enter the levels of its corners", ground);
  const geometry::Box box = ground.net.bounds();
  const double size = length(box.high - box.low) / units::Length::steps_per_metre;
  auto through = geometry::through(spots, size + past_levels_reach);
  if (!through) return std::unexpected(problem::in_element(through.error(), ground.element->id));
  const Surface over = geometry::over(*through, pieces);
  Finished made{Surface(over.origin(), merged(over.facets())), {}};
  double past = 0;
  for (const Facet& facet : made.surface.facets())
    if (facet.guess) past += geometry::area(facet.ring);
  if (past > past_levels_trace)
    made.problems.push_back(said(Severity::notice, "finish-past-levels",
                                 shown_area(job, past) + " of it lie past its levels and are taken as level from there",
                                 "enter levels at its corners", ground.element->id));
  look_at_twist(job, ground, spots, made);
  return made;
}

}  // namespace

double out_of_plane(std::span<const geometry::Spot> four) {
  double most = 0;
  for (std::size_t i = 0; i < 4; ++i) {
    std::array<Vec, 4> at;
    std::array<double, 4> z{};
    for (std::size_t k = 0; k < 4; ++k) {
      const geometry::Spot& spot = four[(i + k) % 4];
      at[k] = (1 / units::Length::steps_per_metre) * (spot.at - four[0].at);
      z[k] = spot.height;
    }
    // Three in a line make no plane to be out of.
    if (std::abs(cross(at[1] - at[0], at[2] - at[0])) < 1e-6) continue;
    most = std::max(most, std::abs(z[3] - geometry::plane_through(at[0], z[0], at[1], z[1], at[2], z[2]).at(at[3])));
  }
  return most;
}

problem::Result<Finished> finished(const plan::Job& job, const plan::Site& site, const plan::Ground& ground,
                                   std::span<const geometry::Spot> spots) {
  const Finish& finish = *std::get<plan::PavedArea>(ground.element->kind).finish;
  auto pieces = geometry::pieces(ground.net, ground.net.bounds().low);
  if (!pieces) return std::unexpected(problem::in_element(pieces.error(), ground.element->id));
  switch (finish.way) {
    case Finish::Way::edges: return falls_from(job, site, ground, *pieces);
    case Finish::Way::plane: return plane(finish, ground, std::move(*pieces));
    case Finish::Way::two_falls: return two_falls(finish, ground, *pieces);
    case Finish::Way::along: return along(finish, ground, *pieces);
    case Finish::Way::levels: break;
  }
  return levels(job, ground, *pieces, spots);
}

}  // namespace takeoff::levels
