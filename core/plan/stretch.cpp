#include "plan/stretch.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <numbers>

#include "geometry/index.h"

namespace plan {

using geometry::Curve;
using geometry::Vec;

namespace {

constexpr double steps_per_metre = Length::steps_per_metre;
const double widest_angle = std::cos(20 * std::numbers::pi / 180);  // facing edges run opposite within 20 degrees
constexpr double dust = 0.01;           // steps: floating dust at an edge's end is not past it
constexpr double same_line = 320;       // 1 mm: how near the far edge must be to the drawn face of a wall to be it
constexpr double too_short = 50 * 320;  // 50 mm: a shorter stretch joins its longer side
constexpr double finest = 32;           // 0.1 mm: how closely a change between two neighbours is found

// One edge that can be faced.
struct Far {
  Curve curve;
  std::size_t ground = 0;
  geometry::Origin origin;
  bool both_ways = false;  // a line without width is faced from either side
};

// The nearest place of a curve to a point, both from the curve's start, in steps.
struct Foot {
  Vec at;
  Vec direction;
  double share = 0;
  double past = 0;  // how far past the curve's end the square foot would lie, along it
};

Foot foot_on(const Curve& curve, Vec point) {
  double share = 0;
  if (curve.straight()) {
    share = dot(point, curve.chord()) / dot(curve.chord(), curve.chord());
  } else {
    const Vec centre = curve.centre();
    const Vec from = -centre;
    const Vec to = point - centre;
    double turn = std::atan2(cross(from, to), dot(from, to));
    const double sweep = curve.sweep();
    const double circle = 2 * std::numbers::pi;
    if (sweep > 0 && turn < 0) turn += circle;
    if (sweep < 0 && turn > 0) turn -= circle;
    share = turn / sweep;
    // Past the end: the nearer of the two ends, counted round the rest of the circle.
    if (share > 1) share = (share - 1) < (circle / std::abs(sweep) - share) ? share : share - circle / std::abs(sweep);
  }
  const double past = std::max({-share, share - 1, 0.0}) * curve.length();
  share = std::clamp(share, 0.0, 1.0);
  return {curve.at(share), curve.direction(share), share, past};
}

struct Facing {
  long far = -1;   // number in `fars`, -1 for nothing
  double gap = 0;  // steps
};

// The faces of one ground's edges against all others.
class Facer {
 public:
  Facer(const std::vector<Ground>& grounds, Length reach) : grounds_(grounds), reach_(reach) {
    for (std::size_t g = 0; g < grounds.size(); ++g) add(g);
    std::vector<geometry::Box> boxes;
    boxes.reserve(fars_.size());
    for (const Far& far : fars_) boxes.push_back(geometry::bounds(far.curve));
    index_.emplace(boxes);
  }

  std::vector<Stretch> stretches(std::size_t g) const {
    std::vector<Stretch> all;
    const auto outlines = grounds_[g].net.outlines();
    for (std::size_t o = 0; o < outlines.size(); ++o) {
      const geometry::Ring& ring = outlines[o]->edges();
      std::vector<Stretch> round;
      for (std::size_t e = 0; e < ring.size(); ++e)
        along(g, static_cast<int>(o), static_cast<int>(e), geometry::curve(ring, e), ring[e].origin, round);
      join_short(round);
      all.insert(all.end(), round.begin(), round.end());
    }
    return all;
  }

 private:
  void add(std::size_t g) {
    const Ground& ground = grounds_[g];
    if (rank(ground.element->kind) == 0) return;
    for (const geometry::Outline* outline : ground.net.outlines())
      for (std::size_t e = 0; e < outline->edges().size(); ++e)
        fars_.push_back({geometry::curve(outline->edges(), e), g, outline->edges()[e].origin, false});
    if (ground.net.empty() && ground.path && std::holds_alternative<EdgeRun>(ground.element->kind))
      for (std::size_t e = 0; e < ground.path->size(); ++e)
        fars_.push_back({ground.path->curve(e), g, ground.path->edges()[e].origin, true});
  }

  // What the place at `share` of the curve faces, of the candidates.
  Facing facing(const Curve& curve, double share, const std::vector<std::uint32_t>& near) const {
    const Vec at = curve.at(share);
    const Vec direction = curve.direction(share);
    Facing best;
    for (const std::uint32_t f : near) {
      const Far& far = fars_[f];
      const Vec shift = far.curve.start - curve.start;
      const Foot foot = foot_on(far.curve, at - shift);
      const Vec to = foot.at + shift - at;
      const double gap = length(to);
      if (gap > static_cast<double>(reach_.steps()) || foot.past > dust) continue;
      const double angle = dot(direction, foot.direction);
      if ((far.both_ways ? -std::abs(angle) : angle) > -widest_angle) continue;
      if (best.far < 0 || gap < best.gap - 1e-6) best = {static_cast<long>(f), gap};
    }
    return best;
  }

