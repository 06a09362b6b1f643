// Trenches of pipes, channels and sleeves.
#include <algorithm>
#include <cmath>
#include <numbers>

#include "takeoff/ground/digger.h"
#include "takeoff/ground/slopes.h"
#include "takeoff/water/water.h"

namespace takeoff::ground {

namespace {

using problem::Severity;

// Room and depths of one run, metres.
struct Needs {
  double size = 0;     // across the pipe or channel
  double width = 0;    // of the trench's bottom
  double bedding = 0;  // under the invert
  double stone = 0;    // height of stone in the trench
  double below = 0;    // the ground, of a sleeve or channel without levels; 0: the run goes by its invert
  double slope = 0;    // of the faces where it is as deep as the limit dig-protect
  double protect = 0;
};

double across(const Digger& d, const plan::DrainRun& run) {
  const catalogue::Item* item = d.job.catalogue->item(run.item);
  if (run.width > units::Length()) return run.width.metres().si();
  if (item && item->width) return item->width->metres().si();
  if (const auto inches = item ? item->number("nominal_diameter_in") : std::nullopt)
    return *inches * units::metres_per_inch;
  return 4 * units::metres_per_inch;
}

double height(const Digger& d, const plan::DrainRun& run) {
  const catalogue::Item* item = d.job.catalogue->item(run.item);
  return item && item->height ? item->height->metres().si() : 0;
}

Needs needs(const Digger& d, const plan::DrainRun& run) {
  Needs made;
  made.size = across(d, run);
  const double side = run.width > units::Length() ? 0 : d.limit("trench-side", 6);
  made.width = made.size + 2 * side;
  made.bedding = run.what == "sleeve" ? 0 : d.limit("pipe-bedding", 3);
  made.protect = d.limit("dig-protect", 60);
  made.slope = side_slope(d.job.choices.soil.stands);
  if (!run.start && run.inverts.empty()) {
    if (run.what == "sleeve") made.below = d.limit("sleeve-depth", 18);
    if (run.what == "channel") made.below = height(d, run) + made.bedding;
  }
  if (const catalogue::BuildUp* build_up = d.job.catalogue->build_up(run.build_up))
    for (const catalogue::Layer& layer : build_up->layers)
      if (layer.role != "fabric" && layer.thickness) made.stone += layer.thickness->metres().si();
  return made;
}

class RunDig {
 public:
  RunDig(Digger& digger, const plan::Ground& ground, const plan::DrainRun& run)
      : d(digger), ground_(ground), run_(run), id_(ground.element->id), need_(needs(digger, run)) {
    surveyed_ = d.terrain.existing && !d.terrain.existing->empty();
  }

  void dig() {
    if (!surveyed_ && need_.below <= 0)
      return d.say(Severity::problem, "trench-no-ground",
                   "the trench of " + id_ + " can't be worked out: no levels of the ground are known",
                   "enter levels of the ground as it lies", id_);
    if (need_.below <= 0 && !water::invert(d.job, run_, 0))
      return d.say(Severity::problem, "trench-no-level",
                   "the trench of " + id_ + " can't be worked out: the run has no levels",
                   "enter its level at the start and its fall, or its levels along the line", id_);
    for (const LegOfPath& leg : legs_of(*ground_.path)) {
      Hole hole;
      const Along made = along(
          leg.from, leg.from + leg.length, [&](double station) { return slice(leg, station); }, lies(),
          [this](const Slice& at, const Section& cut) {
            const double dug = cut.area(at.turn);
            if (at.slope_before > 0)
              for (const Strip& strip : cut.strips)
                reach_ = std::max({reach_, -strip.from - need_.width / 2, strip.to - need_.width / 2});
            const double depth =
                need_.width > 0 ? cut.area(at.turn, -need_.width / 2, need_.width / 2) / need_.width : 0;
            return std::vector<double>{dug, cut.virgin_width(at.turn), need_.width * std::min(need_.stone, depth)};
          },
          hole);
      add(made);
      if (surveyed_) d.lie.add(std::move(hole));
    }
    if (!surveyed_) d.by_one_depth.push_back(id_);
    put();
  }

 private:
  LiesAt lies() const { return surveyed_ ? d.lie.asked() : d.lie.asked_by_depth(); }

