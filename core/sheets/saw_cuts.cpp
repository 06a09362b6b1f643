#include "sheets/saw_cuts.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <tuple>

#include "sheets/saw_list.h"
#include "takeoff/walls/saw.h"
#include "units/number.h"

namespace sheets {

namespace {

constexpr double degree = std::numbers::pi / 180;

double fence_step(const Printed& printed) {
  return printed.job().heading.units == units::System::us ? units::metres_per_inch / 16 : 0.001;
}

bool alike(const SawCut& a, const SawCut& b) {
  if (a.item != b.item || a.what != b.what || a.keep != b.keep || a.marked != b.marked) return false;
  if (a.from_offcut != b.from_offcut || std::abs(a.thickness - b.thickness) > 1e-4) return false;
  if (a.marked) return std::abs(a.angle - b.angle) < degree / 2;
  return std::abs(a.angle - b.angle) < 1e-6 && std::abs(a.least - b.least) < 1e-4 && std::abs(a.most - b.most) < 1e-4;
}

// Square by the fence, then by angle, then what is marked; long pieces before short ones, so that those can come out of
// what is left.
auto order_of(const SawCut& cut) {
  return std::tuple(cut.item, cut.thickness, cut.marked && cut.angle == 0, cut.angle, -cut.most, cut.what, cut.keep,
                    cut.from_offcut, cut.least);
}

}  // namespace

void SawList::add(SawCut cut, const plan::ElementId& of, const std::string& place) {
  if (cut.pieces <= 0) return;
  const auto known = std::ranges::find_if(cuts_, [&](const SawCut& one) { return alike(one, cut); });
  if (known == cuts_.end()) {
    cut.where = {{of, place, cut.pieces}};
    cuts_.push_back(std::move(cut));
    return;
  }
  known->pieces += cut.pieces;
  known->metres += cut.metres;
  known->least = std::min(known->least, cut.least);
  known->most = std::max(known->most, cut.most);
  const auto there =
      std::ranges::find_if(known->where, [&](const SawCut::Where& one) { return one.of == of && one.place == place; });
  if (there == known->where.end())
    known->where.push_back({of, place, cut.pieces});
  else
    there->pieces += cut.pieces;
}

std::vector<SawCut> SawList::sorted() && {
  std::ranges::sort(cuts_, {}, order_of);
  return std::move(cuts_);
}

double by_fence(const Printed& printed, double metres) {
  const double step = fence_step(printed);
  return std::round(metres / step) * step;
}

void add_row(SawList& list, const RowCuts& row, const plan::ElementId& of) {
  using How = takeoff::paving::RowMake::How;
  const auto& make = row.make;
  SawCut cut;
  cut.item = row.item->id;
  cut.thickness = row.item->height ? row.item->height->metres().si() : 0;
  if (make.how == How::tapered) {
    cut.what = "taper, both sides";
    cut.least = by_fence(list.printed(), make.near_face);
    cut.most = by_fence(list.printed(), make.far_face);
    cut.angle = make.cut_angle;
    cut.pieces = make.pieces;
    cut.metres = make.pieces * 2 * row.deep / std::cos(make.cut_angle);
    list.add(cut, of, "");
  } else if (make.how == How::straight_closers ||
             (make.how == How::straight_even && make.near_face < row.piece - 1e-6)) {
    const bool closers = make.how == How::straight_closers;
    cut.what = closers ? "across, closer" : "across";
    cut.least = cut.most = by_fence(list.printed(), make.near_face);
    cut.pieces = closers ? 2 : make.pieces;
    cut.metres = cut.pieces * row.deep;
    list.add(cut, of, "");
  }
  for (const double corner : {row.corner_before, row.corner_after}) {
    if (corner == 0 || make.pieces == 0) continue;
    SawCut mitre;
    mitre.item = cut.item;
    mitre.thickness = cut.thickness;
    mitre.what = "mitre at a corner";
    mitre.angle = std::round(std::abs(corner) / 2 / degree * 10) / 10 * degree;
    mitre.pieces = 1;
    mitre.metres = row.deep / std::cos(std::min(std::abs(corner) / 2, 1.5));
    list.add(mitre, of, "");
  }
}

std::vector<SawCut> saw_cuts(const Printed& printed) {
  SawList list(printed);
  add_fields(list);
  add_borders(list);
  add_copings(list);
  add_kerbs(list);
  add_blocks(list);
  return std::move(list).sorted();
}

int passes_through(const Printed& printed, double thickness) {
  const catalogue::Item* saw = printed.job().catalogue->item(printed.job().choices.saw);
  if (!saw || thickness <= 0) return 0;
  switch (takeoff::walls::passes(*saw, thickness)) {
    case takeoff::walls::Passes::one: return 1;
    case takeoff::walls::Passes::two:
    case takeoff::walls::Passes::both_sides: return 2;
    case takeoff::walls::Passes::too_thick: return 0;
  }
  return 0;
}

std::optional<std::string> working_of_saw(const Printed& printed, const std::string& list, const std::string& number) {
  if (list != "saw") return std::nullopt;
  const std::vector<SawCut> all = saw_cuts(printed);
  const auto at = units::read_number(number);
  if (!at || *at < 0 || *at >= static_cast<double>(all.size())) return std::nullopt;
  const SawCut& cut = all[static_cast<std::size_t>(*at)];
  std::string text = cut.item + ", " + cut.what + ": ";
  for (std::size_t i = 0; i < cut.where.size(); ++i)
    text += (i ? " + " : "") + std::to_string(cut.where[i].pieces) + " of " + cut.where[i].of;
  return text + " = " + std::to_string(cut.pieces) + ", laid piece by piece";
}

}  // namespace sheets
