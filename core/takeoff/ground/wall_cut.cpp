#include "takeoff/ground/wall_cut.h"

namespace takeoff::ground {

Slice Cutter::slice(double station) const {
  const Frame at = frame(leg, station);
  Slice made;
  made.station = station;
  made.at = at.at;
  made.across = side * at.left;
  made.turn = side * at.turn;
  made.bottom = {{need.front(), under()}, {need.rear(), under()}};
  if (back() > need.rear() + 1e-6) {
    made.bottom.push_back({need.rear(), base()});
    made.bottom.push_back({back(), base()});
  }
  if (need.retaining) made.slope_after = need.slope;
  const double front = height(profile.ground, station), behind = height(profile.behind, station);
  const double middle = need.depth / 2;
  made.given = [front, behind, middle](double across) { return across < middle ? front : behind; };
  return made;
}

Section Cutter::trench(const Slice& whole, double front) const {
  Slice low = whole;
  low.bottom.resize(2);
  low.slope_after = 0;
  return section(low, [this, front](geometry::Point point, double otherwise) {
    auto lies = d.lie.at(point, otherwise);
    if (lies) lies->level = std::min(lies->level, front);
    return lies;
  });
}

double Cutter::own_bank(const Slice& at, const Section& cut) const {
  const double mine = limit(at.station, &Other::reach), foot = back();
  double sum = cut.area(at.turn, foot, std::max(foot, mine));
  if (std::isinf(mine)) return sum;
  double past = mine;
  for (const Other& other : others) past = std::max(past, other.end);
  return sum + cut.area(at.turn, std::max(foot, past), std::numeric_limits<double>::max());
}

std::vector<double> Cutter::measure(const Slice& at, const Section& cut) const {
  const double station = at.station;
  std::vector<double> found(numbers);
  const double front = height(profile.ground, station), turn = at.turn;
  const Section low = trench(at, front);
  found[all] = cut.area(turn);
  found[base_trench] = std::min(found[all], low.area(turn));
  found[virgin] = cut.virgin_width(turn);
  if (const auto lies = d.lie.at(at.place(need.depth / 2), under()))
    found[hollow] = std::max(0.0, under() - lies->existing);
  const double pad_past = need.pad_past * need.pad;
  const auto width = [turn](double near, double far, double most) {
    near = std::min(near, most), far = std::min(far, most);
    return (far - near) * (1 - turn * (near + far) / 2);
  };
  const double mine = limit(station, &Other::reach), zone_mine = limit(station, &Other::zone);
  found[refill] = std::max(0.0, low.area(turn, need.front(), 0) - pad_past);
  if (!need.retaining) {
    found[refill] += std::max(0.0, cut.area(turn, need.depth, need.rear()) - pad_past);
    return found;
  }
  // Up to the ground as it shall be behind the wall, or to the formation of what is built there.
  const geometry::Point middle = at.place((need.depth + back()) / 2);
  double top = height(profile.behind, station);
  if (const auto formation = d.lie.formation(middle, top)) top = std::min(top, *formation);
  const double rear = need.rear(), end = back();
  const double space = std::max(0.0, top - under()) * width(need.depth, rear, mine) +
                       std::max(0.0, top - base()) * (end > rear ? width(rear, end, mine) : 0);
  const walls::Section own = walls::section(profile, need.behind, stretch);
  const double stone_end = need.depth + own.column, zone_end = stone_end + own.fill;
  const double column = own.height * width(need.depth, stone_end, zone_mine);
  const double zone = own.height * (own.fill > 0 ? width(stone_end, zone_end, zone_mine) : 0);
  const double cap = own.cap * width(need.depth, zone_end, zone_mine);
  const double pad_behind = pad_past * std::clamp((mine - need.depth) / std::max(need.pad_past, 1e-9), 0.0, 1.0);
  found[own_earth] = cap + (need.fill_bought ? 0 : zone);
  found[refill] += std::max(0.0, space - pad_behind - column - zone - cap) + own_bank(at, cut);
  if (const auto lies = d.lie.at(at.place(end), top); lies && mine > end)
    found[ledge] = std::max(0.0, top - lies->existing);
  return found;
}

}  // namespace takeoff::ground
