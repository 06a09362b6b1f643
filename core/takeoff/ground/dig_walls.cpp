// The base of a wall, the bank behind it, and what is filled again behind the stone.
#include <algorithm>
#include <cmath>
#include <numbers>

#include "takeoff/ground/digger.h"
#include "takeoff/ground/slopes.h"
#include "takeoff/ground/wall_cut.h"

namespace takeoff::ground {

namespace {

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
      for (const walls::Stretch& stretch : all) cut(leg, stretch, all, *profile, hole);
      d.lie.add(std::move(hole));
    }
    if (length_ <= 0) return;
    open_corners(all);
    if (!d.terrain.existing || d.terrain.existing->empty())
      d.say(problem::Severity::notice, "wall-dig-ground",
            "no levels of the ground as it lies are known: the wall is dug from the ground in front and behind as "
            "given with it",
            "enter levels of the ground as it lies", id_);
    put();
  }

 private:
  std::vector<Other> others(const walls::Stretch& stretch, const std::vector<walls::Stretch>& all,
                            const walls::Profile& profile) const {
    std::vector<Other> found;
    const auto look = [&](double corner, double turn, double walls::Stretch::* meets, double there) {
      for (const walls::Stretch& one : all)
        if (turn > 0 && std::abs(one.*meets - there) < 1e-6) {
          const walls::Section own = walls::section(profile, need_.behind, one);
          found.push_back({corner, std::tan(std::min(turn, 3.0) / 2), need_.back(one),
                           need_.behind.depth + own.column + own.fill, (one.leg_to - one.leg_from) * std::sin(turn)});
        }
    };
    const double end = profile.length, first = stretch.leg_from, last = stretch.leg_to;
    look(first, stretch.corner_before, &walls::Stretch::to, profile.closed && first < 1e-6 ? end : first);
    look(last, stretch.corner_after, &walls::Stretch::from, profile.closed && last > end - 1e-6 ? 0 : last);
    return found;
  }

  // Cut anew wherever what is filled with the other leg of a corner begins or ends.
  void cut(const LegOfPath& leg, const walls::Stretch& stretch, const std::vector<walls::Stretch>& all,
           const walls::Profile& profile, Hole& hole) {
    const double from = std::max(stretch.from, leg.from), to = std::min(stretch.to, leg.from + leg.length);
    if (to - from < 1e-6) return;
    const Cutter cutter{d,
                        need_,
                        profile,
                        leg,
                        stretch,
                        wall_.behind == geometry::Side::left ? 1.0 : -1.0,
                        others(stretch, all, profile)};
    const walls::Section own = walls::section(profile, need_.behind, stretch);
    std::vector<double> places{from, to};
    for (const Other& other : cutter.others)
      for (const double across : {need_.depth, need_.depth + need_.pad_past, need_.rear(), need_.depth + own.column,
                                  need_.depth + own.column + own.fill, cutter.back(), other.reach, other.zone})
        for (const double way : {-1.0, 1.0}) {
          const double place = other.corner + way * across * other.slope;
          if (place > from + 1e-3 && place < to - 1e-3) places.push_back(place);
        }
    std::ranges::sort(places);
    for (std::size_t i = 0; i + 1 < places.size(); ++i)
      if (places[i + 1] - places[i] > 1e-6) part(cutter, places[i], places[i + 1], hole);
  }

  void part(Cutter cutter, double from, double to, Hole& hole) {
    cutter.from = from, cutter.to = to;
    const auto at = [&](double station) { return cutter.slice(station); };
    const auto measure = [&](const Slice& slice, const Section& section) { return cutter.measure(slice, section); };
    const Along run = along(from, to, at, d.lie.asked(), measure, hole);
    length_ += run.length;
    sums_.resize(Cutter::numbers);
    for (std::size_t i = 0; i < run.volumes.size(); ++i) sums_[i] += run.volumes[i];
    deepest_ = std::max(deepest_, run.deepest);
    way_out_ += run.as_deep_as(d.limit("dig-egress", 48));
    protect_ += run.as_deep_as(d.limit("dig-protect", 60));
  }

  Working sum(const std::string& name, double volume) const { return of_sections(name, length_, volume, id_); }

  void put() {
    const double base = sums_[Cutter::base_trench], bank = std::max(0.0, sums_[Cutter::all] - base);
    const double refill = sums_[Cutter::refill], earth = sums_[Cutter::own_earth];
    std::optional<Working> fill;
    if (refill + earth > 1e-9) {
      std::vector<Working> parts{sum("filled again, less base, blocks and stone", refill)};
      if (earth > 1e-9) parts.push_back(sum("earth over the stone and in the reinforced zone", earth));
      fill = Working::sum(std::move(parts)).named("backfill of " + id_);
    }
    const bool bank_dug = bank > 1e-6;
    d.measured(id_, "dig_base_m3", base);
    d.measured(id_, "dig_bank_m3", bank);
    d.measured(id_, "backfill_m3", refill + earth);
    d.measured(id_, "dig_deepest_m", deepest_);
    d.dug({.text = "base of " + id_,
           .of = {id_},
           .bank = sum("bank volume of the base of " + id_, base),
           .fill = bank_dug ? std::nullopt : fill,
           .deepest = bank_dug ? 0 : deepest_,
           .way_out = bank_dug ? 0 : way_out_,
           .protect = bank_dug ? 0 : protect_,
           .trench = true});
    if (bank_dug)
      d.dug({.text = "bank behind " + id_,
             .of = {id_},
             .bank = sum("bank volume behind " + id_, bank),
             .fill = fill,
             .deepest = deepest_,
             .way_out = way_out_,
             .protect = protect_});
    if (refill > 1e-9)
      d.task(Stage::wall, "wall-fill", "backfill of " + id_ + ", compacted volume", {id_},
             sum("filled again, less base, blocks and stone", refill));
    d.topsoil_off({id_}, sums_[Cutter::virgin]);
    ledge();
    hollow();
  }

  // The two cross-sections at such a corner leave out what lies between them.
  void open_corners(const std::vector<walls::Stretch>& all) {
    const double little = std::numbers::pi / 12;  // less of a turn opens little
    const auto count = std::ranges::count_if(all, [little](const walls::Stretch& one) {
      return one.corner_after < -little && std::abs(one.to - one.leg_to) < 1e-6;
    });
    if (!need_.retaining || count == 0) return;
    d.say(problem::Severity::notice, "wall-open-corner",
          "the earth in the open corner behind the wall, where it turns away from its fill, is in neither digging nor "
          "fill" +
              std::string(count > 1 ? " (" + std::to_string(count) + " corners)" : ""),
          "add it by eye, or draw the wall there as a curve", id_);
  }

  void hollow() {
    const double mean = sums_[Cutter::hollow] / length_;
    if (mean > 1e-3)
      d.say(problem::Severity::flag, "wall-over-ground",
            "the base of the wall stands " + d.shown(mean) +
                " (mean) above the ground as it lies; the fill under it is "
                "not counted",
            "lower the base to firm ground, or a licensed engineer says what is filled under it and how it is tested",
            id_);
  }

  // What is filled stops at the back of the hole; the ground beyond it is no part of the wall.
  void ledge() {
    constexpr double little = 0.1;
    const double mean = sums_[Cutter::ledge] / length_;
    if (mean > little)
      d.say(problem::Severity::notice, "fill-behind-ends",
            "the fill behind the wall ends " + d.shown(mean) +
                " (mean) above the ground as it lies there; earth to lead the ground on from it is not counted",
            "enter the ground behind as it shall be, or order that fill with the finish of the yard", id_);
  }

  Digger& d;
  const plan::Ground& ground_;
  const plan::Wall& wall_;
  const plan::ElementId& id_;
  Needs need_;
  double length_ = 0, deepest_ = 0, way_out_ = 0, protect_ = 0;
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
