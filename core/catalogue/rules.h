// Rules as data: limits, junctions, labour rates, stages with their hold points and cautions.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "catalogue/item.h"

namespace catalogue {

// A value that a rule allows, with its source. `unit` is in, ft, %, share, ratio, deg ...; numbers as typed in that
// unit.
struct Limit {
  Id id;
  std::string group;
  Words name;
  std::optional<double> least;
  std::optional<double> greatest;
  std::optional<double> usual;  // the default
  std::string unit;
  std::string source;
  std::string known;  // read, memory, common practice, derived
  std::string notes;
  bool operator==(const Limit&) const = default;
};

// What is built where side_a meets side_b under the condition.
struct Junction {
  Id id;
  std::string side_a;  // paving, coping, kerb, wall face, pillar ...
  std::string side_b;
  std::string condition;
  Words name;
  std::string built;
  std::optional<units::Length> joint;
  Id rod;
  Id sealant;
  Id filler;  // "(joint of the area)" is kept as the word `area`
  Id edge;
  std::string other;
  std::string source;
  std::string known;
  std::string notes;
  bool operator==(const Junction&) const = default;
};

// Person-hours per SI unit of work.
struct Rate {
  Id id;
  std::string stage;
  std::string line_kind;
  Words name;
  std::string si_unit;  // m, m2, m3, t, piece, h, job, load, pallet
  double hours_per_si_unit = 0;
  std::string crew;  // "1 lab-layer + 1/2 lab-labourer"
  Id machine;
  std::string condition;
  std::string source;
  std::string known;
  std::string notes;
  bool operator==(const Rate&) const = default;
};

struct Supplier {
  Id id;
  Words name;
  std::string sells;
  units::Money delivery;
  int lead_days = 0;
  std::string least_order;
  std::string notes;
  bool operator==(const Supplier&) const = default;
};

// What must be looked at before it is covered. `applies` is a rule over the plan by name: always, pool, open-base,
// building, wall, dig, slab, sealed-joint, pipe, sleeve, coping, laid-units ... (takeoff/stage.h).
struct HoldPoint {
  std::string stage;
  std::string look_at;
  std::string limit;
  std::string before;
  std::string who;
  std::string source;
  std::string applies;
  bool operator==(const HoldPoint&) const = default;
};

// What a mark on the site (or a building, a pool, a tree) asks of what is built or dug near it. It holds within the
// greater of `distance` and `per_size` x the mark's own size (trunk of a tree, depth of a footing, a shell or a
// service).
struct SiteRule {
  Id id;
  std::string mark;     // a site mark's `what`, or tree, building, pool
  std::string against;  // what it looks at: dig, paving, wall, base, stand (something to stand on), any ...
  std::optional<units::Length> distance;
  double per_size = 0;
  std::string severity;  // problem, flag, notice
  std::string text;      // what it forbids or asks
  std::string who;       // decides
  std::string source;
  bool operator==(const SiteRule&) const = default;
};

struct Caution {
  std::string stage;
  std::string text;
  std::string who;
  std::string source;
  std::string applies;
  bool operator==(const Caution&) const = default;
};

}  // namespace catalogue
