// The ground behind a wall, stretch by stretch: what stone, fill, fabric and pipe are measured by.
#pragma once

#include <algorithm>

#include "takeoff/walls/courses.h"

namespace takeoff::walls {

// A stretch of one column, one leg and one longest layer.
struct Stretch {
  double from = 0;
  double to = 0;
  Column column;
  double radius = 0;    // signed as Leg's
  double leg_from = 0;  // of its leg
  double leg_to = 0;
  double corner_before = 0;  // turn where its leg starts and ends, radians, + outside; 0 no corner
  double corner_after = 0;
  double reach = 0;  // metres behind the face to the end of the longest layer here; 0 none
  double length() const { return to - from; }
};
std::vector<Stretch> stretches(const Profile& profile, const plan::Wall& wall);

// The leveling base as its build-up says. Nothing where none is chosen or the catalogue has none of that name.
struct Pad {
  const catalogue::BuildUp* build_up = nullptr;
  double thickness = 0;  // of all its layers of stone
  double past = 0;       // of the lowest, past front and back
  bool open = false;     // all of its stone open-graded
  double porosity = 0;   // of open stone
};
std::optional<Pad> pad(const plan::Job& job, const plan::Wall& wall);

// How deep the stone, the fill and the earth over them lie. Metres.
struct Behind {
  double depth = 0;        // of the blocks
  double stone_depth = 0;  // of the column, front to back
  double soil_cap = 0;
  bool clean_fill = false;  // the reinforced zone is open-graded stone
};
Behind behind(const plan::Job& job, const plan::Wall& wall, const Blocks& blocks);

// One stretch cut through: column and fill, both `height` high, and `cap` of earth on top.
struct Section {
  double height = 0;
  double cap = 0;
  double column = 0;  // depth of the column; 0 where the zone has swallowed it
  double fill = 0;    // depth of the reinforced fill
  double girth = 0;   // of what a fabric has to go over: back and top of the stone, without its return; 0: no stone
};
Section section(const Profile& profile, const Behind& behind, const Stretch& stretch);

// Lengths of the stretches that are alike, as one term: "0 to 12 ft along the wall", or of several of them.
Working length_of(const plan::Job& job, const std::vector<Stretch>& alike, const plan::ElementId& of);
// Groups of stretches by a number each, in order of the first of each; equal within a micrometre.
struct Alike {
  std::vector<Stretch> stretches;
  std::vector<double> by;
};
template <class Key>
std::vector<Alike> alike(const std::vector<Stretch>& all, Key key) {
  std::vector<Alike> groups;
  for (const Stretch& one : all) {
    const std::vector<double> by = key(one);
    const auto known = std::find_if(groups.begin(), groups.end(), [&by](const Alike& group) {
      for (std::size_t i = 0; i < by.size(); ++i)
        if (by[i] < group.by[i] - 1e-6 || by[i] > group.by[i] + 1e-6) return false;
      return true;
    });
    Alike& group = known == groups.end() ? groups.emplace_back(Alike{{}, by}) : *known;
    group.stretches.push_back(one);
  }
  return groups;
}

// Column, fill, cap of earth and fabric (stone.h).
Share behind_the_blocks(const plan::Job& job, const plan::ElementId& id, const plan::Wall& wall, const Profile& profile,
                        const Blocks& blocks);

// Stone by weight into `share`: placed volume x placed density, with its hours at `rate` where one is named.
// "item-missing" or "density-missing" otherwise.
void add_stone(const plan::Job& job, const catalogue::Id& item, const std::string& text, const plan::ElementId& of,
               const Working& volume, const catalogue::Id& rate, Share& share);

// "1.5 cu yd" or "1.15 m3".
std::string volume_in_words(const plan::Job& job, double cubic_metres);

}  // namespace takeoff::walls
