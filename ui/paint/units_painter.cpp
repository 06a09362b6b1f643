#include "ui/paint/units_painter.h"

#include <QPixmap>
#include <algorithm>
#include <array>
#include <cmath>

#include "ui/look/theme.h"
#include "ui/paint/figure_paths.h"
#include "ui/paint/hatches.h"
#include "units/length.h"

namespace ui {

namespace {

using geometry::Vec;
using takeoff::paving::Kind;
using takeoff::paving::Lattice;

// Px that a joint keeps, so that units stay apart; less between small ones, which it would darken.
constexpr double least_gap = 0.7, small_gap = 0.5;
double gap_px(double unit_px) { return std::clamp(0.12 * unit_px, small_gap, least_gap); }

// The lattice with the shortest step from row to row.
Vec across_of(const Lattice& lattice) {
  if (lattice.along == 0) return lattice.across;
  return lattice.across - std::round(lattice.across.x / lattice.along) * Vec{lattice.along, 0};
}

QRectF rect_of(const Kind& kind, Vec by, double shrink) {
  return {kind.low.x + by.x + shrink, kind.low.y + by.y + shrink, kind.width - 2 * shrink, kind.height - 2 * shrink};
}

std::uint32_t mixed(std::uint32_t a, std::uint32_t b, std::uint32_t c) {
  std::uint32_t h = a * 0x9E3779B1u ^ b * 0x85EBCA77u ^ c * 0xC2B2AE3Du;
  h ^= h >> 15;
  h *= 0x2C1B3C6Du;
  return h ^ (h >> 13);
}

}  // namespace

UnitsPainter::UnitsPainter(const sheets::Units& units) : layout_(units.layout), material_(units.material) {
  field_ = path_in_metres(units.field);
  bounds_ = field_.boundingRect();
  if (!layout_) return;
  const Lattice& lattice = layout_->lattice;
  for (const takeoff::paving::Piece& piece : layout_->pieces) {
    const Kind& kind = lattice.kinds[static_cast<std::size_t>(piece.kind)];
    const Vec corner = kind.low + piece.a * Vec{lattice.along, 0} + piece.b * lattice.across;
    Cut cut{{}, {}, piece.sliver};
    for (const auto& side : piece.sides) cut.corners << QPointF(corner.x + side.from.x, corner.y + side.from.y);
    cut.bounds = cut.corners.boundingRect();
    cuts_.push_back(std::move(cut));
  }
}

double UnitsPainter::least_side() const {
  double least = 0;
  for (const Kind& kind : layout_->lattice.kinds) {
    const double side = std::min(kind.width, kind.height);
    least = least == 0 ? side : std::min(least, side);
  }
  return least / units::Length::steps_per_metre;
}

QTransform UnitsPainter::to_px_from_frame(const Sight& sight) const {
  const Lattice& lattice = layout_->lattice;
  const double scale = sight.scale / units::Length::steps_per_metre;
  const QPointF start = sight.to_px({lattice.start.x.metres().si(), lattice.start.y.metres().si()});
  const double c = scale * lattice.cosine, s = scale * lattice.sine;
  return QTransform(c, -s, -s, -c, start.x(), start.y());
}

// By the way a unit lies, and a little by chance, as stone is.
QColor UnitsPainter::colour(int kind, int a, int b) const {
  const auto& kinds = layout_->lattice.kinds;
  const bool turned = kinds[static_cast<std::size_t>(kind)].turned;
  const std::uint32_t chance =
      mixed(static_cast<std::uint32_t>(a), static_cast<std::uint32_t>(b), static_cast<std::uint32_t>(kind) + 1) & 3u;
  static constexpr std::array<double, 4> shares{0.0, 0.14, 0.28, 0.42};
  return ground_at(material_, shares[chance] + (turned ? 0.58 : 0.0));
}

QColor UnitsPainter::mean() const {
  const QColor unit = ground_at(material_, 0.5), joint = look(material_).line;
  const double share = std::clamp(layout_->lattice.joint_share + 0.12, 0.0, 0.3);
  const auto mix = [share](int a, int b) { return static_cast<int>(std::lround(a + share * (b - a))); };
  return QColor(mix(unit.red(), joint.red()), mix(unit.green(), joint.green()), mix(unit.blue(), joint.blue()));
}

void UnitsPainter::paint(QPainter& painter, const Sight& sight, const QRectF& clip) const {
  const QPainterPath field = to_px(sight).map(field_);
  if (!layout_ || layout_->lattice.kinds.empty()) return;
  const double unit = least_side() * sight.scale;
  if (unit < flat_under) return paint_flat(painter, field, sight);
  const QTransform frame = to_px_from_frame(sight);
  if (unit < lines_under) return paint_lines(painter, field, frame);
  const QRectF seen = frame.inverted().mapRect(clip);
  const double px_per_step = sight.scale / units::Length::steps_per_metre;
  if (unit < pattern_under) {
    paint_pattern(painter, field, frame, px_per_step);
  } else {
    painter.fillPath(field, look(material_).line);
    paint_units(painter, frame, seen, px_per_step);
  }
  paint_cuts(painter, frame, seen);
}

void UnitsPainter::paint_flat(QPainter& painter, const QPainterPath& field, const Sight& sight) const {
  painter.fillPath(field, hatch(material_, mean(), device_px(painter), sight.origin));
}

// Every row's joint, or every second, third ...: never nearer than 3 px.
void UnitsPainter::paint_lines(QPainter& painter, const QPainterPath& field, const QTransform& frame) const {
  const double row = std::abs(layout_->lattice.across.y);
  const double row_px = row * std::hypot(frame.m11(), frame.m12());
  if (row_px <= 0) return painter.fillPath(field, mean());
  const int each = std::max(1, static_cast<int>(std::ceil(3 / row_px)));
  constexpr int high = 64;
  static thread_local QImage line;
  line = QImage(1, high, QImage::Format_ARGB32_Premultiplied);
  line.fill(mean());
  const QColor dark = ground_at(material_, -0.6);
  const int thick = std::max(1, static_cast<int>(std::lround(high * 0.8 / (row_px * each))));
  for (int y = 0; y < thick; ++y) line.setPixelColor(0, y, dark);
  QBrush brush(line);
  brush.setTransform(QTransform::fromScale(row, row * each / high) * frame);
  painter.fillPath(field, brush);
}

QImage UnitsPainter::pattern(int along, int across, QSize pixels, double gap) const {
  const Lattice& lattice = layout_->lattice;
  const Vec a{lattice.along, 0}, b = across_of(lattice);
  QImage image(pixels, QImage::Format_ARGB32_Premultiplied);
  image.fill(look(material_).line);
  QPainter painter(&image);
  painter.setRenderHint(QPainter::Antialiasing);
  const double wide = pixels.width() / static_cast<double>(along), high = pixels.height() / static_cast<double>(across);
  const QTransform to_frame(a.x / wide, a.y / wide, b.x / high, b.y / high, 0, 0);
  painter.setTransform(to_frame.inverted());
  for (int k = 0; k < static_cast<int>(lattice.kinds.size()); ++k) {
    const Kind& kind = lattice.kinds[static_cast<std::size_t>(k)];
    const QRectF reach = QTransform(a.x, a.y, b.x, b.y, 0, 0).inverted().mapRect(rect_of(kind, {}, 0));
    for (int i = static_cast<int>(std::floor(-reach.right())); i <= along - std::floor(reach.left()); ++i) {
      for (int j = static_cast<int>(std::floor(-reach.bottom())); j <= across - std::floor(reach.top()); ++j) {
        const QRectF rect = rect_of(kind, i * a + j * b, gap);
        painter.fillRect(rect, colour(k, (i + 8 * along) % along, (j + 8 * across) % across));
      }
    }
  }
  return image;
}

void UnitsPainter::paint_pattern(QPainter& painter, const QPainterPath& field, const QTransform& frame,
                                 double px_per_step) const {
  const Lattice& lattice = layout_->lattice;
  const Vec a{lattice.along, 0}, b = across_of(lattice);
  const double unit_px = least_side() * units::Length::steps_per_metre * px_per_step;
  const double device = px_per_step * device_px(painter);
  if (pattern_scale_ != device || pattern_dark_ != theme().dark) {
    const auto cells = [](double px) { return std::clamp(static_cast<int>(std::ceil(180 / px)), 2, 24); };
    const double wide = geometry::length(a) * device, high = geometry::length(b) * device;
    pattern_cells_ = QSize(cells(wide), cells(high));
    const QSize pixels(std::max(1, static_cast<int>(std::lround(wide * pattern_cells_.width()))),
                       std::max(1, static_cast<int>(std::lround(high * pattern_cells_.height()))));
    const double gap = std::max(0.0, (gap_px(unit_px) / px_per_step - lattice.joint) / 2);
    pattern_ = pattern(pattern_cells_.width(), pattern_cells_.height(), pixels, gap);
    pattern_scale_ = device;
    pattern_dark_ = theme().dark;
  }
  QBrush brush(pattern_);
  const double wide = pattern_.width() / static_cast<double>(pattern_cells_.width());
  const double high = pattern_.height() / static_cast<double>(pattern_cells_.height());
  brush.setTransform(QTransform(a.x / wide, a.y / wide, b.x / high, b.y / high, 0, 0) * frame);
  painter.save();
  painter.setRenderHint(QPainter::SmoothPixmapTransform);
  painter.fillPath(field, brush);
  painter.restore();
}

void UnitsPainter::paint_units(QPainter& painter, const QTransform& frame, const QRectF& seen,
                               double px_per_step) const {
  const Lattice& lattice = layout_->lattice;
  const double unit_px = least_side() * units::Length::steps_per_metre * px_per_step;
  const double gap = std::max(0.0, (gap_px(unit_px) / px_per_step - lattice.joint) / 2);
  painter.save();
  painter.setTransform(frame, true);
  for (const takeoff::paving::Run& run : layout_->runs) {
    const Kind& kind = lattice.kinds[static_cast<std::size_t>(run.kind)];
    const Vec row = run.b * lattice.across;
    const double y = kind.low.y + row.y;
    if (y > seen.bottom() || y + kind.height < seen.top()) continue;
    const double x = kind.low.x + row.x;
    const int first = std::max(run.first, static_cast<int>(std::floor((seen.left() - x - kind.width) / lattice.along)));
    const int last = std::min(run.last, static_cast<int>(std::ceil((seen.right() - x) / lattice.along)));
    for (int a = first; a <= last; ++a)
      painter.fillRect(rect_of(kind, row + a * Vec{lattice.along, 0}, gap), colour(run.kind, a, run.b));
  }
  painter.restore();
}

void UnitsPainter::paint_cuts(QPainter& painter, const QTransform& frame, const QRectF& seen) const {
  const MaterialLook& tones = look(material_);
  painter.save();
  painter.setPen(QPen(tones.line, least_gap));
  for (const Cut& cut : cuts_) {
    if (!cut.bounds.intersects(seen)) continue;
    painter.setBrush(cut.sliver ? tones.line : tones.cut);
    painter.drawPolygon(frame.map(cut.corners));
  }
  painter.restore();
}

}  // namespace ui
