#include "estimate/kinds.h"

#include <algorithm>
#include <array>

namespace estimate {

using plan::CostKind;

namespace {

struct Named {
  std::string_view word;
  CostKind kind;
};
constexpr std::array names{Named{"material", CostKind::material},
                           Named{"labour", CostKind::labour},
                           Named{"machine", CostKind::machine},
                           Named{"trucking", CostKind::trucking},
                           Named{"subcontract", CostKind::subcontract},
                           Named{"allowance", CostKind::allowance},
                           Named{"fee", CostKind::fee}};

// By the item's own kind, before its supplier is asked.
constexpr std::array by_item{Named{"machine", CostKind::machine}, Named{"saw", CostKind::machine},
                             Named{"truck", CostKind::trucking},  Named{"deposit", CostKind::trucking},
                             Named{"credit", CostKind::trucking}, Named{"disposal", CostKind::fee}};

constexpr std::array brought{std::string_view("delivery:"), std::string_view("short-load:")};

}  // namespace

std::optional<CostKind> cost_kind(std::string_view word) {
  const auto known = std::ranges::find(names, word, &Named::word);
  return known == names.end() ? std::nullopt : std::optional(known->kind);
}

std::string word(CostKind kind) { return std::string(std::ranges::find(names, kind, &Named::kind)->word); }

CostKind kind_of(const catalogue::Item& item) {
  if (const auto own = item.details.find("cost_kind"); own != item.details.end())
    if (const auto kind = cost_kind(own->second)) return *kind;
  if (const auto known = std::ranges::find(by_item, std::string_view(item.kind), &Named::word); known != by_item.end())
    return known->kind;
  if (item.supplier == "subcontract") return CostKind::subcontract;
  if (item.kind == "allowance") return CostKind::allowance;
  return item.kind == "labour" ? CostKind::labour : CostKind::material;
}

CostKind kind_of(const plan::Job& job, const OrderLine& line) {
  if (line.work) return CostKind::labour;
  if (std::ranges::any_of(brought, [&line](std::string_view start) { return line.item.starts_with(start); }))
    return CostKind::trucking;
  const catalogue::Item* item = job.catalogue->item(line.item);
  return item ? kind_of(*item) : CostKind::material;
}

}  // namespace estimate
