#include "takeoff/walls/face.h"

#include <algorithm>
#include <cmath>

#include "takeoff/walls/courses.h"

namespace takeoff::walls {

FaceBack::FaceBack(FaceLine line, Profile profile, double setback)
    : line_(std::move(line)), profile_(std::move(profile)), setback_(setback) {}

std::optional<FaceBack> FaceBack::of(const plan::Job& job, const plan::Ground& ground) {
  const auto* wall = std::get_if<plan::Wall>(&ground.element->kind);
  if (!wall || wall->existing || wall->block.empty() || !ground.path) return std::nullopt;
  Share unsaid;  // the wall's own trade says what is wrong with it
  const std::optional<Blocks> blocks = chosen_blocks(job, *wall, ground.element->id, unsaid);
  if (!blocks || blocks->block.setback <= 0) return std::nullopt;
  std::optional<Profile> made = profile(job, ground, blocks->block, unsaid);
  if (!made) return std::nullopt;
  std::vector<double> stations;
  for (const Column& column : made->columns) stations.push_back((column.from + column.to) / 2);
  return FaceBack(FaceLine(*ground.path, wall->behind, std::move(stations)), std::move(*made), blocks->block.setback);
}

// The course that the level of the ground in front lies in; a level on a bed belongs to the course above.
double FaceBack::at(double station) const {
  const double above = profile_.ground.after(station) - profile_.datum;
  return setback_ * std::max(0.0, std::floor(above / profile_.course_height + 1e-9));
}

double FaceBack::along(const geometry::Curve& curve, double reach) const {
  const std::vector<Beside> places = line_.beside({curve}, reach);
  double sum = 0;
  for (const Beside& place : places) sum += at(place.station);
  return places.empty() ? 0 : sum / static_cast<double>(places.size());
}

}  // namespace takeoff::walls
