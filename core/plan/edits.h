// Changes of what is drawn. Each takes an element as a value and gives another; the caller puts it into the job with
// plan::with. Everything that lies on the plan goes along: outlines, lines, points, the start point and direction of a
// pattern, the places of a finish. What cannot be done is a Problem in words.
#pragma once

#include <optional>
#include <vector>

#include "plan/job.h"

namespace plan {

// --- the whole element. Turning and moving are done once, from the first position of a gesture, so that nothing
// drifts: a drag of ten steps is one `moved`.
Element moved(Element element, geometry::Vec whole_steps);
Element turned(Element element, geometry::Point about, units::Angle by);
// Across the line through `a` and `b`: bulges change their sign, sides of walls and kerbs change over.
problem::Result<Element> mirrored(Element element, geometry::Point a, geometry::Point b);

// --- its corners and edges. Rings and lines are numbered as drawn: the outline's rings, then its line (ring -1), then
// single points (ring -2). Of a freeform ring the corners are its control points.
struct Corner {
  int ring = 0;
  int number = 0;
  bool operator==(const Corner&) const = default;
};
struct Grip {
  Corner corner;
  geometry::Point at;
  bool control = false;  // of a freeform ring: the curve goes through it
};
std::vector<Grip> corners(const Element& element);
struct DrawnEdge {
  Corner start;  // the corner at which the edge starts
  geometry::Curve curve;
};
std::vector<DrawnEdge> drawn_edges(
    const Element& element);  // of a freeform ring: its arcs, with the control point before

problem::Result<Element> with_corner_at(Element element, Corner corner, geometry::Point to);
problem::Result<Element> with_new_corner(Element element, Corner before,
                                         geometry::Point at);  // on the edge from `before`
problem::Result<Element> without_corner(Element element,
                                        Corner corner);  // a ring keeps 3 corners (2 with arcs), a line 2
problem::Result<Element> with_bulge(Element element, Corner start, double bulge);  // edge to arc and back (0)
// The straight edge moved square to itself: its two neighbours are lengthened or cut (move this edge).
problem::Result<Element> with_edge_moved(Element element, Corner start, Length out);
// The edge gets this length: its end moves along the edge's own direction (an arc keeps its sweep).
problem::Result<Element> with_edge_length(Element element, Corner start, Length length);

// --- shapes made of shapes. Only closed outlines (paved areas, pools, buildings, keep-outs ...), except `offset`,
// which moves a line to its left (negative: right) and grows an outline (negative: shrinks it).
problem::Result<Element> offset(Element element, Length out);
problem::Result<std::pair<Element, Element>> split(const Element& element, geometry::Point a, geometry::Point b,
                                                   ElementId second);
problem::Result<Element> joined(const Element& first, const Element& second);  // keeps what `first` is built of
problem::Result<Element> with_hole(Element element, DrawnRing hole);
// The part of `other`'s outline between two places on it, walked the shorter way (or the longer): to trace an edge.
problem::Result<DrawnLine> traced(const Element& other, geometry::Point from, geometry::Point to, bool longer = false);

// --- ids. The letter of the kind and the least number that is free: A1, P1, W1, S1, K1, D1, B1, N1, F1, R1, T1, M1,
// L1.
ElementId free_id(const Job& job, const Kind& kind);
// Every id on `ids` copied, moved by `by`, with ids of their own.
std::pair<Job, std::vector<ElementId>> with_copies(const Job& job, const std::vector<ElementId>& ids, geometry::Vec by);

}  // namespace plan
