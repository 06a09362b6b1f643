#include "takeoff/walls/courses.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "takeoff/walls/bond.h"
#include "units/read_length.h"

namespace takeoff::walls {

double Courses::length(int course) const {
  double sum = 0;
  for (const auto& bay : bays) {
    for (const Run& run : bay->runs) sum += run.course == course ? run.length : 0;
  }
  return sum;
}

std::int64_t Courses::count(Make make, bool curved) const {
  std::int64_t sum = 0;
  for (const auto& bay : bays) {
    for (const Run& run : bay->runs) {
      sum += std::ranges::count_if(
          run.units, [&](const Laid& one) { return one.make == make && one.curved == curved && !one.again; });
    }
  }
  return sum;
}

double along(const Bay& bay, double setback, int course, double station) {
  const CourseLine line = course_line(bay, setback, course, 0);
  if (station <= bay.legs.front().from + dust) return 0;
  if (station >= bay.legs.back().to - dust) return line.length;
  return std::clamp(line.own(station), 0.0, line.length);
}

namespace {

std::vector<double> joint_stations(const Run& run, const Slot& slot, const CourseLine& line) {
  std::vector<double> result;
  result.reserve(run.units.size());
  for (std::size_t i = 1; i < run.units.size(); ++i) result.push_back(line.station(slot.own_from + run.units[i].from));
  return result;
}

double least_between(const std::vector<double>& upper, const std::vector<double>& lower, double from, double to) {
  double least = std::numeric_limits<double>::infinity();
  std::size_t next = 0;
  for (double at : upper) {
    if (at < from + dust || at > to - dust) continue;
    while (next < lower.size() && lower[next] < at) ++next;
    if (next < lower.size()) least = std::min(least, lower[next] - at);
    if (next > 0) least = std::min(least, at - lower[next - 1]);
  }
  return least;
}

void measure_overlaps(Bay& bay, const std::vector<Slot>& slots, const std::vector<CourseLine>& lines, double unit) {
  std::vector<std::vector<double>> at;
  for (std::size_t i = 0; i < slots.size(); ++i) {
    at.push_back(joint_stations(bay.runs[i], slots[i], lines[static_cast<std::size_t>(slots[i].course)]));
  }
  for (std::size_t i = 0; i < slots.size(); ++i) {
    bay.runs[i].least_overlap = unit / 2;
    for (std::size_t j = i; j-- > 0 && slots[j].course + 1 >= slots[i].course;) {
      if (slots[j].course == slots[i].course) continue;
      const double from = std::max(slots[i].from, slots[j].from), to = std::min(slots[i].to, slots[j].to);
      if (to - from < dust) continue;
      bay.runs[i].least_overlap = std::min(bay.runs[i].least_overlap, least_between(at[i], at[j], from, to));
    }
  }
}

void mark_curved(Run& run, const Slot& slot, const CourseLine& line) {
  for (Laid& one : run.units) {
    if (one.make != Make::whole && one.make != Make::cut) continue;
    one.curved = line.bay->legs[line.leg_at(slot.own_from + one.from + one.length / 2)].radius != 0;
  }
}

void fill(Bay& bay, const Blocks& blocks, const LayRules& rules) {
  const std::vector<CourseLine> lines = counted_lines(bay, blocks, rules);
  const double unit = unit_of(bay, blocks).length;
  const double half = blocks.half ? blocks.half->length : 0;
  const std::vector<Slot> all = slots(bay, blocks, rules, lines);
  const std::vector<Choice> chosen = choose(all, lines, unit, half, rules);
  for (std::size_t i = 0; i < all.size(); ++i) {
    const Slot& slot = all[i];
    Run run{slot.course, slot.from, slot.to, slot.shows, slot.hidden, pieces(slot, chosen[i], half), 0};
    if (blocks.curve) mark_curved(run, slot, lines[static_cast<std::size_t>(slot.course)]);
    bay.runs.push_back(std::move(run));
  }
  measure_overlaps(bay, all, lines, unit);
}

bool alike(const Bay& empty, const Bay& laid) {
  return empty.legs == laid.legs && empty.before == laid.before && empty.columns == laid.columns &&
         empty.left == laid.left && empty.right == laid.right && empty.first_at_start == laid.first_at_start &&
         empty.first_at_finish == laid.first_at_finish;
}

std::shared_ptr<const Bay> known(const Bay& bay, const Courses* before) {
  if (!before) return nullptr;
  const double from = bay.legs.front().from;
  const auto found =
      std::ranges::lower_bound(before->bays, from, {}, [](const auto& b) { return b->legs.front().from; });
  return found != before->bays.end() && alike(bay, **found) ? *found : nullptr;
}

// What a wall is told about, once each, with its worst place.
struct Teller {
  const Profile& profile;
  const Blocks& blocks;
  const LayRules& rules;
  std::vector<problem::Problem>& problems;

