#include "sheets/wall_elevation.h"

#include <algorithm>
#include <cmath>
#include <tuple>
#include <utility>

#include "sheets/parts.h"
#include "sheets/wall_face.h"
#include "takeoff/walls/reinforcement.h"
#include "takeoff/walls/zone.h"

namespace sheets {

namespace {

namespace walls = takeoff::walls;
using What = WallElevation::What;

constexpr double same_place = 1e-3;  // metres
constexpr double past_ends = 0.3;    // metres of ground shown past both ends

class Elevation {
 public:
  Elevation(const results::Results& results, const plan::Ground& ground, const plan::Wall& wall, WallFace face)
      : job_(*results.job), ground_(ground), wall_(wall), face_(std::move(face)), pad_(walls::pad(job_, wall)) {
    made_.length = profile().length;
    made_.starts_right = wall.behind == geometry::Side::right;
    made_.datum = profile().base_level(*std::ranges::min_element(columns(), {}, &walls::Column::base));
    made_.pad = pad_ ? pad_->thickness : 0;
    const walls::Column& tallest = *std::ranges::max_element(columns(), {}, &walls::Column::courses);
    made_.section_at = (tallest.from + tallest.to) / 2;
  }

  WallElevation make() {
    draw_base();
    draw_units();
    draw_caps();
    draw_outline();
    draw_ground(profile().ground, Line::house);
    if (!wall_.free_standing) draw_ground(profile().behind, Line::later);
    draw_layers();
    find_stations();
    made_.start = end_at(columns().front(), 0);
    made_.finish = end_at(columns().back(), made_.length);
    settle(made_.figure);
    return std::move(made_);
  }

 private:
  const walls::Profile& profile() const { return face_.profile; }
  const std::vector<walls::Column>& columns() const { return face_.profile.columns; }
  double y(double height) const { return height - made_.datum; }
  double base(const walls::Column& column) const { return y(profile().base_level(column)); }
  double top(const walls::Column& column) const { return y(profile().top_level(column)) + profile().cap_height; }

  void box(double from, double to, double low, double high, Material material, Line line) {
    Area area;
    const double a = made_.x(from), b = made_.x(to);
    area.contours.push_back(rectangle({std::min(a, b), low}, {std::max(a, b), high}));
    area.material = material;
    area.line = line;
    area.of = ground_.element->id;
    made_.figure.parts.emplace_back(std::in_place_type<Area>, std::move(area));
  }
  void stroke(std::vector<Vec> points, bool closed, Line line) {
    Contour contour = polygon(std::move(points));
    contour.closed = closed;
    made_.figure.parts.emplace_back(std::in_place_type<Stroke>, Stroke{std::move(contour), line, ground_.element->id});
  }

  // Columns with one level of base are one piece of leveling base.
  void draw_base() {
    const double deep = -made_.pad - 0.15;
    for (std::size_t i = 0; i < columns().size();) {
      std::size_t next = i + 1;
      while (next < columns().size() && columns()[next].base == columns()[i].base) ++next;
      const double from = columns()[i].from, to = columns()[next - 1].to, low = base(columns()[i]);
      const bool first = i == 0 && !profile().closed, last = next == columns().size() && !profile().closed;
      box(from - (first ? past_ends : 0), to + (last ? past_ends : 0), deep, low - made_.pad, Material::soil,
          Line::none);
      if (pad_ && pad_->thickness > 0)
        box(from - (first ? pad_->past : 0), to + (last ? pad_->past : 0), low - pad_->thickness, low,
            pad_->open ? Material::open_stone : Material::dense_base, Line::cut_edge);
      i = next;
    }
  }

  void draw_units() {
    made_.courses.resize(static_cast<std::size_t>(profile().courses));
    for (int i = 0; i < profile().courses; ++i) {
      WallElevation::Course& course = made_.courses[static_cast<std::size_t>(i)];
      course.number = i + 1;
      course.length = face_.courses.length(i);
    }
    for (const FacePiece& piece : face_.units) {
      count(piece, made_.courses[static_cast<std::size_t>(piece.course)]);
      if (piece.to - piece.from < same_place) continue;
      const double low = y(profile().level(piece.course));
      const bool cut = piece.make == walls::Make::cut;
      box(piece.from, piece.to, low, low + profile().course_height, cut ? Material::block : Material::none,
          cut ? Line::cut_edge : Line::unit);
    }
  }

