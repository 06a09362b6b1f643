#include <filesystem>
#include <utility>

#include "files/files.h"
#include "files/laid_out.h"

namespace files {
namespace {

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
  const LayerKind* kind = kind_of(layers, layer);
  if (kind == nullptr || !drawn) {
    const std::string name = layer.empty() ? "(no layer)" : layer;
    ++not_mapped[drawn ? name : name + " (no geometry)"];
    return true;
  }
  Drawing drawing{id_of(feature, layer, number), text_of(property(feature, "name")), *kind, {}, feature.spot};
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
  return lay_out(drawings, unit, "geojson", into.job, reading);
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
