#include "takeoff/edges/seal.h"

#include <algorithm>

#include "takeoff/edges/along.h"
#include "takeoff/edges/notes.h"
#include "units/number.h"

namespace takeoff::edges {

namespace {

struct Middle {
  std::vector<Working> parts;
  Lengths length;
};

// The ground lies to the left of its edge, and the joint is the first strip of it.
problem::Result<Middle> middle_line(const std::vector<plan::Along>& chains, units::Length joint,
                                    const plan::ElementId& of) {
  Middle middle;
  for (const plan::Along& chain : chains) {
    const auto line = geometry::parallel(chain.path, units::Length::of_steps(joint.steps() / 2));
    if (!line) return std::unexpected(line.error());
    const Lengths own = lengths(*line);
    middle.length.straight += own.straight;
    middle.length.curved += own.curved;
    const plan::ElementId& other = chain.stretches.front().other;
    middle.parts.push_back(
        term("middle line" + (other.empty() ? "" : " along " + other), own.both(), units::metre, of));
  }
  return middle;
}

void check_width(const plan::Job& job, units::Length joint, const plan::ElementId& of, Share& share) {
  const double least = limit_inches(job, "seal-width", Bound::least, 1.0 / 4);
  const double greatest = limit_inches(job, "seal-width", Bound::greatest, 2);
  const double width = joint.metres().si();
  if (width >= least - 1e-9 && width <= greatest + 1e-9) return;
  share.problems.push_back(fault(
      "seal-width",
      "a sealed joint of " + shown(job, width) + " lies outside " + shown(job, least) + " to " + shown(job, greatest),
      "choose another width", of));
}

void add_rod(const plan::Job& job, const catalogue::Junction& row, const Working& length, const plan::ElementId& of,
             Share& share) {
  if (row.rod.empty()) return;
  const catalogue::Item* rod = rod_for(job, *row.joint);
  if (!rod) {
    share.problems.push_back(
        fault("rod-size", "the catalogue has no rod of 1.25 times the joint of " + shown(job, row.joint->metres().si()),
              "add a wider rod", of));
    return;
  }
  const units::Length wide = *rod->length_of("diameter_mm");
  const auto limit = job.catalogue->limits.find("rod-over");
  const double percent = limit == job.catalogue->limits.end() ? 35 : limit->second.greatest.value_or(35);
  const double over = 1 + percent / 100;
  if (wide / *row.joint > over + 1e-9) {
    share.problems.push_back(notice("rod-wide",
                                    "rod " + rod->id + " is over " + units::show_number(percent, 0) +
                                        " % wider than the joint of " + shown(job, row.joint->metres().si()) +
                                        ", the smallest size at hand",
                                    "common practice where a size between is seldom stocked", of));
  }
  if (rod->id != row.rod) {
    share.problems.push_back(notice("rod-changed",
                                    "rod " + rod->id + " is taken in place of " + row.rod + ", by the joint's width",
                                    "change the joint or the rods in the catalogue if this is not wanted", of));
  }
  share.lines.push_back({Stage::joints, rod->id, "rod: " + row.name.en, {of}, length, {}, false});
  share.measures.put("rod_m:" + rod->id, length.amount().value);
}

void add_sand(const plan::Job& job, const catalogue::Junction& row, const Working& length, const Working& width,
              const plan::ElementId& of, Share& share) {
  if (row.filler.empty() || row.filler == "area") return;
  const catalogue::Item* sand = wanted(job, row.filler, "sand on the sealant", of, share);
  if (!sand) return;
  constexpr double half_pound = 0.5 * units::kilograms_per_pound / units::square_metres_per_square_foot;
  const double rate = sand->number("broadcast_kg_m2").value_or(half_pound);
  share.lines.push_back(
      {Stage::joints,
       sand->id,
       "broadcast into the wet sealant before it skins, where people walk on the joint: sealant kept 1/8 in low",
       {of},
       Working::product({length, width, term("sand on its face", rate, kilogram_per_square_metre, sand->id)}),
       {},
       true});
}

}  // namespace

Working seal_depth(const plan::Job& job, const Working& width) {
  const double least = limit_inches(job, "seal-depth", Bound::least, 1.0 / 4);
  const double greatest = limit_inches(job, "seal-depth", Bound::greatest, 1.0 / 2);
  return Working::greatest({term("least depth", least, units::metre, "seal-depth"),
                            Working::least({term("greatest depth", greatest, units::metre, "seal-depth"),
                                            Working::quotient(width, term("half the width", 2, units::piece))})})
      .named("depth of sealant");
}

const catalogue::Item* rod_for(const plan::Job& job, units::Length joint) {
  const double wanted_size = joint.metres().si() * job.catalogue->number_limit("rod-least", 1.25) - 1e-7;
  const catalogue::Item* best = nullptr;
  double best_size = 0;
  for (const auto& [id, item] : job.catalogue->items) {
    const auto diameter = item->kind == "rod" ? item->length_of("diameter_mm") : std::nullopt;
    if (!diameter || diameter->metres().si() < wanted_size) continue;
    if (!best || diameter->metres().si() < best_size) {
      best = item.get();
      best_size = diameter->metres().si();
    }
  }
  return best;
}

Share sealed_joint(const plan::Job& job, const catalogue::Junction& row, const std::vector<plan::Along>& chains,
                   const plan::ElementId& of) {
  Share share;
  if (!row.joint || *row.joint <= units::Length()) {
    share.problems.push_back(
        fault("seal-width", "the sealed joint " + row.id + " has no width", "enter it in the junction table", of));
    return share;
  }
  check_width(job, *row.joint, of, share);
  problem::Result<Middle> middle = middle_line(chains, *row.joint, of);
  if (!middle) {
    share.problems.push_back(problem::in_element(middle.error(), of));
    return share;
  }
  const Working length = Working::sum(std::move(middle->parts)).named("length of the joint");
  const Working width = term("width", row.joint->metres().si(), units::metre, row.id);
  const Working volume = Working::product({length, width, seal_depth(job, width)});
  share.facts.push_back("sealed-joint");
  share.measures.put("sealed_joint_m:" + row.id, length.amount().value);
  share.measures.put("sealant_m3:" + row.id, volume.amount().value);
  add_rod(job, row, length, of, share);
  if (const catalogue::Item* sealant = wanted(job, row.sealant, "sealant", of, share)) {
    const bool own = sealant->breakage > 0;
    const std::optional<double> allowance =
        own ? std::nullopt : std::optional(job.catalogue->number_limit("sealant-allowance", 10) / 100);
    share.lines.push_back({Stage::joints,
                           sealant->id,
                           "sealant: " + row.name.en + "; allowance is common practice",
                           {of},
                           volume,
                           allowance,
                           false});
  }
  add_sand(job, row, length, width, of, share);
  add_task(job, "joint-seal", Stage::joints, row.name.en, of,
           {term("joint, straight", middle->length.straight, units::metre, of),
            term("joint, curved", middle->length.curved, units::metre, of)},
           share);
  return share;
}

void add_totals(Share& share) {
  double length = 0;
  double volume = 0;
  for (const auto& [name, value] : share.measures.values) {
    if (name.starts_with("sealed_joint_m:")) length += value;
    if (name.starts_with("sealant_m3:")) volume += value;
  }
  if (length <= 0) return;
  share.measures.put("sealed_joint_m", length);
  share.measures.put("sealant_m3", volume);
}

}  // namespace takeoff::edges
