// What the office decides about the price of a job and says beside it. All of it travels in the job file; nothing here
// computes. Shares are plain: 0.15 is 15 %.
#pragma once

#include <memory>
#include <string>
#include <vector>

#include "plan/element.h"
#include "units/money.h"

namespace plan {

using ElementPtr = std::shared_ptr<const Element>;

// Where money goes. A fee is what is paid for leave or use (permit, dump, locate); an allowance is a sum set aside.
enum class CostKind { material, labour, machine, trucking, subcontract, allowance, fee };

// Hours under a condition: access, slope, heat, a small area ... The rate's own factor (curves, thickness) stays beside
// it. Valid: a factor over 0.
struct HoursFactor {
  std::string name;
  double factor = 1;
  std::string stage;  // a stage's word; empty: all stages
  std::string note;
  bool operator==(const HoursFactor&) const = default;
};

// A line that no drawing makes: permit, engineer, mobilising, warranty reserve. One that is 0 says so on purpose, so
// that a reader of the checklist knows that it was thought of.
struct AddedLine {
  ElementId id;       // own among the job's added lines
  std::string stage;  // a stage's word
  CostKind kind = CostKind::fee;
  std::string text;
  double quantity = 1;
  std::string unit = "job";
  units::Money unit_price;
  bool nothing_on_purpose = false;
  std::string note;
  bool operator==(const AddedLine&) const = default;
};

// A sentence of the quote: what is not in it, or what was taken for granted. Those that the plan itself calls for have
// a code of estimate/statements.h; an entry of that code here changes its text or strikes it out, with the reason. Own
// ones have other codes.
struct Statement {
  enum class What { exclusion, assumption };
  std::string code;
  What what = What::exclusion;
  std::string text;  // empty: as the program writes it
  bool struck = false;
  std::string why;  // it was struck out
  bool operator==(const Statement&) const = default;
};

// The price of what can't be seen before the dig: rock, bad soil, more haul, more base. `assumed` is the quantity that
// the quote counts on.
struct UnitPrice {
  std::string code;
  std::string text;
  std::string unit;
  double assumed = 0;
  units::Money price;
  bool operator==(const UnitPrice&) const = default;
};

// A part of the price that falls due with a stage; empty: on signing.
struct PaymentStep {
  std::string name;
  double share = 0;
  std::string stage;
  bool operator==(const PaymentStep&) const = default;
};

// What the customer may take beside the base, or in its place: elements that come or take the place of those with
// their id, elements that go, lines of its own. Priced as the difference that it makes.
struct Option {
  ElementId id;
  std::string name;
  std::string text;
  bool alternate = false;  // in place of a part of the base; otherwise on top of it
  std::vector<ElementPtr> elements;
  std::vector<ElementId> without;
  std::vector<AddedLine> lines;
  bool operator==(const Option& other) const;  // elements by value
};

// A share on a cost. Markup is counted on the cost, margin on the price: 25 % markup is 20 % margin.
enum class ProfitAs { markup, margin };

struct Offer {
  std::vector<HoursFactor> factors;
  std::vector<AddedLine> lines;
  double overhead = 0;     // share of the direct cost
  double contingency = 0;  // share, for the unforeseen inside the scope, not for changes of it
  double profit = 0;
  ProfitAs profit_as = ProfitAs::markup;
  bool chained = true;  // each share on the sum before it; otherwise all on the direct cost
  double tax = 0;       // share, on the price of the kinds in `taxed`
  std::vector<CostKind> taxed;
  units::Money round_to;  // the price before tax goes up to a whole number of these; 0: to the coin
  std::string date;       // 2026-11-28; empty: not quoted yet
  int valid_days = 30;
  std::string basis;  // of the estimate, in words
  std::string terms;
  std::string cancellation;  // the office's own notice
  std::vector<Statement> statements;
  std::vector<UnitPrice> unit_prices;
  std::vector<PaymentStep> payments;
  std::vector<Option> options;
  bool operator==(const Offer&) const = default;
};

// How the job came to the office.
struct Enquiry {
  std::string when;  // 2026-11-28
  std::string wants;
  std::string heard;  // of us
  std::string budget;
  std::string next_step;
  std::string next_when;
  bool operator==(const Enquiry&) const = default;
};

// One point of the site visit's list (estimate/visit.h has the list). Unanswered, it is an assumption of the quote.
struct VisitAnswer {
  std::string point;  // its code
  std::string answer;
  std::string when;
  std::string photo;  // SHA-256 and name, as a site plan's file
  bool operator==(const VisitAnswer&) const = default;
};

}  // namespace plan
