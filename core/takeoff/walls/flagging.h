// What the flags of a wall share (checks.h).
#pragma once

#include "takeoff/walls/courses.h"

namespace takeoff::walls {

struct Flagging {
  const plan::Job& job;
  const plan::Site& site;
  const plan::Ground& ground;
  const plan::Wall& wall;
  const Profile& profile;
  const Blocks& blocks;
  const plan::ElementId& id() const { return ground.element->id; }
  // Bottom of the lowest unit to the top of the blocks, at a place along the wall.
  double height_at(double station) const { return profile.at(station).courses() * profile.course_height; }
  void raise(const std::string& code, const std::string& text, const std::string& mend, Share& share) const;
};

// Another wall whose earth bears on this one's, or the other way round.
struct Tier {
  const plan::Ground* other = nullptr;
  bool above = true;
  double distance = 0;  // between the faces, less the body of the lower
  double station = 0;
  std::optional<double> height;  // of the other above its ground, where its heights are known
};
// Each wall nearer than the limit tier-distance (2) times the lower one's height. Of two that are both to be built the
// lower one names the upper; one that stands already has nobody to name it but this.
std::vector<Tier> tiers(const Flagging& all);

// Pool, drive, building, other things within twice the height of the back; the pool's own 1:1 line.
void flag_neighbours(const Flagging& all, Share& share);
// A walking surface near the top of a drop; something to stand on near a pool's barrier.
void flag_people(const Flagging& all, Share& share);

// "A1 Terrace": what people call it.
std::string called(const plan::Element& element);

}  // namespace takeoff::walls
