// A level book reduced by the height of instrument.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "plan/element.h"
#include "plan/job.h"

namespace takeoff::levels {

// One row reduced, metres. `instrument` is the height of instrument that the row's sights were read at (of a turning
// point: the new one; of a last foresight: the one that it was read at). `correction` is what sharing out the
// misclosure added to `height`; 0 where none was asked for.
struct BookRow {
  std::string point;
  std::optional<double> instrument;
  double height = 0;
  double correction = 0;
};
// The arithmetic check: sum of backsights less sum of foresights = height of the last foresight's point less the first
// height, before any correction; it holds of a right sum whatever was read, so a book that fails it is this program's
// fault (problem::ensure). A backsight counts once a foresight has followed it. The misclosure (last height as read
// less the known one) tells how well it was read.
struct Reduced {
  std::vector<BookRow> rows;
  double sum_back = 0;
  double sum_fore = 0;
  std::optional<double> misclosure;
  int set_ups = 0;
};

// Heights are the start's, carried from set-up to set-up; everything is added up on the grid, so that no reading is
// rounded. Shared out (`share_out`, and the run closed): after n of N set-ups a height takes n/N of the misclosure off,
// so that the first height stays and the last is the known one; an intermediate sight takes the share of its own
// set-up.
//
// Faults, each with its row and point. Of the whole book: "level-book-empty" (fewer than two rows). Of a row:
// "level-book-start" (no backsight on the first row, or another sight beside it), "level-book-no-sight",
// "level-book-between" (an intermediate beside another sight), "level-book-turn" (a foresight that is not the last and
// has no backsight), "level-book-back" (a backsight without a foresight after the first row), "level-book-open"
// (closing height given, last row is no foresight), "level-book-range" (a height past 10 km).
problem::Result<Reduced> reduce(const plan::LevelBook& book, const plan::ElementId& id);

// What the misclosure says: over the limit `level-misclosure` (a length, for a run of one set-up, times the square root
// of the set-ups) a flag to level it again; shared out, a notice of how much; a run that was not closed, a notice.
std::vector<problem::Problem> judged(const Reduced& reduced, const plan::LevelBook& book, const plan::Job& job,
                                     const plan::ElementId& id);

// The two-peg test of the level itself. Midway between two pegs its error falls out of the difference; then it stands
// beside the near peg. `far_should` is what the far rod ought to read there; `error` how much too high it reads over
// the distance between the pegs (its line of sight rises where positive). Rod readings, metres.
struct TwoPeg {
  double difference = 0;  // true: far peg's reading less the near one's
  double far_should = 0;
  double error = 0;
};
TwoPeg two_peg(double midway_near, double midway_far, double beside_near, double beside_far);

}  // namespace takeoff::levels
