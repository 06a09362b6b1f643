#include "files/geojson_write.h"

#include <algorithm>

#include "files/json_write.h"
#include "geometry/flatten.h"

namespace files {

namespace {

Value position(geometry::Point at) {
  const problem::Xy place = geometry::xy(at);
  Value made = list_value();
  add(made, number_value(place.x));
  add(made, number_value(place.y));
  return made;
}

Value positions(const std::vector<geometry::Point>& points) {
  Value made = list_value();
  for (const geometry::Point& at : points) add(made, position(at));
  return made;
}

Value ring_of(const geometry::Ring& ring, bool outside) {
  const bool left = geometry::signed_area(ring).si() > 0;
  std::vector<geometry::Point> points = geometry::flatten(left == outside ? ring : geometry::reversed(ring));
  points.push_back(points.front());
  return positions(points);
}

Value line_of(const DrawnThing& thing) {
  const geometry::Ring& edges = thing.rings.front();
  std::vector<geometry::Point> points{edges.front().from};
  for (std::size_t i = 0; i < edges.size(); ++i) {
    const geometry::Point to = i + 1 < edges.size() ? edges[i + 1].from : thing.end;
    const auto chords = geometry::flatten(geometry::Curve{edges[i].from, to, edges[i].bulge});
    points.insert(points.end(), chords.begin() + 1, chords.end());
  }
  return positions(points);
}

Value coordinates_of(const DrawnThing& thing) {
  if (thing.drawn == DrawnAs::line) return line_of(thing);
  if (thing.drawn == DrawnAs::point) {
    Value made = position(thing.end);
    if (thing.height) add(made, number_value(thing.height->metres().si()));
    return made;
  }
  Value rings = list_value();
  for (const geometry::Ring& ring : thing.rings) add(rings, ring_of(ring, &ring == thing.rings.data()));
  return rings;
}

Value feature_of(const DrawnThing& thing) {
  static constexpr const char* types[] = {"Point", "LineString", "Polygon"};
  Value geometry = object_value();
  add(geometry, "type", text_value(types[static_cast<std::size_t>(thing.drawn)]));
  add(geometry, "coordinates", coordinates_of(thing));
  Value properties = object_value();
  add(properties, "layer", text_value(thing.layer));
  if (!thing.name.empty()) add(properties, "name", text_value(thing.name));
  if (!thing.text.empty()) add(properties, "text", text_value(thing.text));
  Value feature = object_value();
  add(feature, "type", text_value("Feature"));
  add(feature, "id", text_value(thing.id));
  add(feature, "properties", std::move(properties));
  add(feature, "geometry", std::move(geometry));
  return feature;
}

}  // namespace

std::string write_geojson(const plan::Job& job, const DrawnThings& drawn) {
  Value features = list_value();
  for (const DrawnThing& thing : drawn.things) add(features, feature_of(thing));
  Value made = object_value();
  add(made, "type", text_value("FeatureCollection"));
  add(made, "name", text_value(job.heading.name));
  add(made, "units", text_value("m"));
  add(made, "features", std::move(features));
  return write_json(made);
}

}  // namespace files
