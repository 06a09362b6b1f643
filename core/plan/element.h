// What can be drawn: an element is a stable id, a name and one of the kinds. It keeps its points as drawn, valid or
// not.
#pragma once

#include <map>
#include <variant>

#include "plan/levels.h"
#include "plan/taped.h"
#include "plan/there.h"
#include "plan/water.h"

namespace plan {

// The mark by which geometry knows an element (FNV-1a of the id, 64 bit; never 0): the same on every machine and in
// every job.
std::uint64_t mark(const ElementId& id);

// Which unit lies in which size of the pattern, where it starts and which way it runs.
struct Laying {
  Id pattern;
  std::map<std::string, Id> units;  // size of the pattern -> item
  geometry::Point start;            // corner of cell (0, 0)
  units::Angle direction;           // of the area; the pattern's own direction is added
  std::optional<Length> joint;      // the items' own otherwise
  bool operator==(const Laying&) const = default;
};

// One course of units along the outline. soldier: long axis across the edge; sailor: along it.
struct BorderCourse {
  enum class Way { soldier, sailor } way = Way::soldier;
  enum class Corner { mitre, butt, block } corner = Corner::mitre;
  enum class Where {
    outside,
    everywhere,
    islands
  } where = Where::outside;  // along the drawn outer ring, or round islands and what cuts it too
  Id item;
  std::optional<Length> joint;
  bool operator==(const BorderCourse&) const = default;
};

// Filler from the top of the joint down: the first takes `depth`, the last the rest.
struct JointFill {
  Id item;
  std::optional<Length> depth;
  bool operator==(const JointFill&) const = default;
};

// What a person says about one edge of the drawing instead of the junction table: `junction` is a junction's id, or
// "none".
struct EdgeChoice {
  int edge = 0;  // number in the drawing, rings counted on
  Id junction;
  bool operator==(const EdgeChoice&) const = default;
};

struct PavedArea {
  DrawnShape outline;
  Id build_up;  // empty: nothing chosen
  std::optional<Laying> laying;
  std::vector<BorderCourse> borders;  // from the outside in
  std::vector<JointFill> joint_fill;
  std::vector<EdgeChoice> edges;
  std::optional<double> taped_area_m2;  // a person's correction, shown as such in the working
  bool vehicles = false;
  bool access = false;           // an access route: its slopes have limits of their own
  std::optional<Finish> finish;  // its surface; empty: levels are not chosen
  ElementId water_to;            // the run that takes what runs off; empty: where the surface leads it
  bool operator==(const PavedArea&) const = default;
};

struct Coping {
  Id item;
  Length overhang;              // over the water's edge
  std::optional<Length> joint;  // between pieces; the item's own otherwise
  enum class Make {
    any,
    uncut,
    tapered,
    radius
  } make = Make::any;  // on curves: the person's pick; any is the least cutting that fits
  bool operator==(const Coping&) const = default;
};

// Stone round the shell, the concrete collar under the coping, the conductor ring: each only where it is given.
struct Surround {
  Id item;
  Length clearance;
  Length depth;
  bool operator==(const Surround&) const = default;
};
struct Collar {
  Id concrete;
  Id bar;
  Length width;
  Length thickness;
  std::vector<Length> rings;  // how far out each bar ring lies
  bool operator==(const Collar&) const = default;
};
struct Bonding {
  Id item;
  Length out;
  Length depth;
  int ties = 4;
  bool operator==(const Bonding&) const = default;
};

struct Pool {
  DrawnShape outline;  // the water's edge
  std::optional<Coping> coping;
  Length shell;  // wall thickness
  std::optional<Surround> surround;
  std::optional<Collar> collar;
  std::optional<Bonding> bonding;
  bool as_built = false;               // the water's edge was measured again after the shell was set
  std::optional<Length> coping_level;  // top of the coping, level all round
  bool operator==(const Pool&) const = default;
};

struct Building {
  DrawnShape outline;
  std::string face;                     // masonry, siding ...
  std::optional<Length> footing_depth;  // below the existing ground
  // Heights: of the floor inside, and of the lowest of what must stay above the paving.
  std::optional<Length> floor;
  std::optional<Length> sill;
  std::optional<Length> weep;
  std::optional<Length> siding;
  std::optional<Length> vent;
  bool operator==(const Building&) const = default;
};

struct KeepOut {
  DrawnShape outline;
  std::string what;              // pillar, column, planter, tree, equipment, inlet
  std::optional<Length> trunk;   // diameter, of a tree
  std::optional<Pillar> pillar;  // built here of blocks; otherwise it stands already or is somebody else's
  bool operator==(const KeepOut&) const = default;
};

struct Footing {
  Id concrete;
  Length width;
  Length thickness;
  Length haunch;
  bool operator==(const Footing&) const = default;
};
struct Weeps {
  Id item;
  std::string kind;
  std::optional<Length> spacing;
  bool operator==(const Weeps&) const = default;
};
struct Spikes {
  Id item;
  Length spacing;
  Length on_curves;
  bool operator==(const Spikes&) const = default;
};

// Restraint, kerb or edging along a line. `paving` says on which side of the line, walked as drawn, the paving lies;
// units of a kerb stand on the other side of the line.
struct EdgeRun {
  DrawnLine line;
  std::string what;  // restraint, kerb, edging
  Id item;
  Id item_on_curves;  // empty: the same
  geometry::Side paving = geometry::Side::left;
  std::optional<Footing> footing;
  std::optional<Weeps> weeps;
  std::optional<Spikes> spikes;
  Length upstand;  // above the paving; 0 is flush
  bool operator==(const EdgeRun&) const = default;
};

struct Note {
  geometry::Point at;
  std::string text;
  bool operator==(const Note&) const = default;
};
struct Dimension {
  geometry::Point from;
  geometry::Point to;
  bool operator==(const Dimension&) const = default;
};
using Kind = std::variant<PavedArea, Pool, Wall, Steps, Building, KeepOut, EdgeRun, DrainRun, Level, Feature, Removal,
                          SiteMark, Protection, Note, Dimension, SitePlan, LevelBook, BaseLine, TapeBook>;

struct Element {
  ElementId id;
  std::string name;
  Kind kind;
  bool operator==(const Element&) const = default;
};

// "paved-area", "pool", "edge-run" ... : the word of the files.
std::string kind_name(const Kind& kind);

}  // namespace plan
