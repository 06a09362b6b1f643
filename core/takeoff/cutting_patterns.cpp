#include "takeoff/cutting_patterns.h"

#include <algorithm>
#include <numeric>

namespace takeoff {

namespace {

using Steps = std::int64_t;

constexpr double whole_price = 1 << 30;  // one stock, in the whole numbers that prices are rounded to
constexpr double dust = 1e-9;
constexpr int most_turns = 2000;
constexpr int most_steps = 4'000'000;

// The most that one stock can earn when each size has a price: branch and bound, best price per length first.
class Earner {
 public:
  Earner(const std::vector<Wanted>& wanted, const std::vector<Steps>& price, Steps room, int& steps)
      : wanted_(wanted),
        price_(price),
        steps_(steps),
        order_(wanted.size()),
        use_(wanted.size()),
        best_(wanted.size()) {
    std::iota(order_.begin(), order_.end(), std::size_t{0});
    std::ranges::stable_sort(order_, [&](std::size_t a, std::size_t b) { return rate(a) > rate(b); });
    fill(0, room, 0);
  }
  Steps value() const { return value_; }
  const std::vector<int>& use() const { return best_; }

 private:
  double rate(std::size_t i) const { return static_cast<double>(price_[i]) / static_cast<double>(wanted_[i].size); }

  void fill(std::size_t at, Steps room, Steps earned) {
    if (earned > value_) {
      value_ = earned;
      best_ = use_;
    }
    if (at == order_.size() || --steps_ < 0) return;
    const std::size_t i = order_[at];
    if (price_[i] <= 0) return;
    // What is left earns at most this; half a unit above for the rounding of the product.
    if (static_cast<double>(earned) + rate(i) * static_cast<double>(room) + 0.5 < static_cast<double>(value_ + 1))
      return;
    for (Steps n = std::min<Steps>(room / wanted_[i].size, wanted_[i].count); n >= 0; --n) {
      use_[i] = static_cast<int>(n);
      fill(at + 1, room - n * wanted_[i].size, earned + n * price_[i]);
    }
    use_[i] = 0;
  }

  const std::vector<Wanted>& wanted_;
  const std::vector<Steps>& price_;
  int& steps_;
  std::vector<std::size_t> order_;
  std::vector<int> use_;
  std::vector<int> best_;
  Steps value_ = 0;
};

// The revised simplex method with the inverse of the basis kept.
class Basis {
 public:
  Basis(const std::vector<Wanted>& wanted, Steps room) : size_(wanted.size()), inverse_(size_ * size_, 0.0) {
    for (std::size_t i = 0; i < size_; ++i) {
      std::vector<int> alone(size_, 0);
      alone[i] = static_cast<int>(std::min<Steps>(room / wanted[i].size, wanted[i].count));
      at(i, i) = 1.0 / alone[i];
      times_.push_back(static_cast<double>(wanted[i].count) / alone[i]);
      uses_.push_back(std::move(alone));
    }
  }

  std::vector<double> prices() const {
    std::vector<double> sums(size_, 0.0);
    for (std::size_t row = 0; row < size_; ++row)
      for (std::size_t column = 0; column < size_; ++column) sums[column] += inverse_[row * size_ + column];
    return sums;
  }

  // Takes the pattern in for the one that is used up first; ties by their place, so that it ends.
  bool enter(const std::vector<int>& use) {
    std::vector<double> along(size_, 0.0);
    for (std::size_t row = 0; row < size_; ++row)
      for (std::size_t column = 0; column < size_; ++column) along[row] += inverse_[row * size_ + column] * use[column];
    std::optional<std::size_t> out;
    for (std::size_t row = 0; row < size_; ++row)
      if (along[row] > dust && (!out || times_[row] / along[row] < times_[*out] / along[*out] - dust)) out = row;
    if (!out) return false;
    const double pivot = along[*out];
    for (std::size_t column = 0; column < size_; ++column) at(*out, column) /= pivot;
    times_[*out] /= pivot;
    for (std::size_t row = 0; row < size_; ++row) {
      if (row == *out || along[row] == 0) continue;
      for (std::size_t column = 0; column < size_; ++column) at(row, column) -= along[row] * at(*out, column);
      times_[row] = std::max(0.0, times_[row] - along[row] * times_[*out]);
    }
    uses_[*out] = use;
    return true;
  }

  Patterns patterns(int bound) && { return {bound, std::move(uses_), std::move(times_)}; }

 private:
  double& at(std::size_t row, std::size_t column) { return inverse_[row * size_ + column]; }
  std::size_t size_;
  std::vector<double> inverse_;
  std::vector<std::vector<int>> uses_;  // the patterns of the basis, and how often each is used
  std::vector<double> times_;
};

double earned(const std::vector<double>& prices, const std::vector<int>& use) {
  return std::inner_product(prices.begin(), prices.end(), use.begin(), 0.0);
}

}  // namespace

std::optional<Patterns> relaxed(const std::vector<Wanted>& wanted, std::int64_t room) {
  if (wanted.empty()) return Patterns{};
  int bound = 0;
  Basis basis(wanted, room);
  int steps = most_steps;
  for (int turn = 0; turn < most_turns; ++turn) {
    const std::vector<double> prices = basis.prices();
    std::vector<Steps> whole;
    Steps sum = 0;
    for (std::size_t i = 0; i < wanted.size(); ++i) {
      whole.push_back(static_cast<Steps>(std::max(0.0, prices[i]) * whole_price));
      sum += whole.back() * wanted[i].count;
    }
    const Earner best(wanted, whole, room, steps);
    if (steps < 0) return std::nullopt;
    if (best.value() > 0) bound = std::max(bound, static_cast<int>((sum + best.value() - 1) / best.value()));
    if (earned(prices, best.use()) <= 1 + dust || !basis.enter(best.use())) break;
  }
  return std::move(basis).patterns(bound);
}

}  // namespace takeoff
