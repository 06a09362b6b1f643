// The change orders of a job, as the office keeps them: one for each two versions that it was made of, in the order in
// which they were begun.
#pragma once

#include "estimate/change_order.h"

namespace estimate {

struct KeptOrder {
  int before = 0;  // numbers of the two versions among the job's
  int after = 0;
  ChangeInput input;    // its earlier orders are only those that the office does not keep: on paper, by others
  units::Money amount;  // what it came to when it was last changed
  bool operator==(const KeptOrder&) const = default;
};

// The order of the two versions; null: none yet.
const KeptOrder* find(const std::vector<KeptOrder>& orders, int before, int after);
// With this one in the place of that of its two versions, or at the end.
std::vector<KeptOrder> with(std::vector<KeptOrder> orders, KeptOrder order);
std::vector<KeptOrder> without(std::vector<KeptOrder> orders, int before, int after);

// What the running sum of the order of these two versions counts: the orders begun before it, then those of its own
// input. An order that is not there yet comes after all.
std::vector<Earlier> earlier(const std::vector<KeptOrder>& orders, int before, int after);
// A new order of the two versions: its number is the next one, the contract that of the first order, else `contract`.
KeptOrder begun(const std::vector<KeptOrder>& orders, int before, int after, units::Money contract);
// What earlier orders charged of something that the quote has a unit price for: the latest of them that met it says
// how much went past what the quote assumed. 0: none did.
double charged(const std::vector<KeptOrder>& orders, int before, int after, const plan::UnitPrice& price);

}  // namespace estimate
