#include "files/dxf_shapes.h"

#include <dxflib/dl_creationadapter.h>
#include <dxflib/dl_dxf.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <locale>
#include <numbers>
#include <sstream>

#include "files/dxf_curves.h"
#include "units/number.h"

namespace files {
namespace {

using Positions = std::vector<Position>;

std::unexpected<problem::Problem> refuse(const std::string& file, int line, std::string code, std::string text,
                                         std::string mend) {
  return problem::fault(std::move(code), std::move(text), std::move(mend), place_in(file, {line, 1}));
}

// What the library makes of one entity.
class Taken : public DL_CreationAdapter {
 public:
  Positions points;
  bool closed = false;

  void addPoint(const DL_PointData& data) override { points.push_back(at(data.x, data.y, data.z)); }
  void addLine(const DL_LineData& data) override {
    points = {at(data.x1, data.y1, data.z1), at(data.x2, data.y2, data.z2)};
  }
  void addCircle(const DL_CircleData& data) override { arc(data.cx, data.cy, data.radius, 0, 360); }
  void addArc(const DL_ArcData& data) override {
    double sweep = std::fmod(data.angle2 - data.angle1, 360.0);
    if (sweep <= 0) sweep += 360;
    arc(data.cx, data.cy, data.radius, data.angle1, sweep);
  }
  void addPolyline(const DL_PolylineData& data) override { closed = (data.flags & 1) != 0; }
  void addVertex(const DL_VertexData& data) override {
    points.push_back(at(data.x, data.y, data.z));
    points.back().bulge = data.bulge;
  }

 private:
  static Position at(double x, double y, double z) { return {.x = x, .y = y, .z = z, .spot = {}, .bulge = 0}; }

  // Counter-clockwise; in two edges past a half circle, so that no bulge grows beyond 1.
  void arc(double x, double y, double radius, double from, double sweep) {
    const int edges = sweep > 180 ? 2 : 1;
    for (int i = 0; i <= edges; ++i) {
      const double turn = (from + sweep * i / edges) * std::numbers::pi / 180;
      points.push_back(at(x + radius * std::cos(turn), y + radius * std::sin(turn), 0));
      points.back().bulge = std::tan(sweep / edges * std::numbers::pi / 720);
    }
    if (sweep == 360) points.back() = points.front();
    points.back().bulge = 0;
  }
};

// The library reads numbers by the program's locale: with one that writes decimals with a comma 1.5 would be 1.
class PlainNumbers {
 public:
  PlainNumbers() {
    if (std::use_facet<std::numpunct<char>>(std::locale()).decimal_point() == '.') return;
    before_ = std::locale::global(std::locale::classic());
    changed_ = true;
  }
  ~PlainNumbers() {
    if (changed_) std::locale::global(before_);
  }
  PlainNumbers(const PlainNumbers&) = delete;
  PlainNumbers& operator=(const PlainNumbers&) = delete;

 private:
  std::locale before_;
  bool changed_ = false;
};

void write_entity(const DxfEntity& entity, std::string& into) {
  into += "0\n" + entity.type + "\n8\n0\n";
  if (entity.type == "LWPOLYLINE")  // the library trusts this count more than what follows
    into += "90\n" + std::to_string(std::ranges::count(entity.numbers, 10, &DxfNumber::code)) + "\n";
  for (const DxfNumber& number : entity.numbers) {
    const bool whole = number.code == 70 || number.code == 67;
    into += std::to_string(number.code) + "\n";
    into += whole ? std::to_string(static_cast<int>(std::clamp(number.value, 0.0, 1e6)))
                  : units::write_number(number.value);
    into += "\n";
  }
}

// A vertex that only steers a fitted curve and is no corner of it.
bool steers(const DxfEntity& entity) {
  return entity.type == "VERTEX" && (static_cast<int>(std::clamp(entity.number_or(70, 0), 0.0, 1e6)) & 16) != 0;
}

using problem::Result;

}  // namespace

class DxfShapeReader::Own {
 public:
  Own(std::string file, double unit) : file_(std::move(file)), within_(curve_within_m / unit) {}