  std::string shown(double metres) const {
    return units::show_length(units::Length::nearest(units::Metres(metres)), rules.system);
  }
  std::string between(double from, double to) const {
    return shown(from) + " to " + shown(to) + " from the wall's start";
  }
  void say(problem::Severity severity, const char* code, std::string text, std::string mend) const {
    problems.push_back({severity, code, std::move(text), std::move(mend), {}});
  }
  int top(const Leg& leg) const {
    int top = 0;
    for (const Column& c : profile.columns) {
      if (c.to > leg.from + dust && c.from < leg.to - dust) top = std::max(top, c.top);
    }
    return top;
  }
  int base(const Leg& leg) const {
    int base = profile.courses;
    for (const Column& c : profile.columns) {
      if (c.to > leg.from + dust && c.from < leg.to - dust) base = std::min(base, c.base);
    }
    return base;
  }
};

void tell_curves(const Teller& t) {
  const Unit& unit = t.blocks.curve ? *t.blocks.curve : t.blocks.block;
  const double s = t.blocks.block.setback;
  for (const Leg& leg : t.profile.legs) {
    if (leg.radius == 0) continue;
    const bool outside_face = leg.radius > 0 || t.rules.free_standing;
    double radius = leg.radius > 0 ? leg.radius - (t.top(leg) - 1) * s : -leg.radius + t.base(leg) * s;
    if (leg.radius < 0 && t.rules.free_standing) radius += t.rules.depth;
    double least = unit.length;  // an inside curve can't turn more than 60 degrees with one unit
    if (outside_face)
      least = least_radius(unit, t.rules.joint_on_curves);
    else if (const auto given = unit.item->length_of("min_inside_radius_mm"))
      least = given->metres().si();
    if (radius > least - dust) continue;
    t.say(problem::Severity::problem, "wall-curve",
          "the curve from " + t.between(leg.from, leg.to) + " has a radius of " + t.shown(std::max(0.0, radius)) +
              " at its " + (leg.radius > 0 ? "top" : "lowest") + " course, and " + unit.item->id +
              " turns no tighter than " + t.shown(least),
          "widen the curve, lower the wall, or choose a block that tapers more");
  }
}

void tell_legs(const Teller& t, const std::vector<std::shared_ptr<const Bay>>& bays) {
  for (const auto& bay : bays) {
    for (const Column& c : bay->columns) {
      const CourseLine line = course_line(*bay, t.blocks.block.setback, c.top - 1, 0);
      if (line.length > dust) continue;
      t.say(problem::Severity::problem, "wall-leg",
            "the leg from " + t.between(bay->legs.front().from, bay->legs.back().to) +
                " is used up by the setback at course " + std::to_string(c.top),
            "make the leg longer, or the wall lower there");
      break;
    }
  }
}

void tell_corners(const Teller& t) {
  for (const Leg& leg : t.profile.legs) {
    if (leg.corner <= 0 || meeting(leg.corner, t.blocks, t.rules) != Meeting::mitre) continue;
    Blocks with = t.blocks;
    with.corner = t.blocks.block;
    if (meeting(leg.corner, with, t.rules) != Meeting::square_out) continue;
    t.say(problem::Severity::notice, "corner-unit",
          "the square corner at " + t.shown(leg.to) +
              " from the wall's start has no corner unit, so both its pieces are cut",
          "choose a corner unit");
    return;
  }
}

// A closed line that begins within a side is laid from there: every course has a joint at that place.
void tell_seam(const Teller& t) {
  if (t.rules.least_overlap <= 0 || !t.profile.closed || t.profile.legs.back().corner != 0) return;
  t.say(problem::Severity::notice, "wall-bond",
        "the line is closed and begins within a side, so a joint runs through all courses at its start",
        "draw it from a corner, or have the units over that joint cut to a bond");
}

void tell_joined(const Teller& t) {
  if (t.rules.least_overlap <= 0 || !t.blocks.curve) return;
  if (std::abs(t.blocks.curve->length - t.blocks.block.length) < dust) return;
  for (std::size_t i = 1; i < t.profile.legs.size(); ++i) {
    const Leg &a = t.profile.legs[i - 1], &b = t.profile.legs[i];
    if (a.corner != 0 || (a.radius != 0) == (b.radius != 0)) continue;
    t.say(problem::Severity::notice, "wall-bond",
          "the blocks for curves have another face length than the others, so at " + t.shown(b.from) +
              " from the wall's start a joint runs through all courses",
          "choose blocks of one face length, or have them cut to a bond there");
    return;
  }
}

void tell_bond(const Teller& t, const std::vector<std::shared_ptr<const Bay>>& bays) {
  const Run* worst = nullptr;
  int runs = 0;
  for (const auto& bay : bays) {
    const double wanted = t.rules.least_overlap * unit_of(*bay, t.blocks).length;
    for (const Run& run : bay->runs) {
      if (run.least_overlap > wanted - thin) continue;
      ++runs;
      if (!worst || run.least_overlap < worst->least_overlap) worst = &run;
    }
  }
  if (!worst) return;
  t.say(problem::Severity::notice, "wall-bond",
        "joints of course " + std::to_string(worst->course + 1) + " lie only " + t.shown(worst->least_overlap) +
            " from those of the course below, from " + t.between(worst->from, worst->to) +
            (runs > 1 ? ", and " + std::to_string(runs - 1) + " more runs have less than is wanted" : ""),
        "choose half units, or move a step or an end by part of a unit");
}

}  // namespace

Courses lay(const Profile& profile, const Blocks& blocks, const LayRules& rules, const Courses* before) {
  Courses made;
  made.blocks = blocks;
  made.rules = rules;
  if (before && !(before->blocks == blocks && before->rules == rules)) before = nullptr;
  for (Bay& bay : bays(profile, blocks)) {
    std::shared_ptr<const Bay> laid = known(bay, before);
    if (!laid) {
      fill(bay, blocks, rules);
      laid = std::make_shared<const Bay>(std::move(bay));
    }
    made.bays.push_back(std::move(laid));
  }
  const Teller teller{profile, blocks, rules, made.problems};
  tell_curves(teller);
  tell_legs(teller, made.bays);
  tell_corners(teller);
  tell_seam(teller);
  tell_joined(teller);
  tell_bond(teller, made.bays);
  return made;
}

}  // namespace takeoff::walls
