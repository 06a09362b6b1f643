#include "files/dxf_read.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "files/dxf_curves.h"
#include "files/dxf_pairs.h"
#include "files/dxf_shapes.h"
#include "files/laid_out.h"

namespace files {
namespace {

using problem::Result;
using Positions = std::vector<Position>;

constexpr std::size_t most_nested = 16;
constexpr double most_placed = 100'000;
constexpr std::size_t most_corners = 4'000'000;  // more than a file of 64 MiB can list

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

// How an INSERT puts its block onto the drawing: x' = a x + b y + x0, y' = c x + d y + y0.
struct Placing {
  double a, b, c, d, x, y;
  double z_scale, z;
  bool similar;   // arcs stay arcs
  bool mirrored;  // and turn the other way

  Spot2 of(double px, double py) const { return {a * px + b * py + x, c * px + d * py + y}; }
};

Placing placing_of(const DxfEntity& insert, const DxfBlock& block, int column, int row) {
  const double sx = insert.number_or(41, 1), sy = insert.number_or(42, 1), sz = insert.number_or(43, 1);
  const double turn = insert.number_or(50, 0) * std::numbers::pi / 180;
  const double cosine = std::cos(turn), sine = std::sin(turn);
  Placing made{cosine * sx, -sine * sy, sine * sx, cosine * sy, 0, 0, sz, 0, false, false};
  const double along = column * insert.number_or(44, 0), up = row * insert.number_or(45, 0);
  made.x = insert.number_or(10, 0) + cosine * along - sine * up - (made.a * block.x + made.b * block.y);
  made.y = insert.number_or(20, 0) + sine * along + cosine * up - (made.c * block.x + made.d * block.y);
  made.z = insert.number_or(30, 0) - sz * block.z;
  if (insert.number_or(230, 1) < 0) {  // seen from below
    made.a = -made.a;
    made.b = -made.b;
    made.x = -made.x;
  }
  made.similar = std::abs(std::abs(sx) - std::abs(sy)) <= 1e-9 * std::abs(sx);
  made.mirrored = made.a * made.d - made.b * made.c < 0;
  return made;
}

// The ring with its points placed; an arc that is stretched one way becomes several.
Positions placed(const Positions& ring, const Placing& placing, double within) {
  Positions made;
  for (std::size_t i = 0; i < ring.size(); ++i) {
    if (ring[i].bulge != 0 && !placing.similar && i + 1 < ring.size()) {
      const Spot2 from = placing.of(ring[i].x, ring[i].y), to = placing.of(ring[i + 1].x, ring[i + 1].y);
      const double near = std::min(within, 1e-5 * std::hypot(to.x - from.x, to.y - from.y));
      const std::size_t first = made.size();
      const CurveAt curve = [&](double t) {
        const Spot2 on = on_edge(ring[i], ring[i + 1], t);
        return placing.of(on.x, on.y);
      };
      arcs_along(curve, 0, 1, near, made);
      for (std::size_t k = first; k < made.size(); ++k) made[k].spot = ring[i].spot;
      continue;
    }
    Position at = ring[i];
    const Spot2 on = placing.of(at.x, at.y);
    at.x = on.x;
    at.y = on.y;
    if (at.z) at.z = *at.z * placing.z_scale + placing.z;
    if (placing.mirrored) at.bulge = -at.bulge;
    made.push_back(at);
  }
  if (made.size() > 1 && ring.front().x == ring.back().x && ring.front().y == ring.back().y) {
    made.back().x = made.front().x;
    made.back().y = made.front().y;
  }
  return made;
}

// Shapes of the drawing, or of one block with all that it holds.
struct Flat {
  std::vector<DxfShape> shapes;
  std::map<std::pair<std::string, std::string>, int> left_out;  // layer, why -> how many
  std::size_t corners = 0;
};

// Blocks inside blocks inside blocks count up past any whole number; a thousand million is many enough.
void add_count(int& sum, int count) { sum = std::min(1'000'000'000, sum) + std::min(1'000'000'000, count); }

class Expander {
 public:
  Expander(const DxfText& text, const std::string& file, double unit)
      : text_(text), file_(file), within_(curve_within_m / unit), reader_(file, unit) {}

  Result<void> read(DxfEntities all, Flat& into) {
    for (std::size_t at = 0; at < all.size();) {
      std::size_t end = at + 1;
      if (all[at].type == "POLYLINE")
        while (end < all.size() && all[end].type == "VERTEX") ++end;
      const auto read = all[at].type == "INSERT" ? insert(all[at], into) : entity(all.subspan(at, end - at), into);
      if (!read) return read;
      at = end;
    }
    return {};
  }

 private:
  std::unexpected<problem::Problem> too_many(int line) const {
    return refuse(file_, line, "dxf-many",
                  "with its blocks placed and its curves drawn the drawing has more than 100,000 shapes of blocks, or "
                  "more than 4,000,000 corners",
                  "take the blocks that the job does not need out of it");
  }

  Result<void> add(DxfShape shape, int line, Flat& into) const {
    into.corners += shape.part.rings.front().size();
    if (into.corners > most_corners) return too_many(line);
    into.shapes.push_back(std::move(shape));
    return {};
  }

