// What the takeoff lists, as plain values: which lines, in what order, with what words; and the price that a person
// gives to one without.
#pragma once

#include <QString>
#include <optional>
#include <string>
#include <vector>

#include "results/results.h"

namespace ui {

// Of what is listed: one element (what is bought and done for it), one stage, or the whole job.
enum class Scope { element, stage, job };
struct Asked {
  Scope scope = Scope::job;
  plan::ElementId element;                         // of Scope::element
  takeoff::Stage stage = takeoff::Stage::protect;  // of Scope::stage
};

struct TakeoffRow {
  enum class Kind { line, group } kind = Kind::line;
  int line = -1;  // its number in estimate.lines; a group has none
  takeoff::Stage stage = takeoff::Stage::protect;
  QString tag;  // of which element, "A1"; "A1 +2" of three; empty: the job's
  QString what;
  QString quantity;  // as it is ordered, with its unit; hours of work
  QString amount;    // "no price" and "by others" where there is none
  bool no_price = false;
  bool work = false;
  // Of an element: how much of the line is its own; 1 is all. Nothing where it can't be told apart.
  std::optional<double> part = 1;
};

// Stage by stage, material before work, of one stage or one element; of the whole job all material first, then a group
// "Labour" with its hours and money, then the work. An element's lines are its own share: order quantity and amount of
// a line that is bought for several elements together are divided as their needs are, so that the shares of all
// elements make up the line; where the takeoff does not part them (haul, mixed packs) the whole line stands, with the
// tags of all whom it is for.
std::vector<TakeoffRow> takeoff_rows(const results::Results& results, const Asked& asked);

// The share of `element` in what the line's item is needed for; nothing where a need belongs to several at once.
std::optional<double> share_of(const plan::ElementId& element, const estimate::OrderLine& line,
                               const takeoff::Takeoff& takeoff, const plan::Job& job);

// What stays the same of a line when the job is computed again: stage, item, kind of measure.
std::string key_of(const estimate::OrderLine& line);

// The items whose price the line waits for: its own, or those of the crew that does the work. None where it has an
// amount, or where the catalogue does not know them.
std::vector<plan::Id> items_without_price(const estimate::OrderLine& line, const plan::Job& job);

// The job with that price in its own catalogue, per item.unit, of that date. The text is money as it is written
// ("12.50", a dollar sign before it may stand). Refused: what is no amount, 0 or less ("others supply it" is said by
// with_supplied_by_others), an item that the job does not know.
problem::Result<plan::Job> with_price(const plan::Job& job, const plan::Id& item, const std::string& text,
                                      const std::string& date);
problem::Result<plan::Job> with_supplied_by_others(const plan::Job& job, const plan::Id& item, const std::string& date);

}  // namespace ui
