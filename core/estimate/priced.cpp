#include "estimate/priced.h"

#include <algorithm>
#include <cmath>

#include "estimate/kinds.h"
#include "estimate/money_words.h"
#include "estimate/words.h"
#include "units/decimal.h"
#include "units/rational.h"

namespace estimate {

using plan::Offer;
using problem::Severity;
using units::Int128;
using units::Money;

namespace {

constexpr std::int64_t most_coins = 9'000'000'000'000'000;

// base x top / under, rounded once; nothing past all reason. `under` is over 0.
std::optional<Money> part_of(Money base, Int128 top, Int128 under) {
  const auto share = units::fraction(top, under);
  const auto made = share ? units::product(*share, {base.coins(), 1}) : std::nullopt;
  if (!made) return std::nullopt;
  const Int128 coins = units::nearest_whole(*made);
  if (coins > most_coins || coins < -most_coins) return std::nullopt;
  return Money::of_coins(static_cast<std::int64_t>(coins));
}

// A share as people typed it: digits / 10^k.
struct Typed {
  Int128 top = 0;
  Int128 under = 1;
};
Typed typed(double share) {
  const units::Decimal decimal = units::shortest_decimal(share);
  Typed made{static_cast<Int128>(decimal.digits), 1};
  for (int i = decimal.exponent; i < 0 && i > -30; ++i) made.under *= 10;
  for (int i = 0; i < decimal.exponent; ++i) made.top *= 10;
  return made;
}

struct Reckoning {
  const plan::Job& job;
  Priced made;
  Money sum;  // of the steps so far

  const Offer& offer() const { return job.offer; }
  std::string shown(Money money) const { return shown_money(money, job.heading); }

  void say(const char* code, std::string text, std::string mend, Severity severity = Severity::problem) {
    made.problems.push_back({severity, code, std::move(text), std::move(mend), {}});
  }

  void step(const char* code, std::string name, Money amount, std::string working) {
    made.steps.push_back({code, std::move(name), amount, std::move(working)});
    sum += amount;
  }

  // 0 where it can't be used.
  double share(double value, const char* what) {
    if (value >= 0 && value <= 100) return value < 1e-12 ? 0 : value;
    say("offer-share", std::string("the share for ") + what + " is below 0 or over 10,000 %, so it counts as 0",
        "write 0.15 for 15 %");
    return 0;
  }

  Money taken(Money base, double share, const char* what) {
    const Typed part = typed(share);
    if (const auto amount = part_of(base, part.top, part.under)) return *amount;
    say("offer-too-large", std::string("the sum for ") + what + " is past what can be counted, so it counts as 0",
        "check prices and shares");
    return {};
  }

