// The levels of drain runs against each other, against the ground and against the water that arrives.
#include <algorithm>
#include <cmath>

#include "takeoff/levels/words.h"
#include "takeoff/water/flow.h"
#include "takeoff/water/pieces.h"
#include "takeoff/water/water.h"
#include "units/number.h"

namespace takeoff::water {

using levels::Bound;
using problem::Severity;

namespace {

constexpr double hair = 1e-6;   // metres: no difference of levels
constexpr double step = 0.25;   // metres along a run between two looks at its cover
constexpr double beside = 0.3;  // metres: a run that ends further from the one it joins has not reached it

std::string as_level(const plan::Job& job, double metres) {
  return job.heading.units == units::System::us ? units::show_number(metres / units::metres_per_foot, 2) + " ft"
                                                : units::show_number(metres, 3) + " m";
}

std::string as_flow(const plan::Job& job, double m3_s) {
  return job.heading.units == units::System::us
             ? units::show_number(m3_s * 60 / units::cubic_metres_per_gallon, 1) + " gpm"
             : units::show_number(m3_s * 1000, 2) + " l/s";
}

struct Checker {
  const plan::Job& job;
  const levels::Terrain& terrain;
  const Network& net;
  const std::map<plan::ElementId, double>& arriving;
  const plan::ElementId& id;
  const Run& run;
  Share share;

  const plan::DrainRun& drawn() const { return *run.run; }
  bool pipe() const { return drawn().what == "pipe"; }

  void say(Severity severity, std::string code, std::string text, std::string mend, double station) {
    share.problems.push_back(
        levels::said(severity, std::move(code), std::move(text), std::move(mend), id, place_at(run.path, station)));
  }

  double bore() const {
    const catalogue::Item* item = job.catalogue->item(drawn().item);
    return (item ? item->number("nominal_diameter_in").value_or(4) : 4) * units::metres_per_inch;
  }

  void all() {
    if (!std::ranges::is_sorted(drawn().inverts, {}, &plan::HeightAt::at))
      return say(Severity::problem, "drain-inverts", "the inverts of " + id + " do not stand in the order of the line",
                 "enter them from its start to its end", 0);
    if (!run.level) {
      if (pipe())
        say(Severity::problem, "drain-level",
            "the pipe " + id + " has no level, so its fall and outlet are not checked",
            "enter its invert at the start and its fall, or let the run before it end there", 0);
      return;
    }
    share.measures.put("start_level_m", *run.start());
    share.measures.put("end_level_m", *run.end());
    falls();
    joint();
    if (drawn().into.empty() && pipe()) outlet();
    if (pipe()) cover();
    if (pipe()) capacity();
  }

  void falls() {
    const auto& knots = run.level->knots();
    double least = 1e300;
    for (std::size_t i = 1; i < knots.size(); ++i) {
      const double along = knots[i].at - knots[i - 1].at, down = knots[i - 1].height - knots[i].height;
      if (down < -hair || (along > 0 && down <= hair)) {
        say(Severity::problem, "pipe-uphill",
            id + " would have to run uphill: it goes from " + as_level(job, knots[i - 1].height) + " to " +
                as_level(job, knots[i].height) + " along its line",
            "give it fall towards its end, or draw it the other way round", knots[i - 1].at);
        return;
      }
      if (along > 0) least = std::min(least, down / along);
    }
    const double wanted = levels::limit(job, "pipe-fall", Bound::least, 0.005);
    if (pipe() && least < wanted - 1e-9)
      say(Severity::flag, "pipe-fall", id + " falls " + levels::percent(least) + ", under " + levels::percent(wanted),
          "give it more fall, 1 % is common practice", 0);
  }

  void joint() {
    if (!run.joint) return;
    const Run& other = net.runs.at(run.joint->into);
    if (run.joint->gap > beside)
      return say(Severity::problem, "run-not-joined",
                 id + " ends " + levels::shown(job, run.joint->gap) + " from " + run.joint->into + ", which it joins",
                 "draw its end onto that run", run.joint->from);
    if (!other.level) return;
    const double comes = run.level->before(run.joint->from), there = other.level->before(run.joint->at);
    share.measures.put("joint_level_m", comes);
    if (comes < there - hair)
      say(Severity::problem, "pipe-uphill",
          id + " comes to " + run.joint->into + " at " + as_level(job, comes) + ", below its " + as_level(job, there) +
              " there: the pipe would have to run uphill",
          "start it higher, give it less fall, or join further down", run.joint->from);
  }