  // Two places face the same when they face the same edge of the same element.
  bool alike(Facing a, Facing b) const {
    if (a.far < 0 || b.far < 0) return a.far == b.far;
    const Far& x = fars_[static_cast<std::size_t>(a.far)];
    const Far& y = fars_[static_cast<std::size_t>(b.far)];
    return x.ground == y.ground && x.origin == y.origin;
  }

  void along(std::size_t g, int outline, int edge, const Curve& curve, geometry::Origin origin,
             std::vector<Stretch>& out) const {
    std::vector<std::uint32_t> near;
    for (const std::uint32_t f : index_->touching(geometry::grown(geometry::bounds(curve), reach_)))
      if (fars_[f].ground != g) near.push_back(f);
    // Where something can change: square across from the ends of what lies near.
    std::vector<double> breaks{0, 1};
    for (const std::uint32_t f : near) {
      const Vec shift = fars_[f].curve.start - curve.start;
      breaks.push_back(foot_on(curve, shift).share);
      breaks.push_back(foot_on(curve, shift + fars_[f].curve.chord()).share);
    }
    std::ranges::sort(breaks);
    const double total = curve.length();
    for (std::size_t i = 0; i + 1 < breaks.size(); ++i) {
      if ((breaks[i + 1] - breaks[i]) * total < 1e-3) continue;
      span(curve, breaks[i], breaks[i + 1], near,
           [&](double from, double to, Facing facing) { put(out, outline, edge, curve, origin, from, to, facing); });
    }
  }

  // From a to b: one stretch where the ends and the middle agree, else halved down to `finest`.
  template <class Emit>
  void span(const Curve& curve, double a, double b, const std::vector<std::uint32_t>& near, Emit emit) const {
    const double inside = (b - a) * 1e-6;
    const Facing first = facing(curve, a + inside, near);
    const Facing middle = facing(curve, (a + b) / 2, near);
    const Facing last = facing(curve, b - inside, near);
    if ((alike(first, middle) && alike(middle, last)) || (b - a) * curve.length() < finest) {
      emit(a, b, middle);
      return;
    }
    span(curve, a, (a + b) / 2, near, emit);
    span(curve, (a + b) / 2, b, near, emit);
  }

  void put(std::vector<Stretch>& out, int outline, int edge, const Curve& curve, geometry::Origin origin, double from,
           double to, Facing facing) const {
    const double total = curve.length() / steps_per_metre;
    Stretch made;
    made.outline = outline;
    made.edge = edge;
    made.from = from * total;
    made.to = to * total;
    made.origin = origin;
    made.radius = curve.radius() / steps_per_metre;
    made.gap = facing.gap / steps_per_metre;
    if (facing.far >= 0) {
      const Far& far = fars_[static_cast<std::size_t>(facing.far)];
      made.meets = meets(far);
      made.other = grounds_[far.ground].element->id;
      made.other_edge = far.origin.element == mark(made.other) ? far.origin.edge : -1;
    }
    if (!out.empty()) {
      Stretch& last = out.back();
      if (last.edge == edge && last.meets == made.meets && last.other == made.other &&
          last.other_edge == made.other_edge) {
        last.gap = (last.gap * (last.to - last.from) + made.gap * (made.to - made.from)) / (made.to - last.from);
        last.to = made.to;
        return;
      }
    }
    out.push_back(made);
  }

