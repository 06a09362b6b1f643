#include "takeoff/cutting_stock.h"

#include <algorithm>
#include <numeric>
#include <set>

#include "problem/ensure.h"
#include "takeoff/cutting_patterns.h"

namespace takeoff {

namespace {

using Steps = std::int64_t;

constexpr std::size_t search_at_most = 60;
constexpr int search_steps = 2'000'000;
constexpr std::size_t most_sizes = 80;  // more different ones than that: the linear side is not asked

// A kerf between neighbours is the same as a kerf after each piece in a stock longer by one kerf.
struct Pieces {
  std::vector<std::size_t> number;  // of the demand, longest first
  std::vector<Steps> size;          // with its kerf, longest first
  Steps room = 0;                   // stock + kerf
};

Pieces in_order(const std::vector<units::Length>& demands, units::Length stock, units::Length kerf) {
  Pieces pieces;
  pieces.room = (stock + kerf).steps();
  for (std::size_t i = 0; i < demands.size(); ++i) {
    problem::ensure(demands[i] >= units::Length() && demands[i] <= stock, "every demand fits the stock");
    if (demands[i] > units::Length()) pieces.number.push_back(i);
  }
  std::stable_sort(pieces.number.begin(), pieces.number.end(),
                   [&](std::size_t a, std::size_t b) { return demands[a] > demands[b]; });
  for (const std::size_t i : pieces.number) pieces.size.push_back((demands[i] + kerf).steps());
  return pieces;
}

int up(Steps size, Steps room) { return static_cast<int>((size + room - 1) / room); }

// Pieces over room - alpha stand alone, those over half stand one to a stock, and the rest down to alpha must go into
// what these leave.
int proven_bound(const Pieces& pieces) {
  const auto& size = pieces.size;
  std::vector<Steps> sum(size.size() + 1, 0);
  std::partial_sum(size.begin(), size.end(), sum.begin() + 1);
  const auto first_not_over = [&](Steps limit) {
    return static_cast<std::size_t>(std::partition_point(size.begin(), size.end(), [&](Steps s) { return s > limit; }) -
                                    size.begin());
  };
  int bound = up(sum.back(), pieces.room);
  const std::size_t halves = first_not_over(pieces.room / 2);
  bound = std::max(bound, static_cast<int>(halves));
  for (std::size_t i = halves; i < size.size(); ++i) {
    const std::size_t alone = first_not_over(pieces.room - size[i]);
    const Steps left = static_cast<Steps>(halves - alone) * pieces.room - (sum[halves] - sum[alone]);
    const Steps over = sum[i + 1] - sum[halves] - left;
    bound = std::max(bound, static_cast<int>(halves) + (over > 0 ? up(over, pieces.room) : 0));
  }
  return bound;
}

using Plan = std::vector<int>;  // per piece in order, the stock that it comes from

// Longest first, each into the fullest stock that still holds it.
Plan longest_first(const Pieces& pieces) {
  Plan plan;
  std::set<std::pair<Steps, int>> open;  // room left, stock
  int bought = 0;
  for (const Steps size : pieces.size) {
    const auto fits = open.lower_bound({size, 0});
    std::pair<Steps, int> stock{pieces.room, bought};
    if (fits == open.end()) {
      ++bought;
    } else {
      stock = *fits;
      open.erase(fits);
    }
    plan.push_back(stock.second);
    open.insert({stock.first - size, stock.second});
  }
  return plan;
}

// Depth first with a fixed number of stocks: is there a plan at all?
class Search {
 public:
  enum class Answer { found, none, unknown };
  Search(const Pieces& pieces, int stocks, int& steps) : pieces_(pieces), steps_(steps) {
    left_.assign(static_cast<std::size_t>(stocks), pieces.room);
    plan_.assign(pieces.size.size(), 0);
    slack_ = stocks * pieces.room - std::accumulate(pieces.size.begin(), pieces.size.end(), Steps{0});
  }
  Answer run() {
    if (slack_ < 0) return Answer::none;
    return place(0);
  }
  const Plan& plan() const { return plan_; }

 private:
  // Stocks too full for the smallest piece are lost; more lost than there is to spare is no plan.
  bool hopeless() const {
    const Steps least = pieces_.size.back();
    Steps lost = 0;
    for (const Steps left : left_)
      if (left < least) lost += left;
    return lost > slack_;
  }

