// Small DXF drawings written as text, pair by pair.
#pragma once

#include <string>
#include <utility>
#include <vector>

namespace dxf {

using Pairs = std::vector<std::pair<int, std::string>>;

inline std::string text(const Pairs& pairs) {
  std::string made;
  for (const auto& [code, value] : pairs) made += std::to_string(code) + "\n" + value + "\n";
  return made;
}
inline std::string number(double value) {
  std::string made = std::to_string(value);
  return made;
}

inline std::string line(const std::string& layer, double x1, double y1, double x2, double y2) {
  return text({{0, "LINE"}, {8, layer}, {10, number(x1)}, {20, number(y1)}, {11, number(x2)}, {21, number(y2)}});
}
inline std::string arc(const std::string& layer, double x, double y, double radius, double from, double to) {
  return text({{0, "ARC"},
               {8, layer},
               {10, number(x)},
               {20, number(y)},
               {40, number(radius)},
               {50, number(from)},
               {51, number(to)}});
}
inline std::string circle(const std::string& layer, double x, double y, double radius) {
  return text({{0, "CIRCLE"}, {8, layer}, {10, number(x)}, {20, number(y)}, {40, number(radius)}});
}
inline std::string point(const std::string& layer, double x, double y, double z) {
  return text({{0, "POINT"}, {8, layer}, {10, number(x)}, {20, number(y)}, {30, number(z)}});
}

struct Corner {
  double x, y, bulge = 0;
};

// As drawings of 2000 and later write it, with handles and the words between.
inline std::string lwpolyline(const std::string& layer, const std::vector<Corner>& corners, bool closed,
                              const Pairs& more = {}) {
  std::string made = text({{0, "LWPOLYLINE"},
                           {5, "2F"},
                           {100, "AcDbEntity"},
                           {8, layer},
                           {100, "AcDbPolyline"},
                           {90, std::to_string(corners.size())},
                           {70, closed ? "1" : "0"},
                           {43, "0.0"}});
  for (const Corner& corner : corners) {
    made += text({{10, number(corner.x)}, {20, number(corner.y)}});
    if (corner.bulge != 0) made += text({{42, number(corner.bulge)}});
  }
  return made + text(more);
}

// As drawings of R12 write it: codes in three places, lines ended by CR LF.
inline std::string polyline(const std::string& layer, const std::vector<Corner>& corners, bool closed) {
  std::string made =
      text({{0, "POLYLINE"}, {8, layer}, {66, "1"}, {10, "0.0"}, {20, "0.0"}, {30, "0.0"}, {70, closed ? "1" : "0"}});
  for (const Corner& corner : corners)
    made += text({{0, "VERTEX"},
                  {8, layer},
                  {10, number(corner.x)},
                  {20, number(corner.y)},
                  {30, "0.0"},
                  {42, number(corner.bulge)}});
  made += text({{0, "SEQEND"}, {8, layer}});
  std::string padded;
  bool code = true;
  for (std::size_t at = 0; at < made.size(); code = !code) {
    const std::size_t end = made.find('\n', at);
    const std::string one = made.substr(at, end - at);
    padded += (code ? std::string(3 - std::min<std::size_t>(3, one.size()), ' ') : "") + one + "\r\n";
    at = end + 1;
  }
  return padded;
}

// A whole drawing; `unit` is $INSUNITS, below 0: no header, as R12 has none of that.
inline std::string drawing(const std::string& entities, int unit = 6) {
  std::string made;
  if (unit >= 0)
    made = text({{0, "SECTION"},
                 {2, "HEADER"},
                 {9, "$ACADVER"},
                 {1, "AC1015"},
                 {9, "$INSUNITS"},
                 {70, std::to_string(unit)},
                 {0, "ENDSEC"}});
  return made + text({{0, "SECTION"}, {2, "ENTITIES"}}) + entities + text({{0, "ENDSEC"}, {0, "EOF"}});
}

}  // namespace dxf
