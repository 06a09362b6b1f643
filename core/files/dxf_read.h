// The shapes of a DXF drawing (R12 and later, text form): LINE, ARC, CIRCLE, ELLIPSE, SPLINE, POLYLINE, LWPOLYLINE,
// POINT in the plane, and blocks of them as they are placed (INSERT: base point, scales, rotation, columns and rows,
// one inside the other).
#pragma once

#include <map>
#include <string>
#include <string_view>
#include <vector>

#include "files/geojson_shapes.h"

namespace files {

struct DxfShape {
  std::string layer;
  std::size_t number = 0;  // its entity's, among all of the drawing from 1
  Part part;               // one ring; a polygon's repeats its first position at the end
  std::size_t within = 0;  // of what a placed block holds: from 1, in its order; the number is that of the INSERT
  std::string id{};        // of its element, where this program wrote the file, and which ring of it
  int ring = 0;
};

struct DxfDrawing {
  double unit = 0;  // metres of one unit of the file
  bool metric = false;
  std::vector<DxfShape> shapes;
  // What is not drawn here, by layer and type -> how many: texts, hatches, meshes, blocks that are not in the
  // file, what lies on the printed page and not in the plan, what is turned out of the plane, lines without length,
  // curves whose numbers make none.
  std::map<std::string, int> left_out;
};

// `units` as for every import; empty: what the file says ($INSUNITS), and refused where it says nothing. Refused with
// line and reason besides: what dxf_pairs.h says, a needed number that is missing, what lies out of all range, a block
// placed inside itself or more than 16 deep, more than 100,000 shapes of placed blocks or 4,000,000 corners in all.
// Codes: dxf-units, dxf-missing, dxf-range, dxf-cycle, dxf-deep, dxf-many.
problem::Result<DxfDrawing> read_dxf(std::string_view text, const std::string& file, std::string_view units);

// How far apart two ends may lie that were meant to meet, in metres.
inline constexpr double join_tolerance_m = 0.001;

// Lines of one layer that meet end to end, within a step of the grid, as one line, or as an outline where they close.
// Then ends that no other line meets are joined across gaps of at most the tolerance, where each has one such end near
// it. Where three or more ends meet nothing is joined. A line drawn twice counts once; the other is added to
// `left_out`. Lines with an id of their own stay as they are. The result stands in the order of the first of each.
std::vector<DxfShape> joined_chains(std::vector<DxfShape> shapes, double unit, std::map<std::string, int>& left_out);

}  // namespace files
