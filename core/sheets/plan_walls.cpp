#include <algorithm>
#include <cmath>
#include <numbers>

#include "geometry/offset.h"
#include "sheets/along_line.h"
#include "sheets/plan_parts.h"
#include "takeoff/walls/caps.h"
#include "takeoff/walls/courses.h"

namespace sheets {

using takeoff::Stage;

namespace {

namespace walls = takeoff::walls;

// A wall as the takeoff builds it; nothing where it can't be.
struct Built {
  walls::Blocks blocks;
  walls::Profile profile;
};

std::optional<Built> built(const Plan& plan, const plan::Ground& ground, const plan::Wall& wall) {
  takeoff::Share said;
  const auto blocks = walls::chosen_blocks(plan.job(), wall, ground.element->id, said);
  const auto profile = blocks ? walls::profile(plan.job(), ground, blocks->block, said) : std::nullopt;
  if (!profile) return std::nullopt;
  return Built{*blocks, *profile};
}

class WallDrawer {
 public:
  WallDrawer(Plan& plan, const plan::Ground& ground, const plan::Wall& wall, const Built& made)
      : plan_(plan), ground_(ground), wall_(wall), made_(made), side_(wall.behind == geometry::Side::left ? 1 : -1) {}

  void draw() {
    if (!draw_caps()) draw_blocks();
    draw_steps();
    draw_pipe();
    if (plan_.at(Stage::wall)) draw_layers();
  }

 private:
  const plan::ElementId& id() const { return ground_.element->id; }
  double setback(int course) const { return course * made_.blocks.block.setback; }

  void put(std::vector<RowPiece> pieces, Material material) {
    for (RowPiece& piece : pieces) {
      Area area;
      area.contours.push_back(std::move(piece.contour));
      area.material = material;
      area.line = Line::unit;
      area.of = id();
      plan_.put(std::move(area));
    }
  }

  bool draw_caps() {
    const catalogue::Item* cap = plan_.catalogue().item(wall_.cap);
    if (!cap || !cap->length || !cap->width) return false;
    const catalogue::Item* curved = plan_.catalogue().item(wall_.curve_cap);
    const double overhang =
        wall_.cap_overhang.value_or(plan_.catalogue().length_limit("cap-overhang", units::Length::inches(1)))
            .metres()
            .si();
    const double depth = cap->width->metres().si();
    for (const walls::CapRun& run : walls::cap_runs(made_.profile, made_.blocks, overhang, depth)) {
      const double front = setback(run.course) - overhang;
      const Strip strip{side_ * front, side_ * (front + depth)};
      const bool before = run.mitre_before != 0, after = run.mitre_after != 0;
      const catalogue::Item* item = run.radius != 0 && curved && curved->length ? curved : cap;
      put(even_pieces(part_of(*ground_.path, run.from, run.to, strip, before, after), strip, before, after,
                      item->length->metres().si()),
          Material::cap);
    }
    return true;
  }

  void draw_blocks() {
    for (const walls::Column& column : made_.profile.columns) {
      for (const walls::Leg& leg : made_.profile.legs) {
        const double from = std::max(column.from, leg.from), to = std::min(column.to, leg.to);
        const double front = setback(column.top - 1);
        const Strip strip{side_ * front, side_ * (front + made_.blocks.block.depth)};
        const auto& unit = leg.radius != 0 && made_.blocks.curve ? *made_.blocks.curve : made_.blocks.block;
        if (to - from > 1e-3)
          put(even_pieces(part_of(*ground_.path, from, to, strip, true, true), strip, true, true, unit.length),
              Material::block);
      }
    }
  }

  void draw_steps() {
    const auto& columns = made_.profile.columns;
    for (std::size_t i = 0; i + 1 < columns.size(); ++i) {
      if (columns[i].top == columns[i + 1].top) continue;
      const Station at = station_on(*ground_.path, columns[i].to, side_ * made_.blocks.block.depth / 2);
      plan_.mark(Sign::wall_step, at.at, {}, id(), at.way + std::numbers::pi / 2);
    }
  }

  void draw_pipe() {
    if (!wall_.pipe) return;
    const double behind = made_.blocks.block.depth + 4 * units::metres_per_inch;
    if (const auto line = geometry::parallel(*ground_.path, units::Length::nearest(units::Metres(side_ * behind))))
      plan_.stroke(contour(*line), Line::pipe, id());
    for (const plan::HeightAt& outlet : wall_.pipe->outlets) {
      const Station at = station_on(*ground_.path, outlet.at.metres().si(), 0);
      plan_.mark(Sign::outlet, at.at, {}, id(), at.way - side_ * std::numbers::pi / 2);
    }
  }

  // How far the longest layer reaches into the fill: nothing is dug or driven there afterwards.
  void draw_layers() {
    units::Length reach;
    for (const plan::Reinforcement& layer : wall_.layers) reach = std::max(reach, layer.length);
    if (reach <= units::Length()) return;
    if (const auto line = geometry::parallel(*ground_.path, side_ > 0 ? reach : -reach))
      plan_.stroke(contour(*line), Line::geotextile, id());
  }

  Plan& plan_;
  const plan::Ground& ground_;
  const plan::Wall& wall_;
  const Built& made_;
  double side_;
};

}  // namespace

void draw_wall(Plan& plan, const plan::Ground& ground, const plan::Wall& wall) {
  const Stage when = wall.existing ? Stage::protect : Stage::wall;
  plan.put(contours(ground.footprint), Material::block, Line::element, when, ground.element->id);
  if (wall.existing || !ground.path || !plan.built(Stage::wall)) return;
  if (const auto made = built(plan, ground, wall)) WallDrawer(plan, ground, wall, *made).draw();
}

}  // namespace sheets
