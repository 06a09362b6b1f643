#include "takeoff/paving/lattice.h"

#include <algorithm>
#include <cmath>

#include "units/read_length.h"

namespace takeoff::paving {

namespace {

using catalogue::Catalogue;
using catalogue::CellSide;
using catalogue::Item;
using catalogue::Pattern;
using units::Length;

constexpr double within = static_cast<double>(Length::inch_64ths(1).steps());
// Under this a unit would be gone once shrunk by `grazing` on each side; nothing so small is laid.
constexpr Length least_side = Length::millimetres(10);

double steps(Length length) { return static_cast<double>(length.steps()); }

std::string inches(double of_steps) {
  return units::show_length(Length::of_steps(std::llround(of_steps)), units::System::us);
}

// The unit that lies in one size, with both of its sides.
problem::Result<const Item*> unit_for(const Catalogue& catalogue, const plan::Laying& laying, const std::string& size) {
  const auto chosen = laying.units.find(size);
  if (chosen == laying.units.end() || chosen->second.empty()) {
    return problem::fault("unit-missing", "No unit is chosen for the size '" + size + "' of the pattern",
                          "choose a unit for it");
  }
  const Item* item = catalogue.item(chosen->second);
  if (item == nullptr) {
    return problem::fault("unit-unknown", "The unit '" + chosen->second + "' is not in the catalogue",
                          "choose another unit or add it to the catalogue");
  }
  if (!item->length || !item->width || *item->length < least_side || *item->width < least_side) {
    return problem::fault("unit-size", "The unit '" + item->id + "' has no length or width to be laid by",
                          "give both in the catalogue, at least 10 mm");
  }
  return item;
}

struct JointLimits {
  Length least;
  Length greatest;
};

// Where the catalogue's part has no limit, the trade's: interlocking units 1/16 to 3/16 in, clay 1/16 to 1/8 in,
// permeable 1/4 to 1/2 in.
JointLimits joint_limits(const Catalogue& catalogue, const Item& item) {
  const bool clay = item.kind == "clay-unit";
  const bool permeable = item.kind == "permeable-unit";
  const std::string id = clay ? "joint-clay" : permeable ? "joint-permeable" : "joint-interlocking";
  JointLimits limits{Length::inch_64ths(permeable ? 16 : 4), Length::inch_64ths(clay ? 8 : permeable ? 32 : 12)};
  const auto found = catalogue.limits.find(id);
  if (found == catalogue.limits.end()) return limits;
  const double unit = found->second.unit == "mm" ? 0.001 : units::metres_per_inch;
  if (found->second.least) limits.least = Length::nearest(units::Metres(*found->second.least * unit));
  if (found->second.greatest) limits.greatest = Length::nearest(units::Metres(*found->second.greatest * unit));
  return limits;
}

std::string joints_that_fit(const Item& item, JointLimits limits) {
  const double over = steps(*item.length) - 2 * steps(*item.width);
  const double low = std::max(steps(limits.least), (2 * steps(limits.least) + over) / 3);
  const double high = std::min(steps(limits.greatest), (2 * steps(limits.greatest) + over) / 3);
  if (low < high) return "joints from " + inches(low) + " to under " + inches(high) + " would fit";
  const auto fit = catalogue::herringbone_fit(*item.length, *item.width, limits.least, limits.greatest);
  return "only joints from " + inches(steps(fit.would_fit_least)) + " to " + inches(steps(fit.would_fit_greatest)) +
         " would fit, past the limits of this kind of unit";
}

// The joint of a herringbone. At a joint that is given, the gap at the ends of units must lie under the greatest joint:
// at the very limit nothing is left for the hand that lays it. Length = 2 widths + joint always fits.
problem::Result<Length> herringbone_joint(const Catalogue& catalogue, const Item& item, std::optional<Length> given) {
  const JointLimits limits = joint_limits(catalogue, item);
  const double over = steps(*item.length) - 2 * steps(*item.width);
  if (given) {
    const double gap = (3 * steps(*given) - over) / 2;
    const bool exact = std::abs(over - steps(*given)) <= within;
    if (exact || (gap >= steps(limits.least) && gap < steps(limits.greatest))) return *given;
    return problem::fault("herringbone-misfit",
                          "The unit '" + item.id + "' does not lay herringbone with a joint of " +
                              inches(steps(*given)) + ": a length of two widths and one joint is needed; " +
                              joints_that_fit(item, limits),
                          "choose another joint, unit or pattern");
  }
  const auto fit = catalogue::herringbone_fit(*item.length, *item.width, limits.least, limits.greatest);
  if (fit.fits) return fit.joint;
  return problem::fault("herringbone-misfit",
                        "The unit '" + item.id + "' does not lay herringbone; " + joints_that_fit(item, limits),
                        "choose another unit or pattern");
}

double cell(const CellSide& side, const Item& first, double joint) {
  switch (side.of) {
    case CellSide::Of::module_length: return (steps(*first.length) + joint) / side.parts;
    case CellSide::Of::module_width: return (steps(*first.width) + joint) / side.parts;
    case CellSide::Of::fixed: return steps(side.fixed);
  }
  return 0;
}

struct Cells {
  double x = 0;
  double y = 0;
  double joint = 0;
  bool ends_may_gap = false;  // herringbone: the gap at the ends differs from the joint by what the fit rule allows
};

// The unit in the middle of its module, turned as the cells lie.
problem::Result<Kind> kind(const catalogue::PatternPiece& piece, const Item& item, const Cells& cells) {
  const double module_x = piece.w * cells.x;
  const double module_y = piece.h * cells.y;
  Kind made;
  made.size = piece.size;
  made.item = item.id;
  made.turned = module_y > module_x;
  const double length = steps(*item.length);
  const double width = steps(*item.width);
  made.width = made.turned ? width : length;
  made.height = made.turned ? length : width;
  const double off_x = std::abs(module_x - made.width - cells.joint);
  const double off_y = std::abs(module_y - made.height - cells.joint);
  const double off_length = made.turned ? off_y : off_x;
  const double off_width = made.turned ? off_x : off_y;
  if (off_width > within || (off_length > within && !cells.ends_may_gap)) {
    return problem::fault("pattern-misfit",
                          "The unit '" + item.id + "' with a joint of " + inches(cells.joint) + " does not fill its " +
                              inches(module_x) + " x " + inches(module_y) + " of the pattern",
                          "choose a unit of that module, or another joint");
  }
  made.low = {piece.x * cells.x + (module_x - made.width) / 2, piece.y * cells.y + (module_y - made.height) / 2};
  return made;
}

}  // namespace

geometry::Vec Lattice::to_frame(geometry::Point p) const {
  const geometry::Vec v = p - start;
  return {cosine * v.x + sine * v.y, cosine * v.y - sine * v.x};
}

geometry::Vec Lattice::from_frame(geometry::Vec q) const {
  return {cosine * q.x - sine * q.y, sine * q.x + cosine * q.y};
}

problem::Result<Lattice> lattice(const Catalogue& catalogue, const plan::Laying& laying) {
  const Pattern* pattern = catalogue.pattern(laying.pattern);
  if (pattern == nullptr || pattern->pieces.empty()) {
    return problem::fault("pattern-unknown", "The pattern '" + laying.pattern + "' is not in the catalogue",
                          "choose another pattern");
  }
  const auto first = unit_for(catalogue, laying, pattern->pieces.front().size);
  if (!first) return std::unexpected(first.error());

  std::optional<Length> joint = laying.joint ? laying.joint : (*first)->joint;
  if (pattern->herringbone) {
    const auto fitted = herringbone_joint(catalogue, **first, joint);
    if (!fitted) return std::unexpected(fitted.error());
    joint = *fitted;
  }
  const Length short_side = std::min(*(*first)->length, *(*first)->width);
  if (joint && (*joint < Length() || *joint >= short_side))
    return problem::fault("joint-size",
                          "a joint of " + inches(steps(*joint)) + " between units of '" + (*first)->id + "' can't be",
                          "give one from 0 up to less than the unit's short side");
  const Cells cells{cell(pattern->cell_x, **first, steps(joint.value_or(Length()))),
                    cell(pattern->cell_y, **first, steps(joint.value_or(Length()))), steps(joint.value_or(Length())),
                    pattern->herringbone};

  Lattice made;
  const units::Turn turn = units::turn(laying.direction + pattern->direction);
  made.start = laying.start;
  made.cosine = turn.cosine;
  made.sine = turn.sine;
  made.along = pattern->along * cells.x;
  made.across = {pattern->across_x * cells.x, pattern->across_y * cells.y};
  made.joint = cells.joint;
  double units_area = 0;
  for (const auto& piece : pattern->pieces) {
    const auto item = unit_for(catalogue, laying, piece.size);
    if (!item) return std::unexpected(item.error());
    auto one = kind(piece, **item, cells);
    if (!one) return std::unexpected(one.error());
    units_area += one->width * one->height;
    made.kinds.push_back(std::move(*one));
  }
  made.joint_share = 1 - units_area / (made.along * made.across.y);
  return made;
}

}  // namespace takeoff::paving
