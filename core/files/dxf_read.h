// The shapes of a DXF drawing (R12 and later, text form): LINE, ARC, CIRCLE, POLYLINE, LWPOLYLINE, POINT in the plane.
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
};

struct DxfDrawing {
  double unit = 0;  // metres of one unit of the file
  bool metric = false;
  std::vector<DxfShape> shapes;
  // What is not drawn here, by layer and type -> how many: inserted blocks, texts, hatches, splines, meshes, what lies
  // on the printed page and not in the plan, what is turned out of the plane, lines without length.
  std::map<std::string, int> left_out;
};

// `units` as for every import; empty: what the file says ($INSUNITS), and refused where it says nothing. Refused with
// line and reason besides: what dxf_pairs.h says, a needed number that is missing, what lies out of all range. Codes:
// dxf-units, dxf-missing, dxf-range.
problem::Result<DxfDrawing> read_dxf(std::string_view text, const std::string& file, std::string_view units);

// Lines of one layer that meet end to end, within a step of the grid, as one line, or as an outline where they close.
// Where three or more ends meet nothing is joined. A line drawn twice counts once; the other is added to `left_out`.
// The result stands in the order of the first of each.
std::vector<DxfShape> joined_chains(std::vector<DxfShape> shapes, double unit, std::map<std::string, int>& left_out);

}  // namespace files
