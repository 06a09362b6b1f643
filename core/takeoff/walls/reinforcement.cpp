#include "takeoff/walls/reinforcement.h"

#include <algorithm>
#include <cmath>

#include "takeoff/edges/notes.h"
#include "takeoff/walls/meets.h"
#include "takeoff/walls/words.h"
#include "takeoff/walls/zone.h"
#include "units/number.h"

namespace takeoff::walls {

namespace {

using edges::fault;
using edges::flag;
using edges::notice;

constexpr double hair = 1e-6;
const std::string engineer = "ask the engineer who gave the layers";

struct Maker {
  const plan::Job& job;
  const plan::Site& site;
  const plan::Ground& ground;
  const plan::Wall& wall;
  const Profile& profile;
  const Blocks& blocks;
  Share share;
  std::vector<RollCuts> rolls;
  std::vector<Stretch> all;
  std::vector<double> corners;  // outside corners that were told of
  struct Met {
    units::Length length;
    std::vector<Extent> there;
    std::vector<Meeting> found;
  };
  std::vector<Met> met;

  const plan::ElementId& id() const { return ground.element->id; }
  std::string shown(double metres) const { return edges::shown(job, metres); }
  std::string named(std::size_t k) const {
    return "layer " + std::to_string(k + 1) + " (on course " + std::to_string(wall.layers[k].on_course) + ")";
  }

  RollCuts& cuts_of(const catalogue::Item& item) {
    auto known = std::ranges::find(rolls, &item, &RollCuts::item);
    if (known == rolls.end()) known = rolls.insert(rolls.end(), RollCuts{&item, {}, 0, 0, {}});
    return *known;
  }
  static RollCuts::Pieces& pieces_of(RollCuts& cuts, units::Length length) {
    auto known = std::ranges::find(cuts.pieces, length, &RollCuts::Pieces::length);
    if (known == cuts.pieces.end()) known = cuts.pieces.insert(cuts.pieces.end(), RollCuts::Pieces{length, 0, 0, 0});
    return *known;
  }

