// Outlines that two or three places give at once: rectangle and circles.
#pragma once

#include <optional>
#include <vector>

#include "sketch/fields.h"

namespace sketch {

enum class Whole { rectangle, circle, across, three };

// The places that are set, and how a rectangle lies: its first side runs along `along` (east where empty). A place
// within `reach` of the first corner gives no side to grow to: then east and north.
struct WholeStart {
  Whole whole = Whole::rectangle;
  std::vector<geometry::Point> points;
  std::optional<geometry::Vec> along;
  double reach = 0;
  bool equal_sides = false;
};

std::size_t places_needed(Whole whole);
std::vector<FieldKind> fields_of(const WholeStart& start);
// The fields give the whole shape from the first place on: both sides, the radius, the diameter with its direction.
bool fixed(Whole whole, const Fields& fields);
// The ring with the last place at `place`; typed sides, radius and diameter win over it. Positive sides grow towards
// the place, negative ones west and south of the corner. Refused: a side or a circle of no size ("shape-no-size"),
// three places in one line ("circle-in-line").
problem::Result<geometry::Ring> whole_ring(const WholeStart& start, geometry::Point place, const Fields& fields);
// What the pointer gives, into the fields that are not typed.
void show_whole(Fields& fields, const WholeStart& start, const geometry::Ring& ring, units::System system);

}  // namespace sketch
