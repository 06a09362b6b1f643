#include <algorithm>
#include <cmath>
#include <functional>

#include "geometry/freeform.h"
#include "geometry/index.h"
#include "plan/drawing.h"
#include "plan/edge_numbers.h"
#include "plan/edits.h"

namespace plan {

namespace {

constexpr int line_ring = -1;
constexpr int point_ring = -2;

// Walks what is drawn and hands each part over with its ring number.
struct Walk {
  std::function<void(int, DrawnRing&)> on_ring;
  std::function<void(DrawnLine&)> on_line;
  std::function<void(int, geometry::Point&)> on_point;
  int rings = 0;
  int points = 0;

  void ring(DrawnRing& drawn) {
    if (on_ring) on_ring(rings, drawn);
    ++rings;
  }
  void line(DrawnLine& drawn) const {
    if (on_line) on_line(drawn);
  }
  void point(geometry::Point& at) {
    if (on_point) on_point(points, at);
    ++points;
  }
  void along(DrawnLine&) const {}
  void place(geometry::Point&) const {}
  void angle(units::Angle&) const {}
  void side(geometry::Side&) const {}
  void slope(double&, double&) const {}
  void across(double&) const {}
};

problem::Problem no_corner(const Element& element) {
  return {problem::Severity::problem,
          "corner-none",
          "There is no such corner.",
          "Choose one that is drawn.",
          {element.id, {}, 0, 0, {}}};
}

// A ring or a line seen alike: its edges, whether it closes, its control points.
struct Chain {
  geometry::Ring* edges = nullptr;
  std::vector<geometry::Point>* through = nullptr;
  geometry::Point* end = nullptr;  // of a line
  std::size_t corners() const {
    if (!through->empty()) return through->size();
    return edges->size() + (end != nullptr && !edges->empty() ? 1 : 0);
  }
  bool closed() const { return end == nullptr; }
  bool freeform() const { return !through->empty(); }
  geometry::Point& corner(std::size_t i) const {
    if (freeform()) return (*through)[i];
    return i < edges->size() ? (*edges)[i].from : *end;
  }
  // The edge that starts at corner i.
  geometry::Curve curve(std::size_t i) const {
    const geometry::Point to = i + 1 < edges->size() ? (*edges)[i + 1].from : end != nullptr ? *end : (*edges)[0].from;
    return {(*edges)[i].from, to, (*edges)[i].bulge};
  }
};

// Calls `change` with the chain that has the corner; gives what it says, or that there is no such corner.
problem::Result<Element> change_at(Element element, Corner corner,
                                   const std::function<std::optional<problem::Problem>(Chain)>& change) {
  std::optional<problem::Problem> fault = no_corner(element);
  const auto take = [&](Chain chain) {
    const bool there = corner.number >= 0 && static_cast<std::size_t>(corner.number) < chain.corners();
    if (there) fault = change(chain);
  };
  Walk walk;
  walk.on_ring = [&](int number, DrawnRing& ring) {
    if (number == corner.ring) take({&ring.edges, &ring.through, nullptr});
  };
  walk.on_line = [&](DrawnLine& line) {
    if (corner.ring == line_ring) take({&line.edges, &line.through, &line.end});
  };
  visit_drawing(element.kind, walk);
  if (fault) {
    fault->place.element = element.id;
    return std::unexpected(*fault);
  }
  return element;
}

problem::Problem refuse(std::string code, std::string text, std::string mend, std::optional<geometry::Point> at = {}) {
  problem::Place place;
  if (at) place.at = geometry::xy(*at);
  return {problem::Severity::problem, std::move(code), std::move(text), std::move(mend), place};
}

// Where the lines through two edges meet; none when they are as good as parallel.
std::optional<geometry::Point> crossing(geometry::Point a, geometry::Vec along, geometry::Point b,
                                        geometry::Vec other) {
  const double turn = geometry::cross(along, other);
  if (std::abs(turn) < 1e-9 * geometry::length(along) * geometry::length(other)) return std::nullopt;
  const double share = geometry::cross(b - a, other) / turn;
  return geometry::moved(a, share * along);
}

// Edges of a chain as they are drawn, a freeform one as its arcs.
void add_edges(std::vector<DrawnEdge>& into, int ring, const Chain& chain) {
  if (!chain.freeform()) {
    for (std::size_t i = 0; i < chain.edges->size(); ++i) into.push_back({{ring, static_cast<int>(i)}, chain.curve(i)});
    return;
  }
  const auto least = static_cast<std::size_t>(chain.closed() ? 3 : 2);
  if (chain.through->size() < least) return;
  const geometry::Ring arcs = geometry::freeform(*chain.through, chain.closed());
  for (std::size_t i = 0; i < arcs.size(); ++i) {
    const geometry::Point to = i + 1 < arcs.size() ? arcs[i + 1].from
                               : chain.closed()    ? arcs[0].from
                                                   : chain.through->back();
    into.push_back({{ring, arcs[i].origin.edge}, {arcs[i].from, to, arcs[i].bulge}});
  }
}

}  // namespace

std::vector<Grip> corners(const Element& element) {
  std::vector<Grip> found;
  Element copy = element;
  const auto add = [&found](int ring, const Chain& chain) {
    for (std::size_t i = 0; i < chain.corners(); ++i)
      found.push_back({{ring, static_cast<int>(i)}, chain.corner(i), chain.freeform()});
  };
  Walk walk;
  walk.on_ring = [&](int number, DrawnRing& ring) { add(number, {&ring.edges, &ring.through, nullptr}); };
  walk.on_line = [&](DrawnLine& line) { add(line_ring, {&line.edges, &line.through, &line.end}); };
  walk.on_point = [&](int number, geometry::Point& at) { found.push_back({{point_ring, number}, at, false}); };
  visit_drawing(copy.kind, walk);
  return found;
}

std::vector<DrawnEdge> drawn_edges(const Element& element) {
  std::vector<DrawnEdge> found;
  Element copy = element;
  Walk walk;
  walk.on_ring = [&](int number, DrawnRing& ring) { add_edges(found, number, {&ring.edges, &ring.through, nullptr}); };
  walk.on_line = [&](DrawnLine& line) { add_edges(found, line_ring, {&line.edges, &line.through, &line.end}); };
  visit_drawing(copy.kind, walk);
  return found;
}

problem::Result<Element> with_corner_at(Element element, Corner corner, geometry::Point to) {
  if (corner.ring == point_ring) {
    bool there = false;
    Walk walk;
    walk.on_point = [&](int number, geometry::Point& at) {
      if (number != corner.number) return;
      at = to;
      there = true;
    };
    visit_drawing(element.kind, walk);
    if (!there) return std::unexpected(no_corner(element));
    return element;
  }
  return change_at(std::move(element), corner, [&](Chain chain) -> std::optional<problem::Problem> {
    const std::size_t count = chain.corners();
    const auto i = static_cast<std::size_t>(corner.number);
    for (const std::size_t beside : {(i + 1) % count, (i + count - 1) % count}) {
      const bool neighbours = chain.closed() || (beside > i ? beside - i : i - beside) == 1;
      if (beside != i && neighbours && chain.corner(beside) == to)
        return refuse("edge-zero-length", "The corner would lie on its neighbour.", "Set it elsewhere, or take it out.",
                      to);
    }
    chain.corner(i) = to;
    return std::nullopt;
  });
}

problem::Result<Element> with_new_corner(Element element, Corner before, geometry::Point at) {
  const std::size_t rank = edge_number(element, before);
  auto made = change_at(std::move(element), before, [&](Chain chain) -> std::optional<problem::Problem> {
    const auto i = static_cast<std::size_t>(before.number);
    const bool last_of_line = !chain.closed() && i + 1 == chain.corners();
    if (last_of_line) return refuse("corner-none", "No edge starts at the end of a line.", "Choose an edge.");
    if (chain.freeform()) {
      chain.through->insert(chain.through->begin() + before.number + 1, at);
      return std::nullopt;
    }
    const geometry::Curve curve = chain.curve(i);
    if (at == curve.start || at == curve.end)
      return refuse("edge-zero-length", "There is a corner already.", "Set it elsewhere on the edge.", at);
    // An arc keeps its circle: its sweep is shared at the place.
    const double share = curve.straight() ? 0 : geometry::nearest(curve, at).share;
    const double sweep = curve.sweep();
    (*chain.edges)[i].bulge = curve.straight() ? 0 : std::tan(sweep * share / 4);
    geometry::Edge after{at, curve.straight() ? 0 : std::tan(sweep * (1 - share) / 4), {}};
    chain.edges->insert(chain.edges->begin() + before.number + 1, after);
    return std::nullopt;
  });
  if (made) edge_was_split(*made, rank);
  return made;
}

problem::Result<Element> without_corner(Element element, Corner corner) {
  const std::size_t rank = edge_number(element, corner);
  auto made = change_at(std::move(element), corner, [&](Chain chain) -> std::optional<problem::Problem> {
    const std::size_t count = chain.corners();
    const auto i = static_cast<std::size_t>(corner.number);
    const bool arcs = std::ranges::any_of(*chain.edges, [](const geometry::Edge& edge) { return edge.bulge != 0; });
    const std::size_t least = chain.closed() ? (arcs && !chain.freeform() ? 2 : 3) : 2;
    if (count <= least)
      return refuse("corners-too-few", "A shape needs the corners that it has.", "Remove the element instead.",
                    chain.corner(i));
    if (chain.freeform()) {
      chain.through->erase(chain.through->begin() + corner.number);
      return std::nullopt;
    }
    if (!chain.closed() && i + 1 == count) {  // the end of a line: its last edge goes
      *chain.end = chain.edges->back().from;
      chain.edges->pop_back();
      return std::nullopt;
    }
    // The edge before runs on to the next corner, straight.
    if (chain.closed() || i > 0) (*chain.edges)[(i + chain.edges->size() - 1) % chain.edges->size()].bulge = 0;
    chain.edges->erase(chain.edges->begin() + corner.number);
    return std::nullopt;
  });
  if (made) edge_was_taken(*made, rank);
  return made;
}

problem::Result<Element> with_bulge(Element element, Corner start, double bulge) {
  if (!std::isfinite(bulge) || std::abs(bulge) > 1e3)
    return std::unexpected(refuse("edge-bulge", "That arc is all but a whole circle.", "Bend the edge less."));
  return change_at(std::move(element), start, [&](Chain chain) -> std::optional<problem::Problem> {
    const auto i = static_cast<std::size_t>(start.number);
    if (chain.freeform())
      return refuse("edge-freeform", "A freeform edge is bent by its points.", "Drag a point of it.");
    if (i >= chain.edges->size()) return refuse("corner-none", "No edge starts there.", "Choose an edge.");
    (*chain.edges)[i].bulge = bulge;
    return std::nullopt;
  });
}

problem::Result<Element> with_edge_moved(Element element, Corner start, Length out) {
  return change_at(std::move(element), start, [&](Chain chain) -> std::optional<problem::Problem> {
    const auto i = static_cast<std::size_t>(start.number);
    const std::size_t count = chain.edges->size();
    if (chain.freeform() || i >= count || !chain.curve(i).straight())
      return refuse("edge-not-straight", "Only a straight edge is moved square to itself.", "Choose a straight edge.");
    const geometry::Curve edge = chain.curve(i);
    const geometry::Vec along = edge.chord();
    if (geometry::length(along) == 0) return refuse("edge-zero-length", "The edge has no length.", "Choose another.");
    // Out of a ring is to the right of its edges when it runs counter-clockwise; of a line, to its right.
    const bool clockwise = chain.closed() && geometry::signed_area(*chain.edges).si() < 0;
    const double steps = static_cast<double>(out.steps()) * (clockwise ? 1 : -1);
    const geometry::Vec by = (steps / geometry::length(along)) * geometry::left_of(along);
    const geometry::Point from = geometry::moved(edge.start, by);
    const geometry::Point to = geometry::moved(edge.end, by);
    // Each end slides along its neighbour, or goes straight out where that runs the same way, is an arc, or is not
    // there.
    const auto slid = [&](std::size_t neighbour, bool there, geometry::Point plain) {
      if (!there || !chain.curve(neighbour).straight()) return plain;
      const geometry::Curve beside = chain.curve(neighbour);
      return crossing(from, along, beside.start, beside.chord()).value_or(plain);
    };
    const bool before_there = chain.closed() || i > 0;
    const bool after_there = chain.closed() || i + 1 < count;
    const geometry::Point new_from = slid((i + count - 1) % count, before_there, from);
    const geometry::Point new_to = slid((i + 1) % count, after_there, to);
    if (geometry::dot(new_to - new_from, along) <= 0)
      return refuse("edge-used-up", "Moved so far the edge would have no length left.", "Move it less.", edge.start);
    chain.corner(i) = new_from;
    chain.corner((i + 1) % (chain.closed() ? count : count + 1)) = new_to;
    return std::nullopt;
  });
}

problem::Result<Element> with_edge_length(Element element, Corner start, Length length) {
  if (length <= Length{})
    return std::unexpected(refuse("edge-zero-length", "An edge is longer than 0.", "Type a length above 0."));
  return change_at(std::move(element), start, [&](Chain chain) -> std::optional<problem::Problem> {
    const auto i = static_cast<std::size_t>(start.number);
    const std::size_t count = chain.edges->size();
    if (chain.freeform() || i >= count)
      return refuse("edge-freeform", "A freeform edge has the length that its points give.", "Drag a point of it.");
    const geometry::Curve edge = chain.curve(i);
    const double now = edge.length();
    if (now == 0) return refuse("edge-zero-length", "The edge has no length to go by.", "Move its corner.");
    // With its sweep kept, an arc's length goes as its chord.
    const geometry::Point to = geometry::moved(edge.start, (static_cast<double>(length.steps()) / now) * edge.chord());
    chain.corner((i + 1) % (chain.closed() ? count : count + 1)) = to;
    return std::nullopt;
  });
}

}  // namespace plan
