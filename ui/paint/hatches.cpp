#include "ui/paint/hatches.h"

#include <QImage>
#include <QMap>
#include <QPainter>
#include <QPainterPath>
#include <array>
#include <cmath>
#include <numbers>
#include <tuple>

#include "ui/look/theme.h"

namespace ui {

namespace {

using sheets::Material;

// Small, and the same on every machine.
class Chance {
 public:
  explicit Chance(std::uint32_t seed) : state_(seed) {}
  double next() {  // 0 to 1
    state_ = state_ * 1664525u + 1013904223u;
    return (state_ >> 8) / 16777216.0;
  }
  double between(double low, double high) { return low + (high - low) * next(); }

 private:
  std::uint32_t state_;
};

// Draws into a tile; what hangs over a side comes in again at the other.
class Tile {
 public:
  Tile(QPainter& painter, double side, QColor line) : painter_(painter), side_(side), line_(std::move(line)) {}
  double side() const { return side_; }
  void stroke(const QPainterPath& path, double width = 1) { draw(path, QPen(line_, width), Qt::NoBrush); }
  void fill(const QPainterPath& path) { draw(path, Qt::NoPen, line_); }
  void line(QPointF from, QPointF to, double width = 1) {
    QPainterPath path(from);
    path.lineTo(to);
    stroke(path, width);
  }
  void dot(QPointF at, double radius) {
    QPainterPath path;
    path.addEllipse(at, radius, radius);
    fill(path);
  }

