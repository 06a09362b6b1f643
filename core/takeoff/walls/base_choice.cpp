#include "takeoff/walls/base_choice.h"

#include "takeoff/edges/notes.h"
#include "units/number.h"

namespace takeoff::walls {

int steps_of_base(const Profile& profile) {
  int steps = 0;
  for (std::size_t i = 1; i < profile.columns.size(); ++i) {
    steps += profile.columns[i].base != profile.columns[i - 1].base ? 1 : 0;
  }
  return steps;
}

std::optional<Profile> on_level_base(const Profile& profile) {
  if (steps_of_base(profile) == 0) return std::nullopt;
  Profile level = profile;
  level.columns.clear();
  for (Column column : profile.columns) {
    column.base = 0;
    if (!level.columns.empty() && level.columns.back().top == column.top) {
      level.columns.back().to = column.to;
    } else {
      level.columns.push_back(column);
    }
  }
  return level;
}

Share base_choice(const plan::Job& job, const plan::Ground& ground, const Profile& profile, const Blocks& blocks,
                  double units) {
  Share share;
  const auto* wall = std::get_if<plan::Wall>(&ground.element->kind);
  const std::optional<Profile> level = wall && wall->base.empty() ? on_level_base(profile) : std::nullopt;
  if (!level) return share;
  const Courses laid = lay(*level, blocks, lay_rules(job, *wall, blocks));
  const double more = counted(job, ground, *level, blocks, laid).measures.get("units").value_or(0);
  const int steps = steps_of_base(profile);
  share.problems.push_back(edges::notice(
      "wall-steps",
      "fewest units: the base steps " + std::to_string(steps) + (steps == 1 ? " time" : " times") + " and takes " +
          units::show_grouped(units, 0) + " units; fewest steps: one level base takes " + units::show_grouped(more, 0),
      "give the base one height to build it level, or heights of your own with fewer steps", ground.element->id));
  return share;
}

}  // namespace takeoff::walls
