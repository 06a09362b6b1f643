#include "takeoff/levels/follow.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "takeoff/levels/sources.h"

namespace takeoff::levels {

using geometry::Vec;

namespace {

constexpr double widest_turn = 3 * std::numbers::pi / 180;
constexpr double twist_error = 2e-4;  // metres
constexpr int most_bands = 12;        // of an arc's triangles, on either side of the line
constexpr double same_station = 1e-6;

Vec unit(Vec a) { return (1 / length(a)) * a; }

struct Span {  // of the line, with one rise
  double from = 0;
  double to = 0;
  double height = 0;
  double height_end = 0;
};

class Follower {
 public:
  Follower(const geometry::Path& path, const Following& following, const geometry::Surface& ground)
      : path_(path), following_(following), ground_(ground) {}

  std::vector<Piece> pieces() {
    double station = 0;
    for (std::size_t i = 0; i < path_.size(); ++i) {
      const geometry::Curve curve = path_.curve(i);
      const double run = curve.length() / units::Length::steps_per_metre;
      for (const Span& span : spans(station, station + run, curve.straight() ? run : run * step_share(curve)))
        curve.straight() ? add_straight(curve, station, span) : add_arc(curve, station, run, span);
      station += run;
      if (i + 1 < path_.size() || path_.closed()) add_corner(curve, path_.curve((i + 1) % path_.size()), station);
    }
    if (!path_.closed()) add_ends(station);
    return std::move(pieces_);
  }

 private:
  static double step_share(const geometry::Curve& curve) {
    return std::min(1.0, widest_turn / std::abs(curve.sweep()));
  }

  Vec place(const geometry::Curve& curve, Vec steps_from_start) const {
    return (1 / units::Length::steps_per_metre) * ((curve.start - ground_.origin()) + steps_from_start);
  }

  // Cut at every height that is given, and so that none is longer than `longest`.
  std::vector<Span> spans(double from, double to, double longest) const {
    std::vector<double> stations{from};
    for (const plan::HeightAt& one : following_.heights) {
      const double at = one.at.metres().si();
      if (at > stations.back() + same_station && at < to - same_station) stations.push_back(at);
    }
    stations.push_back(to);
    std::vector<Span> all;
    for (std::size_t i = 1; i < stations.size(); ++i) {
      const double start = stations[i - 1];
      const double z = height_at(following_.heights, start, true);
      const double rise = height_at(following_.heights, stations[i], false) - z;
      const double run = stations[i] - start;
      const int count = std::max(1, static_cast<int>(std::ceil(run / longest - 1e-9)));
      for (int k = 0; k < count; ++k)
        all.push_back(
            {start + run * k / count, start + run * (k + 1) / count, z + rise * k / count, z + rise * (k + 1) / count});
    }
    return all;
  }

  void add_strip(Vec from, Vec along, double length_of_it, double height, double rise, double behind) {
    for (const bool right : {false, true}) {
      const Vec away = right ? -left_of(along) : left_of(along);
      Piece piece;
      piece.sides = {beyond(from, away), beyond(from, along)};
      if (length_of_it > 0) piece.sides.push_back(beyond(from + length_of_it * along, -along));
      const double fall = right ? following_.fall_right : following_.fall_left;
      piece.plane = plane_at(from, height, rise * along - fall * away);
      piece.rank = plane_at(from, 0, -behind * along - away);  // nearest wins
      pieces_.push_back(std::move(piece));
    }
  }

  void add_straight(const geometry::Curve& curve, double station, const Span& span) {
    const Vec along = unit(curve.chord());
    const Vec from = place(curve, {}) + (span.from - station) * along;
    add_strip(from, along, span.to - span.from, span.height, (span.height_end - span.height) / (span.to - span.from),
              0);
  }

  // Past an end: the rank takes the way along it too, so that it never wins over a nearer leg of the line.
  void add_ends(double whole) {
    const geometry::Curve first = path_.curve(0);
    const geometry::Curve last = path_.curve(path_.size() - 1);
    const double rise =
        following_.goes_on
            ? (height_at(following_.heights, whole, false) - height_at(following_.heights, 0, true)) / whole
            : 0;
    const auto turned_round = [&] { std::swap(following_.fall_left, following_.fall_right); };
    turned_round();
    add_strip(place(first, {}), -first.direction(0), 0, height_at(following_.heights, 0, true), -rise, 1);
    turned_round();
    add_strip(place(last, last.chord()), last.direction(1), 0, height_at(following_.heights, whole, false), rise, 1);
  }