 private:
  void draw(const QPainterPath& path, const QPen& pen, const QBrush& brush) {
    painter_.setPen(pen);
    painter_.setBrush(brush);
    const QRectF box = path.boundingRect().adjusted(-1, -1, 1, 1);
    for (int i = -1; i <= 1; ++i) {
      for (int j = -1; j <= 1; ++j) {
        const QPointF by(i * side_, j * side_);
        if (box.translated(by).intersects(QRectF(0, 0, side_, side_))) painter_.drawPath(path.translated(by));
      }
    }
  }
  QPainter& painter_;
  double side_;
  QColor line_;
};

// A broken stone: corners about a middle, none of them square.
QPainterPath stone(QPointF middle, double radius, Chance& chance) {
  const int corners = 5 + static_cast<int>(chance.between(0, 2.99));
  const double start = chance.between(0, 2 * std::numbers::pi), flat = chance.between(0.7, 1.0);
  QPolygonF corner;
  for (int i = 0; i < corners; ++i) {
    const double angle = start + (i + chance.between(-0.25, 0.25)) * 2 * std::numbers::pi / corners;
    const double reach = radius * chance.between(0.82, 1.08);
    corner << middle + QPointF(reach * std::cos(angle), reach * flat * std::sin(angle));
  }
  QPainterPath path;
  path.addPolygon(corner);
  path.closeSubpath();
  return path;
}

// Stones on a grid whose rows are shifted by half and whose places are shaken.
void stones(Tile& tile, int across, double least, double most, bool fines, Chance chance) {
  const double cell = tile.side() / across;
  for (int row = 0; row < across; ++row) {
    for (int i = 0; i < across; ++i) {
      const QPointF middle((i + 0.5 + 0.5 * (row % 2) + chance.between(-0.07, 0.07)) * cell,
                           (row + 0.5 + chance.between(-0.07, 0.07)) * cell);
      tile.stroke(stone(middle, cell * chance.between(least, most), chance), 0.9);
      if (fines) tile.dot(middle + QPointF(cell / 2, cell * chance.between(0.3, 0.5)), chance.between(0.5, 0.9));
    }
  }
}

void lines_at_45(Tile& tile) {
  for (double x = 0; x < tile.side(); x += 6) tile.line({x, tile.side()}, {x + tile.side(), 0}, 0.8);
}

void triangles_and_specks(Tile& tile, bool triangles, Chance chance) {
  const double cell = tile.side() / 4;
  for (int i = 0; i < 16; ++i) {
    const QPointF corner(i % 4 * cell, std::floor(i / 4.0) * cell);
    const QPointF at = corner + QPointF(chance.between(0.1, 0.9), chance.between(0.1, 0.9)) * cell;
    if (triangles && (i + i / 4) % 2 == 0) {
      QPolygonF corners;
      const double turn = chance.between(0, 2), size = chance.between(2.6, 3.8);
      for (int k = 0; k < 3; ++k)
        corners << at + size * QPointF(std::cos(turn + k * 2.094), std::sin(turn + k * 2.094));
      QPainterPath path;
      path.addPolygon(corners);
      path.closeSubpath();
      tile.stroke(path, 0.9);
    }
    for (int k = 0; k < 2; ++k)
      tile.dot(corner + QPointF(chance.next(), chance.next()) * cell, chance.between(0.45, 0.8));
  }
}

void dots(Tile& tile, int across, double radius, Chance chance) {
  const double cell = tile.side() / across;
  for (int i = 0; i < across * across; ++i)
    tile.dot(QPointF(i % across + chance.between(0.1, 0.9), i / across + chance.between(0.1, 0.9)) * cell,
             radius * chance.between(0.7, 1.2));
}

// Sets of three strokes leaning in turn to either side.
void leaning_strokes(Tile& tile) {
  const double cell = tile.side() / 4;
  for (int row = 0; row < 4; ++row) {
    for (int i = 0; i < 4; i += 2) {
      const QPointF middle((i + 0.5 + row % 2 + (row > 1 ? 0.5 : 0)) * cell, (row + 0.5) * cell);
      const double lean = (i / 2 + row / 2) % 2 == 0 ? 1 : -1;
      for (int k = -1; k <= 1; ++k) {
        const QPointF at = middle + QPointF(k * 4, 0);
        tile.line(at + QPointF(-3.6 * lean, 3.6), at + QPointF(3.6 * lean, -3.6), 0.9);
      }
    }
  }
}

void waves(Tile& tile) {
  for (int row = 0; row < 2; ++row) {
    const QPointF start((row == 0 ? 0.2 : 0.7) * tile.side(), (0.25 + 0.5 * row) * tile.side());
    QPainterPath path(start);
    for (int k = 0; k < 3; ++k) {
      path.quadTo(path.currentPosition() + QPointF(2, -4), path.currentPosition() + QPointF(4, 0));
      path.quadTo(path.currentPosition() + QPointF(2, 4), path.currentPosition() + QPointF(4, 0));
    }
    tile.stroke(path, 1.1);
  }
}

void tufts(Tile& tile, Chance chance) {
  for (int i = 0; i < 4; ++i) {
    const QPointF foot((i % 2 * 0.5 + chance.between(0.08, 0.42)) * tile.side(),
                       (std::floor(i / 2.0) * 0.5 + chance.between(0.1, 0.4)) * tile.side());
    for (const double lean : {-2.5, 0.0, 2.5})
      tile.line(foot + QPointF(lean / 2, 0), foot + QPointF(lean * 1.2, -4.5), 0.9);
  }
}

// A shrub from above: a scalloped ring, and three ribs.
void shrub(Tile& tile, QPointF middle, double radius, double turn) {
  constexpr int lobes = 8;
  const auto at = [&](double k, double reach) {
    const double angle = turn + k * 2 * std::numbers::pi / lobes;
    return middle + reach * radius * QPointF(std::cos(angle), std::sin(angle));
  };
  QPainterPath ring(at(0, 0.85));
  for (int k = 0; k < lobes; ++k) ring.quadTo(at(k + 0.5, 1.3), at(k + 1, 0.85));
  tile.stroke(ring, 1);
  for (int k = 0; k < 3; ++k) tile.line(middle, at(k * lobes / 3.0, 0.45), 0.9);
}

void shrubs(Tile& tile) {
  constexpr std::array<std::array<double, 3>, 6> places{
      {{0.18, 0.2, 9}, {0.53, 0.12, 7}, {0.84, 0.3, 10}, {0.32, 0.58, 11}, {0.7, 0.66, 8}, {0.1, 0.86, 7}}};
  double turn = 0;
  for (const auto& [x, y, radius] : places) shrub(tile, QPointF(x, y) * tile.side(), radius, turn += 0.7);
}

double side_of(Material material) {
  switch (material) {
    case Material::water:
    case Material::planting: return 72;
    case Material::lawn: return 120;
    case Material::soil: return 64;
    case Material::concrete:
    case Material::mortar: return 64;
    case Material::dense_base:
    case Material::open_stone: return 80;
    case Material::sand:
    case Material::made_up_ground: return 64;
    default: return 48;
  }
}

void draw_sign(Tile& tile, Material material) {
  switch (material) {
    case Material::dense_base: return stones(tile, 7, 0.3, 0.5, true, Chance(7));
    case Material::open_stone: return stones(tile, 8, 0.42, 0.46, false, Chance(11));
    case Material::concrete: return triangles_and_specks(tile, true, Chance(3));
    case Material::mortar: return triangles_and_specks(tile, false, Chance(5));
    case Material::sand: return dots(tile, 14, 0.65, Chance(13));
    case Material::made_up_ground: return dots(tile, 8, 0.8, Chance(17));
    case Material::soil: return leaning_strokes(tile);
    case Material::water: return waves(tile);
    case Material::lawn: return tufts(tile, Chance(19));
    case Material::planting: return shrubs(tile);
    default: return lines_at_45(tile);
  }
}

QImage tile_of(Material material, const QColor& ground, double device_px) {
  const double side = side_of(material);
  const int pixels = static_cast<int>(std::lround(side * device_px));
  QImage image(pixels, pixels, QImage::Format_ARGB32_Premultiplied);
  image.fill(ground);
  QPainter painter(&image);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.scale(pixels / side, pixels / side);
  Tile tile(painter, side, look(material).line);
  draw_sign(tile, material);
  return image;
}

}  // namespace

QColor ground_at(Material material, double share) {
  const MaterialLook& tones = look(material);
  const auto mix = [share](int low, int high) { return static_cast<int>(std::lround(low + share * (high - low))); };
  return QColor(mix(tones.low.red(), tones.high.red()), mix(tones.low.green(), tones.high.green()),
                mix(tones.low.blue(), tones.high.blue()));
}

QColor ground_of(Material material, int tone, bool cut) {
  if (cut) return look(material).cut;
  constexpr std::array<double, 4> shares{0.0, 1.0, 0.5, 0.25};
  return ground_at(material, shares[static_cast<std::size_t>(std::abs(tone)) % shares.size()]);
}

bool has_sign(Material material) {
  switch (material) {
    case Material::none:
    case Material::joint:
    case Material::kerb:
    case Material::cap:
    case Material::geotextile:
    case Material::pipe: return false;
    default: return true;
  }
}

QBrush hatch(Material material, const QColor& ground, double device_px, QPointF anchor) {
  if (!has_sign(material)) return ground;
  static QMap<std::tuple<int, QRgb, QRgb, int>, QBrush> made;
  const std::tuple key(static_cast<int>(material), ground.rgba(), look(material).line.rgba(),
                       static_cast<int>(std::lround(device_px * 100)));
  auto found = made.find(key);
  if (found == made.end()) found = made.insert(key, QBrush(tile_of(material, ground, device_px)));
  QBrush brush = found.value();
  // On whole px of the device the tile is copied as it is, sharp.
  const double x = std::round(anchor.x() * device_px) / device_px, y = std::round(anchor.y() * device_px) / device_px;
  brush.setTransform(QTransform::fromScale(1 / device_px, 1 / device_px) * QTransform::fromTranslate(x, y));
  return brush;
}

}  // namespace ui
