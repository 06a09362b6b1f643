#include <algorithm>
#include <cmath>
#include <numbers>

#include "geometry/offset.h"
#include "sheets/plan_parts.h"
#include "sheets/row_pieces.h"
#include "takeoff/edges/coping_kit.h"
#include "takeoff/paving/bordered.h"

namespace sheets {

using takeoff::Stage;
using takeoff::paving::LaidCourse;

namespace {

bool is_walk(const plan::Ground& ground) {
  std::string name = ground.element->name;
  for (char& letter : name)
    if (letter >= 'A' && letter <= 'Z') letter = static_cast<char>(letter - 'A' + 'a');
  if (name.find("walk") != std::string::npos || name.find("path") != std::string::npos) return true;
  // A strip so wide and much longer has 2 x area / perimeter next to its width.
  return ground.drawn.area().si() * 2 / ground.drawn.perimeter().si() < 3 * units::metres_per_foot;
}

void put(Plan& plan, std::vector<RowPiece> pieces, Material material, int tone, const plan::ElementId& of) {
  for (RowPiece& piece : pieces) {
    Area area;
    area.contours.push_back(std::move(piece.contour));
    area.material = material;
    area.line = Line::unit;
    area.tone = tone;
    area.cut = piece.cut;
    area.of = of;
    plan.put(std::move(area));
  }
}

// How the two runs that meet in a corner end there.
struct Meeting {
  RunEnd first;
  RunEnd second;
  bool block = false;
};

Meeting meeting(const PlacedRun& first, const PlacedRun& second, const LaidCourse& course) {
  if (first.run.corner_after == 0 || second.run.corner_before == 0) return {};
  const auto made =
      takeoff::paving::at_corners({first.run, second.run}, course.corner, course.rules, course.course, false);
  if (made.mitres > 0) return {{true, 0}, {true, 0}, false};
  const double turn = first.run.corner_after;
  const double taken =
      turn <= std::numbers::pi / 2 ? course.rules.deep * std::tan(turn / 2) : course.rules.deep / std::sin(turn);
  const RunEnd stops{false, taken + course.rules.joint};
  if (made.blocks > 0) return {stops, stops, true};
  return course.course % 2 == 0 ? Meeting{{}, stops, false} : Meeting{stops, {}, false};
}

void draw_course(Plan& plan, const LaidCourse& course, const plan::PavedArea& area, const plan::ElementId& of) {
  const std::vector<PlacedRun> runs =
      takeoff::paving::placed_runs(course.line, course.from, course.rules.deep, geometry::Side::left);
  if (runs.size() != course.makes.size()) return;
  const Strip strip = Strip::beside(course.from, course.rules.deep, geometry::Side::left);
  const int tone = area.borders[course.border].way == plan::BorderCourse::Way::soldier ? 0 : 1;
  std::vector<RunEnd> before(runs.size()), after(runs.size());
  std::vector<RowPiece> blocks;
  for (std::size_t i = 0; i < runs.size(); ++i) {
    if (i + 1 == runs.size() && !course.line.closed()) break;
    const std::size_t next = (i + 1) % runs.size();
    const Meeting met = meeting(runs[i], runs[next], course);
    after[i] = met.first;
    before[next] = met.second;
    if (met.block) blocks.push_back({corner_block(runs[i], strip), true});
  }
  for (std::size_t i = 0; i < runs.size(); ++i) {
    if (course.makes[i].pieces == 0) continue;
    put(plan, PlacedRow(runs[i], strip, before[i], after[i]).pieces(course.makes[i]), Material::border, tone, of);
  }
  put(plan, std::move(blocks), Material::border, tone, of);
}

void draw_area(Plan& plan, const plan::Ground& ground, const plan::PavedArea& area) {
  const plan::ElementId& id = ground.element->id;
  // Where nothing is laid yet there are no joints either: an outline, through which a site plan is seen.
  const Material ground_of = area.laying ? Material::joint : Material::none;
  plan.put(contours(ground.net), ground_of, Line::element, Stage::paving, id);
  if (!plan.built(Stage::paving)) return;
  const takeoff::paving::Bordered laid = takeoff::paving::bordered(plan.job(), ground);
  for (const LaidCourse& course : laid.courses) draw_course(plan, course, area, id);
  const auto layout = plan.results().takeoff.layouts.find(id);
  if (layout == plan.results().takeoff.layouts.end()) return;
  plan.put(Units{layout->second, contours(laid.field), is_walk(ground) ? Material::walk : Material::paving, id});
}

// Along one outline of the water; where a run can't be made its ground stays empty.
void draw_coping(Plan& plan, const takeoff::edges::CopingRow& row, const plan::ElementId& of) {
  const Strip strip = Strip::beside(row.from, row.deep, geometry::Side::right);
  for (const takeoff::edges::LaidCoping& laid : row.runs) {
    const auto end = [](const catalogue::Item* piece, double corner) {
      return piece ? RunEnd{false, piece->length->metres().si()} : RunEnd{corner > 0, 0};
    };
    const PlacedRow placed(laid.placed, strip, end(laid.before, laid.placed.run.corner_before),
                           end(laid.after, laid.placed.run.corner_after));
    if (laid.way) put(plan, placed.pieces(laid.way->make), Material::coping, 0, of);
    if (laid.after)
      put(plan, {{corner_legs(laid.placed, strip, laid.after->length->metres().si()), false}}, Material::coping, 0, of);
  }
}

// The ring between two distances from the water's edge, positive outwards.
std::vector<Contour> ring(const geometry::Region& water, units::Length from, units::Length to) {
  const auto outer = geometry::offset(water, to, geometry::Corner::mitred);
  const auto inner = geometry::offset(water, from, geometry::Corner::mitred);
  if (!outer || !inner) return {};
  std::vector<Contour> made = contours(*outer);
  for (Contour& contour : contours(*inner)) made.push_back(std::move(contour));
  return made;
}

void draw_pool(Plan& plan, const plan::Ground& ground, const plan::Pool& pool) {
  const plan::ElementId& id = ground.element->id;
  // The shell stands when the job begins; until it is filled one looks at its floor.
  const bool filled = plan.built(Stage::finish);
  plan.put(contours(ground.drawn), filled ? Material::water : Material::concrete, Line::element, Stage::protect, id);
  plan.put(ring(ground.drawn, {}, pool.shell), Material::concrete, Line::light, Stage::protect, id);
  const std::vector<takeoff::edges::CopingRow> rows = takeoff::edges::laid_coping(plan.job(), ground);
  if (rows.empty()) return;
  const catalogue::Item* piece = plan.catalogue().item(pool.coping->item);
  const units::Length bearing = *piece->width - pool.coping->overhang;
  if (plan.built(Stage::dig) && !plan.built(Stage::coping))
    plan.put(ring(ground.drawn, pool.shell, bearing), Material::soil, Line::none, Stage::dig, id);
  if (!plan.built(Stage::coping) && pool.collar) plan.later(ring(ground.drawn, {}, pool.collar->width), id);
  if (pool.surround)
    plan.put(ring(ground.drawn, pool.shell, pool.shell + pool.surround->clearance), Material::open_stone, Line::light,
             Stage::coping, id);
  plan.put(ring(ground.drawn, -pool.coping->overhang, bearing), Material::mortar, Line::coping_joint, Stage::coping,
           id);
  if (!plan.built(Stage::coping)) return;
  for (const takeoff::edges::CopingRow& row : rows) draw_coping(plan, row, id);
}

}  // namespace

void draw_pools(Plan& plan) {
  for (const auto& ground : plan.site().grounds) {
    const auto* pool = std::get_if<plan::Pool>(&ground->element->kind);
    if (pool && !ground->drawn.empty()) draw_pool(plan, *ground, *pool);
  }
}

void draw_areas(Plan& plan) {
  for (const auto& ground : plan.site().grounds) {
    const auto* area = std::get_if<plan::PavedArea>(&ground->element->kind);
    if (area && !ground->net.empty()) draw_area(plan, *ground, *area);
  }
}

}  // namespace sheets
