#include <filesystem>

#include "files/dxf_read.h"
#include "files/files.h"
#include "files/laid_out.h"

namespace files {
namespace {

std::string_view word(DrawnAs drawn) {
  return drawn == DrawnAs::polygon ? "an outline" : drawn == DrawnAs::line ? "a line" : "a point";
}

// Why the shape can't become that kind; empty where it can. A closed line may stand for its outline and be a wall.
std::string why_not(const LayerKind& kind, const DxfShape& shape) {
  const DrawnAs drawn = shape.part.drawn;
  const bool closed_line = drawn == DrawnAs::polygon && can_be(kind, DrawnAs::line);
  if (!can_be(kind, drawn) && !closed_line) return std::string(word(drawn)) + ", no " + kind.kind;
  if (kind.kind == "level" && !shape.part.rings.front().front().z) return "a point without height";
  return "";
}

void add_drawing(const DxfShape& shape, const LayerKind& kind, std::vector<Drawing>& into) {
  Drawing drawing{shape.layer + "-" + std::to_string(shape.number), "", kind, parts_for(kind, {shape.part}),
                  shape.part.rings.front().front().spot};
  into.push_back(std::move(drawing));
}

// What has a kind, joined; the rest is counted.
std::vector<Drawing> drawings_of(DxfDrawing drawing, const Layers& layers, std::map<std::string, int>& not_mapped) {
  std::vector<DxfShape> mapped;
  for (DxfShape& shape : drawing.shapes) {
    if (kind_of(layers, shape.layer) != nullptr)
      mapped.push_back(std::move(shape));
    else
      ++not_mapped[shape.layer];
  }
  std::vector<Drawing> made;
  for (const DxfShape& shape : joined_chains(std::move(mapped), drawing.unit, not_mapped)) {
    const LayerKind& kind = *kind_of(layers, shape.layer);
    if (const std::string why = why_not(kind, shape); !why.empty())
      ++not_mapped[shape.layer + " (" + why + ")"];
    else
      add_drawing(shape, kind, made);
  }
  return made;
}

}  // namespace

problem::Result<Import> import_dxf(std::string_view text, const std::string& file, std::string_view units,
                                   const std::map<std::string, std::string>& layers) {
  const auto known = known_layers(layers);
  if (!known) return std::unexpected(known.error());
  auto drawing = read_dxf(text, file, units);
  if (!drawing) return std::unexpected(drawing.error());
  Import made;
  made.not_mapped = drawing->left_out;
  made.job.catalogue = std::make_shared<const catalogue::Catalogue>();
  made.job.heading.name = std::filesystem::path(file).stem().string();
  if (drawing->metric) made.job.heading.units = units::System::metric;
  const double unit = drawing->unit;
  const auto drawings = drawings_of(std::move(*drawing), *known, made.not_mapped);
  Reading reading{.file = file, .fault = {}};
  for (const Drawing& one : drawings)
    if (!check_id(one.id, one.spot, reading)) return std::unexpected(reading.told());
  if (!lay_out(drawings, unit, "dxf", made.job, reading)) return std::unexpected(reading.told());
  return made;
}

}  // namespace files
