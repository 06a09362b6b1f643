#include <algorithm>
#include <set>

#include "takeoff/edges/notes.h"
#include "takeoff/ground/digger.h"
#include "units/number.h"
#include "units/quantity.h"

namespace takeoff::ground {

using problem::Severity;

void Digger::measured(const plan::ElementId& id, std::string name, double value) {
  for (Measures& known : made.measures)
    if (known.element == id) return known.put(std::move(name), value);
  made.measures.push_back({id, {}});
  made.measures.back().put(std::move(name), value);
}

void Digger::task(Stage stage, const std::string& rate, std::string text, std::vector<plan::ElementId> of,
                  Working working) {
  made.share.tasks.push_back({stage, rate, std::move(text), std::move(of), std::move(working), 1, {}});
}

void Digger::say(Severity severity, std::string code, std::string text, std::string mend, const plan::ElementId& of) {
  made.share.problems.push_back(edges::said(severity, std::move(code), std::move(text), std::move(mend), of));
}

std::string Digger::digging_rate() const {
  if (job.choices.access == "hand") return "dig-hand";
  return job.choices.access == "tight" ? "dig-tight" : "dig-open";
}

std::string Digger::trench_rate() const { return job.choices.access == "hand" ? "trench-hand" : "trench-machine"; }

double Digger::limit(const char* id, double otherwise_inches) const {
  return job.catalogue
      ->length_limit(id, units::Length::nearest(units::Metres(otherwise_inches * units::metres_per_inch)))
      .metres()
      .si();
}

std::string Digger::shown(double metres) const { return edges::shown(job, metres); }

std::string Digger::volume(double cubic_metres) const {
  if (job.heading.units == units::System::us)
    return units::show_number(cubic_metres / units::cubic_metres_per_cubic_yard, 2) + " cu yd";
  return units::show_number(cubic_metres, 2) + " m3";
}

std::string Digger::surface(double square_metres) const {
  if (job.heading.units == units::System::us)
    return units::show_number(square_metres / units::square_metres_per_square_foot, 1) + " sq ft";
  return units::show_number(square_metres, 2) + " m2";
}

void Digger::dug(Dug hole) {
  if (!hole.bank || (hole.bank->amount().value < 1e-9 && !hole.fill)) return;
  if (!hole.topsoil) {
    const std::string rate =
        hole.by_hand ? (hole.trench ? "trench-hand" : "dig-hand") : (hole.trench ? trench_rate() : digging_rate());
    task(hole.stage, rate, hole.text + ", bank volume", hole.of, *hole.bank);
  }
  made.dug.push_back(std::move(hole));
}

std::string names(const std::vector<plan::ElementId>& of) {
  std::string all;
  for (const plan::ElementId& id : of) all += (all.empty() ? "" : ", ") + id;
  return all;
}

void Digger::topsoil_off(const std::vector<plan::ElementId>& of, double square_metres) {
  const double thick = job.choices.soil.topsoil.metres().si();
  if (thick <= 0 || square_metres < 1e-9) return;
  const Working ground = term("ground dug", square_metres, units::square_metre, names(of));
  task(Stage::dig, "strip-sod", "topsoil of " + names(of), of, ground);
  dug({.text = "topsoil of " + names(of),
       .of = of,
       .bank = Working::product({ground, term("topsoil", thick, units::metre, "soil/topsoil")}).named("topsoil"),
       .deepest = thick,
       .topsoil = true});
}

Working of_sections(const std::string& name, double length, double volume, const plan::ElementId& of) {
  return Working::product(
             {term("length", length, units::metre, of),
              term("mean of its cross-sections", length > 0 ? volume / length : 0, units::square_metre, of)})
      .named(name);
}

namespace {

// What a depth asks of those who work in it. The limits are those of the construction standard; which soil it is and
// what protects the people in it the competent person says.
struct Depths {
  Digger& d;
  double out = d.limit("dig-egress", 48);
  double protect = d.limit("dig-protect", 60);
  double engineer = d.limit("dig-engineer", 240);
  double back = d.limit("spoil-back", 24);

  void judge(const Dug& hole) {
    std::vector<std::string>& facts = d.made.share.facts;
    facts.push_back("dig");
    if (hole.trench) facts.push_back("trench");
    if (hole.deepest < out - 1e-9) return;
    facts.push_back("deep-dig");
    flag("dig-way-out", hole, hole.way_out,
         "a way out within " + d.shown(25 * 12 * units::metres_per_inch) + " of anyone in it; spoil and machines " +
             d.shown(back) + " back from the edge",
         "the competent person on site decides");
    if (hole.deepest < protect - 1e-9) return;
    facts.push_back("protected-dig");
    flag("dig-protection", hole, hole.protect,
         "cave-in protection (sloped, benched, shored or a shield) before anyone goes in: soil A 3/4, B 1, C 1 1/2 out "
         "for 1 up",
         "the competent person on site judges the soil every day and decides; local code may ask for more");
    if (hole.deepest >= engineer - 1e-9)
      flag("dig-engineer", hole, 0, "its protection is designed by an engineer", "a licensed engineer decides");
  }

  void flag(const std::string& code, const Dug& hole, double length, const std::string& what, const std::string& who) {
    const std::string over = length > 0 ? " (over " + d.shown(length) + " of its length)" : "";
    d.say(Severity::flag, code, hole.text + " is up to " + d.shown(hole.deepest) + " deep" + over + ": " + what, who,
          hole.of.front());
  }
};

void say_by_one_depth(Digger& d) {
  if (d.by_one_depth.empty()) return;
  std::string names;
  std::set<plan::ElementId> said;
  for (const plan::ElementId& id : d.by_one_depth)
    if (said.insert(id).second) names += (names.empty() ? "" : ", ") + id;
  const bool ground = d.terrain.existing && !d.terrain.existing->empty();
  d.say(
      Severity::notice, "dig-by-depth",
      names + ": dug by one depth, " + (ground ? "no finished levels are chosen" : "no levels of the ground are known"),
      ground ? "choose the finished surface" : "enter levels of the ground as it lies", d.by_one_depth.front());
}

}  // namespace

Excavation dig(const plan::Job& job, const plan::Site& site, const Bodies& bodies, const levels::Terrain& terrain) {
  Digger digger{job, site, bodies, terrain, Lie(job, site, terrain), {}, {}};
  dig_areas(digger);
  dig_pools(digger);
  dig_walls(digger);
  dig_steps(digger);
  dig_pillars(digger);
  dig_runs(digger);
  Depths depths{digger};
  for (const Dug& hole : digger.made.dug) depths.judge(hole);
  say_by_one_depth(digger);
  return std::move(digger.made);
}

}  // namespace takeoff::ground
