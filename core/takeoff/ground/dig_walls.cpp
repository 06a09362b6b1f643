// The base of a wall, the bank behind it, and what is filled again behind the stone.
#include <algorithm>
#include <cmath>
#include <limits>

#include "takeoff/ground/digger.h"
#include "takeoff/ground/slopes.h"
#include "takeoff/walls/zone.h"

namespace takeoff::ground {

namespace {

// What a wall needs of the ground, metres across its face, positive behind it.
struct Needs {
  double depth = 0;     // of the blocks
  double pad = 0;       // thickness of the base
  double pad_past = 0;  // front and back
  double work = 0;      // room beside the base
  double slope = 0;     // of the bank
  bool retaining = true;
  bool fill_bought = false;  // of the reinforced zone
  walls::Behind behind;
  double front() const { return -(pad_past + work); }
  double rear() const { return depth + pad_past + work; }
};

Needs needs(const Digger& d, const plan::Wall& wall, const walls::Blocks& blocks) {
  Needs made;
  made.behind = walls::behind(d.job, wall, blocks);
  made.depth = made.behind.depth;
  if (const auto pad = walls::pad(d.job, wall)) {
    made.pad = pad->thickness;
    made.pad_past = pad->past;
  }
  made.work = d.limit("trench-side", 6);
  made.slope = side_slope(d.job.choices.soil.stands);
  made.retaining = !wall.free_standing;
  made.fill_bought = wall.stone && !wall.stone->fill.empty();
  return made;
}

// One stretch of one leg, cut through wherever it is asked for.
struct Cutter {
  Digger& d;
  const Needs& need;
  const walls::Profile& profile;
  const LegOfPath& leg;
  const walls::Stretch& stretch;
  double side = 1;  // +1: the body lies to the left of the line

  double height(const walls::Heights& heights, double station) const {
    return station - stretch.from < stretch.to - station ? heights.after(station) : heights.before(station);
  }
  double base() const { return profile.base_level(stretch.column); }
  double under() const { return base() - need.pad; }
  // Where the bank begins to go up.
  double back() const {
    if (!need.retaining) return need.rear();
    return std::max({need.rear(), need.depth + need.behind.stone_depth, stretch.reach});
  }

  Slice slice(double station) const {
    const Frame at = frame(leg, station);
    Slice made;
    made.station = station;
    made.at = at.at;
    made.across = side * at.left;
    made.turn = side * at.turn;
    made.bottom = {{need.front(), under()}, {need.rear(), under()}};
    if (back() > need.rear() + 1e-6) {
      made.bottom.push_back({need.rear(), base()});
      made.bottom.push_back({back(), base()});
    }
    if (need.retaining) made.slope_after = need.slope;
    const double front = height(profile.ground, station), behind = height(profile.behind, station);
    const double middle = need.depth / 2;
    made.given = [front, behind, middle](double across) { return across < middle ? front : behind; };
    return made;
  }

  // The trench alone: what lies over the ground in front belongs to the bank.
  Section trench(const Slice& whole, double front) const {
    Slice low = whole;
    low.bottom.resize(2);
    low.slope_after = 0;
    return section(low, [this, front](geometry::Point point, double otherwise) {
      auto lies = d.lie.at(point, otherwise);
      if (lies) lies->level = std::min(lies->level, front);
      return lies;
    });
  }

  // Dug in all, in the trench; virgin width; filled again beside and behind; of earth that the wall's own stone asks
  // for (reinforced zone and cap).
  enum { all, base_trench, virgin, refill, own_earth, numbers };
  std::vector<double> measure(const Slice& at, const Section& cut) const {
    const double station = at.station;
    std::vector<double> found(numbers);
    const double front = height(profile.ground, station), turn = at.turn;
    const Section low = trench(at, front);
    found[all] = cut.area(turn);
    found[base_trench] = std::min(found[all], low.area(turn));
    found[virgin] = cut.virgin_width(turn);
    const double pad_past = need.pad_past * need.pad;
    const auto width = [turn](double from, double to) { return (to - from) * (1 - turn * (from + to) / 2); };
    found[refill] = std::max(0.0, low.area(turn, need.front(), 0) - pad_past);
    if (!need.retaining) {
      found[refill] += std::max(0.0, cut.area(turn, need.depth, need.rear()) - pad_past);
      return found;
    }
    // Up to the ground as it shall be behind the wall, or to the formation of what is built there.
    const geometry::Point middle = at.place((need.depth + back()) / 2);
    double top = height(profile.behind, station);
    if (const auto formation = d.lie.formation(middle, top)) top = std::min(top, *formation);
    const double rear = need.rear(), end = back();
    const double space = std::max(0.0, top - under()) * width(need.depth, rear) +
                         std::max(0.0, top - base()) * (end > rear ? width(rear, end) : 0);
    const walls::Section own = walls::section(profile, need.behind, stretch);
    const double stone_end = need.depth + own.column, zone_end = stone_end + own.fill;
    const double column = own.height * width(need.depth, stone_end);
    const double zone = own.height * (own.fill > 0 ? width(stone_end, zone_end) : 0);
    const double cap = own.cap * width(need.depth, zone_end);
    found[own_earth] = cap + (need.fill_bought ? 0 : zone);
    found[refill] += std::max(0.0, space - pad_past - column - zone - cap) + cut.area(turn, end, 1e9);
    return found;
  }
};

class WallDig {
 public:
  WallDig(Digger& digger, const plan::Ground& ground, const plan::Wall& wall)
      : d(digger), ground_(ground), wall_(wall), id_(ground.element->id) {}

