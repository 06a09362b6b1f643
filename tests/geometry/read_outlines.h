// The outlines in tests/data as rings of grid points: a scanner for just these files, kept apart from the program's own
// reader so that one can't hide the other's slips.
#pragma once

#include <algorithm>
#include <cctype>
#include <cmath>
#include <cstdlib>
#include <fstream>
#include <iterator>
#include <map>
#include <sstream>
#include <string>
#include <string_view>
#include <vector>

#include "geometry/validity.h"

namespace read_outlines {

struct Feature {
  std::string id;  // "" when the file gives none
  std::string layer;
  std::string type;                    // Polygon, MultiPolygon, LineString
  std::string properties;              // their text
  std::vector<geometry::Drawn> parts;  // closing points left out for polygons; a line is one ring
};

inline std::string text_of(const std::string& path) {
  std::ifstream stream(path, std::ios::binary);
  return {std::istreambuf_iterator<char>(stream), {}};
}

// The word or number after "key": in the text, without quotes; "" when there is none.
inline std::string value(std::string_view text, const std::string& key) {
  const std::size_t found = text.find("\"" + key + "\":");
  if (found == std::string_view::npos) return {};
  std::size_t at = found + key.size() + 3;
  while (at < text.size() && text[at] == ' ') ++at;
  if (at < text.size() && text[at] == '"') return std::string(text.substr(at + 1, text.find('"', at + 1) - at - 1));
  return std::string(text.substr(at, text.find_first_of(",}", at) - at));
}

inline geometry::Point grid_point(double x, double y) {
  return {units::Length::of_steps(std::llround(x * 320000)), units::Length::of_steps(std::llround(y * 320000))};
}

// Points at the innermost brackets make rings; `rings_deep` brackets up they make one part.
inline std::vector<geometry::Drawn> coordinates(std::string_view text, int rings_deep) {
  std::vector<geometry::Drawn> parts;
  int depth = 0;
  std::vector<double> numbers;
  for (std::size_t at = 0; at < text.size(); ++at) {
    const char c = text[at];
    if (c == '[') {
      ++depth;
      if (depth == std::max(1, rings_deep - 1)) parts.emplace_back();
      if (depth == rings_deep) parts.back().emplace_back();
      numbers.clear();
    } else if (c == ']') {
      if (depth == rings_deep + 1) {
        parts.back().back().push_back({grid_point(numbers.at(0), numbers.at(1)), 0, {}});
      }
      if (--depth == 0) break;
    } else if (c == '-' || std::isdigit(static_cast<unsigned char>(c)) != 0) {
      char* end = nullptr;
      numbers.push_back(std::strtod(text.data() + at, &end));
      at = static_cast<std::size_t>(end - text.data()) - 1;
    }
  }
  return parts;
}

inline std::vector<Feature> features(const std::string& path) {
  const std::string text = text_of(path);
  std::vector<Feature> all;
  const std::string_view start = "{\"type\":\"Feature\",";
  for (std::size_t at = text.find(start); at != std::string::npos;) {
    const std::size_t next = text.find(start, at + 1);
    const std::string_view one = std::string_view(text).substr(at, next - at);
    const std::size_t geometry = one.find("\"geometry\":");
    Feature made{value(one.substr(0, geometry), "id"),
                 value(one, "layer"),
                 value(one.substr(geometry + 11), "type"),
                 std::string(one.substr(0, geometry)),
                 {}};
    const bool line = made.type == "LineString";
    const int rings_deep = line ? 1 : made.type == "MultiPolygon" ? 3 : 2;
    made.parts = coordinates(one.substr(one.find("\"coordinates\":") + 14), rings_deep);
    std::int32_t number = 0;
    for (geometry::Drawn& part : made.parts) {
      for (geometry::Ring& ring : part) {
        if (!line && ring.size() > 1 && ring.front().from == ring.back().from) ring.pop_back();
        for (geometry::Edge& edge : ring) edge.origin = {all.size() + 1, number++};
      }
    }
    all.push_back(std::move(made));
    at = next;
  }
  return all;
}

// A CSV without quoted commas, each row by column name.
inline std::vector<std::map<std::string, std::string>> rows(const std::string& path) {
  const auto cells = [](std::string line) {
    if (!line.empty() && line.back() == '\r') line.pop_back();
    std::vector<std::string> found;
    std::stringstream stream(line + ",");
    for (std::string cell; std::getline(stream, cell, ',');) found.push_back(cell);
    return found;
  };
  std::ifstream stream(path);
  std::string line;
  std::getline(stream, line);
  const std::vector<std::string> names = cells(line);
  std::vector<std::map<std::string, std::string>> all;
  while (std::getline(stream, line)) {
    const std::vector<std::string> found = cells(line);
    std::map<std::string, std::string>& row = all.emplace_back();
    for (std::size_t i = 0; i < names.size() && i < found.size(); ++i) row[names[i]] = found[i];
  }
  return all;
}

}  // namespace read_outlines
