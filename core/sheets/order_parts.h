// What is ordered of whom, worked out for the sheet of orders.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "estimate/deliveries.h"
#include "sheets/printed.h"

namespace sheets {

// What one supplier is asked for: numbers of order lines and of `estimate::visits`, both by stage.
struct Asked {
  catalogue::Id supplier;  // empty: the items name none
  std::vector<std::size_t> lines;
  std::vector<std::size_t> visits;
};
// Goods, hire, haulage and subcontracts: every line of an item that is not work, a deposit or a credit, nor supplied by
// others. In the order in which the suppliers are needed.
std::vector<Asked> asked(const Printed& printed, const std::vector<estimate::Visit>& visits);
bool supplied_by_others(const Printed& printed, const estimate::OrderLine& line);

// What is ordered times the mass of one. Nothing: the catalogue does not say how heavy it is.
std::optional<takeoff::Working> weight_of(const plan::Job& job, const estimate::OrderLine& line);

// Of "visit/N/loads" (loads, weight, load: of one of them) and "weight/N" (of order line N); nothing of any other.
std::optional<std::string> working_of_order(const Printed& printed, const std::string& list, const std::string& number,
                                            const std::string& what);

}  // namespace sheets
