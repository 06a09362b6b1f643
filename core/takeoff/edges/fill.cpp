#include "takeoff/edges/fill.h"

#include <algorithm>

#include "takeoff/edges/junction.h"
#include "takeoff/edges/notes.h"
#include "units/number.h"

namespace takeoff::edges {

namespace {

constexpr double steps_squared = units::Length::steps_per_metre * units::Length::steps_per_metre;
constexpr units::Length none;

// Ground taken by joints, and how deep they are.
struct Joints {
  std::string name;
  Working area;
  Working depth;
  double narrowest = 0;  // metres
  double widest = 0;
};

const plan::PavedArea& paved(const paving::LaidArea& area) {
  return std::get<plan::PavedArea>(area.ground->element->kind);
}

// The unit that is laid lowest says how deep the field's joints are.
const catalogue::Item* field_unit(const plan::Job& job, const plan::Laying& laying) {
  const catalogue::Item* least = nullptr;
  for (const auto& [size, id] : laying.units) {
    const catalogue::Item* item = job.catalogue->item(id);
    if (item && item->height && (!least || *item->height < *least->height)) least = item;
  }
  return least;
}

Joints field_joints(const plan::Job& job, const paving::LaidArea& area, const catalogue::Item& unit) {
  const plan::ElementId& id = area.ground->element->id;
  const plan::Laying& laying = *paved(area).laying;
  const Working share =
      Working::difference(term("field", area.layout->region_area / steps_squared, units::square_metre, id),
                          term("units laid in it", area.layout->unit_area / steps_squared, units::square_metre, id))
          .named("joints of the field");
  Joints joints{"field", share, fill_depth(job, paved(area), unit), 0, 0};
  std::vector<units::Length> widths;
  if (laying.joint) widths.push_back(*laying.joint);
  for (const auto& [size, item_id] : laying.units) {
    const catalogue::Item* item = job.catalogue->item(item_id);
    if (item && !laying.joint) widths.push_back(item->joint.value_or(none));
  }
  if (widths.empty()) return joints;
  joints.narrowest = std::ranges::min(widths).metres().si();
  joints.widest = std::ranges::max(widths).metres().si();
  return joints;
}

Joints border_joints(const plan::Job& job, const paving::LaidArea& area, const paving::LaidBorder& border, int number,
                     const catalogue::Item& unit) {
  Joints joints{"border",
                term("joints of border " + std::to_string(number), border.joint_area, units::square_metre,
                     area.ground->element->id),
                fill_depth(job, paved(area), unit), 0, 0};
  const double own = border.course.joint.value_or(unit.joint.value_or(none)).metres().si();
  joints.narrowest = joints.widest = own;
  for (const paving::RowMake& run : border.runs) {
    if (run.pieces == 0) continue;
    joints.narrowest = std::min({joints.narrowest, run.near_joint, run.far_joint});
    joints.widest = std::max({joints.widest, run.near_joint, run.far_joint});
  }
  return joints;
}

std::vector<Joints> all_joints(const plan::Job& job, const paving::LaidArea& area, double gaps) {
  std::vector<Joints> found;
  const catalogue::Item* unit = area.layout && paved(area).laying ? field_unit(job, *paved(area).laying) : nullptr;
  if (unit) found.push_back(field_joints(job, area, *unit));
  int number = 0;
  for (const paving::LaidBorder& border : area.borders) {
    ++number;
    const catalogue::Item* own = job.catalogue->item(border.course.item);
    if (own && own->height && border.joint_area > 0) found.push_back(border_joints(job, area, border, number, *own));
  }
  if (unit && gaps > 0) {
    found.push_back({"gap", term("joints along its edges", gaps, units::square_metre, area.ground->element->id),
                     fill_depth(job, paved(area), *unit), found.front().narrowest, found.front().widest});
  }
  return found;
}

// Depth of filler number `which` of the list in joints of this depth.
Working depth_of(const plan::PavedArea& area, std::size_t which, const Working& whole) {
  Working left = whole;
  for (std::size_t i = 0; i < which; ++i) {
    const Working own =
        term("depth of " + area.joint_fill[i].item, area.joint_fill[i].depth.value_or(none).metres().si(), units::metre,
             area.joint_fill[i].item);
    left = Working::difference(left, Working::least({own, left}));
  }
  if (which + 1 == area.joint_fill.size()) return left;
  return Working::least({term("depth", area.joint_fill[which].depth.value_or(none).metres().si(), units::metre,
                              area.joint_fill[which].item),
                         left});
}

void check_joints(const plan::Job& job, const catalogue::Item& filler, const std::vector<Joints>& joints, double depth,
                  const plan::ElementId& of, Share& share) {
  double narrowest = joints.front().narrowest;
  double widest = 0;
  for (const Joints& one : joints) {
    narrowest = std::min(narrowest, one.narrowest);
    widest = std::max(widest, one.widest);
  }
  constexpr double dust = 1e-6;
  const auto least = filler.length_of("least_joint_mm");
  const auto greatest = filler.length_of("greatest_joint_mm");
  const auto least_depth = filler.length_of("least_depth_mm");
  const auto say = [&](const char* code, const std::string& text) {
    share.problems.push_back(flag(code, text, "choose another filler or other joints", of));
  };
  if (least && narrowest < least->metres().si() - dust)
    say("joint-too-narrow", "joints of " + shown(job, narrowest) + " are too narrow for " + filler.id);
  if (greatest && widest > greatest->metres().si() + dust)
    say("joint-too-wide", "joints as wide as " + shown(job, widest) + " are too wide for " + filler.id);
  if (least_depth && depth < least_depth->metres().si() - dust)
    say("joint-too-shallow", "joints filled " + shown(job, depth) + " deep are too shallow for " + filler.id);
}

void add_filler(const plan::Job& job, const plan::PavedArea& area, std::size_t which, const std::vector<Joints>& joints,
                const plan::ElementId& of, Share& share) {
  const catalogue::Item* filler = wanted(job, area.joint_fill[which].item, "the joint fill", of, share);
  if (!filler) return;
  std::vector<Working> volumes;
  double least_depth = joints.front().depth.amount().value;
  for (const Joints& one : joints) {
    const Working depth = depth_of(area, which, one.depth);
    least_depth = std::min(least_depth, depth.amount().value);
    volumes.push_back(Working::product({one.area, depth}));
  }
  const Working volume = Working::sum(std::move(volumes)).named("volume of the joints");
  share.measures.put("joint_fill_m3:" + filler->id, volume.amount().value);
  check_joints(job, *filler, joints, least_depth, of, share);
  const auto density =
      filler->number("loose_density_kg_m3") ? filler->number("loose_density_kg_m3") : filler->density_kg_m3;
  if (!density && !filler->number("volume_l")) {
    share.problems.push_back(fault("density-missing",
                                   "the filler " + filler->id + " has neither a loose density nor a volume a bag",
                                   "enter one in the catalogue", of));
    return;
  }
  Working amount =
      density ? Working::product({volume, term("loose density", *density, units::kilogram_per_cubic_metre, filler->id)})
              : volume;
  share.lines.push_back({Stage::joints, filler->id, "joint fill", {of}, std::move(amount), {}, false});
}

// Rates are named after the fillers they are for; chips and stone have their own, what is left is dry sand.
catalogue::Id fill_rate(const plan::Job& job, const catalogue::Item& filler) {
  catalogue::Id best;
  for (const auto& [id, rate] : job.catalogue->rates) {
    if (rate.line_kind == "joint" && filler.id.starts_with(id) && id.size() > best.size()) best = id;
  }
  if (!best.empty()) return best;
  return filler.kind == "joint-chips" || filler.kind == "aggregate" ? "joint-chips" : "joint-dry";
}

void add_fill_task(const plan::Job& job, const paving::LaidArea& area, Share& share) {
  const plan::ElementId& id = area.ground->element->id;
  const catalogue::Item* top = job.catalogue->item(paved(area).joint_fill.front().item);
  if (!top) return;
  std::vector<Working> grounds{term("field", area.field.area().si(), units::square_metre, id)};
  for (const paving::LaidBorder& border : area.borders)
    grounds.push_back(term("border", border.strip_area, units::square_metre, id));
  const catalogue::Id rate = fill_rate(job, *top);
  if (rate.starts_with("joint-polymer")) share.facts.push_back("polymer");
  add_task(job, rate, Stage::joints, "joint fill", id, Working::sum(std::move(grounds)), share);
}

void put_volumes(const std::vector<Joints>& joints, Share& share) {
  double field = 0;
  double border = 0;
  double all = 0;
  for (const Joints& one : joints) {
    const double volume = one.area.amount().value * one.depth.amount().value;
    all += volume;
    if (one.name == "field") field += volume;
    if (one.name == "border") border += volume;
  }
  share.measures.put("joint_fill_field_m3", field);
  if (border > 0) share.measures.put("joint_fill_border_m3", border);
  share.measures.put("joint_fill_m3", all);
}

}  // namespace

Working fill_depth(const plan::Job& job, const plan::PavedArea& area, const catalogue::Item& unit) {
  const units::Length low = job.catalogue->length_limit("joint-fill-low", units::Length::inch_64ths(8));
  Working depth =
      Working::difference(term("height of the unit", unit.height->metres().si(), units::metre, unit.id + "/height"),
                          term("kept below the top", low.metres().si(), units::metre, "joint-fill-low"));
  const catalogue::BuildUp* build_up = job.catalogue->build_up(area.build_up);
  if (!build_up || bound(job, area)) return depth.named("depth of the fill");
  for (const catalogue::Layer& layer : build_up->layers) {
    if (layer.role != "bedding") continue;
    const catalogue::Item* bedding = job.catalogue->item(layer.item);
    const bool open = bedding && catalogue::open_graded(*bedding);
    const catalogue::Id limit = open ? "bed-rise" : "bed-rise-sand";
    const units::Length rise = job.catalogue->length_limit(limit, open ? none : units::Length::inch_64ths(24));
    if (rise > none)
      depth = Working::difference(depth, term("bedding risen into the joint", rise.metres().si(), units::metre, limit));
  }
  return depth.named("depth of the fill");
}

Share joint_fill(const plan::Job& job, const paving::LaidArea& area, double gaps) {
  Share share;
  const plan::ElementId& id = area.ground->element->id;
  const plan::PavedArea& what = paved(area);
  const std::vector<Joints> joints = all_joints(job, area, gaps);
  if (joints.empty()) return share;
  put_volumes(joints, share);
  if (std::ranges::any_of(joints, [](const Joints& one) { return one.depth.amount().value <= 0; })) {
    share.problems.push_back(fault("joint-fill-depth",
                                   "the units are too thin for any joint fill above what the bedding fills",
                                   "choose thicker units, or smaller limits joint-fill-low and bed-rise-sand", id));
    return share;
  }
  if (what.joint_fill.empty()) {
    const double volume = share.measures.get("joint_fill_m3").value_or(0);
    if (volume >= 5e-5) {  // under 0.05 l there is no joint that anybody fills
      share.problems.push_back(fault(
          "joint-fill-missing", "no joint fill is chosen for " + units::show_number(volume * 1000, 1) + " l of joints",
          "choose a filler", id));
    }
    return share;
  }
  for (std::size_t i = 0; i < what.joint_fill.size(); ++i) {
    if (i + 1 < what.joint_fill.size() && !what.joint_fill[i].depth) {
      share.problems.push_back(fault("joint-fill-list", "only the last filler of the list may go without a depth",
                                     "say how deep " + what.joint_fill[i].item + " goes", id));
      return share;
    }
  }
  for (std::size_t i = 0; i < what.joint_fill.size(); ++i) add_filler(job, what, i, joints, id, share);
  add_fill_task(job, area, share);
  return share;
}

}  // namespace takeoff::edges
