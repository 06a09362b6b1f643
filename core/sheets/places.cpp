#include "sheets/places.h"

#include <array>
#include <numbers>

#include "sheets/parts.h"

namespace sheets {

namespace {

constexpr double letter_mm = 2.1, small_letter_mm = 1.7, small_high_mm = 3.4;

double letters(const std::string& words) {
  // Bytes that begin a letter of UTF-8.
  return static_cast<double>(std::ranges::count_if(words, [](char byte) { return (byte & 0xC0) != 0x80; }));
}

// How far a spot reaches from its middle along a direction, in mm.
double reach(const Spot& spot, Vec way) {
  const Vec along = from_angle(spot.turn);
  return std::abs(geometry::dot(along, way)) * spot.wide_mm / 2 +
         std::abs(geometry::cross(along, way)) * spot.high_mm / 2;
}

Vec ahead(Vec at, double turn, double metres) { return at + metres * from_angle(turn); }

}  // namespace

double label_wide_mm(const std::string& words) { return letters(words) * letter_mm + 0.8; }

double readable(double angle) {
  constexpr double quarter = std::numbers::pi / 2;
  if (angle > quarter + 1e-6) return angle - std::numbers::pi;
  return angle <= -quarter + 1e-6 ? angle + std::numbers::pi : angle;
}

// Two rectangles are apart where some direction square to a side of either parts them.
bool Places::meet(const Spot& a, const Spot& b) const {
  const Vec between = (1 / scale_.under(1)) * (b.middle - a.middle);
  constexpr double quarter = std::numbers::pi / 2;
  const std::array ways{from_angle(a.turn), from_angle(a.turn + quarter), from_angle(b.turn),
                        from_angle(b.turn + quarter)};
  return std::ranges::none_of(
      ways, [&](Vec way) { return std::abs(geometry::dot(between, way)) >= reach(a, way) + reach(b, way); });
}

bool Places::inside(const Spot& spot) const {
  if (!room_) return true;
  const Vec off = (1 / scale_.under(1)) * (spot.middle - room_->middle);
  return std::abs(off.x) + reach(spot, {1, 0}) <= room_->wide_mm / 2 &&
         std::abs(off.y) + reach(spot, {0, 1}) <= room_->high_mm / 2;
}

bool Places::free(const Spot& spot) const {
  return inside(spot) && std::ranges::none_of(taken_, [&](const Spot& other) { return meet(spot, other); });
}

int Places::take_first(const std::vector<Spot>& spots) {
  for (std::size_t i = 0; i < spots.size(); ++i) {
    if (!free(spots[i])) continue;
    take(spots[i]);
    return static_cast<int>(i);
  }
  return -1;
}

void Places::take_marks(const Figure& figure) {
  for (const Part& part : figure.parts) {
    const auto* mark = std::get_if<Mark>(&part);
    if (!mark) continue;
    const double wide = letters(mark->text) * small_letter_mm;
    switch (mark->sign) {
      case Sign::tag: take({mark->at, wide + 3.6, 4.8}); break;
      case Sign::name: take({mark->at, wide, small_high_mm, mark->turn}); break;
      case Sign::level: take({ahead(mark->at, 0, scale_.under(wide / 2 + 0.4)), wide + 3, small_high_mm}); break;
      case Sign::fall: take({mark->at, 13, 7, mark->turn}); break;
      case Sign::start_point: take({ahead(mark->at, mark->turn, scale_.under(3)), 13, 5, mark->turn}); break;
      case Sign::plain_point: take({ahead(mark->at, 0, scale_.under(wide / 2)), wide + 3, small_high_mm}); break;
      case Sign::weep: take({ahead(mark->at, mark->turn, scale_.under(1.3)), 2.8, 2.8, mark->turn}); break;
      case Sign::tree: take({mark->at, 9, 9}); break;
      default: take({mark->at, 4.4, 4.4}); break;
    }
  }
}

}  // namespace sheets