  // The ground as it shall be, there or just beside what shows of the run, or as it lies.
  double ground_at(const Frame& at) const {
    const double beside = (need_.width / 2 + 0.05) * units::Length::steps_per_metre;
    for (const double out : {0.0, beside, -beside})
      if (const auto finished = d.terrain.finished_at(geometry::moved(at.at, out * at.left))) return *finished;
    return d.terrain.existing_at(at.at).value_or(0);
  }

  Slice slice(const LegOfPath& leg, double station) const {
    const Frame at = frame(leg, station);
    Slice made;
    made.station = station;
    made.at = at.at;
    made.across = at.left;
    made.turn = at.turn;
    const auto invert = need_.below > 0 ? std::nullopt : water::invert(d.job, run_, station);
    const double level = invert ? *invert - need_.bedding : ground_at(at) - need_.below;
    made.bottom = {{-need_.width / 2, level}, {need_.width / 2, level}};
    if (!surveyed_) made.given = [](double) { return 0.0; };
    const auto lies = surveyed_ ? d.lie.at(at.at, level) : std::nullopt;
    if (lies && lies->level - level >= need_.protect - 1e-9) made.slope_before = made.slope_after = need_.slope;
    return made;
  }

  void add(const Along& made) {
    length_ += made.length;
    known_ = known_ && made.known;
    deepest_ = std::max(deepest_, made.deepest);
    way_out_ += made.as_deep_as(d.limit("dig-egress", 48));
    protect_ += made.as_deep_as(need_.protect);
    if (made.volumes.empty()) return;
    bank_ += made.volumes[0], virgin_ += made.volumes[1], stone_ += made.volumes[2];
  }

  void put() {
    if (!known_)
      d.say(Severity::flag, "trench-part",
            "part of the trench of " + id_ + " lies where no level of the ground is known, and is not counted",
            "take levels there", id_);
    const Working bank = of_sections("bank volume of the trench of " + id_, length_, bank_, id_);
    std::vector<Working> takes;
    if (stone_ > 0) takes.push_back(of_sections("stone round the pipe, pipe included", length_, stone_, id_));
    if (stone_ <= 0 || run_.what != "pipe") {
      const double area = run_.what == "channel" ? need_.size * (need_.bedding + height(d, run_))
                                                 : std::numbers::pi / 4 * need_.size * need_.size;
      takes.push_back(Working::product({term("length", length_, units::metre, id_),
                                        term("section of the " + run_.what, area, units::square_metre, id_)}));
    }
    std::optional<Working> fill;
    double back = bank_;
    for (const Working& one : takes) back -= one.amount().value;
    if (back > 1e-9)
      fill = Working::difference(bank, Working::sum(std::move(takes))).named("earth back in the trench of " + id_);
    d.measured(id_, "trench_m3", bank_);
    d.measured(id_, "trench_fill_m3", std::max(0.0, back));
    d.measured(id_, "dig_deepest_m", deepest_);
    if (bank_ > 1e-9) {
      if (fill)
        d.task(Stage::under_ground, "trench-fill", "earth back in the trench of " + id_ + ", compacted", {id_}, *fill);
      d.dug({.stage = Stage::under_ground,
             .text = "trench of " + id_,
             .of = {id_},
             .bank = bank,
             .fill = std::move(fill),
             .deepest = deepest_,
             .way_out = way_out_,
             .protect = protect_,
             .trench = true});
    }
    d.topsoil_off({id_}, virgin_);
    if (reach_ > 0)
      d.say(Severity::flag, "trench-sides",
            "the sides of the trench of " + id_ + ", sloped as deep trenches are counted here, run out up to " +
                d.shown(reach_) + " to a side; nothing may stand, lie or be driven there while it is open",
            "the competent person on site decides; where something is nearer it is shored instead, and its cost added",
            id_);
  }

  Digger& d;
  const plan::Ground& ground_;
  const plan::DrainRun& run_;
  const plan::ElementId& id_;
  Needs need_;
  bool surveyed_ = false, known_ = true;
  double length_ = 0, bank_ = 0, virgin_ = 0, stone_ = 0, deepest_ = 0, reach_ = 0, way_out_ = 0, protect_ = 0;
};

}  // namespace

void dig_runs(Digger& digger) {
  for (const auto& ground : digger.site.grounds) {
    const auto* run = std::get_if<plan::DrainRun>(&ground->element->kind);
    if (run && ground->path) RunDig(digger, *ground, *run).dig();
  }
}

}  // namespace takeoff::ground
