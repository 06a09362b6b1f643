// Where a printed number comes from. A source is a short path; `working_of` gives the sentence behind it, so that every
// number on every sheet can be asked how it was made.
//
//   line/N                order line N of the estimate           cut/N        saw cut N of the takeoff
//   measure/ID/NAME       a measure of an element                check/N      preliminary check N
//   stage/WORD/hours      hours of a stage (or /amount)          step/CODE    a step of the price
//   payment/N             a payment                              total        the total with tax (price: before tax)
//   item/ID/FIELD         a field of a catalogue item            job/FIELD    what was chosen for the whole job
//   element/ID/FIELD      what was drawn or typed of an element  mark/N, diagonal/N, offset/N, stake/N of the
//   setting-out option/ID             an option's price                      unit-price/CODE  a unit price of the quote
//   visit/N/loads, visit/N/weight, weight/N: order_parts.h    saw/N: saw_cuts.h    need/N, layer/N ...: stock_pieces.h
//   running/ID/along, running/ID/out: running.h
//   quoted/STAGE, quoted-line/N                           what the quote shows of the price
//   counted/WHAT          counted on the sheet itself: rows, pages, pieces above it
#pragma once

#include <cstddef>
#include <optional>
#include <string>

#include "sheets/printed.h"

namespace sheets {

std::string of_line(const Printed& printed, const estimate::OrderLine& line);  // one of the estimate's own
std::string of_measure(const plan::ElementId& element, const std::string& name);
std::string of_cut(std::size_t number);
std::string of_check(std::size_t number);
std::string of_stage(takeoff::Stage stage, const std::string& what);  // hours, amount
std::string of_step(const std::string& code);
std::string of_payment(std::size_t number);
std::string of_item(const catalogue::Id& item, const std::string& field);
std::string of_job(const std::string& field);
std::string of_element(const plan::ElementId& element, const std::string& field);
std::string of_setting_out(const std::string& list, std::size_t number);  // mark, diagonal, offset, stake
std::string of_option(const plan::ElementId& option);
std::string of_unit_price(const std::string& code);
std::string counted_here(const std::string& what);

// The working, in English and in the job's units. Nothing: there is no such place in these results.
std::optional<std::string> working_of(const Printed& printed, const std::string& source);

}  // namespace sheets
