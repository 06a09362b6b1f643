// One rule held by one mark.
#pragma once

#include "takeoff/levels/terrain.h"
#include "takeoff/line.h"
#include "takeoff/there/subjects.h"

namespace takeoff::there {

// A site mark, a tree, a building or a pool: what has rules.
struct Mark {
  const plan::Ground* ground = nullptr;
  std::string what;
  Drawn shape;
  // Its line bounds the ground that may be used (lot-line, setback): drawn closed, all beyond it is out; drawn open,
  // only what it crosses is seen. A barrier is a line even where it is drawn closed.
  bool bounds = false;
  bool hollow = false;
  std::optional<double> size;  // metres: trunk, depth of a footing, a shell, a service
};
std::optional<Mark> mark(const plan::Ground& ground);

// Where a rule holds: inside the ground, or outside of it.
struct Zone {
  geometry::Region ground;
  bool outside = false;
  bool contains(geometry::Point point) const { return ground.contains(point) != outside; }
};
problem::Result<Zone> zone(const Mark& mark, double reach);
problem::Result<geometry::Region> part_in(const geometry::Region& region, const Zone& zone);

// How far a rule reaches from this mark, metres: the greater of its distance and per_size x the mark's size.
double reach(const catalogue::SiteRule& rule, const Mark& mark);

// The subjects that the rule names and whose box comes near enough.
std::vector<const Subject*> asked(const catalogue::SiteRule& rule, const Mark& mark,
                                  const std::vector<Subject>& subjects);

problem::Severity severity(const catalogue::SiteRule& rule);

// What of the subjects lies in the zone, said as one problem "site-<rule id>" with areas, lengths and counts; nothing
// where nothing does. A rule that goes by a size that is not known, with no distance of its own, names what it would
// have looked at.
void hold(const plan::Job& job, const plan::Site& site, const catalogue::SiteRule& rule, const Mark& mark,
          const std::vector<Subject>& subjects, Share& share);

// Rules that look at no shape: `machine`, `tight`, `barrow` (a gate or path narrower than `distance` under that
// access), `no-run` (a downspout without a drain run, on paving), `level` (a barrier less than `distance` above what is
// finished beside it). False: the rule is none of these.
bool hold_other(const plan::Job& job, const catalogue::SiteRule& rule, const Mark& mark,
                const std::vector<Subject>& subjects, const levels::Terrain& terrain, Share& share);

// The problem of a rule, all but the finding itself.
problem::Problem said(const plan::Job& job, const catalogue::SiteRule& rule, const Mark& mark,
                      const std::string& finding, std::optional<problem::Xy> at);

}  // namespace takeoff::there
