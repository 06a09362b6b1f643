#include <algorithm>

#include "takeoff/edges/notes.h"
#include "takeoff/walls/base_choice.h"
#include "takeoff/walls/caps.h"
#include "takeoff/walls/checks.h"
#include "takeoff/walls/reinforcement.h"
#include "takeoff/walls/stone.h"
#include "takeoff/walls/walls.h"
#include "units/number.h"

namespace takeoff::walls {

namespace {

// Thickness of the base under the wall, as its build-up gives it.
double base_thickness(const plan::Job& job, const plan::Wall& wall) {
  const catalogue::BuildUp* build_up = wall.stone ? job.catalogue->build_up(wall.stone->build_up) : nullptr;
  double thickness = 0;
  if (build_up)
    for (const catalogue::Layer& layer : build_up->layers)
      if (layer.thickness) thickness += layer.thickness->metres().si();
  return thickness;
}

// Units are laid and kept one by one: of 10 km of the tallest wall that is reckoned with there are 1.3 million.
constexpr double most_units = 2'000'000;

bool too_many(const Profile& profile, const Unit& block, const plan::ElementId& of, Share& share) {
  double units = 0;
  for (const Column& column : profile.columns) units += column.length() * column.courses() / block.length;
  if (units <= most_units) return false;
  share.problems.push_back(edges::fault(
      "wall-too-large",
      "the wall has about " + units::show_number(units / 1e6, 1) + " million blocks, and none is laid over 2 million",
      "divide the wall, or look at the scale of the drawing", of));
  return true;
}

void heights(const plan::Job& job, const plan::Wall& wall, const Profile& profile, Measures& measures) {
  const auto tallest = std::ranges::max_element(profile.columns, {}, &Column::courses);
  const double units = tallest->courses() * profile.course_height;
  double buried = profile.buried(profile.columns.front());
  for (const Column& column : profile.columns) buried = std::min(buried, profile.buried(column));
  measures.put("height_of_units_m", units);
  measures.put("height_from_base_m", units + base_thickness(job, wall));
  measures.put("height_with_cap_m", units + base_thickness(job, wall) + profile.cap_height);
  measures.put("buried_m", buried);
}

}  // namespace

Share wall(const plan::Job& job, const plan::Site& site, const plan::Ground& ground) {
  std::shared_ptr<const Courses> none;
  return wall(job, site, ground, none);
}

Share wall(const plan::Job& job, const plan::Site& site, const plan::Ground& ground,
           std::shared_ptr<const Courses>& laid) {
  const auto* what = std::get_if<plan::Wall>(&ground.element->kind);
  if (!what || what->existing || !ground.path) return {};
  const plan::ElementId& id = ground.element->id;
  Share share;
  share.measures.element = id;
  share.measures.put("face_length_m", ground.path->length().si());
  if (!edges::wanted(job, what->block, "the wall", id, share)) return share;
  const std::optional<Blocks> chosen = chosen_blocks(job, *what, id, share);
  const std::optional<Profile> made = chosen ? profile(job, ground, chosen->block, share) : std::nullopt;
  if (!made) return share;
  const Blocks& blocks = *chosen;
  if (too_many(*made, blocks.block, id, share)) return share;
  laid = std::make_shared<const Courses>(lay(*made, blocks, lay_rules(job, *what, blocks), laid.get()));
  const Courses& courses = *laid;
  for (const problem::Problem& said : courses.problems) share.problems.push_back(problem::in_element(said, id));
  heights(job, *what, *made, share.measures);
  share.add(counted(job, ground, *made, blocks, courses));
  share.add(base_choice(job, ground, *made, blocks, share.measures.get("units").value_or(0)));
  share.add(stone(job, ground, *made, blocks, courses));
  share.add(pipe(job, ground, *made, blocks));
  share.add(reinforcement(job, site, ground, *made, blocks));
  share.add(caps(job, ground, *made, blocks, &courses));
  share.add(checks(job, ground, *made, blocks));
  share.add(flags(job, site, ground, *made, blocks));
  return share;
}

}  // namespace takeoff::walls