  void layer(std::size_t k);
  const catalogue::Item* item_for(std::size_t k);
  bool right_way(std::size_t k, const catalogue::Item& item);
  bool on_courses(std::size_t k);
  void across_the_wall(std::size_t k, const catalogue::Item& item);
  void along_the_wall(std::size_t k, const catalogue::Item& item);
  void on_curve(std::size_t k, const LayerPart& part, double roll);
  void top_rule(std::size_t k);
  void meet(std::size_t k);
  void length_rule(std::size_t k);
  void spacing_rule();
  void buy(RollCuts& cuts, double& metres, double& area, int& strips, int& saved);
  void finish();
};

const catalogue::Item* Maker::item_for(std::size_t k) {
  const plan::Reinforcement& given = wall.layers[k];
  const catalogue::Item* item = edges::wanted(job, given.item, named(k), id(), share);
  if (!item) return nullptr;
  if (!item->length || !item->width || *item->length <= units::Length() || *item->width <= units::Length()) {
    share.problems.push_back(fault(
        "layer-item", "the roll " + item->id + " has no length or width, so " + named(k) + " can't be cut from it",
        "enter the roll's size in the catalogue", id()));
    return nullptr;
  }
  if (given.length.metres().si() <= blocks.block.depth + hair) {
    share.problems.push_back(fault(
        "layer-length",
        named(k) + " is " + shown(given.length.metres().si()) + " long from the face, no more than the block is deep",
        "enter the length from the front face into the fill, as the engineer gave it", id()));
    return nullptr;
  }
  if (given.coverage <= 0 || given.coverage > 1) {
    share.problems.push_back(fault("layer-coverage",
                                   named(k) + " covers a share of the face that is not over 0 and up to 1",
                                   "enter the share that the engineer gave; 1 is all of it", id()));
    return nullptr;
  }
  constexpr double many = 20000;  // pieces of one layer: the roll's size was meant to be another
  const double piece = (given.along ? *item->length : *item->width).metres().si();
  if (profile.length / piece > many) {
    share.problems.push_back(fault(
        "layer-item",
        named(k) + " would take over " + units::show_number(many, 0) + " pieces of " + item->id + " along the wall",
        "correct the size of the roll in the catalogue", id()));
    return nullptr;
  }
  return item;
}

bool Maker::right_way(std::size_t k, const catalogue::Item& item) {
  const plan::Reinforcement& given = wall.layers[k];
  const Strong way = strong(item);
  if (given.along) {
    if (way.across && *item.width >= given.length) return true;
    share.problems.push_back(fault("layer-along",
                                   named(k) + " is rolled out along the wall, but the roll " + item.id +
                                       (way.across ? " is narrower than the layer is long"
                                                   : " is not strong across its width: it would hold nothing"),
                                   "cut it to its length and lay the pieces across the wall, side by side", id()));
    return false;
  }
  if (!way.along && way.across) {
    share.problems.push_back(fault(
        "layer-along",
        named(k) + " is cut off the roll, but " + item.id + " is strong across its width only: it would hold nothing",
        "roll it out along the wall where it is wide enough, or take another roll", id()));
    return false;
  }
  if (!way.along)
    share.problems.push_back(
        flag("layer-strong",
             "the roll " + item.id + " of " + named(k) +
                 " does not say which way it is strong; it is counted as strong along the roll",
             "find it on the maker's sheet and enter it: the strong way runs from the face into the fill", id()));
  if (given.length <= *item.length) return true;
  share.problems.push_back(fault("layer-roll",
                                 named(k) + " is " + shown(given.length.metres().si()) +
                                     " long, longer than the roll of " + item.id + " (" +
                                     shown(item.length->metres().si()) + "), and may not be spliced",
                                 "take a longer roll, or " + engineer, id()));
  return false;
}

// Where the wall has no such course the layer is left out, and that is said.
bool Maker::on_courses(std::size_t k) {
  const plan::Reinforcement& given = wall.layers[k];
  const double from = std::max(0.0, given.from.metres().si());
  const double to = given.to ? given.to->metres().si() : profile.length;
  const std::vector<Extent> there = extents(profile, given);
  if (to <= from) {
    share.problems.push_back(fault("layer-course",
                                   named(k) + " ends where it starts or before: it runs from " + between(job, from, to),
                                   "enter a start before its end", id()));
    return false;
  }
  if (there.empty()) {
    share.problems.push_back(fault("layer-course",
                                   named(k) + " has no such course to lie on, " + between(job, from, to),
                                   "choose another course or place, or " + engineer, id()));
    return false;
  }
  std::string missing;
  double at = from;
  const auto gap = [&](double end) {
    if (end - at > hair) missing += (missing.empty() ? "" : ", ") + shown(at) + " to " + shown(end);
  };
  for (const Extent& extent : there) {
    gap(extent.from);
    at = extent.to;
  }
  gap(to);
  if (!missing.empty())
    share.problems.push_back(
        flag("layer-course",
             named(k) + " has no such course to lie on from " + missing + " of the wall's start and is left out there",
             "shorten the layer to where its course stands, or " + engineer, id()));
  return true;
}

void Maker::on_curve(std::size_t k, const LayerPart& part, double roll) {
  const double reach = wall.layers[k].length.metres().si();
  if (part.radius == 0 || part.strips == 0) return;
  const std::string by = shown(tail(roll, reach, part.radius));
  if (part.radius > 0) {
    share.problems.push_back(notice(
        "layer-overlap",
        "strips of " + named(k) + " overlap by " + by + " at their tails on the curve, " +
            between(job, part.from, part.to),
        "keep " + shown(edges::limit_inches(job, "grid-cross", edges::Bound::least, 3)) + " of fill between them",
        id()));
  } else if (part.gaps > 0) {
    share.problems.push_back(notice(
        "layer-gap",
        "strips of " + named(k) + " gape by " + by + " at their tails on the curve, " +
            between(job, part.from, part.to),
        "lay the " + std::to_string(part.gaps) + " pieces counted for it over the gaps, on the next course", id()));
  }
}

void Maker::across_the_wall(std::size_t k, const catalogue::Item& item) {
  const plan::Reinforcement& given = wall.layers[k];
  const double roll = item.width->metres().si();
  RollCuts::Pieces& pieces = pieces_of(cuts_of(item), given.length);
  const std::vector<LayerPart> parts = layer_parts(profile, wall, k, roll);
  for (const LayerPart& part : parts) {
    pieces.strips += part.strips + part.gaps;
    pieces.covered += part.face * given.coverage * given.length.metres().si();
    if (part.strips > 0 && part.last <= roll / 2 + hair) pieces.halves += 1;
    on_curve(k, part, roll);
  }
  for (std::size_t i = 0; i + 1 < parts.size(); ++i) {
    const auto leg =
        std::ranges::find_if(profile.legs, [&](const Leg& l) { return std::abs(l.to - parts[i].to) < hair; });
    if (leg == profile.legs.end() || leg->corner <= 0 || parts[i + 1].from > parts[i].to + hair) continue;
    if (std::ranges::find(corners, leg->to) != corners.end()) continue;
    corners.push_back(leg->to);
    share.problems.push_back(notice(
        "layer-corner", "layers of both legs cross behind the outside corner " + at(job, leg->to) + ", each in full",
        "lay the second leg's strips one course up, with " +
            shown(edges::limit_inches(job, "grid-cross", edges::Bound::least, 3)) + " of fill or more between",
        id()));
  }
}

// Its strong way lies across the roll: lengths of roll, end to end along each leg.
void Maker::along_the_wall(std::size_t k, const catalogue::Item& item) {
  const plan::Reinforcement& given = wall.layers[k];
  for (const Extent& extent : extents(profile, given))
    for (const Leg& leg : profile.legs) {
      double left = std::min(extent.to, leg.to) - std::max(extent.from, leg.from);
      if (left < hair) continue;
      const double depth = given.length.metres().si();
      for (; left > hair; left -= item.length->metres().si()) {
        const units::Length piece = std::min(*item.length, units::Length::nearest(units::Metres(left)));
        RollCuts::Pieces& pieces = pieces_of(cuts_of(item), piece);
        pieces.strips += 1;
        pieces.covered += piece.metres().si() * depth;
      }
    }
}

// Nothing but a cap over it: the checks leave it out.
void Maker::top_rule(std::size_t k) {
  const auto in = [&](const Column& column) {
    return std::ranges::any_of(extents(profile, wall.layers[k]), [&](const Extent& extent) {
      return std::max(extent.from, column.from) < std::min(extent.to, column.to) - hair;
    });
  };
  for (const Column& column : profile.columns) {
    if (held_down(column, wall.layers[k]) || !in(column)) continue;
    share.problems.push_back(flag("layer-top",
                                  named(k) + " lies on the highest course, with no block over it that holds it, " +
                                      between(job, column.from, column.to),
                                  "choose a lower course, or " + engineer, id()));
    return;
  }
}

// The rule of the association: the larger of 4 ft and 0.6 H, by the height of its own place.
void Maker::length_rule(std::size_t k) {
  const double length = wall.layers[k].length.metres().si();
  const double least = job.catalogue->length_limit("grid-length-ft", units::Length::feet(4)).metres().si();
  const double share_of_height = job.catalogue->number_limit("grid-length-share", 0.6);
  const Stretch* worst = nullptr;
  double wanted = 0;
  const std::vector<Extent> there = extents(profile, wall.layers[k]);
  for (const Stretch& one : all) {
    const double middle = (one.from + one.to) / 2;
    if (std::ranges::none_of(there, [&](const Extent& e) { return e.from < middle && middle < e.to; })) continue;
    const double need = std::max(least, share_of_height * one.column.courses() * profile.course_height);
    if (need <= wanted) continue;
    wanted = need;
    worst = &one;
  }
  if (!worst || length >= wanted - 1e-4) return;
  share.problems.push_back(flag(
      "layer-length",
      named(k) + " is " + shown(length) + " long, under " + shown(wanted) + " (the larger of " + shown(least) +
          " and " + units::show_number(share_of_height, 1) + " of the height), " + between(job, worst->from, worst->to),
      engineer, id()));
}

void Maker::meet(std::size_t k) {
  const plan::Reinforcement& given = wall.layers[k];
  const std::vector<Extent> there = extents(profile, given);
  auto known =
      std::ranges::find_if(met, [&](const Met& one) { return one.length == given.length && one.there == there; });
  if (known == met.end())
    known = met.insert(met.end(), {given.length, there, meetings(job, site, ground, wall, there, given.length)});
  for (const Meeting& one : known->found) share.problems.push_back(in_words(job, id(), given.on_course, one));
}

void Maker::spacing_rule() {
  const double limit =
      std::min(edges::limit_inches(job, "grid-spacing", edges::Bound::greatest, 24), 2 * blocks.block.depth);
  std::vector<std::vector<Extent>> there;
  for (const plan::Reinforcement& given : wall.layers) there.push_back(extents(profile, given));
  double worst = limit + 1e-4, from = 0, to = 0;
  for (const Stretch& one : all) {
    const double middle = (one.from + one.to) / 2;
    std::vector<int> courses{one.column.base, one.column.top};
    for (std::size_t k = 0; k < there.size(); ++k)
      if (std::ranges::any_of(there[k], [&](const Extent& e) { return e.from < middle && middle < e.to; }))
        courses.push_back(wall.layers[k].on_course);
    if (courses.size() == 2) continue;  // no layers here
    std::ranges::sort(courses);
    for (std::size_t i = 0; i + 1 < courses.size(); ++i) {
      const double apart = (courses[i + 1] - courses[i]) * profile.course_height;
      if (apart <= worst) continue;
      worst = apart;
      from = one.from;
      to = one.to;
    }
  }
  if (to <= from) return;
  share.problems.push_back(flag(
      "layer-spacing",
      "layers leave " + shown(worst) + " of height without one, over " + shown(limit) + ", " + between(job, from, to),
      engineer, id()));
}

void Maker::layer(std::size_t k) {
  const catalogue::Item* item = item_for(k);
  if (!item || !on_courses(k)) return;
  top_rule(k);
  length_rule(k);
  meet(k);
  if (!right_way(k, *item)) return;
  if (wall.layers[k].along) {
    along_the_wall(k, *item);
  } else {
    across_the_wall(k, *item);
  }
}

void Maker::buy(RollCuts& cuts, double& metres, double& area, int& strips, int& saved) {
  plan_rolls(cuts, job.heading.units);
  std::vector<Working> laid;
  int bought = 0;
  for (const RollCuts::Pieces& one : cuts.pieces) {
    strips += one.strips;
    saved += one.saved();
    bought += one.bought();
    area += one.covered;
    const double length = one.length.metres().si();
    Working pieces = term("strips", one.strips, units::piece, id());
    if (one.saved() > 0)
      pieces = Working::difference(pieces, term("from the other half of one", one.saved(), units::piece, id()));
    laid.push_back(Working::product({pieces, term("cut to", length, units::metre, id())}));
  }
  if (bought == 0) return;
  const Working off_the_roll = Working::sum(std::move(laid)).named("off the roll");
  metres += off_the_roll.amount().value;
  const bool one_length = cuts.pieces.size() == 1;
  const double whole = cuts.item->length->metres().si();
  const double from_a_roll = std::floor(whole / cuts.pieces.front().length.metres().si() + 1e-9);
  Working count =
      one_length ? Working::up(Working::quotient(
                       term("strips of " + shown(cuts.pieces.front().length.metres().si()), bought, units::piece, id()),
                       term("strips from a roll", from_a_roll, units::piece, cuts.item->id + "/length")))
                 : Working(term("rolls of the cut plan", cuts.rolls, units::piece, id()));
  const std::string text =
      "reinforcement of the wall, cut plan: " + cuts.in_words +
      (cuts.rolls > cuts.bound ? " (no plan does with fewer than " + std::to_string(cuts.bound) + ")" : "");
  // The cut plan has no more to lose than its own leftovers.
  share.lines.push_back({Stage::wall, cuts.item->id, text, {id()}, count.named("rolls"), 0.0, false});
  edges::add_task(job, "wall-grid", Stage::wall, "reinforcement, cut, pulled tight and pinned", id(),
                  Working::product({off_the_roll, term("roll width", cuts.item->width->metres().si(), units::metre,
                                                       cuts.item->id + "/width")}),
                  share);
}

void Maker::finish() {
  double metres = 0, area = 0;
  int strips = 0, saved = 0, count = 0;
  for (RollCuts& cuts : rolls) {
    buy(cuts, metres, area, strips, saved);
    count += cuts.rolls;
  }
  share.measures.put("grid_strips", strips);
  share.measures.put("grid_strips_saved", saved);
  share.measures.put("grid_roll_length_m", metres);
  share.measures.put("grid_rolls", count);
  share.measures.put("grid_design_area_m2", area);
}

}  // namespace

Share reinforcement(const plan::Job& job, const plan::Site& site, const plan::Ground& ground, const Profile& profile,
                    const Blocks& blocks) {
  const auto* wall = std::get_if<plan::Wall>(&ground.element->kind);
  if (!wall || wall->layers.empty() || profile.columns.empty()) return {};
  Maker maker{job, site, ground, *wall, profile, blocks, {}, {}, stretches(profile, *wall), {}, {}};
  maker.share.measures.element = ground.element->id;
  for (std::size_t k = 0; k < wall->layers.size(); ++k) maker.layer(k);
  maker.spacing_rule();
  maker.finish();
  return std::move(maker.share);
}

}  // namespace takeoff::walls
