#include "files/laid_out.h"

#include <cmath>
#include <unordered_set>

#include "files/metres_from_degrees.h"
#include "units/number.h"

namespace files {
namespace {

constexpr double reach_m = 5000;  // geometry::reach_of_plan

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

bool within_range(const Position& position, double unit, const std::string& form, Reading& reading) {
  if (unit != 0) {
    if (std::abs(position.x) * unit <= 1e9 && std::abs(position.y) * unit <= 1e9) return true;
    return reading.refuse(position.spot, form + "-range",
                          "this position is more than 1,000,000 km from the file's origin", "look at its unit");
  }
  if (std::abs(position.x) <= 180 && std::abs(position.y) <= 90) return true;
  return reading.refuse(position.spot, form + "-degrees", "these are no longitude and latitude",
                        "name the unit with --units or the member \"units\" if they are plain coordinates");
}

bool within_reach(const Frame& about_first, const Drawing& first, const Drawing& drawing, const Position& position,
                  const std::string& form, Reading& reading) {
  const double distance = about_first.from_origin(position);
  if (distance <= reach_m) return true;
  reading.refuse(position.spot, form + "-far",
                 in_quotes(drawing.id) + " lies " + units::show_number(distance / 1000, 1) + " km from " +
                     in_quotes(first.id) + ", and a job reaches no further than 5 km from its first feature",
                 "make it another job: split the file, or leave its layer out");
  reading.fault->place.element = drawing.id;
  return false;
}

// The origin is the first position of what is imported: always for degrees; of plain coordinates only where the file's
// own origin is too far away for a job.
bool find_frame(const std::vector<Drawing>& drawings, double unit, const std::string& form, Frame& into,
                plan::Datum& datum, Reading& reading) {
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
    return within_range(position, unit, form, reading) &&
           within_reach(into, *first_drawing, drawing, position, form, reading);
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

bool place(const Part& part, const Frame& frame, const std::string& form, Placed& into, Reading& reading) {
  for (const auto& ring : part.rings) {
    auto& points = into.rings.emplace_back();
    auto& bulges = into.bulges.emplace_back();
    points.reserve(ring.size());
    bulges.reserve(ring.size());
    for (const Position& position : ring) {
      const problem::Xy at = frame.metres(position);
      points.push_back({length_of(at.x), length_of(at.y)});
      bulges.push_back(position.bulge);
    }
  }
  if (part.drawn != DrawnAs::point || !part.rings.front().front().z) return true;
  const double height = *part.rings.front().front().z * (frame.unit == 0 ? 1 : frame.unit);
  if (std::abs(height) > 1e5) {
    return reading.refuse(part.rings.front().front().spot, form + "-height", "this height is more than 100 km",
                          "look at its unit");
  }
  into.height = length_of(height);
  return true;
}

bool add_elements(const std::vector<Drawing>& drawings, const Frame& frame, const std::string& form, plan::Job& job,
                  Reading& reading) {
  std::unordered_set<std::string> ids;
  for (const Drawing& drawing : drawings) {
    for (std::size_t i = 0; i < drawing.parts.size(); ++i) {
      Placed placed;
      if (!place(drawing.parts[i], frame, form, placed, reading)) return false;
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

}  // namespace

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

const LayerKind* kind_of(const Layers& layers, const std::string& layer) {
  auto kind = layers.find(layer);
  if (kind == layers.end()) kind = layers.find("*");
  return kind == layers.end() ? nullptr : &kind->second;
}

bool lay_out(const std::vector<Drawing>& drawings, double unit, const std::string& form, plan::Job& job,
             Reading& reading) {
  Frame frame;
  return find_frame(drawings, unit, form, frame, job.datum, reading) &&
         add_elements(drawings, frame, form, job, reading);
}

}  // namespace files
