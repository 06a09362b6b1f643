#include "files/drawing_dxf.h"

#include <algorithm>
#include <map>

#include "files/dxf_put.h"

namespace files {

namespace {

constexpr double text_height_m = 0.15;
constexpr const char* tag_layer = "tags";

// Numbers of the standard colours, so that kinds can be told apart before anyone has set up the layers.
int colour_of(const std::string& layer) {
  static const std::map<std::string, int> colours{
      {"pool", 5},     {"building", 8}, {"wall", 30}, {"drain-run", 4}, {"edge-run", 6},   {"steps", 2},
      {"keep-out", 3}, {"removal", 1},  {"level", 3}, {"base-line", 1}, {"protection", 9}, {"dimension", 8}};
  const auto found = colours.find(layer);
  return found == colours.end() ? 7 : found->second;
}

class Maker {
 public:
  explicit Maker(const plan::Job& job) : metric_(job.heading.units == units::System::metric) {
    layer("0");
    layer(tag_layer);
  }

  std::string made(const DrawnThings& drawn) {
    for (const DrawnThing& thing : drawn.things) {
      draw(thing);
      tag(thing);
    }
    put_.end_section();
    std::vector<dxf_frame::Layer> layers;
    for (const std::string& name : layers_) layers.push_back({name, colour_of(name), next_++});
    facts_.metric = metric_;
    facts_.next = next_;
    return dxf_frame::before_entities(facts_, layers) + "0\nSECTION\n2\nENTITIES\n" + put_.made +
           dxf_frame::after_entities();
  }

 private:
  const std::string& layer(const std::string& of) {
    const std::string name = dxf_layer_name(of);
    const auto found = std::ranges::find(layers_, name);
    return found != layers_.end() ? *found : layers_.emplace_back(name);
  }

  // Whole steps to the unit of the drawing, rounded once: a foot has 97,536 steps.
  double in_unit(units::Length length) const {
    constexpr double steps_per_foot = 12.0 * units::Length::steps_per_inch;
    return static_cast<double>(length.steps()) / (metric_ ? units::Length::steps_per_metre : steps_per_foot);
  }
  double from_metres(double metres) const { return metric_ ? metres : metres / units::metres_per_foot; }

  void seen(double x, double y) {
    if (first_) {
      facts_.low_x = facts_.high_x = x;
      facts_.low_y = facts_.high_y = y;
      first_ = false;
    }
    facts_.low_x = std::min(facts_.low_x, x);
    facts_.low_y = std::min(facts_.low_y, y);
    facts_.high_x = std::max(facts_.high_x, x);
    facts_.high_y = std::max(facts_.high_y, y);
  }

  void entity(std::string_view type, const std::string& of, std::string_view marker) {
    put_.object(type, next_++, dxf_frame::model_space, {"AcDbEntity"});
    put_.text(8, layer(of));
    put_.text(100, marker);
  }

  void corner(geometry::Point at, double bulge) {
    const double x = in_unit(at.x), y = in_unit(at.y);
    seen(x, y);
    put_.number(10, x);
    put_.number(20, y);
    if (bulge != 0) put_.number(42, bulge);
  }

  // By which the import knows a shape again; an id that has no room there (255 letters) or no spelling is left out.
  void whose(const DrawnThing& thing, std::size_t ring) {
    const std::string id = "id " + dxf_string(thing.id);
    if (id.size() > 255 || std::ranges::any_of(thing.id, [](char c) { return static_cast<unsigned char>(c) >= 0xF0; }))
      return;
    put_.text(1001, dxf_application);
    put_.text(1000, id);
    put_.whole(1070, static_cast<std::int64_t>(std::min<std::size_t>(ring, 32'767)));
  }

  void polyline(const DrawnThing& thing, std::size_t number) {
    const geometry::Ring& ring = thing.rings[number];
    const bool closed = thing.drawn == DrawnAs::polygon || ring.front().from == thing.end;
    entity("LWPOLYLINE", thing.layer, "AcDbPolyline");
    put_.whole(90, static_cast<std::int64_t>(ring.size() + (closed ? 0 : 1)));
    put_.whole(70, closed ? 1 : 0);
    put_.number(43, 0);
    for (const geometry::Edge& edge : ring) corner(edge.from, edge.bulge);
    if (!closed) corner(thing.end, 0);
    whose(thing, number);
  }

  void draw(const DrawnThing& thing) {
    if (thing.drawn != DrawnAs::point) {
      for (std::size_t i = 0; i < thing.rings.size(); ++i) polyline(thing, i);
      return;
    }
    entity("POINT", thing.layer, "AcDbPoint");
    put_.at(in_unit(thing.end.x), in_unit(thing.end.y), in_unit(thing.height.value_or(units::Length())));
    seen(in_unit(thing.end.x), in_unit(thing.end.y));
    whose(thing, 0);
  }

  void text(const std::string& of, const std::string& said, double x, double y) {
    if (said.empty()) return;
    entity("TEXT", of, "AcDbText");
    put_.at(x, y);
    put_.number(40, from_metres(text_height_m));
    put_.text(1, dxf_string(said));
    put_.whole(72, 1);
    put_.number(11, x);
    put_.number(21, y);
    put_.number(31, 0);
    put_.text(100, "AcDbText");
    put_.whole(73, 2);
  }

  // The tag in the middle of its thing, beside a point; what else it says stands a line below.
  void tag(const DrawnThing& thing) {
    const problem::Xy at = place_of_tag(thing);
    const double line = from_metres(1.8 * text_height_m);
    const double x = from_metres(at.x), y = from_metres(at.y) + (thing.drawn == DrawnAs::point ? line : 0);
    text(tag_layer, thing.id, x, y);
    text(thing.layer, thing.text, x, y - line - (thing.drawn == DrawnAs::point ? line : 0));
  }

  bool metric_;
  bool first_ = true;
  DxfPut put_;
  DxfPut::Handle next_ = dxf_frame::first_free;
  dxf_frame::Facts facts_;
  std::vector<std::string> layers_;
};

}  // namespace

std::string drawing_dxf(const plan::Job& job, const DrawnThings& drawn) { return Maker(job).made(drawn); }

}  // namespace files
