#include <algorithm>
#include <cmath>

#include "takeoff/edges/notes.h"
#include "takeoff/walls/flight.h"
#include "takeoff/walls/glue.h"
#include "takeoff/walls/pad.h"
#include "takeoff/walls/walls.h"
#include "units/number.h"

namespace takeoff::walls {

namespace {

using edges::Bound;
constexpr double inch = units::metres_per_inch;
constexpr double joint_play = 0.125 * inch;
constexpr double as_good_as = 0.001;  // metres: 50 mm is what a metric job calls 2 in

// The sizes that a flight is made from, metres.
struct Made {
  const catalogue::Item* unit = nullptr;
  const catalogue::Item* block = nullptr;  // under slabs
  bool slab = false;
  double length = 0, depth = 0, height = 0;
  double lap = 0, overhang = 0;
};

struct Rules {
  double least = 0, greatest = 0, usual = 0;  // of a riser
  double tread = 0;                           // least
  double spread = 0;
};

Rules rules_of(const plan::Job& job, bool public_way) {
  const std::string where = public_way ? "public" : "dwelling";
  Rules rules;
  rules.least = edges::limit_inches(job, "riser-" + where, Bound::least, 4);
  rules.greatest = edges::limit_inches(job, "riser-" + where, Bound::greatest, public_way ? 7 : 7.75);
  rules.usual = job.catalogue->length_limit("riser-" + where, units::Length::inches(6)).metres().si();
  rules.tread = edges::limit_inches(job, "tread-" + where, Bound::least, public_way ? 11 : 10);
  rules.spread = edges::limit_inches(job, "riser-spread", Bound::greatest, 0.375);
  return rules;
}

bool sized(const catalogue::Item& item) {
  return item.length && item.width && item.height && item.length->steps() > 0 && item.width->steps() > 0 &&
         item.height->steps() > 0;
}

std::optional<Made> made_of(const plan::Job& job, const plan::Steps& steps, const plan::ElementId& of, Share& share) {
  Made made;
  made.unit = edges::wanted(job, steps.unit, "the steps", of, share);
  if (!made.unit) return std::nullopt;
  made.slab = made.unit->kind == "tread";
  if (!steps.riser_block.empty()) made.block = edges::wanted(job, steps.riser_block, "the risers", of, share);
  for (const catalogue::Item* item : {made.unit, made.block}) {
    if (!item || sized(*item)) continue;
    share.problems.push_back(edges::fault("step-unit", "the item " + item->id + " has no length, depth or height",
                                          "give all three in the catalogue", of));
    return std::nullopt;
  }
  made.length = made.unit->length->metres().si();
  made.depth = made.unit->width->metres().si();
  made.height = made.unit->height->metres().si();
  made.lap = steps.lap.metres().si();
  made.overhang = made.slab ? steps.overhang.metres().si() : 0;
  return made;
}

// Courses of blocks under a slab: they reach the riser, and are let down where they are too high.
int courses_under(const Made& made, double riser) {
  const double height = made.block->height->metres().si();
  return std::max(1, static_cast<int>(std::ceil((riser - made.height - joint_play) / height)));
}

// A riser that its units fix. A slab that the next riser stands beside, not on, can be set at any height.
std::optional<double> fixed_riser(const Made& made, const Rules& rules) {
  if (!made.slab) return made.height;
  if (made.lap <= 0 || !made.block) return std::nullopt;
  const double block = made.block->height->metres().si();
  const double courses = std::max(1.0, std::round((rules.usual - made.height) / block));
  return made.height + courses * block;
}

double shared_out(double rise, double tread_fall, int risers) { return (rise - (risers - 1) * tread_fall) / risers; }

// Of the numbers that keep the limits, the one nearest to the usual riser; of two as near the smaller number.
int risers_within(double rise, double tread_fall, const Rules& rules) {
  int best = 0;
  double off = 0;
  const int most = static_cast<int>(std::min(1000.0, std::ceil(rise / rules.least))) + 1;
  for (int n = 1; n <= most; ++n) {
    const double riser = shared_out(rise, tread_fall, n);
    if (riser < rules.least - 1e-9 || riser > rules.greatest + 1e-9) continue;
    if (best != 0 && std::abs(riser - rules.usual) >= off - 1e-9) continue;
    best = n;
    off = std::abs(riser - rules.usual);
  }
  return best != 0 ? best : std::max(1, static_cast<int>(std::lround(rise / rules.usual)));
}

Flight flight_of(const plan::Job& job, const plan::Steps& steps, const Made& made, const Rules& rules, double width) {
  Flight flight;
  const double rise = steps.rise.metres().si();
  flight.width = width;
  flight.depth = made.depth;
  flight.tread = made.depth - made.lap - made.overhang;
  flight.fall = steps.tread_fall.value_or(job.catalogue->number_limit("tread-pitch", 0.125) / 12);
  const double tread_fall = flight.tread * flight.fall;
  const std::optional<double> fixed = fixed_riser(made, rules);
  if (steps.risers > 0)
    flight.risers = steps.risers;
  else if (fixed)
    flight.risers = std::max(1, static_cast<int>(std::lround((rise + tread_fall) / (*fixed + tread_fall))));
  else
    flight.risers = risers_within(rise, tread_fall, rules);
  flight.riser = fixed.value_or(shared_out(rise, tread_fall, flight.risers));
  flight.lowest = rise - (flight.risers - 1) * (flight.riser + tread_fall);
  return flight;
}

class Sayer {
 public:
  Sayer(const plan::Job& job, const plan::ElementId& of, Share& share) : job_(job), of_(of), share_(share) {}
  std::string shown(double metres) const { return edges::shown(job_, metres); }
  void fault(const char* code, const std::string& text, const std::string& mend) {
    share_.problems.push_back(edges::fault(code, text, mend, of_));
  }
  void flag(const char* code, const std::string& text, const std::string& mend) {
    share_.problems.push_back(edges::flag(code, text, mend, of_));
  }
  void notice(const char* code, const std::string& text, const std::string& mend) {
    share_.problems.push_back(edges::notice(code, text, mend, of_));
  }

