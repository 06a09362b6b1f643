// What everything that digs writes into, and how it says it.
#pragma once

#include "takeoff/ground/earth.h"
#include "takeoff/ground/lie.h"

namespace takeoff::ground {

struct Digger {
  const plan::Job& job;
  const plan::Site& site;
  const Bodies& bodies;
  const levels::Terrain& terrain;
  Lie lie;
  Excavation made;
  std::vector<plan::ElementId> by_one_depth;  // what had no levels, said once

  void measured(const plan::ElementId& id, std::string name, double value);
  void task(Stage stage, const std::string& rate, std::string text, std::vector<plan::ElementId> of, Working working);
  void say(problem::Severity severity, std::string code, std::string text, std::string mend, const plan::ElementId& of);
  std::string digging_rate() const;
  std::string trench_rate() const;
  double limit(const char* id, double otherwise_inches) const;  // metres
  std::string shown(double metres) const;
  std::string volume(double cubic_metres) const;    // "1.50 cu yd"
  std::string surface(double square_metres) const;  // "12.5 sq ft"
  // Adds the hole with its task at the rate for what it is; one without a volume is left out.
  void dug(Dug hole);
  // Topsoil off ground that nothing had taken before, kept apart.
  void topsoil_off(const std::vector<plan::ElementId>& of, double square_metres);
};

std::string names(const std::vector<plan::ElementId>& of);  // "A1, A2"

// Each from what the ones before left.
void dig_areas(Digger& digger);
void dig_pools(Digger& digger);
void dig_walls(Digger& digger);
void dig_steps(Digger& digger);
void dig_pillars(Digger& digger);
void dig_runs(Digger& digger);

// "length 31.5 ft x mean of its cross-sections 4.2 sq ft", named `name`.
Working of_sections(const std::string& name, double length, double volume, const plan::ElementId& of);

}  // namespace takeoff::ground
