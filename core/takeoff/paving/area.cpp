#include "takeoff/paving/area.h"

#include <algorithm>
#include <set>

#include "geometry/overlay.h"
#include "geometry/validity.h"
#include "plan/along.h"
#include "problem/ensure.h"
#include "takeoff/edges/junction.h"
#include "takeoff/edges/notes.h"
#include "takeoff/paving/bordered.h"
#include "units/number.h"

namespace takeoff::paving {

namespace {

using geometry::Region;
using units::Length;

constexpr Length least_side = Length::millimetres(10);
// Units at the edges are clipped and kept one by one, and rows as runs: 2 million are some 700 MB. An area of 9 km by
// 9 km of 2 in units has 1.8 million.
constexpr double most_at_edges = 2'000'000;

// Which edges of the net a course lies along.
class Chosen {
 public:
  explicit Chosen(const plan::Ground& ground) {
    for (const geometry::Polygon& polygon : ground.drawn.polygons())
      for (const geometry::Edge& edge : polygon.outer.edges()) outside_.insert(edge.origin);
  }
  bool along(plan::BorderCourse::Where where, const geometry::Origin& origin) const {
    if (where == plan::BorderCourse::Where::everywhere) return true;
    return (where == plan::BorderCourse::Where::outside) == outside_.contains(origin);
  }

 private:
  std::set<geometry::Origin> outside_;
};

// The size of the units of one course as they lie: along the edge and across it.
struct CourseSize {
  Length along;
  Length across;
  Length joint;
};

std::optional<CourseSize> course_size(const catalogue::Item* item, const plan::BorderCourse& course) {
  if (!item || !item->length || !item->width || *item->length < least_side || *item->width < least_side) return {};
  const bool soldier = course.way == plan::BorderCourse::Way::soldier;
  return CourseSize{soldier ? *item->width : *item->length, soldier ? *item->length : *item->width,
                    course.joint.value_or(item->joint.value_or(Length()))};
}

// The region less a strip of `width` along a path that runs with the ground on its left.
problem::Result<Region> without_strip(const Region& region, const plan::Ground& ground, const plan::Along& along,
                                      Length width) {
  if (width <= Length()) return region;
  if (!along.path.closed()) {
    const auto strip = geometry::band(along.path, width, geometry::Side::left);
    if (!strip) return std::unexpected(strip.error());
    return geometry::subtract(region, std::span(&*strip, 1));
  }
  // All the way round, the ring itself is moved, so that its arcs stay true.
  const auto number = static_cast<std::size_t>(along.stretches.front().outline);
  const geometry::Ring& ring = ground.net.outlines()[number]->edges();
  const bool hole = geometry::signed_area(ring).si() < 0;
  const auto shape = geometry::region(hole ? geometry::reversed(ring) : ring);
  if (!shape) return std::unexpected(shape.error());
  const auto moved = geometry::offset(*shape, hole ? width : -width, geometry::Corner::mitred);
  if (!moved) return std::unexpected(moved.error());
  return hole ? geometry::subtract(region, std::span(&*moved, 1)) : geometry::meet(region, *moved);
}

// Works out one area, step by step; the first step that fails leaves its problem and the rest as it is.
class Layer {
 public:
  Layer(const plan::Job& job, const plan::Ground& ground, const plan::PavedArea& paved)
      : job_(job), ground_(ground), paved_(paved), chosen_(ground) {
    area_.ground = &ground;
    area_.field = ground.net;
  }

  LaidArea run() {
    if (ground_.net.empty()) return std::move(area_);
    for (const plan::BorderCourse& course : paved_.borders) border(course);
    keep_joints_clear();
    cut_borders_back();
    lay_field();
    return std::move(area_);
  }

  Bordered only_borders() {
    for (const plan::BorderCourse& course : paved_.borders) border(course);
    keep_joints_clear();
    return {std::move(area_.field), std::move(courses_)};
  }

 private:
  void say(problem::Problem problem) {
    area_.problems.push_back(problem::in_element(std::move(problem), ground_.element->id));
  }

  std::vector<plan::Along> lines(plan::BorderCourse::Where where) const {
    return plan::along(ground_, [&](const plan::Stretch& s) { return chosen_.along(where, s.origin) ? 0 : -1; });
  }

  // Courses along the same edges lie one behind the other.
  Length depth_before(plan::BorderCourse::Where where) const {
    Length depth;
    for (std::size_t i = 0; i < area_.borders.size(); ++i) {
      const plan::BorderCourse::Where other = area_.borders[i].course.where;
      if (where == other || where == plan::BorderCourse::Where::everywhere ||
          other == plan::BorderCourse::Where::everywhere)
        depth += depths_[i];
    }
    return depth;
  }

