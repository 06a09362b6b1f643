// Edges are known by their number in the drawing (EdgeChoice::edge, FallFrom::edge): rings counted on from each other.
// When corners come and go the numbers that an element keeps of its own edges go along. Numbers that other elements
// keep of this one's edges (a fall from edge 2 of the house) are theirs to mend.
#pragma once

#include "plan/edits.h"

namespace plan {

// The number of the edge that starts at a corner; of a line -1's corners and of points it is their own number.
std::size_t edge_number(const Element& element, Corner start);

void edge_was_split(Element& element, std::size_t number);  // the new edge is number + 1 and is chosen as the old one
void edge_was_taken(Element& element, std::size_t number);  // what was said of it is forgotten
// Every number through `now`; what it gives -1 for is forgotten.
void renumber(Element& element, const std::vector<int>& now);

}  // namespace plan
