#include "takeoff/there/kinds.h"

#include <algorithm>
#include <array>

#include "takeoff/edges/notes.h"

namespace takeoff::there {

namespace {

struct KnownKind {
  const char* what;
  double density;  // kg/m3
  double bulking;  // %
  bool rubble;
};
// Common practice; concrete and bulking of broken rock from memory of the Army's earthwork manual.
constexpr std::array known{KnownKind{"concrete", 2400, 50, true},    KnownKind{"asphalt", 2320, 50, false},
                           KnownKind{"unit-paving", 2240, 50, true}, KnownKind{"wall", 2000, 50, true},
                           KnownKind{"coping", 2300, 50, true},      KnownKind{"sod", 1300, 25, false},
                           KnownKind{"stump", 700, 100, false}};

const KnownKind* find(const std::string& what) {
  for (const KnownKind& kind : known)
    if (what == kind.what) return &kind;
  return nullptr;
}

std::string bulking_row(const std::string& what) {
  return what == "sod" || what == "stump" ? what + "-bulking" : "rubble-bulking";
}

}  // namespace

std::optional<double> density(const plan::Job& job, const std::string& what) {
  const KnownKind* kind = find(what);
  const double given = job.catalogue->number_limit("removed-" + what, kind ? kind->density : 0);
  return given > 0 ? std::optional(given) : std::nullopt;
}

bool sawn(const std::string& what) { return what == "concrete" || what == "asphalt"; }

std::optional<Removed> measured(const plan::Job& job, const plan::Ground& ground, Share& share) {
  const auto* what = std::get_if<plan::Removal>(&ground.element->kind);
  const plan::ElementId& id = ground.element->id;
  if (!what || !ground.computed || (ground.drawn.empty() && !ground.path)) return std::nullopt;
  const auto refuse = [&](const char* code, std::string text, std::string mend) {
    share.problems.push_back(edges::fault(code, std::move(text), std::move(mend), id));
    return std::nullopt;
  };
  const std::optional<double> heavy = density(job, what->what);
  if (!heavy)
    return refuse("removal-kind", "what is removed is '" + what->what + "', a kind of which no weight is known",
                  "write concrete, asphalt, unit-paving, wall, coping, sod or stump, or give the catalogue a limit "
                  "removed-" +
                      what->what);
  if (what->fate != "haul" && what->fate != "reuse" && what->fate != "leave")
    return refuse("removal-fate", "it is not said what becomes of it: '" + what->fate + "'",
                  "write haul, reuse or leave");
  if (what->thickness <= plan::Length())
    return refuse("removal-thickness", "its thickness is not known", "probe it or drill a hole, and enter it");
  if (!(what->loss >= 0 && what->loss <= 1))
    return refuse("removal-loss", "the share that breaks is not from 0 to 100 %", "enter a share");
  const bool line = ground.drawn.empty();
  if (line && what->width <= plan::Length())
    return refuse("removal-width", "it is drawn as a line and its width is not known", "enter its width");
  std::optional<Working> length;
  if (line) length = term("length", ground.path->length().si(), units::metre, id);
  const Working area =
      line ? Working::product({*length, term("width", what->width.metres().si(), units::metre, id)}).named("area")
           : Working(term("area", ground.drawn.area().si(), units::square_metre, id));
  const Working volume = Working::product({area, term("thickness", what->thickness.metres().si(), units::metre, id)})
                             .named("volume in place");
  const Working weight = Working::product({volume, term("density of " + what->what, *heavy,
                                                        units::kilogram_per_cubic_metre, "removed-" + what->what)})
                             .named("weight");
  const KnownKind* kind = find(what->what);
  const double swell = std::max(0.0, job.catalogue->number_limit(bulking_row(what->what), kind ? kind->bulking : 50));
  return Removed{what,
                 id,
                 area,
                 length,
                 volume,
                 weight,
                 term("loose for in place", 1 + swell / 100, units::piece, bulking_row(what->what)),
                 kind && kind->rubble ? "rubble" : what->what};
}

}  // namespace takeoff::there