  void border(const plan::BorderCourse& course) {
    const auto size = course_size(job_.catalogue->item(course.item), course);
    if (!size) {
      say(edges::fault(
          "border-unit",
          "the unit '" + course.item + "' of a border course is not in the catalogue or has no size of 10 mm or more",
          "choose a unit with length and width", ground_.element->id));
      return;
    }
    const Length before = depth_before(course.where);
    const Length width = size->across + size->joint;
    LaidBorder laid;
    laid.course = course;
    Region inside = area_.field;
    for (const plan::Along& line : lines(course.where)) {
      auto rest = without_strip(inside, ground_, line, before + width);
      if (!rest) return say(rest.error());
      inside = std::move(*rest);
    }
    laid.strip_area = area_.field.area().si() - inside.area().si();
    area_.field = std::move(inside);
    fill(laid, course, *size, before);
    depths_.push_back(width);
    area_.borders.push_back(std::move(laid));
  }

  RowRules rules(const CourseSize& size, const catalogue::Item& item) const {
    const std::string id = item.kind == "clay-unit"        ? "joint-clay"
                           : item.kind == "permeable-unit" ? "joint-permeable"
                                                           : "joint-interlocking";
    RowRules rules;
    rules.piece = size.along.metres().si();
    rules.deep = size.across.metres().si();
    rules.joint = size.joint.metres().si();
    rules.joint_least = edges::limit_inches(job_, id, edges::Bound::least, size.joint.inches());
    rules.joint_greatest = edges::limit_inches(job_, id, edges::Bound::greatest, size.joint.inches());
    return rules;
  }

  void fill(LaidBorder& laid, const plan::BorderCourse& course, const CourseSize& size, Length before) {
    const RowRules rules = this->rules(size, *job_.catalogue->item(laid.course.item));
    const RowCorner corner = laid.course.corner == plan::BorderCourse::Corner::mitre  ? RowCorner::mitre
                             : laid.course.corner == plan::BorderCourse::Corner::butt ? RowCorner::butt
                                                                                      : RowCorner::block;
    const double from = before.metres().si();
    double covered = 0;
    for (const plan::Along& line : lines(laid.course.where)) {
      for (const RowRun& run : row_runs(line.path, from, rules.deep + rules.joint, geometry::Side::left)) {
        const double middle = (run.near_length + run.far_length) / 2;
        laid.mid_length += middle;
        if (run.radius > 0) laid.curved_length += middle;
      }
      const RowCorners made = at_corners(row_runs(line.path, from, rules.deep, geometry::Side::left), corner, rules,
                                         static_cast<int>(area_.borders.size()), line.path.closed());
      LaidCourse row{static_cast<std::size_t>(&course - paved_.borders.data()),
                     line.path,
                     from,
                     rules,
                     corner,
                     static_cast<int>(area_.borders.size()),
                     {}};
      for (const RowRun& run : made.runs) {
        const std::size_t before_it = laid.runs.size();
        covered += lay_run(laid, run, rules);
        row.makes.push_back(laid.runs.size() > before_it ? laid.runs.back() : RowMake{});
      }
      courses_.push_back(std::move(row));
      laid.units += made.blocks;
      if (rules.piece > rules.deep + 1e-9) laid.cut += made.blocks;
      covered += made.blocks * rules.deep * rules.deep;
    }
    laid.joint_area = std::max(0.0, laid.strip_area - covered);
  }

  // What the units of the run cover, m2.
  double lay_run(LaidBorder& laid, const RowRun& run, const RowRules& rules) {
    if (run.far_length <= grazing / Length::steps_per_metre) return 0;
    const std::vector<RowMake> all = ways(run, rules);
    RowMake make;
    if (!all.empty()) {
      make = all.front();
    } else {
      make = {RowMake::How::tapered,
              std::max(1, static_cast<int>(std::ceil(run.far_length / (rules.piece + rules.joint)))),
              0,
              0,
              0,
              rules.joint,
              rules.joint,
              0,
              0,
              0};
      make.cut = make.pieces;
      make.near_face = std::max(0.0, run.near_length / make.pieces - rules.joint);
      make.far_face = run.far_length / make.pieces - rules.joint;
      say(edges::flag("border-curve",
                      "a border course turns too sharply for its units: they would be cut to " +
                          edges::shown(job_, make.near_face) + " at the inner line",
                      "choose a shorter unit, sailors, or a wider curve", ground_.element->id));
    }
    laid.runs.push_back(make);
    laid.units += make.pieces;
    laid.cut += make.cut;
    if (run.radius > 0) return make.pieces * (make.near_face + make.far_face) / 2 * rules.deep;
    return std::max(0.0, (run.near_length + run.far_length) / 2 - make.pieces * make.near_joint) * rules.deep;
  }

  bool under_a_border(const plan::Stretch& stretch) const {
    return std::ranges::any_of(
        area_.borders, [&](const LaidBorder& laid) { return chosen_.along(laid.course.where, stretch.origin); });
  }

  // How much of a junction's joint lies on this side of the net edge; a gap that is drawn is a joint already.
  Length clear_of(const plan::Stretch& stretch) const {
    const double gap = stretch.gap > grazing / Length::steps_per_metre ? stretch.gap : 0;
    return Length::nearest(units::Metres(std::max(0.0, junction_joint(job_, ground_, stretch) - gap)));
  }