  Answer place(std::size_t i) {
    if (i == plan_.size()) return Answer::found;
    if (--steps_ < 0) return Answer::unknown;
    if (hopeless()) return Answer::none;
    const Steps size = pieces_.size[i];
    std::size_t first = 0;  // equal pieces go into stocks in order, or each plan would be tried in every order
    if (i > 0 && pieces_.size[i - 1] == size) first = static_cast<std::size_t>(plan_[i - 1]);
    std::set<Steps> tried;
    for (std::size_t s = first; s < left_.size(); ++s) {
      if (left_[s] < size || !tried.insert(left_[s]).second) continue;
      left_[s] -= size;
      plan_[i] = static_cast<int>(s);
      const Answer answer = place(i + 1);
      left_[s] += size;
      if (answer != Answer::none) return answer;
    }
    return Answer::none;
  }

  const Pieces& pieces_;
  int& steps_;
  std::vector<Steps> left_;
  Plan plan_;
  Steps slack_ = 0;
};

int bought(const Plan& plan) { return plan.empty() ? 0 : 1 + *std::max_element(plan.begin(), plan.end()); }

// Search from the bound up until there is a plan, or until its steps are used up; `bound` keeps what was proven.
Plan searched(const Pieces& pieces, Plan plan, int& bound) {
  int steps = search_steps;
  while (pieces.size.size() <= search_at_most && bound < bought(plan)) {
    Search search(pieces, bound, steps);
    const Search::Answer answer = search.run();
    if (answer == Search::Answer::unknown) break;
    if (answer == Search::Answer::found) return search.plan();
    ++bound;
  }
  return plan;
}

// Each size once, longest first, with how often it is wanted.
std::vector<Wanted> by_size(const Pieces& pieces) {
  std::vector<Wanted> wanted;
  for (const Steps size : pieces.size) {
    if (wanted.empty() || wanted.back().size != size) wanted.push_back({size, 0});
    ++wanted.back().count;
  }
  return wanted;
}

// Whole uses of the linear patterns first; what they leave is few enough to be searched, or goes longest first.
Plan rounded(const Pieces& pieces, const std::vector<Wanted>& wanted, const Patterns& patterns, int target) {
  Plan plan(pieces.size.size(), -1);
  std::vector<std::size_t> next;  // of each size, the first piece that has no stock yet
  std::size_t first = 0;
  for (const Wanted& one : wanted) {
    next.push_back(first);
    first += static_cast<std::size_t>(one.count);
  }
  int stock = 0;
  for (std::size_t p = 0; p < patterns.uses.size(); ++p)
    for (int times = static_cast<int>(patterns.times[p] + 1e-9); times > 0; --times, ++stock)
      for (std::size_t i = 0; i < wanted.size(); ++i)
        for (int n = patterns.uses[p][i]; n > 0; --n) plan[next[i]++] = stock;
  Pieces rest{{}, {}, pieces.room};
  for (std::size_t i = 0; i < plan.size(); ++i) {
    if (plan[i] >= 0) continue;
    rest.number.push_back(i);
    rest.size.push_back(pieces.size[i]);
  }
  int bound = std::max(0, target - stock);
  const Plan last = searched(rest, longest_first(rest), bound);
  for (std::size_t i = 0; i < last.size(); ++i) plan[rest.number[i]] = stock + last[i];
  return plan;
}

}  // namespace

StockPlan cutting_stock(const std::vector<units::Length>& demands, units::Length stock, units::Length kerf) {
  problem::ensure(stock > units::Length() && kerf >= units::Length(), "a stock has a length and a kerf is no gain");
  const Pieces pieces = in_order(demands, stock, kerf);
  StockPlan result;
  if (pieces.size.empty()) return result;
  Plan plan = longest_first(pieces);
  result.bound = proven_bound(pieces);
  const std::vector<Wanted> wanted = by_size(pieces);
  if (result.bound < bought(plan) && wanted.size() <= most_sizes) {
    if (const std::optional<Patterns> patterns = relaxed(wanted, pieces.room)) {
      result.bound = std::max(result.bound, patterns->bound);
      Plan other = rounded(pieces, wanted, *patterns, result.bound);
      if (bought(other) < bought(plan)) plan = std::move(other);
    }
  }
  plan = searched(pieces, std::move(plan), result.bound);
  result.bought = bought(plan);
  result.cuts.resize(static_cast<std::size_t>(result.bought));
  for (std::size_t i = 0; i < plan.size(); ++i)
    result.cuts[static_cast<std::size_t>(plan[i])].push_back(pieces.number[i]);
  return result;
}

}  // namespace takeoff
