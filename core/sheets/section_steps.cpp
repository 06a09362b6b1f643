#include <algorithm>
#include <cmath>

#include "sheets/section_parts.h"
#include "units/number.h"

namespace sheets {

using takeoff::Stage;

namespace {

constexpr double inch = units::metres_per_inch;

struct Step {
  double front = 0;  // x of its face
  double back = 0;
  double bottom = 0;
  double top = 0;
};

// What the takeoff measured, and the sizes of the unit.
struct Flight {
  int risers = 0;
  double riser = 0, lowest = 0, tread = 0, fall = 0, depth = 0, high = 0;
  std::vector<Step> steps() const {
    std::vector<Step> all;
    double foot = 0;
    for (int i = 0; i < risers; ++i) {
      const double top = foot + (i == 0 ? lowest : riser);
      all.push_back({i * tread, i * tread + depth, top - high, top});
      foot = top + tread * fall;
    }
    return all;
  }
};

std::optional<Flight> flight_of(const Cut& cut, const plan::Steps& steps) {
  const catalogue::Item* unit = cut.catalogue().item(steps.unit);
  const auto risers = cut.measured("risers"), riser = cut.measured("riser_m"), tread = cut.measured("tread_m");
  if (!unit || !unit->width || !unit->height || !risers || !riser || !tread) return std::nullopt;
  Flight flight;
  flight.risers = static_cast<int>(*risers);
  flight.riser = *riser;
  flight.lowest = cut.measured("riser_lowest_m").value_or(*riser);
  flight.tread = *tread;
  flight.fall = steps.tread_fall.value_or(cut.catalogue().number_limit("tread-pitch", 0.125) / 12);
  flight.depth = unit->width->metres().si();
  flight.high = unit->height->metres().si();
  return flight;
}

void draw_step(Cut& cut, const Step& step, double fall) {
  const double drop = fall * (step.back - step.front);
  cut.area(
      polygon(
          {{step.front, step.bottom}, {step.back, step.bottom}, {step.back, step.top + drop}, {step.front, step.top}}),
      Material::block, Stage::coping);
}

// The base under each tread; gives how thick it is.
double draw_base(Cut& cut, const catalogue::BuildUp* build_up, const std::vector<Step>& all) {
  if (!build_up) return 0;
  double down = 0;
  for (std::size_t i = 0; i < build_up->layers.size(); ++i) {
    const catalogue::Layer& layer = build_up->layers[i];
    const double thick = layer.thickness ? layer.thickness->metres().si() : 0;
    if (thick <= 0) continue;
    const double past = layer.past_edge.metres().si();
    for (const Step& step : all) {
      const bool first = &step == &all.front();
      cut.box({step.front - (first ? past : 0), step.bottom - down - thick}, {step.back, step.bottom - down},
              material_of(cut.catalogue(), layer), Stage::coping);
    }
    cut.leader(
        {all.front().front + 0.3 * (all.front().back - all.front().front), all.front().bottom - down - thick / 2},
        cut.name(layer.item, "Base"), cut.shown(thick), "layer/" + std::to_string(i) + "/thickness", Stage::coping);
    down += thick;
  }
  return down;
}

}  // namespace

bool section_of_steps(Cut& cut, const plan::Steps& steps) {
  const std::optional<Flight> flight = flight_of(cut, steps);
  if (!flight || flight->risers < 1) return false;
  const std::vector<Step> all = flight->steps();
  const catalogue::BuildUp* build_up = cut.catalogue().build_up(steps.build_up);
  const double low = all.front().bottom, right = all.back().back + 6 * inch;
  double deep = 0;
  if (build_up)
    for (const catalogue::Layer& layer : build_up->layers) deep += layer.thickness ? layer.thickness->metres().si() : 0;
  const double bottom = std::min(low, 0.0) - deep - 4 * inch;
  cut.ground_box({-6 * inch, bottom}, {right, std::min(0.0, low)});
  for (const Step& step : all)
    cut.area(rectangle({step.front, std::min(0.0, low)}, {right, step.bottom}), Material::soil, Stage::protect,
             Line::none);
  draw_base(cut, build_up, all);
  for (const Step& step : all) draw_step(cut, step, flight->fall);
  const Step& top = all.back();
  const double middle = (top.front + top.back) / 2;
  cut.leader({middle, top.top - 0.2 * flight->high}, "Rise in all", cut.shown(steps.rise), "steps/rise", Stage::coping);
  cut.leader({middle - inch, top.top - 0.7 * flight->high}, "Risers", std::to_string(flight->risers), "steps/risers",
             Stage::coping);
  const Step& lowest = all.front();
  cut.leader({lowest.front + 0.2 * flight->tread, lowest.top - 0.3 * flight->high}, cut.name(steps.unit, "Step"),
             "riser " + cut.shown(flight->riser) + ", tread " + cut.shown(flight->tread), {}, Stage::coping);
  if (flight->risers > 1)
    cut.leader({all[1].front + steps.lap.metres().si() / 2, all[1].bottom}, "Lap", cut.shown(steps.lap), "steps/lap",
               Stage::coping);
  return true;
}

}  // namespace sheets
