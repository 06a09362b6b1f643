#include <algorithm>
#include <cmath>

#include "takeoff/edges/notes.h"
#include "takeoff/walls/pipe_line.h"
#include "takeoff/walls/stone.h"
#include "takeoff/walls/words.h"
#include "takeoff/walls/zone.h"
#include "units/number.h"

namespace takeoff::walls {

namespace {

using edges::fault;
using edges::flag;

constexpr double hair = 1e-6;  // metres

struct Maker {
  const plan::Job& job;
  const plan::ElementId& id;
  const plan::Wall& wall;
  const plan::WallPipe& given;
  const Profile& profile;
  const Blocks& blocks;
  std::optional<Pad> base;
  Share share;
  PipeLine line;
  std::vector<Outlet> outlets;  // that take water, in order

  std::string shown(double metres) const { return edges::shown(job, metres); }
  void say(problem::Problem one) { share.problems.push_back(std::move(one)); }

  double invert(double station) const { return line.invert(outlets, station); }

  bool find_outlets();
  void drop_idle();
  void spacing();
  void low_points();
  void low();
  void dead_depth(const Plateau& plateau);
  double high();
  void buy();
  void own_stone(const catalogue::Item& item);
  void outlet_pipe();
  void all();
};

bool Maker::find_outlets() {
  for (const plan::HeightAt& one : given.outlets) {
    const double station = one.at.metres().si();
    if (station < -hair || station > profile.length + hair) {
      say(fault("pipe-outlets", "an outlet stands " + at(job, station) + ", which is not on this wall",
                "move it to a place from 0 to " + shown(profile.length), id));
      continue;
    }
    outlets.push_back({std::clamp(station, 0.0, profile.length), one.height.metres().si()});
  }
  std::ranges::stable_sort(outlets, {}, &Outlet::at);
  if (outlets.empty())
    say(fault("pipe-outlets", "the pipe behind the wall has no outlet, so its levels can't be worked out",
              "enter the invert of each outlet and its place along the wall", id));
  return !outlets.empty();
}

// An outlet that stands higher than the pipe from another one reaches its place takes no water.
void Maker::drop_idle() {
  std::vector<Outlet> working;
  for (std::size_t k = 0; k < outlets.size(); ++k) {
    double level = 1e300;
    for (std::size_t j = 0; j < outlets.size(); ++j)
      if (j != k) level = std::min(level, line.reached_either_way(outlets[j], outlets[k].at));
    if (outlets[k].invert <= level + hair) {
      working.push_back(outlets[k]);
      continue;
    }
    say(flag("outlet-idle",
             "the outlet " + at(job, outlets[k].at) + " lies " + shown(outlets[k].invert - level) +
                 " above the pipe that another outlet drains there, so it takes no water",
             "lower it, or leave it out", id));
  }
  outlets = std::move(working);
}

void Maker::spacing() {
  const double limit = job.catalogue->length_limit("outlet-spacing", units::Length::feet(50)).metres().si();
  std::vector<double> at;
  if (!profile.closed) at.push_back(0);
  for (const Outlet& outlet : outlets) at.push_back(outlet.at);
  at.push_back(profile.closed ? outlets.front().at + profile.length : profile.length);
  double worst = limit + hair, from = 0;
  for (std::size_t i = 0; i + 1 < at.size(); ++i) {
    if (at[i + 1] - at[i] <= worst) continue;
    worst = at[i + 1] - at[i];
    from = at[i];
  }
  if (worst <= limit + hair) return;
  say(flag("outlet-spacing",
           "the pipe runs " + shown(worst) + " without an outlet, over " + shown(limit) + ", " +
               between(job, from, from + worst),
           "add an outlet between, at a low point of the base", id));
}

void Maker::low_points() {
  for (const Plateau& plateau : plateaus(profile)) {
    if (!plateau.low) continue;
    if (base && base->open) dead_depth(plateau);
    const bool drained = std::ranges::any_of(outlets, [&](const Outlet& outlet) {
      return outlet.at >= plateau.from - hair && outlet.at <= plateau.to + hair;
    });
    if (!drained)
      say(flag("outlet-low",
               "the base is lower than beside it, " + between(job, plateau.from, plateau.to) +
                   ", and has no outlet there: water gathers",
               "add an outlet at that low point", id));
  }
}

// The pad holds what lies below the lowest place where the pipe takes it.
void Maker::dead_depth(const Plateau& plateau) {
  double sill = std::min(invert(plateau.from + hair), invert(plateau.to - hair));
  for (const Outlet& outlet : outlets)
    if (outlet.at > plateau.from - hair && outlet.at < plateau.to + hair) sill = std::min(sill, outlet.invert);
  const double dead = sill - (profile.level(plateau.base) - base->thickness);
  const double allowed = job.catalogue->length_limit("dead-depth", units::Length()).metres().si();
  if (dead <= allowed + 1e-4) return;
  const std::string where = between(job, plateau.from, plateau.to);
  if (job.choices.infiltration_counts && job.choices.infiltration_m_s > 0) {
    const double hours = dead * base->porosity / job.choices.infiltration_m_s / 3600;
    const double most = job.catalogue->number_limit("draw-down", 48);
    if (hours > most)
      say(fault("pipe-dead-depth",
                "water " + shown(dead) + " deep in the open base needs " + units::show_number(hours, 0) +
                    " h to soak away, over " + units::show_number(most, 0) + " h, " + where,
                "lower the outlet to the bottom of the base", id));
    return;
  }
  say(fault("pipe-dead-depth",
            shown(dead) + " of the open base lies below the pipe's outlet and stays full of water, " + where,
            "lower the outlet to the bottom of the base, take a dense base, or enter a measured infiltration", id));
}

void Maker::low() {
  if (!base) return;
  for (const Outlet& outlet : outlets) {
    double bottom = -1e300;
    for (const PipeLine::Piece& piece : line.pieces)
      if (piece.from <= outlet.at + hair && piece.to >= outlet.at - hair)
        bottom = bottom == -1e300 ? piece.bottom : std::min(bottom, piece.bottom);
    if (outlet.invert >= bottom - 1e-4) continue;
    say(fault("pipe-low",
              "the outlet " + at(job, outlet.at) + " lies " + shown(bottom - outlet.invert) +
                  " below the bottom of the stone, so the pipe would undermine the base",
              "raise it to the bottom of the stone or above", id));
  }
}

// The highest invert; where it is above the pad, that is said once, at the worst place.
double Maker::high() {
  double highest = -1e300, worst = 1e-4, from = 0, to = 0;
  for (const PipeLine::Piece& piece : line.pieces) {
    if (piece.from < -hair || piece.to > profile.length + hair) continue;
    std::vector<double> at{piece.from + hair, piece.to - hair};
    for (const Outlet& outlet : outlets)
      if (outlet.at > piece.from && outlet.at < piece.to) at.push_back(outlet.at);
    std::ranges::sort(at);
    for (std::size_t i = 0; i + 1 < at.size(); ++i) {
      // Between two of these the pipe goes up from one end, or from both to a ridge.
      const double top = (invert(at[i]) + invert(at[i + 1]) + line.fall * (at[i + 1] - at[i])) / 2;
      highest = std::max(highest, top);
      if (top - piece.top <= worst) continue;
      worst = top - piece.top;
      from = piece.from;
      to = piece.to;
    }
  }
  if (base && to > from)
    say(flag(
        "pipe-high",
        "the outlets force the pipe up to " + shown(worst) + " above the top of the base, " + between(job, from, to),
        "lower the outlet or add one; otherwise fill below the pipe with earth that lets no water through", id));
  return highest;
}

// A dense pad sheds its water to the back: the pipe lies there, on stone of its own.
void Maker::own_stone(const catalogue::Item& item) {
  if (!base || base->open || base->thickness <= 0 || !wall.stone || wall.stone->drain.empty()) return;
  const double pipe = item.number("nominal_diameter_in").value_or(4) * units::metres_per_inch;
  const double side = job.catalogue->length_limit("pipe-stone-side", units::Length::inches(3)).metres().si();
  const double left = behind(job, wall, blocks).stone_depth - base->past;
  const Working width =
      Working::greatest({term("column past the base", std::max(0.0, left), units::metre, id),
                         Working::sum({term("pipe", pipe, units::metre, item.id + "/nominal_diameter_in"),
                                       term("stone on both sides", 2 * side, units::metre, "pipe-stone-side")})});
  const Working volume =
      Working::product({term("length as drawn", profile.length, units::metre, id), width,
                        term("thickness of the base", base->thickness, units::metre, base->build_up->id)})
          .named("stone round the pipe");
  share.measures.put("pipe_stone_m3", volume.amount().value);
  add_stone(job, wall.stone->drain, "stone under and round the pipe, behind the dense base", id, volume, "wall-stone",
            share);
}

void Maker::outlet_pipe() {
  if (given.outlet_item.empty()) return;
  const catalogue::Item* item = edges::wanted(job, given.outlet_item, "the outlet pipe", id, share);
  if (!item) return;
  const auto holes = item->details.find("perforated");
  if (holes != item->details.end() && holes->second == "yes")
    say(fault("outlet-perforated", "the outlet pipe " + item->id + " is perforated and would water the ground in front",
              "choose a solid pipe", id));
  if (given.outlet_length <= units::Length()) {
    say(edges::notice("outlet-length", "no length is given for the outlet pipes, so none is in the takeoff",
                      "enter how far one outlet runs to daylight", id));
    return;
  }
  const Working length = Working::product({term("outlets", static_cast<double>(outlets.size()), units::piece, id),
                                           term("length of one", given.outlet_length.metres().si(), units::metre, id)});
  share.measures.put("outlet_pipe_m", length.amount().value);
  share.lines.push_back({Stage::wall,
                         item->id,
                         "solid outlet pipe to daylight, its end screened against animals",
                         {id},
                         length,
                         {},
                         false});
  edges::add_task(job, "pipe-lay", Stage::wall, "outlet pipe of the wall", id, length, share);
}

void Maker::buy() {
  const catalogue::Item* item = edges::wanted(job, given.item, "the pipe behind the wall", id, share);
  share.measures.put("pipe_m", profile.length);
  if (!item) return;
  const auto holes = item->details.find("perforated");
  if (holes == item->details.end() || holes->second != "yes")
    say(fault("pipe-solid", "the pipe " + item->id + " is not perforated, so it takes no water from the stone",
              "choose a perforated pipe", id));
  const Working length = term("length as drawn", profile.length, units::metre, id);
  share.lines.push_back({Stage::wall, item->id, "drain pipe behind the wall", {id}, length, {}, false});
  edges::add_task(job, "pipe-lay", Stage::wall, "drain pipe behind the wall", id, length, share);
  own_stone(*item);
  share.facts.push_back("pipe");
}

void Maker::all() {
  buy();
  const double least = job.catalogue->limits.contains("pipe-fall")
                           ? job.catalogue->limits.at("pipe-fall").least.value_or(0.5) / 100
                           : 0.005;
  if (!(given.fall > 0))
    return say(fault("pipe-fall", "the pipe behind the wall has no fall", "enter one, 1 % is common practice", id));
  if (given.fall > 1)
    return say(fault("pipe-fall", "the pipe behind the wall falls more than it runs",
                     "enter its fall as a share or in %, 1 % is common practice", id));
  if (given.fall < least - 1e-12)
    say(flag("pipe-fall",
             "the pipe behind the wall falls " + units::show_number(given.fall * 100, 2) + " %, under " +
                 units::show_number(least * 100, 2) + " %",
             "give it more fall, 1 % is common practice", id));
  line = pipe_line(profile, base ? base->thickness : 0, given.fall);
  if (!find_outlets()) return;
  drop_idle();
  low();
  spacing();
  low_points();
  share.measures.put("pipe_invert_high_m", high());
  share.measures.put("outlets", static_cast<double>(outlets.size()));
  outlet_pipe();
}

// A drain run was drawn for this wall.
Share drained_by(const plan::Job& job, const plan::ElementId& id, const plan::Wall& wall) {
  Share share;
  const plan::Element* run = job.find(wall.drained_by);
  const auto* drain = run ? std::get_if<plan::DrainRun>(&run->kind) : nullptr;
  if (!drain || drain->what != "pipe") {
    share.problems.push_back(fault("drained-by",
                                   run ? wall.drained_by + ", named to drain the wall, is no pipe"
                                       : "the drain run " + wall.drained_by + ", named to drain the wall, is not there",
                                   "name a pipe that was drawn for it, or give the wall a pipe of its own", id));
    return share;
  }
  const catalogue::Item* item = job.catalogue->item(drain->item);
  const auto holes = item ? item->details.find("perforated") : std::map<std::string, std::string>::const_iterator{};
  if (item && (holes == item->details.end() || holes->second != "yes"))
    share.problems.push_back(fault("pipe-solid",
                                   "the pipe " + wall.drained_by +
                                       " that drains the wall is not perforated, so it "
                                       "takes no water from the stone",
                                   "choose a perforated pipe for it", id));
  share.problems.push_back(edges::notice(
      "drained-by-level",
      "the pipe " + wall.drained_by + " drains the wall; its level against the base is not checked without levels",
      "hold its low end between the bottom of its stone and the top of the base", id));
  return share;
}

}  // namespace

Share pipe(const plan::Job& job, const plan::Ground& ground, const Profile& profile, const Blocks& blocks) {
  const auto* wall = std::get_if<plan::Wall>(&ground.element->kind);
  if (!wall || profile.columns.empty()) return {};
  const plan::ElementId& id = ground.element->id;
  Share share;
  if (wall->pipe) {
    Maker maker{job, id, *wall, *wall->pipe, profile, blocks, pad(job, *wall), {}, {}, {}};
    maker.all();
    share.add(std::move(maker.share));
  }
  if (!wall->drained_by.empty()) share.add(drained_by(job, id, *wall));
  if (!wall->pipe && wall->drained_by.empty() && !wall->free_standing)
    share.problems.push_back(
        flag("no-outlet",
             "nothing drains the ground behind the wall: it has neither a pipe nor a drain run, "
             "and no outlet",
             "give it a pipe with outlets to daylight, or name the drain run that was drawn for it; "
             "water behind a wall is for a licensed engineer",
             id));
  share.measures.element = id;
  return share;
}

}  // namespace takeoff::walls
