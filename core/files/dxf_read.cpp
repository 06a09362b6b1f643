#include "files/dxf_read.h"

#include <dxflib/dl_creationadapter.h>
#include <dxflib/dl_dxf.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <locale>
#include <numbers>
#include <span>
#include <sstream>

#include "files/dxf_pairs.h"
#include "files/laid_out.h"
#include "units/number.h"

namespace files {
namespace {

using problem::Result;
using Positions = std::vector<Position>;

// The units that a drawing may say ($INSUNITS), and whether they are metric.
struct Unit {
  int number;
  double metres;
  bool metric;
};
constexpr Unit known_units[] = {{1, units::metres_per_inch, false},
                                {2, units::metres_per_foot, false},
                                {4, 0.001, true},
                                {5, 0.01, true},
                                {6, 1, true},
                                {10, 3 * units::metres_per_foot, false},
                                {14, 0.1, true},
                                {21, 1200.0 / 3937, false}};

std::unexpected<problem::Problem> refuse(const std::string& file, int line, std::string code, std::string text,
                                         std::string mend) {
  return problem::fault(std::move(code), std::move(text), std::move(mend), place_in(file, {line, 1}));
}

Result<Unit> unit_of(const DxfText& text, const std::string& file, std::string_view units) {
  if (!units.empty()) {
    if (const auto metres = metres_of(units)) return Unit{0, *metres, units == "m" || units == "mm"};
    return problem::fault("dxf-units", in_quotes(units) + " is no unit of coordinates", "use m, mm, ft, us-ft or in");
  }
  for (const Unit& unit : known_units)
    if (unit.number == text.unit) return unit;
  const std::string mend = "name it with --units m, mm, ft, us-ft or in";
  if (text.unit == 0)
    return refuse(file, std::max(text.unit_line, 1), "dxf-units", "the drawing does not say its unit", mend);
  return refuse(file, text.unit_line, "dxf-units",
                "the drawing says a unit that no job is drawn in ($INSUNITS " + std::to_string(text.unit) + ")", mend);
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

// An entity with the vertices that follow it.
using Entities = std::span<const DxfEntity>;

// A vertex that only steers a fitted curve and is no corner of it.
bool steers(const DxfEntity& entity) {
  return entity.type == "VERTEX" && (static_cast<int>(std::clamp(entity.number_or(70, 0), 0.0, 1e6)) & 16) != 0;
}

class Reader {
 public:
  Reader(const std::string& file, DxfDrawing& into) : file_(file), made_(into) {}

  Result<void> read(Entities entities) {
    const DxfEntity& first = entities.front();
    if (const std::string why = why_not(first); !why.empty()) {
      ++made_.left_out[first.layer + " (" + why + ")"];
      return {};
    }
    if (auto whole = complete(entities); !whole) return whole;
    Taken taken;
    if (auto done = take(entities, taken); !done) return done;
    return add(first, taken);
  }

 private:
  // Why an entity is not drawn here; empty where it is.
  static std::string why_not(const DxfEntity& entity) {
    if (entity.find(67) != nullptr && entity.number_or(67, 0) != 0) return entity.type + ", on the printed page";
    static constexpr std::array drawn{"LINE", "ARC", "CIRCLE", "LWPOLYLINE", "POLYLINE", "POINT"};
    if (std::ranges::find(drawn, entity.type) == drawn.end()) return entity.type;
    const int flags = static_cast<int>(std::clamp(entity.number_or(70, 0), 0.0, 1e6));
    if (entity.type == "POLYLINE" && (flags & (16 | 64)) != 0) return "POLYLINE, a mesh";
    const double x = entity.number_or(210, 0), y = entity.number_or(220, 0);
    if (std::abs(x) > 1e-9 || std::abs(y) > 1e-9) return entity.type + ", turned out of the plan";
    return "";
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

  Result<void> complete(Entities entities) const {
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

  static std::size_t points_in(Entities entities) {
    const DxfEntity& first = entities.front();
    if (first.type == "LWPOLYLINE")
      return static_cast<std::size_t>(std::ranges::count(first.numbers, 10, &DxfNumber::code));
    return static_cast<std::size_t>(
        std::ranges::count_if(entities.subspan(1), [](const auto& one) { return !steers(one); }));
  }

  Result<void> take(Entities entities, Taken& into) {
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

  Result<void> add(const DxfEntity& entity, Taken& taken) {
    Positions& points = taken.points;
    const bool turned_over = entity.number_or(230, 1) < 0 && entity.type != "LINE" && entity.type != "POINT";
    for (Position& position : points) {
      position.spot = {entity.line, 1};
      if (turned_over) {  // seen from below: x runs the other way
        position.x = -position.x;
        position.bulge = -position.bulge;
      }
      if (!(std::abs(position.x) * made_.unit <= 1e9 && std::abs(position.y) * made_.unit <= 1e9))
        return refuse(file_, entity.line, "dxf-range",
                      "this " + entity.type + " lies more than 1,000,000 km from the file's origin",
                      "look at its unit");
    }
    if (entity.type == "POINT") {
      if (entity.find(30) == nullptr) points.front().z.reset();
      made_.shapes.push_back({entity.layer, entity.number, {DrawnAs::point, {std::move(points)}}});
      return {};
    }
    add_line(entity, taken);
    return {};
  }

  void add_line(const DxfEntity& entity, Taken& taken) {
    Positions& points = taken.points;
    const auto same_place = [](const Position& a, const Position& b) { return a.x == b.x && a.y == b.y; };
    if (taken.closed && !points.empty() && !same_place(points.front(), points.back())) points.push_back(points.front());
    // Of two corners in one place the later says how it goes on.
    Positions kept;
    for (const Position& position : points) {
      if (!kept.empty() && same_place(kept.back(), position)) kept.pop_back();
      kept.push_back(position);
    }
    if (kept.size() < 2) {
      ++made_.left_out[entity.layer + " (" + entity.type + ", without length)"];
      return;
    }
    const bool closed = same_place(kept.front(), kept.back());
    kept.back().bulge = 0;
    made_.shapes.push_back(
        {entity.layer, entity.number, {closed ? DrawnAs::polygon : DrawnAs::line, {std::move(kept)}}});
  }

  const std::string& file_;
  DxfDrawing& made_;
  DL_Dxf library_;
};

}  // namespace

Result<DxfDrawing> read_dxf(std::string_view text, const std::string& file, std::string_view units) {
  const auto pairs = read_dxf_text(text, file);
  if (!pairs) return std::unexpected(pairs.error());
  const auto unit = unit_of(*pairs, file, units);
  if (!unit) return std::unexpected(unit.error());
  const PlainNumbers plain;
  DxfDrawing made{unit->metres, unit->metric, {}, {}};
  Reader reader(file, made);
  const Entities all(pairs->entities);
  for (std::size_t at = 0; at < all.size();) {
    std::size_t end = at + 1;
    if (all[at].type == "POLYLINE")
      while (end < all.size() && all[end].type == "VERTEX") ++end;
    if (auto read = reader.read(all.subspan(at, end - at)); !read) return std::unexpected(read.error());
    at = end;
  }
  return made;
}

}  // namespace files