 private:
  const plan::Job& job_;
  plan::ElementId of_;
  Share& share_;
};

void check_risers(const Flight& flight, const Rules& rules, Sayer& say) {
  const double rest = flight.lowest - flight.riser;
  const std::string others = flight.risers == 1 ? ""
                                                : " and the " + std::to_string(flight.risers - 1) + " above it are " +
                                                      say.shown(flight.riser) + " each";
  if (flight.lowest <= 0) {
    say.fault("risers-differ",
              "the " + std::to_string(flight.risers - 1) + " risers over the lowest, " + say.shown(flight.riser) +
                  " each with the treads' fall, come out higher than the whole rise",
              "take fewer risers, or correct the level of the landing or the foot");
    return;
  }
  if (std::abs(rest) > rules.spread + 1e-9) {
    say.fault("risers-differ",
              "the lowest riser comes out at " + say.shown(flight.lowest) + others + ": over " +
                  say.shown(rules.spread) + " apart",
              "take another number of risers or another unit, or move the level of the landing or the foot");
  } else if (std::abs(rest) > inch / 16) {
    say.notice("steps-rest", "the lowest riser comes out at " + say.shown(flight.lowest) + others,
               "move the level of the landing or the foot by the difference to make them equal");
  }
  const double least = std::min(flight.riser, flight.lowest);
  const double greatest = std::max(flight.riser, flight.lowest);
  if (least >= rules.least - 1e-9 && greatest <= rules.greatest + 1e-9) return;
  say.fault("riser-limit",
            "risers of " + say.shown(least >= rules.least - 1e-9 ? greatest : least) + " lie outside " +
                say.shown(rules.least) + " to " + say.shown(rules.greatest),
            "change the number of risers; local code decides, and the limit is the catalogue's");
}

std::string pitch_words(const plan::Job& job, double share) {
  if (job.heading.units == units::System::metric) return units::show_number(share * 100, 1) + " %";
  return units::show_number(share * 12, 3) + " in per ft";
}

void check_treads(const plan::Job& job, const Flight& flight, const Rules& rules, Sayer& say) {
  if (flight.tread < rules.tread - 1e-9)
    say.fault("tread-limit",
              "treads of " + say.shown(flight.tread) + " are under the least of " + say.shown(rules.tread),
              "lap the units less or take deeper ones; local code decides, and the limit is the catalogue's");
  const double stride = 2 * flight.riser + flight.tread;
  const double least = edges::limit_inches(job, "stride", Bound::least, 22);
  const double greatest = edges::limit_inches(job, "stride", Bound::greatest, 30);
  if (stride < least - 1e-9 || stride > greatest + 1e-9)
    say.notice("steps-stride",
               "two risers and a tread make " + say.shown(stride) + ", outside " + say.shown(least) + " to " +
                   say.shown(greatest) + " for an easy step outdoors",
               "change riser or tread");
  const auto pitch = job.catalogue->limits.find("tread-pitch");
  const double most = pitch == job.catalogue->limits.end() ? 0.25 : pitch->second.greatest.value_or(0.25);
  if (flight.fall < 0)
    say.fault("tread-pitch", "the treads fall backwards, so that water stands against the risers",
              "enter a fall of 0 or more");
  else if (flight.fall * 12 > most + 1e-9)
    say.flag("tread-pitch",
             "the treads fall " + pitch_words(job, flight.fall) + ", over " + pitch_words(job, most / 12),
             "lay them flatter; the building inspector decides (IRC R311.7, from memory)");
}

void check_outline(const Flight& flight, const Sides& drawn, Sayer& say) {
  if (!drawn.rectangle)
    say.notice("steps-outline", "the outline is no rectangle along the way up, so it is counted by its longest sides",
               "draw four square corners, or turn the way up");
  if (std::abs(drawn.along - flight.run()) > inch / 2)
    say.notice("steps-footprint",
               "the flight takes " + say.shown(flight.run()) + " of the plan along the way up, and the outline has " +
                   say.shown(drawn.along),
               "draw the outline as long as the flight");
}

// What a flight asks of people who decide: none of it is decided here.
void raise_flags(const plan::Job& job, const plan::Steps& steps, const Flight& flight, const Made& made, Sayer& say) {
  const double rise = steps.rise.metres().si();
  const double landing = edges::limit_inches(job, "steps-landing", Bound::greatest, 36);
  const double drop = edges::limit_inches(job, "guard-drop", Bound::greatest, 30);
  if (rise > landing + 1e-9)
    say.flag("steps-landing", "the flight rises " + say.shown(rise) + " without a landing, over " + say.shown(landing),
             "break it with a landing; the building inspector decides (common practice; IRC R311.7, from memory)");
  if (flight.risers >= job.catalogue->number_limit("steps-handrail", 4))
    say.flag("steps-handrail", "a flight of " + std::to_string(flight.risers) + " risers wants a handrail",
             "plan one; the building inspector decides (IRC R311.7, from memory)");
  int high = 0;
  for (int i = 1; i <= flight.risers; ++i) high += flight.level(i) > drop + 1e-9 ? 1 : 0;
  if (high > 0)
    say.flag("steps-guard",
             (high == 1 ? "the sides of the uppermost tread, "
                        : "the sides of the upper " + std::to_string(high) + " treads, ") +
                 say.shown(high * flight.tread) + " on each side, stand over " + say.shown(drop) + " above the foot",
             "plan a guard unless the ground beside is as high; the building inspector decides (IRC R312.1)");
  if (made.slab)
    say.flag("steps-frost", "slab treads set in mortar do not follow ground that frost lifts",
             "plan a footing to the local frost depth; the building inspector decides (common practice)");
  if (steps.build_up.empty())
    say.flag("steps-base",
             "the lowest unit stands on no base: without one it is buried by a quarter of its height, " +
                 say.shown(made.height / 4),
             "choose a build-up under the steps; the crew lead decides (common practice)");
  if (!made.slab && flight.risers > 1 && made.lap < edges::limit_inches(job, "step-lap", Bound::least, 2) - as_good_as)
    say.flag("steps-lap", "each unit lies only " + say.shown(made.lap) + " on the one below",
             "lap them by " + say.shown(edges::limit_inches(job, "step-lap", Bound::least, 2)) +
                 " or more; the crew lead decides (common practice)");
  say.notice("steps-light", "steps outdoors want light on every tread",
             "plan it with the electrician; local code decides (from memory)");
}

// Rows of one unit over the width, all alike; where it is cut the cut end changes sides from row to row.
void add_rows(const plan::Job& job, const catalogue::Item& item, int rows, const std::string& what, double width,
              const plan::ElementId& of, Share& share, std::int64_t& laid, std::int64_t& cut) {
  const double unit = item.length->metres().si();
  const Across row = across(width, unit);
  std::vector<double> pieces;
  for (int i = 0; i < rows; ++i) pieces.insert(pieces.end(), row.cut.begin(), row.cut.end());
  cut = static_cast<std::int64_t>(pieces.size());
  laid = static_cast<std::int64_t>(rows) * row.pieces();
  const std::int64_t for_cut =
      units_for(pieces, unit, job.choices.kerf.metres().si(), job.choices.reuse != plan::Reuse::none);
  const Working whole =
      Working::product({term("rows", rows, units::piece, of), term("whole in a row", row.whole, units::piece, of)});
  const Working needed = for_cut == 0 ? whole
                                      : Working::sum({whole, term("bought for " + std::to_string(cut) + " cut pieces",
                                                                  static_cast<double>(for_cut), units::piece, of)});
  share.lines.push_back({Stage::coping, item.id, what, {of}, needed, {}, false});
  for (std::size_t i = 0; i < row.cut.size(); ++i)
    share.cuts.push_back({of, item.id, what, "across the flight, the cut end inside", rows, row.cut[i], 0,
                          item.width->metres().si(), item.height->metres().si(), i == 0 ? "left" : "right", false});
  edges::add_weight(job, item, laid, of, share);
  if (cut > 0)
    edges::add_task(job, "wall-cut", Stage::coping, "cut " + what, of,
                    Working(term("cut pieces", static_cast<double>(cut), units::piece, of)), share);
}

void add_units(const plan::Job& job, const Flight& flight, const Made& made, const plan::ElementId& of, Share& share) {
  std::int64_t laid = 0, cut = 0;
  add_rows(job, *made.unit, flight.risers, made.slab ? "treads" : "step units", flight.width, of, share, laid, cut);
  share.measures.put("step_units", static_cast<double>(laid));
  edges::add_task(job, made.slab ? "tread-set" : "step-block", Stage::coping, made.slab ? "treads" : "step units", of,
                  Working(term("pieces set", static_cast<double>(laid), units::piece, of)), share);
  if (made.block) {
    std::int64_t blocks = 0, blocks_cut = 0;
    const int courses = courses_under(made, flight.riser);
    add_rows(job, *made.block, flight.risers * courses, "blocks under the treads", flight.width, of, share, blocks,
             blocks_cut);
    share.measures.put("riser_blocks", static_cast<double>(blocks));
    cut += blocks_cut;
    edges::add_task(job, "seat-block", Stage::coping, "blocks under the treads", of,
                    Working(term("blocks set", static_cast<double>(blocks), units::piece, of)), share);
  }
  share.measures.put("steps_cut", static_cast<double>(cut));
}

void add_base(const plan::Job& job, const plan::Steps& steps, const Flight& flight, const plan::ElementId& of,
              Share& share, Sayer& say) {
  if (steps.build_up.empty()) return;
  const std::optional<Working> volume =
      add_pad(job, steps.build_up, flight.run(), flight.width, Stage::coping,
              "base under each tread, the ground below cut or filled to follow the flight", of, share);
  if (!volume) return;
  share.measures.put("step_base_m3", volume->amount().value);
  const auto& layers = job.catalogue->build_up(steps.build_up)->layers;
  const bool dense = std::ranges::any_of(layers, [&](const catalogue::Layer& layer) {
    const catalogue::Item* item = job.catalogue->item(layer.item);
    return item && item->kind == "aggregate" && !item->number("porosity");
  });
  if (dense)
    say.notice("steps-drain", "the base under the treads is dense, and holds water behind each riser",
               "slope it forward, or lay open stone with a way out (common practice)");
}

// What no flight is: said, and nothing is counted.
bool possible(const plan::Steps& steps, Sayer& say) {
  constexpr double tall = 100;  // metres
  if (steps.rise.steps() <= 0 || steps.risers < 0) {
    say.fault("steps-rise", "the steps have no rise above 0, or a number of risers under 0",
              "enter the height from the ground at the foot to the landing");
    return false;
  }
  const bool high = steps.rise.metres().si() > tall || (steps.cheeks && steps.cheeks->above.metres().si() > tall);
  if (high || steps.risers > 1000) {
    say.fault("steps-rise", "the steps are over " + say.shown(tall) + " high or have over 1,000 risers",
              "enter the height from the ground at the foot to the landing, and break the flight with landings");
    return false;
  }
  if (std::abs(steps.tread_fall.value_or(0)) <= 1) return true;
  say.fault("tread-pitch", "the treads fall more than they run", "enter their fall as a share: 0.01 is 1 %");
  return false;
}

}  // namespace

Across across(double width, double unit) {
  const int count = std::max(1, static_cast<int>(std::ceil((width - joint_play) / unit)));
  const double last = width - (count - 1) * unit;
  if (last >= unit - joint_play) return {count, {}};
  if (count == 1 || last >= unit / 3) return {count - 1, {last}};
  return {count - 2, {(unit + last) / 2, (unit + last) / 2}};
}

std::int64_t units_for(std::vector<double> pieces, double unit, double kerf, bool reuse) {
  std::int64_t count = static_cast<std::int64_t>(pieces.size());
  if (!reuse) return count;
  std::ranges::sort(pieces);
  std::size_t small = 0, large = pieces.size();
  while (small + 1 < large) {
    --large;
    if (pieces[small] + pieces[large] + kerf > unit + 1e-9) continue;
    ++small;
    --count;
  }
  return count;
}

Share steps(const plan::Job& job, const plan::Site&, const plan::Ground& ground) {
  const auto* what = std::get_if<plan::Steps>(&ground.element->kind);
  if (!what || ground.drawn.empty()) return {};
  const plan::ElementId& id = ground.element->id;
  Share share;
  share.measures.element = id;
  Sayer say(job, id, share);
  const std::optional<Made> made = made_of(job, *what, id, share);
  if (!made) return share;
  if (!possible(*what, say)) return share;
  const units::Turn up = units::turn(what->up);
  const Sides drawn = sides(ground.drawn, {up.cosine, up.sine});
  const Rules rules = rules_of(job, what->public_way);
  const Flight flight = flight_of(job, *what, *made, rules, drawn.across);
  if (flight.tread <= 0) {
    say.fault("steps-tread", "lap and overhang leave nothing of the tread", "make them smaller than the unit is deep");
    return share;
  }
  share.measures.put("risers", flight.risers);
  share.measures.put("riser_m", flight.riser);
  share.measures.put("riser_lowest_m", flight.lowest);
  share.measures.put("tread_m", flight.tread);
  share.measures.put("stride_m", 2 * flight.riser + flight.tread);
  share.measures.put("steps_run_m", flight.run());
  check_risers(flight, rules, say);
  check_treads(job, flight, rules, say);
  check_outline(flight, drawn, say);
  add_units(job, flight, *made, id, share);
  add_base(job, *what, flight, id, share, say);
  const int glued = made->slab ? flight.risers : flight.risers - 1;
  add_glue(
      job, what->adhesive, Stage::coping, "adhesive of the steps", id,
      Working::product({term("glued rows", glued, units::piece, id), term("width", flight.width, units::metre, id)}),
      share);
  raise_flags(job, *what, flight, *made, say);
  if (what->cheeks) share.add(cheek_walls(job, *what->cheeks, flight, id));
  return share;
}

}  // namespace takeoff::walls
