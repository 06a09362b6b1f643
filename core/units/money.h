// Money: a whole number of the smallest coin. Nothing but `times` rounds, and it rounds once.
#pragma once

#include <compare>
#include <cstdint>
#include <string>
#include <string_view>

#include "problem/problem.h"

namespace units {

class Money {
 public:
  constexpr Money() = default;
  static constexpr Money of_coins(std::int64_t coins) { return Money(coins); }
  constexpr std::int64_t coins() const { return coins_; }

  constexpr Money operator-() const { return Money(-coins_); }
  constexpr Money& operator+=(Money other) {
    coins_ += other.coins_;
    return *this;
  }
  friend constexpr Money operator+(Money a, Money b) { return a += b; }
  friend constexpr Money operator-(Money a, Money b) { return Money(a.coins_ - b.coins_); }
  constexpr auto operator<=>(const Money&) const = default;

 private:
  explicit constexpr Money(std::int64_t coins) : coins_(coins) {}
  std::int64_t coins_ = 0;
};

// price x amount, to the nearest coin, halves away from zero. The product is taken with decimal care: an amount such as
// 0.145 stands for 145/1000 (the shortest decimal that reads back as it), so 1.00 x 0.145 is 0.15. Exact while the
// amount has at most 15 digits; a product past the int64 range breaks a promise.
Money times(Money price, double amount);

// "1234.50": dot decimals, no thousands mark; `decimals` is 2 for dollars, 0 for yen.
std::string write_money(Money money, int decimals);

// What write_money writes, and nothing else: "12.5" and "12.50" are 1250 coins at two decimals, "12.505" is refused.
problem::Result<Money> read_money(std::string_view text, int decimals);

}  // namespace units