  Result<std::optional<DxfShape>> read(DxfEntities entities, std::string& why) {
    const DxfEntity& first = entities.front();
    why = why_not(first);
    if (!why.empty()) return std::nullopt;
    if (first.type == "ELLIPSE" || first.type == "SPLINE") return curve(first, why);
    if (auto whole = complete(entities); !whole) return std::unexpected(whole.error());
    Taken taken;
    if (auto done = take(entities, taken); !done) return std::unexpected(done.error());
    return made(first, taken, why);
  }

 private:
  // Why an entity is not drawn here; empty where it is.
  static std::string why_not(const DxfEntity& entity) {
    if (entity.find(67) != nullptr && entity.number_or(67, 0) != 0) return entity.type + ", on the printed page";
    static constexpr std::array drawn{"LINE", "ARC", "CIRCLE", "ELLIPSE", "SPLINE", "LWPOLYLINE", "POLYLINE", "POINT"};
    if (std::ranges::find(drawn, entity.type) == drawn.end()) return entity.type;
    const int flags = static_cast<int>(std::clamp(entity.number_or(70, 0), 0.0, 1e6));
    if (entity.type == "POLYLINE" && (flags & (16 | 64)) != 0) return "POLYLINE, a mesh";
    const double x = entity.number_or(210, 0), y = entity.number_or(220, 0);
    if (std::abs(x) > 1e-9 || std::abs(y) > 1e-9) return entity.type + ", turned out of the plan";
    return "";
  }

  // Near in metres, and near for its own size: a block may be placed larger than it was drawn.
  double near_enough(const DxfEntity& entity) const {
    double low = 0, high = 0;
    bool first = true;
    for (const DxfNumber& number : entity.numbers) {
      if (number.code != 10 && number.code != 20) continue;
      low = first ? number.value : std::min(low, number.value);
      high = first ? number.value : std::max(high, number.value);
      first = false;
    }
    const double size = entity.type == "ELLIPSE" ? std::hypot(entity.number_or(11, 0), entity.number_or(21, 0))
                                                 : std::max(high - low, 0.0);
    return std::min(within_, size * 1e-5);
  }

  Result<std::optional<DxfShape>> curve(const DxfEntity& entity, std::string& why) const {
    const double within = near_enough(entity);
    auto line = entity.type == "ELLIPSE" ? ellipse_of(entity, within) : spline_of(entity, within);
    if (!line) {
      why = entity.type + ", whose numbers make no curve";
      return std::nullopt;
    }
    Taken taken;
    taken.points = std::move(*line);
    return made(entity, taken, why);
  }

  Result<void> needs(const DxfEntity& entity, std::initializer_list<int> codes) const {
    for (const int code : codes) {
      const auto count = std::ranges::count(entity.numbers, code, &DxfNumber::code);
      if (count > 0 && (entity.type == "LWPOLYLINE" || count == 1)) continue;
      return refuse(file_, entity.line, "dxf-missing",
                    "this " + entity.type +
                        (count == 0 ? " lacks its number of code " : " has more than one number of code ") +
                        std::to_string(code),
                    "take a text DXF as its program wrote it");
    }
    return {};
  }

