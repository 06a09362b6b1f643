// Layers of reinforcement as the engineer gave them, and how they come off the roll.
#pragma once

#include "takeoff/walls/courses.h"

namespace takeoff::walls {

// Where a layer can lie: between its places along the wall, where its course is there to lie on. In order.
struct Extent {
  double from = 0;
  double to = 0;
  bool operator==(const Extent&) const = default;
};
std::vector<Extent> extents(const Profile& profile, const plan::Reinforcement& layer);
// Its course stands there and has another on top: what lies on the highest course is bought as it was given, but has
// nothing over it that holds it.
bool held_down(const Column& column, const plan::Reinforcement& layer);
// False for what the takeoff refuses: no such roll, laid the weak way, no longer than the block is deep or longer than
// the roll, no coverage. Such a layer is neither bought nor counted in any check.
bool holds_at_all(const plan::Job& job, const plan::Reinforcement& layer, const Unit& block);

// Which way a roll is strong, as its detail strong_direction says; neither where it says nothing.
struct Strong {
  bool along = false;
  bool across = false;
};
Strong strong(const catalogue::Item& item);

// One layer on one leg of the wall. Legs that run into each other without a corner share their strips: each has those
// that begin on it.
struct LayerPart {
  int layer = 0;    // number in Wall::layers
  double from = 0;  // stations
  double to = 0;
  double face = 0;    // metres along the line as drawn
  double past = 0;    // metres more past an inside corner: a quarter of the wall's height there (association wall
                      // guide, from memory); which of the two legs runs on alternates layer by layer
  double radius = 0;  // signed as Leg's
  int strips = 0;     // side by side: ceil(face / roll width), of the covered share
  double last = 0;    // metres: width of the last strip before a corner or an end; the roll's otherwise
  int gaps = 0;       // pieces more, on the next course, over the gaps of an inside curve
};
// A layer rolled out along the wall has no parts. `roll` > 0.
std::vector<LayerPart> layer_parts(const Profile& profile, const plan::Wall& wall, std::size_t layer, double roll);

// Gap (inside curve) or overlap (outside curve) of two strips' tails: w L / R. Derived.
double tail(double strip, double length, double radius);

// What is cut off rolls of one item. Every piece is cut to its length across the wall and none is spliced.
struct RollCuts {
  const catalogue::Item* item = nullptr;
  struct Pieces {
    units::Length length;
    int strips = 0;                           // pieces needed, each a roll wide or less
    int halves = 0;                           // of these, last strips of at most half a roll
    double covered = 0;                       // m2 that the design asks for
    int saved() const { return halves / 2; }  // two halves out of one
    int bought() const { return strips - saved(); }
  };
  std::vector<Pieces> pieces;  // by length, longest first
  int rolls = 0;
  int bound = 0;         // proven: no plan does with fewer
  std::string in_words;  // "1 roll: 21 x 7'; 1 roll: 7 x 7'"
};
void plan_rolls(RollCuts& cuts, units::System system);

// Strips of every layer cut from rolls: the strong way runs from the face into the fill, no splice in it; a last strip
// of at most half a roll may come from the other half of one (grid_strips counts before that, grid_strips_saved what it
// saves). At a corner both zones are counted in full.
//
// Warnings, never a design. Problems: "layer-along" (rolled out along the wall where the item is not strong across its
// roll or not wide enough, or the other way round), "layer-roll" (longer than the roll), "layer-course" (no course to
// lie on; a flag where only a part of it has none), "layer-coverage", "layer-length" of 0 or of no
// more than the block, "layer-item" (no roll size, or one of which tens of thousands would be wanted). Flags:
// "layer-spacing" (over 24 in, limit grid-spacing, or twice the depth, between layers and to base and top),
// "layer-length" (under the larger of 4 ft and 0.6 H of its own place), "layer-top" (on the highest course: no check
// counts it), "layer-strong" (the roll names no strong way), "layer-meets" (a pool, pipe, building, pillar or another
// wall's zone in its own zone). Notices: "layer-corner" (one course up, or 3 in of fill between, at outside corners),
// "layer-overlap", "layer-gap". Measures grid_strips, grid_strips_saved, grid_roll_length_m, grid_rolls,
// grid_design_area_m2.
Share reinforcement(const plan::Job& job, const plan::Site& site, const plan::Ground& ground, const Profile& profile,
                    const Blocks& blocks);

}  // namespace takeoff::walls
