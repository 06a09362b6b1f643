// What saw_cuts gathers with: used by saw_*.cpp alone.
#pragma once

#include "sheets/saw_cuts.h"
#include "takeoff/paving/border.h"

namespace sheets {

class SawList {
 public:
  explicit SawList(const Printed& printed) : printed_(printed) {}
  const Printed& printed() const { return printed_; }
  const plan::Job& job() const { return printed_.job(); }
  // `place` of an element; joins a setting that is there already.
  void add(SawCut cut, const plan::ElementId& of, const std::string& place);
  std::vector<SawCut> sorted() &&;

 private:
  const Printed& printed_;
  std::vector<SawCut> cuts_;
};

// The cuts of one run of a row: its pieces, and a mitre at each end that has a corner (radians; 0: none).
struct RowCuts {
  const catalogue::Item* item = nullptr;
  double piece = 0;  // metres: a whole one along the row
  double deep = 0;   // and across
  takeoff::paving::RowMake make;
  double corner_before = 0;
  double corner_after = 0;
};
double by_fence(const Printed& printed, double metres);  // to 1/16 in, 1 mm
void add_row(SawList& list, const RowCuts& row, const plan::ElementId& of);

void add_fields(SawList& list);   // units of the areas                            saw_fields.cpp
void add_borders(SawList& list);  // their border courses                          saw_rows.cpp
void add_copings(SawList& list);  //                                               saw_rows.cpp
void add_kerbs(SawList& list);    //                                               saw_rows.cpp
void add_blocks(SawList& list);   // blocks, caps, steps: the takeoff's own list   saw_blocks.cpp

}  // namespace sheets
