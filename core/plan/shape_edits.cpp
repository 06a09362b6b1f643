#include <tuple>

#include "geometry/offset.h"
#include "geometry/overlay.h"
#include "geometry/validity.h"
#include "plan/edge_numbers.h"
#include "plan/footprint.h"

namespace plan {

namespace {

// The closed outline of an element, or null where it is drawn otherwise.
struct OutlineOf {
  DrawnShape* operator()(PavedArea& of) const { return &of.outline; }
  DrawnShape* operator()(Pool& of) const { return &of.outline; }
  DrawnShape* operator()(Steps& of) const { return &of.outline; }
  DrawnShape* operator()(Building& of) const { return &of.outline; }
  DrawnShape* operator()(KeepOut& of) const { return &of.outline; }
  DrawnShape* operator()(Removal& of) const { return of.line ? nullptr : &of.outline; }
  DrawnShape* operator()(SiteMark& of) const { return of.outline.empty() ? nullptr : &of.outline; }
  DrawnShape* operator()(Protection& of) const { return of.line ? nullptr : &of.outline; }
  template <class Other>
  DrawnShape* operator()(Other&) const {
    return nullptr;
  }
};

struct LineOf {
  DrawnLine* operator()(Wall& of) const { return &of.line; }
  DrawnLine* operator()(EdgeRun& of) const { return &of.line; }
  DrawnLine* operator()(DrainRun& of) const { return &of.line; }
  DrawnLine* operator()(Removal& of) const { return of.line ? &*of.line : nullptr; }
  DrawnLine* operator()(SiteMark& of) const { return of.line ? &*of.line : nullptr; }
  DrawnLine* operator()(Protection& of) const { return of.line ? &*of.line : nullptr; }
  template <class Other>
  DrawnLine* operator()(Other&) const {
    return nullptr;
  }
};

problem::Problem refused(const Element& element, std::string code, std::string text, std::string mend) {
  return {problem::Severity::problem, std::move(code), std::move(text), std::move(mend), {element.id, {}, 0, 0, {}}};
}

constexpr std::uint64_t own_mark = 1;

// Each edge of a result tells which it was: by its number, counted on from `first_number`.
problem::Result<geometry::Region> region_of(const Element& element, const DrawnShape& shape, int first_number = 0) {
  geometry::Drawn rings = drawing(shape, own_mark);
  for (geometry::Ring& ring : rings) {
    for (geometry::Edge& edge : ring) edge.origin.edge += first_number;
  }
  auto made = geometry::shape(rings);
  if (!made) {
    problem::Problem fault = made.error();
    fault.place.element = element.id;
    return std::unexpected(std::move(fault));
  }
  return std::move(made->region);
}

// How many numbers the edges of the shape take.
int edge_count(const DrawnShape& shape) {
  std::size_t count = 0;
  for (const DrawnRing& ring : shape) count += ring.through.empty() ? ring.edges.size() : ring.through.size();
  return static_cast<int>(count);
}

DrawnRing drawn_ring(const geometry::Outline& outline) { return {outline.edges(), {}}; }

// An area that was measured on site is that of the old outline.
void forget_taped_area(Element& element) {
  if (auto* area = std::get_if<PavedArea>(&element.kind)) area->taped_area_m2.reset();
}

// Puts the polygon in the element's place, with what was said of its edges.
Element with_polygon(Element element, const geometry::Polygon& polygon) {
  DrawnShape shape{drawn_ring(polygon.outer)};
  for (const geometry::Outline& hole : polygon.holes) shape.push_back(drawn_ring(hole));
  std::vector<EdgePiece> pieces;
  for (DrawnRing& ring : shape) {
    for (std::size_t i = 0; i < ring.edges.size(); ++i) {
      const geometry::Origin origin = ring.edges[i].origin;
      pieces.push_back({origin.element == own_mark ? origin.edge : -1, geometry::curve(ring.edges, i)});
    }
    for (geometry::Edge& edge : ring.edges) edge.origin = {};
  }
  follow_edges(element, pieces);
  forget_taped_area(element);
  *std::visit(OutlineOf{}, element.kind) = std::move(shape);
  return element;
}

problem::Problem not_closed(const Element& element) {
  return refused(element, "shape-not-closed", "This is not drawn as a closed outline.", "Choose one that is.");
}

problem::Result<Element> offset_line(Element element, Length out) {
  DrawnLine& line = *std::visit(LineOf{}, element.kind);
  if (!line.through.empty())
    return std::unexpected(refused(element, "edge-freeform", "A freeform line is moved by its points.", "Drag them."));
  auto path = geometry::Path::make(line.edges, line.end);
  if (!path) return std::unexpected(path.error());
  auto beside = geometry::parallel(*path, out);
  if (!beside) return std::unexpected(beside.error());
  line.edges = beside->edges();
  for (geometry::Edge& edge : line.edges) edge.origin = {};
  line.end = beside->end();
  return element;
}

// All ground to the left of the line from a through b, as far as `box` goes and beyond.
problem::Result<geometry::Region> left_side(const geometry::Box& box, geometry::Point a, geometry::Point b) {
  const geometry::Vec line = b - a;
  const geometry::Vec along = (1 / geometry::length(line)) * line;
  const double far = geometry::length(box.high - box.low) + geometry::length(box.low - a) +
                     geometry::length(box.high - a) + units::Length::steps_per_metre;
  const geometry::Point back = geometry::moved(a, -far * along);
  const geometry::Point front = geometry::moved(a, far * along);
  const geometry::Vec up = far * geometry::left_of(along);
  return geometry::region(
      {{back, 0, {}}, {front, 0, {}}, {geometry::moved(front, up), 0, {}}, {geometry::moved(back, up), 0, {}}});
}

}  // namespace

problem::Result<Element> offset(Element element, Length out) {
  if (std::visit(LineOf{}, element.kind) != nullptr) return offset_line(std::move(element), out);
  const DrawnShape* shape = std::visit(OutlineOf{}, element.kind);
  if (shape == nullptr) return std::unexpected(not_closed(element));
  const auto region = region_of(element, *shape);
  if (!region) return std::unexpected(region.error());
  // Strips along so many edges are united for minutes while a person waits. A yard has some hundred edges; only
  // freeform outlines as long as a town have more.
  constexpr std::size_t most_edges = 1000;
  std::size_t edges = 0;
  for (const geometry::Outline* outline : region->outlines()) edges += outline->edges().size();
  if (edges > most_edges)
    return std::unexpected(refused(element, "offset-edges", "This outline has more than 1,000 edges.",
                                   "Draw the outer line anew, or offset parts of it."));
  const auto grown = geometry::offset(*region, out, geometry::Corner::mitred);
  if (!grown) return std::unexpected(grown.error());
  if (grown->polygons().size() != 1)
    return std::unexpected(refused(
        element, "offset-parts",
        grown->empty() ? "Moved in so far nothing is left." : "Moved so far it falls into parts.", "Move it less."));
  return with_polygon(std::move(element), grown->polygons().front());
}

problem::Result<std::pair<Element, Element>> split(const Element& element, geometry::Point a, geometry::Point b,
                                                   ElementId second) {
  Element copy = element;
  const DrawnShape* shape = std::visit(OutlineOf{}, copy.kind);
  if (shape == nullptr) return std::unexpected(not_closed(element));
  if (a == b)
    return std::unexpected(refused(element, "split-line", "The two points of the cut are one.", "Set them apart."));
  const auto whole = region_of(element, *shape);
  if (!whole) return std::unexpected(whole.error());
  const auto side = left_side(whole->bounds(), a, b);
  if (!side) return std::unexpected(side.error());
  const auto left = geometry::meet(*whole, *side);
  if (!left) return std::unexpected(left.error());
  const std::vector<geometry::Region> cutter{*side};
  const auto right = geometry::subtract(*whole, cutter);
  if (!right) return std::unexpected(right.error());
  if (left->empty() || right->empty())
    return std::unexpected(
        refused(element, "split-misses", "The cut does not go through it.", "Draw it right across."));
  if (left->polygons().size() != 1 || right->polygons().size() != 1)
    return std::unexpected(
        refused(element, "split-parts", "The cut would make more than two parts.", "Cut one part after the other."));
  Element first = with_polygon(element, left->polygons().front());
  Element other = with_polygon(element, right->polygons().front());
  other.id = std::move(second);
  return std::pair{std::move(first), std::move(other)};
}

problem::Result<Element> joined(const Element& first, const Element& second) {
  Element a = first;
  Element b = second;
  const DrawnShape* one = std::visit(OutlineOf{}, a.kind);
  const DrawnShape* two = std::visit(OutlineOf{}, b.kind);
  if (one == nullptr) return std::unexpected(not_closed(first));
  if (two == nullptr) return std::unexpected(not_closed(second));
  // The second one's edges are counted on from the first one's, so that what was said of them goes along.
  const int first_count = edge_count(*one);
  std::vector<geometry::Region> both;
  for (const auto& [element, shape, number] : {std::tuple{&first, one, 0}, std::tuple{&second, two, first_count}}) {
    auto region = region_of(*element, *shape, number);
    if (!region) return std::unexpected(region.error());
    both.push_back(std::move(*region));
  }
  auto* area = std::get_if<PavedArea>(&a.kind);
  if (const auto* other = std::get_if<PavedArea>(&b.kind); area != nullptr && other != nullptr) {
    for (const EdgeChoice& choice : other->edges) area->edges.push_back({choice.edge + first_count, choice.junction});
  }
  const auto together = geometry::unite(both);
  if (!together) return std::unexpected(together.error());
  if (together->polygons().size() != 1)
    return std::unexpected(
        refused(second, "join-apart", "The two do not meet along an edge.", "Move them together first."));
  return with_polygon(std::move(a), together->polygons().front());
}

problem::Result<Element> with_hole(Element element, DrawnRing hole) {
  DrawnShape* shape = std::visit(OutlineOf{}, element.kind);
  if (shape == nullptr) return std::unexpected(not_closed(element));
  DrawnShape with = *shape;
  with.push_back(std::move(hole));
  const auto made = region_of(element, with);
  if (!made) return std::unexpected(made.error());
  *shape = std::move(with);
  forget_taped_area(element);
  return element;
}

}  // namespace plan
