// From the line and the heights that a person gave to the courses that stand where.
//
// All numbers here are SI doubles: metres along the line as drawn ("station"), metres above the job's datum. Courses
// are numbered from 0 at the bottom of the wall's lowest course; people read them from 1.
#pragma once

#include <optional>
#include <vector>

#include "plan/site.h"
#include "takeoff/line.h"

namespace takeoff::walls {

// Heights along a line, as HeightAt says: straight between, level outside, a step where two share a place.
class Heights {
 public:
  Heights() = default;  // nothing known
  explicit Heights(const std::vector<plan::HeightAt>& given);
  static Heights level(double height);
  bool empty() const { return knots_.empty(); }
  double before(double station) const;         // coming from the start
  double after(double station) const;          // going on from there
  double least(double from, double to) const;  // over the open stretch, its ends from within
  double greatest(double from, double to) const;
  struct Knot {
    double at = 0;
    double height = 0;
    bool operator==(const Knot&) const = default;
  };
  static Heights of(std::vector<Knot> knots);  // in order of `at`
  const std::vector<Knot>& knots() const { return knots_; }
  bool operator==(const Heights&) const = default;

 private:
  std::vector<Knot> knots_;
};

// One leg of the drawn face: a straight or an arc. Bends under 5 degrees and tangencies join legs; corners part them.
struct Leg {
  double from = 0;
  double to = 0;
  double radius = 0;  // 0 straight; + the centre lies behind the face (outside curve), - in front of it (inside curve)
  double corner = 0;  // turn at its end, radians: + outside corner (round the fill), - inside; 0 none
  double bend = 0;    // of a straight leg: sum of 2 tan(A/2) over its own small bends, signed as corner
  double length() const { return to - from; }
  bool operator==(const Leg&) const = default;
};
// Of a closed line the corner between the last leg and the first stands at the last.
std::vector<Leg> legs(const geometry::Path& face, geometry::Side behind);

// Sizes of the chosen block, metres.
struct Unit {
  const catalogue::Item* item = nullptr;
  double length = 0;  // of the face; of a corner unit its long face
  double depth = 0;   // front to back; of a corner unit its short face
  double height = 0;
  double back = 0;     // face at the back of a tapered unit; length otherwise
  double setback = 0;  // each course behind the one below
  double core = 0;     // m3 of voids in one
  double mass = 0;     // kg
  bool operator==(const Unit&) const = default;
};
// What the catalogue says; a problem "wall-block" where a size is missing, 0, or the setback is not under the depth.
std::optional<Unit> unit(const plan::Job& job, const catalogue::Id& id, const std::string& use,
                         const plan::ElementId& of, Share& share);

// A stretch with one lowest and one highest course.
struct Column {
  double from = 0;
  double to = 0;
  int base = 0;  // lowest course
  int top = 0;   // one past the highest
  int courses() const { return top - base; }
  double length() const { return to - from; }
  bool operator==(const Column&) const = default;
};

struct Profile {
  std::vector<Leg> legs;
  bool closed = false;
  double length = 0;
  double datum = 0;  // height of the bottom of course 0
  double course_height = 0;
  double cap_height = 0;        // 0: no cap
  std::vector<Column> columns;  // in order, without gaps, from 0 to length; never empty in a computed profile
  Heights ground;               // in front
  Heights behind;   // ground behind, never empty: the rule's where nothing was given; equal to ground in front
                    // where the wall is free-standing
  int courses = 0;  // highest course + 1
  double level(int course) const { return datum + course * course_height; }  // of its bottom
  double base_level(const Column& c) const { return level(c.base); }
  double top_level(const Column& c) const { return level(c.top); }  // of the blocks
  double buried(const Column& c) const;                             // least depth of its base under the ground in front
  const Column& at(double station) const;
  bool operator==(const Profile&) const = default;
};

// Common practice, from the wall's own heights:
// - Fixed top (the default): blocks end a whole number of courses above the base, z_base = z_top - cap - N h; the rest
//   goes into the ground, never into the cap. Fixed base: the rest shows as the top's distance from what was wanted
//   (notice "wall-rest").
// - Buried: the greatest of `bury_courses` courses, the limit wall-embed (6 in) and exposed height / k by the toe slope
//   (level 20, 3H:1V 10, 2H:1V 7, 1.5H:1V 5; straight between in the slope; from memory of the design manual), at every
//   station. Exposed is what shows of the wanted top, cap included.
// - Base given: its steps are kept, each lowered to a whole course (notice "wall-base-step" when it was not one, within
//   1/16 in); where it buries less than the rule: problem "wall-bury", with the depth and the place. One that slopes is
//   stepped like a base by the rule.
// - Base not given: the step function of whole courses that stays under ground - bury and leaves the least to bury;
//   steps on half-unit modules, runs of at least 2 units and 4 ft (limit wall-step-run); at a step the lower courses
//   run one unit on into the bank. A step in the ground itself is followed the same way.
// - The top steps by whole courses: the least step function not under what was wanted (within 1/16 in), steps on
//   half-unit modules from the wall's lower end unless they were given as steps.
// Bad walls give a problem and no profile: "wall-height" (0 or less, top under base somewhere, more than 60 courses or
// 30 m),
// "wall-no-height" (neither a top nor a height, or a top without the ground in front), "wall-crosses-itself" (the line;
// touching counts). "wall-heights" (heights out of order or past the end) is a notice, and they still count;
// over 10,000 of them are a problem. Imported
// walls with `height` alone stand on level ground at 0.
std::optional<Profile> profile(const plan::Job& job, const plan::Ground& ground, const Unit& block, Share& share);

}  // namespace takeoff::walls
