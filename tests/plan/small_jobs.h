// Small jobs for the tests of plan, in feet and inches.
#pragma once

#include <string>
#include <utility>
#include <vector>

#include "plan/site.h"

namespace small {

using geometry::Point;
using geometry::Ring;
using units::Length;

inline Point at(long inches_x, long inches_y) { return {Length::inches(inches_x), Length::inches(inches_y)}; }

inline Ring rectangle(long x0, long y0, long x1, long y1) {
  return {{at(x0, y0), 0, {}}, {at(x1, y0), 0, {}}, {at(x1, y1), 0, {}}, {at(x0, y1), 0, {}}};
}

// A whole circle as two half circles.
inline Ring circle(long x, long y, long radius) { return {{at(x - radius, y), 1, {}}, {at(x + radius, y), 1, {}}}; }

inline plan::Element paved(std::string id, Ring ring) {
  plan::PavedArea area;
  area.outline = {{std::move(ring), {}}};
  return {std::move(id), "", area};
}

inline plan::Element pool(std::string id, Ring ring) {
  plan::Pool pool;
  pool.outline = {{std::move(ring), {}}};
  return {std::move(id), "", pool};
}

inline plan::Element building(std::string id, Ring ring) {
  plan::Building building;
  building.outline = {{std::move(ring), {}}};
  return {std::move(id), "", building};
}

inline plan::Element run(std::string id, Ring edges, Point end, std::string what) {
  plan::EdgeRun run;
  run.line = {std::move(edges), end, {}};
  run.what = std::move(what);
  return {std::move(id), "", run};
}

inline plan::Job job(std::vector<plan::Element> elements) {
  plan::Job made;
  made.catalogue = std::make_shared<const catalogue::Catalogue>();
  for (plan::Element& element : elements) made = plan::with(made, std::move(element));
  return made;
}

inline double square_feet(units::SquareMetres area) { return area.si() / units::square_metres_per_square_foot; }
inline double feet(units::Metres metres) { return metres.si() / units::metres_per_foot; }

}  // namespace small
