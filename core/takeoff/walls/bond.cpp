#include "takeoff/walls/bond.h"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <limits>

namespace takeoff::walls {

namespace {

constexpr double sixteenth = units::metres_per_inch / 16;

using Cost = std::int64_t;
constexpr Cost for_overlap = 1'000'000'000'000;
constexpr Cost for_sliver = 100'000'000;
constexpr Cost for_cut = 10'000;

bool same(double a, double b) { return std::abs(a - b) < dust; }

// The piece a, wholes, and what is left; on arcs the joints take a small misfit up.
Choice filled(const Slot& slot, double a, double unit, double half) {
  Choice choice{a, 0, unit, 0};
  const double rest = std::max(0.0, slot.fill() - a);
  choice.wholes = static_cast<int>(std::floor((rest + dust) / unit));
  choice.b = rest - choice.wholes * unit;
  if (choice.b < dust) choice.b = 0;
  const double slack = slot.on_arcs / unit * sixteenth;
  if (slack <= 0 || choice.b == 0) return choice;
  const auto spread = [&](int wholes, double b) { choice = {a, wholes, (rest - b) / wholes, b}; };
  if (choice.b <= slack && choice.wholes > 0) {
    spread(choice.wholes, 0);
  } else if (unit - choice.b <= slack) {
    spread(choice.wholes + 1, 0);
  } else if (half > 0 && std::abs(choice.b - half) <= slack && choice.wholes > 0) {
    spread(choice.wholes, half);
  }
  return choice;
}

std::vector<Choice> choices(const Slot& slot, double unit, double half, const LayRules& rules) {
  const double fill = slot.fill();
  std::vector<double> starts{0, std::fmod(fill, unit), unit / 2, std::fmod(fill + unit / 2, unit)};
  if (half > 0) starts.push_back(half);
  for (int inch = 1; inch * units::metres_per_inch < unit - dust; ++inch) {
    const double a = inch * units::metres_per_inch;
    if (a > rules.sliver - dust) starts.push_back(a);
  }
  std::vector<Choice> result;
  for (double a : starts) {
    if (a < dust || unit - a < dust) a = 0;
    if (a > fill + dust) continue;
    if (std::ranges::any_of(result, [&](const Choice& c) { return same(c.a, a); })) continue;
    result.push_back(filled(slot, a, unit, half));
  }
  if (result.empty()) result.push_back(Choice{0, 0, unit, 0});
  return result;
}

Cost own_cost(const Slot& slot, const Choice& c, double half, const LayRules& rules) {
  const auto cut = [&](double piece) { return piece > 0 && !(half > 0 && same(piece, half)); };
  Cost cost = 0;
  for (double piece : {c.a, c.b}) {
    if (cut(piece)) cost += for_cut + (piece < rules.sliver - dust ? for_sliver : 0);
  }
  if (cut(c.a)) cost += 1 + (slot.corner_before ? 2 : 0);
  if (cut(c.b) && slot.corner_after) cost += 2;
  return cost;
}

// Joints of a run on its course's own line: an even row, and up to two beside it.
struct Joints {
  double first = 0;
  double pitch = 1;
  int count = 0;
  double odd[2] = {0, 0};
  int odds = 0;
};

Joints joints(const Slot& slot, const Choice& c) {
  Joints made;
  made.pitch = c.pitch;
  const double head = slot.start.length + c.a, tail = slot.finish.length + c.b;
  const bool first_shows = head > 0, last_shows = tail > 0;
  made.first = slot.own_from + head + (first_shows ? 0 : c.pitch);
  made.count = c.wholes + 1 - (first_shows ? 0 : 1) - (last_shows ? 0 : 1);
  made.count = std::max(0, made.count);
  if (slot.start.length > 0 && c.a > 0) made.odd[made.odds++] = slot.own_from + slot.start.length;
  if (slot.finish.length > 0 && c.b > 0) made.odd[made.odds++] = slot.own_to - slot.finish.length;
  return made;
}

// The even row on one leg, by stations.
struct Row {
  double first = 0;
  double pitch = 1;
  int count = 0;
  double last() const { return first + (count - 1) * pitch; }
};

Row on_leg(const Joints& joints, const CourseLine& line, std::size_t leg) {
  const double scale = line.scales[leg];
  return {line.bay->legs[leg].from + (joints.first - line.starts[leg]) / scale, joints.pitch / scale, joints.count};
}

// How many of `upper` between two stations lie nearer than `least` to one of `lower`. The phase of the rows drifts
// evenly along the leg, so it is counted by whole stretches, not joint by joint.
int clashes(const Row& upper, const Row& lower, double from, double to, double least) {
  if (upper.count <= 0 || lower.count <= 0) return 0;
  from = std::max(from, lower.first - least);
  to = std::min(to, lower.last() + least);
  const double begin = std::max(0.0, std::ceil((from - upper.first) / upper.pitch));
  const double end = std::min(upper.count - 1.0, std::floor((to - upper.first) / upper.pitch));
  if (end < begin) return 0;
  const double n = end - begin + 1;
  double phase = (upper.first + begin * upper.pitch - lower.first) / lower.pitch;
  phase -= std::floor(phase);
  const double drift = upper.pitch / lower.pitch - 1;
  const double near = least / lower.pitch;
  if (near >= 0.5) return static_cast<int>(n);
  if (std::abs(drift) * n < 1e-9) return phase < near || phase > 1 - near ? static_cast<int>(n) : 0;
  const double low = std::min(phase, phase + drift * (n - 1)), high = std::max(phase, phase + drift * (n - 1));
  double sum = 0;
  for (double whole = std::ceil(low - near); whole <= std::floor(high + near); ++whole) {
    const double p = (whole - near - phase) / drift, q = (whole + near - phase) / drift;
    const double a = std::max(0.0, std::ceil(std::min(p, q))), b = std::min(n - 1, std::floor(std::max(p, q)));
    sum += std::max(0.0, b - a + 1);
  }
  return static_cast<int>(sum);
}

double to_row(const Row& row, double station) {
  if (row.count <= 0) return std::numeric_limits<double>::infinity();
  const double k = std::clamp(std::round((station - row.first) / row.pitch), 0.0, row.count - 1.0);
  return std::abs(station - row.first - k * row.pitch);
}

struct Side {
  const Slot& slot;
  const CourseLine& line;
  Joints joints;
};

int odd_clashes(const Side& upper, const Side& lower, double from, double to, double least) {
  const auto inside = [&](double station) { return station > from + dust && station < to - dust; };
  int sum = 0;
  for (int i = 0; i < upper.joints.odds; ++i) {
    const double own = upper.joints.odd[i], at = upper.line.station(own);
    if (!inside(at)) continue;
    double near = to_row(on_leg(lower.joints, lower.line, upper.line.leg_at(own)), at);
    for (int k = 0; k < lower.joints.odds; ++k)
      near = std::min(near, std::abs(lower.line.station(lower.joints.odd[k]) - at));
    sum += near < least ? 1 : 0;
  }
  for (int k = 0; k < lower.joints.odds; ++k) {
    const double own = lower.joints.odd[k], at = lower.line.station(own);
    if (inside(at) && to_row(on_leg(upper.joints, upper.line, lower.line.leg_at(own)), at) < least) ++sum;
  }
  return sum;
}

int overlaps_missed(const Side& upper, const Side& lower, double least) {
  const double from = std::max(upper.slot.from, lower.slot.from), to = std::min(upper.slot.to, lower.slot.to);
  const auto& legs = upper.line.bay->legs;
  int sum = odd_clashes(upper, lower, from, to, least);
  for (std::size_t i = 0; i < legs.size(); ++i) {
    const double a = std::max(from, legs[i].from), b = std::min(to, legs[i].to);
    if (b - a < dust) continue;
    // A joint on the border of two legs belongs to the one that it ends.
    const double low = a > from ? a - dust : a + dust;
    sum += clashes(on_leg(upper.joints, upper.line, i), on_leg(lower.joints, lower.line, i), low, b - dust, least);
  }
  return sum;
}

bool lies_on(const Slot& upper, const Slot& lower) {
  return upper.course == lower.course + 1 && std::min(upper.to, lower.to) - std::max(upper.from, lower.from) > dust;
}

// The runs as a tree: each but the first of a part hangs on one that came before it in `order`.
struct Tree {
  std::vector<std::size_t> order;
  std::vector<std::size_t> parent;  // itself at a root
};

std::vector<std::vector<std::size_t>> neighbours(const std::vector<Slot>& slots) {
  std::vector<std::vector<std::size_t>> near(slots.size());
  std::size_t first = 0;
  for (std::size_t i = 0; i < slots.size(); ++i) {
    while (slots[first].course + 1 < slots[i].course) ++first;
    for (std::size_t j = first; j < i && slots[j].course < slots[i].course; ++j) {
      if (!lies_on(slots[i], slots[j])) continue;
      near[i].push_back(j);
      near[j].push_back(i);
    }
  }
  return near;
}

Tree tree(const std::vector<Slot>& slots) {
  const auto near = neighbours(slots);
  Tree made;
  made.parent.assign(slots.size(), 0);
  std::vector<bool> seen(slots.size(), false);
  for (std::size_t root = 0; root < slots.size(); ++root) {
    if (seen[root]) continue;
    seen[root] = true;
    made.parent[root] = root;
    made.order.push_back(root);
    for (std::size_t next = made.order.size() - 1; next < made.order.size(); ++next) {
      for (std::size_t other : near[made.order[next]]) {
        if (seen[other]) continue;
        seen[other] = true;
        made.parent[other] = made.order[next];
        made.order.push_back(other);
      }
    }
  }
  return made;
}

struct Node {
  std::vector<Choice> choices;
  std::vector<Joints> joints;
  std::vector<Cost> cost;               // of itself and all that hangs on it
  std::vector<std::size_t> for_parent;  // its best choice for each of the parent's
};

}  // namespace

std::vector<Choice> choose(const std::vector<Slot>& slots, const std::vector<CourseLine>& lines, double unit,
                           double half, const LayRules& rules) {
  const double least = rules.least_overlap * unit - dust;
  std::vector<Node> nodes(slots.size());
  for (std::size_t i = 0; i < slots.size(); ++i) {
    nodes[i].choices = choices(slots[i], unit, half, rules);
    for (const Choice& c : nodes[i].choices) {
      nodes[i].joints.push_back(joints(slots[i], c));
      nodes[i].cost.push_back(own_cost(slots[i], c, half, rules));
    }
  }
  const auto line = [&](std::size_t i) -> const CourseLine& {
    return lines[static_cast<std::size_t>(slots[i].course)];
  };
  const auto pair = [&](std::size_t i, std::size_t a, std::size_t j, std::size_t b) -> Cost {
    if (least <= 0) return 0;
    const Side one{slots[i], line(i), nodes[i].joints[a]}, other{slots[j], line(j), nodes[j].joints[b]};
    return for_overlap * (slots[i].course > slots[j].course ? overlaps_missed(one, other, least)
                                                            : overlaps_missed(other, one, least));
  };
  const Tree hung = tree(slots);
  for (auto at = hung.order.rbegin(); at != hung.order.rend(); ++at) {
    Node& node = nodes[*at];
    const std::size_t above = hung.parent[*at];
    if (above == *at) continue;
    for (std::size_t p = 0; p < nodes[above].choices.size(); ++p) {
      Cost best = std::numeric_limits<Cost>::max();
      std::size_t pick = 0;
      for (std::size_t c = 0; c < node.choices.size(); ++c) {
        if (node.cost[c] >= best) continue;
        const Cost cost = node.cost[c] + pair(*at, c, above, p);
        if (cost < best) best = cost, pick = c;
      }
      node.for_parent.push_back(pick);
      nodes[above].cost[p] += best;
    }
  }
  std::vector<std::size_t> picked(slots.size());
  std::vector<Choice> result(slots.size());
  for (std::size_t i : hung.order) {
    const auto& cost = nodes[i].cost;
    picked[i] = hung.parent[i] == i ? static_cast<std::size_t>(std::ranges::min_element(cost) - cost.begin())
                                    : nodes[i].for_parent[picked[hung.parent[i]]];
    result[i] = nodes[i].choices[picked[i]];
  }
  return result;
}

std::vector<Laid> pieces(const Slot& slot, const Choice& choice, double half) {
  std::vector<Laid> units;
  units.reserve(static_cast<std::size_t>(choice.wholes) + 4);
  double at = 0;
  const auto add = [&](Make make, double length, double angle) {
    if (length <= 0) return;
    units.push_back({make, at, length, false, angle, false});
    at += length;
  };
  const auto end_piece = [&](double length) {
    add(half > 0 && same(length, half) ? Make::half : Make::cut, length, 0);
  };
  add(slot.start.make, slot.start.length, slot.start.angle);
  if (slot.start.make == Make::corner && !units.empty()) units.back().again = true;
  end_piece(choice.a);
  const double wholes_from = at;
  for (int i = 0; i < choice.wholes; ++i) {
    at = wholes_from + i * choice.pitch;
    add(Make::whole, choice.pitch, 0);
  }
  end_piece(choice.b);
  add(slot.finish.make, slot.finish.length, slot.finish.angle);
  return units;
}

}  // namespace takeoff::walls