  void outlet() {
    const geometry::Point end = run.path.end();
    std::optional<double> ground;
    if (drawn().outlet_ground) ground = drawn().outlet_ground->metres().si();
    if (!ground) ground = terrain.finished_at(end);
    if (!ground) ground = terrain.existing_at(end);
    if (!ground)
      return say(Severity::notice, "outlet-ground", "the ground at the outlet of " + id + " is not known",
                 "take its level there, or enter it", run.length);
    share.measures.put("outlet_ground_m", *ground);
    const double level = *run.end();
    if (*ground >= level - hair)
      say(Severity::problem, "outlet-above-pipe",
          "the outlet of " + id + " can't run: the ground there stands at " + as_level(job, *ground) +
              ", the pipe at " + as_level(job, level),
          "carry the pipe on to lower ground, start it higher, or let it end in another run", run.length);
    else if (!drawn().outlet_ground && terrain.guessed_at(end))
      say(Severity::notice, "outlet-ground",
          "the ground at the outlet of " + id + " is a guess: it lies beyond the levels that were taken",
          "take its level there", run.length);
  }

  std::optional<double> surface_at(double station) const {
    const geometry::Point at = place_at(run.path, station);
    if (const auto finished = terrain.finished_at(at)) return finished;
    return terrain.existing_at(at);
  }

  // Looked at every 10 in; a pipe that comes to daylight is shallow at its end, and that length is told apart.
  void cover() {
    const int looks = std::max(1, static_cast<int>(std::ceil(run.length / step)));
    std::vector<std::pair<double, double>> found;  // station, cover
    for (int i = 0; i <= looks; ++i) {
      const double station = run.length * i / looks;
      if (const auto surface = surface_at(station))
        found.emplace_back(station, *surface - run.level->before(station) - bore());
    }
    if (found.empty()) return;
    const double wanted = levels::limit(job, "pipe-cover", Bound::usual, 6 * units::metres_per_inch);
    double shallow = 0;
    if (drawn().into.empty())
      while (!found.empty() && found.back().second < wanted) {
        shallow = run.length - found.back().first;
        found.pop_back();
      }
    if (shallow > step)
      say(Severity::notice, "outlet-shallow",
          "the last " + levels::shown(job, shallow) + " of " + id + " come to daylight under less than " +
              levels::shown(job, wanted) + " of cover",
          "keep wheels off it there", run.length - shallow);
    if (found.empty()) return;
    const auto least = *std::ranges::min_element(found, {}, &std::pair<double, double>::second);
    share.measures.put("cover_least_m", least.second);
    if (least.second < -hair)
      say(Severity::problem, "pipe-in-the-air",
          id + " stands " + levels::shown(job, -least.second) + " out of the ground " +
              levels::shown(job, least.first) + " from its start",
          "lay it lower, or raise the ground over it", least.first);
    else if (least.second < wanted - hair)
      say(Severity::flag, "pipe-cover",
          id + " has " + levels::shown(job, least.second) + " of cover " + levels::shown(job, least.first) +
              " from its start, under " + levels::shown(job, wanted),
          "lay it lower, or protect it; under wheels it needs more", least.first);
  }

  void capacity() {
    const catalogue::Item* item = job.catalogue->item(drawn().item);
    const auto n = item ? item->number("manning_n") : std::nullopt;
    const double fall = (*run.start() - *run.end()) / run.length;
    if (!n || fall <= 0) return;
    const flow::Flow full = flow::full_pipe(bore(), *n, fall);
    const double comes = net.flow(id, arriving);
    share.measures.put("capacity_l_s", full.m3_s * 1000);
    share.measures.put("full_speed_m_s", full.m_s);
    if (comes > 0) share.measures.put("flow_l_s", comes * 1000);
    if (comes > full.m3_s)
      say(Severity::flag, "pipe-small",
          as_flow(job, comes) + " arrive at " + id + ", which carries " + as_flow(job, full.m3_s) + " running full",
          "choose a larger pipe, more fall, or a second run", run.length);
    const double slowest = job.catalogue->number_limit("pipe-speed", 0.5) * units::metres_per_foot;
    if (full.m_s < slowest)
      say(Severity::notice, "pipe-slow", id + " runs slowly even when full and will hold what washes in",
          "give it more fall, and cleanouts", 0);
  }
};

}  // namespace

std::map<plan::ElementId, Share> runs(const plan::Job& job, const plan::Site& site, const levels::Terrain& terrain) {
  const Network net = network(job);
  const std::map<plan::ElementId, double> direct = arriving(job, site, terrain);
  std::map<plan::ElementId, Share> made;
  for (const auto& [id, run] : net.runs) {
    Checker checker{job, terrain, net, direct, id, run, {}};
    checker.share.measures.element = id;
    checker.all();
    checker.share.add(pieces(job, id, run));
    made.emplace(id, std::move(checker.share));
  }
  for (const problem::Problem& said : net.problems) made[said.place.element].problems.push_back(said);
  return made;
}

}  // namespace takeoff::water
