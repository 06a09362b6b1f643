// What the tests of laying share: the starter catalogue's units and patterns, outlines by formula, lattices in one
// line.
#pragma once

#include <gtest/gtest.h>

#include <fstream>
#include <map>
#include <regex>
#include <sstream>
#include <string>
#include <vector>

#include "geometry/validity.h"
#include "takeoff/paving/layout.h"

namespace laying {

using geometry::Edge;
using geometry::Point;
using geometry::Region;
using geometry::Ring;
using geometry::Vec;
using takeoff::paving::Lattice;
using takeoff::paving::Layout;
using units::Length;

inline constexpr double inch = 8128;  // steps
inline constexpr double foot = 12 * inch;
inline constexpr double metre = 320000;
inline constexpr double square_inch = inch * inch;

inline std::string text_of(const std::string& path) {
  std::ifstream file(path, std::ios::binary);
  std::stringstream all;
  all << file.rdbuf();
  EXPECT_FALSE(all.str().empty()) << path;
  return all.str();
}

inline std::string word(const std::string& text, const std::string& key) {
  std::smatch found;
  std::regex_search(text, found, std::regex("\"" + key + "\": *\"?([^\",\\}\\n]*)"));
  return found[1];
}

inline catalogue::CellSide cell_side(const std::string& text) {
  using Of = catalogue::CellSide::Of;
  if (text[0] == 'L' || text[0] == 'W') {
    const int parts = text.size() > 2 ? std::stoi(text.substr(2)) : 1;
    return {text[0] == 'L' ? Of::module_length : Of::module_width, parts, {}};
  }
  return {Of::fixed, 1, Length::inches(std::stoi(text))};  // "3 in"
}

inline catalogue::Pattern pattern(const std::string& id) {
  const std::string text = text_of(HOUSE_ROOT "/resources/patterns/" + id + ".json");
  catalogue::Pattern made;
  made.id = id;
  made.cell_x = cell_side(word(text, "cell_x"));
  made.cell_y = cell_side(word(text, "cell_y"));
  made.direction = units::Angle::degrees(std::stod(word(text, "direction")));
  made.along = std::stoi(word(text, "along"));
  made.across_x = std::stoi(word(text, "across_x"));
  made.across_y = std::stoi(word(text, "across_y"));
  made.herringbone = word(text, "herringbone") == "true";
  const std::string pieces = text.substr(text.find("\"pieces\""));
  const std::regex one("\\{[^\\}]*\\}");
  for (std::sregex_iterator i(pieces.begin(), pieces.end(), one), end; i != end; ++i) {
    const std::string p = i->str();
    made.pieces.push_back({word(p, "size"), std::stoi(word(p, "x")), std::stoi(word(p, "y")), std::stoi(word(p, "w")),
                           std::stoi(word(p, "h"))});
  }
  return made;
}

// Each pattern of the starter catalogue with the units it is meant for.
inline const std::map<std::string, std::map<std::string, std::string>>& meant_units() {
  static const std::map<std::string, std::map<std::string, std::string>> meant{
      {"stack", {{"unit", "slab-16x16-50"}}},
      {"running-half", {{"unit", "unit-6x9-60"}}},
      {"running-third", {{"unit", "unit-4x12-80"}}},
      {"herringbone-90", {{"unit", "unit-4x8-60"}}},
      {"herringbone-45", {{"unit", "unit-4x8-60"}}},
      {"basket-2", {{"unit", "unit-4x8-60"}}},
      {"mixed-three", {{"small", "unit-6x6-60"}, {"middle", "unit-6x9-60"}, {"large", "unit-9x9-60"}}},
      {"mixed-four",
       {{"half", "unit-6x12-60"}, {"small", "slab-12x12-60"}, {"middle", "slab-12x18-60"}, {"large", "slab-18x18-60"}}},
      {"mixed-plank", {{"short", "unit-4x8-80"}, {"middle", "unit-4x12-80"}, {"long", "unit-4x16-80"}}}};
  return meant;
}

inline std::shared_ptr<const catalogue::Item> unit(const std::string& id, double length_mm, double width_mm,
                                                   double joint_mm, const std::string& kind = "paving-unit") {
  catalogue::Item item;
  item.id = id;
  item.kind = kind;
  item.length = Length::nearest(units::Metres(length_mm / 1000));
  item.width = Length::nearest(units::Metres(width_mm / 1000));
  item.joint = Length::nearest(units::Metres(joint_mm / 1000));
  return std::make_shared<const catalogue::Item>(item);
}

// The units of the starter catalogue, read from its file: id, kind and sizes only.
inline const catalogue::Catalogue& starter() {
  static const catalogue::Catalogue made = [] {
    catalogue::Catalogue all;
    std::stringstream lines(text_of(HOUSE_ROOT "/resources/catalogue/items.csv"));
    std::string line;
    std::getline(lines, line);
    while (std::getline(lines, line)) {
      std::vector<std::string> cells{""};
      bool quoted = false;
      for (const char c : line) {
        if (c == '"')
          quoted = !quoted;
        else if (c == ',' && !quoted)
          cells.push_back("");
        else
          cells.back() += c;
      }
      if (cells.size() < 10 || cells[6].empty() || cells[7].empty() || cells[9].empty()) continue;
      all.items[cells[0]] = unit(cells[0], std::stod(cells[6]), std::stod(cells[7]), std::stod(cells[9]), cells[1]);
    }
    for (const auto& [id, units] : meant_units()) all.patterns[id] = pattern(id);
    return all;
  }();
  return made;
}

inline Point at(double x_steps, double y_steps) {
  return {Length::of_steps(std::llround(x_steps)), Length::of_steps(std::llround(y_steps))};
}
inline Point inches(double x, double y) { return at(x * inch, y * inch); }

inline plan::Laying choice(const std::string& pattern_id, Point start = {}, double degrees = 0) {
  plan::Laying made;
  made.pattern = pattern_id;
  made.units = meant_units().at(pattern_id);
  made.start = start;
  made.direction = units::Angle::degrees(degrees);
  return made;
}

inline Lattice lattice_of(const plan::Laying& laying) {
  auto made = takeoff::paving::lattice(starter(), laying);
  if (!made) ADD_FAILURE() << problem::sentence(made.error());
  return *made;
}
inline Lattice lattice_of(const std::string& pattern_id, Point start = {}, double degrees = 0) {
  return lattice_of(choice(pattern_id, start, degrees));
}

// Stack bond of a unit of any size.
inline Lattice stack(double length_mm, double width_mm, double joint_mm, Point start = {}, double degrees = 0) {
  catalogue::Catalogue all;
  all.items["u"] = unit("u", length_mm, width_mm, joint_mm);
  all.patterns["stack"] = pattern("stack");
  auto laying = choice("stack", start, degrees);
  laying.units["unit"] = "u";
  return *takeoff::paving::lattice(all, laying);
}

inline Ring ring(const std::vector<Point>& points) {
  Ring made;
  for (std::size_t i = 0; i < points.size(); ++i) made.push_back({points[i], 0, {1, static_cast<std::int32_t>(i)}});
  return made;
}
inline Ring box(double x0, double y0, double x1, double y1) {  // inches
  return ring({inches(x0, y0), inches(x1, y0), inches(x1, y1), inches(x0, y1)});
}
inline Region region(const std::vector<Ring>& rings) {
  const auto made = geometry::shape(rings);
  if (!made) ADD_FAILURE() << problem::sentence(made.error());
  return made->region;
}

inline std::int64_t count_of(const Layout& layout, const std::string& item, bool cut, bool slivers = false) {
  std::int64_t sum = 0;
  for (std::size_t k = 0; k < layout.lattice.kinds.size(); ++k) {
    if (layout.lattice.kinds[k].item != item) continue;
    if (!slivers) sum += cut ? layout.cut(static_cast<int>(k)) : layout.whole(static_cast<int>(k));
    for (const auto& piece : layout.pieces) sum += slivers && piece.kind == static_cast<int>(k) && piece.sliver ? 1 : 0;
  }
  return sum;
}

}  // namespace laying
