// Where the money of a line goes.
#pragma once

#include <string_view>

#include "estimate/estimate.h"

namespace estimate {

// "material", "labour", "machine", "trucking", "subcontract", "allowance", "fee"; nothing for other words.
std::optional<plan::CostKind> cost_kind(std::string_view word);
std::string word(plan::CostKind kind);

// What an item is paid as:
// - its detail cost_kind, where it has one (a permit that an office pays for as a fee);
// - machines and saws: machine; trucks, pallet deposits and their credits: trucking; disposal: fee;
// - what the supplier `subcontract` supplies: subcontract; other sums set aside: allowance;
// - labour; all else is material.
plan::CostKind kind_of(const catalogue::Item& item);

// Of a line: work is labour, deliveries and short loads are trucking, the rest goes by the item. A line whose item the
// job's catalogue does not know is material.
plan::CostKind kind_of(const plan::Job& job, const OrderLine& line);

}  // namespace estimate
