// A section as it is being drawn: to scale, x to the right, y up, both metres.
#pragma once

#include <optional>

#include "sheets/parts.h"
#include "sheets/section_figure.h"

namespace sheets {

class Cut {
 public:
  Cut(const results::Results& results, const plan::Ground& ground, std::optional<takeoff::Stage> stage)
      : results_(results), ground_(ground), stage_(stage) {}

  const plan::Job& job() const { return *results_.job; }
  const catalogue::Catalogue& catalogue() const { return *results_.job->catalogue; }
  const plan::Site& site() const { return results_.site; }
  const plan::Ground& ground() const { return ground_; }
  const plan::ElementId& id() const { return ground_.element->id; }
  bool built(takeoff::Stage stage) const { return !stage_ || *stage_ >= stage; }
  std::optional<double> measured(std::string_view name) const;

  // Filled where it is built at the stage shown, a dashed outline before.
  void area(Contour contour, Material material, takeoff::Stage stage, Line line = Line::cut_edge);
  void box(Vec low, Vec high, Material material, takeoff::Stage stage) { area(rectangle(low, high), material, stage); }
  void ground_box(Vec low, Vec high) {
    area(rectangle(low, high), Material::soil, takeoff::Stage::protect, Line::none);
  }
  void stroke(Contour contour, Line line, takeoff::Stage stage);
  void ring(Vec centre, double radius, Material material, takeoff::Stage stage);

  void leader(Vec at, std::string label, std::string value, std::string field, takeoff::Stage stage);
  std::string shown(double metres) const;
  std::string shown(units::Length length) const { return units::show_length(length, job().heading.units); }
  std::string name(const catalogue::Id& item, const std::string& otherwise) const;  // in short

  // Leaders from the top down, no two at one place; the scale bar about a quarter of the width, round in the job's
  // units.
  Section finish();

 private:
  const results::Results& results_;
  const plan::Ground& ground_;
  std::optional<takeoff::Stage> stage_;
  Section section_;
};

// Layers of a build-up drawn under one another between two x from `top` down, with a leader each; gives the place below
// them.
struct LayersUnder {
  double from = 0;
  double to = 0;
  double top = 0;
  double past_edge = 0;  // how far layers may reach past `to`: where the edge is free
  plan::Id unit;         // what lies in the layer of role unit
  takeoff::Stage stone = takeoff::Stage::base;
};
double draw_layers(Cut& cut, const catalogue::BuildUp& build_up, const LayersUnder& under);
Material material_of(const catalogue::Catalogue& catalogue, const catalogue::Layer& layer);

// False where the element has nothing to cut through.
bool section_of_area(Cut& cut, const plan::PavedArea& area);
bool section_of_pool(Cut& cut, const plan::Pool& pool);
bool section_of_wall(Cut& cut, const plan::Wall& wall);
bool section_of_steps(Cut& cut, const plan::Steps& steps);
bool section_of_edge(Cut& cut, const plan::EdgeRun& run);
bool section_of_drain(Cut& cut, const plan::DrainRun& run);

}  // namespace sheets
