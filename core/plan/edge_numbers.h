// Edges are known by their number in the drawing (EdgeChoice::edge, FallFrom::edge): rings counted on from each other.
// When corners come and go the numbers that an element keeps of its own edges go along. Numbers that other elements
// keep of this one's edges (a fall from edge 2 of the house) are theirs to mend.
#pragma once

#include "plan/edits.h"

namespace plan {

// The number of the edge that starts at a corner; of a line -1's corners and of points it is their own number.
std::size_t edge_number(const Element& element, Corner start);

// The new edge is number + 1, and what was said of the old one is said of both.
void edge_was_split(Element& element, std::size_t number);
void edge_was_taken(Element& element, std::size_t number);  // what was said of it is forgotten

// An edge of a new drawing, and the number of the one in the old drawing that it lies along; -1: of none.
struct EdgePiece {
  int was = -1;
  geometry::Curve curve;
};
// Called while the element has its old drawing still: what was said of an edge is said of each of its pieces, a height
// that changes along it by where the piece lies; what was said of an edge of which nothing is left is forgotten.
void follow_edges(Element& element, const std::vector<EdgePiece>& now);

}  // namespace plan
