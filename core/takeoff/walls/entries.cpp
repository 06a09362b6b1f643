#include <algorithm>
#include <cmath>
#include <numbers>

#include "takeoff/edges/notes.h"
#include "takeoff/walls/checking.h"
#include "units/number.h"

namespace takeoff::walls {

namespace {

constexpr double degree = std::numbers::pi / 180;
constexpr double steepest = 50;         // degrees: no earth that a wall holds has more
constexpr double flattest = 0.01;       // degrees
constexpr double lightest = 1;          // kg/m3
constexpr double densest = 10000;       // kg/m3
constexpr double stiffest = 1e6;        // Pa of cohesion
constexpr double heaviest_load = 1e7;   // Pa
constexpr double water_density = 1000;  // kg/m3, fresh

// Blocks slide on stone before that slides on the ground: 29 to 31 degrees of concrete on clean gravel in NAVFAC
// DM-7.02, from memory.
std::optional<Stratum> stone_of_base(const plan::Job& job, const plan::Wall& wall) {
  const catalogue::BuildUp* base = wall.stone ? job.catalogue->build_up(wall.stone->build_up) : nullptr;
  if (!base) return std::nullopt;
  for (const catalogue::Layer& layer : base->layers) {
    const catalogue::Item* item = layer.role == "fabric" ? nullptr : job.catalogue->item(layer.item);
    if (!item) continue;
    const std::optional<double> own = item->number("friction_deg");
    const bool known = own && *own > 0 && *own < steepest;
    Stratum made;
    made.name = "base";
    made.degrees = known ? *own : job.catalogue->number_limit("pad-friction", 30);
    made.phi = made.degrees * degree;
    made.of = known ? item->id : "pad-friction";
    return made;
  }
  return std::nullopt;
}

// Nobody reads three hundred digits.
std::string number(double value, int decimals) {
  return std::abs(value) < 1e9 ? units::show_number(value, decimals) : "beyond all measure";
}

class Reader {
 public:
  Reader(const plan::ElementId& id, Share& share) : id_(id), share_(share) {}

  // Nothing and no word where nothing was entered and nothing is needed.
  std::optional<Stratum> earth(const plan::Earth& entered, const std::string& name, const std::string& field,
                               bool needed, bool cohesion_will_do) {
    if (!needed && entered == plan::Earth{}) return std::nullopt;
    const double phi = entered.friction_deg;
    const bool stiff = cohesion_will_do && phi == 0 && entered.cohesion_pa > 0;
    bool good = true;
    if (!(stiff || (phi > flattest && phi < steepest)))
      good = odd("the friction of the " + name + " is " + number(phi, 1) + " degrees: it has to be over 0 and under " +
                     units::show_number(steepest, 0),
                 field + "/friction_deg");
    if (!(entered.density_kg_m3 > lightest && entered.density_kg_m3 <= densest))
      good = odd("the density of the " + name + " is " + number(entered.density_kg_m3, 0) +
                     " kg/m3: it has to be over 0 and up to " + units::show_number(densest, 0),
                 field + "/density_kg_m3");
    Stratum made;
    if (entered.cohesion_pa < 0)
      odd("the cohesion of the " + name + " is below 0 and counts as 0", field + "/cohesion_pa");
    if (entered.cohesion_pa > stiffest)
      odd("the cohesion of the " + name + " is over 1,000 kPa, which no ground has, and counts as 0",
          field + "/cohesion_pa");
    made.cohesion = entered.cohesion_pa > stiffest ? 0 : std::max(0.0, entered.cohesion_pa);
    made.name = name;
    made.phi = phi * degree;
    made.degrees = phi;
    made.weight = entered.density_kg_m3 * units::gravity_m_s2;
    made.of = id_ + "/" + field;
    return good ? std::optional(made) : std::nullopt;
  }

  double load(double entered, const std::string& name, const std::string& field) {
    if (entered < 0) odd("the " + name + " on the ground behind is below 0 and counts as 0", field);
    if (entered > heaviest_load)
      odd("the " + name + " on the ground behind is over 10,000 kPa and counts as that", field);
    return std::clamp(entered, 0.0, heaviest_load);
  }

  // The strip of fill alone holds nothing back: what lies behind it pushes.
  void assumed(const Entries& with) {
    if (with.retained || !with.infill) return;
    share_.problems.push_back(edges::notice(
        "retained-assumed", "no earth behind the fill is entered, so the checks take all of it as good as the fill",
        "enter loads/retained: friction and density of the ground that stands there", id_));
  }

  std::optional<double> slope(double entered, const Entries& with) {
    if (entered < 0) {
      odd("the slope of the ground behind is below 0 and counts as level", "loads/back_slope_deg");
      return 0;
    }
    for (const std::optional<Stratum>* ground : {&with.infill, &with.retained}) {
      if (!*ground || entered <= (*ground)->degrees) continue;
      odd("the ground behind slopes at " + number(entered, 1) + " degrees, more than the friction " +
              units::show_number((*ground)->degrees, 1) + " of the " + (*ground)->name + ": it would not stand",
          "loads/back_slope_deg");
      return std::nullopt;
    }
    return entered * degree;
  }

 private:
  bool odd(const std::string& text, const std::string& field) {
    share_.problems.push_back(
        edges::fault("wall-loads", text, "correct " + field + ": checks that need it can't be made as it is", id_));
    return false;
  }

  const plan::ElementId& id_;
  Share& share_;
};

}  // namespace

Entries entries(const plan::Job& job, const plan::Wall& wall, const plan::ElementId& id, Share& share) {
  Entries made;
  if (!wall.loads) return made;
  const plan::WallLoads& loads = *wall.loads;
  Reader read(id, share);
  made.of = id + "/loads";
  made.infill = read.earth(loads.infill, "fill", "loads/infill", true, false);
  made.retained = read.earth(loads.retained, "earth behind the fill", "loads/retained", !wall.layers.empty(), false);
  made.foundation = read.earth(loads.foundation, "ground under the base", "loads/foundation", true, true);
  made.live = read.load(loads.live_pa, "live load", "loads/live_pa");
  made.dead = read.load(loads.dead_pa, "dead load", "loads/dead_pa");
  made.slope = read.slope(loads.back_slope_deg, made);
  made.water = loads.water_behind ? water_density * units::gravity_m_s2 : 0;
  made.pad = stone_of_base(job, wall);
  if (loads.retained == plan::Earth{} && wall.layers.empty()) read.assumed(made);
  return made;
}

}  // namespace takeoff::walls
