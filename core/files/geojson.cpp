#include <algorithm>
#include <cmath>
#include <filesystem>
#include <unordered_set>
#include <utility>

#include "files/files.h"
#include "files/geojson_shapes.h"
#include "files/metres_from_degrees.h"
#include "units/number.h"

namespace files {
namespace {

constexpr double reach_m = 5000;  // geometry::reach_of_plan

using Layers = std::map<std::string, LayerKind>;

// A feature that is imported, before its coordinates are laid out.
struct Drawing {
  std::string id;
  std::string name;
  LayerKind kind;
  std::vector<Part> parts;
  Spot spot;
};

// Metres of one unit; 0 for longitude and latitude.
std::optional<double> metres_of(std::string_view unit) {
  if (unit.empty()) return 0;
  if (unit == "m") return 1;
  if (unit == "mm") return 0.001;
  if (unit == "ft") return units::metres_per_foot;
  if (unit == "us-ft") return 1200.0 / 3937;  // the US survey foot (Mendenhall order, 1893)
  if (unit == "in") return units::metres_per_inch;
  return std::nullopt;
}

std::unexpected<problem::Problem> unit_fault(std::string_view unit, problem::Place place) {
  return problem::fault("geojson-units", in_quotes(unit) + " is no unit of coordinates", "use m, mm, ft, us-ft or in",
                        std::move(place));
}

// A text, or a number as it is written; nothing for anything else.
std::string text_of(const Value* value) {
  return value != nullptr && (value->sort == Sort::string || value->sort == Sort::number) ? value->text : "";
}

const Value* property(const Value& feature, std::string_view name) {
  const Value* properties = feature.find("properties");
  return properties == nullptr || properties->sort != Sort::object ? nullptr : properties->find(name);
}

std::string layer_of(const Value& feature) {
  const std::string layer = text_of(property(feature, "layer"));
  return layer.empty() ? text_of(property(feature, "kind")) : layer;
}

std::string id_of(const Value& feature, const std::string& layer, std::size_t number) {
  std::string id = text_of(feature.find("id"));
  if (id.empty()) id = text_of(property(feature, "id"));
  return id.empty() ? (layer.empty() ? "feature" : layer) + "-" + std::to_string(number) : id;
}

bool read_feature(const Value& feature, std::size_t number, const Layers& layers, std::vector<Drawing>& into,
                  std::map<std::string, int>& not_mapped, Reading& reading) {
  if (!expect(feature, Sort::object, reading)) return false;
  if (text_of(feature.find("type")) != "Feature") {
    return reading.refuse(feature.spot, "geojson-type", "this is no Feature", "write \"type\": \"Feature\"");
  }
  const std::string layer = layer_of(feature);
  const Value* geometry = feature.find("geometry");
  const bool drawn = geometry != nullptr && geometry->sort != Sort::null;
  auto kind = layers.find(layer);
  if (kind == layers.end()) kind = layers.find("*");
  if (kind == layers.end() || !drawn) {
    const std::string name = layer.empty() ? "(no layer)" : layer;
    ++not_mapped[drawn ? name : name + " (no geometry)"];
    return true;
  }
  Drawing drawing{id_of(feature, layer, number), text_of(property(feature, "name")), kind->second, {}, feature.spot};
  if (!check_id(drawing.id, feature.spot, reading) || !read_parts(*geometry, drawing.parts, reading)) return false;
  drawing.parts = parts_for(drawing.kind, std::move(drawing.parts));
  for (const Part& part : drawing.parts) {
    if (!fits(drawing.kind, part, feature.spot, reading)) {
      reading.fault->place.element = drawing.id;
      return false;
    }
  }
  into.push_back(std::move(drawing));
  return true;
}

template <class Work>
bool each_position(const std::vector<Drawing>& drawings, const Work& work) {
  for (const Drawing& drawing : drawings)
    for (const Part& part : drawing.parts)
      for (const auto& ring : part.rings)
        for (const Position& position : ring)
          if (!work(drawing, position)) return false;
  return true;
}

// From the file's coordinates to metres from the job's origin.
struct Frame {
  double unit = 1;  // metres; 0 is degrees
  Position origin;
  problem::Xy metres(const Position& position) const {
    if (unit == 0) return metres_from_degrees({origin.x, origin.y}, {position.x, position.y});
    return {(position.x - origin.x) * unit, (position.y - origin.y) * unit};
  }
  double from_origin(const Position& position) const {
    if (unit == 0) return metres_between({origin.x, origin.y}, {position.x, position.y});
    return std::hypot((position.x - origin.x) * unit, (position.y - origin.y) * unit);
  }
};

bool within_range(const Position& position, double unit, Reading& reading) {
  if (unit != 0) {
    if (std::abs(position.x) * unit <= 1e9 && std::abs(position.y) * unit <= 1e9) return true;
    return reading.refuse(position.spot, "geojson-range",
                          "this position is more than 1,000,000 km from the file's origin", "look at its unit");
  }
  if (std::abs(position.x) <= 180 && std::abs(position.y) <= 90) return true;
  return reading.refuse(position.spot, "geojson-degrees", "these are no longitude and latitude",
                        "name the unit with --units or the member \"units\" if they are plain coordinates");
}

bool within_reach(const Frame& about_first, const Drawing& first, const Drawing& drawing, const Position& position,
                  Reading& reading) {
  const double distance = about_first.from_origin(position);
  if (distance <= reach_m) return true;
  reading.refuse(position.spot, "geojson-far",
                 in_quotes(drawing.id) + " lies " + units::show_number(distance / 1000, 1) + " km from " +
                     in_quotes(first.id) + ", and a job reaches no further than 5 km from its first feature",
                 "make it another job: split the file, or leave its layer out");
  reading.fault->place.element = drawing.id;
  return false;
}

// The origin is the first position of what is imported: always for degrees; of plain coordinates only where the file's
// own origin is too far away for a job.
bool find_frame(const std::vector<Drawing>& drawings, double unit, Frame& into, plan::Datum& datum, Reading& reading) {
  const Drawing* first_drawing = nullptr;
  Position first;
  each_position(drawings, [&](const Drawing& drawing, const Position& position) {
    first_drawing = &drawing;
    first = position;
    return false;
  });
  if (first_drawing == nullptr) return true;
  into = {.unit = unit, .origin = first};
  bool near_origin = true;
  const bool good = each_position(drawings, [&](const Drawing& drawing, const Position& position) {
    near_origin = near_origin && std::abs(position.x * unit) <= reach_m && std::abs(position.y * unit) <= reach_m;
    return within_range(position, unit, reading) && within_reach(into, *first_drawing, drawing, position, reading);
  });
  if (!good) return false;
  if (unit == 0) {
    datum = {.what = "wgs84", .longitude = first.x, .latitude = first.y, .easting_m = 0, .northing_m = 0};
  } else if (near_origin) {
    into.origin = {};
    datum.what = "local";
  } else {
    datum = {.what = "plane", .longitude = 0, .latitude = 0, .easting_m = first.x * unit, .northing_m = first.y * unit};
  }
  return true;
}

units::Length length_of(double metres) { return units::Length::nearest(units::Metres(metres)); }

bool place(const Part& part, const Frame& frame, Placed& into, Reading& reading) {
  for (const auto& ring : part.rings) {
    auto& points = into.rings.emplace_back();
    points.reserve(ring.size());
    for (const Position& position : ring) {
      const problem::Xy at = frame.metres(position);
      points.push_back({length_of(at.x), length_of(at.y)});
    }
  }
  if (part.drawn != DrawnAs::point || !part.rings.front().front().z) return true;
  const double height = *part.rings.front().front().z * (frame.unit == 0 ? 1 : frame.unit);
  if (std::abs(height) > 1e5) {
    return reading.refuse(part.rings.front().front().spot, "geojson-height", "this height is more than 100 km",
                          "look at its unit");
  }
  into.height = length_of(height);
  return true;
}

bool add_elements(const std::vector<Drawing>& drawings, const Frame& frame, plan::Job& job, Reading& reading) {
  std::unordered_set<std::string> ids;
  for (const Drawing& drawing : drawings) {
    for (std::size_t i = 0; i < drawing.parts.size(); ++i) {
      Placed placed;
      if (!place(drawing.parts[i], frame, placed, reading)) return false;
      auto element = std::make_shared<plan::Element>();
      element->id = i == 0 ? drawing.id : drawing.id + "#" + std::to_string(i + 1);
      element->name = drawing.name;
      element->kind = make_kind(drawing.kind, drawing.parts[i].drawn, placed);
      if (!ids.insert(element->id).second) return doubled_id({.spot = drawing.spot}, element->id, reading);
      job.elements.push_back(std::move(element));
    }
  }
  return true;
}

problem::Result<Layers> known_layers(const std::map<std::string, std::string>& layers) {
  Layers known;
  for (const auto& [layer, text] : layers) {
    const auto kind = layer_kind(text);
    if (!kind) {
      return problem::fault("layer-kind", "the layer " + in_quotes(layer) + " can't become " + in_quotes(text),
                            "use one of: " + layer_kinds());
    }
    known.emplace(layer, *kind);
  }
  return known;
}

// A file that says another reference system than WGS 84 and no unit would be laid out wrongly without a word.
bool check_system(const Value& tree, Reading& reading) {
  const Value* crs = tree.find("crs");
  const Value* properties = crs == nullptr || crs->sort != Sort::object ? nullptr : crs->find("properties");
  const std::string name = properties == nullptr ? "" : text_of(properties->find("name"));
  if (name.empty() || name.contains("CRS84") || name.contains("4326")) return true;
  return reading.refuse(crs->spot, "geojson-crs", "the coordinates are in the system " + in_quotes(name),
                        "name their unit with --units if it is a plane one, or convert the file to WGS 84");
}

// The features of the file; a single Feature is a file of one.
bool features_of(const Value& tree, std::vector<const Value*>& into, Reading& reading) {
  if (!expect(tree, Sort::object, reading)) return false;
  const std::string type = text_of(tree.find("type"));
  if (type == "Feature") {
    into.push_back(&tree);
    return true;
  }
  if (type != "FeatureCollection") {
    return reading.refuse(tree.spot, "geojson-type", "this is neither a FeatureCollection nor a Feature",
                          "take a GeoJSON file of features");
  }
  const Value* features = tree.find("features");
  if (features == nullptr) return missing_field(tree, "features", reading);
  if (!expect(*features, Sort::list, reading)) return false;
  for (const Value& feature : features->children) into.push_back(&feature);
  return true;
}

bool import(const Value& tree, double unit, const Layers& layers, Import& into, Reading& reading) {
  std::vector<const Value*> features;
  if (!features_of(tree, features, reading) || (unit == 0 && !check_system(tree, reading))) return false;
  std::vector<Drawing> drawings;
  for (std::size_t i = 0; i < features.size(); ++i) {
    if (!read_feature(*features[i], i + 1, layers, drawings, into.not_mapped, reading)) return false;
  }
  Frame frame;
  return find_frame(drawings, unit, frame, into.job.datum, reading) && add_elements(drawings, frame, into.job, reading);
}

void head(const Value& tree, std::string_view unit, const std::string& file, plan::Heading& into) {
  into.name = text_of(tree.find("name"));
  if (into.name.empty()) into.name = std::filesystem::path(file).stem().string();
  into.notes = text_of(tree.find("attribution"));
  if (unit == "m" || unit == "mm") into.units = units::System::metric;
}

}  // namespace

problem::Result<Import> import_geojson(std::string_view text, const std::string& file, std::string_view units,
                                       const std::map<std::string, std::string>& layers) {
  const auto known = known_layers(layers);
  if (!known) return std::unexpected(known.error());
  if (!metres_of(units)) return unit_fault(units, {});
  const auto tree = parse_json(text, file);
  if (!tree) return std::unexpected(tree.error());
  std::string unit(units);
  const Value* member = tree->find("units");
  if (unit.empty() && member != nullptr) {
    unit = text_of(member);
    if (unit.empty() || !metres_of(unit)) return unit_fault(unit, place_in(file, member->spot));
  }
  Reading reading{.file = file, .fault = {}};
  Import made;
  made.job.catalogue = std::make_shared<const catalogue::Catalogue>();
  if (!import(*tree, *metres_of(unit), *known, made, reading)) return std::unexpected(reading.told());
  head(*tree, unit, file, made.job.heading);
  return made;
}

}  // namespace files
