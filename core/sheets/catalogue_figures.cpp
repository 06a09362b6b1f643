#include "sheets/catalogue_figures.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "sheets/section_parts.h"

namespace sheets {

namespace {

constexpr double inch = units::metres_per_inch;
constexpr double ground_shown = 4 * inch;  // under the lowest layer
constexpr double most_pieces = 100'000;    // a pattern of tiny cells is not drawn

double side_of(const catalogue::CellSide& side, const Module& module) {
  using Of = catalogue::CellSide::Of;
  if (side.of == Of::fixed) return side.fixed.metres().si();
  const units::Length whole = side.of == Of::module_length ? module.length : module.width;
  return whole.metres().si() / std::max(side.parts, 1);
}

Area unit_area(Contour contour, Material material, Line line, int tone) {
  Area area;
  area.contours.push_back(std::move(contour));
  area.material = material;
  area.line = line;
  area.tone = tone;
  return area;
}

// The two vectors of the repeat, metres, the first along x.
struct Lattice {
  double along;
  Vec across;
  // Which repeat a place lies in.
  Vec repeat(Vec at) const {
    const double b = at.y / across.y;
    return {(at.x - b * across.x) / along, b};
  }
};

int tone_of(const catalogue::Pattern& pattern, const catalogue::PatternPiece& piece) {
  if (piece.w != piece.h) return piece.w > piece.h ? 0 : 1;
  const auto all = catalogue::sizes(pattern);
  return static_cast<int>(std::ranges::find(all, piece.size) - all.begin()) + 2;
}

}  // namespace

std::optional<Figure> pattern_figure(const catalogue::Pattern& pattern, const Module& module, double across,
                                     double up) {
  if (!catalogue::check(pattern)) return std::nullopt;
  const double x = side_of(pattern.cell_x, module), y = side_of(pattern.cell_y, module);
  if (!(x > 0) || !(y > 0) || !(across > 0) || !(up > 0)) return std::nullopt;
  const Lattice lattice{pattern.along * x, {pattern.across_x * x, pattern.across_y * y}};
  Figure figure;
  figure.low = {-across / 2, -up / 2};
  figure.high = {across / 2, up / 2};
  figure.parts.emplace_back(unit_area(rectangle(figure.low, figure.high), Material::joint, Line::none, 0));
  const double turn = pattern.direction.degrees() * std::numbers::pi / 180;
  const Vec right = from_angle(turn), ahead{-right.y, right.x};
  // A circle about the origin that holds the rectangle however it is turned, and a repeat more for what stands out.
  const double reach = std::hypot(across, up) / 2 + lattice.along + lattice.across.y;
  const double gap = std::min(x, y) * 0.03;
  Vec least{1e9, 1e9}, most{-1e9, -1e9};
  for (const Vec corner : {Vec{-reach, -reach}, Vec{reach, -reach}, Vec{-reach, reach}, Vec{reach, reach}}) {
    const Vec at = lattice.repeat(corner);
    least = {std::min(least.x, at.x), std::min(least.y, at.y)};
    most = {std::max(most.x, at.x), std::max(most.y, at.y)};
  }
  if ((most.x - least.x) * (most.y - least.y) * static_cast<double>(pattern.pieces.size()) > most_pieces)
    return std::nullopt;
  for (int b = static_cast<int>(std::floor(least.y)); b <= most.y; ++b)
    for (int a = static_cast<int>(std::floor(least.x)); a <= most.x; ++a)
      for (const catalogue::PatternPiece& piece : pattern.pieces) {
        const Vec from{a * lattice.along + b * lattice.across.x + piece.x * x, b * lattice.across.y + piece.y * y};
        const Vec to{from.x + piece.w * x, from.y + piece.h * y};
        if (from.x > reach || to.x < -reach || from.y > reach || to.y < -reach) continue;
        const auto turned = [&](double u, double v) {
          return Vec{u * right.x + v * ahead.x, u * right.y + v * ahead.y};
        };
        const double u0 = from.x + gap, u1 = to.x - gap, v0 = from.y + gap, v1 = to.y - gap;
        figure.parts.emplace_back(unit_area(polygon({turned(u0, v0), turned(u1, v0), turned(u1, v1), turned(u0, v1)}),
                                            Material::paving, Line::unit, tone_of(pattern, piece)));
      }
  return figure;
}

std::optional<Section> build_up_figure(const catalogue::Catalogue& catalogue, const catalogue::BuildUp& build_up,
                                       units::System system) {
  double deep = 0;
  for (const catalogue::Layer& layer : build_up.layers) deep += layer.thickness ? layer.thickness->metres().si() : 0;
  if (deep <= 0) return std::nullopt;
  // A cut goes through an element of a job: one that has nothing but the catalogue.
  auto job = std::make_shared<plan::Job>();
  job->heading.units = system;
  job->catalogue = std::shared_ptr<const catalogue::Catalogue>(std::shared_ptr<void>(), &catalogue);
  results::Results results;
  results.job = job;
  plan::Ground ground;
  ground.element = std::make_shared<const plan::Element>();
  Cut cut(results, ground, std::nullopt);
  LayersUnder under;
  under.to = std::max(1.1 * (deep + ground_shown), 12 * inch);
  cut.ground_box({0, -deep - ground_shown}, {under.to, -deep});
  draw_layers(cut, build_up, under);
  return cut.finish();
}

}  // namespace sheets
