// How the job book says what it has: states with their sign, times, sums.
#pragma once

#include <QIcon>
#include <QString>

#include "problem/problem.h"
#include "store/job_rows.h"

namespace ui {

QString state_name(store::State state);  // "Quoted", in the language in use
QIcon state_sign(store::State state);    // a disc that fills by quarters as the work goes on
// A time of the book in the zone and the manner of this machine; empty stays empty.
QString shown_when(const std::string& utc);
QString shown_sum(units::Money sum, const std::string& currency, int decimals);
// What is wrong and what mends it, in one sentence.
QString told(const problem::Problem& problem);

}  // namespace ui