  void add_corner(const geometry::Curve& before, const geometry::Curve& after, double station) {
    const Vec in = before.direction(1);
    const Vec out = after.direction(0);
    const double turn = std::atan2(cross(in, out), dot(in, out));
    const double height = height_at(following_.heights, station, true);
    const Vec at = place(after, {});
    if (turn > 1e-9) add_fan(at, -left_of(in), turn, height, following_.fall_right, 1, 0, 0, pieces_);
    if (turn < -1e-9) add_fan(at, left_of(out), -turn, height, following_.fall_left, 1, 0, 0, pieces_);
  }

  void add_arc(const geometry::Curve& curve, double station, double run, const Span& span) {
    const Vec centre = place(curve, curve.centre());
    const double radius = curve.radius() / units::Length::steps_per_metre;
    const bool left_turn = curve.bulge > 0;  // the centre lies on the left
    const Vec one = unit(place(curve, curve.at((span.from - station) / run)) - centre);
    const Vec next = unit(place(curve, curve.at((span.to - station) / run)) - centre);
    const double inner = left_turn ? following_.fall_left : following_.fall_right;
    const double outer = left_turn ? following_.fall_right : following_.fall_left;
    double nearest = 1e9;
    double farthest = radius;
    for (const geometry::Facet& facet : ground_.facets())
      for (const Vec corner : facet.ring) {
        nearest = std::min(nearest, length(corner - centre));
        farthest = std::max(farthest, length(corner - centre));
      }
    nearest = std::clamp(0.7 * nearest, radius / 20, radius);  // edges pass nearer to the centre than their corners
    const double rise = std::abs(span.height_end - span.height);
    const auto band = [&](double low, double high, double slope) {
      const double ratio = std::max(1 + 4 * twist_error / std::max(rise, 1e-9), std::pow(high / low, 1.0 / most_bands));
      for (double r = low; r < high - 1e-9;) {
        const double end = r * ratio > high ? high : r * ratio;
        add_quad(centre, one, next, r, end, span, slope, radius);
        r = end;
      }
    };
    if (nearest < radius) band(nearest, radius, inner);
    band(radius, 1.01 * farthest + 0.01, outer);
  }

  void add_quad(Vec centre, Vec one, Vec next, double low, double high, const Span& span, double fall, double radius) {
    const auto drop = [&](double r) { return fall * std::abs(r - radius); };
    const Vec middle = unit(one + next);
    const double outwards = low >= radius ? 1 : -1;
    const geometry::Plane rank = plane_at(centre + radius * middle, 0, -outwards * middle);
    const auto add = [&](Vec a, double za, Vec b, double zb, Vec c, double zc) {
      if (cross(b - a, c - a) < 0) {
        std::swap(b, c);
        std::swap(zb, zc);
      }
      Piece piece;
      piece.sides = {beyond(a, left_of(unit(b - a))), beyond(b, left_of(unit(c - b))), beyond(c, left_of(unit(a - c)))};
      piece.plane = geometry::plane_through(a, za, b, zb, c, zc);
      piece.rank = rank;
      pieces_.push_back(std::move(piece));
    };
    const Vec a = centre + low * one;
    const Vec b = centre + low * next;
    const Vec c = centre + high * next;
    const Vec d = centre + high * one;
    add(a, span.height - drop(low), b, span.height_end - drop(low), c, span.height_end - drop(high));
    add(a, span.height - drop(low), c, span.height_end - drop(high), d, span.height - drop(high));
  }

  const geometry::Path& path_;
  Following following_;
  const geometry::Surface& ground_;
  std::vector<Piece> pieces_;
};

}  // namespace

double height_at(const std::vector<plan::HeightAt>& heights, double station, bool after) {
  const auto at = [&](std::size_t i) { return heights[i].at.metres().si(); };
  const auto z = [&](std::size_t i) { return heights[i].height.metres().si(); };
  // The first height that lies past the station; one at the station counts as past it when we come from before it.
  std::size_t next = 0;
  while (next < heights.size() && (after ? at(next) <= station + same_station : at(next) < station - same_station))
    ++next;
  if (next == 0) return z(0);
  if (next == heights.size()) return z(next - 1);
  const double run = at(next) - at(next - 1);
  if (run < same_station) return z(after ? next : next - 1);
  return z(next - 1) + (z(next) - z(next - 1)) * (station - at(next - 1)) / run;
}

std::vector<Piece> follow(const geometry::Path& path, const Following& following, const geometry::Surface& ground) {
  return Follower(path, following, ground).pieces();
}

}  // namespace takeoff::levels
