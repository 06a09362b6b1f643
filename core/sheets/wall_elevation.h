// The face of a wall unrolled along its line, as one sees it who stands before it: every unit of every course as the
// takeoff lays it, caps, leveling base, ground before and behind, layers of reinforcement.
//
// x is metres along the line as drawn, from the left end of the picture (the line's start, or its end where the wall's
// body lies to the right of the line: `x` turns a station into it). y is metres above the wall's lowest base.
#pragma once

#include <optional>
#include <vector>

#include "results/results.h"
#include "sheets/figure.h"

namespace sheets {

struct WallElevation {
  // From the bottom up: soil, leveling base, units (whole ones without a material; cut ones Material::block with
  // Line::cut_edge, so that they are hatched), caps (cut ones the same way), the outline of it all (Line::cut_edge),
  // ground in front (Line::house) and behind (Line::later), layers (Line::geotextile).
  Figure figure;
  double length = 0;
  bool starts_right = false;
  double datum = 0;  // height of y = 0 above the job's datum
  double x(double station) const { return starts_right ? length - station : station; }

  // As laid: corner units of which the leg before has the other face are not counted twice.
  struct Course {
    int number = 0;     // from 1, at the bottom of the wall's lowest course
    double length = 0;  // that shows
    int whole = 0;
    int half = 0;
    int corner = 0;
    int end = 0;
    int cut = 0;
  };
  std::vector<Course> courses;  // from the bottom up

  // One stretch of a layer where its course is there to lie on.
  struct Layer {
    int on_course = 0;  // it lies on top of it
    double length = 0;  // from the face into the fill
    double from = 0;    // stations
    double to = 0;
    double y = 0;
  };
  std::vector<Layer> layers;  // from the bottom up, then along the wall

  enum class What { end, base_step, top_step, corner, curve_begins, curve_ends };
  struct Station {
    double at = 0;
    What what = What::end;
    double radius = 0;  // metres, of a curve that begins; positive
  };
  std::vector<Station> stations;  // in order; several may share a place

  // Heights above y = 0 at an end of the wall.
  struct End {
    double base = 0;  // bottom of the lowest course
    double top = 0;   // cap included
    std::optional<double> ground;
  };
  End start;
  End finish;

  int caps = 0;           // drawn
  double pad = 0;         // thickness of the leveling base
  double section_at = 0;  // where section_figure cuts it: the middle of its tallest part
};

// Nothing for what is no wall, stands already or can't be built (the takeoff says why).
std::optional<WallElevation> wall_elevation(const results::Results& results, const plan::ElementId& wall);

}  // namespace sheets
