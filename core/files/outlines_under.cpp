#include "files/outlines_under.h"

#include <algorithm>

#include "files/files.h"
#include "files/json_read.h"

namespace files {
namespace {

plan::DrawnLine closed(const plan::DrawnRing& ring) {
  plan::DrawnLine line;
  line.edges = ring.edges;
  if (!ring.edges.empty()) line.end = ring.edges.front().from;
  return line;
}

}  // namespace

bool is_dxf(const std::string& name) {
  std::string ending = name.substr(name.size() - std::min<std::size_t>(name.size(), 4));
  std::ranges::transform(ending, ending.begin(),
                         [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c + 32) : c; });
  return ending == ".dxf";
}

problem::Result<std::vector<plan::DrawnLine>> outlines_of(std::string_view text, const std::string& name,
                                                          std::string_view units) {
  // A site mark may be drawn as anything, so all of the file comes through the import's own rules.
  const std::map<std::string, std::string> all{{"*", "site-mark:under"}};
  const auto made = is_dxf(name) ? import_dxf(text, name, units, all) : import_geojson(text, name, units, all);
  if (!made) return std::unexpected(made.error());
  std::vector<plan::DrawnLine> lines;
  for (const plan::ElementPtr& element : made->job.elements) {
    const auto& mark = std::get<plan::SiteMark>(element->kind);
    for (const plan::DrawnRing& ring : mark.outline) lines.push_back(closed(ring));
    if (mark.line) lines.push_back(*mark.line);
  }
  if (!lines.empty()) return lines;
  return problem::fault("outlines-none", "nothing in the file is drawn as a line", "take a file with outlines or lines",
                        place_in(name));
}

}  // namespace files
