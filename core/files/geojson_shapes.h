// The geometry of GeoJSON features (RFC 7946): what is drawn, still in the file's coordinates; and its way into an
// element.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "files/from_json.h"
#include "plan/element.h"

namespace files {

struct Position {
  double x = 0;  // or longitude
  double y = 0;  // or latitude
  std::optional<double> z;
  Spot spot;
  double bulge = 0;  // of the edge that starts here; DXF alone has arcs
};

enum class DrawnAs { point, line, polygon };

// One piece of a feature that becomes one element: a point, a line, or a polygon's rings.
struct Part {
  DrawnAs drawn = DrawnAs::point;
  std::vector<std::vector<Position>> rings;
};

// A part laid out on the grid of the job.
struct Placed {
  std::vector<std::vector<geometry::Point>> rings;
  std::vector<std::vector<double>> bulges;  // of the edge from each point
  std::optional<units::Length> height;      // of a point that has a third coordinate
};

// What a layer becomes: a kind of element and, of a site mark, which mark ("site-mark:septic").
struct LayerKind {
  std::string kind;
  std::string mark;
};

// "paved-area", "site-mark:well" ...; nothing for what can't be imported.
std::optional<LayerKind> layer_kind(const std::string& text);
std::string layer_kinds();  // all of them, for sentences

// The parts of a Point, MultiPoint, LineString, MultiLineString, Polygon or MultiPolygon; anything else is refused.
bool read_parts(const Value& geometry, std::vector<Part>& into, Reading& reading);

// A polygon for a kind that is drawn as a line gives its rings as closed lines, a part each.
std::vector<Part> parts_for(const LayerKind& kind, std::vector<Part> parts);

// Whether this kind can be drawn as a point, a line or an outline.
bool can_be(const LayerKind& kind, DrawnAs drawn);

// Refuses a part that this kind can't be drawn as: a line for an area, a point for a wall ...
bool fits(const LayerKind& kind, const Part& part, Spot spot, Reading& reading);

// The element of one part: its points and nothing chosen. A ring's closing point is dropped. `part` must fit the kind.
plan::Kind make_kind(const LayerKind& kind, DrawnAs drawn, const Placed& placed);

}  // namespace files
