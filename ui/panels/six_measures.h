// The few numbers that stand under the name of what is selected.
#pragma once

#include <QString>
#include <vector>

#include "results/results.h"

namespace ui {

struct Told {
  QString label;
  QString value;  // in the job's units; a dash where the takeoff has none
};

// At most six, of any kind; none where nothing is measured of it.
std::vector<Told> six_measures(const results::Results& results, const plan::Element& element);
QString shown_area(double square_metres, units::System system);  // "741.9 ft²", "68.92 m²"
QString shown_volume(double cubic_metres, units::System system);

// How many elements of each kind the job has, in the order of drawing tools; and what else the panel says of the job.
std::vector<Told> counts_of(const plan::Job& job);

}  // namespace ui