  // The lines along which a junction keeps a joint clear, under a border or not, each with the joint's width.
  std::vector<std::pair<plan::Along, Length>> clear_lines(bool bordered) const {
    std::vector<Length> widths;
    const auto group = [&](const plan::Stretch& stretch) {
      const Length width = under_a_border(stretch) == bordered ? clear_of(stretch) : Length();
      if (width <= Length()) return -1;
      const auto known = std::ranges::find(widths, width);
      if (known != widths.end()) return static_cast<int>(known - widths.begin());
      widths.push_back(width);
      return static_cast<int>(widths.size()) - 1;
    };
    std::vector<std::pair<plan::Along, Length>> lines;
    for (plan::Along& line : plan::along(ground_, group)) {
      const Length width = widths[static_cast<std::size_t>(line.group)];
      lines.emplace_back(std::move(line), width);
    }
    return lines;
  }

  void keep_joints_clear() {
    for (const auto& [line, width] : clear_lines(false)) {
      auto rest = without_strip(area_.field, ground_, line, width);
      if (!rest) return say(rest.error());
      area_.field = std::move(*rest);
    }
  }

  // The field keeps its line, as a border is measured from the edge: the joint comes out of the course that lies on it.
  void cut_borders_back() {
    Length widest;
    for (const auto& [line, width] : clear_lines(true)) {
      widest = std::max(widest, width);
      // The outermost course there gives the joint its ground: a strip along the joint's own middle line.
      const auto outermost = std::ranges::find_if(area_.borders, [&](const LaidBorder& laid) {
        return chosen_.along(laid.course.where, line.stretches.front().origin);
      });
      const auto middle = geometry::parallel(line.path, Length::of_steps(width.steps() / 2));
      if (outermost != area_.borders.end() && middle)
        outermost->strip_area -= middle->length().si() * width.metres().si();
    }
    if (widest > Length())
      say(edges::notice("border-joint",
                        "the border course starts behind the joint of " + edges::shown(job_, widest.metres().si()) +
                            " to what it lies against, while the field keeps its line: its units are cut by as much",
                        "cut them, or set the course back and cut the field", ground_.element->id));
  }

  // Two for each length of a unit's shorter side along the edges, and the rows of each kind between them.
  double at_edges(const Lattice& lattice) const {
    double shorter = lattice.kinds.front().width;
    for (const Kind& kind : lattice.kinds) shorter = std::min({shorter, kind.width, kind.height});
    const double edges = area_.field.perimeter().si() * Length::steps_per_metre;
    return edges * (2 / shorter + static_cast<double>(lattice.kinds.size()) / (2 * lattice.across.y));
  }

  void say_too_many(double many) {
    say(edges::fault("laying-too-large",
                     "about " + units::show_number(many / 1e6, 1) +
                         " million units and rows lie at the edges of this area, and it is not laid over 2 million",
                     "divide the area, choose larger units, or look at the scale of the drawing", ground_.element->id));
  }

  void lay_field() {
    std::string missing = paved_.build_up.empty() ? "build-up" : "";
    if (!paved_.laying) missing += missing.empty() ? "pattern with its units" : " and no pattern with its units";
    if (!missing.empty())
      say(edges::fault("nothing-chosen", "no " + missing + " chosen for this area",
                       "choose it; the area is measured until then", ground_.element->id));
    if (!paved_.laying) return;
    const auto bound = lattice(*job_.catalogue, *paved_.laying);
    if (!bound) return say(bound.error());
    if (const double many = at_edges(*bound); many > most_at_edges) return say_too_many(many);
    const Slivers slivers{job_.choices.sliver_share, static_cast<double>(job_.choices.sliver_width.steps())};
    area_.layout = std::make_shared<const Layout>(lay(area_.field, *bound, slivers));
  }

  const plan::Job& job_;
  const plan::Ground& ground_;
  const plan::PavedArea& paved_;
  Chosen chosen_;
  LaidArea area_;
  std::vector<Length> depths_;  // of the borders laid so far, joint included
  std::vector<LaidCourse> courses_;
};

}  // namespace

LaidArea lay_area(const plan::Job& job, const plan::Site&, const plan::Ground& ground) {
  const auto* paved = std::get_if<plan::PavedArea>(&ground.element->kind);
  problem::ensure(paved != nullptr, "only a paved area is laid");
  return Layer(job, ground, *paved).run();
}

Bordered bordered(const plan::Job& job, const plan::Ground& ground) {
  const auto* paved = std::get_if<plan::PavedArea>(&ground.element->kind);
  problem::ensure(paved != nullptr, "only a paved area has borders");
  return Layer(job, ground, *paved).only_borders();
}

double junction_joint(const plan::Job& job, const plan::Ground& ground, const plan::Stretch& stretch) {
  const catalogue::Junction* row = edges::junction_for(job, ground, stretch);
  if (!row || !row->joint || row->filler == "area") return 0;
  const catalogue::Item* filler = job.catalogue->item(row->filler);
  if (filler && filler->kind == "fabric") return 0;
  return row->joint->metres().si();
}

}  // namespace takeoff::paving
