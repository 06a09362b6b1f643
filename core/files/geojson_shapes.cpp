#include "files/geojson_shapes.h"

#include <algorithm>
#include <array>
#include <utility>

namespace files {
namespace {

// How each kind can be drawn, and an empty one of it.
struct Importable {
  std::string_view name;
  bool as_polygon;
  bool as_line;
  bool as_point;
  plan::Kind empty;
};

const std::vector<Importable>& importable() {
  static const std::vector<Importable> kinds{{"paved-area", true, false, false, plan::PavedArea{}},
                                             {"pool", true, false, false, plan::Pool{}},
                                             {"wall", false, true, false, plan::Wall{}},
                                             {"steps", true, false, false, plan::Steps{}},
                                             {"building", true, false, false, plan::Building{}},
                                             {"keep-out", true, false, false, plan::KeepOut{}},
                                             {"edge-run", false, true, false, plan::EdgeRun{}},
                                             {"drain-run", false, true, false, plan::DrainRun{}},
                                             {"removal", true, true, false, plan::Removal{}},
                                             {"level", false, false, true, plan::Level{{}, {}, "existing", {}}},
                                             {"protection", true, true, false, plan::Protection{}},
                                             {"site-mark", true, true, true, plan::SiteMark{}}};
  return kinds;
}

const Importable& importable(const LayerKind& kind) {
  return *std::ranges::find(importable(), kind.kind, [](const Importable& one) { return std::string(one.name); });
}

bool read_position(const Value& value, Position& into, Reading& reading) {
  if (!expect(value, Sort::list, reading)) return false;
  if (value.children.size() < 2) {
    return reading.refuse(value.spot, "geojson-position", "a position has two coordinates or more", "write [x, y]");
  }
  into.spot = value.spot;
  if (value.children.size() > 2 && !read(value.children[2], into.z.emplace(), reading)) return false;
  return read(value.children[0], into.x, reading) && read(value.children[1], into.y, reading);
}

bool read_positions(const Value& value, std::vector<Position>& into, Reading& reading) {
  if (!expect(value, Sort::list, reading)) return false;
  into.reserve(value.children.size());
  return std::ranges::all_of(value.children,
                             [&](const Value& child) { return read_position(child, into.emplace_back(), reading); });
}

bool read_part(const Value& value, DrawnAs drawn, std::vector<Part>& into, Reading& reading) {
  Part& part = into.emplace_back();
  part.drawn = drawn;
  if (drawn == DrawnAs::point) return read_position(value, part.rings.emplace_back().emplace_back(), reading);
  if (drawn == DrawnAs::line) return read_positions(value, part.rings.emplace_back(), reading);
  return expect(value, Sort::list, reading) && std::ranges::all_of(value.children, [&](const Value& ring) {
           return read_positions(ring, part.rings.emplace_back(), reading);
         });
}

geometry::Ring first_edges(const Placed& placed, std::size_t ring, std::size_t count) {
  geometry::Ring edges(count);
  for (std::size_t i = 0; i < count; ++i) {
    edges[i].from = placed.rings[ring][i];
    edges[i].bulge = placed.bulges[ring][i];
  }
  return edges;
}

plan::DrawnShape shape_of(const Placed& placed) {
  plan::DrawnShape shape;
  for (std::size_t i = 0; i < placed.rings.size(); ++i) {
    const auto& ring = placed.rings[i];
    const bool closed = ring.size() > 1 && ring.front() == ring.back();
    shape.emplace_back().edges = first_edges(placed, i, ring.size() - (closed ? 1 : 0));
  }
  return shape;
}

plan::DrawnLine line_of(const Placed& placed) {
  const auto& points = placed.rings.front();
  plan::DrawnLine line;
  if (points.empty()) return line;
  line.edges = first_edges(placed, 0, points.size() - 1);
  line.end = points.back();
  return line;
}

void draw(auto& kind, DrawnAs drawn, const Placed& placed) {
  if constexpr (requires { kind.outline; }) {
    if (drawn == DrawnAs::polygon) kind.outline = shape_of(placed);
  }
  if constexpr (requires { kind.line; }) {
    if (drawn == DrawnAs::line) kind.line = line_of(placed);
  }
  if constexpr (requires { kind.points; }) {
    if (drawn == DrawnAs::point) kind.points = placed.rings.front();
  }
  if constexpr (requires {
                  kind.height = units::Length();
                  kind.at;
                }) {
    kind.at = placed.rings.front().front();
    kind.height = placed.height.value_or(units::Length());
  }
}

}  // namespace

std::optional<LayerKind> layer_kind(const std::string& text) {
  const std::size_t colon = text.find(':');
  const LayerKind kind{text.substr(0, colon), colon == std::string::npos ? "" : text.substr(colon + 1)};
  const bool known = std::ranges::any_of(importable(), [&](const Importable& one) { return one.name == kind.kind; });
  const bool mark = kind.kind == "site-mark";
  if (!known || mark != (colon != std::string::npos) || mark == kind.mark.empty()) return std::nullopt;
  return kind;
}

std::string layer_kinds() {
  std::string names;
  for (const Importable& one : importable()) names += (names.empty() ? "" : ", ") + std::string(one.name);
  return names + ":KIND";  // the site mark stands last
}

bool read_parts(const Value& geometry, std::vector<Part>& into, Reading& reading) {
  static constexpr std::array<std::pair<std::string_view, DrawnAs>, 3> sorts{
      {{"Point", DrawnAs::point}, {"LineString", DrawnAs::line}, {"Polygon", DrawnAs::polygon}}};
  if (!expect(geometry, Sort::object, reading)) return false;
  const Value* type = geometry.find("type");
  const Value* coordinates = geometry.find("coordinates");
  if (type == nullptr) return missing_field(geometry, "type", reading);
  if (!expect(*type, Sort::string, reading)) return false;
  for (const auto& [name, sort] : sorts) {
    const bool several = type->text == "Multi" + std::string(name);
    if (type->text != name && !several) continue;
    if (coordinates == nullptr) return missing_field(geometry, "coordinates", reading);
    if (!several) return read_part(*coordinates, sort, into, reading);
    return expect(*coordinates, Sort::list, reading) &&
           std::ranges::all_of(coordinates->children,
                               [&, one = sort](const Value& part) { return read_part(part, one, into, reading); });
  }
  return reading.refuse(type->spot, "geojson-geometry",
                        "a geometry of type " + in_quotes(type->text) + " can't be imported",
                        "use Point, LineString, Polygon or their Multi forms");
}

std::vector<Part> parts_for(const LayerKind& kind, std::vector<Part> parts) {
  if (importable(kind).as_polygon || !importable(kind).as_line) return parts;
  std::vector<Part> lines;
  for (Part& part : parts) {
    if (part.drawn == DrawnAs::point) {
      lines.push_back(std::move(part));  // refused by `fits`
      continue;
    }
    for (auto& ring : part.rings) lines.push_back({DrawnAs::line, {std::move(ring)}});
  }
  return lines;
}

bool can_be(const LayerKind& kind, DrawnAs drawn) {
  const Importable& can = importable(kind);
  return drawn == DrawnAs::polygon ? can.as_polygon : drawn == DrawnAs::line ? can.as_line : can.as_point;
}

bool fits(const LayerKind& kind, const Part& part, Spot spot, Reading& reading) {
  const Importable& can = importable(kind);
  if (!can_be(kind, part.drawn)) {
    const std::string found = part.drawn == DrawnAs::polygon ? "an outline"
                              : part.drawn == DrawnAs::line  ? "a line"
                                                             : "a point";
    const std::string takes = can.as_polygon ? "an outline" : can.as_line ? "a line" : "a point";
    return reading.refuse(spot, "geojson-drawn-as",
                          found + " can't become " + kind.kind + ", which is drawn as " + takes,
                          "map its layer to a kind that is drawn as " + found + ", or leave the layer out");
  }
  if (kind.kind == "level" && !part.rings.front().front().z) {
    return reading.refuse(spot, "geojson-height", "a level has no height here",
                          "give the height as third coordinate, in the unit of the other two (metres beside degrees)");
  }
  return true;
}

plan::Kind make_kind(const LayerKind& kind, DrawnAs drawn, const Placed& placed) {
  plan::Kind made = importable(kind).empty;
  std::visit([&](auto& one) { draw(one, drawn, placed); }, made);
  if (auto* mark = std::get_if<plan::SiteMark>(&made)) mark->what = kind.mark;
  return made;
}

}  // namespace files
