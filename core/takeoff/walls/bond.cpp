#include "takeoff/walls/bond.h"

#include <algorithm>
#include <cmath>
#include <compare>
#include <cstdint>
#include <limits>

namespace takeoff::walls {

namespace {

constexpr double sixteenth = units::metres_per_inch / 16;

// What a choice costs, the weightiest first.
struct Cost {
  std::int64_t overlaps = 0;  // joints nearer to one below than wanted
  std::int64_t slivers = 0;
  std::int64_t cuts = 0;
  std::int64_t beside_corners = 0;  // cuts there
  std::int64_t halves = 0;
  std::int64_t sawn = 0;    // sum of cut pieces, 1/64 in
  std::int64_t lesser = 0;  // sum of the smaller of two, 1/64 in: small ones come out of one unit
  std::int64_t at_start = 0;
  auto operator<=>(const Cost&) const = default;
  Cost& operator+=(const Cost& other) {
    overlaps += other.overlaps, slivers += other.slivers, cuts += other.cuts;
    beside_corners += other.beside_corners, halves += other.halves, sawn += other.sawn;
    lesser += other.lesser, at_start += other.at_start;
    return *this;
  }
};

std::int64_t in_64ths(double metres) { return std::llround(metres / (sixteenth / 4)); }

bool is_half(double piece, double half) { return half > 0 && std::abs(piece - half) < thin; }

// The piece a, wholes, and what is left; the joints take a small misfit up.
Choice filled(const Slot& slot, double a, double unit, double half) {
  Choice choice{a, 0, unit, 0};
  const double rest = std::max(0.0, slot.fill() - a);
  choice.wholes = static_cast<int>(std::floor((rest + dust) / unit));
  choice.b = std::max(0.0, rest - choice.wholes * unit);
  const double slack = thin + slot.on_arcs / unit * sixteenth;
  const auto spread = [&](int wholes, double b) { choice = {a, wholes, (rest - b) / wholes, b}; };
  if (unit - choice.b <= slack) {
    spread(choice.wholes + 1, 0);
  } else if (choice.wholes > 0 && choice.b <= slack) {
    spread(choice.wholes, 0);
  } else if (choice.wholes > 0 && half > 0 && std::abs(choice.b - half) <= slack) {
    spread(choice.wholes, half);
  } else if (choice.b < thin) {
    if (a > 0) choice.a += choice.b;
    choice.b = 0;
  }
  return choice;
}

// What one end may have: nothing, a half, or a piece of a round length.
std::vector<double> end_pieces(double unit, double half, const LayRules& rules) {
  const double step = rules.system == units::System::us ? units::metres_per_inch : 0.025;
  std::vector<double> pieces{0, unit / 2};
  if (half > 0) pieces.push_back(half);
  for (int i = 1; i * step < unit - thin; ++i) {
    if (i * step > rules.sliver - thin) pieces.push_back(i * step);
  }
  return pieces;
}

// Either end may have it, so that a wall walked the other way has the same choices.
std::vector<Choice> choices(const Slot& slot, double unit, double half, const LayRules& rules) {
  const double fill = std::max(0.0, slot.fill());
  std::vector<Choice> result;
  const auto add = [&](const Choice& choice) {
    const bool known = std::ranges::any_of(result, [&](const Choice& c) {
      return std::abs(c.a - choice.a) < thin && std::abs(c.b - choice.b) < thin && c.wholes == choice.wholes;
    });
    if (!known) result.push_back(choice);
  };
  for (double piece : end_pieces(unit, half, rules)) {
    if (piece > fill + thin) continue;
    const Choice one = filled(slot, is_half(piece, half) ? half : std::min(piece, fill), unit, half);
    add(one);
    add({one.b, one.wholes, one.pitch, one.a});
  }
  return result;
}

Cost own_cost(const Slot& slot, const Choice& c, double half, const LayRules& rules) {
  const auto cut = [&](double piece) { return piece > 0 && !is_half(piece, half); };
  Cost cost;
  for (double piece : {c.a, c.b}) {
    if (is_half(piece, half)) ++cost.halves;
    if (!cut(piece)) continue;
    ++cost.cuts;
    cost.sawn += in_64ths(piece);
    if (piece < rules.sliver - thin) ++cost.slivers;
  }
  cost.at_start = cut(c.a) ? 1 : 0;
  cost.beside_corners = (cut(c.a) && slot.corner_before ? 1 : 0) + (cut(c.b) && slot.corner_after ? 1 : 0);
  if (cost.cuts == 2) cost.lesser = in_64ths(std::min(c.a, c.b));
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

// Overlaps are dear to find out, and the rest of the cost is known: so the cheapest are tried first.
std::vector<std::size_t> cheapest_first(const std::vector<Cost>& cost) {
  std::vector<std::size_t> order(cost.size());
  for (std::size_t i = 0; i < order.size(); ++i) order[i] = i;
  std::ranges::stable_sort(order, {}, [&](std::size_t i) { return cost[i]; });
  return order;
}

}  // namespace

std::vector<Choice> choose(const std::vector<Slot>& slots, const std::vector<CourseLine>& lines, double unit,
                           double half, const LayRules& rules) {
  const double least = rules.least_overlap * unit - thin;
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
    Cost cost;
    if (least <= 0) return cost;
    const Side one{slots[i], line(i), nodes[i].joints[a]}, other{slots[j], line(j), nodes[j].joints[b]};
    cost.overlaps =
        slots[i].course > slots[j].course ? overlaps_missed(one, other, least) : overlaps_missed(other, one, least);
    return cost;
  };
  const Tree hung = tree(slots);
  for (auto at = hung.order.rbegin(); at != hung.order.rend(); ++at) {
    Node& node = nodes[*at];
    const std::size_t above = hung.parent[*at];
    if (above == *at) continue;
    const std::vector<std::size_t> cheapest = cheapest_first(node.cost);
    for (std::size_t p = 0; p < nodes[above].choices.size(); ++p) {
      std::optional<Cost> best;
      std::size_t pick = 0;
      for (std::size_t c : cheapest) {
        if (best && node.cost[c] >= *best) break;
        Cost cost = node.cost[c];
        cost += pair(*at, c, above, p);
        if (!best || cost < *best) best = cost, pick = c;
      }
      node.for_parent.push_back(pick);
      nodes[above].cost[p] += *best;
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
  const auto end_piece = [&](double length) { add(is_half(length, half) ? Make::half : Make::cut, length, 0); };
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