  Result<void> complete(DxfEntities entities) const {
    const DxfEntity& first = entities.front();
    if (first.type == "LINE") return needs(first, {10, 20, 11, 21});
    if (first.type == "ARC") return needs(first, {10, 20, 40, 50, 51});
    if (first.type == "CIRCLE") return needs(first, {10, 20, 40});
    if (first.type == "POINT") return needs(first, {10, 20});
    for (const DxfEntity& vertex : entities.subspan(1))
      if (auto whole = needs(vertex, {10, 20}); !whole) return whole;
    if (first.type == "POLYLINE") return {};
    int expected = 10;  // x and y take turns
    for (const DxfNumber& number : first.numbers) {
      if (number.code != 10 && number.code != 20) continue;
      if (number.code != expected)
        return refuse(file_, number.line, "dxf-missing", "a corner of this LWPOLYLINE lacks one of its two numbers",
                      "take a text DXF as its program wrote it");
      expected = 30 - expected;
    }
    if (expected == 20)
      return refuse(file_, first.line, "dxf-missing", "the last corner of this LWPOLYLINE lacks its y",
                    "take a text DXF as its program wrote it");
    return {};
  }

  static std::size_t points_in(DxfEntities entities) {
    const DxfEntity& first = entities.front();
    if (first.type == "LWPOLYLINE")
      return static_cast<std::size_t>(std::ranges::count(first.numbers, 10, &DxfNumber::code));
    return static_cast<std::size_t>(
        std::ranges::count_if(entities.subspan(1), [](const auto& one) { return !steers(one); }));
  }

  Result<void> take(DxfEntities entities, Taken& into) {
    std::string text;
    for (const DxfEntity& entity : entities)
      if (!steers(entity)) write_entity(entity, text);
    text += entities.front().type == "POLYLINE" ? "0\nSEQEND\n0\nEOF\n" : "0\nEOF\n";
    std::istringstream stream(text);
    library_.in(stream, &into);
    const bool poly = entities.front().type.ends_with("POLYLINE");
    if (poly ? into.points.size() == points_in(entities) : !into.points.empty()) return {};
    return refuse(file_, entities.front().line, "dxf-reader", "this " + entities.front().type + " can't be read",
                  "take it out of the drawing, or draw it anew");
  }

  static bool same_place(const Position& a, const Position& b) { return a.x == b.x && a.y == b.y; }

  static Result<std::optional<DxfShape>> made(const DxfEntity& entity, Taken& taken, std::string& why) {
    Positions& points = taken.points;
    // Of the others the numbers are those of the plan itself, whichever side they are seen from.
    const bool own_plane = entity.type == "ARC" || entity.type == "CIRCLE" || entity.type.ends_with("POLYLINE");
    for (Position& position : points) {
      position.spot = {entity.line, 1};
      if (own_plane && entity.number_or(230, 1) < 0) {  // seen from below: x runs the other way
        position.x = -position.x;
        position.bulge = -position.bulge;
      }
    }
    DxfShape shape{entity.layer, entity.number, {}, 0, entity.id, entity.ring};
    if (entity.type == "POINT") {
      if (entity.find(30) == nullptr) points.front().z.reset();
      shape.part = {DrawnAs::point, {std::move(points)}};
      return shape;
    }
    if (taken.closed && !points.empty() && !same_place(points.front(), points.back())) points.push_back(points.front());
    // Of two corners in one place the later says how it goes on.
    Positions kept;
    for (const Position& position : points) {
      if (!kept.empty() && same_place(kept.back(), position)) kept.pop_back();
      kept.push_back(position);
    }
    if (kept.size() < 2) {
      why = entity.type + ", without length";
      return std::nullopt;
    }
    const bool closed = same_place(kept.front(), kept.back());
    kept.back().bulge = 0;
    shape.part = {closed ? DrawnAs::polygon : DrawnAs::line, {std::move(kept)}};
    return shape;
  }

  std::string file_;
  double within_;
  PlainNumbers plain_{};
  DL_Dxf library_{};
};

DxfShapeReader::DxfShapeReader(std::string file, double unit) : own_(std::make_unique<Own>(std::move(file), unit)) {}
DxfShapeReader::~DxfShapeReader() = default;

problem::Result<std::optional<DxfShape>> DxfShapeReader::read(DxfEntities entities, std::string& why) {
  return own_->read(entities, why);
}

}  // namespace files
