// A part of a line as a run that pieces can be laid along.
#pragma once

#include "sheets/row_pieces.h"

namespace sheets {

// Between two stations (metres) of a path, straight or of one arc. The ends take the path's own corners where they lie
// on one and `mitred` says so.
PlacedRun part_of(const geometry::Path& path, double from, double to, Strip strip, bool mitred_before,
                  bool mitred_after);

// So many equal pieces of at most `piece` metres along the longer edge of the strip.
std::vector<RowPiece> even_pieces(const PlacedRun& placed, Strip strip, bool mitred_before, bool mitred_after,
                                  double piece);

// The way of the path at a station, as an angle, and the place so far to its left.
struct Station {
  Vec at;
  double way = 0;
};
Station station_on(const geometry::Path& path, double at, double left);

}  // namespace sheets