  static void count(const FacePiece& piece, WallElevation::Course& course) {
    if (piece.again) return;
    switch (piece.make) {
      case walls::Make::whole: ++course.whole; return;
      case walls::Make::half: ++course.half; return;
      case walls::Make::corner: ++course.corner; return;
      case walls::Make::end: ++course.end; return;
      case walls::Make::cut: ++course.cut; return;
    }
  }

  void draw_caps() {
    for (const CapPiece& piece : caps_on(job_, wall_, face_)) {
      ++made_.caps;
      const double low = y(profile().level(piece.course + 1));
      const double to = std::min(piece.to, made_.length);
      const Material material = piece.cut ? Material::block : Material::cap;
      const Line line = piece.cut ? Line::cut_edge : Line::unit;
      box(piece.from, to, low, low + profile().cap_height, material, line);
      if (piece.to > made_.length + same_place)  // round the seam of a closed line
        box(0, piece.to - made_.length, low, low + profile().cap_height, material, line);
    }
  }

  void draw_outline() {
    std::vector<Vec> ring;
    for (const walls::Column& column : columns()) {
      ring.push_back({made_.x(column.from), top(column)});
      ring.push_back({made_.x(column.to), top(column)});
    }
    for (auto column = columns().rbegin(); column != columns().rend(); ++column) {
      ring.push_back({made_.x(column->to), base(*column)});
      ring.push_back({made_.x(column->from), base(*column)});
    }
    stroke(std::move(ring), true, Line::cut_edge);
  }

  void draw_ground(const walls::Heights& heights, Line line) {
    if (heights.empty()) return;
    const double past = profile().closed ? 0 : past_ends;
    std::vector<Vec> points{{made_.x(-past), y(heights.after(0))}};
    for (const walls::Heights::Knot& knot : heights.knots())
      if (knot.at > -past && knot.at < made_.length + past) points.push_back({made_.x(knot.at), y(knot.height)});
    points.push_back({made_.x(made_.length + past), y(heights.before(made_.length))});
    stroke(std::move(points), false, line);
  }

  void draw_layers() {
    for (const plan::Reinforcement& layer : wall_.layers) {
      for (const walls::Extent& part : walls::extents(profile(), layer)) {
        const double at = y(profile().level(layer.on_course));
        stroke({{made_.x(part.from), at}, {made_.x(part.to), at}}, false, Line::geotextile);
        made_.layers.push_back({layer.on_course, layer.length.metres().si(), part.from, part.to, at});
      }
    }
    std::ranges::sort(made_.layers, {},
                      [](const auto& one) { return std::tuple(one.on_course, one.from, one.length); });
  }

  void find_stations() {
    auto& all = made_.stations;
    all.push_back({0, What::end, 0});
    for (std::size_t i = 1; i < columns().size(); ++i) {
      if (columns()[i].base != columns()[i - 1].base) all.push_back({columns()[i].from, What::base_step, 0});
      if (columns()[i].top != columns()[i - 1].top) all.push_back({columns()[i].from, What::top_step, 0});
    }
    const auto& legs = profile().legs;
    for (std::size_t i = 0; i < legs.size(); ++i) {
      const bool last = i + 1 == legs.size();
      if (legs[i].radius != 0) all.push_back({legs[i].from, What::curve_begins, std::abs(legs[i].radius)});
      if (legs[i].radius != 0 && !last) all.push_back({legs[i].to, What::curve_ends, 0});
      if (legs[i].corner != 0 && !last) all.push_back({legs[i].to, What::corner, 0});
    }
    all.push_back({made_.length, What::end, 0});
    std::ranges::sort(all, {}, [](const WallElevation::Station& one) { return std::pair(one.at, one.what); });
  }

  WallElevation::End end_at(const walls::Column& column, double station) const {
    WallElevation::End end{base(column), top(column), {}};
    const walls::Heights& before = profile().ground;
    if (!before.empty()) end.ground = y(station > 0 ? before.before(station) : before.after(station));
    return end;
  }

  const plan::Job& job_;
  const plan::Ground& ground_;
  const plan::Wall& wall_;
  WallFace face_;
  std::optional<walls::Pad> pad_;
  WallElevation made_;
};

}  // namespace

std::optional<WallElevation> wall_elevation(const results::Results& results, const plan::ElementId& wall) {
  const plan::Ground* ground = results.site.find(wall);
  const auto* what = ground ? std::get_if<plan::Wall>(&ground->element->kind) : nullptr;
  if (!what || what->existing || !ground->path) return std::nullopt;
  auto face = wall_face(*results.job, *ground, *what);
  if (!face) return std::nullopt;
  return Elevation(results, *ground, *what, std::move(*face)).make();
}

}  // namespace sheets
