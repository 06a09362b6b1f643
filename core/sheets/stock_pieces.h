// What is cut off rolls and sticks: reinforcement, fabric, pipe and whatever else comes by the length.
#pragma once

#include <string>
#include <vector>

#include "sheets/printed.h"

namespace sheets {

// Equal pieces off one item, for one place.
struct StockPiece {
  catalogue::Id item;
  plan::ElementId of;
  std::string place;     // in the language of the sheet: "course 4", "behind the wall"
  units::Length length;  // of one piece
  int pieces = 0;
  units::Length width;  // of the last one of them, where it is narrower than the roll; 0: as wide
  int halves = 0;       // last ones of at most half a roll: two of them come out of one
  std::string how;      // English: how the count came about
};

// Layers across the wall, course by course: each piece as long as the layer reaches from the face into the fill, its
// strong way along the roll; pieces over the gaps of inside curves are counted in. Layers that the takeoff refuses
// have none. Rolled out along the wall: the lengths of each extent.
std::vector<StockPiece> layer_pieces(const Printed& printed);

// How the pieces of one wall come off their rolls, as the takeoff buys them.
struct RollPlan {
  catalogue::Id item;
  plan::ElementId of;
  int rolls = 0;
  int bound = 0;  // no plan does with fewer
  struct Way {
    int rolls = 0;
    std::vector<std::pair<units::Length, int>> pieces;  // longest first
  };
  std::vector<Way> ways;
};
std::vector<RollPlan> roll_plans(const Printed& printed);

// Strips of fabric as the takeoff laid them out, longest first.
std::vector<StockPiece> fabric_pieces(const Printed& printed);

// Goods by the length of which only the sum is known: whole ones, and what is cut off the last.
struct StockLength {
  catalogue::Id item;
  std::vector<plan::ElementId> of;
  std::string what;  // the takeoff's own words
  double metres = 0;
  units::Length stock;
  int whole = 0;
  double rest = 0;  // metres; 0: none
  std::string from;
};
std::vector<StockLength> stock_lengths(const Printed& printed);

// The passages of all these, for the cut list.
void add_stock(const Printed& printed, Sheet& sheet);

// Of "need/N" (line N of the takeoff), "layer/N", "roll/N" and "strip/N" (of the lists above); nothing of any other.
std::optional<std::string> working_of_need(const Printed& printed, const std::string& list, const std::string& number);

}  // namespace sheets
