#include "takeoff/levels/book.h"

#include <cmath>

#include "problem/ensure.h"

namespace takeoff::levels {

namespace {

using plan::RodReading;
using units::Length;

constexpr Length farthest =
    Length::millimetres(10'000'000);  // no height or sum of readings lies further from the datum

std::string row_name(std::size_t row, const RodReading& reading) {
  return "row " + std::to_string(row + 1) + (reading.point.empty() ? "" : " (" + reading.point + ")");
}

std::unexpected<problem::Problem> row_fault(const std::string& code, std::size_t row, const RodReading& reading,
                                            const plan::ElementId& id, const std::string& what,
                                            const std::string& mend) {
  return problem::fault("level-book-" + code, row_name(row, reading) + " of the level book " + what, mend,
                        {id, {}, 0, 0, {}});
}

// A row by what was read: the rules of the page, before any sum.
problem::Result<void> check_row(const plan::LevelBook& book, std::size_t row, const plan::ElementId& id) {
  const RodReading& reading = book.readings[row];
  const bool last = row + 1 == book.readings.size();
  const auto refuse = [&](const char* code, const char* what, const char* mend) {
    return row_fault(code, row, reading, id, what, mend);
  };
  if (!reading.back && !reading.between && !reading.fore)
    return refuse("no-sight", "has no reading", "enter what the rod read there, or take the row out");
  if (row == 0 && !reading.back)
    return refuse("start", "has no backsight", "enter the backsight on the bench mark in the first row");
  if (row == 0 && (reading.between || reading.fore))
    return refuse("start", "has another reading beside the first backsight",
                  "enter only the backsight on the bench mark here, and every other sight in a row of its own");
  if (reading.between && (reading.back || reading.fore))
    return refuse("between", "has an intermediate sight beside a backsight or foresight",
                  "keep one of them: a turning point has a foresight and a backsight");
  if (row > 0 && reading.back && !reading.fore)
    return refuse("back", "has a backsight without a foresight",
                  "enter the foresight that was read on this point before the level was moved");
  if (reading.fore && !reading.back && !last)
    return refuse("turn", "has a foresight, no backsight and more rows after it",
                  "enter the backsight read after the level was moved, or make it an intermediate sight");
  if (last && book.finish && !reading.fore)
    return refuse("open", "ends a run with a known closing height, but is no foresight",
                  "enter the last sight as a foresight, or take the closing height out");
  return {};
}

// The sums, on the grid: nothing is rounded before the misclosure is shared out.
struct Run {
  Length instrument;
  Length height;  // of the point where the run stands
  Length sight;   // the backsight that no foresight has followed yet
  Length back;
  Length fore;
  int set_ups = 0;
};

bool within(Length height) { return height <= farthest && -height <= farthest; }

// The row's height as read; `set_up` is the number of the set-up at which it was read.
Length take(const RodReading& reading, Run& run, int& set_up) {
  set_up = run.set_ups;
  if (reading.between) return run.instrument - *reading.between;
  if (reading.fore) {
    run.height = run.instrument - *reading.fore;
    run.fore += *reading.fore;
    run.back += run.sight;
  }
  if (reading.back) {
    run.instrument = run.height + *reading.back;
    run.sight = *reading.back;
    ++run.set_ups;
  }
  return run.height;
}

bool readings_within(const RodReading& reading) {
  for (const auto& sight : {reading.back, reading.between, reading.fore})
    if (sight && !within(*sight)) return false;
  return true;
}

}  // namespace

problem::Result<Reduced> reduce(const plan::LevelBook& book, const plan::ElementId& id) {
  if (book.readings.size() < 2)
    return problem::fault("level-book-empty", "the level book has fewer than two rows",
                          "enter the backsight on the bench mark and what was read from there", {id, {}, 0, 0, {}});
  Run run;
  run.height = book.start;
  Reduced reduced;
  std::vector<int> read_at;
  for (std::size_t row = 0; row < book.readings.size(); ++row) {
    const RodReading& reading = book.readings[row];
    if (auto good = check_row(book, row, id); !good) return std::unexpected(good.error());
    int set_up = 0;
    const bool sane = within(run.height) && readings_within(reading);
    const Length height = sane ? take(reading, run, set_up) : Length{};
    if (!sane || !within(height) || !within(run.instrument))
      return row_fault("range", row, reading, id, "lies more than 10 km above or below the datum",
                       "look at its readings and at the height of the bench mark");
    reduced.rows.push_back({reading.point, run.instrument.metres().si(), height.metres().si(), 0});
    read_at.push_back(set_up);
  }
  problem::ensure(run.back - run.fore == run.height - book.start, "backsights less foresights carry the run's heights");
  reduced.sum_back = run.back.metres().si();
  reduced.sum_fore = run.fore.metres().si();
  reduced.set_ups = run.set_ups;
  if (!book.finish) return reduced;
  reduced.misclosure = (run.height - *book.finish).metres().si();
  if (!book.share_out) return reduced;
  for (std::size_t row = 0; row < reduced.rows.size(); ++row) {
    BookRow& shared = reduced.rows[row];
    shared.correction = -*reduced.misclosure * read_at[row] / read_at.back();
    shared.height += shared.correction;
  }
  reduced.rows.back().height = book.finish->metres().si();
  return reduced;
}

std::vector<problem::Problem> judged(const Reduced& reduced, const plan::LevelBook& book, const plan::Job& job,
                                     const plan::ElementId& id) {
  const auto said = [&](problem::Severity severity, const char* code, std::string text, std::string mend) {
    return std::vector<problem::Problem>{{severity, code, std::move(text), std::move(mend), {id, {}, 0, 0, {}}}};
  };
  const auto shown = [&](double metres) {
    return units::show_length(Length::nearest(units::Metres(metres)), job.heading.units);
  };
  if (!reduced.misclosure)
    return said(problem::Severity::notice, "level-book-not-closed", "the levels were not run back to a known height",
                "close the run on a bench mark: only that shows a misread rod");
  const double one = job.catalogue->length_limit("level-misclosure", Length::inch_64ths(15)).metres().si();
  const double allowed = one * std::sqrt(reduced.set_ups);
  const double off = *reduced.misclosure;
  const std::string by = "the level run closes " + shown(std::abs(off)) + (off < 0 ? " low" : " high");
  if (std::abs(off) > allowed)
    return said(problem::Severity::flag, "level-book-misclosure",
                by + " and " + shown(allowed) + " is usual for " + std::to_string(reduced.set_ups) + " set-up" +
                    (reduced.set_ups == 1 ? "" : "s") +
                    (book.share_out ? "; sharing it out hides a misread rod and does not mend it" : ""),
                "read the book again, then the levels; the person who levels decides");
  if (off != 0 && book.share_out)
    return said(problem::Severity::notice, "level-book-shared", by + "; it was shared out over the set-ups", "");
  return {};
}

TwoPeg two_peg(double midway_near, double midway_far, double beside_near, double beside_far) {
  TwoPeg found;
  found.difference = midway_far - midway_near;
  found.far_should = beside_near + found.difference;
  found.error = beside_far - found.far_should;
  return found;
}

}  // namespace takeoff::levels
