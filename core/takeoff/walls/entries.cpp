#include <algorithm>
#include <numbers>

#include "takeoff/edges/notes.h"
#include "takeoff/walls/checking.h"
#include "units/number.h"

namespace takeoff::walls {

namespace {

constexpr double degree = std::numbers::pi / 180;
constexpr double steepest = 50;  // degrees: no earth that a wall holds has more

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
    if (!(stiff || (phi > 0 && phi < steepest)))
      good = odd("the friction of the " + name + " is " + units::show_number(phi, 1) +
                     " degrees: it has to be over 0 and under " + units::show_number(steepest, 0),
                 field + "/friction_deg");
    if (!(entered.density_kg_m3 > 0))
      good = odd("the density of the " + name + " is " + units::show_number(entered.density_kg_m3, 0) +
                     " kg/m3: it has to be over 0",
                 field + "/density_kg_m3");
    Stratum made;
    if (entered.cohesion_pa < 0)
      odd("the cohesion of the " + name + " is below 0 and counts as 0", field + "/cohesion_pa");
    made.cohesion = std::max(0.0, entered.cohesion_pa);
    made.name = name;
    made.phi = phi * degree;
    made.degrees = phi;
    made.weight = entered.density_kg_m3 * units::gravity_m_s2;
    made.of = id_ + "/" + field;
    return good ? std::optional(made) : std::nullopt;
  }

  double load(double entered, const std::string& name, const std::string& field) {
    if (entered < 0) odd("the " + name + " on the ground behind is below 0 and counts as 0", field);
    return std::max(0.0, entered);
  }

  std::optional<double> slope(double entered, const Entries& with) {
    if (entered < 0) {
      odd("the slope of the ground behind is below 0 and counts as level", "loads/back_slope_deg");
      return 0;
    }
    for (const std::optional<Stratum>* ground : {&with.infill, &with.retained}) {
      if (!*ground || entered <= (*ground)->degrees) continue;
      odd("the ground behind slopes at " + units::show_number(entered, 1) + " degrees, more than the friction " +
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

Entries entries(const plan::Wall& wall, const plan::ElementId& id, Share& share) {
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
  return made;
}

}  // namespace takeoff::walls
