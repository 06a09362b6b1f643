#include <algorithm>
#include <cmath>
#include <filesystem>
#include <set>

#include "files/dxf_read.h"
#include "files/files.h"
#include "files/laid_out.h"
#include "units/number.h"

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

// "deck-12", of what a placed block holds "deck-12.3".
std::string id_by_place(const DxfShape& shape) {
  return shape.layer + "-" + std::to_string(shape.number) +
         (shape.within > 0 ? "." + std::to_string(shape.within) : "");
}

// The drawings as they come, each with an id that no other has.
class Drawings {
 public:
  void add(const DxfShape& shape, const LayerKind& kind) {
    if (is_island(shape)) {
      islands_of(shape).push_back(shape.part.rings.front());
      return;
    }
    const bool own = !shape.id.empty() && shape.ring == 0 && ids_.insert(shape.id).second;
    std::string id = own ? shape.id : id_by_place(shape);
    while (!own && !ids_.insert(id).second) id += "+";
    if (own) by_id_[id] = made_.size();
    made_.push_back({id, "", kind, parts_for(kind, {shape.part}), shape.part.rings.front().front().spot});
  }
  std::vector<Drawing> made() { return std::move(made_); }

 private:
  // A further ring of an outline that came before, as this program writes it.
  bool is_island(const DxfShape& shape) const {
    if (shape.ring == 0 || shape.part.drawn != DrawnAs::polygon) return false;
    const auto found = by_id_.find(shape.id);
    return found != by_id_.end() && made_[found->second].parts.size() == 1 &&
           made_[found->second].parts.front().drawn == DrawnAs::polygon;
  }
  std::vector<std::vector<Position>>& islands_of(const DxfShape& shape) {
    return made_[by_id_.at(shape.id)].parts.front().rings;
  }

  std::vector<Drawing> made_{};
  std::set<std::string> ids_{};
  std::map<std::string, std::size_t> by_id_{};  // those with an id of their own: their place
};

// What has a kind, joined; the rest is counted.
std::vector<Drawing> drawings_of(DxfDrawing drawing, const Layers& layers, std::map<std::string, int>& not_mapped) {
  std::vector<DxfShape> mapped;
  for (DxfShape& shape : drawing.shapes) {
    if (kind_of(layers, shape.layer) != nullptr)
      mapped.push_back(std::move(shape));
    else
      ++not_mapped[shape.layer];
  }
  Drawings made;
  for (const DxfShape& shape : joined_chains(std::move(mapped), drawing.unit, not_mapped)) {
    const LayerKind& kind = *kind_of(layers, shape.layer);
    if (const std::string why = why_not(kind, shape); !why.empty())
      ++not_mapped[shape.layer + " (" + why + ")"];
    else
      made.add(shape, kind);
  }
  return made.made();
}

// ---- the size of it all

// The longer side of the box round everything, in metres.
double size_of(const std::vector<Drawing>& drawings, double unit) {
  double low_x = 1e300, low_y = 1e300, high_x = -1e300, high_y = -1e300;
  for (const Drawing& drawing : drawings)
    for (const Part& part : drawing.parts)
      for (const auto& ring : part.rings)
        for (const Position& at : ring) {
          low_x = std::min(low_x, at.x);
          low_y = std::min(low_y, at.y);
          high_x = std::max(high_x, at.x);
          high_y = std::max(high_y, at.y);
        }
  return std::max({0.0, high_x - low_x, high_y - low_y}) * unit;
}

bool is_a_yard(double metres) { return metres >= 3 && metres <= 500; }

std::string in_words(double metres) { return units::show_number(metres, metres < 10 ? 2 : 0) + " m"; }

// Units in which what is so many metres across would be as large as a yard.
std::string better_units(double metres, double unit) {
  std::string found;
  for (const char* name : {"m", "mm", "ft", "in"}) {
    const double across = metres / unit * metres_of(name).value_or(1);
    if (!is_a_yard(across) || std::abs(*metres_of(name) / unit - 1) < 1e-3) continue;
    found += (found.empty() ? "" : ", or ") + std::string("if it is drawn in ") + name + " (" + in_words(across) +
             " across) say --units " + name;
  }
  return found;
}

// A drawing of a yard in the wrong unit is as large as a town or as small as a table.
std::vector<problem::Problem> said_of_size(const std::vector<Drawing>& drawings, double unit, const std::string& file) {
  const double metres = size_of(drawings, unit);
  const bool odd = drawings.size() > 1 || (!drawings.empty() && drawings[0].parts[0].drawn != DrawnAs::point);
  if (!odd || (metres >= 1 && metres <= 1000)) return {};
  const std::string better = better_units(metres, unit);
  return {{problem::Severity::notice, "dxf-size",
           "what was imported is " + in_words(metres) + " across, " + (metres < 1 ? "small" : "large") + " for a yard",
           better.empty() ? "look at the drawing's unit" : better, place_in(file)}};
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
  made.notices = said_of_size(drawings, unit, file);
  if (!lay_out(drawings, unit, "dxf", made.job, reading)) {
    problem::Problem told = reading.told();
    // A yard drawn in millimetres and read as metres reaches too far as well.
    const std::string better = told.code == "dxf-far" ? better_units(size_of(drawings, unit), unit) : "";
    if (!better.empty()) told.mend += "; " + better;
    return std::unexpected(told);
  }
  return made;
}

}  // namespace files
