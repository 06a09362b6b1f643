#include "takeoff/walls/saw.h"

#include <algorithm>
#include <cmath>
#include <map>

#include "takeoff/edges/notes.h"
#include "units/number.h"

namespace takeoff::walls {

namespace {

struct Sawn {
  std::int64_t cuts = 0;
  double metres = 0;
};

double metres_of(const catalogue::Item& saw, const char* detail) { return saw.number(detail).value_or(0) / 1000; }

double depth_of(const catalogue::Item& saw) {
  const double depth = metres_of(saw, "cut_depth_mm");
  const double radius = metres_of(saw, "blade_diameter_mm") / 2;
  return radius > 0 ? std::min(depth, radius) : depth;
}

int times(Passes passes) { return passes == Passes::two || passes == Passes::both_sides ? 2 : 1; }

std::string counted(std::int64_t cuts) { return std::to_string(cuts) + (cuts == 1 ? " cut" : " cuts"); }

std::string long_length(const plan::Job& job, double metres) {
  if (job.heading.units == units::System::us) return units::show_number(metres / units::metres_per_foot, 1) + " ft";
  return units::show_number(metres, 2) + " m";
}

problem::Problem listed(const plan::Job& job, const catalogue::Item* saw, double thickness, const Sawn& sawn) {
  const std::string what = long_length(job, sawn.metres) + " of saw cut (" + counted(sawn.cuts) + ") through " +
                           edges::shown(job, thickness);
  if (!saw) return edges::notice("saw-list", what, "choose a saw to see how it gets through", {});
  const Passes how = passes(*saw, thickness);
  if (how != Passes::too_thick)
    return edges::notice("saw-list", what + " with " + saw->id + ", " + word(how), "see the cut list for each", {});
  if (depth_of(*saw) <= 0)
    return edges::flag("saw-depth", what + ", and " + saw->id + " has no depth of cut",
                       "give cut_depth_mm in the catalogue, or choose another saw", {});
  return edges::flag("saw-depth",
                     what + ", and " + saw->id + " cuts " + edges::shown(job, depth_of(*saw)) +
                         " deep: not through, even from both sides",
                     "choose a larger saw or split the pieces; the crew lead decides", {});
}

}  // namespace

Passes passes(const catalogue::Item& saw, double thickness) {
  constexpr double play = 1e-6;
  const double depth = depth_of(saw);
  if (depth <= 0) return Passes::too_thick;
  if (thickness <= depth + play) return Passes::one;
  double twice = metres_of(saw, "two_pass_depth_mm");
  if (const double radius = metres_of(saw, "blade_diameter_mm") / 2; radius > 0) twice = std::min(twice, radius);
  if (thickness <= twice + play) return Passes::two;
  return thickness <= 2 * depth + play ? Passes::both_sides : Passes::too_thick;
}

std::string word(Passes passes) {
  switch (passes) {
    case Passes::one: return "one pass";
    case Passes::two: return "two passes, deeper on the second";
    case Passes::both_sides: return "from both sides";
    case Passes::too_thick: return "too thick";
  }
  return {};
}

Share saw_list(const plan::Job& job, const std::vector<Cut>& cuts) {
  Share share;
  std::map<std::int64_t, Sawn> by_thickness;  // tenths of a millimetre
  for (const Cut& cut : cuts) {
    if (cut.count <= 0 || cut.length <= 0 || cut.thickness <= 0) continue;
    Sawn& sawn = by_thickness[std::llround(cut.thickness * 10000)];
    sawn.cuts += cut.count;
    sawn.metres += cut.count * cut.length;
  }
  if (by_thickness.empty()) return share;
  const catalogue::Item* saw =
      job.choices.saw.empty() ? nullptr : edges::wanted(job, job.choices.saw, "the cuts", {}, share);
  double blade = 0;
  for (const auto& [tenths, sawn] : by_thickness) {
    const double thickness = static_cast<double>(tenths) / 10000;
    const std::string name = units::show_number(static_cast<double>(tenths) / 10, 1);
    share.measures.put("saw_cut_m:" + name, sawn.metres);
    share.measures.put("saw_cuts:" + name, static_cast<double>(sawn.cuts));
    blade += sawn.metres * (saw ? times(passes(*saw, thickness)) : 1);
    share.problems.push_back(listed(job, saw, thickness, sawn));
  }
  share.measures.put("saw_blade_m", blade);
  share.facts.push_back("cuts");
  share.problems.push_back(edges::notice(
      "saw-dust",
      "cutting these makes silica dust: cut wet, or with dust capture at the blade (29 CFR 1926.1153, Table 1)",
      "pick dust and dried slurry up wet or with a filtered vacuum, never by dry sweeping", {}));
  return share;
}

}  // namespace takeoff::walls
