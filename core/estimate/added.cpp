#include "estimate/added.h"

#include <cmath>

#include "estimate/money_words.h"
#include "estimate/price.h"
#include "estimate/words.h"

namespace estimate {

using plan::AddedLine;
using problem::Problem;
using problem::Severity;

namespace {

std::string named(const AddedLine& line) { return line.text.empty() ? line.id : line.text; }

struct Adding {
  const plan::Job& job;
  std::vector<Problem>& problems;

  void say(Severity severity, const char* code, const AddedLine& line, const std::string& text, const char* mend) {
    problems.push_back({severity, code, "the added line '" + named(line) + "' " + text, mend, {}});
  }

  takeoff::Stage stage_of(const AddedLine& line) {
    if (const auto stage = takeoff::stage_of(line.stage)) return *stage;
    say(Severity::problem, "offer-stage", line, "names the stage '" + line.stage + "', which there is not",
        "choose its stage; it stands in the last until then");
    return takeoff::Stage::finish;
  }

  void price(const AddedLine& line, OrderLine& made) {
    const double coins = static_cast<double>(line.unit_price.coins()) * line.quantity;
    made.unit_price = line.unit_price;
    if (line.nothing_on_purpose) {
      made.unit_price = units::Money();
      made.amount = units::Money();
      if (coins != 0)
        say(Severity::flag, "offer-line", line, "is nothing on purpose and has a price: it counts as nothing",
            "take one of the two out");
      return;
    }
    if (coins == 0 || !(std::abs(coins) < 9e15)) {
      say(Severity::problem, "no-price", line, coins == 0 ? "comes to 0" : "comes to more than can be counted",
          "enter its quantity and price, or that it is nothing on purpose");
      return;
    }
    made.amount = units::times(line.unit_price, line.quantity);
  }

  OrderLine line_of(const AddedLine& line) {
    const bool counts = std::isfinite(line.quantity) && line.quantity >= 0;
    if (!counts) say(Severity::problem, "offer-line", line, "has a quantity that is none", "enter a number from 0 up");
    const double quantity = counts ? line.quantity : 0;
    const std::string unit = line.unit.empty() ? "job" : line.unit;
    OrderLine made{stage_of(line),
                   std::string(added_prefix) + line.id,
                   named(line),
                   {},
                   quantity,
                   "piece",
                   quantity,
                   unit,
                   {},
                   {},
                   false,
                   false,
                   line.kind == plan::CostKind::allowance,
                   takeoff::term(named(line), quantity, units::piece, "offer/" + line.id),
                   {}};
    made.kind = line.kind;
    made.work = line.kind == plan::CostKind::labour && (unit == "h" || unit == "hour");
    if (counts) price(line, made);
    made.sentence = line.nothing_on_purpose ? "nothing, on purpose"
                                            : counted(quantity, unit) + " at " +
                                                  shown_money(line.unit_price, job.heading) + ", added by hand";
    if (!line.note.empty()) made.sentence += "; " + line.note;
    return made;
  }
};

}  // namespace

std::vector<OrderLine> added_lines(const plan::Job& job, const std::vector<AddedLine>& lines,
                                   std::vector<Problem>& problems) {
  Adding adding{job, problems};
  std::vector<OrderLine> made;
  for (const AddedLine& line : lines) made.push_back(adding.line_of(line));
  return made;
}

}  // namespace estimate
