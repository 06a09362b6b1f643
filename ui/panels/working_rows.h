// The working of an order line, row by row, as the takeoff opens it.
#pragma once

#include <QString>
#include <string>
#include <vector>

#include "estimate/estimate.h"
#include "plan/job.h"

namespace ui {

// Where a figure came from, as the link beside it says.
enum class Leads { nowhere, plan, section, catalogue, choices };

// `figure`: a number that was measured or looked up, ringed with its number. `made`: worked out of the rows that stand
// deeper below it. `order`: what is needed and what is ordered. `told`: a sentence.
struct WorkingRow {
  enum class Kind { figure, made, order, told } kind = Kind::figure;
  int depth = 0;  // 0 stands at the left
  int ring = 0;   // from 1; 0: none
  QString sign;   // what it does to the row before it: "", "×", "÷", "+", "−"
  QString name;
  QString value;    // in the job's units
  QString ordered;  // of `order`: what is bought
  std::string of;   // an element's id, "build-up/layer", "item/field", "choices/..."; empty: nothing
  Leads leads = Leads::nowhere;
};

// Figures first to last as a hand calculation reads, then what is needed and what is ordered, then the order in words.
// A part that was explained before (the same name, the same numbers) is only named again. Rings are numbered as shown.
std::vector<WorkingRow> working_rows(const estimate::OrderLine& line, const plan::Job& job);

Leads leads(const std::string& of, const plan::Job& job);

// What a line that is opened lights: for each ring in order what it is of; empty where it leads nowhere.
std::vector<std::string> rings_of(const std::vector<WorkingRow>& rows);

// A number in the job's units: "811.1 sq ft", 6", "1.15". Lengths that are whole 1/16 in (whole millimetres) are told
// in feet and inches (metres); others in decimals, so that the working can be checked by hand.
QString in_units(units::Amount amount, units::System system);

}  // namespace ui
