// One entity of a DXF drawing as a shape.
#pragma once

#include <memory>
#include <optional>
#include <span>
#include <string>

#include "files/dxf_pairs.h"
#include "files/dxf_read.h"

namespace files {

// An entity with the vertices that follow it.
using DxfEntities = std::span<const DxfEntity>;

// Reads entities by the library, one at a time; curves of other kinds by dxf_curves.h. Numbers are read as everywhere,
// whatever the program's locale.
class DxfShapeReader {
 public:
  // `unit`: metres of one unit of the file, so that curves are near enough to what they are.
  DxfShapeReader(std::string file, double unit);
  ~DxfShapeReader();
  DxfShapeReader(const DxfShapeReader&) = delete;
  DxfShapeReader& operator=(const DxfShapeReader&) = delete;

  // The shape; or nothing, with the reason in `why`: of another type, on the printed page, turned out of the plan,
  // without length. Refused: a needed number that is missing or stands twice, what the library can't read.
  problem::Result<std::optional<DxfShape>> read(DxfEntities entities, std::string& why);

 private:
  class Own;
  std::unique_ptr<Own> own_;
};

}  // namespace files
