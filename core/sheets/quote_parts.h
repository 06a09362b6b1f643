// The parts of the quote, in the order in which a customer reads them.
#pragma once

#include <string>
#include <vector>

#include "sheets/printed.h"

namespace sheets {

void add_picture(const Printed& printed, Sheet& sheet);       // the plan as it will be laid            quote_built.cpp
void add_built(const Printed& printed, Sheet& sheet);         // what is included, element by element   quote_built.cpp
void add_not_included(const Printed& printed, Sheet& sheet);  //                                     quote_words.cpp
void add_price_of(const Printed& printed, Sheet& sheet);      // at the detail chosen                   quote_price.cpp
void add_options(const Printed& printed, Sheet& sheet);       //                                        quote_price.cpp
void add_unit_prices(const Printed& printed, Sheet& sheet);   // of what can't be seen                  quote_price.cpp
void add_payments(const Printed& printed, Sheet& sheet);      //                                        quote_price.cpp
void add_assumed(const Printed& printed, Sheet& sheet);       // what was taken for granted           quote_words.cpp
void add_terms(const Printed& printed, Sheet& sheet);         // validity, terms, cancellation          quote_words.cpp
void add_signatures(const Printed& printed, Sheet& sheet);    //                                        quote_words.cpp

// The whole in parts as large as the weights, each to the coin; they add up to the whole. The boundaries between them
// are rounded, so that no part is off by more than one coin. Weights that come to nothing: no parts.
std::vector<units::Money> shared(units::Money whole, const std::vector<units::Money>& weights);

// So many days after a date: "2026-12-28" of 2026-11-28 and 30. Nothing where the date is none.
std::optional<std::string> days_after(const std::string& date, int days);

// Of "quoted/STAGE" and "quoted-line/N"; nothing of any other.
std::optional<std::string> working_of_quote(const Printed& printed, const std::string& list, const std::string& number);

}  // namespace sheets
