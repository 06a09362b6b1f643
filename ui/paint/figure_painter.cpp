#include "ui/paint/figure_painter.h"

#include <algorithm>
#include <vector>

#include "ui/look/theme.h"
#include "ui/paint/figure_paths.h"
#include "ui/paint/hatches.h"
#include "ui/paint/lines.h"
#include "ui/paint/marks.h"
#include "ui/paint/units_painter.h"

namespace ui {

namespace {

using sheets::Line;
using sheets::Material;

// One part made ready: its path in metres, and where it lies.
struct ReadyPart {
  const sheets::Part* part = nullptr;
  QPainterPath path;
  QRectF bounds;
  int units = -1;  // number in Ready::units
};

constexpr double nothing_under = 0.6;  // px: what is smaller is not seen
constexpr double no_edge_under = 3;    // px: the edges of smaller units would be all that is seen

bool solid_unit(const sheets::Area& area) { return area.line == Line::unit; }

// Units on the plan are really laid and carry no sign; a house is hatched in its walls alone (tone 0).
bool signed_area(const sheets::Area& area) {
  if (!has_sign(area.material) || area.cut || area.sliver || solid_unit(area)) return false;
  switch (area.material) {
    case Material::paving:
    case Material::border:
    case Material::walk:
    case Material::coping:
    case Material::block: return area.line == Line::cut_edge;
    case Material::building: return area.tone == 0;
    default: return true;
  }
}

void paint_area(QPainter& painter, const sheets::Area& area, const QPainterPath& path, const Sight& sight) {
  const QRectF box = path.boundingRect();
  const double least = std::min(box.width(), box.height());
  if (area.later) return stroke(painter, path, Line::later);
  if (area.material != Material::none) {
    const QColor ground = area.sliver ? look(area.material).line : ground_of(area.material, area.tone, area.cut);
    if (signed_area(area))
      painter.fillPath(path, hatch(area.material, ground, device_px(painter), sight.origin));
    else
      painter.fillPath(path, ground);
  }
  if (solid_unit(area) && least < no_edge_under) return;
  stroke(painter, path, area.line, area.material);
}

}  // namespace

struct FigurePainter::Ready {
  std::shared_ptr<const sheets::Figure> figure;
  std::vector<ReadyPart> parts;
  std::vector<UnitsPainter> units;
  std::vector<const sheets::Mark*> marks;

  void take(const sheets::Part& part) {
    ReadyPart ready;
    ready.part = &part;
    if (const auto* area = std::get_if<sheets::Area>(&part)) {
      ready.path = path_in_metres(area->contours);
    } else if (const auto* line = std::get_if<sheets::Stroke>(&part)) {
      ready.path = path_in_metres(line->contour);
    } else if (const auto* field = std::get_if<sheets::Units>(&part)) {
      ready.units = static_cast<int>(units.size());
      units.emplace_back(*field);
    } else {
      return marks.push_back(&std::get<sheets::Mark>(part));
    }
    ready.bounds = ready.units >= 0 ? units.back().bounds() : ready.path.boundingRect();
    parts.push_back(std::move(ready));
  }
};

FigurePainter::FigurePainter(std::shared_ptr<const sheets::Figure> figure) : ready_(std::make_unique<Ready>()) {
  ready_->figure = std::move(figure);
  for (const sheets::Part& part : ready_->figure->parts) ready_->take(part);
}

FigurePainter::~FigurePainter() = default;
FigurePainter::FigurePainter(FigurePainter&&) noexcept = default;
FigurePainter& FigurePainter::operator=(FigurePainter&&) noexcept = default;

const sheets::Figure& FigurePainter::figure() const { return *ready_->figure; }

void FigurePainter::paint(QPainter& painter, const Sight& sight, const QRectF& clip) const {
  const QTransform px = to_px(sight);
  const QRectF seen = px.inverted().mapRect(clip.adjusted(-12, -12, 12, 12));
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setClipRect(clip, Qt::IntersectClip);
  for (const ReadyPart& ready : ready_->parts) {
    // A level or upright line has no area, and is there all the same.
    const QRectF& box = ready.bounds;
    if (box.left() > seen.right() || box.right() < seen.left() || box.top() > seen.bottom() ||
        box.bottom() < seen.top())
      continue;
    if (std::max(box.width(), box.height()) * sight.scale < nothing_under) continue;
    if (ready.units >= 0) {
      ready_->units[static_cast<std::size_t>(ready.units)].paint(painter, sight, clip);
    } else if (const auto* area = std::get_if<sheets::Area>(ready.part)) {
      paint_area(painter, *area, px.map(ready.path), sight);
    } else if (const auto* line = std::get_if<sheets::Stroke>(ready.part)) {
      stroke(painter, px.map(ready.path), line->line);
    }
  }
  painter.restore();
}

void FigurePainter::paint_marks(QPainter& painter, const Sight& sight, const QRectF& clip) const {
  ui::paint_marks(painter, ready_->marks, sight, clip);
}

void paint_material(QPainter& painter, const QPainterPath& path, Material material, int tone, bool later) {
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  if (later) {
    stroke(painter, path, Line::later);
  } else if (material != Material::none) {
    painter.fillPath(path, hatch(material, ground_of(material, tone), device_px(painter), {}));
    stroke(painter, path, Line::element, material);
  }
  painter.restore();
}

}  // namespace ui
