#include "sheets/section_figure.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "sheets/section_parts.h"

namespace sheets {

namespace {

constexpr double inch = units::metres_per_inch;
constexpr std::array us_bars{1 * inch, 3 * inch, 6 * inch, 12 * inch, 24 * inch, 36 * inch, 60 * inch, 120 * inch};
constexpr std::array metric_bars{0.02, 0.05, 0.1, 0.2, 0.5, 1.0, 2.0, 5.0};

// The longest round length that takes no more than a third of the width; the shortest where none does.
template <std::size_t Count>
double bar_of(const std::array<double, Count>& bars, double width) {
  double chosen = bars.front();
  for (const double bar : bars)
    if (bar <= width / 3) chosen = bar;
  return chosen;
}

struct Draw {
  Cut& cut;
  bool operator()(const plan::PavedArea& area) const { return section_of_area(cut, area); }
  bool operator()(const plan::Pool& pool) const { return section_of_pool(cut, pool); }
  bool operator()(const plan::Wall& wall) const { return section_of_wall(cut, wall); }
  bool operator()(const plan::Steps& steps) const { return section_of_steps(cut, steps); }
  bool operator()(const plan::EdgeRun& run) const { return section_of_edge(cut, run); }
  bool operator()(const plan::DrainRun& run) const { return section_of_drain(cut, run); }
  template <class Other>
  bool operator()(const Other&) const {
    return false;
  }
};

constexpr double apart = 0.004;  // metres: leaders' ends stand no nearer to each other

}  // namespace

std::optional<double> Cut::measured(std::string_view name) const {
  for (const takeoff::Measures& measures : results_.takeoff.measures)
    if (measures.element == id()) return measures.get(name);
  return std::nullopt;
}

void Cut::area(Contour contour, Material material, takeoff::Stage stage, Line line) {
  Area area;
  area.contours.push_back(std::move(contour));
  area.later = !built(stage);
  area.material = area.later ? Material::none : material;
  area.line = area.later ? Line::later : line;
  area.of = id();
  section_.figure.parts.emplace_back(std::in_place_type<Area>, std::move(area));
}

void Cut::stroke(Contour contour, Line line, takeoff::Stage stage) {
  section_.figure.parts.emplace_back(std::in_place_type<Stroke>,
                                     Stroke{std::move(contour), built(stage) ? line : Line::later, id()});
}

void Cut::ring(Vec centre, double radius, Material material, takeoff::Stage stage) {
  Contour circle;
  circle.turns = {{{centre.x - radius, centre.y}, 1}, {{centre.x + radius, centre.y}, 1}};
  area(std::move(circle), material, stage);
}

void Cut::leader(Vec at, std::string label, std::string value, std::string field, takeoff::Stage stage) {
  section_.leaders.push_back({at, std::move(label), std::move(value), std::move(field), !built(stage)});
}

std::string Cut::shown(double metres) const { return shown(units::Length::nearest(units::Metres(metres))); }

std::string Cut::name(const catalogue::Id& item, const std::string& otherwise) const {
  const catalogue::Item* known = catalogue().item(item);
  if (!known) return item.empty() ? otherwise : item;
  const std::string& full = known->name.en;
  return full.substr(0, std::min(full.find(" ("), full.find(", ")));
}

Section Cut::finish() {
  std::ranges::stable_sort(section_.leaders, [](const Leader& a, const Leader& b) { return a.at.y > b.at.y; });
  for (std::size_t i = 0; i < section_.leaders.size(); ++i) {
    for (std::size_t k = 0; k < i; ++k)
      if (geometry::length(section_.leaders[i].at - section_.leaders[k].at) < apart)
        section_.leaders[i].at.x = section_.leaders[k].at.x - 2 * apart;
  }
  settle(section_.figure);
  const double width = section_.figure.high.x - section_.figure.low.x;
  section_.scale_bar = job().heading.units == units::System::us ? bar_of(us_bars, width) : bar_of(metric_bars, width);
  return std::move(section_);
}

std::optional<Section> section_figure(const results::Results& results, const plan::ElementId& element,
                                      std::optional<takeoff::Stage> stage) {
  const plan::Ground* ground = results.site.find(element);
  if (!ground) return std::nullopt;
  Cut cut(results, *ground, stage);
  if (!std::visit(Draw{cut}, ground->element->kind)) return std::nullopt;
  return cut.finish();
}

}  // namespace sheets