  void dig() {
    Share ignored;  // the wall's own trade says what is wrong with it
    const auto blocks = walls::chosen_blocks(d.job, wall_, id_, ignored);
    const auto profile = blocks ? walls::profile(d.job, ground_, blocks->block, ignored) : std::nullopt;
    if (!profile)
      return d.say(problem::Severity::notice, "wall-not-dug",
                   "the digging for this wall is not worked out, as the wall itself is not",
                   "mend what is said of the wall first", id_);
    need_ = needs(d, wall_, *blocks);
    const std::vector<walls::Stretch> all = walls::stretches(*profile, wall_);
    for (const LegOfPath& leg : legs_of(*ground_.path)) {
      Hole hole;
      for (const walls::Stretch& stretch : all) cut(leg, stretch, *profile, hole);
      d.lie.add(std::move(hole));
    }
    if (length_ <= 0) return;
    if (!d.terrain.existing || d.terrain.existing->empty())
      d.say(problem::Severity::notice, "wall-dig-ground",
            "no levels of the ground as it lies are known: the wall is dug from the ground in front and behind as "
            "given with it",
            "enter levels of the ground as it lies", id_);
    put();
  }

 private:
  void cut(const LegOfPath& leg, const walls::Stretch& stretch, const walls::Profile& profile, Hole& hole) {
    const double from = std::max(stretch.from, leg.from), to = std::min(stretch.to, leg.from + leg.length);
    if (to - from < 1e-6) return;
    const Cutter cutter{d, need_, profile, leg, stretch, wall_.behind == geometry::Side::left ? 1.0 : -1.0};
    const auto at = [&](double station) { return cutter.slice(station); };
    const auto measure = [&](const Slice& slice, const Section& section) { return cutter.measure(slice, section); };
    const Along run = along(from, to, at, d.lie.asked(), measure, hole);
    length_ += run.length;
    sections_ += run.sections;
    sums_.resize(Cutter::numbers);
    for (std::size_t i = 0; i < run.volumes.size(); ++i) sums_[i] += run.volumes[i];
    deepest_ = std::max(deepest_, run.deepest);
    way_out_ += run.as_deep_as(d.limit("dig-egress", 48));
    protect_ += run.as_deep_as(d.limit("dig-protect", 60));
  }

  Working sum(const std::string& name, double volume) const {
    return of_sections(name, length_, volume, sections_, id_);
  }

  void put() {
    const double base = sums_[Cutter::base_trench], bank = std::max(0.0, sums_[Cutter::all] - base);
    const double refill = sums_[Cutter::refill], earth = sums_[Cutter::own_earth];
    std::optional<Working> fill;
    if (refill + earth > 1e-9)
      fill = Working::sum({sum("filled again, less base, blocks and stone", refill),
                           sum("earth over the stone and in the reinforced zone", earth)})
                 .named("backfill");
    const bool bank_dug = bank > 1e-6;
    d.measured(id_, "dig_base_m3", base);
    d.measured(id_, "dig_bank_m3", bank);
    d.measured(id_, "backfill_m3", refill + earth);
    d.measured(id_, "dig_deepest_m", deepest_);
    d.dug({.text = "base of " + id_,
           .of = {id_},
           .bank = sum("bank volume of the base", base),
           .fill = bank_dug ? std::nullopt : fill,
           .deepest = bank_dug ? 0 : deepest_,
           .way_out = bank_dug ? 0 : way_out_,
           .protect = bank_dug ? 0 : protect_,
           .trench = true});
    if (bank_dug)
      d.dug({.text = "bank behind " + id_,
             .of = {id_},
             .bank = sum("bank volume behind the wall", bank),
             .fill = fill,
             .deepest = deepest_,
             .way_out = way_out_,
             .protect = protect_});
    if (refill > 1e-9)
      d.task(Stage::wall, "wall-fill", "backfill of " + id_ + ", compacted volume", {id_},
             sum("filled again, less base, blocks and stone", refill));
    d.topsoil_off({id_}, sums_[Cutter::virgin]);
  }

  Digger& d;
  const plan::Ground& ground_;
  const plan::Wall& wall_;
  const plan::ElementId& id_;
  Needs need_;
  double length_ = 0, deepest_ = 0, way_out_ = 0, protect_ = 0;
  int sections_ = 0;
  std::vector<double> sums_;
};

}  // namespace

void dig_walls(Digger& digger) {
  for (const auto& ground : digger.site.grounds) {
    const auto* wall = std::get_if<plan::Wall>(&ground->element->kind);
    if (wall && !wall->existing && ground->path) WallDig(digger, *ground, *wall).dig();
  }
}

}  // namespace takeoff::ground