  void direct(const Estimate& estimate);
  void overhead();
  void contingency();
  void profit();
  void rounding();
  void tax();
  void payments();
};

void Reckoning::direct(const Estimate& estimate) {
  Money all;
  for (const OrderLine& line : estimate.lines) {
    if (!line.amount) continue;
    made.by_kind[line.kind] += *line.amount;
    all += *line.amount;
  }
  made.direct = all;
  step("direct", "Direct cost", all, "sum of " + counted(static_cast<double>(estimate.lines.size()), "line"));
  if (all.coins() > most_coins || all.coins() < -most_coins) {
    say("offer-too-large", "the direct cost is past what can be counted", "check the prices of the largest lines");
    sum = {};
  }
}

void Reckoning::overhead() {
  const double share = this->share(offer().overhead, "overhead");
  if (share == 0) return;
  step("overhead", "Overhead, " + exact_percent(share) + " of the direct cost", taken(made.direct, share, "overhead"),
       exact_percent(share) + " of " + shown(made.direct));
}

void Reckoning::contingency() {
  const double share = this->share(offer().contingency, "contingency");
  if (share == 0) return;
  const Money base = offer().chained ? sum : made.direct;
  step("contingency",
       "Contingency, " + exact_percent(share) + (offer().chained ? " of the cost before it" : " of the direct cost"),
       taken(base, share, "contingency"), exact_percent(share) + " of " + shown(base));
}

void Reckoning::profit() {
  const double share = this->share(offer().profit, "profit");
  if (share == 0) return;
  if (offer().profit_as == plan::ProfitAs::markup) {
    const Money base = offer().chained ? sum : made.direct;
    step("profit", "Profit, " + exact_percent(share) + " markup on the " + (offer().chained ? "cost" : "direct cost"),
         taken(base, share, "profit"), exact_percent(share) + " of " + shown(base));
    return;
  }
  const Typed part = typed(share);
  if (share >= 1 || part.under <= part.top) {
    say("offer-margin", "a margin of " + exact_percent(share) + " leaves nothing for the cost, so it counts as 0",
        "write less than 100 %, or choose markup");
    return;
  }
  // Of a cost c the price is c / (1 - g), so the profit is c g / (1 - g).
  const Money cost = sum;
  const auto amount = part_of(cost, part.top, part.under - part.top);
  if (!amount) {
    say("offer-too-large", "the profit is past what can be counted, so it counts as 0", "check the margin");
    return;
  }
  step("profit", "Profit, " + exact_percent(share) + " margin of the price", *amount,
       shown(cost) + " / (1 - " + exact_percent(share) + ") less " + shown(cost));
}

void Reckoning::rounding() {
  const std::int64_t whole = offer().round_to.coins();
  if (whole == 0) return;
  if (whole < 0 || whole > most_coins) {
    say("offer-rounding", "a price can't be rounded up to a whole number of " + shown(offer().round_to),
        "enter the smallest step of the price, such as 10");
    return;
  }
  const std::int64_t over = ((sum.coins() % whole) + whole) % whole;
  step("rounding", "Rounding up", Money::of_coins(over == 0 ? 0 : whole - over),
       shown(sum) + " up to a whole number of " + shown(offer().round_to));
}

void Reckoning::tax() {
  made.price = sum;
  const double share = this->share(offer().tax, "tax");
  if (share == 0) return;
  Money taxed;
  bool all = !made.by_kind.empty();
  std::vector<std::string> words;
  for (const auto& [kind, amount] : made.by_kind) {
    const bool in = std::ranges::find(offer().taxed, kind) != offer().taxed.end();
    all = all && in;
    if (!in) continue;
    taxed += amount;
    words.push_back(word(kind));
  }
  if (offer().taxed.empty())
    say("offer-taxed", "there is a tax and nothing that it is on", "choose what is taxed, or take the tax out",
        Severity::flag);
  Money base = all ? made.price : Money();
  if (!all && taxed != Money() && made.direct.coins() > 0)
    base = part_of(made.price, taxed.coins(), made.direct.coins()).value_or(Money());
  std::string working = exact_percent(share) + " of " + shown(base);
  if (!all)
    working += words.empty() ? ": nothing is taxed"
                             : ", the part of the price for " + joined(words, ", ") + " (" + shown(taxed) +
                                   " of the direct cost of " + shown(made.direct) + ")";
  step("tax", "Tax, " + exact_percent(share), taken(base, share, "tax"), std::move(working));
}

void Reckoning::payments() {
  const auto& steps = offer().payments;
  if (steps.empty()) return;
  double shares = 0;
  bool good = true;
  for (const plan::PaymentStep& one : steps) {
    good = good && one.share >= 0 && one.share <= 1;
    shares += one.share;
    if (!one.stage.empty() && !takeoff::stage_of(one.stage))
      say("offer-stage",
          "the payment '" + one.name + "' falls due with the stage '" + one.stage + "', which there is not",
          "choose its stage, or none for on signing");
  }
  if (!good || !(std::abs(shares - 1) < 1e-9)) {
    say("offer-payments",
        "the payments add up to " + exact_percent(std::isfinite(shares) ? shares : 0) +
            " of the price, not to 100 %, so there are none",
        "change their shares until they do");
    return;
  }
  Money left = made.total;
  for (std::size_t i = 0; i < steps.size(); ++i) {
    const Money amount = i + 1 == steps.size() ? left : units::times(made.total, steps[i].share);
    made.payments.push_back({steps[i].name, steps[i].stage, amount});
    left = left - amount;
  }
}

}  // namespace

Priced priced(const plan::Job& job, const Estimate& estimate) {
  Reckoning reckoning{job, {}, {}};
  reckoning.direct(estimate);
  reckoning.overhead();
  reckoning.contingency();
  const Money before_profit = reckoning.sum;
  reckoning.profit();
  reckoning.rounding();
  reckoning.tax();
  Priced& made = reckoning.made;
  made.total = reckoning.sum;
  const auto over = static_cast<double>((made.price - before_profit).coins());
  if (before_profit.coins() > 0) made.markup = over / static_cast<double>(before_profit.coins());
  if (made.price.coins() > 0) made.margin = over / static_cast<double>(made.price.coins());
  reckoning.payments();
  made.final = estimate.final && std::ranges::none_of(made.problems, [](const problem::Problem& said) {
                 return said.severity == Severity::problem;
               });
  return std::move(made);
}

}  // namespace estimate
