// Where the next corner of an outline or line lies, and how the edge to it bends: from the pointer, what it takes hold
// of, and what is typed. What is typed always wins.
#pragma once

#include "sketch/fields.h"
#include "sketch/guides.h"

namespace sketch {

// line; an arc whose end is set first and then a third point that it goes through; an arc about a centre that is set
// first; an arc tangent to the last edge.
enum class EdgeWay { line, through, centre, tangent };

// The edge under way. `set` is what is set of it: the end of an arc through a third point, the centre of an arc about
// one. `swing` is how far the pointer has gone round the centre (radians, left positive), so that an arc may turn
// further than half a circle.
struct Start {
  EdgeWay way = EdgeWay::line;
  InHand in_hand;
  std::optional<geometry::Point> set;
  double swing = 0;
};

struct Next {
  geometry::Point at;
  double bulge = 0;
  Aimed aimed;
};

// The fields of the edge under way.
std::vector<FieldKind> fields_of(const Start& start);
// With a corner before it: the corner where the edge ends, or, of an arc through a point or about a centre of which
// nothing is set yet, the place of that point with bulge 0.
Next next_edge(const Scene& scene, const Start& start, const Pointer& pointer, const Fields& fields);
// The typed radius is too small for the end that is set: there is no such arc.
bool arc_too_small(const Start& start, const Fields& fields);
// The first corner: the pointer, or east and north of the job's origin as typed.
Next first_corner(const Scene& scene, const Pointer& pointer, const Fields& fields);
// A point by length and direction, or by how far it lies east and north; also for tools that draw no shapes.
geometry::Point placed(geometry::Point from, geometry::Point aimed, const Fields& fields);
// What the pointer gives, into the fields that are not typed.
void show_place(Fields& fields, geometry::Point from, geometry::Point at, units::System system);
void show_edge(Fields& fields, const Start& start, const Next& next, units::System system);

}  // namespace sketch
