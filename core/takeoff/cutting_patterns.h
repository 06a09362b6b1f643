// The linear side of cutting stock: ways of filling one stock, and how often each would be used if halves could be.
//
// Column generation (Gilmore and Gomory, 1961): a basis of patterns, and each time the pattern that earns most by the
// prices of the sizes, found by branch and bound. The bound that comes out is proven in whole numbers: prices p rounded
// down, V the exact best that one stock can earn by them; then no plan has fewer than sum(p d) / V stocks.
#pragma once

#include <cstdint>
#include <optional>
#include <vector>

namespace takeoff {

// A size that is wanted `count` times; kerf is in the size and in the room of a stock.
struct Wanted {
  std::int64_t size = 0;
  int count = 0;
};

struct Patterns {
  int bound = 0;                       // proven
  std::vector<std::vector<int>> uses;  // per pattern, how many of each size
  std::vector<double> times;           // how often each is used, not whole; together they make what is wanted exactly
};

// Sizes differ, each at least 1 and at most `room`, counts above 0. Nothing where the search for a pattern would take
// more than its steps (the same on every machine).
std::optional<Patterns> relaxed(const std::vector<Wanted>& wanted, std::int64_t room);

}  // namespace takeoff
