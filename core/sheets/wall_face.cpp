#include "sheets/wall_face.h"

#include <algorithm>
#include <cmath>

#include "takeoff/edges/notes.h"
#include "takeoff/walls/bay.h"
#include "takeoff/walls/caps.h"

namespace sheets {

namespace walls = takeoff::walls;

namespace {

constexpr double corner_gap = 0.5;  // metres: a setback takes no more off a course at a corner

std::vector<FacePiece> pieces_of(const walls::Run& run, const walls::Slot& slot, const walls::CourseLine& line) {
  std::vector<FacePiece> made;
  for (const walls::Laid& one : run.units) {
    const double a = line.station(slot.own_from + one.from);
    const double b = line.station(slot.own_from + one.from + one.length);
    const double from = std::clamp(a, run.from, run.to);
    made.push_back({run.course, from, std::clamp(b, from, run.to), one.make, one.again});
  }
  const auto shows = [](const FacePiece& piece) { return piece.to > piece.from; };
  const auto first = std::ranges::find_if(made, shows);
  if (first == made.end()) return made;
  const auto last = std::find_if(made.rbegin(), made.rend(), shows);
  if (first->from - run.from < corner_gap) first->from = run.from;
  if (run.to - last->to < corner_gap) last->to = run.to;
  return made;
}

std::vector<FacePiece> units_of(const WallFace& face) {
  std::vector<FacePiece> all;
  for (const auto& bay : face.courses.bays) {
    const auto lines = walls::counted_lines(*bay, face.blocks, face.courses.rules);
    const auto slots = walls::slots(*bay, face.blocks, face.courses.rules, lines);
    for (std::size_t i = 0; i < bay->runs.size() && i < slots.size(); ++i) {
      const auto pieces = pieces_of(bay->runs[i], slots[i], lines[static_cast<std::size_t>(slots[i].course)]);
      all.insert(all.end(), pieces.begin(), pieces.end());
    }
  }
  return all;
}

// Joints of the course under the caps, metres from the start of what they fill.
std::vector<double> joints_under(const WallFace& face, const walls::CapRun& run) {
  std::vector<double> joints;
  const double stretched = run.longer / (run.to - run.from);
  for (const FacePiece& piece : face.units) {
    if (piece.course != run.course || piece.to <= piece.from) continue;
    if (piece.from > run.from + 1e-6 && piece.from < run.to - 1e-6)
      joints.push_back((piece.from - run.from) * stretched);
  }
  std::ranges::sort(joints);
  return joints;
}

struct Lengths {
  std::vector<std::pair<double, bool>> pieces;  // with: is it cut
  double sum = 0;
  void add(double length, bool cut) {
    pieces.emplace_back(length, cut);
    sum += length;
  }
};

Lengths straight(const WallFace& face, const walls::CapRun& run, double cap) {
  const walls::CapRow row = walls::cap_row(run.longer, cap, joints_under(face, run), cap / 4);
  Lengths made;
  const int closers = row.cut();
  const int whole = row.caps - closers;
  for (int i = 0; i < std::min(row.before, whole); ++i) made.add(cap, false);
  if (closers > 0) made.add(row.first_closer, true);
  if (closers > 1) made.add(row.second_closer, true);
  for (int i = std::min(row.before, whole); i < whole; ++i) made.add(cap, false);
  return made;
}

Lengths curved(const plan::Job& job, const walls::CapRun& run, const catalogue::Item& cap) {
  const double length = cap.length->metres().si(), depth = cap.width->metres().si();
  const auto back = cap.number("back_length_mm");
  const double narrow = back && *back > 0 ? std::min(*back / 1000, length) : length;
  const double outer = run.radius >= 0 ? run.radius : depth - run.radius;
  const double joint = takeoff::edges::limit_inches(job, "cap-joint", takeoff::edges::Bound::greatest, 0.125);
  const auto caps = walls::curve_caps(run.turn, outer, length, narrow, depth, joint, narrow < length);
  Lengths made;
  for (int i = 0; caps && i < caps->caps; ++i) made.add(1, i < caps->cut);
  return made;
}

bool sized(const catalogue::Item* item) { return item && item->length && item->width && item->height; }

}  // namespace

std::optional<WallFace> wall_face(const plan::Job& job, const plan::Ground& ground, const plan::Wall& wall) {
  takeoff::Share said;
  const auto blocks = walls::chosen_blocks(job, wall, ground.element->id, said);
  const auto profile = blocks ? walls::profile(job, ground, blocks->block, said) : std::nullopt;
  if (!profile) return std::nullopt;
  WallFace face{*blocks, *profile, walls::lay(*profile, *blocks, walls::lay_rules(job, wall, *blocks)), {}};
  face.units = units_of(face);
  return face;
}

std::vector<CapPiece> caps_on(const plan::Job& job, const plan::Wall& wall, const WallFace& face) {
  const catalogue::Item* cap = job.catalogue->item(wall.cap);
  const catalogue::Item* on_curves = wall.curve_cap.empty() ? cap : job.catalogue->item(wall.curve_cap);
  if (!sized(cap) || !sized(on_curves)) return {};
  const double depth = cap->width->metres().si();
  const double usual = job.catalogue->length_limit("cap-overhang", units::Length::inches(1)).metres().si();
  const double overhang = wall.cap_overhang    ? wall.cap_overhang->metres().si()
                          : wall.free_standing ? (depth - face.blocks.block.depth) / 2
                                               : usual;
  std::vector<CapPiece> all;
  for (const walls::CapRun& run : walls::cap_runs(face.profile, face.blocks, overhang, depth)) {
    const Lengths lengths =
        run.radius == 0 ? straight(face, run, cap->length->metres().si()) : curved(job, run, *on_curves);
    const double under = run.to > run.from ? run.to - run.from : run.to + face.profile.length - run.from;
    double at = run.from;
    for (const auto& [length, cut] : lengths.pieces) {
      const double to = at + length / lengths.sum * under;
      all.push_back({run.course, at, to, cut});
      at = to;
    }
  }
  return all;
}

}  // namespace sheets