  Meets meets(const Far& far) const {
    const Ground& ground = grounds_[far.ground];
    struct What {
      const Ground& ground;
      const Far& far;
      Meets operator()(const PavedArea&) const { return Meets::paving; }
      Meets operator()(const Pool& pool) const { return pool.coping ? Meets::coping : Meets::water; }
      Meets operator()(const Building&) const { return Meets::building; }
      Meets operator()(const Steps&) const { return Meets::steps; }
      Meets operator()(const EdgeRun& run) const { return run.what == "kerb" ? Meets::kerb : Meets::restraint; }
      Meets operator()(const DrainRun&) const { return Meets::channel; }
      Meets operator()(const KeepOut& out) const {
        if (out.what == "tree" || out.what == "planter") return Meets::planter;
        return out.what == "inlet" ? Meets::inlet : Meets::pillar;
      }
      Meets operator()(const Wall& wall) const {
        if (wall.free_standing) return Meets::seat_wall;
        const Vec middle = far.curve.at(0.5);
        for (std::size_t i = 0; ground.path && i < ground.path->size(); ++i) {
          const Curve face = ground.path->curve(i);
          const Vec shift = far.curve.start - face.start;
          if (length(foot_on(face, middle + shift).at - (middle + shift)) < same_line) return Meets::wall_face;
        }
        return Meets::wall_back;
      }
      Meets operator()(const Level&) const { return Meets::planting; }
      Meets operator()(const Feature&) const { return Meets::planting; }
      Meets operator()(const Removal&) const { return Meets::planting; }
      Meets operator()(const SiteMark&) const { return Meets::planting; }
      Meets operator()(const Protection&) const { return Meets::planting; }
      Meets operator()(const Note&) const { return Meets::planting; }
      Meets operator()(const Dimension&) const { return Meets::planting; }
      Meets operator()(const SitePlan&) const { return Meets::planting; }
      Meets operator()(const LevelBook&) const { return Meets::planting; }
      Meets operator()(const BaseLine&) const { return Meets::planting; }
      Meets operator()(const TapeBook&) const { return Meets::planting; }
    };
    return std::visit(What{ground, far}, ground.element->kind);
  }

  // Runs of stretches that face the same element, round the outline; a run under 50 mm joins its longer neighbour.
  static void join_short(std::vector<Stretch>& round) {
    struct Run {
      std::size_t first = 0;
      std::size_t count = 0;
      double length = 0;
    };
    while (true) {
      std::vector<Run> runs;
      for (std::size_t i = 0; i < round.size(); ++i) {
        const bool goes_on = i > 0 && round[i].meets == round[i - 1].meets && round[i].other == round[i - 1].other;
        if (!goes_on) runs.push_back({i, 0, 0});
        ++runs.back().count;
        runs.back().length += round[i].to - round[i].from;
      }
      if (runs.size() < 2) return;
      const auto alike = [&round](const Run& a, const Run& b) {
        return round[a.first].meets == round[b.first].meets && round[a.first].other == round[b.first].other;
      };
      // The ring closes: first and last run may be one.
      const bool closes = runs.size() > 2 && alike(runs.front(), runs.back());
      const double both = runs.front().length + runs.back().length;
      const auto long_of = [&](std::size_t r) {
        return closes && (r == 0 || r + 1 == runs.size()) ? both : runs[r].length;
      };
      std::size_t shortest = runs.size();
      for (std::size_t r = 0; r < runs.size(); ++r)
        if (long_of(r) * steps_per_metre < too_short && (shortest == runs.size() || long_of(r) < long_of(shortest)))
          shortest = r;
      if (shortest == runs.size()) return;
      const std::size_t before = (shortest + runs.size() - 1) % runs.size();
      const std::size_t after = (shortest + 1) % runs.size();
      const std::size_t winner = long_of(before) >= long_of(after) ? before : after;
      const Stretch like = round[winner == before ? runs[winner].first + runs[winner].count - 1 : runs[winner].first];
      for (std::size_t i = runs[shortest].first; i < runs[shortest].first + runs[shortest].count; ++i) {
        round[i].meets = like.meets;
        round[i].other = like.other;
        round[i].other_edge = like.other_edge;
      }
    }
  }

  const std::vector<Ground>& grounds_;
  Length reach_;
  std::vector<Far> fars_;
  std::optional<geometry::Index> index_;
};

}  // namespace

std::string word(Meets meets) {
  switch (meets) {
    case Meets::planting: return "planting";
    case Meets::coping: return "coping";
    case Meets::building: return "building";
    case Meets::wall_face: return "wall face";
    case Meets::wall_back: return "wall cap";
    case Meets::seat_wall: return "seat wall";
    case Meets::kerb: return "kerb";
    case Meets::restraint: return "restraint";
    case Meets::paving: return "paving";
    case Meets::steps: return "steps";
    case Meets::pillar: return "pillar";
    case Meets::planter: return "planter";
    case Meets::inlet: return "inlet";
    case Meets::channel: return "channel";
    case Meets::water: return "water";
  }
  return {};
}

void meet(std::vector<Ground>& grounds, Length reach) {
  const Facer facer(grounds, reach);
  std::vector<std::vector<Stretch>> found(grounds.size());
  for (std::size_t g = 0; g < grounds.size(); ++g)
    if (!grounds[g].net.empty()) found[g] = facer.stretches(g);
  for (std::size_t g = 0; g < grounds.size(); ++g) grounds[g].stretches = std::move(found[g]);
}

}  // namespace plan
