// The pairs of a DXF text: a line with a code, a line with its value. What of them can be drawn, entity by entity, each
// number read here once and by our own rules, so that no reader behind depends on a locale, on the length of a line or
// on counts that the file says of itself.
#pragma once

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "files/json_read.h"

namespace files {

// One number of an entity.
struct DxfNumber {
  int code = 0;
  double value = 0;
  int line = 0;  // of the value
};

struct DxfEntity {
  // LINE, ARC, CIRCLE, ELLIPSE, SPLINE, LWPOLYLINE, POLYLINE, VERTEX, POINT, INSERT; of others nothing but this and the
  // layer is read.
  std::string type;
  std::string layer;       // UTF-8; "0" where none is named
  std::size_t number = 0;  // among all entities of the drawing, from 1; vertices don't count
  int line = 0;            // of its type
  std::vector<DxfNumber> numbers;
  std::string block{};  // of an INSERT: the block's name, in capitals
  std::string id{};     // what this program wrote beside a shape (drawing_dxf.h): whose it is ...
  int ring = 0;         // ... and which ring of it

  const DxfNumber* find(int code) const;  // the first of that code
  double number_or(int code, double otherwise) const;
};

// A drawing inside the drawing, placed by INSERTs.
struct DxfBlock {
  int line = 0;
  double x = 0;  // its base point
  double y = 0;
  double z = 0;
  std::vector<DxfEntity> entities;
};

struct DxfText {
  int unit = 0;  // $INSUNITS; 0: the file does not say
  int unit_line = 0;
  std::vector<DxfEntity> entities;         // of the section ENTITIES, in their order
  std::map<std::string, DxfBlock> blocks;  // by their names in capitals
};

// Refused, each with its line: no text (a binary file), a code that is no whole number, a number that is none, a file
// without the section ENTITIES or that ends before its EOF, more than most_values entities, those of blocks counted
// too. Codes: dxf-binary,
// dxf-code, dxf-number, dxf-empty, dxf-ends-early, dxf-many, dxf-large.
problem::Result<DxfText> read_dxf_text(std::string_view text, const std::string& file);

}  // namespace files