  Result<void> entity(DxfEntities entities, Flat& into) {
    std::string why;
    auto shape = reader_.read(entities, why);
    if (!shape) return std::unexpected(shape.error());
    if (*shape) return add(std::move(**shape), entities.front().line, into);
    ++into.left_out[{entities.front().layer, why}];
    return {};
  }

  // The shapes of a block, read once however often it is placed.
  Result<const Flat*> block(const DxfEntity& insert, const DxfBlock& block) {
    if (const auto known = blocks_.find(insert.block); known != blocks_.end()) return &known->second;
    if (std::ranges::find(open_, insert.block) != open_.end())
      return refuse(file_, insert.line, "dxf-cycle",
                    "the block " + in_quotes(insert.block) + " is placed inside itself", "take it out of itself");
    if (open_.size() >= most_nested)
      return refuse(file_, insert.line, "dxf-deep", "blocks are placed inside each other more than 16 deep",
                    "place the inner ones into the drawing itself");
    open_.push_back(insert.block);
    Flat made;
    if (auto done = read(block.entities, made); !done) return std::unexpected(done.error());
    open_.pop_back();
    return &(blocks_[insert.block] = std::move(made));
  }

  static std::string why_not(const DxfEntity& insert, bool there) {
    if (insert.number_or(67, 0) != 0) return "INSERT, on the printed page";
    if (std::abs(insert.number_or(210, 0)) > 1e-9 || std::abs(insert.number_or(220, 0)) > 1e-9)
      return "INSERT, turned out of the plan";
    if (!there) return "INSERT of " + in_quotes(insert.block) + ", a block that is not in the file";
    if (insert.number_or(41, 1) == 0 || insert.number_or(42, 1) == 0) return "INSERT, of no size";
    return "";
  }

  Result<void> insert(const DxfEntity& insert, Flat& into) {
    const auto found = text_.blocks.find(insert.block);
    if (const std::string why = why_not(insert, found != text_.blocks.end()); !why.empty()) {
      ++into.left_out[{insert.layer, why}];
      return {};
    }
    const auto flat = block(insert, found->second);
    if (!flat) return std::unexpected(flat.error());
    const auto count = [&insert](int code) {
      return static_cast<int>(std::clamp(insert.number_or(code, 1), 1.0, 1e6));
    };
    const int columns = count(70), rows = count(71);
    placed_ += static_cast<double>((*flat)->shapes.size()) * columns * rows;
    if (placed_ > most_placed) return too_many(insert.line);
    std::size_t within = 0;
    for (int row = 0; row < rows; ++row)
      for (int column = 0; column < columns; ++column) {
        // An empty block placed a million times a million times would never come to an end.
        if ((*flat)->shapes.empty() && (row > 0 || column > 0)) return {};
        if (auto done = place(**flat, insert, placing_of(insert, found->second, column, row), within, into); !done)
          return done;
      }
    return {};
  }

  // What lies on layer 0 of a block comes onto the layer that the block is placed on.
  Result<void> place(const Flat& flat, const DxfEntity& insert, const Placing& placing, std::size_t& within,
                     Flat& into) const {
    const auto layer = [&insert](const std::string& own) { return own == "0" ? insert.layer : own; };
    for (const DxfShape& shape : flat.shapes) {
      DxfShape made{layer(shape.layer), insert.number, shape.part, ++within, {}, 0};
      for (Positions& ring : made.part.rings) ring = placed(ring, placing, within_);
      if (auto done = add(std::move(made), insert.line, into); !done) return done;
    }
    for (const auto& [what, count] : flat.left_out) add_count(into.left_out[{layer(what.first), what.second}], count);
    return {};
  }

  const DxfText& text_;
  const std::string& file_;
  double within_;
  DxfShapeReader reader_;
  std::map<std::string, Flat> blocks_{};
  double placed_ = 0;                // shapes of blocks, those inside other blocks counted too
  std::vector<std::string> open_{};  // blocks that are being read, each inside the one before
};

Result<void> within_range(const std::vector<DxfShape>& shapes, double unit, const std::string& file) {
  for (const DxfShape& shape : shapes)
    for (const Positions& ring : shape.part.rings)
      for (const Position& position : ring)
        if (!(std::abs(position.x) * unit <= 1e9 && std::abs(position.y) * unit <= 1e9))
          return refuse(file, position.spot.line, "dxf-range",
                        "this shape lies more than 1,000,000 km from the file's origin", "look at its unit");
  return {};
}

}  // namespace

Result<DxfDrawing> read_dxf(std::string_view text, const std::string& file, std::string_view units) {
  const auto pairs = read_dxf_text(text, file);
  if (!pairs) return std::unexpected(pairs.error());
  const auto unit = unit_of(*pairs, file, units);
  if (!unit) return std::unexpected(unit.error());
  Flat flat;
  if (auto read = Expander(*pairs, file, unit->metres).read(pairs->entities, flat); !read)
    return std::unexpected(read.error());
  if (auto good = within_range(flat.shapes, unit->metres, file); !good) return std::unexpected(good.error());
  DxfDrawing made{unit->metres, unit->metric, std::move(flat.shapes), {}};
  for (const auto& [what, count] : flat.left_out)
    add_count(made.left_out[what.first + " (" + what.second + ")"], count);
  return made;
}

}  // namespace files
