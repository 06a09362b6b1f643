// What an import has read, laid out on the grid of a new job: shared by all forms of drawings.
#pragma once

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "files/geojson_shapes.h"
#include "plan/job.h"

namespace files {

// A feature that is imported, before its coordinates are laid out.
struct Drawing {
  std::string id;
  std::string name;
  LayerKind kind;
  std::vector<Part> parts;  // an element each: ID, ID#2, ID#3
  Spot spot;
};

// Metres of one m, mm, ft, us-ft or in; 0 for no unit: longitude and latitude.
std::optional<double> metres_of(std::string_view unit);

using Layers = std::map<std::string, LayerKind>;
problem::Result<Layers> known_layers(const std::map<std::string, std::string>& layers);
const LayerKind* kind_of(const Layers& layers, const std::string& layer);  // its own, else that of "*", else null

// The elements of the drawings, in their order, and the job's datum. The origin is the first position of what is
// imported: always for degrees; of plain coordinates only where the file's own origin is too far away for a job. What
// lies more than 5 km from the first, is doubled or out of all range is refused by name. `form` begins the codes of the
// problems ("geojson-far").
bool lay_out(const std::vector<Drawing>& drawings, double unit, const std::string& form, plan::Job& job,
             Reading& reading);

}  // namespace files
