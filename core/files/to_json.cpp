#include "files/to_json.h"

namespace files {

Value to_json(geometry::Point point) {
  Value value = list_value();
  add(value, to_json(point.x));
  add(value, to_json(point.y));
  return value;
}

static Value to_json(const geometry::Edge& edge) {
  Value value = to_json(edge.from);
  if (edge.bulge != 0) add(value, number_value(edge.bulge));
  return value;
}

Value to_json(const catalogue::CellSide& side) {
  if (side.of == catalogue::CellSide::Of::fixed) return to_json(side.fixed);
  const std::string letter = side.of == catalogue::CellSide::Of::module_length ? "L" : "W";
  return text_value(side.parts == 1 ? letter : letter + "/" + std::to_string(side.parts));
}

static Value drawn(const char* name, Value points) {
  Value value = object_value();
  add(value, name, std::move(points));
  return value;
}

Value to_json(const plan::DrawnRing& ring) {
  if (!ring.through.empty()) return drawn("through", to_json(ring.through));
  Value points = list_value();
  for (const geometry::Edge& edge : ring.edges) add(points, to_json(edge));
  return drawn("points", std::move(points));
}

Value to_json(const plan::DrawnLine& line) {
  if (!line.through.empty()) return drawn("through", to_json(line.through));
  Value points = list_value();
  for (const geometry::Edge& edge : line.edges) add(points, to_json(edge));
  add(points, to_json(line.end));
  return drawn("points", std::move(points));
}

Value to_json(const std::map<std::string, std::string>& words) {
  Value value = object_value();
  for (const auto& [name, word] : words) add(value, name, text_value(word));
  return value;
}

}  // namespace files
