// The parts of the working, in the order in which they are printed.
#pragma once

#include "sheets/printed.h"

namespace sheets {

void add_stages(const Printed& printed, Sheet& sheet);       // every line with its working           working_stages.cpp
void add_price(const Printed& printed, Sheet& sheet);        // stage by stage, then step by step     working_price.cpp
void add_assumptions(const Printed& printed, Sheet& sheet);  // choices, sentences of the quote       working_notes.cpp
void add_site_plans(const Printed& printed, Sheet& sheet);   // what was drawn over, at which scale   working_notes.cpp
void add_checks(const Printed& printed, Sheet& sheet);       // preliminary                           working_checks.cpp
void add_problems(const Printed& printed, Sheet& sheet);     // problems, flags, notices              working_checks.cpp

// "Overhead" of a step of the price, in the language of the sheet; `name` where the code is none of its.
std::string step_words(const Printed& printed, const std::string& code, const std::string& name);

// "1,234.5 m²" of a net quantity in the unit of its working.
std::string net_words(const Printed& printed, double quantity, const std::string& unit);

// A sentence as it is, a longer one part by part.
std::vector<std::string> working_lines(const Printed& printed, const takeoff::Working& working,
                                       const std::string& name);

}  // namespace sheets
